// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/channel_section.h"

#include "core/report/figures.h"
#include "core/report/step_row.h"
#include "core/report/tables.h"
#include "core/units/notation.h"

namespace core {
namespace {

std::string ohms(Resistance resistance) { return formatQuantity(resistance.base(), UnitFamily::Resistance); }

std::string leadOhms(const Lead& lead) {
  if (!std::holds_alternative<CopperWire>(lead)) return ohms(resistanceOf(lead));
  return formatQuantity(resistanceOf(lead).base(), UnitFamily::Resistance, {}, 5);
}

std::string wireText(const Lead& lead) {
  const auto* wire = std::get_if<CopperWire>(&lead);
  if (!wire) return "resistance given";
  return "copper, " + formatQuantity(wire->length.base(), UnitFamily::Length) + " of " +
         formatQuantity(wire->section.base(), UnitFamily::Area, {}, 5) + " at " +
         formatQuantity(wire->temperature.base(), UnitFamily::Temperature);
}

bool usesPoisson(BridgeType type) {
  for (const StrainShare& share : templateOf(type).shares)
    if (share.poisson != 0) return true;
  return false;
}

void addElement(EntryList& list, const Bridge& bridge) {
  if (isTransducer(bridge)) {
    list.entries.push_back(
        {"Rated output", formatQuantity(bridge.rating.ratedOutput.base(), UnitFamily::Output)});
    list.entries.push_back(
        {"Capacity", formatQuantity(bridge.rating.capacity, UnitFamily::Named, bridge.rating.loadUnit)});
    return;
  }
  list.entries.push_back({"Gauge resistance, nominal", ohms(bridge.gauge.nominal)});
  list.entries.push_back({"Gauge factor of the gauge", formatNumber(bridge.gauge.factor, 6)});
  if (usesPoisson(bridge.type))
    list.entries.push_back({"Poisson's ratio", formatNumber(bridge.gauge.poissonRatio, 6)});
}

EntryList bridgeEntries(const Bridge& bridge, const Result<Output>& zero) {
  const BridgeTemplate& shape = templateOf(bridge.type);
  EntryList list{"Bridge", {}};
  addElement(list, bridge);
  for (const std::size_t arm : {0, 1, 2, 3}) {
    const std::string role = shape.shares[arm].active() ? ", active" : ", completion";
    list.entries.push_back({"Arm " + std::to_string(arm + 1) + role, ohms(bridge.arms[arm])});
  }
  if (shape.senseLeads)
    list.entries.push_back({"Excitation sensed", bridge.sixWire ? "at the bridge" : "at the instrument"});
  if (zero) list.entries.push_back({"Output, all shunts open", formatFixed(zero->base() * 1e3, 4) + " mV/V"});
  return list;
}

Table leadTable(const Bridge& bridge) {
  Table table{"Leads", {{"Lead"}, {"Resistance", true}, {"From wire"}}, {}};
  for (const Wire& wire : wiresOf(bridge)) {
    const Lead& lead = bridge.leads[static_cast<std::size_t>(wire.role)];
    table.rows.push_back({{std::string(leadName(wire.role)), leadOhms(lead), wireText(lead)}, {}});
  }
  return table;
}

EntryList instrumentEntries(const Instrument& instrument) {
  EntryList list{"Instrument settings", {{"Readings in", readingUnitText(instrument)}}};
  if (instrument.unit == ReadingUnit::MicrometrePerMetre) {
    list.entries.push_back({"Gauge factor, as set", formatNumber(instrument.gaugeFactor, 6)});
    list.entries.push_back({"Bridge factor, as set", formatNumber(instrument.bridgeFactor, 6)});
  }
  if (instrument.unit == ReadingUnit::Scaled)
    list.entries.push_back({"Scale", formatNumber(instrument.unitsPerMillivoltPerVolt, 10) + " " +
                                         instrument.scaledUnit + " per mV/V"});
  list.entries.push_back({"Excitation", formatQuantity(instrument.excitation.base(), UnitFamily::Voltage)});
  list.entries.push_back(
      {"Input resistance", instrument.inputResistance ? ohms(*instrument.inputResistance) : "infinite"});
  return list;
}

EntryList limitEntries(const Setup& setup) {
  const Limits& limits = setup.limits;
  return {"Limits",
          {{"Deviation, share of expected", formatQuantity(limits.relative, UnitFamily::Percent)},
           {"Never narrower than",
            formatQuantity(limits.least.base(), UnitFamily::Named, readingUnitText(setup.instrument))},
           {"Zero return, share of greatest", formatQuantity(limits.zeroReturn, UnitFamily::Percent)}}};
}

Table shuntTable(const Setup& setup) {
  Table table{"Shunts", {{"Shunt"}, {"Resistance", true}, {"From"}, {"To"}, {"Own wires", true}}, {}};
  for (const Shunt& shunt : setup.shunts)
    table.rows.push_back({{shunt.name, ohms(shunt.resistance), pointName(setup.bridge, shunt.a),
                           pointName(setup.bridge, shunt.b), ohms(shunt.wires)},
                          {}});
  return table;
}

void addPlan(Section& section, const Setup& setup, const SetupPrediction& prediction) {
  if (setup.shunts.empty())
    section.blocks.push_back(Paragraph{"The channel has no shunts.", {}});
  else
    section.blocks.push_back(shuntTable(setup));
  if (!prediction.zero)
    section.blocks.push_back(Caution{"Cannot be predicted: " + prediction.zero.error().text()});
  if (setup.sequence.empty()) {
    section.blocks.push_back(Paragraph{"The channel has no steps.", {}});
    return;
  }
  section.blocks.push_back(planTable(setup, prediction));
  if (!prediction.zero) return;
  for (std::size_t step = 0; step < prediction.steps.size(); ++step)
    if (!prediction.steps[step])
      section.blocks.push_back(Caution{"Step " + std::to_string(step + 1) +
                                       " cannot be predicted: " + prediction.steps[step].error().text()});
}

Section setupSection(const Document& document, std::size_t index, const ChannelEvaluation& evaluation) {
  const Channel& channel = *document.channels[index];
  Section section{"Channel " + channel.name, 1, {}};
  section.blocks.push_back(Paragraph{"Status: " + evaluation.status + ".", evaluation.verdict});
  section.blocks.push_back(
      Picture{Picture::Kind::Bridge, index, 0,
              "Bridge of channel " + channel.name + " with its leads and shunts, all shunts open"});
  const BridgeTemplate& shape = templateOf(channel.setup.bridge.type);
  section.blocks.push_back(Paragraph{std::string(shape.name) + ". " + std::string(shape.about), {}});
  if (!channel.note.empty()) section.blocks.push_back(Paragraph{channel.note, {}});
  section.blocks.push_back(bridgeEntries(channel.setup.bridge, evaluation.prediction.zero));
  section.blocks.push_back(instrumentEntries(channel.setup.instrument));
  section.blocks.push_back(limitEntries(channel.setup));
  section.blocks.push_back(leadTable(channel.setup.bridge));
  addPlan(section, channel.setup, evaluation.prediction);
  return section;
}

std::string setupSentence(const Channel& channel, const Check& check) {
  if (!check.closedWith) return "open: the set-up of the channel as printed above";
  return *check.closedWith == channel.setup
             ? "closed: kept with the check, the same as printed above"
             : "closed: kept with the check; the channel as printed above was changed since";
}

EntryList checkEntries(const Channel& channel, const Check& check) {
  EntryList list{"", {}};
  list.entries.push_back({"Date", check.date.empty() ? "not given" : check.date});
  list.entries.push_back({"Run by", check.person.empty() ? "not given" : check.person});
  if (!check.remark.empty()) list.entries.push_back({"Remark", check.remark});
  list.entries.push_back({"Judged by", setupSentence(channel, check)});
  if (const auto& recording = check.recording) {
    list.entries.push_back({"Recording", recording->path + ", column " + recording->column + ", " +
                                             std::to_string(recording->size_bytes) + " bytes"});
    list.entries.push_back({"Recording SHA-256", recording->sha256, true});
  } else {
    list.entries.push_back({"Recording", "none: readings typed or pasted"});
  }
  return list;
}

bool hasReading(const Check& check) {
  for (const auto& reading : check.readings)
    if (reading) return true;
  return false;
}

/// Why each step that does not pass does not. Not emphasised: the table and the verdict are.
void addReasons(Section& section, const std::vector<StepRow>& rows) {
  for (const StepRow& row : rows) {
    if (row.verdict == Verdict::Pass) continue;
    const std::string step = "Step " + std::to_string(row.step + 1);
    const std::string_view fails = row.verdict == Verdict::Fail ? " fails. " : ". ";
    section.blocks.push_back(Paragraph{step + std::string(fails) + row.reason, {}});
  }
}

Section checkSection(const Document& document, std::size_t index, const ChannelEvaluation& evaluation,
                     std::size_t number) {
  const Channel& channel = *document.channels[index];
  const Check& check = channel.checks[number];
  const CheckEvaluation& judged = evaluation.checks[number];
  Section section{channel.name + ", check " + check.name, 2, {}};
  section.blocks.push_back(Paragraph{judged.assessment.reason, judged.assessment.verdict});
  section.blocks.push_back(checkEntries(channel, check));
  if (judged.assessment.steps.empty()) return section;
  section.blocks.push_back(checkTable(channel, evaluation, number));
  if (const auto& zero = judged.prediction.zero; !zero) {
    section.blocks.push_back(Caution{"Cannot be predicted: " + zero.error().text()});
    return section;
  }
  if (!hasReading(check)) return section;
  addReasons(section, stepRows(channel, evaluation, number));
  section.blocks.push_back(
      Picture{Picture::Kind::Outcome, index, number,
              "Measured change against simulated value, and deviation from expected with "
              "the limits as a band, check " +
                  check.name});
  section.blocks.push_back(EntryList{"Figures of the line and zero", figuresOf(channel, evaluation, number)});
  return section;
}

Section comparisonSection(const Channel& channel, const ChannelEvaluation& evaluation) {
  const std::size_t after = channel.checks.size() - 1, before = after - 1;
  const Comparison comparison = compare(channel, evaluation, before, after);
  Section section{
      channel.name + ", " + channel.checks[before].name + " and " + channel.checks[after].name + " compared",
      2,
      {}};
  const std::string sentence = setupDifferenceSentence(comparison);
  if (!comparison.setupDifferences.empty()) section.blocks.push_back(Caution{sentence});
  section.blocks.push_back(Paragraph{comparison.reason, comparison.verdict});
  if (comparison.setupDifferences.empty()) section.blocks.push_back(Paragraph{sentence, {}});
  if (comparison.steps.empty()) return section;
  section.blocks.push_back(comparisonTable(channel, comparison, before, after));
  std::vector<Entry> figures = figuresOf(channel, evaluation, comparison, before, after);
  const auto each = figures.begin() + 2;  // of the comparison; behind them those of either check
  section.blocks.push_back(EntryList{"Figures compared", {figures.begin(), each}});
  section.blocks.push_back(EntryList{"Figures of each check", {each, figures.end()}});
  return section;
}

}  // namespace

std::vector<Section> channelSections(const Document& document, std::size_t index) {
  const Channel& channel = *document.channels[index];
  const ChannelEvaluation evaluation = evaluate(channel);
  std::vector<Section> sections{setupSection(document, index, evaluation)};
  if (channel.checks.empty())
    sections.front().blocks.push_back(Paragraph{"The channel has not been checked.", Verdict::NotJudged});
  for (std::size_t check = 0; check < channel.checks.size(); ++check)
    sections.push_back(checkSection(document, index, evaluation, check));
  if (channel.checks.size() >= 2) sections.push_back(comparisonSection(channel, evaluation));
  return sections;
}

}  // namespace core
