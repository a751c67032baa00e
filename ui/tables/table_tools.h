// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <functional>

#include "ui/tables/table_block.h"

class QKeyEvent;
class QMenu;
class QTableView;

namespace ui {

class RowOrder;

/// What every table of the program can do, whichever view and model it is made of: copy, with and without
/// headings; cut, paste, clear and fill where its model is a BlockTaker; a context menu with all of it; find
/// and filter; columns left out and their widths remembered. One of it belongs to each view.
class TableTools : public QObject {
  Q_OBJECT

 public:
  /// The tools of `view`, attached when it has none yet.
  static TableTools& of(QTableView& view);

  RowOrder& rows() { return *m_rows; }
  /// Ctrl+C does this instead.
  void setOwnCopy(std::function<void()> copy) { m_ownCopy = std::move(copy); }

  void copy(CopyPart part = CopyPart::Chosen, CopyHeadings headings = CopyHeadings::Without);
  void cut();
  void paste();
  void clear();
  void fill(Fill how);
  /// Adds what can be done with the chosen cells.
  void fillMenu(QMenu& menu);

 signals:
  void refused(const QString& reason);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  explicit TableTools(QTableView& view);
  bool takesKey(const QKeyEvent& event);
  void showMenu(const QPoint& at);
  void showHeaderMenu(const QPoint& at);
  void pass(const core::Result<void>& done, const QString& what);
  QString place(const char* what) const;
  void restoreColumns();
  void keepHidden();
  void keepWidth(int column, int width);

  QTableView& m_view;
  RowOrder* m_rows;
  std::function<void()> m_ownCopy;
  bool m_restored = false;
};

/// From now on each table view gets its tools when it is shown first, in dialogs too. Once is enough.
void attachToolsToEveryTable();

/// A click on a header of `view` sorts; for tables whose order has no meaning.
void sortByHeader(QTableView& view);

}  // namespace ui
