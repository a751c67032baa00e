// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QDialog>

#include "ui/session.h"

namespace ui {

/// Hands parts of the chosen channel to others.
class ApplyDialog : public QDialog {
  Q_OBJECT

 public:
  explicit ApplyDialog(Session& session, QWidget* parent = nullptr);

 signals:
  void refused(const QString& reason);

 private:
  Session& m_session;
};

}  // namespace ui
