// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QString>
#include <memory>
#include <optional>
#include <vector>

#include "core/assess/check.h"
#include "core/recording/envelope.h"
#include "core/recording/layout.h"
#include "core/recording/recording.h"
#include "core/units/result.h"

namespace ui {

/// A recording in memory, with what drawing it needs. Shared and never changed.
struct OpenRecording {
  QString path;  ///< absolute
  core::LayoutChoices choices;
  core::Recording recording;
  std::vector<core::Envelope> envelopes;  ///< one a column
};

/// Keeps the recordings that are on screen, read on a worker. One path and one set of choices is one
/// recording; the least lately used are let go when they take more than a few GiB together.
class RecordingStore : public QObject {
  Q_OBJECT

 public:
  explicit RecordingStore(QObject* parent = nullptr);
  ~RecordingStore() override;

  enum class State { Absent, Reading, Ready, Failed };

  /// Where references start from: the folder of the document; empty for an unsaved one.
  void setFolder(const QString& folder);
  /// The absolute path of a reference.
  QString pathOf(const core::RecordingReference& reference) const;

  State state(const core::RecordingReference& reference) const;
  /// The recording when it is Ready, else null.
  std::shared_ptr<const OpenRecording> recording(const core::RecordingReference& reference) const;
  /// Why it is Failed.
  std::optional<core::Error> error(const core::RecordingReference& reference) const;
  /// Share read so far, 0 to 1.
  double progress(const core::RecordingReference& reference) const;

  /// Begins to read what is Absent. Only a regular file inside the document's folder is read without being
  /// asked for by the user (`isAsked`). A file whose size or hash is no longer the reference's fails and says
  /// so.
  void want(const core::RecordingReference& reference, bool isAsked = false);
  /// Takes in what was read elsewhere.
  void put(std::shared_ptr<const OpenRecording> recording);
  /// Stops reading and forgets; wanted again it is read anew.
  void forget(const core::RecordingReference& reference);

 signals:
  /// A state, or the progress of one, changed.
  void changed();
};

}  // namespace ui
