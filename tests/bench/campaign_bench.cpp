// SPDX-License-Identifier: GPL-3.0-or-later
// What a campaign of 1,000 channels x 9 steps x 2 closed checks costs without a window: writing and reading
// its file, evaluating every channel, the rows of the overview with their comparisons, putting them in order.
// Targets on two processors: reading under 1 s, everything evaluated under 0.5 s, peak memory under 300 MB.
// Each figure is the best of five; user time is that of the whole process, all threads together, and
// hardly depends on what else the machine is doing.
#include <sys/resource.h>

#include <atomic>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <random>

#include "core/campaign/channel_list.h"
#include "core/campaign/overview.h"
#include "core/document/json_reader.h"
#include "core/document/json_writer.h"
#include "core/record/fingerprint.h"
#include "core/units/threads.h"
#include "tests/support/sample_channel.h"

namespace {

using namespace core;
using std::chrono_literals::operator""y;

constexpr std::size_t channelCount = 1000;
constexpr int rounds = 5;

double userSeconds() {
  rusage usage{};
  getrusage(RUSAGE_SELF, &usage);
  return static_cast<double>(usage.ru_utime.tv_sec) + 1e-6 * static_cast<double>(usage.ru_utime.tv_usec);
}

double peak_MB() {
  rusage usage{};
  getrusage(RUSAGE_SELF, &usage);
  return static_cast<double>(usage.ru_maxrss) / 1024;  // Linux counts in KiB
}

template <class Work>
void measured(const char* what, const Work& work) {
  double wall = 1e9, user = 1e9;
  for (int round = 0; round < rounds; ++round) {
    const double userBefore = userSeconds();
    const auto before = std::chrono::steady_clock::now();
    work();
    wall = std::min(wall, std::chrono::duration<double>(std::chrono::steady_clock::now() - before).count());
    user = std::min(user, userSeconds() - userBefore);
  }
  std::printf("campaign: %-34s %8.1f ms wall %8.1f ms user, peak so far %6.1f MB\n", what, 1e3 * wall,
              1e3 * user, peak_MB());
}

/// Each channel has leads and a gauge of its own, so that no two are alike, and two closed checks with
/// readings of stated uncertainty.
Document campaign() {
  std::mt19937 random(20310504);
  std::normal_distribution<double> normal;
  Document document;
  document.title = "Campaign";
  for (std::size_t k = 0; k < channelCount; ++k) {
    Channel channel = sample::nineStepChannel();
    channel.name = "TP-" + std::to_string(k + 1);
    channel.group = "Frame " + std::to_string(k / 50 + 1);
    channel.setup.bridge.leads.fill(Resistance(1 + 0.001 * static_cast<double>(k)));
    channel.setup.bridge.arms[0] = Resistance(350 * (1 + 1e-3 * normal(random)));
    for (int check = 0; check < 2; ++check) {
      channel = sample::withCheckReading(channel, 1 + 0.002 * normal(random), normal(random) * 1e-6);
      for (auto& reading : channel.checks.back().readings) reading->uncertainty = Reading(0.5e-6);
      channel.checks.back().name = check == 0 ? "pre-test" : "post-test";
      channel = withCheckClosed(channel, channel.checks.size() - 1);
    }
    document.channels.push_back(std::make_shared<const Channel>(std::move(channel)));
  }
  return document;
}

std::vector<ChannelEvaluation> evaluated(const Document& document, unsigned threads) {
  std::vector<ChannelEvaluation> evaluations(document.channels.size());
  std::atomic<std::size_t> next = 0;
  onThreads(threads, [&](unsigned) {
    for (std::size_t k = next++; k < evaluations.size(); k = next++)
      evaluations[k] = evaluate(*document.channels[k]);
  });
  return evaluations;
}

std::vector<OverviewRow> rowsOf(const Document& document, const std::vector<ChannelEvaluation>& evaluations,
                                unsigned threads) {
  std::vector<OverviewRow> rows(evaluations.size());
  std::atomic<std::size_t> next = 0;
  onThreads(threads, [&](unsigned) {
    for (std::size_t k = next++; k < rows.size(); k = next++)
      rows[k] = overviewRow(document, k, evaluations[k], 2031y / 5 / 4);
  });
  return rows;
}

}  // namespace

int main() {
  Document document = campaign();
  std::string text;
  measured("written", [&] { text = *writeDocument(document); });
  std::printf("campaign: file of %.1f MB\n", 1e-6 * static_cast<double>(text.size()));
  measured("read", [&] { document = *readDocument(text); });
  measured("fingerprint", [&] {
    // Of channels that are other values each time, since what is known of a value is kept.
    for (auto& channel : document.channels) channel = std::make_shared<const Channel>(*channel);
    if (!fingerprintOf(document)) std::abort();
  });
  std::vector<ChannelEvaluation> evaluations;
  measured("evaluated, one thread", [&] { evaluations = evaluated(document, 1); });
  measured("evaluated, two threads", [&] { evaluations = evaluated(document, 2); });
  std::vector<OverviewRow> rows;
  measured("rows with comparisons, one thread", [&] { rows = rowsOf(document, evaluations, 1); });
  measured("rows with comparisons, two threads", [&] { rows = rowsOf(document, evaluations, 2); });
  measured("worst first", [&] {
    std::vector<std::size_t> order = filteredRows(document, rows, {});
    sortRows(document, rows, OverviewOrder::WorstFirst, false, order);
    if (order.size() != channelCount) std::abort();
  });
  const OverviewTally tally = tallyOf(rows);
  std::printf("campaign: %zu pass, %zu fail; %zu unchanged, %zu within the margin, %zu changed\n", tally.pass,
              tally.fail, tally.unchanged, tally.harmless, tally.changed);
  measured("written as a list", [&] { text = channelListCsv(document); });
  const auto table = readListTable(text);
  if (!table) std::abort();
  measured("1,000 channels from a list", [&] {
    const auto imported = withChannelList({}, *table, guessedFields(*table), *document.channels.front());
    if (!imported || imported->added != channelCount) std::abort();
  });
}
