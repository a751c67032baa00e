// SPDX-License-Identifier: GPL-3.0-or-later
// Simulated pairs of checks with known truth, sent through the network: how often a comparison is wrong.
//
// The inputs are drawn from what the channel states of them: those that last once a pair, the others in each
// check. Readings then come from predictions of set-ups that have these values, not from sensitivities.
// Tolerances are five standard deviations of a binomial count: sqrt(p (1 - p) / n) with p = 0.05 and n = 4000
// is 0.0034. A seed is fixed, so that the test does not fail by chance.
#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "core/compare/comparison.h"
#include "core/compare/lasting_errors.h"
#include "tests/support/sample_channel.h"

namespace core {
namespace {

constexpr int pairs = 4000;
constexpr double fiveSigma = 5 * 0.0034;

class Simulated {
 public:
  /// Readings scatter by `scatter` (readings' unit); the later check has `gain` times the earlier one's.
  /// `lasting` is 1, or 0 without errors of arms and resistors.
  Simulated(double scatter, bool stated, double gain = 1, double lasting = 1)
      : m_scatter(scatter), m_stated(stated), m_gain(gain), m_lasting(lasting), m_channel(planned()) {}

  Comparison pair() {
    Setup before = m_channel.setup;
    drawLasting(before);
    Setup after = before;
    drawOnce(before);
    drawOnce(after);
    m_channel.checks.clear();
    addCheck(before, 1);
    addCheck(after, m_gain);
    return compare(m_channel, evaluate(m_channel), 0, 1);
  }

 private:
  static Channel planned() {
    Channel channel = sample::nineStepChannel();
    for (Shunt& shunt : channel.setup.shunts) shunt.contact = Resistance(20);
    const auto state = [&](InputKind kind, std::size_t index, double u) {
      channel.setup.uncertainties.stated[{kind, index}] = {.statement = Statement::Standard, .amount = u};
    };
    for (const Input input : inputListOf(channel.setup)) state(input.kind, input.index, 0);
    for (const std::size_t arm : {0, 1, 2, 3}) state(InputKind::Arm, arm, 0.5);
    for (std::size_t k = 0; k < channel.setup.shunts.size(); ++k) {
      state(InputKind::Shunt, k, 50);
      state(InputKind::ShuntContact, k, 5);
    }
    state(InputKind::LeadTemperature, 0, 10);
    return channel;
  }

  double normal() { return m_normal(m_engine); }

  void drawLasting(Setup& setup) {
    for (Resistance& arm : setup.bridge.arms) arm += Resistance(m_lasting * 0.5 * normal());
    for (Shunt& shunt : setup.shunts) shunt.resistance += Resistance(m_lasting * 50 * normal());
  }
  void drawOnce(Setup& setup) {
    for (Shunt& shunt : setup.shunts) shunt.contact += Resistance(5 * normal());
    setup.bridge.leadWarming += Warming(10 * normal());
  }

  void addCheck(const Setup& truth, double gain) {
    const SetupPrediction prediction = predict(truth);
    Check check;
    check.name = m_channel.checks.empty() ? "before" : "after";
    for (const auto& step : prediction.steps) {
      const Reading shown(gain * step->reading.base() + m_scatter * normal());
      check.readings.push_back(
          Measured{shown, m_stated ? std::optional(Reading(m_scatter)) : std::nullopt, {}, {}});
    }
    m_channel.checks.push_back(std::move(check));
  }

