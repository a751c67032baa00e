// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/setup_entries.h"

#include <algorithm>
#include <cctype>

#include "core/circuit/hookup_words.h"
#include "core/units/notation.h"

namespace core {
namespace {

std::string ohms(Resistance resistance) { return formatQuantity(resistance.base(), UnitFamily::Resistance); }

std::string leadOhms(const Lead& lead) {
  if (!std::holds_alternative<CopperWire>(lead)) return ohms(resistanceOf(lead));
  return formatQuantity(resistanceOf(lead).base(), UnitFamily::Resistance, {}, 5);
}

std::string celsius(Temperature temperature) {
  return formatQuantity(temperature.base(), UnitFamily::Temperature);
}

std::string percent(double share, int digits = 12) {
  return formatQuantity(share, UnitFamily::Percent, {}, digits);
}

std::string wireText(const Lead& lead) {
  const auto* wire = std::get_if<CopperWire>(&lead);
  if (!wire) return "resistance given";
  return "copper, " + formatQuantity(wire->length.base(), UnitFamily::Length) + " of " +
         formatQuantity(wire->section.base(), UnitFamily::Area, {}, 5) + " at " + celsius(wire->temperature);
}

bool usesPoisson(BridgeType type) {
  for (const StrainShare& share : templateOf(type).shares)
    if (share.poisson != 0) return true;
  return false;
}

void addGaugeFactor(EntryList& list, const Gauge& gauge) {
  list.entries.push_back({"Gauge factor of the gauge", formatNumber(gauge.factor, 6)});
  if (gauge.factorCoefficient == 0) return;
  list.entries.back().value += " at " + celsius(gauge.factorAt);
  list.entries.push_back({"Its temperature coefficient", percent(gauge.factorCoefficient, 6) + " per K"});
  list.entries.push_back(
      {"Gauge factor at " + celsius(gauge.installed), formatNumber(gaugeFactorOf(gauge), 6)});
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
  addGaugeFactor(list, bridge.gauge);
  if (usesPoisson(bridge.type))
    list.entries.push_back({"Poisson's ratio", formatNumber(bridge.gauge.poissonRatio, 6)});
  if (const auto& area = bridge.gauge.grid.area)
    list.entries.push_back({"Grid of a gauge", formatQuantity(area->base(), UnitFamily::Area, {}, 6)});
}

void addLeaks(EntryList& list, const Setup& setup) {
  bool toStructure = false;
  for (const std::size_t arm : {0, 1, 2, 3}) {
    const Leak& leak = setup.bridge.leaks[arm];
    const std::string name = "arm " + std::to_string(arm + 1);
    if (leak.across) list.entries.push_back({"Leak over " + name, ohms(*leak.across)});
    if (leak.toStructure)
      list.entries.push_back({"Leak to structure of " + name,
                              ohms(*leak.toStructure) + " at " + percent(leak.place, 6) + " of the grid"});
    toStructure = toStructure || leak.toStructure;
  }
  const Grounding grounding = setup.instrument.grounding;
  if (grounding != Grounding::Floating)
    list.entries.push_back({"Structure", "connected to " + std::string(groundingKey(grounding))});
  else if (toStructure)
    list.entries.push_back({"Structure", "floating"});
}

void addUnit(EntryList& list, const Instrument& instrument) {
  if (instrument.unit == ReadingUnit::MicrometrePerMetre) {
    list.entries.push_back({"Gauge factor, as set", formatNumber(instrument.gaugeFactor, 6)});
    list.entries.push_back({"Bridge factor, as set", formatNumber(instrument.bridgeFactor, 6)});
  }
  if (instrument.unit == ReadingUnit::Scaled)
    list.entries.push_back({"Scale", formatNumber(instrument.unitsPerMillivoltPerVolt, 10) + " " +
                                         instrument.scaledUnit + " per mV/V"});
}

std::string excitationText(const Instrument& instrument) {
  if (!instrument.current) return formatQuantity(instrument.excitation.base(), UnitFamily::Voltage);
  return formatQuantity(1e3 * instrument.current->supplied.base(), UnitFamily::Named, "mA") + ", constant";
}

std::string hertz(Frequency frequency) { return formatQuantity(frequency.base(), UnitFamily::Frequency); }

std::string filterText(const Filter& filter) {
  const std::string order = " of order " + std::to_string(filter.order) + ", " + hertz(filter.cutoff);
  switch (filter.kind) {
    case FilterKind::None:
      break;
    case FilterKind::Butterworth:
      return "Butterworth" + order;
    case FilterKind::Bessel:
      return "Bessel" + order;
    case FilterKind::MovingAverage:
      return "moving average over " + formatQuantity(filter.window.base(), UnitFamily::Duration);
  }
  return "none";
}

/// What the instrument does to excitation and reading beyond dividing one by the other.
void addWorking(EntryList& list, const Instrument& instrument) {
  if (instrument.current)
    list.entries.push_back(
        {"Constant current", "the instrument reckons with " +
                                 formatQuantity(nominalExcitation(instrument).base(), UnitFamily::Voltage) +
                                 " from a bridge of " + ohms(instrument.current->nominal)});
  if (!instrument.ratiometric)
    list.entries.push_back({"Not ratiometric", "an error of the excitation is an error of the reading"});
  if (instrument.unit != ReadingUnit::MicrometrePerMetre) return;
  if (instrument.linearisation == Linearisation::BeforeZero)
    list.entries.push_back({"Linearisation", "of each output, before the zero is subtracted"});
  if (instrument.linearisation == Linearisation::AfterZero)
    list.entries.push_back({"Linearisation", "of the change from zero"});
}

void addBalance(EntryList& list, const Balance& balance) {
  const std::string wiper = percent(balance.wiper, 6);
  if (balance.kind == BalanceKind::Parallel)
    list.entries.push_back({"Balance", ohms(balance.potentiometer) + " over the excitation, wiper at " +
                                           wiper + " from P- through " + ohms(balance.limiting) + " to S+"});
  if (balance.kind == BalanceKind::Series)
    list.entries.push_back({"Balance", ohms(balance.potentiometer) + " between arms 3 and 4, wiper to S+, " +
                                           wiper + " in arm 3"});
}

}  // namespace

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
  for (const std::string& sentence : hookupSentences(bridge))
    list.entries.push_back({"Not as the template says", sentence});
  if (zero) list.entries.push_back({"Output, all shunts open", formatFixed(zero->base() * 1e3, 4) + " mV/V"});
  return list;
}

