// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/editable_table.h"

#include <utility>

#include "ui/theme.h"

#include "core/units/language.h"

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
  if (rows != m_rows || owner() != m_owner) {
    beginResetModel();
    m_rows = rows;
    m_owner = owner();
    endResetModel();
  } else if (rows > 0) {
    emit dataChanged(index(0, 0), index(rows - 1, m_columns - 1));
  }
  emit headerDataChanged(Qt::Horizontal, 0, m_columns - 1);
}

bool EditableTable::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (role != Qt::EditRole || !index.isValid() || !isThere()) return false;
  const QString text = value.toString();
  QList<CellText> texts;
  for (const QModelIndex& cell : std::exchange(m_spread, {})) texts.append({cell.row(), cell.column(), text});
  // A cell may be fixed by now that was not when its editor was opened.
  const auto done = texts.isEmpty()
                        ? putCells({{index.row(), index.column(), text}}, editLabel(index.column()))
                        : putCells(texts, tr("Fill cells"));
  // What was put back to what it was is no edit, and yet the reason is out of date.
  const bool told = std::exchange(m_toldRefusal, !done);
  if (told || !done) emit refused(done ? QString() : toText(done.error()));
  return static_cast<bool>(done);
}

/// A row that does not exist yet takes what any row takes.
core::Result<void> EditableTable::checkTarget(const CellText& cell) const {
  if (cell.row >= m_rows || flags(index(cell.row, cell.column)) & Qt::ItemIsEditable) return {};
  return inCell({"", core::say("this cell is worked out and takes no text"),
                 core::say("Choose cells of columns that can be edited")},
                cell.row, cell.column);
}

core::Result<void> EditableTable::putCells(const QList<CellText>& cells, const QString& label) {
  if (!isThere())
    return core::Error{"", core::say("there is no channel to edit"), core::say("Add a channel first")};
  if (owner() != m_owner)
    return core::Error{"", core::say("another channel was chosen while this was typed"),
                       core::say("Choose the channel that it is meant for and type it again")};
  for (const CellText& cell : cells)
    if (const auto fits = checkTarget(cell); !fits) return fits;
  return cells.isEmpty() ? core::Result<void>() : put(cells, label);
}

QString EditableTable::whyFixed(int) const { return tr("This column is worked out and cannot be edited."); }

core::Result<void> EditableTable::clearCells(const QModelIndexList& cells) {
  QList<CellText> texts;
  for (const QModelIndex& cell : cells)
    if (flags(cell) & Qt::ItemIsEditable && !emptyText(cell.column()).isNull())
      texts.append({cell.row(), cell.column(), emptyText(cell.column())});
  return texts.isEmpty() ? core::Result<void>() : putCells(texts, tr("Clear cells"));
}

}  // namespace ui
