// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/document/document.h"
#include "core/search/resistor_search.h"

namespace ui {

/// A resistor in a position now, as a candidate: it keeps value, identity and tolerance.
core::Candidate candidateOfShunt(const core::Setup& setup, std::size_t shunt);

/// `channel` with the resistors of `set` as shunts, each at the places that some level closes it at, and a
/// two-sided sequence of the levels with their combinations. A shunt is named after what it is made of: the
/// part of the stock ("AF-0104 positive"), else the value ("86.6k negative"). A resistor at both places is
/// one part: a new one, which the stock does not hold, is called after its value ("86.6k"). Settling and
/// holding times are those of the present first step, else what the filter asks for. `replace`: instead of
/// the present shunts and sequence, so that readings of open checks are dropped. Else added to them: the new
/// steps follow the present ones, and a shunt that is there already is used again.
core::Channel withSet(core::Channel channel, const core::Stock& stock, const core::ResistorSearch& search,
                      const core::ResistorSet& set, bool replace);
/// Whether replacing drops a reading.
bool replacingDropsReadings(const core::Channel& channel);

}  // namespace ui
