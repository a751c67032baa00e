// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/working/textbook.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/working/amounts.h"
#include "tests/support/bridge_case.h"
#include "tests/support/digits.h"

using namespace core;
using textbook::Pull;

namespace {

std::vector<test::BridgeCase> cases(const std::string& group) {
  std::vector<test::BridgeCase> rows;
  for (const test::CsvRow& row : test::readCsv(SHUNTWRIGHT_TESTS_DIR "/reference/bridge_cases.csv"))
    if (row.at("group") == group) rows.emplace_back(row);
  return rows;
}

/// "arm2": R of that arm, and the side that it pulls to.
struct Shunted {
  Pull pull = Pull::Down;
  double r = 0, rs = 0;
};

Shunted shunted(const test::BridgeCase& row) {
  const std::string arm = row.text("shunt_position");
  const bool down = arm == "arm1" || arm == "arm3";
  return {down ? Pull::Down : Pull::Up, row.numberOr(arm + "_ohm", row.numberOr("gauge_ohm", 0)),
          row.number("shunt_ohm")};
}

BridgeType typeOf(const std::string& configuration) {
  if (configuration == "quarter") return BridgeType::QuarterThreeWire;
  const auto type = bridgeTypeFromKey(configuration);
  EXPECT_TRUE(type) << configuration;
  return type.value_or(BridgeType::Transducer);
}

}  // namespace

// Network solutions of bridge_cases.csv, confirmed there by ngspice; tolerance of each row.
TEST(Textbook, StrainOfAnEqualArmBridgeIsThatOfItsNetwork) {
  int tested = 0;
  for (const test::BridgeCase& row : cases("equivalent_strain")) {
    const BridgeType type = typeOf(row.text("configuration"));
    const Shunted shunt = shunted(row);
    const auto strain = textbook::equalArmStrain(type, row.numberOr("poisson_ratio", 0), shunt.pull, shunt.r,
                                                 shunt.rs, row.number("gauge_factor"));
    EXPECT_EQ(bool(strain), type != BridgeType::FullPoissonBendingMixed) << row.text("id");
    EXPECT_EQ(textbook::equalArmStrainFormula(type, shunt.pull).empty(), !strain) << row.text("id");
    if (!strain) continue;
    EXPECT_NEAR(1e6 * *strain, row.number("expected_value"), row.number("tolerance_abs")) << row.text("id");
    ++tested;
  }
  EXPECT_EQ(tested, 19);
}

TEST(Textbook, OutputOfAShuntOverAnyArmIsThatOfItsNetwork) {
  int tested = 0;
  for (const test::BridgeCase& row : cases("shunt_output")) {
    const std::string configuration = row.text("configuration");
    if (configuration != "equal_arm_bridge" && configuration != "quarter_with_internal_half_bridge") continue;
    const Shunted shunt = shunted(row);
    EXPECT_NEAR(1e3 * textbook::shuntOutput(shunt.pull, shunt.r, shunt.rs), row.number("expected_value"),
                row.number("tolerance_abs"))
        << row.text("id");
    ++tested;
  }
  EXPECT_EQ(tested, 9);
}

// Kyowa, technical note on generating calibration values by a parallel resistor, example table: 100 to 2000
// um/m with 600 to 30 kohm over 120 ohm, factor 2; the resistors are rounded to 1 kohm.
TEST(Textbook, ShuntFormulaGivesThePublishedStrains) {
  int tested = 0;
  for (const test::BridgeCase& row : cases("shunt_choice")) {
    if (row.text("source_kind") != "published") continue;
    const double ohm = row.number("expected_value"), strain = row.number("strain_ue");
    EXPECT_NEAR(
        1e6 * textbook::shuntStrain(Pull::Down, row.number("gauge_ohm"), ohm, row.number("gauge_factor"), 1),
        strain, std::abs(strain) * row.number("tolerance_abs") / ohm)
        << row.text("id");
    ++tested;
  }
  EXPECT_EQ(tested, 5);
  // Derived: 350/(350 + 174650) = 1/500, so -1000 um/m with factor 2 in a quarter bridge.
  EXPECT_DIGITS(textbook::shuntStrain(Pull::Down, 350, 174650, 2, 1), -1000e-6, 15);
  EXPECT_DIGITS(textbook::shuntStrain(Pull::Up, 350, 174650, 2, 4), 250e-6, 15);
}

// Micro-Measurements TN-507, numerical example 2: -4500 um/m indicated are -4480 um/m, factor 2, printed to
// 10 um/m. 4 v = F x indicated strain.
TEST(Textbook, CorrectedStrainOfTheQuarterBridgeIsThePublishedExample) {
  const auto strain = textbook::correctedStrain(BridgeType::QuarterTwoWire, 0.3, 2 * -4500e-6 / 4, 2);
  ASSERT_TRUE(strain);
  EXPECT_NEAR(*strain, -4480e-6, 5e-6);
}

