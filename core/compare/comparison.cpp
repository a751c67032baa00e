// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/compare/comparison.h"

#include <algorithm>
#include <cmath>

#include "core/assess/judging.h"
#include "core/compare/comparison_words.h"
#include "core/compare/lasting_errors.h"
#include "core/compare/step_pairs.h"
#include "core/compare/two_lines.h"
#include "core/line/distributions.h"
#include "core/line/whitening.h"
#include "core/units/language.h"

namespace core {
namespace {

/// One of the two checks.
struct Side {
  const Setup& setup;
  const Check& check;
  const CheckEvaluation& evaluation;
  std::optional<std::size_t> zero = evaluation.assessment.zeroStep;

  const StepAssessment& assessed(std::size_t step) const { return evaluation.assessment.steps[step]; }
};

Side sideOf(const Channel& channel, const ChannelEvaluation& evaluation, std::size_t check) {
  return {setupOf(channel, channel.checks[check]), channel.checks[check], evaluation.checks[check]};
}

/// Variance of one reading by itself, in the two parts that repeating tells apart.
Spread plus(const Spread& a, const Spread& b) { return {a.averaging + b.averaging, a.lasting + b.lasting}; }
double total(const Spread& spread) { return spread.averaging + spread.lasting; }

/// What a reading's own error may be, in each check.
class OwnErrors {
 public:
  OwnErrors(const Side& before, const Side& after) : m_sides{&before, &after} {
    for (const int side : {0, 1}) {
      m_greatest = std::max(m_greatest, greatestExpected(m_sides[side]->evaluation.prediction).base());
      m_rounding[side] = roundingOf(m_sides[side]->evaluation.budget);
      for (const auto& reading : m_sides[side]->check.readings)
        if (reading && reading->uncertainty)
          m_stated = std::max(m_stated.value_or(0), reading->uncertainty->base());
    }
    if (!m_stated) takeResiduals();
  }

  ScatterFrom from() const {
    if (m_stated) return ScatterFrom::Stated;
    return m_pooled ? ScatterFrom::Residuals : ScatterFrom::Nowhere;
  }
  const std::optional<Scatter>& pooled() const { return m_pooled; }
  bool areKnown() const { return from() != ScatterFrom::Nowhere; }

  /// Of a step's reading in the earlier (0) or later (1) check. A reading without an uncertainty among others
  /// that have one counts as the worst of them. No reading is known better than to a ten-millionth of the
  /// greatest: that keeps covariances invertible.
  Spread of(int side, std::size_t step) const {
    const double least = 1e-7 * m_greatest;
    double u = m_pooled ? std::sqrt(m_pooled->variance) : m_stated.value_or(0);
    const auto& reading = readingAt(m_sides[side]->check, step);
    if (reading && reading->uncertainty) u = reading->uncertainty->base();
    const double rounding = m_rounding[side];
    // Residuals have the rounding in them already.
    const double rest = m_pooled ? std::max(0.0, rounding * rounding - u * u) : rounding * rounding;
    return {u * u, std::max(rest, least * least - u * u)};
  }
  /// Of the zero reading that the check's changes are counted from; nothing without one.
  Spread ofZero(int side) const { return m_sides[side]->zero ? of(side, *m_sides[side]->zero) : Spread{}; }

 private:
  static double roundingOf(const Budget& budget) {
    for (const BudgetInput& entry : budget.inputs)
      if (entry.input.kind == InputKind::Rounding && entry.input.index == 1) return entry.standard;
    return 0;
  }

  /// The pooled residual scatter of measured against expected in both checks.
  void takeResiduals() {
    std::optional<LineSample> samples[2];
    for (const int side : {0, 1}) {
      std::vector<double> expected, measured;
      const auto& steps = m_sides[side]->evaluation.assessment.steps;
      for (std::size_t k = 0; k < steps.size(); ++k) {
        if (!steps[k].deviation || !std::isfinite(steps[k].deviation->base())) continue;
        measured.push_back(steps[k].change->base());
        expected.push_back(m_sides[side]->evaluation.prediction.steps[k]->reading.base());
      }
      samples[side] = lineSampleOf(expected, measured);
    }
    if (samples[0] && samples[1]) m_pooled = pooledScatter(*samples[0], *samples[1]);
  }

  const Side* m_sides[2];
  double m_rounding[2] = {0, 0};
  double m_greatest = 0;
  std::optional<double> m_stated;  ///< greatest uncertainty that a reading has
  std::optional<Scatter> m_pooled;
};

/// Steps whose movement has a known covariance, with everything that tests look at.
struct Points {
  std::vector<std::size_t> steps;  ///< of the earlier check
  std::vector<StepPair> pairs;
  std::vector<double> moved;     ///< deviation after less deviation before
  std::vector<double> expected;  ///< mean of both expectations: they are alike, or nearly
  std::vector<Spread> own;       ///< of both readings of a step together
  std::vector<double> chain;     ///< covariance of what inputs do, row after row

