// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/recording/recording_reference.h"

#include <QDir>
#include <QFileInfo>

namespace ui {

core::RecordingReference referenceTo(const OpenRecording& recording, const QString& sha256,
                                     const QString& documentPath) {
  const QDir folder = documentPath.isEmpty() ? QDir::current() : QFileInfo(documentPath).absoluteDir();
  core::RecordingReference reference;
  reference.path = folder.relativeFilePath(recording.path).toStdString();
  reference.size_bytes = static_cast<std::uint64_t>(QFileInfo(recording.path).size());
  reference.sha256 = sha256.toStdString();
  reference.readAs = core::textOf(recording.choices);
  return reference;
}

}  // namespace ui
