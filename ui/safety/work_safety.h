// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QPointer>
#include <functional>
#include <optional>

#include "ui/safety/autosave.h"
#include "ui/safety/disk_watch.h"
#include "ui/safety/document_lock.h"

class QLabel;

namespace ui {

class DiskBar;
class RecoveryBar;
class Session;

/// Everything about the document's file that keeps work safe, for one window: its lock, what others do to it
/// on the disk, the copy of what is not saved, and what an earlier run has left. The window opens and saves;
/// it asks here before and tells here after.
class WorkSafety : public QObject {
  Q_OBJECT

 public:
  WorkSafety(Session& session, QWidget* window);
  ~WorkSafety() override;

  /// The bars that ask, over the views; hidden while there is nothing to ask.
  QWidget* bars() const { return m_bars; }
  /// Says in the status bar that the document cannot be saved under its name.
  QLabel* mark() const { return m_mark; }

  // Opening: enter, then reset the session, then follow.
  /// Locks `path` instead of what was locked. Where somebody else has it, asks whether to read only; false:
  /// better not, and everything is as it was.
  bool enter(const QString& path);
  /// The document is now this file, with this content on the disk (empty: no file is there).
  void follow(const QString& path, const QString& sha256);
  /// The document has no file.
  void leave();
  /// Whether somebody else has `path` open for writing. Changes and asks nothing.
  static bool isHeldElsewhere(const QString& path);

  // Saving: mayWrite, then write, then follow or, when nothing was written, stay.
  /// Asks before the file is overwritten that somebody changed since; refuses one that somebody else has
  /// open.
  bool mayWrite(const QString& path);
  /// The document keeps the file it has; the one it was to be saved to is free again.
  void stay() { m_next.reset(); }
  /// Why the document cannot be saved under its name, as a sentence; empty: it can.
  QString readOnlyReason() const;
  /// Tries whether it can by now.
  bool regain();

  /// Looks, aside, whether an earlier run left unsaved work, and offers it.
  void offerLeftOvers();
  /// The window takes `work` up: from now on its copy is ours. To be followed by the edit that brings it
  /// back.
  void adopt(const LeftOver& work);

  /// What `mayClose` asks is asked too when the user logs out.
  void askAtSessionEnd(std::function<bool()> mayClose);
  /// Whether the session may end; without asking where that is not allowed, the work is kept either way.
  bool mayEndSession(bool mayAsk);
  /// When the session was asked to end, the user gave up what is unsaved, and has changed nothing since.
  bool isGivenUp() const { return m_givenUp; }
  /// The window closes; its work is saved or given up.
  void finish();

 signals:
  void refused(const QString& reason);
  void said(const QString& sentence);
  /// What of the document can be saved where is otherwise: the title has to say it.
  void accessChanged();
  void recoverWanted(const ui::LeftOver& work);
  void loadWanted();  ///< the file as it is on the disk
  void saveWanted();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  std::optional<DocumentLock> lockOrReadOnly(const QString& path);
  bool maySaveOver();
  void showDifferences();
  void keepMine();
  void tellDisk();
  void setLock(DocumentLock lock);

  Session& m_session;
  QWidget* m_window;
  QPointer<QWidget> m_bars;
  QPointer<QLabel> m_mark;
  RecoveryBar* m_recovery;
  DiskBar* m_disk;
  QString m_path;
  DocumentLock m_lock;
  std::optional<DocumentLock> m_next;  ///< of the name that is being saved to
  DiskWatch m_watch;
  Autosave m_autosave;
  std::function<bool()> m_mayClose;
  bool m_givenUp = false;
};

}  // namespace ui
