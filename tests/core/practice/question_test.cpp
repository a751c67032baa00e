// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/practice/question.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

using namespace core;

namespace {

constexpr std::uint64_t seeds = 300;

const std::vector<Difficulty>& allDifficulties() {
  static const std::vector<Difficulty> all{Difficulty::First, Difficulty::Further, Difficulty::Thorough};
  return all;
}

/// `seeds` of each difficulty, drawn once.
const std::vector<Question>& questionsOf(QuestionKind kind) {
  static std::map<QuestionKind, std::vector<Question>> drawn;
  std::vector<Question>& questions = drawn[kind];
  if (questions.empty())
    for (const Difficulty difficulty : allDifficulties())
      for (std::uint64_t seed = 1; seed <= seeds; ++seed)
        questions.push_back(questionOf(seed, 0, difficulty, {kind}));
  return questions;
}

/// Calls `look` with each of them.
template <class Look>
void forEachOf(QuestionKind kind, Look look) {
  for (std::size_t k = 0; k < questionsOf(kind).size(); ++k) {
    const Question& question = questionsOf(kind)[k];
    SCOPED_TRACE(std::string(questionKindKey(kind)) + ", " + std::string(difficultyKey(question.difficulty)) +
                 ", seed " + std::to_string(k % seeds + 1));
    look(question);
  }
}

bool sameText(const Question& a, const Question& b) {
  const auto rows = [](const Question& question) {
    std::vector<std::vector<std::string>> cells;
    for (const TableRow& row : question.readings.rows) cells.push_back(row.cells);
    return cells;
  };
  return a.text == b.text && a.choices == b.choices && a.right == b.right && a.unit == b.unit &&
         a.explanation == b.explanation && a.formula == b.formula && rows(a) == rows(b);
}

bool same(const Question& a, const Question& b) {
  return a.kind == b.kind && a.difficulty == b.difficulty && a.setup == b.setup && a.step == b.step &&
         a.number == b.number && a.faults == b.faults && a.explained == b.explained &&
         a.explainedStep == b.explainedStep && sameText(a, b);
}

void expectText(const std::string& text) {
  EXPECT_FALSE(text.empty());
  // A number that is none, or a resistance without end.
  for (const char* bad : {"nan", "inf", "–", "e+0", "e+1", "e-0", "e-1", "  ", "..", "which reads as"})
    EXPECT_EQ(text.find(bad), std::string::npos) << text;
}

void expectTexts(const std::vector<std::string>& texts) {
  EXPECT_FALSE(texts.empty());
  for (const std::string& text : texts) expectText(text);
}

void expectWellFormed(const Question& question) {
  expectText(question.text);
  expectTexts(question.explanation);
  expectTexts(question.formula);
  EXPECT_GE(question.given.size(), 4U);
  for (const Entry& entry : question.given) {
    expectText(entry.name);
    expectText(entry.value);
  }
  ASSERT_LT(question.step, question.setup.sequence.size());
  ASSERT_LT(question.explainedStep, question.explained.sequence.size());
  EXPECT_EQ(question.choices.empty(), question.number.has_value()) << "choices or a number";
  EXPECT_EQ(question.unit.empty(), !question.number);
  if (question.number) {
    EXPECT_TRUE(std::isfinite(question.number->base()));
    EXPECT_GT(std::abs(question.number->base()), 0.01);
    EXPECT_LT(std::abs(question.number->base()), 20000);
    return;
  }
  EXPECT_LT(question.right, question.choices.size());
  for (const std::string& choice : question.choices) expectText(choice);
  EXPECT_EQ(std::set(question.choices.begin(), question.choices.end()).size(), question.choices.size());
}

}  // namespace

TEST(Practice, SameSeedGivesTheSameQuestions) {
  for (const Difficulty difficulty : allDifficulties()) {
    const auto once = questionSet(7, 25, difficulty, allQuestionKinds());
    const auto again = questionSet(7, 25, difficulty, allQuestionKinds());
    ASSERT_EQ(once.size(), 25U);
    for (std::size_t k = 0; k < once.size(); ++k) EXPECT_TRUE(same(once[k], again[k])) << k;
  }
}

TEST(Practice, OtherSeedsAndPlacesInTheSetGiveOtherQuestions) {
  for (const QuestionKind kind : allQuestionKinds())
    for (const Difficulty difficulty : allDifficulties()) {
      const auto set = questionSet(1, 30, difficulty, {kind}), other = questionSet(2, 30, difficulty, {kind});
      // Two of some thousand bridges and shunts may be alike once.
      int alike = 0;
      for (std::size_t k = 0; k < set.size(); ++k) alike += set[k].setup == other[k].setup ? 1 : 0;
      for (std::size_t k = 1; k < set.size(); ++k) alike += set[k].setup == set[k - 1].setup ? 1 : 0;
      EXPECT_LE(alike, 2);
    }
}

