// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diagnosis/diagnosis_panel.h"

namespace ui {

DiagnosisPanel::DiagnosisPanel(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
  setObjectName("diagnosisPanel");
}

}  // namespace ui
