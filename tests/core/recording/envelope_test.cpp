// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/envelope.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <random>

namespace core {
namespace {

constexpr double missing = std::numeric_limits<double>::quiet_NaN();

/// Noise with single spikes, and numbers missing singly and in long stretches. Seed in the arguments.
std::vector<double> values(std::size_t count, unsigned seed) {
  std::mt19937 random(seed);
  std::normal_distribution<double> noise;
  std::vector<double> made(count);
  for (double& value : made) {
    const auto kind = random() % 100;
    value = kind == 0 ? 1e6 * noise(random) : kind < 5 ? missing : noise(random);
  }
  for (std::size_t k = count / 3; k < count / 2; ++k) made[k] = missing;
  return made;
}

/// By the definition: every sample looked at.
Extremes bruteForce(const std::vector<double>& values, std::size_t begin, std::size_t end) {
  Extremes found;
  for (std::size_t k = begin; k < end; ++k) {
    if (std::isnan(values[k])) continue;
    found = found.empty() ? Extremes{values[k], values[k]}
                          : Extremes{std::min(found.least, values[k]), std::max(found.greatest, values[k])};
  }
  return found;
}

TEST(Envelope, HasTheExtremesOfAnyStretchAsLookingAtEverySampleHas) {
  std::mt19937 random(5);
  for (const std::size_t count : {1u, 2u, 63u, 64u, 65u, 511u, 512u, 4096u, 32769u, 300001u}) {
    const auto made = values(count, static_cast<unsigned>(count));
    const Envelope envelope(made);
    for (int trial = 0; trial < 300; ++trial) {
      std::size_t begin = random() % (count + 1), end = random() % (count + 1);
      if (begin > end) std::swap(begin, end);
      EXPECT_EQ(envelope.of(made, begin, end), bruteForce(made, begin, end)) << begin << " to " << end;
    }
    EXPECT_EQ(envelope.of(made, 0, count), bruteForce(made, 0, count));
  }
}

TEST(Envelope, CutsAStretchIntoPartsThatMeet) {
  const auto made = values(100'000, 7);
  const Envelope envelope(made);
  // 1 to 65536 parts: whole blocks, blocks and samples, and less than two samples a part.
  for (std::size_t pixels = 1; pixels <= 65536; pixels *= 4) {
    const std::size_t begin = 1000, end = 1000 + 65536, each = 65536 / pixels;
    const auto parts = envelope.over(made, begin, end, pixels);
    ASSERT_EQ(parts.size(), pixels);
    for (std::size_t k = 0; k < pixels; k += std::max<std::size_t>(1, pixels / 512)) {
      const std::size_t from = begin + k * each, before = k == 0 ? from : from - 1, to = from + each;
      if (each < 4096) {
        EXPECT_EQ(parts[k], bruteForce(made, before, to));
        continue;
      }
      // Long parts may take in what lies within 63 samples of them.
      EXPECT_EQ(joined(parts[k], bruteForce(made, before, to)), parts[k]);
      const auto wider = bruteForce(made, std::max(begin, before - 63), std::min(end, to + 63));
      EXPECT_EQ(joined(parts[k], wider), wider);
    }
  }
}

TEST(Envelope, GivesEachPixelASampleWhenThereAreMorePixels) {
  const std::vector<double> made{1, missing, 3};
  const auto parts = Envelope(made).over(made, 0, 3, 6);
  const std::vector<Extremes> expected{{1, 1}, {1, 1}, {1, 1}, {1, 1}, {3, 3}, {3, 3}};
  // By hand: each sample two pixels; the last sample before a part counts too, here for all but the first
  // part, and a missing number adds nothing.
  EXPECT_EQ(parts, expected);
}

TEST(Envelope, SaysWhereThereIsNoNumber) {
  const std::vector<double> made(1000, missing);
  const Envelope envelope(made);
  EXPECT_TRUE(envelope.of(made, 0, 1000).empty());
  EXPECT_TRUE(envelope.of(made, 5, 5).empty());
  for (const Extremes& part : envelope.over(made, 0, 1000, 10)) EXPECT_TRUE(part.empty());
  EXPECT_TRUE(envelope.over(made, 0, 1000, 0).empty());
}

TEST(Envelope, KeepsEveryDigitOfASmallChangeOnALargeValue) {
  std::vector<double> made(1000, 1e9);
  made[700] = 1e9 + 1e-6;
  EXPECT_EQ(Envelope(made).of(made, 0, 1000), (Extremes{1e9, 1e9 + 1e-6}));
}

TEST(Envelope, OfNothingIsEmpty) {
  EXPECT_TRUE(Envelope().of({}, 0, 0).empty());
  EXPECT_TRUE(Envelope(std::span<const double>{}).over({}, 0, 0, 4)[3].empty());
}

}  // namespace
}  // namespace core
