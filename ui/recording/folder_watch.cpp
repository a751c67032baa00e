// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/recording/folder_watch.h"

#include <QDirIterator>
#include <QFileInfo>
#include <QtConcurrentRun>
#include <algorithm>

namespace ui {
namespace {

/// Names that programs give to files they have not finished.
bool isUnfinished(const QString& name) {
  return name.startsWith('.') || name.endsWith('~') || name.endsWith(".part") || name.endsWith(".tmp");
}

}  // namespace

FolderWatch::FolderWatch(QObject* parent) : QObject(parent) {
  m_clock.start();
  m_timer.setInterval(1000);
  connect(&m_timer, &QTimer::timeout, this, &FolderWatch::look);
  connect(&m_system, &QFileSystemWatcher::directoryChanged, this, &FolderWatch::look);
  connect(&m_system, &QFileSystemWatcher::fileChanged, this, &FolderWatch::look);
  connect(&m_listing, &QFutureWatcher<Listing>::finished, this, [this] {
    if (!m_paused && isWatching() && !m_isStale) take(m_listing.result());
    if (m_isStale && isWatching()) look();
  });
}

FolderWatch::~FolderWatch() { m_listing.waitForFinished(); }

void FolderWatch::watch(const QString& path) {
  stop();
  m_path = QFileInfo(path).absoluteFilePath();
  m_system.addPath(m_path);  // Fails on some network folders: the timer looks all the same.
  m_timer.start();
  look();
}

void FolderWatch::stop() {
  m_timer.stop();
  if (const QStringList watched = m_system.files() + m_system.directories(); !watched.isEmpty())
    m_system.removePaths(watched);
  m_path.clear();
  m_known.clear();
  m_isFirst = true;
  m_failed = false;
  m_isStale = m_listing.isRunning();
}

void FolderWatch::setPaused(bool paused) {
  m_paused = paused;
  if (!paused) look();
}

void FolderWatch::setPattern(const QString& pattern) {
  m_patterns = pattern.split(' ', Qt::SkipEmptyParts);
  m_isStale = m_listing.isRunning();
}

FolderWatch::Listing FolderWatch::listing(const QString& path, const QStringList& patterns) {
  const QFileInfo target(path);
  if (target.isFile()) return {true, {{path, {target.size(), target.lastModified()}}}};
  Listing found;
  found.isThere = target.isDir() && target.isReadable();
  QDirIterator files(path, patterns, QDir::Files);
  while (files.hasNext()) {
    const QFileInfo file(files.next());
    if (!isUnfinished(file.fileName()))
      found.entries.insert(file.absoluteFilePath(), {file.size(), file.lastModified()});
  }
  return found;
}

void FolderWatch::look() {
  if (!isWatching() || m_paused || m_listing.isRunning()) return;
  m_isStale = false;
  m_listing.setFuture(QtConcurrent::run(&FolderWatch::listing, m_path, m_patterns));
}

void FolderWatch::take(const Listing& found) {
  if (!found.isThere && !m_failed)
    emit failed(tr("%1 cannot be looked at: it is gone, or it may not be read. Watching goes on for when it "
                   "comes back.")
                    .arg(m_path));
  m_failed = !found.isThere;
  if (m_failed) return;
  const bool isFile = found.entries.size() == 1 && found.entries.contains(m_path);
  if (m_isFirst && !isFile) {
    for (auto entry = found.entries.begin(); entry != found.entries.end(); ++entry)
      m_known.insert(entry.key(), {entry.value(), m_clock.elapsed(), true});
  }
  m_isFirst = false;
  tellGone(found);
  QStringList paths = found.entries.keys();
  std::sort(paths.begin(), paths.end());
  for (const QString& path : paths) takeFile(path, found.entries.value(path));
}

void FolderWatch::takeFile(const QString& path, const Entry& entry) {
  const auto known = m_known.find(path);
  const bool isAsBefore =
      known != m_known.end() && known->entry.size == entry.size && known->entry.changed == entry.changed;
  if (!isAsBefore) {
    m_known.insert(path, {entry, m_clock.elapsed(), false});
    emit growing(path, entry.size);
  } else if (!known->isTold && m_clock.elapsed() - known->seen_ms >= m_rest.count()) {
    known->isTold = true;
    emit arrived(path);
  }
}

void FolderWatch::tellGone(const Listing& found) {
  for (const QString& path : m_known.keys()) {
    if (found.entries.contains(path)) continue;
    m_known.remove(path);
    emit gone(path);
  }
}

}  // namespace ui
