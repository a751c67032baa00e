// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/cells.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>

#include "core/levels/statistics.h"
#include "core/recording/samples.h"

namespace core {
namespace {

/// Samples taken at a time: few enough to stay in the nearest memory, and to be of one noise.
std::size_t chunkFor(std::size_t cellLength) { return cellLength == 1 ? 512 : 4096; }

constexpr std::size_t halo = 3;  ///< neighbours on either side that the medians look at

double median(double a, double b, double c) {
  const double low = a < b ? a : b;
  const double high = a < b ? b : a;
  const double capped = high < c ? high : c;
  return low < capped ? capped : low;
}

/// `values` with those of values[halo] to values[halo + count - 1] that stick out by more than `least` for
/// one or two samples replaced by a median of their neighbours, which goes unseen where it is not needed:
/// medians of noise are not means of it. `rough` and `calm` have room for as many.
void takeSpikesOut(const double* values, double* rough, double* calm, std::size_t count, double least) {
  for (std::size_t i = 1; i < count + 2 * halo - 1; ++i)
    rough[i] = median(values[i - 1], values[i], values[i + 1]);
  for (std::size_t i = halo; i < count + halo; ++i) {
    const double usual = median(rough[i - 2], rough[i], rough[i + 2]);
    calm[i] = std::abs(values[i] - usual) > least ? usual : values[i];
  }
}

/// What a sample of noise does not differ from its median by: six times the standard deviation of such
/// differences, from some of values[halo] to values[halo + count - 1]. A tenth of them may be spikes, while
/// the crests of pick-up must be none.
double leastSpike(const double* values, std::size_t count, std::vector<double>& differences) {
  constexpr std::size_t looks = 128;
  constexpr double most = 1.6448536;  // nine tenths of |N(0, 1)| lie below
  const std::size_t stride = std::max<std::size_t>(1, count / looks);
  differences.clear();
  for (std::size_t i = halo; i < count + halo; i += stride) {
    const auto rough = [&](std::size_t k) { return median(values[k - 1], values[k], values[k + 1]); };
    differences.push_back(std::abs(values[i] - median(rough(i - 2), rough(i), rough(i + 2))));
  }
  return 6 / most * quantile(differences, 0.9);
}

/// Four sums side by side, which the processor adds at once.
double sumOf(const double* values, std::size_t count) {
  double sums[4] = {};
  std::size_t i = 0;
  for (; i + 4 <= count; i += 4) {
    for (std::size_t k = 0; k < 4; ++k) sums[k] += values[i + k];
  }
  for (; i < count; ++i) sums[0] += values[i];
  return (sums[0] + sums[1]) + (sums[2] + sums[3]);
}

/// Takes a recording chunk by chunk and adds its cells.
class CellMaker {
 public:
  CellMaker(std::span<const double> values, std::size_t length)
      : m_values(values),
        m_perChunk(std::max<std::size_t>(1, chunkFor(length) / length)),
        m_buffer(m_perChunk * length + length + 2 * halo),
        m_rough(m_buffer.size()),
        m_calm(m_buffer.size()) {
    m_cells.length = length;
    m_cells.samples = values.size();
    m_cells.sums.reserve(values.size() / length + 1);
    const auto first = std::find_if(values.begin(), values.end(), [](double v) { return !std::isnan(v); });
    if (first != values.end()) m_cells.origin = *first;
    m_last = m_cells.origin;
  }

  std::size_t chunks() const { return (places() + m_perChunk - 1) / m_perChunk; }

  void addChunk(std::size_t chunk) {
    const std::size_t firstPlace = chunk * m_perChunk;
    const std::size_t lastPlace = std::min(firstPlace + m_perChunk, places());
    const std::size_t begin = firstPlace * m_cells.length;
    const std::size_t end = endOf(lastPlace - 1);
    const bool isWhole = take(begin, end);
    const double least = leastSpike(m_buffer.data(), end - begin, m_differences);
    takeSpikesOut(m_buffer.data(), m_rough.data(), m_calm.data(), end - begin, least);
    for (std::size_t place = firstPlace; place < lastPlace; ++place) {
      const std::size_t from = place * m_cells.length;
      const std::size_t count = endOf(place) - from;
      if (isWhole || hasEnough(from, count))
        add(place, sumOf(&m_calm[halo + from - begin], count) / static_cast<double>(count));
    }
  }

  Cells cells() && { return std::move(m_cells); }

 private:
  std::size_t places() const { return std::max<std::size_t>(1, m_values.size() / m_cells.length); }
  std::size_t endOf(std::size_t place) const {
    return place + 1 == places() ? m_values.size() : (place + 1) * m_cells.length;
  }

