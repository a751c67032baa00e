// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diagnose/diagnosis.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/diagnose/diagnosis_words.h"
#include "core/diagnose/explain.h"
#include "core/diagnose/plausibility.h"
#include "core/diagnose/refit.h"
#include "core/diagnose/telling_step.h"
#include "core/line/distributions.h"
#include "core/units/language.h"

namespace core {
namespace {

/// Odds for the best single cause against a healthy channel, as 2 ln, from which on it is named. That many
/// causes are tried is in the odds already; about 1 in 100 healthy checks reach it by chance (found by
/// simulation, tests/diagnosis). The prior of the channel being healthy is in this number.
constexpr double worthNaming = 3.3;
/// Probability of a chi-square below which the readings and a cause do not belong together.
constexpr double doubtful = 1e-3;
/// The same for the healthy channel when no cause is worth naming: rarer, since most uncertainties are stated
/// by a rule of thumb.
constexpr double impossible = 1e-4;
/// Of evidence, in units of chi-square, within which causes count as not told apart: 20 to 1.
constexpr double toldApart = 6;
/// Standard uncertainties that a size must be away from none.
constexpr double leastSignificant = 2;
/// Chi-square of the changes themselves, by the readings' own uncertainties, below which there are none.
constexpr double leastResponse = 9;
/// Of evidence, beyond which a cause is not worth a line beside one that fits.
constexpr double outOfTheQuestion = 100;
/// Share of chi-square that a cause must take away to be worth naming.
constexpr double leastExplained = 0.5;
constexpr std::size_t mostExplanations = 8;
constexpr std::size_t mostUntied = 3;  ///< causes named behind those that are not told apart
constexpr std::size_t mostHints = 2;   ///< causes named with a healthy check that they fit a little better

double upperTail(double chiSquare, int dof) {
  if (dof < 1) return 1;
  if (!std::isfinite(chiSquare)) return 0;
  return chiSquareExceeded(std::max(0.0, chiSquare), dof);
}

double sizeOfNone(CauseKind kind) {
  switch (kind) {
    case CauseKind::Scale:
    case CauseKind::ShuntValue:
    case CauseKind::CompletionValue:
    case CauseKind::ArmValue:
      return 1;
    default:  // of Clipping, nothing is left of the readings at 0
      return 0;
  }
}

bool scalesReadings(CauseKind kind) {
  return kind == CauseKind::Scale || kind == CauseKind::Units || kind == CauseKind::BridgeFactor;
}

/// A candidate with what it is ranked by.
struct Ranked {
  Refit refit;
  double plausibility = 0;
  double evidence = 0;  ///< BIC, with the change of the covariance's determinant; smaller is better
  double rank = 0;      ///< -2 ln of marginal likelihood times prior, smaller is better
  bool fits = false;
};

class Ranking {
 public:
  Ranking(const DiagnosisGround& ground, Refit healthy)
      : m_ground(ground), m_points(ground.points.size()), m_healthy(std::move(healthy)) {}

  bool run(const std::stop_token& stop) {
    const std::vector<Fault> faults = possibleFaults(m_ground.setup, m_ground.points);
    std::array<std::size_t, causeKindCount> variants{};
    for (const Fault& fault : faults) ++variants[static_cast<std::size_t>(fault.kind)];
    for (const Fault& fault : faults) {
      if (stop.stop_requested()) return false;
      auto fitted = refit(m_ground, fault, m_ground.points.measured);
      if (fitted) add(*std::move(fitted), variants[static_cast<std::size_t>(fault.kind)]);
    }
    std::stable_sort(m_ranked.begin(), m_ranked.end(),
                     [](const Ranked& a, const Ranked& b) { return a.rank < b.rank; });
    return true;
  }

  const std::vector<Ranked>& ranked() const { return m_ranked; }

  /// 2 ln of the odds of the best single cause against the healthy channel.
  double odds() const { return m_ranked.empty() ? -HUGE_VAL : m_healthy.chiSquare - m_ranked.front().rank; }
  double explained(const Ranked& candidate) const {
    return m_healthy.chiSquare > 0 ? 1 - candidate.refit.chiSquare / m_healthy.chiSquare : 0;
  }

