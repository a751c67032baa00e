// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "ui/run/run_page.h"
#include "ui/run/step_timer.h"
#include "ui/session.h"

class QBoxLayout;
class QLineEdit;

namespace ui {

class FieldEcho;
class WaitPanel;

/// One step of a run: what to do, what to expect, the wait, the reading and what it comes to. The reading is
/// in the document as soon as it is entered.
class RunStepPage : public RunPage {
  Q_OBJECT

 public:
  explicit RunStepPage(Session& session, QWidget* parent = nullptr);

  WaitPanel& wait() { return *m_wait; }
  std::size_t step() const { return m_step; }
  /// The step whose shunts are closed as far as is known; none: all open, or nothing is known.
  std::optional<std::size_t> closed() const { return m_closed; }
  /// Nothing is known of what is closed: a run begins, or goes on after it was stopped.
  void forgetClosed() { m_closed.reset(); }
  /// The same for another run; what was typed and not entered goes with it.
  void forgetAll();
  /// Goes to `step`; `notice` stands above it.
  void showStep(std::size_t step, const QString& notice = {});
  /// A note without a reading goes into the check's remark, so that it is not lost.
  void keepNote();

  void refresh() override;
  void takeKeyboard() override;

 signals:
  void stepWanted(std::size_t step);
  void summaryWanted();
  void stopWanted();

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void buildHead(QBoxLayout* column);
  QWidget* readingRow();
  void buildVerdict(QBoxLayout* column);
  QLayout* buttons();
  const std::optional<core::Measured>& measured() const;
  bool isRead() const { return measured().has_value() && !m_redoing; }
  void showHead();
  void showExpected();
  void showVerdict();
  void showSeries();
  void showNote();
  void clearReading();
  void prepareWait();
  void storeReading();
  void redo();
  void openNote();
  void takeNote();
  void goNext();

  Session& m_session;
  std::size_t m_step = 0;
  std::optional<std::size_t> m_closed;
  std::optional<std::size_t> m_from;  ///< what was closed when this step was come to
  bool m_redoing = false;
  QLabel *m_notice, *m_title, *m_label, *m_wiringFaults, *m_actions, *m_state, *m_polarity, *m_expected,
      *m_onDisplay;
  WaitPanel* m_wait;
  QLineEdit* m_reading;
  FieldEcho* m_readingEcho;
  QLabel *m_unit, *m_series, *m_verdict, *m_deviation, *m_reason;
  QPushButton* m_enter;
  QLineEdit* m_note;
  QWidget* m_readingRow;
  QWidget* m_noteRow;
  QPushButton *m_back, *m_redo, *m_next;
};

}  // namespace ui
