// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <utility>
#include <vector>

#include "core/budget/budget.h"
#include "core/diagnose/refit.h"
#include "tests/support/setups.h"

namespace test {

/// A check that reads what is expected, each reading with a standard uncertainty of its own, and all that a
/// diagnosis holds it against. Other objects point into it, so that it stays where it is made.
class HeldCheck {
 public:
  HeldCheck(core::Setup held, double ownStandard)
      : setup(std::move(held)), prediction(core::predict(setup)), budget(core::budgetOf(setup, prediction)) {
    for (const auto& step : prediction.steps) {
      EXPECT_TRUE(step) << (step ? "" : step.error().text());
      if (step) check.readings.push_back(core::Measured{step->reading, core::Reading(ownStandard), {}, {}});
    }
  }
  HeldCheck(const HeldCheck&) = delete;
  HeldCheck& operator=(const HeldCheck&) = delete;

  core::DiagnosisGround ground() const {
    auto ground = core::diagnosisGround(setup, prediction, budget, check);
    EXPECT_TRUE(ground) << (ground ? "" : ground.error().text());
    return *std::move(ground);
  }

  core::Setup setup;
  core::SetupPrediction prediction;
  core::Budget budget;
  core::Check check;
};

/// `setup` with every input known exactly, so that only what a test states plays a part.
inline core::Setup knownExactly(core::Setup setup) {
  for (const core::Input& input : core::inputListOf(setup))
    setup.uncertainties.stated[input] = {.statement = core::Statement::Standard, .amount = 0};
  return setup;
}

/// zero, +1, +2, +3, zero, -1, -2, -3, zero with three resistors each over `up` and over `down` (arms counted
/// from 1).
inline core::Setup nineSteps(core::Setup setup, std::size_t up, std::size_t down) {
  setup.sequence = {{"zero", {}}};
  for (const std::size_t arm : {up, down}) {
    for (const double ohm : {174650.0, 87150.0, 58000.0})
      setup = withShuntOnArm(std::move(setup), core::Resistance(ohm), arm);
    setup.sequence.push_back({"zero", {}});
  }
  return setup;
}

/// A fault whose size was fitted.
inline core::Refit fitted(core::CauseKind kind, double size, double standard, std::size_t index = 0) {
  core::Refit refit;
  refit.fault = {kind, index, 0, size};
  refit.standard = standard;
  refit.parameters = 2;
  return refit;
}

}  // namespace test
