// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/wiring/ohmmeter_page.h"

namespace ui {

OhmmeterPage::OhmmeterPage(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
  m_table = new SheetView(this);
  m_table->hide();
  setObjectName("ohmmeterPage");
}

}  // namespace ui
