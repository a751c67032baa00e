// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCoreApplication>
#include <QDateTime>
#include <QLockFile>
#include <QString>
#include <memory>
#include <optional>

namespace ui {

/// The file that a name stands for, without links: two names of one file are one lock and one watch.
QString fileBehind(const QString& path);

/// Who else has a document open.
struct LockHolder {
  QString person;  ///< the owner of the lock, as the system knows him
  QString host;
  bool onThisHost = true;  ///< else nobody can tell whether the program there still runs
  QDateTime since;
};

/// Against two writers: a hidden file beside the document, held while the document is open for writing. One
/// left by a process of this computer that is gone is taken over. Whoever does not hold it reads only.
class DocumentLock {
  Q_DECLARE_TR_FUNCTIONS(ui::DocumentLock)

 public:
  /// Tries to take the lock. A folder that takes no lock takes no document either.
  static DocumentLock taken(const QString& path);
  /// The same, after removing the lock of `holder`: for one on another computer that is known to be gone.
  static DocumentLock takenOver(const QString& path);

  const QString& file() const { return m_file; }  ///< the document, without links
  bool isHeld() const { return m_lock != nullptr; }
  const std::optional<LockHolder>& holder() const { return m_holder; }
  /// Why the document cannot be saved under its name, as a sentence; empty: it can.
  const QString& reason() const { return m_reason; }
  /// The document may be written, though nothing could be locked there.
  bool isUnprotected() const { return m_unprotected; }

 private:
  QString m_file;
  std::shared_ptr<QLockFile> m_lock;
  std::optional<LockHolder> m_holder;
  QString m_reason;
  bool m_unprotected = false;
};

/// "R. Larch on alder-2, since 26.11.2026 14:05", for messages.
QString holderText(const LockHolder& holder);

}  // namespace ui
