// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "ui/run/run_page.h"
#include "ui/session.h"

class QCheckBox;
class QVBoxLayout;

namespace ui {

/// What must be seen to before a shunt is closed; all of it is to be ticked.
class RunCautionPage : public RunPage {
  Q_OBJECT

 public:
  explicit RunCautionPage(Session& session, QWidget* parent = nullptr);

  void refresh() override;
  void takeKeyboard() override;
  /// Each run is ticked for itself.
  void untick();

 signals:
  void begun();
  void anotherWanted();

 private:
  void count();

  Session& m_session;
  QLabel* m_check;
  QLabel* m_resume;
  std::vector<QCheckBox*> m_ticks;
  QCheckBox* m_excitation;
  QLabel* m_left;
  QPushButton* m_begin;
};

}  // namespace ui