  std::size_t size() const { return steps.size(); }
};

/// A sum of the `moved` with weights, offset free: its value and variance.
struct Combined {
  double value = 0;
  double variance = 0;
  Spread spread;
};

double dofOf(double estimatedDof, double variance, double estimated) {
  const double share = variance / estimated;  // Welch and Satterthwaite with one estimated part
  return estimatedDof * share * share;
}

class Comparing {
 public:
  Comparing(const Side& before, const Side& after, Comparison& comparison)
      : m_before(before),
        m_after(after),
        m_comparison(comparison),
        m_own(before, after),
        m_coverage(checkDecision(before.setup.decision) ? before.setup.decision.coverage : 0.9545) {}

  void run() {
    m_comparison.scatterFrom = m_own.from();
    if (m_own.pooled()) {
      m_comparison.scatter = std::sqrt(m_own.pooled()->variance);
      m_comparison.scatterDof = m_own.pooled()->dof;
    }
    pairSteps();
    if (m_own.areKnown()) m_points.chain = chainCovariance();
    compareGain();
    compareZero();
    compareSteps();
    countRepeats();
  }

 private:
  std::string nameBefore() const { return m_before.check.name; }
  std::string nameAfter() const { return m_after.check.name; }

  void pairSteps() {
    StepPairs pairs = stepPairs(m_before.setup, m_before.evaluation.prediction, m_after.setup,
                                m_after.evaluation.prediction);
    m_comparison.onlyAfter = std::move(pairs.onlyAfter);
    m_comparison.steps.resize(m_before.setup.sequence.size());
    for (std::size_t k = 0; k < m_comparison.steps.size(); ++k) {
      StepComparison& step = m_comparison.steps[k];
      step.before = m_before.assessed(k).change;
      if (const auto& predicted = m_before.evaluation.prediction.steps[k])
        step.expectedBefore = predicted->reading;
      step.afterStep = pairs.after[k];
      if (step.afterStep) pairStep(k, *step.afterStep, step);
      if (!step.afterStep)
        step.reason = m_before.setup.sequence.size() == m_after.setup.sequence.size()
                          ? say("{1} closes other shunts there.", {nameAfter()})
                          : say("The sequence of {1} has no such step.", {nameAfter()});
    }
  }

  void pairStep(std::size_t k, std::size_t j, StepComparison& step) {
    step.after = m_after.assessed(j).change;
    if (const auto& predicted = m_after.evaluation.prediction.steps[j])
      step.expectedAfter = predicted->reading;
    if (step.before && step.after) step.difference = *step.after - *step.before;
    step.reason = whyNot(k, j, step);
    if (!step.reason.empty()) return;
    m_compared.push_back(k);
    const bool known = m_before.evaluation.budget.of(Scope::Chain).steps[k] &&
                       m_after.evaluation.budget.of(Scope::Chain).steps[j];
    if (!known || !m_own.areKnown()) return;
    m_points.steps.push_back(k);
    m_points.pairs.push_back({k, j});
    m_points.moved.push_back(movedAt(step, k));
    m_points.expected.push_back((step.expectedBefore->base() + step.expectedAfter->base()) / 2);
    m_points.own.push_back(plus(m_own.of(0, k), m_own.of(1, j)));
  }

  double movedAt(const StepComparison& step, std::size_t k) const {
    return m_after.assessed(*step.afterStep).deviation->base() - m_before.assessed(k).deviation->base();
  }

  std::string whyNot(std::size_t k, std::size_t j, const StepComparison& step) const {
    if (!readingAt(m_before.check, k)) return say("No reading in {1}.", {nameBefore()});
    if (!readingAt(m_after.check, j)) return say("No reading in {1}.", {nameAfter()});
    if (m_before.zero.has_value() != m_after.zero.has_value())
      return say("{1} has no zero reading to count from.", {m_before.zero ? nameAfter() : nameBefore()});
    if (!step.expectedBefore || !step.expectedAfter) return say("It cannot be predicted.");
    const auto& before = m_before.assessed(k).deviation;
    const auto& after = m_after.assessed(j).deviation;
    if (!before || !after || !std::isfinite(after->base() - before->base()))
      return say("A reading is no finite number.");
    return {};
  }

