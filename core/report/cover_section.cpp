// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/cover_section.h"

#include <algorithm>

#include "core/circuit/hookup_words.h"
#include "core/record/fingerprint.h"
#include "core/record/review_state.h"
#include "core/report/record_words.h"
#include "core/report/uncertainty_tables.h"

namespace core {
namespace {

constexpr std::size_t mostLinesOfContents = 90;  ///< some two pages

std::string channelsText(const ReportBasis& basis) {
  const std::string all = std::to_string(basis.document.channels.size());
  const std::string count = std::to_string(basis.channels.size());
  switch (basis.order.content.channels) {
    case ReportChannels::All:
      return say("all {1}", {all});
    case ReportChannels::NotPassing:
      return say("{1} of {2}: those that do not pass or have changed", {count, all});
    case ReportChannels::Chosen:
      break;
  }
  return say("{1} of {2}: chosen by hand", {count, all});
}

EntryList coverEntries(const ReportBasis& basis, const std::string& fingerprint) {
  const Document& document = basis.document;
  const ReportOrder& order = basis.order;
  EntryList list{"",
                 {{say("Article"), givenText(document.article)},
                  {say("Site"), givenText(document.site)},
                  {say("Prepared by"), givenText(document.person)},
                  {say("Report"), templateName(order.content)},
                  {say("Channels"), channelsText(basis)}}};
  if (order.content.latestCheckOnly)
    list.entries.push_back({say("Checks"), say("the latest of each channel")});
  if (order.printed) list.entries.push_back({say("Printed on"), shown(*order.printed)});
  if (!order.program.empty()) list.entries.push_back({say("Program"), order.program});
  list.entries.push_back({say("State"), fingerprint.empty() ? standingOf(document).sentence
                                                            : standingOf(document, fingerprint).sentence});
  return list;
}

void addFingerprint(Section& section, const std::string& fingerprint) {
  if (fingerprint.empty()) return;
  section.blocks.push_back(EntryList{"",
                                     {{say("Fingerprint"), shortFingerprint(fingerprint)},
                                      {say("Fingerprint in full"), fingerprint, true}}});
}

/// In one paragraph, so that nobody takes a part for the whole.
void addLeftOut(Section& section, const ReportBasis& basis) {
  std::string text = leftOutText(basis.order.content);
  std::vector<std::string> channels;
  for (std::size_t index = 0; index < basis.document.channels.size(); ++index)
    if (!std::binary_search(basis.channels.begin(), basis.channels.end(), index))
      channels.push_back(basis.channel(index).name);
  if (!channels.empty())
    text += (text.empty() ? "" : " ") + say("Channels left out: {1}.", {listedNames(channels)});
  if (basis.order.content.latestCheckOnly)
    text += (text.empty() ? "" : " ") + say("Earlier checks are left out.");
  if (text.empty()) text = say("Nothing of the record is left out.");
  section.blocks.push_back(Paragraph{text, {}});
}

/// Whether something in the report rests on assumed uncertainties.
bool isAssumed(const ReportBasis& basis) {
  return std::any_of(basis.channels.begin(), basis.channels.end(), [&](std::size_t index) {
    const ChannelEvaluation& evaluation = basis.evaluations[index];
    return restsOnAssumptions(evaluation.budget) ||
           std::any_of(evaluation.checks.begin(), evaluation.checks.end(),
                       [](const CheckEvaluation& check) { return restsOnAssumptions(check.budget); });
  });
}

}  // namespace

std::string leftOutText(const ReportTemplate& content) {
  std::string names;
  for (std::size_t k = 0; k < reportPartCount; ++k) {
    const auto part = static_cast<ReportPart>(k);
    if (!hasPart(content, part)) names += (names.empty() ? "" : ", ") + reportPartName(part);
  }
  return names.empty() ? names : say("Left out of this report: {1}.", {names});
}

Section coverSection(const ReportBasis& basis, const std::string& fingerprint) {
  Section section{say("About this report"), 1, {}};
  if (basis.has(ReportPart::Cover)) {
    section.blocks.push_back(coverEntries(basis, fingerprint));
    if (!basis.document.note.empty()) section.blocks.push_back(Paragraph{basis.document.note, {}});
  }
  addFingerprint(section, fingerprint);
  addLeftOut(section, basis);
  return section;
}

Section cautionSection(const ReportBasis& basis) {
  Section section{say("Cautions"), 1, {}};
  section.blocks.push_back(Caution{chainScopeStatement()});
  for (std::string& caution : cautions()) section.blocks.push_back(Caution{std::move(caution)});
  for (const std::size_t index : basis.channels) {
    const Channel& channel = basis.channel(index);
    if (const std::string connection = hookupText(channel.setup.bridge); !connection.empty())
      section.blocks.push_back(
          Caution{say("Channel {1} is not connected as its template says. {2}", {channel.name, connection})});
  }
  if (isAssumed(basis)) section.blocks.push_back(Caution{assumedUncertaintyStatement()});
  return section;
}

Section contentsSection(const std::vector<Section>& sections) {
  Contents contents;
  const bool isLong = sections.size() > mostLinesOfContents;
  for (std::size_t k = 2; k < sections.size(); ++k)  // behind the cover and the list itself
    if (!isLong || sections[k].level <= 1) contents.sections.push_back(k);
  return {say("Contents"), 1, {std::move(contents)}};
}

}  // namespace core