TEST(Practice, KindsGoRound) {
  const auto set = questionSet(3, 7, Difficulty::Further, {QuestionKind::Reading, QuestionKind::Sign});
  for (std::size_t k = 0; k < set.size(); ++k)
    EXPECT_EQ(set[k].kind, k % 2 == 0 ? QuestionKind::Reading : QuestionKind::Sign);
}

TEST(Practice, AllQuestionsAreWellFormed) {
  for (const QuestionKind kind : allQuestionKinds())
    forEachOf(kind, [&](const Question& question) {
      EXPECT_EQ(question.kind, kind);
      expectWellFormed(question);
    });
}

TEST(Practice, FirstStepsAreSimple) {
  // As the difficulty promises: full and quarter bridges, ideal leads, shunts right across an arm.
  for (const QuestionKind kind : allQuestionKinds())
    for (std::uint64_t seed = 1; seed <= seeds; ++seed) {
      const Question question = questionOf(seed, 0, Difficulty::First, {kind});
      const Bridge& bridge = question.setup.bridge;
      EXPECT_TRUE(bridge.type <= BridgeType::QuarterThreeWire || bridge.type >= BridgeType::FullBending);
      EXPECT_EQ(bridge.hookup, Hookup());
      for (const Wire& wire : wiresOf(bridge)) EXPECT_EQ(leadResistance(bridge, wire.role).base(), 0);
      for (const Leak& leak : bridge.leaks) EXPECT_EQ(leak, Leak());
      for (const Shunt& shunt : question.setup.shunts) {
        if (question.right == 2 && kind == QuestionKind::Sign) continue;  // over the whole bridge
        const auto arm = (static_cast<std::size_t>(shunt.a) - static_cast<std::size_t>(Node::Arm1Begin)) / 2;
        EXPECT_EQ(shunt.a, armBegin(arm));
        EXPECT_EQ(shunt.b, armEnd(arm));
      }
    }
}

TEST(Practice, GaugesOfOneBridgeAreAlike) {
  // Those of one kit: only completion resistors may be of another nominal value. Measured ones are up to
  // 0.5 ohm off, in thorough questions.
  for (const QuestionKind kind : allQuestionKinds())
    forEachOf(kind, [](const Question& question) {
      const Bridge& bridge = question.setup.bridge;
      const double off = question.difficulty == Difficulty::Thorough ? 0.5001 : 0;
      for (const std::size_t arm : {0, 1, 2, 3})
        if (templateOf(bridge.type).atArticle[arm]) {
          EXPECT_NEAR(bridge.arms[arm].base(), bridge.gauge.nominal.base(), off) << arm;
        }
    });
}

TEST(Practice, FirstStepsHaveShuntsThatMoveNothing) {
  int stay = 0;
  for (std::uint64_t seed = 1; seed <= seeds; ++seed)
    stay += questionOf(seed, 0, Difficulty::First, {QuestionKind::Sign}).right == 2 ? 1 : 0;
  // One in eight is drawn; those below clear outputs are thrown away, so it may be some more.
  EXPECT_GT(stay, seeds / 16);
  EXPECT_LT(stay, seeds / 4);
}

TEST(Practice, OfShuntsAlikeItSaysByHowMuchTheLeadsDecide) {
  int alike = 0;
  forEachOf(QuestionKind::LargerShunt, [&](const Question& question) {
    const std::string& why = question.explanation.front();
    const auto& shunts = question.setup.shunts;
    const auto& arms = question.setup.bridge.arms;
    const bool same = shunts[0].resistance == shunts[1].resistance &&
                      std::all_of(arms.begin(), arms.end(), [&](Resistance arm) { return arm == arms[0]; });
    if (!same) return;
    ++alike;
    EXPECT_NE(why.find("for both. The leads decide"), std::string::npos) << why;
    EXPECT_NE(why.find(" larger by "), std::string::npos) << why;
  });
  EXPECT_GT(alike, 0);
}

TEST(Practice, AStrainThatIsNotShownIsExplained) {
  // With gauges or one pair of wires reversed, what is shown and what is simulated have other signs.
  int turned = 0;
  forEachOf(QuestionKind::Reading, [&](const Question& question) {
    const Hookup& hookup = question.setup.bridge.hookup;
    const bool once =
        (int(hookup.signalReversed) + int(hookup.excitationReversed) + int(hookup.gaugesReversed)) % 2 == 1;
    if (!once || question.setup.instrument.unit != ReadingUnit::MicrometrePerMetre) return;
    ++turned;
    std::string all;
    for (const std::string& sentence : question.explanation) all += sentence + "\n";
    EXPECT_NE(all.find("The instrument shows "), std::string::npos) << all;
    EXPECT_NE(all.find("knows nothing of reversed "), std::string::npos) << all;
  });
  EXPECT_GT(turned, 10);
}

