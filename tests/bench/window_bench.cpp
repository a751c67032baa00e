// SPDX-License-Identifier: GPL-3.0-or-later
// How long a person waits for the window: process start to first paint (target under 0.5 s warm), and
// one edit to all views repainted with 100 channels (target under 16 ms). Prints medians and worst.
#include <QApplication>
#include <QElapsedTimer>
#include <QProcess>
#include <QTableView>
#include <QTimer>
#include <algorithm>
#include <clocale>
#include <cstdio>

#include "tests/support/sample_channel.h"
#include "ui/bridge_view.h"
#include "ui/main_window.h"
#include "ui/outcome_view.h"

namespace {

core::Document documentOf(int channels) {
  const core::Channel channel = sample::withCheckReading(sample::nineStepChannel(), 1.001);
  core::Document document;
  for (int k = 0; k < channels; ++k)
    document = core::withChannelInserted(document, static_cast<std::size_t>(k), channel);
  return document;
}

void print(const char* what, std::vector<double> milliseconds) {
  std::sort(milliseconds.begin(), milliseconds.end());
  std::printf("%-48s median %7.2f ms   worst %7.2f ms   of %zu\n", what,
              milliseconds[milliseconds.size() / 2], milliseconds.back(), milliseconds.size());
}

/// The child process: opens the window and ends at the first idle moment after it was painted.
int openAndEnd(QApplication& app) {
  ui::Session session(documentOf(8));
  ui::MainWindow window(session);
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

void measureStart(const QString& program) {
  std::vector<double> times;
  for (int run = 0; run < 11; ++run) {
    QElapsedTimer timer;
    timer.start();
    QProcess::execute(program, {"--open-and-end"});
    if (run > 0)
      times.push_back(static_cast<double>(timer.nsecsElapsed()) / 1e6);  // the first run warms the caches
  }
  print("process start to painted window and end", times);
}

void measureEdit(QApplication& app) {
  ui::Session session(documentOf(100));
  ui::MainWindow window(session);
  window.resize(1920, 1080);
  window.resetLayout();
  window.show();
  for (int k = 0; k < 20; ++k) app.processEvents();
  session.selectStep(2);
  app.processEvents();
  PaintCounter bridge(window.findChild<ui::BridgeView*>());
  PaintCounter outcome(window.findChild<ui::OutcomeView*>());
  PaintCounter table(window.findChild<QTableView*>("sequenceTable")->viewport());
  std::vector<double> times;
  for (int run = 0; run < 200; ++run) {
    core::Channel next = *session.channel();
    next.setup.bridge.gauge.factor = run % 2 ? 2.0 : 2.1;
    QElapsedTimer timer;
    timer.start();
    session.editChannel("Change gauge factor", std::move(next));
    // The first round lays out and paints; the second takes what that has posted.
    app.processEvents();
    app.processEvents();
    times.push_back(static_cast<double>(timer.nsecsElapsed()) / 1e6);
  }
  print("edit to all views repainted, 100 channels", times);
  std::printf("  repaints per edit: bridge %.1f, outcome %.1f, sequence %.1f\n", bridge.count() / 200.0,
              outcome.count() / 200.0, table.count() / 200.0);
}

}  // namespace

int main(int argc, char** argv) {
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  QApplication app(argc, argv);
  std::setlocale(LC_NUMERIC, "C");
  QApplication::setStyle("Fusion");
  if (app.arguments().contains("--open-and-end")) return openAndEnd(app);
  measureStart(app.applicationFilePath());
  measureEdit(app);
  return 0;
}
