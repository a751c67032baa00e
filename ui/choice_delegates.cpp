// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/choice_delegates.h"

#include <QComboBox>
#include <QLineEdit>
#include <algorithm>
#include <set>

#include "core/budget/inputs.h"
#include "core/circuit/node_words.h"
#include "ui/fields/cell_number.h"
#include "ui/theme.h"

namespace ui {

QWidget* TypedDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                                     const QModelIndex& index) const {
  QWidget* editor = QStyledItemDelegate::createEditor(parent, option, index);
  if (auto* field = qobject_cast<QLineEdit*>(editor)) attachCellNumber(field, index);
  return editor;
}

void TypedDelegate::setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const {
  const auto* field = qobject_cast<QLineEdit*>(editor);
  if (!field || field->isModified()) QStyledItemDelegate::setModelData(editor, model, index);
}

ChoiceDelegate::ChoiceDelegate(Session& session, QObject* parent)
    : QStyledItemDelegate(parent), m_session(session) {}

QWidget* ChoiceDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&,
                                      const QModelIndex& index) const {
  auto* box = new QComboBox(parent);
  box->setObjectName("choiceEditor");
  box->setAccessibleName(index.model()->headerData(index.column(), Qt::Horizontal).toString());
  // Or letters would jump about in the list, and a space would open it in the middle of a name.
  box->setEditable(true);
  box->setInsertPolicy(QComboBox::NoInsert);
  box->setSizeAdjustPolicy(QComboBox::AdjustToContents);  // not only when it is shown first
  box->setCompleter(nullptr);                             // "R1" that is typed must not become "R10"
  if (m_session.channel()) box->addItems(choices(m_session.channel()->setup));
  return box;
}

void ChoiceDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
  auto* box = static_cast<QComboBox*>(editor);
  box->setCurrentText(index.data(Qt::EditRole).toString());
  box->lineEdit()->selectAll();  // what is typed takes its place, as in other cells
}

void ChoiceDelegate::setModelData(QWidget* editor, QAbstractItemModel* model,
                                  const QModelIndex& index) const {
  const QString text = static_cast<QComboBox*>(editor)->currentText();
  if (text != index.data(Qt::EditRole).toString()) model->setData(index, text);
}

void ChoiceDelegate::updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                                          const QModelIndex&) const {
  editor->ensurePolished();  // or its size is that of another style
  QRect place = option.rect;
  place.setWidth(std::max(place.width(), editor->sizeHint().width()));
  // Not beyond the table's own edge.
  if (const QWidget* table = editor->parentWidget())
    place.moveRight(std::min(place.right(), std::max(table->width() - 1, option.rect.right())));
  editor->setGeometry(place);
}

QStringList NodeDelegate::choices(const core::Setup& setup) const {
  QStringList names;
  for (const core::Node node : core::allNodes())
    if (core::hasNode(setup.bridge, node)) names << toQString(core::nodeWords(node));
  return names;
}

QStringList ClosedShuntsDelegate::choices(const core::Setup& setup) const {
  QStringList names{tr("none")};
  for (const core::Shunt& shunt : setup.shunts) names << toQString(shunt.name);
  return names;
}

QStringList GroupDelegate::choices(const core::Setup& setup) const {
  std::set<std::string> groups;
  for (const core::BudgetInput& input : core::inputsOf(setup)) groups.insert(input.uncertainty.group);
  for (const auto& [group, coefficient] : setup.uncertainties.groups) groups.insert(group);
  groups.erase(std::string());
  QStringList names{tr("none")};
  for (const std::string& group : groups) names << toQString(group);
  return names;
}

}  // namespace ui
