// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/working/amounts.h"

#include <cmath>

#include "core/units/notation.h"

namespace core::amounts {
namespace {

constexpr int digits = 6;
/// Shares below this are the rounding of two nearly equal numbers.
constexpr double nothing = 1e-10;
/// Outputs below this are: potentials of 1 V carry about 1e-16 each.
constexpr double outputRounding = 1e-14;

}  // namespace

std::string number(double value) { return formatNumber(value, digits); }

std::string number(double value, const std::string& unit) {
  return formatQuantity(value, UnitFamily::Named, unit, digits);
}

std::string uncertainty(double value, const std::string& unit) {
  return formatQuantity(value, UnitFamily::Named, unit, 2);
}

std::string ohm(Resistance value) { return formatQuantity(value.base(), UnitFamily::Resistance, {}, digits); }

std::string output(Output value) {
  const double v = std::abs(value.base()) < outputRounding ? 0 : value.base();
  return formatQuantity(v, UnitFamily::Output, {}, digits);
}

std::string strain(double strain) { return formatQuantity(strain, UnitFamily::Strain, {}, digits); }

std::string volt(double value) { return formatQuantity(value, UnitFamily::Voltage, {}, 9); }

std::string percent(double share, int places) {
  if (std::abs(share) < nothing) return "0 %";
  return (share > 0 ? "+" : "") + formatNumber(100 * share, places) + " %";
}

std::string plainPercent(double share, int places) { return formatNumber(100 * share, places) + " %"; }

std::string inFormula(const std::string& amount) {
  return amount.starts_with('-') ? "(" + amount + ")" : amount;
}

}  // namespace core::amounts
