// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "core/practice/explain.h"
#include "core/practice/kinds.h"
#include "core/practice/question_words.h"
#include "core/practice/random_bridge.h"
#include "core/units/language.h"

namespace core {
namespace {

/// From excitation to excitation, or over the output: it loads the bridge and unbalances nothing.
void addDiagonalShunt(Setup& setup, Dice& dice) {
  const Resistance resistor = randomResistor(dice, setup.bridge.arms[0]);
  if (dice.oneIn(2))
    addShunt(setup, resistor, Node::PPlus, Node::PMinus);
  else
    addShunt(setup, resistor, Node::SPlus, Node::SMinus);
}

/// One shunt, or in thorough questions two in one step.
void addAskedShunts(Setup& setup, Dice& dice, Difficulty difficulty) {
  if (dice.oneIn(8)) return addDiagonalShunt(setup, dice);
  const std::size_t arm = dice.below(4);
  const Resistance resistor = randomResistor(dice, setup.bridge.arms[arm]);
  addRandomShunt(setup, dice, difficulty, resistor, arm);
  if (difficulty != Difficulty::Thorough || !dice.oneIn(2)) return;
  const std::size_t second = (arm + 1 + dice.below(3)) % 4;
  addRandomShunt(setup, dice, difficulty,
                 dice.oneIn(3) ? resistor : randomResistor(dice, setup.bridge.arms[second]), second);
  setup.sequence = {{say("all open"), {}}, {say("A and B closed"), {0, 1}}};
}

}  // namespace

std::optional<Question> signQuestion(Dice& dice, Difficulty difficulty) {
  Question question;
  Setup& setup = question.setup;
  setup = randomSetup(dice, difficulty);
  addAskedShunts(setup, dice, difficulty);
  const auto change = changeAt(setup, 1);
  if (!change) return std::nullopt;
  const double size = std::abs(change->base());
  if (size > noOutput.base() && size < clearOutput.base()) return std::nullopt;

  const bool two = setup.shunts.size() > 1;
  question.given = givenOf(setup);
  question.text = two ? say("Shunts A and B close together. Which way does the output go?")
                      : say("Shunt A closes. Which way does the output go?");
  question.choices = {say("It rises: positive"), say("It falls: negative"), say("It stays as it is")};
  question.right = size < noOutput.base() ? 2 : change->base() > 0 ? 0 : 1;
  question.explained = setup;
  question.explainedStep = 1;
  question.explanation = ruleSentences(setup, 1);
  append(question.explanation, networkSentences(setup, 1, false));
  question.formula = outputLines(setup, 1);
  return question;
}

}  // namespace core
