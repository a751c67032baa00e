// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/text/time_cell.h"

#include <cmath>
#include <optional>

#include "core/recording/characters.h"
#include "core/recording/text/number.h"
#include "core/recording/time_units.h"
#include "core/units/language.h"

namespace core {
namespace {

/// "1778507110.25" in seconds, or as many milli- or microseconds, since 1970-01-01 as whole nanoseconds: all
/// digits count, where a double would keep a quarter of a microsecond.
std::optional<std::int64_t> readEpoch(std::string_view cell, char decimal, TimeForm form) {
  const std::int64_t unit_ns = form == TimeForm::Milliseconds   ? nanoseconds / 1000
                               : form == TimeForm::Microseconds ? nanoseconds / 1'000'000
                                                                : nanoseconds;
  std::int64_t whole = 0, fraction_ns = 0, place_ns = unit_ns;
  std::size_t i = 0;
  for (; i < cell.size() && isDigit(cell[i]); ++i) {
    if (i >= 18) return std::nullopt;
    whole = 10 * whole + (cell[i] - '0');
  }
  const bool plain = i > 0 && (i == cell.size() || cell[i] == decimal);
  if (!plain) {
    const CellNumber number = readNumber(cell, decimal);
    const double ns = number.value * static_cast<double>(unit_ns);
    if (number.fault || !(std::abs(ns) < 9e18)) return std::nullopt;
    return static_cast<std::int64_t>(std::llround(ns));
  }
  for (++i; i < cell.size(); ++i) {
    if (!isDigit(cell[i])) return std::nullopt;
    place_ns /= 10;
    fraction_ns += place_ns * (cell[i] - '0');
  }
  if (whole > 9'000'000'000 * nanoseconds / unit_ns) return std::nullopt;
  return whole * unit_ns + fraction_ns;
}

}  // namespace

TimeCell readTimeCell(std::string_view cell, const RowPlan& plan) {
  TimeCell time;
  if (plan.form == TimeForm::Clock) {
    const auto clock = readClock(cell);
    if (!clock) return {0, 0, sayLater("is not a time of day").data()};
    time.ns = clock->utc_ns();
  } else if (plan.form == TimeForm::DateAndTime) {
    const auto stamp = readDateAndTime(cell, plan.order);
    if (!stamp) return {0, 0, sayLater("is not a date and time").data()};
    time.ns = stamp->utc_ns();
  } else if (plan.isAbsolute) {
    const auto epoch = readEpoch(cell, plan.decimal, plan.form);
    if (!epoch) return {0, 0, sayLater("is not a number of seconds since 1970").data()};
    time.ns = *epoch;
  } else {
    const CellNumber number = readNumber(cell, plan.decimal);
    time.fault = number.fault;
    time.value_s = inSeconds(number.value, plan.form);
    if (!number.fault && !std::isfinite(time.value_s))
      time.fault = sayLater("is beyond the range of numbers in seconds").data();
  }
  return time;
}

}  // namespace core
