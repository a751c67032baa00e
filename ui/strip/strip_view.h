// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "ui/recording/recording_store.h"
#include "ui/session.h"

namespace ui {

/// The recording of the chosen check over time, with the spans its readings are taken from: under the
/// Sequence view, one lane a channel that has this recording.
class StripView : public QWidget {
  Q_OBJECT

 public:
  StripView(Session& session, RecordingStore& store, QWidget* parent = nullptr);

 signals:
  void refused(const QString& reason);

 private:
  Session& m_session;
  RecordingStore& m_store;
};

}  // namespace ui
