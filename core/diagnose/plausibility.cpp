// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diagnose/plausibility.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace core {
namespace {

/// How often a kind is met.
double frequency(CauseKind kind) {
  switch (kind) {
    case CauseKind::Scale:
    case CauseKind::Leads:
    case CauseKind::PolarityReversed:
    case CauseKind::NoResponse:
      return 1;
    case CauseKind::BridgeFactor:
    case CauseKind::ShuntValue:
    case CauseKind::Leak:
    case CauseKind::OpenSense:
    case CauseKind::ShuntPlace:
    case CauseKind::ShuntArm:
    case CauseKind::ZeroShift:
    case CauseKind::Drift:
      return 0.8;
    case CauseKind::LeadContact:
    case CauseKind::ShuntOpen:
    case CauseKind::Units:
    case CauseKind::CompletionValue:
    case CauseKind::ArmValue:
    case CauseKind::Clipping:
    case CauseKind::StepsExchanged:
      return 0.7;
    case CauseKind::ShuntsExchanged:
    case CauseKind::StrayReading:
      return 0.6;
    case CauseKind::SidesExchanged:
      return 0.4;
  }
  return 0;
}

/// A size in the variable that its prior is spread over, and how well the readings tell it there.
struct Place {
  double at = 0;  ///< 0 is no fault at all
  double standard = 0;
  double spread = 1;  ///< half of all such faults are smaller
};

Place logarithmic(const Refit& refit, double spread) {
  const double size = std::abs(refit.fault.size);
  return {std::log(size), *refit.standard / size, spread};
}

double greatestLead(const Bridge& bridge) {
  double greatest = 0;
  for (const Wire& wire : wiresOf(bridge))
    greatest = std::max(greatest, leadResistance(bridge, wire.role).base());
  return greatest;
}

double reach(const CheckPoints& points) {
  double greatest = 0;
  for (const double expected : points.expected) greatest = std::max(greatest, std::abs(expected));
  return greatest;
}

double duration(const Setup& setup) {
  double sum = 0;
  for (const Step& step : setup.sequence) sum += step.settle.base() + step.hold.base();
  return std::max(sum, 1e-3);
}

Place placeOf(const DiagnosisGround& ground, const Refit& refit) {
  const Fault& fault = refit.fault;
  const double span = reach(ground.points);
  switch (fault.kind) {
    case CauseKind::Leads:
      return {fault.size, *refit.standard, std::max(1.0, greatestLead(ground.setup.bridge))};
    case CauseKind::LeadContact:
      return {fault.size, *refit.standard, 1};
    case CauseKind::ShuntValue:
      return logarithmic(refit, 0.03);
    case CauseKind::Scale:
    case CauseKind::CompletionValue:
    case CauseKind::ArmValue:
      return logarithmic(refit, 0.02);
    case CauseKind::Drift:
      return {fault.size, *refit.standard, 0.05 * span / duration(ground.setup)};
    case CauseKind::Clipping:
      return {std::max(0.0, span - fault.size), *refit.standard, 0.2 * span};
    default:  // ZeroShift and StrayReading
      return {fault.size, *refit.standard, 0.02 * span};
  }
}

/// Another common resistance in place of the right one is as ordinary as a small deviation.
bool isOtherNominal(const Fault& fault) {
  constexpr std::array<double, 6> others{120.0 / 350,  350.0 / 120,  120.0 / 1000,
                                         1000.0 / 120, 350.0 / 1000, 1000.0 / 350};
  return fault.kind == CauseKind::CompletionValue &&
         std::any_of(others.begin(), others.end(),
                     [&](double other) { return std::abs(fault.size / other - 1) < 0.01; });
}

/// What makes a size odd whatever its magnitude.
double oddness(const Fault& fault) {
  // Leads are forgotten or longer far more often than they are shorter.
  if (fault.kind == CauseKind::LeadContact) return 2;  // it only adds
  if (fault.kind == CauseKind::Leads) return fault.size < 0 ? 0.4 : 1.6;
  return 1;
}

/// Moisture knows no usual size: every decade of resistance from 1 kilohm to 10 megohm is met as often.
Plausibility plausibilityOfLeak(const Refit& refit, double often) {
  constexpr double decades = 4;
  const double conductance = refit.fault.size;
  if (!(conductance > 0)) return {0, 2000};
  const bool usual = conductance <= 1.0 / 1e3 && conductance >= 1.0 / 10e6;
  const double relative = std::min(1.0, *refit.standard / conductance);
  const double share = relative * std::sqrt(2 * std::numbers::pi) / (decades * std::numbers::ln10);
  return {often * (usual ? 1.0 : 0.05), -2 * std::log(often * share * (usual ? 1.0 : 0.05))};
}

}  // namespace

Plausibility plausibilityOf(const DiagnosisGround& ground, const Refit& refit) {
  const double often = frequency(refit.fault.kind);
  if (!hasFreeSize(refit.fault.kind)) return {often, -2 * std::log(often)};
  if (!refit.standard || isOtherNominal(refit.fault)) return {often, -2 * std::log(0.01 * often)};
  if (refit.fault.kind == CauseKind::Leak) return plausibilityOfLeak(refit, often);
  const Place place = placeOf(ground, refit);
  // Heavy tails: density 1 / (2 spread (1 + |at| / spread)^2), of which half lies within the spread.
  const double usual = std::pow(1 + std::abs(place.at) / place.spread, -2);
  const double odd = oddness(refit.fault);
  const double density = odd * usual / (2 * place.spread);
  const double share = std::min(1.0, density * place.standard * std::sqrt(2 * std::numbers::pi));
  return {often * usual * std::min(1.0, odd), -2 * std::log(often * std::max(share, 1e-12))};
}

}  // namespace core
