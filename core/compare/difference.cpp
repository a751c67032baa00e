// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/compare/difference.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/line/distributions.h"
#include "core/uncertainty/propagation.h"
#include "core/units/language.h"

namespace core {
namespace {

struct Row {
  std::string_view key, name;
};

constexpr std::array<Row, 5> rows{{
    {"unchanged", sayLater("unchanged")},
    {"harmless", sayLater("changed within margin")},
    {"changed", sayLater("changed")},
    {"cannot_tell", sayLater("cannot tell")},
    {"not_compared", sayLater("not compared")},
}};

/// t that is exceeded with probability 0.05 and 0.025. A table asks for the same degrees of freedom again and
/// again, and Boost takes a microsecond.
struct Quantiles {
  double dof = 0;
  double at95 = 0, at975 = 0;
};

Quantiles quantilesOf(const std::optional<double>& dof) {
  thread_local Quantiles kept;
  static const Quantiles normal{0, studentQuantile(0.95, {}), studentQuantile(0.975, {})};
  if (!dof) return normal;
  if (kept.dof != *dof) kept = {*dof, studentQuantile(0.95, dof), studentQuantile(0.975, dof)};
  return kept;
}

Change changeOf(bool within, bool different) {
  if (within) return different ? Change::Harmless : Change::Unchanged;
  return different ? Change::Changed : Change::CannotTell;
}

/// Without any uncertainty nothing is left to be tested.
void decideExactly(Difference& difference) {
  const bool within = std::abs(difference.value) <= difference.margin, different = difference.value != 0;
  difference.expanded = difference.halfWidth90 = difference.halfWidth95 = 0;
  difference.pDifferent = different ? 0 : 1;
  difference.pEquivalent = within ? 0 : 1;
  difference.change = changeOf(within, different);
}

}  // namespace

std::string_view changeKey(Change change) { return rows[static_cast<std::size_t>(change)].key; }

std::string_view changeName(Change change) { return rows[static_cast<std::size_t>(change)].name; }

Difference differenceOf(double value, const std::optional<double>& standard, const std::optional<double>& dof,
                        double margin, double coverage) {
  Difference difference;
  difference.value = value;
  difference.margin = margin;
  if (!std::isfinite(value) || !(margin >= 0) || !std::isfinite(margin)) return difference;
  difference.change = Change::CannotTell;
  if (!standard || !std::isfinite(*standard)) return difference;
  difference.standard = standard;
  difference.dof = dof;
  if (*standard == 0) return decideExactly(difference), difference;
  const Quantiles t = quantilesOf(dof);
  difference.halfWidth90 = t.at95 * *standard;
  difference.halfWidth95 = t.at975 * *standard;
  difference.expanded = coverageFactorFor(coverage, dof) * *standard;
  if (const double en = value / *difference.expanded; std::isfinite(en)) difference.en = en;
  const double size = std::abs(value);
  difference.pDifferent = 2 * studentExceeded(size / *standard, dof);
  difference.pEquivalent = studentExceeded((margin - size) / *standard, dof);
  difference.change = changeOf(size + *difference.halfWidth90<margin, size> * difference.halfWidth95);
  return difference;
}

std::optional<unsigned> repeatsToTell(const Difference& open, const Spread& spread) {
  if (open.change != Change::CannotTell || !open.standard) return std::nullopt;
  const double size = std::abs(open.value);
  const auto tells = [&](double repeats) {
    const double u = std::sqrt(spread.averaging / repeats + spread.lasting);
    const auto dof = open.dof ? std::optional(*open.dof * repeats) : std::nullopt;
    const Quantiles t = quantilesOf(dof);
    return size + t.at95 * u < open.margin || size > t.at975 * u;
  };
  if (!tells(mostRepeatsOfChecks)) return std::nullopt;
  // The more repeats the smaller both half widths: the first that tells is found by halving.
  unsigned silent = 1, telling = mostRepeatsOfChecks;
  while (telling - silent > 1) {
    const unsigned middle = silent + (telling - silent) / 2;
    (tells(middle) ? telling : silent) = middle;
  }
  return telling;
}

}  // namespace core
