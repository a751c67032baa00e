// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/compare/comparison.h"

#include <algorithm>
#include <cmath>

#include "core/circuit/hookup.h"
#include "core/units/notation.h"

namespace core {
namespace {

/// Whether both do the same to the bridge, whatever they are called and made of.
bool actsAlike(const Shunt& a, const Shunt& b) {
  return a.resistance == b.resistance && a.wires == b.wires && a.contact == b.contact && a.a == b.a &&
         a.b == b.b;
}

bool sameShunts(const Setup& a, const Setup& b, std::size_t step) {
  const auto& closedA = a.sequence[step].closed;
  const auto& closedB = b.sequence[step].closed;
  return std::equal(closedA.begin(), closedA.end(), closedB.begin(), closedB.end(),
                    [&](auto i, auto j) { return actsAlike(a.shunts[i], b.shunts[j]); });
}

template <class T, class Alike>
bool differ(const std::vector<T>& a, const std::vector<T>& b, const Alike& alike) {
  return !std::equal(a.begin(), a.end(), b.begin(), b.end(), alike);
}

/// Differences of what is planned, by what they mean for whoever compares.
void addPlanDifferences(const Setup& a, const Setup& b, std::vector<std::string>& words) {
  const auto sameShunt = [](const Shunt& s, const Shunt& t) { return s.name == t.name && actsAlike(s, t); };
  const auto samePart = [](const Shunt& s, const Shunt& t) { return s.part == t.part; };
  const auto sameJumpers = [](const Shunt& s, const Shunt& t) { return s.jumpers == t.jumpers; };
  const auto sameStep = [](const Step& s, const Step& t) {
    return s.label == t.label && s.closed == t.closed && s.hold == t.hold;
  };
  const auto sameSettle = [](const Step& s, const Step& t) { return s.settle == t.settle; };
  if (differ(a.shunts, b.shunts, sameShunt))
    words.push_back("shunts");
  else if (differ(a.shunts, b.shunts, samePart))
    words.push_back("resistors that shunts are made of");
  if (a.wiring != b.wiring) words.push_back("pins");
  if (a.shunts.size() == b.shunts.size() && differ(a.shunts, b.shunts, sameJumpers))
    words.push_back("jumpers");
  if (differ(a.sequence, b.sequence, sameStep))
    words.push_back("sequence");
  else if (differ(a.sequence, b.sequence, sameSettle))
    words.push_back("settling times");
}

std::vector<std::string> differences(const Setup& a, const Setup& b) {
  std::vector<std::string> words;
  if (a.bridge.type != b.bridge.type) words.push_back("bridge template");
  if (a.bridge.arms != b.bridge.arms) words.push_back("arm resistances");
  if (!(a.bridge.gauge == b.bridge.gauge)) words.push_back("gauge");
  if (!(a.bridge.rating == b.bridge.rating)) words.push_back("transducer rating");
  if (a.bridge.leads != b.bridge.leads || a.bridge.sixWire != b.bridge.sixWire ||
      a.bridge.leadWarming != b.bridge.leadWarming)
    words.push_back("leads");
  if (a.bridge.leaks != b.bridge.leaks) words.push_back("leaks");
  if (!(hookupInUse(a.bridge) == hookupInUse(b.bridge))) words.push_back("how the bridge is connected");
  if (!(a.instrument == b.instrument)) words.push_back("instrument settings");
  if (a.acquisition != b.acquisition) words.push_back("acquisition");
  addPlanDifferences(a, b, words);
  if (!(a.limits == b.limits)) words.push_back("limits");
  if (!(a.decision == b.decision)) words.push_back("decision rule");
  if (!(a.uncertainties == b.uncertainties)) words.push_back("stated uncertainties");
  return words;
}

StepComparison compareStep(const StepAssessment& before, const StepAssessment& after) {
  StepComparison step;
  step.before = before.change;
  step.after = after.change;
  step.limit = before.limit;
  if (!step.before || !step.after) return step;
  step.difference = *step.after - *step.before;
  if (!step.limit) return step;
  const double moved = std::abs(step.difference->base());
  step.verdict = std::isfinite(moved) && moved <= step.limit->base() ? Verdict::Pass : Verdict::Fail;
  return step;
}

void compareLines(const CheckAssessment& before, const CheckAssessment& after, Comparison& comparison) {
  if (!before.line || !after.line || before.line->slope == 0) return;
  const double ratio = after.line->slope / before.line->slope;
  comparison.slopeRatio = ratio;
  if (!before.line->slopeError || !after.line->slopeError || after.line->slope == 0) return;
  // u(q)/q of a quotient of independent values (JCGM 100:2008, 5.1.6).
  comparison.slopeRatioError = std::abs(ratio) * std::hypot(*before.line->slopeError / before.line->slope,
                                                            *after.line->slopeError / after.line->slope);
}

struct Moved {
  std::size_t judged = 0, moved = 0, worst = 0;
  double greatest = -1;
};

Moved movedSteps(const std::vector<StepComparison>& steps) {
  Moved count;
  for (std::size_t k = 0; k < steps.size(); ++k) {
    if (steps[k].verdict == Verdict::NotJudged) continue;
    ++count.judged;
    if (steps[k].verdict == Verdict::Fail) ++count.moved;
    const double size = std::abs(steps[k].difference->base());
    if (!(size <= count.greatest)) count.greatest = size, count.worst = k;
  }
  return count;
}

std::string shown(double reading, const Setup& setup) {
  return formatNumber(reading, 4) + " " + readingUnitText(setup.instrument);
}

bool zeroMoved(const Comparison& comparison) {
  return comparison.zeroShift &&
         !(std::abs(comparison.zeroShift->base()) <= comparison.zeroShiftLimit->base());
}

/// What a reviewer must not miss although the steps agree; empty when there is nothing.
std::string despiteAgreement(const Setup& setup, const Comparison& comparison, Verdict before,
                             Verdict after) {
  std::string words;
  if (zeroMoved(comparison))
    words += " The zero moved by " + shown(comparison.zeroShift->base(), setup) + ", beyond " +
             shown(comparison.zeroShiftLimit->base(), setup) + ": find out why.";
  if (before == Verdict::Fail && after == Verdict::Fail)
    return words + " Both checks fail: see each of them.";
  for (const auto& [check, verdict] :
       {std::pair{" The earlier check ", before}, {" The later check ", after}}) {
    if (verdict == Verdict::Fail) words += check + std::string("fails.");
    if (verdict == Verdict::CannotTell) words += check + std::string("cannot tell.");
    if (verdict == Verdict::NotJudged) words += check + std::string("is not judged.");
  }
  return words;
}

void giveVerdict(const Setup& setup, Verdict before, Verdict after, Comparison& comparison) {
  const Moved count = movedSteps(comparison.steps);
  const std::string all = std::to_string(comparison.steps.size());
  if (count.judged < comparison.steps.size() && count.moved == 0) {
    comparison.reason =
        "Cannot tell: only " + std::to_string(count.judged) + " of " + all + " steps can be compared.";
    return;
  }
  const std::string largest =
      shown(count.greatest, setup) + " at step " + std::to_string(count.worst + 1) + ".";
  comparison.reason = count.moved == 0 ? "Steps unchanged within limits, at most by " + largest
                                       : "Changed: " + std::to_string(count.moved) + " of " + all +
                                             " steps moved beyond their limits, at most by " + largest;
  comparison.reason += despiteAgreement(setup, comparison, before, after);
  comparison.verdict = Verdict::Fail;
  if (count.moved > 0 || zeroMoved(comparison) || before == Verdict::Fail || after == Verdict::Fail) return;
  const bool bothPass = before == Verdict::Pass && after == Verdict::Pass;
  comparison.verdict = bothPass ? Verdict::Pass : Verdict::CannotTell;
}

}  // namespace

Comparison compare(const Channel& channel, const ChannelEvaluation& evaluation, std::size_t before,
                   std::size_t after) {
  Comparison comparison;
  const Setup& setupBefore = setupOf(channel, channel.checks[before]);
  const Setup& setupAfter = setupOf(channel, channel.checks[after]);
  comparison.setupDifferences = differences(setupBefore, setupAfter);
  if (setupBefore.sequence.size() != setupAfter.sequence.size()) {
    comparison.reason = "Cannot be compared: the sequences have " +
                        std::to_string(setupBefore.sequence.size()) + " and " +
                        std::to_string(setupAfter.sequence.size()) + " steps.";
    return comparison;
  }
  if (setupBefore.sequence.empty()) {
    comparison.reason = "Cannot be compared: the channel has no steps.";
    return comparison;
  }
  if (readingUnitText(setupBefore.instrument) != readingUnitText(setupAfter.instrument)) {
    comparison.reason = "Cannot be compared: the readings are in different units.";
    return comparison;
  }
  const CheckAssessment& first = evaluation.checks[before].assessment;
  const CheckAssessment& second = evaluation.checks[after].assessment;
  for (std::size_t k = 0; k < setupBefore.sequence.size(); ++k)
    comparison.steps.push_back(sameShunts(setupBefore, setupAfter, k)
                                   ? compareStep(first.steps[k], second.steps[k])
                                   : StepComparison{});
  compareLines(first, second, comparison);
  comparison.zeroShiftLimit = first.zeroReturnLimit;
  if (first.zeroStep && second.zeroStep)
    comparison.zeroShift = channel.checks[after].readings[*second.zeroStep]->mean -
                           channel.checks[before].readings[*first.zeroStep]->mean;
  giveVerdict(setupBefore, first.verdict, second.verdict, comparison);
  return comparison;
}

}  // namespace core
