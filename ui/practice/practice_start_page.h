// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <optional>

#include "ui/practice/practice_set.h"

class QBoxLayout;
class QButtonGroup;
class QCheckBox;
class QLabel;
class QLayout;
class QPushButton;

namespace ui {

class CountEdit;
class ScoreTable;
class SheetsButton;

/// What is to be asked: difficulty, kinds, seed and number of questions. The seed is shown, so that a whole
/// class types the same one; the score so far lies beside.
class PracticeStartPage : public QWidget {
  Q_OBJECT

 public:
  explicit PracticeStartPage(QWidget* parent = nullptr);

  /// `place` is where a set was left half way.
  void refresh(const std::optional<PracticeRun>& place);
  void takeKeyboard();
  /// What the fields say; says what is missing where they say no set.
  std::optional<PracticeSet> set();
  /// Shows another seed than the last one.
  void proposeSeed();

 signals:
  void begun(const ui::PracticeSet& set);
  void goOnWanted();
  void sheetsWanted(bool questions, bool answers);
  void refused(const QString& reason);

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  QLayout* difficulties();
  QLayout* kinds();
  QLayout* numbers();
  void begin();

  QWidget* m_go;  ///< the row with what was left half way
  QLabel* m_place;
  QPushButton* m_goOn;
  QButtonGroup* m_difficulty;
  std::vector<QCheckBox*> m_kinds;  ///< in the order of core::allQuestionKinds()
  CountEdit* m_seed;
  CountEdit* m_count;
  QPushButton* m_begin;
  SheetsButton* m_sheets;
  ScoreTable* m_score;
  QBoxLayout* m_columns;  ///< fields and score, beside or below one another
};

}  // namespace ui
