// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QApplication>
#include <QLocale>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <clocale>

#include "ui/locale.h"

int main(int argc, char** argv) {
  Q_INIT_RESOURCE(resources);  // lies in a static library, from where nothing else pulls it in
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  QCoreApplication::setAttribute(Qt::AA_DontUseNativeDialogs);
  testing::InitGoogleTest(&argc, argv);
  QApplication app(argc, argv);
  std::setlocale(LC_NUMERIC, "C");
  QApplication::setStyle("Fusion");
  QLocale::setDefault(QLocale::c());
  QStandardPaths::setTestModeEnabled(true);
  // Nothing of the user's is read or changed, and tests that run at the same time do not meet.
  const QTemporaryDir state;
  qputenv("XDG_STATE_HOME", state.path().toUtf8());
  ui::useLanguage("en");  // counts have their plural forms from there
  return RUN_ALL_TESTS();
}
