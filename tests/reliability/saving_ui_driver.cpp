// SPDX-License-Identifier: GPL-3.0-or-later
// Saves with the program's own functions, for those who let it fail or kill it:
//   save NEW FILE      the document of NEW under the name FILE; "saved", or "not saved: " with the reason
//   recovery NEW FILE  the same as a recovery copy
//   careless NEW FILE  the same as nobody should: in place, and without looking
//   loop NEW FILE      again and again with another title: "begin K SHA256", then "saved K SHA256"
//   keep NEW FILE      the same as recovery copies
//   state VALUE        what is remembered for this user: sets "VALUE", tells what a reader finds
// The call access("/saving-begins") stands in a trace before the first call of the first save.
#include <unistd.h>

#include <QCoreApplication>
#include <QDateTime>
#include <QFile>
#include <QFileInfo>
#include <QLockFile>
#include <csignal>
#include <cstdio>
#include <string>

#include "core/document/json_writer.h"
#include "core/record/revisions.h"
#include "ui/document_file.h"
#include "ui/safe_file.h"
#include "ui/safety/recovery_file.h"
#include "ui/state_file.h"

namespace {

/// At once: nothing may wait in a buffer when the program is killed.
void tell(const std::string& text) {
  const std::string line = text + "\n";
  if (::write(STDOUT_FILENO, line.data(), line.size()) < 0) std::perror("standard output");
}

void markBegin() { static_cast<void>(::access("/saving-begins", F_OK)); }

int told(const core::Result<void>& saved) {
  tell(saved ? "saved" : "not saved: " + saved.error().text());
  return saved ? 0 : 1;
}

/// With an entry of its history, as the window saves it.
core::Result<void> saved(core::Document document, const QString& file, QString* sha256) {
  const auto revised =
      core::withRevision(std::move(document), nullptr, {"A. Fen", "2026-05-11T08:00:00Z", "1"});
  return revised ? ui::saveDocument(*revised, file, sha256) : core::Result<void>(revised.error());
}

ui::RecoverySlot slotAt(const QString& file) { return {file, std::make_shared<QLockFile>(file + ".lock")}; }

core::Result<void> kept(const core::Document& document, const QString& file) {
  const ui::RecoverySlot slot = slotAt(file);
  return ui::writeRecovery(slot, {"/tail.bridgecal", "Tail", QDateTime::fromSecsSinceEpoch(0)}, document);
}

/// What the checks must be able to find.
core::Result<void> carelesslySaved(const core::Document& document, const QString& path) {
  const auto text = core::writeDocument(document);
  if (!text) return text.error();
  QFile file(path);
  file.open(QIODevice::WriteOnly | QIODevice::Truncate);
  file.write(text->data(), static_cast<qint64>(text->size()));
  file.close();
  return {};
}

/// Tells before each save by which hash its bytes can be known. The moment is fixed, so that they can be
/// told.
[[noreturn]] void saveForEver(core::Document document, const QString& file, bool recovery) {
  const std::string title = document.title;
  for (int count = 1;; ++count) {
    document.title = title + " " + std::to_string(count);
    const auto revised = core::withRevision(document, nullptr, {"A. Fen", "2026-05-11T08:00:00Z", "1"});
    const auto text = revised ? core::writeDocument(*revised) : core::Result<std::string>(revised.error());
    if (!text) std::_Exit(told(text.error()));
    const std::string name =
        std::to_string(count) + " " + ui::sha256Of(QByteArray::fromStdString(*text)).toStdString();
    tell("begin " + name);
    if (const auto done = recovery ? kept(*revised, file) : ui::saveDocument(*revised, file); !done)
      std::_Exit(told(done));
    tell("saved " + name);
  }
}

int remember(const char* value) {
  {
    QSettings state = ui::stateFile();
    state.setValue("campaign", value);
    state.sync();
    tell(state.status() == QSettings::NoError ? "saved" : "not saved: the settings say so");
  }
  tell("read " + ui::stateFile().value("campaign").toString().toStdString());
  return 0;
}

}  // namespace

int main(int argc, char** argv) {
  std::signal(SIGXFSZ, SIG_IGN);  // as the program does
  QCoreApplication application(argc, argv);
  const std::string what = argc > 1 ? argv[1] : "";
  if (what == "state" && argc == 3) return remember(argv[2]);
  if (argc != 4) return std::fputs("see the head of saving_ui_driver.cpp\n", stderr), 2;
  const auto document = ui::openDocument(QString::fromLocal8Bit(argv[2]));
  if (!document) return told(document.error());
  const QString file = QString::fromLocal8Bit(argv[3]);
  markBegin();
  if (what == "save") return told(saved(*document, file, nullptr));
  if (what == "careless") return told(carelesslySaved(*document, file));
  if (what == "recovery") return told(kept(*document, file));
  if (what == "loop" || what == "keep") saveForEver(*document, file, what == "keep");
  return 2;
}
