// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/settling.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <complex>
#include <numbers>
#include <vector>

#include "core/units/language.h"

namespace core {
namespace {

// Long double, since the terms of a Bessel filter of order 8 are a hundred times their sum.
using Real = long double;
using Complex = std::complex<Real>;
using Poles = std::vector<Complex>;

constexpr Real pi = std::numbers::pi_v<Real>;

/// On the left half of the unit circle: the gain is 1/sqrt(2) at 1 rad/s for every order (S. Butterworth,
/// "On the theory of filter amplifiers", Experimental Wireless 7 (1930); from memory).
Poles butterworthPoles(unsigned order) {
  Poles poles;
  for (unsigned k = 1; k <= order; ++k)
    poles.push_back(std::polar<Real>(1, pi * static_cast<Real>(2 * k + order - 1) / (2 * order)));
  return poles;
}

/// Coefficients, lowest first, of the reverse Bessel polynomial of this order, whose roots are the poles of
/// the filter with unit delay: (2n - k)! / (2^(n - k) k! (n - k)!) (W. E. Thomson, "Delay networks having
/// maximally flat frequency characteristics", Proc. IEE 96 (1949); from memory).
std::vector<Real> besselPolynomial(unsigned order) {
  std::vector<Real> coefficients(order + 1);
  coefficients[order] = 1;
  for (unsigned k = order; k-- > 0;)
    coefficients[k] = coefficients[k + 1] * static_cast<Real>((2 * order - k) * (k + 1)) / (2 * (order - k));
  return coefficients;
}

/// Value of the polynomial at `s`, by Horner.
Complex valueAt(const std::vector<Real>& coefficients, Complex s) {
  Complex value = 0;
  for (std::size_t k = coefficients.size(); k-- > 0;) value = value * s + coefficients[k];
  return value;
}

/// All roots of a polynomial with leading coefficient 1 at once, by Durand and Kerner. The roots of Bessel
/// polynomials are simple and far apart, where it converges quadratically: some 20 rounds do.
Poles rootsOf(const std::vector<Real>& coefficients) {
  const std::size_t order = coefficients.size() - 1;
  Poles roots;
  const Real radius = std::pow(coefficients[0], 1 / static_cast<Real>(order));
  for (std::size_t k = 0; k < order; ++k)
    roots.push_back(std::polar<Real>(
        radius, static_cast<Real>(0.4) + 2 * pi * static_cast<Real>(k) / static_cast<Real>(order)));
  for (int round = 0; round < 200; ++round) {
    Real moved = 0;
    for (std::size_t k = 0; k < order; ++k) {
      Complex others = 1;
      for (std::size_t j = 0; j < order; ++j)
        if (j != k) others *= roots[k] - roots[j];
      const Complex change = valueAt(coefficients, roots[k]) / others;
      roots[k] -= change;
      moved = std::max(moved, std::abs(change));
    }
    if (moved < radius * static_cast<Real>(1e-18)) break;
  }
  return roots;
}

/// |H(jw)|^2 of the filter with these poles and gain 1 at zero.
Real powerGain(const Poles& poles, Real frequency) {
  Real gain = 1;
  for (const Complex& pole : poles) gain *= std::norm(pole) / std::norm(Complex(0, frequency) - pole);
  return gain;
}

/// `poles` on another scale of frequency, so that the gain is 1/sqrt(2) at 1 rad/s. The gain must fall.
Poles normalised(Poles poles) {
  Real below = 0, above = 1;
  while (powerGain(poles, above) > Real(0.5)) above *= 2;
  for (int halving = 0; halving < 100; ++halving) {
    const Real middle = (below + above) / 2;
    (powerGain(poles, middle) > Real(0.5) ? below : above) = middle;
  }
  for (Complex& pole : poles) pole /= above;
  return poles;
}

/// What is still missing after a unit step: output - 1 = sum of c e^(p t) over the poles p, where c is the
/// residue of H(s)/s at p.
class Remainder {
 public:
  explicit Remainder(const Poles& poles) : m_poles(poles) {
    for (std::size_t k = 0; k < poles.size(); ++k) {
      Complex c = -1;
      for (std::size_t j = 0; j < poles.size(); ++j)
        if (j != k) c *= -poles[j] / (poles[k] - poles[j]);
      m_weights.push_back(c);
    }
  }

  Real at(Real time) const {
    Real sum = 0;
    for (std::size_t k = 0; k < m_poles.size(); ++k)
      sum += std::real(m_weights[k] * std::exp(m_poles[k] * time));
    return sum;
  }
  Real slopeAt(Real time) const {
    Real sum = 0;
    for (std::size_t k = 0; k < m_poles.size(); ++k)
      sum += std::real(m_weights[k] * m_poles[k] * std::exp(m_poles[k] * time));
    return sum;
  }
  /// Never below |at|, and falling.
  Real boundAt(Real time) const {
    Real sum = 0;
    for (std::size_t k = 0; k < m_poles.size(); ++k)
      sum += std::abs(m_weights[k]) * std::exp(m_poles[k].real() * time);
    return sum;
  }
  /// Of the fastest oscillation or decay.
  Real greatestRate() const {
    Real rate = 0;
    for (const Complex& pole : m_poles) rate = std::max(rate, std::abs(pole));
    return rate;
  }

