// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diagnose/diagnosis_words.h"

#include <algorithm>

#include "core/units/language.h"
#include "core/units/notation.h"

namespace core {
namespace {

/// Causes that a sentence names before it counts the others.
constexpr std::size_t mostNamed = 4;

std::string chiSquareText(double chiSquare, int degreesOfFreedom) {
  return sayCount(static_cast<std::size_t>(degreesOfFreedom), "{1} with {n} degree of freedom",
                  "{1} with {n} degrees of freedom", {shown(formatNumber(chiSquare, 3))});
}

std::string probabilityText(double probability) {
  return probability < 0.001 ? say("below 0.001") : shown(formatNumber(probability, 2));
}

std::string healthyChiSquare(const Diagnosis& diagnosis) {
  const std::string text = chiSquareText(diagnosis.chiSquare, diagnosis.degreesOfFreedom);
  if (!diagnosis.probability) return say("chi-square {1}", {text});
  return say("chi-square {1}, probability {2}", {text, probabilityText(*diagnosis.probability)});
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
  return say("leaves {1}", {chiSquareText(explanation.chiSquare, left)});
}

std::string healthySentence(const Diagnosis& diagnosis) {
  std::string text = say("Nothing calls for a cause: {1}.", {healthyChiSquare(diagnosis)});
  if (!diagnosis.explanations.empty())
    text +=
        " " + say("Nearest to one would be: {1}; chance alone makes as much of it in some healthy checks.",
                  {causeText(diagnosis.explanations.front())});
  return text;
}

std::string foundSentence(const Diagnosis& diagnosis) {
  const Explanation& first = diagnosis.explanations.front();
  const std::string explains =
      say(first.fitProbability < 0.001
              ? sayLater("It explains {1} % of chi-square {2} and {3}, more than the uncertainties explain.")
              : sayLater("It explains {1} % of chi-square {2} and {3}."),
          {shown(formatNumber(100 * first.explained, 3)), shown(formatNumber(diagnosis.chiSquare, 3)),
           leftText(diagnosis, first)});
  return say("Suspected cause: {1}. {2} A suspicion until a measurement confirms it: {3}",
             {causeText(first), explains, first.confirm});
}

std::string separationText(double separation) {
  return separation > 100 ? say("more than 100") : shown(formatNumber(separation, 2));
}

/// What would tell the first two apart: a step, or the measurements that confirm them.
std::string tellingText(const Diagnosis& diagnosis) {
  const Explanation& first = diagnosis.explanations[0];
  const Explanation& second = diagnosis.explanations[1];
  const std::string which = diagnosis.tied == 2 ? say("them") : say("the first two");
  if (const auto& step = diagnosis.tellingStep)
    return say("One more step would tell {1} apart, by {2} standard uncertainties: {3}.",
               {which, separationText(step->separation), step->text});
  if (first.confirm == second.confirm)
    return say("No further step would; a measurement does: {1}", {first.confirm});
  return say("No further step would tell {1} apart; measurements do. For the first: {2} For the second: {3}",
             {which, first.confirm, second.confirm});
}

std::string tiedSentence(const Diagnosis& diagnosis) {
  const std::size_t named = std::min(diagnosis.tied, mostNamed);
  std::string text = causeText(diagnosis.explanations.front());
  for (std::size_t k = 1; k < named; ++k)
    text = say("{1}; or {2}", {text, causeText(diagnosis.explanations[k])});
  if (diagnosis.tied > named)
    text = sayCount(diagnosis.tied - named, "{1}; or {n} more", "{1}; or {n} more", {text});
  return say("Suspected causes that this plan cannot tell apart: {1}. {2} Until then each is a suspicion.",
             {text, tellingText(diagnosis)});
}

std::string nothingFitsSentence(const Diagnosis& diagnosis) {
  std::vector<std::string> clauses{
      say("No single cause explains the readings: {1} if nothing is wrong", {healthyChiSquare(diagnosis)})};
  if (!diagnosis.explanations.empty()) {
    const Explanation& best = diagnosis.explanations.front();
    clauses.push_back(say("the best one, {1}, {2}", {causeText(best), leftText(diagnosis, best)}));
  }
  return say("{1}. More than one thing may be wrong, or a reading is of another step.",
             {sayClauses(clauses)});
}

std::string ofResult(const Diagnosis& diagnosis) {
  switch (diagnosis.result) {
    case DiagnosisResult::NotPossible:
      return say(
          "No diagnosis: it takes at least three readings, one of them with a shunt closed, and their "
          "uncertainties.");
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
    text += " " +
            say("No uncertainty of the readings is stated: each is taken as good to {1} {2}, one unit of its "
                "last digit.",
                {shown(formatNumber(*diagnosis.takenDigit, 2)), readingUnitText(setup.instrument)});
  return text;
}

}  // namespace core
