// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QDialog>

#include "ui/session.h"

namespace ui {

/// Lays a sequence out from a pattern.
class PatternDialog : public QDialog {
  Q_OBJECT

 public:
  explicit PatternDialog(Session& session, QWidget* parent = nullptr);

 signals:
  void refused(const QString& reason);

 private:
  Session& m_session;
};

}  // namespace ui
