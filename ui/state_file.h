// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCoreApplication>
#include <QSettings>
#include <QStringList>

namespace ui {

/// What the program remembers for this user between runs, apart from any document: in the folder that
/// XDG_STATE_HOME names, else in ~/.local/state (XDG Base Directory Specification 0.8). What grows or is
/// cleared by itself has a file of its own.
QSettings stateFile(const QString& name = QStringLiteral("state"));

/// Files of the state that could not be read, or not in full.
struct DamagedState {
  Q_DECLARE_TR_FUNCTIONS(ui::DamagedState)

 public:
  QStringList copies;  ///< where each is kept, as it was found
  QStringList left;    ///< those that could not be moved aside

  bool isEmpty() const { return copies.isEmpty() && left.isEmpty(); }
  /// What is to be told of them; empty when there are none.
  QString sentence() const;
};
/// Moves damaged files aside, each beside its old place, and writes what could be read of it anew: the rest
/// is as usual. To be asked before anything is remembered, which would write over what is damaged.
DamagedState setDamagedStateAside();

}  // namespace ui
