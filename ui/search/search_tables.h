// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/report/report.h"
#include "core/search/resistor_search.h"

namespace ui {

// What a search came to, in words and tables with the user's decimal mark.

/// "59 kΩ (S-104), 174 kΩ".
QString resistorsText(const core::ResistorSet& set);
/// A row a set, best first.
core::Table setsTable(const core::SearchOutcome& outcome, core::MissUnit unit);
/// A row a wanted level of one set.
core::Table levelsTable(const core::Bridge& bridge, const core::ResistorSet& set, core::MissUnit unit);
/// Whether the best is proven to be that, or the search was cancelled; where the best is not good enough:
/// levels beyond the channel's limit, levels with the same resistors closed, levels that cannot be reached.
QString outcomeSentence(const core::SearchOutcome& outcome, core::MissUnit unit);

}  // namespace ui
