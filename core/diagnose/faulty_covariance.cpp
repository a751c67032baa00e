// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <numeric>

#include "core/diagnose/refit.h"

namespace core {
namespace {

/// Of the channel as it would really be: a shunt on another arm brings that arm's errors with it.
std::optional<std::vector<double>> ofOtherParts(const DiagnosisGround& ground, const Fault& fault) {
  const Setup setup = withFault(ground.setup, fault);
  const SetupPrediction prediction = predict(setup);
  CheckPoints points = checkPoints(setup, prediction, budgetOf(setup, prediction), ground.check);
  if (points.steps != ground.points.steps || points.covariance.empty()) return std::nullopt;
  return std::move(points.covariance);
}

/// Of readings that were taken at other steps than they stand at.
std::vector<double> ofOtherOrder(const CheckPoints& points, const std::vector<double>& changes) {
  const std::size_t n = points.size();
  std::vector<std::size_t> taken(n);
  std::iota(taken.begin(), taken.end(), 0);
  for (std::size_t k = 0; k < n; ++k) {
    if (changes[k] == points.expected[k]) continue;
    const auto from = std::find(points.expected.begin(), points.expected.end(), changes[k]);
    if (from != points.expected.end()) taken[k] = static_cast<std::size_t>(from - points.expected.begin());
  }
  std::vector<double> covariance(n * n);
  for (std::size_t i = 0; i < n; ++i)
    for (std::size_t j = 0; j < n; ++j) {
      covariance[i * n + j] = points.covariance[taken[i] * n + taken[j]];
      if (i == j)
        covariance[i * n + j] += points.ownVariance[i] - points.ownVariance[taken[i]];
      else if (taken[i] == taken[j])
        covariance[i * n + j] -= points.ownVariance[taken[i]];
    }
  return covariance;
}

/// What is a share of a reading follows the reading; one that has stopped follows nothing.
std::vector<double> ofOtherReadings(const CheckPoints& points, const std::vector<double>& changes,
                                    bool stops) {
  const std::size_t n = points.size();
  std::vector<double> ratio(n, 1.0);
  for (std::size_t k = 0; k < n; ++k) {
    if (stops)
      ratio[k] = changes[k] == points.expected[k] ? 1 : 0;
    else if (points.expected[k] != 0)
      ratio[k] = changes[k] / points.expected[k];
  }
  std::vector<double> covariance = points.covariance;
  for (std::size_t i = 0; i < n; ++i)
    for (std::size_t j = 0; j < n; ++j) {
      const double own = i == j ? points.ownVariance[i] : 0;
      covariance[i * n + j] = (covariance[i * n + j] - own) * ratio[i] * ratio[j] + own;
    }
  return covariance;
}

}  // namespace

std::optional<std::vector<double>> covarianceUnder(const DiagnosisGround& ground, const Fault& fault,
                                                   const std::vector<double>& changes) {
  if (ground.between) return ground.between->covariance(fault, changes);
  switch (fault.kind) {
    case CauseKind::ZeroShift:
    case CauseKind::Drift:
    case CauseKind::StrayReading:
      return std::nullopt;
    case CauseKind::ShuntOpen:
    case CauseKind::ShuntPlace:
    case CauseKind::ShuntArm:
    case CauseKind::ShuntsExchanged:
    case CauseKind::OpenSense:
      return ofOtherParts(ground, fault);
    case CauseKind::StepsExchanged:
    case CauseKind::SidesExchanged:
      return ofOtherOrder(ground.points, changes);
    default:
      return ofOtherReadings(ground.points, changes, fault.kind == CauseKind::Clipping);
  }
}

}  // namespace core
