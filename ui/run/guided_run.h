// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <optional>
#include <string>
#include <utility>

#include "ui/run/step_timer.h"
#include "ui/session.h"

class QStackedWidget;

namespace ui {

class RunCautionPage;
class RunPage;
class RunStartPage;
class RunStepPage;
class RunStopPage;
class RunStrip;
class RunSummaryPage;

/// Leads through the chosen check of the chosen channel step by step: what to see to before, what to close,
/// how long to wait, what to read, what it comes to. All that is entered is in the document at once, so that
/// a run goes on at the first step without a reading whenever it was stopped.
class GuidedRun : public QWidget {
  Q_OBJECT

 public:
  explicit GuidedRun(Session& session, QWidget* parent = nullptr);

  /// A step is on view: shunts may be closed, and the run has neither ended nor been stopped.
  bool isUnderWay() const;
  /// For tests: another clock for the waits, in milliseconds, which never goes back.
  void setClock(StepTimer::Clock clock);

 signals:
  void refused(const QString& reason);
  /// The user is done, or has stopped: show the views again.
  void finished();

 protected:
  void focusInEvent(QFocusEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void showEvent(QShowEvent* event) override;

 private:
  /// What is run: another one ends the run on view.
  using Subject = std::pair<std::string, std::optional<std::size_t>>;

  void connectPages();
  Subject subject() const;
  bool canRun() const;
  bool isRunning() const;
  void follow();
  void startOver();
  void begin();
  void goToStep(std::size_t step, const QString& notice = {});
  void stop();
  void open(RunPage* page);
  void showStrip();
  void fitType();

  Session& m_session;
  Subject m_subject;
  bool m_begun = false;  ///< the cautions are ticked
  RunStrip* m_strip;
  QStackedWidget* m_pages;
  RunStartPage* m_start;
  RunCautionPage* m_cautions;
  RunStepPage* m_step;
  RunStopPage* m_stop;
  RunSummaryPage* m_summary;
};

}  // namespace ui
