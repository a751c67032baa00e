// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/search/targets.h"

#include <algorithm>
#include <cmath>

#include "core/search/shunt_place.h"
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

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && (text.front() == ' ' || text.front() == '\t')) text.remove_prefix(1);
  while (!text.empty() && (text.back() == ' ' || text.back() == '\t')) text.remove_suffix(1);
  return text;
}

Result<double> levelFromText(std::string_view text, const Bridge& bridge) {
  if (isTransducer(bridge)) return parseQuantity(text, UnitFamily::Named, bridge.rating.loadUnit);
  const auto strain = parseQuantity(text, UnitFamily::Strain);
  if (!strain) return strain;
  return simulatedInUnit(bridge, *strain);
}

/// Commas separate levels unless one stands for a decimal point, as in "0,5; 1".
bool separates(std::string_view text, std::size_t at) {
  if (text[at] == ';' || text[at] == '\n') return true;
  if (text[at] != ',' || text.find(';') != std::string_view::npos) return false;
  return true;
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
  std::vector<double> levels;
  for (std::size_t begin = 0; begin <= text.size();) {
    std::size_t end = begin;
    while (end < text.size() && !separates(text, end)) ++end;
    const std::string_view word = trimmed(text.substr(begin, end - begin));
    begin = end + 1;
    if (word.empty() && end == text.size() && !levels.empty()) break;  // after a last separator
    const auto level = levelFromText(word, bridge);
    if (!level) return Error{"levels", level.error().what, level.error().mend};
    if (*level == 0)
      return Error{"levels", inQuotes(word) + " is zero, which needs no shunt", "Leave it out"};
    if (std::find(levels.begin(), levels.end(), *level) != levels.end())
      return Error{"levels", inQuotes(word) + " is there twice", "Leave one out"};
    levels.push_back(*level);
  }
  return levels;
}

}  // namespace core
