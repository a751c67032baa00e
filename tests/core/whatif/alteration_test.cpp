// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/whatif/alteration.h"

#include <gtest/gtest.h>

#include <limits>
#include <set>

#include "tests/support/bridges.h"
#include "tests/support/digits.h"
#include "tests/support/sample_channel.h"

using namespace core;
using enum AlterationKind;

namespace {

constexpr std::size_t role(LeadRole lead) { return static_cast<std::size_t>(lead); }
constexpr std::size_t pPlus = role(LeadRole::ExcitationPlus), pMinus = role(LeadRole::ExcitationMinus),
                      sPlus = role(LeadRole::SignalPlus), sMinus = role(LeadRole::SignalMinus),
                      thirdWire = role(LeadRole::Return);

/// Three-wire quarter bridge, 2 ohm in each lead.
core::Setup quarter() { return sample::nineStepChannel().setup; }

/// `setup` with one alteration that must apply.
core::Setup with(const core::Setup& setup, std::vector<Alteration> alterations) {
  const auto result = altered(setup, alterations);
  EXPECT_TRUE(result) << (result ? "" : result.error().text());
  return result ? *result : setup;
}

Error refusalOf(const core::Setup& setup, std::vector<Alteration> alterations) {
  const auto result = altered(setup, alterations);
  EXPECT_FALSE(result);
  return result ? Error{} : result.error();
}

double ohm(const core::Setup& setup, LeadRole lead) { return leadResistance(setup.bridge, lead).base(); }

}  // namespace

TEST(Alteration, EveryKindHasAKeyAndANameOfItsOwn) {
  std::set<std::string_view> keys, names;
  for (std::size_t kind = 0; kind < alterationKindCount; ++kind) {
    keys.insert(alterationKindKey(static_cast<AlterationKind>(kind)));
    names.insert(alterationKindName(static_cast<AlterationKind>(kind)));
  }
  EXPECT_EQ(keys.size(), alterationKindCount);
  EXPECT_EQ(names.size(), alterationKindCount);
  EXPECT_FALSE(keys.contains(""));
  EXPECT_FALSE(names.contains(""));
}

TEST(Alteration, WhateverIsOfferedForAnyBridgeAppliesAndChangesIt) {
  std::set<AlterationKind> seen;
  for (const BridgeTemplate& shape : allTemplates())
    for (const bool sixWire : {false, true}) {
      core::Setup setup = sample::channelOf(shape.type, sixWire).setup;
      setup.bridge.gauge.factorCoefficient = 9e-5;
      setup.bridge.leaks[0].toStructure = 5.0_Mohm;
      std::set<std::string> texts;
      for (const Alteration& one : possibleAlterations(setup)) {
        const std::string text = alterationText(setup, one);
        SCOPED_TRACE(std::string(shape.key) + ": " + text);
        EXPECT_TRUE(texts.insert(text).second) << "said twice";
        EXPECT_NE(with(setup, {one}), setup);
        seen.insert(one.kind);
      }
    }
  EXPECT_EQ(seen.size(), alterationKindCount) << "every kind is offered somewhere";
}

TEST(Alteration, ALeadThatTheConnectionHasNotGotIsRefusedWithThoseThatThereAre) {
  // Three wires of a quarter bridge: P+ and S- from the gauge, the return to the completion resistor.
  for (const Alteration& one :
       {Alteration{LeadBroken, sPlus}, Alteration{LeadContact, pMinus, 0, 5},
        Alteration{LeadsExchanged, pPlus, role(LeadRole::SensePlus)}, Alteration{LeadBypassed, 99}}) {
    const Error error = refusalOf(quarter(), {one});
    EXPECT_NE(error.what.find("has no lead"), std::string::npos) << error.text();
    EXPECT_EQ(error.mend, "This connection has P+, S-, return");
    EXPECT_EQ(error.where, alterationText(quarter(), one));
  }
  EXPECT_EQ(refusalOf(quarter(), {{SenseAtInstrument}}).what, "the connection has no sense leads");
}

TEST(Alteration, ValuesThatCannotBeUsedAreRefused) {
  constexpr double nan = std::numeric_limits<double>::quiet_NaN();
  constexpr double infinite = std::numeric_limits<double>::infinity();
  core::Setup setup = quarter();
  setup.bridge.gauge.factorCoefficient = 9e-5;
  for (const AlterationKind kind : {LeadContact, LeadLength, Moisture, MoistureToStructure, ArmValue})
    for (const double value : {0.0, -1.0, nan, infinite})
      EXPECT_FALSE(altered(setup, std::vector{Alteration{kind, 0, 0, value}}))
          << alterationKindKey(kind) << " " << value;
  for (const AlterationKind kind : {LeadWarming, GaugeWarming})
    for (const double value : {nan, infinite})
      EXPECT_FALSE(altered(setup, std::vector{Alteration{kind, 0, 0, value}}))
          << alterationKindKey(kind) << " " << value;
  for (const double value : {-1.0, nan, infinite})
    EXPECT_FALSE(altered(setup, std::vector{Alteration{LeadResistance, 0, 0, value}})) << value;
  EXPECT_TRUE(altered(setup, std::vector{Alteration{LeadResistance, 0, 0, 0}}));
  EXPECT_FALSE(altered(setup, std::vector{Alteration{ArmValue, 4, 0, 350}})) << "there is no arm 5";
}

