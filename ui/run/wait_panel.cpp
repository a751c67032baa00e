// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/run/wait_panel.h"

#include <QEvent>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <cmath>

#include "ui/quantity_edit.h"
#include "ui/run/run_page.h"
#include "ui/run/tick_box.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr int tick_ms = 50;
constexpr int wholeBar = 1000;

/// Tenths while they can be followed; rounded up, so that it says zero only when it is over.
QString secondsText(double seconds) {
  return seconds < 100 ? fixedNumberText(std::ceil(10 * seconds - 1e-9) / 10, 1)
                       : fixedNumberText(std::ceil(seconds), 0);
}

}  // namespace

WaitPanel::WaitPanel(QWidget* parent) : QWidget(parent) {
  setObjectName("waitPanel");
  build();
  m_tick.setInterval(tick_ms);
  connect(&m_tick, &QTimer::timeout, this, &WaitPanel::showTime);
  connect(m_start, &QPushButton::clicked, this, &WaitPanel::start);
  connect(m_skip, &QPushButton::clicked, this, &WaitPanel::skip);
  setOver();
}

void WaitPanel::build() {
  m_left = withType(new QLabel, 4.0, true);
  m_left->setObjectName("countDown");
  m_left->setAccessibleName(tr("Time left"));
  m_left->setTextFormat(Qt::PlainText);
  m_phase = runLabel("waitPhase", 1.3);
  m_bar = new QProgressBar;
  m_bar->setObjectName("waitBar");
  m_bar->setAccessibleName(tr("Wait"));
  m_bar->setRange(0, wholeBar);
  m_bar->setTextVisible(false);
  m_start = runButton("startWait", tr("Start the &wait (Space)"), 1.2);
  m_skip = runButton("skipWait", tr("Sk&ip wait"), 1.2);
  m_auto = withType(new TickBox(tr("Start by itself at the next steps")), 1.0);
  m_auto->setObjectName("autoStart");
  auto* buttons = new QHBoxLayout;
  buttons->addWidget(m_start);
  buttons->addWidget(m_skip);
  buttons->addWidget(m_auto);
  buttons->addStretch();
  auto* grid = new QGridLayout(this);
  grid->setContentsMargins(0, 4, 0, 4);
  grid->addWidget(m_left, 0, 0, 3, 1, Qt::AlignRight | Qt::AlignVCenter);
  grid->addWidget(m_phase, 0, 1);
  grid->addWidget(m_bar, 1, 1);
  grid->addLayout(buttons, 2, 1);
  grid->setColumnStretch(1, 1);
}

void WaitPanel::prepare(core::Duration settle, core::Duration hold) {
  m_timer.prepare(settle, hold);
  m_told = false;
  m_auto->isChecked() ? start() : showTime();
}

void WaitPanel::setOver() {
  m_timer.skip();
  m_told = true;
  showTime();
}

void WaitPanel::start() {
  if (m_told || m_timer.isRunning()) return;
  m_timer.start();
  emit started();
  showTime();
}

void WaitPanel::skip() {
  if (m_told) return;
  m_timer.skip();
  emit started();
  showTime();
}

void WaitPanel::takeKeyboard() { (m_timer.isRunning() ? m_skip : m_start)->setFocus(); }

void WaitPanel::showTime() {
  using Phase = StepTimer::Phase;
  const Phase phase = m_timer.phase();
  m_left->setText(tr("%1 s").arg(secondsText(m_timer.left().base())));
  // Room for the longest time, so that the bar does not move while figures run down.
  m_left->setMinimumWidth(m_left->fontMetrics().horizontalAdvance("000.0 s"));
  m_bar->setValue(static_cast<int>(wholeBar * m_timer.shareDone()));
  const QString words = phase == Phase::Ready      ? tr("Ready: do the above, then start the wait")
                        : phase == Phase::Settling ? tr("Settling: do not touch anything")
                        : phase == Phase::Holding  ? tr("Holding: watch the reading")
                                                   : tr("Read now");
  if (m_phase->text() != words) m_phase->setText(words);
  const bool running = m_timer.isRunning();
  running ? m_tick.start() : m_tick.stop();
  // The keyboard stays with the button that can be pressed next, not with whatever comes after it.
  const bool keyboard = m_start->hasFocus() || m_skip->hasFocus();
  m_skip->setEnabled(phase != Phase::Over);
  if (keyboard && running) m_skip->setFocus();
  m_start->setEnabled(phase == Phase::Ready);
  if (phase != Phase::Over || m_told) return;
  m_told = true;
  emit over();
}

void WaitPanel::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) showTime();
}

}  // namespace ui
