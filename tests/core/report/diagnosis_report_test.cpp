// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/report/csv.h"
#include "core/report/diagnoses.h"
#include "core/report/diagnosis_section.h"
#include "core/report/remainders.h"
#include "core/report/tables.h"
#include "tests/core/report/words.h"
#include "tests/support/sample_channel.h"

namespace core {
namespace {

using testing::HasSubstr;
using testing::Not;

/// The nine-step channel with a check that reads `gain` times what is expected, each reading known to 0.05
/// um/m.
Channel reading(double gain) {
  Channel channel = sample::withCheckReading(sample::nineStepChannel(), gain);
  for (auto& measured : channel.checks[0].readings) measured->uncertainty = Reading(0.05);
  return channel;
}

std::string wordsOf(const Channel& channel) { return Words(reportOf(sample::documentOf({channel}))); }

std::string wordsOf(std::vector<Block> blocks) { return Words(Report{"", {{"", 1, std::move(blocks)}}}); }

Explanation explanation(const std::string& title, bool legitimate) {
  Explanation cause;
  cause.title = title;
  cause.sizeText = "size of " + title;
  cause.confirm = "measure " + title;
  cause.onStrain = "strain of " + title;
  cause.explained = 0.876;
  cause.weight = 0.25;
  cause.plausibility = 0.6;
  cause.correction = {0.95, 0.002, 1.5, 0.25, legitimate, "Reason of " + title + "."};
  return cause;
}

Diagnosis diagnosis(std::size_t causes, std::size_t tied) {
  Diagnosis made;
  made.result = tied > 1 ? DiagnosisResult::Tied : DiagnosisResult::Found;
  made.sentence = "Something is wrong.";
  made.tied = tied;
  for (std::size_t k = 0; k < causes; ++k) {
    made.explanations.push_back(explanation("cause " + std::string(1, static_cast<char>('A' + k)), true));
    made.explanations[k].information = {10.0 - static_cast<double>(k), 20.0 + static_cast<double>(k)};
  }
  return made;
}

// All readings 1.05 times too great, so 5 % of limits of 1 %: planted.
TEST(DiagnosisReport, ACheckThatFailsIsDiagnosedWithWhatFollows) {
  const std::string words = wordsOf(reading(1.05));
  for (const char* part :
       {"Diagnosis: ", "Explains: ", "To confirm: ", "Strain data: ", "5.00 ", "Correction: corrected = "})
    EXPECT_THAT(words, HasSubstr(part));
  EXPECT_THAT(words, HasSubstr(std::string(suspicionStatement())));
  EXPECT_THAT(words, Not(HasSubstr(std::string(withinLimitsStatement()))));
  EXPECT_THAT(words, HasSubstr(std::string(diagnosedChecksStatement())));
}

TEST(DiagnosisReport, ACheckThatPassesIsNotAndTheSummarySaysSo) {
  const std::string words = wordsOf(reading(1));
  EXPECT_THAT(words, Not(HasSubstr("Diagnosis: ")));
  EXPECT_THAT(words, HasSubstr(std::string(diagnosedChecksStatement())));
}

TEST(DiagnosisReport, OnlyReadChecksThatDoNotPassOrLieOffTheirLineCallForIt) {
  const auto calls = [](const Channel& channel, std::optional<double> lineProbability) {
    CheckAssessment assessment = evaluate(channel).checks[0].assessment;
    assessment.line->chiSquareProbability = lineProbability;
    return callsForDiagnosis(channel.checks[0], assessment);
  };
  EXPECT_FALSE(calls(reading(1), {}));
  EXPECT_FALSE(calls(reading(1), 0.06));
  EXPECT_TRUE(calls(reading(1), 0.04));
  EXPECT_TRUE(calls(reading(1.05), {}));
  const Channel unread = withCheckAdded(sample::nineStepChannel(), {});
  EXPECT_FALSE(callsForDiagnosis(unread.checks[0], evaluate(unread).checks[0].assessment));
}

TEST(DiagnosisReport, DiagnosesKeepTheOrderOfTheirChecks) {
  const Document document =
      sample::documentOf({reading(1), reading(1.05), sample::nineStepChannel(), reading(0.5)});
  std::vector<ChannelEvaluation> evaluations;
  for (const auto& channel : document.channels) evaluations.push_back(evaluate(*channel));
  std::vector<double> told;
  std::vector<CheckPlace> checks;
  for (std::size_t index = 0; index < document.channels.size(); ++index)
    for (std::size_t check = 0; check < document.channels[index]->checks.size(); ++check)
      checks.emplace_back(index, check);
  const CheckDiagnoses all =
      diagnosesOf(document, evaluations, checks, [&](double share) { told.push_back(share); });
  ASSERT_EQ(all.size(), 2U);
  for (const std::size_t index : {1U, 3U}) {
    const auto found = all.find({index, 0});
    ASSERT_NE(found, all.end());
    const CheckEvaluation& judged = evaluations[index].checks[0];
    const Channel& channel = *document.channels[index];
    const Diagnosis alone = diagnose(channel.setup, judged.prediction, judged.budget, channel.checks[0]);
    EXPECT_EQ(found->second.sentence, alone.sentence);  // the same with any number of threads
    EXPECT_EQ(found->second.result, alone.result);
  }
  ASSERT_FALSE(told.empty());
  EXPECT_EQ(told.back(), 1.0);
}

TEST(DiagnosisReport, WhatIsStoppedIsNoDiagnosis) {
  const Channel channel = reading(1.05);
  const ChannelEvaluation evaluation = evaluate(channel);
  const DiagnosisTask task{&channel.setup, &evaluation.checks[0].prediction, &evaluation.checks[0].budget,
                           &channel.checks[0]};
  std::stop_source stop;
  stop.request_stop();
  const auto none = diagnosesOf(std::vector{task}, {}, stop.get_token());
  ASSERT_EQ(none.size(), 1U);
  EXPECT_EQ(none[0].result, DiagnosisResult::NotPossible);
}

TEST(DiagnosisReport, OneCauseIsToldInFullAndTwoMoreInALine) {
  const std::string words = wordsOf(diagnosisBlocks({}, diagnosis(6, 1), false));
  EXPECT_THAT(words, HasSubstr("To confirm: measure cause A"));
  EXPECT_THAT(words, HasSubstr("Explains: 88 % of what is off; such a fault is ordinary"));
  EXPECT_THAT(words,
              HasSubstr("Less likely: cause B (size of cause B, explains 88 %); cause C (size of cause "
                        "C, explains 88 %)."));
  for (const char* part : {"measure cause B", "cause D", "told apart", "Cause | Size"})
    EXPECT_THAT(words, Not(HasSubstr(part)));
}

TEST(DiagnosisReport, CausesThatAreTiedHaveATableAndTwoAreToldInFull) {
  Diagnosis tied = diagnosis(6, 5);
  tied.tellingStep = TellingStep{"332k across arm 2", 12};
  tied.explanations[1].sizeText.clear();
  tied.explanations[2].explained = 0.998;
  const std::string five = wordsOf(diagnosisBlocks({}, tied, false));
  EXPECT_THAT(five, HasSubstr("cause B |  | 88 | 25 | ordinary | 1.0 | "));
  EXPECT_THAT(five, HasSubstr("cause C | size of cause C | 99.8 | 25 | ordinary | 2.0 | "));
  EXPECT_THAT(five, HasSubstr("cause E | "));
  EXPECT_THAT(five, Not(HasSubstr("cause F")));
  EXPECT_THAT(five, HasSubstr("The first 5 cannot be told apart"));
  EXPECT_THAT(five, HasSubstr("one more step: 332k across arm 2."));
  EXPECT_THAT(five, HasSubstr("To confirm: measure cause B"));
  EXPECT_THAT(five, Not(HasSubstr("measure cause C")));
}

TEST(DiagnosisReport, WhatAlmostAllIsExplainedByIsNotAHundredPercent) {
  const auto shown = [](double explained) {
    Diagnosis made = diagnosis(1, 1);
    made.explanations[0].explained = explained;
    return causeTable(made, 1).rows[0].cells[2];
  };
  EXPECT_EQ(shown(0.9999), "99.9");
  EXPECT_EQ(shown(0.994), "99");
  EXPECT_EQ(shown(1), "100");
}

TEST(DiagnosisReport, StepsThatAllPassAreSaidToPassWhateverIsSuspected) {
  EXPECT_THAT(wordsOf(diagnosisBlocks({}, diagnosis(1, 1), true)),
              HasSubstr("It changes no verdict. All steps are within their limits all the same."));
  EXPECT_TRUE(allStepsPass(evaluate(reading(1)).checks[0].assessment));
  EXPECT_FALSE(allStepsPass(evaluate(reading(1.05)).checks[0].assessment));
  EXPECT_FALSE(allStepsPass({}));
}

TEST(DiagnosisReport, ACorrectionThatIsNotLegitimateIsACaution) {
  Diagnosis made = diagnosis(2, 2);
  made.explanations[1] = explanation("leak", false);
  std::vector<std::string> cautioned;
  for (const Block& block : diagnosisBlocks({}, made, false))
    if (const auto* caution = std::get_if<Caution>(&block)) cautioned.push_back(caution->text);
  EXPECT_EQ(cautioned, std::vector<std::string>{"leak: Do not correct test data by it. Reason of leak."});
}

TEST(DiagnosisReport, TheFormulaOfACorrectionHoldsWhatIsKnown) {
  const auto formula = [](Correction correction) { return correctionFormula({}, correction); };
  EXPECT_EQ(formula({0.95, 0.002, 1.5, 0.25, true, ""}),
            "corrected = (0.9500 ± 0.0020) × (reading − (1.50 ± 0.25) µm/m)");
  EXPECT_EQ(formula({0.95, {}, -1.5, {}, true, ""}), "corrected = 0.95 × (reading + 1.5 µm/m)");
  EXPECT_EQ(formula({0.95, {}, 0, {}, true, ""}), "corrected = 0.95 × reading");
  EXPECT_EQ(formula({1, {}, 1.5, {}, true, ""}), "corrected = reading − 1.5 µm/m");
  EXPECT_EQ(formula({1, {}, 0, {}, true, ""}), "");
}

TEST(DiagnosisReport, EvidenceIsCountedFromTheBestOfEachCriterion) {
  const Diagnosis made = diagnosis(3, 1);  // AIC 10, 9, 8; BIC 20, 21, 22
  EXPECT_EQ(evidenceBehind(made, made.explanations[0]).akaike, 2);
  EXPECT_EQ(evidenceBehind(made, made.explanations[0]).bayesian, 0);
  EXPECT_EQ(evidenceBehind(made, made.explanations[2]).akaike, 0);
  EXPECT_EQ(evidenceBehind(made, made.explanations[2]).bayesian, 2);
}

TEST(DiagnosisReport, WhatACauseLeavesIsMeasuredLessItsOwnChange) {
  CheckPoints points;
  points.steps = {0, 3};
  points.expected = {0, 1000};
  points.measured = {0, 1050};
  const auto left = remaindersOf(points, {1, 1049});
  ASSERT_EQ(left.size(), 2U);
  EXPECT_EQ(left[1].step, 3U);
  EXPECT_EQ(left[1].before, 50);
  EXPECT_EQ(left[1].after, 1);
  EXPECT_EQ(left[0].after, -1);
}

TEST(DiagnosisReport, FiguresOfMeritHaveTheirTableWithVerdictsInWords) {
  const Channel channel = reading(1);
  ChannelEvaluation evaluation = evaluate(channel);
  Merit known;
  known.kind = MeritKind::Nonlinearity;
  known.value = -1.26;
  known.share = -0.00063;
  known.standard = 0.00012;
  known.denominator = 2000;
  known.limit = 0.005;
  known.step = 2;
  known.definition = "from the least-squares line";
  known.verdict = Verdict::Pass;
  Merit unknown;
  unknown.kind = MeritKind::Hysteresis;
  unknown.missing = "no level is taken both ways";
  evaluation.checks[0].assessment.merits = {known, unknown};
  const std::string words = wordsOf(std::vector<Block>{meritTable(channel, evaluation, 0)});
  EXPECT_THAT(words, HasSubstr("Nonlinearity | -1.3 | -0.06 | 0.012 | 0.50 | 3 | pass | "));
  EXPECT_THAT(words, HasSubstr("Not known: hysteresis (no level is taken both ways)."));
  EXPECT_THAT(words, Not(HasSubstr("Hysteresis | ")));
  EXPECT_EQ(meritDefinitions({known, unknown}),
            std::vector<std::string>{"Nonlinearity: from the least-squares line."});
}

TEST(DiagnosisReport, WhatAFigureIsIsDefinedOnceAChannel) {
  Channel channel = reading(1);
  channel = withCheckAdded(channel, {});
  channel.checks[1].readings = channel.checks[0].readings;
  const std::string words = wordsOf(channel), definition = "Zero shift: zero reading farthest from";
  const std::size_t first = words.find(definition);
  ASSERT_NE(first, std::string::npos);
  EXPECT_EQ(words.find(definition, first + 1), std::string::npos);
}

TEST(DiagnosisReport, TheCsvCarriesItInEachRowOfTheCheck) {
  const auto rowsOf = [](double gain) {
    std::vector<std::string> rows;
    std::string csv = reportCsv(sample::documentOf({reading(gain)}));
    for (std::size_t end = csv.find("\r\n"); end != std::string::npos; end = csv.find("\r\n")) {
      rows.push_back(csv.substr(0, end));
      csv.erase(0, end + 2);
    }
    return rows;
  };
  const auto failing = rowsOf(1.05);
  ASSERT_EQ(failing.size(), 10U);
  for (std::size_t k = 1; k < failing.size(); ++k) {
    EXPECT_THAT(failing[k], HasSubstr(",fail,"));
    EXPECT_THAT(failing[k], HasSubstr(",scale,")) << "the cause that was planted";
  }
  for (const std::string& row : rowsOf(1)) EXPECT_THAT(row, Not(HasSubstr(",scale,")));
}

}  // namespace
}  // namespace core
