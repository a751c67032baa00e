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

// Equal set-ups are predicted once; each check must read as if it stood alone.
TEST(Evaluate, EachClosedCheckIsJudgedByItsOwnSetUp) {
  Channel channel = sample::nineStepChannel();
  for (const double factor : {2.0, 2.5, 2.0, 3.0, 2.5}) {
    channel.setup.instrument.gaugeFactor = factor;
    channel = withCheckClosed(sample::withCheckReading(channel, 1.0), channel.checks.size());
  }
  channel.setup.instrument.gaugeFactor = 2.5;
  const ChannelEvaluation evaluation = evaluate(channel);
  ASSERT_EQ(evaluation.checks.size(), 5u);
  for (std::size_t k = 0; k < channel.checks.size(); ++k) {
    const SetupPrediction alone = predict(*channel.checks[k].closedWith);
    const CheckEvaluation& judged = evaluation.checks[k];
    for (std::size_t step = 0; step < alone.steps.size(); ++step)
      EXPECT_EQ(judged.prediction.steps[step]->reading.base(), alone.steps[step]->reading.base());
    EXPECT_EQ(judged.assessment.verdict, Verdict::Pass) << k;  // all were read as their own set-up says
    EXPECT_EQ(judged.budget.inputs.size(), evaluation.budget.inputs.size());
  }
}

}  // namespace
}  // namespace core
