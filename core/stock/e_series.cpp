// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/e_series.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>

#include "core/units/key_names.h"

namespace core {
namespace {

constexpr KeyNames<ESeries, eSeriesCount> names{{"E3", "E6", "E12", "E24", "E48", "E96", "E192"}};
constexpr std::array<std::size_t, eSeriesCount> counts = {3, 6, 12, 24, 48, 96, 192};

/// E24 in hundredths. Older than the rule of the finer series: eight of its values (27 to 47, 82) are not
/// the rounded powers of the 24th root of 10. E12, E6 and E3 are each second, fourth and eighth of it.
constexpr std::array<int, 24> e24 = {100, 110, 120, 130, 150, 160, 180, 200, 220, 240, 270, 300,
                                     330, 360, 390, 430, 470, 510, 560, 620, 680, 750, 820, 910};

/// E192 in hundredths: the powers of the 192nd root of 10, rounded, but for one. E96 and E48 are each second
/// and fourth of it.
const std::array<int, 192>& e192() {
  static const auto values = [] {
    std::array<int, 192> rounded{};
    for (std::size_t k = 0; k < rounded.size(); ++k)
      rounded[k] = static_cast<int>(std::lround(100 * std::pow(10.0, static_cast<double>(k) / 192)));
    rounded[185] = 920;  // 919 by the rule; IEC 60063 has 920
    return rounded;
  }();
  return values;
}

std::size_t countOf(ESeries series) { return counts[static_cast<std::size_t>(series)]; }

int hundredths(ESeries series, std::size_t k) {
  return series <= ESeries::E24 ? e24[k * 24 / countOf(series)] : e192()[k * 192 / countOf(series)];
}

constexpr int leastDecade = -6, greatestDecade = 15;

/// `hundredths` times 10^(decade - 2). One rounding of two exact numbers, so the nearest double.
double scaled(int hundredths, int decade) {
  double power = 1;  // exact up to 10^22
  for (int k = std::abs(decade - 2); k > 0; --k) power *= 10;
  return decade < 2 ? hundredths / power : hundredths * power;
}

}  // namespace

std::string_view eSeriesName(ESeries series) { return names.of(series); }
std::optional<ESeries> eSeriesFromName(std::string_view name) { return names.find(name); }

double usualTolerance(ESeries series) {
  constexpr std::array<double, eSeriesCount> tolerances = {0.4, 0.2, 0.1, 0.05, 0.02, 0.01, 0.005};
  return tolerances[static_cast<std::size_t>(series)];
}

int eSeriesDigits(ESeries series) { return series <= ESeries::E24 ? 2 : 3; }

std::vector<Resistance> eSeriesValues(ESeries series, Resistance from, Resistance to) {
  const double low = std::max(from.base(), scaled(100, leastDecade));
  const double high = std::min(to.base(), scaled(100, greatestDecade));
  std::vector<Resistance> values;
  if (!(low <= high)) return values;
  // One decade to spare on each side, as the logarithm of a power of ten may come out a little off.
  const int first = std::max(leastDecade, static_cast<int>(std::floor(std::log10(low))) - 1);
  const int last = std::min(greatestDecade, static_cast<int>(std::floor(std::log10(high))) + 1);
  for (int decade = first; decade <= last; ++decade)
    for (std::size_t k = 0; k < countOf(series); ++k)
      if (const double value = scaled(hundredths(series, k), decade); low <= value && value <= high)
        values.emplace_back(value);
  return values;
}

Resistance nearestOfSeries(ESeries series, Resistance wanted) {
  assert(wanted > Resistance(0));
  const Resistance inside =
      std::clamp(wanted, Resistance(scaled(100, leastDecade)), Resistance(scaled(100, greatestDecade)));
  const auto off = [&](Resistance value) { return std::abs((value - inside).base()); };
  // A decade to each side holds every series' neighbours; the first of two alike is the lower one.
  const auto values = eSeriesValues(series, inside / 10, inside * 10);
  return *std::min_element(values.begin(), values.end(),
                           [&](Resistance a, Resistance b) { return off(a) < off(b); });
}

}  // namespace core