  double m_scatter;
  bool m_stated;
  double m_gain;
  double m_lasting;
  Channel m_channel;
  std::mt19937_64 m_engine{20261126};
  std::normal_distribution<double> m_normal;
};

double share(int count) { return static_cast<double>(count) / pairs; }

/// How often the tests of pairs that did not change say that they did.
struct Alarms {
  double gain = 0, zero = 0, joint = 0, step = 0;
};

Alarms falseAlarms(Simulated simulated) {
  int gain = 0, zero = 0, joint = 0, step = 0, covered = 0;
  for (int k = 0; k < pairs; ++k) {
    const Comparison comparison = simulated.pair();
    gain += *comparison.gain->pDifferent < 0.05;
    covered += std::abs(comparison.gain->value) <= *comparison.gain->halfWidth95;
    zero += *comparison.zero->pDifferent < 0.05;
    step += *comparison.steps[3].moved->pDifferent < 0.05;
    joint += *comparison.jointProbability < 0.05;
  }
  EXPECT_EQ(covered, pairs - gain) << "the interval of 95 % and the test are one thing";
  return {share(gain), share(zero), share(joint), share(step)};
}

void expectOneInTwenty(const Alarms& alarms) {
  EXPECT_NEAR(alarms.zero, 0.05, fiveSigma);
  EXPECT_NEAR(alarms.step, 0.05, fiveSigma);
  EXPECT_NEAR(alarms.joint, 0.05, fiveSigma);
  // Where the line is doubted, in one of twenty pairs, the gain is widened: fewer alarms, never more.
  EXPECT_NEAR(alarms.gain, 0.045, fiveSigma);
}

TEST(CompareMonteCarlo, FalseAlarmsComeInOneOfTwentyPairs) { expectOneInTwenty(falseAlarms({2, true})); }

TEST(CompareMonteCarlo, WithScatterFromResidualsTheGainIsTestedAsExactlyAndTheRestMoreCautiously) {
  // Slopes are independent of the residuals of their lines (any course on regression); single readings are in
  // them, so that one that is far off makes the scatter large as well.
  const Alarms alarms = falseAlarms({2, false, 1, 0});
  EXPECT_NEAR(alarms.gain, 0.05, fiveSigma);
  for (const double share : {alarms.zero, alarms.joint, alarms.step}) EXPECT_LE(share, 0.05 + fiveSigma);
  EXPECT_GT(alarms.zero, 0.01) << "cautious, not deaf";
}

TEST(CompareMonteCarlo, ScatterFromResidualsIsCautiousWhereResistorsAreOff) {
  // What resistors are off is the same in both checks and cancels, but residuals have it in them.
  const Alarms alarms = falseAlarms({2, false});
  for (const double share : {alarms.gain, alarms.zero, alarms.joint, alarms.step})
    EXPECT_LE(share, 0.05 + fiveSigma);
}

TEST(CompareMonteCarlo, IntervalsOfTheGainCoverTheTruth) {
  Simulated simulated(2, true, 1.004);
  int covered = 0;
  for (int k = 0; k < pairs; ++k) {
    const Difference gain = *simulated.pair().gain;
    covered += std::abs(gain.value - 0.004) <= *gain.halfWidth95;
  }
  EXPECT_NEAR(share(covered), 0.955, fiveSigma) << "0.95, and what widening adds";
}

TEST(CompareMonteCarlo, AGainThatChangedByTheMarginIsRarelyCalledUnchanged) {
  // The worst that can be: TOST has level 0.05 at the margin (Schuirmann 1987, from memory). A scatter at
  // which it has all its power there: the margin is some eight uncertainties.
  Simulated simulated(2, true, 1.01);
  int within = 0;
  for (int k = 0; k < pairs; ++k) {
    const Change change = changeOf(simulated.pair().gain);
    within += change == Change::Unchanged || change == Change::Harmless;
  }
  EXPECT_LE(share(within), 0.05 + fiveSigma);
  EXPECT_GE(share(within), 0.05 - fiveSigma) << "a test that never says so tells nothing";
}

TEST(CompareMonteCarlo, WhatIsSharedWouldMakeUncertaintiesTooWide) {
  // 50 ohm of 58 kohm and 0.5 ohm of 350 are more than the readings scatter: counted twice they would hide
  // it.
  Simulated simulated(2, true);
  const Comparison comparison = simulated.pair();
  double squares = 0;
  for (int k = 0; k < pairs; ++k) squares += std::pow(simulated.pair().gain->value, 2);
  // A variance from n values is right to sqrt(2 / n); five of that, and the five hundredths of widened ones.
  const double ratio = squares / pairs / std::pow(*comparison.gain->standard, 2);
  EXPECT_NEAR(ratio, 1, 5 * std::sqrt(2.0 / pairs) + 0.05);
}

}  // namespace
}  // namespace core
