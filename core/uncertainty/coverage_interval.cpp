// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/uncertainty/coverage_interval.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <functional>
#include <iterator>

namespace core {
namespace {

/// A value that about `count` of the values come before, or a little more, judged by a sample of them. What
/// is drawn at random needs no random sample.
template <class Iterator, class Before>
double likelyBound(Iterator begin, Iterator end, std::size_t count, Before before) {
  constexpr std::size_t greatest = 4096;
  std::array<double, greatest> sample;
  const auto n = static_cast<std::size_t>(end - begin);
  const std::size_t size = std::min(greatest, std::max<std::size_t>(1, n / 16)), step = n / size;
  for (std::size_t k = 0; k < size; ++k) sample[k] = begin[static_cast<std::ptrdiff_t>(k * step)];
  const double share = static_cast<double>(count) / static_cast<double>(n), drawn = static_cast<double>(size);
  const double rank = share * drawn + 4 * std::sqrt(share * (1 - share) * drawn) + 1;
  const auto place = std::min(static_cast<std::size_t>(rank), size - 1);
  const auto nth = sample.begin() + static_cast<std::ptrdiff_t>(place);
  std::nth_element(sample.begin(), nth, sample.begin() + static_cast<std::ptrdiff_t>(size), before);
  return *nth;
}

/// Brings the first `count` values of the order `before` to the front, unordered. Those before a likely bound
/// are parted off first, a quick pass when they are few; nth_element has then little left to do, or all of
/// it where the bound was too tight.
template <class Iterator, class Before>
void gatherFirst(Iterator begin, Iterator end, std::size_t count, Before before) {
  const double bound = likelyBound(begin, end, count, before);
  const Iterator last = begin + static_cast<std::ptrdiff_t>(count) - 1;
  const Iterator parted = std::partition(begin, end, [&](double value) { return !before(bound, value); });
  std::nth_element(begin, last, parted - begin >= static_cast<std::ptrdiff_t>(count) ? parted : end, before);
}

/// Rank, from 1, of the lower end of the symmetric interval.
std::size_t symmetricRank(std::size_t trials, std::size_t covered) { return (trials - covered + 1) / 2; }

/// Puts the `count` lowest and the `count` highest values in order at their ends.
void orderTails(std::span<double> values, std::size_t count) {
  if (2 * count >= values.size()) return std::sort(values.begin(), values.end());
  const auto tail = static_cast<std::ptrdiff_t>(count);
  gatherFirst(values.begin(), values.end(), count, std::less<>());
  gatherFirst(values.rbegin(), values.rend() - tail, count, std::greater<>());
  std::sort(values.begin(), values.begin() + tail);
  std::sort(values.end() - tail, values.end());
}

}  // namespace

std::size_t coveredTrials(std::size_t trials, double coverage) {
  return static_cast<std::size_t>(std::llround(coverage * static_cast<double>(trials)));
}

CoverageIntervals coverageIntervals(std::span<double> values, double coverage) {
  const std::size_t trials = values.size(), covered = coveredTrials(trials, coverage);
  assert(covered > 0 && covered < trials);
  const std::size_t outside = trials - covered;
  orderTails(values, outside);
  const auto from = [&](std::size_t index) { return Interval{values[index], values[index + covered]}; };
  CoverageIntervals intervals{
      from(symmetricRank(trials, covered) - 1), from(0), {values.front(), values.back()}};
  double least = intervals.shortest.high - intervals.shortest.low;
  for (std::size_t index = 1; index < outside; ++index) {
    const Interval candidate = from(index);
    if (candidate.high - candidate.low >= least) continue;
    least = candidate.high - candidate.low;
    intervals.shortest = candidate;
  }
  return intervals;
}

Interval symmetricInterval(std::span<double> values, double coverage) {
  const std::size_t trials = values.size(), covered = coveredTrials(trials, coverage);
  assert(covered > 0 && covered < trials);
  const std::size_t low = symmetricRank(trials, covered), above = trials - low - covered + 1;
  gatherFirst(values.begin(), values.end(), low, std::less<>());
  const double lowest = values[low - 1];
  gatherFirst(values.rbegin(), values.rend() - static_cast<std::ptrdiff_t>(low), above, std::greater<>());
  return {lowest, values[trials - above]};
}

}  // namespace core
