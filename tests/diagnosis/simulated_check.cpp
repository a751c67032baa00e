// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/diagnosis/simulated_check.h"

#include <Eigen/Cholesky>
#include <cmath>
#include <vector>

#include "tests/diagnosis/plant.h"

namespace diagnosis {
namespace {

/// Length of `changes` with an offset left free, over the covariance of `points`.
double effectOf(const std::vector<double>& changes, const core::CheckPoints& points) {
  using Matrix = Eigen::Matrix<long double, Eigen::Dynamic, Eigen::Dynamic>;
  using Vector = Eigen::Matrix<long double, Eigen::Dynamic, 1>;
  const auto n = static_cast<Eigen::Index>(points.size());
  if (points.size() != changes.size() || points.covariance.size() != changes.size() * changes.size())
    return 0;
  Matrix covariance(n, n);
  Vector change(n);
  for (Eigen::Index i = 0; i < n; ++i) {
    change(i) = changes[static_cast<std::size_t>(i)];
    for (Eigen::Index j = 0; j < n; ++j)
      covariance(i, j) = points.covariance[static_cast<std::size_t>(i * n + j)];
  }
  const Eigen::LLT<Matrix> factor(covariance);
  const Vector ones = Vector::Ones(n), weighed = factor.solve(ones);
  change.array() -= weighed.dot(change) / weighed.dot(ones);
  return static_cast<double>(std::sqrt(change.dot(factor.solve(change))));
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
  SimulatedCheck result{channel, checkBy(channel, truth, dice), planting->fault, 0};
  const auto prediction = core::predict(channel.setup);
  const auto budget = core::budgetOf(channel.setup, prediction);
  const auto points = core::checkPoints(channel.setup, prediction, budget, result.check);
  result.effect = effectOf(changesOf(channel, *planting), points);
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

}  // namespace diagnosis
