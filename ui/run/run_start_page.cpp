// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/run/run_start_page.h"

#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/document/edits.h"
#include "core/units/day_words.h"
#include "ui/help/next_steps.h"
#include "ui/theme.h"

namespace ui {

std::optional<std::size_t> firstUnread(const core::Channel& channel, const core::Check& check) {
  for (std::size_t step = 0; step < channel.setup.sequence.size(); ++step)
    if (step >= check.readings.size() || !check.readings[step]) return step;
  return std::nullopt;
}

RunStartPage::RunStartPage(Session& session, QWidget* parent) : RunPage(parent), m_session(session) {
  auto* column = new QVBoxLayout(this);
  auto* title = runLabel("runStartTitle", 2.2, true);
  title->setText(tr("Guided run"));
  m_sentence = runLabel("runStartSentence", 1.3);
  m_open = new QVBoxLayout;
  column->addWidget(title);
  column->addWidget(m_sentence);
  column->addWidget(new NextSteps(session, NextSteps::Need::Steps));
  column->addLayout(m_open);
  column->addWidget(newCheck());
  column->addStretch();
}

QWidget* RunStartPage::newCheck() {
  m_form = new QWidget;
  auto* form = new QFormLayout(m_form);
  form->setContentsMargins(0, 12, 0, 0);
  form->setFieldGrowthPolicy(QFormLayout::FieldsStayAtSizeHint);
  const auto line = [&](const char* name, const QString& label, const QString& example) {
    auto* edit = withType(new QLineEdit, 1.3);
    edit->setObjectName(name);
    edit->setAccessibleName(label);
    edit->setPlaceholderText(example);
    edit->setMinimumWidth(320);
    auto* caption = withType(new QLabel(label), 1.3);
    caption->setBuddy(edit);
    form->addRow(caption, edit);
    connect(edit, &QLineEdit::returnPressed, this, &RunStartPage::startCheck);
    return edit;
  };
  m_name = line("runCheckName", tr("Name of the check"), tr("pre-test"));
  m_person = line("runPerson", tr("Made by"), {});
  m_date = line("runDate", tr("Date"), tr("2026-05-31"));
  m_start = runButton("startRunCheck", tr("Start this check"), 1.3);
  form->addRow(QString(), m_start);
  connect(m_start, &QPushButton::clicked, this, &RunStartPage::startCheck);
  return m_form;
}

QString RunStartPage::whatIsWrong() const {
  const core::Channel* channel = m_session.channel();
  if (!channel) return tr("There is no channel yet: add a channel first.");
  if (channel->setup.sequence.empty())
    return tr("%1 has no steps yet: lay out its sequence first.").arg(toQString(channel->name));
  return {};
}

void RunStartPage::refresh() {
  const QString wrong = whatIsWrong();
  m_form->setVisible(wrong.isEmpty());
  offerOpenChecks();
  if (!wrong.isEmpty()) return m_sentence->setText(wrong);
  const core::Channel& channel = *m_session.channel();
  const QString steps =
      tr("%1 has %2 steps.").arg(toQString(channel.name), QString::number(channel.setup.sequence.size()));
  const QString closed =
      m_session.checkIsClosed()
          ? tr("The check %1 is closed and keeps its readings: it cannot be run. Start a new one.")
                .arg(toQString(m_session.check()->name))
          : tr("Start a check to run through them.");
  m_sentence->setText(steps + " " + closed);
  if (!m_name->isModified()) m_name->setText(toQString(core::usualCheckName(channel)));
  if (!m_person->isModified()) m_person->setText(toQString(m_session.document().person));
  if (!m_date->isModified()) m_date->setText(toQString(core::dateText(m_session.today())));
}

void RunStartPage::offerOpenChecks() {
  while (QLayoutItem* item = m_open->takeAt(0)) {
    if (item->widget()) item->widget()->deleteLater();
    delete item;
  }
  if (!whatIsWrong().isEmpty()) return;
  const core::Channel& channel = *m_session.channel();
  for (std::size_t check = 0; check < channel.checks.size(); ++check) {
    if (channel.checks[check].closedWith) continue;
    const auto step = firstUnread(channel, channel.checks[check]);
    QString text = toQString(channel.checks[check].name).replace('&', "&&");
    text = step ? tr("Go on with %1 at step %2").arg(text, QString::number(*step + 1))
                : tr("Look at %1, all steps are read").arg(text);
    auto* button = runButton("openCheck", text, 1.3);
    button->setObjectName(QString("openCheck%1").arg(check));
    button->setFont(m_start->font());
    connect(button, &QPushButton::clicked, this, [this, check] {
      m_session.selectCheck(check);
      emit chosen();
    });
    m_open->addWidget(button, 0, Qt::AlignLeft);
  }
}

void RunStartPage::takeKeyboard() {
  if (m_form->isVisible()) m_name->setFocus();
}

void RunStartPage::startCheck() {
  if (!whatIsWrong().isEmpty()) return emit refused(whatIsWrong());
  const auto day = core::dayFromWords(m_date->text().toStdString());
  if (!day) {
    m_date->setFocus();
    return emit refused(toText(day.error()));
  }
  core::Check check;
  check.name = m_name->text().trimmed().toStdString();
  if (check.name.empty()) check.name = core::usualCheckName(*m_session.channel());
  check.person = m_person->text().trimmed().toStdString();
  check.date = *day ? core::dateText(**day) : std::string();
  m_session.editChannel(tr("Add check"), core::withCheckAdded(*m_session.channel(), std::move(check)));
  for (QLineEdit* edit : {m_name, m_person, m_date}) edit->setModified(false);
  m_session.selectCheck(m_session.channel()->checks.size() - 1);
  emit chosen();
}

}  // namespace ui