 private:
  void add(Refit fitted, std::size_t variants) {
    if (saysNothing(fitted)) return;
    Ranked candidate;
    const Plausibility plausibility = plausibilityOf(m_ground, fitted);
    candidate.plausibility = plausibility.ordinary;
    candidate.evidence = informationOfChiSquare(fitted.chiSquare, fitted.parameters, m_points).bayesian +
                         fitted.logDeterminant;
    candidate.rank = fitted.chiSquare + fitted.logDeterminant + plausibility.cost +
                     2 * std::log(static_cast<double>(variants));
    if (m_ground.between) {
      const double further = m_ground.between->evidence(fitted);
      candidate.evidence += further;
      candidate.rank += further;
    }
    candidate.fits = fits(fitted);
    candidate.refit = std::move(fitted);
    m_ranked.push_back(std::move(candidate));
  }

  /// A size that may as well be none, or a scale under which the readings do not follow the shunts at all:
  /// that is NoResponse, and no factor.
  bool saysNothing(const Refit& fitted) const {
    const Fault& fault = fitted.fault;
    if (hasFreeSize(fault.kind)) {
      if (!fitted.standard) return true;
      const double away = fault.size - sizeOfNone(fault.kind);
      if (!(std::abs(away) > leastSignificant * *fitted.standard)) return true;
    }
    if (!scalesReadings(fault.kind)) return false;
    double response = 0;
    for (std::size_t k = 0; k < m_points; ++k)
      response += std::pow(fitted.changes[k] - fitted.offset, 2) / m_ground.points.ownVariance[k];
    return response < leastResponse;
  }

  /// What is left agrees with the uncertainties, or is of no account beside what was explained and the
  /// limits.
  bool fits(const Refit& fitted) const {
    const int dof = static_cast<int>(m_points) - static_cast<int>(fitted.parameters);
    if (upperTail(fitted.chiSquare, dof) >= doubtful) return true;
    if (fitted.chiSquare > 0.01 * m_healthy.chiSquare) return false;
    const Limits& limits = m_ground.setup.limits;
    for (std::size_t k = 0; k < m_points; ++k) {
      const double left = std::abs(m_ground.points.measured[k] - fitted.changes[k]);
      const double limit = std::max(limits.relative * std::abs(fitted.changes[k]), limits.least.base());
      if (m_ground.points.expected[k] != 0 && left > limit) return false;
    }
    return true;
  }

