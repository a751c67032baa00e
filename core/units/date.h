// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <chrono>
#include <optional>
#include <string>
#include <string_view>

namespace core {

/// A day of the Gregorian calendar, without time zone.
using Date = std::chrono::year_month_day;

/// "2026-11-25" (ISO 8601 calendar date) of a day that exists, years 1900 to 9999; else none.
std::optional<Date> dateFromText(std::string_view text);
/// The same the other way round.
std::string dateText(Date date);

/// A moment in UTC, to the second.
using Time = std::chrono::sys_seconds;

/// "2026-11-25T14:05:00Z" (ISO 8601) of a day as above; no leap seconds.
std::optional<Time> timeFromText(std::string_view text);
std::string timeText(Time time);
inline bool isTimeText(std::string_view text) { return timeFromText(text).has_value(); }

}  // namespace core
