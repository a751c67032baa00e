// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <algorithm>
#include <memory>

#include "app/commands.h"
#include "app/files.h"
#include "app/output.h"
#include "app/report_fingerprint.h"
#include "core/document/json_reader.h"
#include "core/record/file_standing.h"
#include "core/record/fingerprint.h"
#include "core/record/review_state.h"
#include "core/record/revisions.h"
#include "ui/safe_file.h"

namespace app {
namespace {

struct VerifyOptions {
  std::string file;
  std::string report;
  bool json = false;
};

constexpr qint64 greatestReport_bytes = 512 << 20;

constexpr const char* caution =
    "A fingerprint shows that something was altered, not who altered it: it is no signature. It stands for "
    "the "
    "document; the text of a report itself is not covered.";

/// One thing that was looked at.
struct Finding {
  Json json;
  std::string sentence;
  bool inOrder = true;
};

Finding fileFinding(const core::FileStanding& standing) {
  using Kind = core::FileStanding::Kind;
  const char* key = standing.kind == Kind::AsSaved   ? "as_saved"
                    : standing.kind == Kind::Altered ? "altered"
                                                     : "no_fingerprint";
  Finding finding{{{"standing", key}, {"fingerprint", standing.fingerprint}},
                  core::sentenceOf(standing),
                  standing.kind == Kind::AsSaved};
  finding.json["stated"] = standing.stated.empty() ? Json() : Json(standing.stated);
  return finding;
}

std::string savingText(const core::Revision& revision) {
  return "saved by " + (revision.person.empty() ? "nobody named" : revision.person) + " on " + revision.time;
}

Finding historyFinding(const core::Document& document, const std::string& fingerprint) {
  const auto& history = document.history;
  const auto broken = core::brokenRevision(history);
  const auto altered = core::revisionsAfterAlteration(history);
  const bool covers = !history.empty() && history.back().fingerprint == fingerprint;
  Finding finding{{{"entries", history.size()},
                   {"holds_together", !broken},
                   {"broken_entry", broken ? Json(*broken + 1) : Json()},
                   {"altered_before", Json::array()},
                   {"covers_content", history.empty() ? Json() : Json(covers)}},
                  "",
                  !broken && altered.empty() && (history.empty() || covers)};
  for (const std::size_t entry : altered) finding.json["altered_before"].push_back(entry + 1);
  if (history.empty()) {
    finding.sentence = "The document has no history.";
  } else if (broken) {
    finding.sentence =
        "The history does not hold together: entry " + std::to_string(*broken + 1) + " of " +
        std::to_string(history.size()) + " (" + savingText(history[*broken]) +
        ") does not follow from those before it; it, or one before it, was altered, removed or "
        "put in.";
  } else if (!covers) {
    finding.sentence = "The history holds together, but its last entry (" + savingText(history.back()) +
                       ") is about another content.";
  } else if (!altered.empty()) {
    finding.sentence = "The history of " + std::to_string(history.size()) +
                       " entries says that the file was altered without it before entry " +
                       std::to_string(altered.front() + 1) + " (" + savingText(history[altered.front()]) +
                       "): what was altered is not known. Compare with a copy from before that.";
  } else {
    finding.sentence = "The history of " + std::to_string(history.size()) +
                       (history.size() == 1 ? " entry" : " entries") + " holds together; last " +
                       savingText(history.back()) + ".";
  }
  return finding;
}

Finding reviewFinding(const core::Document& document, const std::string& fingerprint) {
  const core::Standing standing = core::standingOf(document, fingerprint);
  // A draft or a return is nobody's word for the content; what was submitted or accepted is.
  const bool stands = standing.stage == core::Stage::Submitted || standing.stage == core::Stage::Accepted;
  Json json{{"stage", core::stageKey(standing.stage)},
            {"person", standing.act ? Json(standing.act->person) : Json()},
            {"time", standing.act ? Json(standing.act->time) : Json()},
            {"changed_since", standing.act ? Json(standing.changedSince) : Json()}};
  return {json, "Review: " + standing.sentence, !(stands && standing.changedSince)};
}

/// Of which state of the document the report is.
Finding reportFinding(const core::Document& document, const std::vector<std::string>& present,
                      const ReportFingerprint& report) {
  Finding finding{{{"kind", report.kind}}, "", false};
  Json& json = finding.json;
  json["fingerprint"] = report.fingerprint.empty() ? Json() : Json(report.fingerprint);
  const auto& history = document.history;
  const auto earlier = std::find_if(history.rbegin(), history.rend(), [&](const core::Revision& revision) {
    return revision.fingerprint == report.fingerprint;
  });
  const std::string states = "The report (" + report.kind + ") states the fingerprint " +
                             core::shortFingerprint(report.fingerprint) + ": it ";
  if (report.fingerprint.empty()) {
    json["of"] = "unknown";
    finding.sentence = "The report (" + report.kind +
                       ") states no fingerprint, so that it cannot be told which document it is of.";
  } else if (std::find(present.begin(), present.end(), report.fingerprint) != present.end()) {
    json["of"] = "this_document";
    finding.sentence = states + "is of this document as it is.";
    finding.inOrder = true;
  } else if (earlier != history.rend()) {
    json["of"] = "earlier_revision";
    json["revision"] = {
        {"entry", history.rend() - earlier}, {"person", earlier->person}, {"time", earlier->time}};
    finding.sentence = states + "is of an earlier state of this document, " + savingText(*earlier) + ".";
  } else {
    json["of"] = "another";
    finding.sentence = states + "is neither of this document nor of an earlier state in its history.";
  }
  return finding;
}

struct Verified {
  std::vector<std::pair<const char*, Finding>> findings;  ///< with their keys
};

core::Result<Verified> verified(const VerifyOptions& options) {
  const auto bytes = ui::loadBytes(QString::fromStdString(options.file), greatestDocument_bytes);
  if (!bytes) return bytes.error();
  const std::string_view text(bytes->constData(), static_cast<std::size_t>(bytes->size()));
  // The reader first: it says best what is wrong with a file, and which version one needs.
  const auto document = core::readDocument(text);
  if (!document) return inFile(options.file, document.error());
  const auto standing = core::fileStanding(text);
  if (!standing) return inFile(options.file, standing.error());
  // A file of an older version is another text once lifted; reports may be of either.
  const auto lifted = core::fingerprintOf(*document);
  if (!lifted) return inFile(options.file, lifted.error());
  Verified result;
  result.findings.emplace_back("file", fileFinding(*standing));
  result.findings.emplace_back("history", historyFinding(*document, *lifted));
  result.findings.emplace_back("review", reviewFinding(*document, *lifted));
  if (options.report.empty()) return result;
  const auto reportBytes = ui::loadBytes(QString::fromStdString(options.report), greatestReport_bytes);
  if (!reportBytes) return reportBytes.error();
  const auto report = reportFingerprint(options.report, *reportBytes);
  if (!report) return report.error();
  result.findings.emplace_back("report", reportFinding(*document, {standing->fingerprint, *lifted}, *report));
  return result;
}

int verify(const VerifyOptions& options) {
  const auto result = verified(options);
  if (!result) return fail(result.error());
  bool inOrder = true;
  Json json;
  std::string text;
  for (const auto& [key, finding] : result->findings) {
    inOrder = inOrder && finding.inOrder;
    json[key] = finding.json;
    json[key]["in_order"] = finding.inOrder;
    json[key]["sentence"] = finding.sentence;
    text += (finding.inOrder ? "in order      " : "NOT IN ORDER  ") + finding.sentence + "\n";
  }
  json["in_order"] = inOrder;
  json["caution"] = caution;
  const Exit exit = inOrder ? AllPass : CheckFailed;
  return options.json ? print(json, exit) : print(text + "\n" + caution + "\n", exit);
}

}  // namespace

void addVerify(CLI::App& cli, Run& chosen) {
  auto options = std::make_shared<VerifyOptions>();
  CLI::App* command =
      cli.add_subcommand("verify", "Whether a document is as it was saved, and a report of it");
  command->add_option("FILE", options->file, "A .bridgecal document")->type_name("")->required();
  command->add_option("REPORT", options->report, "A PDF, HTML, XLSX, CSV or JSON report")->type_name("");
  command->add_flag("--json", options->json, "JSON instead of sentences");
  command->footer(
      "Told are: whether the file has the fingerprint that it states, whether its history holds together, "
      "where\n"
      "its review stands, and whether the report is of this document or of an earlier state of it.\n"
      "The exit status is 0 when all of that is in order, 1 when something is not, 2 when a file cannot be "
      "read.\n"
      "A fingerprint is no signature: whoever can alter a file can reckon its fingerprint anew.");
  command->callback([options, &chosen] { chosen = [options] { return verify(*options); }; });
}

}  // namespace app
