// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/hum.h"

#include <Eigen/Dense>
#include <algorithm>
#include <bit>
#include <cmath>
#include <complex>
#include <numbers>
#include <optional>

namespace core {
namespace {

using Complex = std::complex<double>;

constexpr std::size_t mostLines = 8;
constexpr double standsOut = 30;     ///< times the median of the spectrum on either side
constexpr std::size_t guard = 3;     ///< bins next to a line that its own skirts fill
constexpr std::size_t nearest = 12;  ///< bins from zero: too few below to compare with
constexpr double turn = 2 * std::numbers::pi;

/// Discrete Fourier transform of a power of two of samples.
class Transform {
 public:
  explicit Transform(std::size_t size) : m_roots(size / 2) {
    for (std::size_t k = 0; k < m_roots.size(); ++k)
      m_roots[k] = std::polar(1.0, -turn * static_cast<double>(k) / static_cast<double>(size));
  }

  void operator()(std::vector<Complex>& samples) const;

 private:
  std::vector<Complex> m_roots;
};

/// In place, by halving.
void Transform::operator()(std::vector<Complex>& samples) const {
  const std::size_t n = samples.size();
  for (std::size_t i = 1, j = 0; i < n; ++i) {
    std::size_t bit = n / 2;
    for (; j & bit; bit /= 2) j ^= bit;
    j ^= bit;
    if (i < j) std::swap(samples[i], samples[j]);
  }
  for (std::size_t half = 1; half < n; half *= 2) {
    const std::size_t stride = n / (2 * half);
    for (std::size_t begin = 0; begin < n; begin += 2 * half) {
      for (std::size_t k = 0; k < half; ++k) {
        // Written out: the product of the library looks for what is not a number.
        const Complex a = samples[begin + half + k], root = m_roots[k * stride];
        const Complex odd(a.real() * root.real() - a.imag() * root.imag(),
                          a.real() * root.imag() + a.imag() * root.real());
        samples[begin + half + k] = samples[begin + k] - odd;
        samples[begin + k] += odd;
      }
    }
  }
}

std::vector<double> spectrumOf(std::span<const double> residuals, const Transform& transform) {
  std::vector<Complex> samples(std::bit_ceil(residuals.size()));
  std::copy(residuals.begin(), residuals.end(), samples.begin());
  transform(samples);
  std::vector<double> power(samples.size() / 2 + 1);
  for (std::size_t k = 0; k < power.size(); ++k) power[k] = std::norm(samples[k]);
  return power;
}

/// Whether more than half of `values` are below `bound`: as a rule a few of them tell.
bool areMostlyBelow(std::span<const double> values, double bound) {
  const std::size_t half = values.size() / 2;
  std::size_t beyond = 0;
  for (const double v : values) {
    if (v >= bound && ++beyond >= values.size() - half) return false;
  }
  return true;
}

/// Above the larger of the medians on the two sides, so that the slope of red noise is no line.
bool standsOutAt(std::span<const double> power, std::size_t bin) {
  const std::size_t reach = std::clamp<std::size_t>(bin / 2, guard + 4, 32);
  const double bound = power[bin] / standsOut;
  if (!areMostlyBelow(power.subspan(bin - reach, reach - guard + 1), bound)) return false;
  const std::size_t first = bin + guard;
  if (first + guard >= power.size()) return true;
  const std::size_t count = std::min(reach - guard + 1, power.size() - first);
  return areMostlyBelow(power.subspan(first, count), bound);
}

/// Step of the phasor of a line from one sample to the next.
Complex stepOf(double line) { return std::polar(1.0, turn * line); }

Complex coefficientOf(std::span<const double> residuals, double line) {
  const Complex step = stepOf(-line);
  double re = 1, im = 0, sumRe = 0, sumIm = 0;
  for (const double r : residuals) {
    sumRe += r * re;
    sumIm += r * im;
    const double turned = re * step.real() - im * step.imag();
    im = re * step.imag() + im * step.real();
    re = turned;
  }
  return {sumRe, sumIm};
}

/// Coefficients of `line` in blocks of `length`, each from its own first sample.
std::vector<Complex> blockCoefficients(std::span<const double> residuals, double line, std::size_t length) {
  std::vector<Complex> blocks;
  for (std::size_t begin = 0; begin < residuals.size(); begin += length)
    blocks.push_back(
        coefficientOf(residuals.subspan(begin, std::min(length, residuals.size() - begin)), line));
  return blocks;
}

/// The frequency with the most power within a bin of `line`, by golden section. Within a block of a small
/// part of the samples such frequencies are all the same.
double refined(std::span<const double> residuals, double line, double bin) {
  const std::size_t length = std::max<std::size_t>(1, residuals.size() / 512);
  const std::vector<Complex> blocks = blockCoefficients(residuals, line, length);
  const auto power = [&](double f) {
    const Complex step = stepOf(-f * static_cast<double>(length));
    Complex sum = 0;
    Complex phasor = 1;
    for (const Complex& block : blocks) {
      sum += block * phasor;
      phasor *= step;
    }
    return std::norm(sum);
  };
  const double golden = (std::sqrt(5.0) - 1) / 2;
  double low = line - bin;
  double high = std::min(line + bin, 0.5);
  double left = high - golden * (high - low), right = low + golden * (high - low);
  double leftPower = power(left), rightPower = power(right);
  for (int round = 0; round < 18; ++round) {
    if (leftPower > rightPower) {
      high = right;
      right = left;
      rightPower = leftPower;
      left = high - golden * (high - low);
      leftPower = power(left);
    } else {
      low = left;
      left = right;
      leftPower = rightPower;
      right = low + golden * (high - low);
      rightPower = power(right);
    }
  }
  return (low + high) / 2;
}

std::optional<std::size_t> strongestLine(std::span<const double> power, std::size_t first) {
  std::optional<std::size_t> strongest;
  for (std::size_t k = first; k + 1 < power.size(); ++k) {
    if (power[k] < power[k - 1] || power[k] < power[k + 1]) continue;
    if (strongest && power[k] < power[*strongest]) continue;
    if (standsOutAt(power, k)) strongest = k;
  }
  return strongest;
}

/// Subtracts the sinusoid, where there are samples.
void takeOne(std::vector<double>& residuals, double line) {
  const auto count = static_cast<double>(
      residuals.size() - static_cast<std::size_t>(std::count(residuals.begin(), residuals.end(), 0.0)));
  const Complex amplitude = 2.0 / count * coefficientOf(residuals, line);
  const Complex step = stepOf(line);
  double re = amplitude.real(), im = amplitude.imag();
  for (double& r : residuals) {
    if (r != 0) r -= re;
    const double turned = re * step.real() - im * step.imag();
    im = re * step.imag() + im * step.real();
    re = turned;
  }
}

/// Takes least-squares lines off the entries that are there, and sets the others to 0.
class Leveller {
 public:
  /// `there` is 1 or 0.
  explicit Leveller(std::span<const double> there)
      : m_there(there.data(), static_cast<Eigen::Index>(there.size())),
        m_places(Eigen::ArrayXd::LinSpaced(m_there.size(), 0, 1) - 0.5),
        m_number(std::max(1.0, m_there.sum())),
        m_middle((m_places * m_there).sum() / m_number),
        m_squares((m_places.square() * m_there).sum() - m_number * m_middle * m_middle) {}

