// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/whatif/notation.h"

#include <gtest/gtest.h>

#include "tests/support/bridges.h"
#include "tests/support/sample_channel.h"

using namespace core;
using enum AlterationKind;

namespace {

Alteration read(const core::Setup& setup, const std::string& text) {
  const auto result = alterationFrom(setup, text);
  EXPECT_TRUE(result) << (result ? "" : result.error().text());
  return result ? *result : Alteration{LeadBroken, 99};
}

Error fault(const std::string& text) {
  const auto result = alterationFrom(sample::nineStepChannel().setup, text);
  EXPECT_FALSE(result) << text;
  return result ? Error{} : result.error();
}

}  // namespace

TEST(AlterationNotation, WhatIsWrittenIsReadBack) {
  for (const BridgeTemplate& shape : allTemplates()) {
    core::Setup setup = sample::channelOf(shape.type, true).setup;
    setup.bridge.gauge.factorCoefficient = 9e-5;
    setup.bridge.leaks[0].toStructure = 5.0_Mohm;
    for (Alteration one : possibleAlterations(setup)) {
      if (one.value != 0) one.value *= 1.0 / 3;  // a double that is no short decimal is written in 12 digits
      const Alteration back = read(setup, notationOf(one));
      EXPECT_NEAR(back.value, one.value, 1e-11 * std::abs(one.value)) << notationOf(one);
      one.value = back.value;
      EXPECT_EQ(back, one) << notationOf(one);
    }
  }
}

TEST(AlterationNotation, TakesBlanksCaseAndTheTradesNumbers) {
  const core::Setup setup = sample::nineStepChannel().setup;
  EXPECT_EQ(read(setup, "broken S-"),
            (Alteration{LeadBroken, static_cast<std::size_t>(LeadRole::SignalMinus)}));
  EXPECT_EQ(read(setup, "  Exchange p+ , s-"),
            (Alteration{LeadsExchanged, static_cast<std::size_t>(LeadRole::ExcitationPlus),
                        static_cast<std::size_t>(LeadRole::SignalMinus)}));
  EXPECT_EQ(read(setup, "leak arm 1 = 10M"), (Alteration{Moisture, 0, 0, 1e7}));
  EXPECT_EQ(read(setup, "leak 1=4k7"), (Alteration{Moisture, 0, 0, 4700}));
  EXPECT_EQ(read(setup, "leak to structure arm 1 = 2 Mohm"), (Alteration{MoistureToStructure, 0, 0, 2e6}));
  EXPECT_EQ(read(setup, "leads warmer = 20"), (Alteration{LeadWarming, 0, 0, 20}));
  EXPECT_EQ(read(setup, "leads = 3R3"), (Alteration{LeadResistance, 0, 0, 3.3}));
  EXPECT_EQ(read(setup, "structure P-"), (Alteration{StructureConnected, 1}));
  EXPECT_EQ(read(setup, "reverse gauges"), (Alteration{GaugesReversed}));
}

TEST(AlterationNotation, AValueThatIsLeftOutIsTheUsualOne) {
  const core::Setup setup = sample::nineStepChannel().setup;
  EXPECT_EQ(read(setup, "length"), (Alteration{LeadLength, 0, 0, 2}));
  // 350 ohm and 1 % of it.
  EXPECT_EQ(read(setup, "value arm 3"), (Alteration{ArmValue, 2, 0, 353.5}));
}

TEST(AlterationNotation, WhatCannotBeReadSaysWhatCan) {
  EXPECT_NE(fault("leek arm 1").mend.find("\"leak arm N = OHM\""), std::string::npos);
  EXPECT_NE(fault("").mend.find("\"broken LEAD\""), std::string::npos);
  EXPECT_NE(fault("broken").what.find("where"), std::string::npos);
  EXPECT_NE(fault("broken X-").mend.find("sense+"), std::string::npos);
  EXPECT_NE(fault("exchange P+").what.find("where"), std::string::npos);
  EXPECT_NE(fault("leak arm 5 = 1M").what.find("where"), std::string::npos);
  EXPECT_NE(fault("reverse signal = 3").what.find("no value"), std::string::npos);
  EXPECT_NE(fault("leak arm 1 = much").what.find("much"), std::string::npos);
  EXPECT_NE(fault("leak arm 1 =").text(), "");
  // The sample has no temperature coefficient, so nothing is usual there.
  EXPECT_NE(fault("gauges warmer").what.find("needs a value"), std::string::npos);
}
