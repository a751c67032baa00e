// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/circuit/indication.h"
#include "core/document/edits.h"
#include "core/review/arm_place.h"
#include "core/review/reviewed_plan.h"
#include "core/review/stated_polarity.h"
#include "core/units/language.h"
#include "core/units/text.h"

namespace core {
namespace {

/// Times the median spacing: twice, and a little, since levels that double each time are usual. Common
/// practice, no source.
constexpr double widestGap = 2.1;
constexpr double counterpart =
    0.02;                       ///< of a level, where the limits are narrower; common practice, no source
constexpr double nearby = 0.1;  ///< a counterpart within this is one of other leads or another resistor
constexpr std::size_t mostCombined = 16;  ///< shunts of a side whose combinations are tried

using Side = std::vector<const ReviewedLevel*>;

Polarity otherOf(Polarity polarity) {
  return polarity == Polarity::Positive ? Polarity::Negative : Polarity::Positive;
}

// Levels of one side as magnitudes, zero first, rising.
using Ladder = std::vector<double>;

Ladder ladderOf(const Side& side) {
  Ladder ladder{0};
  for (const ReviewedLevel* level : side) ladder.push_back(magnitude(*level));
  return ladder;
}

double medianSpacing(const Ladder& ladder) {
  std::vector<double> spacings;
  for (std::size_t k = 1; k < ladder.size(); ++k) spacings.push_back(ladder[k] - ladder[k - 1]);
  std::sort(spacings.begin(), spacings.end());
  const std::size_t half = spacings.size() / 2;
  return spacings.size() % 2 == 1 ? spacings[half] : (spacings[half - 1] + spacings[half]) / 2;
}

/// Upper ends of the gaps, as indices of `ladder`. Two spacings have no middle one to compare with.
std::vector<std::size_t> gapsOf(const Ladder& ladder) {
  std::vector<std::size_t> gaps;
  if (ladder.size() < 4) return gaps;
  const double most = widestGap * medianSpacing(ladder);
  for (std::size_t k = 1; k < ladder.size(); ++k)
    if (ladder[k] - ladder[k - 1] > most) gaps.push_back(k);
  return gaps;
}

/// Shunts that make a reading of one side, each alone.
struct SideShunts {
  BridgeCircuit circuit;
  std::vector<std::size_t> shunts;
  std::vector<double> readings;  ///< of `shunts`, magnitudes
};

std::optional<double> readingOfClosed(BridgeCircuit& circuit, const Setup& setup, Output zero,
                                      const std::vector<std::size_t>& closed) {
  circuit.openAll();
  for (const std::size_t shunt : closed)
    if (!circuit.close(shunt)) return std::nullopt;
  const auto output = circuit.solveOutput();
  if (!output) return std::nullopt;
  const auto indication = indicationOf(setup.bridge, setup.instrument, *output, zero);
  if (!indication) return std::nullopt;
  return indication->value.base();
}

bool needsOneTwice(const Setup& setup, const std::vector<std::size_t>& closed) {
  for (std::size_t a = 0; a < closed.size(); ++a)
    for (std::size_t b = 0; b < a; ++b)
      if (resistorName(setup.shunts[closed[a]]) == resistorName(setup.shunts[closed[b]])) return true;
  return false;
}

/// Whether the instrument takes the output last solved, balanced or not, and no closed resistor is
/// overloaded.
bool isSafe(BridgeCircuit& circuit, const Setup& setup, Output zero, const std::vector<std::size_t>& closed) {
  const auto output = circuit.solveOutput();
  if (!output || needsOneTwice(setup, closed)) return false;
  const double most = setup.instrument.range ? setup.instrument.range->base() : HUGE_VAL;
  if (std::abs(output->base()) > most || std::abs((*output - zero).base()) > most) return false;
  return std::none_of(closed.begin(), closed.end(), [&](std::size_t shunt) {
    const auto rating = ratingOf(setup, shunt);
    return rating && shuntPower_W(circuit, setup, shunt) > rating->base();
  });
}

std::optional<SideShunts> shuntsOfSide(const ReviewedPlan& plan, Polarity polarity) {
  const Setup& setup = plan.setup();
  auto circuit = BridgeCircuit::make(setup.bridge, setup.instrument, shuntBranches(setup));
  if (!circuit) return std::nullopt;
  SideShunts side{*std::move(circuit), {}, {}};
  const double sign = polarity == Polarity::Positive ? 1 : -1;
  for (std::size_t shunt = 0; shunt < setup.shunts.size() && side.shunts.size() < mostCombined; ++shunt) {
    const auto reading = readingOfClosed(side.circuit, setup, *plan.evaluation.prediction.zero, {shunt});
    if (!reading || !(sign * *reading > 0)) continue;
    side.shunts.push_back(shunt);
    side.readings.push_back(sign * *reading);
  }
  return side;
}

/// Shunts that, closed together, come somewhere near a wanted reading.
struct Combination {
  std::vector<std::size_t> closed;
  double off = 0;  ///< from what is wanted, by the sum of single readings
};

/// One to three of `side` whose readings add up to between `from` and `to`, nearest to the middle first.
std::vector<Combination> combinationsWithin(const ReviewedPlan& plan, const SideShunts& side, double from,
                                            double to) {
  std::vector<Combination> found;
  const std::size_t count = side.shunts.size();
  const auto sameResistor = [&](std::size_t a, std::size_t b) {
    return resistorName(plan.setup().shunts[side.shunts[a]]) ==
           resistorName(plan.setup().shunts[side.shunts[b]]);
  };
  const auto consider = [&](std::vector<std::size_t> picked, double sum) {
    if (sum < from || sum > to) return;
    for (std::size_t& pick : picked) pick = side.shunts[pick];
    found.push_back({std::move(picked), std::abs(sum - (from + to) / 2)});
  };
  for (std::size_t a = 0; a < count; ++a) {
    consider({a}, side.readings[a]);
    for (std::size_t b = a + 1; b < count; ++b) {
      if (sameResistor(a, b)) continue;
      consider({a, b}, side.readings[a] + side.readings[b]);
      for (std::size_t c = b + 1; c < count; ++c)
        if (!sameResistor(a, c) && !sameResistor(b, c))
          consider({a, b, c}, side.readings[a] + side.readings[b] + side.readings[c]);
    }
  }
  std::stable_sort(found.begin(), found.end(), [](const auto& a, const auto& b) {
    return a.closed.size() != b.closed.size() ? a.closed.size() < b.closed.size() : a.off < b.off;
  });
  return found;
}

/// `channel` with a level put between two others, at whichever side of the upper one the lower one lies.
Channel withLevelBetween(Channel channel, const std::vector<std::size_t>& lower, std::size_t upperStep,
                         const std::vector<std::size_t>& closed, const std::string& label) {
  const auto& sequence = channel.setup.sequence;
  const Step& upper = sequence[upperStep];
  const bool lowerBefore = upperStep > 0 && sequence[upperStep - 1].closed == lower;
  const bool lowerAfter = upperStep + 1 < sequence.size() && sequence[upperStep + 1].closed == lower;
  const std::size_t at = lowerAfter && !lowerBefore ? upperStep + 1 : upperStep;
  Step step{label, closed, upper.hold, upper.settle};
  return withStepInserted(std::move(channel), at, std::move(step));
}

/// The mend that fills the gap below `side[index]`, if any combination of present shunts does.
std::vector<Mend> gapMends(const ReviewedPlan& plan, const Side& side, std::size_t index,
                           SideShunts& shunts) {
  const Ladder ladder = ladderOf(side);
  const std::size_t gaps = gapsOf(ladder).size();
  const double low = ladder[index], high = ladder[index + 1], quarter = (high - low) / 4;
  for (const Combination& one : combinationsWithin(plan, shunts, low + quarter, high - quarter)) {
    const auto reading =
        readingOfClosed(shunts.circuit, plan.setup(), *plan.evaluation.prediction.zero, one.closed);
    if (!reading || std::abs(*reading) <= low || std::abs(*reading) >= high) continue;
    if (!isSafe(shunts.circuit, plan.setup(), *plan.evaluation.prediction.zero, one.closed)) continue;
    Ladder filled = ladder;
    filled.insert(filled.begin() + static_cast<std::ptrdiff_t>(index) + 1, std::abs(*reading));
    if (gapsOf(filled).size() >= gaps) continue;
    const auto lower = index == 0 ? std::vector<std::size_t>{} : side[index - 1]->closed;
    const std::string names = joinedNames(plan.setup(), one.closed);
    // A name that says the wrong polarity is a finding of its own; the label need not repeat it.
    const std::string label =
        withPolarityTurned(names, otherOf(polarityToSay(names, side[index]->prediction)));
    return {{say("Insert {1} ({2})", {names, readingText(plan.setup(), *reading)}),
             [lower, upper = side[index]->step, closed = one.closed, label](const Channel& channel) {
               return withLevelBetween(channel, lower, upper, closed, label);
             }}};
  }
  return {};
}

// Polarities.

/// Levels of `side` that none of `other` matches, and whether one is near all the same.
struct Unmatched {
  Side levels;
  bool allNear = true;
};

Unmatched unmatchedOf(const Setup& setup, const Side& side, const Side& other) {
  Unmatched unmatched;
  for (const ReviewedLevel* level : side) {
    const double wanted = magnitude(*level);
    double off = HUGE_VAL;
    for (const ReviewedLevel* one : other) off = std::min(off, std::abs(magnitude(*one) - wanted));
    if (off <= std::max(limitAt(setup.limits, wanted), counterpart * wanted)) continue;
    unmatched.levels.push_back(level);
    unmatched.allNear = unmatched.allNear && off <= nearby * wanted;
  }
  return unmatched;
}

/// "R1 on arm 1" of arm 1 on arm 2: "R1 on arm 2".
std::string nameOnArm(const std::string& name, Polarity now, std::size_t from, std::size_t to) {
  std::string turned = withPolarityTurned(name, now);
  const std::string was = say("arm {1}", {std::to_string(from + 1)}),
                    is = say("arm {1}", {std::to_string(to + 1)});
  if (const auto at = turned.find(was); at != std::string::npos) return turned.replace(at, was.size(), is);
  return turned == name ? say("{1} on {2}", {name, is}) : turned;
}

/// The shunt on the neighbouring arm that is the same resistor as `shunt`; added where there is none.
std::optional<std::size_t> counterpartOf(Channel& channel, std::size_t shunt, const Prediction& now) {
  const Setup& setup = channel.setup;
  const Shunt& present = setup.shunts[shunt];
  auto moved = onNeighbour(setup.bridge, present);
  if (!moved) return std::nullopt;
  const std::size_t from = placeOf(setup.bridge, present)->arm, to = neighbourOf(from);
  for (std::size_t k = 0; k < setup.shunts.size(); ++k) {
    const Shunt& one = setup.shunts[k];
    const auto place = placeOf(setup.bridge, one);
    const bool same =
        present.part.id.empty() ? one.resistance == present.resistance : one.part.id == present.part.id;
    if (place && place->arm == to && same) return k;
  }
  moved->name = nameOnArm(present.name, polarityToSay(present.name, now), from, to);
  moved->jumpers.clear();
  moved->part.id = resistorName(present);  // one resistor at two places
  const auto stated = setup.uncertainties.stated;
  channel = withShuntAdded(std::move(channel), *std::move(moved));
  const std::size_t added = channel.setup.shunts.size() - 1;
  for (const InputKind kind : {InputKind::Shunt, InputKind::ShuntWires, InputKind::ShuntContact})
    if (const auto found = stated.find({kind, shunt}); found != stated.end())
      channel = withUncertainty(std::move(channel), {kind, added}, found->second);
  return added;
}

/// The counterpart of a step: same resistors on the neighbouring arms.
std::optional<Step> counterpartStep(Channel& channel, const ReviewedLevel& level) {
  Step step = channel.setup.sequence[level.step];
  for (std::size_t& shunt : step.closed) {
    const auto other = counterpartOf(channel, shunt, level.prediction);
    if (!other) return std::nullopt;
    shunt = *other;
  }
  std::sort(step.closed.begin(), step.closed.end());
  const auto turned = [&](const std::string& text) {
    return withPolarityTurned(text, polarityToSay(text, level.prediction));
  };
  const std::string label = turned(step.label);
  step.label = label == step.label ? turned(joinedNames(channel.setup, step.closed)) : label;
  return step;
}

/// A level as the place of others is found by it.
struct Rung {
  std::vector<std::size_t> closed;
  Polarity polarity = Polarity::None;
  double reading = 0;  ///< magnitude
};

std::vector<Rung> rungsOf(const std::vector<ReviewedLevel>& levels) {
  std::vector<Rung> rungs;
  for (const ReviewedLevel& level : levels)
    rungs.push_back({level.closed, level.prediction.polarity, magnitude(level)});
  return rungs;
}

/// Where a new level of a side belongs: before the first step that is greater, else after the last of that
/// side; none while the side is empty.
std::optional<std::size_t> placeIn(const std::vector<Step>& sequence, const std::vector<Rung>& rungs,
                                   const Rung& wanted) {
  std::optional<std::size_t> after;
  for (std::size_t step = 0; step < sequence.size(); ++step) {
    const auto rung =
        std::find_if(rungs.begin(), rungs.end(), [&](auto& r) { return r.closed == sequence[step].closed; });
    if (rung == rungs.end() || rung->polarity != wanted.polarity) continue;
    if (rung->reading > wanted.reading) return step;
    after = step + 1;
  }
  return after;
}

/// `channel` with a step at the end, between zeros.
Channel withStepAtEnd(Channel channel, Step step) {
  const Step zero{"zero", {}, step.hold, step.settle};
  if (!channel.setup.sequence.back().closed.empty())
    channel = withStepInserted(std::move(channel), channel.setup.sequence.size(), zero);
  channel = withStepInserted(std::move(channel), channel.setup.sequence.size(), std::move(step));
  return withStepInserted(std::move(channel), channel.setup.sequence.size(), zero);
}

/// What is closed for the counterpart of a level.
struct Counterpart {
  const ReviewedLevel* of;
  std::vector<std::size_t> closed;
};

/// `channel` with a counterpart for each of `missing`, rising in magnitude; empty `counterparts` when one
/// cannot be had. `rungs` are the levels that there are.
Channel withCounterparts(Channel channel, const std::vector<ReviewedLevel>& missing, std::vector<Rung> rungs,
                         std::vector<Counterpart>& counterparts) {
  counterparts.clear();
  for (const ReviewedLevel& level : missing) {
    auto step = counterpartStep(channel, level);
    if (!step) {
      counterparts.clear();
      return channel;
    }
    counterparts.push_back({&level, step->closed});
    rungs.push_back({step->closed, otherOf(level.prediction.polarity), magnitude(level)});
    const auto at = placeIn(channel.setup.sequence, {rungs.begin(), rungs.end() - 1}, rungs.back());
    if (at)
      channel = withStepInserted(std::move(channel), *at, *std::move(step));
    else
      channel = withStepAtEnd(std::move(channel), *std::move(step));
  }
  return channel;
}

/// Whether each counterpart reads what its level does, with the other sign, safely.
bool balances(const Setup& setup, Output zero, const std::vector<Counterpart>& counterparts) {
  auto circuit = BridgeCircuit::make(setup.bridge, setup.instrument, shuntBranches(setup));
  if (!circuit) return false;
  for (const Counterpart& one : counterparts) {
    const auto reading = readingOfClosed(*circuit, setup, zero, one.closed);
    if (!reading) return false;
    const double wanted = -one.of->prediction.reading.base();
    const double narrower = std::min(std::abs(wanted), std::abs(*reading));
    const double permitted = std::max(limitAt(setup.limits, narrower), counterpart * narrower);
    if (!(std::abs(*reading - wanted) <= permitted)) return false;
    if (!isSafe(*circuit, setup, zero, one.closed)) return false;
  }
  return true;
}

std::vector<Mend> balanceMends(const ReviewedPlan& plan, const Side& side) {
  std::vector<ReviewedLevel> missing;
  for (const ReviewedLevel* level : side) missing.push_back(*level);
  std::stable_sort(missing.begin(), missing.end(),
                   [](const auto& a, const auto& b) { return magnitude(a) < magnitude(b); });
  const std::vector<Rung> rungs = rungsOf(plan.levels);
  std::vector<Counterpart> counterparts;
  const Channel channel = withCounterparts(plan.channel, missing, rungs, counterparts);
  if (counterparts.empty() || !balances(channel.setup, *plan.evaluation.prediction.zero, counterparts))
    return {};
  const std::size_t added = channel.setup.shunts.size() - plan.setup().shunts.size();
  const std::string steps = sayCount(missing.size(), "{n} step", "{n} steps");
  return {{added == 0 ? say("Insert {1}", {steps})
                      : say("Insert {1} and {2}", {steps, sayCount(added, "{n} shunt", "{n} shunts")}),
           [missing, rungs](const Channel& present) {
             std::vector<Counterpart> unused;
             return withCounterparts(present, missing, rungs, unused);
           }}};
}

std::string listed(const Setup& setup, const Side& levels) {
  constexpr std::size_t most = 4;
  std::string text;
  for (std::size_t k = 0; k < std::min(most, levels.size()); ++k)
    text += (k == 0 ? "" : ", ") + readingText(setup, levels[k]->prediction.reading.base());
  return levels.size() > most ? say("{1} and {2} more", {text, std::to_string(levels.size() - most)}) : text;
}

}  // namespace

void findGaps(const ReviewedPlan& plan, std::vector<Finding>& findings) {
  for (const Polarity polarity : {Polarity::Positive, Polarity::Negative}) {
    const Side side = sideOf(plan.levels, polarity);
    const Ladder ladder = ladderOf(side);
    std::optional<SideShunts> shunts;
    for (const std::size_t upper : gapsOf(ladder)) {
      if (!shunts) shunts = shuntsOfSide(plan, polarity);
      const double sign = polarity == Polarity::Positive ? 1 : -1;
      findings.push_back({FindingKind::Gap,
                          Severity::Note,
                          side[upper - 1]->step,
                          {},
                          say("Nothing lies between {1} and {2}; half of the levels are {3} or less apart.",
                              {readingText(plan.setup(), sign * ladder[upper - 1]),
                               readingText(plan.setup(), sign * ladder[upper]),
                               readingText(plan.setup(), medianSpacing(ladder), 3)}),
                          say("A line says little of where it has no points."),
                          shunts ? gapMends(plan, side, upper - 1, *shunts) : std::vector<Mend>{}});
    }
  }
}

void findUnbalanced(const ReviewedPlan& plan, std::vector<Finding>& findings) {
  const Setup& setup = plan.setup();
  const Side positive = sideOf(plan.levels, Polarity::Positive);
  const Side negative = sideOf(plan.levels, Polarity::Negative);
  const Unmatched up = unmatchedOf(setup, positive, negative), down = unmatchedOf(setup, negative, positive);
  Side missing = up.levels;
  for (const ReviewedLevel* level : down.levels) missing.push_back(level);
  if (missing.empty()) return;
  const bool oneSided = positive.empty() || negative.empty();
  const bool mild = oneSided || (up.allNear && down.allNear);
  const std::size_t first =
      (*std::min_element(missing.begin(), missing.end(), [](const auto* a, const auto* b) {
        return a->step < b->step;
      }))->step;
  const std::string what =
      oneSided ? say("All levels are {1}.", {polarityWord(missing.front()->prediction.polarity)})
               : say("Without a counterpart of the other sign within {1}: {2}.",
                     {percentText(std::max(counterpart, setup.limits.relative)), listed(setup, missing)});
  findings.push_back({FindingKind::UnbalancedPolarities,
                      mild ? Severity::Note : Severity::Warning,
                      first,
                      {},
                      what,
                      say("Levels of one sign do not tell whether the other sign reads right."),
                      balanceMends(plan, missing)});
}

}  // namespace core
