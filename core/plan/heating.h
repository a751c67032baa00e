// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/plan/setup.h"

namespace core {

/// What the excitation turns into heat in one gauge, all shunts open.
struct ArmHeat {
  std::size_t arm = 0;                     ///< from 0
  double power_W = 0;                      ///< in the whole network, leads included
  std::optional<double> density_W_per_m2;  ///< when the grid's area is known
};

/// Of every active arm, by solving the whole network at the instrument's excitation. Empty for a
/// transducer, whose grids nobody knows. Fails as the prediction does.
Result<std::vector<ArmHeat>> armHeats(const Setup& setup);

/// How a gauge's power density lies to the handbook's range for its heat sink and demand.
enum class HeatVerdict : std::uint8_t { Below, Within, Above };

/// The warmest gauge in words: power, density, the handbook's range, the excitation that would reach its
/// upper end, and that the gauge's own data sheet decides. Empty while the grid's area is not known.
struct HeatAdvice {
  HeatVerdict verdict = HeatVerdict::Within;
  std::string text;
};
std::optional<HeatAdvice> heatAdvice(const Setup& setup);

}  // namespace core
