// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diagnose/telling_step.h"

#include <cmath>
#include <limits>

#include "core/diagnose/further_steps.h"
#include "core/units/language.h"

namespace core {
namespace {

constexpr double leastSeparation = 3;
/// A reading that far off is mistaken for the other less than once in a thousand million.
constexpr double plainSeparation = 6;

double lengthSquared(const std::vector<double>& values) {
  double sum = 0;
  for (const double value : values) sum += value * value;
  return sum;
}

/// What all points of `further` would show with `fault`; NaN where it cannot be predicted. Empty when nothing
/// can. A resistor laid to another place is laid right, whatever was wrong with the places of the plan.
std::vector<double> shownUnder(const FurtherSteps& further, const Fault& fault) {
  Setup faulty = withFault(further.setup, fault);
  if (faulty == further.setup) {
    CheckPoints points = further.points;
    // Steps taken for one another are those of the plan alone.
    if (fault.kind == CauseKind::SidesExchanged)
      points.expected.resize(points.expected.size() - further.list.size());
    auto changes = changesUnder(further.setup, further.check, points, fault);
    if (!changes) return {};
    for (std::size_t k = changes->size(); k < further.points.expected.size(); ++k)
      changes->push_back(further.points.expected[k]);
    return *std::move(changes);
  }
  for (const FurtherStep& step : further.list)
    if (step.moved) {
      faulty.shunts[step.moved->second].a = further.setup.shunts[step.moved->second].a;
      faulty.shunts[step.moved->second].b = further.setup.shunts[step.moved->second].b;
    }
  const SetupPrediction prediction = predict(faulty);
  std::vector<double> changes;
  for (const std::size_t step : further.points.steps)
    changes.push_back(prediction.steps[step] ? prediction.steps[step]->reading.base()
                                             : std::numeric_limits<double>::quiet_NaN());
  return changes;
}

/// d shown / d size of the fault; zeros without a size.
std::vector<double> slopesUnder(const FurtherSteps& further, const Refit& refit) {
  std::vector<double> slopes(further.points.steps.size(), 0.0);
  if (!hasFreeSize(refit.fault.kind)) return slopes;
  Fault above = refit.fault, below = refit.fault;
  const double size = refit.fault.size;
  const double h = size != 0 ? 1e-5 * std::abs(size) : refit.standard.value_or(0);
  if (h == 0) return slopes;
  above.size += h;
  below.size -= h;
  const std::vector<double> up = shownUnder(further, above), down = shownUnder(further, below);
  if (up.empty() || down.empty()) return slopes;
  for (std::size_t k = 0; k < slopes.size(); ++k) slopes[k] = (up[k] - down[k]) / (2 * h);
  return slopes;
}

/// Covariances of further steps with the points of the plan. The resistor of a step keeps its error wherever
/// it is laid.
class FurtherCovariance {
 public:
  FurtherCovariance(const DiagnosisGround& ground, const FurtherSteps& further)
      : m_plan(ground.points), m_budget(budgetOf(further.setup, further.prediction)) {
    m_pairs = correlatedPairs(further.setup, m_budget.inputs);
    for (const BudgetInput& input : m_budget.inputs)
      m_standard.push_back(input.input.kind == InputKind::Rounding ? 0 : input.standard);
    for (const double own : m_plan.ownVariance) m_own += own;
    m_own /= static_cast<double>(m_plan.size());
  }

  /// Of the points of the plan and the step, row after row; empty when its uncertainty is refused.
  std::vector<double> with(const FurtherStep& step) const {
    if (!m_budget.of(Scope::Chain).steps[step.step]) return {};
    const std::size_t n = m_plan.size();
    const std::vector<double> added = sensitivitiesOf(step);
    std::vector<double> covariance((n + 1) * (n + 1));
    for (std::size_t i = 0; i < n; ++i) {
      for (std::size_t j = 0; j < n; ++j) covariance[i * (n + 1) + j] = m_plan.covariance[i * n + j];
      const auto own = m_budget.sensitivities(Scope::Chain, m_plan.steps[i]);
      covariance[i * (n + 1) + n] = covariance[n * (n + 1) + i] =
          covarianceOf(own, added, m_standard, m_pairs);
    }
    covariance.back() = covarianceOf(added, added, m_standard, m_pairs) + m_own;
    return covariance;
  }

