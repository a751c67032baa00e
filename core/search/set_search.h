// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <limits>
#include <stop_token>
#include <vector>

#include "core/search/shunt_response.h"
#include "core/units/progress.h"

// The search for resistors with the bridge taken out of it: numbers that add up, and curves over their sums.

namespace core {

inline constexpr std::size_t mostPositions = 8;
inline constexpr std::size_t noPart = std::numeric_limits<std::size_t>::max();

/// Of one resistor with its wires and contact, S. Both ends are the same when tolerances are not looked at.
struct ConductanceSpan {
  double low = 0;
  double high = 0;
};

/// A level in what misses are counted in; positive.
struct Goal {
  double value = 0;
  double perUnit = 1;  ///< miss of a difference of 1
  double none = 1;     ///< miss when nothing is closed; no level misses by more
};

/// One place and the levels wanted there.
struct SearchSide {
  ShuntCurve curve;
  std::vector<Goal> goals;              ///< in an order that does not depend on how they were asked for
  std::vector<ConductanceSpan> fitted;  ///< of the positions that are taken
  std::vector<ConductanceSpan> kinds;   ///< falling; of each kind of resistor
};

/// Resistors that are all alike.
struct ResistorKind {
  std::size_t count = 1;      ///< how many there are
  std::size_t part = noPart;  ///< kinds of one part exclude each other: settings of one decade box
  bool isNew = false;
};

struct SetProblem {
  std::vector<SearchSide> sides;  ///< one or two
  std::vector<ResistorKind> kinds;
  std::size_t free = 1;  ///< positions to fill
  bool together = false;
  std::size_t most = 10;
  unsigned threads = 0;  ///< 0: as many as the machine has
};

/// A set in which every resistor is closed for some level.
struct FoundSet {
  double greatest = 0;
  double mean = 0;
  std::size_t newParts = 0;
  std::vector<std::int32_t> kinds;  ///< rising, so that resistances rise

  /// Best first: smaller greatest miss, smaller mean, fewer new parts, fewer parts, smaller resistances.
  friend bool operator<(const FoundSet& a, const FoundSet& b);
};

struct SetSearchResult {
  std::vector<FoundSet> best;
  std::uint64_t boxes = 0;
  bool cancelled = false;
};

/// How many sets of 1 to `problem.free` resistors there are; the greatest number when there are more.
std::uint64_t setCount(const SetProblem& problem);

/// The `problem.most` best sets of 1 to `problem.free` resistors, the same whatever the number of threads.
/// `progress` is called on the calling thread.
SetSearchResult searchSets(const SetProblem& problem, const std::stop_token& stop, const Progress& progress);

}  // namespace core
