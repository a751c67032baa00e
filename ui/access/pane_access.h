// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAccessibleWidget>

namespace ui {

/// What takes the keyboard to be scrolled or to be walked by keys of its own: a panel to assistive tools,
/// with the name of what it lies in unless it has one.
class PaneAccess : public QAccessibleWidget {
 public:
  explicit PaneAccess(QWidget* widget);

  QString text(QAccessible::Text what) const override;
};

}  // namespace ui
