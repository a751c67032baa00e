// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/circuit/bridge.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>
#include <limits>
#include <tuple>

#include "tests/support/digits.h"

using namespace core;
using enum BridgeType;

namespace bridge_test {

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

TEST(CheckBridge, NamesWhatIsWrongWithAnEffect) {
  for (const double wrong : {0.0, -1.0, notANumber, infinity}) {
    const std::vector<std::tuple<std::string, std::string, Change>> changes = {
        {"leak over arm 3", "resistance",
         [&](Bridge& b, Instrument&) { b.leaks[2].across = Resistance(wrong); }},
        {"leak to structure of arm 4", "resistance",
         [&](Bridge& b, Instrument&) { b.leaks[3].toStructure = Resistance(wrong); }},
        {"instrument", "current",
         [&](Bridge&, Instrument& i) {
           i.current = CurrentSource{Current(wrong), 350.0_ohm};
         }},
        {"instrument", "nominal bridge resistance",
         [&](Bridge&, Instrument& i) {
           i.current = CurrentSource{10.0_mA, Resistance(wrong)};
         }},
        {"balance", "potentiometer",
         [&](Bridge&, Instrument& i) {
           i.balance = {BalanceKind::Parallel, Resistance(wrong)};
         }},
        {"balance", "potentiometer",
         [&](Bridge&, Instrument& i) {
           i.balance = {BalanceKind::Series, Resistance(wrong)};
         }},
        {"balance", "resistor to S+",
         [&](Bridge&, Instrument& i) {
           i.balance = {BalanceKind::Parallel, 10.0_kohm, Resistance(wrong)};
         }},
        // 1 + coefficient x 100 K is zero, negative or not finite.
        {"gauge", "gauge factor at the gauge's temperature",
         [&](Bridge& b, Instrument&) {
           b.gauge.factorAt = Temperature(20);
           b.gauge.installed = Temperature(120);
           b.gauge.factorCoefficient = (wrong - 1) / 100;
         }},
    };
    for (const auto& [where, what, change] : changes) {
      const auto result = checked(change);
      ASSERT_FALSE(result) << where << ", " << what << " with " << wrong;
      EXPECT_EQ(result.error().where, where) << wrong;
      EXPECT_NE(result.error().what.find(what), std::string::npos) << result.error().what;
      EXPECT_FALSE(result.error().mend.empty()) << where;
    }
  }
}

TEST(CheckBridge, PlacesLieBetweenZeroAndOne) {
  const auto withPlace = [](double place) {
    return checked([place](Bridge& b, Instrument&) { b.leaks[1] = {{}, 1.0_Mohm, place}; });
  };
  const auto withWiper = [](double wiper) {
    return checked([wiper](Bridge&, Instrument& i) {
      i.balance.kind = BalanceKind::Series;
      i.balance.wiper = wiper;
    });
  };
  for (const double right : {0.0, 0.4, 1.0}) {
    EXPECT_TRUE(withPlace(right)) << right;
    EXPECT_TRUE(withWiper(right)) << right;
  }
  for (const double wrong : {-0.01, 1.01, notANumber, infinity}) {
    ASSERT_FALSE(withPlace(wrong)) << wrong;
    EXPECT_EQ(withPlace(wrong).error().where, "leak to structure of arm 2");
    EXPECT_NE(withPlace(wrong).error().what.find("between 0 and 1"), std::string::npos);
    ASSERT_FALSE(withWiper(wrong)) << wrong;
    EXPECT_EQ(withWiper(wrong).error().where, "balance");
    EXPECT_NE(withWiper(wrong).error().what.find("wiper"), std::string::npos);
  }
}

TEST(CheckBridge, LeadsMayNotCoolBelowZeroOhm) {
  // Copper loses 0.393 % a kelvin, by the linear law all of it in 255 K.
  const auto withWarming = [](double kelvin) {
    return checked([kelvin](Bridge& b, Instrument&) {
      b.leads.fill(2.0_ohm);
      b.leadWarming = Warming(kelvin);
    });
  };
  for (const double right : {-250.0, 0.0, 80.0}) EXPECT_TRUE(withWarming(right)) << right;
  for (const double wrong : {-260.0, notANumber, infinity}) {
    ASSERT_FALSE(withWarming(wrong)) << wrong;
    EXPECT_EQ(withWarming(wrong).error().where, "leads warmer by");
  }
}

TEST(CheckBridge, LooksOnlyAtWhatIsOn) {
  EXPECT_TRUE(checked([](Bridge&, Instrument& i) {
    i.balance = {BalanceKind::None, Resistance(-1), Resistance(-1), 7};
  }));
  EXPECT_TRUE(checked([](Bridge&, Instrument& i) {
    i.balance = {BalanceKind::Series, 4.0_ohm, Resistance(-1), 0.5};
  })) << "a series balance has no resistor to S+";
  EXPECT_TRUE(checked([](Bridge&, Instrument& i) {
    i.current = CurrentSource{};
    i.excitation = Voltage(0);
  })) << "a current source has no voltage set";
  EXPECT_TRUE(checked([](Bridge& b, Instrument&) {
    b.type = Transducer;
    b.gauge.installed = Temperature(notANumber);
  })) << "a transducer's gauges are not asked";
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

TEST(ReadingOf, AtACurrentSourceReckonsWithCurrentTimesNominal) {
  Instrument instrument;
  instrument.unit = ReadingUnit::Millivolt;
  instrument.excitation = Voltage(5);
  EXPECT_EQ(nominalExcitation(instrument).base(), 5);
  instrument.current = CurrentSource{10.0_mA, 350.0_ohm};
  EXPECT_DIGITS(nominalExcitation(instrument).base(), 3.5, 15);
  EXPECT_DIGITS(readingOf(instrument, Output(2e-3)).base(), 7, 14);
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

}  // namespace bridge_test
