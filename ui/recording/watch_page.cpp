// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/recording/watch_page.h"

namespace ui {

WatchPage::WatchPage(Session& session, RecordingStore& store, QWidget* parent)
    : QWidget(parent), m_session(session), m_store(store) {
  setObjectName("watchPage");
  setFocusPolicy(Qt::StrongFocus);
}

void WatchPage::setDocumentPath(const QString&) {}

}  // namespace ui
