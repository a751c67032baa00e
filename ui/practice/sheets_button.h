// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPushButton>

namespace ui {

/// "Print sheets…" with a menu: the questions, the answers, or both as two files.
class SheetsButton : public QPushButton {
  Q_OBJECT

 public:
  explicit SheetsButton(QWidget* parent = nullptr);

 signals:
  void sheetsWanted(bool questions, bool answers);
};

}  // namespace ui
