// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/recording/preview_table.h"

#include <QFont>
#include <QPalette>
#include <algorithm>

#include "ui/as_typed.h"
#include "ui/recording/layout_words.h"
#include "ui/theme.h"

namespace ui {

void PreviewTable::setPreview(core::Preview preview) {
  beginResetModel();
  m_preview = std::move(preview);
  std::size_t columns = m_preview.layout.columns.size();
  for (const core::PreviewRow& row : m_preview.rows) columns = std::max(columns, row.cells.size());
  m_columns = static_cast<int>(columns);
  const auto& rows = m_preview.rows;
  const auto numbers = std::find_if(rows.begin(), rows.end(), [](const core::PreviewRow& row) {
    return row.role == core::RowRole::Values;
  });
  m_unitRow = static_cast<int>(numbers - rows.begin());
  endResetModel();
}

int PreviewTable::rowCount(const QModelIndex& parent) const {
  return parent.isValid() || m_columns == 0 ? 0 : static_cast<int>(m_preview.rows.size()) + 1;
}

int PreviewTable::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : m_columns; }

bool PreviewTable::isWholeLine(int row) const { return hasRole(row, core::RowRole::Preamble); }

int PreviewTable::firstUsedRow() const {
  int row = 0;
  while (row < m_unitRow && isWholeLine(row)) ++row;
  return row;
}

bool PreviewTable::isTime(int column) const {
  const core::TimeLayout& time = m_preview.layout.time;
  const auto index = static_cast<std::size_t>(column);
  return time.column == index || time.dateColumn == index;
}

QString PreviewTable::text(int row, int column) const {
  const auto index = static_cast<std::size_t>(column);
  if (row == m_unitRow) {
    const auto& columns = m_preview.layout.columns;
    return index < columns.size() ? toQString(columns[index].unit) : QString();
  }
  const auto& cells = line(row).cells;
  return index < cells.size() ? toQString(cells[index]) : QString();
}

QVariant PreviewTable::style(int row, int column, int role) const {
  const Colours colours = coloursFor(QPalette());
  const bool isHeading = hasRole(row, core::RowRole::Names) || hasRole(row, core::RowRole::Units);
  const bool isNumber = hasRole(row, core::RowRole::Values);
  switch (role) {
    case Qt::FontRole: {
      QFont font;
      font.setBold(isHeading);
      font.setItalic(row == m_unitRow);
      return isHeading || row == m_unitRow ? QVariant(font) : QVariant();
    }
    case Qt::BackgroundRole:
      return row == m_unitRow ? QVariant(QPalette().color(QPalette::AlternateBase)) : QVariant();
    case Qt::ForegroundRole:
      if (isWholeLine(row)) return colours.quiet;
      return isNumber && isTime(column) ? QVariant(colours.measured) : QVariant();
    case Qt::TextAlignmentRole:
      return QVariant((isNumber ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    default:
      return {};
  }
}

QVariant PreviewTable::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const int row = index.row(), column = index.column();
  switch (role) {
    case Qt::DisplayRole:
    case Qt::EditRole:
      return text(row, column);
    case Qt::ToolTipRole:
      return row == m_unitRow ? tr("The unit that this column is taken to have; type another over it")
                              : asTyped(text(row, column));
    default:
      return style(row, column, role);
  }
}

QString PreviewTable::heading(int column) const {
  const auto& columns = m_preview.layout.columns;
  const auto index = static_cast<std::size_t>(column);
  const QString name = index < columns.size() && !columns[index].name.empty()
                           ? toQString(columns[index].name)
                           : tr("column %1").arg(column + 1);
  return isTime(column) ? tr("%1 (time)").arg(name) : name;
}

QVariant PreviewTable::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation == Qt::Horizontal) {
    if (role == Qt::DisplayRole) return heading(section);
    if (role == Qt::ToolTipRole) return asTyped(heading(section));
    return {};
  }
  if (role == Qt::TextAlignmentRole) return QVariant(Qt::AlignLeft | Qt::AlignVCenter);
  if (role != Qt::DisplayRole) return {};
  if (section == m_unitRow) return tr("unit taken");
  return QString("%1  %2").arg(QString::number(line(section).line), wordsOf(line(section).role));
}

Qt::ItemFlags PreviewTable::flags(const QModelIndex& index) const {
  const bool isUnit =
      index.row() == m_unitRow && index.column() < static_cast<int>(m_preview.layout.columns.size());
  return Qt::ItemIsSelectable | Qt::ItemIsEnabled | (isUnit ? Qt::ItemIsEditable : Qt::NoItemFlags);
}

bool PreviewTable::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (role != Qt::EditRole || !(flags(index) & Qt::ItemIsEditable)) return false;
  const QString unit = value.toString().trimmed();
  if (unit == text(m_unitRow, index.column())) return false;
  emit unitTyped(index.column(), unit);
  return true;
}

}  // namespace ui
