// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/compare/change_cause.h"

#include <cmath>

#include "core/compare/change_ground.h"
#include "core/compare/change_words.h"
#include "core/compare/data_between.h"
#include "core/diagnose/cause_words.h"
#include "core/diagnose/correction.h"
#include "core/diagnose/diagnosis_words.h"
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

/// The steps agree, and the zero alone moved beyond its margin.
void explainZero(const Setup& setup, const Comparison& comparison, const ChangeWay& way,
                 Diagnosis& diagnosis) {
  const Difference& zero = *comparison.zero;
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
  const std::string unit = readingUnitText(setup.instrument);
  moved.sizeText = withStandard(zero.value, zero.standard, true) + " " + unit;
  moved.confirm =
      say("Without load, look whether the zero stays while cable and connectors are moved, and measure the "
          "insulation of the gauge with the excitation off: a leak too small for the steps moves the zero. "
          "Look in "
          "the log for a zeroing, a load that stayed on, and the temperature of both days.");
  moved.onStrain =
      say("{1} recorded after the zero had moved, and not zeroed since, reads {2} {3} off; its "
          "scale is right.",
          {measurandWord(setup.bridge), withStandard(zero.value, zero.standard, true), unit});
  moved.correction.offset = zero.value;
  moved.correction.offsetStandard = zero.standard;
  moved.correction.reason =
      say("Legitimate only where zero readings without load in between show when it moved, and an electrical "
          "cause was found; a strain that stayed is no error.");
  diagnosis.explanations.assign(1, std::move(moved));
  diagnosis.tied = 1;
  diagnosis.result = DiagnosisResult::Found;
  diagnosis.sentence = say("The steps call for no cause; the zero alone moved, by {1}. {2}",
                           {diagnosis.explanations.front().sizeText, diagnosis.explanations.front().confirm});
}

std::string scatterSentence(const ChangeGround& change, const Setup& setup) {
  const auto taken = change.takenScatter();
  if (!taken) return {};
  return say(
      " No uncertainty of the readings is stated: each is taken as good to {1} {2}, the scatter of the "
      "steadier check about its line.",
      {shown(formatNumber(*taken, 2)), readingUnitText(setup.instrument)});
}

/// Of a channel that was off in the earlier check already.
std::string earlierSentence(const ChangeWay& way) {
  if (way.gone)
    return say(" {1} is held against {2}, which is as expected: what was there is gone.",
               {way.before, way.after});
  if (!way.earlier) return {};
  return say(
      " {1} was off already ({2}): what is told is the change from there, to first order about the channel "
      "as "
      "entered.",
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
        " It would move the zero by {1} {2}; it shows next to nothing, so that it was zeroed anew or this is "
        "not the cause.",
        {expected, unit});
  return say(" It would move the zero by {1} {2}; it moved by {3} {2}.", {expected, unit, seen});
}

class Finding {
 public:
  Finding(const Channel& channel, const ChannelEvaluation& evaluation, std::size_t before, std::size_t after,
          const std::stop_token& stop)
      : m_channel(channel), m_evaluation(evaluation), m_before(before), m_after(after), m_stop(stop) {}

  ChangeCause run() {
    const Comparison comparison = compare(m_channel, m_evaluation, m_before, m_after);
    ChangeCause cause;
    if (comparison.steps.empty()) {
      cause.diagnosis.sentence = comparison.reason;
      return cause;
    }
    ChangeWay way{m_channel.checks[m_before].name, m_channel.checks[m_after].name,
                  isGone(m_evaluation, m_before, m_after)};
    const std::size_t sound = way.gone ? m_after : m_before, faulty = way.gone ? m_before : m_after;
    const Comparison held = way.gone ? compare(m_channel, m_evaluation, sound, faulty) : comparison;
    const auto change = ChangeGround::make(m_channel, m_evaluation, sound, faulty, held);
    if (!change) {
      cause.diagnosis.sentence = say("What changed cannot be told: {1}", {change.error().text()});
      return cause;
    }
    const DiagnosisGround& ground = (*change)->ground();
    cause.diagnosis = diagnose(ground, (*change)->ownBudget(), m_stop);
    std::optional<Explanation> earlier;
    if (!way.gone) earlier = earlierCause(m_channel, m_evaluation, m_before, m_stop);
    if (m_stop.stop_requested()) return cancelled();
    way.earlier = earlier ? &*earlier : nullptr;
    putIntoWords(**change, held, way, cause.diagnosis);
    if (cause.diagnosis.result == DiagnosisResult::Healthy && changeOf(comparison.zero) == Change::Changed)
      explainZero(ground.setup, comparison, way, cause.diagnosis);
    cause.data = dataBetween({ground.setup, comparison, cause.diagnosis, way, (*change)->tellingZero()});
    return cause;
  }

 private:
  static ChangeCause cancelled() {
    ChangeCause cause;
    cause.diagnosis.sentence = say("No diagnosis: cancelled.");
    return cause;
  }

  static void putIntoWords(const ChangeGround& change, const Comparison& held, const ChangeWay& way,
                           Diagnosis& diagnosis) {
    const Setup& setup = change.ground().setup;
    for (Explanation& explanation : diagnosis.explanations) describeChange(setup, way, explanation);
    diagnosis.sentence = sentenceOf(setup, diagnosis) + zeroSentence(setup, diagnosis, change, held) +
                         earlierSentence(way) + scatterSentence(change, setup);
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
