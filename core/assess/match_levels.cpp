// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/assess/match_levels.h"

#include <algorithm>
#include <string>

#include "core/units/notation.h"

namespace core {
namespace {

constexpr std::size_t mostListed = 20;

std::string levelText(const Setup& setup, const Level& level) {
  return formatNumber(level.mean, 5) + " " + readingUnitText(setup.instrument) + " (" +
         formatNumber(level.begin_s, 5) + " to " + formatNumber(level.end_s, 5) + " s)";
}

std::string stepText(const Setup& setup, std::size_t step) {
  const std::string& label = setup.sequence[step].label;
  return std::to_string(step + 1) + (label.empty() ? "" : " " + label);
}

/// "a, b, c", cut off after the first twenty.
template <class Text>
std::string listOf(std::size_t count, const Text& textOf) {
  std::string list;
  for (std::size_t k = 0; k < std::min(count, mostListed); ++k) list += (k == 0 ? "" : ", ") + textOf(k);
  if (count > mostListed) list += " and " + std::to_string(count - mostListed) + " more";
  return count == 0 ? "none" : list;
}

std::string counted(std::size_t count, const std::string& noun) {
  return std::to_string(count) + " " + noun + (count == 1 ? "" : "s");
}

/// The family whose notation knows the reading unit, none for units of the user's choice.
std::optional<UnitFamily> familyOf(ReadingUnit unit) {
  switch (unit) {
    case ReadingUnit::MicrometrePerMetre:
      return UnitFamily::Strain;
    case ReadingUnit::MillivoltPerVolt:
      return UnitFamily::Output;
    case ReadingUnit::Millivolt:
      return UnitFamily::Voltage;
    case ReadingUnit::Scaled:
      return std::nullopt;
  }
  return std::nullopt;
}

/// Whether one of each unit is the same quantity.
bool sameUnit(UnitFamily family, std::string_view a, std::string_view b) {
  const auto one = parseQuantity("1 " + std::string(a), family);
  const auto other = parseQuantity("1 " + std::string(b), family);
  return one && other && *one == *other;
}

}  // namespace

Result<std::vector<std::optional<Measured>>> readingsFromLevels(const Setup& setup,
                                                                std::span<const Level> levels) {
  const std::size_t steps = setup.sequence.size();
  if (levels.size() != steps)
    return Error{"",
                 "the recording holds " + counted(levels.size(), "level") + " where the sequence has " +
                     counted(steps, "step") + "; levels found: " +
                     listOf(levels.size(), [&](std::size_t k) { return levelText(setup, levels[k]); }) +
                     "; steps expected: " + listOf(steps, [&](std::size_t k) { return stepText(setup, k); }),
                 "Record the whole sequence and nothing else, or change the sequence to what was done"};
  std::vector<std::optional<Measured>> readings;
  readings.reserve(steps);
  for (const Level& level : levels)
    readings.push_back(Measured{Reading(level.mean), Reading(level.stdUncertainty), Duration(level.begin_s),
                                Duration(level.end_s)});
  return readings;
}

Result<void> requireReadingUnit(const Instrument& instrument, std::string_view columnUnit) {
  const std::string expected = readingUnitText(instrument);
  if (columnUnit.empty() || columnUnit == expected) return {};
  const auto family = familyOf(instrument.unit);
  if (family && sameUnit(*family, columnUnit, expected)) return {};
  return Error{
      "", "the recording is in " + std::string(columnUnit) + " and the channel reads in " + expected,
      "Set the channel's reading unit to that of the recording, or export the recording in " + expected};
}

}  // namespace core
