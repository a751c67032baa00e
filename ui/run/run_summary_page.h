// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/run/run_page.h"
#include "ui/session.h"

namespace ui {

class ReportTableModel;
class SheetView;

/// What the run came to: the verdict of the check and its steps.
class RunSummaryPage : public RunPage {
  Q_OBJECT

 public:
  explicit RunSummaryPage(Session& session, QWidget* parent = nullptr);

  void refresh() override;
  void takeKeyboard() override;

 signals:
  void stepWanted(std::size_t step);
  void stopWanted();

 protected:
  void changeEvent(QEvent* event) override;

 private:
  Session& m_session;
  QLabel* m_verdict;
  QLabel* m_reason;
  ReportTableModel* m_model;
  SheetView* m_table;
  QLabel* m_hint;
  QPushButton* m_finish;
};

}  // namespace ui
