// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace core {

/// How the numbers of a data set stand in the file.
enum class Uff58Form : std::uint8_t { Text, LittleEndian, BigEndian, Unreadable };

/// What the heading of a data set 58 ("function at nodal degree of freedom") says. Source: the published
/// description of universal file data set 58, "Universal Dataset Number: 58"; from memory.
struct Uff58Heading {
  Uff58Form form = Uff58Form::Text;
  std::uint64_t binaryBytes = 0;  ///< of the numbers; 0 for text and where the file does not say
  std::string title;              ///< the first id line; empty for NONE
  std::string place;              ///< response entity, node and direction: "TAIL:12 +Z"
  int ordinateType = 0;           ///< 2 real single, 4 real double, 5 and 6 complex
  std::uint64_t count = 0;        ///< of values, or of pairs
  bool even = true;
  double start = 0;
  double increment = 0;
  int abscissaType = 0;  ///< 17 time, 18 frequency, 0 unknown
  std::string abscissaUnit;
  std::string ordinateUnit;

  bool isReal() const { return ordinateType == 2 || ordinateType == 4; }
  bool isDouble() const { return ordinateType == 4; }
};

constexpr std::size_t uff58HeadingLines = 11;

/// `marker` is the line with the number of the data set. None when the counts cannot be read.
std::optional<Uff58Heading> uff58Heading(std::string_view marker,
                                         const std::array<std::string, uff58HeadingLines>& lines);

/// A number as it stands in such files, also with D for the exponent; none for anything else.
std::optional<double> uffNumber(std::string_view text);

}  // namespace core
