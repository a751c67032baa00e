// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/run/run_caution_page.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <algorithm>

#include "ui/run/run_faults.h"
#include "ui/run/run_start_page.h"
#include "ui/run/step_words.h"
#include "ui/run/tick_box.h"
#include "ui/theme.h"

namespace ui {

RunCautionPage::RunCautionPage(Session& session, QWidget* parent) : RunPage(parent), m_session(session) {
  auto* inner = new QWidget;
  auto* column = new QVBoxLayout(inner);
  column->setContentsMargins(0, 0, 0, 0);
  m_title = runLabel("cautionTitle", 2.2, true);
  m_check = runLabel("cautionCheck", 1.3);
  m_resume = runLabel("resumeNotice", 1.3, true);
  for (QLabel* label : {m_title, m_check, m_resume}) column->addWidget(label);
  column->addLayout(buildFaults());
  column->addSpacing(10);
  tick(column, "caution0", tr("Control and safety channels fed by this bridge are out of service"));
  tick(column, "caution1", tr("Nobody relies on this reading while shunts are switched"));
  m_excitation = tick(column, "caution2", {});
  tick(column, "caution3", tr("The ohmmeter is disconnected"));
  tick(column, "caution4", tr("Zero state: all shunts open, no jumper laid, no load on the structure"));
  m_accept =
      tick(column, "acceptFaults", tr("These faults are known and accepted by whoever is responsible"));
  column->addStretch();
  auto* scroll = new QScrollArea;
  scroll->setObjectName("cautionScroll");
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setWidgetResizable(true);
  scroll->setFocusPolicy(Qt::NoFocus);
  scroll->setWidget(inner);
  m_left = runLabel("cautionsLeft", 1.1);
  auto* page = new QVBoxLayout(this);
  page->addWidget(scroll, 1);
  page->addWidget(m_left);
  page->addLayout(buttons());
  refresh();
  count();
}

QLayout* RunCautionPage::buildFaults() {
  m_short = runLabel("cautionShort", 1.6, true);
  m_short->setText(
      tr("STOP: the jumpers as planned would short the excitation and can destroy the supply, the leads or "
         "the bridge. The wiring must be corrected first (Alt+6). The run cannot begin before that."));
  m_faultsTitle = runLabel("cautionFaultsTitle", 1.3, true);
  m_faults = runLabel("cautionFaults", 1.1);
  m_whereFaults = runLabel("cautionWhereFaults", 1.1);
  m_whereFaults->setText(tr("The pages Review (Alt+5) and Wiring (Alt+6) tell all of it."));
  auto* column = new QVBoxLayout;
  for (QLabel* label : {m_short, m_faultsTitle, m_faults, m_whereFaults}) column->addWidget(label);
  return column;
}

QCheckBox* RunCautionPage::tick(QBoxLayout* column, const char* name, const QString& text) {
  auto* box = withType(new TickBox(text), 1.5);
  box->setObjectName(name);
  m_ticks.push_back(box);
  column->addWidget(box);
  connect(box, &QCheckBox::toggled, this, &RunCautionPage::count);
  return box;
}

QLayout* RunCautionPage::buttons() {
  m_begin = runButton("beginRun", tr("Begin"), 1.5);
  auto* another = runButton("anotherCheck", tr("Another check…"), 1.1);
  auto* row = new QHBoxLayout;
  row->addWidget(m_begin);
  row->addWidget(another);
  row->addStretch();
  connect(m_begin, &QPushButton::clicked, this, &RunCautionPage::begun);
  connect(another, &QPushButton::clicked, this, &RunCautionPage::anotherWanted);
  return row;
}

void RunCautionPage::refresh() {
  showFaults();
  if (m_session.check()) showCheck();
}

/// What was accepted is not what is there now: other faults are to be accepted anew.
void RunCautionPage::showFaults() {
  const RunFaults faults = faultsOf(m_session);
  if (faults.sentences != m_known) m_accept->setChecked(false);
  m_known = faults.sentences;
  m_shorted = faults.shortsExcitation;
  m_faultsTitle->setText(tr("%n fault(s) of this plan are known", nullptr, int(m_known.size())));
  m_faults->setText(listOf(m_known));
  for (QWidget* widget : std::initializer_list<QWidget*>{m_faultsTitle, m_faults, m_whereFaults, m_accept})
    widget->setVisible(!m_known.isEmpty());
  m_short->setVisible(m_shorted);
  for (QLabel* label : {m_short, m_faultsTitle}) setTextColour(label, coloursFor(palette()).fail);
  count();
}

void RunCautionPage::showCheck() {
  const core::Channel& channel = *m_session.channel();
  const core::Check& check = *m_session.check();
  QStringList who;
  for (const std::string& part : {check.person, check.date})
    if (!part.empty()) who << toQString(part);
  m_check->setText(tr("%1, %2: %3 steps")
                       .arg(toQString(channel.name), toQString(check.name),
                            QString::number(channel.setup.sequence.size())) +
                   (who.isEmpty() ? QString() : " (" + who.join(", ") + ")"));
  const auto next = firstUnread(channel, check);
  const bool resumed = next && *next > 0;
  const bool begunBefore = std::any_of(check.readings.begin(), check.readings.end(),
                                       [](const auto& reading) { return reading.has_value(); });
  m_title->setText(begunBefore ? tr("Before going on") : tr("Before the first step"));
  m_resume->setVisible(resumed);
  if (resumed)
    m_resume->setText(tr("Resuming at step %1: the steps before it have readings.").arg(*next + 1));
  m_excitation->setText(
      tr("The excitation is as planned: %1").arg(excitationWords(channel.setup.instrument)));
}

void RunCautionPage::takeKeyboard() { m_ticks.front()->setFocus(); }

void RunCautionPage::untick() {
  for (QCheckBox* box : m_ticks) box->setChecked(false);
}

void RunCautionPage::count() {
  const auto left = std::count_if(m_ticks.begin(), m_ticks.end(), [this](QCheckBox* box) {
    return !box->isChecked() && (box != m_accept || !m_known.isEmpty());
  });
  m_begin->setEnabled(left == 0 && !m_shorted);
  m_left->setText(m_shorted   ? tr("Correct the wiring first: the jumpers would short the excitation.")
                  : left == 0 ? tr("All is seen to.")
                              : tr("%1 to tick before the run begins.").arg(left));
}

void RunCautionPage::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange && isVisible()) refresh();
}

}  // namespace ui