  const DiagnosisGround& m_ground;
  std::size_t m_points;
  Refit m_healthy;
  std::vector<Ranked> m_ranked;
};

Explanation explanationOf(const DiagnosisGround& ground, const Budget& budget, const Refit& healthy,
                          const Ranked& candidate) {
  const Refit& fitted = candidate.refit;
  Explanation explanation;
  explanation.fault = fitted.fault;
  explanation.standard = fitted.standard;
  explanation.chiSquare = fitted.chiSquare;
  explanation.parameters = fitted.parameters;
  const int dof = static_cast<int>(ground.points.size()) - static_cast<int>(fitted.parameters);
  explanation.fitProbability = upperTail(fitted.chiSquare, dof);
  if (healthy.chiSquare > 0)
    explanation.explained = std::clamp(1 - fitted.chiSquare / healthy.chiSquare, 0.0, 1.0);
  explanation.information = informationOfChiSquare(fitted.chiSquare, fitted.parameters, ground.points.size());
  explanation.plausibility = candidate.plausibility;
  explanation.changes = fitted.changes;
  describe(ground, budget, fitted, explanation);
  return explanation;
}

/// Shares of belief of `named` among all candidates and the healthy channel.
std::vector<double> weightsOf(const Refit& healthy, const std::vector<Ranked>& all,
                              const std::vector<Ranked>& named) {
  // The odds that a cause must reach before it is named are the prior of the healthy channel.
  const double healthyRank = healthy.chiSquare - worthNaming;
  const double best = std::min(healthyRank, all.empty() ? healthyRank : all.front().rank);
  double sum = std::exp((best - healthyRank) / 2);
  for (const Ranked& candidate : all) sum += std::exp((best - candidate.rank) / 2);
  std::vector<double> weights;
  for (const Ranked& candidate : named) weights.push_back(std::exp((best - candidate.rank) / 2) / sum);
  return weights;
}

/// The candidates worth naming: those that the readings do not tell from the first, if that fits, then the
/// next best.
struct Named {
  std::vector<Ranked> candidates;
  std::size_t tied = 0;
};

std::vector<Ranked> firstOf(const std::vector<Ranked>& ranked, std::size_t most) {
  return {ranked.begin(), ranked.begin() + static_cast<std::ptrdiff_t>(std::min(most, ranked.size()))};
}

Named namedOf(const Ranking& ranking) {
  std::vector<Ranked> worth;
  for (const Ranked& candidate : ranking.ranked())
    if (ranking.explained(candidate) >= leastExplained) worth.push_back(candidate);
  // Where no cause explains much, the best still say how little that is.
  if (worth.empty()) return {firstOf(ranking.ranked(), mostUntied), 0};
  const double first = worth.front().evidence;
  const bool fits = worth.front().fits;
  const auto untied = std::stable_partition(worth.begin(), worth.end(), [&](const Ranked& candidate) {
    return fits && candidate.fits && candidate.evidence - first < toldApart;
  });
  const auto tied = std::min(static_cast<std::size_t>(untied - worth.begin()), mostExplanations);
  if (fits)
    worth.erase(std::remove_if(
                    untied, worth.end(),
                    [&](const Ranked& candidate) { return candidate.evidence - first > outOfTheQuestion; }),
                worth.end());
  return {firstOf(worth, std::min(tied + mostUntied, mostExplanations)), tied};
}

}  // namespace

std::string_view diagnosisResultKey(DiagnosisResult result) {
  switch (result) {
    case DiagnosisResult::NotPossible:
      return "not_possible";
    case DiagnosisResult::Healthy:
      return "healthy";
    case DiagnosisResult::Found:
      return "found";
    case DiagnosisResult::Tied:
      return "tied";
    case DiagnosisResult::NothingFits:
      return "nothing_fits";
  }
  return {};
}

Diagnosis diagnose(const Setup& setup, const SetupPrediction& prediction, const Budget& budget,
                   const Check& check, const std::stop_token& stop) {
  const auto ground = diagnosisGround(setup, prediction, budget, check);
  if (ground) return diagnose(*ground, budget, stop);
  Diagnosis diagnosis;
  diagnosis.sentence = say("No diagnosis: {1}", {ground.error().text()});
  return diagnosis;
}

Diagnosis diagnose(const DiagnosisGround& ground, const Budget& budget, const std::stop_token& stop) {
  Diagnosis diagnosis;
  const Refit healthy = refitHealthy(ground, ground.points.measured);
  Ranking ranking(ground, healthy);
  if (!ranking.run(stop)) {
    diagnosis.sentence = say("No diagnosis: cancelled.");
    return diagnosis;
  }
  diagnosis.takenDigit = ground.digit;
  diagnosis.chiSquare = healthy.chiSquare;
  diagnosis.degreesOfFreedom = static_cast<int>(ground.points.size()) - 1;
  diagnosis.probability = upperTail(healthy.chiSquare, diagnosis.degreesOfFreedom);

  const bool healthyEnough = ranking.odds() < worthNaming && *diagnosis.probability >= impossible;
  Named named = namedOf(ranking);
  if (healthyEnough) named = {firstOf(ranking.ranked(), ranking.odds() > 0 ? mostHints : 0), 0};
  const std::vector<double> weights = weightsOf(healthy, ranking.ranked(), named.candidates);
  for (std::size_t k = 0; k < named.candidates.size(); ++k) {
    diagnosis.explanations.push_back(explanationOf(ground, budget, healthy, named.candidates[k]));
    diagnosis.explanations.back().weight = weights[k];
  }
  diagnosis.tied = named.tied;
  diagnosis.result = healthyEnough     ? DiagnosisResult::Healthy
                     : named.tied == 0 ? DiagnosisResult::NothingFits
                     : named.tied == 1 ? DiagnosisResult::Found
                                       : DiagnosisResult::Tied;
  if (named.tied > 1)
    diagnosis.tellingStep = tellingStep(ground.between ? *ground.between->plan : ground,
                                        named.candidates[0].refit, named.candidates[1].refit);
  diagnosis.sentence = sentenceOf(ground.setup, diagnosis);
  return diagnosis;
}

}  // namespace core
