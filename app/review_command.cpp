// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <memory>

#include "app/commands.h"
#include "app/files.h"
#include "app/output.h"
#include "core/review/review.h"

namespace app {
namespace {

struct ReviewOptions {
  std::string file;
  std::string channel;
  std::string today;
  bool json = false;
};

Json findingJson(const core::Setup& setup, const core::Finding& finding) {
  Json json{{"kind", core::findingKindKey(finding.kind)},
            {"severity", core::severityWord(finding.severity)},
            {"step", finding.step ? Json(*finding.step + 1) : Json()},
            {"label", finding.step ? Json(setup.sequence[*finding.step].label) : Json()},
            {"shunt", finding.shunt ? Json(setup.shunts[*finding.shunt].name) : Json()},
            {"what", finding.what},
            {"why", finding.why},
            {"mends", Json::array()}};
  for (const core::Mend& mend : finding.mends) json["mends"].push_back(mend.label);
  return json;
}

std::string placeText(const core::Setup& setup, const core::Finding& finding) {
  if (finding.step) {
    const std::string& label = setup.sequence[*finding.step].label;
    return "step " + std::to_string(*finding.step + 1) + (label.empty() ? "" : " (" + label + ")");
  }
  return finding.shunt ? "shunt " + setup.shunts[*finding.shunt].name : "plan";
}

/// "warning: TP-01, step 3 (+2): What. Why."
std::string findingLine(const core::Channel& channel, const core::Finding& finding) {
  const std::string line = std::string(core::severityWord(finding.severity)) + ": " + channel.name + ", " +
                           placeText(channel.setup, finding) + ": " + finding.what + " " + finding.why;
  return harmless(line, false) + "\n";
}

int review(const ReviewOptions& options) {
  const auto day = dayFrom(options.today);
  if (!day) return fail(day.error());
  const auto document = openDocument(options.file);
  if (!document) return fail(document.error());
  const auto chosen = channelsNamed(*document, options.channel);
  if (!chosen) return fail(chosen.error());
  Json json{{"today", core::dateText(*day)}, {"channels", Json::array()}};
  std::string text;
  Exit exit = AllPass;
  for (const std::size_t index : *chosen) {
    const core::Channel& channel = *document->channels[index];
    Json findings = Json::array();
    for (const core::Finding& finding :
         core::review(channel, core::evaluate(channel), *document->stock, *day)) {
      if (finding.severity > core::Severity::Note) exit = CheckFailed;
      findings.push_back(findingJson(channel.setup, finding));
      text += findingLine(channel, finding);
    }
    json["channels"].push_back({{"channel", channel.name}, {"findings", std::move(findings)}});
  }
  if (options.json) return print(json, exit);
  return print(text.empty() ? std::string("Nothing found.\n") : text, exit);
}

}  // namespace

void addReview(CLI::App& cli, Run& chosen) {
  auto options = std::make_shared<ReviewOptions>();
  CLI::App* command = cli.add_subcommand("review", "What somebody should look at before power is on");
  command->add_option("FILE", options->file, "A .bridgecal document")->type_name("")->required();
  command->add_option("--channel", options->channel, "Only the channel of this name")->check(faultOfName);
  command->add_option("--today", options->today,
                      "The day that due dates are compared with, as 2026-05-11; the computer's without it");
  command->add_flag("--json", options->json, "JSON instead of lines, with the mends that the window offers");
  command->footer(
      "A line a finding: how severe, channel, step or shunt, what, and why it matters. A fault means that "
      "the\n"
      "check cannot succeed or something can be damaged, a warning that the check is weaker for it, a note\n"
      "that it is worth knowing. The exit status is 0 when there are notes at most, 1 when there is a "
      "warning\n"
      "or fault, 2 when the file, a name or a date cannot be used.");
  command->callback([options, &chosen] { chosen = [options] { return review(*options); }; });
}

}  // namespace app
