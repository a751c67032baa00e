// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "core/units/result.h"

namespace core {

/// What a field holds; decides which units it takes and what a number without unit means.
enum class UnitFamily : std::uint8_t {
  Resistance,   ///< ohm; field unit Ω
  Output,       ///< V/V; field unit mV/V
  Strain,       ///< m/m; field unit µm/m
  Voltage,      ///< V
  Duration,     ///< s
  Length,       ///< m
  Area,         ///< m^2; field unit mm²
  Temperature,  ///< degree Celsius
  Percent,      ///< a ratio; field unit %, so that 1 is 0.01
  Frequency,    ///< Hz
  Power,        ///< W; field unit mW
  Plain,        ///< a number without unit
  Named,        ///< a number that may be followed by a unit the user chose, such as kN
};

/// The number that `text` says, in the base unit of `family`.
///
/// A number alone is in the field unit. Taken are the trade's spellings: "174.65k", "59k9" and "4R7"
/// (IEC 60062, the letter as decimal mark), "350 ohm", "1,5 mV/V", "-1000 µm/m", "0.1 %", "AWG 26",
/// with either micro sign, either ohm sign, the typographic minus, and a decimal point or comma.
/// The result is the double nearest to the decimal number written, so "174.65k" is exactly 174650.
/// The text is taken as a whole or refused: no thousands separators ("1,234" is one and a bit, and
/// "1,234.5" is refused), no nan, inf, hexadecimal, or number beyond the range of a double.
/// Of an error `where` is empty, `what` quotes the text and `mend` shows an example.
Result<double> parseQuantity(std::string_view text, UnitFamily family, std::string_view namedUnit = {});

/// `base` as the field shows it, with unit: "174.65 kΩ", "-1000 µm/m", "0.1288 mm²".
///
/// The shortest decimal that is the same double, or `significantDigits` (1 to 17) when that is longer;
/// parseQuantity returns the same double whenever the digits suffice. A point always, never "-0";
/// an en dash when there is no finite number.
std::string formatQuantity(double base, UnitFamily family, std::string_view namedUnit = {},
                           int significantDigits = 12);

/// A number without unit, as formatQuantity writes it; with an exponent below 1e-7 and from 1e15 on.
std::string formatNumber(double value, int significantDigits);

/// A number with `decimals` (0 to 50) places after the point; "-0.00" is written "0.00".
std::string formatFixed(double value, int decimals);

}  // namespace core
