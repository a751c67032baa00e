// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/practice/explain.h"
#include "core/practice/kinds.h"
#include "core/practice/question_words.h"
#include "core/practice/random_bridge.h"
#include "core/review/arm_place.h"
#include "core/units/language.h"

namespace core {
namespace {

/// What two shunts together must leave of the larger one, so that 5 % of the sum can be met by hand.
constexpr double leastRest = 0.5;

/// One shunt, or in half of the thorough questions two in one step, at arms of their own.
void addShunts(Setup& setup, Dice& dice, Difficulty difficulty) {
  const std::size_t arm = dice.below(4);
  addRandomShunt(setup, dice, difficulty, randomResistor(dice, setup.bridge.arms[arm]), arm);
  if (difficulty != Difficulty::Thorough || !dice.oneIn(2)) return;
  const std::size_t second = (arm + 1 + dice.below(3)) % 4;
  addRandomShunt(setup, dice, difficulty, randomResistor(dice, setup.bridge.arms[second]), second);
  setup.sequence.push_back({say("A and B closed"), {0, 1}});
}

/// The textbook's result must be right for who checks by it, or wrong beyond doubt.
constexpr double textbookRight = 0.025, textbookWrong = 0.1;

/// Each shunt by R/(4 Rs + 2 R) of the arm that it lies over, without leads: down over arms 1 and 3, up over
/// 2 and 4, turned by each pair of wires that is reversed (Micro-Measurements TN-514).
double textbookChange(const Setup& setup) {
  double change = 0;
  for (const Shunt& shunt : setup.shunts) {
    const auto place = placeOf(setup.bridge, shunt);
    if (!place) continue;
    const double r = setup.bridge.arms[place->arm].base(), rs = resistanceOf(shunt).base();
    change += (place->arm % 2 == 0 ? -1 : 1) * r / (4 * rs + 2 * r);
  }
  const Hookup& hookup = setup.bridge.hookup;
  return hookup.signalReversed != hookup.excitationReversed ? -change : change;
}

bool isInDoubt(const Setup& setup, Output change) {
  const double off = std::abs(textbookChange(setup) / change.base() - 1);
  return off > textbookRight && off < textbookWrong;
}

bool isClear(const Setup& setup, Output change) {
  double greatest = 2 * clearOutput.base();
  for (std::size_t step = 1; step < setup.sequence.size(); ++step)
    if (const auto alone = changeAt(setup, step))
      greatest = std::max(greatest, leastRest * std::abs(alone->base()));
  return std::abs(change.base()) >= greatest;
}

std::string factorSentence(const Setup& setup) {
  const Instrument& instrument = setup.instrument;
  const std::string unit = readingUnitText(instrument);
  switch (instrument.unit) {
    case ReadingUnit::MicrometrePerMetre:
      return say(
          "The instrument reckons 4 times the change of output over gauge factor and bridge factor as set.");
    case ReadingUnit::Millivolt:
      return say("The instrument shows the signal itself: the change of output times the excitation.");
    case ReadingUnit::Scaled:
      return say("The instrument multiplies the change of output in mV/V with its scale.");
    case ReadingUnit::MillivoltPerVolt:
      break;
  }
  return say("The instrument shows the change of output itself.");
}

}  // namespace

std::optional<Question> readingQuestion(Dice& dice, Difficulty difficulty) {
  Question question;
  Setup& setup = question.setup;
  setup = randomSetup(dice, difficulty);
  addShunts(setup, dice, difficulty);
  const bool two = setup.shunts.size() > 1;
  const std::size_t asked = setup.sequence.size() - 1;
  const auto change = changeAt(setup, asked);
  if (!change || !isClear(setup, *change) || isInDoubt(setup, *change)) return std::nullopt;

  question.given = givenOf(setup);
  question.given.push_back(instrumentEntry(setup));
  question.unit = readingUnitText(setup.instrument);
  question.text = say("{1} What does the instrument show, in {2}?",
                      {two ? say("Shunts A and B close together.") : say("Shunt A closes."), question.unit});
  question.number = readingOf(setup.instrument, *change);
  question.explained = setup;
  question.explainedStep = asked;
  question.explanation = ruleSentences(setup, asked);
  append(question.explanation, networkSentences(setup, asked));
  question.explanation.push_back(factorSentence(setup));
  question.formula = outputLines(setup, asked);
  append(question.formula, readingLines(setup, asked));
  return question;
}

}  // namespace core
