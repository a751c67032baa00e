// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/diagnosis/simulated_check.h"

#include <gtest/gtest.h>

#include <Eigen/Cholesky>
#include <cmath>

namespace {

using namespace diagnosis;
using core::CauseKind;

core::CheckPoints pointsOf(const SimulatedCheck& simulated) {
  const core::Setup& setup = simulated.channel.setup;
  const auto prediction = core::predict(setup);
  return core::checkPoints(setup, prediction, core::budgetOf(setup, prediction), simulated.check);
}

/// Chi-square of measured less expected, an offset left free.
double chiSquare(const core::CheckPoints& points) {
  const auto n = static_cast<Eigen::Index>(points.size());
  Eigen::MatrixXd covariance(n, n);
  Eigen::VectorXd deviation(n);
  for (Eigen::Index i = 0; i < n; ++i) {
    const auto at = static_cast<std::size_t>(i);
    deviation(i) = points.measured[at] - points.expected[at];
    for (Eigen::Index j = 0; j < n; ++j)
      covariance(i, j) = points.covariance[at * points.size() + static_cast<std::size_t>(j)];
  }
  const Eigen::LLT<Eigen::MatrixXd> factor(covariance);
  const Eigen::VectorXd weighed = factor.solve(Eigen::VectorXd::Ones(n));
  deviation.array() -= weighed.dot(deviation) / weighed.sum();
  return deviation.dot(factor.solve(deviation));
}

TEST(SimulatedCheck, IsTheSameForTheSameSeed) {
  const auto first = faultyCheck(3, 17, CauseKind::Leak), second = faultyCheck(3, 17, CauseKind::Leak);
  EXPECT_EQ(first.channel.setup, second.channel.setup);
  EXPECT_EQ(first.check, second.check);
  EXPECT_EQ(first.planted, second.planted);
  EXPECT_NE(first.check, faultyCheck(4, 17, CauseKind::Leak).check);
  EXPECT_NE(first.check, faultyCheck(3, 18, CauseKind::Leak).check);
}

// The mean of a chi-square is its degrees of freedom, here points less one, and its variance twice that
// (textbook). With 1500 checks of about 8 degrees the mean of chi2/dof has a standard error of 0.013, and the
// inputs are partly rectangular, which makes chi2 vary less: 0.04 is three of them.
TEST(SimulatedCheck, HealthyChecksScatterAsTheirCovarianceSays) {
  double sum = 0;
  const int checks = 1500;
  for (int number = 0; number < checks; ++number) {
    const auto points = pointsOf(healthyCheck(2, static_cast<std::uint64_t>(number)));
    sum += chiSquare(points) / static_cast<double>(points.size() - 1);
  }
  EXPECT_NEAR(sum / checks, 1, 0.04);
}

// The effect is the root of what the fault adds to chi-square, so that the mean of chi2 of faulty checks is
// dof + effect^2 when the covariance stays (parts, zero and stray readings; not when readings are
// multiplied).
TEST(SimulatedCheck, TheEffectIsWhatTheFaultAddsToChiSquare) {
  for (const CauseKind kind : {CauseKind::ArmValue, CauseKind::ZeroShift, CauseKind::StrayReading}) {
    double added = 0, effect = 0, variance = 0;
    for (std::uint64_t number = 0; number < 400; ++number) {
      const auto simulated = faultyCheck(5, number, kind);
      if (simulated.effect > 30) continue;  // else few checks make the mean
      const auto points = pointsOf(simulated);
      added += chiSquare(points) - static_cast<double>(points.size() - 1);
      effect += simulated.effect * simulated.effect;
      // Of a noncentral chi-square: 2 (dof + 2 effect^2).
      variance += 2 * (static_cast<double>(points.size() - 1) + 2 * simulated.effect * simulated.effect);
    }
    EXPECT_NEAR(added, effect, 4 * std::sqrt(variance)) << static_cast<int>(kind);
  }
}

TEST(SimulatedCheck, EveryKindCanBePlantedWithItsLeastEffect) {
  for (std::size_t kind = 0; kind < core::causeKindCount; ++kind) {
    const auto simulated = faultyCheck(1, kind, static_cast<CauseKind>(kind));
    ASSERT_TRUE(simulated.planted);
    EXPECT_EQ(static_cast<std::size_t>(simulated.planted->kind), kind);
    EXPECT_GE(simulated.effect, leastEffect);
    EXPECT_EQ(simulated.check.readings.size(), simulated.channel.setup.sequence.size());
  }
}

}  // namespace
