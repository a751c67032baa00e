// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <string_view>
#include <vector>

#include "core/plan/setup.h"

namespace core {

// Levels wanted, as simulated values in the unit of `simulatedUnitText` (µm/m, or the load unit of a
// transducer), with their sign: positive raises the output. Rising in magnitude, positive side first.

/// `count` levels from `greatest`/count up to `greatest`, each side that is asked for.
std::vector<double> equalLevels(double greatest, unsigned count, bool positive, bool negative);
/// `shares` (0.2 for 20 %) of `range`.
std::vector<double> levelsByShare(double range, const std::vector<double>& shares, bool positive,
                                  bool negative);
/// "500; 1000; -1000", "500, 1000", "0,5; 1 kN" in the trade's notation; a number alone is in the channel's
/// unit. Semicolons, ends of lines and commas before a space separate; a comma in the midst of digits is a
/// decimal mark, but of "500,1000,1500" or "500,-500" without any other separator commas separate too. Fails
/// on "500,1000", which can be read both ways, on text that is no number, on zero and on doubles, and says
/// which.
Result<std::vector<double>> levelsFromText(std::string_view text, const Bridge& bridge);

}  // namespace core
