// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/diagnosis/simulated_check.h"

#include <Eigen/Cholesky>
#include <algorithm>
#include <cassert>
#include <cmath>
#include <vector>

#include "tests/diagnosis/plant.h"

namespace diagnosis {
namespace {

/// Lengths of changes with an offset left free, over the covariance of a check's points.
class Measure {
 public:
  using Vector = Eigen::Matrix<long double, Eigen::Dynamic, 1>;

  explicit Measure(const core::CheckPoints& points) {
    const auto n = static_cast<Eigen::Index>(points.size());
    assert(points.covariance.size() == points.size() * points.size());
    Matrix covariance(n, n);
    for (Eigen::Index i = 0; i < n; ++i)
      for (Eigen::Index j = 0; j < n; ++j)
        covariance(i, j) = points.covariance[static_cast<std::size_t>(i * n + j)];
    m_factor.compute(covariance);
    m_weighed = m_factor.solve(Vector::Ones(n));
  }

  /// a' C^-1 b of both less their offsets.
  long double product(Vector a, const Vector& b) const {
    a.array() -= m_weighed.dot(a) / m_weighed.sum();
    return a.dot(m_factor.solve(b));
  }
  double length(const Vector& a) const {
    return static_cast<double>(std::sqrt(std::max(product(a, a), 0.0L)));
  }

 private:
  using Matrix = Eigen::Matrix<long double, Eigen::Dynamic, Eigen::Dynamic>;
  Eigen::LLT<Matrix> m_factor;
  Vector m_weighed;
};

Measure::Vector vectorOf(const std::vector<double>& values) {
  Measure::Vector result(static_cast<Eigen::Index>(values.size()));
  for (std::size_t k = 0; k < values.size(); ++k) result(static_cast<Eigen::Index>(k)) = values[k];
  return result;
}

Measure measureOf(const core::Setup& setup, const core::Check& check) {
  const auto prediction = core::predict(setup);
  return Measure(core::checkPoints(setup, prediction, core::budgetOf(setup, prediction), check));
}

/// A check of `channel` by `truth`, as it gets into the program. A number multiplied by a wrong unit has its
/// noise multiplied too.
core::Check checkBy(const DrawnChannel& channel, const Truth& truth, Dice& dice) {
  std::vector<double> noise;
  for (std::size_t step = 0; step < channel.setup.sequence.size(); ++step)
    noise.push_back(channel.noise * truth.setting * dice.normal());
  const auto shown = readingsOf(channel.setup, truth, noise, channel.digit);
  const bool timed = dice.chance(0.5);
  core::Check check;
  double begin = 0;
  for (std::size_t step = 0; step < shown.size(); ++step) {
    const core::Step& planned = channel.setup.sequence[step];
    const double from = begin + planned.settle.base(), to = from + planned.hold.base();
    begin = to;
    core::Measured measured;
    measured.mean = core::Reading(shown[step]);
    measured.uncertainty = core::Reading(channel.noise * std::abs(truth.setting * truth.unit));
    if (timed) measured.begin = core::Duration(from), measured.end = core::Duration(to);
    check.readings.emplace_back(measured);
  }
  return check;
}

/// What the instrument shows with all shunts open: little after balancing, else the bridge's own unbalance.
void drawZero(const DrawnChannel& channel, bool balanced, Dice& dice, Truth& truth) {
  truth.balanced = balanced || dice.chance(0.7);
  truth.offset = 3 * channel.perMicrostrain * dice.normal();
}

std::vector<double> changesOf(const DrawnChannel& channel, const Planting& planting) {
  Truth truth = nominalTruth(channel.setup);
  const auto without = readingsOf(channel.setup, truth, {}, 0);
  plant(planting, channel, truth);
  auto changes = readingsOf(channel.setup, truth, {}, 0);
  for (std::size_t k = 0; k < changes.size(); ++k) changes[k] -= without[k];
  return changes;
}

std::optional<SimulatedCheck> tryFault(const DrawnChannel& drawn, core::CauseKind kind, Dice& dice) {
  DrawnChannel channel = drawn;
  const auto planting = drawFault(kind, channel, dice);
  if (!planting) return std::nullopt;
  Truth truth = drawnTruth(channel.setup, dice);
  drawZero(channel, kind == core::CauseKind::Clipping, dice, truth);
  plant(*planting, channel, truth);
  SimulatedCheck result{channel, checkBy(channel, truth, dice), planting->fault, 0,
                        changesOf(channel, *planting)};
  result.effect = measureOf(channel.setup, result.check).length(vectorOf(result.changes));
  if (!(result.effect >= leastEffect)) return std::nullopt;
  return result;
}

/// A stream of random numbers for each check of each kind.
std::uint64_t streamOf(std::uint64_t number, std::uint64_t kind) { return number * 64 + kind; }

}  // namespace

SimulatedCheck faultyCheck(std::uint64_t seed, std::uint64_t number, core::CauseKind kind) {
  Dice dice(seed, streamOf(number, 1 + static_cast<std::uint64_t>(kind)));
  // Every kind is found within some tens of channels; a size is drawn anew before the channel is.
  while (true) {
    const DrawnChannel channel = drawChannel(dice);
    for (int attempt = 0; attempt < 20; ++attempt)
      if (auto result = tryFault(channel, kind, dice)) return *std::move(result);
  }
}

SimulatedCheck healthyCheck(std::uint64_t seed, std::uint64_t number) {
  Dice dice(seed, streamOf(number, 0));
  SimulatedCheck result;
  result.channel = drawChannel(dice);
  Truth truth = drawnTruth(result.channel.setup, dice);
  drawZero(result.channel, false, dice, truth);
  result.check = checkBy(result.channel, truth, dice);
  return result;
}

double separation(const SimulatedCheck& simulated, const core::Fault& told) {
  const DrawnChannel& channel = simulated.channel;
  const Measure measure = measureOf(channel.setup, simulated.check);
  const double zero = simulated.check.readings.front()->mean.base();
  const auto planted = vectorOf(simulated.changes);
  const auto left = [&](double size) -> Measure::Vector {
    core::Fault fault = told;
    fault.size = size;
    return planted - vectorOf(changesOf(channel, plantingOf(fault, channel, zero)));
  };
  double size = told.size, best = measure.length(left(size));
  // Gauss and Newton: changes are nearly linear in the size of most faults, and the told one is near.
  for (int round = 0; round < 8 && core::hasFreeSize(told.kind); ++round) {
    const double by = 1e-4 * size;
    const Measure::Vector now = left(size), slope = (left(size + by) - now) / by;
    const long double steepness = measure.product(slope, slope);
    if (!(steepness > 0)) break;
    size -= static_cast<double>(measure.product(slope, now) / steepness);
    const double next = measure.length(left(size));
    if (!std::isfinite(next)) break;
    best = std::min(best, next);
  }
  return best;
}

}  // namespace diagnosis
