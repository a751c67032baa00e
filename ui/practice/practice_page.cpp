// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/practice/practice_page.h"

namespace ui {

PracticePage::PracticePage(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
  setObjectName("practicePage");
}

}  // namespace ui
