// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/tables/table_block.h"

#include <QApplication>
#include <QClipboard>
#include <QHeaderView>
#include <QLocale>
#include <QMimeData>
#include <QTableView>
#include <algorithm>

#include "ui/tables/block_taker.h"
#include "ui/tables/cell_value.h"
#include "ui/tables/table_words.h"

namespace ui {
namespace {

QList<int> shownSections(const QHeaderView& header) {
  QList<int> sections;
  for (int visual = 0; visual < header.count(); ++visual)
    if (const int logical = header.logicalIndex(visual); !header.isSectionHidden(logical))
      sections << logical;
  return sections;
}

QString headingOf(const QTableView& view, int column) {
  return view.model()->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString().replace('\n', ' ');
}

/// In full: what the cell's editor would hold, and what is shown where it has none.
QString textOf(const QModelIndex& cell) {
  const QVariant full = cell.data(Qt::EditRole);
  return (full.isValid() ? full : cell.data(Qt::DisplayRole)).toString();
}

/// The chosen cells by row and column, in the order shown.
struct Block {
  QList<int> rows, columns;
  QModelIndexList cells;
  bool isChosen(const QModelIndex& cell) const { return chosen.isEmpty() || chosen.contains(cell); }
  QSet<QModelIndex> chosen;
};

Block blockOf(const QTableView& view, const QModelIndexList& cells) {
  Block block;
  block.cells = cells;
  block.chosen = QSet<QModelIndex>(block.cells.begin(), block.cells.end());
  QSet<int> rows, columns;
  for (const QModelIndex& cell : block.cells) {
    rows.insert(cell.row());
    columns.insert(cell.column());
  }
  for (const int row : shownRows(view))
    if (rows.contains(row)) block.rows << row;
  for (const int column : shownColumns(view))
    if (columns.contains(column)) block.columns << column;
  return block;
}

core::Error pasteError(const QString& what, const QString& mend) {
  return {"", what.toStdString(), mend.toStdString()};
}

/// The shown rows from `at` on, then new ones as far as the table grows.
core::Result<QList<int>> rowsFrom(const QTableView& view, int at, qsizetype count) {
  const QList<int> shown = shownRows(view);
  QList<int> rows = shown.mid(at < 0 ? shown.size() : shown.indexOf(at), count);
  if (rows.size() == count) return rows;
  const int there = view.model()->rowCount();
  if (shown.size() < there)
    return pasteError(TableWords::tr("the block has %1 rows, but only %2 are shown from the chosen cell on, "
                                     "since others are filtered out")
                          .arg(count)
                          .arg(rows.size()),
                      TableWords::tr("Show all rows first"));
  if (!takerOf(view)->takesNewRows())
    return pasteError(TableWords::tr("the block has %1 rows, but only %2 are there from the chosen cell on")
                          .arg(count)
                          .arg(rows.size()),
                      TableWords::tr("Add rows first, or choose a cell further up"));
  for (int next = there; rows.size() < count; ++next) rows << next;
  return rows;
}

/// `block` as often as it fits into `rows` times `columns`.
CellBlock repeated(const CellBlock& block, qsizetype rows, qsizetype columns) {
  CellBlock many;
  for (qsizetype r = 0; r < rows; ++r) {
    QStringList line;
    const QStringList& from = block[r % block.size()];
    for (qsizetype c = 0; c < columns; ++c) line << from[c % from.size()];
    many << line;
  }
  return many;
}

bool isEvenBlock(const CellBlock& block) {
  return std::all_of(block.begin(), block.end(), [&](const QStringList& row) {
    return !row.isEmpty() && row.size() == block.first().size();
  });
}

bool saysHeadings(const QTableView& view, const QStringList& cells, const QList<int>& columns) {
  if (cells.size() > columns.size()) return false;
  for (qsizetype k = 0; k < cells.size(); ++k)
    if (cells[k] != headingOf(view, columns[k])) return false;
  return !cells.isEmpty();
}

core::Result<void> putAt(const QTableView& view, const CellBlock& cells, const QList<int>& rows,
                         const QList<int>& columns) {
  QList<CellText> texts;
  for (qsizetype r = 0; r < cells.size(); ++r) {
    if (cells[r].size() > columns.size())
      return pasteError(TableWords::tr("the block is wider than the table from the chosen cell on"),
                        TableWords::tr("Choose a cell further left"));
    for (qsizetype c = 0; c < cells[r].size(); ++c)
      texts.append({rows[r], columns[c], unguardedCell(cells[r][c])});
  }
  return takerOf(view)->putCells(texts, TableWords::tr("Paste"));
}

/// One value into every chosen cell, which need not be a rectangle.
core::Result<void> putInAll(const QTableView& view, const QModelIndexList& cells, const QString& text) {
  QList<CellText> texts;
  for (const QModelIndex& cell : cells) texts.append({cell.row(), cell.column(), unguardedCell(text)});
  return takerOf(view)->putCells(texts, TableWords::tr("Paste"));
}

core::Error notEditable() {
  return {"", TableWords::tr("this table is worked out: it can be copied, but takes no text").toStdString(),
          ""};
}

/// A line of cells that goes on from its first two.
core::Result<void> addSeries(const QTableView& view, const QModelIndexList& line, QList<CellText>& texts) {
  if (line.size() < 2) return {};
  const QString second = textOf(line[1]);
  const auto count = static_cast<int>(line.size() - (second.isEmpty() ? 1 : 2));
  const auto series = seriesAfter(textOf(line[0]), second, count);
  if (!series) {
    core::Error error = series.error();
    error.where = TableWords::tr("row %1, column %2")
                      .arg(line[0].row() + 1)
                      .arg(headingOf(view, line[0].column()))
                      .toStdString();
    return error;
  }
  for (int k = 0; k < count; ++k) {
    const QModelIndex& cell = line[line.size() - count + k];
    texts.append({cell.row(), cell.column(), (*series)[k]});
  }
  return {};
}

core::Result<QList<CellText>> filledSeries(const QTableView& view, const Block& block) {
  QList<CellText> texts;
  const QAbstractItemModel& model = *view.model();
  const bool across = block.rows.size() == 1;
  for (const int at : across ? block.rows : block.columns) {
    QModelIndexList line;
    for (const int along : across ? block.columns : block.rows)
      line << (across ? model.index(at, along) : model.index(along, at));
    if (const auto added = addSeries(view, line, texts); !added) return added.error();
  }
  return texts;
}

QList<CellText> filledFrom(const QTableView& view, const Block& block, bool down) {
  QList<CellText> texts;
  for (const int row : block.rows)
    for (const int column : block.columns) {
      if (down ? row == block.rows.first() : column == block.columns.first()) continue;
      const QModelIndex from =
          view.model()->index(down ? block.rows.first() : row, down ? column : block.columns.first());
      texts.append({row, column, textOf(from)});
    }
  return texts;
}

}  // namespace

BlockTaker* takerOf(const QTableView& view) { return dynamic_cast<BlockTaker*>(view.model()); }

QList<int> shownRows(const QTableView& view) { return shownSections(*view.verticalHeader()); }
QList<int> shownColumns(const QTableView& view) { return shownSections(*view.horizontalHeader()); }

QModelIndexList chosenCells(const QTableView& view) {
  if (!view.selectionModel()) return {};
  QModelIndexList cells;
  for (const QModelIndex& cell : view.selectionModel()->selectedIndexes())
    if (!view.isRowHidden(cell.row()) && !view.isColumnHidden(cell.column())) cells << cell;
  const QModelIndex current = view.currentIndex();
  if (cells.isEmpty() && current.isValid() && !view.isRowHidden(current.row())) cells << current;
  const QHeaderView &down = *view.verticalHeader(), &across = *view.horizontalHeader();
  std::sort(cells.begin(), cells.end(), [&](const QModelIndex& a, const QModelIndex& b) {
    const int above = down.visualIndex(a.row()), below = down.visualIndex(b.row());
    return above != below ? above < below : across.visualIndex(a.column()) < across.visualIndex(b.column());
  });
  return cells;
}

QModelIndexList editedCells(const QTableView& view) {
  QModelIndexList cells = chosenCells(view);
  if (view.selectionBehavior() == QAbstractItemView::SelectRows)
    cells.removeIf([&](const QModelIndex& cell) { return cell.column() != view.currentIndex().column(); });
  return cells;
}

CellBlock copiedBlock(const QTableView& view, CopyPart part, CopyHeadings headings) {
  Block block = blockOf(view, chosenCells(view));
  if (part == CopyPart::All || block.cells.isEmpty()) block = {shownRows(view), shownColumns(view), {}, {}};
  const bool named = headings == CopyHeadings::With && !view.verticalHeader()->isHidden();
  CellBlock copied;
  if (headings == CopyHeadings::With) {
    QStringList line = named ? QStringList{QString()} : QStringList();
    for (const int column : block.columns) line << guardedCell(headingOf(view, column));
    copied << line;
  }
  for (const int row : block.rows) {
    QStringList line;
    if (named) line << guardedCell(view.model()->headerData(row, Qt::Vertical).toString());
    for (const int column : block.columns) {
      const QModelIndex cell = view.model()->index(row, column);
      line << (block.isChosen(cell) ? guardedCell(textOf(cell)) : QString());
    }
    copied << line;
  }
  return copied;
}

QMimeData* mimeOf(const CellBlock& block, bool hasHeadings) {
  auto* data = new QMimeData;
  const QLocale locale;
  data->setText(tabbedText(block));
  data->setHtml(htmlTable(block, hasHeadings, locale.language() == QLocale::C ? "en" : locale.bcp47Name()));
  return data;
}

void copyCells(const QTableView& view, CopyPart part, CopyHeadings headings) {
  const CellBlock block = copiedBlock(view, part, headings);
  if (!block.isEmpty()) QApplication::clipboard()->setMimeData(mimeOf(block, headings == CopyHeadings::With));
}

core::Result<void> pasteCells(const QTableView& view, const QString& text) {
  if (text.isEmpty())
    return pasteError(TableWords::tr("the clipboard holds no text"), TableWords::tr("Copy cells first"));
  if (!takerOf(view)) return notEditable();
  CellBlock cells = cellsOfTabbedText(text);
  const Block chosen = blockOf(view, editedCells(view));
  if (chosen.cells.isEmpty() && !takerOf(view)->takesNewRows())
    return pasteError(TableWords::tr("no cell is chosen"),
                      TableWords::tr("Choose the cell for the upper left corner"));
  const QList<int> shown = shownColumns(view);
  const QList<int> columns =
      chosen.columns.isEmpty() ? shown : shown.mid(shown.indexOf(chosen.columns.first()));
  if (cells.size() > 1 && saysHeadings(view, cells.first(), columns)) cells.removeFirst();
  if (cells.size() == 1 && cells.first().size() == 1 && chosen.cells.size() > 1)
    return putInAll(view, chosen.cells, cells.first().first());
  const qsizetype high = chosen.rows.size(), wide = chosen.columns.size();
  if (isEvenBlock(cells) && high >= cells.size() && wide >= cells.first().size() &&
      high % cells.size() == 0 && wide % cells.first().size() == 0)
    cells = repeated(cells, high, wide);
  const auto rows = rowsFrom(view, chosen.rows.isEmpty() ? -1 : chosen.rows.first(), cells.size());
  if (!rows) return rows.error();
  return putAt(view, cells, *rows, columns);
}

core::Result<void> clearChosenCells(const QTableView& view) {
  if (!takerOf(view)) return notEditable();
  return takerOf(view)->clearCells(editedCells(view));
}

core::Result<void> fillCells(const QTableView& view, Fill fill) {
  if (!takerOf(view)) return notEditable();
  const Block block = blockOf(view, editedCells(view));
  if (block.cells.size() < 2 || block.cells.size() != block.rows.size() * block.columns.size() ||
      (fill == Fill::Down && block.rows.size() < 2) || (fill == Fill::Right && block.columns.size() < 2))
    return core::Error{
        "", TableWords::tr("choose the cells to fill as one block, those to fill from first").toStdString(),
        ""};
  if (fill == Fill::Series) {
    const auto texts = filledSeries(view, block);
    return texts ? takerOf(view)->putCells(*texts, TableWords::tr("Fill series")) : texts.error();
  }
  return takerOf(view)->putCells(filledFrom(view, block, fill == Fill::Down), TableWords::tr("Fill cells"));
}

void chooseColumns(QTableView& view) {
  if (view.model()->rowCount() == 0) return;
  QItemSelection columns;
  const int last = view.model()->rowCount() - 1;
  for (const int column : blockOf(view, editedCells(view)).columns)
    columns.select(view.model()->index(0, column), view.model()->index(last, column));
  view.selectionModel()->select(columns, QItemSelectionModel::ClearAndSelect);
}

}  // namespace ui
