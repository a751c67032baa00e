// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/recording/choice_cell.h"

#include <QComboBox>
#include <QPainter>
#include <QTableView>
#include <QTimer>

namespace ui {
namespace {

bool offersChoices(const QModelIndex& index) { return !index.data(choicesRole).toStringList().isEmpty(); }

}  // namespace

ChoiceCellDelegate::ChoiceCellDelegate(QTableView* view, int column, const QString& objectName)
    : QStyledItemDelegate(view), m_view(view), m_column(column), m_name(objectName) {
  view->setItemDelegateForColumn(column, this);
  connect(view, &QTableView::clicked, this, &ChoiceCellDelegate::open);
  connect(view, &QTableView::activated, this, &ChoiceCellDelegate::open);
}

void ChoiceCellDelegate::open(const QModelIndex& index) {
  if (index.column() != m_column || !(index.flags() & Qt::ItemIsEditable) || !offersChoices(index)) return;
  if (m_view->indexWidget(index) || m_view->isPersistentEditorOpen(index)) return;
  m_view->setCurrentIndex(index);
  m_view->edit(index);
}

void ChoiceCellDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                               const QModelIndex& index) const {
  QStyledItemDelegate::paint(painter, option, index);
  if (!offersChoices(index)) return;
  QStyleOption arrow;
  const int side = option.fontMetrics.height() / 2;
  arrow.rect = QRect(option.rect.right() - side - 4, option.rect.center().y() - side / 2, side, side);
  arrow.palette = option.palette;
  arrow.state = QStyle::State_Enabled;
  m_view->style()->drawPrimitive(QStyle::PE_IndicatorArrowDown, &arrow, painter, m_view);
}

QSize ChoiceCellDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
  QSize size = QStyledItemDelegate::sizeHint(option, index);
  size.rwidth() += option.fontMetrics.height() + 4;
  return size;
}

QWidget* ChoiceCellDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&,
                                          const QModelIndex& index) const {
  if (!offersChoices(index)) return nullptr;
  auto* box = new QComboBox(parent);
  box->setObjectName(m_name);
  box->setAccessibleName(index.model()->headerData(index.column(), Qt::Horizontal).toString());
  box->addItems(index.data(choicesRole).toStringList());
  box->setMaxVisibleItems(16);
  auto* self = const_cast<ChoiceCellDelegate*>(this);
  connect(box, &QComboBox::activated, self, [self, box] {
    emit self->commitData(box);
    emit self->closeEditor(box);
  });
  QTimer::singleShot(0, box, &QComboBox::showPopup);
  return box;
}

void ChoiceCellDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
  static_cast<QComboBox*>(editor)->setCurrentIndex(index.data(choiceRole).toInt());
}

void ChoiceCellDelegate::setModelData(QWidget* editor, QAbstractItemModel* model,
                                      const QModelIndex& index) const {
  const int chosen = static_cast<QComboBox*>(editor)->currentIndex();
  if (chosen != index.data(choiceRole).toInt()) model->setData(index, chosen, choiceRole);
}

}  // namespace ui
