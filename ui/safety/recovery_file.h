// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDateTime>
#include <QLockFile>
#include <QString>
#include <memory>
#include <vector>

#include "core/document/document.h"
#include "core/units/result.h"

// Copies of unsaved work, one file for each window, in the user's state folder and never over the user's own
// file. A file is a line of JSON about the work (where it belongs, when, which process, SHA-256 of the rest)
// and then the document as it would have been saved, so that the work can be taken out by hand too. Readable
// by the user alone. Beside it lies the lock of the window that writes it: a file whose lock nobody holds was
// left by a program that ended badly.

namespace ui {

/// XDG_STATE_HOME/shuntwright/recovery, whether it exists or not.
QString recoveryFolder();

/// One window's copy: its name, and the lock that tells others that the window lives.
struct RecoverySlot {
  QString file;
  std::shared_ptr<QLockFile> lock;
};

/// A name that no other window has. Nothing is on the disk yet.
RecoverySlot newRecoverySlot();

/// What of the work is told before it is recovered.
struct RecoveryNote {
  QString path;   ///< the document's own file; empty: it has none yet
  QString title;  ///< the document's, may be empty
  QDateTime when;
};

/// Writes or replaces the copy, whole or not at all. Slow: for a worker.
core::Result<void> writeRecovery(const RecoverySlot& slot, const RecoveryNote& note,
                                 const core::Document& document);

/// Removes the copy with its lock and what a broken off writing left beside it.
void removeRecovery(const RecoverySlot& slot);

/// Unsaved work of a program that ended badly.
struct LeftOver {
  RecoverySlot slot;  ///< locked: no other window offers the same while we do
  RecoveryNote note;
  core::Document document;
  QString problem;  ///< why it cannot be recovered; empty: it can
  bool fileIsGone = false, fileIsNewer = false;
  std::vector<std::string> differences;  ///< of the work against the document's file, in English
};

/// All in `folder` that no living process works on, newest first, damaged ones last. One that holds nothing
/// but what its document's file holds is removed. Slow: for a worker.
std::vector<LeftOver> findLeftOvers(const QString& folder);

}  // namespace ui
