// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTableView>

namespace ui {

class EditableTable;

/// A table that is edited like a sheet, with all of ui::TableTools: Return opens the editor and, in it, goes
/// on to the cell below; Ctrl+Return puts what was typed into all chosen cells. Over a model that is no
/// EditableTable it only copies, and Return activates the cell.
class SheetView : public QTableView {
  Q_OBJECT

 public:
  explicit SheetView(QWidget* parent = nullptr);

  using QTableView::edit;

 signals:
  void refused(const QString& reason);

 protected:
  void changeEvent(QEvent* event) override;
  bool edit(const QModelIndex& index, EditTrigger trigger, QEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;
  void commitData(QWidget* editor) override;
  void closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) override;
  void keyPressEvent(QKeyEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;

 private:
  void fitRows();
  EditableTable* sheet() const;
  bool isLeftOut(const QModelIndex& cell);

  bool m_toAll = false;  ///< what is typed goes into all chosen cells
};

}  // namespace ui
