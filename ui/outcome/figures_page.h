// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QScrollArea>
#include <vector>

#include "core/report/report.h"
#include "ui/outcome/shown_outcome.h"

class QGridLayout;
class QLabel;

namespace ui {

/// One figure with its verdict in a word, and the sentence that gives its numbers.
struct FigureLine {
  QString name, value, verdict;  ///< the verdict may be empty: told, not judged by a limit
  core::Verdict is = core::Verdict::NotJudged;
  bool heading = false;
};

/// All figures of what is shown: those of the line, then the figures of merit with their sentences, of two
/// checks one after the other. Plain text.
std::vector<FigureLine> figureLines(const ShownOutcome& outcome);

/// All figures in words, with room to read them.
class FiguresPage : public QScrollArea {
  Q_OBJECT

 public:
  explicit FiguresPage(QWidget* parent = nullptr);

  void showFigures(std::vector<FigureLine> lines);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  struct Row {
    QLabel* name;
    QLabel* verdict;
    QLabel* value;
  };

  void fill(const Row& row, const FigureLine& line);
  void colour();

  QGridLayout* m_layout;
  std::vector<Row> m_rows;  ///< grows, never shrinks
  std::vector<FigureLine> m_lines;
};

}  // namespace ui
