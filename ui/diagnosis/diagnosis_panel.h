// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "ui/session.h"

namespace ui {

/// A page of the Outcome view.
class DiagnosisPanel : public QWidget {
  Q_OBJECT

 public:
  explicit DiagnosisPanel(Session& session, QWidget* parent = nullptr);

 private:
  Session& m_session;
};

}  // namespace ui
