// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/polarity/polarity_panel.h"

namespace ui {

PolarityPanel::PolarityPanel(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
  setObjectName("polarityPanel");
}

}  // namespace ui
