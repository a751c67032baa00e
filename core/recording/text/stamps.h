// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/recording/layout.h"

// Times of day and dates as loggers write them, in whole nanoseconds, so that differences are exact.

namespace core {

constexpr std::int64_t nanoseconds = 1'000'000'000;  ///< in a second
constexpr std::int64_t nanosecondsOfDay = 86'400 * nanoseconds;

/// A moment: nanoseconds since 1970-01-01T00:00 of the clock that wrote it, or of a day when there is no
/// date, and what that clock is ahead of UTC, when it says so.
struct Stamp {
  std::int64_t local_ns = 0;
  std::optional<int> ahead_min;

  std::int64_t utc_ns() const { return local_ns - 60 * nanoseconds * ahead_min.value_or(0); }
};

/// "13:45:10.25", "13:45:10,25", "13:45:10:250", "13:45", "1:45:10 PM", "45:10.25" (minutes and seconds when
/// a fraction follows two parts). Hours may be more than 24, as of an elapsed time.
std::optional<Stamp> readClock(std::string_view text);

/// The three numbers of a date in the order written; `named` when a month is written as a word, and then they
/// are year, month, day.
struct WrittenDate {
  std::array<int, 3> numbers{};
  std::array<int, 3> digits{};
  bool named = false;
  char separator = 0;
};
/// "2026-05-11", "11.05.26", "5/11/2026", "11-May-2026", "20260511"; nothing else before or behind.
std::optional<WrittenDate> readWrittenDate(std::string_view text);

/// Days since 1970-01-01 of a date in that order; none when it does not exist in it. A year of two digits
/// lies in 1970 to 2069. A written month and a year of four digits in front need no order.
std::optional<std::int64_t> readDate(std::string_view text, DateOrder order);

/// A date and a time of day, one behind the other with a blank, T or the like between, a zone (Z, +02:00)
/// allowed; also the time of day first; also a date alone, which is midnight; also "46153.41667", the
/// days of a spreadsheet, of 2009 to 2064.
std::optional<Stamp> readDateAndTime(std::string_view text, DateOrder order);

/// The date that a text with date and time begins or ends with; none when there is none.
std::optional<WrittenDate> dateWithin(std::string_view text);

/// "2026-05-11T13:45:10.25", with "Z" or "+02:00" behind it when the zone is known. ISO 8601.
std::string isoText(const Stamp& stamp);

}  // namespace core
