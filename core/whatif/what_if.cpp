// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/whatif/what_if.h"

#include <algorithm>
#include <cmath>

#include "core/circuit/indication.h"
#include "core/units/shown.h"

namespace core {
namespace {

/// Changes of output below this are rounding, as in a prediction.
constexpr double outputRounding = 1e-14;

/// The outputs of one setup: with all shunts open, then step by step.
struct Outputs {
  Result<Output> zero = Output{};
  std::vector<Result<Output>> steps;
  std::vector<std::optional<Stimulus>> simulated;
  std::optional<double> slope;  ///< of the output by the article's strain or load, shunts open
};

/// Closes the shunts of `step`. A shunt whose ends a fault has joined does nothing: when `faulty` that is no
/// mistake of the plan.
Result<void> closeStep(BridgeCircuit& circuit, const Setup& setup, std::size_t step, bool faulty) {
  circuit.openAll();
  for (const std::size_t shunt : setup.sequence[step].closed) {
    const Shunt& one = setup.shunts[shunt];
    const auto closed = circuit.close(shunt);
    const double ohm = resistanceOf(one).base();
    const bool usable =
        std::isfinite(ohm) && ohm > 0 && hasNode(setup.bridge, one.a) && hasNode(setup.bridge, one.b);
    if (!closed && !(faulty && usable)) return closed;
  }
  return {};
}

Outputs outputsOf(const Setup& setup, bool faulty) {
  Outputs outputs;
  auto circuit = BridgeCircuit::make(setup.bridge, setup.instrument, shuntBranches(setup));
  outputs.zero = circuit ? circuit->solveOutput() : Result<Output>(circuit.error());
  if (outputs.zero) outputs.slope = circuit->outputSlope();
  for (std::size_t step = 0; step < setup.sequence.size(); ++step) {
    outputs.simulated.emplace_back();
    if (!circuit) {
      outputs.steps.emplace_back(circuit.error());
      continue;
    }
    circuit->setStimulus(0);
    const auto closed = closeStep(*circuit, setup, step, faulty);
    outputs.steps.push_back(closed ? circuit->solveOutput() : Result<Output>(closed.error()));
    if (!outputs.steps.back() || !outputs.zero) continue;
    if (setup.sequence[step].closed.empty())
      outputs.simulated.back() = 0.0;
    else if (const auto simulated = circuit->stimulusFor(*outputs.steps.back()))
      outputs.simulated.back() = *simulated;
  }
  return outputs;
}

/// None where the article does nothing without: a full bridge gives some 1 V/V a unit of strain, a shorted
/// one rounding.
std::optional<double> gainOf(const Outputs& without, const Outputs& with) {
  if (!without.slope || !with.slope || !(std::abs(*without.slope) > 1e-9)) return std::nullopt;
  const double gain = *with.slope / *without.slope;
  return std::isfinite(gain) ? std::optional(gain) : std::nullopt;
}

Polarity polarityOf(double change) {
  if (std::abs(change) < outputRounding) return Polarity::None;
  return change > 0 ? Polarity::Positive : Polarity::Negative;
}

Result<StepReading> readingAt(const Setup& setup, const Result<Output>& now, const Result<Output>& zero,
                              std::optional<Stimulus> simulated) {
  if (!now) return now.error();
  if (!zero) return zero.error();
  const auto indication = indicationOf(setup.bridge, setup.instrument, *now, *zero);
  if (!indication) return indication.error();
  const double change = (*now - *zero).base();
  const auto& range = setup.instrument.range;
  StepReading reading{*now, indication->value, polarityOf(change), simulated, false};
  // Balanced in hardware the amplifier sees the change, else the bridge as it is.
  if (range) reading.beyondRange = std::max(std::abs(now->base()), std::abs(change)) > range->base();
  return reading;
}

double greatestWithout(const WhatIf& whatIf) {
  double greatest = 0;
  for (const WhatIfStep& step : whatIf.steps)
    if (step.without) greatest = std::max(greatest, std::abs(step.without->reading.base()));
  return greatest;
}

/// Whether anybody would see `value` beside the readings: less than a millionth of the greatest is neither
/// shown by an instrument nor held by a bridge. Common practice, no source.
bool isSeen(const WhatIf& whatIf, double value) {
  return withoutRounding(whatIf, value) != 0 && std::abs(value) > 1e-6 * greatestWithout(whatIf);
}

}  // namespace

Result<WhatIf> whatIf(const Setup& setup, std::span<const Alteration> alterations) {
  auto changed = altered(setup, alterations);
  if (!changed) return changed.error();
  const Outputs without = outputsOf(setup, false), with = outputsOf(*changed, true);
  WhatIf result{setup, *std::move(changed), without.zero, with.zero};
  result.tried = alterations.size();
  result.articleGain = gainOf(without, with);
  for (std::size_t step = 0; step < setup.sequence.size(); ++step)
    result.steps.push_back({readingAt(setup, without.steps[step], without.zero, without.simulated[step]),
                            readingAt(result.setup, with.steps[step], with.zero, with.simulated[step]),
                            readingAt(result.setup, with.steps[step], without.zero, with.simulated[step])});
  if (const auto jump = readingAt(result.setup, with.zero, without.zero, {})) result.zeroJump = jump->reading;
  return result;
}

int readingPlaces(const WhatIf& whatIf) {
  double without = 0, with = 0;
  for (const WhatIfStep& step : whatIf.steps) {
    if (step.without) without = std::max(without, std::abs(step.without->reading.base()));
    for (const Zeroed zeroed : {Zeroed::After, Zeroed::Before})
      if (step.with(zeroed)) with = std::max(with, std::abs(step.with(zeroed)->reading.base()));
  }
  const double largest = without > 0 ? without : with;
  if (!(largest > 0) || !std::isfinite(largest)) return 1;
  return static_cast<int>(std::clamp(4 - std::floor(std::log10(largest)), 0.0, 9.0));
}

bool sameReading(const WhatIf& whatIf, Reading a, Reading b) {
  return withoutRounding(whatIf, (a - b).base()) == 0;
}

double withoutRounding(const WhatIf& whatIf, double value) {
  const double rounding = std::abs(readingOf(whatIf.setup.instrument, Output(outputRounding)).base());
  return std::abs(value) <= rounding ? 0 : value;
}

ShownDifference shownDifference(const WhatIf& whatIf, double value) {
  const double shown = isSeen(whatIf, value) ? value : 0;
  return {shown, std::max(readingPlaces(whatIf), std::min(placesOf(shown), 9))};
}

std::optional<double> growthPercent(const WhatIf& whatIf, const WhatIfStep& step, Zeroed zeroed) {
  const auto& with = step.with(zeroed);
  if (!step.without || !with || !isSeen(whatIf, step.without->reading.base())) return std::nullopt;
  return 100 * withoutRounding(whatIf, (with->reading - step.without->reading).base()) /
         step.without->reading.base();
}

std::optional<ShownDifference> shownGrowth(const WhatIf& whatIf, const WhatIfStep& step, Zeroed zeroed) {
  auto percent = growthPercent(whatIf, step, zeroed);
  if (!percent) return std::nullopt;
  if (!isSeen(whatIf, (step.with(zeroed)->reading - step.without->reading).base())) percent = 0;
  return ShownDifference{*percent, std::max(2, std::min(placesOf(*percent), 9))};
}

ArticleSign articleSign(const WhatIfStep& step) {
  // The zero that was taken has no part in it.
  const auto &without = step.without, &with = step.zeroedAfter;
  if (!without || !with || !without->simulated || !with->simulated) return ArticleSign::WithReading;
  const int readings = static_cast<int>(without->polarity) * static_cast<int>(with->polarity);
  const double strains = *without->simulated * *with->simulated;
  if (readings == 0 || strains >= 0) return ArticleSign::WithReading;
  return readings > 0 ? ArticleSign::Alone : ArticleSign::Kept;
}

}  // namespace core