  std::vector<double> chainCovariance() const {
    return differenceCovariance(m_before.setup, m_before.evaluation.budget, m_after.setup,
                                m_after.evaluation.budget, m_points.pairs);
  }

  /// Share of the own errors of both zero readings and of both readings in the covariance of two `moved`.
  Spread ownBetween(std::size_t a, std::size_t b) const {
    Spread sum;
    for (const int side : {0, 1}) {
      const auto stepOf = [&](std::size_t point) {
        return side == 0 ? m_points.pairs[point].before : m_points.pairs[point].after;
      };
      const auto& zero = side == 0 ? m_before.zero : m_after.zero;
      const Spread ofZero = m_own.ofZero(side);
      // (e_a - e_z)(e_b - e_z), where a reading may be the zero reading itself.
      const double zeroes = zero ? 1.0 - (stepOf(a) == *zero) - (stepOf(b) == *zero) : 0.0;
      const Spread own = a == b ? m_own.of(side, stepOf(a)) : Spread{};
      sum.averaging += own.averaging + zeroes * ofZero.averaging;
      sum.lasting += own.lasting + zeroes * ofZero.lasting;
    }
    return sum;
  }

  std::optional<double> dof(double variance, double estimated) const {
    if (!m_own.pooled() || !(estimated > 0)) return std::nullopt;
    return dofOf(m_own.pooled()->dof, variance, estimated);
  }

  /// Gain, and all steps together, by least squares with the covariance of the points: the offset takes up
  /// both zero readings, so that no error counts twice.
  void compareGain() {
    const std::size_t n = m_points.size();
    if (n < 2) return;
    std::vector<double> covariance = m_points.chain;
    for (std::size_t k = 0; k < n; ++k) covariance[k * n + k] += total(m_points.own[k]);
    const auto whitening = Whitening::ofCovariance(covariance, n, "covariance of the differences");
    if (!whitening) return;
    const auto weighted = [&](std::vector<double> column) {
      return whitening->weighted(whitening->whitened(std::move(column)));
    };
    const std::vector<double> one = weighted(std::vector<double>(n, 1.0)), ramp = weighted(m_points.expected);
    const std::vector<double> weightedMoved = weighted(m_points.moved);
    const auto dot = [n](const std::vector<double>& a, const std::vector<double>& b) {
      double sum = 0;
      for (std::size_t k = 0; k < n; ++k) sum += a[k] * b[k];
      return sum;
    };
    const std::vector<double> ones(n, 1.0);
    const double s1 = dot(one, ones), sx = dot(one, m_points.expected), sy = dot(one, m_points.moved);
    giveJoint(dot(weightedMoved, m_points.moved) - sy * sy / s1);
    const double squares = dot(ramp, m_points.expected) - sx * sx / s1;
    if (!(squares > 1e-12 * dot(ramp, m_points.expected))) return;
    Combined slope;
    slope.variance = 1 / squares;
    for (std::size_t k = 0; k < n; ++k) {
      const double weight = (ramp[k] - sx / s1 * one[k]) / squares;
      slope.value += weight * m_points.moved[k];
      slope.spread.averaging += weight * weight * m_points.own[k].averaging;
    }
    slope.spread.lasting = std::max(0.0, slope.variance - slope.spread.averaging);
    widen(dot(weightedMoved, m_points.moved) - sy * sy / s1 - slope.value * slope.value * squares, slope);
    giveGain(slope);
  }

  /// Not with scatter from residuals: these are made of the same movement, which would be held against
  /// itself.
  void giveJoint(double chiSquare) {
    if (!m_own.pooled())
      m_comparison.jointProbability =
          chiSquareExceeded(std::max(0.0, chiSquare), static_cast<int>(m_points.size()) - 1);
  }

  /// Count of the steps times the smallest p of one (Bonferroni): right however they hang together.
  void giveJointOfSteps() {
    double least = 1, count = 0;
    for (const std::size_t k : m_compared) {
      const Difference& moved = *m_comparison.steps[k].moved;
      if (!moved.standard || *moved.standard == 0) continue;
      least = std::min(least, *moved.pDifferent);
      ++count;
    }
    if (count > 0) m_comparison.jointProbability = std::min(1.0, count * least);
  }

  /// Of what moved along no line the gain is known worse than readings are: as that of a check (ChainGain).
  void widen(double chiSquare, Combined& slope) {
    const auto freedom = static_cast<int>(m_points.size()) - 2;
    if (freedom < 1 || m_own.pooled()) return;  // scatter from residuals has it already
    const double square = std::max(0.0, chiSquare), each = square / freedom;
    const double probability = chiSquareExceeded(square, freedom);
    if (!(probability < 0.05) || !(each > 1)) return;
    m_comparison.gainWidened = true;
    slope.variance *= each;
    slope.spread.lasting = slope.variance - slope.spread.averaging;  // repeating makes it no line
  }

