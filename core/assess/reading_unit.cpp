// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/assess/reading_unit.h"

#include <cmath>
#include <optional>
#include <string>

#include "core/units/language.h"
#include "core/units/notation.h"

namespace core {
namespace {

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

Result<void> requireReadingUnit(const Instrument& instrument, std::string_view columnUnit) {
  const std::string expected = readingUnitText(instrument);
  if (columnUnit.empty() || columnUnit == expected) return {};
  const auto family = familyOf(instrument.unit);
  if (family && sameUnit(*family, columnUnit, expected)) return {};
  return Error{"", say("the recording is in {1} and the channel reads in {2}", {columnUnit, expected}),
               say("Set the channel's reading unit to that of the recording, or export the recording in {1}",
                   {expected})};
}

Result<void> checkReading(const Instrument& instrument, Reading reading) {
  if (std::abs(reading.base()) <= greatestReading.base()) return {};
  const auto text = [&](Reading one) {
    return shown(formatQuantity(one.base(), UnitFamily::Named, readingUnitText(instrument), 6));
  };
  return Error{"", say("{1} is more than any instrument shows", {text(reading)}),
               say("Check the number and its decimal mark; up to {1} is taken", {text(greatestReading)})};
}

}  // namespace core
