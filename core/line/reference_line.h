// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>

namespace core {

/// The straight line that linearity is measured from. All but `Theoretical` are drawn through the mean
/// characteristic: one point per x, rising and falling readings averaged.
enum class ReferenceLine : std::uint8_t {
  LeastSquares,           ///< ordinary least squares through the mean readings
  EndPoint,               ///< through the mean readings at the smallest and the largest x (terminal line)
  Minimax,                ///< makes the greatest deviation as small as it can be (independent linearity)
  ZeroBasedLeastSquares,  ///< through (0, 0), slope by least squares
  ZeroBasedMinimax,       ///< through (0, 0), slope that makes the greatest deviation smallest
};
inline constexpr std::size_t referenceLineCount = 5;

/// Keys in files: "least_squares", "end_point", "minimax", "zero_based_least_squares", "zero_based_minimax".
std::string_view referenceLineKey(ReferenceLine line);
std::optional<ReferenceLine> referenceLineFromKey(std::string_view key);
/// For people: "least-squares line", "end-point line", "minimax line", "line through zero by least squares",
/// "minimax line through zero".
std::string_view referenceLineName(ReferenceLine line);

}  // namespace core
