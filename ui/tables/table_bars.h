// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QTableView;

namespace ui {

class FilterBar;
class FindBar;

/// Find and filter of one window or dialog, above all that it holds; not there until they are asked for.
class TableBars : public QWidget {
  Q_OBJECT

 public:
  /// Those of the window that `inside` is in.
  static TableBars& of(QWidget& inside);

  FindBar& findBar() { return *m_find; }
  void find();
  void next();
  void previous();
  void filter(QTableView& view);

 private:
  explicit TableBars(QWidget& window);

  FindBar* m_find;
  FilterBar* m_filter;
};

}  // namespace ui
