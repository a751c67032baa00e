// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/working/amounts.h"

#include <algorithm>
#include <cmath>

#include "core/units/language.h"
#include "core/units/notation.h"

namespace core::amounts {
namespace {

constexpr int digits = 6;
/// Shares below this are not worth telling: a millionth of a per cent.
constexpr double nothing = 1e-8;
/// Outputs below this are: potentials of 1 V carry about 1e-16 each.
constexpr double outputRounding = 1e-14;

/// Places after the point that show `digits` digits of `value`, 0 to 12.
int placesOf(double value, int wanted) {
  if (value == 0 || !std::isfinite(value)) return 0;
  const int leading = static_cast<int>(std::floor(std::log10(std::abs(value))));
  return std::clamp(wanted - 1 - leading, 0, 12);
}

/// As placesOf two digits; 0.0996 is 0.10 and needs one place less than its size says.
int placesOfUncertainty(double value) {
  const int places = placesOf(value, 2);
  const double rounded = std::round(value * std::pow(10.0, places)) / std::pow(10.0, places);
  return placesOf(rounded, 2);
}

std::string withUnit(const std::string& text, const std::string& unit) {
  return unit.empty() ? text : text + " " + unit;
}

}  // namespace

std::string number(double value) { return shown(formatNumber(value, digits)); }

std::string number(double value, const std::string& unit, int places) {
  return shown(formatQuantity(value, UnitFamily::Named, unit, places));
}

std::string uncertainty(double value, const std::string& unit) {
  return withUnit(value == 0 ? "0" : shown(formatFixed(value, placesOfUncertainty(value))), unit);
}

std::string ohm(Resistance value) {
  return shown(formatQuantity(value.base(), UnitFamily::Resistance, {}, digits));
}

std::string output(Output value) {
  const double v = std::abs(value.base()) < outputRounding ? 0 : value.base();
  return shown(formatQuantity(v, UnitFamily::Output, {}, digits));
}

std::string strain(double strain) { return shown(formatQuantity(strain, UnitFamily::Strain, {}, digits)); }

std::string readingText(const Setup& setup, double value) {
  return number(value, readingUnitText(setup.instrument));
}

std::string volt(double value) { return shown(formatQuantity(value, UnitFamily::Voltage, {}, 9)); }

std::string percent(double share, int places) {
  if (std::abs(share) < nothing) return "0 %";
  return (share > 0 ? "+" : "") + shown(formatNumber(100 * share, places)) + " %";
}

std::string plainPercent(double share, int places) { return shown(formatNumber(100 * share, places)) + " %"; }

std::string inFormula(const std::string& amount) {
  return amount.starts_with('-') ? "(" + amount + ")" : amount;
}

int placesFor(double greatest) { return placesOf(greatest, digits); }

std::string fixed(double value, int places, const std::string& unit) {
  return withUnit(shown(formatFixed(value, places)), unit);
}

std::string withUncertainty(double value, const std::optional<double>& standard, const std::string& unit) {
  if (!standard) return say("{1}, uncertainty not known", {number(value, unit)});
  if (*standard == 0) return number(value, unit) + ", u = 0";
  return fixed(value, placesOfUncertainty(*standard) + 1, unit) + ", u = " + uncertainty(*standard, unit);
}

std::string withNumbers(std::string_view formula, const Letters& letters) {
  for (const std::string_view sign : {"= ", "≈ "})
    if (const auto at = formula.find(sign); at != formula.npos) formula.remove_prefix(at + sign.size());
  std::string text;
  bool factor = false;  // what was written last may be multiplied with what comes
  while (!formula.empty()) {
    const auto letter = std::find_if(letters.begin(), letters.end(),
                                     [&](const auto& one) { return formula.starts_with(one.first); });
    const bool found = letter != letters.end();
    const char c = formula.front();
    const bool begins = found || c == '(' || (c >= '0' && c <= '9');
    if (begins && factor && text.ends_with(' ')) text += "× ";
    text += found ? letter->second : std::string(1, c);
    formula.remove_prefix(found ? letter->first.size() : 1);
    if (c != ' ') factor = found || c == ')' || (c >= '0' && c <= '9');
  }
  return text;
}

}  // namespace core::amounts
