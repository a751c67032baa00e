// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCheckBox>

namespace ui {

/// A check box that is as large as its type and has an outline on dark backgrounds too; styles draw theirs in
/// one size and nearly black.
class TickBox : public QCheckBox {
  Q_OBJECT

 public:
  using QCheckBox::QCheckBox;
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override { return sizeHint(); }

 protected:
  void paintEvent(QPaintEvent* event) override;
  bool hitButton(const QPoint& position) const override { return rect().contains(position); }

 private:
  int side() const { return fontMetrics().height() * 4 / 5; }
};

}  // namespace ui
