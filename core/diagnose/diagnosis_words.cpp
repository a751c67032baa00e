// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diagnose/diagnosis_words.h"

#include <algorithm>

#include "core/units/notation.h"

namespace core {
namespace {

/// Causes that a sentence names before it counts the others.
constexpr std::size_t mostNamed = 4;

std::string chiSquareText(double chiSquare, int degreesOfFreedom) {
  return formatNumber(chiSquare, 3) + " with " + std::to_string(degreesOfFreedom) +
         (degreesOfFreedom == 1 ? " degree of freedom" : " degrees of freedom");
}

std::string probabilityText(double probability) {
  return probability < 0.001 ? "below 0.001" : formatNumber(probability, 2);
}

std::string healthyChiSquare(const Diagnosis& diagnosis) {
  std::string text = "chi-square " + chiSquareText(diagnosis.chiSquare, diagnosis.degreesOfFreedom);
  if (diagnosis.probability) text += ", probability " + probabilityText(*diagnosis.probability);
  return text;
}

/// "Leads longer than entered: each lead 0.85 ± 0.05 Ω more than entered"
std::string causeText(const Explanation& explanation) {
  std::string text = explanation.title;
  if (!explanation.sizeText.empty()) text += ": " + explanation.sizeText;
  if (!explanation.settings.empty()) text += ", " + explanation.settings;
  return text;
}

/// Of the readings' chi-square as it would be if nothing were wrong.
std::string leftText(const Diagnosis& diagnosis, const Explanation& explanation) {
  const int left = diagnosis.degreesOfFreedom + 1 - static_cast<int>(explanation.parameters);
  return "leaves " + chiSquareText(explanation.chiSquare, left);
}

std::string healthySentence(const Diagnosis& diagnosis) {
  std::string text = "Nothing calls for a cause: " + healthyChiSquare(diagnosis) + ".";
  if (!diagnosis.explanations.empty())
    text += " Nearest to one would be: " + causeText(diagnosis.explanations.front()) +
            "; chance alone makes as much of it in some healthy checks.";
  return text;
}

std::string foundSentence(const Diagnosis& diagnosis) {
  const Explanation& first = diagnosis.explanations.front();
  return "Suspected cause: " + causeText(first) + ". It explains " + formatNumber(100 * first.explained, 3) +
         " % of chi-square " + formatNumber(diagnosis.chiSquare, 3) + " and " + leftText(diagnosis, first) +
         (first.fitProbability < 0.001 ? ", more than the uncertainties explain" : "") +
         ". A suspicion until a measurement confirms it: " + first.confirm;
}

std::string separationText(double separation) {
  return separation > 100 ? "more than 100" : formatNumber(separation, 2);
}

/// What would tell the first two apart: a step, or the measurements that confirm them.
std::string tellingText(const Diagnosis& diagnosis) {
  const Explanation& first = diagnosis.explanations[0];
  const Explanation& second = diagnosis.explanations[1];
  const std::string which = diagnosis.tied == 2 ? "them" : "the first two";
  if (const auto& step = diagnosis.tellingStep)
    return "One more step would tell " + which + " apart, by " + separationText(step->separation) +
           " standard uncertainties: " + step->text + ".";
  if (first.confirm == second.confirm) return "No further step would; a measurement does: " + first.confirm;
  return "No further step would tell " + which + " apart; measurements do. For the first: " + first.confirm +
         " For the second: " + second.confirm;
}

std::string tiedSentence(const Diagnosis& diagnosis) {
  const std::size_t named = std::min(diagnosis.tied, mostNamed);
  std::string text = "Suspected causes that this plan cannot tell apart: ";
  for (std::size_t k = 0; k < named; ++k)
    text += (k == 0 ? "" : "; or ") + causeText(diagnosis.explanations[k]);
  if (diagnosis.tied > named) text += "; or " + std::to_string(diagnosis.tied - named) + " more";
  return text + ". " + tellingText(diagnosis) + " Until then each is a suspicion.";
}

std::string nothingFitsSentence(const Diagnosis& diagnosis) {
  std::string text =
      "No single cause explains the readings: " + healthyChiSquare(diagnosis) + " if nothing is wrong";
  if (!diagnosis.explanations.empty()) {
    const Explanation& best = diagnosis.explanations.front();
    text += "; the best one, " + causeText(best) + ", " + leftText(diagnosis, best);
  }
  return text + ". More than one thing may be wrong, or a reading is of another step.";
}

std::string ofResult(const Diagnosis& diagnosis) {
  switch (diagnosis.result) {
    case DiagnosisResult::NotPossible:
      return "No diagnosis: it takes at least three readings, one of them with a shunt closed, and their "
             "uncertainties.";
    case DiagnosisResult::Healthy:
      return healthySentence(diagnosis);
    case DiagnosisResult::Found:
      return foundSentence(diagnosis);
    case DiagnosisResult::Tied:
      return tiedSentence(diagnosis);
    case DiagnosisResult::NothingFits:
      return nothingFitsSentence(diagnosis);
  }
  return {};
}

}  // namespace

std::string sentenceOf(const Setup& setup, const Diagnosis& diagnosis) {
  std::string text = ofResult(diagnosis);
  if (diagnosis.takenDigit)
    text += " No uncertainty of the readings is stated: each is taken as good to " +
            formatNumber(*diagnosis.takenDigit, 2) + " " + readingUnitText(setup.instrument) +
            ", one unit of its last digit.";
  return text;
}

}  // namespace core
