// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/record/record_page.h"

namespace ui {

RecordPage::RecordPage(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
  setObjectName("recordPage");
}

void RecordPage::submit() {}
void RecordPage::accept() {}
void RecordPage::giveBack() {}
void RecordPage::addRemark() {}

}  // namespace ui
