// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/report.h"
#include "ui/report/page_slices.h"

// Tables and lists as slices of rows, `width` dots wide; captions and notes are not in them.

namespace ui {

/// The rows of `table`; each carries the head, which the first one has above it. Columns are as wide as their
/// words need and share what is left; where there is not enough, text is broken, numbers last; a head is set
/// small before a word of it is broken.
std::vector<Slice> tableSlices(const core::Table& table, double width);
/// Names beside values, no wider than it needs to be when `natural`.
std::vector<Slice> entrySlices(const core::EntryList& list, double width, bool natural);

/// Widths of columns that need at least `least` and at best `wanted` in `width`; a `fixed` one (over 0) has
/// its width. All of `width` is given out. Where even the least is too much, the widest give way.
std::vector<double> columnWidths(const std::vector<double>& least, const std::vector<double>& wanted,
                                 const std::vector<double>& fixed, double width);

QColor inkColour(core::Verdict verdict);
inline const QColor blackInk(0x14, 0x19, 0x1f), quietInk(0x4c, 0x55, 0x60), ruleInk(0xd3, 0xd8, 0xdd);

}  // namespace ui
