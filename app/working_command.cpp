// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <memory>

#include "app/commands.h"
#include "app/files.h"
#include "app/output.h"
#include "core/working/working.h"

namespace app {
namespace {

struct WorkingOptions {
  std::string file;
  std::string channel;
  long long step = 0;
  std::string check;  ///< empty: the plan alone
  bool json = false;
};

/// Index of the check that is named, none without a name.
core::Result<std::optional<std::size_t>> checkIndexOf(const core::Channel& channel, const std::string& name) {
  if (name.empty()) return std::optional<std::size_t>();
  std::vector<std::string> names;
  for (const std::string& wanted : {name, fullCheckName(name)})
    for (std::size_t k = 0; k < channel.checks.size(); ++k)
      if (channel.checks[k].name == wanted) return std::optional(k);
  for (const core::Check& check : channel.checks) names.push_back(check.name);
  return core::Error{"channel " + channel.name, "there is no check \"" + name + "\"",
                     names.empty() ? "The channel has no checks" : "There are " + listed(names)};
}

Json partJson(const core::WorkingPart& part) {
  Json json{{"heading", part.heading}, {"lines", Json::array()}};
  for (const core::WorkingLine& line : part.lines)
    json["lines"].push_back({{"what", line.what},
                             {"formula", line.formula},
                             {"numbers", line.numbers},
                             {"result", line.result},
                             {"source", line.source}});
  if (part.contrasts.empty()) return json;
  json["contrasts"] = Json::array();
  for (const core::WorkingContrast& one : part.contrasts)
    json["contrasts"].push_back({{"what", one.what},
                                 {"by", one.by},
                                 {"formula", one.formula},
                                 {"numbers", one.numbers},
                                 {"exact", one.exact},
                                 {"approximate", one.approximate},
                                 {"exact_value", jsonNumber(one.exactValue)},
                                 {"approximate_value", jsonNumber(one.approximateValue)},
                                 {"off", one.off},
                                 {"why", one.why},
                                 {"source", one.source}});
  return json;
}

int working(const WorkingOptions& options) {
  const auto document = openDocument(options.file);
  if (!document) return fail(document.error());
  const auto chosen = channelsNamed(*document, options.channel);
  if (!chosen) return fail(chosen.error());
  const core::Channel& channel = *document->channels[chosen->front()];
  const auto check = checkIndexOf(channel, options.check);
  if (!check) return fail(check.error());
  if (options.step < 1)
    return fail({"--step", "there is no step " + std::to_string(options.step), "Steps are counted from 1"});
  const auto parts =
      core::workingOf(channel, core::evaluate(channel), *check, static_cast<std::size_t>(options.step) - 1);
  if (!parts) return fail(inFile(options.file, parts.error()));
  const std::string name = *check ? channel.checks[**check].name : "plan";
  if (!options.json)
    return print(channel.name + ", " + name + ", step " + std::to_string(options.step) + "\n\n" +
                     core::workingText(*parts),
                 AllPass);
  Json json{{"channel", channel.name}, {"check", *check ? Json(name) : Json()}, {"step", options.step}};
  json["parts"] = Json::array();
  for (const core::WorkingPart& part : *parts) json["parts"].push_back(partJson(part));
  return print(json, AllPass);
}

}  // namespace

void addWorking(CLI::App& cli, Run& chosen) {
  auto options = std::make_shared<WorkingOptions>();
  CLI::App* command =
      cli.add_subcommand("working", "How the numbers of one step come about, formula by formula");
  command->add_option("FILE", options->file, "A .bridgecal document")->type_name("")->required();
  command->add_option("--channel", options->channel, "Name of the channel")->required()->check(faultOfName);
  command->add_option("--step", options->step, "Number of the step, counted from 1")->required();
  command
      ->add_option("--check", options->check,
                   "With the verdict and the line of this check; without it the plan alone")
      ->check(faultOfName);
  command->add_flag("--json", options->json, "JSON instead of text");
  command->footer(
      "Exact values are those of the whole network. Beside them stand the textbook's formulas that hold for\n"
      "the bridge and its shunts, each worked out by itself, with what makes it differ.");
  command->callback([options, &chosen] { chosen = [options] { return working(*options); }; });
}

}  // namespace app
