// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAccessibleWidget>

class QComboBox;

namespace ui {

/// A combo box to assistive tools. Qt's own has the chosen entry for its name on this system, so that nobody
/// is told what is being chosen where no label stands beside it. Here the name is what it is for, and the
/// chosen entry is its text.
class ComboAccess : public QAccessibleWidget, public QAccessibleTextInterface {
 public:
  explicit ComboAccess(QComboBox* combo);

  QString text(QAccessible::Text what) const override;
  QAccessible::State state() const override;
  int childCount() const override;
  QAccessibleInterface* child(int index) const override;
  int indexOfChild(const QAccessibleInterface* child) const override;
  void* interface_cast(QAccessible::InterfaceType type) override;
  QStringList actionNames() const override;
  void doAction(const QString& name) override;

  // The chosen entry, to be read.
  void selection(int, int* start, int* end) const override { *start = *end = 0; }
  int selectionCount() const override { return 0; }
  void addSelection(int, int) override {}
  void removeSelection(int) override {}
  void setSelection(int, int, int) override {}
  int cursorPosition() const override { return 0; }
  void setCursorPosition(int) override {}
  QString text(int start, int end) const override;
  int characterCount() const override;
  QRect characterRect(int) const override { return rect(); }
  int offsetAtPoint(const QPoint&) const override { return -1; }
  void scrollToSubstring(int, int) override {}
  QString attributes(int, int* start, int* end) const override;

 private:
  QComboBox* combo() const;
};

}  // namespace ui
