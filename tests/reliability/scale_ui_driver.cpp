// SPDX-License-Identifier: GPL-3.0-or-later
// The window with much in it. Prints a line of JSON: milliseconds of the processor that this thread, the
// window's, worked without looking at its events, the longest of each kind of work, and the most memory.
//
//   scale_ui_driver channels COUNT FOLDER   a document of so many channels opened, chosen from, edited, saved
//   scale_ui_driver strip SAMPLES FOLDER    a recording of so many samples zoomed and panned
#include <sys/resource.h>

#include <QAction>
#include <QApplication>
#include <QTableView>
#include <algorithm>
#include <clocale>
#include <cstdio>
#include <ctime>
#include <string>

#include "tests/support/sample_channel.h"
#include "ui/campaign/channel_rows.h"
#include "ui/campaign/overview_page.h"
#include "ui/document_file.h"
#include "ui/frame_style.h"
#include "ui/locale.h"
#include "ui/main_window.h"
#include "ui/strip/strip_view.h"

namespace {

double processor_ms() {
  timespec now{};
  clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
  return 1e3 * double(now.tv_sec) + 1e-6 * double(now.tv_nsec);
}

class Told {
 public:
  /// The longest of all that bear a name.
  template <class Work>
  void measure(const std::string& name, const Work& work) {
    const double before = processor_ms();
    work();
    QApplication::processEvents();
    note(name, processor_ms() - before);
  }
  void note(const std::string& name, double value) {
    auto found = std::find_if(m_all.begin(), m_all.end(), [&](const auto& one) { return one.first == name; });
    if (found == m_all.end()) found = m_all.insert(m_all.end(), {name, 0});
    found->second = std::max(found->second, value);
  }
  ~Told() {
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    std::printf("{");
    for (const auto& [name, value] : m_all) std::printf("\"%s\":%.6g,", name.c_str(), value);
    std::printf("\"peak_MB\":%.6g}\n", double(usage.ru_maxrss) / 1024);
  }

 private:
  std::vector<std::pair<std::string, double>> m_all;
};

core::Document campaign(int count) {
  core::Document document;
  for (int k = 0; k < count; ++k) {
    auto channel = std::make_shared<core::Channel>(
        sample::withCheckReading(sample::nineStepChannel(), k % 50 == 7 ? 1.03 : 1.001));
    channel->name = "TP-" + std::to_string(k + 1);
    channel->group = "Frame " + std::to_string(k / 40 + 1);
    channel->setup.bridge.leads.fill(core::Resistance(1 + 0.001 * k));
    document.channels.push_back(std::move(channel));
  }
  return document;
}

bool channels(int count, const QString& folder) {
  Told told;
  const QString path = folder + "/campaign.bridgecal";
  if (!ui::saveDocument(campaign(count), path)) return false;
  ui::Session session;
  ui::MainWindow window(session);
  window.resize(1600, 1000);
  window.show();
  QApplication::processEvents();
  bool isOpen = false;
  told.measure("open_ms", [&] { isOpen = window.openFile(path); });
  if (!isOpen || session.document().channels.size() != std::size_t(count)) return false;
  for (int k = 0; k < 30; ++k)
    told.measure("choose_ms", [&] { session.selectChannel(std::size_t(k * 37 % count)); });
  const auto edited = [&](int k) {
    core::Channel next = *session.channel();
    next.setup.bridge.gauge.factor = k % 2 ? 2.0 : 2.1;
    session.editChannel("Change gauge factor", std::move(next));
  };
  for (int k = 0; k < 30; ++k) told.measure("edit_ms", [&] { edited(k); });
  told.measure("overview_ms", [&] { window.findChild<QAction*>("channelOverview")->trigger(); });
  session.rows().waitForAll();
  told.measure("overview_ms", [] {});
  for (int k = 0; k < 10; ++k) told.measure("overview_edit_ms", [&] { edited(k); });
  auto* table = window.findChild<ui::OverviewPage*>()->findChild<QTableView*>("overviewTable");
  for (int column = 0; column < table->model()->columnCount(); ++column)
    told.measure("sort_ms", [&] { table->sortByColumn(column, Qt::AscendingOrder); });
  for (int k = 0; k < 10; ++k) told.measure("undo_ms", [&] { session.history().undo(); });
  bool isSaved = false;
  told.measure("save_ms", [&] { isSaved = window.save(); });
  told.note("rows", table->model()->rowCount());
  return isSaved;
}

bool strip(std::size_t samples, const QString& folder) {
  Told told;
  ui::RecordingStore store;
  store.setFolder(folder);
  const core::RecordingReference reference{"run.csv", 1, std::string(64, '0'), "TP-01", {}};
  auto open = std::make_shared<ui::OpenRecording>();
  open->path = store.pathOf(reference);
  open->recording.time = core::TimeAxis::even(0, 1e-3, samples);
  core::Samples values;
  values.reserve(samples);
  std::uint32_t state = 1;
  for (std::size_t k = 0; k < samples; ++k) {
    state = state * 1664525U + 1013904223U;
    values.push_back(500.0 * double(9 * k / samples % 4) + 1e-9 * state);
  }
  open->recording.columns.push_back({"TP-01", "", std::move(values)});
  open->envelopes = ui::envelopesOf(open->recording);
  store.put(open);
  core::Channel channel = sample::withCheckReading(sample::nineStepChannel(), 1);
  channel.checks[0].recording = reference;
  ui::Session session(sample::documentOf({channel}));
  ui::StripView view(session, store);
  view.resize(1900, 980);
  view.show();
  QApplication::processEvents();
  ui::StripChart& chart = view.chart();
  const double all_s = chart.end_s() - chart.begin_s();
  for (int k = 0; k < 60; ++k)
    told.measure("zoom_ms", [&] {
      chart.zoom(k % 40 < 20 ? 0.75 : 1 / 0.75, 0.37 * all_s);
      chart.repaint();
    });
  for (int k = 0; k < 60; ++k)
    told.measure("pan_ms", [&] {
      const double shown_s = all_s / (1 + k / 20), begin_s = (all_s - shown_s) * (k % 20) / 20;
      chart.showBetween(begin_s, begin_s + shown_s);
      chart.repaint();
    });
  told.note("seconds", all_s);
  return true;
}

}  // namespace

int main(int count, char** words) {
  Q_INIT_RESOURCE(resources);  // lies in a static library, from where nothing else pulls it in
  if (count != 4) return 2;
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  qputenv("XDG_STATE_HOME", words[3]);
  QApplication application(count, words);
  std::setlocale(LC_NUMERIC, "C");
  QApplication::setStyle(new ui::FrameStyle("Fusion"));
  QLocale::setDefault(QLocale::c());
  ui::useLanguage("en");
  const std::string what = words[1];
  if (what == "channels") return channels(std::atoi(words[2]), words[3]) ? 0 : 1;
  if (what == "strip") return strip(std::strtoull(words[2], nullptr, 10), words[3]) ? 0 : 1;
  return 2;
}
