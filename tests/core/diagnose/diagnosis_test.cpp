// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diagnose/diagnosis.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <stop_token>

#include "core/diagnose/refit.h"
#include "tests/support/bridges.h"
#include "tests/support/sample_channel.h"

// What is planted is what must be found: the planted fault is the truth of each test. The network that both
// sides use is held against ngspice in tests/reference; tests/diagnosis plants faults by a solver of its own.

namespace core {
namespace {

Diagnosis diagnosisOf(const Channel& channel) {
  const SetupPrediction prediction = predict(channel.setup);
  return diagnose(channel.setup, prediction, budgetOf(channel.setup, prediction), channel.checks.back());
}

/// `channel` with a check that shows exactly what it would with `fault`, and each reading known to 0.2 µm/m.
Channel planted(Channel channel, const Fault& fault) {
  channel = sample::withCheckReading(std::move(channel), 1.0);
  const SetupPrediction prediction = predict(channel.setup);
  Check& check = channel.checks.back();
  const CheckPoints points =
      checkPoints(channel.setup, prediction, budgetOf(channel.setup, prediction), check);
  const auto changes = changesUnder(channel.setup, check, points, fault);
  for (std::size_t k = 0; k < points.size(); ++k) {
    check.readings[points.steps[k]]->mean = Reading(changes->at(k));
    check.readings[points.steps[k]]->uncertainty = Reading(0.2);
  }
  return channel;
}

const Explanation* find(const Diagnosis& diagnosis, CauseKind kind) {
  const auto found = std::find_if(diagnosis.explanations.begin(), diagnosis.explanations.end(),
                                  [&](const Explanation& e) { return e.fault.kind == kind; });
  return found == diagnosis.explanations.end() ? nullptr : &*found;
}

/// Six resistors of their own, in µm/m; nothing that two arms share.
Channel quarter() { return sample::nineStepChannel(); }

Channel sixWire() {
  Channel channel = sample::channelOf(BridgeType::FullBending, true);
  for (const double ohm : {174650.0, 87150.0, 58000.0}) {
    channel = withShuntAdded(channel, {"up", Resistance(ohm), Node::Arm2Begin, Node::Arm2End});
    channel = withShuntAdded(channel, {"down", Resistance(ohm), Node::Arm1Begin, Node::Arm1End});
  }
  return sample::withTwoSidedSequence(channel, Duration(2));
}

struct PlantedCase {
  std::string name;
  Fault fault;
  bool onSixWire = false;
};

void PrintTo(const PlantedCase& planted, std::ostream* out) { *out << planted.name; }

class DiagnosePlanted : public testing::TestWithParam<PlantedCase> {};

TEST_P(DiagnosePlanted, IsAmongTheTiedFirstCausesWithItsSize) {
  const PlantedCase& given = GetParam();
  const Diagnosis diagnosis = diagnosisOf(planted(given.onSixWire ? sixWire() : quarter(), given.fault));
  ASSERT_TRUE(diagnosis.result == DiagnosisResult::Found || diagnosis.result == DiagnosisResult::Tied)
      << diagnosisResultKey(diagnosis.result) << " " << diagnosis.sentence;
  const auto end = diagnosis.explanations.begin() + static_cast<std::ptrdiff_t>(diagnosis.tied);
  const auto found = std::find_if(diagnosis.explanations.begin(), end, [&](const Explanation& e) {
    return e.fault.kind == given.fault.kind && e.fault.index == given.fault.index &&
           e.fault.other == given.fault.other;
  });
  ASSERT_NE(found, end) << "first is " << causeKindKey(diagnosis.explanations.front().fault.kind);
  // Without noise only the descent's stop is left, a millionth of chi-square: far below the size's own
  // standard uncertainty.
  if (found->standard)
    EXPECT_NEAR(found->fault.size, given.fault.size, 0.02 * *found->standard);
  else
    EXPECT_EQ(found->fault.size, given.fault.size);
  EXPECT_GT(found->explained, 0.999);
}

INSTANTIATE_TEST_SUITE_P(
    Cause, DiagnosePlanted,
    testing::Values(PlantedCase{"GainHigh", {CauseKind::Scale, 0, 0, 1.03}},
                    PlantedCase{"GainLow", {CauseKind::Scale, 0, 0, 0.95}},
                    PlantedCase{"QuarterSetAsHalf", {CauseKind::BridgeFactor, 0, 0, 2}},
                    PlantedCase{"PoissonForgotten", {CauseKind::BridgeFactor, 0, 0, 1.3}},
                    PlantedCase{"FactorThousand", {CauseKind::Units, 0, 0, 1000}},
                    PlantedCase{"FactorFour", {CauseKind::Units, 0, 0, 4}},
                    PlantedCase{"MillivoltPerVoltForStrain", {CauseKind::Units, 0, 0, 1 / 2000.0}},
                    PlantedCase{"LongerLeads", {CauseKind::Leads, 0, 0, 4}},
                    PlantedCase{"BadContactInOneLead", {CauseKind::LeadContact, 0, 0, 5}},
                    PlantedCase{"ShuntsAtTheInstrument", {CauseKind::ShuntPlace, 0, 0, 1}},
                    PlantedCase{"ShuntsOnTheNextArm", {CauseKind::ShuntArm, 0, 0, 1}},
                    PlantedCase{"ResistorOffValue", {CauseKind::ShuntValue, 2, 0, 1.02}},
                    PlantedCase{"ResistorsExchanged", {CauseKind::ShuntsExchanged, 0, 2, 1}},
                    PlantedCase{"ResistorNeverClosed", {CauseKind::ShuntOpen, 2, 0, 1}},
                    PlantedCase{"ShuntsOfOneArmNeverClosed", {CauseKind::ShuntOpen, 1, 1, 1}},
                    PlantedCase{"NothingFollowsTheShunts", {CauseKind::NoResponse, 0, 0, 1}},
                    PlantedCase{"CompletionOff", {CauseKind::CompletionValue, 1, 0, 1.02}},
                    PlantedCase{"GaugeChanged", {CauseKind::ArmValue, 0, 0, 1.02}},
                    PlantedCase{"LeakOverTheGauge", {CauseKind::Leak, 0, 0, 1.0 / 20000}},
                    PlantedCase{"PolarityReversed", {CauseKind::PolarityReversed, 0, 0, 1}},
                    PlantedCase{"StepsExchanged", {CauseKind::StepsExchanged, 1, 2, 1}},
                    PlantedCase{"SidesExchanged", {CauseKind::SidesExchanged, 0, 0, 1}},
                    PlantedCase{"SenseOpen", {CauseKind::OpenSense, 0, 0, 1}, true},
                    PlantedCase{"ZeroJumped", {CauseKind::ZeroShift, 4, 0, 12}},
                    PlantedCase{"ZeroDrifts", {CauseKind::Drift, 0, 0, 0.7}},
                    PlantedCase{"ClippedBothWays", {CauseKind::Clipping, 0, 0, 2200}},
                    PlantedCase{"ClippedAbove", {CauseKind::Clipping, 1, 0, 1700}},
                    PlantedCase{"StrayReading", {CauseKind::StrayReading, 3, 0, 25}}),
    [](const auto& given) { return given.param.name; });

TEST(Diagnose, NamesNothingWhereReadingsAreAsExpected) {
  const Diagnosis diagnosis = diagnosisOf(planted(quarter(), {CauseKind::Scale, 0, 0, 1}));
  EXPECT_EQ(diagnosis.result, DiagnosisResult::Healthy);
  EXPECT_TRUE(diagnosis.explanations.empty());
  EXPECT_NEAR(diagnosis.chiSquare, 0, 1e-12);  // rounding of differences near 1e3 over 0.2
  EXPECT_EQ(diagnosis.degreesOfFreedom, 8);    // nine readings less the free offset
}

TEST(Diagnose, DoesNotMindAnOffsetOfTheInstrument) {
  Channel channel = planted(quarter(), {CauseKind::Scale, 0, 0, 1});
  for (auto& reading : channel.checks.back().readings) reading->mean += Reading(137);
  EXPECT_EQ(diagnosisOf(channel).result, DiagnosisResult::Healthy);
}

TEST(Diagnose, WhatCannotBeToldApartIsTied) {
  // A leak in parallel and a lower resistance are one and the same to the network.
  const Diagnosis diagnosis = diagnosisOf(planted(quarter(), {CauseKind::Leak, 0, 0, 1.0 / 20000}));
  ASSERT_EQ(diagnosis.result, DiagnosisResult::Tied);
  const Explanation* arm = find(diagnosis, CauseKind::ArmValue);
  ASSERT_TRUE(arm);
  EXPECT_NEAR(arm->fault.size, 1 / (1 + 350.0 / 20000), 1e-6);  // derived: R || 20 kohm over R
  // Nor do longer leads and a lower gain differ when every shunt sits at the gauge's end.
  EXPECT_EQ(diagnosisOf(planted(quarter(), {CauseKind::Leads, 0, 0, 4})).result, DiagnosisResult::Tied);
}

TEST(Diagnose, TwoFaultsAtOnceFitNoSingleCause) {
  Channel channel = planted(quarter(), {CauseKind::ShuntValue, 2, 0, 1.05});
  channel.checks.back().readings[7]->mean += Reading(60);
  channel.checks.back().readings[4]->mean += Reading(45);
  const Diagnosis diagnosis = diagnosisOf(channel);
  EXPECT_EQ(diagnosis.result, DiagnosisResult::NothingFits);
  EXPECT_EQ(diagnosis.tied, 0u);
}

TEST(Diagnose, AMissingReadingInTheMiddleIsNoObstacle) {
  Channel channel = planted(quarter(), {CauseKind::Scale, 0, 0, 1.03});
  channel.checks.back().readings[3].reset();
  const Diagnosis diagnosis = diagnosisOf(channel);
  EXPECT_EQ(diagnosis.degreesOfFreedom, 7);
  EXPECT_TRUE(find(diagnosis, CauseKind::Scale));
}

TEST(Diagnose, SaysWhyItIsNotPossible) {
  Channel channel = planted(quarter(), {CauseKind::Scale, 0, 0, 1.03});
  for (std::size_t step = 2; step < 9; ++step) channel.checks.back().readings[step].reset();
  Diagnosis diagnosis = diagnosisOf(channel);
  EXPECT_EQ(diagnosis.result, DiagnosisResult::NotPossible);
  EXPECT_NE(diagnosis.sentence.find("three"), std::string::npos) << diagnosis.sentence;

  // Readings of sixteen digits and no uncertainty at all: nothing weighs the zero steps.
  channel = planted(quarter(), {CauseKind::Scale, 0, 0, 1.03});
  for (auto& reading : channel.checks.back().readings) reading->uncertainty.reset();
  diagnosis = diagnosisOf(channel);
  EXPECT_EQ(diagnosis.result, DiagnosisResult::NotPossible);
  EXPECT_NE(diagnosis.sentence.find("rounding"), std::string::npos) << diagnosis.sentence;
}

TEST(Diagnose, TakesTypedReadingsAsGoodToTheirLastDigit) {
  Channel channel = planted(quarter(), {CauseKind::Scale, 0, 0, 1.03});
  for (auto& reading : channel.checks.back().readings) {
    reading->mean = Reading(std::round(10 * reading->mean.base()) / 10);
    reading->uncertainty.reset();
  }
  const Diagnosis diagnosis = diagnosisOf(channel);
  ASSERT_TRUE(diagnosis.takenDigit);
  EXPECT_DOUBLE_EQ(*diagnosis.takenDigit, 0.1);
  ASSERT_TRUE(find(diagnosis, CauseKind::Scale)) << diagnosis.sentence;
  EXPECT_NE(diagnosis.sentence.find("0.1 µm/m, one unit of its last digit"), std::string::npos)
      << diagnosis.sentence;
  // Where each reading has an uncertainty of its own, digits play no part.
  EXPECT_FALSE(diagnosisOf(planted(quarter(), {CauseKind::Scale, 0, 0, 1.03})).takenDigit);
}

TEST(Diagnose, GivesNoFactorToADeadChannel) {
  Channel channel = planted(quarter(), {CauseKind::NoResponse});
  for (std::size_t step = 0; step < 9; ++step)  // noise of its own size
    channel.checks.back().readings[step]->mean = Reading(step % 3 == 0 ? 0.2 : -0.1);
  const Diagnosis diagnosis = diagnosisOf(channel);
  ASSERT_EQ(diagnosis.result, DiagnosisResult::Found) << diagnosis.sentence;
  EXPECT_EQ(diagnosis.explanations.front().fault.kind, CauseKind::NoResponse);
  for (const Explanation& explanation : diagnosis.explanations) {
    EXPECT_FALSE(explanation.correction.legitimate) << explanation.title;
    EXPECT_NE(explanation.fault.kind, CauseKind::Units);
    EXPECT_NE(explanation.fault.kind, CauseKind::Scale);
  }
}

TEST(Diagnose, CanBeCancelled) {
  std::stop_source source;
  source.request_stop();
  const Channel channel = planted(quarter(), {CauseKind::Scale, 0, 0, 1.03});
  const SetupPrediction prediction = predict(channel.setup);
  const Diagnosis diagnosis = diagnose(channel.setup, prediction, budgetOf(channel.setup, prediction),
                                       channel.checks.back(), source.get_token());
  EXPECT_EQ(diagnosis.result, DiagnosisResult::NotPossible);
}

TEST(Diagnose, WeightsNeverSumToMoreThanOne) {
  const Diagnosis diagnosis = diagnosisOf(planted(quarter(), {CauseKind::Leads, 0, 0, 4}));
  double sum = 0;
  for (const Explanation& explanation : diagnosis.explanations) sum += explanation.weight;
  EXPECT_LE(sum, 1 + 1e-12);  // rounding of a sum of eight
  EXPECT_GT(sum, 0.9);
}

}  // namespace
}  // namespace core
