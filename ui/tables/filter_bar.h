// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPointer>
#include <QWidget>

class QLabel;
class QLineEdit;
class QTableView;

namespace ui {

/// Shows only the rows of one table that hold the words typed, and says how many are left out. Rows are left
/// out only while the bar is open, so that none is ever missing without a word of it.
class FilterBar : public QWidget {
  Q_OBJECT

 public:
  explicit FilterBar(QWidget* parent = nullptr);

  /// Filters `view`; the table filtered before has all its rows again.
  void open(QTableView& view);
  void close();

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void tell();

  QPointer<QTableView> m_view;
  QLabel* m_name;
  QLineEdit* m_words;
  QLabel* m_count;
};

}  // namespace ui
