// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/search/shunt_response.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <functional>
#include <limits>
#include <numbers>

#include "core/circuit/hookup.h"
#include "core/circuit/indication.h"
#include "core/stock/stock.h"
#include "core/units/language.h"
#include "core/units/notation.h"

namespace core {
namespace {

constexpr double unbounded = std::numeric_limits<double>::infinity();
/// Of outputs: potentials of 1 V carry some 1e-16 each, and a ratio of two of them a few of these.
constexpr double outputRounding = 2e-15;
/// Levels up to this many times the greatest one can be nearer to it than zero is, readings included, which
/// bend a little more or less than what they simulate.
constexpr double reach = 2.2;

bool admissible(const Bridge& bridge, Stimulus stimulus) {
  for (const std::size_t arm : {0, 1, 2, 3})
    if (!(armUnder(bridge, arm, stimulus).base() > 0)) return false;
  return true;
}

/// Output at a stimulus, all shunts open; none when an arm would have no resistance left.
std::optional<Output> outputAt(BridgeCircuit& circuit, const Bridge& bridge, Stimulus stimulus) {
  if (!admissible(bridge, stimulus)) return std::nullopt;
  circuit.openAll();
  circuit.setStimulus(stimulus);
  const auto output = circuit.solveOutput();
  if (!output) return std::nullopt;
  return *output;
}

Error withoutEffect(const Bridge& bridge, const ShuntPlace& place) {
  return {say("shunt place"),
          say("a shunt from {1} to {2} does not change the output",
              {pointName(bridge, place.a), pointName(bridge, place.b)}),
          say("Choose two nodes with a gauge or a completion resistor between them")};
}

/// Everything that a curve is made from.
struct Sampled {
  const Setup& setup;
  BridgeCircuit circuit;
  ShuntResponse response;
  ShuntCurve::Measure measure;
  double sign = 1;

