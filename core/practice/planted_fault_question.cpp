// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/diagnose/cause_words.h"
#include "core/practice/explain.h"
#include "core/practice/fault_distance.h"
#include "core/practice/kinds.h"
#include "core/practice/question_words.h"
#include "core/practice/random_bridge.h"
#include "core/units/notation.h"

namespace core {
namespace {

/// How far a wrong fault of the best size must stay from the readings, and the healthy plan too: a share of
/// the greatest reading.
constexpr double clearMiss = 0.03;
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
      return dice.of({0.5, 0.7, 0.8, 1.25, 1.5, 2.0});
    case CauseKind::Leads:
    case CauseKind::LeadContact:
      return dice.of({5.0, 10.0, 20.0, 50.0});
    case CauseKind::Leak:
      return 1 / dice.of({1e3, 2e3, 5e3, 10e3});
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
    setup.sequence.push_back({"all open", {}});
    for (const auto& [resistor, name] : {std::pair{a, "A"}, std::pair{b, "B"}}) {
      if (atTerminals)
        addShuntAtTerminals(setup, resistor, arm);
      else
        addShuntAcross(setup, resistor, arm);
      Shunt& shunt = setup.shunts.back();
      shunt.part.id = name;
      shunt.name = shunt.part.id + " on " + std::to_string(arm + 1);
      setup.sequence.back().label = shunt.name;
    }
  }
  setup.sequence.push_back({"all open", {}});
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

/// The plan as it really runs with the fault, where a picture can show that.
Setup faultyPlan(Setup setup, const Fault& fault) {
  Instrument& instrument = setup.instrument;
  switch (fault.kind) {
    case CauseKind::PolarityReversed:
      setup.bridge.hookup.signalReversed = !setup.bridge.hookup.signalReversed;
      return setup;
    case CauseKind::BridgeFactor:
      instrument.bridgeFactor = fault.size;
      return setup;
    case CauseKind::Scale:
      if (instrument.unit == ReadingUnit::MicrometrePerMetre) instrument.gaugeFactor /= fault.size;
      if (instrument.unit == ReadingUnit::Scaled) instrument.unitsPerMillivoltPerVolt *= fault.size;
      if (instrument.unit == ReadingUnit::Millivolt)
        instrument.excitation = fault.size * instrument.excitation;
      return setup;
    case CauseKind::StepsExchanged:
      std::swap(setup.sequence[fault.index].closed, setup.sequence[fault.other].closed);
      return setup;
    case CauseKind::SidesExchanged:
      std::swap(setup.sequence[1].closed, setup.sequence[4].closed);
      std::swap(setup.sequence[2].closed, setup.sequence[5].closed);
      return setup;
    case CauseKind::ShuntOpen: {
      // A resistance without end would have to be drawn; a shunt that never closes is in no step.
      const Setup open = withFault(setup, fault);
      for (Step& step : setup.sequence)
        std::erase_if(step.closed, [&](std::size_t k) { return open.shunts[k] != setup.shunts[k]; });
      return setup;
    }
    default:
      return withFault(std::move(setup), fault);
  }
}

/// The planted fault, its readings, and three others that do not explain them.
struct Planted {
  Nearest right;
  std::vector<double> shown;
  std::vector<Nearest> wrong;
};

double missOf(const std::vector<double>& a, const std::vector<double>& b, double reach) {
  double miss = 0;
  for (std::size_t k = 0; k < a.size(); ++k) miss = std::max(miss, std::abs(a[k] - b[k]));
  return miss / reach;
}

/// Three of `candidates` that do not explain the readings; in harder questions those that come nearest.
std::vector<Nearest> wrongOnes(const ReadGround& ground, const std::vector<Fault>& candidates,
                               const Planted& planted, Difficulty difficulty) {
  std::vector<Nearest> wrong;
  for (const Fault& fault : candidates) {
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

/// One fault of each kind, kinds and faults at random.
std::vector<Fault> oneOfEachKind(std::vector<Fault> faults, Dice& dice) {
  dice.shuffle(faults);
  std::vector<Fault> one;
  for (const Fault& fault : faults)
    if (std::none_of(one.begin(), one.end(), [&](const Fault& other) { return other.kind == fault.kind; }))
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
  if (!readings || missOf(*readings, ground.points.expected, ground.greatest()) < 2 * clearMiss)
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
  const std::string unit = ", " + readingUnitText(ground.setup.instrument);
  const int places = displayPlaces(ground.greatest());
  Table table{"", {{"Step", true}, {"Closed"}, {"Expected" + unit, true}, {"Shown" + unit, true}}, {}};
  for (std::size_t k = 0; k < shown.size(); ++k)
    table.rows.push_back({{std::to_string(k + 1), ground.setup.sequence[k].label,
                           formatFixed(ground.points.expected[k], places), formatFixed(shown[k], places)},
                          {}});
  return table;
}

/// The step where two rows of readings lie furthest apart.
std::size_t furthest(const std::vector<double>& a, const std::vector<double>& b) {
  std::size_t worst = 0;
  for (std::size_t k = 0; k < a.size(); ++k)
    if (std::abs(a[k] - b[k]) > std::abs(a[worst] - b[worst])) worst = k;
  return worst;
}

std::string withSize(const Setup& setup, const Fault& fault) {
  std::string text = causeTitle(setup, fault);
  if (hasFreeSize(fault.kind))
    if (const std::string size = sizeWords(setup, fault, std::nullopt); !size.empty()) text += ", " + size;
  if (const std::string setting = settingWords(setup, fault, std::nullopt); !setting.empty())
    text += " (" + setting + ")";
  return text;
}

/// "At best: Resistor A off its value, A acts as ...: step 3 would show 12 µm/m where 34 stands."
std::string whyNot(const ReadGround& ground, const Nearest& wrong, const std::vector<double>& shown) {
  constexpr double noEffect = 1e-3;
  const std::size_t worst = furthest(wrong.readings, shown);
  const int places = displayPlaces(ground.greatest());
  const bool none =
      wrong.atEnd || missOf(wrong.readings, ground.points.expected, ground.greatest()) < noEffect;
  std::string text = none ? causeTitle(ground.setup, wrong.fault) : withSize(ground.setup, wrong.fault);
  if (hasFreeSize(wrong.fault.kind)) text = none ? "No size of it helps: " + text : "At best: " + text;
  return text + ": step " + std::to_string(worst + 1) + " would show " +
         formatFixed(wrong.readings[worst], places) + " " + readingUnitText(ground.setup.instrument) +
         " where " + formatFixed(shown[worst], places) + " stands.";
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

void explain(Question& question, const ReadGround& ground, const Planted& planted) {
  const Setup& setup = ground.setup;
  question.explained = faultyPlan(setup, planted.right.fault);
  question.explainedStep = tellingStep(ground, planted.shown);
  question.explanation = {withSize(setup, planted.right.fault) +
                          ": it gives all readings to the last digit shown."};
  for (const Nearest& wrong : planted.wrong)
    question.explanation.push_back(whyNot(ground, wrong, planted.shown));
  question.explanation.push_back("To make sure: " + confirmWords(setup, planted.right.fault));
  const std::string step = "step " + std::to_string(question.explainedStep + 1);
  question.formula = {"As planned, " + step + ":"};
  append(question.formula, outputLines(setup, question.explainedStep));
  append(question.formula, readingLines(setup, question.explainedStep));
  if (question.explained == setup || question.explained.sequence[question.explainedStep].closed.empty())
    return;
  question.formula.push_back("With the fault, " + step + ":");
  append(question.formula, outputLines(question.explained, question.explainedStep));
  append(question.formula, readingLines(question.explained, question.explainedStep));
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
  question.text = "The sequence was run, and the readings are not as expected. One thing is wrong: what?";
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
