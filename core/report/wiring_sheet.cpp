// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/wiring_sheet.h"

#include <algorithm>
#include <cmath>

#include "core/circuit/hookup_words.h"
#include "core/circuit/node_words.h"
#include "core/plan/prediction.h"
#include "core/report/figures.h"
#include "core/units/language.h"
#include "core/units/notation.h"
#include "core/wiring/ohm_diagnosis.h"
#include "core/wiring/wiring_rules.h"

namespace core {
namespace {

/// Room to write a number by hand.
constexpr std::string_view writingLine = "\n____________";

bool isSamePoint(const Setup& setup, const OhmPoint& a, const OhmPoint& b) {
  const auto *first = std::get_if<Node>(&a), *second = std::get_if<Node>(&b);
  return first && second ? pointOf(setup.bridge, *first) == pointOf(setup.bridge, *second) : a == b;
}

bool hasPoint(const Setup& setup, const OhmPoint& point) {
  if (const auto* node = std::get_if<Node>(&point)) return hasNode(setup.bridge, *node);
  const auto points = ohmPoints(setup);
  return std::find(points.begin(), points.end(), point) != points.end();
}

/// What has a wire of its own at the instrument.
std::vector<OhmPoint> terminalsOf(const Setup& setup) {
  std::vector<OhmPoint> terminals;
  for (const Node node : allNodes())
    if (node < Node::Arm1Begin && hasNode(setup.bridge, node)) terminals.emplace_back(node);
  for (const Wire& wire : templateOf(setup.bridge.type).wires)
    if (wire.role == LeadRole::Return) terminals.emplace_back(wire.from);
  return terminals;
}

/// Pairs in order, each once, without points that the channel does not have.
class PairList {
 public:
  explicit PairList(const Setup& setup) : m_setup(setup) {}

  void add(const OhmPoint& from, const OhmPoint& to) {
    if (!hasPoint(m_setup, from) || !hasPoint(m_setup, to) || isSamePoint(m_setup, from, to)) return;
    for (const OhmPair& pair : m_pairs)
      if ((isSamePoint(m_setup, pair.from, from) && isSamePoint(m_setup, pair.to, to)) ||
          (isSamePoint(m_setup, pair.from, to) && isSamePoint(m_setup, pair.to, from)))
        return;
    m_pairs.push_back({from, to});
  }
  void addEachTwo(const std::vector<OhmPoint>& points) {
    for (std::size_t i = 0; i < points.size(); ++i)
      for (std::size_t j = i + 1; j < points.size(); ++j) add(points[i], points[j]);
  }
  std::vector<OhmPair> take() { return std::move(m_pairs); }

