// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QDialog>

#include "ui/session.h"

namespace ui {

/// Finds the resistors that come nearest to wanted levels.
class SearchDialog : public QDialog {
  Q_OBJECT

 public:
  explicit SearchDialog(Session& session, QWidget* parent = nullptr);

 signals:
  void refused(const QString& reason);

 private:
  Session& m_session;
};

}  // namespace ui
