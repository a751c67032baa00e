// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/access/pane_access.h"

#include <QGroupBox>

namespace ui {

PaneAccess::PaneAccess(QWidget* widget) : QAccessibleWidget(widget, QAccessible::Pane) {}

QString PaneAccess::text(QAccessible::Text what) const {
  const QString own = QAccessibleWidget::text(what);
  if (what != QAccessible::Name || !own.isEmpty()) return own;
  for (const QWidget* around = widget()->parentWidget(); around; around = around->parentWidget()) {
    if (!around->accessibleName().isEmpty()) return around->accessibleName();
    if (const auto* group = qobject_cast<const QGroupBox*>(around)) return group->title();
    if (around->isWindow()) return around->windowTitle();
  }
  return {};
}

}  // namespace ui
