// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <span>
#include <vector>

#include "core/levels/noise.h"
#include "core/levels/sample_span.h"

namespace core {

/// The straight line a span's samples are looked at from, and how far from it they usually lie.
struct Baseline {
  double centre = 0;  ///< at the middle of the span
  double slope = 0;   ///< per sample
  double scale = 0;   ///< standard deviation about it, of what is no outlier
  double limit = 0;   ///< what lies farther off is an outlier
};

/// From at most some thousand samples spread over the span: medians of its thirds, so that spikes do not
/// matter. NaN for its centre when there is no number; its limit is left to the caller.
Baseline baselineOf(std::span<const double> values);

/// Standard deviation of normal noise with these absolute deviations (one at least): by their median or,
/// where that is larger, by the one that an eighth lies beyond, since most samples of a digitised signal may
/// have one code. Wild ones do not matter while they are one in ten or fewer.
double scaleOf(std::vector<double> distances);

/// How far off a sample is an outlier. Samples one code apart never are, however quiet the signal.
double limitOf(double scale, double resolution);

/// Adds up the residuals of one span, which may come in several parts, in order.
class Tally {
 public:
  static constexpr std::size_t sections = 16;

  Tally() = default;
  Tally(std::size_t samples, const Baseline& baseline);

  /// Of the samples to come.
  void setLimit(double limit) { m_baseline.limit = limit; }
  /// `residuals` from the baseline; NaN is missing.
  void add(std::span<const double> residuals);
  /// The contrasts; the blocks are given back to memory.
  Contrasts finish();

  const Baseline& baseline() const { return m_baseline; }
  std::size_t samples() const { return m_kept; }
  std::size_t outliers() const { return m_outliers; }
  bool isConstant() const { return m_kept == 0 || m_least == m_greatest; }
  /// Residuals of the samples that were kept.
  double mean() const;
  double robustMean() const;
  /// Least-squares slope per sample, that of the baseline in it.
  double slope() const { return m_baseline.slope + m_slope; }
  double meanSquareAboutLine() const;
  /// Means of sixteen equal sections about the baseline; NaN where one is less than half there.
  const std::vector<double>& sectionMeans() const { return m_sections; }

 private:
  void addSums(std::span<const double> residuals, double* kept, double* counts);
  void addBlocks(std::span<const double> kept, std::span<const double> counts);
  void fitLine();
  void fillSections();

  Baseline m_baseline;
  std::size_t m_size = 0;
  std::size_t m_at = 0;  ///< residuals taken so far
  std::size_t m_octave = 0;
  std::size_t m_kept = 0;
  std::size_t m_outliers = 0;
  double m_least = 0, m_greatest = 0;
  double m_sum = 0, m_squares = 0;
  double m_slope = 0, m_explained = 0;  ///< least-squares slope, and what it takes off the squares
  double m_winsorised = 0;              ///< sum of residuals moved to within 1.5 scales
  double m_within = 0;                  ///< residuals that needed no moving
  std::vector<double> m_all;            ///< residuals of a short span, outliers as well
  std::vector<double> m_blockSums, m_blockCounts;
  std::vector<double> m_sections;
};

}  // namespace core
