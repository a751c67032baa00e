// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "core/units/notation.h"

// The units that fields take, one table a family. Decimal prefixes as in the SI Brochure (9th edition,
// table 7) and NIST SP 811 (2008), table 5, as far as a strain lab meets them.

namespace core {

/// So many times ten to the `exponent` base units. A whole factor keeps the conversion exact.
struct UnitSize {
  int exponent = 0;
  int factor = 1;
};

/// A unit as it is written: one of `prefixes` (letters, with u for micro), or none, and the `symbol`.
struct UnitSymbol {
  std::string_view symbol;
  std::string_view prefixes = {};
  UnitSize size = {};
};

/// What the notation of a family is made of. Sentences are English, for `say`.
struct FamilyNotation {
  std::span<const UnitSymbol> units;
  int fieldExponent;           ///< of the unit that a number alone is in
  std::string_view fieldUnit;  ///< as shown
  std::string_view baseUnit;   ///< as shown
  std::string_view mend;       ///< an example
  std::string_view foreign;    ///< said of a text {1} with a unit of this family in a field of another
};

const FamilyNotation& notationOf(UnitFamily family);

/// The size of a unit of `family`, spelt with u for micro, Ω (U+03A9) and one blank at most between two
/// characters; none when the family has no such unit.
std::optional<UnitSize> unitSize(UnitFamily family, std::string_view unit);

/// The first other family that has such a unit; shares before strains for "%".
std::optional<UnitFamily> familyWith(std::string_view unit);

/// `text` with one spelling for what looks the same on paper: every blank a space, either micro sign "u",
/// either ohm sign Ω, the minus U+2212 and a dash at the front "-", forms of full width as ASCII; marks that
/// cannot be seen are dropped. Trimmed. Bytes that are no UTF-8 stay, and no number has them.
std::string plainSpelling(std::string_view text);

/// Without spaces at the ends.
std::string_view withoutEndSpaces(std::string_view text);

}  // namespace core