  /// Magnitude of what u gives; none where no stimulus or no reading answers to it.
  std::optional<double> at(double bent) {
    const Output output = response.zero + Output(response.slope * bent);
    if (measure == ShuntCurve::Measure::Reading) {
      const auto shown = indicationOf(setup.bridge, setup.instrument, output, response.zero);
      if (!shown || !std::isfinite(shown->value.base())) return std::nullopt;
      return std::abs(shown->value.base());
    }
    const auto stimulus = circuit.stimulusFor(output);
    if (!stimulus || !std::isfinite(*stimulus)) return std::nullopt;
    return sign * simulatedInUnit(setup.bridge, *stimulus);
  }
};

/// The greatest u that a curve must cover: where the value is `reach` times the greatest level, else what a
/// direct short gives, else as far as there is an answer.
double greatestBent(Sampled& sampled, Stimulus greatest) {
  const ShuntResponse& response = sampled.response;
  // Eight of the smallest resistors in parallel are as good as a short.
  const double shorted = response.bent(8 / leastShunt.base());
  if (const auto output = outputAt(sampled.circuit, sampled.setup.bridge, reach * greatest)) {
    const double bent = (*output - response.zero).base() / response.slope;
    if (bent > 0 && bent < shorted && sampled.at(bent)) return bent;
  }
  if (sampled.at(shorted)) return shorted;
  double good = 0, bad = shorted;
  for (int round = 0; round < 60; ++round) {
    const double middle = (good + bad) / 2;
    (sampled.at(middle) ? good : bad) = middle;
  }
  return good * (1 - 1e-6);  // the inverse is without a derivative where it ends
}

double clenshaw(const std::vector<double>& series, double s) {
  double next = 0, afterNext = 0;
  for (std::size_t k = series.size(); k-- > 1;) {
    const double now = series[k] + 2 * s * next - afterNext;
    afterNext = next;
    next = now;
  }
  return series.empty() ? 0 : series[0] + s * next - afterNext;
}

/// Chebyshev coefficients through `count` nodes of the first kind on -1 to 1.
std::vector<double> interpolated(std::size_t count, const std::function<double(double)>& f) {
  const auto n = static_cast<double>(count);
  std::vector<double> values(count), series(count);
  const auto angle = [n](std::size_t j) { return std::numbers::pi * (static_cast<double>(j) + 0.5) / n; };
  for (std::size_t j = 0; j < count; ++j) values[j] = f(std::cos(angle(j)));
  for (std::size_t k = 0; k < count; ++k) {
    double sum = 0;
    for (std::size_t j = 0; j < count; ++j) sum += values[j] * std::cos(static_cast<double>(k) * angle(j));
    series[k] = sum * (k == 0 ? 1 : 2) / n;
  }
  return series;
}

/// Leaves out the last coefficients as long as all of them together stay below `least`.
void trim(std::vector<double>& series, double least) {
  double left = 0;
  while (!series.empty() && (left += std::abs(series.back())) < least) series.pop_back();
}

/// A series that agrees with `f` within `tolerance`, also between its nodes; the closest of those tried when
/// roundings do not let it come quite that near, none when all are far off.
std::optional<std::vector<double>> seriesFor(const std::function<double(double)>& f, double tolerance) {
  std::vector<double> best;
  double least = unbounded;
  for (const std::size_t count : {4, 8, 16, 32, 64}) {
    std::vector<double> series = interpolated(count, f);
    double worst = 0;
    const std::size_t tests = 2 * count + 3;
    for (std::size_t j = 0; j <= tests; ++j) {
      const double s = -1 + 2 * static_cast<double>(j) / static_cast<double>(tests);
      worst = std::max(worst, std::abs(clenshaw(series, s) - f(s)));
    }
    if (worst < least) least = worst, best = std::move(series);
    if (least <= tolerance) break;
  }
  if (!(least <= 100 * tolerance)) return std::nullopt;
  trim(best, tolerance / 2);
  return best;
}

Error wrongWay(const Bridge& bridge, const ShuntPlace& place, double greatest) {
  const bool positive = greatest > 0;
  return {
      say("shunt place"),
      say(positive
              ? sayLater("a shunt from {1} to {2} gives negative levels, and positive ones are wanted there")
              : sayLater("a shunt from {1} to {2} gives positive levels, and negative ones are wanted there"),
          {pointName(bridge, place.a), pointName(bridge, place.b)}),
      say("Choose another place, such as arm {1} end to end",
          {positive == (gaugeSign(bridge) > 0) ? "2" : "1"})};
}

}  // namespace

std::optional<double> ShuntResponse::siemensFor(Output output) const {
  const double u = (output - zero).base() / slope;
  const double left = 1 - bend * u;
  if (!(u > 0) || !(left > 0)) return std::nullopt;
  return u / left;
}

Result<ShuntResponse> shuntResponse(const Setup& setup, const ShuntPlace& place) {
  // Far apart and of the size of an arm, so that the changes of output are large and their roundings not.
  const double arm = setup.bridge.arms[0].base();
  const std::array<double, 3> ohms{arm, arm / 4, 20 * arm};
  std::vector<ShuntBranch> branches;
  for (const double ohm : ohms) branches.push_back({say("shunt place"), place.a, place.b, Resistance(ohm)});
  auto circuit = BridgeCircuit::make(setup.bridge, setup.instrument, branches);
  if (!circuit) return circuit.error();
  const auto zero = circuit->solveOutput();
  if (!zero) return zero.error();
  std::array<double, 3> change{};
  for (std::size_t k = 0; k < ohms.size(); ++k) {
    circuit->openAll();
    if (auto closed = circuit->close(k); !closed) return closed.error();
    const auto output = circuit->solveOutput();
    if (!output) return output.error();
    change[k] = (*output - *zero).base();
  }
  if (std::abs(change[1]) < 1e-12) return withoutEffect(setup.bridge, place);
  // change_k (1 + bend G_k) = slope G_k for k = 0, 1: two linear equations.
  const double g0 = 1 / ohms[0], g1 = 1 / ohms[1];
  ShuntResponse response{*zero, 0, 0};
  response.bend = (change[0] * g1 - change[1] * g0) / (g0 * g1 * (change[1] - change[0]));
  response.slope = change[0] * (1 + response.bend * g0) / g0;
  const double third = response.slope * response.bent(1 / ohms[2]);
  // Potentials carry 1e-16; the two differences above take off about two digits.
  if (!(std::abs(third - change[2]) <= 1e-12) || !(response.bend >= -1e-9 * arm))
    return Error{say("shunt place"), say("the output cannot be reckoned there to enough digits"),
                 say("Look for resistances that differ by very many powers of ten")};
  response.bend = std::max(response.bend, 0.0);
  return response;
}

Result<ShuntCurve> ShuntCurve::make(const Setup& setup, const ShuntPlace& place, double greatest,
                                    Measure measure) {
  const auto response = shuntResponse(setup, place);
  if (!response) return response.error();
  auto circuit = BridgeCircuit::make(setup.bridge, setup.instrument, {});
  if (!circuit) return circuit.error();
  if (auto solved = circuit->solveOutput(); !solved) return solved.error();
  const double sign = greatest > 0 ? 1 : -1;
  if (!(sign * response->slope * circuit->outputSlope() > 0)) return wrongWay(setup.bridge, place, greatest);
  Sampled sampled{setup, *std::move(circuit), *response, measure, sign};
  const double last = greatestBent(sampled, stimulusOf(setup.bridge, greatest));
  if (!(last > 0)) return withoutEffect(setup.bridge, place);

  const double middle = *sampled.at(last / 2), end = *sampled.at(last);
  double curl = (middle * last - end * last / 2) / (last / 2 * last * (end - middle));
  if (!(1 + curl * last > 0.01) || !std::isfinite(curl)) curl = 0;  // a pole is no help
  ShuntCurve curve;
  curve.m_perSiemens = end * (1 + curl * last) / last;
  curve.m_bend = response->bend + curl;
  curve.m_responseBend = response->bend;
  curve.m_perBent = 2 / last;
  const double most = 1 - response->bend * last;
  curve.m_greatest = most > 0 ? last / most : unbounded;
  // A rounding of the output is this much of the value.
  const double rounding = outputRounding * end / std::abs(response->slope * last);
  const auto series = seriesFor(
      [&](double s) {
        const double bent = std::clamp((s + 1) / curve.m_perBent, 0.0, last);
        return sampled.at(bent).value_or(end) - curve.m_perSiemens * bent / (1 + curl * bent);
      },
      5 * rounding + 1e-14 * end);
  if (!series)
    return Error{levelText(setup.bridge, greatest),
                 say("what shunts simulate up to there cannot be followed closely"),
                 say("Choose smaller levels")};
  curve.m_series = *series;
  return curve;
}

double ShuntCurve::at(double siemens) const {
  double value = 0;
  at({&siemens, 1}, &value);
  return value;
}

void ShuntCurve::at(std::span<const double> siemens, double* values) const {
  const std::size_t count = siemens.size();
  if (m_series.empty()) {
    for (std::size_t j = 0; j < count; ++j)
      values[j] = siemens[j] > m_greatest ? unbounded : m_perSiemens * siemens[j] / (1 + m_bend * siemens[j]);
    return;
  }
  for (std::size_t j = 0; j < count; ++j) {
    const double g = siemens[j];
    const double s = m_perBent * g / (1 + m_responseBend * g) - 1;
    values[j] = g > m_greatest ? unbounded : m_perSiemens * g / (1 + m_bend * g) + clenshaw(m_series, s);
  }
}

double ShuntCurve::siemensFor(double value) const {
  double low = 0, high = m_greatest;
  if (!(at(high) > value)) return high;
  if (!(value > 0)) return 0;
  // Halving to the last digit: the value rises all the way, and there are only so many doubles.
  for (int round = 0; round < 200; ++round) {
    const double middle = low + (high - low) / 2;
    if (!(middle > low) || !(middle < high)) break;
    (at(middle) < value ? low : high) = middle;
  }
  return high;
}

}  // namespace core