  void giveGain(const Combined& slope) {
    const auto& earlier = m_before.evaluation.assessment.gain;
    const double gain = earlier && std::isfinite(earlier->value) && earlier->value != 0 ? earlier->value : 1;
    m_comparison.gain = differenceOf(slope.value / gain, std::sqrt(slope.variance) / std::abs(gain),
                                     m_comparison.gainWidened ? static_cast<double>(m_points.size()) - 2
                                                              : dof(slope.variance, slope.spread.averaging),
                                     m_before.setup.limits.change, m_coverage);
    m_gainSpread = {slope.spread.averaging / (gain * gain), slope.spread.lasting / (gain * gain)};
  }

  double zeroMargin() const {
    const Limits& limits = m_before.setup.limits;
    return std::max(limits.zeroChange * greatestExpected(m_before.evaluation.prediction).base(),
                    limits.least.base());
  }

  void compareZero() {
    if (!m_before.zero || !m_after.zero) return;
    const double value =
        (readingAt(m_after.check, *m_after.zero)->mean - readingAt(m_before.check, *m_before.zero)->mean)
            .base();
    m_zeroSpread = plus(m_own.ofZero(0), m_own.ofZero(1));
    const double variance = total(m_zeroSpread);
    m_comparison.zero =
        differenceOf(value, m_own.areKnown() ? std::optional(std::sqrt(variance)) : std::nullopt,
                     dof(variance, m_zeroSpread.averaging), zeroMargin(), m_coverage);
  }

  void compareSteps() {
    const std::size_t n = m_points.size(), all = m_comparison.steps.size();
    if (n > 0) m_comparison.covariance.assign(all * all, 0.0);
    m_stepSpread.resize(all);
    for (std::size_t a = 0; a < n; ++a)
      for (std::size_t b = 0; b <= a; ++b) {
        const double covariance = m_points.chain[a * n + b] + total(ownBetween(a, b));
        const std::size_t i = m_points.steps[a], j = m_points.steps[b];
        m_comparison.covariance[i * all + j] = m_comparison.covariance[j * all + i] = covariance;
      }
    std::size_t point = 0;
    for (const std::size_t k : m_compared) {
      StepComparison& step = m_comparison.steps[k];
      const bool known = point < n && m_points.steps[point] == k;
      std::optional<double> variance;
      if (known) {
        m_stepSpread[k] = ownBetween(point, point);
        m_stepSpread[k].lasting += m_points.chain[point * n + point];
        variance = std::max(0.0, total(m_stepSpread[k]));
        ++point;
      }
      judgeStep(k, step, variance);
    }
    if (m_own.pooled()) giveJointOfSteps();
    holdSteps();
  }

  void judgeStep(std::size_t k, StepComparison& step, const std::optional<double>& variance) {
    const Limits& limits = m_before.setup.limits;
    const double margin =
        isZeroStep(m_before.setup, k)
            ? zeroMargin()
            : std::max(limits.change * std::abs(step.expectedBefore->base()), limits.least.base());
    step.moved =
        differenceOf(movedAt(step, k), variance ? std::optional(std::sqrt(*variance)) : std::nullopt,
                     variance ? dof(*variance, m_stepSpread[k].averaging) : std::nullopt, margin, m_coverage);
  }

  /// One of nine steps is soon beyond its own interval by chance: none counts unless all together say so.
  void holdSteps() {
    const bool byChance = m_comparison.jointProbability.value_or(0) >= 0.05;
    for (const std::size_t k : m_compared) {
      StepComparison& step = m_comparison.steps[k];
      Change& change = step.moved->change;
      const bool held = byChance && (change == Change::Changed || change == Change::Harmless);
      if (held) change = change == Change::Changed ? Change::CannotTell : Change::Unchanged;
      step.reason = stepSentence(step, readingUnitText(m_before.setup.instrument), held);
    }
  }

  /// The greatest number of repeats that anything open needs.
  void countRepeats() {
    std::optional<unsigned> most;
    bool hopeless = false;
    const auto ask = [&](const std::optional<Difference>& difference, const Spread& spread) {
      if (changeOf(difference) != Change::CannotTell) return;
      const auto repeats = repeatsToTell(*difference, spread);
      hopeless = hopeless || !repeats;
      if (repeats) most = std::max(most.value_or(0), *repeats);
    };
    ask(m_comparison.gain, m_gainSpread);
    // What moved along no line is no better known for being repeated.
    hopeless = hopeless || (m_comparison.gainWidened && changeOf(m_comparison.gain) == Change::CannotTell);
    ask(m_comparison.zero, m_zeroSpread);
    for (const std::size_t k : m_compared) ask(m_comparison.steps[k].moved, m_stepSpread[k]);
    if (!hopeless) m_comparison.repeats = most;
  }

