// SPDX-License-Identifier: GPL-3.0-or-later
// How long a person waits for the window: process start to first paint (target under 0.5 s warm, under 1 s
// with a file of 1,000 channels), one edit to all views repainted (target under 16 ms), another channel
// chosen, the overview, a choice in the dialog that applies parts of a channel to others. Prints medians and
// worst, of the wall clock and of the processor's time, and the peak memory. `window_bench N` takes N
// channels instead of 1,000.
#include <sys/resource.h>

#include <QAbstractButton>
#include <QApplication>
#include <QElapsedTimer>
#include <QProcess>
#include <QTableView>
#include <QTemporaryDir>
#include <QTimer>
#include <algorithm>
#include <clocale>
#include <cstdio>

#include "tests/support/sample_channel.h"
#include "ui/apply_dialog.h"
#include "ui/bridge_view.h"
#include "ui/campaign/channel_rows.h"
#include "ui/campaign/overview_page.h"
#include "ui/document_file.h"
#include "ui/main_window.h"
#include "ui/outcome_view.h"

namespace {

/// Channels of nine steps with two checks each; one in fifty reads 3 % too much in the second.
core::Document documentOf(int channels) {
  const core::Channel sound =
      sample::withCheckReading(sample::withCheckReading(sample::nineStepChannel(), 1.001), 1.002);
  const core::Channel off =
      sample::withCheckReading(sample::withCheckReading(sample::nineStepChannel(), 1.001), 1.03);
  core::Document document;
  for (int k = 0; k < channels; ++k) {
    auto channel = std::make_shared<core::Channel>(k % 50 == 7 ? off : sound);
    channel->name = "TP-" + std::to_string(k + 1);
    channel->group = "group " + std::to_string(k / 40 + 1);
    document.channels.push_back(std::move(channel));
  }
  return document;
}

/// Wall clock and processor's time since it was made.
class Stopwatch {
 public:
  explicit Stopwatch(int who = RUSAGE_SELF) : m_who(who), m_cpu(cpu()) { m_wall.start(); }
  double wall_ms() const { return static_cast<double>(m_wall.nsecsElapsed()) / 1e6; }
  double cpu_ms() const { return cpu() - m_cpu; }

 private:
  double cpu() const {
    rusage usage{};
    getrusage(m_who, &usage);
    const auto ms = [](const timeval& time) {
      return 1e3 * static_cast<double>(time.tv_sec) + static_cast<double>(time.tv_usec) / 1e3;
    };
    return ms(usage.ru_utime) + ms(usage.ru_stime);
  }
  int m_who;
  double m_cpu;
  QElapsedTimer m_wall;
};

struct Times {
  std::vector<double> wall, cpu;
  void add(const Stopwatch& watch) {
    wall.push_back(watch.wall_ms());
    cpu.push_back(watch.cpu_ms());
  }
};

void print(const char* what, Times times) {
  std::sort(times.wall.begin(), times.wall.end());
  std::sort(times.cpu.begin(), times.cpu.end());
  const std::size_t middle = times.wall.size() / 2;
  std::printf("%-44s median %7.2f ms (cpu %7.2f)   worst %7.2f ms   of %zu\n", what, times.wall[middle],
              times.cpu[middle], times.wall.back(), times.wall.size());
}

double peakMemory_MB(int who) {
  rusage usage{};
  getrusage(who, &usage);
  return static_cast<double>(usage.ru_maxrss) / 1024;
}

/// The child process: opens the window, with a file when one is named, and ends at the first idle moment
/// after it was painted.
int openAndEnd(QApplication& app, const QString& path) {
  ui::Session session(path.isEmpty() ? documentOf(8) : core::Document{});
  ui::MainWindow window(session);
  if (!path.isEmpty()) window.openFile(path);
  window.show();
  QTimer::singleShot(0, &app, [&window] {
    window.grab();
    QApplication::quit();
  });
  return app.exec();
}

/// Counts how often a view is painted, so that a figure is not that of a view that never was. A view
/// made of others counts when any of them is painted.
class PaintCounter : public QObject {
 public:
  explicit PaintCounter(QWidget* view) {
    view->installEventFilter(this);
    for (auto* part : view->findChildren<QWidget*>()) part->installEventFilter(this);
  }
  bool eventFilter(QObject*, QEvent* event) override {
    if (event->type() == QEvent::Paint) ++m_count;
    return false;
  }
  int count() const { return m_count; }

