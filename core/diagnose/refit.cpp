// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diagnose/refit.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/units/language.h"

namespace core {
namespace {

constexpr int greatestIterations = 20;
constexpr int greatestHalvings = 12;
constexpr int covarianceRounds = 4;

double square(const std::vector<double>& values) {
  double sum = 0;
  for (const double value : values) sum += value * value;
  return sum;
}

double product(const std::vector<double>& a, const std::vector<double>& b) {
  double sum = 0;
  for (std::size_t k = 0; k < a.size(); ++k) sum += a[k] * b[k];
  return sum;
}

/// A fault's size as the variable in which the readings are nearly linear.
class SizeScale {
 public:
  SizeScale(const DiagnosisGround& ground, const Fault& fault) : m_kind(fault.kind) {
    const Bridge& bridge = ground.setup.bridge;
    if (m_kind == CauseKind::Leads) {
      m_low = -meanLead(bridge);
      m_high = 1000;
    } else if (m_kind == CauseKind::LeadContact) {
      m_low = 0;
      m_high = 1000;
    } else if (m_kind == CauseKind::Leak) {
      m_unit = 1 / bridge.arms[fault.index].base();
      m_low = 0;
      m_high = 100;
    } else if (m_kind == CauseKind::ShuntValue) {
      m_low = 1e-4;
      m_high = 1e4;
    } else if (isLogarithmic()) {
      m_low = -7;
      m_high = 7;
    } else if (m_kind == CauseKind::Clipping || m_kind == CauseKind::Scale) {
      m_low = 0;  // a negative scale is polarity, and another fault
    }
  }

  double variable(double size) const {
    if (m_kind == CauseKind::ShuntValue) return 1 / size;
    return isLogarithmic() ? std::log(size) : size / m_unit;
  }
  double size(double variable) const {
    if (m_kind == CauseKind::ShuntValue) return 1 / variable;
    return isLogarithmic() ? std::exp(variable) : variable * m_unit;
  }
  /// |d size / d variable|.
  double slope(double variable) const {
    if (m_kind == CauseKind::ShuntValue) return 1 / (variable * variable);
    return isLogarithmic() ? std::exp(variable) : m_unit;
  }
  double within(double variable) const { return std::clamp(variable, m_low, m_high); }
  /// For a difference; away from a bound.
  double increment(double variable) const {
    const double h = 1e-6 * std::max(1.0, std::abs(variable));
    return variable + h > m_high ? -h : h;
  }

 private:
  bool isLogarithmic() const { return m_kind == CauseKind::ArmValue || m_kind == CauseKind::CompletionValue; }
  static double meanLead(const Bridge& bridge) {
    const std::vector<Wire> wires = wiresOf(bridge);
    double sum = 0;
    for (const Wire& wire : wires) sum += leadResistance(bridge, wire.role).base();
    return wires.empty() ? 0 : sum / static_cast<double>(wires.size());
  }

  CauseKind m_kind;
  double m_unit = 1;
  double m_low = -HUGE_VAL;
  double m_high = HUGE_VAL;
};

/// One kind of fault held against readings.
class Fitting {
 public:
  Fitting(const DiagnosisGround& ground, const Fault& fault, const std::vector<double>& measured)
      : m_ground(ground), m_measured(measured), m_scale(ground, fault), m_weighing(ground.healthy) {
    m_best.fault = fault;
    m_best.parameters = hasFreeSize(fault.kind) ? 2 : 1;
  }

  std::optional<Refit> run(double startSize) {
    m_variable = m_scale.within(m_scale.variable(startSize));
    if (!look(m_variable)) return std::nullopt;
    for (int round = 0; round < covarianceRounds; ++round) {
      if (hasFreeSize(m_best.fault.kind)) descend();
      if (!adaptCovariance()) break;
    }
    finish();
    return m_best;
  }

 private:
  struct State {
    std::vector<double> changes, residual;
    double chiSquare = 0, offset = 0;
  };

  std::optional<State> at(double variable) const {
    Fault fault = m_best.fault;
    if (hasFreeSize(fault.kind)) fault.size = m_scale.size(variable);
    auto changes = changesUnder(m_ground.setup, m_ground.check, m_ground.points, fault);
    if (!changes) return std::nullopt;
    State state;
    state.changes = *std::move(changes);
    std::vector<double> off(m_measured.size());
    for (std::size_t k = 0; k < off.size(); ++k) off[k] = m_measured[k] - state.changes[k];
    state.residual = m_weighing.reduced(std::move(off), &state.offset);
    state.chiSquare = square(state.residual);
    if (!std::isfinite(state.chiSquare)) return std::nullopt;
    return state;
  }

