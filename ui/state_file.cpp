// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/state_file.h"

#include <QDir>
#include <QStandardPaths>

namespace ui {

QSettings stateFile() {
  QString folder = qEnvironmentVariable("XDG_STATE_HOME");
  if (folder.isEmpty()) folder = QDir::homePath() + "/.local/state";
  if (QStandardPaths::isTestModeEnabled()) folder = QDir::tempPath() + "/shuntwright-test-state";
  return QSettings(folder + "/shuntwright/state.ini", QSettings::IniFormat);
}

}  // namespace ui
