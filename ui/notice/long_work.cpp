// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/notice/long_work.h"

#include <QApplication>
#include <QWidget>

#include "ui/notice/desktop_notice.h"
#include "ui/preferences/preferences.h"

namespace ui {
namespace {

std::chrono::milliseconds worthTelling = LongWork::usuallyLong;

}  // namespace

void LongWork::setLong(std::chrono::milliseconds least) { worthTelling = least; }

void LongWork::done(const QString& sentence) const {
  if (std::chrono::milliseconds(m_clock.elapsed()) < worthTelling) return;
  if (QApplication::activeWindow() || !preferences().notify) return;
  for (QWidget* window : QApplication::topLevelWidgets())
    if (window->isVisible() && window->objectName() == "mainWindow") QApplication::alert(window);
  DesktopNotice::instance().show(QApplication::applicationName(), sentence);
}

}  // namespace ui
