// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/state_file.h"

#include <unistd.h>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>

namespace ui {
namespace {

// QSettings replaces a file by an empty one, and says that all is well, when the disk is full: what is short
// waits in a buffer, and nobody asks how its writing went. So we write the file ourselves, in the same form,
// and refuse what did not get through; QSettings then keeps the old one. (Qt 6.4; seen on a full tmpfs.)

/// Under its own name QSettings has the file open already; under this one it is the same to the system alone.
const QString otherName = QStringLiteral("/proc/self/root");

/// Sorted last of all, so that a file which ends in it was not cut short.
const QString lastKey = QStringLiteral("\uFFFD/last");
const QByteArray lastLines = "[%UFFFD]\nlast=true\n";

/// What can be read of a damaged file is taken.
bool readIni(QIODevice& device, QSettings::SettingsMap& values) {
  const QSettings ini(otherName + static_cast<QFileDevice&>(device).fileName(), QSettings::IniFormat);
  const QStringList keys = ini.allKeys();
  for (const QString& key : keys) values[key] = ini.value(key);
  return true;
}

/// Empty when it could not be put together.
QByteArray iniOf(const QSettings::SettingsMap& values) {
  const QTemporaryDir folder;
  const QString path = folder.filePath("values.ini");
  {
    QSettings ini(path, QSettings::IniFormat);
    for (auto value = values.begin(); value != values.end(); ++value)
      ini.setValue(value.key(), value.value());
    ini.setValue(lastKey, true);
  }
  QFile file(path);
  const QByteArray text = file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
  return text.endsWith(lastLines) ? text.chopped(lastLines.size()) : QByteArray();
}

bool writeIni(QIODevice& device, const QSettings::SettingsMap& values) {
  const QByteArray text = iniOf(values);
  if (text.isEmpty() && !values.isEmpty()) return false;
  auto& file = static_cast<QFileDevice&>(device);
  return file.write(text) == text.size() && file.flush() && ::fsync(file.handle()) == 0;
}

QSettings::Format format() {
  static const QSettings::Format ours = QFileInfo::exists(otherName + "/")
                                            ? QSettings::registerFormat("ini", readIni, writeIni)
                                            : QSettings::IniFormat;
  return ours;
}

}  // namespace

QSettings stateFile(const QString& name) {
  QString folder = qEnvironmentVariable("XDG_STATE_HOME");
  if (folder.isEmpty()) folder = QDir::homePath() + "/.local/state";
  QString path = folder + "/shuntwright/" + name + ".ini";
  if (const QFileInfo file(path); file.exists() && !file.isFile())
    path += ".ini";  // a pipe would be waited for
  return QSettings(path, format());
}

}  // namespace ui
