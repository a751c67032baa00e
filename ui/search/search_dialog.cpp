// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/search/search_dialog.h"

namespace ui {

SearchDialog::SearchDialog(Session& session, QWidget* parent) : QDialog(parent), m_session(session) {
  setObjectName("searchDialog");
}

}  // namespace ui
