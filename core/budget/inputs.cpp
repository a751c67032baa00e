// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/inputs.h"

#include <algorithm>
#include <cmath>

#include "core/circuit/hookup_words.h"
#include "core/plan/prediction.h"
#include "core/units/language.h"

namespace core {
namespace {

using Kind = InputKind;

constexpr std::string_view cable = "cable";

Uncertainty tolerance(double amount, bool relative) {
  return {.statement = Statement::Tolerance, .amount = amount, .relative = relative};
}

Assumption relativeTolerance(double share, std::string_view reason) {
  return {tolerance(share, true), reason};
}

Assumption absoluteTolerance(double amount, std::string_view reason) {
  return {tolerance(amount, false), reason};
}

Assumption armAssumption(const Bridge& bridge, std::size_t arm) {
  if (isTransducer(bridge))
    return relativeTolerance(0.003, sayName("arms of a transducer as stated, within 0.3 %"));
  if (templateOf(bridge.type).atArticle[arm])
    return relativeTolerance(
        0.003, sayName("gauge resistance by its package, within 0.3 %, not measured installed"));
  return relativeTolerance(0.0005, sayName("completion resistors of ±0.05 % are usual"));
}

Assumption leadAssumption(const Lead& lead) {
  Assumption assumption =
      std::holds_alternative<CopperWire>(lead)
          ? relativeTolerance(0.05, sayName("resistance worked out from length and section, within 5 %"))
          : relativeTolerance(0.1, sayName("resistance of leads as entered, within 10 %"));
  assumption.uncertainty.group = cable;
  return assumption;
}

Assumption gaugeFactorAssumption() {
  return {{.statement = Statement::Expanded, .amount = 0.01, .relative = true, .coverageFactor = 2},
          sayName("gauge factors of a lot are usually stated within 1 %, k = 2")};
}

const Shunt& shuntOf(const Setup& setup, Input input) { return setup.shunts[input.index]; }

/// Whether the shunt's resistor is switched to another place too, where it errs by the same.
bool isShared(const Setup& setup, std::size_t shunt) {
  const Part& part = setup.shunts[shunt].part;
  return !part.id.empty() && std::count_if(setup.shunts.begin(), setup.shunts.end(),
                                           [&](const Shunt& other) { return other.part.id == part.id; }) > 1;
}

bool usesPoisson(const Bridge& bridge) {
  const auto& shares = templateOf(bridge.type).shares;
  return std::any_of(shares.begin(), shares.end(), [](const StrainShare& s) { return s.poisson != 0; });
}

std::string armName(std::size_t arm) { return say("arm {1}", {std::to_string(arm + 1)}); }

void addNetworkInputs(const Setup& setup, std::vector<Input>& list) {
  for (const std::size_t arm : {0, 1, 2, 3}) list.push_back({Kind::Arm, arm});
  bool someLead = false;
  for (const Wire& wire : wiresOf(setup.bridge)) {
    if (isBroken(setup.bridge, wire.role)) continue;
    const auto role = static_cast<std::size_t>(wire.role);
    list.push_back({Kind::Lead, role});
    someLead = someLead || resistanceOf(setup.bridge.leads[role]).base() != 0;
  }
  if (someLead) list.push_back({Kind::LeadTemperature, 0});
  for (std::size_t k = 0; k < setup.shunts.size(); ++k) {
    list.push_back({Kind::Shunt, k});
    if (setup.shunts[k].wires.base() != 0) list.push_back({Kind::ShuntWires, k});
    list.push_back({Kind::ShuntContact, k});
  }
  for (const std::size_t arm : {0, 1, 2, 3}) {
    if (setup.bridge.leaks[arm].across) list.push_back({Kind::LeakAcross, arm});
    if (setup.bridge.leaks[arm].toStructure) list.push_back({Kind::LeakToStructure, arm});
  }
}

void addInstrumentInputs(const Setup& setup, std::vector<Input>& list) {
  const Instrument& instrument = setup.instrument;
  if (instrument.balance.kind != BalanceKind::None) {
    list.push_back({Kind::BalancePotentiometer, 0});
    if (instrument.balance.kind == BalanceKind::Parallel) list.push_back({Kind::BalanceLimiting, 0});
    list.push_back({Kind::BalanceWiper, 0});
  }
  if (instrument.inputResistance) list.push_back({Kind::InputResistance, 0});
  list.push_back({Kind::Gain, 0});
  list.push_back({Kind::Excitation, 0});
  list.push_back({Kind::ZeroDrift, 0});
  list.push_back({Kind::Rounding, 0});
  list.push_back({Kind::Rounding, 1});
}

void addGaugeInputs(const Setup& setup, std::vector<Input>& list) {
  if (isTransducer(setup.bridge)) return list.push_back({Kind::RatedOutput, 0});
  list.push_back({Kind::GaugeFactor, 0});
  list.push_back({Kind::FactorCoefficient, 0});
  list.push_back({Kind::GaugeTemperature, 0});
  if (usesPoisson(setup.bridge)) list.push_back({Kind::PoissonRatio, 0});
}

}  // namespace

std::vector<Input> inputListOf(const Setup& setup) {
  std::vector<Input> list;
  list.reserve(24 + 2 * setup.shunts.size());
  addNetworkInputs(setup, list);
  addInstrumentInputs(setup, list);
  addGaugeInputs(setup, list);
  return list;
}

std::vector<BudgetInput> inputsOf(const Setup& setup) {
  std::vector<BudgetInput> inputs;
  const auto list = inputListOf(setup);
  inputs.reserve(list.size());
  for (const Input input : list) {
    BudgetInput& entry = inputs.emplace_back();
    entry.input = input;
    entry.value = inputValue(setup, input);
    entry.everyStepAnew = input.kind == Kind::Rounding && input.index == 1;
    const auto stated = setup.uncertainties.stated.find(input);
    entry.assumed = stated == setup.uncertainties.stated.end();
    entry.uncertainty = entry.assumed ? assumptionFor(setup, input).uncertainty : stated->second;
    if (input.kind == Kind::Shunt && entry.uncertainty.group.empty() && isShared(setup, input.index))
      entry.uncertainty.group = shuntOf(setup, input).part.id;
    const bool usable = bool(checkUncertainty(entry.uncertainty, {}));
    entry.standard = usable ? standardUncertainty(entry.uncertainty, entry.value) : 0;
  }
  return inputs;
}

Assumption assumptionFor(const Setup& setup, Input input) {
  switch (input.kind) {
    case Kind::Arm:
      return armAssumption(setup.bridge, input.index);
    case Kind::Lead:
      return leadAssumption(setup.bridge.leads[input.index]);
    case Kind::LeadTemperature:
      return absoluteTolerance(5, sayName("leads within 5 K of the temperature stated"));
    case Kind::Shunt:
      return relativeTolerance(1e-4, sayName("calibration resistors of ±0.01 % are usual"));
    case Kind::ShuntWires:
      return relativeTolerance(0.1, sayName("wires of the shunt as entered, within 10 %"));
    case Kind::ShuntContact:
      return absoluteTolerance(0.05, sayName("a closed switch or relay contact within 50 mΩ"));
    case Kind::LeakAcross:
    case Kind::LeakToStructure:
      return relativeTolerance(0.5, sayName("insulation is known to its order only, within 50 %"));
    case Kind::BalancePotentiometer:
      return relativeTolerance(0.05, sayName("potentiometers of ±5 % are usual"));
    case Kind::BalanceLimiting:
      return relativeTolerance(0.01, sayName("resistors of ±1 % are usual"));
    case Kind::BalanceWiper:
      return absoluteTolerance(0.01, sayName("wiper set within 1 % of its travel"));
    case Kind::InputResistance:
      return relativeTolerance(0.2, sayName("input resistance by its data sheet, within 20 %"));
    case Kind::GaugeFactor:
      return gaugeFactorAssumption();
    case Kind::FactorCoefficient:
      return relativeTolerance(0.2, sayName("temperature coefficient by its data sheet, within 20 %"));
    case Kind::GaugeTemperature:
      return absoluteTolerance(2, sayName("gauges within 2 K of the temperature stated"));
    case Kind::PoissonRatio:
      return absoluteTolerance(0.01, sayName("Poisson's ratio of a metal within 0.01"));
    case Kind::RatedOutput:
      return relativeTolerance(0.001, sayName("rated output of a transducer within 0.1 %"));
    case Kind::Gain:
      return absoluteTolerance(0.0005, sayName("gain of a strain amplifier within 0.05 %"));
    case Kind::Excitation:
      return relativeTolerance(0.001, sayName("excitation within 0.1 %"));
    case Kind::ZeroDrift:
      return absoluteTolerance(0.5e-6, sayName("zero of the instrument within 0.5 µV/V during a check"));
    case Kind::Rounding:
      return absoluteTolerance(0, sayName("resolution not stated, taken as fine enough"));
  }
  return {};
}

double inputValue(const Setup& setup, Input input) {
  const Bridge& bridge = setup.bridge;
  const Instrument& instrument = setup.instrument;
  switch (input.kind) {
    case Kind::Arm:
      return bridge.arms[input.index].base();
    case Kind::Lead:
      return resistanceOf(bridge.leads[input.index]).base();
    case Kind::LeadTemperature:
      return bridge.leadWarming.base();
    case Kind::Shunt:
      return shuntOf(setup, input).resistance.base();
    case Kind::ShuntWires:
      return shuntOf(setup, input).wires.base();
    case Kind::ShuntContact:
      return shuntOf(setup, input).contact.base();
    case Kind::LeakAcross:
      return bridge.leaks[input.index].across.value_or(Resistance(0)).base();
    case Kind::LeakToStructure:
      return bridge.leaks[input.index].toStructure.value_or(Resistance(0)).base();
    case Kind::BalancePotentiometer:
      return instrument.balance.potentiometer.base();
    case Kind::BalanceLimiting:
      return instrument.balance.limiting.base();
    case Kind::BalanceWiper:
      return instrument.balance.wiper;
    case Kind::InputResistance:
      return instrument.inputResistance.value_or(Resistance(0)).base();
    case Kind::GaugeFactor:
      return bridge.gauge.factor;
    case Kind::FactorCoefficient:
      return bridge.gauge.factorCoefficient;
    case Kind::GaugeTemperature:
      return bridge.gauge.installed.base();
    case Kind::PoissonRatio:
      return bridge.gauge.poissonRatio;
    case Kind::RatedOutput:
      return bridge.rating.ratedOutput.base();
    case Kind::Gain:
      return 1;
    case Kind::Excitation:
      return instrument.current ? instrument.current->supplied.base() : instrument.excitation.base();
    case Kind::ZeroDrift:
    case Kind::Rounding:
      return 0;
  }
  return 0;
}

std::string inputName(const Setup& setup, Input input) {
  switch (input.kind) {
    case Kind::Arm:
      return armName(input.index);
    case Kind::Lead:
      return say("lead {1}", {leadWord(static_cast<LeadRole>(input.index))});
    case Kind::LeadTemperature:
      return say("temperature of the leads");
    case Kind::Shunt:
      return say("shunt {1}", {shuntOf(setup, input).name});
    case Kind::ShuntWires:
      return say("wires of shunt {1}", {shuntOf(setup, input).name});
    case Kind::ShuntContact:
      return say("switch of shunt {1}", {shuntOf(setup, input).name});
    case Kind::LeakAcross:
      return say("leak over {1}", {armName(input.index)});
    case Kind::LeakToStructure:
      return say("leak to structure of {1}", {armName(input.index)});
    case Kind::BalancePotentiometer:
      return say("balance potentiometer");
    case Kind::BalanceLimiting:
      return say("balance resistor");
    case Kind::BalanceWiper:
      return say("balance wiper");
    case Kind::InputResistance:
      return say("input resistance");
    case Kind::GaugeFactor:
      return say("gauge factor");
    case Kind::FactorCoefficient:
      return say("temperature coefficient of the gauge factor");
    case Kind::GaugeTemperature:
      return say("temperature of the gauges");
    case Kind::PoissonRatio:
      return say("Poisson's ratio");
    case Kind::RatedOutput:
      return say("rated output");
    case Kind::Gain:
      return say("gain of the instrument");
    case Kind::Excitation:
      return setup.instrument.current ? say("excitation current") : say("excitation");
    case Kind::ZeroDrift:
      return say("zero drift of the instrument");
    case Kind::Rounding:
      return input.index == 0 ? say("rounding of the zero reading") : say("rounding of the reading");
  }
  return {};
}

InputUnit inputUnit(const Setup& setup, Input input) {
  switch (input.kind) {
    case Kind::LeadTemperature:
      return {UnitFamily::Named, "K"};
    case Kind::GaugeTemperature:
      return {UnitFamily::Temperature, {}};
    case Kind::FactorCoefficient:
      return {UnitFamily::Named, "1/K"};
    case Kind::BalanceWiper:
    case Kind::GaugeFactor:
    case Kind::PoissonRatio:
    case Kind::Gain:
      return {UnitFamily::Plain, {}};
    case Kind::RatedOutput:
    case Kind::ZeroDrift:
      return {UnitFamily::Output, {}};
    case Kind::Excitation:
      return setup.instrument.current ? InputUnit{UnitFamily::Named, "A"}
                                      : InputUnit{UnitFamily::Voltage, {}};
    case Kind::Rounding:
      return {UnitFamily::Named, readingUnitText(setup.instrument)};
    default:
      return {UnitFamily::Resistance, {}};
  }
}

std::string uncertaintyText(const Setup& setup, Input input, const Uncertainty& uncertainty) {
  const InputUnit unit = inputUnit(setup, input);
  const std::string amount = uncertainty.relative
                                 ? shown(formatQuantity(uncertainty.amount, UnitFamily::Percent, {}, 6))
                                 : shown(formatQuantity(uncertainty.amount, unit.family, unit.named, 6));
  std::string text;
  switch (uncertainty.statement) {
    case Statement::Standard:
      text = "u = " + amount;
      break;
    case Statement::Expanded:
      text = "U = " + amount + ", k = " + shown(formatNumber(uncertainty.coverageFactor, 4));
      break;
    case Statement::Tolerance:
      text = "±" + amount + ", " + std::string(distributionKey(uncertainty.distribution));
      if (uncertainty.distribution == Distribution::Normal)
        text += ", k = " + shown(formatNumber(uncertainty.coverageFactor, 4));
      break;
  }
  if (uncertainty.degreesOfFreedom)
    text = say("{1}, {2} degrees of freedom", {text, shown(formatNumber(*uncertainty.degreesOfFreedom, 6))});
  if (!uncertainty.group.empty()) text = say("{1}, group {2}", {text, uncertainty.group});
  return text;
}

}  // namespace core
