// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStackedWidget>

namespace ui {

/// Pages of which one is seen. They take the height that they get and scroll where it is too low: asked for
/// the height that suits a width, all of them, seen or not, would break all their paragraphs into lines at
/// each edit.
class PageStack : public QStackedWidget {
 public:
  using QStackedWidget::QStackedWidget;

  bool hasHeightForWidth() const override { return false; }
  QSize sizeHint() const override { return currentWidget() ? currentWidget()->sizeHint() : QSize(); }
};

}  // namespace ui