 private:
  const Setup& m_setup;
  std::vector<OhmPair> m_pairs;
};

Polarity polarityOf(const Setup& setup, std::size_t shunt) {
  Setup alone = setup;
  alone.sequence = {{"", {shunt}}};
  const SetupPrediction prediction = predict(alone);
  return prediction.steps[0] ? prediction.steps[0]->polarity : Polarity::None;
}

const OhmReading* readingOf(const Channel& channel, const WiringState& state, const OhmPair& pair) {
  for (const OhmReading& reading : channel.ohmReadings)
    if (reading.state == state && ((reading.from == pair.from && reading.to == pair.to) ||
                                   (reading.from == pair.to && reading.to == pair.from)))
      return &reading;
  return nullptr;
}

std::string shownOhm(const std::optional<Resistance>& ohm, int decimals) {
  return ohm ? shownNumber(ohm->base(), decimals) : say("open");
}

bool isWithin(const OhmExpectation& expected, const OhmReading& reading) {
  if (!expected.ohm || !reading.ohm) return !expected.ohm && !reading.ohm;
  return std::abs(reading.ohm->base() - expected.ohm->base()) <= expected.tolerance.base();
}

TableRow ohmRow(const OhmExpectation& expected, const OhmReading* reading) {
  const int decimals = expected.ohm ? decimalsOfUncertainty(expected.tolerance.base()) : 0;
  TableRow row{{ohmPointName(expected.from), ohmPointName(expected.to), shownOhm(expected.ohm, decimals),
                expected.ohm ? shownUncertainty(expected.tolerance.base()) : ""},
               {}};
  row.cells.push_back(reading ? shownOhm(reading->ohm, decimals) : std::string(writingLine));
  const bool within = reading && isWithin(expected, *reading);
  row.cells.push_back(!reading ? std::string(tickBox()) : within ? say("within") : say("outside"));
  if (reading) row.verdict = within ? Verdict::Pass : Verdict::Fail;
  return row;
}

Section faultSection(const Setup& setup) {
  Section section{say("Check of pins and jumpers"), 2, {}};
  for (std::string& sentence : leadFaults(setup.bridge))
    section.blocks.push_back(Caution{std::move(sentence)});
  Table table = wiringFaultTable(setup);
  if (table.rows.empty()) {
    section.blocks.push_back(Paragraph{
        say("No fault was found: every shunt lies where the plan says once its jumpers are laid."), {}});
    return section;
  }
  const bool error = table.rows[0].verdict == Verdict::Fail;
  if (error)
    section.blocks.push_back(Caution{say("The wiring has errors. Mend them before you lay a jumper.")});
  section.blocks.push_back(std::move(table));
  return section;
}

Section ohmSection(const Channel& channel, const OhmmeterConditions& conditions) {
  Section section{say("Ohmmeter sheet"), 2, {Paragraph{ohmConditionsText(conditions), {}}}};
  if (std::string connection = connectionText(channel.setup.bridge); !connection.empty())
    section.blocks.push_back(Caution{std::move(connection)});
  for (const WiringState& state : wiringStates(channel.setup)) {
    auto table = ohmTable(channel, state, conditions);
    if (table)
      section.blocks.push_back(*std::move(table));
    else
      section.blocks.push_back(Paragraph{table.error().text(), Verdict::NotJudged});
  }
  Table faults = ohmFaultTable(channel, conditions);
  if (!faults.rows.empty()) section.blocks.push_back(std::move(faults));
  return section;
}

}  // namespace

std::string ohmConditionsText(const OhmmeterConditions& conditions) {
  const std::string instrument =
      conditions.instrumentConnected
          ? say("Instrument connected and switched off; its switched-off source counts as open.")
          : say("Instrument unplugged: what lies inside it is away.");
  return instrument + " " +
         say("Ohmmeter within {1} of the reading and {2}, no reading above {3}. The tolerance adds the "
             "uncertainty "
             "of arms, leads and shunts at the coverage of the decision rule.",
             {shown(formatQuantity(conditions.relativeError, UnitFamily::Percent, {}, 4)),
              shown(formatQuantity(conditions.absoluteError.base(), UnitFamily::Resistance)),
              shown(formatQuantity(conditions.openBeyond.base(), UnitFamily::Resistance))});
}

std::vector<OhmPair> ohmPairs(const Setup& setup, const WiringState& state) {
  PairList pairs(setup);
  const auto shunt = std::find_if(setup.shunts.begin(), setup.shunts.end(),
                                  [&](const Shunt& s) { return s.name == state.shunt; });
  if (shunt == setup.shunts.end()) {
    pairs.addEachTwo(terminalsOf(setup));
    for (const Shunt& each : setup.shunts)
      pairs.add(ResistorEnd{resistorName(each), 1}, ResistorEnd{resistorName(each), 2});
    return pairs.take();
  }
  const ResistorEnd first{resistorName(*shunt), 1}, second{resistorName(*shunt), 2};
  pairs.addEachTwo({first, second, shunt->a, shunt->b});
  pairs.add(Node::PPlus, Node::PMinus);
  pairs.add(Node::SPlus, Node::SMinus);
  return pairs.take();
}

std::vector<std::string> wiringCautions() {
  return {
      say("Switch the excitation off before you wire or hold an ohmmeter to anything, see that it cannot be "
          "switched on meanwhile, and wait until cables and filters have discharged."),
      say("A shunt or an ohmmeter moves the reading of a live channel. Take control and safety channels out "
          "of "
          "service first."),
      say("Disconnect the instrument where the sheet says that it is unplugged: then only are its readings "
          "right, "
          "and the ohmmeter's own voltage cannot harm the input."),
      say("Take the ohmmeter off and every jumper out that the next step does not need before you switch the "
          "excitation on again, and let the bridge warm up before you read."),
      say("This sheet does not replace local codes. What may be done, and by whom, is decided by the "
          "responsible "
          "licensed or authorised person."),
  };
}

std::string connectionText(const Bridge& bridge) {
  const std::string text = hookupText(bridge);
  if (text.empty()) return {};
  return say("Not connected as the template says: {1} All values are those of this connection.", {text});
}

std::vector<std::string> leadFaults(const Bridge& bridge) {
  Bridge faulty = bridge;
  faulty.hookup = {};
  faulty.hookup.broken = bridge.hookup.broken;
  faulty.hookup.touching = bridge.hookup.touching;
  return hookupSentences(faulty);
}

std::string_view tickBox() { return "☐"; }

Table wiringFaultTable(const Setup& setup) {
  Table table{say("What the check found"),
              {{say("Kind")}, {say("What")}, {say("What mends it")}, {say("Severity")}},
              {}};
  for (const WiringFault& fault : wiringFaults(setup)) {
    const bool error = fault.severity == WiringSeverity::Error;
    table.rows.push_back({{std::string(wiringFaultName(fault.kind)), fault.what + ".", fault.mend + ".",
                           error ? say("error") : say("warning")},
                          error ? Verdict::Fail : Verdict::CannotTell});
  }
  return table;
}

Table pinTable(const Setup& setup) {
  Table table{say("Pins"),
              {{say("Connector")}, {say("Pin")}, {say("Leads to")}, {say("That is")}, {say("Checked")}},
              {}};
  for (const Pin& pin : setup.wiring.pins) {
    const auto* node = std::get_if<Node>(&pin.use);
    std::string place;
    if (node)
      place = hasNode(setup.bridge, *node) ? pointName(setup.bridge, *node) : say("not in this bridge");
    table.rows.push_back(
        {{pin.name.connector, pin.name.pin, pinUseName(pin.use), place, std::string(tickBox())}, {}});
  }
  table.note = say("Pins of one connector that follow each other are neighbours.");
  return table;
}

Table jumperTable(const Setup& setup) {
  Table table{say("Jumpers"),
              {{say("Shunt")},
               {say("Resistor")},
               {say("Value")},
               {say("Polarity")},
               {say("Between")},
               {say("Jumper")},
               {say("From")},
               {say("To")},
               {say("Laid")},
               {say("Out")}},
              {}};
  for (std::size_t k = 0; k < setup.shunts.size(); ++k) {
    const Shunt& shunt = setup.shunts[k];
    std::vector<std::string> start{shunt.name, resistorName(shunt),
                                   shown(formatQuantity(shunt.resistance.base(), UnitFamily::Resistance)),
                                   std::string(polarityWord(polarityOf(setup, k))),
                                   say("{1} and {2}", {nodeWords(shunt.a), nodeWords(shunt.b)})};
    if (shunt.jumpers.empty()) {
      start.push_back(isSwitchedInside(setup, shunt) ? say("inside the instrument") : say("none listed"));
      start.resize(table.columns.size());
      table.rows.push_back({std::move(start), {}});
      continue;
    }
    for (std::size_t j = 0; j < shunt.jumpers.size(); ++j) {
      if (j > 0) start.assign(5, "");
      TableRow row{start, {}};
      row.cells.insert(row.cells.end(),
                       {say("{1} of {2}", {std::to_string(j + 1), std::to_string(shunt.jumpers.size())}),
                        pinLabel(setup, shunt.jumpers[j].from), pinLabel(setup, shunt.jumpers[j].to),
                        std::string(tickBox()), std::string(tickBox())});
      table.rows.push_back(std::move(row));
    }
  }
  table.note = say("Polarity is the sign of the change of the output while the shunt alone is closed.");
  return table;
}

Result<Table> ohmTable(const Channel& channel, const WiringState& state,
                       const OhmmeterConditions& conditions) {
  Table table{wiringStateText(channel.setup, state),
              {{say("From"), false, 18},
               {say("To"), false, 18},
               {say("Must read, Ω"), true, 18},
               {say("Tolerance, Ω"), true, 16},
               {say("Measured, Ω"), true, 18},
               {say("In order"), false, 12}},
              {}};
  for (const OhmPair& pair : ohmPairs(channel.setup, state)) {
    const OhmPoint points[] = {pair.from, pair.to};
    const auto expected = ohmExpectations(channel.setup, state, points, conditions);
    if (!expected) return expected.error();
    table.rows.push_back(ohmRow(expected->front(), readingOf(channel, state, pair)));
  }
  return table;
}

Table ohmFaultTable(const Channel& channel, const OhmmeterConditions& conditions, std::size_t most) {
  Table table{say("What fits the readings, best first"),
              {{say("Rank"), true}, {say("Fault")}, {say("Misfit"), true}, {say("Explains all readings")}},
              {}};
  const auto faults = ohmFaults(channel.setup, channel.ohmReadings, conditions, most);
  if (!faults) return table;
  for (const OhmFault& fault : *faults)
    table.rows.push_back({{std::to_string(table.rows.size() + 1), ohmFaultText(fault),
                           formatNumber(fault.misfit, 3), fault.explains ? say("yes") : say("no")},
                          {}});
  table.note = say(
      "Misfit is the mean square of deviations in tolerances, each cut off at 10. Single faults only; two at "
      "once may look like a third.");
  return table;
}

Report wiringSheet(const Document& document, std::size_t index, const OhmmeterConditions& conditions) {
  const Channel& channel = *document.channels[index];
  Report report{say("Wiring and ohmmeter sheet, channel {1}", {channel.name}), {}};
  report.words = currentLanguage();
  report.language = language().code;
  Section head{say("Before you begin"), 2, {}};
  head.blocks.push_back(EntryList{"",
                                  {{say("Article"), document.article},
                                   {say("Site"), document.site},
                                   {say("Bridge"), std::string(templateOf(channel.setup.bridge.type).name)},
                                   {say("Done by, date"), std::string(writingLine.substr(1))}}});
  if (std::string connection = connectionText(channel.setup.bridge); !connection.empty())
    head.blocks.push_back(Caution{std::move(connection)});
  for (std::string& caution : wiringCautions()) head.blocks.push_back(Caution{std::move(caution)});
  report.sections.push_back(std::move(head));
  report.sections.push_back(faultSection(channel.setup));
  Section wiring{say("Wiring"), 2, {}};
  wiring.blocks.push_back(
      Picture{Picture::Kind::Bridge, index, 0, say("Bridge of channel {1} with its shunts", {channel.name})});
  if (!channel.setup.wiring.pins.empty()) wiring.blocks.push_back(pinTable(channel.setup));
  if (!channel.setup.shunts.empty()) wiring.blocks.push_back(jumperTable(channel.setup));
  for (std::size_t shunt = 0; shunt < channel.setup.shunts.size(); ++shunt)
    if (!channel.setup.shunts[shunt].jumpers.empty())
      wiring.blocks.push_back(Picture{Picture::Kind::Wiring, index, 0,
                                      say("Pins with the jumpers of {1}", {channel.setup.shunts[shunt].name}),
                                      shunt});
  report.sections.push_back(std::move(wiring));
  report.sections.push_back(ohmSection(channel, conditions));
  return report;
}

}  // namespace core
