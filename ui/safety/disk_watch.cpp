// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/safety/disk_watch.h"

#include <QFileInfo>
#include <QtConcurrentRun>

#include "ui/safe_file.h"

namespace ui {

DiskWatch::DiskWatch(QObject* parent) : QObject(parent) {
  m_soon.setSingleShot(true);
  m_soon.setInterval(150);  // a file that is replaced is gone for a moment
  connect(&m_soon, &QTimer::timeout, this, &DiskWatch::read);
  connect(&m_reading, &QFutureWatcherBase::finished, this, [this] { take(m_reading.result()); });
}

void DiskWatch::watch(const QString& path, const QString& sha256) {
  ++m_round;
  m_path = path;
  m_known = m_seen = sha256;
  m_standing = Standing::Known;
  if (!m_watcher) {
    m_watcher = new QFileSystemWatcher(this);
    connect(m_watcher, &QFileSystemWatcher::fileChanged, &m_soon, qOverload<>(&QTimer::start));
    connect(m_watcher, &QFileSystemWatcher::directoryChanged, &m_soon, qOverload<>(&QTimer::start));
  }
  arm();
  emit standingChanged();
}

void DiskWatch::stop() {
  ++m_round;
  m_soon.stop();
  m_path.clear();
  m_standing = Standing::Known;
  if (m_watcher) arm();
  emit standingChanged();
}

/// The file while it is there; its folder only while it is not, since folders may be busy. A file that was
/// replaced is another one to the system and has to be watched anew.
void DiskWatch::arm() {
  const QString wanted = m_path.isEmpty()            ? QString()
                         : QFileInfo::exists(m_path) ? m_path
                                                     : QFileInfo(m_path).path();
  const QStringList watched = m_watcher->files() + m_watcher->directories();
  for (const QString& one : watched)
    if (one != wanted) m_watcher->removePath(one);
  if (!wanted.isEmpty() && !watched.contains(wanted)) m_watcher->addPath(wanted);
}

void DiskWatch::look() {
  if (!m_path.isEmpty()) m_soon.start();
}

DiskWatch::Seen DiskWatch::seenAt(const QString& path, unsigned round) {
  Seen seen{round, QFileInfo::exists(path), {}};
  if (const auto sha256 = seen.exists ? sha256OfFile(path) : core::Result<QString>(QString()); sha256)
    seen.sha256 = *sha256;
  return seen;
}

void DiskWatch::read() {
  if (m_path.isEmpty()) return;
  m_again = m_reading.isRunning();
  if (!m_again) m_reading.setFuture(QtConcurrent::run(&DiskWatch::seenAt, m_path, m_round));
}

DiskWatch::Standing DiskWatch::lookNow() {
  if (!m_path.isEmpty()) take(seenAt(m_path, m_round));
  return m_standing;
}

void DiskWatch::take(const Seen& seen) {
  if (std::exchange(m_again, false)) m_soon.start();
  if (seen.round != m_round || m_path.isEmpty()) return;  // saved, or another document opened, meanwhile
  arm();
  if (seen.exists && seen.sha256.isEmpty()) return;  // not to be read at the moment: nothing can be told
  const Standing standing = seen.sha256 == m_known ? Standing::Known
                            : seen.exists          ? Standing::Changed
                                                   : Standing::Gone;
  const bool same = standing == m_standing && seen.sha256 == m_seen;
  m_standing = standing;
  m_seen = seen.sha256;
  if (!same) emit standingChanged();
}

void DiskWatch::accept() {
  m_known = m_seen;
  m_standing = Standing::Known;
  emit standingChanged();
}

}  // namespace ui
