// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDateTime>
#include <QElapsedTimer>
#include <QFileSystemWatcher>
#include <QFutureWatcher>
#include <QHash>
#include <QList>
#include <QObject>
#include <QString>
#include <QTimer>
#include <chrono>

namespace ui {

/// Watches a folder for files that are new in it or change, or one file for what is added to it.
///
/// A file has arrived when its size and time have rested for a while: a logger may take its time to write it.
/// Listing happens on a worker, told by the system and besides once a second, since network folders tell
/// nothing.
class FolderWatch : public QObject {
  Q_OBJECT

 public:
  explicit FolderWatch(QObject* parent = nullptr);
  ~FolderWatch() override;

  /// Watches `path`, a folder or a file; what was watched before is forgotten. Files that are in a folder
  /// already are not new; a file that is named itself is looked at from its beginning.
  void watch(const QString& path);
  void stop();
  /// While paused nothing is reported; what arrived meanwhile is when it goes on.
  void setPaused(bool paused);
  /// Only files of a folder whose name fits, such as "*.csv"; several separated by blanks.
  void setPattern(const QString& pattern);
  void setRest(std::chrono::milliseconds rest) { m_rest = rest; }

  QString path() const { return m_path; }
  bool isWatching() const { return !m_path.isEmpty(); }
  bool isPaused() const { return m_paused; }
  std::chrono::milliseconds rest() const { return m_rest; }

 signals:
  /// A file has arrived, or arrived again after a change.
  void arrived(const QString& path);
  /// A file is being written.
  void growing(const QString& path, qint64 size);
  /// A file that was growing or had arrived is gone.
  void gone(const QString& path);
  /// What is watched cannot be looked at; told once until it can.
  void failed(const QString& sentence);

 private:
  struct Entry {
    qint64 size = 0;
    QDateTime changed;
  };
  struct Known {
    Entry entry;
    qint64 seen_ms = 0;   ///< when the entry was first seen like this
    bool isTold = false;  ///< that it arrived as it is now
  };
  struct Listing {
    bool isThere = false;
    QHash<QString, Entry> entries;
  };

  static Listing listing(const QString& path, const QStringList& patterns);
  void look();
  void take(const Listing& listing);
  void takeFile(const QString& path, const Entry& entry);
  void tellGone(const Listing& listing);

  QString m_path;
  QStringList m_patterns;
  std::chrono::milliseconds m_rest{2000};
  bool m_paused = false;
  bool m_isFirst = true;   ///< the next listing is the first of this path
  bool m_failed = false;   ///< and told so
  bool m_isStale = false;  ///< the listing under way is of another path or pattern
  QHash<QString, Known> m_known;
  QElapsedTimer m_clock;
  QTimer m_timer;
  QFileSystemWatcher m_system;
  QFutureWatcher<Listing> m_listing;
};

}  // namespace ui
