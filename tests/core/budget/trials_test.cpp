// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/trials.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/budget/trial_model.h"
#include "tests/support/allocations.h"
#include "tests/support/effects.h"
#include "tests/support/sample_channel.h"

using namespace core;

namespace {

struct Drawn {
  SetupPrediction prediction;
  Budget budget;
  Result<ChannelTrials> trials = Error{};
};

Drawn drawn(const Setup& setup, const ChannelTrialOptions& options) {
  Drawn all{predict(setup), {}, Error{}};
  all.budget = budgetOf(setup, all.prediction);
  all.trials = runChannelTrials(setup, all.prediction, all.budget, options);
  return all;
}

/// Every statement of `setup` made `share` of its input's own size and normal, so that the linear budget
/// holds.
Setup narrow(Setup setup, double share) {
  for (const BudgetInput& entry : inputsOf(setup)) {
    setup.uncertainties.stated[entry.input] = {
        .statement = Statement::Standard,
        .amount = share * (entry.value == 0 ? 1e-6 : std::abs(entry.value))};
  }
  return setup;
}

class TrialsOfEveryTemplate : public testing::TestWithParam<int> {};

}  // namespace

TEST_P(TrialsOfEveryTemplate, AgreeWithTheLinearBudgetWhereItHolds) {
  // The trials solve the network with a solver of their own, and the simulated value by secants; the budget
  // takes derivatives. Both agree where the inputs err so little that curvature does not show.
  for (const unsigned variant : {1u, 6u, 11u, 14u}) {
    const core::Setup setup = narrow(test::withEffects(static_cast<BridgeType>(GetParam()), variant), 1e-5);
    for (const Scope scope : {Scope::Chain, Scope::Strain}) {
      constexpr std::size_t count = 20000;
      const Drawn all = drawn(setup, {.scope = scope, .seed = 7, .trials = count});
      ASSERT_TRUE(all.trials) << all.trials.error().text();
      for (std::size_t k = 0; k < all.trials->steps.size(); ++k) {
        const auto& linear = *all.budget.of(scope).steps[all.trials->steps[k]];
        const TrialOutput& output = all.trials->result.outputs[k];
        // A mean of n trials scatters by u / sqrt(n), their standard deviation by u / sqrt(2 n); five of
        // those are exceeded once in two million.
        EXPECT_NEAR(output.mean, linear.value, 5 * linear.standard / std::sqrt(count)) << variant << " " << k;
        EXPECT_NEAR(output.standardUncertainty, linear.standard, 5 * linear.standard / std::sqrt(2.0 * count))
            << variant << " " << k;
      }
    }
  }
}

INSTANTIATE_TEST_SUITE_P(Trials, TrialsOfEveryTemplate, testing::Range(0, static_cast<int>(bridgeTypeCount)),
                         [](const auto& type) {
                           return std::string(templateOf(static_cast<BridgeType>(type.param)).key);
                         });

TEST(Trials, GiveTheSameBitsForAnyNumberOfThreads) {
  const core::Setup setup = sample::nineStepChannel().setup;
  for (const Scope scope : {Scope::Chain, Scope::Strain}) {
    const Drawn one = drawn(setup, {.scope = scope, .trials = 50000, .threads = 1});
    ASSERT_TRUE(one.trials);
    for (const unsigned threads : {2u, 3u, 5u, 8u}) {
      const Drawn more = drawn(setup, {.scope = scope, .trials = 50000, .threads = threads});
      ASSERT_TRUE(more.trials);
      EXPECT_EQ(more.trials->result, one.trials->result) << threads << " threads";
    }
  }
}

