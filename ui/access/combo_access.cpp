// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/access/combo_access.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QLineEdit>

namespace ui {

ComboAccess::ComboAccess(QComboBox* combo) : QAccessibleWidget(combo, QAccessible::ComboBox) {}

QComboBox* ComboAccess::combo() const { return static_cast<QComboBox*>(widget()); }

QString ComboAccess::text(QAccessible::Text what) const {
  return what == QAccessible::Value ? combo()->currentText() : QAccessibleWidget::text(what);
}

QAccessible::State ComboAccess::state() const {
  QAccessible::State state = QAccessibleWidget::state();
  const bool open = combo()->view()->isVisible();
  state.expandable = true;
  state.expanded = open;
  state.collapsed = !open;
  state.hasPopup = true;
  state.editable = combo()->isEditable();
  state.readOnly = !combo()->isEditable();
  return state;
}

/// The list, and the field of one that can be typed in.
int ComboAccess::childCount() const { return combo()->isEditable() ? 2 : 1; }

QAccessibleInterface* ComboAccess::child(int index) const {
  if (index == 0) return QAccessible::queryAccessibleInterface(combo()->view()->parentWidget());
  if (index == 1 && combo()->isEditable()) return QAccessible::queryAccessibleInterface(combo()->lineEdit());
  return nullptr;
}

int ComboAccess::indexOfChild(const QAccessibleInterface* child) const {
  if (child->object() == combo()->view()->parentWidget()) return 0;
  return combo()->isEditable() && child->object() == combo()->lineEdit() ? 1 : -1;
}

void* ComboAccess::interface_cast(QAccessible::InterfaceType type) {
  if (type == QAccessible::TextInterface) return static_cast<QAccessibleTextInterface*>(this);
  return QAccessibleWidget::interface_cast(type);
}

QStringList ComboAccess::actionNames() const {
  return QStringList{pressAction(), showMenuAction()} + QAccessibleWidget::actionNames();
}

void ComboAccess::doAction(const QString& name) {
  if (name != pressAction() && name != showMenuAction()) return QAccessibleWidget::doAction(name);
  if (!combo()->isEnabled()) return;
  combo()->view()->isVisible() ? combo()->hidePopup() : combo()->showPopup();
}

QString ComboAccess::text(int start, int end) const {
  return combo()->currentText().mid(start, end < 0 ? -1 : end - start);
}

int ComboAccess::characterCount() const { return static_cast<int>(combo()->currentText().size()); }

QString ComboAccess::attributes(int, int* start, int* end) const {
  *start = 0;
  *end = characterCount();
  return {};
}

}  // namespace ui