// M. J. Bower, Modern Strain Gage Technology, eq. 27.4 to 27.6, outputs of quarter and half Poisson bridge;
// diagonal half bridge and column derived from v = R3/(R3 + R4) - R2/(R1 + R2).
TEST(Textbook, CorrectedStrainUndoesTheOutputOfEachBridge) {
  const double f = 2.1, nu = 0.285;
  for (const double x : {-0.02, -0.002, 0.001, 0.015}) {
    const auto undo = [&](BridgeType type, double v) {
      return textbook::correctedStrain(type, nu, v, f).value_or(0);
    };
    EXPECT_DIGITS(undo(BridgeType::QuarterThreeWire, x / (4 + 2 * x)), x / f, 14);
    EXPECT_DIGITS(undo(BridgeType::HalfDiagonal, x / (2 + x)), x / f, 14);
    EXPECT_DIGITS(undo(BridgeType::HalfPoisson, x * (1 + nu) / (4 + 2 * x * (1 - nu))), x / f, 14);
    EXPECT_DIGITS(undo(BridgeType::FullPoissonColumn, x * (1 + nu) / (2 + x * (1 - nu))), x / f, 14);
  }
  for (const BridgeType linear : {BridgeType::HalfBending, BridgeType::FullBending, BridgeType::FullTorsion,
                                  BridgeType::FullPoissonBendingSplit, BridgeType::Transducer}) {
    EXPECT_FALSE(textbook::correctedStrain(linear, nu, 1e-3, f));
    EXPECT_TRUE(textbook::correctedStrainFormula(linear).empty());
  }
}

// M. J. Bower, companion notebook to ch. 26: 1000 um/m, factor 2.07, quarter bridge on 5 V give 2.587 mV.
TEST(Textbook, SmallStrainOutputIsThePublishedOne) {
  EXPECT_NEAR(1e3 * 5 * textbook::smallStrainOutput(2.07, 1, 1000e-6), 2.587, 0.0006);
  EXPECT_DIGITS(textbook::linearIndication(textbook::smallStrainOutput(2.07, 4, 1e-3), 2.07, 4), 1e-3, 15);
}

// Weighing News, on cable length errors: 10 ft of AWG 22 (0.1614 ohm a wire) cost a 350 ohm bridge 0.09 %.
// Kyowa Americas, note on six-wire transducers: 4 ohm a wire cost 2.2 %. Tolerances by their last digits.
TEST(Textbook, LeadFactorGivesThePublishedLosses) {
  EXPECT_NEAR(100 * (1 - 1 / textbook::leadFactor(350, 2 * 0.1614)), 0.09, 0.005);
  EXPECT_NEAR(100 * (1 - 1 / textbook::leadFactor(350, 2 * 4)), 2.2, 0.05);
}

// Network solutions of bridge_cases.csv, confirmed there by ngspice; magnitudes.
TEST(Textbook, LoadOfAShuntIsThatOfItsNetwork) {
  int tested = 0;
  for (const test::BridgeCase& row : cases("transducer")) {
    if (row.text("quantity") != "equivalent_load" || !row.hasOther("rated_output_mV_per_V")) continue;
    const Shunted shunt = shunted(row);
    const double load =
        textbook::shuntLoad(shunt.pull, row.number("gauge_ohm"), shunt.rs,
                            1e-3 * row.otherNumber("rated_output_mV_per_V"), row.otherNumber("capacity"));
    EXPECT_NEAR(-load, row.number("expected_value"), row.number("tolerance_abs")) << row.text("id");
    ++tested;
  }
  EXPECT_EQ(tested, 3);
}

TEST(Amounts, NumbersTakeThePlaceOfLetters) {
  const amounts::Letters letters{{"Rs", "59 kΩ"}, {"R", "350 Ω"}, {"F", "2"}, {"N", "1"}, {"ν", "0.3"}};
  EXPECT_EQ(amounts::withNumbers("ε ≈ −R / (F N (R + Rs))", letters), "−350 Ω / (2 × 1 × (350 Ω + 59 kΩ))");
  EXPECT_EQ(amounts::withNumbers("ε = 2 R / (F (4 (1 + ν) Rs + (3 + ν) R))", letters),
            "2 × 350 Ω / (2 × (4 × (1 + 0.3) × 59 kΩ + (3 + 0.3) × 350 Ω))");
}

// JCGM 100:2008, 7.2.6: two digits of an uncertainty suffice.
TEST(Amounts, UncertaintiesHaveTwoDigits) {
  EXPECT_EQ(amounts::uncertainty(0.6, "µm/m"), "0.60 µm/m");
  EXPECT_EQ(amounts::uncertainty(0.0996, ""), "0.10");
  EXPECT_EQ(amounts::uncertainty(1.666, "kN"), "1.7 kN");
  EXPECT_EQ(amounts::uncertainty(123.4, "µm/m"), "123 µm/m");
  EXPECT_EQ(amounts::uncertainty(0, "µm/m"), "0 µm/m");
  EXPECT_EQ(amounts::withUncertainty(0.99726714, 0.000363, ""), "0.997267, u = 0.00036");
  EXPECT_EQ(amounts::withUncertainty(2, std::nullopt, "mV"), "2 mV, uncertainty not known");
}

TEST(Amounts, SharesCarryTheirSign) {
  EXPECT_EQ(amounts::percent(0.00229), "+0.229 %");
  EXPECT_EQ(amounts::percent(-0.05), "-5 %");
  EXPECT_EQ(amounts::percent(1e-12), "0 %");
  EXPECT_EQ(amounts::output(Output(3e-17)), "0 mV/V");
}
