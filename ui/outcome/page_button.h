// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QToolButton>

namespace ui {

/// A button for one of several pages. That of the page on view is bold and underlined: how far a style alone
/// sinks a pressed button is not to be seen in dark colours. Where room is short its frame closes in on the
/// name, and where that is not enough the name is cut with an ellipsis, never that of the page on view.
class PageButton : public QToolButton {
  Q_OBJECT

 public:
  PageButton(const QString& name, const QString& text, const QString& tip);

  /// For bold letters, so that nothing moves when another page is chosen.
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  QSize sizeFor(const QString& text) const;
  void fitText();

  QString m_name;  ///< in full
};

}  // namespace ui
