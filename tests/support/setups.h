// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <string>

#include "core/plan/prediction.h"

namespace test {

/// A bridge of `type` with four equal arms, no leads, and an instrument set to its gauges.
inline core::Setup equalArms(core::BridgeType type, core::Resistance arm, double factor = 2.0,
                             double poissonRatio = 0.3) {
  core::Setup setup;
  setup.bridge.type = type;
  setup.bridge.gauge = {arm, factor, poissonRatio};
  setup.bridge.arms.fill(arm);
  setup.bridge.leads.fill(core::Resistance(0));
  setup.instrument.gaugeFactor = factor;
  setup.instrument.bridgeFactor = core::templateOf(type).bridgeFactor(poissonRatio);
  return setup;
}

inline core::Setup withLeads(core::Setup setup, core::Resistance each) {
  setup.bridge.leads.fill(each);
  return setup;
}

/// `setup` with one more shunt and one more step that closes it alone.
inline core::Setup withShunt(core::Setup setup, core::Resistance shunt, core::Node a, core::Node b) {
  const std::string name = "R" + std::to_string(setup.shunts.size() + 1);
  setup.shunts.push_back({name, shunt, a, b});
  setup.sequence.push_back({name, {setup.shunts.size() - 1}});
  return setup;
}

/// As above, right across `arm`, counted from 1.
inline core::Setup withShuntOnArm(core::Setup setup, core::Resistance shunt, std::size_t arm) {
  return withShunt(std::move(setup), shunt, core::armBegin(arm - 1), core::armEnd(arm - 1));
}

/// The prediction of the last step; a step that fails fails the test and gives zeros.
inline core::Prediction lastStep(const core::Setup& setup) {
  const auto predicted = core::predict(setup);
  const auto& last = predicted.steps.back();
  EXPECT_TRUE(last) << (last ? "" : last.error().text());
  return last ? *last : core::Prediction{};
}

/// Output of the bridge at `stimulus`, all shunts open.
inline core::Output outputAt(const core::Setup& setup, core::Stimulus stimulus) {
  auto circuit = core::BridgeCircuit::make(setup.bridge, setup.instrument, {});
  EXPECT_TRUE(circuit) << (circuit ? "" : circuit.error().text());
  if (!circuit) return {};
  circuit->setStimulus(stimulus);
  const auto output = circuit->solveOutput();
  EXPECT_TRUE(output) << (output ? "" : output.error().text());
  return output ? *output : core::Output{};
}

}  // namespace test
