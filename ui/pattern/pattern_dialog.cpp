// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pattern/pattern_dialog.h"

namespace ui {

PatternDialog::PatternDialog(Session& session, QWidget* parent) : QDialog(parent), m_session(session) {
  setObjectName("patternDialog");
}

}  // namespace ui
