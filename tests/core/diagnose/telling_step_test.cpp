// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diagnose/telling_step.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/core/diagnose/held_check.h"
#include "tests/support/digits.h"

// Which step tells two causes apart follows from what each does to a shunt's reading: leads act on shunts at
// the gauge like a gain below one, on shunts over the instrument's terminals the other way, and on internal
// completion resistors not at all (tests/reference/bridge_cases.csv, group leads).

namespace core {
namespace telling_step_test {

using test::equalArms;
using test::HeldCheck;
using test::knownExactly;
using test::nineSteps;

/// The step that tells `truth` from `rival`, each as fitted to what `truth` shows.
std::optional<TellingStep> told(const HeldCheck& held, const Fault& truth, const Fault& rival) {
  const DiagnosisGround ground = held.ground();
  const auto shown = changesUnder(held.setup, held.check, ground.points, truth);
  if (!shown) return std::nullopt;
  const auto a = refit(ground, truth, *shown), b = refit(ground, rival, *shown);
  EXPECT_TRUE(a && b);
  return a && b ? tellingStep(ground, *a, *b) : std::nullopt;
}

bool contains(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

Setup quarter() {
  return nineSteps(test::withLeads(equalArms(BridgeType::QuarterThreeWire, Resistance(350)), Resistance(2)),
                   2, 1);
}

Setup full() {
  return nineSteps(test::withLeads(equalArms(BridgeType::FullBending, Resistance(350)), Resistance(2)), 2, 1);
}

TEST(TellingStep, ForGainAgainstLeadsOfAFullBridgeIsAShuntOverTheTerminals) {
  const HeldCheck held(full(), 0.5);
  const auto step = told(held, {CauseKind::Leads, 0, 0, 1}, {CauseKind::Scale});
  ASSERT_TRUE(step);
  EXPECT_TRUE(contains(step->text, "from terminal")) << step->text;
  EXPECT_GE(step->separation, 3.0);
}

TEST(TellingStep, ForGainAgainstLeadsOfAQuarterBridgeIsAShuntThatDoesNotFeelThem) {
  const HeldCheck held(quarter(), 0.5);
  for (const bool leadsAreTrue : {true, false}) {
    const Fault leads{CauseKind::Leads, 0, 0, 3}, gain{CauseKind::Scale, 0, 0, 0.991};
    const auto step = told(held, leadsAreTrue ? leads : gain, leadsAreTrue ? gain : leads);
    ASSERT_TRUE(step);
    EXPECT_TRUE(contains(step->text, "arm 3") || contains(step->text, "arm 4") ||
                contains(step->text, "from terminal"))
        << step->text;
  }
}

TEST(TellingStep, IsNoneForALeakOverTheGaugeAgainstAGaugeThatChanged) {
  // One resistance in one arm: no shunt sees of which two it is made.
  const HeldCheck held(quarter(), 0.5);
  EXPECT_FALSE(told(held, {CauseKind::Leak, 0, 0, 3e-5}, {CauseKind::ArmValue, 0}));
}

TEST(TellingStep, IsNoneForAUnitMixUpAgainstAGain) {
  const HeldCheck held(quarter(), 0.5);
  EXPECT_FALSE(told(held, {CauseKind::Units, 0, 0, 2}, {CauseKind::Scale}));
}

TEST(TellingStep, ForStepsAgainstResistorsExchangedIsOneOfThemOnceMore) {
  const HeldCheck held(quarter(), 0.5);
  const auto step = told(held, {CauseKind::StepsExchanged, 1, 2}, {CauseKind::ShuntsExchanged, 0, 1});
  ASSERT_TRUE(step);
  EXPECT_TRUE(contains(step->text, "once more")) << step->text;
}

TEST(TellingStep, ForShuntsOnTheWrongArmAgainstPolarityIsAResistorLaidByHand) {
  const HeldCheck held(quarter(), 0.5);
  const auto step = told(held, {CauseKind::ShuntArm, 0}, {CauseKind::PolarityReversed});
  ASSERT_TRUE(step);
  EXPECT_FALSE(contains(step->text, "once more")) << step->text;
}

// Nine readings of standard uncertainty u, nothing else uncertain. A shift s before the last step shows in a
// further zero as s against the mean of the eight other readings, the ninth being given up to the stray
// reading: its variance is u^2 (1 + 1/8).
TEST(TellingStep, SeparatesAZeroShiftFromAStrayReadingByTheShiftOverItsUncertainty) {
  const HeldCheck held(knownExactly(quarter()), 0.5);
  const auto step = told(held, {CauseKind::ZeroShift, 8, 0, 5}, {CauseKind::StrayReading, 8});
  ASSERT_TRUE(step);
  EXPECT_EQ(step->text, "one more zero step at the end");
  EXPECT_DIGITS(step->separation, 5 / (0.5 * std::sqrt(9.0 / 8)), 6);  // chi-squares of a fit to 1e-6
  // 1 / (0.5 sqrt(9/8)) = 1.89 is less than three.
  EXPECT_FALSE(told(held, {CauseKind::ZeroShift, 8, 0, 1}, {CauseKind::StrayReading, 8}));
}

TEST(TellingStep, GivesAPlanOfOneSideWithoutAZeroAtTheEndThatZero) {
  core::Setup setup = equalArms(BridgeType::QuarterThreeWire, Resistance(350));
  setup.sequence = {{"zero", {}}};
  for (const double ohm : {174650.0, 87150.0}) setup = test::withShuntOnArm(setup, Resistance(ohm), 2);
  const HeldCheck held(knownExactly(setup), 0.5);
  // The drift raises both steps as a larger scale does.
  const auto step = told(held, {CauseKind::Drift, 0, 0, 4}, {CauseKind::Scale});
  ASSERT_TRUE(step);
  EXPECT_EQ(step->text, "a zero step at the end");
}

TEST(TellingStep, StaysWithinTheRangeOfTheInstrument) {
  // 58 kohm over an arm gives R/(4Rs + 2R) = 1.504 mV/V, beyond 1.2 mV/V, and 87.15 kohm 1.002 mV/V.
  core::Setup setup = full();
  const HeldCheck wide(setup, 0.5);
  setup.instrument.range = Output(1.2e-3);
  const HeldCheck narrow(setup, 0.5);
  const auto wideStep = told(wide, {CauseKind::Leads, 0, 0, 0.6}, {CauseKind::Scale});
  const auto narrowStep = told(narrow, {CauseKind::Leads, 0, 0, 0.6}, {CauseKind::Scale});
  ASSERT_TRUE(wideStep && narrowStep);
  EXPECT_TRUE(contains(wideStep->text, "58 kΩ from")) << wideStep->text;
  EXPECT_TRUE(contains(narrowStep->text, "87.15 kΩ from")) << narrowStep->text;
}

/// `quarter` with steps that close these of its shunts, in place of the usual nine.
core::Setup withSteps(std::vector<std::vector<std::size_t>> closed) {
  core::Setup setup = quarter();
  setup.sequence.clear();
  for (auto& shunts : closed) setup.sequence.push_back({"", std::move(shunts)});
  return setup;
}

TEST(TellingStep, OfShortPlansIsNoneOrSeparatesByThreeAtLeast) {
  // One level, one side, no zero at all, shunts closed together only.
  const std::vector<core::Setup> plans = {withSteps({{}, {0}, {}}), withSteps({{}, {0}, {1}, {2}}),
                                          withSteps({{0}, {1}, {3}}), withSteps({{}, {0, 1}, {0, 2}, {}})};
  std::size_t pairs = 0, toldApart = 0;
  for (const core::Setup& plan : plans) {
    const HeldCheck held(plan, 0.5);
    const DiagnosisGround ground = held.ground();
    std::vector<Refit> fits;
    for (const Fault& fault : possibleFaults(plan, ground.points))
      if (auto fit = refit(ground, fault, ground.points.expected)) fits.push_back(*std::move(fit));
    ASSERT_GT(fits.size(), 20u);
    for (std::size_t k = 0; k + 1 < fits.size(); ++k, ++pairs) {
      const auto step = tellingStep(ground, fits[k], fits[k + 1]);
      if (!step) continue;
      ++toldApart;
      EXPECT_TRUE(std::isfinite(step->separation) && step->separation >= 3) << step->separation;
      EXPECT_FALSE(step->text.empty());
    }
  }
  // Faults of fixed size differ from a healthy check by far, those of free size fit it with none.
  EXPECT_GT(toldApart, 10u);
  EXPECT_LT(toldApart, pairs);
}

TEST(TellingStep, IsTheSameEveryTime) {
  const HeldCheck held(full(), 0.5);
  const auto once = told(held, {CauseKind::Leads, 0, 0, 1}, {CauseKind::Scale});
  const auto again = told(held, {CauseKind::Leads, 0, 0, 1}, {CauseKind::Scale});
  ASSERT_TRUE(once && again);
  EXPECT_EQ(once->text, again->text);
  EXPECT_EQ(once->separation, again->separation);
}

}  // namespace telling_step_test
}  // namespace core
