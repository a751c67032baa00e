// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/wiring/ohmmeter_page.h"
#include "ui/wiring/wiring_page.h"
namespace ui {
bool WiringPage::writeSheet(const QString&) { return false; }
void WiringPage::print() {}
bool OhmmeterPage::writeSheet(const QString&) { return false; }
void OhmmeterPage::print() {}
}  // namespace ui
