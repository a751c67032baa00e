// SPDX-License-Identifier: GPL-3.0-or-later
// The limits are common practice, no source: the tests stand on either side of each.
#include "core/levels/quality.h"

#include <gtest/gtest.h>

namespace {

using core::LevelQuality;

core::Level sound() {
  core::Level level;
  level.span = {0, 2000};
  level.begin_s = 0;
  level.end_s = 2;
  level.mean = level.robustMean = 4;
  level.stdUncertainty = 0.01;
  level.effectiveSamples = 1000;
  level.samples = 2000;
  return level;
}

core::LevelEvidence usual() { return {.scatter = 0.4}; }

/// "good", or quality and reason.
std::string judged(core::Level level, const core::LevelEvidence& evidence = usual()) {
  core::judge(level, evidence);
  if (level.quality == LevelQuality::Good) return level.reason.empty() ? "good" : "good: " + level.reason;
  return std::string(core::qualityWord(level.quality)) + ": " + level.reason;
}

TEST(Quality, OfASoundLevelIsGood) { EXPECT_EQ(judged(sound()), "good"); }

TEST(Quality, CountsSamples) {
  core::Level level = sound();
  level.span = {0, 20};
  level.samples = 20;
  level.effectiveSamples = 18;
  EXPECT_EQ(judged(level), "good");
  level.samples = 19;
  EXPECT_EQ(judged(level), "fair: only 19 samples");
  level.samples = 4;
  EXPECT_EQ(judged(level), "poor: only 4 samples");
  level.samples = 1;
  EXPECT_EQ(judged(level), "poor: only 1 sample");
  level.samples = 0;
  EXPECT_EQ(judged(level), "poor: none of its samples is a number");
}

TEST(Quality, SeesWhatIsMissing) {
  core::LevelEvidence evidence = usual();
  evidence.missing = 200;
  EXPECT_EQ(judged(sound(), evidence), "good");
  evidence.missing = 610;
  EXPECT_EQ(judged(sound(), evidence), "fair: 30.5 % of its samples are missing");
  evidence.missing = 1200;
  EXPECT_EQ(judged(sound(), evidence), "poor: 60 % of its samples are missing");
}

TEST(Quality, SeesOutliers) {
  core::Level level = sound();
  level.samples = 1970;
  level.outliers = 30;
  EXPECT_EQ(judged(level), "good");
  level.outliers = 60;
  EXPECT_EQ(judged(level), "fair: 3 % of its samples are outliers");
  level.outliers = 268;
  EXPECT_EQ(judged(level), "poor: 12 % of its samples are outliers");
}

TEST(Quality, SeesSlowNoise) {
  core::Level level = sound();
  level.effectiveSamples = 6.2;
  EXPECT_EQ(judged(level), "fair: the noise is so slow that 2000 samples count as 6");
  level.samples = 123456;
  level.effectiveSamples = 2.4;
  EXPECT_EQ(judged(level), "poor: the noise is so slow that 123000 samples count as 2");
}

TEST(Quality, SeesDriftBeyondChance) {
  core::Level level = sound();
  level.drift_per_s = -0.1;  // 0.2 over the level: 20 uncertainties
  level.driftUncertainty_per_s = 0.05;
  EXPECT_EQ(judged(level), "good");
  level.driftUncertainty_per_s = 0.01;
  EXPECT_EQ(judged(level), "fair: drifts by 20 times its uncertainty within the level");
  level.drift_per_s = 1;
  EXPECT_EQ(judged(level), "poor: drifts by 200 times its uncertainty within the level");
}

TEST(Quality, SeesATailOfSettling) {
  core::LevelEvidence evidence = usual();
  evidence.settling = -0.005;
  EXPECT_EQ(judged(sound(), evidence), "fair: still settling at its beginning");
  evidence.settling = 0.02;
  EXPECT_EQ(judged(sound(), evidence), "poor: still settling at its beginning");
}

TEST(Quality, ComparesMeanAndRobustMean) {
  core::Level level = sound();
  level.robustMean = 4.02;
  EXPECT_EQ(judged(level), "fair: mean and robust mean differ by 2 times the uncertainty");
  level.robustMean = 3.95;
  EXPECT_EQ(judged(level), "poor: mean and robust mean differ by 5 times the uncertainty");
  // Among few codes the robust mean is one of them.
  EXPECT_EQ(judged(level, {.resolution = 0.5, .scatter = 0.4}), "good");
}

TEST(Quality, KnowsWhenTheResolutionBoundsIt) {
  const std::string bounded = "fair: the resolution of the recording bounds what can be told";
  EXPECT_EQ(judged(sound(), {.resolution = 0.1, .scatter = 0.4, .rounding = 0.006}), "good");
  EXPECT_EQ(judged(sound(), {.resolution = 0.1, .scatter = 0.4, .rounding = 0.008}), bounded);
  EXPECT_EQ(judged(sound(), {.isConstant = true, .resolution = 0.1}),
            "fair: all samples are equal: the resolution of the recording bounds what can be told");
  EXPECT_EQ(judged(sound(), {.isConstant = true}),
            "fair: all samples are equal: they do not tell their uncertainty");
}

TEST(Quality, NamesTheGravest) {
  core::Level level = sound();
  level.outliers = 60;           // fair
  level.effectiveSamples = 2.6;  // poor
  EXPECT_EQ(judged(level), "poor: the noise is so slow that 2000 samples count as 3");
}

}  // namespace
