// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>

class QPushButton;

namespace ui {

/// The frame of what the window has to ask over its views without stopping the work: an edge in the colour
/// of a warning, light and dark.
class SafetyFrame : public QFrame {
  Q_OBJECT

 public:
  explicit SafetyFrame(const char* name, QWidget* parent = nullptr);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void applyColours();
};

/// For a bar over the views. Without a letter to press with Alt: the letters belong to menus and views.
QPushButton* safetyButton(const QString& name, const QString& text, const QString& tip);

}  // namespace ui
