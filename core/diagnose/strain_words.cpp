// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "core/diagnose/cause_words.h"
#include "core/diagnose/correction.h"
#include "core/units/notation.h"

namespace core {
namespace {

/// Below this share nobody sees a change of scale.
constexpr double unseen = 5e-6;

/// "Strain reads 0.35 % high"; "Strain reads 2 times too large".
std::string scaleWords(const std::string& measurand, const Correction& correction) {
  const double scale = 1 / correction.factor;
  const auto standard =
      correction.factorStandard ? std::optional(*correction.factorStandard * scale * scale) : std::nullopt;
  if (scale == -1) return measurand + " reads with the wrong sign; its magnitude is right";
  if (scale < 0)
    return measurand + " reads with the wrong sign, and " + warranted(-scale, standard) + " times as large";
  if (scale >= 1.5) return measurand + " reads " + warranted(scale, standard) + " times too large";
  if (scale <= 2.0 / 3)
    return measurand + " reads " + warranted(1 / scale, correction.factorStandard) + " times too small";
  const double away = scale - 1;
  if (std::abs(away) < unseen) return measurand + " keeps its scale";
  // Of a change smaller than its uncertainty the size alone is worth telling.
  const auto shown = standard && *standard < std::abs(away) ? standard : std::nullopt;
  const std::string percent =
      shown ? warranted(100 * std::abs(away), 100 * *shown) : formatNumber(100 * std::abs(away), 2);
  return measurand + " reads " + percent + " % " + (away > 0 ? "high" : "low");
}

/// ", and the zero moves by -742 µm/m"
std::string zeroWords(const Setup& setup, const Fault& fault) {
  const auto move = zeroMove(setup, fault);
  if (!move || *move == 0) return {};
  return ", and the zero moves by " + std::string(*move > 0 ? "+" : "") + formatNumber(*move, 3) + " " +
         readingUnitText(setup.instrument);
}

std::string driftWords(const Setup& setup, const std::string& measurand, const Fault& fault) {
  return measurand + " carries the drift since it was last zeroed, some " +
         formatNumber(std::abs(60 * fault.size), 2) + " " + readingUnitText(setup.instrument) +
         " in a minute at this rate.";
}

}  // namespace

std::string strainWords(const Setup& setup, const Fault& fault, const std::optional<double>& standard,
                        const Correction& correction) {
  const std::string measurand = measurandWord(setup.bridge), unit = readingUnitText(setup.instrument);
  if (fault.kind == CauseKind::NoResponse)
    return measurand + " is not recorded: what the bridge does is not seen.";
  if (fault.kind == CauseKind::StrayReading)
    return "None, if the step reads as expected when it is taken again.";
  if (isOfCheckAlone(fault.kind))
    return "None: the check alone is affected, " +
           std::string(isTransducer(setup.bridge) ? "load" : "strain") + " is recorded as it should be.";
  switch (fault.kind) {
    case CauseKind::ArmValue:
      return scaleWords(measurand, correction) + zeroWords(setup, fault) +
             ", if the gauge's change of resistance by strain stays as it was.";
    case CauseKind::LeadContact:
    case CauseKind::Leak:
    case CauseKind::CompletionValue:
      return scaleWords(measurand, correction) + zeroWords(setup, fault) + ".";
    case CauseKind::ZeroShift:
      return measurand + " recorded after the shift and before the next zeroing reads " +
             withStandard(std::abs(fault.size), standard) + " " + unit + (fault.size < 0 ? " low" : " high") +
             "; its scale is right.";
    case CauseKind::Drift:
      return driftWords(setup, measurand, fault);
    case CauseKind::Clipping:
      return measurand + " beyond the limit is lost; readings within it are right.";
    default:
      return scaleWords(measurand, correction) + ".";
  }
}

}  // namespace core
