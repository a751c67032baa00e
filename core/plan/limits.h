// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <map>
#include <optional>
#include <string_view>

#include "core/line/reference_line.h"
#include "core/units/quantity.h"

namespace core {

/// Figures of merit of a check. Each is a share of the denominator that `meritDefinition` names.
enum class MeritKind : std::uint8_t {
  Nonlinearity,   ///< greatest deviation of the mean characteristic from the reference line
  Hysteresis,     ///< greatest difference of falling and rising readings at one simulated value
  Repeatability,  ///< greatest spread of readings at one simulated value, in one direction
  ZeroReturn,     ///< last zero reading less the first
  ZeroShift,      ///< zero reading farthest from the first one, wherever it came
  Symmetry,       ///< difference of the slopes of the positive and of the negative half
  CombinedError,  ///< greatest deviation of any reading from the reference line
  SpanRatio,      ///< measured over expected span, less one
};
inline constexpr std::size_t meritKindCount = 8;

/// Keys in files: "nonlinearity", "hysteresis", "repeatability", "zero_return", "zero_shift", "symmetry",
/// "combined_error", "span_ratio".
std::string_view meritKindKey(MeritKind kind);
std::optional<MeritKind> meritKindFromKey(std::string_view key);
/// For people: "nonlinearity", "zero return", "plus/minus asymmetry", "combined error", ...
std::string_view meritKindName(MeritKind kind);

/// How far a reading may be from what was predicted. All limits of steps are differences of readings.
struct Limits {
  double relative =
      0.01;          ///< of the expected reading's magnitude; 1 % is common practice in structural tests
  Reading least{0};  ///< the limit is never narrower than this, in the reading's unit
  double zeroReturn =
      0.005;  ///< return to zero, as a share of the greatest expected magnitude (common practice)

  /// Between two checks: greatest change that counts as none, as a share of the expected reading and never
  /// narrower than `least`; of the gain as it is. To be fixed before the test. By default as strict as
  /// `relative` usually is (common practice).
  double change = 0.01;
  /// The same for the zero reading, as a share of the greatest expected magnitude (common practice).
  double zeroChange = 0.005;

  /// Greatest magnitude of a figure of merit, as a share (0.005 is 0.5 %); without one it is told and not
  /// judged. Zero return has its limit above and none here.
  std::map<MeritKind, double> merits = {};
  /// The line that nonlinearity and combined error are measured from.
  ReferenceLine linearityFrom = ReferenceLine::LeastSquares;

  friend bool operator==(const Limits&, const Limits&) = default;
};

}  // namespace core
