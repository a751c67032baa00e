// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/apply_dialog.h"

namespace ui {

ApplyDialog::ApplyDialog(Session& session, QWidget* parent) : QDialog(parent), m_session(session) {
  setObjectName("applyDialog");
}

}  // namespace ui
