// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/diagnosis/simulated_change.h"

#include <cmath>

#include "core/compare/change_cause.h"
#include "tests/diagnosis/plant.h"

namespace diagnosis {
namespace {

core::Check checkBy(const DrawnChannel& channel, const Truth& truth, const char* name, Dice& dice) {
  std::vector<double> noise;
  for (std::size_t step = 0; step < channel.setup.sequence.size(); ++step)
    noise.push_back(channel.noise * truth.setting * dice.normal());
  core::Check check;
  check.name = name;
  for (const double shown : readingsOf(channel.setup, truth, noise, channel.digit))
    check.readings.emplace_back(core::Measured{
        core::Reading(shown), core::Reading(channel.noise * std::abs(truth.setting * truth.unit)), {}, {}});
  return check;
}

SimulatedChange pairOf(const DrawnChannel& drawn, const std::optional<core::Fault>& fault, bool zeroedAnew,
                       Dice& dice) {
  Truth before = drawnTruth(drawn.setup, dice);
  before.balanced = zeroedAnew;
  before.offset = 3 * drawn.perMicrostrain * dice.normal();
  Truth after = before;
  after.offset += (zeroedAnew ? 3 : 1) * drawn.perMicrostrain * dice.normal();
  if (fault) plant(plantingOf(*fault, drawn, after.offset), drawn, after);
  SimulatedChange change{{}, fault, drawn};
  change.channel.name = "TP-01";
  change.channel.setup = drawn.setup;
  change.channel.checks.push_back(checkBy(drawn, before, "pre-test", dice));
  change.channel.checks.push_back(checkBy(drawn, after, "post-test", dice));
  return change;
}

}  // namespace

SimulatedChange changeOf(std::uint64_t seed, std::uint64_t number, core::CauseKind kind) {
  const SimulatedCheck one = faultyCheck(seed, number, kind);
  Dice dice(seed + 1000, number * 64 + static_cast<std::uint64_t>(kind) + 1);
  // Where readings stop was drawn for a bridge that was balanced.
  const bool zeroedAnew = number % 2 == 0 || kind == core::CauseKind::Clipping;
  return pairOf(one.channel, one.planted, zeroedAnew, dice);
}

SimulatedChange unchanged(std::uint64_t seed, std::uint64_t number) {
  const SimulatedCheck one = healthyCheck(seed, number);
  Dice dice(seed + 1000, number * 64);
  return pairOf(one.channel, std::nullopt, number % 2 == 0, dice);
}

ChangeOutcome outcomeOf(const SimulatedChange& change) {
  const core::ChannelEvaluation evaluation = core::evaluate(change.channel);
  const core::Diagnosis told = core::changeCauseOf(change.channel, evaluation, 0, 1).diagnosis;
  ChangeOutcome outcome;
  // That the zero alone moved is told beside, and is so in some pairs of which nothing else changed.
  const auto isZeroAlone = [](const core::Fault& fault) {
    return fault.kind == core::CauseKind::ZeroShift && fault.index == 0;
  };
  const bool zeroFirst = !told.explanations.empty() && isZeroAlone(told.explanations.front().fault);
  outcome.declared = told.result != core::DiagnosisResult::Healthy &&
                     told.result != core::DiagnosisResult::NotPossible && (change.planted || !zeroFirst);
  for (std::size_t k = 0; outcome.declared && change.planted && k < told.explanations.size(); ++k) {
    const core::Fault& fault = told.explanations[k].fault;
    if (fault.kind != change.planted->kind || isZeroAlone(fault)) continue;
    outcome.first = k == 0 || k < told.tied;
    outcome.firstTwo = k < 2 || k < told.tied;
    break;
  }
  return outcome;
}

}  // namespace diagnosis
