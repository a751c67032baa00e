// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QPersistentModelIndex>
#include <QWidget>

class QTableView;

namespace ui {

/// Frames around the cells of a table that were found, lying over it; the one gone to has a heavier frame.
class MatchMarks : public QWidget {
  Q_OBJECT

 public:
  static MatchMarks& of(QTableView& view);
  void mark(QList<QPersistentModelIndex> cells);
  void markCurrent(const QPersistentModelIndex& cell);
  int count() const { return static_cast<int>(m_cells.size()); }

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  explicit MatchMarks(QTableView& view);

  QTableView& m_view;
  QList<QPersistentModelIndex> m_cells;
  QPersistentModelIndex m_current;
};

}  // namespace ui
