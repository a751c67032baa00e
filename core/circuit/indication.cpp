// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/circuit/indication.h"

#include <cmath>

#include "core/units/language.h"

namespace core {
namespace {

/// a x^2 + b x - 4 v = 0 has the ideal bridge's resistance change x as its root that vanishes with v.
struct IdealBridge {
  std::array<double, 4> shares;
  double linear;    ///< N, the bridge factor
  double sum;       ///< of all shares
  double products;  ///< s1 s3 - s2 s4
  double halves;    ///< (s1 + s2)(s3 + s4)

  double a(double v) const { return products - v * halves; }
  double b(double v) const { return linear - 2 * v * sum; }
};

// v = R3/(R3+R4) - R2/(R1+R2) with R_k = 1 + s_k x, times both denominators (2 + (s1+s2) x)(2 + (s3+s4) x).
IdealBridge idealBridge(BridgeType type, double poissonRatio) {
  std::array<double, 4> s{};
  for (const std::size_t arm : {0, 1, 2, 3}) s[arm] = templateOf(type).shares[arm].at(poissonRatio);
  return {s, s[0] - s[1] + s[2] - s[3], s[0] + s[1] + s[2] + s[3], s[0] * s[2] - s[1] * s[3],
          (s[0] + s[1]) * (s[2] + s[3])};
}

/// x and dx/dv of an ideal bridge at output v.
struct Change {
  double x = 0, slope = 0;
};

std::optional<Change> changeAt(const IdealBridge& ideal, double v) {
  const double a = ideal.a(v), b = ideal.b(v);
  const double root = b * b + 16 * a * v;
  if (!(root >= 0) || !(b > 0)) return std::nullopt;
  const double x = 8 * v / (b + std::sqrt(root));  // the stable form of the root near 4 v / N
  for (const double share : ideal.shares)
    if (!(1 + share * x >= 0)) return std::nullopt;  // no arm is below zero ohm
  const double perX = 2 * a * x + b;
  if (!(perX > 0)) return std::nullopt;
  return Change{x, (4 + 2 * ideal.sum * x + ideal.halves * x * x) / perX};
}

Indication linear(const Instrument& instrument, Output now, Output zero) {
  const double perOutput = readingOf(instrument, Output(1)).base();
  return {readingOf(instrument, now - zero), perOutput, -perOutput};
}

}  // namespace

std::optional<double> idealResistanceChange(BridgeType type, double poissonRatio, Output output) {
  const auto change = changeAt(idealBridge(type, poissonRatio), output.base());
  return change ? std::optional(change->x) : std::nullopt;
}

Result<Indication> indicationOf(const Bridge& bridge, const Instrument& instrument, Output now, Output zero) {
  const bool strain = instrument.unit == ReadingUnit::MicrometrePerMetre && !isTransducer(bridge);
  if (!strain || instrument.linearisation == Linearisation::None) return linear(instrument, now, zero);
  const IdealBridge ideal = idealBridge(bridge.type, bridge.gauge.poissonRatio);
  const bool before = instrument.linearisation == Linearisation::BeforeZero;
  const auto first = changeAt(ideal, before ? now.base() : (now - zero).base());
  const auto second = before ? changeAt(ideal, zero.base()) : Change{0, first ? first->slope : 0};
  if (!first || !second)
    return Error{say("instrument"), say("the output is beyond what its linearisation can correct"),
                 say("Check arms and shunts, or set no linearisation")};
  // The instrument's own gauge and bridge factor stand for those of the template.
  const double micro = 1e6 * ideal.linear / (instrument.gaugeFactor * instrument.bridgeFactor);
  return Indication{Reading(micro * (first->x - second->x)), micro * first->slope, -micro * second->slope};
}

}  // namespace core
