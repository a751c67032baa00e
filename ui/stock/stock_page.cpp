// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stock/stock_page.h"

namespace ui {

StockPage::StockPage(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
  m_table = new SheetView(this);
  m_table->hide();
  setObjectName("stockPage");
}

}  // namespace ui
