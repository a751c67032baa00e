// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStyledItemDelegate>

namespace ui {

/// Draws a share as a bar with its number beside it. Bars of all rows have one zero and one scale;
/// negative ones run to the left and are hatched.
class ShareDelegate : public QStyledItemDelegate {
  Q_OBJECT

 public:
  using QStyledItemDelegate::QStyledItemDelegate;

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

  /// The bar of `share` in `area`, empty for a share too small to see.
  static QRectF barIn(const QRectF& area, double share, double lowest, double highest);
};

}  // namespace ui
