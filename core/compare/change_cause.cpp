// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/compare/change_cause.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/compare/change_ground.h"
#include "core/compare/change_words.h"
#include "core/compare/data_between.h"
#include "core/diagnose/cause_words.h"
#include "core/diagnose/correction.h"
#include "core/diagnose/diagnosis_words.h"
#include "core/diagnose/explain.h"
#include "core/diagnose/plausibility.h"
#include "core/line/distributions.h"
#include "core/units/language.h"
#include "core/units/notation.h"

namespace core {
namespace {

/// Which check the other is held against: the earlier one, unless that fails and the later one does not.
/// About a channel that is as planned everything is nearly linear, and what is gone can be told at all.
bool isGone(const ChannelEvaluation& evaluation, std::size_t before, std::size_t after) {
  return evaluation.checks[before].assessment.verdict == Verdict::Fail &&
         evaluation.checks[after].assessment.verdict == Verdict::Pass;
}

/// What was wrong in the earlier check already, when that fails.
std::optional<Explanation> earlierCause(const Channel& channel, const ChannelEvaluation& evaluation,
                                        std::size_t before, const std::stop_token& stop) {
  const CheckEvaluation& checked = evaluation.checks[before];
  if (checked.assessment.verdict != Verdict::Fail) return std::nullopt;
  const Check& check = channel.checks[before];
  const Diagnosis diagnosis =
      diagnose(setupOf(channel, check), checked.prediction, checked.budget, check, stop);
  const bool named = diagnosis.result == DiagnosisResult::Found || diagnosis.result == DiagnosisResult::Tied;
  return named ? std::optional(diagnosis.explanations.front()) : std::nullopt;
}

/// The zero that moved, as a cause of its own: nothing more is known.
Explanation zeroExplanation(const Setup& setup, const Difference& zero, const ChangeWay& way,
                            const Diagnosis& diagnosis) {
  const std::string unit = readingUnitText(setup.instrument);
  const std::string size = withStandard(zero.value, zero.standard, true) + " " + unit;
  Explanation moved;
  moved.fault = {CauseKind::ZeroShift, 0, 0, zero.value};
  moved.standard = zero.standard;
  moved.chiSquare = diagnosis.chiSquare;
  moved.parameters = 1;
  moved.fitProbability = diagnosis.probability.value_or(0);
  moved.explained = 1;
  moved.plausibility = 1;
  moved.weight = 1;
  moved.title = say("Zero moved between {1} and {2}", {way.before, way.after});
  moved.sizeText = size;
  moved.confirm =
      say("Look in the log for a zeroing, a load that stayed on, and the temperature of both days; without "
          "load, look "
          "whether the zero stays while cable and connectors are moved.");
  moved.onStrain =
      say("{1} recorded after the zero had moved, and not zeroed since, is off by {2}; its scale is right.",
          {measurandWord(setup.bridge), size});
  moved.correction.offset = zero.value;
  moved.correction.offsetStandard = zero.standard;
  moved.correction.reason =
      say("Legitimate only where zero readings without load in between show when it moved, and an electrical "
          "cause was found; a strain that stayed is no error.");
  return moved;
}

/// The size at which `fault` moves the zero by `moved`: secant from a small size, as zeros move nearly in
/// proportion. None where no size does, or one that the kind cannot have.
std::optional<double> sizeByZero(const Setup& setup, Fault fault, double none, double small, double moved) {
  double last = none, lastMove = 0;
  fault.size = none + small;
  for (int round = 0; round < 12; ++round) {
    const auto move = zeroMove(setup, fault);
    if (!move || *move == lastMove) return std::nullopt;
    if (std::abs(*move - moved) <= 1e-6 * std::abs(moved)) return fault.size;
    const double next = fault.size + (moved - *move) * (fault.size - last) / (*move - lastMove);
    last = std::exchange(fault.size, next);
    lastMove = *move;
    if (!(next >= 0)) return std::nullopt;  // a contact or a leak that would have to vanish
  }
  return std::nullopt;
}

/// Causes that would move the zero as far and the steps no further than their uncertainty: the zero of a
/// bridge feels its parts a hundred times better than its steps do.
std::vector<Refit> causesByZero(const DiagnosisGround& ground, double healthyChiSquare, double zero,
                                double zeroStandard) {
  constexpr double notTold = 6;  // of chi-square, as between causes of a check: 20 to 1
  std::vector<Refit> fits;
  for (Fault fault : possibleFaults(ground.setup, ground.points)) {
    const bool lead = fault.kind == CauseKind::LeadContact, leak = fault.kind == CauseKind::Leak;
    const bool arm = fault.kind == CauseKind::ArmValue || fault.kind == CauseKind::CompletionValue;
    if (!lead && !leak && !arm) continue;
    const double none = arm ? 1 : 0, small = arm ? 1e-4 : lead ? 1e-2 : 1e-8;
    const auto size = sizeByZero(ground.setup, fault, none, small, zero);
    if (!size) continue;
    Refit refit;
    refit.fault = fault;
    refit.fault.size = *size;
    refit.standard = std::abs((*size - none) * zeroStandard / zero);
    auto changes = changesUnder(ground.setup, ground.check, ground.points, refit.fault);
    if (!changes) continue;
    refit.changes = *std::move(changes);
    std::vector<double> off = ground.points.measured;
    for (std::size_t k = 0; k < off.size(); ++k) off[k] -= refit.changes[k];
    // cppcheck-suppress accessMoved  ; it takes a range that is gone through for one evaluated each time
    for (const double left : ground.healthy.reduced(std::move(off), &refit.offset))
      refit.chiSquare += left * left;
    if (refit.chiSquare <= healthyChiSquare + notTold) fits.push_back(std::move(refit));
  }
  std::stable_sort(fits.begin(), fits.end(),
                   [](const Refit& a, const Refit& b) { return a.chiSquare < b.chiSquare; });
  return fits;
}

/// The steps agree, and the zero alone moved beyond its margin.
void explainZero(const ChangeGround& change, const Comparison& comparison, const ChangeWay& way,
                 Diagnosis& diagnosis) {
  constexpr std::size_t mostCauses = 8;
  const DiagnosisGround& ground = change.ground();
  const Difference& zero = *comparison.zero;
  diagnosis.explanations.assign(1, zeroExplanation(ground.setup, zero, way, diagnosis));
  std::vector<Refit> causes;
  if (change.tellingZero())
    causes = causesByZero(ground, diagnosis.chiSquare, zero.value, zero.standard.value_or(0));
  const int dof = diagnosis.degreesOfFreedom;
  for (const Refit& refit : causes) {
    if (diagnosis.explanations.size() == mostCauses) break;
    Explanation explanation;
    explanation.fault = refit.fault;
    explanation.standard = refit.standard;
    explanation.chiSquare = refit.chiSquare;
    explanation.parameters = 1;
    explanation.fitProbability = chiSquareExceeded(refit.chiSquare, dof);
    explanation.explained = 1;
    explanation.changes = refit.changes;
    explanation.plausibility = plausibilityOf(ground, refit).ordinary;
    describe(ground, change.ownBudget(), refit, explanation);
    describeChange(ground.setup, way, explanation);
    diagnosis.explanations.push_back(std::move(explanation));
  }
  diagnosis.tied = diagnosis.explanations.size();
  for (Explanation& one : diagnosis.explanations) one.weight = 1.0 / static_cast<double>(diagnosis.tied);
  diagnosis.result = diagnosis.tied == 1 ? DiagnosisResult::Found : DiagnosisResult::Tied;
  diagnosis.sentence = say("The steps call for no cause; the zero alone moved, by {1}. {2}",
                           {diagnosis.explanations[0].sizeText, diagnosis.explanations[0].confirm});
  std::string others;
  for (std::size_t k = 1; k < std::min<std::size_t>(diagnosis.tied, 4); ++k) {
    const Explanation& one = diagnosis.explanations[k];
    const std::string text = say("{1}, {2}", {one.title, one.sizeText});
    others = k == 1 ? text : say("{1}; or of: {2}", {others, text});
  }
  if (!others.empty()) diagnosis.sentence += " " + say("As much would come of: {1}.", {others});
}

std::string scatterSentence(const ChangeGround& change, const Setup& setup) {
  const auto taken = change.takenScatter();
  if (!taken) return {};
  return say(
      "No uncertainty of the readings is stated: each is taken as good to {1} {2}, the scatter "
      "about the line of measured against expected.",
      {shown(formatNumber(*taken, 2)), readingUnitText(setup.instrument)});
}

/// Of a channel that was off in the earlier check already.
std::string earlierSentence(const ChangeWay& way) {
  if (way.gone)
    return say(
        "The readings of {1} are held against those of {2}, which are as expected: what was there is gone.",
        {way.before, way.after});
  if (!way.earlier) return {};
  return say(
      "In {1} the channel was off already ({2}): what is told is the change from there, to first order about "
      "the channel as entered.",
      {way.before, way.earlier->title});
}

std::string zeroSentence(const Setup& setup, const Diagnosis& diagnosis, const ChangeGround& change,
                         const Comparison& comparison) {
  const bool named = diagnosis.result == DiagnosisResult::Found || diagnosis.result == DiagnosisResult::Tied;
  if (!named || !comparison.zero) return {};
  const auto move = zeroMove(setup, diagnosis.explanations.front().fault);
  if (!move || std::abs(*move) <= 2 * change.ordinaryZero()) return {};
  const std::string unit = readingUnitText(setup.instrument);
  const std::string expected = shown(formatNumber(*move, 3)),
                    seen = shown(formatNumber(comparison.zero->value, 3));
  if (!change.tellingZero())
    return say(
        "It would move the zero by {1} {2}; it shows next to nothing, so that it was zeroed anew or this is "
        "not the cause.",
        {expected, unit});
  return say("It would move the zero by {1} {2}; it moved by {3} {2}.", {expected, unit, seen});
}

class Finding {
 public:
  Finding(const Channel& channel, const ChannelEvaluation& evaluation, std::size_t before, std::size_t after,
          const std::stop_token& stop)
      : m_channel(channel), m_evaluation(evaluation), m_before(before), m_after(after), m_stop(stop) {}