  const Side& m_before;
  const Side& m_after;
  Comparison& m_comparison;
  OwnErrors m_own;
  double m_coverage;
  Points m_points;
  std::vector<std::size_t> m_compared;  ///< steps with a `moved`
  Spread m_gainSpread, m_zeroSpread;
  std::vector<Spread> m_stepSpread;
};

bool marginsUsable(const Limits& limits) {
  const auto usable = [](double value) { return std::isfinite(value) && value >= 0; };
  return usable(limits.change) && usable(limits.zeroChange) && usable(limits.least.base());
}

/// Why nothing at all is compared; empty when something can be.
std::string whyNotAtAll(const Setup& before, const Setup& after) {
  const std::string first = readingUnitText(before.instrument), second = readingUnitText(after.instrument);
  if (before.sequence.empty() || after.sequence.empty())
    return say("Cannot be compared: the channel has no steps.");
  if (first != second)
    return say("Cannot be compared: the readings are in different units, {1} and {2}.", {first, second});
  if (before.bridge.type != after.bridge.type)
    return say("Cannot be compared: the bridges differ, {1} and {2}.",
               {templateOf(before.bridge.type).name, templateOf(after.bridge.type).name});
  if (!marginsUsable(before.limits))
    return say("Cannot be compared: the margin of a change is no number of 0 or more.");
  return {};
}

Change worstOf(const Comparison& comparison, bool zeroWanted) {
  std::vector<Change> all{changeOf(comparison.gain)};
  if (comparison.zero || zeroWanted) all.push_back(changeOf(comparison.zero));
  for (const StepComparison& step : comparison.steps) all.push_back(changeOf(step.moved));
  const auto has = [&](Change change) { return std::find(all.begin(), all.end(), change) != all.end(); };
  if (has(Change::Changed)) return Change::Changed;
  const bool nothing = std::all_of(comparison.steps.begin(), comparison.steps.end(),
                                   [](const StepComparison& step) { return !step.moved; });
  if (nothing && !comparison.zero) return Change::NotCompared;
  if (has(Change::CannotTell) || has(Change::NotCompared)) return Change::CannotTell;
  return has(Change::Harmless) ? Change::Harmless : Change::Unchanged;
}

bool hasZeroStep(const Setup& setup) {
  return std::any_of(setup.sequence.begin(), setup.sequence.end(),
                     [](const Step& step) { return step.closed.empty(); });
}

Verdict verdictOf(Change change, Verdict before, Verdict after) {
  if (change == Change::NotCompared) return Verdict::NotJudged;
  if (change == Change::Changed || before == Verdict::Fail || after == Verdict::Fail) return Verdict::Fail;
  const bool bothPass = before == Verdict::Pass && after == Verdict::Pass;
  return verdictOf(change) == Verdict::Pass && bothPass ? Verdict::Pass : Verdict::CannotTell;
}

}  // namespace

Verdict verdictOf(Change change) {
  switch (change) {
    case Change::Unchanged:
    case Change::Harmless:
      return Verdict::Pass;
    case Change::Changed:
      return Verdict::Fail;
    case Change::CannotTell:
      return Verdict::CannotTell;
    case Change::NotCompared:
      return Verdict::NotJudged;
  }
  return Verdict::NotJudged;
}

Change changeOf(const std::optional<Difference>& difference) {
  return difference ? difference->change : Change::NotCompared;
}

Comparison compare(const Channel& channel, const ChannelEvaluation& evaluation, std::size_t before,
                   std::size_t after) {
  Comparison comparison;
  const Side first = sideOf(channel, evaluation, before), second = sideOf(channel, evaluation, after);
  comparison.configuration = setUpDifferences(first.setup, second.setup);
  comparison.reason = whyNotAtAll(first.setup, second.setup);
  if (!comparison.reason.empty()) return comparison;
  Comparing(first, second, comparison).run();
  comparison.change = worstOf(comparison, hasZeroStep(first.setup) && hasZeroStep(second.setup));
  if (comparison.change != Change::CannotTell) comparison.repeats.reset();
  comparison.verdict =
      verdictOf(comparison.change, first.evaluation.assessment.verdict, second.evaluation.assessment.verdict);
  comparison.reason = comparisonSentence(channel, evaluation, comparison, before, after);
  return comparison;
}

}  // namespace core