  void levelOut(std::span<double> entries) const {
    Eigen::Map<Eigen::ArrayXd> column(entries.data(), m_there.size());
    column *= m_there;
    const double mean = column.sum() / m_number;
    const double rise = (column * m_places).sum() - m_number * m_middle * mean;
    const double slope = m_squares > 0 ? rise / m_squares : 0;
    column = (column - (mean - slope * m_middle) - slope * m_places) * m_there;
  }

 private:
  Eigen::Map<const Eigen::ArrayXd> m_there;
  Eigen::ArrayXd m_places;
  double m_number, m_middle, m_squares;
};

using Column = std::vector<double>;

/// Cosine and sine of each line, counted from the first sample of the first part.
std::vector<Column> columnsOf(std::span<const double> lines, std::span<const HumPart> parts,
                              std::size_t length) {
  std::vector<Column> columns(2 * lines.size(), Column(length));
  for (std::size_t line = 0; line < lines.size(); ++line) {
    const Complex step = stepOf(lines[line]);
    std::size_t at = 0;
    for (const HumPart& part : parts) {
      const double turns = lines[line] * static_cast<double>(part.begin - parts.front().begin);
      const Complex phasor = std::polar(1.0, turn * (turns - std::floor(turns)));
      double re = phasor.real(), im = phasor.imag();
      for (std::size_t k = 0; k < part.length; ++k, ++at) {
        columns[2 * line][at] = re;
        columns[2 * line + 1][at] = im;
        const double turned = re * step.real() - im * step.imag();
        im = re * step.imag() + im * step.real();
        re = turned;
      }
    }
  }
  return columns;
}

using Vector = Eigen::Map<const Eigen::VectorXd>;

Eigen::MatrixXd normalOf(const std::vector<Column>& columns) {
  const auto size = static_cast<Eigen::Index>(columns.size());
  const auto length = static_cast<Eigen::Index>(columns.front().size());
  Eigen::MatrixXd normal(size, size);
  for (Eigen::Index i = 0; i < size; ++i) {
    const Vector column(columns[static_cast<std::size_t>(i)].data(), length);
    for (Eigen::Index j = 0; j <= i; ++j)
      normal(i, j) = normal(j, i) = column.dot(Vector(columns[static_cast<std::size_t>(j)].data(), length));
    // So little that it only steadies lines which the samples cannot tell apart.
    normal(i, i) += 1e-6 * static_cast<double>(length);
  }
  return normal;
}

/// Coefficients of the columns by least squares, along with level and straight drift of each part.
std::vector<double> fitted(std::vector<Column> columns, std::span<const double> residuals,
                           std::span<const HumPart> parts) {
  Column sought(residuals.size());
  Column present(residuals.size());
  for (std::size_t k = 0; k < sought.size(); ++k) {
    present[k] = std::isnan(residuals[k]) ? 0 : 1;
    sought[k] = std::isnan(residuals[k]) ? 0 : residuals[k];
  }
  std::size_t at = 0;
  for (const HumPart& part : parts) {
    const auto there = std::span<const double>(present).subspan(at, part.length);
    const Leveller leveller(there);
    for (Column& column : columns) leveller.levelOut(std::span(column).subspan(at, part.length));
    leveller.levelOut(std::span(sought).subspan(at, part.length));
    at += part.length;
  }
  const auto length = static_cast<Eigen::Index>(residuals.size());
  Eigen::VectorXd pull(static_cast<Eigen::Index>(columns.size()));
  for (std::size_t i = 0; i < columns.size(); ++i)
    pull[static_cast<Eigen::Index>(i)] = Vector(columns[i].data(), length).dot(Vector(sought.data(), length));
  const Eigen::VectorXd solution = normalOf(columns).ldlt().solve(pull);
  return {solution.begin(), solution.end()};
}

}  // namespace

std::vector<double> linesOf(std::vector<double> residuals, double least) {
  std::vector<double> lines;
  const Transform transform(std::bit_ceil(std::max<std::size_t>(residuals.size(), 2)));
  while (lines.size() < mostLines && residuals.size() >= 4 * nearest) {
    const std::vector<double> power = spectrumOf(residuals, transform);
    const double bin = 0.5 / static_cast<double>(power.size() - 1);
    const std::size_t first = std::max(nearest, static_cast<std::size_t>(std::ceil(least / bin)));
    const auto strongest = strongestLine(power, first);
    if (!strongest) break;
    lines.push_back(refined(residuals, static_cast<double>(*strongest) * bin, bin));
    takeOne(residuals, lines.back());
  }
  return lines;
}

/// What can be laid out once for all complete pieces of one length.
struct Hum::Design {
  std::size_t length = 0;
  std::vector<Column> columns;
  std::vector<Column> levelled;
  Eigen::LDLT<Eigen::MatrixXd> normal;
};

Hum::Hum(std::vector<double> lines)
    : m_lines(std::move(lines)), m_design(std::make_unique<Design>()), m_other(std::make_unique<Design>()) {}
Hum::Hum(Hum&&) noexcept = default;
Hum& Hum::operator=(Hum&&) noexcept = default;
Hum::~Hum() = default;

/// The design for one part of `length` samples.
void Hum::layOut(std::size_t length) {
  if (m_design->length == length) return;
  std::swap(m_design, m_other);
  if (m_design->length == length) return;
  m_design->length = length;
  const HumPart part{0, length};
  m_design->columns = columnsOf(m_lines, {&part, 1}, length);
  m_design->levelled = m_design->columns;
  const Column there(length, 1.0);
  const Leveller leveller(there);
  for (Column& column : m_design->levelled) leveller.levelOut(column);
  m_design->normal.compute(normalOf(m_design->levelled));
}

/// Amplitudes in one part of which few samples are missing: those are taken to lie on the sinusoids, which
/// a few rounds find out.
std::vector<double> Hum::fittedToNearlyAll(std::span<const double> residuals) {
  layOut(residuals.size());
  const auto size = static_cast<Eigen::Index>(m_design->columns.size());
  std::vector<std::size_t> missing;
  Column sought(residuals.begin(), residuals.end());
  for (std::size_t k = 0; k < sought.size(); ++k) {
    if (std::isnan(sought[k])) missing.push_back(k);
  }
  Eigen::VectorXd amplitudes = Eigen::VectorXd::Zero(size);
  Eigen::VectorXd pull(size);
  for (int round = 0; round < (missing.empty() ? 1 : 4); ++round) {
    for (const std::size_t k : missing) {
      sought[k] = 0;
      for (Eigen::Index i = 0; i < size; ++i)
        sought[k] += amplitudes[i] * m_design->columns[static_cast<std::size_t>(i)][k];
    }
    const auto length = static_cast<Eigen::Index>(sought.size());
    for (Eigen::Index i = 0; i < size; ++i)
      pull[i] = Vector(m_design->levelled[static_cast<std::size_t>(i)].data(), length)
                    .dot(Vector(sought.data(), length));
    amplitudes = m_design->normal.solve(pull);
  }
  return {amplitudes.begin(), amplitudes.end()};
}

void Hum::takeOff(std::span<const double> residuals, std::span<const HumPart> parts,
                  std::span<double> target) {
  const auto missing =
      std::count_if(residuals.begin(), residuals.end(), [](double r) { return std::isnan(r); });
  const bool isNearlyAll = parts.size() == 1 && 20 * static_cast<std::size_t>(missing) < residuals.size();
  const std::vector<Column> own =
      isNearlyAll ? std::vector<Column>() : columnsOf(m_lines, parts, residuals.size());
  const std::vector<double> amplitudes =
      isNearlyAll ? fittedToNearlyAll(residuals) : fitted(own, residuals, parts);
  const std::vector<Column>& columns = isNearlyAll ? m_design->columns : own;
  m_squares.resize(m_lines.size(), 0.0);
  for (std::size_t i = 0; i < columns.size(); ++i) {
    const double amplitude = amplitudes[i];
    for (std::size_t k = 0; k < target.size(); ++k) target[k] -= amplitude * columns[i][k];
    m_squares[i / 2] += static_cast<double>(target.size()) * amplitude * amplitude;
  }
  m_samples += static_cast<double>(target.size());
}

void Hum::refine(std::span<const double> residuals, std::span<const HumPart> parts) {
  // To first order a frequency off by d adds d times the derivative: columns that rise with time.
  const double middle =
      static_cast<double>(parts.back().begin + parts.back().length - parts.front().begin) / 2;
  for (int round = 0; round < 2; ++round) {
    std::vector<Column> columns = columnsOf(m_lines, parts, residuals.size());
    const std::size_t plain = columns.size();
    for (std::size_t i = 0; i < plain; ++i) {
      Column rising = columns[i];
      std::size_t at = 0;
      for (const HumPart& part : parts) {
        for (std::size_t k = 0; k < part.length; ++k, ++at)
          rising[at] *= (static_cast<double>(part.begin - parts.front().begin + k) - middle) / middle;
      }
      columns.push_back(std::move(rising));
    }
    const std::vector<double> fit = fitted(columns, residuals, parts);
    for (std::size_t line = 0; line < m_lines.size(); ++line) {
      const std::size_t i = 2 * line, j = plain + 2 * line;
      const double square = fit[i] * fit[i] + fit[i + 1] * fit[i + 1];
      const double most = 0.25 / middle;  // beyond a quarter of a turn the first order means nothing
      const double off =
          square > 0 ? (fit[j] * fit[i + 1] - fit[j + 1] * fit[i]) / (turn * middle * square) : 0;
      m_lines[line] += std::clamp(off, -most, most);
    }
  }
}

std::vector<double> Hum::amplitudes() const {
  std::vector<double> amplitudes;
  for (const double square : m_squares) amplitudes.push_back(std::sqrt(square / std::max(m_samples, 1.0)));
  return amplitudes;
}

}  // namespace core
