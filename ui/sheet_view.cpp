// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet_view.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QMouseEvent>
#include <utility>

#include "ui/editable_table.h"
#include "ui/tables/table_block.h"
#include "ui/tables/table_tools.h"

namespace ui {
SheetView::SheetView(QWidget* parent) : QTableView(parent) {
  setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::EditKeyPressed |
                  QAbstractItemView::AnyKeyPressed);
  setSelectionMode(QAbstractItemView::ContiguousSelection);
  setAlternatingRowColors(true);
  setWordWrap(false);
  verticalHeader()->setVisible(false);
  fitRows();
  horizontalHeader()->setHighlightSections(false);
  // A header may have its unit on a second line.
  horizontalHeader()->setDefaultAlignment(Qt::AlignCenter | static_cast<Qt::Alignment>(Qt::TextWordWrap));
  connect(&TableTools::of(*this), &TableTools::refused, this, &SheetView::refused);
}

void SheetView::fitRows() { verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 9); }

void SheetView::changeEvent(QEvent* event) {
  QTableView::changeEvent(event);
  if (event->type() == QEvent::FontChange) fitRows();
}

EditableTable* SheetView::sheet() const { return qobject_cast<EditableTable*>(model()); }

/// A row that a filter leaves out is not edited unseen.
bool SheetView::isLeftOut(const QModelIndex& cell) {
  if (!cell.isValid() || !isRowHidden(cell.row())) return false;
  emit refused(tr("The row of this cell is filtered out: show all rows, or choose a cell on view."));
  return true;
}

bool SheetView::edit(const QModelIndex& index, EditTrigger trigger, QEvent* event) {
  const bool started = QTableView::edit(index, trigger, event);
  if (started && state() == QAbstractItemView::EditingState)
    if (QWidget* editor = indexWidget(index)) editor->installEventFilter(this);
  return started;
}

/// Seen before the delegate's own filter, which takes Return with any modifier.
bool SheetView::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::KeyPress && state() == QAbstractItemView::EditingState) {
    const auto* key = static_cast<QKeyEvent*>(event);
    const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
    m_toAll = enter && (key->modifiers() & Qt::ControlModifier);
  }
  return QTableView::eventFilter(watched, event);
}

void SheetView::commitData(QWidget* editor) {
  if (m_toAll && sheet()) sheet()->spreadTo(chosenCells(*this));
  QTableView::commitData(editor);
  // An editor whose text was left as it was commits nothing by itself.
  if (m_toAll && sheet() && sheet()->isSpreading())
    sheet()->setData(currentIndex(), currentIndex().data(Qt::EditRole));
}

void SheetView::closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) {
  const bool toAll = std::exchange(m_toAll, false);
  QTableView::closeEditor(editor, hint);
  // As in a spreadsheet: Return in an editor goes on to the cell below. What filled many cells stays with
  // them.
  if (hint != QAbstractItemDelegate::SubmitModelCache || toAll) return;
  const QModelIndex below = moveCursor(MoveDown, Qt::NoModifier);
  if (below.isValid()) setCurrentIndex(below);
}

void SheetView::mouseDoubleClickEvent(QMouseEvent* event) {
  const QModelIndex at = indexAt(event->position().toPoint());
  if (sheet() && at.isValid() && !(model()->flags(at) & Qt::ItemIsEditable))
    emit refused(sheet()->whyFixed(at.column()));
  QTableView::mouseDoubleClickEvent(event);
}

void SheetView::keyPressEvent(QKeyEvent* event) {
  const bool editing = state() == QAbstractItemView::EditingState;
  if (editing) return QTableView::keyPressEvent(event);
  const bool fixed = currentIndex().isValid() && !(model()->flags(currentIndex()) & Qt::ItemIsEditable);
  const bool enter =
      event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter || event->key() == Qt::Key_F2;
  const bool typing = !event->text().isEmpty() && event->text().front().isPrint() &&
                      !(event->modifiers() & (Qt::ControlModifier | Qt::AltModifier));
  if (fixed && sheet() && (enter || typing)) return emit refused(sheet()->whyFixed(currentIndex().column()));
  if (!sheet()) return QTableView::keyPressEvent(event);
  if ((enter || typing) && isLeftOut(currentIndex())) return;
  if (enter && currentIndex().isValid()) return edit(currentIndex());
  QTableView::keyPressEvent(event);
}

}  // namespace ui
