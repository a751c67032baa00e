// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evaluate/evaluation.h"

#include <gtest/gtest.h>

#include "core/compare/comparison.h"
#include "tests/support/sample_channel.h"

namespace core {
namespace {

Channel preAndPost(double gainPre, double gainPost) {
  return sample::withCheckReading(sample::withCheckReading(sample::nineStepChannel(), gainPre), gainPost);
}

Comparison compared(const Channel& channel) { return compare(channel, evaluate(channel), 0, 1); }

TEST(Evaluate, StatusSaysInPlainWordsWhereAChannelStands) {
  EXPECT_EQ(evaluate(Channel{}).status, "no steps");
  Channel channel = sample::nineStepChannel();
  EXPECT_EQ(evaluate(channel).status, "not checked");
  EXPECT_EQ(evaluate(preAndPost(1.0, 1.05)).status, "pre-test (2): fail");
  channel.setup.bridge.arms[0] = Resistance(-350);
  EXPECT_EQ(evaluate(channel).status, "cannot be predicted");
}

TEST(Evaluate, LaterEditsNeverChangeAClosedVerdict) {
  Channel channel = withCheckClosed(sample::withCheckReading(sample::nineStepChannel(), 1.0), 0);
  channel.setup.bridge.gauge.factor = 3.0;
  channel.setup.instrument.gaugeFactor = 3.0;
  channel.setup.shunts[0].resistance = Resistance(1000);
  EXPECT_EQ(evaluate(channel).checks[0].assessment.verdict, Verdict::Pass);
  EXPECT_EQ(evaluate(withCheckReopened(channel, 0)).checks[0].assessment.verdict, Verdict::Fail);
}

TEST(Compare, EqualChecksAreUnchanged) {
  const Comparison comparison = compared(preAndPost(1.0, 1.0));
  EXPECT_EQ(comparison.verdict, Verdict::Pass) << comparison.reason;
  ASSERT_TRUE(comparison.slopeRatio);
  EXPECT_DOUBLE_EQ(*comparison.slopeRatio, 1.0);
}

TEST(Compare, AGainThatRoseByTwoPercentShowsInTheSlopeRatioAndIsAChange) {
  const Comparison comparison = compared(preAndPost(1.0, 1.02));
  EXPECT_EQ(comparison.verdict, Verdict::Fail);
  // Derived: both lines are fitted to the same x, and y2 = 1.02 y1. 1e-12 is the rounding of nine products.
  EXPECT_NEAR(*comparison.slopeRatio, 1.02, 1e-12);
}

TEST(Compare, AZeroThatMovedIsNamedAndDoesNotPassAlthoughNoStepDid) {
  const auto shiftedBy = [](double offset) {
    return sample::withCheckReading(sample::withCheckReading(sample::nineStepChannel(), 1.0), 1.0, offset);
  };
  const Comparison small = compared(shiftedBy(5.0));  // limit: 0.5 % of some 3000 um/m is 15 um/m
  EXPECT_EQ(small.verdict, Verdict::Pass) << small.reason;
  EXPECT_DOUBLE_EQ(small.zeroShift->base(), 5.0);
  const Comparison large = compared(shiftedBy(25.0));
  EXPECT_EQ(large.verdict, Verdict::Fail);
  EXPECT_NE(large.reason.find("Steps unchanged"), std::string::npos) << large.reason;
  EXPECT_NE(large.reason.find("zero moved by 25 "), std::string::npos) << large.reason;
}

TEST(Compare, TwoChecksThatFailAlikeDoNotPass) {
  const Comparison comparison = compared(preAndPost(-1.0, -1.0));
  EXPECT_EQ(comparison.verdict, Verdict::Fail);
  EXPECT_NE(comparison.reason.find("Both checks fail"), std::string::npos) << comparison.reason;
}

TEST(Compare, DifferentSetUpsAreListedAndDifferentLengthsAreNotCompared) {
  Channel channel = withCheckClosed(preAndPost(1.0, 1.0), 0);
  channel.setup.bridge.gauge.factor = 2.1;
  EXPECT_EQ(compared(channel).setupDifferences, std::vector<std::string>{"gauge"});
  channel = withStepRemoved(channel, 8);
  EXPECT_EQ(compared(channel).verdict, Verdict::NotJudged);
  EXPECT_NE(compared(channel).reason.find("9 and 8 steps"), std::string::npos);
}

TEST(Compare, AMissingReadingMeansCannotTell) {
  Channel channel = preAndPost(1.0, 1.0);
  channel.checks[1].readings[3].reset();
  EXPECT_EQ(compared(channel).verdict, Verdict::NotJudged);
  EXPECT_NE(compared(channel).reason.find("Cannot tell"), std::string::npos);
}

}  // namespace
}  // namespace core
