// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFutureWatcher>
#include <QObject>
#include <QThreadPool>
#include <QTimer>

#include "ui/safety/recovery_file.h"

namespace ui {

class Session;

/// Keeps a copy of unsaved work on the disk (see recovery_file.h) from two seconds after a change on, as long
/// as there is unsaved work; removes it when there is none any longer: saved, undone or discarded.
///
/// A change starts one timer and the timer one writing on a thread of its own, so that idling costs nothing
/// and other long work does not hold it up. The document is a value that nobody changes: it is written as it
/// was when the writing began.
class Autosave : public QObject {
  Q_OBJECT

 public:
  /// Of a change until it is on its way to the disk.
  static constexpr int delay_ms = 2000;

  explicit Autosave(Session& session, QObject* parent = nullptr);
  /// Waits for a writing that is under way. Work that is neither saved nor given up stays on the disk.
  ~Autosave() override;

  /// Where the document belongs; empty: it has no file.
  void setPath(const QString& path);
  /// Goes on with a copy that was left: it is replaced by the next writing, and not removed before.
  void adopt(const RecoverySlot& slot);
  /// Writes at once what is unsaved and waits for it: the session may end any moment.
  void flush();
  /// The unsaved work is given up: its copy goes. What is changed after that is kept again.
  void giveUp() { clear(); }
  /// The work is saved or given up and the window closes.
  void finish();
  /// The copy on the disk, for tests and messages; empty while there is none.
  QString file() const;

 signals:
  /// The copy could not be written; told once until it can be written again.
  void failed(const QString& reason);
  /// A copy is on the disk.
  void kept();

 private:
  void follow();
  void write();
  void clear();
  void finishWriting();

  Session& m_session;
  QString m_path;
  RecoverySlot m_slot;
  bool m_onDisk = false;  ///< the slot has, or is about to have, a file
  bool m_again = false;   ///< changed while it was being written
  bool m_toldFailure = false;
  bool m_finished = false;
  QTimer m_timer;
  QThreadPool m_thread;
  QFutureWatcher<core::Result<void>> m_writing;
};

}  // namespace ui
