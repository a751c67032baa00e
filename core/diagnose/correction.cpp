// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diagnose/correction.h"

#include <algorithm>
#include <cmath>

#include "core/circuit/bridge_circuit.h"
#include "core/circuit/indication.h"
#include "core/units/language.h"

namespace core {
namespace {

/// The unloaded, unshunted bridge.
struct Rest {
  Output output;
  double slope = 0;  ///< d reading / d stimulus of an instrument zeroed here
};

std::optional<Rest> restOf(const Setup& setup) {
  auto circuit = BridgeCircuit::make(setup.bridge, setup.instrument, {});
  if (!circuit) return std::nullopt;
  const auto output = circuit->solveOutput();
  if (!output) return std::nullopt;
  const auto indication = indicationOf(setup.bridge, setup.instrument, *output, *output);
  if (!indication) return std::nullopt;
  return Rest{*output, indication->perOutput * circuit->outputSlope()};
}

/// `setup` with an arm or a lead of another resistance.
Setup withResistance(Setup setup, Input input, double ohm) {
  if (input.kind == InputKind::Arm)
    setup.bridge.arms[input.index] = Resistance(ohm);
  else
    setup.bridge.leads[input.index] = Resistance(ohm);
  return setup;
}

/// d ln(d reading / d stimulus) / d resistance of an arm or a lead, 1/ohm.
double slopeShareOf(const Setup& setup, const BudgetInput& input) {
  const double h = 1e-3;  // of some hundred ohm: far above rounding, far below what bends the slope
  const double low = std::max(0.0, input.value - h), high = input.value + h;
  const auto below = restOf(withResistance(setup, input.input, low));
  const auto above = restOf(withResistance(setup, input.input, high));
  return below && above ? std::log(above->slope / below->slope) / (high - low) : 0;
}

/// The point with the greatest expected reading that has a budget.
std::optional<std::size_t> greatestPoint(const DiagnosisGround& ground, const Budget& budget) {
  std::optional<std::size_t> greatest;
  const auto expected = [&](std::size_t k) { return std::abs(ground.points.expected[k]); };
  for (std::size_t k = 0; k < ground.points.size(); ++k) {
    const bool usable = expected(k) > 0 && budget.of(Scope::Chain).steps[ground.points.steps[k]];
    if (usable && (!greatest || expected(k) > expected(*greatest))) greatest = k;
  }
  return greatest;
}

std::optional<double> factorAt(const Setup& setup, Fault fault, double size) {
  fault.size = size;
  const auto ratio = strainSensitivityRatio(setup, fault);
  return ratio ? std::optional(1 / *ratio) : std::nullopt;
}

/// Standard uncertainty of the factor from that of the fitted size.
double factorUncertainty(const Setup& setup, const Refit& refit) {
  if (!refit.standard) return 0;
  const double size = refit.fault.size, h = size != 0 ? 1e-4 * std::abs(size) : *refit.standard;
  const auto above = factorAt(setup, refit.fault, size + h), below = factorAt(setup, refit.fault, size - h);
  if (!above || !below) return 0;
  return std::abs((*above - *below) / (2 * h)) * *refit.standard;
}

double factorStandard(const DiagnosisGround& ground, const Budget& budget, const Refit& refit,
                      double factor) {
  const bool holdsInstrument = refit.fault.kind == CauseKind::Scale && refit.standard;
  return std::hypot(factorUncertainty(ground.setup, refit),
                    factor * chainShare(ground, budget, !holdsInstrument));
}

bool isLegitimate(CauseKind kind) {
  switch (kind) {
    case CauseKind::Scale:
    case CauseKind::BridgeFactor:
    case CauseKind::Units:
    case CauseKind::Leads:
    case CauseKind::CompletionValue:
    case CauseKind::PolarityReversed:
    case CauseKind::OpenSense:
    case CauseKind::ZeroShift:
      return true;
    default:
      return false;
  }
}

constexpr std::string_view decides =
    sayLater("The responsible person decides, and the report states the correction.");

/// Under which condition data may be corrected.
std::string condition(CauseKind kind) {
  switch (kind) {
    case CauseKind::OpenSense:
      return say(
          "Legitimate only where the sense lead was open during the whole test as well, which its recording "
          "or a check before and after must show, and the measurement confirms it.");
    case CauseKind::ZeroShift:
      return say(
          "Legitimate only for data recorded after the shift and before the next zeroing, where a reading "
          "without load shows the same offset and an electrical cause of it was found.");
    case CauseKind::CompletionValue:
      return say(
          "Legitimate only where the same resistor was in the bridge during the whole test, and its value is "
          "measured.");
    default:
      return say(
          "Legitimate only where the measurement confirms this cause, and it was there, the same, during the "
          "whole test.");
  }
}

/// Why data may not be corrected.
std::string refusal(CauseKind kind) {
  if (kind == CauseKind::NoResponse)
    return say("Not possible: nothing was recorded that could be corrected.");
  if (isOfCheckAlone(kind))
    return say(
        "Nothing to correct: strain data do not feel it. It is the check that is to be put right and judged "
        "again.");
  switch (kind) {
    case CauseKind::Leak:
      return say(
          "Not legitimate: a leak changes with moisture and temperature, so that no one factor or offset "
          "holds for the test. Mend the insulation and repeat.");
    case CauseKind::ArmValue:
      return say(
          "Not legitimate: what changed the resistance may have changed the gauge factor or the bond as "
          "well. Replace the gauge, or calibrate it with a known load.");
    case CauseKind::LeadContact:
      return say("Not legitimate: a bad contact comes and goes. Mend it and repeat.");
    case CauseKind::Clipping:
      return say(
          "Not legitimate: what lay beyond the limit was not recorded. Data below it stand as they are.");
    case CauseKind::Drift:
      return say(
          "Not legitimate: nobody knows the drift's course during the test. Zero readings in the test's own "
          "recording may tell it.");
    default:
      return say("Not legitimate.");
  }
}

}  // namespace

bool isOfCheckAlone(CauseKind kind) {
  switch (kind) {
    case CauseKind::NoResponse:
    case CauseKind::ShuntOpen:
    case CauseKind::ShuntPlace:
    case CauseKind::ShuntArm:
    case CauseKind::ShuntValue:
    case CauseKind::ShuntsExchanged:
    case CauseKind::StepsExchanged:
    case CauseKind::SidesExchanged:
    case CauseKind::StrayReading:
      return true;
    default:
      return false;
  }
}

double readingScale(const Setup& setup, const Fault& fault) {
  switch (fault.kind) {
    case CauseKind::Scale:
    case CauseKind::Units:
      return fault.size;
    case CauseKind::BridgeFactor:
      return setup.instrument.bridgeFactor / fault.size;
    case CauseKind::PolarityReversed:
      return -1;
    default:
      return 1;
  }
}

std::optional<double> strainSensitivityRatio(const Setup& setup, const Fault& fault) {
  if (isOfCheckAlone(fault.kind)) return 1.0;
  const auto healthy = restOf(setup), faulty = restOf(withFault(setup, fault));
  if (!healthy || !faulty) return std::nullopt;
  const double ratio = faulty->slope / healthy->slope * readingScale(setup, fault);
  return std::isfinite(ratio) && ratio != 0 ? std::optional(ratio) : std::nullopt;
}

std::optional<double> zeroMove(const Setup& setup, const Fault& fault) {
  const auto healthy = restOf(setup), faulty = restOf(withFault(setup, fault));
  if (!healthy || !faulty) return std::nullopt;
  const auto move = indicationOf(setup.bridge, setup.instrument, faulty->output, healthy->output);
  return move ? std::optional(move->value.base()) : std::nullopt;
}

double chainShare(const DiagnosisGround& ground, const Budget& budget, bool withInstrument) {
  const auto greatest = greatestPoint(ground, budget);
  std::vector<double> shares(budget.inputs.size(), 0.0), standard;
  for (std::size_t k = 0; k < budget.inputs.size(); ++k) {
    const BudgetInput& input = budget.inputs[k];
    standard.push_back(input.standard);
    const InputKind kind = input.input.kind;
    if (kind == InputKind::Arm || kind == InputKind::Lead) {
      if (input.standard > 0) shares[k] = slopeShareOf(ground.setup, input);
    } else if ((kind == InputKind::Gain || kind == InputKind::Excitation) && withInstrument && greatest) {
      shares[k] = budget.sensitivities(Scope::Chain, ground.points.steps[*greatest])[k] /
                  ground.points.expected[*greatest];
    }
  }
  return combinedUncertainty(shares, standard, correlatedPairs(ground.setup, budget.inputs));
}

Correction correctionOf(const DiagnosisGround& ground, const Budget& budget, const Refit& refit) {
  const Fault& fault = refit.fault;
  Correction correction;
  correction.legitimate = isLegitimate(fault.kind);
  correction.reason =
      correction.legitimate ? condition(fault.kind) + " " + say(decides) : refusal(fault.kind);
  if (isOfCheckAlone(fault.kind)) return correction;
  const auto ratio = strainSensitivityRatio(ground.setup, fault);
  if (!ratio) {
    correction.legitimate = false;
    correction.reason = say("Not possible: the bridge with this fault cannot be solved for strain.");
    return correction;
  }
  correction.factor = 1 / *ratio;
  correction.factorStandard = factorStandard(ground, budget, refit, std::abs(correction.factor));
  if (fault.kind == CauseKind::ZeroShift) {
    correction.offset = fault.size;
    correction.offsetStandard = refit.standard;
  }
  return correction;
}

}  // namespace core
