// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "ui/run/run_page.h"
#include "ui/session.h"

class QBoxLayout;
class QCheckBox;
class QLayout;

namespace ui {

/// What must be seen to before a shunt is closed; all of it is to be ticked. Faults that the review knows of
/// stand there too and are to be accepted; with jumpers that short the excitation nothing is begun.
class RunCautionPage : public RunPage {
  Q_OBJECT

 public:
  explicit RunCautionPage(Session& session, QWidget* parent = nullptr);

  void refresh() final;
  void takeKeyboard() override;
  /// Each run is ticked for itself.
  void untick();

 signals:
  void begun();
  void anotherWanted();

 protected:
  void changeEvent(QEvent* event) override;

 private:
  QLayout* buildFaults();
  QCheckBox* tick(QBoxLayout* column, const char* name, const QString& text);
  QLayout* buttons();
  void showCheck();
  void showFaults();
  void count();

  Session& m_session;
  QLabel *m_title, *m_check, *m_resume;
  QLabel *m_short, *m_faultsTitle, *m_faults, *m_whereFaults;
  std::vector<QCheckBox*> m_ticks;
  QCheckBox *m_excitation, *m_accept;
  QStringList m_known;     ///< faults that are shown
  bool m_shorted = false;  ///< the excitation would be
  QLabel* m_left;
  QPushButton* m_begin;
};

}  // namespace ui
