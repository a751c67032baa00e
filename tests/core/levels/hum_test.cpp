// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/hum.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <numbers>

#include "tests/support/normal.h"

namespace {

double sinusoid(double frequency, double k, double phase = 0.3) {
  return std::cos(2 * std::numbers::pi * (frequency * k + phase));
}

TEST(LinesOf, FindThePickUpAndItsHarmonics) {
  // 50 Hz at 1000.7 samples a second. The frequency of a line of amplitude a in n samples of deviation s is
  // known to sqrt(24) s/(a 2 pi n^1.5) at best (Rife and Boorstyn, from memory): here 4e-7 and 2e-6 for the
  // harmonic; a hundredth of a bin, 1/400,000, is asked for.
  test::Normal normal(1);
  std::vector<double> residuals;
  const double hum = 50 / 1000.7;
  for (int k = 0; k < 4000; ++k)
    residuals.push_back(normal() + 3 * sinusoid(hum, k) + 0.7 * sinusoid(3 * hum, k, 0.1));
  const auto lines = core::linesOf(residuals, 0.01);
  ASSERT_EQ(lines.size(), 2u);
  EXPECT_NEAR(lines[0], hum, 2.5e-6);
  EXPECT_NEAR(lines[1], 3 * hum, 1e-5);
}

TEST(LinesOf, AreNoneInWhiteAndRedNoise) {
  // A line 30 times above the median is there by chance in one bin of e^(30 ln 2) = 1e9; the medians are of
  // few bins, so that some in ten thousand recordings have one. None of 200 may.
  test::Normal normal(2);
  for (const double phi : {0.0, 0.9, 0.99}) {
    for (int recording = 0; recording < 67; ++recording) {
      std::vector<double> residuals;
      double state = 0;
      for (int k = 0; k < 2000; ++k) residuals.push_back(state = phi * state + normal());
      EXPECT_TRUE(core::linesOf(residuals, 0.005).empty()) << phi << " " << recording;
    }
  }
}

TEST(LinesOf, AreNotLookedForInAHandfulOfSamples) {
  EXPECT_TRUE(core::linesOf({}, 0.01).empty());
  EXPECT_TRUE(core::linesOf({1, -1, 1, -1}, 0.01).empty());
}

TEST(Hum, IsTakenOffShortStretchesWithoutTouchingTheirLevels) {
  // Truth: the sinusoid that was put in. 27 samples are not a whole number of periods, so that the hum
  // shifts each mean by up to a tenth of its amplitude.
  std::vector<core::HumPart> parts;
  std::vector<double> residuals, levels;
  for (std::size_t p = 0; p < 8; ++p) {
    parts.push_back({40 * p, 27});
    for (std::size_t k = 0; k < 27; ++k) {
      levels.push_back(static_cast<double>(p) - 3 + 0.01 * static_cast<double>(k));
      residuals.push_back(levels.back() + 5 * sinusoid(0.0501, static_cast<double>(40 * p + k)));
    }
  }
  residuals[13] = std::numeric_limits<double>::quiet_NaN();
  std::vector<double> target = residuals;
  core::Hum hum({0.0501});
  hum.takeOff(residuals, parts, target);
  for (std::size_t k = 0; k < target.size(); ++k) {
    // The term that steadies the fit keeps a millionth or so of the hum.
    if (k != 13) {
      EXPECT_NEAR(target[k], levels[k], 2e-5) << k;
    }
  }
  EXPECT_NEAR(hum.amplitudes()[0], 5, 1e-4);
}

TEST(Hum, IsTakenOffALongStretchAlsoBesideMissingSamples) {
  std::vector<double> residuals;
  for (int k = 0; k < 4096; ++k) residuals.push_back(2 * sinusoid(0.0321, k) + sinusoid(0.0963, k, 0.7));
  for (std::size_t k = 5; k < residuals.size(); k += 50)
    residuals[k] = std::numeric_limits<double>::quiet_NaN();
  std::vector<double> target = residuals;
  core::Hum hum({0.0321, 0.0963});
  const core::HumPart part{1000, 4096};
  hum.takeOff(residuals, {&part, 1}, target);
  for (std::size_t k = 0; k < target.size(); ++k) {
    // Four rounds leave 0.02^4 of what the missing samples hide, and the steadying term a millionth.
    if (!std::isnan(residuals[k])) {
      EXPECT_NEAR(target[k], 0, 1e-5) << k;
    }
  }
}

TEST(Hum, IsRefinedInFrequency) {
  std::vector<double> residuals;
  for (int k = 0; k < 4000; ++k) residuals.push_back(3 * sinusoid(0.0500123, k));
  core::Hum hum({0.05001});  // 2.3e-6 off: 0.01 of a turn over the whole
  const core::HumPart part{0, 4000};
  hum.refine(residuals, {&part, 1});
  std::vector<double> target = residuals;
  hum.takeOff(residuals, {&part, 1}, target);
  // Unrefined up to 3 pi 0.01 = 0.1 is left. Two rounds of first order leave 0.03^4 and the steadying term.
  for (const double left : target) EXPECT_NEAR(left, 0, 1e-4);
}

}  // namespace
