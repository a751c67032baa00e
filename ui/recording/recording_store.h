// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFileSystemWatcher>
#include <QObject>
#include <QString>
#include <map>
#include <memory>
#include <optional>
#include <vector>

#include "core/assess/check.h"
#include "core/recording/envelope.h"
#include "core/recording/layout.h"
#include "core/recording/recording.h"
#include "core/units/result.h"

class QTemporaryDir;

namespace ui {

/// A recording in memory, with what drawing it needs. Shared and never changed.
struct OpenRecording {
  QString path;  ///< absolute
  core::LayoutChoices choices;
  core::Recording recording;
  std::vector<core::Envelope> envelopes;  ///< one a column
};

/// The envelope of each column; a tenth of a second for 1e8 values.
std::vector<core::Envelope> envelopesOf(const core::Recording& recording);

/// Keeps the recordings that are on screen, read on a worker. One path and one set of choices is one
/// recording; the least lately used are let go when they take more than a few GiB together.
class RecordingStore : public QObject {
  Q_OBJECT

 public:
  explicit RecordingStore(QObject* parent = nullptr);
  ~RecordingStore() override;

  enum class State { Absent, Reading, Ready, Failed };
  /// What stands in the way of a Failed one, and so what the user can do.
  enum class Obstacle {
    Missing,     ///< there is no such file: it may lie elsewhere
    Outside,     ///< not in the document's folder: the user may have it read
    Changed,     ///< its size is not the reference's: the user may have it read
    Unreadable,  ///< reading it failed
    Cancelled    ///< the user stopped it
  };

  /// Where references start from: the folder of the document; empty for an unsaved one, whose references
  /// start from the current folder, or name a recording of the built-in demo.
  void setFolder(const QString& folder);
  /// The absolute path of a reference.
  QString pathOf(const core::RecordingReference& reference) const;
  /// How a reference names a file: relative to where references start, with '/' between folders.
  QString referenceTo(const QString& path) const;

  State state(const core::RecordingReference& reference) const;
  /// The recording when it is Ready, else null.
  std::shared_ptr<const OpenRecording> recording(const core::RecordingReference& reference) const;
  /// Why it is Failed.
  std::optional<core::Error> error(const core::RecordingReference& reference) const;
  std::optional<Obstacle> obstacle(const core::RecordingReference& reference) const;
  /// Share read so far, 0 to 1.
  double progress(const core::RecordingReference& reference) const;
  /// Of one that is Ready but is not the file that the readings were taken from: another size or another
  /// hash, which is worked out after reading; or whose file was changed since. A sentence, empty when nothing
  /// is known against it.
  QString warning(const core::RecordingReference& reference) const;

  /// Whether the file of one that is Ready was changed, replaced or removed since it was read, as far as that
  /// was seen. Nothing is read anew for that.
  bool isOutdated(const core::RecordingReference& reference) const;
  /// Looks whether files were changed; also done when a window is gone to, and when the system tells.
  void look();
  /// Reads the file anew, as the user has asked for.
  void readAgain(const core::RecordingReference& reference);

  /// Begins to read what is Absent, and with `isAsked` what has Failed. Only a regular file inside the
  /// document's folder with the reference's size is read without being asked for by the user (`isAsked`).
  void want(const core::RecordingReference& reference, bool isAsked = false);
  /// Takes in what was read elsewhere, in place of what was read before. Envelopes that are missing are made.
  void put(std::shared_ptr<const OpenRecording> recording);
  /// Stops one that is Reading; it has Failed then, until it is asked for.
  void cancel(const core::RecordingReference& reference);
  /// Stops reading and forgets; wanted again it is read anew.
  void forget(const core::RecordingReference& reference);

 signals:
  /// A state, a warning, or the progress of one, changed.
  void changed();

 private:
  struct Entry;
  using Key = std::pair<QString, std::string>;  ///< absolute path, choices in words

  Key keyOf(const core::RecordingReference& reference) const;
  const Entry* find(const core::RecordingReference& reference) const;
  std::optional<std::pair<Obstacle, core::Error>> refusalOf(const core::RecordingReference& reference) const;
  void read(const Key& key, core::LayoutChoices choices);
  void take(const Key& key);
  void hash(const Key& key);
  void letGo(const Key& kept);
  void watchFiles();
  QString builtIn(const QString& name) const;

  QString m_folder;
  QFileSystemWatcher m_watcher;
  std::map<Key, std::unique_ptr<Entry>> m_entries;
  mutable std::unique_ptr<QTemporaryDir> m_builtIn;  ///< copies of the demo's recordings, made when asked for
  mutable std::size_t m_clock = 0;                   ///< counts uses
};

}  // namespace ui
