// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTimer>
#include <QWidget>

#include "ui/run/step_timer.h"

class QCheckBox;
class QLabel;
class QProgressBar;
class QPushButton;

namespace ui {

/// The wait of a step in large figures: what is left of settling and holding, and a bar for both.
class WaitPanel : public QWidget {
  Q_OBJECT

 public:
  explicit WaitPanel(QWidget* parent = nullptr);

  /// For tests: another clock, which never goes back.
  void setClock(StepTimer::Clock clock) { m_timer.setClock(std::move(clock)); }
  /// Another step; its wait starts by itself when that is asked for.
  void prepare(core::Duration settle, core::Duration hold);
  /// Nothing to wait for: the step has its reading.
  void setOver();
  void start();
  StepTimer::Phase phase() const { return m_timer.phase(); }
  void takeKeyboard();

 signals:
  void started();
  /// Run down or skipped, once a wait.
  void over();

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void build();
  void skip();
  void showTime();

  StepTimer m_timer;
  QTimer m_tick;
  QLabel* m_left;
  QLabel* m_phase;
  QProgressBar* m_bar;
  QPushButton* m_start;
  QPushButton* m_skip;
  QCheckBox* m_auto;
  bool m_told = true;
};

}  // namespace ui
