// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/wiring/wiring_page.h"

namespace ui {

WiringPage::WiringPage(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
  m_table = new SheetView(this);
  m_table->hide();
  setObjectName("wiringPage");
}

}  // namespace ui
