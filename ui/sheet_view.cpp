// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet_view.h"

#include <QApplication>
#include <QClipboard>
#include <QHeaderView>
#include <QKeyEvent>
#include <QMouseEvent>

#include "ui/editable_table.h"
#include "ui/theme.h"

namespace ui {
namespace {

/// Rows of cells from tab-separated text; a line break at the very end adds no row.
QList<QStringList> cellsOf(QString text) {
  text.replace("\r\n", "\n").replace('\r', '\n');
  if (text.endsWith('\n')) text.chop(1);
  QList<QStringList> rows;
  for (const QString& line : text.split('\n')) rows.append(line.split('\t'));
  return rows;
}

}  // namespace

SheetView::SheetView(QWidget* parent) : QTableView(parent) {
  setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::EditKeyPressed |
                  QAbstractItemView::AnyKeyPressed);
  setSelectionMode(QAbstractItemView::ContiguousSelection);
  setAlternatingRowColors(true);
  setWordWrap(false);
  verticalHeader()->setVisible(false);
  verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 9);
  horizontalHeader()->setHighlightSections(false);
  // A header may have its unit on a second line.
  horizontalHeader()->setDefaultAlignment(Qt::AlignCenter | static_cast<Qt::Alignment>(Qt::TextWordWrap));
}

EditableTable* SheetView::sheet() const { return qobject_cast<EditableTable*>(model()); }

void SheetView::copy() const {
  if (!selectionModel() || selectionModel()->selection().isEmpty()) return;
  const QItemSelectionRange block = selectionModel()->selection().first();
  QStringList rows;
  for (int row = block.top(); row <= block.bottom(); ++row) {
    QStringList cells;
    for (int column = block.left(); column <= block.right(); ++column)
      cells
          << model()->index(row, column).data(Qt::EditRole).toString().replace('\t', ' ').replace('\n', ' ');
    rows << cells.join('\t');
  }
  QApplication::clipboard()->setText(rows.join('\n'));
}

void SheetView::paste() {
  const QString text = QApplication::clipboard()->text();
  if (text.isEmpty()) {
    emit refused(tr("Paste: the clipboard holds no text."));
    return;
  }
  if (!sheet()) return emit refused(whyFixed());
  QModelIndex at = currentIndex();
  if (selectionModel() && !selectionModel()->selection().isEmpty())
    at = selectionModel()->selection().first().topLeft();
  if (const auto pasted = sheet()->setBlock(at, cellsOf(text)); !pasted) emit refused(toText(pasted.error()));
}

void SheetView::clearChosen() {
  if (!sheet()) return emit refused(whyFixed());
  if (const auto cleared = sheet()->clearCells(selectedIndexes()); !cleared)
    emit refused(toText(cleared.error()));
}

QString SheetView::whyFixed() { return tr("This table is worked out: it can be copied, but takes no text."); }

void SheetView::closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) {
  const QModelIndex edited = currentIndex();
  QTableView::closeEditor(editor, hint);
  // As in a spreadsheet: Return in an editor goes on to the cell below.
  if (hint != QAbstractItemDelegate::SubmitModelCache) return;
  const QModelIndex below = edited.sibling(edited.row() + 1, edited.column());
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
  if (event->matches(QKeySequence::Copy)) return copy();
  if (event->matches(QKeySequence::Paste)) return paste();
  if (event->key() == Qt::Key_Delete || event->key() == Qt::Key_Backspace) return clearChosen();
  const bool fixed = currentIndex().isValid() && !(model()->flags(currentIndex()) & Qt::ItemIsEditable);
  const bool enter =
      event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter || event->key() == Qt::Key_F2;
  const bool typing = !event->text().isEmpty() && event->text().front().isPrint() &&
                      !(event->modifiers() & (Qt::ControlModifier | Qt::AltModifier));
  if (fixed && sheet() && (enter || typing)) return emit refused(sheet()->whyFixed(currentIndex().column()));
  if (!sheet()) return QTableView::keyPressEvent(event);
  if (enter && currentIndex().isValid()) return edit(currentIndex());
  QTableView::keyPressEvent(event);
}

}  // namespace ui
