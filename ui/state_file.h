// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSettings>

namespace ui {

/// What the program remembers for this user between runs, apart from any document: in the folder that
/// XDG_STATE_HOME names, else in ~/.local/state (XDG Base Directory Specification 0.8). What grows or is
/// cleared by itself has a file of its own.
QSettings stateFile(const QString& name = QStringLiteral("state"));

}  // namespace ui
