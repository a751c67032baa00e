// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/campaign/overview_page.h"

namespace ui {

OverviewPage::OverviewPage(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
  setObjectName("overviewPage");
}

void OverviewPage::importChannels(const QString&) {}
void OverviewPage::copyChannel() {}
void OverviewPage::editChosen() {}

}  // namespace ui
