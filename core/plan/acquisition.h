// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <optional>
#include <string_view>

#include "core/units/quantity.h"

namespace core {

/// The low-pass filter in front of the readings.
enum class FilterKind : std::uint8_t { None, Butterworth, Bessel, MovingAverage };
inline constexpr std::size_t filterKindCount = 4;

struct Filter {
  FilterKind kind = FilterKind::None;
  unsigned order = 2;    ///< 1 to 8; Butterworth and Bessel only
  Frequency cutoff{10};  ///< where the gain is 3 dB down; Butterworth and Bessel only
  Duration window{0.1};  ///< of the moving average

  friend bool operator==(const Filter&, const Filter&) = default;
};

/// How the instrument turns a held level into a reading; decides how long a step must last.
struct Acquisition {
  std::optional<Frequency> sampleRate = {};  ///< of the recorded or displayed readings; none: not known
  Filter filter = {};
  std::optional<Frequency> mains{Frequency(50)};  ///< whose hum is averaged out; none: none near
  double settledTo = 1e-4;  ///< share of a step that may still be missing when a level counts as settled

  friend bool operator==(const Acquisition&, const Acquisition&) = default;
};

/// Keys in files: "none", "butterworth", "bessel", "moving_average".
std::string_view filterKindKey(FilterKind kind);
std::optional<FilterKind> filterKindFromKey(std::string_view key);

}  // namespace core
