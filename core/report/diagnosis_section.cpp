// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/diagnosis_section.h"

#include <algorithm>
#include <cmath>

#include "core/report/figures.h"
#include "core/units/language.h"
#include "core/units/notation.h"

namespace core {
namespace {

constexpr std::size_t printedCauses = 3, causesInFull = 2;
constexpr double leastWeight = 0.01;  ///< below it a cause is not worth a line of its own

/// Whole percents; never 100 of what is less.
std::string percentOf(double share) {
  if (share < 1 && share >= 0.995) return formatFixed(std::min(99.9, 100 * share), 1);
  return formatFixed(100 * share, 0);
}

std::string inBrackets(double value, const std::optional<double>& standard) {
  const std::string text = withError(value, standard);
  return standard ? "(" + text + ")" : text;
}

std::size_t shownCauses(const Diagnosis& diagnosis, std::size_t most) {
  return std::min(diagnosis.explanations.size(), std::max(most, diagnosis.tied));
}

/// "Less likely: Leads longer than entered (each lead 0.85 Ω more than entered, explains 74 %)."; empty
/// without.
std::string lessLikely(const Diagnosis& diagnosis) {
  std::string causes;
  for (std::size_t k = 1; k < std::min(diagnosis.explanations.size(), printedCauses); ++k) {
    const Explanation& cause = diagnosis.explanations[k];
    if (cause.weight < leastWeight) break;
    const std::string explains = say("explains {1} %", {shown(percentOf(cause.explained))});
    causes += (causes.empty() ? "" : "; ") + cause.title + " (" +
              (cause.sizeText.empty() ? "" : cause.sizeText + ", ") + explains + ")";
  }
  return causes.empty() ? causes : say("Less likely: {1}.", {causes});
}

void addCause(const Setup& setup, const Explanation& cause, bool inTable, std::vector<Block>& blocks) {
  EntryList entries = causeEntries(setup, cause, inTable);
  if (!entries.entries.empty()) blocks.push_back(std::move(entries));
  // Between two lists, which would stand side by side otherwise, too narrow for their sentences.
  const std::string advice = cause.title + ": " + correctionAdvice(cause.correction);
  if (cause.correction.legitimate)
    blocks.push_back(Paragraph{advice, {}});
  else
    blocks.push_back(Caution{advice});
}

}  // namespace

std::string suspicionStatement() {
  return say(
      "A cause is a suspicion until the measurement that would confirm it has been made. It changes no "
      "verdict.");
}

std::string diagnosisSentence(const Diagnosis& diagnosis) {
  if (!diagnosis.sentence.empty()) return diagnosis.sentence;
  return say("No diagnosis: it takes three readings at least, of steps whose uncertainty is known.");
}

std::string plausibilityWord(double plausibility) {
  if (plausibility >= 0.5) return say("ordinary");
  if (plausibility >= 0.1) return say("uncommon");
  return plausibility >= 0.01 ? say("rare") : say("far-fetched");
}

EntryList causeEntries(const Setup& setup, const Explanation& explanation, bool inTable) {
  EntryList list{say("If the cause is: {1}", {explanation.title}), {}};
  const auto add = [&](std::string name, const std::string& value) {
    if (!value.empty()) list.entries.push_back({std::move(name), value});
  };
  add(say("Size"), explanation.sizeText);
  if (!inTable)
    add(say("Explains"),
        say("{1} % of what is off; such a fault is {2}",
            {shown(percentOf(explanation.explained)), plausibilityWord(explanation.plausibility)}));
  add(say("Setting"), explanation.settings);
  add(say("To confirm"), explanation.confirm);
  add(say("Strain data"), explanation.onStrain);
  add(say("Correction"), correctionFormula(setup, explanation.correction));
  return list;
}

Information evidenceBehind(const Diagnosis& diagnosis, const Explanation& explanation) {
  Information best = explanation.information;
  for (const Explanation& other : diagnosis.explanations) {
    best.akaike = std::min(best.akaike, other.information.akaike);
    best.bayesian = std::min(best.bayesian, other.information.bayesian);
  }
  return {explanation.information.akaike - best.akaike, explanation.information.bayesian - best.bayesian};
}

std::string correctionFormula(const Setup& setup, const Correction& correction) {
  if (correction.factor == 1 && correction.offset == 0) return {};
  const std::string unit = readingUnitText(setup.instrument);
  const bool shifted = correction.offset != 0 || correction.offsetStandard;
  const std::string offset =
      shown(inBrackets(std::abs(correction.offset), correction.offsetStandard)) + " " + unit;
  std::string reading = say("reading");
  if (shifted) reading += (correction.offset < 0 ? " + " : " − ") + offset;
  if (correction.factor == 1 && !correction.factorStandard) return say("corrected = {1}", {reading});
  const std::string factor = shown(inBrackets(correction.factor, correction.factorStandard));
  return say("corrected = {1} × {2}", {factor, shifted ? "(" + reading + ")" : reading});
}

std::string correctionAdvice(const Correction& correction) {
  if (correction.legitimate)
    return correction.reason.empty() ? say("Test data may be corrected by it once it is confirmed.")
                                     : correction.reason;
  const std::string rule = say("Do not correct test data by it.");
  return correction.reason.empty() ? rule : rule + " " + correction.reason;
}

Table causeTable(const Diagnosis& diagnosis, std::size_t most) {
  Table table{say("Possible causes, the likeliest first"),
              {{say("Cause"), false, 26},
               {say("Size"), false, 31},
               {say("Explains, %"), true, 10},
               {say("Weight, %"), true, 9},
               {say("Such a fault is"), false, 12},
               {say("BIC behind best"), true, 12}},
              {}};
  for (std::size_t k = 0; k < shownCauses(diagnosis, most); ++k) {
    const Explanation& cause = diagnosis.explanations[k];
    table.rows.push_back(
        {{cause.title, cause.sizeText, percentOf(cause.explained), percentOf(cause.weight),
          plausibilityWord(cause.plausibility), shownNumber(evidenceBehind(diagnosis, cause).bayesian, 1)},
         {}});
  }
  if (diagnosis.tied > 1)
    table.note = say("The first {1} cannot be told apart by the readings of this plan.",
                     {std::to_string(diagnosis.tied)});
  return table;
}

bool allStepsPass(const CheckAssessment& assessment) {
  return !assessment.steps.empty() &&
         std::all_of(assessment.steps.begin(), assessment.steps.end(),
                     [](const StepAssessment& step) { return step.verdict == Verdict::Pass; });
}

std::string withinLimitsStatement() { return say("All steps are within their limits all the same."); }

std::vector<Block> diagnosisBlocks(const Setup& setup, const Diagnosis& diagnosis, bool allPass) {
  std::vector<Block> blocks{Paragraph{say("Diagnosis: {1}", {diagnosisSentence(diagnosis)}), {}}};
  if (diagnosis.explanations.empty()) return blocks;
  std::string suspicion = suspicionStatement();
  if (allPass) suspicion += " " + withinLimitsStatement();
  blocks.push_back(Paragraph{std::move(suspicion), {}});
  const bool isOne = diagnosis.tied <= 1;
  if (!isOne) blocks.push_back(causeTable(diagnosis, printedCauses));
  if (diagnosis.tellingStep)
    blocks.push_back(
        Paragraph{say("To tell them apart, one more step: {1}.", {diagnosis.tellingStep->text}), {}});
  const std::size_t inFull = isOne ? 1 : std::min(diagnosis.explanations.size(), causesInFull);
  for (std::size_t k = 0; k < inFull; ++k) addCause(setup, diagnosis.explanations[k], !isOne, blocks);
  if (std::string others = isOne ? lessLikely(diagnosis) : std::string(); !others.empty())
    blocks.push_back(Paragraph{std::move(others), {}});
  return blocks;
}

}  // namespace core