TEST(Practice, FormulaOfAFaultHasTheFaultInIt) {
  forEachOf(QuestionKind::PlantedFault, [](const Question& question) {
    std::string all;
    for (const std::string& line : question.formula) all += line + "\n";
    EXPECT_NE(all.find("With the fault, step "), std::string::npos) << all;
  });
}

TEST(Practice, EachDifficultyHasWhatItPromises) {
  std::set<BridgeType> further;
  std::map<std::string, int> seen;
  for (std::uint64_t seed = 1; seed <= seeds; ++seed) {
    further.insert(questionOf(seed, 0, Difficulty::Further, {QuestionKind::Sign}).setup.bridge.type);
    const core::Setup setup = questionOf(seed, 0, Difficulty::Thorough, {QuestionKind::Sign}).setup;
    const Bridge& bridge = setup.bridge;
    seen["unequal"] += bridge.arms[0] != bridge.arms[1] ? 1 : 0;
    seen["signal"] += bridge.hookup.signalReversed ? 1 : 0;
    seen["excitation"] += bridge.hookup.excitationReversed ? 1 : 0;
    seen["leak"] += std::any_of(bridge.leaks.begin(), bridge.leaks.end(),
                                [](const Leak& leak) { return leak.across.has_value(); })
                        ? 1
                        : 0;
    seen["together"] += setup.sequence.back().closed.size() > 1 ? 1 : 0;
  }
  EXPECT_EQ(further.size(), bridgeTypeCount);
  for (const auto& [what, count] : seen) EXPECT_GT(count, 20) << what << " in " << seeds;
}

TEST(Practice, NoPlaceAmongTheChoicesIsUsuallyRight) {
  // A class that always ticks the same box must not get far: no box is right in more than 60 %.
  for (const QuestionKind kind : allQuestionKinds()) {
    if (kind == QuestionKind::Reading) continue;
    std::map<std::size_t, int> right;
    forEachOf(kind, [&](const Question& question) { ++right[question.right]; });
    for (const auto& [box, count] : right) EXPECT_LT(count, 0.6 * seeds * difficultyCount) << box;
  }
}

TEST(Practice, ManyKindsOfFaultsArePlanted) {
  std::map<CauseKind, int> planted;
  forEachOf(QuestionKind::PlantedFault, [&](const Question& question) {
    ASSERT_EQ(question.faults.size(), question.choices.size());
    ++planted[question.faults[question.right].kind];
  });
  EXPECT_GE(planted.size(), 12U);
  for (const auto& [kind, count] : planted)
    EXPECT_LT(count, 0.35 * seeds * difficultyCount) << causeKindKey(kind);
}

TEST(Practice, PictureDoesNotGiveTheAnswerAway) {
  for (std::uint64_t seed = 1; seed <= 100; ++seed) {
    const Question arm = questionOf(seed, 0, Difficulty::Further, {QuestionKind::Arm});
    EXPECT_TRUE(arm.setup.shunts.empty());
    EXPECT_EQ(arm.explained.shunts.size(), 1U);
    const Question fault = questionOf(seed, 0, Difficulty::Thorough, {QuestionKind::PlantedFault});
    EXPECT_EQ(fault.setup.bridge.hookup, Hookup());
  }
}

TEST(Practice, NumberIsRightWithinFivePerCent) {
  Question question;
  question.number = Reading(-200);
  EXPECT_TRUE(isRight(question, Reading(-200)));
  EXPECT_TRUE(isRight(question, Reading(-209)));
  EXPECT_TRUE(isRight(question, Reading(-191)));
  EXPECT_FALSE(isRight(question, Reading(-211)));
  EXPECT_FALSE(isRight(question, Reading(-189)));
  EXPECT_FALSE(isRight(question, Reading(200))) << "the sign counts";
  EXPECT_FALSE(isRight(question, Reading(std::nan(""))));
  EXPECT_FALSE(isRight(question, std::size_t{0})) << "there is nothing to choose";
}

TEST(Practice, OneChoiceIsRight) {
  const Question question = questionOf(5, 0, Difficulty::First, {QuestionKind::Sign});
  int right = 0;
  for (std::size_t k = 0; k < question.choices.size() + 2; ++k) right += isRight(question, k) ? 1 : 0;
  EXPECT_EQ(right, 1);
  EXPECT_FALSE(isRight(question, Reading(0)));
}

TEST(Practice, KeysAreReadBack) {
  for (const QuestionKind kind : allQuestionKinds())
    EXPECT_EQ(questionKindFromKey(questionKindKey(kind)), kind);
  for (const Difficulty difficulty : allDifficulties())
    EXPECT_EQ(difficultyFromKey(difficultyKey(difficulty)), difficulty);
  EXPECT_FALSE(questionKindFromKey("signs"));
  EXPECT_FALSE(difficultyFromKey(""));
}
