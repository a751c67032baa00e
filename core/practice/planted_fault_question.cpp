// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/diagnose/cause_words.h"
#include "core/practice/explain.h"
#include "core/practice/fault_distance.h"
#include "core/practice/fault_words.h"
#include "core/practice/kinds.h"
#include "core/practice/question_words.h"
#include "core/practice/random_bridge.h"
#include "core/units/language.h"
#include "core/units/notation.h"

namespace core {
namespace {

/// How far a wrong fault of the best size must stay from the readings: a share of the greatest reading.
constexpr double clearMiss = 0.03;
/// How far the planted fault must take them from the plan's.
constexpr double seenMiss = 0.04;
constexpr std::size_t wrongChoices = 3;

bool isOffered(CauseKind kind, Difficulty difficulty) {
  switch (kind) {
    case CauseKind::PolarityReversed:
    case CauseKind::BridgeFactor:
    case CauseKind::ShuntOpen:
    case CauseKind::ShuntsExchanged:
    case CauseKind::ShuntValue:
    case CauseKind::StepsExchanged:
    case CauseKind::Scale:
      return true;
    case CauseKind::Leads:
    case CauseKind::LeadContact:
    case CauseKind::ShuntPlace:
    case CauseKind::SidesExchanged:
    case CauseKind::ArmValue:
    case CauseKind::CompletionValue:
    case CauseKind::ZeroShift:
      return difficulty != Difficulty::First;
    case CauseKind::Leak:
    case CauseKind::Drift:
    case CauseKind::Clipping:
    case CauseKind::StrayReading:
      return difficulty == Difficulty::Thorough;
    default:
      return false;
  }
}

/// A usual size of the fault for this plan.
double plantedSize(const ReadGround& ground, const Fault& fault, Dice& dice) {
  const double reach = ground.greatest();
  switch (fault.kind) {
    case CauseKind::Scale:
      return dice.of({0.5, 0.8, 0.9, 1.1, 1.2, 2.0});
    case CauseKind::ShuntValue:
      return dice.of({0.5, 0.8, 0.9, 1.1, 1.25, 2.0});
    case CauseKind::ArmValue:
    case CauseKind::CompletionValue:
      // More would not be balanced any more: 5 % of an arm are 12.5 mV/V already.
      return dice.of({0.95, 1.05});
    case CauseKind::Leads:
      return dice.of({2.0, 5.0, 10.0});
    case CauseKind::LeadContact:
      return dice.of({5.0, 10.0, 20.0});
    case CauseKind::Leak:
      return 1 / dice.of({2e3, 5e3, 10e3});
    case CauseKind::ZeroShift:
    case CauseKind::StrayReading:
      return reach * dice.of({-0.4, -0.2, -0.1, 0.1, 0.2, 0.4});
    case CauseKind::Drift:
      // A step takes 2.5 s, the usual sequence here some 17 s.
      return reach * dice.of({-0.03, -0.02, -0.01, 0.01, 0.02, 0.03});
    case CauseKind::Clipping:
      return reach * dice.of({0.4, 0.6, 0.8});
    default:
      return fault.size;
  }
}

/// Resistors A and B over an arm and its neighbour, between zero steps.
Setup plannedSetup(Dice& dice, Difficulty difficulty) {
  Setup setup = randomSetup(dice, difficulty, {.hookup = false, .leaks = false});
  const std::size_t first = difficulty == Difficulty::First ? dice.below(2) : dice.below(4);
  const bool atTerminals = difficulty != Difficulty::First && dice.oneIn(4);
  const Resistance least = setup.bridge.arms[first];
  const Resistance a = randomResistor(dice, least), b = randomResistor(dice, least);
  setup.sequence.clear();
  for (const std::size_t arm : {first, first ^ 1U}) {
    setup.sequence.push_back({say("all open"), {}});
    for (const auto& [resistor, name] : {std::pair{a, "A"}, std::pair{b, "B"}}) {
      if (atTerminals)
        addShuntAtTerminals(setup, resistor, arm);
      else
        addShuntAcross(setup, resistor, arm);
      Shunt& shunt = setup.shunts.back();
      shunt.part.id = name;
      shunt.name = say("{1} on {2}", {shunt.part.id, std::to_string(arm + 1)});
      setup.sequence.back().label = shunt.name;
    }
  }
  setup.sequence.push_back({say("all open"), {}});
  return setup;
}

bool resistorsDiffer(const Setup& setup) {
  const double ratio = setup.shunts[0].resistance / setup.shunts[1].resistance;
  return ratio > 1.4 || ratio < 1 / 1.4;
}

/// As an instrument of five digits shows them.
std::vector<double> rounded(std::vector<double> readings, int places) {
  double power = 1;
  for (int k = 0; k < places; ++k) power *= 10;
  for (double& reading : readings) reading = std::round(reading * power) / power;
  return readings;
}

/// The planted fault, its readings, and three others that do not explain them.
struct Planted {
  Nearest right;
  std::vector<double> shown;
  std::vector<Nearest> wrong;
};

/// Three of `candidates` that do not explain the readings; in harder questions those that come nearest.
std::vector<Nearest> wrongOnes(const ReadGround& ground, const std::vector<Fault>& candidates,
                               const Planted& planted, Difficulty difficulty) {
  std::vector<Nearest> wrong;
  for (const Fault& fault : candidates) {
    if (isOfScale(fault.kind) && isOfScale(planted.right.fault.kind)) continue;
    if (difficulty == Difficulty::First && wrong.size() == wrongChoices) break;
    const auto one = nearest(ground, fault, planted.shown);
    if (one && one->distance > clearMiss &&
        causeTitle(ground.setup, one->fault) != causeTitle(ground.setup, planted.right.fault))
      wrong.push_back(*one);
  }
  std::stable_sort(wrong.begin(), wrong.end(),
                   [](const Nearest& a, const Nearest& b) { return a.distance < b.distance; });
  if (wrong.size() > wrongChoices) wrong.erase(wrong.begin() + wrongChoices, wrong.end());
  return wrong;
}

/// One fault of each kind, kinds and faults at random; of the kinds that are a scale one only.
std::vector<Fault> oneOfEachKind(std::vector<Fault> faults, Dice& dice) {
  dice.shuffle(faults);
  std::vector<Fault> one;
  const auto alike = [](CauseKind a, CauseKind b) { return a == b || (isOfScale(a) && isOfScale(b)); };
  for (const Fault& fault : faults)
    if (std::none_of(one.begin(), one.end(),
                     [&](const Fault& other) { return alike(other.kind, fault.kind); }))
      one.push_back(fault);
  dice.shuffle(one);
  return one;
}

std::optional<Planted> plant(const ReadGround& ground, const std::vector<Fault>& faults, Dice& dice,
                             Difficulty difficulty) {
  Planted planted;
  Fault right = oneOfEachKind(faults, dice).front();
  right.size = plantedSize(ground, right, dice);
  const auto readings = readingsUnder(ground, right);
  if (!readings || missOf(*readings, ground.points.expected, ground.greatest()) < seenMiss)
    return std::nullopt;
  planted.right = {right, *readings};
  planted.shown = rounded(*readings, displayPlaces(ground.greatest()));
  planted.wrong = wrongOnes(ground, oneOfEachKind(faults, dice), planted, difficulty);
  if (planted.wrong.size() < wrongChoices) return std::nullopt;
  return planted;
}

/// Whether the fault is one that a person would think of: readings that are taken for one another are of
/// steps with shunts, and the zero reference is not in doubt.
bool isThinkable(const Setup& setup, const Fault& fault) {
  if (fault.kind == CauseKind::StepsExchanged)
    return !setup.sequence[fault.index].closed.empty() && !setup.sequence[fault.other].closed.empty();
  if (fault.kind == CauseKind::LeadContact)
    return fault.index != static_cast<std::size_t>(LeadRole::SensePlus) &&
           fault.index != static_cast<std::size_t>(LeadRole::SenseMinus);
  return fault.kind != CauseKind::StrayReading || fault.index > 0;
}

Table readingsTable(const ReadGround& ground, const std::vector<double>& shown) {
  const std::string unit = readingUnitText(ground.setup.instrument);
  const int places = displayPlaces(ground.greatest());
  Table table{"",
              {{say("Step"), true},
               {say("Closed")},
               {say("Expected, {1}", {unit}), true},
               {say("Shown, {1}", {unit}), true}},
              {}};
  for (std::size_t k = 0; k < shown.size(); ++k)
    table.rows.push_back({{std::to_string(k + 1), ground.setup.sequence[k].label,
                           core::shown(formatFixed(ground.points.expected[k], places)),
                           core::shown(formatFixed(shown[k], places))},
                          {}});
  return table;
}

/// The step with a closed shunt that the fault moves most.
std::size_t tellingStep(const ReadGround& ground, const std::vector<double>& shown) {
  std::size_t worst = 1;
  for (std::size_t k = 1; k < shown.size(); ++k) {
    if (ground.setup.sequence[k].closed.empty()) continue;
    const auto away = [&](std::size_t at) { return std::abs(shown[at] - ground.points.expected[at]); };
    if (away(k) > away(worst)) worst = k;
  }
  return worst;
}

/// What tells the fault: a step as planned and with it; of a fault of readings alone what becomes of one.
std::vector<std::string> faultLines(const Question& question, const ReadGround& ground,
                                    const Planted& planted) {
  const Setup &setup = ground.setup, &faulty = question.explained;
  const std::size_t at = question.explainedStep;
  if (faulty == setup) {
    const std::size_t moved = furthest(planted.shown, ground.points.expected);
    return {readingLine(ground, planted.right.fault, moved, planted.shown)};
  }
  const std::string step = say("step {1}", {std::to_string(at + 1)});
  std::vector<std::string> lines{say("As planned, {1}:", {step})};
  append(lines, outputLines(setup, at));
  append(lines, readingLines(setup, at));
  if (faulty.sequence[at].closed.empty()) {
    lines.push_back(say("With the fault, {1}: no shunt closes, and the reading stays at zero.", {step}));
    return lines;
  }
  lines.push_back(say("With the fault, {1}:", {step}));
  // A wrong setting leaves the output as it is.
  if (!isOfScale(planted.right.fault.kind)) append(lines, outputLines(faulty, at));
  append(lines, readingLines(faulty, at));
  return lines;
}

void explain(Question& question, const ReadGround& ground, const Planted& planted) {
  const Setup& setup = ground.setup;
  question.explained = faultyPlan(setup, planted.right.fault);
  question.explainedStep = tellingStep(ground, planted.shown);
  question.explanation = {
      say("{1}: it gives all readings to the last digit shown.", {withSize(setup, planted.right.fault)})};
  for (const Nearest& wrong : planted.wrong)
    question.explanation.push_back(whyNot(ground, wrong, planted.shown));
  question.explanation.push_back(say("To make sure: {1}", {confirmWords(setup, planted.right.fault)}));
  question.formula = faultLines(question, ground, planted);
}

}  // namespace

std::optional<Question> plantedFaultQuestion(Dice& dice, Difficulty difficulty) {
  Question question;
  question.setup = plannedSetup(dice, difficulty);
  if (!resistorsDiffer(question.setup)) return std::nullopt;
  const auto ground = readGround(question.setup);
  if (!ground) return std::nullopt;
  std::vector<Fault> faults = possibleFaults(question.setup, ground->points);
  std::erase_if(faults, [&](const Fault& fault) {
    return !isOffered(fault.kind, difficulty) || !isThinkable(question.setup, fault);
  });
  const auto planted = plant(*ground, faults, dice, difficulty);
  if (!planted) return std::nullopt;

  question.given = givenOf(question.setup);
  question.given.push_back(instrumentEntry(question.setup));
  question.text =
      say("The sequence was run, and the readings are not as expected. One thing is wrong: what?");
  question.readings = readingsTable(*ground, planted->shown);
  std::vector<Nearest> choices = planted->wrong;
  question.right = dice.below(wrongChoices + 1);
  choices.insert(choices.begin() + static_cast<std::ptrdiff_t>(question.right), planted->right);
  for (const Nearest& choice : choices) {
    question.choices.push_back(causeTitle(question.setup, choice.fault));
    question.faults.push_back(choice.fault);
  }
  explain(question, *ground, *planted);
  return question;
}

}  // namespace core
