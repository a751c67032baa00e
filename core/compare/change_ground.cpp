// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/compare/change_ground.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

#include "core/assess/judging.h"
#include "core/compare/two_lines.h"
#include "core/diagnose/correction.h"
#include "core/units/language.h"

namespace core {
namespace {

/// Share of the greatest expected reading that no reading is known better than: keeps covariances
/// invertible, and displays have no more digits.
constexpr double leastShare = 1e-5;

double roundingOf(const Budget& budget) {
  for (const BudgetInput& entry : budget.inputs)
    if (entry.input.kind == InputKind::Rounding && entry.input.index == 1) return entry.standard;
  return 0;
}

/// The line of measured against expected.
std::optional<LineSample> lineOf(const CheckEvaluation& evaluation) {
  std::vector<double> expected, measured;
  const auto& steps = evaluation.assessment.steps;
  for (std::size_t k = 0; k < steps.size(); ++k) {
    if (!steps[k].deviation || !std::isfinite(steps[k].deviation->base())) continue;
    measured.push_back(steps[k].change->base());
    expected.push_back(evaluation.prediction.steps[k]->reading.base());
  }
  return lineSampleOf(expected, measured);
}

/// Residual variance of both checks about their lines; of the steadier alone when the scatters cannot be one
/// (probability below 0.01): a fault bends the line of its check, and would hide behind its own residuals.
double scatterVariance(const CheckEvaluation& sound, const CheckEvaluation& faulty) {
  const auto a = lineOf(sound), b = lineOf(faulty);
  const auto variance = [](const std::optional<LineSample>& line) {
    return line && line->dof() >= 1 ? std::optional(line->residualSquares / line->dof()) : std::nullopt;
  };
  const auto first = variance(a), second = variance(b);
  if (!first || !second) return first.value_or(second.value_or(0));
  const auto alike = equalScatterProbability(*a, *b);
  if (!alike || *alike < 0.01) return std::min(*first, *second);
  return pooledScatter(*a, *b)->variance;
}

Budget withoutLasting(Budget budget) {
  for (BudgetInput& input : budget.inputs)
    if (lastingRuleOf(input.input.kind).lasting != Lasting::OneCheck) input.standard = 0;
  return budget;
}

/// Whether the parts of the bridge that decide its zero are other ones.
bool movesZero(CauseKind kind) {
  switch (kind) {
    case CauseKind::Leads:
    case CauseKind::LeadContact:
    case CauseKind::CompletionValue:
    case CauseKind::ArmValue:
    case CauseKind::Leak:
    case CauseKind::OpenSense:
      return true;
    default:
      return false;
  }
}

bool isOfOtherParts(CauseKind kind) {
  switch (kind) {
    case CauseKind::ShuntOpen:
    case CauseKind::ShuntPlace:
    case CauseKind::ShuntArm:
    case CauseKind::ShuntsExchanged:
    case CauseKind::OpenSense:
      return true;
    default:
      return false;
  }
}

/// Makes row `to` of the chain's sensitivities `factor` times row `from` of `source`.
void copyRow(Budget& budget, std::size_t to, const Budget& source, std::size_t from, double factor) {
  ScopeBudget& scope = budget.scopes[static_cast<std::size_t>(Scope::Chain)];
  const auto row = source.sensitivities(Scope::Chain, from);
  for (std::size_t k = 0; k < row.size(); ++k) scope.sensitivities[to * row.size() + k] = factor * row[k];
}

}  // namespace

ChangeGround::ChangeGround(const Channel& channel, const ChannelEvaluation& evaluation, std::size_t sound,
                           std::size_t faulty)
    : m_setup(setupOf(channel, channel.checks[sound])),
      m_otherSetup(setupOf(channel, channel.checks[faulty])),
      m_soundCheck(channel.checks[sound]),
      m_faultyCheck(channel.checks[faulty]),
      m_sound(evaluation.checks[sound]),
      m_faulty(evaluation.checks[faulty]),
      m_ownBudget(withoutLasting(m_sound.budget)) {
  m_span = greatestExpected(m_sound.prediction).base();
  takeOwnErrors();
}

void ChangeGround::takeOwnErrors() {
  bool isStated = false;
  for (const Check* check : {&m_soundCheck, &m_faultyCheck})
    for (const auto& reading : check->readings)
      if (reading && reading->uncertainty) {
        isStated = true;
        m_worstStated = std::max(m_worstStated, reading->uncertainty->base());
      }
  if (isStated) return;
  m_takenScatter = std::max(std::sqrt(scatterVariance(m_sound, m_faulty)), leastShare * m_span);
}

double ChangeGround::ownVariance(const CheckEvaluation& evaluation, const Check& check,
                                 std::size_t step) const {
  const auto& reading = check.readings[step];
  double u = m_takenScatter.value_or(m_worstStated);
  if (reading && reading->uncertainty) u = reading->uncertainty->base();
  const double rounding = m_takenScatter ? 0 : roundingOf(evaluation.budget), least = leastShare * m_span;
  return std::max(u * u + rounding * rounding, least * least);
}

CheckPoints ChangeGround::pointsOf(const Comparison& comparison) {
  CheckPoints points;
  m_check = m_soundCheck;
  m_check.readings.assign(m_setup.sequence.size(), std::nullopt);
  const auto& zeroStep = m_faulty.assessment.zeroStep;
  const double zero = zeroStep ? m_faultyCheck.readings[*zeroStep]->mean.base() : 0;
  for (std::size_t k = 0; k < comparison.steps.size(); ++k) {
    const StepComparison& step = comparison.steps[k];
    if (!step.moved || !m_sound.budget.of(Scope::Chain).steps[k] ||
        !m_faulty.budget.of(Scope::Chain).steps[*step.afterStep])
      continue;
    const std::size_t j = *step.afterStep;
    if (k == m_sound.assessment.zeroStep && j == zeroStep) points.zero = points.size();
    const double expected = step.expectedBefore->base();
    points.steps.push_back(k);
    points.simulated.push_back(simulatedInUnit(m_setup.bridge, m_sound.prediction.steps[k]->simulated));
    points.expected.push_back(expected);
    points.measured.push_back(expected + step.moved->value);
    const double own = ownVariance(m_faulty, m_faultyCheck, j);
    points.ownVariance.push_back(ownVariance(m_sound, m_soundCheck, k) + own);
    m_pairs.push_back({k, j});
    Measured reading = *m_faultyCheck.readings[j];
    reading.mean = Reading(zero + points.measured.back());
    reading.uncertainty = Reading(std::sqrt(own));
    m_check.readings[k] = std::move(reading);
  }
  m_expected = points.expected;
  m_own = points.ownVariance;
  if (points.size() > 0) points.covariance = covarianceWith(m_faulty.budget);
  return points;
}

/// Of the difference, when the readings of the faulty check depend on inputs as `later` says.
std::vector<double> ChangeGround::covarianceWith(const Budget& later) const {
  std::vector<double> covariance =
      differenceCovariance(m_setup, m_sound.budget, m_otherSetup, later, m_pairs);
  for (std::size_t k = 0; k < m_own.size(); ++k) covariance[k * m_own.size() + k] += m_own[k];
  return covariance;
}

/// What the readings of the faulty check depend on if `fault` is there.
std::optional<Budget> ChangeGround::budgetUnder(const Fault& fault,
                                                const std::vector<double>& changes) const {
  Budget budget = m_faulty.budget;
  if (isOfOtherParts(fault.kind)) {
    const Setup setup = withFault(m_otherSetup, fault);
    Budget other = budgetOf(setup, predict(setup));
    if (other.inputs.size() != budget.inputs.size()) return std::nullopt;
    for (const StepPair& pair : m_pairs)
      if (!other.of(Scope::Chain).steps[pair.after]) return std::nullopt;
    // The errors are those of the same parts, whatever they read now.
    other.inputs = budget.inputs;
    return other;
  }
  const bool isOrder = fault.kind == CauseKind::StepsExchanged || fault.kind == CauseKind::SidesExchanged;
  for (std::size_t k = 0; k < m_pairs.size(); ++k) {
    if (changes[k] == m_expected[k] || m_expected[k] == 0) continue;
    const auto taken =
        isOrder ? std::find(m_expected.begin(), m_expected.end(), changes[k]) : m_expected.end();
    if (taken != m_expected.end())
      copyRow(budget, m_pairs[k].after, m_faulty.budget,
              m_pairs[static_cast<std::size_t>(taken - m_expected.begin())].after, 1);
    else  // what is a share of a reading follows it; one that has stopped follows nothing
      copyRow(budget, m_pairs[k].after, m_faulty.budget, m_pairs[k].after,
              fault.kind == CauseKind::Clipping ? 0 : changes[k] / m_expected[k]);
  }
  return budget;
}

std::optional<std::vector<double>> ChangeGround::covarianceUnder(const Fault& fault,
                                                                 const std::vector<double>& changes) const {
  switch (fault.kind) {
    case CauseKind::ZeroShift:
    case CauseKind::Drift:
    case CauseKind::StrayReading:
      return std::nullopt;
    default: {
      const auto budget = budgetUnder(fault, changes);
      return budget ? std::optional(covarianceWith(*budget)) : std::nullopt;
    }
  }
}

void ChangeGround::takeZero(const Comparison& comparison) {
  if (!comparison.zero) return;
  const double shown = m_faultyCheck.readings[*m_faulty.assessment.zeroStep]->mean.base();
  // Within the margin is ordinary by the plan itself: two standard deviations.
  m_ordinaryZero = std::max(std::hypot(comparison.zero->margin / 2, comparison.zero->standard.value_or(0)),
                            leastShare * m_span);
  if (std::abs(shown) > comparison.zero->margin) m_zero = comparison.zero->value;
}

/// The zero was either left alone, and moved as the fault moves it besides its ordinary scatter, or zeroed
/// anew, and may read anything: as likely, so that it never outweighs what the steps say clearly.
double ChangeGround::evidenceOf(const Refit& refit) const {
  if (!m_zero || !movesZero(refit.fault.kind)) return 0;
  const auto move = zeroMove(m_setup, refit.fault);
  if (!move) return 0;
  double spread = m_ordinaryZero;
  if (refit.standard) {
    Fault more = refit.fault;
    more.size += *refit.standard;
    spread = std::hypot(spread, zeroMove(m_setup, more).value_or(*move) - *move);
  }
  const auto cost = [this](double away, double scatter) {
    const double density =
        std::exp(-0.5 * (away / scatter) * (away / scatter)) / (scatter * std::sqrt(2 * std::numbers::pi));
    return -2 * std::log(0.5 * density + 0.5 / (2 * m_span));
  };
  return cost(*m_zero - *move, spread) - cost(*m_zero, m_ordinaryZero);
}

Result<std::unique_ptr<ChangeGround>> ChangeGround::make(const Channel& channel,
                                                         const ChannelEvaluation& evaluation,
                                                         std::size_t sound, std::size_t faulty,
                                                         const Comparison& comparison) {
  std::unique_ptr<ChangeGround> change(new ChangeGround(channel, evaluation, sound, faulty));
  CheckPoints points = change->pointsOf(comparison);
  change->takeZero(comparison);
  auto plan =
      diagnosisGround(change->m_setup, change->m_sound.prediction, change->m_sound.budget, change->m_check);
  if (!plan) return plan.error();
  auto whitening =
      Whitening::ofCovariance(points.covariance, points.size(), say("the covariance of the difference"));
  if (!whitening) return whitening.error();
  change->m_plan.emplace(*std::move(plan));
  const ChangeGround* self = change.get();
  change->m_between = {[self](const Fault& fault, const std::vector<double>& changes) {
                         return self->covarianceUnder(fault, changes);
                       },
                       [self](const Refit& refit) { return self->evidenceOf(refit); }, &*change->m_plan};
  change->m_ground.emplace(DiagnosisGround{change->m_setup,
                                           change->m_sound.prediction,
                                           change->m_check,
                                           std::move(points),
                                           FreeOffset(*std::move(whitening)),
                                           {},
                                           &change->m_between});
  return change;
}

}  // namespace core
