// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/compare/lasting_errors.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>

namespace core {
namespace {

using Kind = InputKind;

constexpr std::array<LastingRule, inputKindCount> rules{{
    {Kind::Arm, Lasting::WithThePart, "the same gauges and completion resistors stay installed"},
    {Kind::Lead, Lasting::WithThePart, "the same cable stays laid"},
    {Kind::LeadTemperature, Lasting::OneCheck, "another day, another temperature of the leads"},
    {Kind::Shunt, Lasting::WithThePart, "the same resistor has the same error; its drift is a change"},
    {Kind::ShuntWires, Lasting::WithThePart, "the same wires lead to the same place"},
    {Kind::ShuntContact, Lasting::OneCheck, "a contact closes otherwise each time"},
    {Kind::LeakAcross, Lasting::WithThePart, "a leak that grows is a change to be found"},
    {Kind::LeakToStructure, Lasting::WithThePart, "a leak that grows is a change to be found"},
    {Kind::BalancePotentiometer, Lasting::WithThePart, "the same potentiometer"},
    {Kind::BalanceLimiting, Lasting::WithThePart, "the same resistor"},
    {Kind::BalanceWiper, Lasting::OneCheck, "the bridge is balanced anew before each check"},
    {Kind::InputResistance, Lasting::WithInstrument, "a property of the instrument"},
    {Kind::GaugeFactor, Lasting::WithThePart, "the same gauges"},
    {Kind::FactorCoefficient, Lasting::WithThePart, "the same gauges"},
    {Kind::GaugeTemperature, Lasting::OneCheck, "another day, another temperature of the gauges"},
    {Kind::PoissonRatio, Lasting::WithThePart, "the same structure"},
    {Kind::RatedOutput, Lasting::WithThePart, "the same transducer"},
    {Kind::Gain, Lasting::WithInstrument,
     "its error of calibration stays; its drift is a change to be found"},
    {Kind::Excitation, Lasting::WithInstrument,
     "its error of calibration stays; its drift is a change to be found"},
    {Kind::ZeroDrift, Lasting::OneCheck, "the zero drifts anew during each check"},
    {Kind::Rounding, Lasting::OneCheck, "every reading is rounded by itself"},
}};

constexpr std::size_t none = static_cast<std::size_t>(-1);

bool samePart(const Shunt& a, const Shunt& b) {
  return a.a == b.a && a.b == b.b && resistorName(a) == resistorName(b);
}

/// The shunt of `after` that is shunt `k` of `before`, the same resistor at the same place.
std::size_t shuntAfter(const Setup& before, const Setup& after, std::size_t k) {
  if (k < after.shunts.size() && samePart(before.shunts[k], after.shunts[k])) return k;
  const auto found = std::find_if(after.shunts.begin(), after.shunts.end(),
                                  [&](const Shunt& shunt) { return samePart(before.shunts[k], shunt); });
  return found == after.shunts.end() ? none : static_cast<std::size_t>(found - after.shunts.begin());
}

bool isOfShunt(Kind kind) {
  return kind == Kind::Shunt || kind == Kind::ShuntWires || kind == Kind::ShuntContact;
}

bool sameInstrument(const Setup& before, const Setup& after) {
  return before.identity.name == after.identity.name && before.identity.serial == after.identity.serial &&
         before.instrument == after.instrument;
}

/// For each input of the earlier budget the one of the later that has the same error, or `none`.
class Partners {
 public:
  Partners(const Setup& before, const Budget& budgetBefore, const Setup& after, const Budget& budgetAfter)
      : m_before(budgetBefore.inputs), m_after(budgetAfter.inputs), m_of(m_before.size(), none) {
    const bool instrument = sameInstrument(before, after);
    for (std::size_t i = 0; i < m_before.size(); ++i) {
      const Lasting lasting = lastingRuleOf(m_before[i].input.kind).lasting;
      if (lasting == Lasting::OneCheck || (lasting == Lasting::WithInstrument && !instrument)) continue;
      const std::size_t j = sameInput(before, after, i);
      if (j != none && m_after[j].value == m_before[i].value) m_of[i] = j;
    }
    m_pairsBefore = correlatedPairs(before, m_before);
    m_pairsAfter = correlatedPairs(after, m_after);
    while (dropsBrokenGroup()) continue;
  }

  std::size_t of(std::size_t input) const { return m_of[input]; }
  const std::vector<CorrelatedPair>& pairsBefore() const { return m_pairsBefore; }
  const std::vector<CorrelatedPair>& pairsAfter() const { return m_pairsAfter; }

 private:
  std::size_t sameInput(const Setup& before, const Setup& after, std::size_t i) const {
    Input input = m_before[i].input;
    if (isOfShunt(input.kind)) input.index = shuntAfter(before, after, input.index);
    if (i < m_after.size() && m_after[i].input == input) return i;
    for (std::size_t j = 0; j < m_after.size(); ++j)
      if (m_after[j].input == input) return j;
    return none;
  }

  bool isShared(std::size_t j) const { return std::find(m_of.begin(), m_of.end(), j) != m_of.end(); }

