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
/// (IEC 60062, the letter as decimal mark; L, R, k or K, M, G, T), "350 ohm", "1,5 mV/V", "-1000 µm/m",
/// "0.1 %", "100 ppm", "AWG 26", "1 min 30 s" (whole hours and minutes, then seconds), with SI prefixes,
/// either micro sign, either ohm sign, the typographic minus, a dash as minus at the front, forms of full
/// width, spaces of any kind around, and a decimal point or comma. The result is the double nearest to the
/// decimal number written, so "174.65k" is exactly 174650, and "0.1 min" 6. The text is taken as a whole or
/// refused: no thousands separators ("1,234" is one and a bit, and "1,234.5" is refused), no fraction, range,
/// colon or calculation, no nan, inf, hexadecimal, or number beyond the range of a double, no unit of another
/// family. A tolerance letter ("4k7F") is refused, since the field would lose it; so is the small m that may
/// be milli or mega ("4m7"). Of an error `where` is empty, `what` quotes the text and `mend` tells what to
/// write.
Result<double> parseQuantity(std::string_view text, UnitFamily family, std::string_view namedUnit = {});

/// The whole number from 0 on that `text` says: digits, exactly up to 2^64 - 1, or any number without unit
/// that is whole ("1e3") up to 2^53. Errors as of parseQuantity.
Result<std::uint64_t> parseCount(std::string_view text);

/// `base` as the field shows it, with unit: "174.65 kΩ", "-1000 µm/m", "0.1288 mm²".
///
/// The shortest decimal that is the same double, or `significantDigits` (1 to 17) when that is longer;
/// parseQuantity returns the same double whenever the digits suffice. A point always, never "-0";
/// an en dash when there is no finite number.
std::string formatQuantity(double base, UnitFamily family, std::string_view namedUnit = {},
                           int significantDigits = 12);

/// The same in the base unit of the family, without prefix: "59900 Ω", "0.0015 V/V", "0.005" for a share.
std::string formatInBaseUnit(double base, UnitFamily family, std::string_view namedUnit = {},
                             int significantDigits = 12);

/// A number without unit, as formatQuantity writes it; with an exponent below 1e-7 and from 1e15 on.
std::string formatNumber(double value, int significantDigits);

/// A number with `decimals` (0 to 50) places after the point; "-0.00" is written "0.00". From 1e15 on six
/// digits and an exponent, so that no number is wider than a column.
std::string formatFixed(double value, int decimals);

}  // namespace core
