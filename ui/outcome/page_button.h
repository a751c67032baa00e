// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QToolButton>

namespace ui {

/// A button for one of several pages. That of the page on view is bold and underlined: how far a style alone
/// sinks a pressed button is not to be seen in dark colours.
class PageButton : public QToolButton {
  Q_OBJECT

 public:
  PageButton(const QString& name, const QString& text, const QString& tip);

  /// For bold letters, so that nothing moves when another page is chosen.
  QSize sizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
};

}  // namespace ui
