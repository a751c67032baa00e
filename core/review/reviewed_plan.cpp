// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/review/reviewed_plan.h"

#include <algorithm>
#include <cmath>

#include "core/document/edits.h"
#include "core/units/language.h"
#include "core/units/notation.h"
#include "core/units/text.h"

namespace core {

std::vector<ReviewedLevel> levelsOf(const Setup& setup, const SetupPrediction& prediction,
                                    const Budget* budget) {
  std::vector<ReviewedLevel> levels;
  for (std::size_t step = 0; step < setup.sequence.size(); ++step) {
    const auto& closed = setup.sequence[step].closed;
    if (closed.empty() || !prediction.steps[step]) continue;
    const auto same =
        std::find_if(levels.begin(), levels.end(), [&](const auto& level) { return level.closed == closed; });
    if (same != levels.end()) {
      ++same->steps;
      continue;
    }
    ReviewedLevel level{closed, step, 1, *prediction.steps[step], {}};
    if (budget)
      if (const auto& uncertainty = budget->of(Scope::Chain).steps[step])
        level.expanded = uncertainty->expanded;
    levels.push_back(std::move(level));
  }
  return levels;
}

double magnitude(const ReviewedLevel& level) { return std::abs(level.prediction.reading.base()); }

bool isBelowUncertainty(const ReviewedLevel& level) {
  if (level.prediction.polarity == Polarity::None) return true;
  return level.expanded && magnitude(level) <= *level.expanded;
}

std::vector<const ReviewedLevel*> sideOf(const std::vector<ReviewedLevel>& levels, Polarity polarity) {
  std::vector<const ReviewedLevel*> side;
  for (const ReviewedLevel& level : levels)
    if (level.prediction.polarity == polarity && !isBelowUncertainty(level)) side.push_back(&level);
  std::stable_sort(side.begin(), side.end(),
                   [](const auto* a, const auto* b) { return magnitude(*a) < magnitude(*b); });
  return side;
}

bool isUsed(const Setup& setup, std::size_t shunt) {
  return std::any_of(setup.sequence.begin(), setup.sequence.end(), [&](const Step& step) {
    return std::find(step.closed.begin(), step.closed.end(), shunt) != step.closed.end();
  });
}

double limitAt(const Limits& limits, double reading) {
  return std::max(limits.relative * std::abs(reading), limits.least.base());
}

ReviewedPlan reviewedPlan(const Channel& channel, const ChannelEvaluation& evaluation, const Stock& stock,
                          Date today) {
  return {channel, evaluation, stock, today,
          levelsOf(channel.setup, evaluation.prediction, &evaluation.budget)};
}

std::optional<Power> ratingOf(const Setup& setup, std::size_t shunt) {
  std::optional<Power> rating;
  for (const Shunt& one : setup.shunts) {
    if (!one.part.rating || resistorName(one) != resistorName(setup.shunts[shunt])) continue;
    if (!rating || *one.part.rating < *rating) rating = one.part.rating;
  }
  return rating;
}

double shuntPower_W(const BridgeCircuit& circuit, const Setup& setup, std::size_t shunt) {
  const auto& current = setup.instrument.current;
  const double excitation_V =
      current ? current->supplied.base() / circuit.inputConductance() : setup.instrument.excitation.base();
  const Shunt& closed = setup.shunts[shunt];
  const double across_V = excitation_V * circuit.voltage(circuit.network().firstShunt + shunt);
  const double current_A = across_V / resistanceOf(closed).base();
  return current_A * current_A * closed.resistance.base();
}

std::string readingText(const Setup& setup, double reading, int digits) {
  return shown(formatNumber(reading, digits)) + " " + readingUnitText(setup.instrument);
}

std::string percentText(double share) { return shown(formatNumber(100 * share, 2)) + " %"; }

std::string secondsText(double seconds) { return shown(formatNumber(seconds, 4)) + " s"; }

std::string stepText(const Setup& setup, std::size_t step) {
  const std::string& label = setup.sequence[step].label;
  const std::string number = say("step {1}", {std::to_string(step + 1)});
  return label.empty() ? number : number + " " + inQuotes(label);
}

std::string shuntText(const Setup& setup, std::size_t shunt) {
  return say("shunt {1}", {inQuotes(setup.shunts[shunt].name)});
}

std::string joinedNames(const Setup& setup, const std::vector<std::size_t>& shunts) {
  std::string names;
  for (const std::size_t shunt : shunts) names += (names.empty() ? "" : " + ") + setup.shunts[shunt].name;
  return names;
}

Channel withoutLevel(Channel channel, const std::vector<std::size_t>& closed) {
  const auto& sequence = channel.setup.sequence;
  for (std::size_t step = sequence.size(); step-- > 0;) {
    // cppcheck-suppress containerOutOfBounds  ; the second question comes after a step was removed
    if (sequence[step].closed != closed) continue;
    channel = withStepRemoved(std::move(channel), step);
    if (step > 0 && step < sequence.size() && sequence[step - 1].closed == sequence[step].closed)
      channel = withStepRemoved(std::move(channel), step);
  }
  return channel;
}

Mend withoutLevelMend(const ReviewedLevel& level, const Setup& setup) {
  const std::string what = level.steps == 1
                               ? stepText(setup, level.step)
                               : say("the {1} with it", {sayCount(level.steps, "{n} step", "{n} steps")});
  return {say("Take {1} out", {what}),
          [closed = level.closed](const Channel& channel) { return withoutLevel(channel, closed); }};
}

}  // namespace core
