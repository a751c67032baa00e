// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTableView>

namespace ui {

class EditableTable;

/// A table that exchanges blocks of cells with spreadsheets: Ctrl+C copies the chosen block as
/// tab-separated text, Ctrl+V pastes one, Delete empties cells, Return opens the editor and, in it, goes
/// on to the cell below. Over a model that is no EditableTable it only copies, and Return activates the cell.
class SheetView : public QTableView {
  Q_OBJECT

 public:
  explicit SheetView(QWidget* parent = nullptr);

  void copy() const;
  void paste();
  void clearChosen();

 signals:
  void refused(const QString& reason);

 protected:
  void closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) override;
  void keyPressEvent(QKeyEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;

 private:
  EditableTable* sheet() const;
  static QString whyFixed();
};

}  // namespace ui
