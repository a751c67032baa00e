// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QPointer>
#include <QSet>
#include <QString>
#include <QTimer>

class QAbstractItemModel;
class QTableView;

namespace ui {

/// Which rows of a table view are shown, and in what order. The model keeps its own rows: the view alone
/// shows them elsewhere or not at all, so everything that speaks of the model's rows stays right.
///
/// Sorting is by value (see keyOfCell) and stable; cells that are empty come last either way. While the table
/// has the keyboard, rows keep their places when a cell of theirs changes.
class RowOrder : public QObject {
  Q_OBJECT

 public:
  explicit RowOrder(QTableView& view);

  /// A click on a header sorts: upwards, downwards, and then as the rows are by nature.
  void sortByHeader();
  bool isSortable() const { return m_sortable; }
  void sortBy(int column, Qt::SortOrder order);
  void dropSort();

  /// Shows only rows with a cell that holds all of these words; empty shows all.
  void setWords(const QString& words);
  const QString& words() const { return m_words; }
  int leftOut() const { return static_cast<int>(m_leftOut.size()); }

 signals:
  /// Other rows are shown, or their number is another.
  void changed();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void watchModel();
  void rowsChanged();
  void cellsChanged();
  bool hasKeyboard() const;
  void headerClicked(int column);
  void arrange();
  void filter();
  void showAll();
  bool holdsWords(int row, const QStringList& words) const;

  QTableView& m_view;
  QPointer<QAbstractItemModel> m_model;
  QTimer m_later;
  bool m_sortable = false;
  int m_column = -1;  ///< sorted by; none: the natural order
  Qt::SortOrder m_order = Qt::AscendingOrder;
  bool m_late = false;  ///< cells changed while the table had the keyboard
  QString m_words;
  QSet<int> m_leftOut;
};

}  // namespace ui
