// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <memory>

#include "app/commands.h"
#include "app/files.h"
#include "app/output.h"
#include "app/recordings.h"
#include "core/report/figures.h"

namespace app {
namespace {

struct Options {
  std::string recording;
  std::string column;
  bool json = false;
};

Json levelsJson(const core::Column& column, const std::vector<core::Level>& levels) {
  Json json{{"column", column.name}, {"unit", column.unit}, {"levels", Json::array()}};
  for (const core::Level& level : levels)
    json["levels"].push_back({{"begin_s", jsonNumber(level.begin_s)},
                              {"end_s", jsonNumber(level.end_s)},
                              {"mean", jsonNumber(level.mean)},
                              {"std_uncertainty", jsonNumber(level.stdUncertainty)},
                              {"samples", level.samples},
                              {"outliers", level.outliers},
                              {"drift_per_s", jsonNumber(level.drift_per_s)}});
  return json;
}

std::string levelsText(const core::Column& column, const std::vector<core::Level>& levels) {
  const std::string unit = column.unit.empty() ? "" : ", " + column.unit;
  core::Table table{"",
                    {{"Level", true},
                     {"From, s", true},
                     {"To, s", true},
                     {"Mean" + unit, true},
                     {"Std. uncertainty" + unit, true},
                     {"Samples", true}},
                    {}};
  std::vector<double> means;
  for (const core::Level& level : levels) means.push_back(level.mean);
  const int decimals = core::decimalsFor(means);
  for (std::size_t k = 0; k < levels.size(); ++k) {
    const core::Level& level = levels[k];
    table.rows.push_back({{std::to_string(k + 1), shown(level.begin_s), shown(level.end_s),
                           core::shownNumber(level.mean, decimals),
                           core::shownNumber(level.stdUncertainty, decimals), std::to_string(level.samples)},
                          {}});
  }
  return textOf(table);
}

int levels(const Options& options) {
  const auto recording = openRecording(options.recording);
  if (!recording) return fail(recording.error());
  const auto index = columnNamed(*recording, options.column);
  if (!index) return fail(index.error());
  const core::Column& column = recording->columns[*index];
  const auto found = core::findLevels(recording->time, column.values, {});
  if (!found) return fail(inFile(options.recording, found.error()));
  return options.json ? print(levelsJson(column, *found), AllPass)
                      : print(levelsText(column, *found), AllPass);
}

}  // namespace

void addLevels(CLI::App& cli, Run& chosen) {
  auto options = std::make_shared<Options>();
  CLI::App* command = cli.add_subcommand("levels", "The held levels of a recording");
  command->add_option("RECORDING", options->recording, "Delimited text: time in seconds, then value columns")
      ->type_name("")
      ->required();
  command->add_option("--column", options->column, "Name of the column; not needed when there is only one")
      ->check(faultOfName);
  command->add_flag("--json", options->json, "JSON instead of a table");
  command->callback([options, &chosen] { chosen = [options] { return levels(*options); }; });
}

}  // namespace app
