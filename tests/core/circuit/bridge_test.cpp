// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/circuit/bridge.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>
#include <limits>

#include "tests/support/digits.h"

using namespace core;
using enum BridgeType;

namespace {

using Change = std::function<void(Bridge&, Instrument&)>;

Result<void> checked(const Change& change) {
  Bridge bridge;
  Instrument instrument;
  change(bridge, instrument);
  return checkBridge(bridge, instrument);
}

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();
constexpr double infinity = std::numeric_limits<double>::infinity();

Bridge ofType(BridgeType type, bool sixWire = false) {
  Bridge bridge;
  bridge.type = type;
  bridge.sixWire = sixWire;
  return bridge;
}

}  // namespace

TEST(CheckBridge, TakesTheDefaultBridge) {
  EXPECT_TRUE(checked([](Bridge&, Instrument&) {}));
}

TEST(CheckBridge, NamesWhatIsNotAPositiveNumber) {
  const auto lead = [](LeadRole role) { return static_cast<std::size_t>(role); };
  for (const double wrong : {0.0, -1.0, notANumber, infinity}) {
    const std::vector<std::pair<std::string, Change>> changes = {
        {"arm 3", [&](Bridge& b, Instrument&) { b.arms[2] = Resistance(wrong); }},
        {"gauge", [&](Bridge& b, Instrument&) { b.gauge.nominal = Resistance(wrong); }},
        {"gauge", [&](Bridge& b, Instrument&) { b.gauge.factor = wrong; }},
        {"instrument", [&](Bridge&, Instrument& i) { i.gaugeFactor = wrong; }},
        {"instrument", [&](Bridge&, Instrument& i) { i.bridgeFactor = wrong; }},
        {"instrument", [&](Bridge&, Instrument& i) { i.excitation = Voltage(wrong); }},
        {"instrument", [&](Bridge&, Instrument& i) { i.inputResistance = Resistance(wrong); }},
        {"lead P+",
         [&](Bridge& b, Instrument&) {
           b.leads[lead(LeadRole::ExcitationPlus)] = CopperWire{Length(wrong), 0.14_mm2};
         }},
        {"lead return",
         [&](Bridge& b, Instrument&) {
           b.leads[lead(LeadRole::Return)] = CopperWire{10.0_m, Area(wrong)};
         }},
        {"rating",
         [&](Bridge& b, Instrument&) {
           b.type = Transducer;
           b.rating.ratedOutput = Output(wrong);
         }},
        {"rating",
         [&](Bridge& b, Instrument&) {
           b.type = Transducer;
           b.rating.capacity = wrong;
         }},
    };
    for (const auto& [where, change] : changes) {
      const auto result = checked(change);
      ASSERT_FALSE(result) << where << " with " << wrong;
      EXPECT_EQ(result.error().where, where) << wrong;
    }
  }
}

TEST(CheckBridge, LeadMayBeZeroButNotNegative) {
  const auto withLead = [](double ohm) {
    return checked([ohm](Bridge& b, Instrument&) { b.leads.fill(Resistance(ohm)); });
  };
  EXPECT_TRUE(withLead(0));
  for (const double wrong : {-0.1, notANumber, infinity}) EXPECT_FALSE(withLead(wrong)) << wrong;
}

TEST(CheckBridge, LooksOnlyAtLeadsInUse) {
  const auto signalPlus = static_cast<std::size_t>(LeadRole::SignalPlus);
  // A quarter bridge has no S+ lead: a value left over there must not stand in the way.
  EXPECT_TRUE(checked([&](Bridge& b, Instrument&) { b.leads[signalPlus] = Resistance(-1); }));
  EXPECT_FALSE(checked([&](Bridge& b, Instrument&) {
    b.type = FullBending;
    b.leads[signalPlus] = Resistance(-1);
  }));
}

TEST(CheckBridge, ScaleMayBeNegativeButNotZero) {
  const auto withScale = [](double scale) {
    return checked([scale](Bridge&, Instrument& i) { i.unitsPerMillivoltPerVolt = scale; });
  };
  EXPECT_TRUE(withScale(-25));
  for (const double wrong : {0.0, notANumber, infinity}) EXPECT_FALSE(withScale(wrong)) << wrong;
}

