// SPDX-License-Identifier: GPL-3.0-or-later
// Works out a broad sample of results and prints a line for each part of it: its name and the SHA-256 of the
// bits of all its numbers. Any compiler, and any number of threads, must print the same
// (tests/reliability/bits.txt).
//
//   figures_core_driver THREADS FOLDER_OF_EXAMPLES [--values]
#include <bit>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "core/budget/trials.h"
#include "core/document/json_reader.h"
#include "core/document/json_writer.h"
#include "core/document/sha256.h"
#include "core/evaluate/evaluation.h"
#include "core/levels/levels.h"
#include "core/recording/reader.h"
#include "core/recording/text/delimited_text.h"
#include "core/report/json.h"
#include "core/search/resistor_search.h"
#include "core/search/targets.h"

namespace {

/// The numbers of one part in their order.
class Part {
 public:
  Part(std::string name, bool showValues) : m_name(std::move(name)), m_showValues(showValues) {}
  ~Part() { std::printf("%s %s\n", core::sha256Hex(m_bits).c_str(), m_name.c_str()); }
  Part(const Part&) = delete;
  Part& operator=(const Part&) = delete;

  void add(double value) {
    if (std::isnan(value)) value = std::numeric_limits<double>::quiet_NaN();  // of one sign
    const auto bits = std::bit_cast<std::uint64_t>(value);
    m_bits.append(reinterpret_cast<const char*>(&bits), sizeof bits);
    if (m_showValues) std::printf("  %s %zu %a\n", m_name.c_str(), m_bits.size() / sizeof bits, value);
  }
  void add(const std::optional<double>& value) {
    if (value) add(*value);
  }
  void add(const core::Interval& interval) {
    add(interval.low);
    add(interval.high);
  }
  /// Every number of `json`; it prints each so that the same double is read back.
  void add(const nlohmann::json& json) {
    if (json.is_number()) add(json.get<double>());
    if (json.is_structured())
      for (const auto& child : json) add(child);
  }

 private:
  std::string m_name;
  bool m_showValues;
  std::string m_bits;
};

struct Sample {
  unsigned threads = 1;
  bool showValues = false;

  Part part(const std::string& name) const { return Part(name, showValues); }
};

[[noreturn]] void fail(const core::Error& error) {
  std::fprintf(stderr, "%s\n", error.text().c_str());
  std::exit(1);
}

template <class T>
T must(core::Result<T> result) {
  if (!result) fail(result.error());
  return std::move(*result);
}

std::string bytesOf(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), {}};
}

/// What was planned, expected, read, judged, suspected and compared: all that a report has numbers of.
void addReport(const Sample& sample, const std::string& name, const core::Document& document) {
  const auto json = nlohmann::json::parse(must(core::reportJson(document, {})));
  for (const auto& channel : json.at("channels"))
    sample.part(name + " " + channel.at("name").get<std::string>() + " report").add(channel);
}

void addPrediction(Part& part, const core::ChannelEvaluation& evaluation) {
  for (const auto& step : evaluation.prediction.steps) {
    if (!step) continue;
    part.add(step->output.base());
    part.add(step->reading.base());
  }
  for (const core::ScopeBudget& scope : evaluation.budget.scopes)
    for (const auto& step : scope.steps) {
      if (!step) continue;
      part.add(step->value);
      part.add(step->standard);
    }
}

