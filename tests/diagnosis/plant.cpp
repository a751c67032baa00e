// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/diagnosis/plant.h"

#include <algorithm>
#include <cmath>

namespace diagnosis {
namespace {

using core::CauseKind;
using core::Fault;
using core::ReadingUnit;
using Drawn = std::optional<Planting>;

const core::Instrument& instrumentOf(const DrawnChannel& channel) { return channel.setup.instrument; }

bool inStrain(const DrawnChannel& channel) {
  return instrumentOf(channel).unit == ReadingUnit::MicrometrePerMetre;
}

Planting of(CauseKind kind, double size = 1, std::size_t index = 0, std::size_t other = 0) {
  Planting planting;
  planting.fault = {kind, index, other, size};
  return planting;
}

/// 1 plus or minus a share from `low` to `high`.
double drawRatio(Dice& dice, double low, double high) { return 1 + dice.sign() * dice.logBetween(low, high); }

Drawn drawScale(const DrawnChannel& channel, Dice& dice) {
  const double set = instrumentOf(channel).gaugeFactor;
  // A gauge factor left at its usual value.
  if (inStrain(channel) && set != 2 && dice.chance(0.25)) return of(CauseKind::Scale, set / 2.0);
  return of(CauseKind::Scale, drawRatio(dice, 0.005, 0.05));
}

Drawn drawBridgeFactor(const DrawnChannel& channel, Dice& dice) {
  if (!inStrain(channel)) return std::nullopt;
  const double poisson = channel.setup.bridge.gauge.poissonRatio;
  const double acts = dice.oneOf({1, 2, 4, 1 + poisson, 2 + 2 * poisson});
  if (acts == instrumentOf(channel).bridgeFactor) return std::nullopt;
  return of(CauseKind::BridgeFactor, acts);
}

Drawn drawUnits(const DrawnChannel& channel, Dice& dice) {
  if (dice.chance(0.25)) return of(CauseKind::Units, dice.oneOf({2, 4, 0.5, 0.25}));
  if (dice.chance(0.5)) return of(CauseKind::Units, dice.oneOf({1000, 0.001}));
  const double perMillivolt = 4e3 / (instrumentOf(channel).gaugeFactor * instrumentOf(channel).bridgeFactor);
  if (inStrain(channel)) return of(CauseKind::Units, 1 / perMillivolt);
  if (instrumentOf(channel).unit == ReadingUnit::MillivoltPerVolt) return of(CauseKind::Units, perMillivolt);
  return std::nullopt;
}

double enteredLead(const DrawnChannel& channel, core::LeadRole role) {
  return std::get<core::Resistance>(channel.setup.bridge.leads[static_cast<std::size_t>(role)]).base();
}

Drawn drawLeads(DrawnChannel& channel, Dice& dice) {
  Planting planting = of(CauseKind::Leads, 0);
  const auto roles = rolesOf(channel.setup.bridge.type);
  const bool left = dice.chance(0.4);
  const double longer = dice.logBetween(1.3, 3) - 1;
  for (const core::LeadRole role : roles) {
    const auto at = static_cast<std::size_t>(role);
    const double ohm = enteredLead(channel, role);
    planting.leads[at] = left ? ohm : longer * ohm;
    planting.fault.size += planting.leads[at] / static_cast<double>(roles.size());
  }
  if (left) channel.setup.bridge.leads.fill(core::Resistance(0));
  return planting;
}

Drawn drawShuntPlace(const DrawnChannel& channel) {
  if (!channel.atInstrument) return of(CauseKind::ShuntPlace);
  // Over a completion resistor "at the gauge" means nothing.
  for (const std::size_t arm : channel.armOf)
    if (!armAtArticle(channel.setup.bridge.type, arm)) return std::nullopt;
  return of(CauseKind::ShuntPlace, 1, 1);
}

Drawn drawLeadContact(const DrawnChannel& channel, Dice& dice) {
  const auto roles = rolesOf(channel.setup.bridge.type);
  const std::size_t role = dice.below(roles.size());
  return of(CauseKind::LeadContact, dice.logBetween(0.3, 30), static_cast<std::size_t>(roles[role]));
}

/// One resistor that is never closed, or all shunts over one of two arms.
Drawn drawOpenShunt(const DrawnChannel& channel, Dice& dice) {
  const auto& arms = channel.armOf;
  const std::size_t which = dice.below(arms.size());
  const bool several = std::any_of(arms.begin(), arms.end(), [&](auto arm) { return arm != arms.front(); });
  return of(CauseKind::ShuntOpen, 1, which, several && dice.chance(0.4) ? 1 : 0);
}

/// Mostly the arm that shares the signal corner; one that shares an excitation corner in full bridges only.
Drawn drawShuntArm(const DrawnChannel& channel, Dice& dice) {
  // At the terminals, a corner with two leads has two points, and either may be meant on the other arm.
  if (channel.atInstrument) return std::nullopt;
  const bool far = armAtArticle(channel.setup.bridge.type, 3) && dice.chance(0.3);
  return of(CauseKind::ShuntArm, 1, far ? 1 : 0);
}

Drawn drawExchangedShunts(const DrawnChannel& channel, Dice& dice) {
  const auto& shunts = channel.setup.shunts;
  const std::size_t a = dice.below(shunts.size()), b = dice.below(shunts.size());
  if (a >= b || core::resistorName(shunts[a]) == core::resistorName(shunts[b])) return std::nullopt;
  return of(CauseKind::ShuntsExchanged, 1, a, b);
}

Drawn drawArm(CauseKind kind, const DrawnChannel& channel, Dice& dice) {
  const std::size_t arm = dice.below(4);
  const bool article = armAtArticle(channel.setup.bridge.type, arm);
  if (article == (kind == CauseKind::CompletionValue)) return std::nullopt;
  if (kind == CauseKind::Leak) return of(kind, 1 / dice.logBetween(5e3, 5e6), arm);
  const double nominal = channel.setup.bridge.gauge.nominal.base();
  if (kind == CauseKind::CompletionValue && dice.chance(0.15)) {
    const double wrong = dice.oneOf({120, 350, 1000});
    if (wrong == nominal) return std::nullopt;
    return of(kind, wrong / channel.setup.bridge.arms[arm].base(), arm);
  }
  return of(kind, drawRatio(dice, 0.001, 0.05), arm);
}

Drawn drawExchangedSteps(const DrawnChannel& channel, Dice& dice) {
  const auto& sequence = channel.setup.sequence;
  std::size_t a = dice.below(sequence.size()), b = dice.below(sequence.size());
  if (dice.chance(0.6)) b = a + 1;  // mostly one after the other
  if (a >= b || b >= sequence.size() || sequence[a].closed == sequence[b].closed) return std::nullopt;
  return of(CauseKind::StepsExchanged, 1, a, b);
}

Drawn drawClipping(const DrawnChannel& channel, Dice& dice) {
  const std::size_t side = dice.below(3);
  if ((side == 0) && !channel.twoSided()) return std::nullopt;
  const auto readings = readingsOf(channel.setup, nominalTruth(channel.setup), {}, 0);
  std::vector<double> magnitudes{0};  // of the levels that are concerned, and none
  for (const double reading : readings)
    if (side == 0 || (side == 1 ? reading > 0 : reading < 0)) magnitudes.push_back(std::abs(reading));
  std::sort(magnitudes.begin(), magnitudes.end());
  const std::size_t most = std::min<std::size_t>(3, magnitudes.size() - 1);
  if (most == 0) return std::nullopt;
  const std::size_t first = magnitudes.size() - 1 - dice.below(most);  // the smallest that is cut
  const double limit = dice.between(magnitudes[first - 1], magnitudes[first]);
  Planting planting = of(CauseKind::Clipping, limit, side);
  if (side != 2) planting.highest = limit;
  if (side != 1) planting.lowest = -limit;
  return planting;
}

/// Where the ends of a shunt over `arm` are when it is put at the instrument, or at the arm itself.
std::array<std::size_t, 2> shuntEnds(core::BridgeType type, std::size_t arm, bool atInstrument) {
  auto ends = armEnds(type, arm);
  for (std::size_t& end : ends)
    if (atInstrument && end >= CornerPPlus && end <= CornerSPlus) end -= CornerPPlus;
  return ends;
}

/// The other arm of the same signal corner (1 and 2, 3 and 4), or of the same excitation corner.
std::size_t neighbourOf(std::size_t arm, bool excitationCorner) {
  return excitationCorner ? 3 - arm : arm ^ 1;
}

void moveShunts(const DrawnChannel& channel, const Fault& fault, Truth& truth) {
  for (std::size_t k = 0; k < truth.bridge.shunts.size(); ++k) {
    const bool otherArm = fault.kind == CauseKind::ShuntArm;
    const std::size_t arm = otherArm ? neighbourOf(channel.armOf[k], fault.index == 1) : channel.armOf[k];
    const auto ends = shuntEnds(truth.bridge.type, arm, channel.atInstrument == otherArm);
    truth.bridge.shunts[k].from = ends[0], truth.bridge.shunts[k].to = ends[1];
  }
}

/// All shunts that are made of the resistor of shunt `k`.
void setResistor(const DrawnChannel& channel, std::size_t k, long double ohm, Truth& truth) {
  const auto& shunts = channel.setup.shunts;
  for (std::size_t at = 0; at < shunts.size(); ++at)
    if (core::resistorName(shunts[at]) == core::resistorName(shunts[k])) truth.bridge.shunts[at].ohm = ohm;
}

void openShunts(const DrawnChannel& channel, const Fault& fault, Truth& truth) {
  constexpr long double open_ohm = 1e18L;
  if (fault.other == 0) return setResistor(channel, fault.index, open_ohm, truth);
  for (std::size_t at = 0; at < truth.bridge.shunts.size(); ++at)
    if (channel.armOf[at] == channel.armOf[fault.index]) truth.bridge.shunts[at].ohm = open_ohm;
}

void exchangeSides(const DrawnChannel& channel, Truth& truth) {
  const auto& plan = channel.plan;
  for (std::size_t step = 0; step < plan.size(); ++step)
    for (std::size_t at = 0; at < plan.size(); ++at)
      if (plan[step].side != 0 && plan[at].side == -plan[step].side && plan[at].level == plan[step].level)
        truth.taken[step] = at;
}

void plantPart(const Planting& planting, const DrawnChannel& channel, Truth& truth) {
  const Fault& fault = planting.fault;
  PlainBridge& bridge = truth.bridge;
  switch (fault.kind) {
    case CauseKind::Leads:
      for (std::size_t role = 0; role < bridge.leads.size(); ++role)
        bridge.leads[role] += planting.leads[role];
      break;
    case CauseKind::LeadContact:
      bridge.leads[fault.index] += fault.size;
      break;
    case CauseKind::ShuntOpen:
      return openShunts(channel, fault, truth);
    case CauseKind::ShuntPlace:
    case CauseKind::ShuntArm:
      return moveShunts(channel, fault, truth);
    case CauseKind::ShuntValue:
      return setResistor(channel, fault.index, fault.size * bridge.shunts[fault.index].ohm, truth);
    case CauseKind::ShuntsExchanged: {
      const long double first = bridge.shunts[fault.index].ohm, second = bridge.shunts[fault.other].ohm;
      setResistor(channel, fault.index, second, truth);
      setResistor(channel, fault.other, first, truth);
      break;
    }
    case CauseKind::CompletionValue:
    case CauseKind::ArmValue:
      bridge.arms[fault.index] *= fault.size;
      break;
    case CauseKind::Leak:
      bridge.leaks[fault.index] += fault.size;
      break;
    case CauseKind::OpenSense:
      bridge.sensesAtBridge = false;
      break;
    default:
      break;
  }
}

/// Time from the first reading on, s.
double since(const DrawnChannel& channel, std::size_t step) {
  const auto times = middles(channel.setup);
  return times[step] - times.front();
}

}  // namespace

std::optional<Planting> drawFault(CauseKind kind, DrawnChannel& channel, Dice& dice) {
  const std::size_t steps = channel.setup.sequence.size();
  switch (kind) {
    case CauseKind::Scale:
      return drawScale(channel, dice);
    case CauseKind::BridgeFactor:
      return drawBridgeFactor(channel, dice);
    case CauseKind::Units:
      return drawUnits(channel, dice);
    case CauseKind::Leads:
      return drawLeads(channel, dice);
    case CauseKind::LeadContact:
      return drawLeadContact(channel, dice);
    case CauseKind::ShuntOpen:
      return drawOpenShunt(channel, dice);
    case CauseKind::ShuntPlace:
      return drawShuntPlace(channel);
    case CauseKind::PolarityReversed:
    case CauseKind::NoResponse:
      return of(kind);
    case CauseKind::ShuntArm:
      return drawShuntArm(channel, dice);
    case CauseKind::ShuntValue:
      return of(kind, drawRatio(dice, 0.002, 0.1), dice.below(channel.setup.shunts.size()));
    case CauseKind::ShuntsExchanged:
      return drawExchangedShunts(channel, dice);
    case CauseKind::CompletionValue:
    case CauseKind::ArmValue:
    case CauseKind::Leak:
      return drawArm(kind, channel, dice);
    case CauseKind::StepsExchanged:
      return drawExchangedSteps(channel, dice);
    case CauseKind::SidesExchanged:
      return channel.twoSided() ? Drawn(of(kind)) : std::nullopt;
    case CauseKind::OpenSense:
      return channel.setup.bridge.sixWire ? Drawn(of(kind)) : std::nullopt;
    case CauseKind::ZeroShift:
      return of(kind, dice.sign() * dice.logBetween(1, 200) * channel.perMicrostrain,
                1 + dice.below(steps - 1));
    case CauseKind::Drift:
      return of(kind,
                dice.sign() * dice.logBetween(2, 200) * channel.perMicrostrain / since(channel, steps - 1));
    case CauseKind::Clipping:
      return drawClipping(channel, dice);
    case CauseKind::StrayReading:
      return of(kind, dice.sign() * dice.logBetween(1, 500) * channel.perMicrostrain, dice.below(steps));
  }
  return std::nullopt;
}

Planting plantingOf(const Fault& fault, const DrawnChannel& channel, double zero) {
  Planting planting;
  planting.fault = fault;
  if (fault.kind == CauseKind::Leads) {
    // Longer leads are longer in proportion; the size is the mean of what they have more.
    const auto roles = rolesOf(channel.setup.bridge.type);
    double mean = 0;
    for (const core::LeadRole role : roles)
      mean += enteredLead(channel, role) / static_cast<double>(roles.size());
    for (const core::LeadRole role : roles)
      planting.leads[static_cast<std::size_t>(role)] =
          mean > 0 ? fault.size * enteredLead(channel, role) / mean : fault.size;
  }
  if (fault.kind == CauseKind::Clipping && fault.index != 2) planting.highest = fault.size - zero;
  if (fault.kind == CauseKind::Clipping && fault.index != 1) planting.lowest = -fault.size - zero;
  return planting;
}

void plant(const Planting& planting, const DrawnChannel& channel, Truth& truth) {
  const Fault& fault = planting.fault;
  switch (fault.kind) {
    case CauseKind::Scale:
      truth.setting = fault.size;
      break;
    case CauseKind::BridgeFactor:
      truth.setting = instrumentOf(channel).bridgeFactor / fault.size;
      break;
    case CauseKind::Units:
      truth.unit = fault.size;
      break;
    case CauseKind::NoResponse:
      truth.setting = 0;
      break;
    case CauseKind::PolarityReversed:
      truth.reversed = true;
      break;
    case CauseKind::StepsExchanged:
      std::swap(truth.taken[fault.index], truth.taken[fault.other]);
      break;
    case CauseKind::SidesExchanged:
      exchangeSides(channel, truth);
      break;
    case CauseKind::ZeroShift:
      for (std::size_t step = fault.index; step < truth.added.size(); ++step) truth.added[step] += fault.size;
      break;
    case CauseKind::Drift:
      for (std::size_t step = 0; step < truth.added.size(); ++step)
        truth.added[step] += fault.size * since(channel, step);
      break;
    case CauseKind::Clipping:
      truth.highest = planting.highest, truth.lowest = planting.lowest;
      break;
    case CauseKind::StrayReading:
      truth.added[fault.index] += fault.size;
      break;
    default:
      plantPart(planting, channel, truth);
      break;
  }
}

}  // namespace diagnosis
