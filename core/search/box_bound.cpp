// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/search/box_bound.h"

#include <algorithm>
#include <bit>
#include <cmath>

namespace core {
namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();

/// Greatest or least value of all from each place on, or up to it.
template <class Pick>
std::vector<double> running(std::vector<double> values, bool fromEnd, Pick pick) {
  if (fromEnd)
    for (std::size_t k = values.size(); k-- > 1;) values[k - 1] = pick(values[k - 1], values[k]);
  else
    for (std::size_t k = 1; k < values.size(); ++k) values[k] = pick(values[k - 1], values[k]);
  return values;
}

}  // namespace

BoxBound::BoxBound(const SetProblem& problem, std::size_t positions)
    : m_problem(problem),
      m_positions(positions),
      m_fitted(problem.sides.front().fitted.size()),
      m_all(m_fitted + positions) {
  for (std::uint32_t mask = 1; mask < (1u << m_all); ++mask)
    if (problem.together || std::popcount(mask) == 1) m_masks.push_back(static_cast<std::uint16_t>(mask));
  const auto greater = [](double a, double b) { return std::max(a, b); };
  const auto less = [](double a, double b) { return std::min(a, b); };
  m_sides.resize(problem.sides.size());
  for (std::size_t k = 0; k < m_sides.size(); ++k) {
    m_sides[k].side = &problem.sides[k];
    std::vector<double> low, high;
    for (const ConductanceSpan& kind : problem.sides[k].kinds) {
      low.push_back(kind.low), high.push_back(kind.high);
      if (kind.low != kind.high) m_exactEnds = false;
    }
    for (const ConductanceSpan& fitted : problem.sides[k].fitted)
      if (fitted.low != fitted.high) m_exactEnds = false;
    m_sides[k].greatestLowFrom = running(low, true, greater);
    m_sides[k].leastLowTo = running(low, false, less);
    m_sides[k].greatestHighFrom = running(high, true, greater);
    m_sides[k].leastHighTo = running(high, false, less);
  }
  for (const ConductanceSpan& kind : problem.sides.front().kinds)
    m_logarithm.push_back(std::log(kind.low + kind.high));
}

double BoxBound::extremeOf(const Side& side, const Box& box, std::size_t position, Extreme extreme) const {
  const bool low = extreme == GreatestLow || extreme == LeastLow;
  if (position < m_fitted) {
    const ConductanceSpan& fitted = side.side->fitted[position];
    return low ? fitted.low : fitted.high;
  }
  const auto first = static_cast<std::size_t>(box.first[position - m_fitted]);
  const auto last = static_cast<std::size_t>(box.last[position - m_fitted]);
  if (first == last) return low ? side.side->kinds[first].low : side.side->kinds[first].high;
  switch (extreme) {
    case LeastHigh:
      return side.leastHighTo[last];
    case GreatestLow:
      return side.greatestLowFrom[first];
    case GreatestHigh:
      return side.greatestHighFrom[first];
    case LeastLow:
      return side.leastLowTo[last];
  }
  return 0;
}

/// Where the values of an extreme are: some are the same in a box of one set, and without tolerances.
std::size_t BoxBound::columnOf(Extreme extreme) const {
  const bool high = extreme == LeastHigh || extreme == GreatestHigh;
  const bool least = extreme == LeastHigh || extreme == LeastLow;
  if (m_exactEnds) return m_single || least ? LeastHigh : GreatestLow;
  if (m_single) return high ? LeastHigh : GreatestLow;
  return extreme;
}

/// Values of all combinations at the extremes of the box. Sums run from the last position to the first, so
/// that the same resistors give the same sum in sets of any size.
void BoxBound::addUp(Side& side, const Box& box) {
  for (const Extreme extreme : {LeastHigh, GreatestLow, GreatestHigh, LeastLow}) {
    if (columnOf(extreme) != extreme) continue;
    std::array<double, mostPositions> of{};
    for (std::size_t p = 0; p < m_all; ++p) of[p] = extremeOf(side, box, p, extreme);
    double* const values = side.values[extreme].data();
    if (!m_problem.together) {
      side.side->curve.at({of.data(), m_all}, values);
      continue;
    }
    const std::size_t count = std::size_t{1} << m_all;
    for (std::size_t mask = 1; mask < count; ++mask)
      m_sums[mask] = m_sums[mask & (mask - 1)] + of[static_cast<std::size_t>(std::countr_zero(mask))];
    side.side->curve.at({m_sums.data() + 1, count - 1}, values);
  }
}

/// The least miss of `goal` that some set in the box may have, and the combinations that may be its best.
bool BoxBound::boundGoal(const Side& side, const Goal& goal, double& least, double worst) {
  const double* const over = side.values[columnOf(LeastHigh)].data();
  const double* const under = side.values[columnOf(GreatestLow)].data();
  const double* const farOver = side.values[columnOf(GreatestHigh)].data();
  const double* const farUnder = side.values[columnOf(LeastLow)].data();
  const std::size_t count = m_masks.size();
  double near = infinity, far = infinity;
  for (std::size_t k = 0; k < count; ++k) {
    const double miss = std::max(std::max(over[k] - goal.value, goal.value - under[k]), 0.0);
    const double atMost = std::max(farOver[k] - goal.value, goal.value - farUnder[k]);
    m_miss[k] = miss;
    near = std::min(near, miss);
    far = std::min(far, atMost);
  }
  least = std::min(near * goal.perUnit, goal.none);
  if (least > worst) return false;
  // A combination is of use when it may miss by less than all others surely do, and by less than nothing.
  const auto all = static_cast<std::uint32_t>((1u << m_all) - 1);
  if (m_useful == all) return true;
  for (std::size_t k = 0; k < count; ++k)
    if (m_miss[k] <= far && m_miss[k] * goal.perUnit < goal.none) m_useful |= m_masks[k];
  return true;
}

bool BoxBound::bound(Box& box, double worst) {
  m_single = box.first == box.last;
  m_useful = 0;
  double sum = 0;
  std::size_t goals = 0;
  box.greatest = 0;
  for (Side& side : m_sides) {
    addUp(side, box);
    for (const Goal& goal : side.side->goals) {
      double least = 0;
      if (!boundGoal(side, goal, least, worst)) return false;
      box.greatest = std::max(box.greatest, least);
      sum += least;
      ++goals;
    }
  }
  box.mean = sum / static_cast<double>(goals);
  const auto free = static_cast<std::uint32_t>(((1u << m_positions) - 1) << m_fitted);
  return (m_useful & free) == free;
}

bool BoxBound::allUsed(const Box& box) {
  std::uint32_t used = 0;
  m_single = true;
  for (Side& side : m_sides) {
    addUp(side, box);
    for (const Goal& goal : side.side->goals) {
      double least = 0;
      boundGoal(side, goal, least, infinity);
      const auto better = [&](std::size_t a, std::size_t b) {
        if (m_miss[a] != m_miss[b]) return m_miss[a] < m_miss[b];
        return std::popcount(m_masks[a]) < std::popcount(m_masks[b]);
      };
      std::size_t best = 0;
      for (std::size_t k = 1; k < m_masks.size(); ++k)
        if (better(k, best)) best = k;
      if (m_miss[best] * goal.perUnit < goal.none) used |= m_masks[best];
    }
  }
  const auto free = static_cast<std::uint32_t>(((1u << m_positions) - 1) << m_fitted);
  return (used & free) == free;
}

}  // namespace core
