// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/practice/explain.h"
#include "core/practice/kinds.h"
#include "core/practice/question_words.h"
#include "core/practice/random_bridge.h"
#include "core/review/arm_place.h"

namespace core {
namespace {

/// Readings further apart than this are no question.
constexpr double greatestRatio = 5;
/// Arms within this of each other count as alike.
constexpr double alikeArms = 0.01;

/// Whether more than their ohms tells the two shunts apart: arms of other resistance, or leads between.
bool placesDiffer(const Setup& setup) {
  const auto a = placeOf(setup.bridge, setup.shunts[0]), b = placeOf(setup.bridge, setup.shunts[1]);
  if (!a || !b) return false;
  const double ratio = setup.bridge.arms[a->arm] / setup.bridge.arms[b->arm];
  return std::abs(ratio - 1) > alikeArms || a->atOwnEnds != b->atOwnEnds;
}

/// "With all arms alike a smaller resistor gives a larger reading; here ..." in the numbers of each shunt.
std::string weightSentence(const Setup& setup) {
  std::string text = "What counts is the arm's resistance over the shunt's: ";
  for (std::size_t k = 0; k < 2; ++k) {
    const Shunt& shunt = setup.shunts[k];
    const Resistance arm = setup.bridge.arms[placeOf(setup.bridge, shunt)->arm];
    text +=
        (k > 0 ? " and " : "") + ohmText(arm) + " over " + ohmText(shunt.resistance) + " for " + shunt.name;
  }
  const bool leads = !placeOf(setup.bridge, setup.shunts[0])->atOwnEnds ||
                     !placeOf(setup.bridge, setup.shunts[1])->atOwnEnds;
  if (leads) text += "; a shunt at the terminals spans leads too and sends its current through them";
  return text + ".";
}

void explain(Question& question, const std::array<Reading, 2>& readings) {
  const Setup& setup = question.setup;
  question.explained = setup;
  question.explainedStep = question.right + 1;
  question.explanation = {weightSentence(setup)};
  for (std::size_t k = 0; k < 2; ++k)
    question.explanation.push_back("Shunt " + setup.shunts[k].name + " makes the instrument show " +
                                   signedReading(setup, readings[k]) + ".");
  append(question.explanation, networkSentences(setup, question.explainedStep));
  for (const std::size_t step : {1, 2}) {
    append(question.formula, outputLines(setup, step));
    append(question.formula, readingLines(setup, step));
  }
}

}  // namespace

std::optional<Question> largerShuntQuestion(Dice& dice, Difficulty difficulty) {
  const bool halves = difficulty == Difficulty::First || !dice.oneIn(3);
  Question question;
  Setup& setup = question.setup;
  setup = randomSetup(dice, difficulty, {.unequalHalves = halves, .longLeads = !halves});
  const std::size_t first = dice.below(4), second = dice.below(4);
  const Resistance resistor = randomResistor(dice, setup.bridge.arms[first]);
  addRandomShunt(setup, dice, difficulty, resistor, first);
  addRandomShunt(setup, dice, difficulty,
                 dice.oneIn(2) ? resistor : randomResistor(dice, setup.bridge.arms[second]), second);
  if (!placesDiffer(setup)) return std::nullopt;
  const auto a = changeAt(setup, 1), b = changeAt(setup, 2);
  if (!a || !b) return std::nullopt;
  const double sizeA = std::abs(a->base()), sizeB = std::abs(b->base());
  const double less = std::min(sizeA, sizeB), more = std::max(sizeA, sizeB);
  if (less < clearOutput.base() || more <= (1 + clearDifference) * less || more > greatestRatio * less)
    return std::nullopt;

  question.given = givenOf(setup);
  question.given.push_back(instrumentEntry(setup));
  question.text = "Each shunt closes alone. Which gives the larger reading, sign aside?";
  for (const Shunt& shunt : setup.shunts)
    question.choices.push_back("Shunt " + shunt.name + ", " + shuntText(setup.bridge, shunt));
  question.right = sizeA == more ? 0 : 1;
  explain(question, {readingOf(setup.instrument, *a), readingOf(setup.instrument, *b)});
  return question;
}

}  // namespace core
