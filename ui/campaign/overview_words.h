// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/campaign/overview_lines.h"
#include "ui/change/change_words.h"

namespace ui {

QString overviewColumnName(OverviewColumn column);
QString overviewColumnTip(OverviewColumn column);

/// What a cell says; empty where there is nothing to say.
QString overviewText(const OverviewItem& item, OverviewColumn column);
/// The same for a spreadsheet: numbers without sign or unit of their own, to be calculated with.
QString overviewCell(const OverviewItem& item, OverviewColumn column);

QString stateWord(CheckState state);
/// "1,000 channels: 12 fail, 985 pass, 3 changed beyond the margin".
QString tallyWords(const core::OverviewTally& tally);

/// A text cell that no spreadsheet takes for a formula.
QString safeCell(const QString& text);

}  // namespace ui
