// SPDX-License-Identifier: GPL-3.0-or-later
// Large work without a window; each prints a line of JSON with what it came to, seconds and megabytes.
//
//   scale_core_driver write FILE MEGABYTES    a text of eight columns at 10 kHz, steps with noise
//   scale_core_driver read FILE               reads it and finds the levels of every column
//   scale_core_driver cancel FILE             asks it to stop at many moments of both: the longest wait
//   scale_core_driver column SAMPLES          levels and curve of one column
//   scale_core_driver channels COUNT          a document of so many channels, from its file to its report
#include <sys/resource.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <fstream>
#include <string>
#include <thread>
#include <vector>

#include "core/campaign/overview.h"
#include "core/document/edits.h"
#include "core/document/json_reader.h"
#include "core/document/json_writer.h"
#include "core/evaluate/evaluation.h"
#include "core/levels/levels.h"
#include "core/recording/envelope.h"
#include "core/recording/reader.h"
#include "core/report/csv.h"
#include "core/report/json.h"
#include "tests/support/sample_channel.h"

namespace {

using Clock = std::chrono::steady_clock;
using std::chrono_literals::operator""y;

double secondsSince(Clock::time_point begin) {
  return std::chrono::duration<double>(Clock::now() - begin).count();
}

double processor_s() {
  rusage usage{};
  getrusage(RUSAGE_SELF, &usage);
  const auto seconds = [](const timeval& t) { return double(t.tv_sec) + 1e-6 * double(t.tv_usec); };
  return seconds(usage.ru_utime) + seconds(usage.ru_stime);
}

/// Most memory that this process ever had.
double peak_MB() {
  rusage usage{};
  getrusage(RUSAGE_SELF, &usage);
  return double(usage.ru_maxrss) / 1024;  // Linux counts in KiB
}

/// What is told so far: a name and a number each.
class Told {
 public:
  void add(const char* name, double value) {
    char text[100];
    std::snprintf(text, sizeof text, "%s\"%s\":%.6g", m_text.empty() ? "" : ",", name, value);
    m_text += text;
  }
  /// Processor time of `work`, all threads together.
  template <class Work>
  void measure(const char* name, const Work& work) {
    const double before = processor_s();
    work();
    add(name, processor_s() - before);
  }
  ~Told() {
    add("peak_MB", peak_MB());
    std::printf("{%s}\n", m_text.c_str());
  }

 private:
  std::string m_text;
};

constexpr std::size_t columnCount = 8;

/// A noise that costs next to nothing.
class Dice {
 public:
  int below(int count) {
    m_state = m_state * 6364136223846793005ULL + 1442695040888963407ULL;
    return static_cast<int>((m_state >> 33U) % static_cast<std::uint64_t>(count));
  }

