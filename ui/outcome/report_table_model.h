// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>

#include "core/report/report.h"

namespace ui {

/// A table of the report in a table view, word for word.
class ReportTableModel : public QAbstractTableModel {
  Q_OBJECT

 public:
  using QAbstractTableModel::QAbstractTableModel;

  /// Another table; rows and columns are reset only when there are other ones.
  void setTable(core::Table table);
  const core::Table& table() const { return m_table; }

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  core::Table m_table;
};

}  // namespace ui
