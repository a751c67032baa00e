// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <memory>

#include "app/commands.h"
#include "app/files.h"
#include "app/output.h"
#include "core/circuit/hookup_words.h"
#include "core/report/wiring_sheet.h"
#include "core/wiring/ohm_diagnosis.h"
#include "core/wiring/wiring_rules.h"

namespace app {
namespace {

struct WiringOptions {
  std::string file;
  std::string channel;
  bool ohmmeter = false;
  bool unplugged = false;
  bool json = false;
};

Json pinNameJson(const core::PinName& name) { return {{"connector", name.connector}, {"pin", name.pin}}; }

Json jumpersJson(const std::vector<core::Jumper>& jumpers) {
  Json list = Json::array();
  for (const core::Jumper& jumper : jumpers)
    list.push_back({{"from", pinNameJson(jumper.from)}, {"to", pinNameJson(jumper.to)}});
  return list;
}

Json pinsJson(const core::Setup& setup) {
  Json list = Json::array();
  for (const core::Pin& pin : setup.wiring.pins) {
    Json json = pinNameJson(pin.name);
    json["use"] = core::pinUseName(pin.use);
    list.push_back(std::move(json));
  }
  return list;
}

Json shuntsJson(const core::Setup& setup) {
  Json list = Json::array();
  for (std::size_t k = 0; k < setup.shunts.size(); ++k) {
    const core::Shunt& shunt = setup.shunts[k];
    Json json{{"shunt", shunt.name},
              {"resistor", core::resistorName(shunt)},
              {"a", core::nodeName(shunt.a)},
              {"b", core::nodeName(shunt.b)},
              {"inside_instrument", core::isSwitchedInside(setup, shunt)},
              {"jumpers", jumpersJson(shunt.jumpers)}};
    const auto usual = core::jumpersFor(setup, k);
    json["jumpers_for_plan"] = usual ? jumpersJson(*usual) : Json();
    list.push_back(std::move(json));
  }
  return list;
}

Json faultsJson(const core::Setup& setup, const std::vector<core::WiringFault>& faults) {
  Json list = Json::array();
  for (const core::WiringFault& fault : faults) {
    Json pins = Json::array();
    for (const core::PinName& pin : fault.pins) pins.push_back(pinNameJson(pin));
    list.push_back({{"kind", core::wiringFaultKey(fault.kind)},
                    {"severity", fault.severity == core::WiringSeverity::Error ? "error" : "warning"},
                    {"shunt", fault.shunt ? Json(setup.shunts[*fault.shunt].name) : Json()},
                    {"pins", std::move(pins)},
                    {"what", fault.what},
                    {"mend", fault.mend}});
  }
  return list;
}

/// What the ohmmeter must read, one entry a state, and what fits the channel's readings.
core::Result<Json> ohmmeterJson(const core::Channel& channel, const core::OhmmeterConditions& conditions) {
  Json states = Json::array();
  for (const core::WiringState& state : core::wiringStates(channel.setup)) {
    Json values = Json::array();
    for (const core::OhmPair& pair : core::ohmPairs(channel.setup, state)) {
      const core::OhmPoint points[] = {pair.from, pair.to};
      const auto expected = core::ohmExpectations(channel.setup, state, points, conditions);
      if (!expected) return expected.error();
      const core::OhmExpectation& value = expected->front();
      values.push_back({{"from", core::ohmPointName(value.from)},
                        {"to", core::ohmPointName(value.to)},
                        {"ohm", jsonNumber(baseOf(value.ohm))},
                        {"tolerance_ohm", jsonNumber(value.tolerance.base())}});
    }
    states.push_back({{"state", core::wiringStateText(channel.setup, state)},
                      {"shunt", state.shunt},
                      {"jumpers", state.jumpers},
                      {"values", std::move(values)}});
  }
  return Json{{"instrument_connected", conditions.instrumentConnected}, {"states", std::move(states)}};
}

Json ohmFaultsJson(const core::Channel& channel, const core::OhmmeterConditions& conditions) {
  Json list = Json::array();
  if (channel.ohmReadings.empty()) return list;
  const auto faults = core::ohmFaults(channel.setup, channel.ohmReadings, conditions);
  if (!faults) return list;
  for (const core::OhmFault& fault : *faults)
    list.push_back({{"text", core::ohmFaultText(fault)},
                    {"misfit", jsonNumber(fault.misfit)},
                    {"explains", fault.explains},
                    {"fitted_ohm", jsonNumber(baseOf(fault.fitted))}});
  return list;
}

/// Without the columns from `count` on, which hold boxes to tick by hand.
core::Table withoutBoxes(core::Table table, std::size_t count) {
  table.columns.resize(count);
  for (core::TableRow& row : table.rows) row.cells.resize(count);
  return table;
}

core::Result<std::string> ohmmeterText(const core::Channel& channel,
                                       const core::OhmmeterConditions& conditions) {
  std::string text;
  for (const core::WiringState& state : core::wiringStates(channel.setup)) {
    const auto table = core::ohmTable(channel, state, conditions);
    if (!table) return table.error();
    text += "\n" + table->caption + "\n" + textOf(withoutBoxes(*table, 4));
  }
  const core::Table faults = core::ohmFaultTable(channel, conditions);
  if (!faults.rows.empty()) text += "\n" + faults.caption + "\n" + textOf(faults);
  return text;
}

std::string wiringText(const core::Channel& channel, const std::vector<core::WiringFault>& faults) {
  std::string text = channel.name + ": " + std::string(core::templateOf(channel.setup.bridge.type).name) +
                     "\nSwitch the excitation off before wiring or ohmmeter work.\n";
  if (const std::string connection = core::connectionText(channel.setup.bridge); !connection.empty())
    text += connection + "\n";
  if (!channel.setup.wiring.pins.empty())
    text += "\nPins\n" + textOf(withoutBoxes(core::pinTable(channel.setup), 4));
  if (!channel.setup.shunts.empty())
    text += "\nJumpers\n" + textOf(withoutBoxes(core::jumperTable(channel.setup), 8));
  text += "\n";
  const std::vector<std::string> leads = core::leadFaults(channel.setup.bridge);
  for (const std::string& sentence : leads) text += "lead: " + sentence + "\n";
  for (const core::WiringFault& fault : faults)
    text += std::string(fault.severity == core::WiringSeverity::Error ? "error: " : "warning: ") +
            fault.what + ". " + fault.mend + ".\n";
  if (faults.empty()) text += leads.empty() ? "No fault was found.\n" : "Pins and jumpers have no fault.\n";
  return text;
}

int wiring(const WiringOptions& options) {
  const auto document = openDocument(options.file);
  if (!document) return fail(document.error());
  const auto chosen = channelsNamed(*document, options.channel);
  if (!chosen) return fail(chosen.error());
  const core::Channel& channel = *document->channels[chosen->front()];
  const auto faults = core::wiringFaults(channel.setup);
  const core::OhmmeterConditions conditions{.instrumentConnected = !options.unplugged};
  const Exit exit = faults.empty() ? AllPass : CheckFailed;
  if (options.json) {
    Json json{{"channel", channel.name},
              {"connection", core::hookupSentences(channel.setup.bridge)},
              {"pins", pinsJson(channel.setup)},
              {"shunts", shuntsJson(channel.setup)},
              {"faults", faultsJson(channel.setup, faults)}};
    if (!options.ohmmeter) return print(json, exit);
    const auto values = ohmmeterJson(channel, conditions);
    if (!values) return fail(inFile(options.file, values.error()));
    json["ohmmeter"] = *values;
    json["ohmmeter"]["faults"] = ohmFaultsJson(channel, conditions);
    return print(json, exit);
  }
  std::string text = wiringText(channel, faults);
  if (options.ohmmeter) {
    const auto values = ohmmeterText(channel, conditions);
    if (!values) return fail(inFile(options.file, values.error()));
    text += *values;
  }
  return print(text, exit);
}

}  // namespace

void addWiring(CLI::App& cli, Run& chosen) {
  auto options = std::make_shared<WiringOptions>();
  CLI::App* command =
      cli.add_subcommand("wiring", "Pins and jumpers of a channel, what is wrong with them, ohmmeter values");
  command->add_option("FILE", options->file, "A .bridgecal document")->type_name("")->required();
  command->add_option("--channel", options->channel, "Name of the channel")->required()->check(faultOfName);
  auto* ohmmeter =
      command->add_flag("--ohmmeter", options->ohmmeter,
                        "What an ohmmeter must read with the excitation off, in every state of the wiring,\n"
                        "and which fault fits the readings that the document holds");
  command->add_flag("--unplugged", options->unplugged, "With the instrument unplugged")->needs(ohmmeter);
  command->add_flag("--json", options->json, "JSON instead of tables");
  command->footer(
      "The exit status is 1 when pins or jumpers have a fault, warnings included. Tolerances hold for an\n"
      "ohmmeter within 0.2 % and 0.1 ohm, with the uncertainties of arms, leads and shunts added.");
  command->callback([options, &chosen] { chosen = [options] { return wiring(*options); }; });
}

}  // namespace app
