// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/present/presentation.h"

namespace ui {

Presentation::Presentation(Session& session, View, QWidget* parent)
    : QWidget(parent, Qt::Window), m_session(session) {
  setObjectName("presentation");
}

}  // namespace ui
