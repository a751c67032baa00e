// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAccessibleWidget>

#include "ui/access/twin.h"

namespace ui {

/// A widget with a twin is a picture to assistive tools: its description says in sentences what it shows.
class PictureAccess : public QAccessibleWidget {
 public:
  /// `widget` is a Twin.
  explicit PictureAccess(QWidget* widget);

  QString text(QAccessible::Text what) const override;
  /// A chart has nothing inside but the surface that it is painted on; a drawing may have buttons and labels.
  int childCount() const override;
};

/// What `widget` says of itself, else its twin in words.
QString pictureDescription(const QWidget& widget);

}  // namespace ui
