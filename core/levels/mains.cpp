// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/mains.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <vector>

#include "core/levels/cells.h"

namespace core {
namespace {

constexpr std::size_t greatestChunks = 9;
constexpr std::size_t greatestPeriods = 16;  ///< in a chunk
constexpr std::size_t fewestPeriods = 6;
constexpr double greatestPeriod = 10'000;  ///< samples; beyond it the levels would hide in it

/// Frequency in cycles per sample at which `frequency_Hz` shows, 0 to 0.5.
double folded(double frequency_Hz, double spacing_s) {
  const double cycles = frequency_Hz * spacing_s;
  return std::abs(cycles - std::round(cycles));
}

/// Squared size of the component of `values` at `frequency` (cycles per value). The turning pointer is
/// multiplied on: over the few thousand values of a chunk rounding adds up to 1e-12 of it.
double power(const std::vector<double>& values, double frequency) {
  const double turn = 2 * std::numbers::pi * frequency;
  const double stepRe = std::cos(turn);
  const double stepIm = std::sin(turn);
  double pointerRe = 1;
  double pointerIm = 0;
  double re = 0;
  double im = 0;
  for (const double v : values) {
    re += v * pointerRe;
    im += v * pointerIm;
    const double turned = pointerRe * stepRe - pointerIm * stepIm;
    pointerIm = pointerRe * stepIm + pointerIm * stepRe;
    pointerRe = turned;
  }
  return re * re + im * im;
}

double medianOf(std::vector<double> values) {
  const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
  std::nth_element(values.begin(), middle, values.end());
  return *middle;
}

/// `values` with missing ones replaced by the last before them; empty when more than a quarter are missing.
std::vector<double> withoutGaps(std::span<const double> values) {
  std::vector<double> whole(values.begin(), values.end());
  const auto first = std::find_if(whole.begin(), whole.end(), [](double v) { return !std::isnan(v); });
  std::size_t missing = 0;
  double last = first == whole.end() ? 0 : *first;
  for (double& v : whole) {
    if (std::isnan(v)) {
      v = last;
      ++missing;
    }
    last = v;
  }
  return 4 * missing > whole.size() ? std::vector<double>{} : whole;
}

/// One chunk without spikes, in means of `decimation` samples, about its mean and tapered (Hann) so that a
/// step does not show far from where it belongs; empty where it is mostly missing.
std::vector<double> chunkOf(std::span<const double> values, std::size_t decimation) {
  const std::vector<double> calm = despiked(withoutGaps(values));
  std::vector<double> chunk;
  for (std::size_t i = 0; i + decimation <= calm.size(); i += decimation) {
    double sum = 0;
    for (std::size_t k = i; k < i + decimation; ++k) sum += calm[k] - calm[0];
    chunk.push_back(sum / static_cast<double>(decimation));
  }
  double mean = 0;
  for (const double v : chunk) mean += v / static_cast<double>(chunk.size());
  const double turn = 2 * std::numbers::pi / static_cast<double>(chunk.size());
  for (std::size_t i = 0; i < chunk.size(); ++i)
    chunk[i] = (chunk[i] - mean) * (1 - std::cos(turn * (static_cast<double>(i) + 0.5)));
  return chunk;
}

/// Whether there is much more at `frequency` (cycles per sample) than at some way on either side, in most of
/// some chunks spread over the recording.
bool hasLine(std::span<const double> values, double frequency) {
  const double periods = std::min<double>(greatestPeriods, static_cast<double>(values.size()) * frequency);
  if (periods < fewestPeriods) return false;
  const auto length =
      std::min(values.size(), std::max<std::size_t>(64, std::lround(std::ceil(periods / frequency))));
  const auto decimation = std::max<std::size_t>(1, static_cast<std::size_t>(0.1 / frequency));
  const std::size_t chunks = std::clamp<std::size_t>(values.size() / length, 1, greatestChunks);
  std::vector<double> on;
  std::vector<double> beside;
  for (std::size_t k = 0; k < chunks; ++k) {
    const std::size_t begin = chunks > 1 ? (values.size() - length) / (chunks - 1) * k : 0;
    const std::vector<double> chunk = chunkOf(values.subspan(begin, length), decimation);
    if (chunk.size() < 32) continue;
    const double cycles = frequency * static_cast<double>(decimation);
    const double apart = 1 / static_cast<double>(chunk.size());
    on.push_back(power(chunk, cycles));
    double side = 0;
    for (const double distance : {-5.3, -3.7, 3.7, 5.3}) side += power(chunk, cycles + distance * apart) / 4;
    beside.push_back(side);
  }
  return !on.empty() && medianOf(on) > 10 * medianOf(beside) && medianOf(on) > 0;
}

}  // namespace

double mainsPeriod(const TimeAxis& time, std::span<const double> values) {
  const double spacing_s = time.usualSpacing_s();
  if (!(spacing_s > 0)) return 0;
  // The slowest first: the others may be its harmonics.
  for (const double mains_Hz : {50.0 / 3, 50.0, 60.0, 400.0}) {
    const double fundamental = folded(mains_Hz, spacing_s);
    if (fundamental * greatestPeriod < 1) continue;
    if (hasLine(values, fundamental)) return 1 / fundamental;
    for (const double multiple : {2.0, 3.0}) {
      const double frequency = folded(multiple * mains_Hz, spacing_s);
      const bool isOwn = mains_Hz >= 50;  // three times 16.7 Hz is 50 Hz
      if (isOwn && frequency * greatestPeriod >= 1 && hasLine(values, frequency)) return 1 / fundamental;
    }
  }
  return 0;
}

}  // namespace core