 private:
  std::uint64_t m_state = 1;
};

/// Four seconds at each of nine levels, in steps that every column has in another size.
std::string block() {
  std::string text;
  Dice dice;
  char cell[40];
  for (int row = 0; row < 9 * 40'000; ++row)
    for (std::size_t column = 0; column < columnCount; ++column) {
      const int value = row / 40'000 % 5 * 125 * static_cast<int>(column + 1);
      const int length = std::snprintf(cell, sizeof cell, "%d.%03d%c", value, dice.below(1000),
                                       column + 1 < columnCount ? ';' : '\n');
      text.append(cell, static_cast<std::size_t>(length));
    }
  return text;
}

int write(const char* path, double megabytes) {
  std::ofstream file(path, std::ios::binary);
  std::string text = "Sample rate: 10000 Hz\n";
  for (std::size_t column = 1; column <= columnCount; ++column)
    text += "TP-0" + std::to_string(column) + " [um/m]" + (column < columnCount ? ";" : "\n");
  file << text;
  const std::string whole = block();
  for (double written = 0; written < 1e6 * megabytes && file; written += double(whole.size())) file << whole;
  return file.flush() ? 0 : 1;
}

int read(const char* path) {
  Told told;
  const auto begin = Clock::now();
  const auto recording = core::readRecording(path);
  if (!recording) return std::fprintf(stderr, "%s\n", recording.error().text().c_str()), 1;
  told.add("read_s", secondsSince(begin));
  told.add("read_MB", peak_MB());
  told.add("samples", double(recording->time.size()));
  told.add("columns", double(recording->columns.size()));
  std::size_t levels = 0;
  double off = 0;
  for (const core::Column& column : recording->columns) {
    const auto found = core::findLevels(recording->time, column.values);
    if (!found) continue;
    levels += found->size();
    // Made of even noise between 0 and 0.999 above multiples of 125: its mean is 0.4995.
    for (const core::Level& level : *found)
      off = std::max(off, std::abs(level.mean - 0.4995 - 125 * std::round(level.mean / 125)));
  }
  told.add("levels", double(levels));
  told.add("greatest_error", off);
  told.add("all_s", secondsSince(begin));
  return 0;
}

/// How long `work` takes to come back after it was asked to, `after_s` from its beginning.
template <class Work>
double waited_s(double after_s, const Work& work) {
  std::stop_source source;
  Clock::time_point asked, ended;
  {
    std::jthread worker([&] {
      work(source.get_token());
      ended = Clock::now();
    });
    std::this_thread::sleep_for(std::chrono::duration<double>(after_s));
    asked = Clock::now();
    source.request_stop();
  }
  return std::max(0.0, std::chrono::duration<double>(ended - asked).count());
}

int cancel(const char* path) {
  Told told;
  auto begin = Clock::now();
  const auto recording = core::readRecording(path);
  if (!recording) return 1;
  const double read_s = secondsSince(begin);
  const auto& values = recording->columns[0].values;
  begin = Clock::now();
  if (!core::findLevels(recording->time, values)) return 1;
  const double found_s = secondsSince(begin);
  double reading = 0, finding = 0;
  for (int k = 1; k < 20; ++k) {
    reading = std::max(reading, waited_s(read_s * k / 20, [&](const std::stop_token& stop) {
                         (void)core::readRecording(path, {}, stop);
                       }));
    finding = std::max(finding, waited_s(found_s * k / 20, [&](const std::stop_token& stop) {
                         (void)core::findLevels(recording->time, values, {}, stop);
                       }));
  }
  told.add("moments", 38);
  told.add("reading_s", reading);
  told.add("finding_s", finding);
  return 0;
}

int column(std::size_t samples) {
  Told told;
  core::Samples values;
  values.reserve(samples);
  Dice dice;
  for (std::size_t k = 0; k < samples; ++k)
    values.push_back(double(k * 9 / samples % 4) * 500 + 1e-3 * dice.below(1000));
  const auto time = core::TimeAxis::even(0, 1e-3, samples);
  std::size_t levels = 0;
  told.measure("levels_s", [&] {
    const auto found = core::findLevels(time, values);
    if (found) levels = found->size();
  });
  told.add("levels", double(levels));
  core::Envelope envelope;
  told.measure("envelope_s", [&] { envelope = core::Envelope(values); });
  std::size_t drawn = 0;
  told.measure("curve_s", [&] {
    for (std::size_t k = 0; k < 1900; ++k)
      drawn += envelope.drawn(values, k * samples / 1900, (k + 1) * samples / 1900).empty() ? 0 : 1;
  });
  told.add("pixels", double(drawn));
  return 0;
}

core::Document campaign(std::size_t count) {
  core::Document document;
  document.title = "Campaign";
  Dice dice;
  for (std::size_t k = 0; k < count; ++k) {
    core::Channel channel = sample::nineStepChannel();
    channel.name = "TP-" + std::to_string(k + 1);
    channel.group = "Frame " + std::to_string(k / 50 + 1);
    channel.setup.bridge.leads.fill(core::Resistance(1 + 0.001 * double(k % 977)));
    channel = sample::withCheckReading(channel, 1 + 1e-5 * (dice.below(1000) - 500), 0);
    document.channels.push_back(std::make_shared<const core::Channel>(std::move(channel)));
  }
  return document;
}

int channels(std::size_t count) {
  Told told;
  core::Document document = campaign(count);
  std::string text;
  told.measure("write_s", [&] { text = *core::writeDocument(document); });
  told.add("file_MB", 1e-6 * double(text.size()));
  told.measure("read_s", [&] { document = *core::readDocument(text); });
  std::vector<core::ChannelEvaluation> evaluations;
  told.measure("evaluate_s", [&] {
    for (const auto& channel : document.channels) evaluations.push_back(core::evaluate(*channel));
  });
  std::vector<core::OverviewRow> rows;
  told.measure("overview_s", [&] {
    for (std::size_t k = 0; k < count; ++k)
      rows.push_back(core::overviewRow(document, k, evaluations[k], 2031y / 5 / 4));
  });
  std::vector<std::size_t> order;
  told.measure("order_s", [&] {
    order = core::filteredRows(document, rows, {});
    core::sortRows(document, rows, core::OverviewOrder::WorstFirst, false, order);
  });
  told.add("rows", double(order.size()));
  told.measure("edit_s", [&] {
    for (int k = 0; k < 100; ++k) {
      core::Channel channel = *document.channels[count / 2];
      channel.name = "TP-edited-" + std::to_string(k);
      document = core::withChannel(document, count / 2, channel);
    }
  });
  told.measure("csv_s", [&] { text = core::reportCsv(document); });
  told.add("csv_MB", 1e-6 * double(text.size()));
  told.measure("json_s", [&] { text = *core::reportJson(document, {}); });
  told.add("json_MB", 1e-6 * double(text.size()));
  return 0;
}

}  // namespace

int main(int count, char** words) {
  const std::string what = count > 2 ? words[1] : "";
  if (what == "write" && count == 4) return write(words[2], std::atof(words[3]));
  if (what == "read") return read(words[2]);
  if (what == "cancel") return cancel(words[2]);
  if (what == "column") return column(std::strtoull(words[2], nullptr, 10));
  if (what == "channels") return channels(std::strtoull(words[2], nullptr, 10));
  return 2;
}
