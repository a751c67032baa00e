// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/change/change_panel.h"

namespace ui {

ChangePanel::ChangePanel(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
  setObjectName("changePanel");
}

}  // namespace ui