  /// Gives up the shared members of a group that is not shared as a whole; whether there was one.
  bool dropsBrokenGroup() {
    for (const CorrelatedPair& pair : m_pairsBefore) {
      if ((m_of[pair.i] == none) == (m_of[pair.j] == none)) continue;
      m_of[pair.i] = m_of[pair.j] = none;
      return true;
    }
    for (const CorrelatedPair& pair : m_pairsAfter) {
      if (isShared(pair.i) == isShared(pair.j)) continue;
      for (std::size_t& j : m_of)
        if (j == pair.i || j == pair.j) j = none;
      return true;
    }
    return false;
  }

  const std::vector<BudgetInput>& m_before;
  const std::vector<BudgetInput>& m_after;
  std::vector<std::size_t> m_of;
  std::vector<CorrelatedPair> m_pairsBefore, m_pairsAfter;
};

/// Contributions of some inputs to all steps, and how these inputs are correlated.
class Contributions {
 public:
  Contributions(std::size_t steps, std::size_t greatest) : m_steps(steps), m_columns() {
    m_columns.reserve(steps * greatest);
  }

  /// `of(step)` is sensitivity times standard uncertainty. Inputs that do nothing are left out.
  template <class Of>
  void add(std::size_t input, const Of& of) {
    const std::size_t begin = m_columns.size();
    bool acts = false;
    for (std::size_t step = 0; step < m_steps; ++step) {
      m_columns.push_back(of(step));
      acts = acts || m_columns.back() != 0;
    }
    if (acts) m_inputs.push_back(input);
    if (!acts) m_columns.resize(begin);
  }

  void addTo(std::vector<double>& covariance, std::span<const CorrelatedPair> pairs) const {
    for (std::size_t k = 0; k < m_inputs.size(); ++k) addProduct(covariance, k, k, 1);
    for (const CorrelatedPair& pair : pairs) {
      const std::size_t i = placeOf(pair.i), j = placeOf(pair.j);
      if (i == none || j == none) continue;
      addProduct(covariance, i, j, pair.coefficient);
      addProduct(covariance, j, i, pair.coefficient);
    }
  }

 private:
  std::size_t placeOf(std::size_t input) const {
    const auto found = std::find(m_inputs.begin(), m_inputs.end(), input);
    return found == m_inputs.end() ? none : static_cast<std::size_t>(found - m_inputs.begin());
  }

  void addProduct(std::vector<double>& covariance, std::size_t i, std::size_t j, double coefficient) const {
    const double* a = m_columns.data() + i * m_steps;
    const double* b = m_columns.data() + j * m_steps;
    for (std::size_t row = 0; row < m_steps; ++row) {
      if (a[row] == 0) continue;
      for (std::size_t column = 0; column < m_steps; ++column)
        covariance[row * m_steps + column] += coefficient * a[row] * b[column];
    }
  }

  std::size_t m_steps;
  std::vector<double> m_columns;  ///< input after input
  std::vector<std::size_t> m_inputs;
};

}  // namespace

const LastingRule& lastingRuleOf(InputKind kind) {
  const LastingRule& rule = rules[static_cast<std::size_t>(kind)];
  assert(rule.kind == kind);
  return rule;
}

std::vector<double> differenceCovariance(const Setup& before, const Budget& budgetBefore, const Setup& after,
                                         const Budget& budgetAfter, std::span<const StepPair> pairs) {
  const Partners partners(before, budgetBefore, after, budgetAfter);
  const std::size_t n = pairs.size();
  const auto first = [&](std::size_t step, std::size_t i) {
    return budgetBefore.sensitivities(Scope::Chain, pairs[step].before)[i];
  };
  const auto second = [&](std::size_t step, std::size_t j) {
    return budgetAfter.sensitivities(Scope::Chain, pairs[step].after)[j];
  };
  Contributions shared(n, budgetBefore.inputs.size()), onlyBefore(n, budgetBefore.inputs.size());
  Contributions onlyAfter(n, budgetAfter.inputs.size());
  std::vector<bool> isShared(budgetAfter.inputs.size());
  for (std::size_t i = 0; i < budgetBefore.inputs.size(); ++i) {
    const BudgetInput& input = budgetBefore.inputs[i];
    if (input.input.kind == Kind::Rounding) continue;
    const std::size_t j = partners.of(i);
    if (j == none) {
      onlyBefore.add(i, [&](std::size_t step) { return first(step, i) * input.standard; });
      continue;
    }
    isShared[j] = true;
    // The error is one; where the two set-ups know it to different extents, the more cautious counts.
    const double u = std::max(input.standard, budgetAfter.inputs[j].standard);
    shared.add(i, [&](std::size_t step) { return (second(step, j) - first(step, i)) * u; });
  }
  for (std::size_t j = 0; j < budgetAfter.inputs.size(); ++j) {
    const BudgetInput& input = budgetAfter.inputs[j];
    if (isShared[j] || input.input.kind == Kind::Rounding) continue;
    onlyAfter.add(j, [&](std::size_t step) { return second(step, j) * input.standard; });
  }
  std::vector<double> covariance(n * n, 0.0);
  shared.addTo(covariance, partners.pairsBefore());
  onlyBefore.addTo(covariance, partners.pairsBefore());
  onlyAfter.addTo(covariance, partners.pairsAfter());
  return covariance;
}

}  // namespace core
