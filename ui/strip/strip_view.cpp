// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/strip_view.h"

namespace ui {

StripView::StripView(Session& session, RecordingStore& store, QWidget* parent)
    : QWidget(parent), m_session(session), m_store(store) {
  setObjectName("stripView");
  setFocusPolicy(Qt::StrongFocus);
}

}  // namespace ui
