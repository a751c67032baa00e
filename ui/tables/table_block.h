// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QModelIndexList>

#include "core/units/result.h"
#include "ui/tables/cell_text.h"

class QMimeData;
class QTableView;

// What is done with the chosen cells of any table view, in the order in which they are shown. Rows and
// columns that are not on view are never part of it.

namespace ui {

class BlockTaker;

/// The model of the view when its cells can be edited; none else.
BlockTaker* takerOf(const QTableView& view);

/// As shown, from top to bottom and from left to right; rows and columns of the model.
QList<int> shownRows(const QTableView& view);
QList<int> shownColumns(const QTableView& view);
/// The chosen cells that are shown; of nothing chosen the current one.
QModelIndexList chosenCells(const QTableView& view);
/// Those that are edited: where whole rows are chosen, only the cells in the column worked in.
QModelIndexList editedCells(const QTableView& view);

enum class CopyPart { Chosen, All };
enum class CopyHeadings { Without, With };

/// The chosen rows and columns; cells between them that are not chosen are empty. All of the table where
/// nothing is chosen.
CellBlock copiedBlock(const QTableView& view, CopyPart part, CopyHeadings headings);
/// The same for the clipboard: tab-separated text, and HTML. The caller owns it.
QMimeData* mimeOf(const CellBlock& block, bool hasHeadings);
void copyCells(const QTableView& view, CopyPart part = CopyPart::Chosen,
               CopyHeadings headings = CopyHeadings::Without);

/// Puts a block in from the upper left chosen cell on. One value goes into all chosen cells, and a block that
/// fits several times into what is chosen is repeated. A first row that says the headings is left out.
core::Result<void> pasteCells(const QTableView& view, const QString& text);
core::Result<void> clearChosenCells(const QTableView& view);

enum class Fill { Down, Right, Series };
/// From the first chosen row down, from the first chosen column to the right, or on from the first two cells:
/// down, and to the right where one row alone is chosen.
core::Result<void> fillCells(const QTableView& view, Fill fill);

/// The columns that have chosen cells, from top to bottom.
void chooseColumns(QTableView& view);

}  // namespace ui
