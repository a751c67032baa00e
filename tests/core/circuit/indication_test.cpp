// SPDX-License-Identifier: GPL-3.0-or-later
// What a linearising instrument shows. The printed examples of TN-507 are in tests/reference.
#include "core/circuit/indication.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>

#include "tests/support/digits.h"
#include "tests/support/setups.h"

using namespace core;
using enum BridgeType;

namespace {

core::Setup quarter(Linearisation linearisation, double factor = 2.1) {
  core::Setup setup = test::equalArms(QuarterThreeWire, 350.0_ohm, factor);
  setup.instrument.linearisation = linearisation;
  return setup;
}

Indication shown(const core::Setup& setup, double now, double zero) {
  const auto indication = indicationOf(setup.bridge, setup.instrument, Output(now), Output(zero));
  EXPECT_TRUE(indication) << (indication ? "" : indication.error().text());
  return indication ? *indication : Indication{};
}

double reading(const core::Setup& setup, double now, double zero) {
  return shown(setup, now, zero).value.base();
}

/// Output at which an instrument without linearisation shows `strain` (m/m) of a quarter bridge.
double outputOf(double indicated, double factor = 2.1) { return factor * indicated / 4; }

/// d f / d v to the fourth order. Step 1e-4: truncation step^4 / 30 x fifth derivative, relative to the first
/// 4 x 480 of 1/(1-2v), 1e-14; rounding of a reading near 1e4, 1e-12 / 1e-4 against a derivative near 2e6.
double difference(const std::function<double(double)>& f, double v) {
  const double h = 1e-4;
  return (8 * (f(v + h) - f(v - h)) - (f(v + 2 * h) - f(v - 2 * h))) / (12 * h);
}

}  // namespace

TEST(IdealResistanceChange, UndoesTheOutputOfEveryTemplate) {
  // The whole network of the ideal bridge, solved, gives the output; the inverse must give the strain back.
  for (const BridgeTemplate& shape : allTemplates())
    for (const double nu : {0.0, 0.285, 0.5})
      for (const double strain : {-50e-3, -1e-3, 300e-6, 80e-3}) {
        const core::Setup setup = test::equalArms(shape.type, 350.0_ohm, 2.1, nu);
        const double change = armSlope(setup.bridge, 0) * strain / 350;
        const auto x = idealResistanceChange(shape.type, nu, test::outputAt(setup, strain));
        ASSERT_TRUE(x) << shape.key;
        // Potentials carry 1e-16; a change x shows as about x/4.
        EXPECT_NEAR(*x, change, 4 * 5e-16 + 1e-14 * std::abs(change)) << shape.key << ", " << strain;
      }
}

TEST(IdealResistanceChange, OfABalancedBridgeIsZero) {
  for (const BridgeTemplate& shape : allTemplates())
    EXPECT_EQ(idealResistanceChange(shape.type, 0.3, Output(0)), 0.0) << shape.key;
}

TEST(IdealResistanceChange, OfTheQuarterBridgeIsThatOfTn507) {
  // Micro-Measurements TN-507: e = 2 ei / (2 - F ei) with v = F ei / 4, so x = 4 v / (1 - 2 v).
  for (const double v : {-0.1, 1e-6, 0.2})
    EXPECT_DIGITS(idealResistanceChange(QuarterTwoWire, 0.3, Output(v)).value(), 4 * v / (1 - 2 * v), 14);
}

TEST(IdealResistanceChange, IsNoneWhereNoGaugeResistanceGivesTheOutput) {
  // A quarter bridge gives -1/2 with its gauge shorted, +1/2 with it open; a full bridge -1 to 1.
  for (const double v : {0.5, 0.7, -0.51, -3.0})
    EXPECT_FALSE(idealResistanceChange(QuarterThreeWire, 0.3, Output(v))) << v;
  for (const double v : {1.01, -1.01}) EXPECT_FALSE(idealResistanceChange(FullBending, 0.3, Output(v))) << v;
  EXPECT_FALSE(idealResistanceChange(FullPoissonColumn, 0.3, Output(std::nan(""))));
}

