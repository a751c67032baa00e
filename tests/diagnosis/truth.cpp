// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/diagnosis/truth.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <string>

#include "core/budget/inputs.h"

namespace diagnosis {
namespace {

using core::InputKind;

/// Resistance of copper changes by 0.393 % a kelvin (IEC 60028, from memory).
constexpr double perKelvin = 0.00393;

/// Draws standard deviates, common to the inputs of a group.
class Deviates {
 public:
  Deviates(const core::Setup& setup, Dice& dice) : m_setup(setup), m_dice(dice) {}

  double of(const core::BudgetInput& entry) {
    const double own = m_dice.normal();
    std::string group = entry.uncertainty.group;
    double r = 1;
    if (const auto found = m_setup.uncertainties.groups.find(group);
        found != m_setup.uncertainties.groups.end())
      r = found->second;
    if (group.empty() && entry.input.kind == InputKind::Shunt)  // one resistor, one error
      group = core::resistorName(m_setup.shunts[entry.input.index]);
    if (group.empty()) return own;
    const auto [common, fresh] = m_common.try_emplace(group, own);
    if (fresh) common->second = m_dice.normal();
    return std::sqrt(r) * common->second + std::sqrt(1 - r) * own;
  }

 private:
  const core::Setup& m_setup;
  Dice& m_dice;
  std::map<std::string, double> m_common;
};

double deviation(const core::BudgetInput& entry, double z) {
  if (core::distributionOf(entry.uncertainty) == core::Distribution::Normal) return z * entry.standard;
  // Rectangular: the same place in its distribution.
  return std::erf(z / std::sqrt(2.0)) * std::sqrt(3.0) * entry.standard;
}

void apply(const core::BudgetInput& entry, double by, Truth& truth, double& warmer_K) {
  const std::size_t index = entry.input.index;
  switch (entry.input.kind) {
    case InputKind::Arm:
      truth.bridge.arms[index] += by;
      break;
    case InputKind::Lead:
      truth.bridge.leads[index] += by;
      break;
    case InputKind::LeadTemperature:
      warmer_K = by;
      break;
    case InputKind::Shunt:
    case InputKind::ShuntContact:
      truth.bridge.shunts[index].ohm += by;
      break;
    case InputKind::InputResistance:
      truth.bridge.input = 1 / (1 / truth.bridge.input + by);
      break;
    case InputKind::Gain:
      truth.gain += by;
      break;
    case InputKind::Excitation:
      truth.excitation += by / entry.value;
      break;
    case InputKind::ZeroDrift:
      truth.zeroDrift = by;
      break;
    default:  // rounding is done to the readings; gauge factor and the like touch no resistance here
      break;
  }
}

}  // namespace

Truth nominalTruth(const core::Setup& setup) {
  Truth truth;
  truth.bridge = plainBridge(setup);
  for (std::size_t step = 0; step < setup.sequence.size(); ++step) truth.taken.push_back(step);
  truth.added.assign(setup.sequence.size(), 0);
  return truth;
}

Truth drawnTruth(const core::Setup& setup, Dice& dice) {
  Truth truth = nominalTruth(setup);
  Deviates deviates(setup, dice);
  double warmer_K = 0;
  for (const core::BudgetInput& entry : core::inputsOf(setup))
    apply(entry, deviation(entry, deviates.of(entry)), truth, warmer_K);
  for (long double& lead : truth.bridge.leads) lead *= 1 + perKelvin * warmer_K;
  return truth;
}

std::vector<double> readingsOf(const core::Setup& setup, const Truth& truth, const std::vector<double>& noise,
                               double digit) {
  const core::Instrument& instrument = setup.instrument;
  const bool follows = !instrument.ratiometric || instrument.unit == core::ReadingUnit::Millivolt;
  const double factor = truth.gain * truth.setting * (follows ? truth.excitation : 1);
  const long double open = truth.bridge.output({});
  std::vector<double> readings;
  for (std::size_t step = 0; step < setup.sequence.size(); ++step) {
    long double output = truth.bridge.output(setup.sequence[truth.taken[step]].closed);
    if (truth.balanced) output -= open;
    if (truth.reversed) output = -output;
    double shown = factor * static_cast<double>(shownFor(instrument, output)) + truth.offset;
    if (step > 0) shown += truth.setting * static_cast<double>(shownFor(instrument, truth.zeroDrift));
    shown += truth.added[step];
    if (!noise.empty()) shown += noise[step];
    if (truth.highest) shown = std::min(shown, *truth.highest);
    if (truth.lowest) shown = std::max(shown, *truth.lowest);
    if (digit > 0) shown = std::round(shown / digit) * digit;
    readings.push_back(shown * truth.unit);
  }
  return readings;
}

std::vector<double> middles(const core::Setup& setup) {
  std::vector<double> result;
  double begin = 0;
  for (const core::Step& step : setup.sequence) {
    result.push_back(begin + step.settle.base() + step.hold.base() / 2);
    begin += (step.settle + step.hold).base();
  }
  return result;
}

}  // namespace diagnosis
