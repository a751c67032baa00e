// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <vector>

#include "ui/practice/practice_set.h"

class QBoxLayout;
class QButtonGroup;
class QLabel;
class QLayout;
class QProgressBar;
class QPushButton;
class QScrollArea;
class QTableView;

namespace ui {

class ChoiceButton;
class QuantityEdit;
class QuestionCanvas;
class ReportTableModel;

/// One question of a run: drawing, text, choices or a field for a number; once it is answered what is right
/// and why, with the drawing and the formula. Keys: 1 to 9 choose, Enter answers and goes on, the page keys
/// scroll.
class QuestionPage : public QWidget {
  Q_OBJECT

 public:
  explicit QuestionPage(QWidget* parent = nullptr);

  /// Asks `question`, at `position` of `run`.
  void ask(const core::Question& question, const PracticeRun& run, std::size_t position);
  /// Shows it with what was answered to it.
  void showAnswered(const core::Question& question, const PracticeRun& run, std::size_t position);
  void takeKeyboard();

 signals:
  void answered(const ui::GivenAnswer& answer);
  void nextWanted();
  void startWanted();
  void refused(const QString& reason);

 protected:
  void changeEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  void buildBody(QBoxLayout* column);
  QLayout* buttons();
  void show(const core::Question& question, const PracticeRun& run, std::size_t position);
  void showHead(const PracticeRun& run, std::size_t position);
  void buildChoices();
  void buildNumber();
  void orderTabs();
  void showReadings();
  void showVerdict(const GivenAnswer& given);
  void answer();
  void styleVerdict();
  void placeCanvas();

  core::Question m_question;
  bool m_answered = false;
  bool m_right = false;
  QLabel *m_head, *m_tally, *m_given, *m_text, *m_verdict, *m_explanation, *m_formula;
  QProgressBar* m_progress;
  QuestionCanvas* m_canvas;
  ReportTableModel* m_readingsModel;
  QTableView* m_readings;
  QWidget* m_choiceBox;
  QButtonGroup* m_group;
  std::vector<ChoiceButton*> m_choices;
  QWidget* m_numberRow;
  QuantityEdit* m_number;
  QLabel* m_unit;
  QPushButton *m_answer, *m_next, *m_leave;
  QScrollArea* m_scroll;
  QBoxLayout* m_sides;   ///< the drawing and what scrolls, side by side
  QBoxLayout* m_column;  ///< what scrolls; the drawing too where there is little width
};

}  // namespace ui