 private:
  int m_count = 0;
};

void measureStart(const QString& program, const char* what, const QStringList& arguments, int runs) {
  Times times;
  for (int run = 0; run <= runs; ++run) {
    const Stopwatch watch(RUSAGE_CHILDREN);
    QProcess::execute(program, arguments);
    if (run > 0) times.add(watch);  // the first run warms the caches
  }
  print(what, times);
}

void settle(QApplication& app) {
  for (int k = 0; k < 20; ++k) app.processEvents();
}

void measureEdit(QApplication& app, ui::Session& session, ui::MainWindow& window) {
  session.selectStep(2);
  settle(app);
  PaintCounter bridge(window.findChild<ui::BridgeView*>());
  PaintCounter outcome(window.findChild<ui::OutcomeView*>());
  PaintCounter table(window.findChild<QTableView*>("sequenceTable")->viewport());
  Times times;
  for (int run = 0; run < 200; ++run) {
    core::Channel next = *session.channel();
    next.setup.bridge.gauge.factor = run % 2 ? 2.0 : 2.1;
    const Stopwatch watch;
    session.editChannel("Change gauge factor", std::move(next));
    // The first round lays out and paints; the second takes what that has posted.
    app.processEvents();
    app.processEvents();
    times.add(watch);
  }
  print("edit to all views repainted", times);
  std::printf("  repaints per edit: bridge %.1f, outcome %.1f, sequence %.1f\n", bridge.count() / 200.0,
              outcome.count() / 200.0, table.count() / 200.0);
}

void measureChoice(QApplication& app, ui::Session& session) {
  Times times;
  const std::size_t channels = session.document().channels.size();
  for (std::size_t run = 0; run < 100; ++run) {
    const Stopwatch watch;
    session.selectChannel(37 * (run + 1) % channels);
    app.processEvents();
    app.processEvents();
    times.add(watch);
  }
  print("another channel chosen to all views repainted", times);
}

void measureOverview(QApplication& app, ui::Session& session, ui::MainWindow& window) {
  auto* page = window.findChild<ui::OverviewPage*>();
  Times shown;
  const Stopwatch all;
  window.findChild<QAction*>("channelOverview")->trigger();
  settle(app);
  shown.add(all);
  print("overview: shown, not yet worked out", shown);
  session.rows().waitForAll();
  settle(app);
  std::printf("  all worked out after %.0f ms (cpu %.0f ms)\n", all.wall_ms(), all.cpu_ms());
  Times edits;
  for (int run = 0; run < 50; ++run) {
    const std::size_t at = static_cast<std::size_t>(run) % session.document().channels.size();
    core::Channel next = *session.document().channels[at];
    next.note = "note " + std::to_string(run);
    const Stopwatch watch;
    session.edit("Change note", core::withChannel(session.document(), at, std::move(next)));
    app.processEvents();
    app.processEvents();
    edits.add(watch);
  }
  print("overview: edit of a note to repaint", edits);
  Times sorts;
  auto* table = page->findChild<QTableView*>("overviewTable");
  for (int run = 0; run < 30; ++run) {
    const Stopwatch watch;
    table->sortByColumn(run % table->model()->columnCount(),
                        run % 4 ? Qt::AscendingOrder : Qt::DescendingOrder);
    app.processEvents();
    app.processEvents();
    sorts.add(watch);
  }
  print("overview: sorted by another column", sorts);
}

void measureApply(QApplication& app, ui::Session& session) {
  ui::ApplyDialog dialog(session);
  dialog.show();
  dialog.findChild<QAbstractButton*>("applyAll")->click();
  settle(app);
  Times times;
  for (int run = 0; run < 20; ++run) {
    const Stopwatch watch;
    dialog.findChild<QAbstractButton*>("applyLimits")->click();
    app.processEvents();
    times.add(watch);
  }
  print("apply to channels: a choice of parts", times);
}

void measureWindow(QApplication& app, int channels) {
  ui::Session session(documentOf(channels));
  ui::MainWindow window(session);
  window.resize(1920, 1080);
  window.resetLayout();
  window.show();
  settle(app);
  std::printf("%d channels\n", channels);
  measureEdit(app, session, window);
  measureChoice(app, session);
  measureOverview(app, session, window);
  measureApply(app, session);
  std::printf("  peak memory %.0f MB\n", peakMemory_MB(RUSAGE_SELF));
}

}  // namespace

int main(int argc, char** argv) {
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  QApplication app(argc, argv);
  std::setlocale(LC_NUMERIC, "C");
  QApplication::setStyle("Fusion");
  const QStringList arguments = app.arguments();
  if (arguments.contains("--open-and-end"))
    return openAndEnd(app, arguments.size() > 2 ? arguments[2] : QString());
  const int channels = arguments.size() > 1 ? arguments[1].toInt() : 1000;
  const QString program = app.applicationFilePath();
  measureStart(program, "process start to painted window and end", {"--open-and-end"}, 10);
  const QTemporaryDir folder;
  const QString path = folder.filePath("campaign.bridgecal");
  if (const auto saved = ui::saveDocument(documentOf(channels), path); !saved) return 1;
  measureStart(program, "the same with a file of that many channels", {"--open-and-end", path}, 5);
  std::printf("  peak memory %.0f MB\n", peakMemory_MB(RUSAGE_CHILDREN));
  measureWindow(app, channels);
  return 0;
}
