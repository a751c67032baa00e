// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <vector>

#include "core/search/shunt_place.h"

namespace core {

/// How the output of a bridge follows the conductance G that is switched between two of its nodes:
///
///     v(G) = zero + slope u,   u = G / (1 + bend G)
///
/// exactly, for every linear network, at constant voltage as at constant current: each potential is a ratio
/// of two linear functions of one branch's conductance with the same denominator (the bilinear theorem of
/// network theory, from memory), and so is the input resistance.
struct ShuntResponse {
  Output zero;       ///< all shunts open
  double slope = 0;  ///< d output / d conductance of an open place, in ohm
  double bend = 0;   ///< resistance that the network has between the two nodes, as it appears here; ohm

  /// u of conductance G in S; falls short of 1 / bend whatever G is.
  double bent(double siemens) const { return siemens / (1 + bend * siemens); }
  Output at(double siemens) const { return zero + Output(slope * bent(siemens)); }
  /// The conductance of that output; none when none gives it.
  std::optional<double> siemensFor(Output output) const;
};

/// From three solves of the whole network, one of them to check the other two. Fails when the bridge cannot
/// be solved, the place lies across one node or is not there, or a shunt there does not change the output.
Result<ShuntResponse> shuntResponse(const Setup& setup, const ShuntPlace& place);

/// What a conductance at a place gives, in what misses are counted in, fast: some ten operations.
///
/// The value is that of `stimulusFor` at the output of `ShuntResponse`, as a bilinear function of G that
/// fits at two points and a Chebyshev series for what is left; for a quarter bridge nothing is left. The
/// series grows until it agrees between its nodes with the exact inverse to a few roundings of the network's
/// potentials, about 1e-14 of the greatest value plus 1e-14 V/V of output.
class ShuntCurve {
 public:
  enum class Measure : std::uint8_t {
    Simulated,  ///< simulated value, in the unit of `simulatedUnitText`
    Reading,    ///< expected reading, in the instrument's unit
  };

  /// For levels up to `greatest` (in the unit of `simulatedUnitText`, with its sign). Fails as
  /// `shuntResponse`, and when the place works against that sign.
  static Result<ShuntCurve> make(const Setup& setup, const ShuntPlace& place, double greatest,
                                 Measure measure);

  /// Magnitude at `siemens`, rising with it. Infinite beyond `greatestSiemens`, where it is more than twice
  /// the greatest level or more than the gauges can simulate.
  double at(double siemens) const;
  /// The same of many.
  void at(std::span<const double> siemens, double* values) const;
  /// The conductance that gives `value`; `greatestSiemens` when it lies beyond.
  double siemensFor(double value) const;
  double greatestSiemens() const { return m_greatest; }
  /// What is left over after the bilinear part; empty when that is exact.
  std::size_t terms() const { return m_series.size(); }

 private:
  ShuntCurve() = default;

  double m_greatest = 0;         ///< S
  double m_perSiemens = 0;       ///< bilinear part: m_perSiemens G / (1 + m_bend G)
  double m_bend = 0;             ///< ohm
  double m_responseBend = 0;     ///< of the response, for u
  double m_perBent = 0;          ///< 2 / greatest u: the series runs over -1 to 1
  std::vector<double> m_series;  ///< Chebyshev coefficients, the constant first
};

}  // namespace core
