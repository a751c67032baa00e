// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/line/stated_fits.h"

namespace core {
namespace {
Error notYet() { return {"line", "this fit is not there yet", ""}; }
}  // namespace

Result<Line> fitWeightedLine(std::span<const double>, std::span<const double>, std::span<const double>,
                             Through) {
  return notYet();
}
Result<Line> fitDistanceLine(std::span<const double>, std::span<const double>, std::span<const double>,
                             std::span<const double>, std::span<const double>, Through) {
  return notYet();
}
Result<Line> fitCorrelatedLine(std::span<const double>, std::span<const double>, std::span<const double>,
                               Through) {
  return notYet();
}
Result<Line> fitGeneralisedLine(std::span<const double>, std::span<const double>, std::span<const double>,
                                Through) {
  return notYet();
}

}  // namespace core
