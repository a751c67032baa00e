// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/run/guided_run.h"

#include <QApplication>
#include <QKeyEvent>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/run/run_caution_page.h"
#include "ui/run/run_start_page.h"
#include "ui/run/run_step_page.h"
#include "ui/run/run_stop_page.h"
#include "ui/run/run_strip.h"
#include "ui/run/run_summary_page.h"
#include "ui/run/wait_panel.h"
#include "ui/theme.h"

namespace ui {

GuidedRun::GuidedRun(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
  setObjectName("guidedRun");
  setAccessibleName(tr("Guided run"));
  m_strip = withType(new RunStrip, 1.0);
  m_strip->setObjectName("runStrip");
  m_pages = new QStackedWidget;
  m_pages->addWidget(m_start = new RunStartPage(session));
  m_pages->addWidget(m_cautions = new RunCautionPage(session));
  m_pages->addWidget(m_step = new RunStepPage(session));
  m_pages->addWidget(m_stop = new RunStopPage(session));
  m_pages->addWidget(m_summary = new RunSummaryPage(session));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(14, 10, 14, 10);
  column->addWidget(m_strip);
  column->addWidget(m_pages, 1);
  connectPages();
  connect(&session, &Session::changed, this, &GuidedRun::follow);
  startOver();
}

void GuidedRun::connectPages() {
  connect(m_strip, &RunStrip::stepChosen, this, [this](std::size_t step) { goToStep(step); });
  connect(m_start, &RunStartPage::chosen, this, &GuidedRun::startOver);
  connect(m_start, &RunStartPage::refused, this, &GuidedRun::refused);
  connect(m_cautions, &RunCautionPage::begun, this, &GuidedRun::begin);
  connect(m_cautions, &RunCautionPage::anotherWanted, this, [this] { open(m_start); });
  connect(m_step, &RunStepPage::stepWanted, this, [this](std::size_t step) { goToStep(step); });
  connect(m_step, &RunStepPage::summaryWanted, this, [this] {
    m_step->keepNote();
    open(m_summary);
  });
  connect(m_step, &RunStepPage::stopWanted, this, &GuidedRun::stop);
  connect(m_stop, &RunStopPage::goOnWanted, this, [this] { goToStep(m_step->step()); });
  connect(m_stop, &RunStopPage::left, this, [this] {
    startOver();
    emit finished();
  });
  connect(m_summary, &RunSummaryPage::stepWanted, this, [this](std::size_t step) { goToStep(step); });
  connect(m_summary, &RunSummaryPage::stopWanted, this, &GuidedRun::stop);
}

void GuidedRun::setClock(StepTimer::Clock clock) { m_step->wait().setClock(std::move(clock)); }

GuidedRun::Subject GuidedRun::subject() const {
  return {m_session.channel() ? m_session.channel()->name : std::string(), m_session.selection().check};
}

bool GuidedRun::canRun() const {
  return m_session.check() && !m_session.checkIsClosed() && !m_session.channel()->setup.sequence.empty();
}

bool GuidedRun::isRunning() const {
  const QWidget* page = m_pages->currentWidget();
  return page == m_step || page == m_stop || page == m_summary;
}

bool GuidedRun::isUnderWay() const { return m_begun && m_pages->currentWidget() == m_step; }

/// Nothing is worked out for a page that nobody sees.
void GuidedRun::follow() {
  if (!isVisible()) return;
  const bool lost = subject() != m_subject || !canRun();
  if (lost && m_pages->currentWidget() != m_start) return startOver();
  if (m_pages->currentWidget() == m_start && subject() != m_subject && canRun()) return startOver();
  // Steps may have gone by an edit or by undo.
  if (m_pages->currentWidget() == m_step && m_step->step() >= m_session.channel()->setup.sequence.size())
    return goToStep(m_session.channel()->setup.sequence.size() - 1);
  static_cast<RunPage*>(m_pages->currentWidget())->refresh();
  showStrip();
}

void GuidedRun::startOver() {
  m_subject = subject();
  m_begun = false;
  m_step->forgetAll();
  m_cautions->untick();
  open(canRun() ? static_cast<RunPage*>(m_cautions) : m_start);
}

void GuidedRun::begin() {
  m_begun = true;
  const auto next = firstUnread(*m_session.channel(), *m_session.check());
  if (!next) return open(m_summary);
  goToStep(*next, *next > 0
                      ? tr("Resuming at step %1. The zero may have moved since the steps before it: redo "
                           "them when in doubt.")
                            .arg(*next + 1)
                      : QString());
}

void GuidedRun::goToStep(std::size_t step, const QString& notice) {
  if (!m_begun) return open(m_cautions);
  const bool keyboard = isAncestorOf(QApplication::focusWidget());
  m_step->keepNote();
  m_pages->setCurrentWidget(m_step);
  m_step->showStep(step, notice);
  showStrip();
  if (keyboard) m_step->takeKeyboard();
}

void GuidedRun::stop() {
  m_step->keepNote();
  m_stop->setClosed(m_step->closed());
  // Whoever stops opens all; what comes after that starts from there.
  m_step->forgetClosed();
  open(m_stop);
}

void GuidedRun::open(RunPage* page) {
  const bool keyboard = hasFocus() || isAncestorOf(QApplication::focusWidget());
  m_pages->setCurrentWidget(page);
  page->refresh();
  showStrip();
  if (keyboard) page->takeKeyboard();
}

void GuidedRun::showStrip() {
  m_strip->setVisible(isRunning());
  if (!isRunning() || !m_session.check()) return;
  const auto& steps = m_session.channel()->setup.sequence;
  const auto& judged = m_session.evaluation()->checks[*m_session.selection().check].assessment.steps;
  const auto& readings = m_session.check()->readings;
  std::vector<RunStrip::Field> fields;
  for (std::size_t step = 0; step < steps.size(); ++step)
    fields.push_back(
        {toQString(steps[step].label), step < readings.size() && readings[step], judged[step].verdict});
  const bool onStep = m_pages->currentWidget() == m_step;
  m_strip->showSteps(std::move(fields), onStep ? std::optional(m_step->step()) : std::nullopt);
}

/// Keys that no field or button wanted: Space starts the wait, the page keys walk.
void GuidedRun::keyPressEvent(QKeyEvent* event) {
  const bool onStep = m_pages->currentWidget() == m_step;
  const std::size_t steps = canRun() ? m_session.channel()->setup.sequence.size() : 0;
  if (onStep && event->key() == Qt::Key_Space) return m_step->wait().start();
  if (onStep && event->key() == Qt::Key_PageDown && m_step->step() + 1 < steps)
    return goToStep(m_step->step() + 1);
  if (onStep && event->key() == Qt::Key_PageUp && m_step->step() > 0) return goToStep(m_step->step() - 1);
  QWidget::keyPressEvent(event);
}

/// Large type grows with the page, so that it is read from the bridge as well as from the chair.
void GuidedRun::fitType() {
  const double page = std::min(width() / 820.0, height() / 600.0);
  setTypeSize(this, font().pointSizeF() * std::clamp(page, 0.8, 2.2));
}

void GuidedRun::focusInEvent(QFocusEvent*) {
  static_cast<RunPage*>(m_pages->currentWidget())->takeKeyboard();
}

void GuidedRun::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  follow();
}

void GuidedRun::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  fitType();
}

}  // namespace ui
