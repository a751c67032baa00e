// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/practice/random_bridge.h"

#include <algorithm>

#include "core/stock/e_series.h"
#include "core/units/language.h"

namespace core {
namespace {

/// Calibration resistors that are stocked for round strains at a gauge factor of 2: R/(2 strain) - R (TN-514)
/// for 500, 1000, 2000 and 5000 µm/m on 120, 350 and 1000 ohm.
const std::vector<double>& calibrationValues_ohm() {
  static const std::vector<double> values{119880, 59880, 29880,  11880,  349650, 174650,
                                          87150,  34650, 999000, 499000, 249000, 99000};
  return values;
}

constexpr double leastShuntRatio = 100, greatestShuntRatio = 1500;  ///< of shunt over arm: 2.5 to 0.17 mV/V

bool isFull(BridgeType type) { return type >= BridgeType::FullBending; }

BridgeType randomType(Dice& dice, Difficulty difficulty, const BridgeWish& wish) {
  using enum BridgeType;
  static const std::vector<BridgeType> completed{QuarterTwoWire, QuarterThreeWire, HalfBending, HalfPoisson};
  if (difficulty == Difficulty::First && wish.unequalHalves)
    return dice.of({QuarterTwoWire, QuarterThreeWire});
  if (difficulty == Difficulty::First)
    return dice.of({QuarterTwoWire, QuarterThreeWire, FullBending, FullTorsion});
  const auto type = static_cast<BridgeType>(dice.below(bridgeTypeCount));
  if (!wish.unequalHalves) return type;
  // Gauges are alike: only completion resistors may differ, and they must be both of a half of their own.
  return type == HalfDiagonal ? HalfBending : isFull(type) ? dice.of(completed) : type;
}

/// Arms 1 and 2 and arms 3 and 4 of one resistance each; only completion resistors differ from the gauges.
void setArms(Setup& setup, Dice& dice, Difficulty difficulty, const BridgeWish& wish) {
  Bridge& bridge = setup.bridge;
  const double gauge = dice.of({isTransducer(bridge) ? 350.0 : 120.0, 350.0, 350.0, 1000.0});
  bridge.gauge.nominal = Resistance(gauge);
  bridge.arms.fill(bridge.gauge.nominal);
  const bool completed = bridge.type != BridgeType::HalfDiagonal && !isFull(bridge.type);
  const bool mayDiffer = completed && difficulty != Difficulty::First;
  if (!completed || !(wish.unequalHalves || (mayDiffer && dice.oneIn(2)))) return;
  const double other = gauge == 120   ? dice.of({350.0, 1000.0})
                       : gauge == 350 ? dice.of({120.0, 1000.0})
                                      : 350;
  bridge.arms[2] = bridge.arms[3] = Resistance(other);
}

/// Gauges as measured after bonding, up to 0.5 ohm off.
void setMeasuredArms(Bridge& bridge, Dice& dice) {
  for (const std::size_t arm : {0, 1, 2, 3}) {
    if (!templateOf(bridge.type).atArticle[arm]) continue;
    const auto tenths = static_cast<double>(dice.below(11)) - 5;
    bridge.arms[arm] = Resistance((10 * bridge.arms[arm].base() + tenths) / 10);
  }
}

void setLeads(Bridge& bridge, Dice& dice, Difficulty difficulty, const BridgeWish& wish) {
  if (difficulty == Difficulty::First) return;
  const double each = wish.longLeads ? dice.of({2.0, 3.0, 4.0, 5.0})
                                     : dice.of({0.1, 0.2, 0.5, 0.8, 1.0, 1.2, 1.5, 2.0, 3.0, 4.0, 5.0});
  for (Lead& lead : bridge.leads) lead = Resistance(each);
  bridge.sixWire = templateOf(bridge.type).senseLeads && dice.oneIn(3);
}

void setHookup(Bridge& bridge, Dice& dice) {
  bridge.hookup.signalReversed = dice.oneIn(3);
  bridge.hookup.excitationReversed = dice.oneIn(4);
  bridge.hookup.gaugesReversed = !isTransducer(bridge) && dice.oneIn(6);
}

void setLeak(Bridge& bridge, Dice& dice) {
  if (!dice.oneIn(3)) return;
  const std::size_t arm = dice.below(4);
  const double ohm = dice.of({50e3, 100e3, 200e3, 500e3, 1e6});
  if (templateOf(bridge.type).atArticle[arm]) bridge.leaks[arm].across = Resistance(ohm);
}

void setRating(Setup& setup, Dice& dice) {
  Rating& rating = setup.bridge.rating;
  rating.ratedOutput = Output(dice.of({1e-3, 2e-3, 3e-3}));
  rating.capacity = dice.of({5.0, 10.0, 20.0, 50.0, 100.0});
  rating.loadUnit = "kN";
  setup.instrument.scaledUnit = rating.loadUnit;
  setup.instrument.unitsPerMillivoltPerVolt = rating.capacity / (1e3 * rating.ratedOutput.base());
}

void setInstrument(Setup& setup, Dice& dice, Difficulty difficulty) {
  using enum ReadingUnit;
  Instrument& instrument = setup.instrument;
  Gauge& gauge = setup.bridge.gauge;
  gauge.factor = dice.of({2.0, 2.0, 2.05, 2.07, 2.1, 2.12});
  gauge.poissonRatio = dice.of({0.28, 0.3, 0.33});
  instrument.gaugeFactor = difficulty == Difficulty::Thorough && dice.oneIn(3) ? 2.0 : gauge.factor;
  instrument.bridgeFactor = templateOf(setup.bridge.type).bridgeFactor(gauge.poissonRatio);
  instrument.excitation = Voltage(dice.of({2.5, 5.0, 10.0}));
  const bool easy = difficulty == Difficulty::First;
  if (isTransducer(setup.bridge))
    instrument.unit = dice.of({Scaled, Scaled, MillivoltPerVolt, Millivolt});
  else
    instrument.unit = easy ? dice.of({MicrometrePerMetre, MicrometrePerMetre, MillivoltPerVolt})
                           : dice.of({MicrometrePerMetre, MicrometrePerMetre, MillivoltPerVolt, Millivolt});
}

}  // namespace

Setup randomSetup(Dice& dice, Difficulty difficulty, const BridgeWish& wish) {
  Setup setup;
  setup.bridge.type = randomType(dice, difficulty, wish);
  setArms(setup, dice, difficulty, wish);
  setLeads(setup.bridge, dice, difficulty, wish);
  setRating(setup, dice);
  setInstrument(setup, dice, difficulty);
  if (difficulty == Difficulty::Thorough) {
    if (dice.oneIn(2)) setMeasuredArms(setup.bridge, dice);
    if (wish.hookup) setHookup(setup.bridge, dice);
    if (wish.leaks) setLeak(setup.bridge, dice);
  }
  setup.sequence = {{say("all open"), {}}};
  return setup;
}

Resistance randomResistor(Dice& dice, Resistance arm) {
  const Resistance least = leastShuntRatio * arm, most = greatestShuntRatio * arm;
  std::vector<Resistance> values;
  switch (dice.below(3)) {
    case 0:
      for (const double ohm : calibrationValues_ohm())
        if (ohm >= least.base() && ohm <= most.base()) values.emplace_back(ohm);
      return dice.of(values);
    case 1:
      return dice.of(eSeriesValues(ESeries::E24, least, most));
    default:
      return dice.of(eSeriesValues(ESeries::E96, least, most));
  }
}

void addShunt(Setup& setup, Resistance resistor, Node a, Node b) {
  const std::string name(1, static_cast<char>('A' + setup.shunts.size()));
  setup.shunts.push_back({name, resistor, a, b});
  setup.sequence.push_back({say("{1} closed", {name}), {setup.shunts.size() - 1}});
}

void addShuntAcross(Setup& setup, Resistance resistor, std::size_t arm) {
  addShunt(setup, resistor, armBegin(arm), armEnd(arm));
}

void addShuntAtTerminals(Setup& setup, Resistance resistor, std::size_t arm) {
  static constexpr std::array<Node, 4> corners{Node::PPlus, Node::SMinus, Node::PMinus, Node::SPlus};
  addShunt(setup, resistor, corners[arm], corners[(arm + 1) % 4]);
}

void addRandomShunt(Setup& setup, Dice& dice, Difficulty difficulty, Resistance resistor, std::size_t arm) {
  if (difficulty != Difficulty::First && dice.oneIn(3))
    addShuntAtTerminals(setup, resistor, arm);
  else
    addShuntAcross(setup, resistor, arm);
}

std::optional<Output> changeAt(const Setup& setup, std::size_t step) {
  auto circuit = BridgeCircuit::make(setup.bridge, setup.instrument, shuntBranches(setup));
  if (!circuit) return std::nullopt;
  const auto zero = circuit->solveOutput();
  if (!zero || !closeShunts(*circuit, setup, step)) return std::nullopt;
  const auto now = circuit->solveOutput();
  return now ? std::optional(*now - *zero) : std::nullopt;
}

std::optional<Reading> readingAt(const Setup& setup, std::size_t step) {
  const auto change = changeAt(setup, step);
  return change ? std::optional(readingOf(setup.instrument, *change)) : std::nullopt;
}

}  // namespace core
