// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFutureWatcher>
#include <QThreadPool>

#include "ui/safety/recovery_file.h"
#include "ui/safety/safety_frame.h"

class QGridLayout;
class QLabel;
class QScrollArea;

namespace ui {

/// Offers the work that a program which ended badly has left, each with what can be done about it; forces
/// nothing, and is not there while there is nothing to offer.
class RecoveryBar : public SafetyFrame {
  Q_OBJECT

 public:
  explicit RecoveryBar(QWidget* parent = nullptr);
  ~RecoveryBar() override;

  /// Looks on a worker and shows what is found.
  void look();
  /// No longer offered: taken up by the window. Its lock goes on with the window's copy.
  void takeOut(const QString& file);

 signals:
  /// The window takes it up, and then calls takeOut.
  void recoverWanted(const ui::LeftOver& work);
  /// Nothing was left, or all of it is seen to.
  void settled();

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  void fitHeight();
  void offer(std::vector<LeftOver> found);
  void rebuild();
  void addRow(QGridLayout* rows, int row, const LeftOver& work);
  void discard(const QString& file);
  const LeftOver* workIn(const QString& file) const;

  std::vector<LeftOver> m_found;
  QLabel* m_heading;
  QScrollArea* m_scroll;
  QFutureWatcher<std::vector<LeftOver>> m_looking;
  QThreadPool m_thread;
};

}  // namespace ui
