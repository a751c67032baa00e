// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAccessibleWidget>

class QSplitterHandle;

namespace ui {

/// The border between two views of a splitter to assistive tools: its name says which, its value is how many
/// pixels what is left of it (or above) has.
class BorderAccess : public QAccessibleWidget, public QAccessibleValueInterface {
 public:
  explicit BorderAccess(QSplitterHandle* border);

  QString text(QAccessible::Text what) const override;
  void* interface_cast(QAccessible::InterfaceType type) override;
  QVariant currentValue() const override;
  void setCurrentValue(const QVariant& value) override;
  QVariant maximumValue() const override;
  QVariant minimumValue() const override { return 0; }
  QVariant minimumStepSize() const override { return 1; }

 private:
  QSplitterHandle* border() const;
};

/// Lets `border` be moved by the keyboard: Tab reaches it, arrows move it, Home and End all the way.
void giveKeys(QSplitterHandle* border);

}  // namespace ui
