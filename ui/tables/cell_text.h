// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QString>
#include <QStringList>

// Blocks of cells as text, the way spreadsheets exchange them through the clipboard.

namespace ui {

/// Rows of cells.
using CellBlock = QList<QStringList>;

/// Tab-separated, a line a row. A cell with a tab, a line break or a quotation mark at its beginning stands
/// in quotation marks, those within doubled (as RFC 4180 has it for commas).
QString tabbedText(const CellBlock& rows);

/// The other way: takes what tabbedText writes and what spreadsheets do, with any line ending. A quotation
/// mark that begins a cell but is never closed before a tab or the end of a line is a letter like any other.
/// A line break at the very end adds no row.
CellBlock cellsOfTabbedText(const QString& text);

/// A table of HTML, everything escaped; the first row as headings when `hasHeadings`. Line breaks in a cell
/// stay in it. `language` (BCP 47) says how its numbers are written.
QString htmlTable(const CellBlock& rows, bool hasHeadings, const QString& language);

/// A text that a spreadsheet would take for a formula gets an apostrophe before it; a number never does.
QString guardedCell(const QString& text);
/// Without such an apostrophe.
QString unguardedCell(const QString& text);

}  // namespace ui
