// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/whatif/what_if_panel.h"

namespace ui {

WhatIfPanel::WhatIfPanel(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
  setObjectName("whatIfPanel");
}

}  // namespace ui