TEST(Indication, WithoutLinearisationIsTheDifferenceOfReadings) {
  const core::Setup setup = quarter(Linearisation::None);
  const Indication indication = shown(setup, 3e-3, 1e-3);
  EXPECT_DIGITS(indication.value.base(), 4e6 * 2e-3 / 2.1, 13);
  EXPECT_DIGITS(indication.perOutput, 4e6 / 2.1, 14);
  EXPECT_EQ(indication.perZero, -indication.perOutput);
}

TEST(Indication, CorrectsAQuarterBridgeAsTn507Does) {
  // Micro-Measurements TN-507: e = 2 ei / (2 - F ei).
  for (const auto order : {Linearisation::BeforeZero, Linearisation::AfterZero})
    for (const double ei : {-8e-3, -100e-6, 4.5e-3, 30e-3})
      EXPECT_DIGITS(reading(quarter(order), outputOf(ei), 0), 1e6 * 2 * ei / (2 - 2.1 * ei), 13) << ei;
}

TEST(Indication, CorrectsEachOutputBeforeASoftwareZero) {
  // M. J. Bower, Modern Strain Gage Technology, eq. 27.14: de = 4 di / ((2 - F e0)(2 - F (e0 + di))), with e0
  // the indication at zero and di the indicated change.
  const core::Setup setup = quarter(Linearisation::BeforeZero);
  for (const double e0 : {-4.5e-3, 9e-3})
    for (const double di : {-2e-3, 3e-3}) {
      const double expected = 4 * di / ((2 - 2.1 * e0) * (2 - 2.1 * (e0 + di)));
      // The difference of two corrected strains near 1e4 um/m is a few thousand: 13 digits of it.
      EXPECT_DIGITS(reading(setup, outputOf(e0 + di), outputOf(e0)), 1e6 * expected, 12.5)
          << e0 << ", " << di;
    }
}

TEST(Indication, CorrectsTheChangeAfterTheZeroAsIfFromBalance) {
  const core::Setup setup = quarter(Linearisation::AfterZero);
  for (const double e0 : {-4.5e-3, 9e-3})
    for (const double di : {-2e-3, 3e-3})
      EXPECT_DIGITS(reading(setup, outputOf(e0 + di), outputOf(e0)), 1e6 * 2 * di / (2 - 2.1 * di), 12.5);
}

TEST(Indication, OrderMattersWithAnInitialUnbalanceOnly) {
  const auto both = [](double now, double zero) {
    return std::pair(reading(quarter(Linearisation::BeforeZero), now, zero),
                     reading(quarter(Linearisation::AfterZero), now, zero));
  };
  const auto [before, after] = both(2e-3, 0);
  EXPECT_EQ(before, after) << "a balanced bridge";
  const auto [beforeOff, afterOff] = both(5e-3 + 2e-3, 5e-3);
  // Derived: 4 v / (1 - 2 v) has the slope 4 / (1 - 2 v)^2, larger by about 4 v0 at an unbalance v0 of 5
  // mV/V.
  EXPECT_NEAR(beforeOff / afterOff - 1, 4 * 5e-3, 1e-3);
}

TEST(Indication, UsesTheGaugeAndBridgeFactorThatAreSet) {
  // A strain is indicated as 4 v / (F N) whatever the gauges are; the correction does not change that scale.
  core::Setup setup = quarter(Linearisation::BeforeZero);
  const double v = 1e-7;  // so small that there is nothing to correct beyond 2e-7
  setup.instrument.gaugeFactor = 2.6;
  setup.instrument.bridgeFactor = 1.7;
  EXPECT_NEAR(reading(setup, v, 0) / (4e6 * v / (2.6 * 1.7)), 1, 5e-7);
}

