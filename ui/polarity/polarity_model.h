// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>
#include <QStyledItemDelegate>

#include "ui/polarity/polarity_shown.h"
#include "ui/theme.h"

namespace ui {

/// The map as a matrix: a row and a column for each point. Both halves say the same, since it plays no part
/// which end of a shunt lies where; a point with itself is no cell.
class PolarityModel : public QAbstractTableModel {
  Q_OBJECT

 public:
  enum Role { StrengthRole = Qt::UserRole, PolarityRole, PresentRole };

  explicit PolarityModel(const PolarityShown& shown, QObject* parent = nullptr)
      : QAbstractTableModel(parent), m_shown(shown) {}

  /// To be called before and after the map that is shown becomes another with other points.
  void beginOther() { beginResetModel(); }
  void endOther() { endResetModel(); }
  /// The same points with other values.
  void follow();

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;

 private:
  const PolarityShown& m_shown;
};

/// Draws a cell in the colour of its sign, the stronger the larger; a frame around the one that is chosen, a
/// corner in the one where the shunt lies.
class PolarityDelegate : public QStyledItemDelegate {
  Q_OBJECT

 public:
  using QStyledItemDelegate::QStyledItemDelegate;
  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

/// The background of something with that sign and strength.
QColor tintOf(const Colours& colours, core::Polarity polarity, double strength);

}  // namespace ui
