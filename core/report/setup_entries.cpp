// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/setup_entries.h"

#include <algorithm>

#include "core/circuit/hookup_words.h"
#include "core/report/record_words.h"
#include "core/units/language.h"
#include "core/units/notation.h"

namespace core {
namespace {

std::string quantity(double base, UnitFamily family, std::string_view named = {}, int digits = 12) {
  return shown(formatQuantity(base, family, named, digits));
}

std::string ohms(Resistance resistance) { return quantity(resistance.base(), UnitFamily::Resistance); }

std::string leadOhms(const Lead& lead) {
  if (!std::holds_alternative<CopperWire>(lead)) return ohms(resistanceOf(lead));
  return quantity(resistanceOf(lead).base(), UnitFamily::Resistance, {}, 5);
}

std::string celsius(Temperature temperature) { return quantity(temperature.base(), UnitFamily::Temperature); }

std::string percent(double share, int digits = 12) {
  return quantity(share, UnitFamily::Percent, {}, digits);
}

std::string wireText(const Lead& lead) {
  const auto* wire = std::get_if<CopperWire>(&lead);
  if (!wire) return say("resistance given");
  return say("copper, {1} of {2} at {3}",
             {quantity(wire->length.base(), UnitFamily::Length),
              quantity(wire->section.base(), UnitFamily::Area, {}, 5), celsius(wire->temperature)});
}

bool usesPoisson(BridgeType type) {
  for (const StrainShare& share : templateOf(type).shares)
    if (share.poisson != 0) return true;
  return false;
}

void addGaugeFactor(EntryList& list, const Gauge& gauge) {
  const std::string factor = shown(formatNumber(gauge.factor, 6));
  list.entries.push_back({say("Gauge factor of the gauge"), factor});
  if (gauge.factorCoefficient == 0) return;
  list.entries.back().value = say("{1} at {2}", {factor, celsius(gauge.factorAt)});
  list.entries.push_back(
      {say("Its temperature coefficient"), say("{1} per K", {percent(gauge.factorCoefficient, 6)})});
  list.entries.push_back(
      {say("Gauge factor at {1}", {celsius(gauge.installed)}), shown(formatNumber(gaugeFactorOf(gauge), 6))});
}

void addElement(EntryList& list, const Bridge& bridge) {
  if (isTransducer(bridge)) {
    list.entries.push_back(
        {say("Rated output"), quantity(bridge.rating.ratedOutput.base(), UnitFamily::Output)});
    list.entries.push_back(
        {say("Capacity"), quantity(bridge.rating.capacity, UnitFamily::Named, bridge.rating.loadUnit)});
    return;
  }
  list.entries.push_back({say("Gauge resistance, nominal"), ohms(bridge.gauge.nominal)});
  addGaugeFactor(list, bridge.gauge);
  if (usesPoisson(bridge.type))
    list.entries.push_back({say("Poisson's ratio"), shown(formatNumber(bridge.gauge.poissonRatio, 6))});
  if (const auto& area = bridge.gauge.grid.area)
    list.entries.push_back({say("Grid of a gauge"), quantity(area->base(), UnitFamily::Area, {}, 6)});
}

void addLeaks(EntryList& list, const Setup& setup) {
  bool toStructure = false;
  for (const std::size_t arm : {0, 1, 2, 3}) {
    const Leak& leak = setup.bridge.leaks[arm];
    const std::string number = std::to_string(arm + 1);
    if (leak.across) list.entries.push_back({say("Leak over arm {1}", {number}), ohms(*leak.across)});
    if (leak.toStructure)
      list.entries.push_back(
          {say("Leak to structure of arm {1}", {number}),
           say("{1} at {2} of the grid", {ohms(*leak.toStructure), percent(leak.place, 6)})});
    toStructure = toStructure || leak.toStructure;
  }
  const Grounding grounding = setup.instrument.grounding;
  if (grounding != Grounding::Floating)
    list.entries.push_back({say("Structure"), say("connected to {1}", {groundingKey(grounding)})});
  else if (toStructure)
    list.entries.push_back({say("Structure"), say("floating")});
}

void addUnit(EntryList& list, const Instrument& instrument) {
  if (instrument.unit == ReadingUnit::MicrometrePerMetre) {
    list.entries.push_back({say("Gauge factor, as set"), shown(formatNumber(instrument.gaugeFactor, 6))});
    list.entries.push_back({say("Bridge factor, as set"), shown(formatNumber(instrument.bridgeFactor, 6))});
  }
  if (instrument.unit == ReadingUnit::Scaled)
    list.entries.push_back(
        {say("Scale"), say("{1} {2} per mV/V", {shown(formatNumber(instrument.unitsPerMillivoltPerVolt, 10)),
                                                instrument.scaledUnit})});
}

std::string excitationText(const Instrument& instrument) {
  if (!instrument.current) return quantity(instrument.excitation.base(), UnitFamily::Voltage);
  return quantity(1e3 * instrument.current->supplied.base(), UnitFamily::Named, "mA") + ", " +
         say("constant");
}

std::string hertz(Frequency frequency) { return quantity(frequency.base(), UnitFamily::Frequency); }

std::string filterText(const Filter& filter) {
  switch (filter.kind) {
    case FilterKind::None:
      break;
    case FilterKind::Butterworth:
      return say("Butterworth of order {1}, {2}", {std::to_string(filter.order), hertz(filter.cutoff)});
    case FilterKind::Bessel:
      return say("Bessel of order {1}, {2}", {std::to_string(filter.order), hertz(filter.cutoff)});
    case FilterKind::MovingAverage:
      return say("moving average over {1}", {quantity(filter.window.base(), UnitFamily::Duration)});
  }
  return say("none");
}

/// What the instrument does to excitation and reading beyond dividing one by the other.
void addWorking(EntryList& list, const Instrument& instrument) {
  if (instrument.current)
    list.entries.push_back(
        {say("Constant current"), say("the instrument reckons with {1} from a bridge of {2}",
                                      {quantity(nominalExcitation(instrument).base(), UnitFamily::Voltage),
                                       ohms(instrument.current->nominal)})});
  if (!instrument.ratiometric)
    list.entries.push_back(
        {say("Not ratiometric"), say("an error of the excitation is an error of the reading")});
  if (instrument.unit != ReadingUnit::MicrometrePerMetre) return;
  if (instrument.linearisation == Linearisation::BeforeZero)
    list.entries.push_back({say("Linearisation"), say("of each output, before the zero is subtracted")});
  if (instrument.linearisation == Linearisation::AfterZero)
    list.entries.push_back({say("Linearisation"), say("of the change from zero")});
}

void addBalance(EntryList& list, const Balance& balance) {
  const std::string wiper = percent(balance.wiper, 6);
  if (balance.kind == BalanceKind::Parallel)
    list.entries.push_back(
        {say("Balance"), say("{1} over the excitation, wiper at {2} from P- through {3} to S+",
                             {ohms(balance.potentiometer), wiper, ohms(balance.limiting)})});
  if (balance.kind == BalanceKind::Series)
    list.entries.push_back({say("Balance"), say("{1} between arms 3 and 4, wiper to S+, {2} in arm 3",
                                                {ohms(balance.potentiometer), wiper})});
}

}  // namespace

EntryList bridgeEntries(const Bridge& bridge, const Result<Output>& zero) {
  const BridgeTemplate& shape = templateOf(bridge.type);
  EntryList list{say("Bridge"), {}};
  addElement(list, bridge);
  for (const std::size_t arm : {0, 1, 2, 3}) {
    const std::string number = std::to_string(arm + 1);
    list.entries.push_back(
        {shape.shares[arm].active() ? say("Arm {1}, active", {number}) : say("Arm {1}, completion", {number}),
         ohms(bridge.arms[arm])});
  }
  if (shape.senseLeads)
    list.entries.push_back(
        {say("Excitation sensed"), bridge.sixWire ? say("at the bridge") : say("at the instrument")});
  for (const std::string& sentence : hookupSentences(bridge))
    list.entries.push_back({say("Not as the template says"), sentence});
  if (zero)
    list.entries.push_back(
        {say("Output, all shunts open"), shown(formatFixed(zero->base() * 1e3, 4)) + " mV/V"});
  return list;
}

EntryList instrumentEntries(const Instrument& instrument) {
  EntryList list{say("Instrument settings"), {{say("Readings in"), readingUnitText(instrument)}}};
  addUnit(list, instrument);
  list.entries.push_back({say("Excitation"), excitationText(instrument)});
  if (instrument.range)
    list.entries.push_back({say("Range"), "±" + quantity(instrument.range->base(), UnitFamily::Output)});
  list.entries.push_back({say("Input resistance"),
                          instrument.inputResistance ? ohms(*instrument.inputResistance) : say("infinite")});
  return list;
}

EntryList acquisitionEntries(const Acquisition& acquisition) {
  EntryList list{say("Acquisition"), {}};
  if (!acquisition.sampleRate && acquisition.filter.kind == FilterKind::None) return list;
  list.entries.push_back(
      {say("Sample rate"), acquisition.sampleRate ? hertz(*acquisition.sampleRate) : say("not given")});
  list.entries.push_back({say("Filter"), filterText(acquisition.filter)});
  list.entries.push_back(
      {say("Mains hum averaged out"), acquisition.mains ? hertz(*acquisition.mains) : say("none")});
  list.entries.push_back({say("Settled to"), say("{1} of a step", {percent(acquisition.settledTo, 6)})});
  return list;
}

EntryList effectEntries(const Setup& setup) {
  EntryList list{say("Effects in the circuit"), {}};
  if (setup.bridge.leadWarming != Warming(0))
    list.entries.push_back(
        {say("Leads warmer than stated"),
         say("by {1}", {quantity(setup.bridge.leadWarming.base(), UnitFamily::Named, "K")})});
  addLeaks(list, setup);
  addBalance(list, setup.instrument.balance);
  addWorking(list, setup.instrument);
  return list;
}

EntryList limitEntries(const Setup& setup) {
  const Limits& limits = setup.limits;
  EntryList list{say("Limits"),
                 {{say("Deviation, share of expected"), percent(limits.relative)},
                  {say("Never narrower than"),
                   quantity(limits.least.base(), UnitFamily::Named, readingUnitText(setup.instrument))},
                  {say("Zero return, share of greatest"), percent(limits.zeroReturn)}}};
  list.entries.push_back({say("Change between checks, share of expected"), percent(limits.change)});
  list.entries.push_back(
      {say("Change of zero between checks, share of greatest"), percent(limits.zeroChange)});
  for (const auto& [kind, share] : limits.merits)
    list.entries.push_back({meritHeading(kind), percent(share)});
  list.entries.push_back(
      {say("Nonlinearity measured from"), say("the {1}", {referenceLineName(limits.linearityFrom)})});
  return list;
}

Table leadTable(const Bridge& bridge) {
  Table table{say("Leads"), {{say("Lead")}, {say("Resistance"), true}, {say("From wire")}}, {}};
  for (const Wire& wire : wiresOf(bridge)) {
    const Lead& lead = bridge.leads[static_cast<std::size_t>(wire.role)];
    table.rows.push_back({{leadWord(wire.role), leadOhms(lead), wireText(lead)}, {}});
  }
  return table;
}

Table shuntTable(const Setup& setup) {
  const bool contacts = std::any_of(setup.shunts.begin(), setup.shunts.end(),
                                    [](const Shunt& shunt) { return shunt.contact != Resistance(0); });
  Table table{
      say("Shunts"),
      {{say("Shunt")}, {say("Resistance"), true}, {say("From")}, {say("To")}, {say("Own wires"), true}},
      {}};
  const bool parts = std::any_of(setup.shunts.begin(), setup.shunts.end(),
                                 [](const Shunt& shunt) { return !shunt.part.id.empty(); });
  if (contacts) table.columns.push_back({say("Switch"), true});
  if (parts) table.columns.insert(table.columns.end(), {{say("Resistor")}, {say("Calibration due")}});
  for (const Shunt& shunt : setup.shunts) {
    TableRow row{{shunt.name, ohms(shunt.resistance), pointName(setup.bridge, shunt.a),
                  pointName(setup.bridge, shunt.b), ohms(shunt.wires)},
                 {}};
    if (contacts) row.cells.push_back(ohms(shunt.contact));
    if (parts) row.cells.push_back(shunt.part.id);
    if (parts) row.cells.push_back(shunt.part.due ? shown(*shunt.part.due) : std::string());
    table.rows.push_back(std::move(row));
  }
  return table;
}

}  // namespace core
