// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/offscreen.h"

#include <QApplication>
#include <QTemporaryDir>
#include <clocale>

#include "ui/frame_style.h"
#include "ui/locale.h"

namespace app {
namespace {

QtMessageHandler usualHandler = nullptr;

/// The offscreen platform says for every window that it knows no size hints, which nobody needs to read.
void withoutSizeHints(QtMsgType type, const QMessageLogContext& context, const QString& message) {
  if (message != "This plugin does not support propagateSizeHints()") usualHandler(type, context, message);
}

}  // namespace

int drawnOffscreen(const std::function<int()>& work) {
  // Qt complains on standard error when the session has no runtime folder, as under cron.
  QTemporaryDir runtime;
  if (qEnvironmentVariableIsEmpty("XDG_RUNTIME_DIR") && runtime.isValid())
    qputenv("XDG_RUNTIME_DIR", runtime.path().toUtf8());
  qputenv("QT_QPA_PLATFORM", "offscreen");
  usualHandler = qInstallMessageHandler(withoutSizeHints);
  int argc = 1;
  char name[] = "shuntwright";
  char* argv[] = {name, nullptr};
  QApplication application(argc, argv);
  QApplication::setStyle(new ui::FrameStyle);
  QApplication::setApplicationVersion(SHUNTWRIGHT_VERSION);  // stands at the foot of reports
  // Files are written with a point, wherever they are made. QApplication takes the user's C locale.
  std::setlocale(LC_NUMERIC, "C");
  ui::useLanguage("en");  // whatever the window speaks: a report chooses its own
  return work();
}

}  // namespace app
