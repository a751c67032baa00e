// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <memory>

#include "app/commands.h"
#include "app/files.h"
#include "app/layout_output.h"
#include "app/output.h"
#include "app/progress_line.h"
#include "app/recordings.h"
#include "core/recording/reader.h"
#include "core/report/figures.h"

namespace app {
namespace {

struct LevelsOptions {
  std::string recording;
  std::string column;
  std::string readAs;
  bool showLayout = false;
  bool json = false;
};

/// What was found in one column.
struct Found {
  const core::Column* column;
  core::Result<std::vector<core::Level>> levels;
};

Json levelJson(const core::Level& level) {
  return {{"begin_s", jsonNumber(level.begin_s)},
          {"end_s", jsonNumber(level.end_s)},
          {"mean", jsonNumber(level.mean)},
          {"std_uncertainty", jsonNumber(level.stdUncertainty)},
          {"samples", level.samples},
          {"effective_samples", jsonNumber(level.effectiveSamples)},
          {"outliers", level.outliers},
          {"robust_mean", jsonNumber(level.robustMean)},
          {"drift_per_s", jsonNumber(level.drift_per_s)},
          {"quality", std::string(core::qualityWord(level.quality))},
          {"reason", level.reason}};
}

Json columnJson(const Found& found) {
  Json json{{"column", found.column->name}, {"unit", found.column->unit}};
  if (!found.levels) {
    json["error"] = found.levels.error().text();
    return json;
  }
  json["levels"] = Json::array();
  for (const core::Level& level : *found.levels) json["levels"].push_back(levelJson(level));
  return json;
}

/// A single column stands by itself, several in a list.
Json levelsJson(const std::vector<Found>& found, const core::Recording& recording,
                const core::LayoutChoices& choices) {
  Json json;
  if (found.size() == 1) {
    json = columnJson(found.front());
  } else {
    json["columns"] = Json::array();
    for (const Found& one : found) json["columns"].push_back(columnJson(one));
  }
  addAccount(json, recording, choices);
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
                     {"Samples", true},
                     {"Quality", false}},
                    {}};
  std::vector<double> means;
  for (const core::Level& level : levels) means.push_back(level.mean);
  const int decimals = core::decimalsFor(means);
  for (std::size_t k = 0; k < levels.size(); ++k) {
    const core::Level& level = levels[k];
    const std::string quality = std::string(core::qualityWord(level.quality));
    table.rows.push_back(
        {{std::to_string(k + 1), shown(level.begin_s), shown(level.end_s),
          core::shownNumber(level.mean, decimals), core::shownNumber(level.stdUncertainty, decimals),
          std::to_string(level.samples), level.reason.empty() ? quality : quality + ": " + level.reason},
         {}});
  }
  return textOf(table);
}

std::string levelsText(const std::vector<Found>& found) {
  std::string text;
  for (const Found& one : found) {
    if (!text.empty()) text += "\n";
    if (found.size() > 1) text += one.column->name + "\n";
    text += one.levels ? levelsText(*one.column, *one.levels) : "no levels\n";
  }
  return text;
}

int showLayout(const LevelsOptions& options, const core::LayoutChoices& choices) {
  if (const auto usable = requireRegularFile(options.recording); !usable) return fail(usable.error());
  const auto preview = core::lookAt(options.recording, choices);
  if (!preview) return fail(preview.error());
  return options.json ? print(layoutJson(*preview), AllPass) : print(layoutText(*preview), AllPass);
}

std::vector<Found> foundIn(const core::Recording& recording, const std::vector<std::size_t>& columns) {
  ProgressLine line("columns");
  std::vector<Found> found;
  for (const std::size_t index : columns) {
    const core::Column& column = recording.columns[index];
    const auto before = static_cast<double>(found.size());
    const auto tell = [&](double share) {
      line.show((before + share) / static_cast<double>(columns.size()));
    };
    found.push_back({&column, core::findLevels(recording.time, column.values, {}, {}, tell)});
  }
  return found;
}

int levels(const LevelsOptions& options) {
  const auto choices = layoutChoices(options.readAs);
  if (!choices) return fail(choices.error());
  if (options.showLayout) return showLayout(options, *choices);
  const auto recording = openRecording(options.recording, *choices);
  if (!recording) return fail(recording.error());
  const auto columns = columnsNamed(*recording, options.column);
  if (!columns) return fail(columns.error());
  const std::vector<Found> found = foundIn(*recording, *columns);
  Exit exit = AllPass;
  for (const Found& one : found) {
    if (one.levels) continue;
    core::Error error = one.levels.error();
    if (found.size() > 1)
      error.where = "column " + one.column->name + (error.where.empty() ? "" : ", " + error.where);
    fail(inFile(options.recording, error));
    exit = BadInput;
  }
  if (exit == BadInput && found.size() == 1) return exit;
  return options.json ? print(levelsJson(found, *recording, *choices), exit) : print(levelsText(found), exit);
}

}  // namespace

void addLevels(CLI::App& cli, Run& chosen) {
  auto options = std::make_shared<LevelsOptions>();
  CLI::App* command = cli.add_subcommand("levels", "The held levels of a recording");
  command
      ->add_option("RECORDING", options->recording,
                   "Delimited text, WAV, NPY, MATLAB, HDF5 or a universal file with data sets 58")
      ->type_name("")
      ->required();
  command->add_option("--column", options->column, "Only the column of this name; all without it")
      ->check(faultOfName);
  command->add_option("--read-as", options->readAs, readAsHelp);
  command->add_flag("--show-layout", options->showLayout,
                    "Only say how the file would be read, with its first lines and what is in doubt");
  command->add_flag("--json", options->json, "JSON instead of tables");
  command->footer(
      "Nothing need be set: settling, noise, mains pick-up, spikes and drift are told from steps by the\n"
      "recording itself. A level is good, fair, or poor when its mean may be off by more than its\n"
      "uncertainty says; the reason stands beside it. Lines that were skipped and values that are missing\n"
      "are told on standard error. The exit status is 0 when all columns were read, 2 when one was not.");
  command->callback([options, &chosen] { chosen = [options] { return levels(*options); }; });
}

}  // namespace app
