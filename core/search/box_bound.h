// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include "core/search/set_search.h"

namespace core {

/// For each free position a range of kinds, both ends included. Positions are alike, so kinds rise with them.
struct Box {
  std::array<std::int32_t, mostPositions> first{};
  std::array<std::int32_t, mostPositions> last{};
  double greatest = 0;  ///< no set in the box misses its worst level by less
  double mean = 0;      ///< nor all levels by less
  double share = 0;     ///< of the whole search
};

/// Bounds on the misses of all sets in a box of `positions` free positions. One object a thread.
///
/// A range of sets reaches, with one combination of closed positions, a range of conductances, and the value
/// rises with conductance: the bound is the miss of the nearer end, the least one over all combinations.
/// With tolerances both ends of the resistors must be near, so that the least of the high ends must not lie
/// above a level by more than the miss, nor the greatest of the low ends below it.
class BoxBound {
 public:
  BoxBound(const SetProblem& problem, std::size_t positions);

  /// Sets the bounds of `box`; false when no set in it can be among those with a greatest miss of at most
  /// `worst`, or when some position cannot be of use for any level.
  bool bound(Box& box, double worst);
  /// Whether every free position is the best for some level, in a box that is a single set.
  bool allUsed(const Box& box);
  /// `ln` of a kind's conductance, to compare how wide ranges are.
  double logarithm(std::int32_t kind) const { return m_logarithm[static_cast<std::size_t>(kind)]; }
  std::size_t positions() const { return m_positions; }

 private:
  /// The four extremes of a range: of the high ends and of the low ends, the greatest and the least.
  enum Extreme : std::size_t { LeastHigh, GreatestLow, GreatestHigh, LeastLow };
  static constexpr std::size_t mostMasks = std::size_t{1} << mostPositions;
  struct Side {
    const SearchSide* side = nullptr;
    std::vector<double> greatestLowFrom, leastHighTo, greatestHighFrom,
        leastLowTo;                                                     ///< of kinds on or before
    alignas(64) std::array<std::array<double, mostMasks>, 4> values{};  ///< extreme x combination
  };

  std::size_t columnOf(Extreme extreme) const;
  void addUp(Side& side, const Box& box);
  double extremeOf(const Side& side, const Box& box, std::size_t position, Extreme extreme) const;
  bool boundGoal(const Side& side, const Goal& goal, double& least, double worst);

  const SetProblem& m_problem;
  std::size_t m_positions, m_fitted, m_all;
  std::vector<std::uint16_t> m_masks;  ///< combinations that can be closed
  std::vector<Side> m_sides;
  std::vector<double> m_logarithm;
  bool m_exactEnds = true;  ///< no tolerances: two of the extremes are those of the other two
  bool m_single = false;    ///< the box is one set
  std::uint32_t m_useful = 0;
  alignas(64) std::array<double, mostMasks> m_sums{}, m_miss{};
};

}  // namespace core
