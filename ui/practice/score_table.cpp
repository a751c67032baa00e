// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/practice/score_table.h"

#include <QHeaderView>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

#include "ui/parts.h"
#include "ui/practice/practice_score.h"
#include "ui/practice/practice_words.h"

namespace ui {

ScoreTable::ScoreTable(QWidget* parent) : QWidget(parent) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  auto* heading = new QLabel(tr("Score on this computer, right of answered"));
  heading->setWordWrap(true);
  column->addWidget(embolden(heading));
  m_table =
      new QTableWidget(static_cast<int>(core::questionKindCount), static_cast<int>(core::difficultyCount));
  m_table->setObjectName("scoreTable");
  m_table->setAccessibleName(heading->text());
  m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
  m_table->setTabKeyNavigation(false);
  m_table->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
  QStringList rows, columns;
  for (const core::QuestionKind kind : core::allQuestionKinds()) rows << kindName(kind);
  for (const core::Difficulty difficulty : allDifficulties()) columns << difficultyName(difficulty);
  m_table->setVerticalHeaderLabels(rows);
  m_table->setHorizontalHeaderLabels(columns);
  column->addWidget(m_table);
  m_best = plainLabel("bestSets");
  column->addWidget(m_best);
  m_clear = new QPushButton(tr("Clear the score…"));
  m_clear->setObjectName("clearScore");
  m_clear->setAutoDefault(true);
  column->addWidget(m_clear, 0, Qt::AlignLeft);
  connect(m_clear, &QPushButton::clicked, this, &ScoreTable::clear);
}

void ScoreTable::refresh() {
  bool any = false;
  for (std::size_t row = 0; row < core::questionKindCount; ++row)
    for (std::size_t column = 0; column < core::difficultyCount; ++column) {
      const Tally tally = tallyOf(core::allQuestionKinds()[row], allDifficulties()[column]);
      any = any || tally.asked > 0;
      auto* cell = new QTableWidgetItem(tally.asked == 0 ? QString("–")
                                                         : tr("%1 of %2").arg(tally.right).arg(tally.asked));
      cell->setTextAlignment(Qt::AlignCenter);
      m_table->setItem(static_cast<int>(row), static_cast<int>(column), cell);
    }
  // All rows are seen at once: the page scrolls, not the table.
  m_table->setFixedHeight(m_table->horizontalHeader()->sizeHint().height() +
                          m_table->verticalHeader()->length() + 2 * m_table->frameWidth());
  QStringList best;
  for (const core::Difficulty difficulty : allDifficulties())
    if (const auto set = bestSet(difficulty))
      best << tr("%1: best set %2 of %3 right, seed %4.")
                  .arg(difficultyName(difficulty), QString::number(set->right), QString::number(set->of),
                       QString::number(set->seed));
  if (longestRow() > 1) best << tr("Longest row of right answers: %1.").arg(longestRow());
  m_best->setText(best.join("\n"));
  m_best->setVisible(!best.isEmpty());
  m_clear->setEnabled(any || !best.isEmpty());
}

void ScoreTable::clear() {
  QMessageBox box(QMessageBox::Question, tr("Clear the score"),
                  tr("The whole score on this computer is cleared. This cannot be undone."),
                  QMessageBox::Cancel, this);
  box.setObjectName("clearScoreBox");
  QPushButton* yes = box.addButton(tr("C&lear it"), QMessageBox::AcceptRole);
  yes->setObjectName("clearScoreYes");
  box.setDefaultButton(QMessageBox::Cancel);
  box.exec();
  if (box.clickedButton() != yes) return;
  clearScore();
  refresh();
  emit cleared();
}

}  // namespace ui
