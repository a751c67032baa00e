// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "ui/practice/practice_set.h"

class QLabel;
class QListWidget;
class QPushButton;
class QTableWidget;

namespace ui {

/// How a run went: right answers by kind, each question with its verdict and a way to see it again, and what
/// may come next.
class PracticeSummaryPage : public QWidget {
  Q_OBJECT

 public:
  explicit PracticeSummaryPage(QWidget* parent = nullptr);

  void show(const PracticeRun& run);
  void takeKeyboard();

 signals:
  /// The question at `position` of the run is to be seen with its explanation.
  void lookWanted(std::size_t position);
  void repeatWanted();
  void againWanted();
  void startWanted();
  void sheetsWanted(bool questions, bool answers);

 private:
  void showKinds(const PracticeRun& run);
  void showQuestions(const PracticeRun& run);
  void look();

  QLabel* m_title;
  QLabel* m_words;
  QTableWidget* m_kinds;
  QListWidget* m_questions;
  QPushButton *m_look, *m_repeat, *m_again, *m_start;
};

}  // namespace ui
