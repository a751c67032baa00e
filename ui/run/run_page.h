// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "ui/parts.h"

class QLabel;
class QPushButton;

namespace ui {

/// One page of the guided run. Its type grows with the window: every widget that `withType` was told of is
/// set that many times larger than the type of the page.
class RunPage : public QWidget {
  Q_OBJECT

 public:
  using QWidget::QWidget;

  /// Says what the session holds now.
  virtual void refresh() = 0;
  /// The keyboard goes where the next thing is to be done.
  virtual void takeKeyboard() = 0;
};

/// Gives `widget` type of `scale` times the size of the page.
template <class W>
W* withType(W* widget, double scale, bool bold = false) {
  widget->setProperty("typeScale", scale);
  widget->setProperty("typeBold", bold);
  return widget;
}
/// Sets the type of all that is inside `page`; `size_pt` is that of plain words.
void setTypeSize(QWidget* page, double size_pt);

/// A label for plain text that breaks its lines and can be copied from.
QLabel* runLabel(const char* name, double scale, bool bold = false);
QPushButton* runButton(const char* name, const QString& text, double scale = 1);

}  // namespace ui
