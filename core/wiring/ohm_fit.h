// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>

namespace core {

/// A deviation in tolerances counts no more than this, so that one wild reading does not decide.
inline constexpr double greatestDeviation = 10;

/// How a reading follows one resistance x of the network, all in ohm, infinite for open.
///
/// Between two points of a network R(x) = s + (o - s) x / (x + T), with s and o the readings with x shorted
/// and open (the bilinear form that follows from one branch's place in the determinant; H. W. Bode, Network
/// Analysis and Feedback Amplifier Design, from memory). With o infinite it is s + c x. T or c come from the
/// reading `probed` at x = `probe`.
struct OhmResponse {
  double shorted = 0;
  double open = 0;
  double probed = 0;
  double probe = 1;
  double measured = 0;
  double tolerance = 1;

  double at(double x) const;
  /// The x that gives the measured reading; none when no x does, or every x.
  std::optional<double> solution() const;
};

/// The resistance from 1 mohm to 1 Gohm that fits all readings best, by the sum of squares of their
/// deviations in tolerances, each cut off at `greatestDeviation`. None when no reading follows the
/// resistance by more than its tolerance, or when what was measured is beyond what any value gives (then the
/// part is shorted or open). A reading that is open wants `openBeyond` or more.
///
/// Every reading alone has one solution; the sum has its least value near one of them. The best of them is
/// improved between its neighbours by golden section in the logarithm.
std::optional<double> fittedResistance(std::span<const OhmResponse> responses, double openBeyond);

}  // namespace core
