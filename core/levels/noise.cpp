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

Squares squaresOfComplete(const std::vector<double>& sums, double length) {
  if (sums.size() < 3) return {};
  std::array<double, 4> lanes{};
  const std::size_t number = sums.size() - 2;
  const auto square = [&](std::size_t k) {
    const double contrast = sums[k] - 2 * sums[k + 1] + sums[k + 2];
    return contrast * contrast;
  };
  std::size_t k = 0;
  for (; k + lanes.size() <= number; k += lanes.size()) {
    for (std::size_t lane = 0; lane < lanes.size(); ++lane) lanes[lane] += square(k + lane);
  }
  for (; k < number; ++k) lanes[0] += square(k);
  const double sum = (lanes[0] + lanes[1]) + (lanes[2] + lanes[3]);
  return {static_cast<double>(number), sum / (length * length)};
}

/// Of the contrasts of three blocks in a row of `length` samples. What is missing makes the means of white
/// noise scatter more: that is taken off here, and Noise::ofMean counts it in again.
Squares squaresOf(const std::vector<double>& sums, const std::vector<double>& counts, double length) {
  Squares squares;
  for (std::size_t k = 2; k < sums.size(); ++k) {
    if (std::min({counts[k - 2], counts[k - 1], counts[k]}) < 0.75 * length) continue;
    const double contrast =
        sums[k - 2] / counts[k - 2] - 2 * sums[k - 1] / counts[k - 1] + sums[k] / counts[k];
    const double weight = 6 / (length * (1 / counts[k - 2] + 4 / counts[k - 1] + 1 / counts[k]));
    squares.sum += contrast * contrast * weight;
    ++squares.number;
  }
  return squares;
}

/// Makes blocks twice as long.
void pairUp(std::vector<double>& blocks) {
  for (std::size_t k = 0; k < blocks.size() / 2; ++k) blocks[k] = blocks[2 * k] + blocks[2 * k + 1];
  blocks.resize(blocks.size() / 2);
}

struct Likely {
  double probability;
  double deviation;
};

