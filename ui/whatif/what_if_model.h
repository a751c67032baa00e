// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>
#include <QPalette>
#include <optional>

#include "core/whatif/what_if.h"

namespace ui {

/// The readings of a plan with and without what is tried out. The first row is the zero of the bridge, the
/// others are the steps.
class WhatIfModel : public QAbstractTableModel {
  Q_OBJECT

 public:
  enum Column { Step, Closed, Without, With, Difference, Percent, Polarity, ColumnCount };

  using QAbstractTableModel::QAbstractTableModel;

  /// Shows another result; rows are reset only when their number differs.
  void show(std::optional<core::WhatIf> whatIf, core::Zeroed zeroed);
  void setColours(const QPalette& palette);

  static int rowOf(std::optional<std::size_t> step) { return step ? static_cast<int>(*step) + 1 : 0; }
  static std::optional<std::size_t> stepOf(int row);

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  /// The whole table, cells between tabs.
  QString text() const;

 private:
  QString cell(int row, int column) const;
  QString zeroCell(int column) const;
  QString stepCell(const core::WhatIfStep& step, int column) const;
  QString hint(int row, int column) const;
  QString number(double value) const;
  QString difference(double value) const;
  QString closedText(std::size_t step) const;
  std::optional<core::Polarity> polarityOf(int row, int column) const;

  std::optional<core::WhatIf> m_whatIf;
  core::Zeroed m_zeroed = core::Zeroed::After;
  QPalette m_palette;
};

}  // namespace ui
