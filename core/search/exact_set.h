// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

#include "core/search/resistor_search.h"

namespace core {

/// The place for `level`; null when there is none.
const ShuntPlace* placeFor(const ResistorSearch& search, double level);

/// In the reading's unit.
struct ReadingAt {
  double reading = 0;
  double limit = 0;  ///< by how much it may be off, as the channel's limits say
};
/// What the gauges strained (or loaded) to `level` show, all shunts open. Fails when they cannot be.
Result<ReadingAt> readingAt(const Setup& setup, double level);

/// How `resistors` (the fitted ones first) meet the wanted levels: every combination that can be closed is
/// solved as a whole network, as `predict` does it. Nothing of the fast search is used.
/// Fails when the network cannot be solved.
Result<ResistorSet> exactSet(const Setup& setup, const ResistorSearch& search,
                             std::span<const Candidate> resistors);

}  // namespace core
