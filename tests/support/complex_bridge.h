// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <complex>
#include <cstddef>
#include <vector>

#include "core/plan/setup.h"

namespace test {

/// Derivatives of a bridge's output by the complex step (W. Squire and G. Trapp, SIAM Review 40 (1998) 110,
/// from memory): output(p + ih) = output(p) + ih d output/dp, with no difference taken and so no digit lost.
///
/// The nodal equations are written down as a full complex matrix in extended precision and solved by Eigen's
/// LU: nothing is shared with the program's own elimination or its adjoint but the list of branches.
class ComplexBridge {
 public:
  /// With the shunts `closed` (indices) and the gauges under `stimulus`.
  ComplexBridge(const core::Setup& setup, const std::vector<std::size_t>& closed, core::Stimulus stimulus);

  double output() const;
  /// d output / d stimulus.
  double slope() const;
  /// d output / d input.
  double derivative(core::Input input) const;

 private:
  using Complex = std::complex<long double>;
  std::vector<double> ohms(const core::Setup& setup, core::Stimulus stimulus) const;
  Complex solve(const std::vector<Complex>& ohms) const;
  double along(const std::vector<double>& direction) const;

  core::Setup m_setup;
  std::vector<std::size_t> m_closed;
  core::Stimulus m_stimulus;
};

}  // namespace test
