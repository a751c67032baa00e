// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/tables/table_bars.h"

#include <QMainWindow>
#include <QVBoxLayout>

#include "ui/tables/filter_bar.h"
#include "ui/tables/find_bar.h"

namespace ui {

TableBars& TableBars::of(QWidget& inside) {
  QWidget& window = *inside.window();
  // A dialog is a child of the window it lies over, too.
  for (auto* bars : window.findChildren<TableBars*>())
    if (bars->window() == &window) return *bars;
  return *new TableBars(window);
}

/// In the place that a layout keeps for a menu bar, which any layout has and which takes no room while
/// hidden.
TableBars::TableBars(QWidget& window)
    : QWidget(&window), m_find(new FindBar(this)), m_filter(new FilterBar(this)) {
  setObjectName("tableBars");
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(m_find);
  column->addWidget(m_filter);
  auto* main = qobject_cast<QMainWindow*>(&window);
  QWidget* host = main && main->centralWidget() ? main->centralWidget() : &window;
  if (host->layout()) host->layout()->setMenuBar(this);
  show();
}

void TableBars::find() { m_find->open(); }
void TableBars::next() { m_find->next(); }
void TableBars::previous() { m_find->previous(); }
void TableBars::filter(QTableView& view) { m_filter->open(view); }

}  // namespace ui
