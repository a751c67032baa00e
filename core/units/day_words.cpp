// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/day_words.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <string>

#include "core/units/language.h"
#include "core/units/text.h"

namespace core {
namespace {

/// Takes a number of at most `most` digits from the front of `text`.
std::optional<unsigned> taken(std::string_view& text, std::size_t most) {
  unsigned value = 0;
  const char* begin = text.data();
  const auto [end, fault] = std::from_chars(begin, begin + std::min(most, text.size()), value);
  if (fault != std::errc()) return std::nullopt;
  text.remove_prefix(static_cast<std::size_t>(end - begin));
  return value;
}

/// By a pattern such as "dd.MM.yyyy"; days and months may have one digit, years have four.
std::optional<Date> dayByPattern(std::string_view text, std::string_view pattern) {
  constexpr std::array<std::string_view, 3> parts = {"yyyy", "MM", "dd"};
  std::array<unsigned, 3> numbers{};
  while (!pattern.empty()) {
    std::size_t part = 0;
    while (part < parts.size() && !pattern.starts_with(parts[part])) ++part;
    if (part == parts.size()) {
      if (text.empty() || text.front() != pattern.front()) return std::nullopt;
      text.remove_prefix(1);
      pattern.remove_prefix(1);
      continue;
    }
    const auto number = taken(text, parts[part].size());
    if (!number) return std::nullopt;
    numbers[part] = *number;
    pattern.remove_prefix(parts[part].size());
  }
  if (!text.empty() || numbers[0] < 1900) return std::nullopt;
  const Date day(std::chrono::year(static_cast<int>(numbers[0])), std::chrono::month(numbers[1]),
                 std::chrono::day(numbers[2]));
  return day.ok() ? std::optional(day) : std::nullopt;
}

}  // namespace

Result<std::optional<Date>> dayFromWords(std::string_view text) {
  const std::size_t begin = text.find_first_not_of(" \t");
  if (begin == std::string_view::npos) return std::optional<Date>();
  text = text.substr(begin, text.find_last_not_of(" \t") + 1 - begin);
  if (const auto day = dateFromText(text)) return std::optional(*day);
  if (const auto day = dayByPattern(text, language().dayPattern)) return std::optional(*day);
  const Date example(std::chrono::year(2026), std::chrono::month(11), std::chrono::day(25));
  return Error{"", say("{1} is no day", {inQuotes(std::string(text))}),
               say("Enter it as in {1}", {shown(example)})};
}

}  // namespace core
