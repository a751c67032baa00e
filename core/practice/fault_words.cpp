// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/practice/fault_words.h"

#include <algorithm>
#include <cmath>

#include "core/diagnose/cause_words.h"
#include "core/practice/question_words.h"
#include "core/units/language.h"
#include "core/units/notation.h"

namespace core {
namespace {

/// The first template in their order that N belongs to; empty for none.
std::string templateNameOf(double n, double poisson) {
  for (std::size_t k = 0; k < bridgeTypeCount; ++k) {
    const BridgeTemplate& shape = templateOf(static_cast<BridgeType>(k));
    if (shape.type != BridgeType::Transducer && std::abs(shape.bridgeFactor(poisson) / n - 1) < 1e-6)
      return std::string(shape.name);
  }
  return {};
}

/// "N = 2, of “Half bridge, bending”, set where 4, of “Full bridge, torsion”, belongs": bridges by the names
/// that they have in the question.
std::string bridgeFactorWords(const Setup& setup, double acting) {
  const std::string other = templateNameOf(acting, setup.bridge.gauge.poissonRatio);
  const std::string is = core::shown(formatNumber(acting, 4)),
                    belongs = core::shown(formatNumber(setup.instrument.bridgeFactor, 4));
  const std::string_view own = templateOf(setup.bridge.type).name;
  if (other.empty()) return say("N = {1} set where {2}, of “{3}”, belongs", {is, belongs, own});
  return say("N = {1}, of “{2}”, set where {3}, of “{4}”, belongs", {is, other, belongs, own});
}

/// "-739 + 120", "-739 - 120".
std::string sum(const std::string& first, double second, int places) {
  return first + (second < 0 ? " - " : " + ") + core::shown(formatFixed(std::abs(second), places));
}

}  // namespace

bool isOfScale(CauseKind kind) {
  return kind == CauseKind::Scale || kind == CauseKind::BridgeFactor || kind == CauseKind::Units;
}

double missOf(const std::vector<double>& a, const std::vector<double>& b, double reach) {
  double miss = 0;
  for (std::size_t k = 0; k < a.size(); ++k) miss = std::max(miss, std::abs(a[k] - b[k]));
  return miss / reach;
}

std::size_t furthest(const std::vector<double>& a, const std::vector<double>& b) {
  std::size_t worst = 0;
  for (std::size_t k = 0; k < a.size(); ++k)
    if (std::abs(a[k] - b[k]) > std::abs(a[worst] - b[worst])) worst = k;
  return worst;
}

std::string withSize(const Setup& setup, const Fault& fault) {
  std::string text = causeTitle(setup, fault);
  if (hasFreeSize(fault.kind))
    if (const std::string size = sizeWords(setup, fault, std::nullopt); !size.empty()) text += ", " + size;
  const std::string setting = fault.kind == CauseKind::BridgeFactor
                                  ? bridgeFactorWords(setup, fault.size)
                                  : settingWords(setup, fault, std::nullopt);
  if (!setting.empty()) text += " (" + setting + ")";
  return text;
}

std::string whyNot(const ReadGround& ground, const Nearest& wrong, const std::vector<double>& shown) {
  constexpr double noEffect = 1e-3;
  const std::size_t worst = furthest(wrong.readings, shown);
  const int places = displayPlaces(ground.greatest());
  const bool none =
      wrong.atEnd || missOf(wrong.readings, ground.points.expected, ground.greatest()) < noEffect;
  std::string text = none ? causeTitle(ground.setup, wrong.fault) : withSize(ground.setup, wrong.fault);
  if (hasFreeSize(wrong.fault.kind) || isOfScale(wrong.fault.kind))
    text = none ? say("No size of it helps: {1}", {text}) : say("At best: {1}", {text});
  return say("{1}: step {2} would show {3} {4} where {5} stands.",
             {text, std::to_string(worst + 1), core::shown(formatFixed(wrong.readings[worst], places)),
              readingUnitText(ground.setup.instrument), core::shown(formatFixed(shown[worst], places))});
}

Setup faultyPlan(Setup setup, const Fault& fault) {
  Instrument& instrument = setup.instrument;
  switch (fault.kind) {
    case CauseKind::PolarityReversed:
      setup.bridge.hookup.signalReversed = !setup.bridge.hookup.signalReversed;
      return setup;
    case CauseKind::BridgeFactor:
      instrument.bridgeFactor = fault.size;
      return setup;
    case CauseKind::Scale:
      if (instrument.unit == ReadingUnit::MicrometrePerMetre) instrument.gaugeFactor /= fault.size;
      if (instrument.unit == ReadingUnit::Scaled) instrument.unitsPerMillivoltPerVolt *= fault.size;
      if (instrument.unit == ReadingUnit::Millivolt)
        instrument.excitation = fault.size * instrument.excitation;
      return setup;
    case CauseKind::StepsExchanged:
      std::swap(setup.sequence[fault.index].closed, setup.sequence[fault.other].closed);
      return setup;
    case CauseKind::SidesExchanged:
      std::swap(setup.sequence[1].closed, setup.sequence[4].closed);
      std::swap(setup.sequence[2].closed, setup.sequence[5].closed);
      return setup;
    case CauseKind::ShuntOpen: {
      // A resistance without end would have to be drawn; a shunt that never closes is in no step.
      const Setup open = withFault(setup, fault);
      for (Step& step : setup.sequence)
        std::erase_if(step.closed, [&](std::size_t k) { return open.shunts[k] != setup.shunts[k]; });
      return setup;
    }
    default:
      return withFault(std::move(setup), fault);
  }
}

std::string readingLine(const ReadGround& ground, const Fault& fault, std::size_t step,
                        const std::vector<double>& shown) {
  const int places = displayPlaces(ground.greatest());
  const std::string expected = core::shown(formatFixed(ground.points.expected[step], places));
  const std::string unit = " " + readingUnitText(ground.setup.instrument);
  const std::string is = " = " + core::shown(formatFixed(shown[step], places)) + unit;
  const std::string text = std::to_string(step + 1);
  switch (fault.kind) {
    case CauseKind::Scale:
      return say("With the fault, step {1}: expected × factor = {2} × {3}{4}",
                 {text, expected, core::shown(formatNumber(fault.size, 4)), is});
    case CauseKind::ZeroShift:
      return say("With the fault, step {1}: expected + shift = {2}{3}",
                 {text, sum(expected, fault.size, places), is});
    case CauseKind::StrayReading:
      return say("With the fault, step {1}: expected + error = {2}{3}",
                 {text, sum(expected, fault.size, places), is});
    case CauseKind::Drift:
      return say("With the fault, step {1}: expected + drift × time = {2}{3}",
                 {text, sum(expected, shown[step] - ground.points.expected[step], places), is});
    case CauseKind::Clipping:
      return say("With the fault, step {1}: expected {2}{3}, stopped at the limit{4}",
                 {text, expected, unit, is});
    default:
      return {};
  }
}

}  // namespace core
