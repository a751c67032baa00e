// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/another_document.h"

#include <QAbstractScrollArea>
#include <QScrollBar>

#include "ui/whatif/what_if_panel.h"

namespace ui {

void showFromBeginning(const QWidget& window) {
  for (const auto* area : window.findChildren<QAbstractScrollArea*>())
    for (QScrollBar* bar : {area->horizontalScrollBar(), area->verticalScrollBar()})
      bar->setValue(bar->minimum());
  for (auto* panel : window.findChildren<WhatIfPanel*>()) panel->forget();
}

}  // namespace ui
