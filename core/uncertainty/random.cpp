// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/uncertainty/random.h"

#include <algorithm>
#include <bit>
#include <cassert>
#include <cmath>

#include "core/uncertainty/portable.h"
#include "core/uncertainty/vector_units.h"

namespace core {

namespace {

/// c[0] + c[1] x + c[2] x^2 ...
template <std::size_t n>
inline double polynomial(const double (&c)[n], double x) {
  double sum = c[n - 1];
  for (std::size_t k = n - 1; k-- > 0;) sum = sum * x + c[k];
  return sum;
}

// AS 241, routine PPND16. Names and figures as published (from memory, checked against SciPy).
constexpr double a[] = {3.3871328727963666080e0, 1.3314166789178437745e2, 1.9715909503065514427e3,
                        1.3731693765509461125e4, 4.5921953931549871457e4, 6.7265770927008700853e4,
                        3.3430575583588128105e4, 2.5090809287301226727e3};
constexpr double b[] = {1.0,
                        4.2313330701600911252e1,
                        6.8718700749205790830e2,
                        5.3941960214247511077e3,
                        2.1213794301586595867e4,
                        3.9307895800092710610e4,
                        2.8729085735721942674e4,
                        5.2264952788528545610e3};
constexpr double c[] = {1.42343711074968357734e0,  4.63033784615654529590e0, 5.76949722146069140550e0,
                        3.64784832476320460504e0,  1.27045825245236838258e0, 2.41780725177450611770e-1,
                        2.27238449892691845833e-2, 7.74545014278341407640e-4};
constexpr double d[] = {1.0,
                        2.05319162663775882187e0,
                        1.67638483018380384940e0,
                        6.89767334985100004550e-1,
                        1.48103976427480074590e-1,
                        1.51986665636164571966e-2,
                        5.47593808499534494600e-4,
                        1.05075007164441684324e-9};
constexpr double e[] = {6.65790464350110377720e0,  5.46378491116411436990e0,  1.78482653991729133580e0,
                        2.96560571828504891230e-1, 2.65321895265761230930e-2, 1.24266094738807843860e-3,
                        2.71155556874348757815e-5, 2.01033439929228813265e-7};
constexpr double f[] = {1.0,
                        5.99832206555887937690e-1,
                        1.36929880922735805310e-1,
                        1.48753612908506148525e-2,
                        7.86869131145613259100e-4,
                        1.84631831751005468180e-5,
                        1.42151175831644588870e-7,
                        2.04426310338993978564e-15};

/// Quantile of F = 1/2 + q. `tail` is the lesser of F and 1 - F, given apart because q has lost its digits.
/// All three formulas are worked out and one is taken, so that lanes need not part.
inline double quantile(double q, double tail) {
  const double inner = 0.180625 - q * q;
  const double middle = q * polynomial(a, inner) / polynomial(b, inner);
  const double r = std::sqrt(-portable::log(tail));
  const double near = polynomial(c, r - 1.6) / polynomial(d, r - 1.6);
  const double far = polynomial(e, r - 5) / polynomial(f, r - 5);
  const double outer = std::copysign(r <= 5 ? near : far, q);
  return std::abs(q) <= 0.425 ? middle : outer;
}

// W. J. Cody's three rational approximations, as arranged for the normal distribution in his algorithm 715
// (ANORM, 1993). Figures as published (from memory, checked against SciPy), lowest power first.
constexpr double central1[] = {18154.981253343561249, 1067.6894854603709582, 161.02823106855587881,
                               2.2352520354606839287, 0.065682337918207449113};
constexpr double central2[] = {45507.789335026729956, 10260.932208618978205, 976.09855173777669322,
                               47.20258190468824187, 1.0};
constexpr double near1[] = {9842.7148383839780218, 11602.651437647350124,  6848.1904505362823326,
                            2494.5375852903726711, 597.27027639480026226,  93.506656132177855979,
                            8.8831497943883759412, 0.39894151208813466764, 1.0765576773720192317e-8};
constexpr double near2[] = {19685.429676859990727, 38912.003286093271411, 34900.952721145977266,
                            18615.571640885098091, 6485.558298266760755,  1519.377599407554805,
                            235.38790178262499861, 22.266688044328115691, 1.0};
constexpr double far1[] = {2.9112874951168792e-5, 0.001421619193227893466, 0.022235277870649807,
                           0.1274011611602473639, 0.21589853405795699,     0.02307344176494017303};
constexpr double far2[] = {7.29751555083966205e-5, 0.00378239633202758244, 0.0659881378689285515,
                           0.468238212480865118,   1.28426009614491121,    1.0};
constexpr double rootTwoPiReciprocal = 0.39894228040143267794;

/// e^(-x^2 / 2) with x split at a sixteenth, so that its square is exact (Cody's device).
inline double bell(double x) {
  constexpr double toSixteenths = 0x1.8p48;
  const double head = (x + toSixteenths) - toSixteenths;
  return portable::exp(-head * head * 0.5) * portable::exp(-(x - head) * (x + head) * 0.5);
}

/// normalProbability(z) - 1/2 for |z| up to 0.66291.
inline double centralShare(double z) { return z * polynomial(central1, z * z) / polynomial(central2, z * z); }

/// normalProbability(-x) for x from 0.66291 to 37.5.
inline double upperTail(double x) {
  const double near = polynomial(near1, x) / polynomial(near2, x);
  const double s = 1 / (x * x);
  const double far = (rootTwoPiReciprocal - s * polynomial(far1, s) / polynomial(far2, s)) / x;
  return bell(x) * (x <= 5.656854249492380195 ? near : far);
}
constexpr double central = 0.66291;

constexpr std::uint32_t multiplier0 = 0xD2511F53, multiplier1 = 0xCD9E8D57;
constexpr std::uint32_t weyl0 = 0x9E3779B9, weyl1 = 0xBB67AE85;

struct Words {
  std::uint32_t w0, w1, w2, w3;
};

inline Words philoxWords(Words counter, std::uint32_t key0, std::uint32_t key1) {
#pragma GCC unroll 10
  for (int round = 0; round < 10; ++round) {
    const std::uint64_t product0 = std::uint64_t{multiplier0} * counter.w0;
    const std::uint64_t product1 = std::uint64_t{multiplier1} * counter.w2;
    counter = {
        static_cast<std::uint32_t>(product1 >> 32) ^ counter.w1 ^ key0, static_cast<std::uint32_t>(product1),
        static_cast<std::uint32_t>(product0 >> 32) ^ counter.w3 ^ key1, static_cast<std::uint32_t>(product0)};
    key0 += weyl0;
    key1 += weyl1;
  }
  return counter;
}

/// uniformOf - 1/2, exact: the 52 bits are put behind the point of a number from 1 to 2.
inline double centredOf(std::uint32_t high, std::uint32_t low) {
  const std::uint64_t bits = (std::uint64_t{high} << 20) | (low >> 12);
  return (std::bit_cast<double>(bits | 0x3ff0'0000'0000'0000U) - 1.5) + 0x1p-53;
}

}  // namespace

std::array<std::uint32_t, 4> philox(std::array<std::uint32_t, 4> counter, std::array<std::uint32_t, 2> key) {
  const Words words = philoxWords({counter[0], counter[1], counter[2], counter[3]}, key[0], key[1]);
  return {words.w0, words.w1, words.w2, words.w3};
}

double uniformOf(std::uint32_t high, std::uint32_t low) { return centredOf(high, low) + 0.5; }

double normalQuantile(double p) {
  assert(p > 0 && p < 1);
  constexpr double leastNormal = 0x1p-1022;  // what portable::log can take; its quantile is -37.52
  return quantile(p - 0.5, std::max(std::min(p, 1 - p), leastNormal));
}

double normalProbability(double z) {
  const double x = std::abs(z);
  if (x <= central) return 0.5 + centralShare(z);
  if (!(x <= 37.5)) return std::isnan(z) ? z : (z < 0 ? 0.0 : 1.0);
  return z < 0 ? upperTail(x) : 1 - upperTail(x);
}

SHUNTWRIGHT_WIDE void drawCentred(std::uint64_t seed, std::uint64_t firstTrial, std::uint32_t draw,
                                  Lanes first, Lanes second) {
  assert(firstTrial % trialLanes == 0);  // so that the low word does not overflow within the lanes
  const auto low = static_cast<std::uint32_t>(firstTrial),
             high = static_cast<std::uint32_t>(firstTrial >> 32);
  const auto key0 = static_cast<std::uint32_t>(seed), key1 = static_cast<std::uint32_t>(seed >> 32);
  double* const to1 = first.data();
  double* const to2 = second.data();
  for (std::uint32_t lane = 0; lane < trialLanes; ++lane) {
    const Words words = philoxWords({low + lane, high, draw, 0}, key0, key1);
    to1[lane] = centredOf(words.w0, words.w1);
    to2[lane] = centredOf(words.w2, words.w3);
  }
}

SHUNTWRIGHT_WIDE void normalFromCentred(Lanes lanes) {
  double* const q = lanes.data();
  for (std::size_t lane = 0; lane < trialLanes; ++lane) q[lane] = quantile(q[lane], 0.5 - std::abs(q[lane]));
}

SHUNTWRIGHT_WIDE void centredFromNormal(Lanes lanes) {
  double* const z = lanes.data();
  for (std::size_t lane = 0; lane < trialLanes; ++lane) {
    const double x = std::abs(z[lane]);
    const double tail = upperTail(x < 37.5 ? x : 37.5);
    const double inner = centralShare(z[lane]);
    z[lane] = x <= central ? inner : std::copysign(0.5 - tail, z[lane]);
  }
}

}  // namespace core