TEST(CheckBridge, PoissonRatioLiesBetweenZeroAndAHalf) {
  const auto withRatio = [](double nu) {
    return checked([nu](Bridge& b, Instrument&) { b.gauge.poissonRatio = nu; });
  };
  for (const double right : {0.0, 0.3, 0.5}) EXPECT_TRUE(withRatio(right)) << right;
  for (const double wrong : {-0.01, 0.51, notANumber}) EXPECT_FALSE(withRatio(wrong)) << wrong;
}

TEST(ReadingOf, FollowsTheUnitAndItsSettings) {
  // Derived from the definitions: 4 v / (F N); v; v times the excitation; v times the scale.
  Instrument instrument;
  instrument.gaugeFactor = 2.1;
  instrument.bridgeFactor = 2;
  instrument.excitation = 2.5_V;
  instrument.unitsPerMillivoltPerVolt = -25;
  instrument.scaledUnit = "kN";
  const Output v = -1.05_mV_per_V;
  const std::vector<std::tuple<ReadingUnit, double, std::string>> expected = {
      {ReadingUnit::MicrometrePerMetre, -1000, "µm/m"},
      {ReadingUnit::MillivoltPerVolt, -1.05, "mV/V"},
      {ReadingUnit::Millivolt, -2.625, "mV"},
      {ReadingUnit::Scaled, 26.25, "kN"}};
  for (const auto& [unit, reading, text] : expected) {
    instrument.unit = unit;
    EXPECT_DIGITS(readingOf(instrument, v).base(), reading, 14) << text;
    EXPECT_EQ(readingUnitText(instrument), text);
    EXPECT_EQ(readingUnitFromKey(readingUnitKey(unit)), unit);
  }
  EXPECT_FALSE(readingUnitFromKey("furlong"));
}

TEST(PointOf, JoinedEndsAreOnePoint) {
  const Bridge full = ofType(FullBending);
  EXPECT_EQ(pointOf(full, Node::Arm1End), pointOf(full, Node::Arm2Begin));
  EXPECT_EQ(pointOf(full, Node::Arm4End), pointOf(full, Node::Arm1Begin));
  EXPECT_NE(pointOf(full, Node::Arm1Begin), pointOf(full, Node::PPlus)) << "a lead lies between";
  const Bridge quarter = ofType(QuarterThreeWire);
  EXPECT_EQ(pointOf(quarter, Node::Arm4End), Node::PPlus);
  EXPECT_NE(pointOf(quarter, Node::Arm1End), pointOf(quarter, Node::Arm2Begin));
}

TEST(PointName, TellsTerminalFromGaugeEnd) {
  const Bridge quarter = ofType(QuarterThreeWire);
  EXPECT_EQ(pointName(quarter, Node::Arm4End), "terminal P+");
  EXPECT_EQ(pointName(quarter, Node::Arm1Begin), "gauge end of lead P+");
  EXPECT_EQ(pointName(quarter, Node::Arm2Begin), "instrument end of lead return");
}

TEST(HasNode, SenseTerminalsNeedSixWires) {
  EXPECT_FALSE(hasNode(ofType(FullBending), Node::SensePlus));
  EXPECT_TRUE(hasNode(ofType(FullBending, true), Node::SensePlus));
  EXPECT_FALSE(hasNode(ofType(QuarterThreeWire, true), Node::SenseMinus)) << "no six-wire quarter bridge";
  EXPECT_TRUE(hasNode(ofType(QuarterThreeWire), Node::SPlus));
}

TEST(WiresOf, GrowByTheSenseLeads) {
  EXPECT_EQ(wiresOf(ofType(FullBending)).size(), 4u);
  EXPECT_EQ(wiresOf(ofType(FullBending, true)).size(), 6u);
  EXPECT_EQ(wiresOf(ofType(QuarterThreeWire, true)).size(), 3u);
  EXPECT_EQ(wiresOf(ofType(QuarterTwoWire)).size(), 2u);
}