TEST(Alteration, LeadsSoColdThatNothingIsLeftOfThemAreRefused) {
  // Copper by a linear law of 0.00393/K has no resistance 254 K below 20 C.
  const Error error = refusalOf(quarter(), {{LeadWarming, 0, 0, -260}});
  EXPECT_EQ(
      error.what,
      "the bridge cannot be worked out with it: at that temperature lead P+ would have no resistance left");
  EXPECT_EQ(error.where, "Leads 260 K colder");
}

TEST(Alteration, ValuesThatNoPartHasAreRefusedWithTheLimit) {
  core::Setup setup = quarter();
  setup.bridge.gauge.factorCoefficient = 9e-5;
  const auto refused = [&](AlterationKind kind, double value) {
    return refusalOf(setup, {{kind, 0, 0, value}}).what;
  };
  for (const AlterationKind kind : {LeadContact, LeadResistance})
    for (const double value : {1.1e6, 1e300, 1e-7})
      EXPECT_EQ(refused(kind, value), "its value must be from 1 µΩ to 1 MΩ") << value;
  for (const AlterationKind kind : {LeadWarming, GaugeWarming})
    for (const double value : {-274.0, 1001.0})
      EXPECT_EQ(refused(kind, value), "its value must be from -273 K to 1000 K") << value;
  EXPECT_EQ(refused(Moisture, 1e300), "its value must be from 1 mΩ to 1 TΩ");
  EXPECT_EQ(refused(ArmValue, 1e10), "its value must be from 1 mΩ to 1000 MΩ");
  EXPECT_EQ(refused(LeadLength, 1e4), "its value must be from 0.001 to 1000");
  EXPECT_TRUE(altered(setup, std::vector{Alteration{LeadResistance, 0, 0, 1e6}}));
  EXPECT_EQ(alterationText(setup, {LeadResistance, 0, 0, 1e300}), "1e300 Ω in each lead");
}

TEST(Alteration, ExchangesWithoutEndAreRefused) {
  std::vector<Alteration> many;
  for (int k = 0; k < 50; ++k) {
    many.push_back({LeadsExchanged, pPlus, sMinus});
    many.push_back({LeadsExchanged, pPlus, thirdWire});
  }
  EXPECT_TRUE(altered(quarter(), many));
  many.push_back({LeadsExchanged, pPlus, sMinus});
  EXPECT_NE(refusalOf(quarter(), many).what.find("no more than 100 exchanges"), std::string::npos);
}

TEST(Alteration, WhatWouldChangeNothingIsRefusedWithTheReason) {
  EXPECT_NE(refusalOf(quarter(), {{GaugeWarming, 0, 0, 50}}).what.find("coefficient"), std::string::npos);
  core::Setup bare = quarter();
  bare.bridge.leads.fill(0.0_ohm);
  EXPECT_NE(refusalOf(bare, {{LeadLength, 0, 0, 2}}).what.find("no resistance"), std::string::npos);
  EXPECT_NE(refusalOf(quarter(), {{LeadsTouching, sMinus, thirdWire}}).what.find("one point"),
            std::string::npos);
  EXPECT_NE(refusalOf(quarter(), {{LeadsExchanged, pPlus, pPlus}}).what.find("twice"), std::string::npos);
  EXPECT_NE(refusalOf(quarter(), {{LeadBroken, pPlus}, {LeadBroken, pPlus}}).what.find("broken already"),
            std::string::npos);
  EXPECT_NE(refusalOf(quarter(), {{LeadsTouching, pPlus, sMinus}, {LeadsTouching, sMinus, pPlus}})
                .what.find("already"),
            std::string::npos);
}

TEST(Alteration, SeveralComeOneAfterTheOther) {
  const core::Setup setup = quarter();
  // Exchanged or turned twice, everything is back where it was; a bypass mends a broken lead.
  EXPECT_EQ(with(setup, {{LeadsExchanged, pPlus, sMinus}, {LeadsExchanged, sMinus, pPlus}}), setup);
  EXPECT_EQ(with(setup, {{SignalReversed}, {SignalReversed}}), setup);
  EXPECT_NE(with(setup, {{LeadsExchanged, pPlus, sMinus}, {LeadsExchanged, sMinus, thirdWire}}),
            with(setup, {{LeadsExchanged, sMinus, thirdWire}, {LeadsExchanged, pPlus, sMinus}}));
  const core::Setup bypassed = with(setup, {{LeadBroken, sMinus}, {LeadBypassed, sMinus}});
  EXPECT_FALSE(isBroken(bypassed.bridge, LeadRole::SignalMinus));
  EXPECT_EQ(ohm(bypassed, LeadRole::SignalMinus), 0);
}

