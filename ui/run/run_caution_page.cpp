// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/run/run_caution_page.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <algorithm>

#include "ui/run/run_start_page.h"
#include "ui/run/step_words.h"
#include "ui/run/tick_box.h"
#include "ui/theme.h"

namespace ui {

RunCautionPage::RunCautionPage(Session& session, QWidget* parent) : RunPage(parent), m_session(session) {
  auto* column = new QVBoxLayout(this);
  auto* title = runLabel("cautionTitle", 2.2, true);
  title->setText(tr("Before the first step"));
  m_check = runLabel("cautionCheck", 1.3);
  m_resume = runLabel("resumeNotice", 1.3, true);
  for (QLabel* label : {title, m_check, m_resume}) column->addWidget(label);
  column->addSpacing(10);
  const auto tick = [&](const QString& text) {
    auto* box = withType(new TickBox(text), 1.5);
    box->setObjectName(QString("caution%1").arg(m_ticks.size()));
    m_ticks.push_back(box);
    column->addWidget(box);
    connect(box, &QCheckBox::toggled, this, &RunCautionPage::count);
    return box;
  };
  tick(tr("Control and safety channels fed by this bridge are out of service"));
  tick(tr("Nobody relies on this reading while shunts are switched"));
  m_excitation = tick({});
  tick(tr("The ohmmeter is disconnected"));
  tick(tr("Zero state: all shunts open, no jumper laid, no load on the structure"));
  m_left = runLabel("cautionsLeft", 1.1);
  m_begin = runButton("beginRun", tr("Begin"), 1.5);
  auto* another = runButton("anotherCheck", tr("Another check…"), 1.1);
  auto* buttons = new QHBoxLayout;
  buttons->addWidget(m_begin);
  buttons->addWidget(another);
  buttons->addStretch();
  column->addSpacing(10);
  column->addWidget(m_left);
  column->addLayout(buttons);
  column->addStretch();
  connect(m_begin, &QPushButton::clicked, this, &RunCautionPage::begun);
  connect(another, &QPushButton::clicked, this, &RunCautionPage::anotherWanted);
  count();
}

void RunCautionPage::refresh() {
  if (!m_session.check()) return;
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
  const auto left =
      std::count_if(m_ticks.begin(), m_ticks.end(), [](auto* box) { return !box->isChecked(); });
  m_begin->setEnabled(left == 0);
  m_left->setText(left == 0 ? tr("All is seen to.") : tr("%1 to tick before the run begins.").arg(left));
}

}  // namespace ui
