// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/diagnose/cause_words.h"
#include "core/diagnose/check_times.h"
#include "core/plan/prediction.h"
#include "core/units/language.h"
#include "core/units/notation.h"

namespace core {
namespace {

/// A size and its standard uncertainty.
struct Size {
  double value = 0;
  std::optional<double> standard;

  Size times(double factor) const {
    return {value * factor, standard ? std::optional(*standard * std::abs(factor)) : std::nullopt};
  }
  Size less(double offset) const { return {value - offset, standard}; }
  Size magnitude() const { return {std::abs(value), standard}; }
};

std::string inReadings(const Setup& setup, const Size& size) {
  return withStandard(size.value, size.standard) + " " + readingUnitText(setup.instrument);
}

/// "readings are 0.35 ± 0.04 % too large"
std::string scaleWords(const Size& size) {
  const bool small = size.value > 2.0 / 3 && size.value < 1.5;
  if (!small)
    return say("readings are {1} times what they should be", {withStandard(size.value, size.standard)});
  const Size away = size.less(1).magnitude();
  return say(size.value > 1 ? sayLater("readings are {1} too large") : sayLater("readings are {1} too small"),
             {percentWithStandard(away.value, away.standard, false)});
}

std::string fixedFactorWords(double factor) {
  return say("readings are {1} times what they should be", {shown(formatNumber(factor, 4))});
}

/// The copper wire that all leads in use are entered as, when they are of one section.
std::optional<CopperWire> commonWire(const Bridge& bridge) {
  std::optional<CopperWire> common;
  for (const Wire& wire : wiresOf(bridge)) {
    const auto* copper = std::get_if<CopperWire>(&bridge.leads[static_cast<std::size_t>(wire.role)]);
    if (!copper || (common && common->section != copper->section)) return std::nullopt;
    common = *copper;
  }
  return common;
}

bool leadsAlike(const Bridge& bridge) {
  const auto wires = wiresOf(bridge);
  return std::all_of(wires.begin(), wires.end(), [&](const Wire& wire) {
    return leadResistance(bridge, wire.role) == leadResistance(bridge, wires.front().role);
  });
}

/// "each lead 0.85 ± 0.05 Ω more than entered, 12.3 ± 0.7 m of 0.25 mm² copper"
std::string leadsWords(const Setup& setup, const Size& size) {
  const Size away = size.magnitude();
  const bool isLess = size.value < 0;
  const std::string text = say(leadsAlike(setup.bridge) ? isLess ? sayLater("each lead {1} less than entered")
                                                                 : sayLater("each lead {1} more than entered")
                               : isLess ? sayLater("the leads on average {1} less than entered")
                                        : sayLater("the leads on average {1} more than entered"),
                               {ohmWithStandard(away.value, away.standard)});
  auto wire = commonWire(setup.bridge);
  if (!wire) return text;
  wire->length = Length(1);
  const Size length = away.times(1 / resistanceOf(*wire).base());
  return say("{1}, {2} m of {3} copper",
             {text, withStandard(length.value, length.standard),
              shown(formatQuantity(wire->section.base(), UnitFamily::Area, {}, 3))});
}

/// "165.9 ± 0.1 kΩ where 164.994 kΩ is stated, +0.55 %"
std::string valueWords(Resistance stated, const Size& size) {
  const Size now = size.times(stated.base());
  const Size share = size.less(1).times(100);
  return say("{1} where {2} is stated, {3} %",
             {ohmWithStandard(now.value, now.standard),
              shown(formatQuantity(stated.base(), UnitFamily::Resistance, {}, 6)),
              warranted(share.value, share.standard, true)});
}

/// "118 ± 9 kΩ over gauge 1"; of a conductance that is hardly known the limits that one standard uncertainty
/// leaves.
std::string leakWords(const Setup& setup, std::size_t arm, const Size& conductance) {
  const std::string over = armWords(setup.bridge, arm);
  const double g = conductance.value, u = conductance.standard.value_or(0);
  if (!(g > 0)) return say("less leak over {1} than entered", {over});
  const auto ohm = [](double resistance, const std::optional<double>& standard = {}) {
    return ohmWithStandard(resistance, standard);
  };
  if (u <= 0.3 * g)
    return say("{1} over {2}",
               {ohm(1 / g, conductance.standard ? std::optional(u / (g * g)) : std::nullopt), over});
  const auto roughly = [](double resistance) {
    return shown(formatQuantity(resistance, UnitFamily::Resistance, {}, 2));
  };
  if (u < g) return say("between {1} and {2} over {3}", {roughly(1 / (g + u)), roughly(1 / (g - u)), over});
  return say("at least {1} over {2}", {roughly(1 / (g + u)), over});
}

std::string driftWords(const Setup& setup, const Size& size, double lasted_s) {
  const Size whole = size.times(lasted_s);
  return say("{1} {2} per second, {3} {4} in the {5} s of the check",
             {withStandard(size.value, size.standard, true), readingUnitText(setup.instrument),
              warranted(whole.value, whole.standard, true), readingUnitText(setup.instrument),
              shown(formatNumber(lasted_s, 3))});
}

std::string clippingWords(const Setup& setup, const Fault& fault, const Size& size) {
  const std::string at = inReadings(setup, size.magnitude());
  if (fault.index == 0) return say("at {1}, both signs", {at});
  return say(fault.index == 1 ? sayLater("at +{1}") : sayLater("at -{1}"), {at});
}

std::string ofReadings(const Setup& setup, const Fault& fault, const Size& size,
                       const std::optional<double>& lasted_s) {
  const std::string away = inReadings(setup, size.magnitude());
  switch (fault.kind) {
    case CauseKind::ZeroShift:
      return say(size.value < 0 ? sayLater("{1} lower from then on") : sayLater("{1} higher from then on"),
                 {away});
    case CauseKind::Drift:
      return driftWords(setup, size, lasted_s ? *lasted_s : plannedDuration_s(setup));
    case CauseKind::Clipping:
      return clippingWords(setup, fault, size);
    case CauseKind::StrayReading:
      return say(size.value < 0 ? sayLater("{1} too low") : sayLater("{1} too high"), {away});
    default:
      return {};
  }
}

}  // namespace

std::string sizeWords(const Setup& setup, const Fault& fault, const std::optional<double>& standard,
                      const std::optional<double>& lasted_s) {
  const Size size{fault.size, standard};
  switch (fault.kind) {
    case CauseKind::Scale:
      return scaleWords(size);
    case CauseKind::BridgeFactor:
      return fixedFactorWords(setup.instrument.bridgeFactor / fault.size);
    case CauseKind::Units:
      return fixedFactorWords(fault.size);
    case CauseKind::Leads:
      return leadsWords(setup, size);
    case CauseKind::LeadContact:
      return say("{1} more than entered", {ohmWithStandard(size.value, size.standard)});
    case CauseKind::ShuntValue: {
      const Shunt& shunt = setup.shunts[fault.index];
      return say("{1} acts as {2}", {resistorName(shunt), valueWords(shunt.resistance, size)});
    }
    case CauseKind::CompletionValue:
    case CauseKind::ArmValue:
      return valueWords(setup.bridge.arms[fault.index], size);
    case CauseKind::Leak:
      return leakWords(setup, fault.index, size);
    default:
      return ofReadings(setup, fault, size, lasted_s);
  }
}

}  // namespace core
