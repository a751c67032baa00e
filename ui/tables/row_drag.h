// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <optional>

class QTableView;
class QWidget;

namespace ui {

/// Rows of a table that are dragged by one of its columns, each to another place. A line shows where the row
/// will go; Escape leaves it.
class RowDrag : public QObject {
  Q_OBJECT

 public:
  /// Rows are taken by the cells of `column`.
  RowDrag(QTableView& view, int column);

 signals:
  /// The row `from` is to stand at `to`, counted without it.
  void moved(int from, int to);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  bool press(const QPoint& at);
  bool move(const QPoint& at);
  bool release();
  int gapAt(int y) const;
  void end();

  QTableView& m_view;
  const QObject* m_viewport;  ///< kept, since events still come when the view is half destroyed
  int m_column;
  QWidget* m_line;
  std::optional<QPoint> m_pressed;
  int m_from = -1;
  int m_gap = -1;  ///< above this row; while one is dragged
};

}  // namespace ui
