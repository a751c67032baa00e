// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diagnose/plausibility.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace core {
namespace {

/// 1 up to `usual`, falling to 0.01 ten times beyond.
double withinUsual(double size, double usual) {
  if (!(size > usual)) return 1;
  return std::max(0.01, std::pow(usual / size, 2));
}

double scalePlausibility(double factor) {
  if (!(factor > 0)) return 0.01;
  return withinUsual(std::abs(std::log(factor)), 0.12);
}

double leadPlausibility(const Bridge& bridge, double more_ohm) {
  double greatest = 0;
  for (const Wire& wire : wiresOf(bridge))
    greatest = std::max(greatest, leadResistance(bridge, wire.role).base());
  // Shorter than entered is met less often than forgotten or longer.
  return withinUsual(std::abs(more_ohm), std::max(5.0, 3 * greatest)) * (more_ohm < 0 ? 0.5 : 1.0);
}

double completionPlausibility(double ratio) {
  constexpr std::array<double, 6> otherValues{120.0 / 350,  350.0 / 120,  120.0 / 1000,
                                              1000.0 / 120, 350.0 / 1000, 1000.0 / 350};
  for (const double other : otherValues)
    if (std::abs(ratio / other - 1) < 0.01) return 1;
  return withinUsual(std::abs(std::log(ratio)), 0.05);
}

double leakPlausibility(double conductance_S) {
  if (!(conductance_S > 0)) return 0.01;
  return withinUsual(conductance_S, 1.0 / 5000);
}

double sizePlausibility(const DiagnosisGround& ground, const Fault& fault) {
  const Setup& setup = ground.setup;
  switch (fault.kind) {
    case CauseKind::Scale:
      return scalePlausibility(fault.size);
    case CauseKind::Leads:
      return leadPlausibility(setup.bridge, fault.size);
    case CauseKind::ShuntValue:
      return withinUsual(std::abs(std::log(fault.size)), 0.1);
    case CauseKind::CompletionValue:
      return completionPlausibility(fault.size);
    case CauseKind::ArmValue:
      return withinUsual(std::abs(std::log(fault.size)), 0.03);
    case CauseKind::Leak:
      return leakPlausibility(fault.size);
    default:
      return 1;
  }
}

/// How often a kind is met.
double frequency(CauseKind kind) {
  switch (kind) {
    case CauseKind::Scale:
    case CauseKind::PolarityReversed:
      return 1;
    case CauseKind::BridgeFactor:
    case CauseKind::Leads:
      return 0.7;
    case CauseKind::ShuntValue:
    case CauseKind::Leak:
    case CauseKind::OpenSense:
      return 0.6;
    case CauseKind::Units:
    case CauseKind::ShuntPlace:
    case CauseKind::ShuntArm:
    case CauseKind::CompletionValue:
    case CauseKind::ArmValue:
    case CauseKind::ZeroShift:
    case CauseKind::Drift:
    case CauseKind::Clipping:
      return 0.5;
    case CauseKind::ShuntsExchanged:
    case CauseKind::StepsExchanged:
    case CauseKind::StrayReading:
      return 0.4;
    case CauseKind::SidesExchanged:
      return 0.3;
  }
  return 0;
}

}  // namespace

double plausibilityOf(const DiagnosisGround& ground, const Fault& fault) {
  return frequency(fault.kind) * sizePlausibility(ground, fault);
}

}  // namespace core
