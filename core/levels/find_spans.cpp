// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/find_spans.h"

#include <algorithm>
#include <cmath>

#include "core/levels/bounce.h"
#include "core/levels/cells.h"
#include "core/levels/contrast.h"
#include "core/levels/edges.h"
#include "core/levels/excursions.h"
#include "core/levels/held.h"
#include "core/levels/long_steps.h"
#include "core/levels/mains.h"
#include "core/levels/settling.h"
#include "core/levels/statistics.h"
#include "core/levels/trim.h"
#include "core/recording/samples.h"

namespace core {
namespace {

constexpr double fewestSamples = 6;  ///< in a level
constexpr double longestBounce_s = 0.06;

/// How a recording is cut into cells that are blind to mains pick-up: `smoothing` cells are a whole number of
/// its periods.
struct CellGrid {
  std::size_t cell = 1;
  std::size_t smoothing = 1;
};

CellGrid gridFor(std::size_t samples, double period) {
  const std::size_t usual = usualCellLength(samples);
  if (period == 0) return {usual, 1};
  CellGrid best;
  double least = 1e300;
  for (std::size_t cell = usual; cell <= 2 * usual; ++cell) {
    for (const double periods : {1.0, 2.0, 3.0}) {
      const double cells = std::max(1.0, std::round(periods * period / static_cast<double>(cell)));
      // Longer means cost short levels: they must be worth it.
      const double off = std::abs(cells * static_cast<double>(cell) / period -
                                  std::round(cells * static_cast<double>(cell) / period));
      const double cost = (off + 0.01) * periods;
      if (cost >= least) continue;
      least = cost;
      best = {cell, static_cast<std::size_t>(cells)};
    }
  }
  return best;
}

/// The smallest difference between neighbouring samples, when so many differ that it is the resolution of a
/// digitised signal and not a step; 0 when it cannot be told.
double resolutionOf(std::span<const double> values) {
  constexpr std::size_t looks = 4096;
  const std::size_t stride = std::max<std::size_t>(1, values.size() / looks);
  double smallest = 0;
  std::size_t differing = 0;
  std::size_t looked = 0;
  for (std::size_t i = 1; i < values.size(); i += stride) {
    if (looked % 256 == 0) letSamplesGo();
    const double difference = std::abs(values[i] - values[i - 1]);
    if (std::isnan(difference)) continue;
    ++looked;
    // Less than the last digits of a number is rounding.
    if (difference <= 1e-12 * std::abs(values[i])) continue;
    ++differing;
    if (smallest == 0 || difference < smallest) smallest = difference;
  }
  return differing * 20 > looked ? smallest : 0;
}

/// How often in a row each value is written where a logger asks faster than the instrument answers, else 1:
/// the usual length of runs of equal values, when there are many and they are about equally long.
std::size_t repetitionOf(std::span<const double> values) {
  constexpr std::size_t looks = 16384;
  constexpr std::size_t fewestRuns = 150;
  std::vector<double> runs;
  std::size_t begin = 0;
  for (std::size_t i = 1; i < std::min(values.size(), looks); ++i) {
    if (values[i] == values[begin]) continue;
    runs.push_back(static_cast<double>(i - begin));
    begin = i;
  }
  if (runs.size() < fewestRuns) return 1;
  const double usual = quantile(runs, 0.5);
  const bool areAlike = quantile(runs, 0.8) <= 1.3 * usual && quantile(runs, 0.2) >= usual / 1.3;
  return areAlike ? static_cast<std::size_t>(usual) : 1;
}

/// Between the values that nearly all cells lie between.
double rangeOf(const Cells& cells) {
  constexpr std::size_t looks = 4096;
  const std::size_t stride = std::max<std::size_t>(1, cells.size() / looks);
  std::vector<double> some;
  for (std::size_t k = 0; k < cells.size(); k += stride) some.push_back(cells[k]);
  return quantile(some, 0.995) - quantile(some, 0.005);
}

double leastStepOf(const Cells& cells, const std::vector<Scale>& scales, std::span<const double> values,
                   const LevelOptions& options) {
  if (options.leastStep > 0) return options.leastStep;
  const double resolution = options.resolution > 0 ? options.resolution : resolutionOf(values);
  const Scale& shortest = scales.front();
  const double ofSample = shortest.noise * std::sqrt(static_cast<double>(shortest.window * cells.length) / 2);
  // Noise of some size makes means finer than the resolution.
  return std::max(0.002 * rangeOf(cells), ofSample < 0.4 * resolution ? 1.5 * resolution : 0);
}

/// Cells that a level must have.
std::size_t shortestOf(const TimeAxis& time, const Cells& cells, const LevelOptions& options) {
  const double spacing_s = time.usualSpacing_s();
  const double whole_s = time.back() - time.front();
  const double shortest_s =
      options.shortest.base() > 0 ? options.shortest.base() : std::min(longestBounce_s, whole_s / 100);
  const double samples = std::max(fewestSamples, shortest_s / spacing_s);
  const double inCells = std::ceil(samples / static_cast<double>(cells.length) - 1e-6);
  return static_cast<std::size_t>(std::clamp(inCells, 3.0, 1e15));
}

/// The samples of `pieces` that are sure to belong to their levels; not of all of them when stopped.
std::vector<SampleSpan> samplesOf(std::span<const double> values, const Cells& cells,
                                  const std::vector<Piece>& pieces, double leastStep,
                                  const std::stop_token& stop) {
  const Deviations deviations(cells, pieces);
  const std::vector<SampleSpan> inCells = trimmed(cells, pieces, deviations, leastStep);
  double smallest = pieces.size() > 1 ? 1e300 : 0;
  for (std::size_t k = 1; k < pieces.size(); ++k)
    smallest = std::min(smallest, std::abs(pieces[k].value - pieces[k - 1].value));
  const double ofSample = deviations.of(1) * std::sqrt(static_cast<double>(cells.length));
  const double most = std::max(6 * ofSample, 0.25 * smallest);
  std::vector<SampleSpan> spans;
  for (std::size_t k = 0; k < pieces.size() && !stop.stop_requested(); ++k) {
    letSamplesGo();
    const SampleSpan span = cells.samplesOf(inCells[k].begin, inCells[k].end);
    spans.push_back(pieces.size() > 1 ? withoutBounce(values, cells, pieces[k], span, most) : span);
  }
  return spans;
}

}  // namespace

std::vector<SampleSpan> findSpans(const TimeAxis& time, std::span<const double> values,
                                  const LevelOptions& options, const std::stop_token& stop,
                                  const Progress& progress) {
  const CellGrid grid = gridFor(values.size(), mainsPeriod(time, values));
  const Progress most = [&](double share) {
    if (progress) progress(0.7 * share);
  };
  Cells cells = cellsOf(values, grid.cell, stop, most);
  if (stop.stop_requested() || cells.size() == 0) return {};
  if (grid.smoothing > 1 && 8 * grid.smoothing < cells.size())
    cells = smoothed(std::move(cells), grid.smoothing);
  const std::size_t repetition = repetitionOf(values) / grid.cell;
  // Shorter windows would compare what has been smeared out.
  const std::size_t smeared = std::max(2 * repetition, grid.smoothing > 1 ? grid.smoothing / 4 : 0);
  const std::vector<Scale> scales = scalesOf(cells, std::max<std::size_t>(3, smeared));
  if (scales.empty()) return {cells.samplesOf(0, cells.size())};
  const double leastStep = leastStepOf(cells, scales, values, options);
  std::vector<Edge> edges = withLongSteps(cells, scales, edgesOf(cells, scales, leastStep, stop), leastStep);
  if (stop.stop_requested()) return {};
  const std::size_t shortest = shortestOf(time, cells, options);
  const EdgedCells edged =
      withoutExcursions({std::move(cells), std::move(edges)}, scales, shortest, leastStep);
  const std::vector<Piece> pieces =
      withoutFragments(edged.cells, heldPieces(edged.cells, scales, edged.edges, shortest, leastStep));
  std::vector<SampleSpan> spans = samplesOf(values, edged.cells, pieces, leastStep, stop);
  if (progress) progress(1);
  return spans;
}

}  // namespace core
