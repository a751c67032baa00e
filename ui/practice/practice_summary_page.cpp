// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/practice/practice_summary_page.h"

#include <QHeaderView>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/parts.h"
#include "ui/practice/practice_words.h"
#include "ui/practice/sheets_button.h"
#include "ui/theme.h"

namespace ui {

PracticeSummaryPage::PracticeSummaryPage(QWidget* parent) : QWidget(parent) {
  setObjectName("practiceSummary");
  m_title = embolden(plainLabel("summaryTitle"));
  QFont font = m_title->font();
  font.setPointSizeF(font.pointSizeF() * 1.6);
  m_title->setFont(font);
  m_words = plainLabel("summaryWords");
  m_kinds = new QTableWidget(0, 2);
  m_kinds->setObjectName("summaryKinds");
  m_kinds->setAccessibleName(tr("Right answers by kind"));
  m_kinds->setEditTriggers(QAbstractItemView::NoEditTriggers);
  m_kinds->setTabKeyNavigation(false);
  m_kinds->verticalHeader()->hide();
  m_kinds->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
  m_questions = new QListWidget;
  m_questions->setObjectName("summaryQuestions");
  m_questions->setAccessibleName(tr("Questions, right and wrong"));
  const auto button = [](const char* name, const QString& text) {
    auto* made = new QPushButton(text);
    made->setObjectName(name);
    made->setAutoDefault(true);
    return made;
  };
  m_look = button("summaryLook", tr("&Look at it again"));
  m_repeat = button("summaryRepeat", tr("Repeat the wron&g ones"));
  m_again = button("summaryAgain", tr("The same set &once more"));
  m_start = button("summaryStart", tr("&Another set"));
  auto* sheets = new SheetsButton;
  auto* lists = new QHBoxLayout;
  lists->addWidget(m_kinds, 2);
  lists->addWidget(m_questions, 3);
  auto* buttons = new QVBoxLayout;
  for (QPushButton* each : std::initializer_list<QPushButton*>{m_look, m_repeat, m_again, m_start, sheets})
    buttons->addWidget(each);
  buttons->addStretch();
  lists->addLayout(buttons);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->addWidget(m_title);
  all->addWidget(m_words);
  all->addLayout(lists, 1);
  connect(m_look, &QPushButton::clicked, this, &PracticeSummaryPage::look);
  connect(m_questions, &QListWidget::itemActivated, this, &PracticeSummaryPage::look);
  connect(m_repeat, &QPushButton::clicked, this, &PracticeSummaryPage::repeatWanted);
  connect(m_again, &QPushButton::clicked, this, &PracticeSummaryPage::againWanted);
  connect(m_start, &QPushButton::clicked, this, &PracticeSummaryPage::startWanted);
  connect(sheets, &SheetsButton::sheetsWanted, this, &PracticeSummaryPage::sheetsWanted);
}

void PracticeSummaryPage::show(const PracticeRun& run) {
  const std::size_t right = run.rightOnes(), all = run.given.size(), wrong = all - right;
  m_title->setText(tr("%1 of %2 right").arg(right).arg(all));
  QString words = tr("%1 · seed %2.").arg(difficultyName(run.set.difficulty)).arg(run.set.seed) + " ";
  words += wrong == 0 ? tr("None was wrong.") : tr("%1 to look at again.").arg(wrong);
  if (run.isRepeat) words += " " + tr("Answers to repeated questions do not count for the score.");
  m_words->setText(words);
  showKinds(run);
  showQuestions(run);
  m_repeat->setEnabled(wrong > 0);
}

void PracticeSummaryPage::showKinds(const PracticeRun& run) {
  m_kinds->setRowCount(0);
  m_kinds->setHorizontalHeaderLabels({tr("Asked"), difficultyName(run.set.difficulty)});
  for (const core::QuestionKind kind : core::allQuestionKinds()) {
    int asked = 0, right = 0;
    for (std::size_t k = 0; k < run.given.size(); ++k) {
      if (kindOf(run.set, run.order[k]) != kind) continue;
      ++asked;
      right += run.given[k].right;
    }
    if (asked == 0) continue;
    const int row = m_kinds->rowCount();
    m_kinds->insertRow(row);
    m_kinds->setItem(row, 0, new QTableWidgetItem(kindName(kind)));
    m_kinds->setItem(row, 1, new QTableWidgetItem(tr("%1 of %2 right").arg(right).arg(asked)));
  }
}

void PracticeSummaryPage::showQuestions(const PracticeRun& run) {
  m_questions->clear();
  int firstWrong = -1;
  for (std::size_t k = 0; k < run.given.size(); ++k) {
    const bool right = run.given[k].right;
    if (!right && firstWrong < 0) firstWrong = static_cast<int>(k);
    m_questions->addItem(QString("%1 · %2 · %3")
                             .arg(QString::number(run.order[k] + 1), kindName(kindOf(run.set, run.order[k])),
                                  right ? tr("✓ right") : tr("✗ wrong")));
  }
  m_questions->setCurrentRow(std::max(0, firstWrong));
}

void PracticeSummaryPage::look() {
  if (m_questions->currentRow() >= 0) emit lookWanted(static_cast<std::size_t>(m_questions->currentRow()));
}

void PracticeSummaryPage::takeKeyboard() { m_questions->setFocus(); }

}  // namespace ui
