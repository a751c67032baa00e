// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QKeySequence>
#include <QList>
#include <QString>
#include <vector>

namespace ui {

/// Keys of one place in the window, which work only while it has the keyboard and stay as they are.
struct FixedKeys {
  QString place;  ///< whose they are: "Tables"
  QString text;   ///< what they do
  QList<QKeySequence> keys;
};

/// Those that no action holds, but a view answers itself.
std::vector<FixedKeys> fixedKeys();

}  // namespace ui
