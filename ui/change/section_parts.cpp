// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/change/section_parts.h"

#include <QHeaderView>
#include <QLabel>
#include <QScrollBar>
#include <algorithm>

#include "ui/parts.h"
#include "ui/sheet_view.h"

namespace ui {

QLabel* sectionTitle(const char* objectName, const QString& text) {
  QLabel* label = embolden(plainLabel(objectName));
  label->setText(text);
  return label;
}

SheetView* sectionTable(const char* objectName, const QString& meaning, QAbstractItemModel* model) {
  auto* table = new SheetView;
  table->setObjectName(objectName);
  table->setAccessibleName(meaning);
  table->setModel(model);
  table->setSelectionBehavior(QAbstractItemView::SelectRows);
  table->setSelectionMode(QAbstractItemView::SingleSelection);
  table->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table->setVerticalScrollBarPolicy(Qt::ScrollBarAsNeeded);
  table->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
  table->horizontalHeader()->setMinimumSectionSize(34);
  table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  table->horizontalHeader()->setStretchLastSection(true);
  table->setTabKeyNavigation(false);
  return table;
}

void fitToRows(SheetView* table, int most) {
  int height = table->horizontalHeader()->sizeHint().height() + 2 * table->frameWidth();
  const int rows = std::min(table->model()->rowCount(), most);
  for (int row = 0; row < rows; ++row) height += table->rowHeight(row);
  // Whether the columns will be wider than the view is known only after it has got its width.
  height += table->horizontalScrollBar()->sizeHint().height();
  if (table->height() != height) table->setFixedHeight(height);
}

}  // namespace ui
