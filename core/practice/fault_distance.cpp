// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/practice/fault_distance.h"

#include <algorithm>
#include <cmath>

#include "core/plan/prediction.h"

namespace core {
namespace {

constexpr int finerRounds = 25;

/// From `low` to at least `high`, each `factor` times the one before.
std::vector<double> geometric(double low, double high, double factor) {
  std::vector<double> sizes{low};
  while (sizes.back() < high) sizes.push_back(factor * sizes.back());
  return sizes;
}

std::vector<double> withZero(std::vector<double> sizes) {
  sizes.insert(sizes.begin(), 0.0);
  return sizes;
}

std::vector<double> times(std::vector<double> sizes, double factor) {
  for (double& size : sizes) size *= factor;
  return sizes;
}

/// `count` equal parts of -reach to reach.
std::vector<double> bothSides(double reach) {
  constexpr int count = 40;
  std::vector<double> sizes;
  for (int k = -count; k <= count; ++k) sizes.push_back(reach * k / count);
  return sizes;
}

double duration_s(const Setup& setup) {
  double sum = 0;
  for (const Step& step : setup.sequence) sum += (step.hold + step.settle).base();
  return sum;
}

/// Sizes of the kind, rising, close enough for the best one to lie between the neighbours of the best of
/// them.
std::vector<double> meshOf(const ReadGround& ground, const Fault& fault, double reach) {
  switch (fault.kind) {
    case CauseKind::Scale:
      return geometric(0.01, 100, 1.3);
    case CauseKind::BridgeFactor:
      // Any N, not only those of templates: it acts as a scale does.
      return times(geometric(0.01, 100, 1.3), ground.setup.instrument.bridgeFactor);
    case CauseKind::ShuntValue:
      return geometric(1e-4, 1e4, 1.4);
    case CauseKind::ArmValue:
    case CauseKind::CompletionValue:
      return geometric(1e-3, 1e3, 1.25);
    case CauseKind::Leads:
    case CauseKind::LeadContact:
      return withZero(geometric(0.1, 1000, 1.4));
    case CauseKind::Leak:
      return withZero(geometric(1e-7, 1e-1, 1.5));
    case CauseKind::ZeroShift:
    case CauseKind::StrayReading:
      return bothSides(2 * reach);
    case CauseKind::Drift:
      return bothSides(2 * reach / duration_s(ground.setup));
    case CauseKind::Clipping:
      return withZero(geometric(0.01 * reach, 1.5 * reach, 1.1));
    default:
      return {fault.size};
  }
}

double greatestOf(const std::vector<double>& values) {
  double greatest = 0;
  for (const double value : values) greatest = std::max(greatest, std::abs(value));
  return greatest;
}

}  // namespace

double ReadGround::greatest() const { return greatestOf(points.expected); }

std::optional<ReadGround> readGround(const Setup& setup) {
  ReadGround ground{setup, {}, {}};
  const SetupPrediction predicted = predict(setup);
  for (std::size_t step = 0; step < setup.sequence.size(); ++step) {
    const auto& one = predicted.steps[step];
    if (!one) return std::nullopt;
    ground.points.steps.push_back(step);
    ground.points.expected.push_back(one->reading.base());
    ground.check.readings.push_back(Measured{one->reading, {}, {}, {}});
  }
  ground.points.zero = 0;
  return ground;
}

std::optional<std::vector<double>> readingsUnder(const ReadGround& ground, const Fault& fault) {
  auto changes = changesUnder(ground.setup, ground.check, ground.points, fault);
  if (!changes) return std::nullopt;
  const double zero = changes->front();
  for (double& change : *changes) {
    change -= zero;
    if (!std::isfinite(change)) return std::nullopt;
  }
  return *std::move(changes);
}

std::optional<Nearest> nearest(const ReadGround& ground, Fault fault, const std::vector<double>& shown) {
  const double reach = std::max(ground.greatest(), greatestOf(shown));
  std::optional<Nearest> best;
  const auto look = [&](double size) {
    fault.size = size;
    auto readings = readingsUnder(ground, fault);
    if (!readings) return;
    double miss = 0;
    for (std::size_t k = 0; k < shown.size(); ++k) miss = std::max(miss, std::abs((*readings)[k] - shown[k]));
    if (!best || miss / reach < best->distance) best = {fault, *std::move(readings), miss / reach, false};
  };
  const std::vector<double> mesh = meshOf(ground, fault, reach);
  for (const double size : mesh) look(size);
  if (!best || mesh.size() == 1) return best;
  const auto at = std::lower_bound(mesh.begin(), mesh.end(), best->fault.size);
  double step = 0;
  if (at != mesh.begin()) step = std::max(step, *at - *(at - 1));
  if (at + 1 != mesh.end()) step = std::max(step, *(at + 1) - *at);
  for (int round = 0; round < finerRounds; ++round, step /= 2) {
    const double centre = best->fault.size;
    for (const double size : {centre - step / 2, centre + step / 2})
      if (size >= mesh.front() && size <= mesh.back()) look(size);
  }
  best->atEnd = best->fault.size <= mesh.front() || best->fault.size >= mesh.back();
  return best;
}

}  // namespace core
