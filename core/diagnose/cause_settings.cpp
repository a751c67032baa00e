// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <cmath>
#include <span>

#include "core/diagnose/cause_words.h"
#include "core/units/language.h"
#include "core/units/notation.h"

namespace core {
namespace {

/// What is on the dial of instruments and the labels of transducers (common practice, no source).
constexpr std::array usualExcitations_V{1.0, 2.0, 2.5, 3.0, 3.3, 4.0, 5.0, 6.0, 8.0, 10.0, 12.0, 15.0};
constexpr std::array usualRatedOutputs_mVperV{0.5, 1.0, 1.5, 2.0, 2.5, 3.0, 4.0};

/// A setting as entered, and as it would have to be in the instrument to explain the scale.
struct Setting {
  std::string name;
  double entered = 0;
  double acting = 0;
  std::optional<double> standard;  ///< of `acting`
  std::string unit = {};
  int leastDecimals = 0;
};

std::string shown(double value, const Setting& setting) {
  std::string text = formatNumber(value, 6);
  const std::size_t point = text.find('.');
  const auto decimals = point == std::string::npos ? 0 : static_cast<int>(text.size() - point - 1);
  if (decimals < setting.leastDecimals) text = formatFixed(value, setting.leastDecimals);
  text = core::shown(std::move(text));
  return setting.unit.empty() ? text : text + " " + setting.unit;
}

/// That of `usual` which is nearest to the acting value and within its expanded uncertainty (k = 2).
std::optional<double> usualSetting(const Setting& setting, std::span<const double> usual) {
  std::optional<double> nearest;
  for (const double value : usual) {
    const double away = std::abs(value - setting.acting);
    if (away > 2 * setting.standard.value_or(0) + 1e-6 * std::abs(value)) continue;
    if (std::abs(value - setting.entered) <= 1e-6 * std::abs(value)) continue;
    if (!nearest || away < std::abs(*nearest - setting.acting)) nearest = value;
  }
  return nearest;
}

/// "gauge factor 2.00 set where 2.07 belongs"; without a usual value that fits: "gauge factor 2.12 ± 0.01 set
/// where 2.07 belongs".
std::string settingText(const Setting& setting, std::span<const double> usual) {
  const auto text = [&](const std::string& set) {
    return say("{1} {2} set where {3} belongs", {setting.name, set, shown(setting.entered, setting)});
  };
  if (const auto value = usualSetting(setting, usual)) return text(shown(*value, setting));
  const std::string acting = withStandard(setting.acting, setting.standard);
  return text(setting.unit.empty() ? acting : acting + " " + setting.unit);
}

/// Standard uncertainty of a setting that follows the scale k as c k, or as c / k.
std::optional<double> inProportion(double acting, double k, const std::optional<double>& standard) {
  return standard ? std::optional(std::abs(acting / k) * *standard) : std::nullopt;
}

Setting gaugeFactorSetting(const Setup& setup, double k, const std::optional<double>& standard) {
  const double entered = setup.instrument.gaugeFactor, acting = entered / k;
  return {say("gauge factor"), entered, acting, inProportion(acting, k, standard), {}, 2};
}

std::string gaugeFactorText(const Setup& setup, double k, const std::optional<double>& standard) {
  const double entered = setup.instrument.gaugeFactor;
  const std::array usual{2.0, 1.0, setup.bridge.gauge.factor, std::round(10 * entered) / 10};
  return settingText(gaugeFactorSetting(setup, k, standard), usual);
}

/// Of a transducer whose scale is capacity over rated output, the rated output; else the scale itself.
std::string scalingText(const Setup& setup, double k, const std::optional<double>& standard) {
  const double scale = setup.instrument.unitsPerMillivoltPerVolt;
  if (isTransducer(setup.bridge)) {
    const double rated = 1e3 * setup.bridge.rating.ratedOutput.base(), acting = rated / k;
    const bool byRating = std::abs(scale * rated / setup.bridge.rating.capacity - 1) < 1e-3;
    if (byRating)
      return settingText({say("rated output"), rated, acting, inProportion(acting, k, standard), "mV/V", 0},
                         usualRatedOutputs_mVperV);
  }
  const double acting = scale * k;
  return settingText({"scale", scale, acting, inProportion(acting, k, standard),
                      say("{1} per mV/V", {setup.instrument.scaledUnit}), 0},
                     {});
}

/// Whether the true excitation scales the readings.
bool followsExcitation(const Instrument& instrument) {
  return !instrument.ratiometric || instrument.unit == ReadingUnit::Millivolt;
}

std::string excitationText(const Instrument& instrument, double k, const std::optional<double>& standard) {
  if (const auto& current = instrument.current) {
    const double entered = 1e3 * current->supplied.base(), acting = entered * k;
    return say(
        "or a current of {1} mA where {2} mA is entered",
        {withStandard(acting, inProportion(acting, k, standard)), core::shown(formatNumber(entered, 6))});
  }
  const double entered = instrument.excitation.base(), acting = entered * k;
  const Setting setting{say("or an excitation of"),        entered, acting,
                        inProportion(acting, k, standard), "V",     0};
  const auto usual = usualSetting(setting, usualExcitations_V);
  const std::string value = usual ? shown(*usual, setting) : withStandard(acting, setting.standard) + " V";
  return say("{1} {2} where {3} is entered", {setting.name, value, shown(entered, setting)});
}

std::string scaleSettings(const Setup& setup, double k, const std::optional<double>& standard) {
  // Nobody sets a gauge factor, an excitation or a scale that far off by a slip of the finger.
  if (!(k > 0.3 && k < 3)) return {};
  std::string text;
  switch (setup.instrument.unit) {
    case ReadingUnit::MicrometrePerMetre:
      text = gaugeFactorText(setup, k, standard);
      break;
    case ReadingUnit::Scaled:
      text = scalingText(setup, k, standard);
      break;
    case ReadingUnit::MillivoltPerVolt:
    case ReadingUnit::Millivolt:
      text = say("a gain of {1} where 1 belongs", {withStandard(k, standard)});
      break;
  }
  if (followsExcitation(setup.instrument)) text += ", " + excitationText(setup.instrument, k, standard);
  return text;
}

std::string bridgeName(double n, double poisson) {
  const auto is = [n](double value) { return std::abs(n / value - 1) < 1e-6; };
  if (is(1)) return say("quarter bridge");
  if (is(2)) return say("half bridge");
  if (is(4)) return say("full bridge");
  if (is(1 + poisson)) return say("half bridge with Poisson gauge");
  if (is(2 * (1 + poisson))) return say("full bridge with Poisson gauges");
  return {};
}

std::string bridgeFactorSettings(const Setup& setup, double acting) {
  const double entered = setup.instrument.bridgeFactor, poisson = setup.bridge.gauge.poissonRatio;
  const std::string is = bridgeName(acting, poisson), belongs = bridgeName(entered, poisson);
  const std::string text = say("N = {1} set where {2} belongs",
                               {core::shown(formatNumber(acting, 4)), core::shown(formatNumber(entered, 4))});
  return is.empty() || belongs.empty() ? text : say("{1}: {2} instead of {3}", {text, is, belongs});
}

/// What is shown in another unit than the channel's, per reading: the factors of the usual mix-ups.
std::string unitsSettings(const Setup& setup, double factor) {
  const Instrument& instrument = setup.instrument;
  const auto is = [factor](double value) { return std::abs(factor / value - 1) < 1e-6; };
  const std::string unit = readingUnitText(instrument);
  const double perMillivoltPerVolt = readingOf(instrument, Output(1e-3)).base();
  const double strain = 4000 / (instrument.gaugeFactor * instrument.bridgeFactor);
  if (unit != "mV/V" && is(1 / perMillivoltPerVolt)) return say("readings in mV/V taken for {1}", {unit});
  if (unit != "µm/m" && is(strain / perMillivoltPerVolt))
    return say("readings in µm/m taken for {1}", {unit});
  if (unit != "mV" && is(nominalExcitation(instrument).base() / perMillivoltPerVolt))
    return say("readings in mV taken for {1}", {unit});
  if (is(1000) || is(1e-3)) return say("a prefix off by a factor of 1000, such as milli for micro");
  if (is(1e6) || is(1e-6)) return say("a prefix off by a factor of a million, such as µm/m for m/m");
  if (is(2) || is(0.5)) return say("a factor of 2, such as shear strain for strain, or one gauge for two");
  if (is(4) || is(0.25)) return say("a factor of 4, such as one gauge for four, or bridge factor left out");
  return {};
}

}  // namespace

std::string settingWords(const Setup& setup, const Fault& fault, const std::optional<double>& standard) {
  switch (fault.kind) {
    case CauseKind::Scale:
      return scaleSettings(setup, fault.size, standard);
    case CauseKind::BridgeFactor:
      return bridgeFactorSettings(setup, fault.size);
    case CauseKind::Units:
      return unitsSettings(setup, fault.size);
    default:
      return {};
  }
}

}  // namespace core
