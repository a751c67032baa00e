// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/record_sections.h"

#include "core/record/fingerprint.h"
#include "core/record/revisions.h"
#include "core/report/record_words.h"

namespace core {
namespace {

std::string changesText(const Revision& revision) {
  std::string text;
  for (const std::string& change : revision.changes) text += (text.empty() ? "" : "\n") + change;
  if (revision.more > 0)
    text += (text.empty() ? "" : "\n") + say("and {1} more", {std::to_string(revision.more)});
  return text;
}

std::string_view actName(Stage stage) {
  switch (stage) {
    case Stage::Draft:
      return sayLater("withdrawn");
    case Stage::Submitted:
      return sayLater("submitted");
    case Stage::Accepted:
      return sayLater("accepted");
    case Stage::Returned:
      return sayLater("returned");
  }
  return {};
}

std::string aboutText(const SignOffAct& act, const std::string& fingerprint) {
  if (fingerprint.empty()) return say("not known");
  return act.fingerprint == fingerprint ? say("this content") : say("another content");
}

Table actTable(const Document& document, const std::string& fingerprint) {
  Table table{say("Signed so far"),
              {{say("Act"), false, 12},
               {say("Person"), false, 18},
               {say("Time"), false, 20},
               {say("Remark"), false, 34},
               {say("About"), false, 16}},
              {}};
  for (const SignOffAct& act : document.signOff.acts)
    table.rows.push_back(
        {{say(actName(act.stage)), act.person, shownTime(act.time), act.remark, aboutText(act, fingerprint)},
         {}});
  return table;
}

}  // namespace

Section historySection(const Document& document, const std::string& fingerprint) {
  Section section{say("History"), 1, {}};
  if (document.history.empty()) {
    section.blocks.push_back(Paragraph{say("The document holds no history."), {}});
    return section;
  }
  if (const auto broken = brokenRevision(document.history))
    section.blocks.push_back(Caution{say(
        "The history does not hold together: entry {1} does not follow from those before it. An entry was "
        "altered, lost or put in.",
        {std::to_string(*broken + 1)})});
  else if (!fingerprint.empty() && document.history.back().fingerprint != fingerprint)
    section.blocks.push_back(
        Caution{say("This is not the content that was saved last: it was changed since, in the window or "
                    "outside of the program, and the history does not tell how.")});
  Table table{say("Who saved what"),
              {{say("Time"), false, 18},
               {say("Person"), false, 14},
               {say("Program"), false, 12},
               {say("Changes"), false, 40},
               {say("Fingerprint"), false, 16}},
              {},
              false,
              true};
  for (const Revision& revision : document.history)
    table.rows.push_back({{shownTime(revision.time), givenText(revision.person), revision.program,
                           changesText(revision), shortFingerprint(revision.fingerprint)},
                          {}});
  section.blocks.push_back(std::move(table));
  return section;
}

Section signOffSection(const Document& document, const std::string& fingerprint) {
  Section section{say("Signatures"), 1, {Caution{chainScopeStatement()}}};
  if (!document.signOff.acts.empty()) section.blocks.push_back(actTable(document, fingerprint));
  Table table{"", {{say("Role")}, {say("Name")}, {say("Signature")}, {say("Date")}}, {}, true};
  table.rows.push_back({{say("Prepared"), document.person, "", ""}, {}});
  table.rows.push_back({{say("Reviewed"), "", "", ""}, {}});
  section.blocks.push_back(std::move(table));
  return section;
}

}  // namespace core
