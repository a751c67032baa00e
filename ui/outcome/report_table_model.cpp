// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/outcome/report_table_model.h"

#include "ui/theme.h"

namespace ui {

void ReportTableModel::setTable(core::Table table) {
  const bool same =
      table.rows.size() == m_table.rows.size() && table.columns.size() == m_table.columns.size();
  if (!same) beginResetModel();
  m_table = std::move(table);
  if (!same) return endResetModel();
  if (m_table.rows.empty() || m_table.columns.empty()) return;
  emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
  emit headerDataChanged(Qt::Horizontal, 0, columnCount() - 1);
}

int ReportTableModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(m_table.rows.size());
}

int ReportTableModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(m_table.columns.size());
}

QVariant ReportTableModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const auto column = static_cast<std::size_t>(index.column());
  if (role == Qt::DisplayRole)
    return toQString(m_table.rows[static_cast<std::size_t>(index.row())].cells[column]);
  if (role == Qt::TextAlignmentRole)
    return int((m_table.columns[column].numeric ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  return {};
}

QVariant ReportTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
  // The unit on a line of its own keeps the columns narrow.
  return toQString(m_table.columns[static_cast<std::size_t>(section)].name).replace(", ", ",\n");
}

}  // namespace ui
