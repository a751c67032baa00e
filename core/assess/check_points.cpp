// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/assess/check_points.h"

#include <algorithm>
#include <cmath>

namespace core {
namespace {

const std::optional<Measured>& readingAt(const Check& check, std::size_t step) {
  static const std::optional<Measured> none;
  return step < check.readings.size() ? check.readings[step] : none;
}

/// Standard uncertainty of rounding one reading, 0 without one.
double roundingOf(const Budget& budget) {
  for (const BudgetInput& entry : budget.inputs)
    if (entry.input.kind == InputKind::Rounding && entry.input.index == 1) return entry.standard;
  return 0;
}

/// Standard uncertainties of what steps share: all inputs but those of a single reading.
std::vector<double> sharedUncertainties(const Budget& budget) {
  std::vector<double> u;
  u.reserve(budget.inputs.size());
  for (const BudgetInput& entry : budget.inputs)
    u.push_back(entry.input.kind == InputKind::Rounding ? 0 : entry.standard);
  return u;
}

void addCovariance(const Setup& setup, const Budget& budget, CheckPoints& points) {
  const std::size_t n = points.size();
  for (const std::size_t step : points.steps)
    if (!budget.of(Scope::Chain).steps[step]) return;
  const std::vector<double> u = sharedUncertainties(budget);
  const std::vector<CorrelatedPair> pairs = correlatedPairs(setup, budget.inputs);
  points.covariance.assign(n * n, 0.0);
  for (std::size_t i = 0; i < n; ++i) {
    const auto a = budget.sensitivities(Scope::Chain, points.steps[i]);
    for (std::size_t j = 0; j <= i; ++j) {
      const auto b = budget.sensitivities(Scope::Chain, points.steps[j]);
      points.covariance[i * n + j] = points.covariance[j * n + i] = covarianceOf(a, b, u, pairs);
    }
    points.covariance[i * n + i] += points.ownVariance[i];
  }
}

}  // namespace

std::optional<std::size_t> zeroReference(const Setup& setup, const Check& check) {
  for (std::size_t step = 0; step < setup.sequence.size(); ++step)
    if (setup.sequence[step].closed.empty() && readingAt(check, step)) return step;
  return std::nullopt;
}

CheckPoints checkPoints(const Setup& setup, const SetupPrediction& prediction, const Budget& budget,
                        const Check& check) {
  CheckPoints points;
  const std::optional<std::size_t> reference = zeroReference(setup, check);
  const double zero = reference ? readingAt(check, *reference)->mean.base() : 0;
  const double rounding = roundingOf(budget);
  for (std::size_t step = 0; step < setup.sequence.size(); ++step) {
    const auto& reading = readingAt(check, step);
    if (!reading || !prediction.steps[step]) continue;
    const double change = reading->mean.base() - zero;
    if (!std::isfinite(change)) continue;
    if (step == reference) points.zero = points.size();
    const double own = reading->uncertainty ? reading->uncertainty->base() : 0;
    points.steps.push_back(step);
    points.simulated.push_back(simulatedInUnit(setup.bridge, prediction.steps[step]->simulated));
    points.expected.push_back(prediction.steps[step]->reading.base());
    points.measured.push_back(change);
    points.ownVariance.push_back(own * own + rounding * rounding);
  }
  addCovariance(setup, budget, points);
  return points;
}

}  // namespace core
