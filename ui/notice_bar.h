// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>

class QLabel;
class QScrollArea;
class QStatusBar;
class QToolButton;

namespace ui {

/// Says what was refused or went wrong, in a status bar that keeps room for one line of it: it lies over
/// nothing, and nothing moves away under the pointer when it comes. However much there is to say it takes a
/// quarter of the window at most; the rest is scrolled to. Stays until it is closed or told nothing.
class NoticeBar : public QFrame {
  Q_OBJECT

 public:
  explicit NoticeBar(QStatusBar* bar);

  /// To screen readers too. An empty sentence closes the bar.
  void tell(const QString& sentence);

 protected:
  bool event(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  void fit();

  QScrollArea* m_scroll;
  QLabel* m_text;
  QToolButton* m_close;
};

}  // namespace ui
