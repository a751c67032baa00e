// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/run/run_stop_page.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <algorithm>

#include "ui/access/focus_ring.h"
#include "ui/run/run_start_page.h"
#include "ui/run/step_words.h"
#include "ui/theme.h"

namespace ui {

RunStopPage::RunStopPage(Session& session, QWidget* parent) : RunPage(parent), m_session(session) {
  auto* column = new QVBoxLayout(this);
  auto* title = runLabel("stopTitle", 2.2, true);
  title->setText(tr("Stop safely"));
  m_actions = runLabel("stopActions", 1.5);
  m_actions->setAlignment(Qt::AlignTop);
  m_actions->setMargin(FocusRing::thickness_px);
  auto* scroll = new QScrollArea;
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setWidgetResizable(true);
  scroll->setWidget(m_actions);
  m_kept = runLabel("stopKept", 1.2);
  auto* goOn = runButton("goOn", tr("&Go on with the run"), 1.2);
  m_leave = runButton("leaveRun", tr("&Leave the run"), 1.2);
  auto* buttons = new QHBoxLayout;
  buttons->addWidget(goOn);
  buttons->addStretch();
  buttons->addWidget(m_leave);
  column->addWidget(title);
  column->addWidget(scroll, 1);
  column->addWidget(m_kept);
  column->addLayout(buttons);
  connect(goOn, &QPushButton::clicked, this, &RunStopPage::goOnWanted);
  connect(m_leave, &QPushButton::clicked, this, &RunStopPage::left);
}

void RunStopPage::refresh() {
  if (!m_session.check()) return;
  const core::Channel& channel = *m_session.channel();
  const auto& steps = channel.setup.sequence;
  const core::Step* closed = m_closed && *m_closed < steps.size() ? &steps[*m_closed] : nullptr;
  QStringList actions = actionsToOpenAll(channel.setup, closed);
  actions << tr("See that the reading is back at zero");
  actions << tr("The excitation may stay at %1; switch it off before anybody works on the wiring")
                 .arg(excitationWords(channel.setup.instrument));
  actions << tr(
      "Tell those who were told of the run: control and safety channels may come back into service");
  QStringList numbered;
  for (const QString& action : actions) numbered << QString("%1.  %2.").arg(numbered.size() + 1).arg(action);
  m_actions->setText(numbered.join("\n"));
  const auto next = firstUnread(channel, *m_session.check());
  const auto& readings = m_session.check()->readings;
  const auto read =
      std::count_if(readings.begin(), readings.end(), [](const auto& r) { return r.has_value(); });
  m_kept->setText(tr("%1 of %2 readings are in the document; save it.")
                      .arg(QString::number(read), QString::number(steps.size())) +
                  " " +
                  (next ? tr("The run resumes at step %1.").arg(*next + 1) : tr("All steps are read.")));
}

void RunStopPage::takeKeyboard() { m_leave->setFocus(); }

}  // namespace ui
