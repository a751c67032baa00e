// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QKeySequence>
#include <QLineEdit>

namespace ui {

/// Takes keys by being pressed: whatever is pressed here is told and does nothing else, but for Tab, which
/// leaves, and Escape, which is left to the dialog.
class KeyField : public QLineEdit {
  Q_OBJECT

 public:
  explicit KeyField(QWidget* parent = nullptr);

 signals:
  void pressed(const QKeySequence& key);

 protected:
  bool event(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
};

}  // namespace ui
