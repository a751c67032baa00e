// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/text/stamps.h"

#include <chrono>
#include <cstdio>

#include "core/recording/characters.h"
#include "core/units/date.h"

namespace core {
namespace {

/// Reads along a text.
class Cursor {
 public:
  explicit Cursor(std::string_view text) : m_text(text) {}
  bool atEnd() const { return m_at >= m_text.size(); }
  char peek() const { return atEnd() ? '\0' : m_text[m_at]; }
  std::size_t at() const { return m_at; }
  void moveTo(std::size_t at) { m_at = at; }
  std::string_view rest() const { return m_text.substr(m_at); }
  bool take(char c) {
    if (peek() != c) return false;
    ++m_at;
    return true;
  }
  bool takeOneOf(std::string_view set) {
    if (atEnd() || set.find(peek()) == std::string_view::npos) return false;
    ++m_at;
    return true;
  }
  bool takeWord(std::string_view small) {
    if (lower(m_text.substr(m_at, small.size())) != small) return false;
    m_at += small.size();
    return true;
  }
  void skipBlanks() {
    while (isBlank(peek())) ++m_at;
  }
  /// A whole number of `fewest` to `most` digits and no more.
  std::optional<int> number(std::size_t fewest, std::size_t most) {
    std::size_t end = m_at;
    int value = 0;
    while (end < m_text.size() && isDigit(m_text[end])) {
      if (end - m_at >= most) return std::nullopt;
      value = 10 * value + (m_text[end++] - '0');
    }
    if (end - m_at < fewest) return std::nullopt;
    m_at = end;
    return value;
  }
  /// Digits as a fraction of a second, those behind the ninth dropped.
  std::int64_t fraction_ns() {
    std::int64_t value = 0, unit = nanoseconds;
    for (; isDigit(peek()); ++m_at) {
      unit /= 10;
      value += unit * (peek() - '0');
    }
    return value;
  }

