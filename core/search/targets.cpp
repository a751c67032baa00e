// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/search/targets.h"

#include <algorithm>
#include <cmath>

#include "core/search/shunt_place.h"
#include "core/units/language.h"
#include "core/units/notation.h"
#include "core/units/text.h"

namespace core {
namespace {

std::vector<double> onBothSides(std::vector<double> magnitudes, bool positive, bool negative) {
  std::sort(magnitudes.begin(), magnitudes.end());
  std::vector<double> levels;
  if (positive) levels = magnitudes;
  if (negative)
    for (const double magnitude : magnitudes) levels.push_back(-magnitude);
  return levels;
}

bool isSpace(char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r'; }

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && isSpace(text.front())) text.remove_prefix(1);
  while (!text.empty() && isSpace(text.back())) text.remove_suffix(1);
  return text;
}

Result<double> levelFromText(std::string_view text, const Bridge& bridge) {
  if (isTransducer(bridge)) return parseQuantity(text, UnitFamily::Named, bridge.rating.loadUnit);
  const auto strain = parseQuantity(text, UnitFamily::Strain);
  if (!strain) return strain;
  return simulatedInUnit(bridge, *strain);
}

/// Whether the comma at `at` has a space behind it or ends the text, and so is no decimal mark.
bool isLooseComma(std::string_view text, std::size_t at) {
  return text[at] == ',' && (at + 1 == text.size() || isSpace(text[at + 1]));
}

/// Whether the only comma of `text` stands between two digits, where it can be a decimal mark.
bool isDecimalOrList(std::string_view text) {
  const std::size_t comma = text.find(',');
  return comma != text.npos && comma == text.rfind(',') && comma > 0 && comma + 1 < text.size() &&
         isDigit(text[comma - 1]) && isDigit(text[comma + 1]);
}

/// The words between separators: semicolons, ends of lines, commas before a space. Commas in the midst of
/// digits are decimal marks, unless there are more of them than one number can have.
Result<std::vector<std::string_view>> levelWords(std::string_view text) {
  bool separated = false;
  for (std::size_t at = 0; at < text.size(); ++at)
    separated = separated || text[at] == ';' || text[at] == '\n' || isLooseComma(text, at);
  if (!separated && isDecimalOrList(text))
    return Error{say("levels"), say("{1} can be read as one number and as two", {inQuotes(trimmed(text))}),
                 say("Write a point in a number, or a semicolon between two")};
  std::vector<std::string_view> words;
  for (std::size_t begin = 0; begin <= text.size();) {
    std::size_t end = begin;
    const auto separates = [&](std::size_t at) {
      return text[at] == ';' || text[at] == '\n' || isLooseComma(text, at) || (!separated && text[at] == ',');
    };
    while (end < text.size() && !separates(end)) ++end;
    words.push_back(trimmed(text.substr(begin, end - begin)));
    begin = end + 1;
  }
  if (words.size() > 1 && words.back().empty()) words.pop_back();  // after a last separator
  return words;
}

}  // namespace

std::vector<double> equalLevels(double greatest, unsigned count, bool positive, bool negative) {
  std::vector<double> magnitudes;
  for (unsigned k = 1; k <= count; ++k) magnitudes.push_back(greatest * k / count);
  return onBothSides(std::move(magnitudes), positive, negative);
}

std::vector<double> levelsByShare(double range, const std::vector<double>& shares, bool positive,
                                  bool negative) {
  std::vector<double> magnitudes;
  for (const double share : shares) magnitudes.push_back(share * range);
  return onBothSides(std::move(magnitudes), positive, negative);
}

Result<std::vector<double>> levelsFromText(std::string_view text, const Bridge& bridge) {
  const auto words = levelWords(text);
  if (!words) return words.error();
  std::vector<double> levels;
  for (const std::string_view word : *words) {
    const auto level = levelFromText(word, bridge);
    if (!level) return Error{say("levels"), level.error().what, level.error().mend};
    if (!std::isfinite(*level))
      return Error{say("levels"), say("{1} is too large or too small", {inQuotes(word)}),
                   say("Leave it out")};
    if (*level == 0)
      return Error{say("levels"), say("{1} is zero, which needs no shunt", {inQuotes(word)}),
                   say("Leave it out")};
    if (std::find(levels.begin(), levels.end(), *level) != levels.end())
      return Error{say("levels"), say("{1} is there twice", {inQuotes(word)}), say("Leave one out")};
    levels.push_back(*level);
  }
  return levels;
}

}  // namespace core
