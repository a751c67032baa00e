// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pictures.h"

#include <QApplication>
#include <QBuffer>
#include <QDir>
#include <QElapsedTimer>
#include <QPalette>
#include <QThreadPool>
#include <algorithm>

#include "ui/campaign/channel_rows.h"
#include "ui/main_window.h"
#include "ui/recording/recording_store.h"
#include "ui/safe_file.h"
#include "ui/theme.h"
#include "ui/whatif/what_if_panel.h"

#include "core/units/language.h"

namespace ui {
namespace {

/// What a picture shows.
struct Shot {
  const char* name;
  QSize size;
  bool dark;
  std::size_t channel;
  std::size_t step;
  bool compared;
  std::vector<const char*> actions = {};       ///< object names of the window's actions to trigger first
  std::optional<core::Alteration> tried = {};  ///< on the page What if
};

constexpr std::size_t lastChannel = SIZE_MAX;
/// What due dates are compared with in the pictures, so that they do not change with the days.
constexpr core::Date pictureDay = std::chrono::year{2026} / 5 / 20;
constexpr core::Alteration moistureOverGauge1{core::AlterationKind::Moisture, 0, 0, 2e6};

const std::vector<Shot>& shots() {
  static const std::vector<Shot> all = {
      {"window-light", {1280, 800}, false, 0, 1, false},
      {"window-dark", {1280, 800}, true, 0, 1, false},
      {"window-light-large", {1920, 1080}, false, 1, 2, false},
      {"window-dark-large", {1920, 1080}, true, lastChannel, 2, false},
      {"comparison", {1280, 800}, false, 1, 2, true},
      {"comparison-dark", {1280, 800}, true, 1, 2, true},
      {"bridge", {1280, 800}, false, 0, 6, false, {"viewBridge"}},
      {"polarity", {1280, 800}, false, 0, 6, false, {"viewBridge", "bridgePolarity"}},
      {"what-if", {1280, 800}, false, 0, 6, false, {"viewBridge", "bridgeWhatIf"}, moistureOverGauge1},
      {"practice", {1280, 800}, false, 0, 1, false, {"teachPractice"}},
      {"sequence", {1280, 800}, false, 1, 2, false, {"viewSequence"}},
      {"outcome", {1280, 800}, false, 1, 2, true, {"viewOutcome"}},
      {"diagnosis", {1280, 800}, false, 1, 2, false, {"viewOutcome", "outcomeDiagnosis"}},
      {"change", {1280, 800}, false, 1, 2, true, {"viewOutcome", "outcomeChange"}},
      {"change-dark", {1920, 1080}, true, 1, 2, true, {"viewOutcome", "outcomeChange"}},
      {"overview", {1280, 800}, false, 1, 2, false, {"channelOverview"}},
      {"record", {1280, 800}, false, 1, 2, false, {"recordPage"}},
      {"budget", {1280, 800}, false, 0, 3, false, {"viewBudget"}},
      {"review", {1280, 800}, false, 5, 2, false, {"prepareReview"}},
      {"stock", {1280, 800}, false, 0, 2, false, {"prepareStock"}},
      {"wiring", {1280, 800}, false, 0, 1, false, {"prepareWiring"}},
      {"wiring-dark", {1920, 1080}, true, lastChannel, 2, false, {"prepareWiring"}},
      {"ohmmeter", {1280, 800}, false, 0, 1, false, {"prepareOhmmeter"}},
      {"run", {1280, 800}, false, 0, 1, false, {"prepareRun"}},
      {"recording", {1280, 800}, false, 0, 2, false, {"viewRecording"}},
      {"recording-dark", {1920, 1080}, true, 1, 2, false, {"viewRecording"}},
  };
  return all;
}

/// Whether the recording of the chosen check is still to be shown.
bool isReading(const Session& session, const MainWindow& window) {
  if (!session.check() || !session.check()->recording) return false;
  const auto* store = window.findChild<RecordingStore*>();
  const RecordingStore::State state = store->state(*session.check()->recording);
  return state == RecordingStore::State::Absent || state == RecordingStore::State::Reading;
}

/// Lets layouts and charts settle, charts place their labels only when shown, and waits for a recording and
/// whatever else is worked out aside.
void settle(const Session& session, const MainWindow& window, int least_ms) {
  QElapsedTimer timer;
  timer.start();
  const auto isBusy = [&] {
    return isReading(session, window) || session.rows().waiting() > 0 ||
           QThreadPool::globalInstance()->activeThreadCount() > 0;
  };
  // What one piece of work finds can ask for another: only a while without any is the end. On a busy machine
  // that while can pass in one turn, and what was asked for in it is still to be done: some turns too.
  constexpr int quietTurns = 10;
  qint64 busyUntil_ms = 0;
  for (int quiet = 0; timer.elapsed() < std::max<qint64>(least_ms, busyUntil_ms + 100) || quiet < quietTurns;
       ++quiet) {
    QApplication::processEvents(QEventLoop::AllEvents, 20);
    if (!isBusy() || timer.elapsed() >= 10000) continue;
    busyUntil_ms = timer.elapsed();
    quiet = 0;
  }
}

/// The cause of a change and the curves of a recording come on threads of their own, a while after the rest.
bool waitsForMore(std::string_view name) { return name.starts_with("change") || name == "recording"; }

QByteArray pictureOf(const core::Document& document, const Shot& shot) {
  QApplication::setPalette(shot.dark ? darkPalette() : lightPalette());
  Session session(document);
  session.setToday(pictureDay);
  MainWindow window(session);
  window.showAsUnsaved(toQString(document.title));
  window.resize(shot.size);
  window.resetLayout();
  window.show();
  if (!document.channels.empty()) {
    session.selectChannel(std::min(shot.channel, document.channels.size() - 1));
    session.selectStep(shot.step);
    if (shot.compared && session.selection().check > 0u) session.compareWith(*session.selection().check - 1);
  }
  for (const char* action : shot.actions) window.findChild<QAction*>(action)->trigger();
  if (shot.tried) window.findChild<WhatIfPanel*>()->tryOut(*shot.tried);
  // The cause of a change is looked for aside.
  settle(session, window, waitsForMore(shot.name) ? 1500 : 120);
  QByteArray png;
  QBuffer buffer(&png);
  buffer.open(QIODevice::WriteOnly);
  window.grab().save(&buffer, "PNG", 0);  // packed as small as can be; PNG loses nothing
  return png;
}

}  // namespace

QStringList pictureNames() {
  QStringList names;
  for (const Shot& shot : shots()) names << shot.name;
  return names;
}

core::Result<QStringList> takePictures(const core::Document& document, const QString& folder,
                                       const QStringList& names) {
  if (!QDir().mkpath(folder))
    return core::Error{folder.toStdString(), core::say("the folder cannot be made"),
                       core::say("Choose another folder")};
  const QPalette before = QApplication::palette();
  QStringList paths;
  for (const Shot& shot : shots()) {
    if (!names.contains(shot.name)) continue;
    const QString path = QDir(folder).filePath(QString(shot.name) + ".png");
    if (const auto saved = saveBytes(path, pictureOf(document, shot)); !saved) return saved.error();
    paths << path;
  }
  QApplication::setPalette(before);
  return paths;
}

}  // namespace ui
