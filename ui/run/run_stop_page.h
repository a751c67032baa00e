// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/run/run_page.h"
#include "ui/session.h"

namespace ui {

/// What is to be done so that a run can be left as it is.
class RunStopPage : public RunPage {
  Q_OBJECT

 public:
  explicit RunStopPage(Session& session, QWidget* parent = nullptr);

  /// The step whose shunts are closed as far as is known.
  void setClosed(std::optional<std::size_t> step) { m_closed = step; }
  void refresh() override;
  void takeKeyboard() override;

 signals:
  void goOnWanted();
  void left();

 private:
  Session& m_session;
  std::optional<std::size_t> m_closed;
  QLabel* m_actions;
  QLabel* m_kept;
  QPushButton* m_leave;
};

}  // namespace ui
