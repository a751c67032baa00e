// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/diagnosis/channels.h"

#include <algorithm>
#include <array>
#include <string>

#include "tests/diagnosis/plain_bridge.h"

namespace diagnosis {
namespace {

using core::BridgeType;
using core::InputKind;
using core::Resistance;
using core::Setup;
using core::Statement;
using core::Uncertainty;

/// In the order of BridgeType.
constexpr std::array<double, core::bridgeTypeCount> typeShares = {1.5, 3,   2,   1, 0.4, 1.5,
                                                                  0.3, 0.2, 0.2, 1, 1.5};

double significant(double value, int digits) {
  const double unit = std::pow(10.0, std::floor(std::log10(value)) + 1 - digits);
  return std::round(value / unit) * unit;
}

/// N of a template, by the textbook: sum of the gauges' strains over that of gauge 1.
double bridgeFactor(BridgeType type, double poisson) {
  switch (type) {
    case BridgeType::QuarterTwoWire:
    case BridgeType::QuarterThreeWire:
      return 1;
    case BridgeType::HalfBending:
    case BridgeType::HalfDiagonal:
      return 2;
    case BridgeType::HalfPoisson:
      return 1 + poisson;
    case BridgeType::FullBending:
    case BridgeType::FullTorsion:
    case BridgeType::Transducer:
      return 4;
    default:
      return 2 + 2 * poisson;
  }
}

bool isFull(BridgeType type) { return armAtArticle(type, 3); }

void drawBridge(Dice& dice, bool measured, core::Bridge& bridge) {
  bridge.type = static_cast<BridgeType>(dice.weighted(typeShares));
  const double nominal = dice.oneOf({120, 350, 350, 350, 1000});
  bridge.gauge.nominal = Resistance(nominal);
  bridge.gauge.factor = std::round(dice.between(1.95, 2.2) * 100) / 100;
  bridge.gauge.poissonRatio = dice.oneOf({0.28, 0.3, 0.33});
  for (std::size_t arm = 0; arm < 4; ++arm) {
    const double share = !measured ? 0 : armAtArticle(bridge.type, arm) ? 0.003 : 0.0005;
    bridge.arms[arm] = Resistance(significant(nominal * (1 + dice.between(-share, share)), 6));
  }
  const double each = dice.logBetween(0.2, 5);
  bridge.sixWire = isFull(bridge.type) && dice.chance(0.35);
  bridge.leads.fill(Resistance(0));
  for (const core::LeadRole role : rolesOf(bridge.type))
    bridge.leads[static_cast<std::size_t>(role)] =
        Resistance(significant(each * (1 + dice.between(-0.02, 0.02)), 4));
  if (bridge.sixWire)
    for (const core::LeadRole role : {core::LeadRole::SensePlus, core::LeadRole::SenseMinus})
      bridge.leads[static_cast<std::size_t>(role)] = Resistance(significant(each, 3));
  bridge.rating.ratedOutput = core::Output(dice.oneOf({1e-3, 2e-3, 3e-3}));
  bridge.rating.capacity = dice.oneOf({5, 50, 200});
}

void drawInstrument(Dice& dice, const core::Bridge& bridge, core::Instrument& instrument) {
  const bool transducer = bridge.type == BridgeType::Transducer;
  const std::array<double, 4> strainUnits = {6, 2, 1, 0.7}, loadUnits = {0, 5, 1, 4};
  instrument.unit = static_cast<core::ReadingUnit>(dice.weighted(transducer ? loadUnits : strainUnits));
  instrument.gaugeFactor = bridge.gauge.factor;
  instrument.bridgeFactor = bridgeFactor(bridge.type, bridge.gauge.poissonRatio);
  instrument.excitation = core::Voltage(dice.oneOf({2.5, 5, 10}));
  instrument.unitsPerMillivoltPerVolt =
      transducer ? bridge.rating.capacity / (1e3 * bridge.rating.ratedOutput.base())
                 : significant(dice.logBetween(0.5, 2000), 3);
  instrument.scaledUnit = transducer ? "kN" : "N";
  instrument.ratiometric = dice.chance(0.75);
  if (dice.chance(0.15)) instrument.inputResistance = Resistance(dice.oneOf({10e6, 100e6, 1e9}));
}

/// Resistors for levels whose greatest changes an arm by `greatest` of its resistance.
std::vector<double> drawResistors(Dice& dice, double arm_ohm, std::size_t levels, double greatest) {
  const bool even = dice.chance(0.6);
  std::vector<double> ohms;
  for (std::size_t k = 0; k < levels; ++k) {
    double part = static_cast<double>(k + 1) / static_cast<double>(levels);
    if (!even) part = std::pow(part, 0.8) * dice.between(0.93, 1.07);
    ohms.push_back(significant(arm_ohm * (1 / (greatest * part) - 1), dice.chance(0.5) ? 3 : 5));
  }
  return ohms;
}

void addShunts(DrawnChannel& channel, const std::vector<double>& ohms, std::size_t arm,
               std::size_t firstPart) {
  for (std::size_t k = 0; k < ohms.size(); ++k) {
    core::Shunt shunt;
    shunt.part.id = "S-" + std::to_string(firstPart + k);
    shunt.name = shunt.part.id + " on arm " + std::to_string(arm + 1);
    shunt.resistance = Resistance(ohms[k]);
    channel.setup.shunts.push_back(shunt);
    channel.armOf.push_back(arm);
  }
}

constexpr std::array<core::Node, 4> terminals = {core::Node::PPlus, core::Node::SMinus, core::Node::PMinus,
                                                 core::Node::SPlus};

/// Over each shunt's arm: at its own ends, or at the terminals that they are wired to. Arm 2 of a three-wire
/// quarter bridge has an end of its own in the instrument.
void placeShunts(DrawnChannel& channel) {
  for (std::size_t k = 0; k < channel.armOf.size(); ++k) {
    const std::size_t arm = channel.armOf[k];
    core::Shunt& shunt = channel.setup.shunts[k];
    const bool own = armEnds(channel.setup.bridge.type, arm)[0] == ReturnTerminal;
    const bool moved = channel.atInstrument && !own;
    shunt.a = moved ? terminals[arm] : core::armBegin(arm);
    shunt.b = moved ? terminals[(arm + 1) % 4] : core::armEnd(arm);
  }
}

enum class Plan { PositiveFirst, NegativeFirst, TwoSidedTwice, UpAndDown, OneSidedTwice };

void addSteps(DrawnChannel& channel, Plan plan, std::size_t levels, int first) {
  const auto zero = [&] { channel.plan.push_back({}); };
  const auto rising = [&](int side) {
    for (std::size_t level = 0; level < levels; ++level) channel.plan.push_back({side, level});
  };
  zero();
  const int rounds = plan == Plan::TwoSidedTwice || plan == Plan::OneSidedTwice ? 2 : 1;
  for (int round = 0; round < rounds; ++round) {
    rising(first);
    if (plan == Plan::UpAndDown)
      for (std::size_t level = levels - 1; level-- > 0;) channel.plan.push_back({first, level});
    zero();
    if (plan == Plan::UpAndDown || plan == Plan::OneSidedTwice) continue;
    rising(-first);
    zero();
  }
}

void fillSequence(Dice& dice, DrawnChannel& channel, std::size_t levels, int firstSide) {
  const core::Duration hold(dice.oneOf({2, 5, 10})), settle(dice.oneOf({0.5, 1}));
  for (const PlannedStep& planned : channel.plan) {
    core::Step step{.label = "zero", .closed = {}, .hold = hold, .settle = settle};
    if (planned.side != 0) {
      step.closed = {planned.level + (planned.side == firstSide ? 0 : levels)};
      step.label = (planned.side > 0 ? "+" : "-") + std::to_string(planned.level + 1);
    }
    channel.setup.sequence.push_back(step);
  }
}

void drawPlan(Dice& dice, DrawnChannel& channel) {
  const std::array<double, 5> shares = {60, 13, 8, 12, 7};
  const auto plan = static_cast<Plan>(dice.weighted(shares));
  const bool oneSided = plan == Plan::UpAndDown || plan == Plan::OneSidedTwice;
  const int first = plan == Plan::NegativeFirst || (oneSided && dice.chance(0.5)) ? -1 : 1;
  const std::size_t levels = plan == Plan::UpAndDown ? 4 : 3;
  const BridgeType type = channel.setup.bridge.type;
  // A shunt over arm 1 or 3 reads negative, over 2 or 4 positive.
  const bool other = isFull(type) ? dice.chance(0.4) : type == BridgeType::HalfDiagonal && dice.chance(0.5);
  const std::size_t negative = other ? 2 : 0;
  const std::size_t positive =
      (isFull(type) ? dice.chance(0.3) : dice.chance(0.05)) ? 3 - negative : 1 + negative;
  const double greatest = dice.logBetween(1.5e-3, 8e-3);
  const std::size_t arm = first > 0 ? positive : negative;
  const auto ohms = drawResistors(dice, channel.setup.bridge.gauge.nominal.base(), levels, greatest);
  addShunts(channel, ohms, arm, 101);
  if (!oneSided) {
    const bool sameResistors = dice.chance(0.55);
    std::vector<double> others = ohms;
    if (!sameResistors && dice.chance(0.5))
      for (double& ohm : others) ohm = significant(ohm * dice.between(0.9, 1.1), 4);
    addShunts(channel, others, first > 0 ? negative : positive, sameResistors ? 101 : 201);
  }
  channel.atInstrument = dice.chance(0.12);
  placeShunts(channel);
  addSteps(channel, plan, levels, first);
  fillSequence(dice, channel, levels, first);
}

Uncertainty tolerance(double share) {
  return {.statement = Statement::Tolerance, .amount = share, .relative = true};
}

Uncertainty expanded(double share) {
  return {.statement = Statement::Expanded, .amount = share, .relative = true};
}

void stateUncertainties(Dice& dice, Setup& setup) {
  auto& stated = setup.uncertainties.stated;
  stated[{InputKind::Gain, 0}] = tolerance(dice.between(0.0005, 0.001));
  stated[{InputKind::Excitation, 0}] = tolerance(dice.between(0.0002, 0.001));
  const double gauges = dice.logBetween(0.0002, 0.001), completions = dice.logBetween(0.0001, 0.0005);
  for (std::size_t arm = 0; arm < 4; ++arm)
    stated[{InputKind::Arm, arm}] =
        armAtArticle(setup.bridge.type, arm) ? expanded(gauges) : tolerance(completions);
  Uncertainty leads = expanded(dice.logBetween(0.01, 0.05));
  if (dice.chance(0.5)) leads.group = "cable";
  for (std::size_t role = 0; role < core::leadRoleCount; ++role) stated[{InputKind::Lead, role}] = leads;
  for (std::size_t k = 0; k < setup.shunts.size(); ++k) {
    stated[{InputKind::Shunt, k}] = tolerance(0.0001);
    // The same resistor at two places has one error.
    stated[{InputKind::Shunt, k}].group = setup.shunts[k].part.id;
  }
}

void drawReading(Dice& dice, DrawnChannel& channel) {
  const core::Instrument& instrument = channel.setup.instrument;
  const double gaugeFactor = channel.setup.bridge.gauge.factor;
  const double perMicro = 1e-6 * gaugeFactor * instrument.bridgeFactor / 4;
  channel.perMicrostrain = std::abs(static_cast<double>(shownFor(instrument, perMicro)));
  channel.noise = dice.logBetween(0.2, 2) * channel.perMicrostrain;
  const double finest = dice.oneOf({0.01, 0.1, 0.5}) * channel.noise;
  channel.digit = std::pow(10.0, std::floor(std::log10(finest)));
  for (const std::size_t at : {0u, 1u})
    channel.setup.uncertainties.stated[{InputKind::Rounding, at}] = {.statement = Statement::Tolerance,
                                                                     .amount = channel.digit / 2};
}

}  // namespace

bool DrawnChannel::twoSided() const {
  const auto has = [&](int side) {
    return std::any_of(plan.begin(), plan.end(), [&](const PlannedStep& step) { return step.side == side; });
  };
  return has(1) && has(-1);
}

DrawnChannel drawChannel(Dice& dice) {
  DrawnChannel channel;
  const bool stated = dice.chance(0.75);
  drawBridge(dice, stated, channel.setup.bridge);
  drawInstrument(dice, channel.setup.bridge, channel.setup.instrument);
  drawPlan(dice, channel);
  if (stated) stateUncertainties(dice, channel.setup);
  drawReading(dice, channel);
  return channel;
}

}  // namespace diagnosis