  bool look(double variable) {
    auto state = at(variable);
    if (!state) return false;
    m_state = *std::move(state);
    m_variable = variable;
    return true;
  }

  /// d whitened change / d variable with the offset taken out; empty when it cannot be had.
  std::vector<double> slopes() const {
    const double h = m_scale.increment(m_variable);
    const auto beside = at(m_variable + h);
    if (!beside) return {};
    std::vector<double> slope(m_state.residual.size());
    for (std::size_t k = 0; k < slope.size(); ++k) slope[k] = (m_state.residual[k] - beside->residual[k]) / h;
    return slope;
  }

  void descend() {
    for (int k = 0; k < greatestIterations; ++k) {
      const std::vector<double> slope = slopes();
      const double steepness = square(slope);
      if (slope.empty() || !(steepness > 0)) return;
      const double step = product(slope, m_state.residual) / steepness;
      const double before = m_state.chiSquare;
      if (!improve(step)) return;
      if (before - m_state.chiSquare < 1e-6 * (1 + m_state.chiSquare)) return;
    }
  }

  bool improve(double step) {
    const double from = m_variable, before = m_state.chiSquare;
    const State kept = m_state;
    for (int k = 0; k < greatestHalvings; ++k, step /= 2) {
      const double to = m_scale.within(from + step);
      if (to == from) return false;
      if (look(to) && m_state.chiSquare < before) return true;
    }
    m_variable = from;
    m_state = kept;
    return false;
  }

  /// Weighs by the covariance that the fault gives; false when nothing changes any more.
  bool adaptCovariance() {
    const std::vector<double>& weighedAt = m_weighedAt.empty() ? m_ground.points.expected : m_weighedAt;
    double moved = 0;
    for (std::size_t k = 0; k < weighedAt.size(); ++k)
      moved = std::max(moved, std::abs(m_state.changes[k] - weighedAt[k]) /
                                  std::max(std::abs(m_state.changes[k]), std::abs(weighedAt[k])));
    if (!(moved > 0.02) && (!m_weighedAt.empty() || hasFreeSize(m_best.fault.kind))) return false;
    Fault fault = m_best.fault;
    if (hasFreeSize(fault.kind)) fault.size = m_scale.size(m_variable);
    const auto covariance = covarianceUnder(m_ground, fault, m_state.changes);
    if (!covariance) return false;
    auto whitening = Whitening::ofCovariance(*covariance, m_measured.size(), say("the covariance"));
    if (!whitening) return false;
    m_weighing = FreeOffset(*std::move(whitening));
    m_weighedAt = m_state.changes;
    return look(m_variable);
  }

  void finish() {
    m_best.chiSquare = m_state.chiSquare;
    m_best.logDeterminant = m_weighing.logDeterminant() - m_ground.healthy.logDeterminant();
    m_best.offset = m_state.offset;
    m_best.changes = m_state.changes;
    for (double& change : m_best.changes) change += m_state.offset;
    if (!hasFreeSize(m_best.fault.kind)) return;
    m_best.fault.size = m_scale.size(m_variable);
    const double steepness = square(slopes());
    if (steepness > 0) m_best.standard = m_scale.slope(m_variable) / std::sqrt(steepness);
  }

