// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QWidget>

#include "ui/recording/recording_store.h"
#include "ui/session.h"

namespace ui {

/// Watches a folder for new recordings, and a recording for what is added to it, and takes them up as checks
/// as they arrive; what cannot be taken without asking waits here in a list.
class WatchPage : public QWidget {
  Q_OBJECT

 public:
  WatchPage(Session& session, RecordingStore& store, QWidget* parent = nullptr);

  /// The document's path, empty for an unsaved one: references to recordings are relative to it.
  void setDocumentPath(const QString& path);

 signals:
  void refused(const QString& reason);
  void said(const QString& sentence);
  /// The user wants to decide about the recording at `path` in the import page.
  void importWanted(const QString& path);

 private:
  Session& m_session;
  RecordingStore& m_store;
};

}  // namespace ui
