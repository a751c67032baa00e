// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>
#include <optional>

#include "core/units/result.h"

// What the text of a cell is worth: for sorting, and for counting on.

namespace ui {

/// The number of a cell that is a number alone, in the user's notation ("1,5", "+1000", "−0.3"). None for
/// anything else, a number with a unit too.
std::optional<double> numberIn(const QString& text);

/// What a cell sorts by: its number, in the base unit when it has one ("4.7 kΩ" above "900 Ω"); else its
/// text.
struct CellKey {
  enum class Kind { Number, Text, Empty };
  Kind kind = Kind::Empty;
  double number = 0;
  QString text;
};

/// A dash, which stands for what is not known, counts as empty.
CellKey keyOfCell(const QString& text);

/// Less than 0, 0, more than 0, as `a` comes before `b`: numbers, then texts (numbers within them by value,
/// so that TP-9 comes before TP-10).
int compareCells(const CellKey& a, const CellKey& b);

/// `count` texts that go on from `first` and `second`: numbers in equal steps, with the unit that both have;
/// names counted up, by as much as from the first to the second. An empty `second` goes on by one. Fails when
/// nothing follows from the two; `where` of the error is empty.
core::Result<QStringList> seriesAfter(const QString& first, const QString& second, int count);

}  // namespace ui
