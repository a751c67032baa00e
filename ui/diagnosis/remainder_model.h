// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>
#include <QColor>
#include <QStyledItemDelegate>
#include <vector>

#include "core/report/remainders.h"

namespace ui {

/// What a cause leaves of each step's deviation, in numbers and as a pair of bars.
class RemainderModel : public QAbstractTableModel {
  Q_OBJECT

 public:
  enum Column { Step, Before, After, Picture, ColumnCount };
  static constexpr int remainderRole =
      Qt::UserRole;  ///< QPointF: before and after, as shares of the greatest

  using QAbstractTableModel::QAbstractTableModel;

  /// `names` are of the steps of the sequence.
  void show(std::vector<core::Remainder> remainders, QStringList names, const QString& unit);
  const std::vector<core::Remainder>& remainders() const { return m_remainders; }
  /// The row of step `step`, -1 without.
  int rowOf(std::size_t step) const;

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  std::vector<core::Remainder> m_remainders;
  QStringList m_names;
  QString m_unit;
  double m_greatest = 0;
  int m_decimals = 1;
};

/// Draws the two bars of a step from a middle line: the deviation as an outline, what is left of it filled.
class RemainderDelegate : public QStyledItemDelegate {
 public:
  using QStyledItemDelegate::QStyledItemDelegate;
  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

}  // namespace ui
