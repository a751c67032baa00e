// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QLabel;
class QPushButton;
class QTableWidget;

namespace ui {

/// The score kept on this computer: right answers of those given, by kind and difficulty, the best sets, and
/// a button that clears it all.
class ScoreTable : public QWidget {
  Q_OBJECT

 public:
  explicit ScoreTable(QWidget* parent = nullptr);

  void refresh();

 signals:
  void cleared();

 private:
  void clear();

  QTableWidget* m_table;
  QLabel* m_best;
  QPushButton* m_clear;
};

}  // namespace ui
