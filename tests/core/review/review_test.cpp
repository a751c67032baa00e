// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/review/review.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "core/document/edits.h"
#include "core/document/json_reader.h"
#include "core/plan/heating.h"
#include "tests/support/bridge_case.h"
#include "tests/support/csv.h"
#include "tests/support/digits.h"
#include "tests/support/setups.h"

namespace core {
namespace review_test {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;
using Findings = std::vector<Finding>;

constexpr Date today{std::chrono::year(2026), std::chrono::May, std::chrono::day(11)};

Findings reviewed(const Channel& channel, const Stock& stock = {}) {
  return review(channel, evaluate(channel), stock, today);
}

Findings of(FindingKind kind, const Findings& findings) {
  Findings chosen;
  for (const Finding& finding : findings)
    if (finding.kind == kind) chosen.push_back(finding);
  return chosen;
}

Findings reviewed(FindingKind kind, const Channel& channel, const Stock& stock = {}) {
  return of(kind, reviewed(channel, stock));
}

/// The only finding of its kind; a test fails without it.
Finding only(FindingKind kind, const Channel& channel, const Stock& stock = {}) {
  const Findings found = reviewed(kind, channel, stock);
  EXPECT_THAT(found, SizeIs(1)) << findingKindKey(kind);
  return found.empty() ? Finding{kind, {}, {}, {}, {}, {}, {}} : found.front();
}

Channel mended(const Channel& channel, const Finding& finding, std::size_t mend = 0) {
  EXPECT_GT(finding.mends.size(), mend) << finding.what;
  return finding.mends.size() > mend ? finding.mends[mend].apply(channel) : channel;
}

std::string everything(const Findings& findings) {
  std::string text;
  for (const Finding& one : findings) text += std::string(findingKindKey(one.kind)) + ": " + one.what + "\n";
  return text;
}

/// A two-sided plan over arms 1 and 2 of a bridge without leads, labelled by sign: nothing to find.
Channel plain(BridgeType type = BridgeType::QuarterThreeWire, double arm_ohm = 350) {
  Channel channel;
  channel.setup = test::equalArms(type, Resistance(arm_ohm));
  for (const std::size_t arm : {1, 0})
    for (const double ohm : {174650.0, 87150.0, 58000.0})
      channel = withShuntAdded(
          channel, {"R" + std::to_string(static_cast<int>(ohm / 1000)) + " on arm " + std::to_string(arm + 1),
                    Resistance(ohm), armBegin(arm), armEnd(arm)});
  channel.setup.sequence = {{"zero", {}}, {"+1", {0}}, {"+2", {1}}, {"+3", {2}}, {"zero", {}},
                            {"-1", {3}},  {"-2", {4}}, {"-3", {5}}, {"zero", {}}};
  return channel;
}

Channel withResistances(Channel channel, const std::vector<double>& ohms) {
  for (std::size_t k = 0; k < ohms.size(); ++k) channel.setup.shunts[k].resistance = Resistance(ohms[k]);
  return channel;
}

TEST(Review, NothingIsFoundInAUsualPlan) {
  for (std::size_t type = 0; type < bridgeTypeCount; ++type) {
    const Findings found = reviewed(plain(static_cast<BridgeType>(type)));
    EXPECT_THAT(found, IsEmpty()) << type << "\n" << everything(found);
  }
}

TEST(Review, ALimitOfHysteresisAsksForStepsThatComeBackDown) {
  Channel channel = plain();
  channel.setup.limits.merits = {{MeritKind::Hysteresis, 0.005}, {MeritKind::Nonlinearity, 0.005}};
  const Finding finding = only(FindingKind::FigureNotShown, channel);
  EXPECT_EQ(finding.severity, Severity::Warning);
  EXPECT_THAT(finding.what, HasSubstr("cannot show hysteresis"));
  const Channel after = mended(channel, finding);
  EXPECT_THAT(reviewed(after), IsEmpty()) << everything(reviewed(after));
  std::string labels;
  for (const Step& step : after.setup.sequence) labels += step.label + " ";
  EXPECT_EQ(labels, "zero +1 +2 +3 +2 +1 zero -1 -2 -3 -2 -1 zero ");
}

TEST(Review, ALimitOfRepeatabilityAsksForASecondRun) {
  Channel channel = plain();
  channel.setup.limits.merits = {{MeritKind::Repeatability, 0.005}};
  const Finding finding = only(FindingKind::FigureNotShown, channel);
  const Channel after = mended(channel, finding);
  EXPECT_THAT(reviewed(after), IsEmpty()) << everything(reviewed(after));
  EXPECT_EQ(after.setup.sequence.size(), 17u) << "one zero between the runs";
  // Coming back down reaches no level twice from the same side, but zero, which has figures of its own.
  channel.setup.limits.merits = {{MeritKind::Hysteresis, 0.005}, {MeritKind::Repeatability, 0.005}};
  const Findings both = reviewed(FindingKind::FigureNotShown, channel);
  ASSERT_THAT(both, SizeIs(2));
  EXPECT_THAT(reviewed(FindingKind::FigureNotShown, mended(channel, both[0])), SizeIs(1));
}

TEST(Review, OneLevelASideCannotComeBackDown) {
  Channel channel = plain();
  channel.setup.sequence = {{"zero", {}}, {"+1", {0}}, {"zero", {}}, {"-1", {3}}, {"zero", {}}};
  channel.setup.limits.merits = {{MeritKind::Hysteresis, 0.005}};
  EXPECT_THAT(only(FindingKind::FigureNotShown, channel).mends, IsEmpty());
}

TEST(Review, OfAnEmptyPlanOnlyThatItIsEmptyIsSaid) {
  Channel zeroOnly;
  zeroOnly.setup.sequence = {{"zero", {}}};
  for (const Channel& channel : {Channel{}, zeroOnly}) {
    EXPECT_THAT(reviewed(channel), SizeIs(1));
    EXPECT_EQ(only(FindingKind::NothingToClose, channel).severity, Severity::Warning);
  }
}

TEST(Review, FaultsComeFirstThenTheOrderOfTheSequence) {
  Channel channel = plain();
  channel.setup.sequence.pop_back();                // warning at step 8
  channel.setup.sequence[5].label = "+1 of arm 1";  // fault at step 6
  channel.setup.sequence[1].hold = Duration(0.5);   // warning at step 2
  const Findings found = reviewed(channel);
  ASSERT_THAT(found, SizeIs(3)) << everything(found);
  EXPECT_EQ(found[0].kind, FindingKind::OppositePolarity);
  EXPECT_EQ(found[1].kind, FindingKind::HoldTooShort);
  EXPECT_EQ(found[2].kind, FindingKind::MissingZero);
}

TEST(Review, WhatCannotBePredictedSaysWhy) {
  Channel channel = plain();
  channel.setup.shunts[0].resistance = Resistance(0);
  const Finding step = only(FindingKind::CannotPredict, channel);
  EXPECT_EQ(step.severity, Severity::Fault);
  EXPECT_EQ(step.step, 1u);
  EXPECT_THAT(step.what, HasSubstr(evaluate(channel).prediction.steps[1].error().what));

  channel = plain();
  channel.setup.bridge.arms[0] = Resistance(-350);
  const Finding bridge = only(FindingKind::CannotPredict, channel);
  EXPECT_FALSE(bridge.step.has_value());
  EXPECT_THAT(reviewed(channel), SizeIs(1));
}

TEST(Review, AStepWithoutUncertaintyIsAFaultSaidOnce) {
  Channel channel = plain();
  channel.setup.uncertainties.stated[{InputKind::Arm, 0}] = {.amount = -1};
  const Finding finding = only(FindingKind::CannotPredict, channel);
  EXPECT_THAT(finding.what, HasSubstr("no uncertainty"));
}

TEST(Review, RangeIsThatOfTheBridgeWithItsShuntsClosed) {
  // Published form (TN-514, from memory): v = R/(4 Rs + 2 R). 350 ohm with 58 k: 1.5041 mV/V.
  Channel channel = plain();
  channel.setup.instrument.range = Output(1.505e-3);
  EXPECT_THAT(reviewed(channel), IsEmpty());
  channel.setup.instrument.range = Output(1.503e-3);
  const Findings found = reviewed(FindingKind::RangeOverrun, channel);
  ASSERT_THAT(found, SizeIs(2));
  EXPECT_EQ(found[0].severity, Severity::Fault);
  EXPECT_EQ(found[0].step, 3u);
  EXPECT_EQ(found[1].step, 7u);
  EXPECT_THAT(found[0].what, HasSubstr("1.504 mV/V"));
  EXPECT_THAT(reviewed(FindingKind::RangeOverrun, mended(channel, found[0])), SizeIs(1));

  // An unbalance of 0.3 % of arm 1 alone: v = x/(4 + 2x) = 0.749 mV/V, so that + 0.5 is above 1.2.
  Channel unbalanced = plain();
  unbalanced.setup.bridge.arms[0] = Resistance(350 * 1.003);
  unbalanced.setup.instrument.range = Output(1.2e-3);
  unbalanced.setup.sequence = {{"zero", {}}, {"+1", {0}}, {"zero", {}}, {"-1", {3}}, {"zero", {}}};
  EXPECT_EQ(only(FindingKind::RangeOverrun, unbalanced).step, 1u);
  unbalanced.setup.instrument.range = Output(0.7e-3);
  const Finding zero = only(FindingKind::RangeOverrun, unbalanced);
  EXPECT_FALSE(zero.step.has_value());
  EXPECT_THAT(zero.what, HasSubstr("0.7489 mV/V"));
}

TEST(Review, AStepNoGreaterThanItsUncertaintyTellsNothing) {
  Channel channel = plain();
  const double expanded = evaluate(channel).budget.of(Scope::Chain).steps[1]->expanded;
  // A resistor so large that its step of R/(F Rs) is below what a 500 um/m step is uncertain by.
  channel.setup.shunts[0].resistance = Resistance(350 / (2 * expanded * 1e-6) * 1e3);
  const Finding finding = only(FindingKind::BelowUncertainty, channel);
  EXPECT_EQ(finding.severity, Severity::Warning);
  EXPECT_EQ(finding.step, 1u);
  EXPECT_THAT(reviewed(FindingKind::BelowUncertainty, mended(channel, finding)), IsEmpty());

  channel = plain();
  channel.setup.shunts[0].a = Node::PPlus, channel.setup.shunts[0].b = Node::PMinus;
  EXPECT_THAT(only(FindingKind::BelowUncertainty, channel).what, HasSubstr("changes nothing"));
}

TEST(Review, TheSameStepTwiceInARowIsADuplicateAndALevelAgainIsNone) {
  Channel channel = plain();
  channel = withStepInserted(channel, 2, channel.setup.sequence[1]);
  const Finding finding = only(FindingKind::Duplicate, channel);
  EXPECT_EQ(finding.step, 2u);
  EXPECT_EQ(mended(channel, finding), plain());

  Channel falling = plain();
  falling = withStepInserted(falling, 4, falling.setup.sequence[2]);
  falling = withStepInserted(falling, 5, falling.setup.sequence[1]);
  EXPECT_THAT(reviewed(falling), IsEmpty()) << everything(reviewed(falling));
}

TEST(Review, TwoShuntsThatAreOneResistorAtOnePlaceAreFound) {
  Channel channel = plain();
  channel.setup.shunts[1] = channel.setup.shunts[0];
  channel.setup.shunts[1].name = "again";
  std::swap(channel.setup.shunts[1].a, channel.setup.shunts[1].b);
  const Findings found = reviewed(FindingKind::Duplicate, channel);
  ASSERT_THAT(found, SizeIs(2)) << everything(found);  // and two levels that cannot be told apart
  EXPECT_EQ(found[1].shunt, 1u);
  const Channel merged = mended(channel, found[1]);
  EXPECT_THAT(merged.setup.shunts, SizeIs(5));
  EXPECT_THAT(reviewed(FindingKind::Duplicate, merged), IsEmpty());

  channel = plain();
  channel.setup.shunts[0].part.id = channel.setup.shunts[3].part.id =
      "S-1";  // at two places, at different times
  EXPECT_THAT(reviewed(FindingKind::Duplicate, channel), IsEmpty());
  channel.setup.sequence[5].closed = {0, 3};
  const Finding both = only(FindingKind::Duplicate, channel);
  EXPECT_EQ(both.severity, Severity::Fault);
  EXPECT_THAT(reviewed(FindingKind::Duplicate, mended(channel, both)), SizeIs(0));
}

TEST(Review, LevelsAreTooCloseWhenTheirDifferenceIsWithinItsUncertainty) {
  // Resistors of 0.01 % (usual, core/budget/inputs.h): two of 1000 um/m are uncertain by some 0.06 um/m each,
  // what they share cancels. 0.1 % is 1 um/m apart, 1e-6 is 0.001.
  Channel channel = withResistances(plain(), {174650, 87150, 87150 * 1.001});
  EXPECT_THAT(reviewed(FindingKind::Duplicate, channel), IsEmpty());
  channel = withResistances(plain(), {174650, 87150, 87150 * (1 + 1e-6)});
  const Finding finding = only(FindingKind::Duplicate, channel);
  EXPECT_EQ(finding.severity, Severity::Note);
  EXPECT_EQ(finding.step, 3u);
  EXPECT_THAT(reviewed(FindingKind::Duplicate, mended(channel, finding)), IsEmpty());
}

TEST(Review, AGapIsFilledByShuntsInParallel) {
  // Derived: in parallel on one arm conductances add up, and levels nearly do. 500, 1000 and 3000 um/m are
  // 500, 500 and 2000 apart; the only sum between, 1500, leaves 1500, three times the median of 500. Two of
  // 1000 make 2000: then 500, 500, 1000 and 1000, median 750.
  Channel channel = plain();
  channel.setup.sequence = {{"zero", {}}, {"+1", {0}}, {"+2", {1}}, {"+3", {2}}, {"zero", {}}};
  channel = withResistances(channel, {350 / 1e-3, 350 / 2e-3, 350 / 6e-3});
  const Finding open = only(FindingKind::Gap, channel);
  EXPECT_EQ(open.severity, Severity::Note);
  EXPECT_EQ(open.step, 3u);
  EXPECT_THAT(open.mends, IsEmpty());

  channel.setup.shunts.push_back(
      {"spare", Resistance(350 / 2e-3), Node::Arm2Begin, Node::Arm2End});  // 1000 um/m, in no step
  const Channel filled = mended(channel, only(FindingKind::Gap, channel));
  EXPECT_THAT(reviewed(FindingKind::Gap, filled), IsEmpty());
  ASSERT_THAT(filled.setup.sequence, SizeIs(6));
  EXPECT_THAT(filled.setup.sequence[3].closed, SizeIs(2));
  const double inserted = evaluate(filled).prediction.steps[3]->reading.base();
  EXPECT_NEAR(inserted, 2000, 0.01 * 2000);  // parallel levels fall short by some F x strain, 0.4 %
}

TEST(Review, SidesAreComparedWithinTheLimitOrTwoPercent) {
  Channel channel = plain();
  channel.setup.shunts[4].resistance = Resistance(1.015 * 87150);
  EXPECT_THAT(reviewed(FindingKind::UnbalancedPolarities, channel), IsEmpty());
  channel.setup.shunts[4].resistance = Resistance(1.03 * 87150);
  EXPECT_EQ(only(FindingKind::UnbalancedPolarities, channel).severity, Severity::Note);
  channel.setup.limits.relative = 0.05;
  EXPECT_THAT(reviewed(FindingKind::UnbalancedPolarities, channel), IsEmpty());
}

TEST(Review, AMissingLevelOfTheOtherSideIsInserted) {
  Channel channel = plain();
  channel = withStepRemoved(channel, 6);
  const Finding finding = only(FindingKind::UnbalancedPolarities, channel);
  EXPECT_EQ(finding.severity, Severity::Warning);
  EXPECT_EQ(finding.step, 2u);
  const Channel whole = mended(channel, finding);
  EXPECT_EQ(whole, plain());  // the same resistor lies on arm 1 already; the label "+2" becomes "-2"
}

TEST(Review, ASideThatIsMissingAltogetherIsANoteAndIsAdded) {
  Channel channel = plain();
  channel.setup.shunts.resize(3);
  channel.setup.sequence.resize(5);
  const Finding finding = only(FindingKind::UnbalancedPolarities, channel);
  EXPECT_EQ(finding.severity, Severity::Note);
  Channel both = mended(channel, finding);
  ASSERT_THAT(both.setup.shunts, SizeIs(6));
  for (std::size_t k = 3; k < 6; ++k) {
    EXPECT_EQ(both.setup.shunts[k].part.id, both.setup.shunts[k - 3].name);  // one resistor at two places
    both.setup.shunts[k].part = {};
  }
  EXPECT_EQ(both, plain());
}

TEST(Review, ZerosAreMissedAtStartBetweenTheSidesAndAtTheEnd) {
  Channel channel = plain();
  for (const std::size_t step : {8, 4, 0}) channel = withStepRemoved(channel, step);
  const Findings found = reviewed(FindingKind::MissingZero, channel);
  ASSERT_THAT(found, SizeIs(3));
  EXPECT_EQ(found[0].severity, Severity::Warning);
  EXPECT_EQ(found[0].step, 0u);
  EXPECT_EQ(found[1].severity, Severity::Warning);
  EXPECT_EQ(found[1].step, 5u);
  EXPECT_EQ(found[2].severity, Severity::Note);
  EXPECT_EQ(found[2].step, 3u);
  for (int left = 2; left >= 0; --left) {
    channel = mended(channel, reviewed(FindingKind::MissingZero, channel).front());
    EXPECT_THAT(reviewed(FindingKind::MissingZero, channel), SizeIs(left));
  }
  EXPECT_EQ(channel, plain());
}

TEST(Review, SidesThatAreMixedOnPurposeNeedNoZeroBetween) {
  Channel channel = plain();
  channel.setup.sequence = {{"zero", {}}, {"", {0}}, {"", {4}}, {"", {1}},
                            {"", {3}},    {"", {5}}, {"", {2}}, {"zero", {}}};
  EXPECT_THAT(reviewed(FindingKind::MissingZero, channel), IsEmpty());
}

TEST(Review, EachReasonForALongerHoldIsSaidByItself) {
  Channel channel = plain();
  for (Step& step : channel.setup.sequence) step.hold = Duration(0.5);
  Finding finding = only(FindingKind::HoldTooShort, channel);
  EXPECT_THAT(finding.what, HasSubstr("less than one second"));
  EXPECT_THAT(finding.what, HasSubstr("9 steps"));
  EXPECT_THAT(finding.mends, SizeIs(2));
  EXPECT_THAT(reviewed(mended(channel, finding)), IsEmpty());
  EXPECT_EQ(mended(channel, finding, 1).setup.sequence[1].hold, Duration(0.5));

  channel = plain();
  channel.setup.acquisition.sampleRate = Frequency(5);  // 2 s are 10 samples
  finding = only(FindingKind::HoldTooShort, channel);
  EXPECT_THAT(finding.what, HasSubstr("10 samples"));
  EXPECT_THAT(reviewed(mended(channel, finding)), IsEmpty());

  channel = plain();
  channel.setup.sequence[3].hold = Duration(1.25);  // 62.5 periods keep 1/(pi 62.5) = 0.51 % of a hum
  finding = only(FindingKind::HoldTooShort, channel);
  EXPECT_EQ(finding.severity, Severity::Note);
  EXPECT_EQ(finding.step, 3u);
  EXPECT_THAT(finding.what, HasSubstr("0.51 %"));
  EXPECT_DIGITS(mended(channel, finding).setup.sequence[3].hold.base(), 1.26, 12);
  channel.setup.acquisition.mains.reset();
  EXPECT_THAT(reviewed(channel), IsEmpty());
}

TEST(Review, AFilterNeedsItsTimeToSettle) {
  // First order: e^(-t/T) = 1e-4 at t = 9.210 T, T = 1/(2 pi 0.5 Hz): 2.932 s.
  Channel channel = plain();
  channel.setup.acquisition.filter = {FilterKind::Butterworth, 1, Frequency(0.5), Duration(0.1)};
  const Finding finding = only(FindingKind::SettleTooShort, channel);
  EXPECT_EQ(finding.severity, Severity::Warning);
  EXPECT_THAT(finding.what, HasSubstr("2.932 s"));
  const Channel longer = mended(channel, finding);
  EXPECT_THAT(reviewed(longer), IsEmpty());
  EXPECT_GE(longer.setup.sequence[0].settle.base(), 2.932);
  EXPECT_EQ(longer.setup.sequence[0].hold, Duration(2));

  channel.setup.acquisition.filter.order = 99;
  EXPECT_THAT(only(FindingKind::SettleTooShort, channel).what, HasSubstr("cannot be told"));
}

TEST(Review, HeatInAShuntIsComparedWithItsRating) {
  // Equal arms of 350 ohm at 10 V: a resistor of 1 k across one arm sees V R' / (R + R') with R' = 259.26
  // ohm: 4.2553 V, so 18.108 mW (Ohm's law).
  Channel channel = plain();
  channel = withResistances(channel, {174650, 87150, 1000});
  channel.setup.instrument.excitation = Voltage(10);
  channel.setup.instrument.unit = ReadingUnit::MillivoltPerVolt;
  EXPECT_THAT(reviewed(FindingKind::ShuntPower, channel), IsEmpty());  // below 100 mW, rating not known
  channel.setup.shunts[2].part.rating = Power(0.2);
  EXPECT_THAT(reviewed(FindingKind::ShuntPower, channel), IsEmpty());
  channel.setup.shunts[2].part.rating = Power(0.1);
  Finding finding = only(FindingKind::ShuntPower, channel);
  EXPECT_EQ(finding.severity, Severity::Note);
  EXPECT_EQ(finding.step, 3u);
  EXPECT_EQ(finding.shunt, 2u);
  EXPECT_THAT(finding.what, HasSubstr("18.1 mW"));
  EXPECT_EQ(mended(channel, finding).setup.instrument.excitation, Voltage(5));  // sqrt(10/18.1) is 7.43 V
  EXPECT_THAT(reviewed(FindingKind::ShuntPower, mended(channel, finding)), IsEmpty());
  channel.setup.shunts[2].part.rating = Power(0.018);
  finding = only(FindingKind::ShuntPower, channel);
  EXPECT_EQ(finding.severity, Severity::Fault);
  EXPECT_EQ(only(FindingKind::ShuntPower, mended(channel, finding)).severity, Severity::Note);
  channel.setup.shunts[2].part.rating.reset();
  channel.setup.instrument.excitation = Voltage(24);
  EXPECT_EQ(only(FindingKind::ShuntPower, channel).severity, Severity::Warning);
}

TEST(Review, GridHeatAboveTheHandbooksRangeIsFoundAtEveryRowOfIt) {
  std::size_t cells = 0;
  for (const auto& row : test::readCsv(std::string(SHUNTWRIGHT_TESTS_DIR) + "/reference/power_density.csv")) {
    Channel channel = plain();
    Grid& grid = channel.setup.bridge.gauge.grid;
    const auto sink = heatSinkFromKey(row.at("heat_sink") == "very poor" ? "very_poor" : row.at("heat_sink"));
    const auto demand = heatDemandFromKey(row.at("test") + "_" + row.at("accuracy"));
    if (!sink || !demand) continue;  // limits per gauge, of another source: no densities
    ++cells;
    grid.heatSink = *sink, grid.demand = *demand;
    grid.area = Area(4e-6);
    // Half of the excitation lies over the gauge: P = U^2/(4 R), density P/A (TN-502, from memory).
    const double most = 1e3 * test::number(row, "max_kW_per_m2");
    const double excitation_V = 2 * std::sqrt(350 * 4e-6 * most);
    channel.setup.instrument.excitation = Voltage(0.999 * excitation_V);
    EXPECT_THAT(reviewed(channel), IsEmpty()) << everything(reviewed(channel));
    channel.setup.instrument.excitation = Voltage(1.001 * excitation_V);
    const Finding finding = only(FindingKind::PowerDensity, channel);
    EXPECT_EQ(finding.severity, Severity::Warning);
    const Channel cooler = mended(channel, finding);
    EXPECT_THAT(reviewed(FindingKind::PowerDensity, cooler), IsEmpty());
    EXPECT_LE(cooler.setup.instrument.excitation.base(), excitation_V);
    EXPECT_GE(cooler.setup.instrument.excitation.base(), 0.4 * excitation_V);  // not lower than need be
  }
  EXPECT_EQ(cells, heatSinkCount * heatDemandCount);
}

TEST(Review, ACurrentSourceIsTurnedDownInsteadOfAVoltage) {
  Channel channel = plain();
  channel.setup.bridge.gauge.grid.area = Area(1e-6);
  channel.setup.instrument.current = CurrentSource{Current(0.02), Resistance(350)};
  const Channel cooler = mended(channel, only(FindingKind::PowerDensity, channel));
  EXPECT_LT(cooler.setup.instrument.current->supplied.base(), 0.02);
  EXPECT_EQ(cooler.setup.instrument.excitation, channel.setup.instrument.excitation);
  EXPECT_THAT(reviewed(FindingKind::PowerDensity, cooler), IsEmpty());
}

TEST(Review, ALabelThatSaysTheOtherPolarityIsAFault) {
  Channel channel = plain();
  channel.setup.sequence[2].label = "−2";
  const Finding finding = only(FindingKind::OppositePolarity, channel);
  EXPECT_EQ(finding.severity, Severity::Fault);
  EXPECT_EQ(finding.step, 2u);
  ASSERT_THAT(finding.mends, SizeIs(2));
  EXPECT_EQ(mended(channel, finding).setup.sequence[2].label, "+2");
  const Channel moved = mended(channel, finding, 1);
  EXPECT_EQ(moved.setup.shunts[1].a, Node::Arm1Begin);
  EXPECT_EQ(moved.setup.shunts[1].b, Node::Arm1End);
  EXPECT_THAT(reviewed(FindingKind::OppositePolarity, moved), IsEmpty());
}

TEST(Review, ANameSaysAPolarityWhereTheLabelDoesNot) {
  Channel channel = plain();
  channel.setup.sequence[2].label = "second";
  EXPECT_THAT(reviewed(channel), IsEmpty());
  channel.setup.shunts[1].name = "R2 (-)";
  const Finding finding = only(FindingKind::OppositePolarity, channel);
  EXPECT_EQ(finding.shunt, 1u);
  EXPECT_EQ(mended(channel, finding).setup.shunts[1].name, "R2 (+)");
}

TEST(Review, AChannelWithAllShuntsOnTheWrongArmIsOneFinding) {
  Channel channel = plain();
  for (Shunt& shunt : channel.setup.shunts) {
    const bool onGauge = shunt.a == Node::Arm1Begin;
    shunt.a = onGauge ? Node::Arm2Begin : Node::Arm1Begin;
    shunt.b = onGauge ? Node::Arm2End : Node::Arm1End;
  }
  const Finding finding = only(FindingKind::OppositePolarity, channel);
  EXPECT_THAT(finding.what, HasSubstr("6 steps"));
  EXPECT_THAT(reviewed(FindingKind::OppositePolarity, mended(channel, finding)), IsEmpty());
  EXPECT_THAT(reviewed(FindingKind::OppositePolarity, mended(channel, finding, 1)), IsEmpty());
}

// Shunts through leads.

struct LeadCase {
  BridgeType type;
  bool sixWire;
  Node a, b;
  double perR;  ///< first-order error against the shunt at the gauge's own ends, in RL/R
};

TEST(Review, ATerminalShuntIsOffByTheLeadsOfEachConnection) {
  // Micro-Measurements article on leadwire resistance, TN-514 and Mechanical Engineers' Handbook vol. 2, sec.
  // 6, for the parts; first-order ratios to the lead-free value derived from them: at the terminals 1 + 3r,
  // at the gauge 1 - r (three wires), and so on; the errors are their ratios.
  const std::vector<LeadCase> cases = {
      {BridgeType::QuarterThreeWire, false, Node::PPlus, Node::SMinus, 4},
      {BridgeType::QuarterTwoWire, false, Node::PPlus, Node::SMinus, 4},
      {BridgeType::HalfBending, false, Node::PPlus, Node::SMinus, 4},
      {BridgeType::FullBending, false, Node::PPlus, Node::SMinus, 4},
      {BridgeType::FullBending, true, Node::PPlus, Node::SMinus, 4},
      {BridgeType::FullBending, true, Node::SensePlus, Node::SMinus, 2},
  };
  constexpr double r = 1e-3;
  for (const LeadCase& one : cases) {
    Channel channel;
    channel.setup = test::withLeads(test::equalArms(one.type, Resistance(350)), Resistance(350 * r));
    channel.setup.bridge.sixWire = one.sixWire;
    channel.setup = test::withShunt(channel.setup, Resistance(100000), one.a, one.b);
    const Finding finding = only(FindingKind::ShuntThroughLeads, channel);
    const std::string text = finding.what.substr(finding.what.find("simulate ") + 9);
    // Second order in r: below 1 % of the error at r = 0.1 %; two digits are printed.
    EXPECT_NEAR(std::stod(text), 100 * one.perR * r, 0.02) << finding.what;
    EXPECT_THAT(finding.what, HasSubstr("more than"));
    EXPECT_EQ(finding.severity, Severity::Note);
    const Channel moved = mended(channel, finding);
    EXPECT_THAT(reviewed(FindingKind::ShuntThroughLeads, moved), IsEmpty());
    EXPECT_LT(moved.setup.shunts[0].b, Node::Arm2Begin);
  }
}

TEST(Review, ShuntsRightAcrossAnArmAreNotThroughLeadsWhereverTheArmIs) {
  for (std::size_t type = 0; type < bridgeTypeCount; ++type) {
    Channel channel;
    channel.setup =
        test::withLeads(test::equalArms(static_cast<BridgeType>(type), Resistance(350)), Resistance(5));
    for (const std::size_t arm : {1, 2, 3, 4})
      channel.setup = test::withShuntOnArm(channel.setup, Resistance(100000), arm);
    EXPECT_THAT(reviewed(FindingKind::ShuntThroughLeads, channel), IsEmpty()) << type;
  }
  // Over terminals that are the ends of a completion arm inside the instrument.
  Channel inside;
  inside.setup = test::withLeads(test::equalArms(BridgeType::HalfBending, Resistance(350)), Resistance(5));
  inside.setup = test::withShunt(inside.setup, Resistance(100000), Node::PMinus, Node::SPlus);
  EXPECT_THAT(reviewed(FindingKind::ShuntThroughLeads, inside), IsEmpty());
  // A dummy shunted from S- instead of right across it is not (TN-514).
  Channel dummy;
  dummy.setup =
      test::withLeads(test::equalArms(BridgeType::QuarterThreeWire, Resistance(350)), Resistance(5));
  dummy.setup = test::withShunt(dummy.setup, Resistance(100000), Node::SMinus, Node::PMinus);
  EXPECT_EQ(only(FindingKind::ShuntThroughLeads, dummy).severity, Severity::Warning);
}

TEST(Review, TheReferenceCasesOfTerminalShuntsAreOffByWhatTheyRecord) {
  // Rows of bridge_cases.csv (ngspice 39 and nodal analysis) for shunts at the terminals. Their output over
  // that of the same shunt at the arm's ends is the ratio of simulated values but for the bridge's curvature,
  // some F x strain of it, and for the two digits that are printed: 1 % and 0.05 points.
  std::size_t rows = 0;
  for (const auto& row : test::readCsv(std::string(SHUNTWRIGHT_TESTS_DIR) + "/reference/bridge_cases.csv")) {
    if (row.at("group") != "leads") continue;
    const test::BridgeCase one(row);
    const std::string& place = one.text("shunt_position");
    if (!place.starts_with("instrument_terminals_P+_to_S-")) continue;
    const auto setup = test::shuntedSetupOf(one);
    if (!setup) continue;
    ++rows;
    Channel channel;
    channel.setup = *setup;
    channel.setup.sequence = {channel.setup.sequence.back()};
    const Finding finding = only(FindingKind::ShuntThroughLeads, channel);
    Channel own = mended(channel, finding);
    const double ratio =
        one.number("expected_value") / (one.text("quantity") == "output_change"
                                            ? 1e3 * test::lastStep(own.setup).output.base()
                                            : 1e6 * test::lastStep(own.setup).indicated.base());
    const std::string text = finding.what.substr(finding.what.find("simulate ") + 9);
    EXPECT_NEAR(std::stod(text), 100 * (ratio - 1), 0.01 * 100 * (ratio - 1) + 0.05) << one.text("id");
  }
  EXPECT_GE(rows, 4u);
}

// Resistors.

Stock stockOf(Resistor resistor) { return {{std::move(resistor)}, {}, {}}; }

TEST(Review, AnOverdueResistorIsAFaultAndOneThatIsDueSoonANote) {
  using namespace std::chrono;
  Channel channel = plain();
  channel.setup.shunts[0].part = {"S-104", year_month_day(2026y / May / 10), {}};
  Finding finding = only(FindingKind::OverdueResistor, channel);
  EXPECT_EQ(finding.severity, Severity::Fault);
  EXPECT_EQ(finding.shunt, 0u);
  EXPECT_THAT(finding.what, HasSubstr("was due 2026-05-10"));
  EXPECT_THAT(finding.mends, IsEmpty());
  channel.setup.shunts[0].part.due = year_month_day(2026y / May / 11);
  EXPECT_EQ(only(FindingKind::OverdueResistor, channel).severity, Severity::Note);
  channel.setup.shunts[0].part.due = year_month_day(2026y / June / 10);  // 30 days
  EXPECT_EQ(only(FindingKind::OverdueResistor, channel).severity, Severity::Note);
  channel.setup.shunts[0].part.due = year_month_day(2026y / June / 11);
  EXPECT_THAT(reviewed(channel), IsEmpty());

  channel.setup.shunts[0].part.due = year_month_day(2026y / May / 10);
  channel.setup.shunts[3].part = channel.setup.shunts[0].part;  // one resistor, one finding
  const Resistor renewed{
      .id = "S-104", .nominal = Resistance(174650), .due = year_month_day(2027y / May / 10)};
  const Stock stock = stockOf(renewed);
  finding = only(FindingKind::OverdueResistor, channel, stock);
  EXPECT_THAT(reviewed(FindingKind::OverdueResistor, mended(channel, finding, 0), stock), IsEmpty());
}

TEST(Review, WhatTheStockSaysOtherwiseIsTakenFromThere) {
  Channel channel = plain();
  channel.setup.shunts[0].part.id = "S-104";
  const Resistor measured{.id = "S-104",
                          .nominal = Resistance(174650),
                          .certificate = Certificate{Resistance(174662), Resistance(9), 2}};
  const Stock stock = stockOf(measured);
  const Finding finding = only(FindingKind::PartChanged, channel, stock);
  EXPECT_EQ(finding.severity, Severity::Warning);
  EXPECT_THAT(finding.what, HasSubstr("174.662 kΩ instead of 174.65 kΩ"));
  const Channel taken = mended(channel, finding);
  EXPECT_EQ(taken.setup.shunts[0].resistance, Resistance(174662));
  EXPECT_THAT(reviewed(FindingKind::PartChanged, taken, stock), IsEmpty());
  EXPECT_THAT(reviewed(FindingKind::PartChanged, channel, {}), IsEmpty());
}

// The shortcut.

TEST(Review, UnequalArmsMakeTheShortcutMiss) {
  // An internal half bridge of 1000 ohm behind a 350 ohm gauge: a shunt over its arm acts by 1000/Rs, not by
  // 350/Rs, so that R/(F N (R + Rs)) with the gauge's R is low by about 1 - 350/1000 = 65 %.
  Channel channel;
  channel.setup = test::equalArms(BridgeType::HalfBending, Resistance(350));
  channel.setup.bridge.arms[2] = channel.setup.bridge.arms[3] = Resistance(1000);
  channel.setup = test::withShuntOnArm(channel.setup, Resistance(500000), 4);
  const Finding finding = only(FindingKind::ShortcutError, channel);
  EXPECT_EQ(finding.severity, Severity::Note);
  EXPECT_EQ(finding.step, 0u);
  // N = 2: the shortcut gives R/(2 (R + Rs)), the whole network R'/(R' + 2 Rs) (formulas of Bower, ch. 29).
  const double shortcut = 350.0 / (2 * 350350.0), exact = 1000.0 / (1000 + 2 * 500000.0);
  EXPECT_THAT(finding.what,
              HasSubstr(std::to_string(static_cast<int>(std::round(100 * (1 - shortcut / exact))))));
  EXPECT_THAT(finding.what, HasSubstr("low"));
  EXPECT_THAT(finding.mends, IsEmpty());
}

TEST(Review, AnotherBridgeFactorThanTheTemplatesMakesTheShortcutMiss) {
  Channel channel = plain(BridgeType::HalfBending);
  channel.setup.instrument.bridgeFactor = 1;
  const Finding finding = only(FindingKind::ShortcutError, channel);
  EXPECT_EQ(finding.severity, Severity::Warning);
  // N = 1 instead of 2 doubles the shortcut; with R/(2 Rs + R) exact it is 100 % high, 0.3 % less at most.
  EXPECT_THAT(finding.what, HasSubstr("100 % high"));
  EXPECT_EQ(mended(channel, finding).setup.instrument.bridgeFactor, 2);
  EXPECT_THAT(reviewed(mended(channel, finding)), IsEmpty());
}

// The examples.

Document example(const std::string& name) {
  std::ifstream file(std::filesystem::path(SHUNTWRIGHT_SOURCE_DIR) / "examples" / name, std::ios::binary);
  std::ostringstream text;
  text << file.rdbuf();
  auto document = readDocument(text.str());
  EXPECT_TRUE(document) << name << ": " << (document ? "" : document.error().text());
  return document ? *std::move(document) : Document{};
}

TEST(Review, ExamplesHaveFewFindingsAndNoneOfACarelessPlan) {
  using enum FindingKind;
  for (const char* name :
       {"demo.bridgecal", "plan.bridgecal", "load_cell.bridgecal", "quarter_bridge.bridgecal"}) {
    const Document document = example(name);
    for (const auto& channel : document.channels) {
      const Findings found = review(*channel, evaluate(*channel), *document.stock, today);
      EXPECT_LE(found.size(), 4u) << name << " " << channel->name << "\n" << everything(found);
      for (const FindingKind careless :
           {CannotPredict, BelowUncertainty, Duplicate, Gap, MissingZero, HoldTooShort, SettleTooShort,
            ShuntPower, OppositePolarity, PartChanged})
        EXPECT_THAT(of(careless, found), IsEmpty()) << name << " " << channel->name << "\n"
                                                    << everything(found);
    }
  }
}

}  // namespace review_test
}  // namespace core
