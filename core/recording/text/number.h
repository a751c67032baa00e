// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifdef __SSE2__
#include <emmintrin.h>
#endif

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
/// letter D. The double nearest to the decimal number, whatever the locale. Thousands
/// separators only where they can be nothing else: "1,234.5", "1.234,5", "1'234", "1 234,5", "1,234,567". No
/// hexadecimal. nan and inf, the numbers that stand for them in SCPI (9.91E37, 9.9E37), and what a double
/// cannot hold (1e400, 1e-400), are faults, never 0.
CellNumber readNumber(std::string_view cell, char decimal);

namespace digits {

inline constexpr std::array<double, 23> powerOfTen = {1e0,  1e1,  1e2,  1e3,  1e4,  1e5,  1e6,  1e7,
                                                      1e8,  1e9,  1e10, 1e11, 1e12, 1e13, 1e14, 1e15,
                                                      1e16, 1e17, 1e18, 1e19, 1e20, 1e21, 1e22};
inline constexpr std::array<std::uint64_t, 9> wholePowerOfTen = {1,      10,      100,      1000,     10000,
                                                                 100000, 1000000, 10000000, 100000000};

/// The number that eight bytes of 0 to 9 are, the first one in the lowest byte: pairs of digits, then pairs
/// of pairs, then of those.
inline std::uint64_t joined(std::uint64_t eight) {
  eight = (eight * 10 + (eight >> 8)) & 0x00FF00FF00FF00FF;
  eight = (eight * 100 + (eight >> 16)) & 0x0000FFFF0000FFFF;
  return (eight * 10000 + (eight >> 32)) & 0x00000000FFFFFFFF;
}

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
  number = number * wholePowerOfTen[count] + joined(eight);
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

/// As scanNumber, for the usual case alone: digits, at most eight on each side of the mark, no exponent.
/// Where the cell ends is known from one look at the mark and the end, so that the next cell can be begun
/// before this one is worked out. Returns `begin` for all else.
inline const char* scanShortNumber(const char* begin, char decimal, char separator, double& value) {
#ifdef __SSE2__
  const bool negative = *begin == '-';
  const char* const first = begin + negative;
  const __m128i text = _mm_loadu_si128(reinterpret_cast<const __m128i*>(first));
  const auto where = [&](char c) {
    return static_cast<unsigned>(_mm_movemask_epi8(_mm_cmpeq_epi8(text, _mm_set1_epi8(c))));
  };
  const unsigned ends = where(separator) | where('\n') | where('\r');
  const unsigned marks = where(decimal);
  const auto length = static_cast<unsigned>(std::countr_zero(ends | 0x10000U));
  const auto mark = static_cast<unsigned>(std::countr_zero(marks | 0x10000U));
  if (length > 16 || mark == 0 || mark > 8 || mark + 1 >= length || length - mark > 9) return begin;
  const auto load = [](const char* at, unsigned count) {
    std::uint64_t eight;
    std::memcpy(&eight, at, sizeof eight);
    return (eight ^ 0x3030303030303030) << (64 - 8 * count);
  };
  const unsigned places = length - mark - 1;
  std::uint64_t whole = load(first, mark), fraction = load(first + mark + 1, places);
  const auto others = [](std::uint64_t eight) {
    return (eight | (eight + 0x7676767676767676)) & 0x8080808080808080;
  };
  if ((others(whole) | others(fraction)) != 0) return begin;
  const std::uint64_t number =
      digits::joined(whole) * digits::wholePowerOfTen[places] + digits::joined(fraction);
  if (number > (std::uint64_t{1} << 53)) return begin;
  const double size = static_cast<double>(number) / digits::powerOfTen[places];
  value = negative ? -size : size;
  return first + length;
#else
  const char* const behind = scanNumber(begin, decimal, value);
  return *behind == separator || *behind == '\n' || *behind == '\r' ? behind : begin;
#endif
}

}  // namespace core