  /// Fills the buffer with samples `begin` to `end` - 1 and their neighbours; false when some are missing,
  /// which then have the last value before them.
  bool take(std::size_t begin, std::size_t end) {
    const std::size_t count = end - begin;
    double check = 0;
    for (std::size_t i = 0; i < count; ++i) {
      m_buffer[halo + i] = m_values[begin + i] - m_cells.origin;
      check += m_buffer[halo + i] * 0;
    }
    const double before = m_last - m_cells.origin;
    for (std::size_t k = 0; k < halo; ++k) {
      // The first and the last value of the recording stand for what is beyond it.
      m_buffer[k] = m_values[begin >= halo - k ? begin + k - halo : 0] - m_cells.origin;
      m_buffer[halo + count + k] = m_values[std::min(end + k, m_values.size() - 1)] - m_cells.origin;
      check += (m_buffer[k] + m_buffer[halo + count + k]) * 0;
    }
    const bool isWhole = check == 0;
    if (!isWhole) fillGaps(before, count + 2 * halo);
    m_last = m_buffer[count + halo - 1] + m_cells.origin;
    return isWhole;
  }

  void fillGaps(double last, std::size_t count) {
    for (std::size_t i = 0; i < count; ++i) {
      if (std::isnan(m_buffer[i])) m_buffer[i] = last;
      last = m_buffer[i];
    }
  }

  bool hasEnough(std::size_t from, std::size_t count) const {
    std::size_t numbers = 0;
    for (std::size_t i = from; i < from + count; ++i) numbers += std::isnan(m_values[i]) ? 0 : 1;
    return 2 * numbers >= count;
  }

  void add(std::size_t place, double mean) {
    const std::size_t cell = m_cells.size();
    if (place != cell && m_cells.places.empty()) {
      for (std::size_t k = 0; k < cell; ++k) m_cells.places.push_back(k);
      m_hasGaps = true;
    }
    if (m_hasGaps) m_cells.places.push_back(place);
    m_cells.sums.push_back(m_cells.sums.back() + mean);
  }

  std::span<const double> m_values;
  std::size_t m_perChunk;
  std::vector<double> m_buffer;
  std::vector<double> m_rough;
  std::vector<double> m_calm;
  std::vector<double> m_differences;
  Cells m_cells;
  double m_last = 0;
  bool m_hasGaps = false;
};

/// Running sums of cells of which each is the mean of `width`, `before` of them before it. Near the ends the
/// first and the last whole mean stand for those that are cut off.
std::vector<double> smoothedSums(const std::vector<double>& sums, std::size_t width, std::size_t before) {
  const std::size_t count = sums.size() - 1;
  std::vector<double> result(sums.size());
  for (std::size_t i = 0; i < count; ++i) {
    const std::size_t begin = std::min(i - std::min(i, before), count - width);
    result[i + 1] = result[i] + (sums[begin + width] - sums[begin]) / static_cast<double>(width);
  }
  return result;
}

}  // namespace

SampleSpan Cells::samplesOf(std::size_t begin, std::size_t end) const {
  const std::size_t first = places.empty() ? begin : places[begin];
  const std::size_t last = places.empty() ? end - 1 : places[end - 1];
  const bool isEnd = last + 1 == std::max<std::size_t>(1, samples / length);
  return {first * length, isEnd ? samples : (last + 1) * length};
}

std::size_t usualCellLength(std::size_t samples) {
  constexpr std::size_t usual = std::size_t{1} << 17;
  constexpr std::size_t most = std::size_t{1} << 20;
  const std::size_t length = std::clamp<std::size_t>(samples / usual, 1, 8);
  return std::max(length, (samples + most - 1) / most);
}

Cells cellsOf(std::span<const double> values, std::size_t length, const std::stop_token& stop,
              const Progress& progress) {
  assert(!values.empty() && length > 0);
  CellMaker maker(values, length);
  constexpr std::size_t between = 256;  // chunks: a few milliseconds
  for (std::size_t chunk = 0; chunk < maker.chunks(); ++chunk) {
    if (chunk % between == 0) {
      if (stop.stop_requested()) return {};
      letSamplesGo();
      if (progress) progress(static_cast<double>(chunk) / static_cast<double>(maker.chunks()));
    }
    maker.addChunk(chunk);
  }
  return std::move(maker).cells();
}

Cells smoothed(Cells cells, std::size_t width) {
  assert(width > 0 && width <= cells.size());
  cells.sums = smoothedSums(cells.sums, width, width / 2);
  cells.sums = smoothedSums(cells.sums, width, (width - 1) / 2);
  return cells;
}

std::vector<double> despiked(std::span<const double> values) {
  if (values.empty()) return {};
  std::vector<double> buffer(values.size() + 2 * halo);
  std::copy(values.begin(), values.end(), buffer.begin() + halo);
  std::fill_n(buffer.begin(), halo, values.front());
  std::fill_n(buffer.end() - halo, halo, values.back());
  std::vector<double> rough(buffer.size());
  std::vector<double> calm(buffer.size());
  std::vector<double> differences;
  takeSpikesOut(buffer.data(), rough.data(), calm.data(), values.size(),
                leastSpike(buffer.data(), values.size(), differences));
  return {calm.begin() + halo, calm.end() - halo};
}

}  // namespace core
