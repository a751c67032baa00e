// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>

#include "ui/session.h"

namespace ui {

/// Leads through a check step by step.
class GuidedRun : public QWidget {
  Q_OBJECT

 public:
  explicit GuidedRun(Session& session, QWidget* parent = nullptr);

 signals:
  void refused(const QString& reason);
  /// The user is done, or has stopped: show the views again.
  void finished();

 private:
  Session& m_session;
};

}  // namespace ui
