// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <cmath>
#include <memory>

#include "app/commands.h"
#include "app/files.h"
#include "app/output.h"
#include "core/circuit/hookup_words.h"
#include "core/flow/movement.h"
#include "core/polarity/place_words.h"
#include "core/polarity/polarity_map.h"
#include "core/units/notation.h"

namespace app {
namespace {

struct PolarityOptions {
  std::string file;
  std::string channel;
  std::string shunt;  ///< a shunt's name or a resistance; empty: the channel's first shunt
  bool json = false;
};

/// What the map is made of.
struct ChosenShunt {
  std::string name;  ///< of a shunt of the channel; empty for a typed resistance
  core::Resistance resistance;
};

ChosenShunt chosen(const core::Shunt& shunt) { return {shunt.name, core::resistanceOf(shunt)}; }

core::Result<ChosenShunt> chosenShunt(const core::Channel& channel, const std::string& text) {
  const std::vector<core::Shunt>& shunts = channel.setup.shunts;
  if (text.empty()) {
    if (!shunts.empty()) return chosen(shunts.front());
    return core::Error{"channel " + channel.name, "it has no shunts", "Write --shunt with a resistance"};
  }
  for (const core::Shunt& shunt : shunts)
    if (shunt.name == text) return chosen(shunt);
  const auto ohm = core::parseQuantity(text, core::UnitFamily::Resistance);
  if (ohm && *ohm > 0) return ChosenShunt{{}, core::Resistance(*ohm)};
  if (ohm)
    return core::Error{"--shunt", "a shunt must have a resistance above zero", "Write for example 59k"};
  std::vector<std::string> names;
  for (const core::Shunt& shunt : shunts) names.push_back(shunt.name);
  const std::string there = names.empty() ? "The channel has no shunts" : "There are " + listed(names);
  return core::Error{"--shunt",
                     "\"" + text + "\" is neither a shunt of channel " + channel.name + " nor a resistance",
                     there + "; a resistance is written as 59k or 174.65k"};
}

/// `setup` with the one shunt of `cell`, and a step that closes it.
core::Setup withShuntAt(core::Setup setup, const ChosenShunt& shunt, const core::PolarityCell& cell) {
  setup.shunts = {{shunt.name, shunt.resistance, cell.a, cell.b}};
  setup.sequence = {{{}, {0}}};
  return setup;
}

/// The output is known also where no strain gives it; `error` then says so.
void addMovement(Json& json, const core::Setup& alone) {
  const auto movement = core::movementAt(alone, 0);
  if (!movement) return;
  const bool none = movement->polarity == core::Polarity::None;
  json["polarity"] = core::polarityWord(movement->polarity);
  json["output_mV_per_V"] = jsonNumber(none ? 0 : movement->change.base() * 1e3);
  json["sentence"] = core::sentenceOf(alone, 0, *movement);
}

Json cellJson(const core::Setup& setup, const ChosenShunt& shunt, const core::PolarityCell& cell) {
  Json json{{"place", core::placeWords(setup.bridge, cell.a, cell.b)},
            {"a", core::nodeName(cell.a)},
            {"b", core::nodeName(cell.b)}};
  addMovement(json, withShuntAt(setup, shunt, cell));
  if (!cell.prediction) {
    json["error"] = cell.prediction.error().text();
    return json;
  }
  const core::Prediction& prediction = *cell.prediction;
  const bool none = prediction.polarity == core::Polarity::None;  // the rest is rounding then
  const bool load = core::isTransducer(setup.bridge);
  json[load ? "simulated_load" : "simulated_strain_um_per_m"] =
      jsonNumber(none ? 0 : core::simulatedInUnit(setup.bridge, prediction.simulated));
  json["reading"] = jsonNumber(none ? 0 : prediction.reading.base());
  return json;
}

Json mapJson(const core::Channel& channel, const ChosenShunt& shunt, const core::PolarityMap& map) {
  const core::Setup& setup = channel.setup;
  const core::Hookup& hookup = setup.bridge.hookup;
  Json json{{"channel", channel.name},
            {"bridge", core::templateOf(setup.bridge.type).key},
            {"shunt", shunt.name.empty() ? Json() : Json(shunt.name)},
            {"shunt_ohm", jsonNumber(shunt.resistance.base())},
            {"signal_reversed", hookup.signalReversed},
            {"excitation_reversed", hookup.excitationReversed},
            {"gauges_reversed", hookup.gaugesReversed},
            {"connection", core::hookupSentences(setup.bridge)},
            {"reading_unit", core::readingUnitText(setup.instrument)}};
  if (core::isTransducer(setup.bridge)) json["load_unit"] = core::simulatedUnitText(setup.bridge);
  json["points"] = Json::array();
  for (const core::Node point : map.points)
    json["points"].push_back(
        {{"node", core::nodeName(point)}, {"name", core::pointName(setup.bridge, point)}});
  json["cells"] = Json::array();
  for (const core::PolarityCell& cell : map.cells) json["cells"].push_back(cellJson(setup, shunt, cell));
  return json;
}

/// With its sign, as many decimals as asked for; what has no polarity is no more than rounding.
std::string signedNumber(const core::Prediction& prediction, double value, int decimals) {
  if (prediction.polarity == core::Polarity::None) return core::formatFixed(0, decimals);
  // Never rounded to nothing: 0.0000 would contradict the word beside it.
  const bool vanishes = std::abs(value) < 0.5 * std::pow(10, -decimals);
  const std::string text = vanishes ? core::formatNumber(value, 2) : core::formatFixed(value, decimals);
  return value > 0 ? "+" + text : text;
}

/// Six digits, since a reading is in any unit.
std::string signedReading(const core::Prediction& prediction) {
  if (prediction.polarity == core::Polarity::None) return "0";
  const double value = prediction.reading.base();
  return (value > 0 ? "+" : "") + shown(value);
}

core::Table mapTable(const core::Setup& setup, const core::PolarityMap& map) {
  core::Table table;
  table.columns = {{"Place"},
                   {"From"},
                   {"To"},
                   {"Polarity"},
                   {"Output, mV/V", true},
                   {"Simulated, " + core::simulatedUnitText(setup.bridge), true},
                   {"Reading, " + core::readingUnitText(setup.instrument), true}};
  for (const core::PolarityCell& cell : map.cells) {
    core::TableRow row{{core::placeWords(setup.bridge, cell.a, cell.b), std::string(core::nodeName(cell.a)),
                        std::string(core::nodeName(cell.b))},
                       std::nullopt};
    if (const auto& prediction = cell.prediction) {
      const int decimals = core::isTransducer(setup.bridge) ? 4 : 1;
      row.cells.emplace_back(core::polarityWord(prediction->polarity));
      row.cells.push_back(signedNumber(*prediction, prediction->output.base() * 1e3, 4));
      row.cells.push_back(
          signedNumber(*prediction, core::simulatedInUnit(setup.bridge, prediction->simulated), decimals));
      row.cells.push_back(signedReading(*prediction));
    } else {
      row.cells.insert(row.cells.end(), {"not predicted", "–", "–", "–"});
    }
    table.rows.push_back(std::move(row));
  }
  return table;
}

std::string mapText(const core::Channel& channel, const ChosenShunt& shunt, const core::PolarityMap& map) {
  const core::Setup& setup = channel.setup;
  std::string text = channel.name + ": " + std::string(core::templateOf(setup.bridge.type).name);
  for (const std::string& sentence : core::hookupSentences(setup.bridge)) text += "\n" + sentence;
  text += "\n" + (shunt.name.empty() ? "a shunt" : shunt.name) + " of " +
          core::formatQuantity(shunt.resistance.base(), core::UnitFamily::Resistance) +
          " at every place, all other shunts open\n\n" + textOf(mapTable(setup, map));
  for (const core::PolarityCell& cell : map.cells)
    if (!cell.prediction) text += cell.prediction.error().text() + "\n";
  return text;
}

int polarity(const PolarityOptions& options) {
  const auto document = openDocument(options.file);
  if (!document) return fail(document.error());
  const auto channels = channelsNamed(*document, options.channel);
  if (!channels) return fail(channels.error());
  const core::Channel& channel = *document->channels[channels->front()];
  const auto shunt = chosenShunt(channel, options.shunt);
  if (!shunt) return fail(shunt.error());
  const auto map = core::polarityMap(channel.setup, shunt->resistance);
  if (!map) return fail(inFile(options.file, map.error()));
  return options.json ? print(mapJson(channel, *shunt, *map), AllPass)
                      : print(mapText(channel, *shunt, *map), AllPass);
}

}  // namespace

void addPolarity(CLI::App& cli, Run& run) {
  auto options = std::make_shared<PolarityOptions>();
  CLI::App* command = cli.add_subcommand("polarity", "What one shunt would do at every place of the bridge");
  command->add_option("FILE", options->file, "A .bridgecal document")->type_name("")->required();
  command->add_option("--channel", options->channel, "Name of the channel")->required()->check(faultOfName);
  command
      ->add_option("--shunt", options->shunt,
                   "A shunt of the channel, or any resistance; without it the channel's first shunt")
      ->type_name("NAME|OHM")
      ->check(faultOfName);
  command->add_flag("--json", options->json, "JSON instead of a table");
  command->footer(
      "One row a pair of the bridge's electrical points, the shunt between them and all others open. A "
      "shunt\n"
      "of the channel counts with its wires and its switch.\n"
      "\n"
      "A place that cannot be predicted, such as one over a lead of zero ohm, carries its error and does "
      "not\n"
      "hide the others. The exit status is 0, or 2 when the bridge as a whole cannot be predicted.");
  command->callback([options, &run] { run = [options] { return polarity(*options); }; });
}

}  // namespace app
