// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/compare/data_between.h"

#include <algorithm>
#include <cmath>

#include "core/diagnose/cause_words.h"
#include "core/diagnose/correction.h"
#include "core/units/language.h"
#include "core/units/notation.h"

namespace core {
namespace {

/// Half width of an interval of probability 0.90 in standard deviations (normal distribution).
constexpr double halfWidth90 = 1.6449;

double reach(const std::optional<Difference>& difference) {
  if (!difference) return 0;
  return std::abs(difference->value) + difference->halfWidth90.value_or(0);
}

/// Largest error of data that are read as they are, as a share of the strain.
double shareOf(const Correction& correction) {
  const double scale = 1 / correction.factor;
  return std::abs(scale - 1) + halfWidth90 * scale * scale * correction.factorStandard.value_or(0);
}

/// Both corrections one after the other.
Correction both(const Correction& first, const Correction& second) {
  Correction sum = second;
  sum.factor *= first.factor;
  const double a = first.factorStandard.value_or(0) / first.factor;
  const double b = second.factorStandard.value_or(0) / second.factor;
  if (first.factorStandard || second.factorStandard)
    sum.factorStandard = std::abs(sum.factor) * std::hypot(a, b);
  return sum;
}

/// What the earlier check had wrong already; data do not feel what is of that check alone.
Correction earlierCorrection(const ChangeWay& way) {
  Correction none;
  none.reason = say("Nothing was wrong at {1} that data would feel.", {way.before});
  if (!way.earlier || sparesDataBetween(way.earlier->fault.kind)) return none;
  Correction correction = way.earlier->correction;
  correction.offset = 0;
  correction.offsetStandard.reset();
  return correction;
}

/// How the change may have gone in between, and what follows from that.
std::string courseOf(CauseKind kind) {
  switch (kind) {
    case CauseKind::Scale:
      return say(
          "Interpolating between both ends is legitimate only where a further check or a recorded reference "
          "shows that it went steadily; a setting that was changed acts from one moment on.");
    case CauseKind::Leak:
      return say(
          "A leak follows moisture and temperature and may have been larger in between than at either end: "
          "no "
          "factor and no interpolation is legitimate, and the greatest error is none beyond what both checks "
          "saw.");
    case CauseKind::LeadContact:
      return say(
          "A bad contact comes and goes and may have been worse in between than at either end: no factor and "
          "no interpolation is legitimate.");
    case CauseKind::ArmValue:
      return say(
          "What changed the resistance may have changed the gauge factor or the bond as well, which no check "
          "by shunts sees: do not correct.");
    case CauseKind::NoResponse:
      return say("Whatever was taken after that moment was not recorded, and nothing brings it back.");
    case CauseKind::Clipping:
      return say("What lay beyond the limit was not recorded; data within it stand as they are.");
    default:
      return say(
          "It came at one moment, and no value in between ever held: do not interpolate. Correct only what "
          "was recorded after that moment, where the recording or the log shows it.");
  }
}

/// What holds whatever was found.
std::string caution() {
  return say(
      "Correct nothing before the measurement has confirmed the cause; the responsible person decides, and "
      "the report states it.");
}

std::string shareText(double share) {
  if (share >= 2) return say("{1} times its size", {shown(formatNumber(share, 2))});
  return shown(formatNumber(100 * share, 2)) + " %";
}

std::string offsetText(const BetweenBasis& basis, double offset) {
  return shown(formatNumber(offset, 2)) + " " + readingUnitText(basis.setup.instrument);
}

std::string factorText(const Correction& correction) {
  return withStandard(correction.factor, correction.factorStandard);
}

std::string measurand(const BetweenBasis& basis) {
  return isTransducer(basis.setup.bridge) ? say("load") : say("strain");
}

/// Of no cause: what both checks together leave open.
std::optional<DataBetween> withoutCause(const BetweenBasis& basis) {
  const auto& gain = basis.comparison.gain;
  if (!gain || !gain->halfWidth90) return std::nullopt;
  DataBetween data;
  data.before = data.after = earlierCorrection(basis.way);
  data.greatestShare = std::max(reach(gain), shareOf(data.before));
  data.greatestOffset = reach(basis.comparison.zero);
  if (data.before.factor != 1)
    data.sentence =
        say("Nothing changed that calls for a cause. If \"{1}\" is what is wrong in {2} already, data in "
            "between have it throughout: factor {3} at both ends, and the gain is the same within {4} "
            "(interval of "
            "probability 0.90). {5}",
            {basis.way.earlier->title, basis.way.before, factorText(data.before), shareText(reach(gain)),
             caution()});
  else
    data.sentence =
        say("Nothing calls for a correction: factor 1 at {1} and at {2}, and the gain is the same within {3} "
            "(interval of probability 0.90). Data in between are as good as that, unless something came and "
            "went.",
            {basis.way.before, basis.way.after, shareText(reach(gain))});
  if (basis.comparison.zero)
    data.sentence += " " + say("The zero is the same within {1}.", {offsetText(basis, data.greatestOffset)});
  return data;
}

DataBetween ofCheckAlone(const BetweenBasis& basis) {
  DataBetween data;
  data.before = data.after = earlierCorrection(basis.way);
  data.greatestShare = shareOf(data.before);
  data.greatestOffset = reach(basis.comparison.zero);
  const Explanation& first = basis.diagnosis.explanations.front();
  if (isOfItsZero(first.fault.kind))
    data.sentence =
        say("If \"{1}\" is the cause, data taken in between keep their scale: factor {2} at both ends. Their "
            "zero may have moved as well, by more than the checks show: zero readings without load in the "
            "recording tell, and where there are none nobody knows.",
            {first.title, factorText(data.before)});
  else
    data.sentence = say(
        "If \"{1}\" is the cause, data taken in between do not feel it: factor {2} at both ends. It is the "
        "check that is to be put right and made again; only then does it say that nothing else changed.",
        {first.title, factorText(data.before)});
  return data;
}

/// The zero alone moved.
DataBetween ofZero(const BetweenBasis& basis) {
  const Explanation& moved = basis.diagnosis.explanations.front();
  DataBetween data;
  data.before = data.after = earlierCorrection(basis.way);
  data.after.offset = moved.fault.size;
  data.after.offsetStandard = moved.standard;
  data.after.reason = moved.correction.reason;
  data.greatestShare = std::max(reach(basis.comparison.gain), shareOf(data.before));
  data.greatestOffset = reach(basis.comparison.zero);
  data.sentence = say(
      "The scale of data in between stays as it is within {1}, and their zero is off by {2} at most, "
      "whenever in "
      "between it moved and unless it was taken anew. Zero readings without load in the recording tell when. "
      "What may be a strain that stayed is not to be taken out; the responsible person decides.",
      {shareText(data.greatestShare), offsetText(basis, data.greatestOffset)});
  return data;
}

/// The zero moved as the cause would move it, so that data carry the shift as an offset.
bool explainsZero(const BetweenBasis& basis, const Fault& fault) {
  if (!basis.tellingZero || basis.way.gone) return false;
  const auto move = zeroMove(basis.setup, fault);
  const double scatter = 3 * basis.comparison.zero->standard.value_or(0) + basis.comparison.zero->margin;
  return move && *move != 0 && std::abs(*move - *basis.tellingZero) <= scatter + 0.3 * std::abs(*move);
}

/// The greatest of all causes that are tied, at either end.
void takeGreatest(const BetweenBasis& basis, DataBetween& data) {
  data.greatestOffset = reach(basis.comparison.zero);
  data.greatestShare = std::max(shareOf(data.before), shareOf(data.after));
  const std::size_t tied = std::max<std::size_t>(1, basis.diagnosis.tied);
  for (std::size_t k = 0; k < tied && k < basis.diagnosis.explanations.size(); ++k) {
    const Explanation& one = basis.diagnosis.explanations[k];
    if (sparesDataBetween(one.fault.kind)) continue;
    const Correction end =
        basis.way.gone ? one.correction : both(earlierCorrection(basis.way), one.correction);
    const bool nothing = one.fault.kind == CauseKind::NoResponse;
    data.greatestShare = std::max(data.greatestShare, nothing ? 1.0 : shareOf(end));
    // Of a zero that was taken anew in between nobody knows how far it had moved before.
    if (const auto move = zeroMove(basis.setup, one.fault); move && !basis.tellingZero)
      data.greatestOffset = std::max(data.greatestOffset, std::abs(*move));
  }
}

/// The first of the causes that are not told apart that data in between would feel.
const Explanation& feltCause(const Diagnosis& diagnosis) {
  const auto& all = diagnosis.explanations;
  const auto felt = std::find_if(all.begin(), all.end(),
                                 [](const Explanation& one) { return !sparesDataBetween(one.fault.kind); });
  return felt == all.end() ? all.front() : *felt;
}

std::string causeSentence(const BetweenBasis& basis, const DataBetween& data) {
  const Explanation& first = basis.diagnosis.explanations.front();
  const Explanation& felt = feltCause(basis.diagnosis);
  std::vector<std::string> sentences;
  if (&felt != &first)
    sentences.push_back(say("If \"{1}\" is the cause, data do not feel it.", {first.title}));
  std::string text =
      say("If \"{1}\" is the cause: factor {2} at {3}, {4} at {5}. Uncorrected {6} is off by {7} at most, "
          "whenever in between it came",
          {felt.title, factorText(data.before), basis.way.before, factorText(data.after), basis.way.after,
           measurand(basis), shareText(data.greatestShare)});
  if (data.greatestOffset > 0)
    text = say("{1}, and by {2} besides where the zero was not taken anew",
               {text, offsetText(basis, data.greatestOffset)});
  if (basis.diagnosis.tied > 1)
    text = sayClauses({text, say("the worst of the causes that cannot be told apart counts")});
  sentences.push_back(text + ".");
  sentences.push_back(courseOf(felt.fault.kind));
  sentences.push_back(caution());
  return sayInTurn(sentences);
}

}  // namespace

std::optional<DataBetween> dataBetween(const BetweenBasis& basis) {
  const Diagnosis& diagnosis = basis.diagnosis;
  if (diagnosis.result == DiagnosisResult::Healthy) return withoutCause(basis);
  if (diagnosis.result != DiagnosisResult::Found && diagnosis.result != DiagnosisResult::Tied)
    return std::nullopt;
  if (isZeroBetween(diagnosis.explanations.front().fault)) return ofZero(basis);
  const auto last = diagnosis.explanations.begin() + static_cast<std::ptrdiff_t>(diagnosis.tied);
  if (std::all_of(diagnosis.explanations.begin(), last,
                  [](const Explanation& one) { return sparesDataBetween(one.fault.kind); }))
    return ofCheckAlone(basis);
  const Explanation& felt = feltCause(diagnosis);
  DataBetween data;
  data.before = data.after = earlierCorrection(basis.way);
  Correction& end = basis.way.gone ? data.before : data.after;
  end = both(basis.way.gone ? Correction{} : data.before, felt.correction);
  if (explainsZero(basis, felt.fault)) {
    end.offset = *basis.tellingZero;
    end.offsetStandard = basis.comparison.zero->standard;
  }
  takeGreatest(basis, data);
  data.sentence = causeSentence(basis, data);
  return data;
}

}  // namespace core
