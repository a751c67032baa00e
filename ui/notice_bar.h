// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>

class QLabel;
class QScrollArea;
class QToolButton;

namespace ui {

/// Says what was refused or went wrong, over the foot of `host`, so that nothing moves away under the pointer
/// when it comes. However much there is to say it covers a quarter of the host at most; the rest is scrolled
/// to. Stays until it is closed or told nothing.
class NoticeBar : public QFrame {
  Q_OBJECT

 public:
  explicit NoticeBar(QWidget* host);

  /// To screen readers too. An empty sentence closes the bar.
  void tell(const QString& sentence);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void place();
  void applyColours();

  QScrollArea* m_scroll;
  QLabel* m_text;
  QToolButton* m_close;
};

}  // namespace ui
