// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <cmath>

#include "core/practice/explain.h"
#include "core/practice/kinds.h"
#include "core/practice/question_words.h"
#include "core/practice/random_bridge.h"
#include "core/review/arm_place.h"
#include "core/units/language.h"
#include "core/units/notation.h"

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

/// In the numbers of each shunt; of shunts alike over arms alike, what their leads do.
std::string weightSentence(const Setup& setup, const std::array<Output, 2>& changes) {
  std::array<std::string, 2> weights;
  bool leads = false;
  for (std::size_t k = 0; k < 2; ++k) {
    const Shunt& shunt = setup.shunts[k];
    const auto place = placeOf(setup.bridge, shunt);
    weights[k] = say("{1} over {2}", {ohmText(setup.bridge.arms[place->arm]), ohmText(shunt.resistance)});
    leads = leads || !place->atOwnEnds;
  }
  if (weights[0] != weights[1]) {
    const std::string& one = setup.shunts[0].name;
    const std::string& other = setup.shunts[1].name;
    return say(
        leads
            ? sayLater("What counts is the arm's resistance over the shunt's: {1} for {2} and {3} for {4}; "
                       "a shunt at the terminals spans leads too and sends its current through them.")
            : sayLater("What counts is the arm's resistance over the shunt's: {1} for {2} and {3} for {4}."),
        {weights[0], one, weights[1], other});
  }
  const double a = std::abs(changes[0].base()), b = std::abs(changes[1].base());
  return say(
      "What counts is the arm's resistance over the shunt's: {1} for both. The leads decide: a shunt at the "
      "terminals spans leads too and sends its current through them, which makes {2} larger by {3} %.",
      {weights[0], setup.shunts[a > b ? 0 : 1].name,
       shown(formatNumber(100 * (std::max(a, b) / std::min(a, b) - 1), 2))});
}

void explain(Question& question, const std::array<Output, 2>& changes) {
  const Setup& setup = question.setup;
  question.explained = setup;
  question.explainedStep = question.right + 1;
  question.explanation = {weightSentence(setup, changes)};
  for (std::size_t k = 0; k < 2; ++k)
    question.explanation.push_back(
        say("Shunt {1} makes the instrument show {2}.",
            {setup.shunts[k].name, signedReading(setup, readingOf(setup.instrument, changes[k]))}));
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
  question.text = say("Each shunt closes alone. Which gives the larger reading, sign aside?");
  for (const Shunt& shunt : setup.shunts)
    question.choices.push_back(say("Shunt {1}, {2}", {shunt.name, shuntText(setup.bridge, shunt)}));
  question.right = sizeA == more ? 0 : 1;
  explain(question, {*a, *b});
  return question;
}

}  // namespace core
