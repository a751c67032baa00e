// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStyledItemDelegate>

class QTableView;

namespace ui {

/// A cell that is one of some choices gives them as a QStringList under choicesRole (none when there is
/// nothing to choose), and gives and takes the index of the present one under choiceRole, -1 for none.
constexpr int choicesRole = Qt::UserRole + 40;
constexpr int choiceRole = Qt::UserRole + 41;

/// Cells that are one of some choices: marked with an arrow, opened as a list by a click, Return or F2.
class ChoiceCellDelegate : public QStyledItemDelegate {
  Q_OBJECT

 public:
  /// Sets itself up for `column` of `view`.
  ChoiceCellDelegate(QTableView* view, int column, const QString& objectName);

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                        const QModelIndex& index) const override;
  void setEditorData(QWidget* editor, const QModelIndex& index) const override;
  void setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const override;

 private:
  void open(const QModelIndex& index);

  QTableView* m_view;
  int m_column;
  QString m_name;
};

}  // namespace ui
