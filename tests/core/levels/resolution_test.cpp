// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/resolution.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "tests/support/normal.h"

namespace {

using core::SampleSpan;

std::vector<double> rounded(double resolution, double noise, int samples, unsigned seed) {
  test::Normal normal(seed);
  std::vector<double> values;
  for (int k = 0; k < samples; ++k) {
    values.push_back(resolution * std::round((3.3 + noise * normal()) / resolution));
  }
  return values;
}

TEST(ResolutionOf, IsTheStepBetweenCodes) {
  for (const double step : {0.001, 0.25, 7.0}) {
    for (const double noise : {0.3, 1.0, 3.0}) {
      const auto values = rounded(step, noise * step, 1000, 3);
      const SampleSpan span{0, 1000};
      // The codes are multiples of the step within rounding.
      EXPECT_NEAR(core::resolutionOf(values, {&span, 1}) / step, 1, 1e-9) << step << " " << noise;
    }
  }
}

TEST(ResolutionOf, SurvivesTheRoundingOfDecimalText) {
  // Codes 1/3 apart, written with three digits: 0.333, 0.667, 1.000.
  auto values = rounded(1.0 / 3, 1, 1000, 4);
  for (double& v : values) v = std::round(v * 1000) / 1000;
  const SampleSpan span{0, 1000};
  // The ends of some twenty steps are rounded by up to 0.0005 each.
  EXPECT_NEAR(core::resolutionOf(values, {&span, 1}), 1.0 / 3, 1e-3);
}

TEST(ResolutionOf, IsNoneOfFineOrConstantValues) {
  test::Normal normal(5);
  std::vector<double> values;
  for (int k = 0; k < 1000; ++k) values.push_back(normal());  // of some sixteen digits
  const SampleSpan span{0, 1000};
  EXPECT_EQ(core::resolutionOf(values, {&span, 1}), 0);
  // Two constant levels: their difference is a step of the bridge, not of a converter.
  std::vector<double> levels(100, 0.0);
  levels.resize(200, 500.0);
  const SampleSpan spans[] = {{0, 100}, {100, 200}};
  EXPECT_EQ(core::resolutionOf(levels, spans), 0);
}

TEST(ResolutionOf, IsTheLastDecimalPlaceWhereNothingElseTells) {
  const std::vector<double> values = {1.25, 1.25, 1.25, -3.5, -3.5, -3.5};
  const SampleSpan spans[] = {{0, 3}, {3, 6}};
  EXPECT_DOUBLE_EQ(core::resolutionOf(values, spans), 0.01);
  const std::vector<double> whole = {1250, 1250, 1250, -301, -301, -301};
  EXPECT_DOUBLE_EQ(core::resolutionOf(whole, spans), 1);
  const std::vector<double> irrational = {std::sqrt(2), std::sqrt(2), std::sqrt(2), 3, 3, 3};
  EXPECT_EQ(core::resolutionOf(irrational, spans), 0);
}

TEST(ResolutionOf, IsWhatQuietLevelsHaveInCommon) {
  // Codes 0.37 apart in text of four decimals: levels of 0, 11, 25, 40 and 59 codes without any noise.
  std::vector<double> values;
  std::vector<SampleSpan> spans;
  for (const double code : {0, 11, 25, 40, 59, 25, 11, 0}) {
    spans.push_back({values.size(), values.size() + 10});
    values.resize(values.size() + 10, std::round((code * 0.371234 + 5) * 1e4) / 1e4);
  }
  // The greatest gap, of 19 codes, is rounded by 1e-4 at most.
  EXPECT_NEAR(core::resolutionOf(values, spans), 0.371234, 6e-6);
  // Levels anywhere have nothing in common but the last decimal place.
  std::vector<double> other;
  for (const double level : {0.0, 12.3457, 31.1234, 37.0001, 52.2229, 31.1234, 12.3457, 0.0})
    other.resize(other.size() + 10, level);
  EXPECT_DOUBLE_EQ(core::resolutionOf(other, spans), 1e-4);
}

TEST(ResolutionOf, QuietLevelsIsFoundWhateverItIs) {
  test::Normal normal(6);
  for (int recording = 0; recording < 200; ++recording) {
    const double step = 20 + 60 * normal.uniform();
    std::vector<double> values;
    std::vector<SampleSpan> spans;
    for (const double height : {0.0, 20.0, 40.0, 61.0, 0.0, -21.0, -40.0, -59.0}) {
      spans.push_back({values.size(), values.size() + 10});
      const double code = height + std::floor(5 * normal.uniform());
      values.resize(values.size() + 10, std::round(code * step * 100) / 100);
    }
    // Rounded to 0.01 over the greatest gap, which is of ten codes or more. A multiple is right as well when
    // the codes drawn have one in common, which is so in one of a hundred or two.
    const double ratio = core::resolutionOf(values, spans) / step;
    EXPECT_NEAR(ratio, std::round(ratio), 1e-3 / step * 2) << step;
    EXPECT_GE(ratio, 0.9);
    EXPECT_LE(ratio, 5.1);
  }
}

double normalBelow(double x) { return std::erfc(-x / std::sqrt(2.0)) / 2; }

/// Mean and variance of normal noise about `level`, rounded to whole numbers: added up code by code.
std::pair<double, double> momentsOfRounded(double level, double noise) {
  double mean = 0, square = 0;
  for (int code = -40; code <= 40; ++code) {
    const double share =
        normalBelow((code + 0.5 - level) / noise) - normalBelow((code - 0.5 - level) / noise);
    mean += share * code;
    square += share * code * code;
  }
  return {mean, square - mean * mean};
}

TEST(DeviationOfRounding, AgreesWithTheExactMeansOfRoundedNoise) {
  // Truth: the mean of every code with its probability, less the level, over 1000 levels between two codes.
  for (const double noise : {0.05, 0.1, 0.2, 0.3, 0.5}) {
    double squares = 0;
    double variances = 0;
    for (int k = 0; k < 1000; ++k) {
      const double level = (k + 0.5) / 1000;
      const auto [mean, variance] = momentsOfRounded(level, noise);
      squares += (mean - level) * (mean - level) / 1000;
      variances += variance / 1000;
    }
    // Both sums are exact but for rounding and forty terms of the series: 2e-3 where the noise is least.
    EXPECT_NEAR(core::deviationOfRounding(1, {noise, 0, {}}), std::sqrt(squares), 1e-3) << noise;
    EXPECT_NEAR(core::noiseBeforeRounding(std::sqrt(variances), 1), noise, 2e-3) << noise;
  }
}

TEST(DeviationOfRounding, OfASignalAtRestIsThatOfAUniformError) {
  // JCGM 100:2008, 4.3.7: half-width a, variance a^2/3.
  EXPECT_DOUBLE_EQ(core::deviationOfRounding(0.6, {}), 0.6 / std::sqrt(12.0));
  EXPECT_EQ(core::deviationOfRounding(0, {}), 0);
}

TEST(DeviationOfRounding, IsNothingWhereADriftSweepsWholeCodes) {
  // A steady sweep over exactly one code meets each place between two codes once.
  EXPECT_NEAR(core::deviationOfRounding(1, {0, 1, {}}), 0, 1e-12);
  EXPECT_GT(core::deviationOfRounding(1, {0, 0.5, {}}), 0.1);
}

TEST(DeviationOfRounding, AgreesWithTheMeansOfARoundedHum) {
  // Truth: means over a period in 2000 points, for 200 levels.
  double squares = 0;
  for (int k = 0; k < 200; ++k) {
    const double level = (k + 0.5) / 200;
    double mean = 0;
    for (int p = 0; p < 2000; ++p)
      mean += std::round(level + 0.8 * std::cos(p * 3.14159265358979 / 1000)) / 2000;
    squares += (mean - level) * (mean - level) / 200;
  }
  EXPECT_NEAR(core::deviationOfRounding(1, {0, 0, {0.8}}), std::sqrt(squares), 2e-3);
}

TEST(DeviationOfRounding, NoiseAboveTheResolutionLeavesNothing) {
  EXPECT_LT(core::deviationOfRounding(1, {3, 0, {4}}), 1e-12);
}

}  // namespace
