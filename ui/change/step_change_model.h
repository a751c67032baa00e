// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>
#include <memory>

#include "ui/change/shown_change.h"

namespace ui {

/// What the difference strip draws, in numbers: a row a step.
class StepChangeModel : public QAbstractTableModel {
  Q_OBJECT

 public:
  enum Column {
    Step,
    Words,
    Before,
    After,
    Moved,
    Expanded,
    Margin,
    Different,
    Beyond,
    EnNumber,
    ColumnCount
  };

  using QAbstractTableModel::QAbstractTableModel;

  /// None: no rows.
  void show(std::shared_ptr<const ShownChange> shown);

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  QString text(std::size_t step, int column) const;
  QString ofDifference(const core::Difference& moved, int column) const;

  std::shared_ptr<const ShownChange> m_shown;
  int m_decimals = 1;
};

}  // namespace ui