  const DiagnosisGround& m_ground;
  const std::vector<double>& m_measured;
  SizeScale m_scale;
  FreeOffset m_weighing;
  std::vector<double> m_weighedAt;  ///< changes that the covariance was made for; empty: those expected
  double m_variable = 0;
  State m_state;
  Refit m_best;
};

/// Where readings would stop, between each two of the greatest magnitudes that the side shows.
std::vector<double> clippingStarts(const DiagnosisGround& ground, std::size_t side) {
  const CheckPoints& points = ground.points;
  const double zero = points.zero ? ground.check.readings[points.steps[*points.zero]]->mean.base() : 0;
  std::vector<double> shown;
  for (const double expected : points.expected) {
    const double value = zero + expected;
    if (side != 2 && value > 0) shown.push_back(value);
    if (side != 1 && value < 0) shown.push_back(-value);
  }
  std::sort(shown.rbegin(), shown.rend());
  std::vector<double> starts;
  for (std::size_t k = 0; k < shown.size() && starts.size() < 4; ++k) {
    const double next = k + 1 < shown.size() ? shown[k + 1] : 0;
    if (next < 0.999 * shown[k]) starts.push_back((shown[k] + next) / 2);
  }
  return starts;
}

std::vector<double> startsOf(const DiagnosisGround& ground, const Fault& fault) {
  switch (fault.kind) {
    case CauseKind::Leads:
    case CauseKind::LeadContact:
      return {1, 20};
    case CauseKind::ShuntValue:
      return {1, 0.1, 10};
    case CauseKind::CompletionValue: {
      const double stated = ground.setup.bridge.arms[fault.index].base();
      return {120 / stated, 350 / stated, 1000 / stated, 1};
    }
    case CauseKind::ArmValue:
      return {1, 0.3, 3};
    case CauseKind::Leak:
      return {1e-3 / ground.setup.bridge.arms[fault.index].base(),
              0.1 / ground.setup.bridge.arms[fault.index].base()};
    case CauseKind::Clipping:
      return clippingStarts(ground, fault.index);
    default:
      return {fault.size};
  }
}

/// The last digit that some reading shows, in the readings' unit; none of readings that show more digits than
/// any display.
std::optional<double> lastDigit(const Check& check, const CheckPoints& points) {
  constexpr int mostPlaces = 6;
  for (int places = 0; places <= mostPlaces; ++places) {
    const double digits = std::pow(10.0, places);
    const bool shown = std::all_of(points.steps.begin(), points.steps.end(), [&](std::size_t step) {
      const double value = check.readings[step]->mean.base() * digits;
      // What a decimal fraction may be off its double.
      return std::abs(value - std::round(value)) <= 4e-16 * std::abs(value) + 1e-9;
    });
    if (shown) return 1 / digits;
  }
  return std::nullopt;
}

/// Readings of which nothing is stated are taken as good to one unit of their last digit, spread evenly
/// (common practice, no source). That digit when it was used.
std::optional<double> weighByLastDigit(const Check& check, CheckPoints& points) {
  const auto isBare = [](double variance) { return variance == 0; };
  if (std::none_of(points.ownVariance.begin(), points.ownVariance.end(), isBare)) return std::nullopt;
  const std::optional<double> digit = lastDigit(check, points);
  if (!digit) return std::nullopt;
  for (std::size_t k = 0; k < points.size(); ++k) {
    if (!isBare(points.ownVariance[k])) continue;
    points.ownVariance[k] = *digit * *digit / 3;
    points.covariance[k * points.size() + k] += points.ownVariance[k];
  }
  return digit;
}

}  // namespace

Result<DiagnosisGround> diagnosisGround(const Setup& setup, const SetupPrediction& prediction,
                                        const Budget& budget, const Check& check) {
  CheckPoints points = checkPoints(setup, prediction, budget, check);
  const bool closes = std::any_of(points.expected.begin(), points.expected.end(),
                                  [](double expected) { return expected != 0; });
  if (points.size() < 3 || !closes)
    return Error{say("readings"),
                 say("fewer than three steps with a reading, or none with a shunt closed, say too little "
                     "about causes"),
                 say("Take the readings of the whole sequence")};
  if (points.covariance.empty())
    return Error{say("uncertainty"), say("a step has no uncertainty, so nothing tells large from small"),
                 say("Mend the statement that the Uncertainties table marks")};
  const std::optional<double> digit = weighByLastDigit(check, points);
  auto whitening = Whitening::ofCovariance(points.covariance, points.size(), say("the covariance"));
  if (!whitening)
    return Error{say("uncertainty"), say("readings without any uncertainty of their own cannot be weighed"),
                 say("State the rounding of a reading in the last rows of the Uncertainties page")};
  return DiagnosisGround{setup, prediction, check, std::move(points), FreeOffset(*std::move(whitening)),
                         digit};
}

std::optional<Refit> refit(const DiagnosisGround& ground, const Fault& start,
                           const std::vector<double>& measured) {
  std::optional<Refit> best;
  for (const double size : startsOf(ground, start)) {
    auto fitted = Fitting(ground, start, measured).run(size);
    if (!fitted) continue;
    const auto worth = [](const Refit& fit) { return fit.chiSquare + fit.logDeterminant; };
    const auto distance = [](const Refit& fit) { return std::abs(fit.fault.size - 1); };
    const bool isSame = best && std::abs(worth(*fitted) - worth(*best)) < 1;
    if (!best || (isSame ? size == 1 && distance(*fitted) < 0.1 : worth(*fitted) < worth(*best)))
      best = std::move(fitted);
  }
  return best;
}

Refit refitHealthy(const DiagnosisGround& ground, const std::vector<double>& measured) {
  Refit healthy;
  healthy.fault = {CauseKind::Scale, 0, 0, 1};
  std::vector<double> off(measured.size());
  for (std::size_t k = 0; k < off.size(); ++k) off[k] = measured[k] - ground.points.expected[k];
  healthy.chiSquare = square(ground.healthy.reduced(std::move(off), &healthy.offset));
  healthy.changes = ground.points.expected;
  for (double& change : healthy.changes) change += healthy.offset;
  return healthy;
}

}  // namespace core
