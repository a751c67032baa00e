// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/uncertainty/draws.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <numbers>

#include "core/uncertainty/portable.h"
#include "core/uncertainty/vector_units.h"
#include "core/units/language.h"

namespace core {

/// Correlation coefficients of the inputs that occur in pairs, row by row.
struct CorrelationMatrix {
  std::vector<std::size_t> inputs;  ///< rising
  std::vector<double> matrix;

  std::size_t size() const { return inputs.size(); }
  double& at(std::size_t row, std::size_t column) { return matrix[row * size() + column]; }
};

namespace {

std::string inputName(std::size_t input) { return say("input {1}", {std::to_string(input + 1)}); }

CorrelationMatrix correlationOf(std::span<const CorrelatedPair> pairs) {
  CorrelationMatrix correlation;
  auto& inputs = correlation.inputs;
  for (const CorrelatedPair& pair : pairs) {
    if (pair.coefficient != 0) inputs.insert(inputs.end(), {pair.i, pair.j});
  }
  std::sort(inputs.begin(), inputs.end());
  inputs.erase(std::unique(inputs.begin(), inputs.end()), inputs.end());
  correlation.matrix.assign(inputs.size() * inputs.size(), 0);
  for (std::size_t k = 0; k < inputs.size(); ++k) correlation.at(k, k) = 1;
  const auto placeOf = [&inputs](std::size_t input) {
    return static_cast<std::size_t>(std::lower_bound(inputs.begin(), inputs.end(), input) - inputs.begin());
  };
  for (const CorrelatedPair& pair : pairs) {
    if (pair.coefficient == 0) continue;
    const std::size_t i = placeOf(pair.i), j = placeOf(pair.j);
    correlation.at(i, j) = correlation.at(j, i) = pair.coefficient;
  }
  return correlation;
}

/// An earlier row that is the same as `row` or, with the sign -1, its mirror; or `row` itself.
std::size_t twinOf(CorrelationMatrix& correlation, std::size_t row) {
  for (std::size_t earlier = 0; earlier < row; ++earlier)
    if (std::abs(correlation.at(row, earlier)) == 1) return earlier;
  return row;
}

/// What is left of `correlation` with the inputs `kept` (rows, rising), less those that are then alone.
CorrelationMatrix reducedTo(CorrelationMatrix& correlation, std::vector<std::size_t> kept) {
  std::erase_if(kept, [&](std::size_t row) {
    return std::none_of(kept.begin(), kept.end(),
                        [&](std::size_t other) { return other != row && correlation.at(row, other) != 0; });
  });
  CorrelationMatrix reduced;
  for (const std::size_t row : kept) {
    reduced.inputs.push_back(correlation.inputs[row]);
    for (const std::size_t column : kept) reduced.matrix.push_back(correlation.at(row, column));
  }
  return reduced;
}

/// Replaces the correlation matrix, which must be positive semidefinite, by its lower Cholesky factor. A row
/// that depends on earlier ones has a pivot of zero but for rounding, and what is left in its column is
/// rounding too.
void factorise(CorrelationMatrix& correlation) {
  const std::size_t size = correlation.size();
  const double rounding = 1e-14 * static_cast<double>(size);
  std::vector<double> factor(size * size);
  for (std::size_t row = 0; row < size; ++row)
    for (std::size_t column = 0; column <= row; ++column) {
      double rest = correlation.at(row, column);
      for (std::size_t k = 0; k < column; ++k) rest -= factor[row * size + k] * factor[column * size + k];
      double& entry = factor[row * size + column];
      const double pivot = factor[column * size + column];
      if (column == row)
        entry = rest > rounding ? std::sqrt(rest) : 0;
      else
        entry = pivot > 0 ? rest / pivot : 0;
    }
  correlation.matrix = std::move(factor);
}

Error impossibleCorrelation() {
  return {"correlation", say("the coefficients between the inputs contradict each other"),
          say("Bring them nearer to zero, or give all inputs of a group the same positive coefficient")};
}

SHUNTWRIGHT_WIDE void addProduct(double* to, const double* from, double factor) {
  for (std::size_t lane = 0; lane < trialLanes; ++lane) to[lane] += factor * from[lane];
}

SHUNTWRIGHT_WIDE void scale(double* lanes, double factor) {
  for (std::size_t lane = 0; lane < trialLanes; ++lane) lanes[lane] *= factor;
}

/// From the centred share q to the deviate within +-1: 1 - sqrt(1 - 2 |q|) with the sign of q, by inversion
/// of the two parabolas (JCGM 101, 6.4.5).
SHUNTWRIGHT_WIDE void triangularFromCentred(double* lanes) {
  for (std::size_t lane = 0; lane < trialLanes; ++lane) {
    const double q = lanes[lane];
    lanes[lane] = std::copysign(1 - std::sqrt(1 - 2 * std::abs(q)), q);
  }
}

/// As above for the arcsine distribution: sin(pi q) (JCGM 101, 6.4.6).
SHUNTWRIGHT_WIDE void arcsineFromCentred(double* lanes) {
  for (std::size_t lane = 0; lane < trialLanes; ++lane)
    lanes[lane] = portable::sine(std::numbers::pi * lanes[lane]);
}

SHUNTWRIGHT_WIDE void shiftAndScale(double* lanes, double value, double factor) {
  for (std::size_t lane = 0; lane < trialLanes; ++lane) lanes[lane] = value + factor * lanes[lane];
}

}  // namespace

Result<Draws> Draws::of(std::span<const TrialInput> inputs, std::span<const CorrelatedPair> pairs,
                        std::uint64_t seed) {
  Draws draws;
  draws.m_seed = seed;
  draws.m_inputs.reserve(inputs.size());
  for (std::size_t k = 0; k < inputs.size(); ++k) {
    if (const auto checked = checkUncertainty(inputs[k].uncertainty, inputName(k)); !checked)
      return checked.error();
    if (!std::isfinite(inputs[k].value)) return Error{inputName(k), say("its value is no finite number"), ""};
    draws.addInput(inputs[k]);
  }
  if (const auto correlated = draws.correlate(pairs); !correlated) return correlated.error();
  return draws;
}

void Draws::addInput(const TrialInput& input) {
  const double u = standardUncertainty(input.uncertainty, input.value);
  Kind kind = Kind::Normal;
  switch (distributionOf(input.uncertainty)) {
    case Distribution::Normal:
      kind = input.uncertainty.degreesOfFreedom ? Kind::Student : Kind::Normal;
      break;
    case Distribution::Rectangular:
      kind = Kind::Rectangular;
      break;
    case Distribution::Triangular:
      kind = Kind::Triangular;
      break;
    case Distribution::Arcsine:
      kind = Kind::Arcsine;
      break;
  }
  if (u == 0) kind = Kind::Exact;
  m_inputs.push_back({input.value, u, kind, false, false, m_students.size()});
  if (kind == Kind::Student) m_students.emplace_back(*input.uncertainty.degreesOfFreedom);
}

/// Inputs that are the same as, or the mirror of, an earlier one are copied from it, so that they have the
/// same bits whatever their distribution. Returns the rows that are left.
std::vector<std::size_t> Draws::takeTwins(CorrelationMatrix& correlation) {
  std::vector<std::size_t> kept;
  for (std::size_t row = 0; row < correlation.size(); ++row) {
    const std::size_t twin = twinOf(correlation, row);
    if (twin == row)
      kept.push_back(row);
    else
      m_twins.push_back({correlation.inputs[row], correlation.inputs[twin], correlation.at(row, twin)});
  }
  for (const Twin& twin : m_twins) m_inputs[twin.of].copied = true;
  return kept;
}

Result<void> Draws::correlate(std::span<const CorrelatedPair> pairs) {
  for (const CorrelatedPair& pair : pairs) {
    assert(pair.i < pair.j && pair.j < m_inputs.size());
    if (!(std::abs(pair.coefficient) <= 1)) return impossibleCorrelation();
  }
  CorrelationMatrix correlation = correlationOf(pairs);
  if (!isPositiveSemidefinite(correlation.matrix, correlation.size())) return impossibleCorrelation();
  correlation = reducedTo(correlation, takeTwins(correlation));
  factorise(correlation);
  for (std::size_t row = correlation.size(); row-- > 0;) {
    const std::size_t firstTerm = m_terms.size();
    // Its own deviate first: it is overwritten by its product.
    for (std::size_t column = row + 1; column-- > 0;) {
      const double coefficient = correlation.at(row, column);
      if (column == row || coefficient != 0) m_terms.push_back({correlation.inputs[column], coefficient});
    }
    m_mixes.push_back({correlation.inputs[row], firstTerm, m_terms.size()});
    m_inputs[correlation.inputs[row]].correlated = true;
  }
  for (const Twin& twin : m_twins) m_inputs[twin.input].correlated = m_inputs[twin.of].correlated;
  return {};
}

void Draws::draw(std::uint64_t firstTrial, std::span<double> values) const {
  const std::size_t inputs = m_inputs.size();
  assert(values.size() == inputs * trialLanes);
  const auto lanesOf = [values](std::size_t k) { return Lanes(values.data() + k * trialLanes, trialLanes); };
  std::array<double, trialLanes> spare;
  const auto isDrawn = [this](std::size_t k) {
    return k < m_inputs.size() &&
           (m_inputs[k].kind != Kind::Exact || m_inputs[k].correlated || m_inputs[k].copied);
  };
  for (std::size_t k = 0; k < inputs; k += 2) {
    if (!isDrawn(k) && !isDrawn(k + 1)) continue;
    const Lanes second = k + 1 < inputs ? lanesOf(k + 1) : Lanes(spare);
    drawCentred(m_seed, firstTrial, static_cast<std::uint32_t>(k / 2), lanesOf(k), second);
  }
  correlateLanes(values.data());
  for (const Twin& twin : m_twins) {
    std::copy_n(values.data() + twin.of * trialLanes, trialLanes, values.data() + twin.input * trialLanes);
    if (twin.sign < 0) scale(values.data() + twin.input * trialLanes, -1);
  }
  for (std::size_t k = 0; k < inputs; ++k) finish(m_inputs[k], lanesOf(k));
}

/// Leaves the correlated inputs as standard normal deviates.
void Draws::correlateLanes(double* values) const {
  for (const Mix& mix : m_mixes) normalFromCentred(Lanes(values + mix.input * trialLanes, trialLanes));
  for (const Mix& mix : m_mixes) {
    double* const lanes = values + mix.input * trialLanes;
    scale(lanes, m_terms[mix.firstTerm].coefficient);
    for (std::size_t k = mix.firstTerm + 1; k < mix.endTerm; ++k)
      addProduct(lanes, values + m_terms[k].input * trialLanes, m_terms[k].coefficient);
  }
}

void Draws::finish(const Input& input, Lanes lanes) const {
  double scaleFactor = input.standardUncertainty;
  const bool wantsNormal = input.kind == Kind::Normal || input.kind == Kind::Student;
  if (input.kind == Kind::Exact) {
    std::fill(lanes.begin(), lanes.end(), input.value);
    return;
  }
  if (wantsNormal && !input.correlated) normalFromCentred(lanes);
  if (!wantsNormal && input.correlated) centredFromNormal(lanes);
  switch (input.kind) {
    case Kind::Exact:
    case Kind::Normal:
      break;
    case Kind::Student:
      for (double& lane : lanes) lane = m_students[input.student].fromNormal(lane);
      break;
    case Kind::Rectangular:
      scaleFactor *= 2 * std::sqrt(3.0);
      break;
    case Kind::Triangular:
      triangularFromCentred(lanes.data());
      scaleFactor *= std::sqrt(6.0);
      break;
    case Kind::Arcsine:
      arcsineFromCentred(lanes.data());
      scaleFactor *= std::sqrt(2.0);
      break;
  }
  shiftAndScale(lanes.data(), input.value, scaleFactor);
}

}  // namespace core
