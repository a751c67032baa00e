// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/choice_delegates.h"

#include <QComboBox>

#include "ui/theme.h"

namespace ui {

ChoiceDelegate::ChoiceDelegate(Session& session, bool free, QObject* parent)
    : QStyledItemDelegate(parent), m_session(session), m_free(free) {}

QWidget* ChoiceDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&,
                                      const QModelIndex& index) const {
  auto* box = new QComboBox(parent);
  box->setObjectName("choiceEditor");
  box->setAccessibleName(index.model()->headerData(index.column(), Qt::Horizontal).toString());
  box->setEditable(m_free);
  if (m_session.channel()) box->addItems(choices(m_session.channel()->setup));
  return box;
}

void ChoiceDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
  static_cast<QComboBox*>(editor)->setCurrentText(index.data(Qt::EditRole).toString());
}

void ChoiceDelegate::setModelData(QWidget* editor, QAbstractItemModel* model,
                                  const QModelIndex& index) const {
  model->setData(index, static_cast<QComboBox*>(editor)->currentText());
}

QStringList NodeDelegate::choices(const core::Setup& setup) const {
  QStringList names;
  for (const core::Node node : core::allNodes())
    if (core::hasNode(setup.bridge, node)) names << toQString(core::nodeName(node));
  return names;
}

QStringList ClosedShuntsDelegate::choices(const core::Setup& setup) const {
  QStringList names{tr("none")};
  for (const core::Shunt& shunt : setup.shunts) names << toQString(shunt.name);
  return names;
}

}  // namespace ui
