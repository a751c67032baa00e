// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/compare/lasting_errors.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/evaluate/evaluation.h"
#include "tests/support/sample_channel.h"

namespace core {
namespace {

/// All nine steps against themselves.
std::vector<StepPair> allSteps() {
  std::vector<StepPair> pairs;
  for (std::size_t k = 0; k < 9; ++k) pairs.push_back({k, k});
  return pairs;
}

/// A channel in which nothing is uncertain but what a test states.
Setup certain() {
  Setup setup = sample::nineStepChannel().setup;
  for (const Input input : inputListOf(setup))
    setup.uncertainties.stated[input] = {.statement = Statement::Standard, .amount = 0};
  return setup;
}

void state(Setup& setup, InputKind kind, std::size_t index, double u, const std::string& group = {}) {
  setup.uncertainties.stated[{kind, index}] = {.statement = Statement::Standard, .amount = u, .group = group};
}

Budget budgetOf(const Setup& setup) { return core::budgetOf(setup, predict(setup)); }

std::vector<double> covarianceOf(const Setup& before, const Setup& after) {
  return differenceCovariance(before, budgetOf(before), after, budgetOf(after), allSteps());
}

TEST(LastingErrors, EveryKindHasARuleWithAReason) {
  for (std::size_t k = 0; k < inputKindCount; ++k) {
    const LastingRule& rule = lastingRuleOf(static_cast<InputKind>(k));
    EXPECT_EQ(static_cast<std::size_t>(rule.kind), k);
    EXPECT_FALSE(rule.reason.empty());
  }
}

TEST(LastingErrors, WhatBothChecksShareLeavesNothingInEqualSetUps) {
  core::Setup setup = certain();
  for (const std::size_t k : {0, 1, 2, 3}) state(setup, InputKind::Arm, k, 1);
  state(setup, InputKind::Shunt, 0, 100);
  state(setup, InputKind::Gain, 0, 0.01);
  for (const double covariance : covarianceOf(setup, setup)) EXPECT_EQ(covariance, 0);
}

TEST(LastingErrors, AContactClosesAnewEachTime) {
  // Two independent errors of one size: twice the variance of one check.
  core::Setup setup = certain();
  state(setup, InputKind::ShuntContact, 0, 0.5);
  const std::vector<double> covariance = covarianceOf(setup, setup);
  const double once = budgetOf(setup).of(Scope::Chain).covariance[1 * 9 + 1];
  ASSERT_GT(once, 0);
  EXPECT_DOUBLE_EQ(covariance[1 * 9 + 1], 2 * once);
}

TEST(LastingErrors, AnotherResistorOfTheSameValueHasAnErrorOfItsOwn) {
  core::Setup before = certain(), after = before;
  state(before, InputKind::Shunt, 0, 20);
  state(after, InputKind::Shunt, 0, 20);
  after.shunts[0].part.id = "S-107";
  const double once = budgetOf(before).of(Scope::Chain).covariance[1 * 9 + 1];
  ASSERT_GT(once, 0);
  EXPECT_DOUBLE_EQ(covarianceOf(before, after)[1 * 9 + 1], 2 * once);
}

TEST(LastingErrors, ASharedErrorCountsByTheDifferenceOfItsSensitivities) {
  // Derived: one error e of the arm moves D by (s_after - s_before) e. The lead makes the sensitivities
  // differ.
  core::Setup before = certain(), after = before;
  state(before, InputKind::Arm, 0, 2);
  state(after, InputKind::Arm, 0, 2);
  after.bridge.leads[static_cast<std::size_t>(LeadRole::ExcitationPlus)] = Resistance(30);
  const Budget first = budgetOf(before), second = budgetOf(after);
  const auto sensitivity = [](const Budget& budget, std::size_t step) {
    for (std::size_t i = 0; i < budget.inputs.size(); ++i)
      if (budget.inputs[i].input == Input{InputKind::Arm, 0})
        return budget.sensitivities(Scope::Chain, step)[i];
    return 0.0;
  };
  const auto covariance = covarianceOf(before, after);
  for (const std::size_t j : {1u, 3u})
    for (const std::size_t k : {1u, 7u}) {
      const double dj = 2 * (sensitivity(second, j) - sensitivity(first, j));
      const double dk = 2 * (sensitivity(second, k) - sensitivity(first, k));
      ASSERT_NE(dj * dk, 0);
      // A difference of two sensitivities that agree in some digits: what is left of 16.
      EXPECT_NEAR(covariance[j * 9 + k], dj * dk, 1e-9 * std::abs(dj * dk));
    }
}

TEST(LastingErrors, GainIsSharedAsLongAsTheInstrumentIs) {
  core::Setup before = certain(), after = before;
  state(before, InputKind::Gain, 0, 1e-3);
  state(after, InputKind::Gain, 0, 1e-3);
  EXPECT_EQ(covarianceOf(before, after)[1 * 9 + 1], 0);
  after.identity.serial = "A-12";
  const double once = budgetOf(before).of(Scope::Chain).covariance[1 * 9 + 1];
  EXPECT_DOUBLE_EQ(covarianceOf(before, after)[1 * 9 + 1], 2 * once);
}

TEST(LastingErrors, AGroupOfWhichOneMemberWasMeasuredAnewIsSharedNoMore) {
  core::Setup before = certain();
  for (const std::size_t arm : {0, 1}) state(before, InputKind::Arm, arm, 0.3, "lot");
  core::Setup after = before;
  after.bridge.arms[0] = Resistance(350.2);
  const auto covariance = covarianceOf(before, after);
  const double first = budgetOf(before).of(Scope::Chain).covariance[1 * 9 + 1];
  const double second = budgetOf(after).of(Scope::Chain).covariance[1 * 9 + 1];
  EXPECT_DOUBLE_EQ(covariance[1 * 9 + 1], first + second);
}

}  // namespace
}  // namespace core