EntryList instrumentEntries(const Instrument& instrument) {
  EntryList list{"Instrument settings", {{"Readings in", readingUnitText(instrument)}}};
  addUnit(list, instrument);
  list.entries.push_back({"Excitation", excitationText(instrument)});
  if (instrument.range)
    list.entries.push_back({"Range", "±" + formatQuantity(instrument.range->base(), UnitFamily::Output)});
  list.entries.push_back(
      {"Input resistance", instrument.inputResistance ? ohms(*instrument.inputResistance) : "infinite"});
  return list;
}

EntryList acquisitionEntries(const Acquisition& acquisition) {
  EntryList list{"Acquisition", {}};
  if (!acquisition.sampleRate && acquisition.filter.kind == FilterKind::None) return list;
  list.entries.push_back(
      {"Sample rate", acquisition.sampleRate ? hertz(*acquisition.sampleRate) : "not given"});
  list.entries.push_back({"Filter", filterText(acquisition.filter)});
  list.entries.push_back({"Mains hum averaged out", acquisition.mains ? hertz(*acquisition.mains) : "none"});
  list.entries.push_back({"Settled to", percent(acquisition.settledTo, 6) + " of a step"});
  return list;
}

EntryList effectEntries(const Setup& setup) {
  EntryList list{"Effects in the circuit", {}};
  if (setup.bridge.leadWarming != Warming(0))
    list.entries.push_back({"Leads warmer than stated",
                            "by " + formatQuantity(setup.bridge.leadWarming.base(), UnitFamily::Named, "K")});
  addLeaks(list, setup);
  addBalance(list, setup.instrument.balance);
  addWorking(list, setup.instrument);
  return list;
}

EntryList limitEntries(const Setup& setup) {
  const Limits& limits = setup.limits;
  EntryList list{"Limits",
                 {{"Deviation, share of expected", percent(limits.relative)},
                  {"Never narrower than",
                   formatQuantity(limits.least.base(), UnitFamily::Named, readingUnitText(setup.instrument))},
                  {"Zero return, share of greatest", percent(limits.zeroReturn)}}};
  for (const auto& [kind, share] : limits.merits) {
    std::string name(meritKindName(kind));
    name[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(name[0])));
    list.entries.push_back({std::move(name), percent(share)});
  }
  list.entries.push_back(
      {"Nonlinearity measured from", "the " + std::string(referenceLineName(limits.linearityFrom))});
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

Table shuntTable(const Setup& setup) {
  const bool contacts = std::any_of(setup.shunts.begin(), setup.shunts.end(),
                                    [](const Shunt& shunt) { return shunt.contact != Resistance(0); });
  Table table{"Shunts", {{"Shunt"}, {"Resistance", true}, {"From"}, {"To"}, {"Own wires", true}}, {}};
  const bool parts = std::any_of(setup.shunts.begin(), setup.shunts.end(),
                                 [](const Shunt& shunt) { return !shunt.part.id.empty(); });
  if (contacts) table.columns.push_back({"Switch", true});
  if (parts) table.columns.insert(table.columns.end(), {{"Resistor"}, {"Calibration due"}});
  for (const Shunt& shunt : setup.shunts) {
    TableRow row{{shunt.name, ohms(shunt.resistance), pointName(setup.bridge, shunt.a),
                  pointName(setup.bridge, shunt.b), ohms(shunt.wires)},
                 {}};
    if (contacts) row.cells.push_back(ohms(shunt.contact));
    if (parts) row.cells.push_back(shunt.part.id);
    if (parts) row.cells.push_back(shunt.part.due ? dateText(*shunt.part.due) : "");
    table.rows.push_back(std::move(row));
  }
  return table;
}

}  // namespace core
