// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/access/picture_access.h"

#include <QAbstractScrollArea>

namespace ui {
namespace {

constexpr qsizetype mostRowsSaid = 40;  ///< of a picture that says nothing of itself; the table has them all

}  // namespace

PictureAccess::PictureAccess(QWidget* widget) : QAccessibleWidget(widget, QAccessible::Graphic) {}

QString PictureAccess::text(QAccessible::Text what) const {
  return what == QAccessible::Description ? pictureDescription(*widget()) : QAccessibleWidget::text(what);
}

int PictureAccess::childCount() const {
  return qobject_cast<const QAbstractScrollArea*>(widget()) ? 0 : QAccessibleWidget::childCount();
}

QString pictureDescription(const QWidget& widget) {
  if (!widget.accessibleDescription().isEmpty()) return widget.accessibleDescription();
  const auto* picture = dynamic_cast<const Twin*>(&widget);
  if (!picture) return {};
  QStringList sentences;
  for (const QStringList& row : picture->twin().rows.mid(0, mostRowsSaid)) sentences << row.join(", ");
  return sentences.join("; ");
}

}  // namespace ui
