// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/recording/recording_reference.h"

#include <QDir>
#include <QFileInfo>

#include "core/document/edits.h"
#include "ui/theme.h"

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

core::Document withReferencesFrom(core::Document document, const QString& from, const QString& to) {
  if (QDir(from) == QDir(to)) return document;
  for (std::size_t k = 0; k < document.channels.size(); ++k) {
    core::Channel channel = *document.channels[k];
    for (core::Check& check : channel.checks) {
      if (!check.recording) continue;
      const QString path = QDir(from).absoluteFilePath(toQString(check.recording->path));
      if (QFileInfo(path).isFile()) check.recording->path = QDir(to).relativeFilePath(path).toStdString();
    }
    document = core::withChannel(std::move(document), k, std::move(channel));
  }
  return document;
}

}  // namespace ui
