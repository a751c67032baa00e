// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <memory>
#include <span>
#include <vector>

namespace core {

/// Part of a recording: samples `begin` to `begin + length - 1`.
struct HumPart {
  std::size_t begin = 0;
  std::size_t length = 0;
};

/// Frequencies of what hums in `residuals`, evenly spaced samples about their levels, 0 where there is none:
/// lines that stand 30 times above the spectrum around them, the strongest first, at most eight. In cycles
/// per sample, above `least` and below one half. Of lines in white noise one recording in thousands has one
/// by chance.
std::vector<double> linesOf(std::vector<double> residuals, double least);

/// Takes sinusoids of known frequency off residuals, their amplitude and phase fitted by least squares
/// along with level and straight drift of each part.
class Hum {
 public:
  explicit Hum(std::vector<double> lines);
  Hum(Hum&&) noexcept;
  Hum& operator=(Hum&&) noexcept;
  ~Hum();

  bool isSilent() const { return m_lines.empty(); }
  /// Corrects the frequencies, each known to a small part of a turn over all samples, by least squares.
  void refine(std::span<const double> residuals, std::span<const HumPart> parts);
  /// Fits the sinusoids to `residuals`, those of `parts` one after the other with NaN where there is none,
  /// and takes them off `target`, the same samples or more of them.
  void takeOff(std::span<const double> residuals, std::span<const HumPart> parts, std::span<double> target);
  /// Amplitudes of the lines, the root mean square of all that were fitted.
  std::vector<double> amplitudes() const;

 private:
  struct Design;

  void layOut(std::size_t length);
  std::vector<double> fittedToNearlyAll(std::span<const double> residuals);

  std::vector<double> m_lines;
  std::unique_ptr<Design> m_design;
  std::unique_ptr<Design> m_other;  ///< the one before: whole pieces and the last ones of spans take turns
  std::vector<double> m_squares;    ///< sums of squared amplitudes by line
  double m_samples = 0;
};

}  // namespace core
