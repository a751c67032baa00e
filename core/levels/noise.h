// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <span>
#include <vector>

namespace core {

/// What a stretch tells of its noise, octave by octave: entry s is of blocks of 2^s samples. The contrast of
/// three blocks in a row, (first - 2 second + third) of their means, sees neither level nor straight drift.
struct Contrasts {
  std::vector<double> meanSquares;  ///< of the contrasts
  std::vector<double> freedoms;     ///< their degrees of freedom; 0: no three blocks in a row
};

/// Contrasts of blocks with `sums` over `counts` samples that are there, each 2^`octave` samples long; what
/// lies in a block less than three quarters full is left out.
Contrasts contrastsOf(std::vector<double> sums, std::vector<double> counts, std::size_t octave);

/// Variance of the mean of `samples` samples of a first-order process of unit variance and correlation time
/// `time` in samples (correlation exp(-k/time) at lag k); 0: white.
/// Source: Zhang, "Calculation of the uncertainty of the mean of autocorrelated measurements", Metrologia 43
/// (2006) (from memory).
double varianceOfMean(double time, double samples);

/// A stationary process of unit variance.
struct Process {
  enum class Kind { White, FirstOrder, Averaged };

  Kind kind = Kind::White;
  /// Correlation time of a first-order one (correlation exp(-k/time) at lag k); length of the moving average
  /// over white noise, or of the runs of equal samples, of an averaged one (1 - k/time). In samples.
  double time = 0;

  double varianceOfMean(double samples) const;
  /// Covariance of the means of two blocks of `block` samples, `apart` blocks from one to the next (1 or
  /// more).
  double covariance(double block, double apart) const;
};

/// The noise of a recording: white, of first order with some correlation time, averaged by a filter or
/// repeated by a logger, or a sum of up to three such, each shape with the probability that the contrasts of
/// all stretches together leave it. Nothing is cut off a correlation function, and what taking off mean and
/// slope hides of slow noise is no bias, since what is fitted is the expectation of contrasts that see
/// neither. Components add up with positive weights only, so negative correlation earns nothing. The shape is
/// common to all stretches; the strength is each one's own, drawn to the common one as far as the strengths
/// agree. Source: none published for the whole. An estimated variance has a gamma likelihood; shapes are
/// weighed by Laplace's approximation (textbook, from memory).
class Noise {
 public:
  explicit Noise(std::span<const Contrasts> stretches);

  struct OfMean {
    /// Of the mean; plus and minus 1.96 of it holds 95 % of what all probable shapes and strengths foretell.
    double stdUncertainty = 0;
    double effectiveSamples = 1;  ///< as many independent ones would tell as much
  };
  /// Of the mean of `samples` samples in a row of stretch `k`.
  OfMean ofMean(std::size_t k, std::size_t samples) const;
  /// Standard deviation of the least-squares slope per sample over them.
  double deviationOfSlope(std::size_t k, std::size_t samples) const;
  /// Standard deviation of one sample.
  double deviationOfSample(std::size_t k) const;

 private:
  static constexpr std::size_t most = 3;  ///< components of one shape
  struct Shape {
    std::size_t components = 0;
    std::array<std::size_t, most> processes{};     ///< indices of m_processes
    std::array<double, most> weights{};            ///< variances, at unit strength
    std::array<double, most * most> covariance{};  ///< of the logarithms of the weights
    double probability = 0;                        ///< its logarithm while shapes are sought
  };

  void layOutProcesses(std::size_t octaves);
  void pool(std::span<const Contrasts> stretches);
  void judgeStrengths(std::span<const Contrasts> stretches);
  void moderateStrengths();
  void findShapes();
  template <std::size_t size>
  void consider(const std::array<std::size_t, size>& processes);
  void weigh();
  double expected(const Shape& shape, std::size_t octave) const;
  double expected(std::size_t octave) const;
  double varianceOfSlopeNear(double samples) const;

  std::vector<Process> m_processes;              ///< that a shape may be made of
  std::size_t m_firstAveraged = 0;               ///< index of the first averaged one, after all others
  std::vector<std::vector<double>> m_responses;  ///< by octave and process: mean square contrast
  std::vector<double> m_pooled;                  ///< mean square contrasts by octave, of unit strength
  std::vector<double> m_freedoms;                ///< of those
  std::vector<Shape> m_shapes;                   ///< the most probable first
  std::vector<double> m_strengths;               ///< by stretch, of variances
  std::vector<double> m_strengthFreedoms;        ///< by stretch
  std::vector<double> m_usual;                   ///< mean square contrasts of the shape at work
  mutable std::vector<double> m_slopeVariances;  ///< by length, four to an octave; below 0: not known yet
};

}  // namespace core
