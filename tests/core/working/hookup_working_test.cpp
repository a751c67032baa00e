// SPDX-License-Identifier: GPL-3.0-or-later
// The textbook's formulas beside bridges whose wires or gauges are reversed: signs of TN-514 turned as often
// as something is reversed.
#include <gtest/gtest.h>

#include <cmath>
#include <string>

#include "core/circuit/hookup.h"
#include "core/polarity/place_words.h"
#include "core/working/working.h"
#include "tests/support/setups.h"

using namespace core;

namespace {

std::vector<WorkingPart> workingOfLast(const core::Setup& setup) {
  Channel channel;
  channel.setup = setup;
  const auto parts = workingOf(channel, evaluate(channel), std::nullopt, channel.setup.sequence.size() - 1);
  EXPECT_TRUE(parts) << (parts ? "" : parts.error().text());
  return parts ? *parts : std::vector<WorkingPart>{};
}

std::vector<WorkingContrast> contrastsOf(const std::vector<WorkingPart>& parts) {
  std::vector<WorkingContrast> all;
  for (const WorkingPart& part : parts) all.insert(all.end(), part.contrasts.begin(), part.contrasts.end());
  return all;
}

WorkingContrast contrast(const core::Setup& setup, const std::string& formula) {
  for (const WorkingContrast& one : contrastsOf(workingOfLast(setup)))
    if (one.formula == formula) return one;
  ADD_FAILURE() << "no formula " << formula;
  return {};
}

core::Setup shunted(BridgeType type, std::size_t arm, const Hookup& hookup) {
  core::Setup setup = test::withShuntOnArm(test::equalArms(type, 350.0_ohm), 174.65_kohm, arm);
  setup.bridge.hookup = hookup;
  return setup;
}

const Hookup wires{.signalReversed = true};
const Hookup gauges{.gaugesReversed = true};

}  // namespace

TEST(HookupWorking, NoFormulaHasTheOtherSignThanTheNetwork) {
  for (const BridgeTemplate& shape : allTemplates())
    for (unsigned reversed = 0; reversed < 8; ++reversed)
      for (const std::size_t arm : {1, 2, 3, 4}) {
        const Hookup hookup{(reversed & 1) != 0, (reversed & 2) != 0, (reversed & 4) != 0};
        const auto contrasts = contrastsOf(workingOfLast(shunted(shape.type, arm, hookup)));
        EXPECT_GE(contrasts.size(), 3u);
        for (const WorkingContrast& one : contrasts) {
          // Equal arms without leads: what is left is curvature, a thousandth of 1000 µm/m and its like.
          EXPECT_NEAR(one.approximateValue / one.exactValue, 1, 0.005)
              << shape.key << " arm " << arm << " reversed " << reversed << ": " << one.formula;
        }
      }
}

TEST(HookupWorking, WritesTheSignThatReversedWiresGive) {
  // TN-514: a shunt over the gauge reads as compression, -R/(4 Rs + 2 R); reversed signal wires turn that
  // round, and what is simulated stays.
  const core::Setup setup = shunted(BridgeType::QuarterTwoWire, 1, wires);
  EXPECT_EQ(contrast(setup, "Δv = R / (4 Rs + 2 R)").numbers, "350 Ω / (4 × 174.65 kΩ + 2 × 350 Ω)");
  EXPECT_EQ(contrast(setup, "ε ≈ −R / (F N (R + Rs))").approximate, "-1000 µm/m");
  EXPECT_EQ(contrast(setup, "ε ≈ −4 Δv / (F N)").numbers, "−4 × 0.500501 mV/V / (2 × 1)");
  EXPECT_EQ(contrast(setup, "ε = 4 (−Δv) / (F (1 − 2 (−Δv)))").approximate, "-1000 µm/m");
}

TEST(HookupWorking, WritesTheSignThatReversedGaugesGive) {
  const core::Setup setup = shunted(BridgeType::QuarterTwoWire, 1, gauges);
  EXPECT_EQ(contrast(setup, "Δv = −R / (4 Rs + 2 R)").off, "0 %");
  EXPECT_EQ(contrast(setup, "ε ≈ R / (F N (R + Rs))").numbers, "350 Ω / (2 × 1 × (350 Ω + 174.65 kΩ))");
  EXPECT_EQ(contrast(setup, "ε = −4 Δv / (F (1 − 2 Δv))").approximate, "1000 µm/m");
  EXPECT_EQ(contrast(shunted(BridgeType::Transducer, 1, gauges),
                     "L = C R / ((4 Rs + 2 R) S), C capacity, S rated output")
                .off,
            "0 %");
}

TEST(HookupWorking, SaysHowTheBridgeIsConnectedAndDividesAsTheInstrumentDoes) {
  const std::string text = workingText(workingOfLast(
      shunted(BridgeType::FullBending, 1, {.signalReversed = true, .excitationReversed = true})));
  EXPECT_NE(text.find("the instrument measures S- against S+"), std::string::npos) << text;
  EXPECT_NE(text.find("(V(S-) − V(S+)) / (V(P-) − V(P+))"), std::string::npos) << text;
}

TEST(HookupWorking, HasNoTextbookForExchangedLeads) {
  const core::Setup setup =
      shunted(BridgeType::FullBending, 1, {.exchanged = {{LeadRole::SignalMinus, LeadRole::ExcitationPlus}}});
  const auto parts = workingOfLast(setup);
  for (const WorkingContrast& one : contrastsOf(parts)) ADD_FAILURE() << one.formula;
  EXPECT_NE(workingText(parts).find("none: they are for bridges whose leads are in order"),
            std::string::npos);
}

TEST(HookupWorking, NamesTheArmThatExchangedLeadsLeadTo) {
  // Derived: at the terminals P+ and S- hang the corners P+ and S+ once the signal leads are exchanged:
  // arm 4. With P- and S- exchanged they hang at the corners P+ and P-: no single arm.
  core::Setup setup = test::withLeads(test::equalArms(BridgeType::FullBending, 350.0_ohm), 2.0_ohm);
  setup = test::withShunt(setup, 174.65_kohm, Node::PPlus, Node::SMinus);
  const auto text = [&](LeadRole a, LeadRole b) {
    setup.bridge.hookup.exchanged = {{a, b}};
    return workingText(workingOfLast(setup));
  };
  EXPECT_NE(text(LeadRole::SignalPlus, LeadRole::SignalMinus).find("across arm 4 and leads"),
            std::string::npos);
  EXPECT_EQ(placeWords(setup.bridge, Node::PPlus, Node::SMinus), "over arm 4 from the terminals");
  EXPECT_NE(text(LeadRole::ExcitationMinus, LeadRole::SignalMinus).find("across no single arm"),
            std::string::npos);
}

TEST(HookupWorking, ComparesReadingAndSimulatedStrainWithoutTheirSigns) {
  // Quarter bridge, 1000 µm/m: the linear indication is larger by 1/999 whichever way round.
  const std::string text = workingText(workingOfLast(shunted(BridgeType::QuarterTwoWire, 1, wires)));
  EXPECT_NE(text.find("of opposite sign"), std::string::npos) << text;
  EXPECT_NE(text.find("+0.1 %"), std::string::npos) << text;
}
