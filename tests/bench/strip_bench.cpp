// SPDX-License-Identifier: GPL-3.0-or-later
// What a frame of the strip costs while it is panned and zoomed, and while a span is dragged, for recordings
// of 1e6 to 1e8 samples (target: 60 frames a second, 16.7 ms), with evenly spaced and with read times. Times
// of the processor, since other work on the machine is none of the strip's. Prints medians and worst.
#include <QApplication>
#include <QMouseEvent>
#include <QTemporaryDir>
#include <algorithm>
#include <clocale>
#include <cmath>
#include <cstdio>
#include <ctime>

#include "tests/support/sample_channel.h"
#include "ui/strip/strip_view.h"

namespace {

double processor_ms() {
  timespec now{};
  clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
  return 1e3 * static_cast<double>(now.tv_sec) + 1e-6 * static_cast<double>(now.tv_nsec);
}

template <class Work>
double cost_ms(const Work& work) {
  const double before = processor_ms();
  work();
  return processor_ms() - before;
}

void print(const char* what, std::size_t samples, std::vector<double> costs_ms) {
  std::sort(costs_ms.begin(), costs_ms.end());
  std::printf("%-34s %11zu samples   median %6.2f ms   worst %6.2f ms   of %zu\n", what, samples,
              costs_ms[costs_ms.size() / 2], costs_ms.back(), costs_ms.size());
}

/// Steps of 1/9 of the recording with a cheap noise.
std::vector<double> valuesOf(std::size_t samples) {
  std::vector<double> values(samples);
  std::uint32_t state = 1;
  for (std::size_t k = 0; k < samples; ++k) {
    state = state * 1664525u + 1013904223u;
    values[k] = 500.0 * static_cast<double>(9 * k / samples % 4) + 1e-9 * state;
  }
  return values;
}

std::shared_ptr<const ui::OpenRecording> recordingOf(std::size_t samples, bool even, const QString& path) {
  auto open = std::make_shared<ui::OpenRecording>();
  open->path = path;
  const double spacing_s = 1e-3;
  if (even) {
    open->recording.time = core::TimeAxis::even(0, spacing_s, samples);
  } else {
    std::vector<double> times(samples);
    for (std::size_t k = 0; k < samples; ++k) times[k] = spacing_s * static_cast<double>(k);
    open->recording.time = core::TimeAxis(std::move(times));
  }
  open->recording.columns.push_back({"TP-01", "", valuesOf(samples)});
  const double cost = cost_ms([&] { open->envelopes = ui::envelopesOf(open->recording); });
  std::printf("%-34s %11zu samples   %6.1f ms, once\n", "envelope", samples, cost);
  return open;
}

core::Channel channelOf(const core::RecordingReference& reference, double length_s) {
  core::Channel channel = sample::withCheckReading(sample::nineStepChannel(), 1);
  channel.checks[0].recording = reference;
  for (std::size_t k = 0; k < 9; ++k) {
    channel.checks[0].readings[k]->begin = core::Duration(length_s * (static_cast<double>(k) + 0.1) / 9);
    channel.checks[0].readings[k]->end = core::Duration(length_s * (static_cast<double>(k) + 0.9) / 9);
  }
  return channel;
}

void mouse(QWidget& chart, QEvent::Type type, QPointF at) {
  const auto button = type == QEvent::MouseMove ? Qt::NoButton : Qt::LeftButton;
  QMouseEvent event(type, at, chart.mapToGlobal(at), button, Qt::LeftButton, Qt::NoModifier);
  QApplication::sendEvent(&chart, &event);
}

void measure(std::size_t samples, bool even) {
  QTemporaryDir folder;
  ui::RecordingStore store;
  store.setFolder(folder.path());
  const core::RecordingReference reference{"run.csv", 1, std::string(64, '0'), "TP-01", {}};
  store.put(recordingOf(samples, even, store.pathOf(reference)));
  ui::Session session(sample::documentOf({channelOf(reference, 1e-3 * static_cast<double>(samples))}));
  ui::StripView view(session, store);
  view.resize(1900, 980);
  view.show();
  QApplication::processEvents();
  ui::StripChart& chart = view.chart();
  const auto frame = [&] {
    chart.repaint();
    QApplication::processEvents();
  };
  std::vector<double> zooming, panning, dragging;
  const double all_s = chart.end_s() - chart.begin_s();
  for (int k = 0; k < 200; ++k)
    zooming.push_back(cost_ms([&] {
      chart.zoom(k % 100 < 50 ? 0.75 : 1 / 0.75, 0.37 * all_s);
      frame();
    }));
  for (int k = 0; k < 200; ++k) {
    const double shown_s = all_s / (1 + k / 20), begin_s = (all_s - shown_s) * (k % 20) / 20;
    panning.push_back(cost_ms([&] {
      chart.showBetween(begin_s, begin_s + shown_s);
      frame();
    }));
  }
  chart.showAll();
  QApplication::processEvents();
  const QPointF from(chart.xOf(all_s * 1.1 / 9), chart.laneRect(0).center().y());
  mouse(chart, QEvent::MouseButtonPress, from);
  for (int k = 0; k < 100; ++k)
    dragging.push_back(cost_ms([&] {
      mouse(chart, QEvent::MouseMove, from + QPointF(5 + k % 50, 0));
      frame();
    }));
  chart.dropPreview();
  print(even ? "zoom, even times" : "zoom, read times", samples, zooming);
  print(even ? "pan, even times" : "pan, read times", samples, panning);
  print("drag an edge", samples, dragging);
}

}  // namespace

int main(int argc, char** argv) {
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  QApplication app(argc, argv);
  std::setlocale(LC_NUMERIC, "C");
  std::setvbuf(stdout, nullptr, _IOLBF, 0);
  QApplication::setStyle("Fusion");
  for (const std::size_t samples : {1'000'000u, 10'000'000u}) measure(samples, false);
  measure(100'000'000, true);
  return 0;
}