/// The deviation which 1.96 times of holds 95 % of a mixture of normal distributions. What lies outside is a
/// convex function of it, so Newton's steps lead below the answer at once and then rise to it.
double coveringDeviation(const std::vector<Likely>& mixture) {
  const double limit = 1.96 / std::numbers::sqrt2;
  double answer = 0, least = HUGE_VAL;
  for (const Likely& likely : mixture) {
    answer += likely.probability * likely.deviation;
    least = std::min(least, likely.deviation);
  }
  for (int round = 0; round < 60; ++round) {
    double outside = -std::erfc(limit);
    double slope = 0;
    for (const auto& [probability, deviation] : mixture) {
      const double at = limit * answer / deviation;
      outside += probability * std::erfc(at);
      slope += probability * limit / deviation * 2 * std::numbers::inv_sqrtpi * std::exp(-at * at);
    }
    const double move = std::max(outside / slope, least - answer);
    answer += move;
    if (std::abs(move) < 1e-4 * answer) break;
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
  const double shortest = std::ldexp(1.0, static_cast<int>(octave));
  if (!counts.empty() && counts.back() < shortest) {  // what is left over at the end
    sums.pop_back();
    counts.pop_back();
  }
  const bool areComplete = std::all_of(counts.begin(), counts.end(), [&](double c) { return c == shortest; });
  for (; sums.size() >= 3; pairUp(sums), ++octave) {
    const double length = std::ldexp(1.0, static_cast<int>(octave));
    const auto [number, squares] =
        areComplete ? squaresOfComplete(sums, length) : squaresOf(sums, counts, length);
    contrasts.meanSquares.push_back(number > 0 ? squares / number : 0);
    contrasts.freedoms.push_back(freedomOf(number));
    if (!areComplete) pairUp(counts);
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
  double length = 2;
  while (length <= longest) {
    m_processes.push_back({Process::Kind::Averaged, length});
    length = std::max(length + 1, std::round(1.15 * length));
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
    consider(std::array{a});
    for (std::size_t b = a + 1; b < m_firstAveraged; ++b) {
      consider(std::array{a, b});
      for (std::size_t c = b + 2; a == 0 && c < m_firstAveraged; c += 2) consider(std::array{a, b, c});
    }
  }
  for (std::size_t a = m_firstAveraged; a < m_processes.size(); ++a) {
    consider(std::array{a});
    consider(std::array{std::size_t{0}, a});
    if (a + 1 < m_processes.size()) consider(std::array{a, a + 1});
  }
  weigh();
}

/// The likeliest weights of components with these times, by scoring; no shape when one of them is not
/// positive, since then the shape without that component is the better one.
template <std::size_t size>
void Noise::consider(const std::array<std::size_t, size>& processes) {
  using Matrix = Eigen::Matrix<double, static_cast<int>(size), static_cast<int>(size)>;
  using Vector = Eigen::Matrix<double, static_cast<int>(size), 1>;
  Matrix information;
  Vector weights = Vector::Zero();
  std::vector<double>& usual = m_usual;
  usual.resize(m_pooled.size());
  for (std::size_t s = 0; s < usual.size(); ++s)
    usual[s] = std::max(m_pooled[s], 0.1 * m_pooled[0] / std::ldexp(1.0, static_cast<int>(s)));
  for (int round = 0; round < 12; ++round) {
    information.setZero();
    Vector pull = Vector::Zero();
    for (std::size_t s = 0; s < usual.size(); ++s) {
      if (m_freedoms[s] == 0 || usual[s] <= 0) continue;
      const double weight = m_freedoms[s] / 2 / (usual[s] * usual[s]);
      Vector response;
      for (std::size_t j = 0; j < size; ++j) response[j] = m_responses[s][processes[j]];
      information += (weight * response) * response.transpose();
      pull += weight * m_pooled[s] * response;
    }
    const Vector before = weights;
    const Eigen::LLT<Matrix> factors(information);
    if (factors.info() != Eigen::Success) return;
    weights = factors.solve(pull);
    if (!(weights.minCoeff() > 0)) return;
    for (std::size_t s = 0; s < usual.size(); ++s) {
      usual[s] = 0;
      for (std::size_t j = 0; j < size; ++j) usual[s] += weights[j] * m_responses[s][processes[j]];
    }
    if ((weights - before).cwiseAbs().maxCoeff() < 1e-6 * weights.minCoeff()) break;
  }
  Shape shape;
  shape.components = size;
  for (std::size_t s = 0; s < usual.size(); ++s) {
    if (m_freedoms[s] > 0)
      shape.probability -= m_freedoms[s] / 2 * (std::log(usual[s]) + m_pooled[s] / usual[s]);
  }
  Matrix logarithmic = weights.asDiagonal() * information * weights.asDiagonal();
  logarithmic.diagonal().array() += 2 * std::numbers::pi / (decades * decades);
  const Eigen::LLT<Matrix> factors(logarithmic);
  const Matrix covariance = factors.solve(Matrix::Identity());
  shape.probability -= factors.matrixLLT().diagonal().array().log().sum();
  shape.probability += static_cast<double>(size) * std::log(std::sqrt(2 * std::numbers::pi) / decades);
  for (std::size_t row = 0; row < size; ++row) {
    shape.processes[row] = processes[row];
    shape.weights[row] = weights[row];
    // Each correlation time is one of many that might be.
    if (processes[row] > 0) shape.probability -= std::log(static_cast<double>(m_firstAveraged));
    for (std::size_t j = 0; j < size; ++j) shape.covariance[row * most + j] = covariance(row, j);
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

/// Of unit strength: between lengths a sixth apart, since all spans of a recording ask for it.
double Noise::varianceOfSlopeNear(double samples) const {
  constexpr double finest = 4;  // lengths to an octave
  const double place = finest * std::log2(samples);
  const double below = std::floor(place);
  const auto varianceAt = [&](double at) {
    const auto index = static_cast<std::size_t>(at);
    if (m_slopeVariances.size() <= index) m_slopeVariances.resize(index + 1, -1);
    double& variance = m_slopeVariances[index];
    if (variance >= 0) return variance;
    double sum = 0, considered = 0;
    for (const Shape& shape : m_shapes) {
      if (shape.probability < 0.05 * m_shapes.front().probability) continue;
      considered += shape.probability;
      for (std::size_t j = 0; j < shape.components; ++j) {
        sum += shape.probability * shape.weights[j] *
               varianceOfSlope(m_processes[shape.processes[j]], std::exp2(at / finest));
      }
    }
    return variance = considered > 0 ? sum / considered : 0;
  };
  const double lower = varianceAt(below);
  const double upper = varianceAt(below + 1);
  return lower > 0 && upper > 0 ? lower * std::pow(upper / lower, place - below) : 0;
}

double Noise::deviationOfSlope(std::size_t k, std::size_t samples) const {
  return samples < 2 ? 0 : std::sqrt(varianceOfSlopeNear(static_cast<double>(samples)) * m_strengths[k]);
}

}  // namespace core