 private:
  Poles m_poles;
  std::vector<Complex> m_weights;
};

/// Where `isEarly` turns false between `early` and `late`.
template <class IsEarly>
Real turnBetween(Real early, Real late, const IsEarly& isEarly) {
  for (int halving = 0; halving < 80; ++halving) {
    const Real middle = (early + late) / 2;
    (isEarly(middle) ? early : late) = middle;
  }
  return late;
}

/// Last time at which |remainder| is `share`. It is walked back from a time after which the bound rules out
/// any more, in strides so short that each holds one peak at most; a peak is looked at by itself, so that
/// none between two strides is missed.
Real lastTimeAbove(const Remainder& remainder, Real share) {
  const auto above = [&](Real time) { return std::abs(remainder.at(time)) > share; };
  const Real stride = 1 / (16 * remainder.greatestRate());
  Real late = stride;
  while (remainder.boundAt(late) > share) late *= 2;
  late = turnBetween(late / 2, late, [&](Real time) { return remainder.boundAt(time) > share; });
  while (late > 0) {
    const Real early = std::max<Real>(late - stride, 0);
    const Real slope = remainder.slopeAt(early);
    if (slope * remainder.slopeAt(late) < 0) {
      const Real peak =
          turnBetween(early, late, [&](Real time) { return remainder.slopeAt(time) * slope > 0; });
      if (above(peak)) return turnBetween(peak, late, above);
    }
    if (above(early)) return turnBetween(early, late, above);
    late = early;
  }
  return 0;
}

bool isPositive(double value) { return std::isfinite(value) && value > 0; }

Result<Duration> poleSettling(const Filter& filter, double share) {
  if (filter.order < 1 || filter.order > greatestFilterOrder)
    return Error{say("filter order"),
                 say("an order of {1} is not known here", {std::to_string(filter.order)}),
                 say("Enter 1 to {1}", {std::to_string(greatestFilterOrder)})};
  if (!isPositive(filter.cutoff.base()))
    return Error{say("filter cutoff"), say("the cutoff frequency must be greater than zero"), ""};
  const Poles poles = filter.kind == FilterKind::Butterworth
                          ? butterworthPoles(filter.order)
                          : normalised(rootsOf(besselPolynomial(filter.order)));
  const Real time = lastTimeAbove(Remainder(poles), static_cast<Real>(share));
  return Duration(static_cast<double>(time / (2 * pi)) / filter.cutoff.base());
}

/// Rounded up to a whole number of `parts` a second. What is a billionth above one counts as that one: it
/// comes from binary fractions, not from the instrument.
double roundedUp(double seconds, double parts) { return std::ceil(seconds * parts * (1 - 1e-9)) / parts; }

constexpr double hundredths = 100;
constexpr double leastHold_s = 1;
constexpr double leastSamples = 20;
constexpr double longestStep_s = 86400;

}  // namespace

Result<Duration> settlingTime(const Filter& filter, double share) {
  if (!(share >= leastSettledTo && share <= greatestSettledTo))
    return Error{say("settled to"), say("a level settles to between 0.0001 % and 20 % of a step"), ""};
  switch (filter.kind) {
    case FilterKind::None:
      return Duration(0);
    case FilterKind::MovingAverage:
      if (!isPositive(filter.window.base()))
        return Error{say("filter window"), say("the window of the moving average must be longer than zero"),
                     ""};
      return (1 - share) * filter.window;
    case FilterKind::Butterworth:
    case FilterKind::Bessel:
      return poleSettling(filter, share);
  }
  assert(false);
  return Duration(0);
}

Result<StepTimes> leastTimes(const Acquisition& acquisition) {
  const auto settling = settlingTime(acquisition.filter, acquisition.settledTo);
  if (!settling) return settling.error();
  if (acquisition.sampleRate && !isPositive(acquisition.sampleRate->base()))
    return Error{say("sample rate"), say("the sample rate must be greater than zero"), ""};
  if (acquisition.mains && !isPositive(acquisition.mains->base()))
    return Error{say("mains frequency"), say("the mains frequency must be greater than zero"), ""};
  const double interval_s = acquisition.sampleRate ? 1 / acquisition.sampleRate->base() : 0;
  const double settle_s = settling->base() + interval_s;
  const double hold_s = std::max(leastHold_s, leastSamples * interval_s);
  const double period_s = acquisition.mains ? 1 / acquisition.mains->base() : 0;
  if (!(settle_s + hold_s + period_s <= longestStep_s))
    return Error{say("acquisition"),
                 say("with this sample rate, filter and mains a step would last longer than a day"),
                 say("Check their units")};
  const double holdParts = acquisition.mains ? acquisition.mains->base() : hundredths;
  return StepTimes{Duration(roundedUp(settle_s, hundredths)), Duration(roundedUp(hold_s, holdParts))};
}

}  // namespace core