TEST(Alteration, NeitherLengthNorWarmingChangesABadContact) {
  // Copper: 2 ohm x (1 + 0.00393/K x 100 K) (IEC 60028, as in core/circuit/lead.h), then 5 ohm.
  for (const std::vector<Alteration>& order :
       {std::vector<Alteration>{{LeadContact, pPlus, 0, 5}, {LeadWarming, 0, 0, 100}},
        std::vector<Alteration>{{LeadWarming, 0, 0, 100}, {LeadContact, pPlus, 0, 5}}}) {
    const core::Setup setup = with(quarter(), order);
    EXPECT_DIGITS(ohm(setup, LeadRole::ExcitationPlus), 2 * 1.393 + 5, 12);
    EXPECT_DIGITS(ohm(setup, LeadRole::SignalMinus), 2 * 1.393, 12);
  }
  const core::Setup longer = with(quarter(), {{LeadContact, pPlus, 0, 5}, {LeadLength, 0, 0, 3}});
  EXPECT_DIGITS(ohm(longer, LeadRole::ExcitationPlus), 2 * 3 + 5, 15);
  // A bypass goes over the lead with the contacts that are in it.
  EXPECT_EQ(
      ohm(with(quarter(), {{LeadContact, pPlus, 0, 5}, {LeadBypassed, pPlus}}), LeadRole::ExcitationPlus), 0);
}

TEST(Alteration, AWireGivenByItsSizeGrowsInLength) {
  core::Setup setup = quarter();
  setup.bridge.leads[sMinus] = CopperWire{10.0_m, awgSection(26), 20.0_degC};
  const core::Setup longer = with(setup, {{LeadLength, 0, 0, 2.5}});
  EXPECT_EQ(std::get<CopperWire>(longer.bridge.leads[sMinus]).length, 25.0_m);
  EXPECT_EQ(ohm(longer, LeadRole::ExcitationPlus), 5);
}

TEST(Alteration, MoistureComesBesideWhatLeaksAlready) {
  // Derived: 10 Mohm beside 10 Mohm are 5 Mohm.
  const core::Setup setup = with(quarter(), {{Moisture, 0, 0, 1e7}, {Moisture, 0, 0, 1e7}});
  EXPECT_DIGITS(setup.bridge.leaks[0].across->base(), 5e6, 15);
  EXPECT_FALSE(setup.bridge.leaks[1].across);
}

TEST(Alteration, AReversalOfWhatIsReversedSaysThatItPutsItRight) {
  const core::Setup reversed = with(quarter(), {{SignalReversed}, {ExcitationReversed}, {GaugesReversed}});
  EXPECT_EQ(alterationText(reversed, {SignalReversed}), "Signal wires put right");
  EXPECT_EQ(alterationText(reversed, {ExcitationReversed}), "Excitation put right");
  EXPECT_EQ(alterationText(reversed, {GaugesReversed}), "Gauges put right");
  EXPECT_EQ(with(reversed, {{SignalReversed}, {ExcitationReversed}, {GaugesReversed}}), quarter());
}

TEST(Alteration, SaysWhereAndHowMuch) {
  const core::Setup setup = quarter();
  const std::pair<Alteration, const char*> said[] = {
      {{LeadBroken, sMinus}, "Lead S- broken"},
      {{LeadsExchanged, pPlus, sMinus}, "Leads P+ and S- exchanged at the instrument"},
      {{LeadContact, pPlus, 0, 5}, "Bad contact of 5 Ω in lead P+"},
      {{Moisture, 0, 0, 1e7}, "Leak of 10 MΩ over the gauge in arm 1"},
      {{ArmValue, 1, 0, 353.5}, "Completion resistor in arm 2 has 353.5 Ω"},
      {{LeadWarming, 0, 0, -15}, "Leads 15 K colder"},
      {{LeadLength, 0, 0, 2}, "Leads 2 times as long"},
      {{StructureConnected, 1}, "Structure connected to P-"}};
  for (const auto& [alteration, text] : said) EXPECT_EQ(alterationText(setup, alteration), text);
}

TEST(Alteration, WhatDoesNotApplyIsLeftOutAndTheOthersStay) {
  const std::vector<Alteration> wanted = {{LeadBroken, sPlus}, {SignalReversed}, {LeadContact, pPlus, 0, 5}};
  const TriedOut tried = triedOut(quarter(), wanted);
  EXPECT_EQ(tried.applied, (std::vector<Alteration>{wanted[1], wanted[2]}));
  ASSERT_EQ(tried.refused.size(), 3u);
  EXPECT_TRUE(tried.refused[0]);
  EXPECT_FALSE(tried.refused[1]);
  EXPECT_FALSE(tried.refused[2]);
  EXPECT_EQ(tried.setup, with(quarter(), tried.applied));
  EXPECT_EQ(tried.texts[0], "Lead S+ broken");
}

TEST(Alteration, APlanThatCannotBeWorkedOutIsAlteredAllTheSame) {
  core::Setup setup = quarter();
  setup.bridge.arms[2] = 0.0_ohm;
  EXPECT_TRUE(altered(setup, std::vector{Alteration{SignalReversed}}));
  EXPECT_FALSE(possibleAlterations(setup).empty());
  // It even mends it.
  EXPECT_TRUE(predict(with(setup, {{ArmValue, 2, 0, 350}})).zero);
}