  ChangeCause run() const {
    const Comparison comparison = compare(m_channel, m_evaluation, m_before, m_after);
    if (comparison.steps.empty()) return without(comparison.reason);
    if (!isGone(m_evaluation, m_before, m_after)) return told(comparison, false);
    // Steps that agree tell nothing of what is gone; the zero is told from the earlier check on.
    ChangeCause gone = told(comparison, true);
    return gone.diagnosis.result == DiagnosisResult::Healthy ? told(comparison, false) : gone;
  }

 private:
  static ChangeCause without(std::string sentence) {
    ChangeCause cause;
    cause.diagnosis.sentence = std::move(sentence);
    return cause;
  }

  ChangeCause told(const Comparison& comparison, bool gone) const {
    ChangeWay way{m_channel.checks[m_before].name, m_channel.checks[m_after].name, gone};
    const std::size_t sound = gone ? m_after : m_before, faulty = gone ? m_before : m_after;
    const Comparison held = gone ? compare(m_channel, m_evaluation, sound, faulty) : comparison;
    const auto change = ChangeGround::make(m_channel, m_evaluation, sound, faulty, held);
    if (!change) return without(say("What changed cannot be told: {1}", {change.error().text()}));
    const DiagnosisGround& ground = (*change)->ground();
    ChangeCause cause;
    cause.diagnosis = diagnose(ground, (*change)->ownBudget(), m_stop);
    std::optional<Explanation> earlier;
    if (!gone) earlier = earlierCause(m_channel, m_evaluation, m_before, m_stop);
    if (m_stop.stop_requested()) return without(say("No diagnosis: cancelled."));
    way.earlier = earlier ? &*earlier : nullptr;
    putIntoWords(**change, held, way, cause.diagnosis);
    const bool zeroMoved = changeOf(comparison.zero) == Change::Changed && !gone;
    if (cause.diagnosis.result == DiagnosisResult::Healthy && zeroMoved)
      explainZero(**change, comparison, way, cause.diagnosis);
    cause.data = dataBetween({ground.setup, comparison, cause.diagnosis, way, (*change)->tellingZero()});
    return cause;
  }

  static void putIntoWords(const ChangeGround& change, const Comparison& held, const ChangeWay& way,
                           Diagnosis& diagnosis) {
    const Setup& setup = change.ground().setup;
    for (Explanation& explanation : diagnosis.explanations) describeChange(setup, way, explanation);
    diagnosis.sentence =
        sayInTurn({sentenceOf(setup, diagnosis), zeroSentence(setup, diagnosis, change, held),
                   earlierSentence(way), scatterSentence(change, setup)});
  }

  const Channel& m_channel;
  const ChannelEvaluation& m_evaluation;
  std::size_t m_before, m_after;
  const std::stop_token& m_stop;
};

}  // namespace

ChangeCause changeCauseOf(const Channel& channel, const ChannelEvaluation& evaluation, std::size_t before,
                          std::size_t after, const std::stop_token& stop) {
  return Finding(channel, evaluation, before, after, stop).run();
}

}  // namespace core