void addTrials(const Sample& sample, Part& part, const core::Channel& channel,
               const core::ChannelEvaluation& evaluation) {
  for (const core::Scope scope : {core::Scope::Chain, core::Scope::Strain}) {
    const core::ChannelTrialOptions options{
        .scope = scope, .seed = 20261126, .trials = 20'480, .threads = sample.threads};
    const auto trials =
        core::runChannelTrials(channel.setup, evaluation.prediction, evaluation.budget, options);
    if (!trials) continue;  // no step has an uncertainty
    for (const core::TrialOutput& output : trials->result.outputs) {
      part.add(output.mean);
      part.add(output.standardUncertainty);
      part.add(output.symmetric);
      part.add(output.shortest);
      for (const std::size_t count : output.histogram.counts) part.add(static_cast<double>(count));
    }
  }
}

void addSearch(const Sample& sample, Part& part, const core::Setup& setup) {
  core::Stock stock;
  stock.series = {{core::ESeries::E96, core::Resistance(20e3), core::Resistance(500e3)}};
  const auto candidates =
      must(core::candidatesOf(stock, {}, core::Date{std::chrono::year(2026) / 5 / 11}, false));
  core::ResistorSearch search;
  search.levels = core::equalLevels(900, 3, true, true);
  search.positive = core::usualPlace(setup.bridge, core::Polarity::Positive);
  search.negative = core::usualPlace(setup.bridge, core::Polarity::Negative);
  search.together = true;
  search.threads = sample.threads;
  const auto outcome = core::searchResistors(setup, search, candidates);
  if (!outcome) return;  // a transducer has levels of another unit
  for (const core::ResistorSet& set : outcome->best) {
    part.add(set.greatestMiss);
    part.add(set.meanMiss);
    for (const core::Candidate& resistor : set.resistors) part.add(resistor.value.base());
    for (const core::LevelMet& level : set.levels) part.add(level.reached);
  }
}

void addDocument(const Sample& sample, const std::filesystem::path& path) {
  const std::string name = path.filename();
  const core::Document document = must(core::readDocument(bytesOf(path)));
  addReport(sample, name, document);
  for (const auto& channel : document.channels) {
    const core::ChannelEvaluation evaluation = core::evaluate(*channel);
    const std::string of = name + " " + channel->name + " ";
    Part prediction(of + "prediction", sample.showValues);
    addPrediction(prediction, evaluation);
    Part trials(of + "trials", sample.showValues);
    addTrials(sample, trials, *channel, evaluation);
  }
  Part search(name + " search", sample.showValues);
  addSearch(sample, search, document.channels.front()->setup);
}

void addRecording(const Sample& sample, const std::string& name, const core::Recording& recording) {
  for (const core::Column& column : recording.columns) {
    Part samples(name + " " + column.name + " samples", sample.showValues);
    for (const double value : column.values) samples.add(value);
    Part found(name + " " + column.name + " levels", sample.showValues);
    const auto levels = core::findLevels(recording.time, column.values);
    if (!levels) continue;  // a column without a level
    for (const core::Level& level : *levels)
      for (const double value :
           {level.begin_s, level.end_s, level.mean, level.robustMean, level.stdUncertainty,
            level.effectiveSamples, level.drift_per_s, level.driftUncertainty_per_s,
            static_cast<double>(level.samples), static_cast<double>(level.outliers)})
        found.add(value);
  }
}

/// Steps with noise that needs no library, as text of some megabytes, read in pieces that many threads share.
void addBigText(const Sample& sample) {
  const auto path =
      std::filesystem::temp_directory_path() / ("figures-" + std::to_string(sample.threads) + ".csv");
  {
    std::ofstream file(path);
    file << "Time [s];A [um/m];B [um/m]\n";
    std::uint64_t state = 1;
    char line[100];
    for (int k = 0; k < 60'000; ++k) {
      state = state * 6364136223846793005ULL + 1442695040888963407ULL;
      const int noise = static_cast<int>(state >> 54) - 512, level = k / 6000 % 3 * 250'000;
      std::snprintf(line, sizeof line, "%d.%02d;%d.%03d;%d.%02d\n", k / 100, k % 100,
                    (level + 1000 + noise) / 1000, (level + 1000 + noise) % 1000, -level / 500,
                    std::abs(noise) % 100);
      file << line;
    }
  }
  const auto recording =
      core::readText(path, {}, {}, {}, {.pieceBytes = 1UL << 16U, .threads = sample.threads});
  std::filesystem::remove(path);
  addRecording(sample, "big text", must(recording));
}

}  // namespace

int main(int count, char** words) {
  if (count < 3) return 2;
  const Sample sample{static_cast<unsigned>(std::atoi(words[1])), count > 3};
  const std::filesystem::path folder = words[2];
  for (const char* document :
       {"demo.bridgecal", "load_cell.bridgecal", "plan.bridgecal", "quarter_bridge.bridgecal"})
    addDocument(sample, folder / document);
  for (const char* recording : {"pre_test.csv", "post_test.csv"})
    addRecording(sample, recording, must(core::readRecording(folder / recording)));
  addBigText(sample);
}
