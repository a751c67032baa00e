// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/editable_table.h"

#include "ui/theme.h"

namespace ui {

EditableTable::EditableTable(Session& session, int columns, QObject* parent)
    : QAbstractTableModel(parent), m_session(session), m_columns(columns) {}

int EditableTable::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : m_rows; }
int EditableTable::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : m_columns; }

core::Error EditableTable::inCell(core::Error error, int row, int column) const {
  const QString header = headerData(column, Qt::Horizontal, Qt::DisplayRole).toString().replace('\n', ' ');
  error.where = tr("row %1, column %2").arg(QString::number(row + 1), header).toStdString();
  return error;
}

void EditableTable::showRows(int rows) {
  if (rows != m_rows) {
    beginResetModel();
    m_rows = rows;
    endResetModel();
  } else if (rows > 0) {
    emit dataChanged(index(0, 0), index(rows - 1, m_columns - 1));
  }
  emit headerDataChanged(Qt::Horizontal, 0, m_columns - 1);
}

bool EditableTable::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (role != Qt::EditRole || !index.isValid() || !isThere()) return false;
  const auto done = put({{index.row(), index.column(), value.toString()}}, editLabel(index.column()));
  if (!done) emit refused(toText(done.error()));
  return static_cast<bool>(done);
}

/// A row that does not exist yet takes what any row takes.
core::Result<void> EditableTable::checkTarget(int row, int column) const {
  if (column >= m_columns)
    return core::Error{"paste", "the block is wider than the table from the chosen cell on",
                       "Choose a cell further left"};
  if (row >= m_rows || flags(index(row, column)) & Qt::ItemIsEditable) return {};
  return inCell(
      {"", "this cell is worked out and cannot be pasted into", "Paste into the columns you can edit"}, row,
      column);
}

core::Result<void> EditableTable::setBlock(const QModelIndex& at, const QList<QStringList>& cells) {
  if (!isThere() || (!at.isValid() && !grows()))
    return core::Error{"paste", "no cell is chosen", "Choose the cell for the upper left corner"};
  const int top = at.isValid() ? at.row() : m_rows, left = at.isValid() ? at.column() : 0;
  if (!grows() && top + cells.size() > m_rows)
    return core::Error{"paste",
                       tr("the block has %1 rows, but only %2 are there from the chosen cell on")
                           .arg(QString::number(cells.size()), QString::number(m_rows - top))
                           .toStdString(),
                       "Add rows first, or choose a cell further up"};
  QList<CellText> texts;
  for (int r = 0; r < cells.size(); ++r)
    for (int c = 0; c < cells[r].size(); ++c) {
      if (const auto fits = checkTarget(top + r, left + c); !fits) return fits;
      texts.append({top + r, left + c, cells[r][c]});
    }
  return put(texts, tr("Paste"));
}

QString EditableTable::whyFixed(int) const { return tr("This column is worked out and cannot be edited."); }

core::Result<void> EditableTable::clearCells(const QModelIndexList& cells) {
  QList<CellText> texts;
  for (const QModelIndex& cell : cells)
    if (flags(cell) & Qt::ItemIsEditable && !emptyText(cell.column()).isNull())
      texts.append({cell.row(), cell.column(), emptyText(cell.column())});
  return texts.isEmpty() || !isThere() ? core::Result<void>() : put(texts, tr("Clear cells"));
}

}  // namespace ui
