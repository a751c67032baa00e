// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace core {

/// A series cut into segments of constant mean.
struct Partition {
  std::vector<std::size_t> changes;  ///< index of the first value of every segment but the first, rising
  double objective = 0;              ///< squares about the segment means + penalty * number of changes
};

/// The exact minimum of the objective over all cuts at `candidates` (rising indices, without 0) with segments
/// of at least `shortest` values. PELT: candidates that can never again be the last change are dropped.
/// Source: Killick, Fearnhead and Eckley, "Optimal detection of changepoints with a linear computational
/// cost", JASA 107 (2012). Needs at least one value. Where several cuts are equally good one of them is
/// taken.
Partition optimalPartition(std::span<const double> values, std::span<const std::size_t> candidates,
                           double penalty, std::size_t shortest = 1);

/// As above with a change allowed before every value.
Partition optimalPartition(std::span<const double> values, double penalty, std::size_t shortest = 1);

/// `changes` each moved by at most `reach` to where its two segments have the least squares about their
/// means, one after the other; segments keep at least one value.
std::vector<std::size_t> refinedChanges(std::span<const double> values, std::vector<std::size_t> changes,
                                        std::size_t reach);

}  // namespace core
