// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/uncertainty/monte_carlo.h"
#include "core/units/language.h"
#include "core/units/threads.h"

#include <algorithm>
#include <array>
#include <atomic>
#include <cassert>
#include <charconv>
#include <cmath>
#include <limits>
#include <memory>
#include <mutex>
#include <new>
#include <span>
#include <string>
#include <thread>

namespace core {
namespace {

constexpr std::size_t histogramSteps = 80;
constexpr double histogramReach = 4.5;                        // in standard uncertainties
constexpr std::size_t greatestValues = std::size_t{1} << 32;  // 32 GiB: beyond is a slip of the pen
constexpr double shareOfDrawing = 0.9;                        // of the progress; the rest is putting in order

/// max(J, 10^4) of 7.9.4, filled up to whole lanes.
std::size_t trialsPerBlock(double coverage) {
  const double j = std::ceil(100 / (1 - coverage) * (1 - 1e-12));  // 100 / (1 - 0.9) is just above 1000
  const double least = std::max(j, 10'240.0);
  return static_cast<std::size_t>(std::ceil(least / trialLanes)) * trialLanes;
}

/// Count, mean and sum of squares about it, of values that are added in groups.
struct Moments {
  double count = 0, mean = 0, squares = 0;

  /// T. Chan, G. Golub, R. LeVeque, "Updating formulae and a pairwise algorithm for computing sample
  /// variances" (1979).
  void add(const Moments& other) {
    const double all = count + other.count, difference = other.mean - mean;
    squares += other.squares + difference * difference * (count * other.count / all);
    mean += difference * (other.count / all);
    count = all;
  }
  void add(double value) { add({1, value, 0}); }

  double standardDeviation() const { return std::sqrt(squares / (count - 1)); }
  double standardDeviationOfMean() const { return standardDeviation() / std::sqrt(count); }
};

/// Sums lane by lane, then over the lanes, so that the order is the same whatever the vector units are.
/// About the first value: equal values have exactly no scatter.
Moments momentsOf(std::span<const double> values) {
  const double first = values.front();
  const auto laneSum = [values](auto&& term) {
    std::array<double, trialLanes> sums{};
    std::size_t k = 0;
    for (; k + trialLanes <= values.size(); k += trialLanes)
      for (std::size_t lane = 0; lane < trialLanes; ++lane) sums[lane] += term(values[k + lane]);
    for (std::size_t lane = 0; k < values.size(); ++k, ++lane) sums[lane] += term(values[k]);
    double sum = 0;
    for (double lane : sums) sum += lane;
    return sum;
  };
  const auto count = static_cast<double>(values.size());
  const double offset = laneSum([first](double value) { return value - first; }) / count;
  const auto square = [first, offset](double value) {
    const double d = (value - first) - offset;
    return d * d;
  };
  return {count, first + offset, laneSum(square)};
}

/// What 7.9.4 looks at, of one output: the same for one block, or their spread over the blocks.
struct BlockFigures {
  Moments moments;
  Interval interval;
};

/// One output over all blocks so far, added in their order.
struct Gathered {
  Moments moments;
  std::array<Moments, 4> spread;  ///< over the blocks, of y, u, y_low and y_high

  void add(const BlockFigures& block) {
    moments.add(block.moments);
    spread[0].add(block.moments.mean);
    spread[1].add(block.moments.standardDeviation());
    spread[2].add(block.interval.low);
    spread[3].add(block.interval.high);
  }

  /// Twice the greatest standard deviation of the four averages over the tolerance: settled up to 1.
  double unrest(int digits) const {
    constexpr double never = std::numeric_limits<double>::infinity();
    const double u = moments.standardDeviation();
    if (!std::isfinite(u)) return never;
    double greatest = 0;
    for (const Moments& figure : spread) greatest = std::max(greatest, 2 * figure.standardDeviationOfMean());
    const double tolerance = numericalTolerance(u, digits);
    if (greatest == 0) return 0;
    return tolerance > 0 ? greatest / tolerance : never;
  }
};

Histogram histogramOf(std::span<const double> values, double mean, double u) {
  const auto [least, greatest] = std::minmax_element(values.begin(), values.end());
  Histogram histogram;
  histogram.low = std::max(*least, mean - histogramReach * u);
  histogram.high = std::min(*greatest, mean + histogramReach * u);
  histogram.counts.assign(histogramSteps, 0);
  const double width = histogram.high - histogram.low;
  if (!(width > 0)) {
    histogram.high = histogram.low;
    histogram.counts[histogramSteps / 2] = values.size();
    return histogram;
  }
  const double perStep = histogramSteps / width;
  for (double value : values) {
    const double step = std::clamp((value - histogram.low) * perStep, 0.0, histogramSteps - 1.0);
    ++histogram.counts[static_cast<std::size_t>(step)];
  }
  return histogram;
}

Error tooManyTrials(std::size_t trials) {
  return {"trials", say("there is not enough memory for {1} trials", {std::to_string(trials)}),
          say("Ask for fewer")};
}

/// How many of the first `lanes` trials have an output that is no finite number.
std::size_t withoutResult(std::span<const double> outputs, std::size_t lanes) {
  std::array<double, trialLanes> sums{};  // 0, or NaN once a value is not finite, since infinity x 0 is NaN
  for (std::size_t k = 0; k < outputs.size(); k += trialLanes)
    for (std::size_t lane = 0; lane < trialLanes; ++lane) sums[lane] += outputs[k + lane] * 0;
  return static_cast<std::size_t>(std::count_if(
      sums.begin(), sums.begin() + static_cast<std::ptrdiff_t>(lanes), [](double s) { return s != 0; }));
}

/// One call of `runTrials`. Threads take blocks as they come; blocks are judged in their order, and what was
/// drawn beyond the block that settled is thrown away.
class TrialRun {
 public:
  TrialRun(const TrialPlan& plan, Draws draws, std::size_t outputs, const std::stop_token& stop,
           const Progress& progress);

  Result<TrialResult> result(const TrialModelMaker& model);

 private:
  struct Worker {
    TrialModel model;
    std::vector<double> inputs, outputs;
  };
  struct Block {
    bool drawn = false;
    std::size_t withoutResult = 0;
  };

  bool isAdaptive() const { return !m_plan.trials.has_value(); }
  std::size_t blockEnd(std::size_t block) const { return std::min((block + 1) * m_blockTrials, m_limit); }
  std::span<double> values(std::size_t output, std::size_t begin, std::size_t end) const {
    return {m_values.get() + output * m_limit + begin, end - begin};
  }

  std::vector<Worker> workers(const TrialModelMaker& model) const;
  void drawBlocks(Worker& worker, bool reports);
  void drawBlock(std::size_t block, Worker& worker);
  void describeBlock(std::size_t block);
  double judge(std::size_t drawn);
  void judgeNext();
  Error missingResults() const;
  void describeOutputs(bool reports);
  TrialOutput described(std::size_t output) const;
  void report(double share) const;

  const TrialPlan& m_plan;
  const Draws m_draws;
  const std::size_t m_outputs;
  const std::stop_token& m_stop;
  const Progress& m_progress;

  const std::size_t m_limit;        ///< trials at most
  const std::size_t m_blockTrials;  ///< trials of a whole block
  const std::size_t m_blockCount;
  std::unique_ptr<double[]> m_values;   ///< [output * m_limit + trial]
  std::vector<BlockFigures> m_figures;  ///< [block * m_outputs + output]

  std::atomic<std::size_t> m_nextBlock = 0, m_endBlock, m_nextOutput = 0;
  std::atomic<bool> m_cancelled = false;

  std::mutex m_judging;  ///< for what follows
  std::vector<Block> m_blocks;
  std::vector<Gathered> m_gathered;
  std::size_t m_judged = 0;  ///< blocks
  bool m_settled = false;
  double m_share = 0;

  TrialResult m_result;
};

TrialRun::TrialRun(const TrialPlan& plan, Draws draws, std::size_t outputs, const std::stop_token& stop,
                   const Progress& progress)
    : m_plan(plan),
      m_draws(std::move(draws)),
      m_outputs(outputs),
      m_stop(stop),
      m_progress(progress),
      m_limit(plan.trials.value_or(plan.greatestTrials)),
      m_blockTrials(trialsPerBlock(plan.coverage)),
      m_blockCount((m_limit - 1) / m_blockTrials + 1),
      m_endBlock(m_blockCount),
      m_gathered(outputs) {}

Result<TrialResult> TrialRun::result(const TrialModelMaker& model) {
  if (m_limit <= greatestValues / m_outputs) m_values.reset(new (std::nothrow) double[m_limit * m_outputs]);
  if (!m_values) return tooManyTrials(m_limit);
  m_blocks.resize(m_blockCount);
  m_figures.resize(m_blockCount * m_outputs);
  std::vector<Worker> team = workers(model);
  const auto count = static_cast<unsigned>(team.size());
  onThreads(count, [&](unsigned k) { drawBlocks(team[k], k == 0); });
  if (m_cancelled) return cancelled();
  if (m_blocks[m_judged - 1].withoutResult > 0) return missingResults();

  m_result.trials = blockEnd(m_judged - 1);
  m_result.settled = m_settled || !isAdaptive();
  m_result.outputs.resize(m_outputs);
  onThreads(count, [&](unsigned k) { describeOutputs(k == 0); });
  if (m_cancelled) return cancelled();
  report(1);
  return std::move(m_result);
}

std::vector<TrialRun::Worker> TrialRun::workers(const TrialModelMaker& model) const {
  const unsigned wanted = m_plan.threads > 0 ? m_plan.threads : std::thread::hardware_concurrency();
  const std::size_t count = std::clamp<std::size_t>(wanted, 1, m_blockCount);
  std::vector<Worker> workers;
  workers.reserve(count);
  for (std::size_t k = 0; k < count; ++k)
    workers.push_back({model(), std::vector<double>(m_draws.inputs() * trialLanes),
                       std::vector<double>(m_outputs * trialLanes)});
  return workers;
}

void TrialRun::drawBlocks(Worker& worker, bool reports) {
  while (true) {
    const std::size_t block = m_nextBlock++;
    if (block >= m_endBlock) return;
    if (m_stop.stop_requested()) break;
    drawBlock(block, worker);
    if (m_blocks[block].withoutResult == 0) describeBlock(block);
    const double share = judge(block);
    if (reports) report(shareOfDrawing * share);
  }
  m_cancelled = true;
}

void TrialRun::drawBlock(std::size_t block, Worker& worker) {
  const std::size_t end = blockEnd(block);
  std::size_t missing = 0;
  for (std::size_t trial = block * m_blockTrials; trial < end; trial += trialLanes) {
    m_draws.draw(trial, worker.inputs);
    worker.model(worker.inputs.data(), worker.outputs.data());
    const std::size_t lanes = std::min(trialLanes, end - trial);
    for (std::size_t output = 0; output < m_outputs; ++output)
      std::copy_n(worker.outputs.data() + output * trialLanes, lanes,
                  values(output, trial, trial + lanes).data());
    missing += withoutResult(worker.outputs, lanes);
  }
  m_blocks[block].withoutResult = missing;
}

void TrialRun::describeBlock(std::size_t block) {
  for (std::size_t output = 0; output < m_outputs; ++output) {
    const std::span<double> drawn = values(output, block * m_blockTrials, blockEnd(block));
    BlockFigures& figures = m_figures[block * m_outputs + output];
    figures.moments = momentsOf(drawn);
    if (isAdaptive() && drawn.size() == m_blockTrials)
      figures.interval = symmetricInterval(drawn, m_plan.coverage);  // reorders; no one needs the order
  }
}

/// Judges all blocks whose turn has come; the share done, which never falls.
double TrialRun::judge(std::size_t drawn) {
  const std::lock_guard lock(m_judging);
  m_blocks[drawn].drawn = true;
  while (m_judged < m_endBlock && m_blocks[m_judged].drawn) judgeNext();
  return m_share;
}

void TrialRun::judgeNext() {
  const std::size_t block = m_judged++;
  if (m_blocks[block].withoutResult > 0) {
    m_endBlock = m_judged;
    return;
  }
  for (std::size_t output = 0; output < m_outputs; ++output)
    m_gathered[output].add(m_figures[block * m_outputs + output]);
  const auto judged = static_cast<double>(m_judged), all = static_cast<double>(m_blockCount);
  double expected = all;
  if (isAdaptive() && m_judged >= 2 && blockEnd(block) % m_blockTrials == 0) {
    double unrest = 0;
    for (const Gathered& output : m_gathered)
      unrest = std::max(unrest, output.unrest(m_plan.significantDigits));
    m_settled = unrest <= 1;
    if (m_settled) m_endBlock = m_judged;
    expected = std::clamp(judged * unrest * unrest, judged, all);  // it falls with the root of the blocks
  }
  m_share = std::max(m_share, judged / expected);
}

Error TrialRun::missingResults() const {
  return {"trials",
          say("{1} of {2} trials have no result, because an input can come to a value that cannot be",
              {std::to_string(m_blocks[m_judged - 1].withoutResult), std::to_string(blockEnd(m_judged - 1))}),
          say("Give that part a smaller uncertainty")};
}

void TrialRun::describeOutputs(bool reports) {
  for (std::size_t output = m_nextOutput++; output < m_outputs; output = m_nextOutput++) {
    if (m_stop.stop_requested()) {
      m_cancelled = true;
      return;
    }
    m_result.outputs[output] = described(output);
    const double share = static_cast<double>(output + 1) / static_cast<double>(m_outputs);
    if (reports) report(shareOfDrawing + (1 - shareOfDrawing) * share);
  }
}

TrialOutput TrialRun::described(std::size_t output) const {
  const std::span<double> drawn = values(output, 0, m_result.trials);
  TrialOutput described;
  described.mean = m_gathered[output].moments.mean;
  described.standardUncertainty = m_gathered[output].moments.standardDeviation();
  described.histogram = histogramOf(drawn, described.mean, described.standardUncertainty);
  const CoverageIntervals intervals = coverageIntervals(drawn, m_plan.coverage);
  described.symmetric = intervals.symmetric;
  described.shortest = intervals.shortest;
  return described;
}

void TrialRun::report(double share) const {
  if (m_progress) m_progress(share);
}

}  // namespace

Result<TrialResult> runTrials(const TrialPlan& plan, const TrialModelMaker& model, std::size_t outputs,
                              const std::stop_token& stop, const Progress& progress) {
  assert(outputs > 0);
  if (!(plan.coverage > 0 && plan.coverage < 1))
    return Error{"coverage", say("the coverage probability must lie between 0 and 1"),
                 say("Enter 0.95, say")};
  const std::size_t most = plan.trials.value_or(plan.greatestTrials);
  const std::size_t covered = coveredTrials(most, plan.coverage);
  if (covered == 0 || covered >= most)
    return Error{"trials",
                 say("{1} trials are too few for an interval of this coverage", {std::to_string(most)}),
                 say("Ask for more")};
  auto draws = Draws::of(plan.inputs, plan.pairs, plan.seed);
  if (!draws) return draws.error();
  return TrialRun(plan, *std::move(draws), outputs, stop, progress).result(model);
}

double numericalTolerance(double standardUncertainty, int digits) {
  assert(std::isfinite(standardUncertainty) && standardUncertainty >= 0 && digits >= 1 && digits <= 9);
  if (standardUncertainty == 0) return 0;
  // By way of text, which rounds decimally (0.0996 to two digits is 0.10) and exactly: "1.0e-01" holds two
  // digits, so the last is worth 1e-2 and half of it 5e-3.
  std::array<char, 32> text;
  const auto written = std::to_chars(text.data(), text.data() + text.size(), standardUncertainty,
                                     std::chars_format::scientific, digits - 1);
  const char* sign = std::find(text.data(), written.ptr, 'e') + 1;
  if (*sign == '+') ++sign;
  int exponent = 0;
  std::from_chars(sign, written.ptr, exponent);
  const std::string half = "5e" + std::to_string(exponent - digits);
  double tolerance = 0;
  std::from_chars(half.data(), half.data() + half.size(), tolerance);
  return tolerance;
}

Validation validateInterval(Interval linear, Interval trials, double standardUncertainty, int digits) {
  Validation validation;
  validation.tolerance = numericalTolerance(standardUncertainty, digits);
  validation.low = std::abs(linear.low - trials.low);
  validation.high = std::abs(linear.high - trials.high);
  validation.passed = validation.low <= validation.tolerance && validation.high <= validation.tolerance;
  return validation;
}

}  // namespace core
