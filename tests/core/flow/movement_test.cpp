// SPDX-License-Identifier: GPL-3.0-or-later
// Which terminal a shunt moves and what the sentence says of it. Signs: Micro-Measurements TN-514, a shunt
// over arm 1 or 3 reads as compression of gauge 1, over the adjacent arm 2 or 4 as tension.
#include "core/flow/movement.h"
#include "core/flow/placement.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/support/digits.h"
#include "tests/support/effects.h"

using namespace core;
using testing::AllOf;
using testing::EndsWith;
using testing::HasSubstr;
using testing::Not;
using testing::StartsWith;

namespace {

constexpr double r = 350, rs = 174650, volts = 5;

core::Setup ideal(BridgeType type) { return test::equalArms(type, Resistance(r)); }
core::Setup cabled(BridgeType type) { return test::withLeads(ideal(type), Resistance(2)); }

Movement movementOf(const core::Setup& setup, std::size_t step) {
  const auto movement = movementAt(setup, step);
  EXPECT_TRUE(movement) << (movement ? "" : movement.error().text());
  return movement ? *movement : Movement{};
}

Movement lastMovement(const core::Setup& setup) { return movementOf(setup, setup.sequence.size() - 1); }

std::string lastSentence(const core::Setup& setup) {
  return sentenceOf(setup, setup.sequence.size() - 1, lastMovement(setup));
}

double risen_V(const Movement& movement, std::size_t half) {
  return movement.halves[half].after * movement.excitation.after.base() -
         movement.halves[half].before * movement.excitation.before.base();
}

/// The number before `unit` behind `words`.
double numberAfter(const std::string& sentence, const std::string& words) {
  const auto at = sentence.find(words);
  EXPECT_NE(at, std::string::npos) << '"' << words << "\" in: " << sentence;
  return at == std::string::npos ? 0 : std::stod(sentence.substr(at + words.size()));
}

class EveryTemplateMoves : public testing::TestWithParam<BridgeType> {};

INSTANTIATE_TEST_SUITE_P(Movement, EveryTemplateMoves, testing::ValuesIn([] {
                           std::vector<BridgeType> types;
                           for (const BridgeTemplate& shape : allTemplates()) types.push_back(shape.type);
                           return types;
                         }()),
                         [](const auto& param) { return std::string(templateOf(param.param).key); });

TEST_P(EveryTemplateMoves, AShuntOverAnArmHasTheSignAndSizeOfTn514) {
  // TN-514: arm 1 or 3 negative, 2 or 4 positive; v = R/(4 Rs + 2 R). The terminal at the arm moves alone:
  // a lower arm 1 or 4 takes it nearer to P+, a lower arm 2 or 3 nearer to P-.
  for (const std::size_t arm : {1, 2, 3, 4}) {
    const auto setup = test::withShuntOnArm(ideal(GetParam()), Resistance(rs), arm);
    const Movement movement = lastMovement(setup);
    const bool negative = arm % 2 == 1;
    const double v = r / (4 * rs + 2 * r);
    EXPECT_EQ(movement.polarity, negative ? Polarity::Negative : Polarity::Positive) << arm;
    EXPECT_DIGITS(movement.change.base(), negative ? -v : v, 11);  // 5e-4 of potentials right to 1e-16
    const std::size_t mover = arm <= 2 ? 0 : 1;
    EXPECT_DIGITS(risen_V(movement, mover), arm == 1 || arm == 4 ? v * volts : -v * volts, 11) << arm;
    EXPECT_EQ(risen_V(movement, 1 - mover), 0) << arm;
    for (const std::size_t other : {1, 2, 3, 4})
      EXPECT_DIGITS(movement.armRatio[other - 1], other == arm ? rs / (r + rs) : 1, 13) << arm << other;
    ASSERT_TRUE(movement.simulated);
    EXPECT_EQ(*movement.simulated < 0, negative) << arm;
  }
}

TEST_P(EveryTemplateMoves, LeadsDoNotTurnASign) {
  for (const std::size_t arm : {1, 2, 3, 4})
    EXPECT_EQ(lastMovement(test::withShuntOnArm(cabled(GetParam()), Resistance(rs), arm)).polarity,
              arm % 2 == 1 ? Polarity::Negative : Polarity::Positive)
        << arm;
}

TEST_P(EveryTemplateMoves, TheSentenceHasTheNumbersOfTn514) {
  // Derived: R || Rs = 350 x 174650 / 175000 = 349.3 ohm, and 5 V x R/(4 Rs + 2 R) = 2.5025 mV, 0.5005 mV/V.
  for (const std::size_t arm : {1, 2, 3, 4}) {
    const std::string sentence = lastSentence(test::withShuntOnArm(ideal(GetParam()), Resistance(rs), arm));
    const bool rises = arm == 1 || arm == 4, negative = arm % 2 == 1;
    const std::string mover = arm <= 2 ? "S-" : "S+", stayer = arm <= 2 ? "S+" : "S-";
    EXPECT_THAT(sentence, StartsWith("R1 lowers arm " + std::to_string(arm) + " from 350 Ω to 349.3 Ω, so " +
                                     mover + (rises ? " rises by " : " falls by ")));
    // Four digits are shown.
    EXPECT_NEAR(numberAfter(sentence, rises ? "rises by " : "falls by "), 2.5025, 0.0006);
    EXPECT_THAT(sentence,
                HasSubstr("while " + stayer + " stays: the output S+ - S- " +
                          (negative ? "falls by 0.5005 mV/V, negative" : "rises by 0.5005 mV/V, positive")));
    if (GetParam() == BridgeType::Transducer)
      EXPECT_THAT(sentence, HasSubstr(negative ? "simulates a load of -" : "simulates a load of 0"));
    else
      EXPECT_THAT(sentence, HasSubstr(negative ? "simulates compression of gauge 1, -"
                                               : "simulates tension of gauge 1, "));
  }
}

TEST(Movement, AQuarterBridgeSimulatesWhatTn514Says) {
  // TN-514 eq. 514.5: over the gauge -R/(F (R + Rs)); on the adjacent arm, R/(F Rs).
  const auto over = [](std::size_t arm) {
    return *lastMovement(test::withShuntOnArm(ideal(BridgeType::QuarterThreeWire), Resistance(rs), arm))
                .simulated;
  };
  EXPECT_DIGITS(over(1), -r / (2 * (r + rs)), 10);
  EXPECT_DIGITS(over(2), r / (2 * rs), 10);
  EXPECT_THAT(lastSentence(test::withShuntOnArm(ideal(BridgeType::QuarterThreeWire), Resistance(rs), 1)),
              EndsWith("which simulates compression of gauge 1, -1000 µm/m."));
}

TEST(Movement, ATransducersLoadIsThatOfTheFormula) {
  // Common practice: v/(rated output) x capacity = 0.5005 / 2 x 50 kN.
  core::Setup setup = test::withShuntOnArm(ideal(BridgeType::Transducer), Resistance(rs), 2);
  setup.bridge.rating = {Output(2e-3), 50, "kN"};
  EXPECT_THAT(lastSentence(setup), EndsWith("which simulates a load of 12.51 kN."));
}

TEST(Movement, AShuntFromTheTerminalsSaysThatLeadsLieInside) {
  const auto setup =
      test::withShunt(cabled(BridgeType::QuarterThreeWire), Resistance(rs), Node::PPlus, Node::SMinus);
  const std::string sentence = lastSentence(setup);
  EXPECT_THAT(sentence, HasSubstr(", with leads P+ and S- inside its loop, so S- rises by "));
  EXPECT_THAT(sentence, HasSubstr("negative"));
  // First order, 1 + 3 r for terminals P+ and S- of three wires (M. J. Bower has the exact cases; derived):
  // the strain that it simulates is larger than -1000 by 4 x 2/350, since the gauge's own loses one lead.
  EXPECT_NEAR(*lastMovement(setup).simulated, -1000e-6 * (1 + 4 * 2.0 / 350), 1e-6);
}

TEST(Movement, AShuntOverTheReturnLeadAndTheDummyNamesBoth) {
  const auto setup =
      test::withShunt(cabled(BridgeType::QuarterThreeWire), Resistance(rs), Node::SMinus, Node::PMinus);
  EXPECT_THAT(lastSentence(setup),
              AllOf(StartsWith("R1 lowers arm 2 from 350 Ω to 349."),
                    HasSubstr("with leads S- and return inside its loop"), HasSubstr("positive")));
}

TEST(Movement, AShuntOverBothHalvesLoadsTheExcitationAndMovesNoBalance) {
  const auto inside =
      test::withShunt(cabled(BridgeType::FullBending), Resistance(1000), Node::PPlus, Node::PMinus);
  EXPECT_EQ(
      lastSentence(inside),
      "R1 lies over both halves and loads the excitation alone: the bridge keeps its voltage, so S- and S+ "
      "stay: the output S+ - S- does not change.");
  // Derived: 5 V x 350/354 before; 350 || 1000 = 259.259 ohm behind two leads of 2 ohm: 5 V x
  // 259.259/263.259.
  const auto atBridge =
      test::withShunt(cabled(BridgeType::FullBending), Resistance(1000), Node::Arm1Begin, Node::Arm2End);
  const Movement movement = lastMovement(atBridge);
  EXPECT_DIGITS(movement.bridge.before.base(), 5 * 350.0 / 354, 13);
  EXPECT_DIGITS(movement.bridge.after.base(), 5 / (1 + 4 * (1 / 350.0 + 1 / 1000.0)), 13);
  EXPECT_EQ(movement.polarity, Polarity::None);
  EXPECT_THAT(lastSentence(atBridge), HasSubstr("the bridge is left with 4.924 V of 4.9435 V"));
  EXPECT_THAT(lastSentence(atBridge), EndsWith("the output S+ - S- does not change."));
}

TEST(Movement, BothSidesMoveTogetherWhereTheSourceMovesThem) {
  // At constant current a shunt over the bridge takes its voltage: both terminals fall alike.
  core::Setup setup = ideal(BridgeType::FullBending);
  setup.instrument.current = CurrentSource{Current(0.01), Resistance(350)};
  setup = test::withShunt(setup, Resistance(1000), Node::PPlus, Node::PMinus);
  // Derived: 10 mA x 350 ohm = 3.5 V; 10 mA x 259.259 ohm = 2.59259 V; half the difference.
  EXPECT_THAT(lastSentence(setup),
              HasSubstr("so S- and S+ both fall by 453.7 mV: the output S+ - S- does not change"));
}

TEST(Movement, AShuntOverTheOutputDrawsTheTerminalsTogether) {
  core::Setup setup = ideal(BridgeType::FullBending);
  setup.bridge.arms[0] = Resistance(360);  // S- below S+
  setup = test::withShunt(setup, Resistance(1000), Node::SPlus, Node::SMinus);
  const Movement movement = lastMovement(setup);
  EXPECT_GT(risen_V(movement, 0), 0);
  EXPECT_LT(risen_V(movement, 1), 0);
  EXPECT_EQ(movement.polarity, Polarity::Negative);
  EXPECT_THAT(lastSentence(setup),
              StartsWith("R1 lies between the signal corners and draws them together, so S-"));
  setup.bridge.arms[0] = Resistance(350);
  EXPECT_THAT(lastSentence(setup), HasSubstr("which have the same potential, so S- and S+ stay"));
}

TEST(Movement, AShuntOverOneLeadNamesTheLead) {
  const auto setup =
      test::withShunt(cabled(BridgeType::QuarterThreeWire), Resistance(1000), Node::PPlus, Node::Arm1Begin);
  // Derived: 2 || 1000 = 1.99601 ohm; a lower lead in arm 1 is a lower arm 1: negative.
  EXPECT_THAT(lastSentence(setup),
              StartsWith("R1 lies over lead P+ alone and lowers it from 2 Ω to 1.99601 Ω, so S- rises"));
  EXPECT_EQ(lastMovement(setup).polarity, Polarity::Negative);
  for (const double ratio : lastMovement(setup).armRatio) EXPECT_EQ(ratio, 1);
}

TEST(Movement, SeveralShuntsAreTakenByTheArmTheyLieOn) {
  core::Setup setup = ideal(BridgeType::FullBending);
  for (const std::size_t arm : {1, 1, 3}) setup = test::withShuntOnArm(setup, Resistance(rs), arm);
  setup.sequence.push_back({"all", {0, 1, 2}});
  // Derived: 350 || 87325 = 348.603 ohm; arms 1 and 3 pull the same way from both sides.
  EXPECT_THAT(lastSentence(setup),
              StartsWith("R1 and R2 together lower arm 1 from 350 Ω to 348.6 Ω and R3 lowers arm 3 "
                         "from 350 Ω to 349.3 Ω, so S- rises by "));
  EXPECT_THAT(lastSentence(setup), HasSubstr(" while S+ falls by 2.503 mV: the output S+ - S- falls by"));
}

TEST(Movement, ShuntsOnAdjacentArmsCancel) {
  core::Setup setup = ideal(BridgeType::HalfBending);
  for (const std::size_t arm : {1, 2}) setup = test::withShuntOnArm(setup, Resistance(rs), arm);
  setup.sequence.push_back({"both", {0, 1}});
  EXPECT_THAT(lastSentence(setup), EndsWith("so S- and S+ stay: the output S+ - S- does not change."));
}

TEST(Movement, ReversalsTurnWhatTheyTurnAndNothingElse) {
  // Reversed signal: the output changes sign, no terminal does. Reversed excitation: potentials are against
  // the source's minus side, now at P+, so the terminal moves the other way. Reversed gauges: the output
  // stays.
  core::Setup setup = test::withShuntOnArm(ideal(BridgeType::FullBending), Resistance(rs), 1);
  setup.bridge.hookup.signalReversed = true;
  EXPECT_THAT(
      lastSentence(setup),
      AllOf(StartsWith("With the signal reversed, R1 lowers arm 1"), HasSubstr("S- rises by"),
            HasSubstr("the output S- - S+ rises by 0.5005 mV/V, positive"), HasSubstr("compression")));
  setup.bridge.hookup = {};
  setup.bridge.hookup.excitationReversed = true;
  EXPECT_THAT(lastSentence(setup), AllOf(StartsWith("With the excitation reversed, R1"),
                                         HasSubstr("S- falls by"), HasSubstr("positive")));
  setup.bridge.hookup = {};
  setup.bridge.hookup.gaugesReversed = true;
  EXPECT_THAT(lastSentence(setup),
              AllOf(StartsWith("R1 lowers"), HasSubstr("negative, which simulates tension"),
                    EndsWith("the gauges being reversed.")));
}

TEST(Movement, ExchangedSignalLeadsMoveTheOtherTerminal) {
  core::Setup setup = test::withShuntOnArm(cabled(BridgeType::FullBending), Resistance(rs), 1);
  setup.bridge.hookup.exchanged = {{LeadRole::SignalPlus, LeadRole::SignalMinus}};
  EXPECT_THAT(lastSentence(setup),
              AllOf(StartsWith("With leads S+ and S- exchanged, R1 lowers arm 1"),
                    HasSubstr("so S+ rises by"), HasSubstr("while S- stays"), HasSubstr("positive")));
}

TEST(Movement, ALeakIsPartOfTheArmItLiesOver) {
  core::Setup setup = test::withShuntOnArm(ideal(BridgeType::FullBending), Resistance(rs), 1);
  setup.bridge.leaks[0].across = Resistance(35000);
  // Derived: 350 || 35000 = 346.535 ohm; with the shunt, 345.848 ohm.
  EXPECT_THAT(lastSentence(setup),
              StartsWith("With arm 1 leaking, R1 lowers arm 1 from 346.535 Ω to 345.848 Ω"));
}

TEST(Movement, NothingMovesWithoutAClosedShunt) {
  core::Setup setup = ideal(BridgeType::FullBending);
  setup.sequence.push_back({"zero", {}});
  EXPECT_EQ(sentenceOf(setup, 0, movementOf(setup, 0)), "No shunt is closed, so nothing moves.");
  EXPECT_EQ(sentenceOf(setup, 1, movementOf(setup, 1)), "No shunt is closed, so nothing moves.");
  EXPECT_EQ(movementOf(setup, 0).polarity, Polarity::None);
}

TEST(Movement, AgreesWithThePredictionInEveryStateOfEveryTemplate) {
  for (const BridgeTemplate& shape : allTemplates())
    for (unsigned variant = 0; variant < 8; ++variant) {
      const core::Setup setup = test::withEffects(shape.type, variant);
      const SetupPrediction predicted = predict(setup);
      for (std::size_t step = 0; step < setup.sequence.size(); ++step) {
        ASSERT_TRUE(predicted.steps[step]);
        const Movement movement = movementOf(setup, step);
        // The same network solved in the same way: potentials are right to 1e-16.
        EXPECT_NEAR(movement.change.base(), predicted.steps[step]->output.base(), 1e-14);
        EXPECT_EQ(movement.polarity, predicted.steps[step]->polarity);
        ASSERT_TRUE(movement.simulated);
        EXPECT_NEAR(*movement.simulated, predicted.steps[step]->simulated, 1e-12);
        EXPECT_THAT(sentenceOf(setup, step, movement),
                    AllOf(EndsWith("."), Not(HasSubstr("nan")), Not(HasSubstr("inf"))));
      }
    }
}

TEST(Movement, FailsAsTheStepDoes) {
  EXPECT_FALSE(movementAt(test::withShuntOnArm(ideal(BridgeType::FullBending), Resistance(0), 1), 0));
}

TEST(Placement, FollowsLeadsThatAreExchanged) {
  Bridge bridge = cabled(BridgeType::FullBending).bridge;
  const Shunt shunt{"R", Resistance(rs), Node::PPlus, Node::SPlus};
  EXPECT_EQ(placementOf(bridge, shunt).arm, 3u);
  bridge.hookup.exchanged = {{LeadRole::SignalPlus, LeadRole::SignalMinus}};
  const ShuntPlacement place = placementOf(bridge, shunt);
  EXPECT_EQ(place.kind, ShuntPlacement::Kind::Arm);
  EXPECT_EQ(place.arm, 0u);
  EXPECT_EQ(place.leads, (std::vector{LeadRole::ExcitationPlus, LeadRole::SignalMinus}));
}

TEST(Placement, KnowsAnEndThatLeadsNowhere) {
  Bridge bridge = cabled(BridgeType::FullBending).bridge;
  bridge.hookup.broken[static_cast<std::size_t>(LeadRole::SignalPlus)] = true;
  EXPECT_EQ(placementOf(bridge, {"R", Resistance(rs), Node::PPlus, Node::SPlus}).kind,
            ShuntPlacement::Kind::Nowhere);
}

}  // namespace
