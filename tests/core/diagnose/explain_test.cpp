// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diagnose/explain.h"

#include <gtest/gtest.h>

#include "core/diagnose/cause_words.h"
#include "core/diagnose/diagnosis_words.h"
#include "tests/core/diagnose/held_check.h"

// Numbers in the words are worked out by hand beside them.

namespace core {
namespace explain_test {

using test::equalArms;
using test::fitted;
using test::HeldCheck;
using test::nineSteps;
using test::withLeads;

bool contains(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

Setup quarter(Resistance lead = Resistance(2)) {
  return nineSteps(withLeads(equalArms(BridgeType::QuarterThreeWire, Resistance(350)), lead), 2, 1);
}

Explanation described(const core::Setup& setup, const Refit& refit) {
  const HeldCheck held(setup, 0.5);
  Explanation explanation;
  describe(held.ground(), held.budget, refit, explanation);
  return explanation;
}

TEST(CauseWords, ShowNoMoreDigitsThanTheUncertaintyWarrants) {
  EXPECT_EQ(withStandard(118.3, 9.2), "118 ± 9");
  EXPECT_EQ(withStandard(0.8512, 0.0123), "0.851 ± 0.012");
  EXPECT_EQ(withStandard(0.85, 0.05, true), "+0.85 ± 0.05");
  EXPECT_EQ(withStandard(1234, 230), "1230 ± 230");
  EXPECT_EQ(withStandard(5, 0.0996), "5.00 ± 0.10");
  EXPECT_EQ(withStandard(-3, 0.3), "-3.0 ± 0.3");
  EXPECT_EQ(withStandard(2.5, std::nullopt), "2.5");
  EXPECT_EQ(withStandard(350, 1e-9), "350");  // a hypothesis without doubt needs no ±
  EXPECT_EQ(percentWithStandard(0.0055, 0.0006), "+0.55 ± 0.06 %");
}

TEST(CauseWords, GiveLeadsInOhmAndAsCopperWhereTheyAreEnteredAsWire) {
  const Fault fault{CauseKind::Leads, 0, 0, 0.85};
  EXPECT_EQ(sizeWords(quarter(), fault, 0.05), "each lead 0.85 ± 0.05 Ω more than entered");
  core::Setup setup = quarter();
  setup.bridge.leads.fill(CopperWire{Length(10), Area(0.25e-6)});
  // 1.7241e-8 / 0.25e-6 = 0.06896 ohm per metre (IEC 60028): 0.85 ohm are 12.3 m, 0.05 ohm 0.7 m.
  EXPECT_EQ(sizeWords(setup, fault, 0.05),
            "each lead 0.85 ± 0.05 Ω more than entered, 12.3 ± 0.7 m of 0.25 mm² copper");
  EXPECT_EQ(causeTitle(setup, fault), "Leads longer than entered");
  EXPECT_EQ(causeTitle(setup, {CauseKind::Leads, 0, 0, -0.5}), "Leads shorter than entered");
  EXPECT_EQ(causeTitle(quarter(Resistance(0)), fault), "Leads not entered");
}

TEST(CauseWords, GiveALeakAsResistanceOrBetweenLimitsWhenItIsHardlyKnown) {
  // d(1/G) = dG/G^2.
  EXPECT_EQ(sizeWords(quarter(), {CauseKind::Leak, 0, 0, 1 / 118e3}, 9e3 / (118e3 * 118e3)),
            "118 ± 9 kΩ over gauge 1");
  EXPECT_EQ(sizeWords(quarter(), {CauseKind::Leak, 0, 0, 1e-5}, 0.5e-5),
            "between 67 kΩ and 200 kΩ over gauge 1");  // 1/(1.5e-5) and 1/(0.5e-5)
  EXPECT_EQ(sizeWords(quarter(), {CauseKind::Leak, 0, 0, 1e-6}, 4e-6),
            "at least 200 kΩ over gauge 1");  // 1/(5e-6)
}

TEST(CauseWords, GiveAResistorBesideWhatIsStated) {
  core::Setup setup = quarter();
  setup.shunts[1].part.id = "S-104";
  // 1.0055 x 87.15 kohm = 87.629 kohm, 0.0006 x 87.15 kohm = 0.052 kohm.
  EXPECT_EQ(sizeWords(setup, {CauseKind::ShuntValue, 1, 0, 1.0055}, 0.0006),
            "S-104 acts as 87.63 ± 0.05 kΩ where 87.15 kΩ is stated, +0.55 %");
  EXPECT_EQ(sizeWords(setup, {CauseKind::ArmValue, 0, 0, 1.01}, 0.001),
            "353.5 ± 0.4 Ω where 350 Ω is stated, +1.00 %");
}

TEST(SettingWords, NameTheUsualGaugeFactorThatFitsAndElseTheOneThatActs) {
  core::Setup setup = quarter();
  setup.instrument.gaugeFactor = setup.bridge.gauge.factor = 2.07;
  // 2.07 / 1.035 = 2.
  EXPECT_EQ(settingWords(setup, {CauseKind::Scale, 0, 0, 1.036}, 0.002),
            "gauge factor 2.00 set where 2.07 belongs");
  EXPECT_EQ(settingWords(setup, {CauseKind::Scale, 0, 0, 1.012}, 0.0015),
            "gauge factor 2.045 ± 0.003 set where 2.07 belongs");  // 2.07/1.012, times 0.0015/1.012
}

TEST(SettingWords, NameTheExcitationWhereItActsOnReadings) {
  core::Setup setup = quarter();
  EXPECT_FALSE(contains(settingWords(setup, {CauseKind::Scale, 0, 0, 0.5}, 0.001), "excitation"));
  setup.instrument.ratiometric = false;
  EXPECT_TRUE(contains(settingWords(setup, {CauseKind::Scale, 0, 0, 0.5}, 0.001),
                       "or an excitation of 2.5 V where 5 V is entered"));
}

TEST(SettingWords, NameTheRatedOutputOfATransducer) {
  core::Setup setup = equalArms(BridgeType::Transducer, Resistance(350));
  setup.bridge.rating = {Output(2e-3), 50, "kN"};
  setup.instrument.unit = ReadingUnit::Scaled;
  setup.instrument.unitsPerMillivoltPerVolt = 25;
  EXPECT_EQ(settingWords(setup, {CauseKind::Scale, 0, 0, 4.0 / 3}, 0.001),
            "rated output 1.5 mV/V set where 2 mV/V belongs");
}

TEST(SettingWords, NameTheBridgeFactorAndTheMixUpOfUnits) {
  const core::Setup setup = quarter();
  EXPECT_EQ(settingWords(setup, {CauseKind::BridgeFactor, 0, 0, 2}, {}),
            "N = 2 set where 1 belongs: half bridge instead of quarter bridge");
  EXPECT_EQ(sizeWords(setup, {CauseKind::BridgeFactor, 0, 0, 2}, {}),
            "readings are 0.5 times what they should be");
  // 1 mV/V is 4000/(F N) = 2000 µm/m.
  EXPECT_EQ(settingWords(setup, {CauseKind::Units, 0, 0, 1.0 / 2000}, {}), "readings in mV/V taken for µm/m");
}

TEST(ConfirmWords, GiveTheLoopOfTwoLeadsWhereTwoMeetAtTheGauge) {
  // S- and return meet at the gauge: 2 x 2 ohm, and 2 x 2.85 ohm.
  EXPECT_EQ(confirmWords(quarter(), {CauseKind::Leads, 0, 0, 0.85}),
            "With the excitation off and the cable unplugged at the instrument, measure from lead S- to lead "
            "return: it reads 5.7 Ω if this is the cause, 4.0 Ω as entered.");
}

TEST(ConfirmWords, GiveAnArmOfAFullBridgeBesideTheOtherThree) {
  // 350 x 1050 / 1400 = 262.5; of 700 ohm 700 x 1050 / 1750 = 420.
  const core::Setup setup = nineSteps(equalArms(BridgeType::FullBending, Resistance(350)), 2, 1);
  EXPECT_TRUE(contains(confirmWords(setup, {CauseKind::ArmValue, 0, 0, 2}),
                       "420.0 Ω if this is the cause, 262.5 Ω as entered"))
      << confirmWords(setup, {CauseKind::ArmValue, 0, 0, 2});
}

TEST(Describe, TellsWhatADriftComesToOverTheTimesThatItsRateIsOf) {
  const core::Setup setup = quarter();
  HeldCheck held(setup, 0.5);
  Refit refit;
  refit.fault = {CauseKind::Drift, 0, 0, 0.5};
  const auto words = [&] {
    Explanation explanation;
    describe(held.ground(), held.budget, refit, explanation);
    return explanation.sizeText + " / " + explanation.confirm;
  };
  // As planned nine steps of 0.5 s and 2 s: 8 x 2.5 s from the first middle to the last.
  EXPECT_TRUE(contains(words(), "+10 µm/m in the 20 s of the check")) << words();
  // Recorded with four seconds from step to step: 8 x 4 s.
  for (std::size_t k = 0; k < held.check.readings.size(); ++k) {
    held.check.readings[k]->begin = Duration(7 + 4.0 * static_cast<double>(k));
    held.check.readings[k]->end = Duration(9 + 4.0 * static_cast<double>(k));
  }
  EXPECT_TRUE(contains(words(), "+16 µm/m in the 32 s of the check")) << words();
  EXPECT_TRUE(contains(words(), "as the check took, some 32 s")) << words();
}

TEST(Describe, LeavesNoCauseOfAnyBridgeWithoutWordsAndMeasuresWithTheExcitationOff) {
  for (const BridgeTemplate& shape : allTemplates()) {
    core::Setup setup = nineSteps(withLeads(equalArms(shape.type, Resistance(350)), Resistance(2)), 2, 1);
    setup.bridge.sixWire = shape.senseLeads;
    const HeldCheck held(setup, 0.5);
    const DiagnosisGround ground = held.ground();
    for (const Fault& fault : possibleFaults(setup, ground.points)) {
      Refit refit;
      refit.fault = fault;
      Explanation explanation;
      describe(ground, held.budget, refit, explanation);
      const std::string key(causeKindKey(fault.kind));
      EXPECT_FALSE(explanation.title.empty()) << key;
      EXPECT_TRUE(explanation.confirm.ends_with(".")) << key << ": " << explanation.confirm;
      EXPECT_TRUE(explanation.onStrain.ends_with(".")) << key << ": " << explanation.onStrain;
      EXPECT_FALSE(explanation.correction.reason.empty()) << key;
      EXPECT_EQ(
          hasFreeSize(fault.kind) || fault.kind == CauseKind::BridgeFactor || fault.kind == CauseKind::Units,
          !explanation.sizeText.empty())
          << key;
      if (contains(explanation.confirm, "Ω")) {
        EXPECT_TRUE(contains(explanation.confirm, "excitation off")) << key;
      }
    }
  }
}

TEST(Describe, SaysWhatTheCauseDoesToStrain) {
  EXPECT_EQ(described(quarter(), fitted(CauseKind::Scale, 1.5 / 1.4, 0.001)).onStrain,
            "Strain reads 7.14 % high.");
  // Lead attenuation R/(R + RL), Micro-Measurements: from 2 to 4 ohm 352/354, 0.56 % low.
  const Explanation leads = described(quarter(), fitted(CauseKind::Leads, 2, 0.01));
  EXPECT_EQ(leads.onStrain, "Strain reads 0.56 % low.");
  EXPECT_TRUE(contains(described(quarter(), fitted(CauseKind::ShuntValue, 1.01, 0.001)).onStrain, "None"));
  EXPECT_TRUE(
      contains(described(quarter(), fitted(CauseKind::PolarityReversed, 1, 0)).onStrain, "wrong sign"));
}

Diagnosis diagnosisOf(DiagnosisResult result) {
  Diagnosis diagnosis;
  diagnosis.result = result;
  diagnosis.chiSquare = 6.1;
  diagnosis.degreesOfFreedom = 8;
  diagnosis.probability = 0.64;
  return diagnosis;
}

Explanation cause(const std::string& title, const std::string& confirm) {
  Explanation explanation;
  explanation.title = title;
  explanation.sizeText = "1 Ω";
  explanation.confirm = confirm;
  explanation.chiSquare = 5.3;
  explanation.parameters = 2;
  explanation.explained = 0.987;
  explanation.fitProbability = 0.62;
  return explanation;
}

TEST(DiagnosisSentence, OfAHealthyCheckHasItsChiSquare) {
  EXPECT_EQ(sentenceOf(quarter(), diagnosisOf(DiagnosisResult::Healthy)),
            "Nothing calls for a cause: chi-square 6.1 with 8 degrees of freedom, probability 0.64.");
}

TEST(DiagnosisSentence, OfACauseSaysHowMuchItExplainsAndThatItIsASuspicion) {
  Diagnosis diagnosis = diagnosisOf(DiagnosisResult::Found);
  diagnosis.chiSquare = 412;
  diagnosis.explanations = {cause("Leads longer than entered", "Measure.")};
  diagnosis.tied = 1;
  EXPECT_EQ(
      sentenceOf(quarter(), diagnosis),
      "Suspected cause: Leads longer than entered: 1 Ω. It explains 98.7 % of chi-square 412 and leaves "
      "5.3 with 7 degrees of freedom. A suspicion until a measurement confirms it: Measure.");
}

TEST(DiagnosisSentence, OfTiedCausesNamesTheStepOrTheMeasurements) {
  Diagnosis diagnosis = diagnosisOf(DiagnosisResult::Tied);
  diagnosis.explanations = {cause("A", "Measure A."), cause("B", "Measure B.")};
  diagnosis.tied = 2;
  const std::string without = sentenceOf(quarter(), diagnosis);
  EXPECT_TRUE(contains(without, "A: 1 Ω; or B: 1 Ω")) << without;
  EXPECT_TRUE(contains(without, "Measure A.") && contains(without, "Measure B.")) << without;
  EXPECT_TRUE(contains(without, "suspicion")) << without;
  diagnosis.tellingStep = TellingStep{"332 kΩ across arm 2", 12.04};
  const std::string with = sentenceOf(quarter(), diagnosis);
  EXPECT_TRUE(contains(with, "by 12 standard uncertainties: 332 kΩ across arm 2")) << with;
  EXPECT_FALSE(contains(with, "Measure A.")) << with;
}

TEST(DiagnosisSentence, OfNothingThatFitsSaysWhatTheBestLeaves) {
  Diagnosis diagnosis = diagnosisOf(DiagnosisResult::NothingFits);
  diagnosis.probability = 1e-9;
  diagnosis.explanations = {cause("A", "Measure A.")};
  const std::string sentence = sentenceOf(quarter(), diagnosis);
  EXPECT_TRUE(contains(sentence, "No single cause")) << sentence;
  EXPECT_TRUE(contains(sentence, "probability below 0.001")) << sentence;
  EXPECT_TRUE(contains(sentence, "A: 1 Ω, leaves 5.3 with 7")) << sentence;
  diagnosis.explanations.clear();
  EXPECT_TRUE(contains(sentenceOf(quarter(), diagnosis), "No single cause"));
  EXPECT_TRUE(contains(sentenceOf(quarter(), diagnosisOf(DiagnosisResult::NotPossible)), "No diagnosis"));
}

}  // namespace explain_test
}  // namespace core
