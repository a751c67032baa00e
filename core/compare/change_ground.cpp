// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/compare/change_ground.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>
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
  if (points.size() > 0) {
    points.covariance = covarianceWith(m_faulty.budget);
    splitCovariance(points.covariance);
  }
  return points;
}

/// Of the difference, when the readings of the faulty check depend on inputs as `later` says.
std::vector<double> ChangeGround::covarianceWith(const Budget& later) const {
  std::vector<double> covariance =
      differenceCovariance(m_setup, m_sound.budget, m_otherSetup, later, m_pairs);
  for (std::size_t k = 0; k < m_own.size(); ++k) covariance[k * m_own.size() + k] += m_own[k];
  return covariance;
}

/// Of what either check feels alone, and what both feel alike, from the difference with one of them deaf.
void ChangeGround::splitCovariance(const std::vector<double>& whole) {
  const auto deaf = [](Budget budget) {
    auto& sensitivities = budget.scopes[static_cast<std::size_t>(Scope::Chain)].sensitivities;
    std::fill(sensitivities.begin(), sensitivities.end(), 0.0);
    return budget;
  };
  m_ofSound = differenceCovariance(m_setup, m_sound.budget, m_otherSetup, deaf(m_faulty.budget), m_pairs);
  m_ofFaulty = differenceCovariance(m_setup, deaf(m_sound.budget), m_otherSetup, m_faulty.budget, m_pairs);
  m_ofBoth.resize(whole.size());
  for (std::size_t k = 0; k < whole.size(); ++k) m_ofBoth[k] = (m_ofSound[k] + m_ofFaulty[k] - whole[k]) / 2;
  for (std::size_t k = 0; k < m_own.size(); ++k) m_ofBoth[k * m_own.size() + k] += m_own[k] / 2;
}

/// When the readings of the faulty check feel the inputs `share` times as those of the points `taken` would.
std::vector<double> ChangeGround::covarianceOf(const std::vector<double>& share,
                                               const std::vector<std::size_t>& taken) const {
  const std::size_t n = m_own.size();
  std::vector<double> covariance(n * n);
  for (std::size_t i = 0; i < n; ++i)
    for (std::size_t j = 0; j < n; ++j)
      covariance[i * n + j] = m_ofSound[i * n + j] +
                              share[i] * share[j] * m_ofFaulty[taken[i] * n + taken[j]] -
                              share[i] * m_ofBoth[taken[i] * n + j] - share[j] * m_ofBoth[taken[j] * n + i] +
                              (i == j ? m_own[i] : 0);
  return covariance;
}

/// With a fault that changes what the readings feel: another place of a shunt, no shunt at all.
std::optional<std::vector<double>> ChangeGround::covarianceOfOtherParts(const Fault& fault) const {
  const Setup setup = withFault(m_otherSetup, fault);
  Budget other = budgetOf(setup, predict(setup));
  if (other.inputs.size() != m_faulty.budget.inputs.size()) return std::nullopt;
  for (const StepPair& pair : m_pairs)
    if (!other.of(Scope::Chain).steps[pair.after]) return std::nullopt;
  // The errors are those of the same parts, whatever they read now.
  other.inputs = m_faulty.budget.inputs;
  return covarianceWith(other);
}

std::optional<std::vector<double>> ChangeGround::covarianceUnder(const Fault& fault,
                                                                 const std::vector<double>& changes) const {
  if (fault.kind == CauseKind::ZeroShift || fault.kind == CauseKind::Drift ||
      fault.kind == CauseKind::StrayReading)
    return std::nullopt;
  if (isOfOtherParts(fault.kind)) return covarianceOfOtherParts(fault);
  const bool isOrder = fault.kind == CauseKind::StepsExchanged || fault.kind == CauseKind::SidesExchanged;
  std::vector<double> share(m_own.size(), 1.0);
  std::vector<std::size_t> taken(m_own.size());
  std::iota(taken.begin(), taken.end(), 0);
  for (std::size_t k = 0; k < m_own.size(); ++k) {
    if (changes[k] == m_expected[k] || (m_expected[k] == 0 && !isOrder)) continue;
    const auto from = std::find(m_expected.begin(), m_expected.end(), changes[k]);
    if (isOrder && from != m_expected.end())
      taken[k] = static_cast<std::size_t>(from - m_expected.begin());
    else  // what is a share of a reading follows it; one that has stopped follows nothing
      share[k] = fault.kind == CauseKind::Clipping ? 0 : changes[k] / m_expected[k];
  }
  return covarianceOf(share, taken);
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
