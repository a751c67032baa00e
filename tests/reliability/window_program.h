// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <sys/prctl.h>
#include <unistd.h>

#include <QApplication>
#include <QDir>
#include <QFile>
#include <QLocale>
#include <QMap>
#include <cerrno>
#include <clocale>
#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <memory>

#include "ui/access/access.h"
#include "ui/frame_style.h"
#include "ui/locale.h"

// The program without its `main`, where nothing that it does can reach beyond one folder.

namespace reliability {

/// Whoever clicks at random may not be the administrator. Stays readable for the leak check, which a process
/// that has changed its user is not by itself.
inline void beNobody(const QString& folder) {
  constexpr unsigned nobody = 65534;
  if (geteuid() != 0) return;
  if (chown(QFile::encodeName(folder).constData(), nobody, nobody) != 0 || setgid(nobody) != 0 ||
      setuid(nobody) != 0)
    std::fprintf(stderr, "still the administrator: %s\n", std::strerror(errno));
  prctl(PR_SET_DUMPABLE, 1);
}

/// Home, state and working folder lie in `folder`; before the QApplication.
inline void stayIn(const QString& folder) {
  beNobody(folder);
  for (const char* place : {"HOME", "TMPDIR"}) qputenv(place, folder.toUtf8());
  for (const char* place : {"STATE", "CONFIG", "DATA", "CACHE"}) {
    const QString inside = folder + "/." + QString(place).toLower();
    QDir().mkpath(inside);
    qputenv(("XDG_" + QByteArray(place) + "_HOME").constData(), inside.toUtf8());
  }
  const QString runtime = folder + "/.runtime";
  QDir().mkpath(runtime);
  QFile::setPermissions(runtime, QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
  qputenv("XDG_RUNTIME_DIR", runtime.toUtf8());
  qunsetenv("DBUS_SESSION_BUS_ADDRESS");  // nothing is told to the desktop of whoever runs this
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  QDir::setCurrent(folder);
}

/// What Qt complains about, each sentence counted, with its numbers taken out.
inline QMap<QString, int>& complaints() {
  static QMap<QString, int> all;
  return all;
}

inline void noteComplaint(QtMsgType type, const QMessageLogContext&, const QString& message) {
  if (type == QtDebugMsg || type == QtInfoMsg) return;
  static const QStringList usual{"This plugin does not support"};  // of the platform without a screen
  for (const QString& one : usual)
    if (message.startsWith(one)) return;
  QString kind = message.left(160);
  for (QChar& letter : kind)
    if (letter.isDigit()) letter = '#';
  if (complaints()[kind]++ == 0) std::fprintf(stderr, "Qt: %s\n", qPrintable(message.left(400)));
}

inline std::unique_ptr<QApplication> windowProgram(int& argc, char** argv, const QString& folder) {
  std::signal(SIGXFSZ, SIG_IGN);
  stayIn(folder);
  qInstallMessageHandler(noteComplaint);
  QCoreApplication::setAttribute(Qt::AA_DontUseNativeDialogs);
  auto application = std::make_unique<QApplication>(argc, argv);
  QApplication::setStyle(new ui::FrameStyle("Fusion"));
  ui::installAccess();
  std::setlocale(LC_NUMERIC, "C");
  QApplication::setApplicationName("Shuntwright");
  QApplication::setApplicationVersion("0");
  QApplication::setQuitOnLastWindowClosed(false);
  QLocale::setDefault(QLocale::c());
  ui::useLanguage("en");
  return application;
}

}  // namespace reliability
