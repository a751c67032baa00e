// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet_model.h"

#include "ui/theme.h"

namespace ui {
namespace {

core::Error inCell(core::Error error, const SheetModel& model, int row, int column) {
  const QString header =
      model.headerData(column, Qt::Horizontal, Qt::DisplayRole).toString().replace('\n', ' ');
  error.where = SheetModel::tr("row %1, column %2").arg(QString::number(row + 1), header).toStdString();
  return error;
}

}  // namespace

SheetModel::SheetModel(Session& session, int columns, QObject* parent)
    : QAbstractTableModel(parent), m_session(session), m_columns(columns) {}

int SheetModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : m_rows; }
int SheetModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : m_columns; }

void SheetModel::showRows(int rows) {
  if (rows != m_rows) {
    beginResetModel();
    m_rows = rows;
    endResetModel();
  } else if (rows > 0) {
    emit dataChanged(index(0, 0), index(rows - 1, m_columns - 1));
  }
  emit headerDataChanged(Qt::Horizontal, 0, m_columns - 1);
}

bool SheetModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (role != Qt::EditRole || !index.isValid() || !session().channel()) return false;
  auto next = withCell(*session().channel(), index.row(), index.column(), value.toString());
  if (!next) {
    emit refused(toText(inCell(next.error(), *this, index.row(), index.column())));
    return false;
  }
  session().editChannel(editLabel(index.column()), *std::move(next));
  return true;
}

core::Result<void> SheetModel::setBlock(const QModelIndex& at, const QList<QStringList>& cells) {
  if (!session().channel() || !at.isValid())
    return core::Error{"paste", "no cell is chosen", "Choose the cell for the upper left corner"};
  if (at.row() + cells.size() > rowCount())
    return core::Error{"paste",
                       tr("the block has %1 rows, but only %2 are there from the chosen cell on")
                           .arg(QString::number(cells.size()), QString::number(rowCount() - at.row()))
                           .toStdString(),
                       "Add rows first, or choose a cell further up"};
  core::Channel channel = *session().channel();
  for (int r = 0; r < cells.size(); ++r) {
    for (int c = 0; c < cells[r].size(); ++c) {
      const int row = at.row() + r, column = at.column() + c;
      if (column >= columnCount())
        return core::Error{"paste", "the block is wider than the table from the chosen cell on",
                           "Choose a cell further left"};
      if (!(flags(index(row, column)) & Qt::ItemIsEditable))
        return inCell(
            {"", "this cell is worked out and cannot be pasted into", "Paste into the columns you can edit"},
            *this, row, column);
      auto next = withCell(std::move(channel), row, column, cells[r][c]);
      if (!next) return inCell(next.error(), *this, row, column);
      channel = *std::move(next);
    }
  }
  session().editChannel(tr("Paste"), std::move(channel));
  return {};
}

QString SheetModel::whyFixed(int) const { return tr("This column is worked out and cannot be edited."); }

core::Result<void> SheetModel::clearCells(const QModelIndexList& cells) {
  if (!session().channel()) return {};
  core::Channel channel = *session().channel();
  for (const QModelIndex& cell : cells) {
    if (!(flags(cell) & Qt::ItemIsEditable) || emptyText(cell.column()).isNull()) continue;
    auto next = withCell(std::move(channel), cell.row(), cell.column(), emptyText(cell.column()));
    if (!next) return inCell(next.error(), *this, cell.row(), cell.column());
    channel = *std::move(next);
  }
  session().editChannel(tr("Clear cells"), std::move(channel));
  return {};
}

}  // namespace ui
