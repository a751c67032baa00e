// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/noise.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>

namespace core {
namespace {

constexpr std::size_t mostShapes = 16;  ///< that are kept: the rest has hardly any probability
constexpr double unlikely = 6;          ///< logarithm of how many times less probable shapes are left out
constexpr double decades = 10;          ///< a weight may be anywhere within so many factors of e

using Small = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, 0, 3, 3>;
using SmallVector = Eigen::Matrix<double, Eigen::Dynamic, 1, 0, 3, 1>;

/// Mean square of the contrasts of three blocks of `block` samples.
double responseOf(const Process& process, double block) {
  return 6 * process.varianceOfMean(block) - 8 * process.covariance(block, 1) +
         2 * process.covariance(block, 2);
}

/// A mean square that only one in about a thousand exceeds when 1 is expected (Wilson and Hilferty's cube).
double greatestUsual(double freedom) {
  const double third = 2 / (9 * freedom);
  return std::pow(1 - third + 3.1 * std::sqrt(third), 3);
}

/// Overlapping contrasts of white noise have correlations -2/3 and 1/6, so that N of them tell as much as
/// N / (1 + 2 (4/9 + 1/36)) independent ones.
double freedomOf(double contrasts) { return contrasts > 1 ? 1 + (contrasts - 1) / 1.944 : contrasts; }

struct Squares {
  double number = 0;
  double sum = 0;
};

/// Of the contrasts of three blocks in a row of `length` samples. What is missing makes the means of white
/// noise scatter more: that is taken off here, and Noise::ofMean counts it in again.
Squares squaresOf(const std::vector<double>& sums, const std::vector<double>& counts, double length) {
  std::vector<double> means(sums.size());
  bool isComplete = true;
  for (std::size_t k = 0; k < sums.size(); ++k) {
    means[k] = sums[k] / counts[k];
    isComplete = isComplete && counts[k] == length;
  }
  Squares squares;
  for (std::size_t k = 2; k < means.size(); ++k) {
    const double contrast = means[k - 2] - 2 * means[k - 1] + means[k];
    double weight = 1;
    if (!isComplete) {
      if (std::min({counts[k - 2], counts[k - 1], counts[k]}) < 0.75 * length) continue;
      weight = 6 / (length * (1 / counts[k - 2] + 4 / counts[k - 1] + 1 / counts[k]));
    }
    squares.sum += contrast * contrast * weight;
    ++squares.number;
  }
  return squares;
}

/// Blocks twice as long.
std::vector<double> paired(const std::vector<double>& blocks) {
  std::vector<double> pairs(blocks.size() / 2);
  for (std::size_t k = 0; k < pairs.size(); ++k) pairs[k] = blocks[2 * k] + blocks[2 * k + 1];
  return pairs;
}

struct Likely {
  double probability;
  double deviation;
};

/// The deviation which 1.96 times of holds 95 % of a mixture of normal distributions. What lies outside is a
/// convex function of it, so Newton's steps from below rise to the answer and not beyond.
double coveringDeviation(const std::vector<Likely>& mixture) {
  const double limit = 1.96 / std::numbers::sqrt2;
  double answer = HUGE_VAL;
  for (const Likely& likely : mixture) answer = std::min(answer, likely.deviation);
  for (int round = 0; round < 60; ++round) {
    double outside = -std::erfc(limit);
    double slope = 0;
    for (const auto& [probability, deviation] : mixture) {
      const double at = limit * answer / deviation;
      outside += probability * std::erfc(at);
      slope += probability * limit / deviation * 2 * std::numbers::inv_sqrtpi * std::exp(-at * at);
    }
    const double move = outside / slope;
    answer += move;
    if (move < 1e-4 * answer) break;
  }
  return answer;
}

}  // namespace

double varianceOfMean(double time, double samples) {
  if (time == 0) return 1 / samples;
  const double rest = -std::expm1(-1 / time);
  const double far = -std::expm1(-samples / time);
  return ((2 - rest) / rest - 2 * (1 - rest) * far / (samples * rest * rest)) / samples;
}

double Process::varianceOfMean(double samples) const {
  if (kind == Kind::White) return 1 / samples;
  if (kind == Kind::FirstOrder) return core::varianceOfMean(time, samples);
  // The sum of (n - k)(1 - k/time) over the lags before both are through.
  const double lags = std::ceil(std::min(samples, time)) - 1;
  const double products = samples * lags - (1 + samples / time) * lags * (lags + 1) / 2 +
                          lags * (lags + 1) * (2 * lags + 1) / (6 * time);
  return (samples + 2 * products) / (samples * samples);
}

double Process::covariance(double block, double apart) const {
  if (kind == Kind::White) return 0;
  if (kind == Kind::FirstOrder) {
    const double ratio = std::expm1(-block / time) / (block * std::expm1(-1 / time));
    return std::exp(-(1 + (apart - 1) * block) / time) * ratio * ratio;
  }
  // Half the second difference of the variance of a sum of one block, two, three and so on.
  const auto sumOf = [&](double blocks) {
    return blocks > 0 ? blocks * blocks * varianceOfMean(blocks * block) : 0;
  };
  return (sumOf(apart + 1) - 2 * sumOf(apart) + sumOf(apart - 1)) / 2;
}

Contrasts contrastsOf(std::vector<double> sums, std::vector<double> counts, std::size_t octave) {
  Contrasts contrasts;
  contrasts.meanSquares.assign(octave, 0);
  contrasts.freedoms.assign(octave, 0);
  for (; sums.size() >= 3; sums = paired(sums), counts = paired(counts), ++octave) {
    const auto [number, squares] = squaresOf(sums, counts, std::ldexp(1.0, static_cast<int>(octave)));
    contrasts.meanSquares.push_back(number > 0 ? squares / number : 0);
    contrasts.freedoms.push_back(freedomOf(number));
  }
  return contrasts;
}

Noise::Noise(std::span<const Contrasts> stretches) : m_strengths(stretches.size(), 1.0) {
  std::size_t octaves = 0;
  for (const Contrasts& stretch : stretches) octaves = std::max(octaves, stretch.freedoms.size());
  layOutProcesses(octaves);
  // White noise of unit strength to begin with; each round knows the strengths better.
  m_shapes.push_back({.components = 1, .weights = {1}, .probability = 1});
  for (int round = 0; round < 4; ++round) {
    judgeStrengths(stretches);
    pool(stretches);
    findShapes();
  }
  judgeStrengths(stretches);
  moderateStrengths();
}

void Noise::layOutProcesses(std::size_t octaves) {
  m_processes.push_back({});
  // Up to four times the longest contrast: what is slower is as good as a drift.
  for (std::size_t half = 0; half <= 2 * octaves + 4; ++half) {
    m_processes.push_back({Process::Kind::FirstOrder, 0.5 * std::pow(2.0, static_cast<double>(half) / 2)});
  }
  m_firstAveraged = m_processes.size();
  const double longest = std::ldexp(1.0, static_cast<int>(octaves)) / 2;
  for (double length = 2; length <= longest; length = std::max(length + 1, std::round(1.15 * length))) {
    m_processes.push_back({Process::Kind::Averaged, length});
  }
  for (std::size_t s = 0; s < octaves; ++s) {
    std::vector<double> responses;
    for (const Process& process : m_processes)
      responses.push_back(responseOf(process, std::ldexp(1.0, static_cast<int>(s))));
    m_responses.push_back(std::move(responses));
  }
}

double Noise::expected(const Shape& shape, std::size_t octave) const {
  double sum = 0;
  for (std::size_t j = 0; j < shape.components; ++j) {
    sum += shape.weights[j] * m_responses[octave][shape.processes[j]];
  }
  return sum;
}

double Noise::expected(std::size_t octave) const {
  double sum = 0;
  for (const Shape& shape : m_shapes) sum += shape.probability * expected(shape, octave);
  return sum;
}

/// Strength of each stretch under the present shapes: the likeliest factor.
void Noise::judgeStrengths(std::span<const Contrasts> stretches) {
  m_strengthFreedoms.assign(stretches.size(), 0);
  for (std::size_t k = 0; k < stretches.size(); ++k) {
    double sum = 0;
    for (std::size_t s = 0; s < stretches[k].freedoms.size(); ++s) {
      const double usual = expected(s);
      if (usual <= 0) continue;
      sum += stretches[k].freedoms[s] * stretches[k].meanSquares[s] / usual;
      m_strengthFreedoms[k] += stretches[k].freedoms[s];
    }
    m_strengths[k] = m_strengthFreedoms[k] > 0 ? sum / m_strengthFreedoms[k] : 0;
  }
}

void Noise::pool(std::span<const Contrasts> stretches) {
  m_pooled.assign(m_responses.size(), 0);
  m_freedoms.assign(m_responses.size(), 0);
  for (std::size_t k = 0; k < stretches.size(); ++k) {
    if (m_strengths[k] <= 0) continue;
    for (std::size_t s = 0; s < stretches[k].freedoms.size(); ++s) {
      const double freedom = stretches[k].freedoms[s];
      if (freedom == 0) continue;
      // One stretch that still settles must not make the noise of all others slow.
      const double limit = stretches.size() > 3 ? expected(s) * greatestUsual(freedom) : HUGE_VAL;
      m_pooled[s] += freedom * std::min(stretches[k].meanSquares[s] / m_strengths[k], limit);
      m_freedoms[s] += freedom;
    }
  }
  for (std::size_t s = 0; s < m_pooled.size(); ++s) m_pooled[s] /= std::max(m_freedoms[s], 1.0);
}

void Noise::findShapes() {
  m_shapes.clear();
  for (std::size_t a = 0; a < m_firstAveraged; ++a) {
    consider({{a}});
    for (std::size_t b = a + 1; b < m_firstAveraged; ++b) {
      consider({{a, b}});
      for (std::size_t c = b + 2; a == 0 && c < m_firstAveraged; c += 2) consider({{a, b, c}});
    }
  }
  for (std::size_t a = m_firstAveraged; a < m_processes.size(); ++a) {
    consider({{a}});
    consider({{0, a}});
    if (a + 1 < m_processes.size()) consider({{a, a + 1}});
  }
  weigh();
}

/// The likeliest weights of components with these times, by scoring; no shape when one of them is not
/// positive, since then the shape without that component is the better one.
void Noise::consider(std::span<const std::size_t> processes) {
  const auto size = static_cast<Eigen::Index>(processes.size());
  std::vector<double> usual(m_pooled.size());
  for (std::size_t s = 0; s < usual.size(); ++s) {
    usual[s] = std::max(m_pooled[s], 0.1 * m_pooled[0] / std::ldexp(1.0, static_cast<int>(s)));
  }
  Small information(size, size);
  SmallVector weights(size);
  for (int round = 0; round < 12; ++round) {
    information.setZero();
    SmallVector pull = SmallVector::Zero(size);
    for (std::size_t s = 0; s < usual.size(); ++s) {
      if (m_freedoms[s] == 0 || usual[s] <= 0) continue;
      const double weight = m_freedoms[s] / 2 / (usual[s] * usual[s]);
      SmallVector response(size);
      for (Eigen::Index j = 0; j < size; ++j)
        response[j] = m_responses[s][processes[static_cast<std::size_t>(j)]];
      information += weight * response * response.transpose();
      pull += weight * m_pooled[s] * response;
    }
    weights = information.ldlt().solve(pull);
    if (!(weights.minCoeff() > 0)) return;
    for (std::size_t s = 0; s < usual.size(); ++s) {
      usual[s] = 0;
      for (Eigen::Index j = 0; j < size; ++j)
        usual[s] += weights[j] * m_responses[s][processes[static_cast<std::size_t>(j)]];
    }
  }
  Shape shape;
  shape.components = processes.size();
  for (std::size_t s = 0; s < usual.size(); ++s) {
    if (m_freedoms[s] > 0)
      shape.probability -= m_freedoms[s] / 2 * (std::log(usual[s]) + m_pooled[s] / usual[s]);
  }
  Small logarithmic = weights.asDiagonal() * information * weights.asDiagonal();
  logarithmic.diagonal().array() += 2 * std::numbers::pi / (decades * decades);
  const Small covariance = logarithmic.inverse();
  shape.probability += 0.5 * std::log(covariance.determinant());
  shape.probability += static_cast<double>(size) * std::log(std::sqrt(2 * std::numbers::pi) / decades);
  for (Eigen::Index i = 0; i < size; ++i) {
    const auto row = static_cast<std::size_t>(i);
    shape.processes[row] = processes[row];
    shape.weights[row] = weights[i];
    // Each correlation time is one of many that might be.
    if (processes[row] > 0) shape.probability -= std::log(static_cast<double>(m_firstAveraged));
    for (Eigen::Index j = 0; j < size; ++j)
      shape.covariance[row * most + static_cast<std::size_t>(j)] = covariance(i, j);
  }
  m_shapes.push_back(shape);
}

void Noise::weigh() {
  std::sort(m_shapes.begin(), m_shapes.end(),
            [](const Shape& a, const Shape& b) { return a.probability > b.probability; });
  if (m_shapes.empty()) return;
  const double best = m_shapes.front().probability;
  std::erase_if(m_shapes, [&](const Shape& shape) { return shape.probability < best - unlikely; });
  if (m_shapes.size() > mostShapes) m_shapes.resize(mostShapes);
  double sum = 0;
  for (Shape& shape : m_shapes) sum += shape.probability = std::exp(shape.probability - best);
  for (Shape& shape : m_shapes) shape.probability /= sum;
}

/// Few samples scatter by chance: strengths that differ no more than chance makes them are taken for one.
/// A common value worth so many degrees of freedom is usual for many variances of few samples each (Smyth
/// 2004, from memory).
void Noise::moderateStrengths() {
  double count = 0, sum = 0, squares = 0, chance = 0, freedoms = 0, pooled = 0;
  for (std::size_t k = 0; k < m_strengths.size(); ++k) {
    if (m_strengths[k] <= 0 || m_strengthFreedoms[k] < 2) continue;
    const double logarithm = std::log(m_strengths[k]) + 1 / m_strengthFreedoms[k];
    ++count;
    sum += logarithm;
    squares += logarithm * logarithm;
    chance += 2 / m_strengthFreedoms[k];
    freedoms += m_strengthFreedoms[k];
    pooled += m_strengthFreedoms[k] * m_strengths[k];
  }
  if (count < 3) return;
  const double excess = (squares - sum * sum / count) / (count - 1) - chance / count;
  const double prior = excess > 0 ? std::min(2 / excess, freedoms) : freedoms;
  const double common = pooled / freedoms;
  for (std::size_t k = 0; k < m_strengths.size(); ++k) {
    const double freedom = m_strengthFreedoms[k];
    m_strengths[k] = (prior * common + freedom * m_strengths[k]) / (prior + freedom);
    m_strengthFreedoms[k] = prior + freedom;
  }
}

Noise::OfMean Noise::ofMean(std::size_t k, std::size_t samples) const {
  const auto n = static_cast<double>(samples);
  if (m_shapes.empty() || m_strengths[k] <= 0) return {0, n};
  std::vector<Likely> mixture;
  double variances = 0, all = 0;
  for (const Shape& shape : m_shapes) {
    std::array<double, most> parts{};
    double variance = 0, total = 0;
    for (std::size_t j = 0; j < shape.components; ++j) {
      parts[j] = shape.weights[j] * m_processes[shape.processes[j]].varianceOfMean(n);
      variance += parts[j];
      total += shape.weights[j];
    }
    double spread = m_strengths.size() > 1 ? 2 / std::max(1.0, m_strengthFreedoms[k]) : 0;
    for (std::size_t i = 0; i < shape.components; ++i) {
      for (std::size_t j = 0; j < shape.components; ++j)
        spread += parts[i] * parts[j] / (variance * variance) * shape.covariance[i * most + j];
    }
    variances += shape.probability * variance;
    all += shape.probability * total;
    // The logarithm of an estimated variance is about normal: three points with the weights of Gauss and
    // Hermite stand for it.
    const double away = std::exp(std::sqrt(3 * std::min(spread, 1.0)) / 2);
    const double deviation = std::sqrt(variance * m_strengths[k]);
    mixture.push_back({shape.probability * 2 / 3, deviation});
    mixture.push_back({shape.probability / 6, deviation * away});
    mixture.push_back({shape.probability / 6, deviation / away});
  }
  return {coveringDeviation(mixture), std::clamp(all / variances, 1.0, n)};
}

double Noise::deviationOfSample(std::size_t k) const {
  double sum = 0;
  for (const Shape& shape : m_shapes) {
    for (std::size_t j = 0; j < shape.components; ++j) sum += shape.probability * shape.weights[j];
  }
  return std::sqrt(sum * m_strengths[k]);
}

namespace {

/// Variance of the least-squares slope of a process, in sixteen blocks: of white noise
/// within 0.4 % of that in single samples.
double varianceOfSlope(const Process& process, double samples) {
  constexpr int blocks = 16;
  constexpr double middle = (blocks - 1) / 2.0;
  const double length = samples / blocks;
  double square = 0;
  for (int a = 0; a < blocks; ++a) square += (a - middle) * (a - middle);
  double sum = square * process.varianceOfMean(length);
  for (int apart = 1; apart < blocks && process.kind != Process::Kind::White; ++apart) {
    double products = 0;
    for (int a = 0; a + apart < blocks; ++a) products += (a - middle) * (a + apart - middle);
    sum += 2 * products * process.covariance(length, apart);
  }
  return std::max(0.0, sum) / (square * square * length * length);
}

}  // namespace

double Noise::deviationOfSlope(std::size_t k, std::size_t samples) const {
  double sum = 0;
  double considered = 0;
  for (const Shape& shape : m_shapes) {
    if (shape.probability < 0.05 * m_shapes.front().probability) continue;
    considered += shape.probability;
    for (std::size_t j = 0; j < shape.components; ++j) {
      sum += shape.probability * shape.weights[j] *
             varianceOfSlope(m_processes[shape.processes[j]], static_cast<double>(samples));
    }
  }
  return considered > 0 ? std::sqrt(sum / considered * m_strengths[k]) : 0;
}

}  // namespace core