 private:
  std::string_view m_text;
  std::size_t m_at = 0;
};

std::optional<int> monthNamed(std::string_view word) {
  const std::string name = lower(word.substr(0, 3));
  constexpr std::string_view english[] = {"jan", "feb", "mar", "apr", "may", "jun",
                                          "jul", "aug", "sep", "oct", "nov", "dec"};
  for (int k = 0; k < 12; ++k)
    if (name == english[k]) return k + 1;
  if (name == "mai") return 5;
  if (name == "okt") return 10;
  if (name == "dez") return 12;
  return std::nullopt;
}

/// Afternoon and morning, with or without points; changes `hour`.
bool takeHalfDay(Cursor& cursor, int& hour) {
  const std::size_t before = cursor.at();
  cursor.skipBlanks();
  const bool morning = cursor.takeWord("am") || cursor.takeWord("a.m.");
  const bool afternoon = !morning && (cursor.takeWord("pm") || cursor.takeWord("p.m."));
  if (!morning && !afternoon) {
    cursor.moveTo(before);
    return true;
  }
  if (hour < 1 || hour > 12) return false;
  hour = hour % 12 + (afternoon ? 12 : 0);
  return true;
}

std::optional<std::int64_t> takeClock(Cursor& cursor) {
  auto first = cursor.number(1, 5);
  if (!first || !cursor.take(':')) return std::nullopt;
  auto second = cursor.number(2, 2);
  if (!second) return std::nullopt;
  std::optional<int> third;
  if (cursor.take(':')) {
    third = cursor.number(2, 2);
    if (!third) return std::nullopt;
  }
  const bool fraction = cursor.takeOneOf(third ? ".,:" : ".,");
  const std::int64_t fraction_ns = fraction ? cursor.fraction_ns() : 0;
  int hour = *first, minute = *second, second_s = third.value_or(0);
  if (!third && fraction) hour = *first / 60, minute = *first % 60, second_s = *second;
  if (minute > 59 || second_s > 60 || !takeHalfDay(cursor, hour)) return std::nullopt;
  return ((hour * std::int64_t{60} + minute) * 60 + second_s) * nanoseconds + fraction_ns;
}

/// "134510" behind a T.
std::optional<std::int64_t> takePlainClock(Cursor& cursor) {
  const auto digits = cursor.number(6, 6);
  if (!digits) return std::nullopt;
  const int hour = *digits / 10000, minute = *digits / 100 % 100, second = *digits % 100;
  if (hour > 24 || minute > 59 || second > 60) return std::nullopt;
  const std::int64_t fraction_ns = cursor.takeOneOf(".,") ? cursor.fraction_ns() : 0;
  return ((hour * std::int64_t{60} + minute) * 60 + second) * nanoseconds + fraction_ns;
}

/// One of the three parts of a date: a number, or the name of a month, which is told by `digits` 0.
bool takeDatePart(Cursor& cursor, int& value, int& digits) {
  const std::size_t before = cursor.at();
  if (const auto number = cursor.number(1, 4)) {
    value = *number;
    digits = static_cast<int>(cursor.at() - before);
    return digits != 3;
  }
  while (isLetter(cursor.peek())) cursor.moveTo(cursor.at() + 1);
  const std::size_t end = cursor.at();
  cursor.moveTo(before);
  if (end - before < 3 || end - before > 9) return false;
  const auto month = monthNamed(cursor.rest().substr(0, end - before));
  if (!month) return false;
  cursor.moveTo(end);
  value = *month;
  digits = 0;
  return true;
}

bool takeDateSeparator(Cursor& cursor, char& separator) {
  const char c = cursor.peek();
  if (!cursor.takeOneOf("-/. ,")) return false;
  if (c == ',' || c == '.') cursor.skipBlanks();
  separator = c;
  return true;
}

/// Turns the parts of a date with a named month into year, month, day.
bool orderNamed(WrittenDate& date) {
  std::array<int, 3>& n = date.numbers;
  std::array<int, 3>& d = date.digits;
  const std::size_t month = d[0] == 0 ? 0 : d[1] == 0 ? 1 : 2;
  const std::size_t one = month == 0 ? 1 : 0, other = month == 2 ? 1 : 2;
  const std::size_t year = d[one] == 4 ? one : other, day = year == one ? other : one;
  if (d[one] == 0 || d[other] == 0 || d[day] > 2 || d[year] < 2) return false;
  n = {n[year], n[month], n[day]};
  d = {d[year], 2, d[day]};
  return date.named = true;
}

std::optional<WrittenDate> takeDate(Cursor& cursor) {
  WrittenDate date;
  char second = 0;
  const std::size_t before = cursor.at();
  if (const auto all = cursor.number(8, 8)) {
    date.numbers = {*all / 10000, *all / 100 % 100, *all % 100};
    date.digits = {4, 2, 2};
    return date;
  }
  cursor.moveTo(before);
  for (std::size_t k = 0; k < 3; ++k) {
    if (k == 1 && !takeDateSeparator(cursor, date.separator)) return std::nullopt;
    if (k == 2 && !takeDateSeparator(cursor, second)) return std::nullopt;
    if (!takeDatePart(cursor, date.numbers[k], date.digits[k])) return std::nullopt;
  }
  const auto& d = date.digits;
  if (d[0] == 0 || d[1] == 0 || d[2] == 0) {
    if (!orderNamed(date)) return std::nullopt;
    return date;
  }
  const bool same = date.separator == second && date.separator != ' ' && date.separator != ',';
  const bool oneYear = d[1] <= 2 && (d[0] == 4 ? d[2] <= 2 : d[2] == 4 || d[2] == 2);
  if (!same || !oneYear) return std::nullopt;
  return date;
}

std::optional<std::int64_t> daysOf(const WrittenDate& date, DateOrder order) {
  auto [year, month, day] = date.numbers;
  if (!date.named) {
    const auto& n = date.numbers;
    const bool yearFirst = order == DateOrder::YearMonthDay;
    if (date.digits[0] == 4 ? !yearFirst : date.digits[2] == 4 && yearFirst) return std::nullopt;
    if (order == DateOrder::DayMonthYear) day = n[0], month = n[1], year = n[2];
    if (order == DateOrder::MonthDayYear) month = n[0], day = n[1], year = n[2];
  }
  if (year < 100) year += year < 70 ? 2000 : 1900;
  const Date written{std::chrono::year(year), std::chrono::month(static_cast<unsigned>(month)),
                     std::chrono::day(static_cast<unsigned>(day))};
  // Nanoseconds since 1970 fit into 64 bits from 1678 to 2262.
  if (!written.ok() || year < 1900 || year > 2200) return std::nullopt;
  return std::chrono::sys_days(written).time_since_epoch().count();
}

/// "Z", " UTC", "+02:00", "-0530", "+01"; leaves the cursor where it is when there is none.
std::optional<int> takeZone(Cursor& cursor) {
  const std::size_t before = cursor.at();
  cursor.skipBlanks();
  if (cursor.takeWord("utc") || cursor.takeWord("gmt") || cursor.takeWord("z")) return 0;
  const bool west = cursor.peek() == '-';
  if (cursor.takeOneOf("+-")) {
    const std::size_t first = cursor.at();
    if (const auto both = cursor.number(4, 4)) return (west ? -1 : 1) * (*both / 100 * 60 + *both % 100);
    cursor.moveTo(first);
    const auto hours = cursor.number(2, 2);
    if (hours && *hours <= 14) {
      const auto minutes = cursor.take(':') ? cursor.number(2, 2) : std::optional(0);
      if (minutes) return (west ? -1 : 1) * (*hours * 60 + *minutes);
    }
  }
  cursor.moveTo(before);
  return std::nullopt;
}

struct DateAndClock {
  WrittenDate date;
  std::int64_t clock_ns = 0;
  std::optional<int> ahead_min;
};

std::optional<DateAndClock> clockFirst(std::string_view text) {
  Cursor cursor(text);
  const auto clock = takeClock(cursor);
  if (!clock || !cursor.takeOneOf(" ,_")) return std::nullopt;
  cursor.skipBlanks();
  const auto date = takeDate(cursor);
  if (!date || !cursor.atEnd()) return std::nullopt;
  return DateAndClock{*date, *clock, std::nullopt};
}

std::optional<DateAndClock> takenApart(std::string_view text) {
  text = trimmed(text);
  Cursor cursor(text);
  const auto date = takeDate(cursor);
  if (!date) return clockFirst(text);
  if (cursor.atEnd()) return DateAndClock{*date, 0, std::nullopt};
  cursor.takeOneOf(",;");
  cursor.skipBlanks();
  cursor.takeOneOf("Tt_:-");
  cursor.skipBlanks();
  const std::size_t before = cursor.at();
  auto clock = takeClock(cursor);
  if (!clock) {
    cursor.moveTo(before);
    clock = takePlainClock(cursor);
  }
  if (!clock) return std::nullopt;
  const auto zone = takeZone(cursor);
  if (!cursor.atEnd()) return std::nullopt;
  return DateAndClock{*date, *clock, zone};
}

/// "46153.41667" as spreadsheets count: days since 1899-12-30, from March 1900 on (ECMA-376 part
/// 1, 18.17.4.1). Only of 2009 to 2064.
std::optional<std::int64_t> spreadsheetDays_ns(std::string_view text) {
  Cursor cursor(trimmed(text));
  const auto days = cursor.number(5, 5);
  if (!days || *days < 40'000 || *days > 60'000) return std::nullopt;
  std::int64_t fraction = 0, unit = 1'000'000'000'000;  // twelve decimals are finer than 0.1 us
  if (cursor.takeOneOf(".,"))
    for (; isDigit(cursor.peek()); cursor.moveTo(cursor.at() + 1))
      unit /= 10, fraction += unit * (cursor.peek() - '0');
  if (!cursor.atEnd()) return std::nullopt;
  constexpr std::int64_t daysTo1970 = 25'569;
  return (*days - daysTo1970) * nanosecondsOfDay + (fraction * 864 + 5) / 10;
}

}  // namespace

std::optional<Stamp> readClock(std::string_view text) {
  Cursor cursor(trimmed(text));
  const auto clock = takeClock(cursor);
  if (!clock) return std::nullopt;
  const auto zone = takeZone(cursor);
  if (!cursor.atEnd()) return std::nullopt;
  return Stamp{*clock, zone};
}

std::optional<WrittenDate> readWrittenDate(std::string_view text) {
  Cursor cursor(trimmed(text));
  const auto date = takeDate(cursor);
  if (!date || !cursor.atEnd()) return std::nullopt;
  return date;
}

std::optional<std::int64_t> readDate(std::string_view text, DateOrder order) {
  const auto date = readWrittenDate(text);
  if (!date) return std::nullopt;
  return daysOf(*date, order);
}

std::optional<Stamp> readDateAndTime(std::string_view text, DateOrder order) {
  const auto parts = takenApart(text);
  if (!parts) {
    const auto days_ns = spreadsheetDays_ns(text);
    return days_ns ? std::optional(Stamp{*days_ns, std::nullopt}) : std::nullopt;
  }
  const auto days = daysOf(parts->date, order);
  if (!days || parts->clock_ns > 2 * nanosecondsOfDay) return std::nullopt;
  return Stamp{*days * nanosecondsOfDay + parts->clock_ns, parts->ahead_min};
}

std::optional<WrittenDate> dateWithin(std::string_view text) {
  const auto parts = takenApart(text);
  if (!parts) return std::nullopt;
  return parts->date;
}

std::string isoText(const Stamp& stamp) {
  const std::chrono::sys_time<std::chrono::nanoseconds> moment{std::chrono::nanoseconds(stamp.local_ns)};
  const auto day = std::chrono::floor<std::chrono::days>(moment);
  const std::int64_t ns = (moment - day).count();
  const std::int64_t second = ns / nanoseconds;
  std::array<char, 64> text{};
  std::snprintf(text.data(), text.size(), "T%02d:%02d:%02d.%09d", static_cast<int>(second / 3600),
                static_cast<int>(second / 60 % 60), static_cast<int>(second % 60),
                static_cast<int>(ns % nanoseconds));
  std::string iso = dateText(Date(day)) + text.data();
  iso.erase(iso.find_last_not_of('0') + 1);
  if (iso.ends_with('.')) iso.pop_back();
  if (!stamp.ahead_min) return iso;
  if (*stamp.ahead_min == 0) return iso + "Z";
  const int minutes = std::abs(*stamp.ahead_min);
  std::snprintf(text.data(), text.size(), "%c%02d:%02d", *stamp.ahead_min < 0 ? '-' : '+', minutes / 60,
                minutes % 60);
  return iso + text.data();
}

}  // namespace core
