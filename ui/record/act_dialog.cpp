// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/record/act_dialog.h"

#include <QDialogButtonBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>

#include "ui/parts.h"
#include "ui/record/saving.h"
#include "ui/theme.h"

namespace ui {

ActDialog::ActDialog(const Question& question, QWidget* parent)
    : QDialog(parent),
      m_question(question),
      m_person(new QLineEdit(personName())),
      m_words(new QPlainTextEdit(question.words)),
      m_objection(plainLabel("actObjection")) {
  setObjectName("actDialog");
  setWindowTitle(question.title);
  m_person->setObjectName("actPerson");
  m_words->setObjectName("actWords");
  m_words->setTabChangesFocus(true);
  auto* caution = plainLabel("actCaution");
  caution->setText(question.caution);
  setTextColour(m_objection, coloursFor(palette()).fail);
  m_objection->hide();
  auto* personLabel = new QLabel(tr("&Name"));
  personLabel->setBuddy(m_person);
  auto* wordsLabel = new QLabel(question.wordsNeeded ? tr("&Remark") : tr("&Remark (may be empty)"));
  wordsLabel->setBuddy(m_words);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
  m_done = buttons->addButton(question.action, QDialogButtonBox::AcceptRole);
  m_done->setObjectName("actDone");
  m_done->setDefault(true);
  auto* grid = new QGridLayout(this);
  grid->addWidget(caution, 0, 0);
  grid->addWidget(personLabel, 1, 0);
  grid->addWidget(m_person, 2, 0);
  grid->addWidget(wordsLabel, 3, 0);
  grid->addWidget(m_words, 4, 0);
  grid->addWidget(m_objection, 5, 0);
  grid->addWidget(buttons, 6, 0);
  resize(460, 320);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  connect(m_person, &QLineEdit::textChanged, this, &ActDialog::refresh);
  connect(m_words, &QPlainTextEdit::textChanged, this, &ActDialog::refresh);
  refresh();
  (m_person->text().isEmpty() ? static_cast<QWidget*>(m_person) : m_words)->setFocus();
}

QString ActDialog::person() const { return m_person->text().trimmed(); }
QString ActDialog::words() const { return m_words->toPlainText().trimmed(); }

void ActDialog::accept() {
  const QString objection = m_question.objection ? m_question.objection(person(), words()) : QString();
  if (objection.isEmpty()) return QDialog::accept();
  m_objection->setText(objection);
  m_objection->show();
}

void ActDialog::refresh() {
  m_objection->hide();
  m_done->setEnabled(!person().isEmpty() && (!m_question.wordsNeeded || !words().isEmpty()));
}

}  // namespace ui
