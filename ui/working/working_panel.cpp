// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/working/working_panel.h"

#include <QApplication>
#include <QClipboard>
#include <QLabel>
#include <QToolButton>
#include <QVBoxLayout>

#include "ui/budget/budget_words.h"
#include "ui/parts.h"
#include "ui/theme.h"
#include "ui/working/working_text.h"

namespace ui {

WorkingPanel::WorkingPanel(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
  setObjectName("workingPanel");
  setAccessibleName(tr("Working"));
  m_message = plainLabel("workingMessage");
  m_text = new WorkingText;
  connect(m_text, &WorkingText::stepWalked, this, &WorkingPanel::walk);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(4, 4, 4, 4);
  column->setSpacing(4);
  column->addLayout(head());
  column->addWidget(m_message, 0, Qt::AlignTop);
  column->addWidget(m_text, 1);
  column->addStretch(0);  // the message stands at the top
  connect(&m_session, &Session::changed, this, &WorkingPanel::follow);
  refresh();
}

QLayout* WorkingPanel::head() {
  m_title = embolden(plainLabel("workingTitle"));
  m_before = toolButton("workingBefore", tr("Step before"), tr("Shows the step before (left arrow key)"));
  m_after = toolButton("workingAfter", tr("Step after"), tr("Shows the step after (right arrow key)"));
  m_copy = toolButton("copyWorking", tr("Copy as text"), tr("Copies the whole working of this step"));
  connect(m_before, &QToolButton::clicked, this, [this] { walk(-1); });
  connect(m_after, &QToolButton::clicked, this, [this] { walk(1); });
  connect(m_copy, &QToolButton::clicked, this, [this] { QApplication::clipboard()->setText(text()); });
  auto* line = new QHBoxLayout;
  line->addWidget(m_title, 1);
  for (QToolButton* button : {m_before, m_after, m_copy}) line->addWidget(button, 0, Qt::AlignTop);
  return line;
}

QString WorkingPanel::whatIsMissing() const {
  if (!m_session.channel()) return tr("No channel yet. Add a channel to see its working here.");
  if (m_session.shownSetup().sequence.empty())
    return tr("The channel has no steps yet. Add steps to its sequence.");
  const auto step = m_session.selection().step;
  if (!step)
    return tr(
        "No step is chosen. Choose one in the Sequence, or with the buttons above, to see how its "
        "numbers come about.");
  if (*step >= m_session.shownSetup().sequence.size())
    return tr(
        "The closed check does not have this step: it keeps the sequence it was judged by. Choose an "
        "earlier step, or show the plan alone.");
  return {};
}

core::Result<std::vector<core::WorkingPart>> WorkingPanel::working() const {
  const Selection& chosen = m_session.selection();
  return core::workingOf(*m_session.channel(), *m_session.evaluation(), chosen.check, *chosen.step);
}

QString WorkingPanel::title() const {
  if (!m_session.channel()) return {};
  const QString name = toQString(m_session.channel()->name);
  const core::Check* check = m_session.check();
  const QString of = check ? toQString(check->name) : tr("plan");
  if (!whatIsMissing().isEmpty()) return name + ", " + of;
  return tr("%1, %2, step %3").arg(name, of, stepTitle(m_session.shownSetup(), *m_session.selection().step));
}

QString WorkingPanel::text() const {
  if (const QString missing = whatIsMissing(); !missing.isEmpty()) return missing;
  const auto parts = working();
  if (!parts) return title() + "\n\n" + toText(parts.error()) + "\n";
  QString text = title() + "\n\n" + toQString(core::workingText(*parts));
  for (const core::WorkingPart& part : *parts)
    if (const QString letters = lettersOf(part); !letters.isEmpty()) text += "\n" + letters + "\n";
  return text;
}

void WorkingPanel::follow() {
  if (isVisible()) refresh();
}

void WorkingPanel::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
}

void WorkingPanel::refresh() {
  QString message = whatIsMissing();
  if (message.isEmpty()) {
    auto parts = working();
    if (parts)
      m_text->show(*std::move(parts));
    else
      message = tr("Cannot be predicted. %1").arg(toText(parts.error()));
  }
  const std::size_t steps = m_session.channel() ? m_session.shownSetup().sequence.size() : 0;
  const auto step = m_session.selection().step;
  m_title->setText(title());
  m_message->setText(message);
  m_message->setVisible(!message.isEmpty());
  m_text->setVisible(message.isEmpty());
  m_copy->setEnabled(message.isEmpty());
  m_before->setEnabled(steps > 0 && (!step || *step > 0));
  m_after->setEnabled(steps > 0 && (!step || *step + 1 < steps));
}

void WorkingPanel::walk(int direction) {
  if (!m_session.channel() || m_session.shownSetup().sequence.empty()) return;
  const std::size_t last = m_session.shownSetup().sequence.size() - 1;
  const auto step = m_session.selection().step;
  if (!step) return m_session.selectStep(direction > 0 ? 0 : last);
  if (direction < 0 && *step > 0) return m_session.selectStep(std::min(*step - 1, last));
  if (direction > 0 && *step < last) m_session.selectStep(*step + 1);
}

}  // namespace ui
