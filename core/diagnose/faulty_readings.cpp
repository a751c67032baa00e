// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/circuit/indication.h"
#include "core/diagnose/check_times.h"
#include "core/diagnose/fault.h"
#include "core/plan/prediction.h"

namespace core {
namespace {

/// Changes of the instrument's indication at `steps`, by the whole network. `sign` -1: signal wires
/// exchanged.
Result<std::vector<double>> solvedChanges(const Setup& setup, const std::vector<std::size_t>& steps,
                                          double sign = 1) {
  auto circuit = BridgeCircuit::make(setup.bridge, setup.instrument, shuntBranches(setup));
  if (!circuit) return circuit.error();
  const auto zero = circuit->solveOutput();
  if (!zero) return zero.error();
  std::vector<double> changes;
  changes.reserve(steps.size());
  for (const std::size_t step : steps) {
    if (setup.sequence[step].closed.empty()) {
      changes.push_back(0);
      continue;
    }
    if (auto closed = closeShunts(*circuit, setup, step); !closed) return closed.error();
    const auto now = circuit->solveOutput();
    if (!now) return now.error();
    const auto indication =
        indicationOf(setup.bridge, setup.instrument, Output(sign * now->base()), Output(sign * zero->base()));
    if (!indication) return indication.error();
    changes.push_back(indication->value.base());
  }
  return changes;
}

double shownZero(const Check& check, const CheckPoints& points) {
  return points.zero ? check.readings[points.steps[*points.zero]]->mean.base() : 0;
}

double clipped(double shown, const Fault& fault) {
  const double low = fault.index == 1 ? -HUGE_VAL : -fault.size;
  const double high = fault.index == 2 ? HUGE_VAL : fault.size;
  return low <= high ? std::clamp(shown, low, high) : shown;
}

void exchangeSides(std::vector<double>& changes) {
  std::vector<std::size_t> positive, negative;
  for (std::size_t k = 0; k < changes.size(); ++k) {
    if (changes[k] > 0) positive.push_back(k);
    if (changes[k] < 0) negative.push_back(k);
  }
  for (std::size_t k = 0; k < std::min(positive.size(), negative.size()); ++k)
    std::swap(changes[positive[k]], changes[negative[k]]);
}

/// A fault of settings, of the order of steps or of readings: the network itself is as planned.
std::vector<double> changedReadings(const Setup& setup, const Check& check, const CheckPoints& points,
                                    const Fault& fault) {
  std::vector<double> changes = points.expected;
  const auto pointOfStep = [&](std::size_t step) {
    return static_cast<std::size_t>(std::find(points.steps.begin(), points.steps.end(), step) -
                                    points.steps.begin());
  };
  switch (fault.kind) {
    case CauseKind::BridgeFactor:
      for (double& change : changes) change *= setup.instrument.bridgeFactor / fault.size;
      break;
    case CauseKind::NoResponse:
      for (double& change : changes) change = 0;
      break;
    case CauseKind::Scale:
    case CauseKind::Units:
      for (double& change : changes) change *= fault.size;
      break;
    case CauseKind::StepsExchanged: {
      const std::size_t a = pointOfStep(fault.index), b = pointOfStep(fault.other);
      if (a < changes.size() && b < changes.size()) std::swap(changes[a], changes[b]);
      break;
    }
    case CauseKind::SidesExchanged:
      exchangeSides(changes);
      break;
    case CauseKind::ZeroShift:
      for (std::size_t k = 0; k < changes.size(); ++k)
        if (points.steps[k] >= fault.index) changes[k] += fault.size;
      break;
    case CauseKind::Drift: {
      const std::vector<double> times = stepTimes_s(setup, check, points.steps);
      for (std::size_t k = 0; k < changes.size(); ++k) changes[k] += fault.size * times[k];
      break;
    }
    case CauseKind::Clipping: {
      const double zero = shownZero(check, points);
      for (double& change : changes) change = clipped(zero + change, fault) - zero;
      break;
    }
    case CauseKind::StrayReading:
      if (const std::size_t k = pointOfStep(fault.index); k < changes.size()) changes[k] += fault.size;
      break;
    default:
      break;
  }
  return changes;
}

bool isOfParts(CauseKind kind) {
  switch (kind) {
    case CauseKind::Leads:
    case CauseKind::LeadContact:
    case CauseKind::ShuntOpen:
    case CauseKind::ShuntPlace:
    case CauseKind::ShuntArm:
    case CauseKind::ShuntValue:
    case CauseKind::ShuntsExchanged:
    case CauseKind::CompletionValue:
    case CauseKind::ArmValue:
    case CauseKind::Leak:
    case CauseKind::OpenSense:
      return true;
    default:
      return false;
  }
}

}  // namespace

Result<std::vector<double>> changesUnder(const Setup& setup, const Check& check, const CheckPoints& points,
                                         const Fault& fault) {
  if (fault.kind == CauseKind::PolarityReversed) return solvedChanges(setup, points.steps, -1);
  if (isOfParts(fault.kind)) return solvedChanges(withFault(setup, fault), points.steps);
  return changedReadings(setup, check, points, fault);
}

}  // namespace core
