// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/date.h"

#include <array>
#include <cstdio>

namespace core {
namespace {

/// The number that `digits` characters from `at` say; none unless all are digits.
std::optional<unsigned> number(std::string_view text, std::size_t at, std::size_t digits) {
  unsigned value = 0;
  for (const char c : text.substr(at, digits)) {
    if (c < '0' || c > '9') return std::nullopt;
    value = 10 * value + static_cast<unsigned>(c - '0');
  }
  return value;
}

}  // namespace

std::optional<Date> dateFromText(std::string_view text) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-') return std::nullopt;
  const auto year = number(text, 0, 4), month = number(text, 5, 2), day = number(text, 8, 2);
  if (!year || !month || !day || *year < 1900) return std::nullopt;
  const Date date(std::chrono::year(static_cast<int>(*year)), std::chrono::month(*month),
                  std::chrono::day(*day));
  if (!date.ok()) return std::nullopt;
  return date;
}

std::string dateText(Date date) {
  std::array<char, 16> text{};
  std::snprintf(text.data(), text.size(), "%04d-%02u-%02u", static_cast<int>(date.year()),
                static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
  return text.data();
}

std::optional<Time> timeFromText(std::string_view text) {
  if (text.size() != 20 || text[10] != 'T' || text[13] != ':' || text[16] != ':' || text[19] != 'Z')
    return std::nullopt;
  const auto day = dateFromText(text.substr(0, 10));
  const auto hour = number(text, 11, 2), minute = number(text, 14, 2), second = number(text, 17, 2);
  if (!day || !hour || !minute || !second || *hour > 23 || *minute > 59 || *second > 59) return std::nullopt;
  return std::chrono::sys_days(*day) + std::chrono::hours(*hour) + std::chrono::minutes(*minute) +
         std::chrono::seconds(*second);
}

std::string timeText(Time time) {
  const auto day = std::chrono::floor<std::chrono::days>(time);
  const std::chrono::hh_mm_ss clock(time - day);
  std::array<char, 32> text{};
  std::snprintf(text.data(), text.size(), "T%02d:%02d:%02dZ", static_cast<int>(clock.hours().count()),
                static_cast<int>(clock.minutes().count()), static_cast<int>(clock.seconds().count()));
  return dateText(Date(day)) + text.data();
}

}  // namespace core
