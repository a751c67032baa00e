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

TEST(Envelope, TakesInAFewSamplesMoreOfALongStretchThatIsDrawn) {
  const std::size_t count = 100'001;
  const auto made = values(count, 7);
  const Envelope envelope(made);
  std::mt19937 random(6);
  for (int trial = 0; trial < 300; ++trial) {
    const std::size_t begin = random() % count, end = begin + random() % (count - begin + 1);
    const Extremes drawn = envelope.drawn(made, begin, end), exact = bruteForce(made, begin, end);
    if (end - begin < 4096) {
      EXPECT_EQ(drawn, exact) << begin << " to " << end;
      continue;
    }
    const auto wider = bruteForce(made, begin - std::min<std::size_t>(begin, 63), std::min(count, end + 63));
    EXPECT_EQ(joined(drawn, exact), drawn) << begin << " to " << end;
    EXPECT_EQ(joined(drawn, wider), wider) << begin << " to " << end;
  }
}

TEST(Envelope, SaysWhereThereIsNoNumber) {
  const std::vector<double> made(1000, missing);
  const Envelope envelope(made);
  EXPECT_TRUE(envelope.of(made, 0, 1000).empty());
  EXPECT_TRUE(envelope.of(made, 5, 5).empty());
  EXPECT_TRUE(envelope.drawn(made, 0, 1000).empty());
}

TEST(Envelope, KeepsEveryDigitOfASmallChangeOnALargeValue) {
  std::vector<double> made(1000, 1e9);
  made[700] = 1e9 + 1e-6;
  EXPECT_EQ(Envelope(made).of(made, 0, 1000), (Extremes{1e9, 1e9 + 1e-6}));
}

TEST(Envelope, OfNothingIsEmpty) {
  EXPECT_TRUE(Envelope().of({}, 0, 0).empty());
  EXPECT_TRUE(Envelope(std::span<const double>{}).drawn({}, 0, 0).empty());
}

}  // namespace
}  // namespace core
