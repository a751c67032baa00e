// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFileSystemWatcher>
#include <QFutureWatcher>
#include <QObject>
#include <QTimer>

namespace ui {

/// Tells when the content of the open document's file is no longer what the window knows. The system tells of
/// changes; what counts is the SHA-256 of the content, so our own savings and mere touches are no change.
/// Nothing runs while nothing happens. The file is read on a worker.
class DiskWatch : public QObject {
  Q_OBJECT

 public:
  enum class Standing { Known, Changed, Gone };

  explicit DiskWatch(QObject* parent = nullptr);

  /// The window knows `path` with this content (64 hexadecimal digits; empty: there was no file).
  void watch(const QString& path, const QString& sha256);
  void stop();
  /// Looks soon: the window became active, or the system told something.
  void look();
  /// Looks now and waits; for before saving.
  Standing lookNow();
  Standing standing() const { return m_standing; }
  /// What is there now is known to the user, who wants to keep his own: only the next change is told again.
  void accept();

 signals:
  /// The file has another standing, or yet another content.
  void standingChanged();

 private:
  struct Seen {
    unsigned round = 0;  ///< what was read before the last saving says nothing about it
    bool exists = false;
    QString sha256;  ///< empty: not to be read now
  };
  static Seen seenAt(const QString& path, unsigned round);
  void read();
  void take(const Seen& seen);
  void arm();

  QString m_path;
  QString m_known;
  QString m_seen;  ///< content that standing is about
  Standing m_standing = Standing::Known;
  bool m_again = false;
  unsigned m_round = 0;
  QFileSystemWatcher* m_watcher = nullptr;  ///< made with the first document, not at the start
  QTimer m_soon;
  QFutureWatcher<Seen> m_reading;
};

}  // namespace ui
