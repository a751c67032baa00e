// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <bit>
#include <cstddef>
#include <cstdint>
#include <cstring>
#include <string_view>

namespace core {

/// A cell read as a number: its value, or why there is none, as the end of a sentence about the cell.
struct CellNumber {
  double value = 0;
  const char* fault = nullptr;  ///< nullptr when `value` holds
};

/// Reads all of `cell`: ".5", "5.", "1,5E-3", "+2", also with the typographic minus and Fortran's exponent
/// letter D. The double nearest to the decimal number, whatever the locale. No thousands separators, no
/// hexadecimal. nan and inf, and what a double cannot hold (1e400, 1e-400), are faults, never 0.
CellNumber readNumber(std::string_view cell, char decimal);

namespace digits {

inline constexpr std::array<double, 23> powerOfTen = {1e0,  1e1,  1e2,  1e3,  1e4,  1e5,  1e6,  1e7,
                                                      1e8,  1e9,  1e10, 1e11, 1e12, 1e13, 1e14, 1e15,
                                                      1e16, 1e17, 1e18, 1e19, 1e20, 1e21, 1e22};
inline constexpr std::array<std::uint64_t, 9> wholePowerOfTen = {1,      10,      100,      1000,     10000,
                                                                 100000, 1000000, 10000000, 100000000};

/// Appends up to eight digits at `p` to `number` without a loop and returns how many there were. Eight bytes
/// must be readable.
inline std::size_t takeEight(const char* p, std::uint64_t& number) {
  std::uint64_t eight;
  std::memcpy(&eight, p, sizeof eight);
  if constexpr (std::endian::native == std::endian::big) eight = __builtin_bswap64(eight);
  eight ^= 0x3030303030303030;  // digits become 0 to 9, all else more
  // A byte above 9 gets its top bit; a carry reaches only bytes behind the first such one.
  const std::uint64_t others = (eight | (eight + 0x7676767676767676)) & 0x8080808080808080;
  const auto count = static_cast<std::size_t>(others == 0 ? 8 : std::countr_zero(others) / 8);
  if (count == 0) return 0;
  eight <<= 64 - 8 * count;  // the missing digits in front become zeros
  // Pairs of digits, then pairs of pairs, then of those.
  eight = (eight * 10 + (eight >> 8)) & 0x00FF00FF00FF00FF;
  eight = (eight * 100 + (eight >> 16)) & 0x0000FFFF0000FFFF;
  eight = (eight * 10000 + (eight >> 32)) & 0x00000000FFFFFFFF;
  number = number * wholePowerOfTen[count] + eight;
  return count;
}

inline const char* takeAll(const char* p, std::uint64_t& number) {
  std::size_t count = takeEight(p, number);
  p += count;
  while (count == 8) {
    count = takeEight(p, number);
    p += count;
  }
  return p;
}

}  // namespace digits

/// The number at `begin`, when it can be told exactly by one multiplication or division: at most 19 digits
/// worth less than 2^53, times a power of ten up to 22 (W. D. Clinger, How to read floating point numbers
/// accurately, PLDI 1990). Returns where it ends, or `begin` for all else: readNumber tells then. Eight bytes
/// must be readable behind the text, and they must not be digits.
inline const char* scanNumber(const char* begin, char decimal, double& value) {
  const char* p = begin;
  const bool negative = *p == '-';
  p += negative || *p == '+';
  std::uint64_t number = 0;
  const char* const whole = p;
  p = digits::takeAll(p, number);
  auto count = p - whole;
  std::ptrdiff_t exponent = 0;
  if (*p == decimal) {
    const char* const fraction = ++p;
    p = digits::takeAll(p, number);
    exponent = fraction - p;
    count -= exponent;
    if (exponent == 0 && decimal == ',') return begin;
  }
  if (count == 0 || count > 19) return begin;
  if ((*p | 0x20) == 'e') {
    const bool down = p[1] == '-';
    const char* const first = p + 1 + (down || p[1] == '+');
    std::uint64_t power = 0;
    const std::size_t length = digits::takeEight(first, power);
    if (length == 0 || length > 4) return begin;
    p = first + length;
    exponent += down ? -static_cast<std::ptrdiff_t>(power) : static_cast<std::ptrdiff_t>(power);
  }
  if (number > (std::uint64_t{1} << 53) || exponent < -22 || exponent > 22) return begin;
  const auto exact = static_cast<double>(number);
  const double size = exponent < 0 ? exact / digits::powerOfTen[static_cast<std::size_t>(-exponent)]
                                   : exact * digits::powerOfTen[static_cast<std::size_t>(exponent)];
  value = negative ? -size : size;
  return p;
}

}  // namespace core
