// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/safety/document_lock.h"

#include <fcntl.h>
#include <unistd.h>

#include <QFile>
#include <QFileInfo>
#include <QLocale>
#include <QSysInfo>

namespace ui {
namespace {

QString lockNameOf(const QString& file) {
  const QFileInfo info(file);
  return info.path() + "/." + info.fileName() + ".lock";
}

/// As the effective user, which is who will write.
bool mayWriteTo(const QString& path) {
  return ::faccessat(AT_FDCWD, QFile::encodeName(path).constData(), W_OK, AT_EACCESS) == 0;
}

std::optional<LockHolder> holderOf(const QLockFile& lock, const QString& name) {
  LockHolder holder;
  qint64 process = 0;
  QString program;
  if (!lock.getLockInfo(&process, &holder.host, &program)) return std::nullopt;
  const QFileInfo info(name);
  holder.person = info.owner();
  holder.since = info.lastModified();
  holder.onThisHost = holder.host.isEmpty() || holder.host == QSysInfo::machineHostName();
  return holder;
}

/// A lock that says nothing was left half written by a crash; a live one is filled at once.
bool isBroken(const QString& name) {
  constexpr qint64 longEnough_s = 10;
  const QFileInfo info(name);
  return info.exists() && info.lastModified().secsTo(QDateTime::currentDateTime()) > longEnough_s;
}

}  // namespace

QString fileBehind(const QString& path) {
  const QFileInfo info(path);
  if (const QString file = info.canonicalFilePath(); !file.isEmpty()) return file;
  const QString folder = QFileInfo(info.absolutePath()).canonicalFilePath();
  return folder.isEmpty() ? info.absoluteFilePath() : folder + "/" + info.fileName();
}

DocumentLock DocumentLock::taken(const QString& path) {
  DocumentLock taken;
  taken.m_file = fileBehind(path);
  const QString name = lockNameOf(taken.m_file);
  if (!QFileInfo(QFileInfo(name).path()).isDir()) {
    taken.m_reason = tr("Its folder is not there any longer.");
    return taken;
  }
  if (QFile::exists(taken.m_file) && !mayWriteTo(taken.m_file)) {
    taken.m_reason = tr("You may not write to this file.");
    return taken;
  }
  auto lock = std::make_shared<QLockFile>(name);
  lock->setStaleLockTime(0);  // documents stay open for weeks; only a dead process loses its lock
  bool locked = lock->tryLock(0);
  const auto holder = [&] { return holderOf(*lock, name); };
  if (!locked && lock->error() == QLockFile::LockFailedError && !holder() && isBroken(name))
    locked = lock->removeStaleLockFile() && lock->tryLock(0);
  if (locked) {
    taken.m_lock = std::move(lock);
  } else if (lock->error() == QLockFile::LockFailedError) {
    taken.m_holder = holder().value_or(LockHolder{});
    taken.m_reason = tr("It is open for writing elsewhere: %1.").arg(holderText(*taken.m_holder));
  } else if (lock->error() == QLockFile::PermissionError) {
    taken.m_reason = tr("You may not write to its folder.");
  } else {
    taken.m_unprotected = true;  // a full disk, or a file system without locks: saving will tell
  }
  return taken;
}

DocumentLock DocumentLock::takenOver(const QString& path) {
  QFile::remove(lockNameOf(fileBehind(path)));
  return taken(path);
}

QString holderText(const LockHolder& holder) {
  const QString person = holder.person.isEmpty() ? DocumentLock::tr("somebody") : holder.person;
  const QString host = holder.host.isEmpty() ? DocumentLock::tr("this computer") : holder.host;
  if (!holder.since.isValid()) return DocumentLock::tr("%1 on %2").arg(person, host);
  return DocumentLock::tr("%1 on %2, since %3")
      .arg(person, host, QLocale().toString(holder.since, QLocale::ShortFormat));
}

}  // namespace ui
