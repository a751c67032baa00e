// SPDX-License-Identifier: GPL-3.0-or-later
// soak_ui_driver FOLDER ROUNDS [LOOK_AT]
//
// A working day in one process, without its pauses: every round opens a document, edits it, looks at every
// page, takes in a recording, saves it under another name, writes reports and closes it. FOLDER holds
// plan.bridgecal and post_test.csv and is all that can be written to. Prints one line of JSON with what the
// process holds after round LOOK_AT (10) and after the last.
#include <malloc.h>

#include <QElapsedTimer>
#include <QFileInfo>
#include <QPixmapCache>
#include <QProcess>
#include <QSignalSpy>
#include <QTest>
#include <fstream>
#include <nlohmann/json.hpp>

#include "core/document/edits.h"
#include "tests/reliability/monkey_views.h"
#include "tests/reliability/window_program.h"
#include "tests/support/window_walk.h"
#include "ui/main_window.h"
#include "ui/recording/recording_dialog.h"
#include "ui/report/report_dialog.h"

namespace {

using namespace reliability;

/// What a process can leak.
struct Holdings {
  double resident_MB = 0, heap_MB = 0;
  qsizetype files = 0, threads = 0, objects = 0, windows = 0;
};

Holdings holdings(const QObject& window) {
  // Qt keeps up to 10 MB of small pictures that nobody may want again, which takes some 400 rounds to fill.
  QPixmapCache::clear();
  malloc_trim(0);  // what is free belongs to no one
  std::ifstream pages("/proc/self/statm");
  double whole = 0, resident = 0;
  pages >> whole >> resident;
  const auto entries = [](const char* place) {
    return QDir(place).entryList(QDir::AllEntries | QDir::NoDotAndDotDot | QDir::System).size();
  };
  return {.resident_MB = resident * static_cast<double>(sysconf(_SC_PAGESIZE)) / 1e6,
          .heap_MB = static_cast<double>(mallinfo2().uordblks + mallinfo2().hblkhd) / 1e6,
          .files = entries("/proc/self/fd"),
          .threads = entries("/proc/self/task"),
          .objects = window.findChildren<QObject*>().size() + qApp->findChildren<QObject*>().size(),
          .windows = QApplication::topLevelWidgets().size()};
}

nlohmann::ordered_json told(const Holdings& held) {
  return {{"resident_MB", held.resident_MB}, {"heap_MB", held.heap_MB}, {"files", held.files},
          {"threads", held.threads},         {"objects", held.objects}, {"windows", held.windows}};
}

/// One round of the day; tells what did not work.
class Round {
 public:
  Round(ui::Session& session, ui::MainWindow& window, QString folder)
      : m_session(session), m_window(window), m_folder(std::move(folder)) {}

  QStringList run(int number) {
    need(m_window.openFile(m_folder + "/plan.bridgecal"), "open");
    edit(number);
    visit();
    takeRecording();
    need(m_window.saveAs(m_folder + "/saved.bridgecal"), "save");
    report();
    m_window.findChild<QAction*>("new")->trigger();  // closes what is open
    need(m_session.document().channels.empty(), "close");
    settle();
    return m_failed;
  }

 private:
  void need(bool fine, const char* what) {
    if (!fine) m_failed << what;
  }
  static void settle() {
    QCoreApplication::processEvents();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  }

  void edit(int number) {
    for (std::size_t k = 0; k < m_session.document().channels.size(); ++k) {
      m_session.selectChannel(k);
      core::Channel next = *m_session.channel();
      next.note = "round " + std::to_string(number);
      if (!next.setup.shunts.empty()) next.setup.shunts[0].resistance = core::Resistance(59'000 + number);
      m_session.editChannel("Soak", std::move(next));
      settle();
    }
    m_session.history().undo();
    m_session.history().redo();
    m_session.selectChannel(0);
  }

  /// All views, pages and dialogs; a dialog is left when it was drawn.
  void visit() {
    QTimer leave;
    QObject::connect(&leave, &QTimer::timeout, [] {
      if (auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget())) dialog->reject();
    });
    leave.start(30);
    for (const MonkeyView& view : monkeyViews()) {
      QAction* action = m_window.findChild<QAction*>(view.command);
      if (!action) continue;
      action->trigger();
      settle();
      for (QWidget* other : QApplication::topLevelWidgets())
        if (other != &m_window && other->isVisible()) other->close();
      settle();
    }
    m_window.findChild<QAction*>("viewAll")->trigger();
    settle();
  }

  void takeRecording() {
    ui::RecordingDialog dialog(m_session, m_window.path(), &m_window);
    QSignalSpy done(&dialog, &ui::RecordingDialog::readingDone);
    dialog.show();
    dialog.readFile(m_folder + "/post_test.csv");
    need(!done.isEmpty() || done.wait(60'000), "read the recording");
    dialog.accept();
    need(QTest::qWaitFor([&] { return !dialog.isVisible(); }, 60'000) && dialog.taken() > 0,
         "take the readings");
  }

  void report() {
    ui::ReportDialog dialog(m_session, m_folder + "/report", &m_window);
    dialog.show();
    for (const char* name : {"report.pdf", "report.html", "report.xlsx"})
      need(dialog.writeTo(m_folder + "/" + name) && QFileInfo(m_folder + "/" + name).size() > 1000, name);
    dialog.close();
  }

  ui::Session& m_session;
  ui::MainWindow& m_window;
  QString m_folder;
  QStringList m_failed;
};

}  // namespace

int main(int argc, char** argv) {
  Q_INIT_RESOURCE(resources);
  if (argc < 3) return std::fprintf(stderr, "see the head of the source\n"), 2;
  const QString folder = QDir(argv[1]).absolutePath();
  const int rounds = std::atoi(argv[2]), lookAt = argc > 3 ? std::atoi(argv[3]) : 10;
  const auto application = windowProgram(argc, argv, folder);
  nlohmann::ordered_json all{{"rounds", rounds}};
  QStringList failed;
  {
    ui::Session session;
    ui::MainWindow window(session);
    window.show();
    QElapsedTimer clock;
    clock.start();
    for (int round = 1; round <= rounds; ++round) {
      failed << Round(session, window, folder).run(round);
      const Holdings held = holdings(window);
      if (round == lookAt) all["early"] = told(held);
      if (round == rounds) all["late"] = told(held);
      all["heap_MB"].push_back(std::round(held.heap_MB * 1e4) / 1e4);
    }
    all["seconds"] = static_cast<double>(clock.elapsed()) / 1e3;
  }
  for (const QString& what : failed) all["failed"].push_back(what.toStdString());
  std::printf("%s\n", all.dump().c_str());
  return failed.isEmpty() ? 0 : 1;
}
