// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diagnose/cause_words.h"

#include <algorithm>
#include <cmath>

#include "core/plan/prediction.h"
#include "core/units/language.h"
#include "core/units/notation.h"

namespace core {
namespace {

constexpr int mostDigits = 6;
constexpr int digitsWithoutStandard = 4;

/// Places after the point of the last digit that `standard` warrants; below zero: tens, hundreds.
int warrantedDecimals(double value, double standard) {
  const int magnitude = static_cast<int>(std::floor(std::log10(standard)));
  // 0.0296 is 0.03 in one digit, so that its second one is asked for by what is left after rounding.
  const double lead = standard / std::pow(10.0, magnitude);
  const int decimals = lead < 2.95 ? 1 - magnitude : -magnitude;
  if (value == 0) return decimals;
  const int finest = mostDigits - 1 - static_cast<int>(std::floor(std::log10(std::abs(value))));
  return std::min(decimals, finest);
}

std::string rounded(double value, int decimals) {
  if (decimals >= 0) return shown(formatFixed(value, decimals));
  const double unit = std::pow(10.0, -decimals);
  return shown(formatFixed(std::round(value / unit) * unit, 0));
}

/// What a resistance is written in.
struct Prefix {
  double ohm;
  const char* unit;
};
Prefix prefixOf(double ohm) {
  const double size = std::abs(ohm);
  if (size >= 1e9) return {1e9, "GΩ"};
  if (size >= 1e6) return {1e6, "MΩ"};
  if (size >= 1e3) return {1e3, "kΩ"};
  return {1, "Ω"};
}

std::optional<double> over(const std::optional<double>& standard, double unit) {
  return standard ? std::optional(*standard / unit) : std::nullopt;
}

}  // namespace

std::string withStandard(double value, const std::optional<double>& standard, bool signedValue) {
  const std::string sign = signedValue && value > 0 ? "+" : "";
  if (!standard || !std::isfinite(*standard) || !(*standard > 0) || !std::isfinite(value))
    return sign + shown(formatNumber(value, digitsWithoutStandard));
  const int decimals = warrantedDecimals(value, *standard);
  const std::string error = rounded(*standard, decimals);
  if (error.find_first_of("123456789") == std::string::npos)
    return sign + shown(formatNumber(value, mostDigits));
  return sign + rounded(value, decimals) + " ± " + error;
}

std::string warranted(double value, const std::optional<double>& standard, bool signedValue) {
  const std::string text = withStandard(value, standard, signedValue);
  return text.substr(0, text.find(" ±"));
}

std::string ohmWithStandard(double ohm, const std::optional<double>& standard) {
  const Prefix prefix = prefixOf(ohm);
  return withStandard(ohm / prefix.ohm, over(standard, prefix.ohm)) + " " + prefix.unit;
}

std::string percentWithStandard(double share, const std::optional<double>& standard, bool signedValue) {
  return withStandard(100 * share, over(standard, 0.01), signedValue) + " %";
}

std::string armWords(const Bridge& bridge, std::size_t arm) {
  const std::string number = std::to_string(arm + 1);
  const BridgeTemplate& shape = templateOf(bridge.type);
  if (isTransducer(bridge)) return say("arm {1}", {number});
  if (shape.shares[arm].active()) return say("gauge {1}", {number});
  return say(
      shape.atArticle[arm] ? sayLater("dummy gauge in arm {1}") : sayLater("completion resistor of arm {1}"),
      {number});
}

std::string stepWords(const Setup& setup, std::size_t step) {
  const std::string number = say("step {1}", {std::to_string(step + 1)});
  const std::string& label = setup.sequence[step].label;
  return label.empty() ? number : number + " (" + label + ")";
}

std::string measurandWord(const Bridge& bridge) { return isTransducer(bridge) ? say("Load") : say("Strain"); }

}  // namespace core
