// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/noise.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "tests/support/normal.h"

namespace {

TEST(VarianceOfMean, OfAFirstOrderProcessIsTheSumOfAllItsCovariances) {
  // Derived: the variance of a mean is the mean of all n^2 covariances phi^|i - j|, here added one by one.
  for (const double phi : {0.5, 0.9, 0.99, 0.9999}) {
    for (const int n : {1, 2, 7, 300}) {
      double sum = 0;
      for (int i = 0; i < n; ++i) {
        for (int j = 0; j < n; ++j) sum += std::pow(phi, std::abs(i - j));
      }
      // The closed form loses digits as 1/(1 - phi)^2, of sixteen: 1e8 leaves seven.
      EXPECT_NEAR(core::varianceOfMean(-1 / std::log(phi), n) / (sum / n / n), 1, 1e-7) << phi << " " << n;
    }
  }
  EXPECT_EQ(core::varianceOfMean(0, 25), 0.04);
}

TEST(Process, OfAveragedNoiseHasTheSumOfAllItsCovariances) {
  // Derived: a moving average over M white samples has the correlation 1 - k/M up to lag M.
  const auto covarianceOfSums = [](int length, int first, int second, int n) {
    double sum = 0;
    for (int i = first; i < first + n; ++i) {
      for (int j = second; j < second + n; ++j) sum += std::max(0.0, 1 - std::abs(i - j) / double(length));
    }
    return sum / n / n;
  };
  for (const int length : {2, 5, 40}) {
    const core::Process process{core::Process::Kind::Averaged, static_cast<double>(length)};
    for (const int n : {1, 2, 8, 100}) {
      SCOPED_TRACE(length * 1000 + n);
      // Sums of some thousands of terms near 1: relative 1e-12.
      EXPECT_NEAR(process.varianceOfMean(n), covarianceOfSums(length, 0, 0, n), 1e-12);
      EXPECT_NEAR(process.covariance(n, 1), covarianceOfSums(length, 0, n, n), 1e-12);
      EXPECT_NEAR(process.covariance(n, 3), covarianceOfSums(length, 0, 3 * n, n), 1e-12);
    }
  }
}

TEST(Process, OfFirstOrderHasTheSumOfAllItsCovariances) {
  const core::Process process{core::Process::Kind::FirstOrder, -1 / std::log(0.8)};
  double sum = 0;
  for (int i = 0; i < 6; ++i) {
    for (int j = 12; j < 18; ++j) sum += std::pow(0.8, j - i) / 36;
  }
  EXPECT_NEAR(process.covariance(6, 2), sum, 1e-14);
  EXPECT_EQ(core::Process{}.covariance(6, 1), 0);
  EXPECT_EQ(core::Process{}.varianceOfMean(4), 0.25);
}

TEST(Contrasts, OfKnownSamplesAreThoseWorkedOutByHand) {
  // 0 0 6 is a contrast of 6; a straight line has none. Pairs of 0 0 6 6 0 0 have the sums 0 12 0, the means
  // 0 6 0 and the contrast -12.
  const auto steep = core::contrastsOf({0, 0, 6}, {1, 1, 1}, 0);
  EXPECT_EQ(steep.meanSquares, (std::vector<double>{36}));
  EXPECT_EQ(steep.freedoms, (std::vector<double>{1}));
  EXPECT_EQ(core::contrastsOf({1, 2, 3, 4}, {1, 1, 1, 1}, 0).meanSquares[0], 0);
  const auto blocks = core::contrastsOf({0, 0, 6, 6, 0, 0}, {1, 1, 1, 1, 1, 1}, 0);
  ASSERT_EQ(blocks.meanSquares.size(), 2u);
  EXPECT_EQ(blocks.meanSquares[0], 36);
  EXPECT_EQ(blocks.meanSquares[1], 144);
}

TEST(Contrasts, LeaveOutWhatIsMissing) {
  const auto contrasts = core::contrastsOf({1, 2, 0, 4, 9, 8}, {1, 1, 0, 1, 1, 1}, 0);
  EXPECT_EQ(contrasts.meanSquares[0], 36);  // of 4 9 8 alone
  EXPECT_EQ(contrasts.freedoms[0], 1);
  EXPECT_EQ(contrasts.freedoms[1], 0);  // the second pair is half empty
}

/// Contrasts of `stretches` stretches of noise, white plus first-order.
std::vector<core::Contrasts> made(test::Normal& normal, std::size_t stretches, std::size_t samples,
                                  double white, double red, double phi) {
  std::vector<core::Contrasts> all;
  for (std::size_t s = 0; s < stretches; ++s) {
    double state = normal();
    std::vector<double> values;
    for (std::size_t k = 0; k < samples; ++k) {
      values.push_back(white * normal() + red * state);
      state = phi * state + std::sqrt(1 - phi * phi) * normal();
    }
    all.push_back(core::contrastsOf(values, std::vector<double>(samples, 1.0), 0));
  }
  return all;
}

TEST(Noise, TellsTheUncertaintyOfAMeanFromPlentyOfSamples) {
  // Truth: Zhang's closed form. 20 stretches of 4000 samples leave the long-run deviation unknown by some per
  // cent where the correlation time is 10 samples, and by up to a tenth where it is 100; three times that is
  // allowed. That some slow noise might be there is always counted in.
  test::Normal normal(5);
  const struct {
    double white, red, phi, tolerance;
  } cases[] = {{1, 0, 0, 0.1}, {0, 1, 0.5, 0.1}, {0, 1, 0.9, 0.12}, {1, 0.5, 0.95, 0.15}, {0, 2, 0.99, 0.3}};
  for (const auto& [white, red, phi, tolerance] : cases) {
    SCOPED_TRACE(phi);
    const core::Noise noise(made(normal, 20, 4000, white, red, phi));
    const double time = phi > 0 ? -1 / std::log(phi) : 0;
    const double truth = white * white / 4000 + red * red * core::varianceOfMean(time, 4000);
    const auto mean = noise.ofMean(3, 4000);
    EXPECT_NEAR(mean.stdUncertainty / std::sqrt(truth), 1, tolerance);
    EXPECT_NEAR(mean.effectiveSamples * truth / (white * white + red * red), 1, 2.5 * tolerance);
    EXPECT_NEAR(noise.deviationOfSample(3) / std::hypot(white, red), 1, tolerance);
  }
}

TEST(Noise, OfRepeatedSamplesCountsEachOnce) {
  // Truth: 20 stretches of 400 values, each written six times, are 400 samples: deviation 1/20 of their mean.
  test::Normal normal(8);
  std::vector<core::Contrasts> contrasts;
  for (int s = 0; s < 20; ++s) {
    std::vector<double> values;
    while (values.size() < 2400) values.insert(values.end(), 6, normal());
    contrasts.push_back(core::contrastsOf(values, std::vector<double>(2400, 1.0), 0));
  }
  EXPECT_NEAR(core::Noise(contrasts).ofMean(0, 2400).stdUncertainty, 0.05, 0.008);
}

TEST(Noise, KnowsTheScatterOfSlopes) {
  // Derived: the least-squares slope over n white samples has the variance 12/(n^3 - n). Now and then twenty
  // stretches look as if slow noise were there; over ten times twenty that adds some per cent.
  test::Normal normal(6);
  double ratio = 0;
  for (int recording = 0; recording < 10; ++recording) {
    const core::Noise noise(made(normal, 20, 1000, 1, 0, 0));
    ratio += noise.deviationOfSlope(0, 1000) / std::sqrt(12 / 1e9) / 10;
  }
  EXPECT_NEAR(ratio, 1, 0.08);
}

TEST(Noise, OfEachStretchHasItsOwnStrength) {
  test::Normal normal(7);
  auto contrasts = made(normal, 4, 2000, 1, 0, 0);
  for (auto& strong : made(normal, 4, 2000, 10, 0, 0)) contrasts.push_back(std::move(strong));
  const core::Noise noise(contrasts);
  // 2000 samples tell a standard deviation within 1/sqrt(2 * 2000) = 1.6 %; five times that.
  EXPECT_NEAR(noise.deviationOfSample(0), 1, 0.08);
  EXPECT_NEAR(noise.deviationOfSample(7), 10, 0.8);
}

TEST(Noise, ThatIsNotThereLeavesNothing) {
  const core::Noise noise(std::vector<core::Contrasts>{core::contrastsOf({0, 0, 0, 0}, {1, 1, 1, 1}, 0)});
  EXPECT_EQ(noise.ofMean(0, 4).stdUncertainty, 0);
  EXPECT_EQ(noise.ofMean(0, 4).effectiveSamples, 4);
  EXPECT_EQ(noise.deviationOfSlope(0, 4), 0);
}

TEST(Noise, EarnsNothingFromNegativeCorrelation) {
  // Alternating samples have a mean that is known ever so well, but so has a mains hum at half the rate.
  std::vector<double> values(1000);
  for (std::size_t k = 0; k < values.size(); ++k) values[k] = k % 2 == 0 ? 1 : -1;
  const core::Noise noise(
      std::vector<core::Contrasts>{core::contrastsOf(values, std::vector<double>(1000, 1.0), 0)});
  EXPECT_LE(noise.ofMean(0, 1000).effectiveSamples, 1000);
}

}  // namespace
