// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

namespace ui {

/// What the bars below the measured points are of.
enum class BarKind : std::uint8_t { Deviation, Residual, Difference };

/// What the bars are counted in.
enum class BarUnit : std::uint8_t {
  Reading,           ///< the readings' unit
  PercentOfReading,  ///< of the expected reading of the same step
  PercentOfSpan,     ///< of the greatest expected reading less the smallest
  Standardised,      ///< own standard uncertainties
};

/// What sets the upright axis of the bars.
enum class BarFit : std::uint8_t { Bars, Limits };

/// What the user wants to see in the charts.
struct ChartOptions {
  BarKind kind = BarKind::Deviation;
  BarUnit unit = BarUnit::Reading;
  BarFit fit = BarFit::Bars;  ///< passing bars are a small part of their limits and would not be seen
  bool line = true;
  bool confidence = true;
  bool prediction = false;
  bool errorBars = true;
  bool branches = true;

  friend bool operator==(const ChartOptions&, const ChartOptions&) = default;
};

/// As left in an earlier run; kind and unit are asked anew each time.
ChartOptions rememberedChartOptions();
void rememberChartOptions(const ChartOptions& options);

}  // namespace ui
