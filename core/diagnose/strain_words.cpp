// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "core/diagnose/cause_words.h"
#include "core/diagnose/correction.h"
#include "core/units/language.h"
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
  if (scale == -1) return say("{1} reads with the wrong sign; its magnitude is right", {measurand});
  if (scale < 0)
    return say("{1} reads with the wrong sign, and {2} times as large",
               {measurand, warranted(-scale, standard)});
  if (scale >= 1.5) return say("{1} reads {2} times too large", {measurand, warranted(scale, standard)});
  if (scale <= 2.0 / 3)
    return say("{1} reads {2} times too small", {measurand, warranted(1 / scale, correction.factorStandard)});
  const double away = scale - 1;
  if (std::abs(away) < unseen) return say("{1} keeps its scale", {measurand});
  // Of a change smaller than its uncertainty the size alone is worth telling.
  const auto shown = standard && *standard < std::abs(away) ? standard : std::nullopt;
  const std::string percent = shown ? warranted(100 * std::abs(away), 100 * *shown)
                                    : core::shown(formatNumber(100 * std::abs(away), 2));
  return say("{1} reads {2} % {3}", {measurand, percent, (away > 0 ? say("high") : say("low"))});
}

/// "strain reads 3 % high, and the zero moves by -742 µm/m"
std::string withZeroWords(const std::string& scale, const Setup& setup, const Fault& fault) {
  const auto move = zeroMove(setup, fault);
  if (!move || *move == 0) return scale;
  return say(
      "{1}, and the zero moves by {2}{3} {4}",
      {scale, *move > 0 ? "+" : "", core::shown(formatNumber(*move, 3)), readingUnitText(setup.instrument)});
}

std::string driftWords(const Setup& setup, const std::string& measurand, const Fault& fault) {
  return say("{1} carries the drift since it was last zeroed, some {2} {3} in a minute at this rate.",
             {measurand, core::shown(formatNumber(std::abs(60 * fault.size), 2)),
              readingUnitText(setup.instrument)});
}

}  // namespace

std::string strainWords(const Setup& setup, const Fault& fault, const std::optional<double>& standard,
                        const Correction& correction) {
  const std::string measurand = measurandWord(setup.bridge), unit = readingUnitText(setup.instrument);
  if (fault.kind == CauseKind::NoResponse)
    return say("{1} is not recorded: what the bridge does is not seen.", {measurand});
  if (fault.kind == CauseKind::StrayReading)
    return say("None, if the step reads as expected when it is taken again.");
  if (isOfCheckAlone(fault.kind))
    return say("None: the check alone is affected, {1} is recorded as it should be.",
               {isTransducer(setup.bridge) ? say("load") : say("strain")});
  switch (fault.kind) {
    case CauseKind::ArmValue:
      return say("{1}, if the gauge's change of resistance by strain stays as it was.",
                 {withZeroWords(scaleWords(measurand, correction), setup, fault)});
    case CauseKind::LeadContact:
    case CauseKind::Leak:
    case CauseKind::CompletionValue:
      return withZeroWords(scaleWords(measurand, correction), setup, fault) + ".";
    case CauseKind::ZeroShift:
      return say(
          fault.size < 0
              ? sayLater("{1} recorded after the shift and before the next zeroing reads {2} {3} low; its "
                         "scale is "
                         "right.")
              : sayLater(
                    "{1} recorded after the shift and before the next zeroing reads {2} {3} high; its scale "
                    "is right."),
          {measurand, withStandard(std::abs(fault.size), standard), unit});
    case CauseKind::Drift:
      return driftWords(setup, measurand, fault);
    case CauseKind::Clipping:
      return say("{1} beyond the limit is lost; readings within it are right.", {measurand});
    default:
      return scaleWords(measurand, correction) + ".";
  }
}

}  // namespace core
