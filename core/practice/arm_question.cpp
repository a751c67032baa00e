// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/practice/explain.h"
#include "core/practice/kinds.h"
#include "core/practice/question_words.h"
#include "core/practice/random_bridge.h"
#include "core/units/language.h"

namespace core {
namespace {

/// The shunt at one of the places that are offered, and what it does there.
struct Tried {
  Setup setup;
  Output change;
};

/// None unless the output moves clearly.
std::optional<Tried> triedAt(const Setup& bare, Resistance resistor, std::size_t arm, bool atTerminals) {
  Tried tried{bare, {}};
  if (atTerminals)
    addShuntAtTerminals(tried.setup, resistor, arm);
  else
    addShuntAcross(tried.setup, resistor, arm);
  const auto change = changeAt(tried.setup, 1);
  if (!change || std::abs(change->base()) < clearOutput.base()) return std::nullopt;
  tried.change = *change;
  return tried;
}

std::string choiceText(const Tried& tried) {
  std::string text = placeText(tried.setup.bridge, tried.setup.shunts.front());
  text[0] = static_cast<char>(text[0] - 'a' + 'A');
  return text;
}

/// "Right across arm 1 the instrument would show -739 µm/m."
std::string wouldShow(const Tried& tried) {
  return say(
      "{1} the instrument would show {2}.",
      {choiceText(tried), signedReading(tried.setup, readingOf(tried.setup.instrument, tried.change))});
}

/// What all questions for an arm have in common: the choices, the answer and why.
Question questionFor(const Setup& bare, const std::vector<Tried>& tried, std::size_t right) {
  Question question;
  question.setup = bare;
  question.given = givenOf(bare);
  question.given.push_back(instrumentEntry(bare));
  for (const Tried& one : tried) question.choices.push_back(choiceText(one));
  question.right = right;
  question.explained = tried[right].setup;
  question.explainedStep = 1;
  question.explanation = ruleSentences(question.explained, 1);
  append(question.explanation, networkSentences(question.explained, 1));
  for (std::size_t k = 0; k < tried.size(); ++k)
    if (k != right) question.explanation.push_back(wouldShow(tried[k]));
  question.formula = outputLines(question.explained, 1);
  append(question.formula, readingLines(question.explained, 1));
  return question;
}

/// A sign is wanted, and three places are offered, one of which gives it.
std::optional<Question> forWantedSign(Dice& dice, Difficulty difficulty) {
  const Setup bare = randomSetup(dice, difficulty);
  const bool atTerminals = difficulty != Difficulty::First && dice.oneIn(3);
  const std::size_t rightArm = dice.below(4);
  const Resistance resistor = randomResistor(dice, bare.bridge.arms[rightArm]);
  // The neighbours of an arm have the other sign, the opposite arm has the same.
  std::vector<std::size_t> arms{rightArm, (rightArm + 1) % 4, (rightArm + 3) % 4};
  std::sort(arms.begin(), arms.end());
  std::vector<Tried> tried;
  std::size_t right = 0;
  for (const std::size_t arm : arms) {
    auto one = triedAt(bare, resistor, arm, atTerminals);
    if (!one) return std::nullopt;
    if (arm == rightArm) right = tried.size();
    tried.push_back(*std::move(one));
  }
  const bool rises = tried[right].change.base() > 0;
  for (std::size_t k = 0; k < tried.size(); ++k)
    if (k != right && (tried[k].change.base() > 0) == rises) return std::nullopt;
  Question question = questionFor(bare, tried, right);
  question.text = say(
      rises ? sayLater("A shunt of {1} is to make the output rise. At which of these places does it do so?")
            : sayLater("A shunt of {1} is to make the output fall. At which of these places does it do so?"),
      {ohmText(resistor)});
  return question;
}

bool clearlyDiffer(Output a, Output b) {
  const double greater = std::max(std::abs(a.base()), std::abs(b.base()));
  return std::abs((a - b).base()) > clearDifference * greater;
}

/// A reading is shown that only one of the four arms gives: sign and size both tell.
std::optional<Question> forShownReading(Dice& dice, Difficulty difficulty) {
  const Setup bare = randomSetup(dice, difficulty, {.unequalHalves = true});
  const std::size_t right = dice.below(4);
  const Resistance resistor = randomResistor(dice, bare.bridge.arms[right]);
  std::vector<Tried> tried;
  for (const std::size_t arm : {0, 1, 2, 3}) {
    auto one = triedAt(bare, resistor, arm, false);
    if (!one) return std::nullopt;
    tried.push_back(*std::move(one));
  }
  for (const std::size_t arm : {0, 1, 2, 3})
    if (arm != right && !clearlyDiffer(tried[arm].change, tried[right].change)) return std::nullopt;
  Question question = questionFor(bare, tried, right);
  question.text = say(
      "A shunt of {1} lies right across one arm. When it closes, the instrument shows {2}. Which arm is it?",
      {ohmText(resistor), signedReading(bare, readingOf(bare.instrument, tried[right].change))});
  return question;
}

}  // namespace

std::optional<Question> armQuestion(Dice& dice, Difficulty difficulty) {
  const bool byReading = dice.oneIn(difficulty == Difficulty::First ? 3 : 2);
  return byReading ? forShownReading(dice, difficulty) : forWantedSign(dice, difficulty);
}

}  // namespace core