 private:
  std::vector<double> sensitivitiesOf(const FurtherStep& step) const {
    const auto row = m_budget.sensitivities(Scope::Chain, step.step);
    std::vector<double> sensitivities(row.begin(), row.end());
    if (!step.moved) return sensitivities;
    for (std::size_t k = 0; k < m_budget.inputs.size(); ++k) {
      const Input input = m_budget.inputs[k].input;
      if (input.kind != InputKind::Shunt || input.index != step.moved->second) continue;
      for (std::size_t other = 0; other < m_budget.inputs.size(); ++other)
        if (m_budget.inputs[other].input == Input{InputKind::Shunt, step.moved->first})
          std::swap(sensitivities[other], sensitivities[k]);
    }
    return sensitivities;
  }

  const CheckPoints& m_plan;
  Budget m_budget;
  std::vector<CorrelatedPair> m_pairs;
  std::vector<double> m_standard;
  double m_own = 0;
};

/// What one cause would show and how another, refitted, would answer.
struct Rivals {
  std::vector<double> difference;  ///< of what they show at all points
  std::vector<double> slope;       ///< of the refitted one by its size
};

std::optional<Rivals> rivalsOf(const DiagnosisGround& ground, const FurtherSteps& further, const Refit& a,
                               const Refit& b) {
  const std::vector<double> truth = shownUnder(further, a.fault);
  if (truth.empty()) return std::nullopt;
  const std::size_t n = ground.points.size();
  const auto answer = refit(ground, b.fault, {truth.begin(), truth.begin() + static_cast<std::ptrdiff_t>(n)});
  if (!answer) return std::nullopt;
  Rivals rivals;
  rivals.difference = shownUnder(further, answer->fault);
  if (rivals.difference.empty()) return std::nullopt;
  for (std::size_t k = 0; k < truth.size(); ++k) rivals.difference[k] = truth[k] - rivals.difference[k];
  rivals.slope = slopesUnder(further, *answer);
  return rivals;
}

/// Chi-lengthSquared that is left when offset and size, by its slope, follow the difference.
double leftOver(const FreeOffset& weighing, std::vector<double> difference, std::vector<double> slope) {
  const std::vector<double> white = weighing.reduced(std::move(difference), nullptr);
  const std::vector<double> along = weighing.reduced(std::move(slope), nullptr);
  double product = 0;
  for (std::size_t k = 0; k < white.size(); ++k) product += white[k] * along[k];
  const double steepness = lengthSquared(along);
  return lengthSquared(white) - (steepness > 0 ? product * product / steepness : 0.0);
}

/// The first n of `values`, and the one of the further step.
std::vector<double> pick(const std::vector<double>& values, std::size_t n, std::size_t further) {
  std::vector<double> picked(values.begin(), values.begin() + static_cast<std::ptrdiff_t>(n));
  picked.push_back(values[n + further]);
  return picked;
}

}  // namespace

std::optional<TellingStep> tellingStep(const DiagnosisGround& ground, const Refit& a, const Refit& b) {
  const FurtherSteps further = furtherSteps(ground);
  const auto rivals = rivalsOf(ground, further, a, b);
  if (!rivals) return std::nullopt;
  const std::size_t n = ground.points.size();
  const auto first = static_cast<std::ptrdiff_t>(n);
  const double now =
      leftOver(ground.healthy, {rivals->difference.begin(), rivals->difference.begin() + first},
               {rivals->slope.begin(), rivals->slope.begin() + first});
  const FurtherCovariance covariances(ground, further);
  std::optional<TellingStep> best;
  for (std::size_t k = 0; k < further.list.size(); ++k) {
    auto whitening = Whitening::ofCovariance(covariances.with(further.list[k]), n + 1, say("the covariance"));
    if (!whitening) continue;
    const double then = leftOver(FreeOffset(*std::move(whitening)), pick(rivals->difference, n, k),
                                 pick(rivals->slope, n, k));
    const double separation = std::sqrt(std::max(0.0, then - now));
    if (!(separation >= leastSeparation) || (best && separation <= best->separation)) continue;
    best = TellingStep{further.list[k].text, separation};
    if (separation >= plainSeparation) break;
  }
  return best;
}

}  // namespace core