TEST(Trials, FollowTheCurvatureThatTheLinearBudgetMisses) {
  // Derived: a shunt over the gauge of an ideal quarter bridge simulates -R/(F (R + Rs)); with F rectangular
  // from 1 to 3 its mean is -(R/(R+Rs)) ln(3)/2 where the linear value has 1/2.
  core::Setup setup =
      test::withShuntOnArm(test::equalArms(BridgeType::QuarterThreeWire, 350.0_ohm), 87150.0_ohm, 1);
  for (const Input input : inputListOf(setup)) setup.uncertainties.stated[input] = {};
  setup.uncertainties.stated[{InputKind::GaugeFactor, 0}] = {.amount = 1};
  constexpr std::size_t count = 100000;
  const Drawn all = drawn(setup, {.scope = Scope::Strain, .trials = count});
  ASSERT_TRUE(all.trials) << all.trials.error().text();
  const double mean = -1e6 * 350.0 / (350 + 87150) * std::log(3.0) / 2;
  const TrialOutput& output = all.trials->result.outputs[0];
  EXPECT_NEAR(output.mean, mean, 5 * output.standardUncertainty / std::sqrt(count));
  EXPECT_GT(std::abs(output.mean - all.budget.of(Scope::Strain).steps[0]->value), 100);
}

TEST(Trials, AllocateNothingForATrial) {
  const core::Setup setup = sample::nineStepChannel().setup;
  const SetupPrediction prediction = predict(setup);
  const Budget budget = budgetOf(setup, prediction);
  for (const Scope scope : {Scope::Chain, Scope::Strain}) {
    auto model = TrialModelOfChannel::make(setup, prediction, budget, scope, {1, 2, 3, 5, 6, 7});
    ASSERT_TRUE(model);
    std::vector<double> inputs;
    for (const TrialInput& input : model->drawn()) inputs.insert(inputs.end(), trialLanes, input.value);
    std::vector<double> values(6 * trialLanes);
    const auto before = test::allocations();
    for (int batch = 0; batch < 100; ++batch) model->evaluate(inputs.data(), values.data());
    EXPECT_EQ(test::allocations(), before);
    // At the nominal inputs a trial is the prediction; the batch solver's roundings are 1e-15 of an output.
    EXPECT_NEAR(values[0], budget.of(scope).steps[1]->value, 1e-8);
  }
}

TEST(Trials, LeaveOutTheStepsThatHaveNoUncertaintyAndShowTheRest) {
  core::Setup setup = sample::nineStepChannel().setup;
  const std::size_t refused = setup.sequence[2].closed.front();
  setup.uncertainties.stated[{InputKind::Shunt, refused}] = {.amount = -1};
  const Drawn all = drawn(setup, {.trials = 20000});
  ASSERT_TRUE(all.trials) << all.trials.error().text();
  EXPECT_EQ(all.trials->steps, (std::vector<std::size_t>{1, 3, 5, 6, 7}));
}

TEST(Trials, AGroupThatCannotExistLeavesTheOthersToBeDrawn) {
  core::Setup setup = sample::nineStepChannel().setup;
  for (const std::size_t step : {1, 2, 3}) {
    auto& stated = setup.uncertainties.stated[{InputKind::Shunt, setup.sequence[step].closed.front()}];
    stated = {.amount = 1, .group = "box"};
  }
  setup.uncertainties.groups["box"] = -0.9;
  const Drawn all = drawn(setup, {.trials = 20000});
  ASSERT_TRUE(all.trials) << all.trials.error().text();
  EXPECT_EQ(all.trials->steps, (std::vector<std::size_t>{5, 6, 7}));
}

TEST(Trials, SayWhyThereIsNothingToDraw) {
  core::Setup setup = sample::nineStepChannel().setup;
  setup.sequence = {{"zero", {}}};
  const Drawn none = drawn(setup, {});
  ASSERT_FALSE(none.trials);
  EXPECT_FALSE(none.trials.error().mend.empty());
}

TEST(Trials, StopWhenAsked) {
  std::stop_source stop;
  stop.request_stop();
  const core::Setup setup = sample::nineStepChannel().setup;
  const SetupPrediction prediction = predict(setup);
  const auto trials = runChannelTrials(setup, prediction, budgetOf(setup, prediction), {}, stop.get_token());
  ASSERT_FALSE(trials);
  EXPECT_EQ(trials.error().what, cancelled().what);
}
