// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evaluate/evaluation.h"

#include <gtest/gtest.h>

#include "tests/support/sample_channel.h"

namespace core {
namespace {

Channel preAndPost(double gainPre, double gainPost) {
  return sample::withCheckReading(sample::withCheckReading(sample::nineStepChannel(), gainPre), gainPost);
}

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

}  // namespace
}  // namespace core
