// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QObject>
#include <QTimer>

class QTableView;

namespace ui {

/// Keeps a table readable in any language and window: each column is as wide as its heading and its numbers,
/// words have up to some thirty letters, and the columns `taking` share what room is left. What needs more
/// than there is scrolls to the side. Columns only grow, when they come to hold more; in between the user
/// makes them as wide or narrow as he likes.
class ColumnRoom : public QObject {
  Q_OBJECT

 public:
  /// For a view that has its model and its first widths.
  explicit ColumnRoom(QTableView& view, QList<int> taking = {});

  /// Of the heading and of what stands below it, as far as it must be seen whole.
  int needOf(int column) const;

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void grow();
  void share();

  QTableView& m_view;
  QList<int> m_taking;
  QList<int> m_needs;  ///< when they were looked at last
  QTimer m_soon;
};

}  // namespace ui
