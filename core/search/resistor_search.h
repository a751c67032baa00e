// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <optional>
#include <span>
#include <stop_token>
#include <string>
#include <vector>

#include "core/search/shunt_place.h"
#include "core/stock/stock.h"
#include "core/units/progress.h"

namespace core {

/// What a miss is counted in.
enum class MissUnit : std::uint8_t {
  OfLevel,  ///< share of the wanted level
  OfLimit,  ///< share of the deviation that the channel's limits permit at that level
};

/// What is asked for. Positions are alike: each resistor can be switched to the positive and to the negative
/// place.
struct ResistorSearch {
  std::vector<double> levels;          ///< as in targets.h; not zero
  std::optional<ShuntPlace> positive;  ///< place for levels above zero
  std::optional<ShuntPlace> negative;  ///< place for levels below zero
  std::size_t positions = 3;           ///< 1 to 8, the fitted ones included
  std::vector<Candidate> fitted;       ///< in positions already; stay
  bool together = false;               ///< positions may be closed together, in parallel
  MissUnit missUnit = MissUnit::OfLevel;
  bool atTolerance = false;  ///< each resistor at the end of its tolerance that misses most
  std::size_t most = 10;     ///< solutions to keep
  unsigned threads = 0;  ///< at once; 0: as many as the machine has. The answer is the same with any number
};

/// What a reading misses the expected one by, and by how much it may; in the reading's unit.
struct ReadingMiss {
  double deviation = 0;  ///< at tolerance the greater one of both ends
  double limit = 0;      ///< as the channel's limits say
};

/// How one wanted level is met.
struct LevelMet {
  double wanted = 0;   ///< in the unit of targets.h
  double reached = 0;  ///< by the exact network
  double miss = 0;     ///< in the search's unit, never negative; of nothing better than zero: 1 of the level
  std::vector<std::size_t>
      closed;  ///< positions closed for it, rising; empty: none comes nearer than zero does
  std::optional<ReadingMiss> reading = {};  ///< none when strained gauges cannot give the level
};

/// A set of resistors, the fitted ones first, then rising. Each new one is closed for some level: a position
/// that no level needs stays empty, so that there may be fewer than positions.
struct ResistorSet {
  std::vector<Candidate> resistors;
  double greatestMiss = 0;       ///< what sets are ranked by, as share
  double meanMiss = 0;           ///< of all levels; ranks sets of one greatest miss
  std::vector<LevelMet> levels;  ///< in the order asked for
  std::size_t newParts = 0;      ///< that the stock does not hold, fitted ones not counted
  Power greatestPower{0};        ///< in any of the resistors, closed alone at its worst place
};

struct SearchOutcome {
  /// Best first, proven: no other set misses less.
  std::vector<ResistorSet> best;
  /// A sentence for each level that even the nearest misses by more than the channel's limit. It tells when
  /// zero is nearer than anything that the resistors reach.
  std::vector<std::string> unreachable;
  std::uint64_t setsInAll = 0;      ///< that there are to choose from, cut off at the greatest number
  std::uint64_t boxesLookedAt = 0;  ///< of the branch and bound; differs a little from run to run
  bool cancelled = false;           ///< `best` is the best so far, nothing is proven
};

/// Finds the sets of candidates whose greatest miss is smallest.
///
/// Branch and bound over ranges of the candidates in order of conductance (core/search/box_bound.h). What a
/// shunt of conductance G does is a ratio of two linear functions of G (core/search/shunt_response.h); the
/// simulated value follows it without a turn, so that a range of sets reaches a range of values, and the
/// bound is the miss of the nearest end. Exact: a range is dropped only when nothing in it can be among the
/// best. Sets rank by greatest miss, mean miss, new parts, number of parts, resistances. Misses that differ
/// by less than the network's roundings, some 1e-15 V/V of output (2e-12 of 1000 µm/m in a quarter bridge),
/// may change places.
/// Candidates of one value and tolerance are alike, and the first of them by id is taken.
/// `candidates` as `candidatesOf` gives them, in any order.
/// Fails when no position is free, no level is wanted, a level is zero or not finite, there is no candidate,
/// a level has no place, a place works the wrong way or lies across one node, or the bridge cannot be solved.
Result<SearchOutcome> searchResistors(const Setup& setup, const ResistorSearch& search,
                                      std::span<const Candidate> candidates, const std::stop_token& stop = {},
                                      const Progress& progress = {});

}  // namespace core
