// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/document/edits.h"
#include "core/review/arm_place.h"
#include "core/review/reviewed_plan.h"
#include "core/units/language.h"
#include "core/units/text.h"

namespace core {
namespace {

Mend zeroMend(std::size_t at, const Step& neighbour) {
  return {say("Insert a zero step"),
          [at, hold = neighbour.hold, settle = neighbour.settle](const Channel& channel) {
            return withStepInserted(channel, at, {"zero", {}, hold, settle});
          }};
}

void addMissingZero(std::vector<Finding>& findings, Severity severity, std::size_t step, std::string what,
                    std::string why, std::vector<Mend> mends) {
  findings.push_back(
      {FindingKind::MissingZero, severity, step, {}, std::move(what), std::move(why), std::move(mends)});
}

Polarity polarityAt(const ReviewedPlan& plan, std::size_t step) {
  const auto& prediction = plan.evaluation.prediction.steps[step];
  return prediction ? prediction->polarity : Polarity::None;
}

/// Steps that follow one of the other side without a zero between.
std::vector<std::size_t> sideChanges(const ReviewedPlan& plan) {
  std::vector<std::size_t> changes;
  for (std::size_t step = 1; step < plan.setup().sequence.size(); ++step) {
    const Polarity before = polarityAt(plan, step - 1), now = polarityAt(plan, step);
    if (before != Polarity::None && now != Polarity::None && before != now) changes.push_back(step);
  }
  return changes;
}

/// Sides that change all the time are mixed on purpose, for drift to show as scatter.
bool isMixed(const ReviewedPlan& plan, std::size_t changes) {
  const auto& sequence = plan.setup().sequence;
  const auto closing =
      std::count_if(sequence.begin(), sequence.end(), [](const Step& step) { return !step.closed.empty(); });
  return changes > 2 && 3 * changes > static_cast<std::size_t>(closing);
}

/// Two steps that do the same one after the other.
void findRepeatedSteps(const ReviewedPlan& plan, std::vector<Finding>& findings) {
  const Setup& setup = plan.setup();
  for (std::size_t step = 1; step < setup.sequence.size(); ++step) {
    if (setup.sequence[step].closed != setup.sequence[step - 1].closed) continue;
    const std::string closed = setup.sequence[step].closed.empty()
                                   ? say("Like the step before it has all shunts open.")
                                   : say("It closes the same shunts as the step before.");
    findings.push_back(
        {FindingKind::Duplicate,
         Severity::Warning,
         step,
         {},
         closed,
         say("Nothing switches between the two, so that a recording shows one level for both."),
         {{say("Take {1} out", {stepText(setup, step)}),
           [step](const Channel& channel) { return withStepRemoved(channel, step); }}}});
  }
}

bool liesWhere(const Bridge& bridge, const Shunt& a, const Shunt& b) {
  const Node a1 = pointOf(bridge, a.a), a2 = pointOf(bridge, a.b), b1 = pointOf(bridge, b.a),
             b2 = pointOf(bridge, b.b);
  return (a1 == b1 && a2 == b2) || (a1 == b2 && a2 == b1);
}

bool isClosedTogether(const Setup& setup, std::size_t a, std::size_t b) {
  return std::any_of(setup.sequence.begin(), setup.sequence.end(), [&](const Step& step) {
    const auto closes = [&](std::size_t shunt) {
      return std::find(step.closed.begin(), step.closed.end(), shunt) != step.closed.end();
    };
    return closes(a) && closes(b);
  });
}

/// The same resistor for certain, or two without a name of their own that nothing tells apart.
bool isSameResistor(const Setup& setup, std::size_t a, std::size_t b) {
  const Shunt &one = setup.shunts[a], &other = setup.shunts[b];
  if (!one.part.id.empty() || !other.part.id.empty()) return one.part.id == other.part.id;
  return one.resistance == other.resistance && !isClosedTogether(setup, a, b);
}

/// `channel` with shunt `kept` closed wherever `gone` was, and `gone` no more.
Channel withMerged(Channel channel, std::size_t kept, std::size_t gone) {
  for (std::size_t step = 0; step < channel.setup.sequence.size(); ++step) {
    Step merged = channel.setup.sequence[step];
    const bool closes = std::find(merged.closed.begin(), merged.closed.end(), gone) != merged.closed.end();
    if (!closes) continue;
    merged.closed.push_back(kept);
    channel = withStep(std::move(channel), step, std::move(merged));
  }
  channel = withShuntRemoved(std::move(channel), gone);
  for (std::size_t step = channel.setup.sequence.size(); step-- > 1;)
    if (channel.setup.sequence[step].closed == channel.setup.sequence[step - 1].closed)
      channel = withStepRemoved(std::move(channel), step);
  return channel;
}

void findSameShunts(const ReviewedPlan& plan, std::vector<Finding>& findings) {
  const Setup& setup = plan.setup();
  for (std::size_t b = 1; b < setup.shunts.size(); ++b) {
    for (std::size_t a = 0; a < b; ++a) {
      if (!isSameResistor(setup, a, b) || !liesWhere(setup.bridge, setup.shunts[a], setup.shunts[b]))
        continue;
      const bool certain = !setup.shunts[b].part.id.empty();
      findings.push_back(
          {FindingKind::Duplicate,
           certain ? Severity::Warning : Severity::Note,
           {},
           b,
           say(certain ? sayLater("The {1} and the {2} are one resistor at the same place.")
                       : sayLater("The {1} and the {2} have the same resistance at the same place."),
               {shuntText(setup, a), shuntText(setup, b)}),
           say("Whoever changes one of them forgets the other."),
           {{say("Keep {1} alone", {inQuotes(setup.shunts[a].name)}),
             [a, b](const Channel& channel) { return withMerged(channel, a, b); }}}});
      break;
    }
  }
}

Mend openMend(const Setup& setup, const ReviewedLevel& level, std::size_t shunt) {
  return {say("Open {1} instead", {inQuotes(setup.shunts[shunt].name)}),
          [closed = level.closed, shunt](Channel channel) {
            for (Step& step : channel.setup.sequence)
              if (step.closed == closed) std::erase(step.closed, shunt);
            return channel;
          }};
}

/// One resistor cannot be switched to two places in one step.
void findResistorsAtTwoPlaces(const ReviewedPlan& plan, std::vector<Finding>& findings) {
  const Setup& setup = plan.setup();
  for (const ReviewedLevel& level : plan.levels) {
    const auto& closed = level.closed;
    for (std::size_t k = 1; k < closed.size(); ++k) {
      const Shunt& shunt = setup.shunts[closed[k]];
      const auto same = std::find_if(closed.begin(), closed.end(), [&](std::size_t other) {
        return resistorName(setup.shunts[other]) == resistorName(shunt);
      });
      if (*same == closed[k]) continue;
      findings.push_back(
          {FindingKind::Duplicate,
           Severity::Fault,
           level.step,
           closed[k],
           say("Resistor {1} is needed as {2} and as {3} at once.",
               {inQuotes(resistorName(shunt)), shuntText(setup, *same), shuntText(setup, closed[k])}),
           say("There is only one of it."),
           {withoutLevelMend(level, setup), openMend(setup, level, closed[k])}});
      break;
    }
  }
}

/// Standard uncertainty of the difference of two steps' expected readings; what they share cancels.
double uncertaintyOfDifference(const ScopeBudget& budget, std::size_t a, std::size_t b) {
  const std::size_t steps = budget.steps.size();
  const auto covariance = [&](std::size_t i, std::size_t j) { return budget.covariance[i * steps + j]; };
  return std::sqrt(std::max(0.0, covariance(a, a) + covariance(b, b) - 2 * covariance(a, b)));
}

/// Expanded uncertainty of the difference of two levels; none when one has no uncertainty.
std::optional<double> expandedDifference(const ScopeBudget& budget, const ReviewedLevel& a,
                                         const ReviewedLevel& b) {
  if (!a.expanded || !b.expanded) return std::nullopt;
  const double factor = std::max(budget.steps[a.step]->coverageFactor, budget.steps[b.step]->coverageFactor);
  return factor * uncertaintyOfDifference(budget, a.step, b.step);
}

/// Levels that one taken before cannot be told from.
void findCloseLevels(const ReviewedPlan& plan, std::vector<Finding>& findings) {
  const ScopeBudget& budget = plan.evaluation.budget.of(Scope::Chain);
  const Setup& setup = plan.setup();
  for (const ReviewedLevel& later : plan.levels) {
    if (isBelowUncertainty(later)) continue;
    for (const ReviewedLevel& earlier : plan.levels) {
      if (earlier.step >= later.step) break;  // levels are in order
      if (earlier.prediction.polarity != later.prediction.polarity || isBelowUncertainty(earlier)) continue;
      const auto expanded = expandedDifference(budget, earlier, later);
      const double apart = std::abs(magnitude(later) - magnitude(earlier));
      if (!expanded || apart > *expanded) continue;
      findings.push_back({FindingKind::Duplicate,
                          Severity::Note,
                          later.step,
                          {},
                          say("It is {1} apart from {2}, within the uncertainty of their difference, {3}.",
                              {readingText(setup, apart, 2), stepText(setup, earlier.step),
                               readingText(setup, *expanded, 2)}),
                          say("Two levels that cannot be told apart say no more than one."),
                          {withoutLevelMend(later, setup)}});
      break;
    }
  }
}

}  // namespace

void findDuplicates(const ReviewedPlan& plan, std::vector<Finding>& findings) {
  findResistorsAtTwoPlaces(plan, findings);
  findRepeatedSteps(plan, findings);
  findSameShunts(plan, findings);
  findCloseLevels(plan, findings);
}

void findMissingZeros(const ReviewedPlan& plan, std::vector<Finding>& findings) {
  const auto& sequence = plan.setup().sequence;
  const bool anyLevel =
      std::any_of(sequence.begin(), sequence.end(), [](auto& s) { return !s.closed.empty(); });
  if (!anyLevel) return;
  if (!sequence.front().closed.empty())
    addMissingZero(
        findings, Severity::Warning, 0, say("The sequence does not begin with a zero step."),
        say("Readings are taken as changes from the first zero; what the zero moves before it is not seen."),
        {zeroMend(0, sequence.front())});
  const auto changes = sideChanges(plan);
  if (!isMixed(plan, changes.size()))
    for (const std::size_t step : changes)
      addMissingZero(findings, Severity::Note, step, say("There is no zero between the two sides."),
                     say("A zero that moved with the first side is not told from an error of the second."),
                     {zeroMend(step, sequence[step])});
  const std::size_t last = sequence.size() - 1;
  if (!sequence.back().closed.empty())
    addMissingZero(findings, Severity::Warning, last, say("The sequence does not end with a zero step."),
                   say("The return to zero is not judged without it."),
                   {zeroMend(last + 1, sequence.back())});
}

}  // namespace core
