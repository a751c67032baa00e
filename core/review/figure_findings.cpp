// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <map>

#include "core/document/edits.h"
#include "core/review/reviewed_plan.h"
#include "core/units/language.h"

namespace core {
namespace {

using Closed = std::vector<std::size_t>;

/// How often a level is reached from below (from zero, or from a smaller level of its side) and from above.
struct Reached {
  int rising = 0;
  int falling = 0;
};

/// What the levels of a sequence are reached by; the same ones in any order, since what a step reads does not
/// depend on the steps before it. Figures of merit take directions alike: a step that expects the same as
/// the one before keeps its direction.
std::map<Closed, Reached> reachedBy(const ReviewedPlan& plan, const std::vector<Step>& sequence) {
  std::map<Closed, double> expected{{Closed{}, 0}};
  for (const ReviewedLevel& level : plan.levels)
    expected.emplace(level.closed, level.prediction.reading.base());
  std::map<Closed, Reached> reached;
  double before = 0;
  bool isRising = true, isBeforeKnown = true;
  for (const Step& step : sequence) {
    const auto found = expected.find(step.closed);
    const bool isKnown = found != expected.end();
    const double now = isKnown ? found->second : 0;
    const double rest = now * before < 0 ? 0 : std::abs(before);
    if (std::abs(now) != rest) isRising = std::abs(now) > rest;
    if (isKnown && isBeforeKnown && now != 0)
      ++(isRising ? reached[step.closed].rising : reached[step.closed].falling);
    before = now;
    isBeforeKnown = isKnown;
  }
  return reached;
}

/// Whether the steps of `sequence` can show the figure.
bool shows(const ReviewedPlan& plan, const std::vector<Step>& sequence, MeritKind kind) {
  const auto reached = reachedBy(plan, sequence);
  return std::any_of(reached.begin(), reached.end(), [&](const auto& entry) {
    const Reached& level = entry.second;
    return kind == MeritKind::Hysteresis ? level.rising > 0 && level.falling > 0
                                         : level.rising > 1 || level.falling > 1;
  });
}

/// Steps put into a sequence one after the other, each at its place by then.
using Insertions = std::vector<std::pair<std::size_t, Step>>;

/// Behind each step that reaches the greatest level of a side, the smaller ones on the way down.
Insertions fallingSteps(const ReviewedPlan& plan) {
  const auto& sequence = plan.setup().sequence;
  Insertions insertions;
  for (std::size_t step = sequence.size(); step-- > 0;)
    for (const Polarity polarity : {Polarity::Positive, Polarity::Negative}) {
      const auto side = sideOf(plan.levels, polarity);
      if (side.size() < 2 || side.back()->closed != sequence[step].closed) continue;
      const bool isLast = step + 1 == sequence.size();
      for (std::size_t k = 0; k + 1 < side.size(); ++k) {
        if (k == 0 && !isLast && sequence[step + 1].closed == side[0]->closed) continue;
        Step down = sequence[side[k]->step];
        down.hold = sequence[step].hold;
        down.settle = sequence[step].settle;
        insertions.emplace_back(step + 1, std::move(down));
      }
    }
  return insertions;
}

/// The whole once more.
Insertions secondRun(const ReviewedPlan& plan) {
  const auto& sequence = plan.setup().sequence;
  Insertions insertions;
  for (std::size_t step = 0; step < sequence.size(); ++step)
    if (step > 0 || sequence.front().closed != sequence.back().closed)
      insertions.emplace_back(sequence.size() + insertions.size(), sequence[step]);
  return insertions;
}

/// The mend, where it lets the figure show.
std::vector<Mend> mendsBy(const ReviewedPlan& plan, MeritKind kind, const std::string& label,
                          Insertions insertions) {
  std::vector<Step> sequence = plan.setup().sequence;
  for (const auto& [at, step] : insertions)
    sequence.insert(sequence.begin() + static_cast<std::ptrdiff_t>(at), step);
  if (!shows(plan, sequence, kind)) return {};
  return {{label, [insertions = std::move(insertions)](Channel channel) {
             for (const auto& [at, step] : insertions)
               channel = withStepInserted(std::move(channel), at, step);
             return channel;
           }}};
}

void addNotShown(std::vector<Finding>& findings, MeritKind kind, const std::string& what,
                 std::vector<Mend> mends) {
  findings.push_back({FindingKind::FigureNotShown,
                      Severity::Warning,
                      {},
                      {},
                      say("The plan cannot show {1}: {2}", {meritKindName(kind), what}),
                      say("A limit that nothing is held against looks as if it had been kept."),
                      std::move(mends)});
}

}  // namespace

void findFiguresNotShown(const ReviewedPlan& plan, std::vector<Finding>& findings) {
  const Setup& setup = plan.setup();
  const auto isLimited = [&](MeritKind kind) { return setup.limits.merits.contains(kind); };
  if (plan.levels.empty()) return;  // nothing to close, or nothing predicted: said already
  if (const auto kind = MeritKind::Hysteresis; isLimited(kind) && !shows(plan, setup.sequence, kind))
    addNotShown(findings, kind, say("no level is reached both on the way up and on the way down."),
                mendsBy(plan, kind, say("Add falling steps"), fallingSteps(plan)));
  if (const auto kind = MeritKind::Repeatability; isLimited(kind) && !shows(plan, setup.sequence, kind))
    addNotShown(findings, kind, say("no level is reached twice from the same side."),
                mendsBy(plan, kind, say("Run through it twice"), secondRun(plan)));
}

}  // namespace core
