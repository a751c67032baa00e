// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/figures.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/support/sample_channel.h"

namespace core {
namespace {

using testing::HasSubstr;
using testing::MatchesRegex;
using testing::StartsWith;

/// Nine steps as expected, each reading known to 0.8 um/m; the middle of the plus side is 9 too high.
Channel sampleChannel() {
  Channel channel = sample::withCheckReading(sample::nineStepChannel(), 1.0);
  for (auto& reading : channel.checks[0].readings) reading->uncertainty = Reading(0.8);
  channel.checks[0].readings[2]->mean += Reading(9);
  channel.setup.limits.linearityFrom = ReferenceLine::EndPoint;
  return channel;
}

std::string valueOf(const Channel& channel, const std::string& name) {
  for (const Entry& figure : figuresOf(channel, evaluate(channel), 0))
    if (figure.name == name) return figure.value;
  return "no such figure";
}

TEST(Figures, EveryFigureOfMeritIsThereUnderItsName) {
  const Channel channel = sampleChannel();
  for (const char* name : {"Nonlinearity", "Hysteresis", "Repeatability", "Zero return", "Zero shift",
                           "Plus/minus asymmetry", "Combined error", "Span error"})
    EXPECT_NE(valueOf(channel, name), "no such figure") << name;
  EXPECT_EQ(valueOf(channel, "Hysteresis"), "not known: the plan has no steps that come back down");
}

TEST(Figures, AFigureHasUncertaintyStepLimitAndVerdict) {
  Channel channel = sampleChannel();
  // Derived: 9 of a span of 5982 um/m is 0.150 %.
  EXPECT_THAT(valueOf(channel, "Nonlinearity"),
              MatchesRegex("0\\.15. ± 0\\.0.. % of the measured span at step 3"));
  channel.setup.limits.merits = {{MeritKind::Nonlinearity, 0.005}};
  EXPECT_THAT(valueOf(channel, "Nonlinearity"), HasSubstr(" at step 3, limit 0.50 %: pass"));
  channel.setup.limits.merits = {{MeritKind::Nonlinearity, 0.001}};
  EXPECT_THAT(valueOf(channel, "Nonlinearity"), HasSubstr(", limit 0.10 %: fail"));
  channel.setup.decision.rule = DecisionRule::EnNumber;
  EXPECT_THAT(valueOf(channel, "Nonlinearity"), HasSubstr(", U 0.0"));
}

TEST(Figures, ZeroReturnIsToldInReadings) {
  Channel channel = sampleChannel();
  channel.checks[0].readings[8]->mean += Reading(1.2);
  EXPECT_THAT(valueOf(channel, "Zero return"), StartsWith("1.2 µm/m, limit 15 µm/m: pass; 0.0"));
}

TEST(Figures, TheLineSaysHowItWasFittedAndTheReadingsHowTheyAgree) {
  Channel channel = sampleChannel();
  EXPECT_EQ(
      valueOf(channel, "Line"),
      "measured against simulated, ordinary least squares: the bridge's own curvature is larger than the "
      "uncertainties");
  EXPECT_THAT(valueOf(channel, "Slope"), HasSubstr(" ± "));
  // 9 um/m off where 0.8 is stated.
  EXPECT_THAT(
      valueOf(channel, "Gain of the chain"),
      MatchesRegex("1\\.00.* ± 0\\.00.*, slope of measured against expected; widened, the points scatter "
                   "more than stated"));
  EXPECT_THAT(valueOf(channel, "Scatter"),
              HasSubstr("scatter about the line is larger than the stated uncertainties"));
  channel.checks[0].readings[2]->mean -= Reading(9);
  EXPECT_THAT(valueOf(channel, "Scatter"), HasSubstr("as the stated uncertainties allow"));
  EXPECT_THAT(valueOf(channel, "Gain of the chain"),
              MatchesRegex("1\\.00.* ± 0\\.000.*, slope of measured against expected"));
}

TEST(Figures, ReadingsWithoutUncertaintyAreNotComparedWithOne) {
  Channel channel = sampleChannel();
  for (auto& reading : channel.checks[0].readings) reading->uncertainty.reset();
  for (const Input input : inputListOf(channel.setup))
    if (input.kind == InputKind::Rounding) channel.setup.uncertainties.stated[input] = {};
  EXPECT_EQ(valueOf(channel, "Scatter"), "not compared: a reading has no stated uncertainty");
}

}  // namespace
}  // namespace core
