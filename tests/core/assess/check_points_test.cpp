// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/assess/check_points.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "tests/support/sample_channel.h"

namespace core {
namespace {

CheckPoints pointsOf(const Channel& channel) {
  const SetupPrediction prediction = predict(channel.setup);
  return checkPoints(channel.setup, prediction, budgetOf(channel.setup, prediction), channel.checks.back());
}

Channel checked() { return sample::withCheckReading(sample::nineStepChannel(), 1.0, 137.0); }

TEST(CheckPoints, CountChangesFromTheZeroReference) {
  const CheckPoints points = pointsOf(checked());
  ASSERT_EQ(points.size(), 9u);
  EXPECT_EQ(points.zero, 0u);
  for (std::size_t k = 0; k < points.size(); ++k)
    EXPECT_NEAR(points.measured[k], points.expected[k], 1e-11);  // rounding of values near 3000
}

TEST(CheckPoints, LeaveOutWhatHasNoFiniteReading) {
  Channel channel = checked();
  channel.checks.back().readings[3].reset();
  channel.checks.back().readings[4]->mean = Reading(std::numeric_limits<double>::quiet_NaN());
  const CheckPoints points = pointsOf(channel);
  EXPECT_EQ(points.steps, (std::vector<std::size_t>{0, 1, 2, 5, 6, 7, 8}));
  EXPECT_EQ(points.covariance.size(), 49u);
}

TEST(CheckPoints, WithoutAZeroReadingCountFromZero) {
  Channel channel = checked();
  for (const std::size_t zero : {0, 4, 8}) channel.checks.back().readings[zero].reset();
  const CheckPoints points = pointsOf(channel);
  EXPECT_FALSE(points.zero);
  EXPECT_NEAR(points.measured.front(), points.expected.front() + 137, 1e-9);  // rounding of values near 3000
}

TEST(CheckPoints, OwnVarianceIsThatOfTheReadingAndOfItsRounding) {
  Channel channel = checked();
  channel.setup.uncertainties.stated[{InputKind::Rounding, 1}] = {Statement::Standard, 0.3};
  channel.checks.back().readings[2]->uncertainty = Reading(0.4);
  const CheckPoints points = pointsOf(channel);
  EXPECT_DOUBLE_EQ(points.ownVariance[1], 0.09);
  EXPECT_DOUBLE_EQ(points.ownVariance[2], 0.25);
  EXPECT_DOUBLE_EQ(points.ownVariance[0], 0.09);  // the zero reference is a reading like any other
}

TEST(CheckPoints, WhatAllStepsShareStandsInTheCovariance) {
  // Derived: a gain known to 1 % and nothing else gives cov(i, j) = 1e-4 x expected_i x expected_j.
  Channel channel = checked();
  const SetupPrediction prediction = predict(channel.setup);
  for (const BudgetInput& input : budgetOf(channel.setup, prediction).inputs)
    channel.setup.uncertainties.stated[input.input] = {Statement::Standard, 0};
  channel.setup.uncertainties.stated[{InputKind::Gain, 0}] = {Statement::Standard, 0.01};
  const CheckPoints points = pointsOf(channel);
  for (std::size_t i = 0; i < points.size(); ++i)
    for (std::size_t j = 0; j < points.size(); ++j)
      EXPECT_NEAR(points.covariance[i * points.size() + j], 1e-4 * points.expected[i] * points.expected[j],
                  1e-9);  // of at most 900: twelve digits, the sensitivities are exact to rounding
}

TEST(CheckPoints, HaveNoCovarianceWhenAStepsUncertaintyIsRefused) {
  Channel channel = checked();
  channel.setup.uncertainties.stated[{InputKind::Gain, 0}] = {Statement::Standard, -1};
  const CheckPoints points = pointsOf(channel);
  EXPECT_EQ(points.size(), 9u);
  EXPECT_TRUE(points.covariance.empty());
}

}  // namespace
}  // namespace core
