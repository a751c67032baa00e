// SPDX-License-Identifier: GPL-3.0-or-later
// What the window does for whoever is new to it.
#include <QAction>
#include <QApplication>
#include <QLabel>
#include <QTimer>

#include "ui/another_document.h"
#include "ui/document_file.h"
#include "ui/help/tour.h"
#include "ui/main_window.h"
#include "ui/safety/window_place.h"
#include "ui/safety/work_safety.h"

namespace ui {

void MainWindow::setDemo(std::function<core::Document()> demo) {
  m_demo = std::move(demo);
  findChild<QAction*>("openDemo")->setVisible(bool(m_demo));
}

void MainWindow::openDemo() {
  if (!m_demo || !mayDiscard()) return;
  rememberWhereWeAre();
  m_safety->leave();
  rememberLastDocument({});
  showAsUnsaved(tr("Demo (invented data)"));
  m_session.reset(m_demo());
  showFromBeginning(*this);
  enlarge(nullptr);
  say(tr("Invented data, to be tried out: no file changes unless you save it under a name."));
}

/// Comes after the first paint, which it must not hold up.
void MainWindow::offerTour() {
  constexpr int moment_ms = 700;
  const QString platform = QGuiApplication::platformName();
  if (tourWasSeen() || platform == "offscreen" || platform.startsWith("minimal")) return;
  QTimer::singleShot(moment_ms, this, [this] {
    if (isVisible() && !QApplication::activeModalWidget()) showTour();
  });
}

void MainWindow::showTour() {
  enlarge(nullptr);
  Tour::start(*this, usualTour(*this, bool(m_demo)));
}

}  // namespace ui
