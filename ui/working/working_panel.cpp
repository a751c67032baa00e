// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/working/working_panel.h"

namespace ui {

WorkingPanel::WorkingPanel(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
  setObjectName("workingPanel");
}

}  // namespace ui
