// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSettings>

namespace ui {

/// What the program remembers for this user between runs, apart from any document. Tests have a file of
/// their own (QStandardPaths::setTestModeEnabled).
QSettings stateFile();

}  // namespace ui
