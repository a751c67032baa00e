// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/review/review_page.h"

namespace ui {

ReviewPage::ReviewPage(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
  m_table = new SheetView(this);
  m_table->hide();
  setObjectName("reviewPage");
}

}  // namespace ui
