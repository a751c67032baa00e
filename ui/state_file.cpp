// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/state_file.h"

#include <QDir>

namespace ui {

QSettings stateFile(const QString& name) {
  QString folder = qEnvironmentVariable("XDG_STATE_HOME");
  if (folder.isEmpty()) folder = QDir::homePath() + "/.local/state";
  return QSettings(folder + "/shuntwright/" + name + ".ini", QSettings::IniFormat);
}

}  // namespace ui
