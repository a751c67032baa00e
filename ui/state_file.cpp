// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/state_file.h"

#include <unistd.h>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>
#include <algorithm>

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

QString stateFolder() {
  QString folder = qEnvironmentVariable("XDG_STATE_HOME");
  if (folder.isEmpty()) folder = QDir::homePath() + "/.local/state";
  return folder + "/shuntwright";
}

/// Whether every quotation mark has its second one.
bool isClosed(const QByteArray& line) {
  bool isOpen = false;
  for (qsizetype k = 0; k < line.size(); ++k) {
    if (line[k] == '\\')
      ++k;  // the letter behind stands for itself
    else if (line[k] == '"')
      isOpen = !isOpen;
  }
  return !isOpen;
}

/// Whether a line is one that QSettings writes, or a comment or a blank. QSettings itself takes what it
/// finds.
bool isIniLine(const QByteArray& line) {
  if (line.isEmpty() || line[0] == ';' || line[0] == '#') return true;
  if (line[0] == '[') return line.endsWith(']');
  return line.indexOf('=') > 0 && isClosed(line);
}

bool isIni(const QByteArray& text) {
  const QList<QByteArray> lines = text.split('\n');
  return !text.contains('\0') && text.isValidUtf8() &&
         std::all_of(lines.begin(), lines.end(),
                     [](const QByteArray& line) { return isIniLine(line.trimmed()); });
}

/// Whether all of the file can be read; `values` is what can.
bool isWhole(const QString& path, QSettings::SettingsMap& values) {
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) return false;
  if (isIni(file.readAll())) return true;
  const QSettings ini(QFileInfo::exists(otherName + "/") ? otherName + path : path, QSettings::IniFormat);
  const QStringList keys = ini.allKeys();
  for (const QString& key : keys) values[key] = ini.value(key);
  return false;
}

/// A name beside `path` that nothing has yet.
QString nameAside(const QString& path) {
  QString aside = path + ".damaged";
  for (int number = 2; QFileInfo::exists(aside); ++number)
    aside = path + ".damaged" + QString::number(number);
  return aside;
}

}  // namespace

QString DamagedState::sentence() const {
  QStringList sentences;
  if (!copies.isEmpty())
    sentences
        << tr("What the program remembers was damaged, settings perhaps among it. What could not be read "
              "is as usual again. Kept as it was found: %1.")
               .arg(copies.join(u", "));
  if (!left.isEmpty())
    sentences
        << tr("What the program remembers cannot be read or moved aside, and everything in it is as usual: "
              "%1. Look at the permissions of file and folder.")
               .arg(left.join(u", "));
  return sentences.join(u' ');
}

DamagedState setDamagedStateAside() {
  DamagedState damaged;
  const QDir folder(stateFolder());
  const QStringList names = folder.entryList({"*.ini"}, QDir::Files);
  for (const QString& name : names) {
    const QString path = folder.filePath(name);
    QSettings::SettingsMap values;
    if (isWhole(path, values)) continue;
    const QString aside = nameAside(path);
    if (!QFile::rename(path, aside)) {
      damaged.left << path;
      continue;
    }
    damaged.copies << aside;
    if (values.isEmpty()) continue;
    QSettings anew(path, format());
    for (auto value = values.cbegin(); value != values.cend(); ++value)
      anew.setValue(value.key(), value.value());
  }
  return damaged;
}

QSettings stateFile(const QString& name) {
  QString path = stateFolder() + "/" + name + ".ini";
  if (const QFileInfo file(path); file.exists() && !file.isFile())
    path += ".ini";  // a pipe would be waited for
  return QSettings(path, format());
}

}  // namespace ui
