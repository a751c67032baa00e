// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/access/access.h"

#include <QAccessible>
#include <QAccessibleWidget>
#include <QApplication>
#include <QComboBox>
#include <QSplitter>

#include "ui/access/border_access.h"
#include "ui/access/combo_access.h"
#include "ui/access/focus_ring.h"
#include "ui/access/pane_access.h"
#include "ui/access/picture_access.h"

namespace ui {
namespace {

/// Qt asks once for each class that `object` is of, the most derived one first.
QAccessibleInterface* accessOf(const QString& className, QObject* object) {
  auto* widget = qobject_cast<QWidget*>(object);
  if (!widget) return nullptr;
  if (className == QLatin1String(object->metaObject()->className()) && dynamic_cast<Twin*>(widget))
    return new PictureAccess(widget);
  if (className == "QComboBox") return new ComboAccess(static_cast<QComboBox*>(widget));
  const bool isPane =
      className == "QScrollArea" || (className == "QWidget" && widget->focusPolicy() != Qt::NoFocus);
  if (isPane) return new PaneAccess(widget);
  if (className == "ui::LineLabel") return new QAccessibleWidget(widget, QAccessible::StaticText);
  if (className == "QSplitterHandle") return new BorderAccess(static_cast<QSplitterHandle*>(widget));
  return nullptr;
}

}  // namespace

void installAccess() {
  QAccessible::installFactory(accessOf);  // one and the same function is taken once
  constexpr auto name = "focusRing";
  if (qApp->findChild<FocusRing*>(name, Qt::FindDirectChildrenOnly)) return;
  auto* ring = new FocusRing(qApp);
  ring->setObjectName(name);
}

}  // namespace ui