TEST(Indication, ReadingsThatAreNoStrainAreNotCorrected) {
  for (const ReadingUnit unit :
       {ReadingUnit::MillivoltPerVolt, ReadingUnit::Millivolt, ReadingUnit::Scaled}) {
    core::Setup setup = quarter(Linearisation::BeforeZero);
    setup.instrument.unit = unit;
    EXPECT_EQ(shown(setup, 8e-3, 1e-3).value, readingOf(setup.instrument, Output(7e-3)));
  }
  core::Setup transducer = test::equalArms(Transducer, 350.0_ohm);
  transducer.instrument.linearisation = Linearisation::AfterZero;
  EXPECT_EQ(shown(transducer, 8e-3, 1e-3).value, readingOf(transducer.instrument, Output(7e-3)));
}

TEST(Indication, OfABridgeThatIsLinearIsNotChanged) {
  // Gauges of equal and opposite strain in adjacent arms: TN-507, section on error magnitudes.
  for (const BridgeType type : {HalfBending, FullBending, FullTorsion, FullPoissonBendingSplit}) {
    core::Setup setup = test::equalArms(type, 350.0_ohm);
    const double plain = reading(setup, 9e-3, 2e-3);
    for (const auto order : {Linearisation::BeforeZero, Linearisation::AfterZero}) {
      setup.instrument.linearisation = order;
      EXPECT_DIGITS(reading(setup, 9e-3, 2e-3), plain, 13) << templateOf(type).key;
    }
  }
}

TEST(Indication, ShowsTheStrainOfAnyIdealBridge) {
  // Zeroed with 500 um/m on the gauges, now at 7000: the correction before the zero knows the difference.
  for (const BridgeTemplate& shape : allTemplates()) {
    if (shape.type == Transducer) continue;
    core::Setup setup = test::equalArms(shape.type, 350.0_ohm, 2.1, 0.3);
    setup.instrument.linearisation = Linearisation::BeforeZero;
    const double now = test::outputAt(setup, 7e-3).base(), zero = test::outputAt(setup, 0.5e-3).base();
    EXPECT_DIGITS(reading(setup, now, zero), 6500, 12) << shape.key;  // outputs carry 1e-16 of 3e-3
  }
}

TEST(Indication, DerivativesAreThoseOfTheReading) {
  for (const BridgeTemplate& shape : allTemplates())
    for (const auto order : {Linearisation::None, Linearisation::BeforeZero, Linearisation::AfterZero}) {
      core::Setup setup = test::equalArms(shape.type, 350.0_ohm, 2.1, 0.3);
      setup.instrument.linearisation = order;
      const double now = 7e-3, zero = -2e-3;
      const Indication indication = shown(setup, now, zero);
      const double perOutput = difference([&](double v) { return reading(setup, v, zero); }, now);
      const double perZero = difference([&](double v) { return reading(setup, now, v); }, zero);
      EXPECT_DIGITS(indication.perOutput, perOutput, 10) << shape.key;
      EXPECT_DIGITS(indication.perZero, perZero, 10) << shape.key;
    }
}

TEST(Indication, BeyondWhatTheBridgeCanGiveIsAnError) {
  for (const auto order : {Linearisation::BeforeZero, Linearisation::AfterZero}) {
    const core::Setup setup = quarter(order);
    for (const double v : {0.6, -0.6}) {
      const auto indication = indicationOf(setup.bridge, setup.instrument, Output(v), Output(0));
      ASSERT_FALSE(indication) << v;
      EXPECT_EQ(indication.error().where, "instrument");
      EXPECT_NE(indication.error().what.find("linearisation"), std::string::npos);
      EXPECT_FALSE(indication.error().mend.empty());
    }
  }
  const core::Setup before = quarter(Linearisation::BeforeZero);
  EXPECT_FALSE(indicationOf(before.bridge, before.instrument, Output(0), Output(0.6)))
      << "the zero is beyond";
}
