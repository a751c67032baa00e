// SPDX-License-Identifier: GPL-3.0-or-later
// Uncertainties of bridges that are not connected as their template says.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/budget/trials.h"
#include "core/circuit/hookup_words.h"
#include "tests/support/digits.h"
#include "tests/support/effects.h"

using namespace core;
using enum LeadRole;

namespace {

/// Every statement of `setup` a hundred-thousandth of its input's own size and normal, so that the linear
/// budget holds.
core::Setup narrow(core::Setup setup) {
  for (const BudgetInput& entry : inputsOf(setup))
    setup.uncertainties.stated[entry.input] = {
        .statement = Statement::Standard, .amount = 1e-5 * (entry.value == 0 ? 1e-6 : std::abs(entry.value))};
  return setup;
}

Budget budgetFor(const core::Setup& setup) { return budgetOf(setup, predict(setup)); }

std::vector<Hookup> solvableHookups() {
  Hookup touching{.touching = {{ExcitationPlus, SignalMinus}}};  // arm 1 is shorted, the others act
  Hookup exchanged{.excitationReversed = true, .exchanged = {{ExcitationPlus, ExcitationMinus}}};
  return {{.signalReversed = true},
          {.excitationReversed = true, .gaugesReversed = true},
          {.gaugesReversed = true},
          exchanged,
          touching};
}

class HookupOfEveryTemplate : public testing::TestWithParam<int> {};

}  // namespace

TEST_P(HookupOfEveryTemplate, TrialsAgreeWithTheLinearBudget) {
  // Independent of each other: the trials solve by a solver of their own and work the simulated value out by
  // secants, the budget takes derivatives.
  constexpr std::size_t count = 5000;
  std::size_t compared = 0;
  for (const Hookup& hookup : solvableHookups()) {
    core::Setup setup = test::withEffects(static_cast<BridgeType>(GetParam()), 6);
    setup.bridge.hookup = hookup;
    setup = narrow(setup);
    const SetupPrediction prediction = predict(setup);
    const Budget budget = budgetOf(setup, prediction);
    for (const Scope scope : {Scope::Chain, Scope::Strain}) {
      const auto trials =
          runChannelTrials(setup, prediction, budget, {.scope = scope, .seed = 7, .trials = count});
      if (!trials) continue;  // a quarter bridge whose only gauge is shorted simulates nothing
      for (std::size_t k = 0; k < trials->steps.size(); ++k, ++compared) {
        const auto& linear = *budget.of(scope).steps[trials->steps[k]];
        const TrialOutput& output = trials->result.outputs[k];
        // A mean of n trials scatters by u / sqrt(n), their deviation by u / sqrt(2 n); five of those are
        // exceeded once in two million.
        EXPECT_NEAR(output.mean, linear.value, 5 * linear.standard / std::sqrt(count)) << k;
        EXPECT_NEAR(output.standardUncertainty, linear.standard, 5 * linear.standard / std::sqrt(2.0 * count))
            << k;
      }
    }
  }
  EXPECT_GE(compared, 4u * 2u * 6u) << "all but the touching leads have their seven steps";
}

INSTANTIATE_TEST_SUITE_P(Budget, HookupOfEveryTemplate, testing::Range(0, static_cast<int>(bridgeTypeCount)),
                         [](const auto& type) {
                           return std::string(templateOf(static_cast<BridgeType>(type.param)).key);
                         });

TEST(HookupBudget, ReversedWiresTurnTheReadingAndNotItsUncertainty) {
  const core::Setup setup = test::withEffects(BridgeType::FullBending, 0);
  core::Setup reversed = setup;
  reversed.bridge.hookup.signalReversed = true;
  const Budget as = budgetFor(setup), turned = budgetFor(reversed);
  for (const Scope scope : {Scope::Chain, Scope::Strain})
    for (std::size_t k = 1; k < setup.sequence.size(); ++k) {
      const auto &one = *as.of(scope).steps[k], &other = *turned.of(scope).steps[k];
      EXPECT_DIGITS(other.standard, one.standard, 9);  // the same sums with other signs
      EXPECT_DIGITS(other.value, scope == Scope::Chain ? -one.value : one.value, 9);
    }
}

TEST(HookupBudget, ABrokenLeadIsNoInput) {
  core::Setup setup = test::withEffects(BridgeType::FullBending, 0);
  const auto has = [&](LeadRole role) {
    const auto inputs = inputListOf(setup);
    return std::find(inputs.begin(), inputs.end(), Input{InputKind::Lead, static_cast<std::size_t>(role)}) !=
           inputs.end();
  };
  EXPECT_TRUE(has(SignalPlus));
  setup.bridge.hookup.broken[static_cast<std::size_t>(SignalPlus)] = true;
  EXPECT_FALSE(has(SignalPlus));
  EXPECT_TRUE(has(SignalMinus));
}

TEST(HookupBudget, AStepThatSimulatesNothingSaysSoAndHasNoUncertainty) {
  core::Setup setup = test::withShuntOnArm(test::equalArms(BridgeType::HalfBending, 350.0_ohm), 59.0_kohm, 1);
  setup.bridge.hookup.broken[static_cast<std::size_t>(ExcitationPlus)] = true;
  const SetupPrediction prediction = predict(setup);
  ASSERT_TRUE(prediction.zero);
  const Budget budget = budgetOf(setup, prediction);
  const auto& uncertainty = budget.of(Scope::Strain).steps[0];
  ASSERT_FALSE(uncertainty);
  EXPECT_EQ(uncertainty.error().where, "simulated strain");
}
