// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/prediction.h"
#include "core/report/report.h"

namespace core {

// A set-up as it is printed.

/// Gauge or rating, arms, how it is connected where that is not as its template says, output with all shunts
/// open.
EntryList bridgeEntries(const Bridge& bridge, const Result<Output>& zero);
EntryList instrumentEntries(const Instrument& instrument);
/// Sample rate and filter; no entries when neither is known.
EntryList acquisitionEntries(const Acquisition& acquisition);
EntryList limitEntries(const Setup& setup);
/// Warming, leaks, balance, current source and the like; nothing about those that are switched off.
EntryList effectEntries(const Setup& setup);
Table leadTable(const Bridge& bridge);
/// With the resistors that they are made of and when these are due, where that is known.
Table shuntTable(const Setup& setup);

}  // namespace core
