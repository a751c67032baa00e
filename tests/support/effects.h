// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cassert>
#include <random>

#include "core/budget/inputs.h"
#include "tests/support/setups.h"

namespace test {

/// `setup` with the number that `input` stands for changed to `value`. Of instrument errors, which are not
/// members of a set-up, there is nothing to change.
inline core::Setup withInputValue(core::Setup setup, core::Input input, double value) {
  using Kind = core::InputKind;
  core::Bridge& bridge = setup.bridge;
  core::Balance& balance = setup.instrument.balance;
  switch (input.kind) {
    case Kind::Arm:
      bridge.arms[input.index] = core::Resistance(value);
      break;
    case Kind::Lead:
      bridge.leads[input.index] = core::Resistance(value);
      break;
    case Kind::LeadTemperature:
      bridge.leadWarming = core::Warming(value);
      break;
    case Kind::Shunt:
      setup.shunts[input.index].resistance = core::Resistance(value);
      break;
    case Kind::ShuntWires:
      setup.shunts[input.index].wires = core::Resistance(value);
      break;
    case Kind::ShuntContact:
      setup.shunts[input.index].contact = core::Resistance(value);
      break;
    case Kind::LeakAcross:
      bridge.leaks[input.index].across = core::Resistance(value);
      break;
    case Kind::LeakToStructure:
      bridge.leaks[input.index].toStructure = core::Resistance(value);
      break;
    case Kind::BalancePotentiometer:
      balance.potentiometer = core::Resistance(value);
      break;
    case Kind::BalanceLimiting:
      balance.limiting = core::Resistance(value);
      break;
    case Kind::BalanceWiper:
      balance.wiper = value;
      break;
    case Kind::InputResistance:
      setup.instrument.inputResistance = core::Resistance(value);
      break;
    case Kind::GaugeFactor:
      bridge.gauge.factor = value;
      break;
    case Kind::FactorCoefficient:
      bridge.gauge.factorCoefficient = value;
      break;
    case Kind::GaugeTemperature:
      bridge.gauge.installed = core::Temperature(value);
      break;
    case Kind::PoissonRatio:
      bridge.gauge.poissonRatio = value;
      break;
    case Kind::RatedOutput:
      bridge.rating.ratedOutput = core::Output(value);
      break;
    case Kind::Gain:
    case Kind::Excitation:
    case Kind::ZeroDrift:
    case Kind::Rounding:
      assert(false);
  }
  return setup;
}

/// Whether the input is an error of the instrument, which moves the reading without moving the bridge.
inline bool isInstrumentError(core::InputKind kind) {
  using Kind = core::InputKind;
  return kind == Kind::Gain || kind == Kind::Excitation || kind == Kind::ZeroDrift || kind == Kind::Rounding;
}

/// A bridge of `type` as it may stand on a test bed: unequal arms, leads, leaks, a balance network, a finite
/// input, wires and switches, shunts over arms and lead ends, several closed at once. Which effects are on
/// follows `variant`, so that all of them meet.
inline core::Setup withEffects(core::BridgeType type, unsigned variant) {
  std::mt19937_64 random(variant * 100 + static_cast<unsigned>(type));
  const auto between = [&](double low, double high) {
    return std::uniform_real_distribution<double>(low, high)(random);
  };
  const auto on = [&](unsigned bit) { return (variant >> bit) % 2 == 1; };
  core::Setup setup = equalArms(type, core::Resistance(350), 2.05, 0.28);
  for (core::Resistance& arm : setup.bridge.arms) arm = between(0.995, 1.005) * arm;
  for (core::Lead& lead : setup.bridge.leads) lead = core::Resistance(between(0.5, 8));
  setup.bridge.leadWarming = core::Warming(between(-20, 40));
  setup.bridge.sixWire = on(0);
  setup.bridge.gauge.factorCoefficient = 9e-5;
  setup.bridge.gauge.installed = core::Temperature(between(-40, 80));
  setup.instrument.inputResistance = core::Resistance(between(1e5, 1e6));
  if (on(1)) setup.bridge.leaks[0].across = core::Resistance(5e6);
  if (on(1)) setup.bridge.leaks[1].toStructure = core::Resistance(2e6);
  if (on(2)) setup.bridge.leaks[0].toStructure = core::Resistance(3e6);
  if (on(2)) setup.bridge.leaks[0].place = 0.25;
  setup.instrument.grounding = on(0) ? core::Grounding::PMinus : core::Grounding::Floating;
  setup.instrument.balance.kind = static_cast<core::BalanceKind>(variant % 3);
  setup.instrument.balance.wiper = 0.45;
  if (setup.instrument.balance.kind == core::BalanceKind::Series)
    setup.instrument.balance.potentiometer = core::Resistance(4);
  if (on(3)) setup.instrument.current = core::CurrentSource{core::Current(0.01), core::Resistance(351)};
  setup.instrument.linearisation = static_cast<core::Linearisation>(variant / 2 % 3);
  for (const std::size_t arm : {1, 2, 3, 4})
    setup = withShuntOnArm(std::move(setup), core::Resistance(between(5e4, 2e5)), arm);
  setup = withShunt(std::move(setup), core::Resistance(1e5), core::Node::PPlus, core::Node::SMinus);
  for (core::Shunt& shunt : setup.shunts) {
    shunt.wires = core::Resistance(between(0.1, 3));
    shunt.contact = core::Resistance(0.05);
  }
  setup.sequence.push_back({"two", {0, 3}});
  setup.sequence.insert(setup.sequence.begin(), {"zero", {}});
  return setup;
}

}  // namespace test
