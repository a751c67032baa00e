// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/run/guided_run.h"

namespace ui {

GuidedRun::GuidedRun(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
  setObjectName("guidedRun");
}

}  // namespace ui
