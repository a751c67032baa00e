// SPDX-License-Identifier: GPL-3.0-or-later
#include <QApplication>
#include <QFileInfo>
#include <QIcon>
#include <clocale>
#include <csignal>

#include "app/command_line.h"
#include "app/demo.h"
#include "app/end_signals.h"
#include "app/files.h"
#include "app/output.h"
#include "ui/access/access.h"
#include "ui/frame_style.h"
#include "ui/locale.h"
#include "ui/main_window.h"
#include "ui/session.h"
#include "ui/state_file.h"

namespace {

bool hasDisplay() {
  return qEnvironmentVariableIsSet("DISPLAY") || qEnvironmentVariableIsSet("WAYLAND_DISPLAY") ||
         qEnvironmentVariableIsSet("QT_QPA_PLATFORM");
}

int openWindow(const app::Request& request, int& argc, char** argv) {
  if (!request.file.empty())
    if (const auto usable = app::requireRegularFile(request.file); !usable) return app::fail(usable.error());
  if (!hasDisplay())
    return app::fail({"", "there is no display to open a window on",
                      "Use a command that needs none; \"shuntwright --help\" lists them"});
  QApplication application(argc, argv);
  QApplication::setStyle(new ui::FrameStyle);
  ui::installAccess();
  std::setlocale(LC_NUMERIC, "C");  // QApplication takes the user's; files and the solver want a point
  QApplication::setApplicationName("Shuntwright");
  QApplication::setApplicationVersion(SHUNTWRIGHT_VERSION);
  QApplication::setDesktopFileName("org.shuntwright.Shuntwright");
  QApplication::setWindowIcon(QIcon(":/shuntwright.svg"));
  const ui::DamagedState damaged = ui::setDamagedStateAside();
  ui::useLanguage(ui::chosenLanguage());
  const app::EndSignals ending;
  ui::Session session(request.demo ? app::demoDocument() : core::Document{});
  ui::MainWindow window(session);
  window.setDemo(app::demoDocument);
  if (request.demo) window.showAsUnsaved(QApplication::translate("main", "Demo (invented data)"));
  if (!request.demo) window.restoreLayout();
  window.show();
  if (!request.file.empty())
    window.openFile(QString::fromStdString(request.file));
  else if (!request.demo)
    window.openLast();
  if (!damaged.isEmpty()) window.warn(damaged.sentence());
  window.offerRecovery();
  if (request.file.empty()) window.offerTour();
  return QApplication::exec();
}

}  // namespace

int main(int argc, char** argv) {
  Q_INIT_RESOURCE(resources);  // lies in a static library, from where nothing else pulls it in
  // A write beyond a file-size limit is an error to report, not a reason to be killed.
  std::signal(SIGXFSZ, SIG_IGN);
  const app::Request request = app::CommandLine().read(argc, argv);
  if (request.exit) return *request.exit;
  if (request.command) return request.command();
  return openWindow(request, argc, argv);
}
