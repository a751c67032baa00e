// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/complex_bridge.h"

#include <Eigen/LU>
#include <algorithm>

#include "core/plan/prediction.h"
#include "tests/support/effects.h"

namespace test {
namespace {

constexpr long double step = 1e-30;  // as small as one likes: nothing is subtracted

}  // namespace

ComplexBridge::ComplexBridge(const core::Setup& setup, const std::vector<std::size_t>& closed,
                             core::Stimulus stimulus)
    : m_setup(setup), m_closed(closed), m_stimulus(stimulus) {}

std::vector<double> ComplexBridge::ohms(const core::Setup& setup, core::Stimulus stimulus) const {
  const auto bridge = core::bridgeNetwork(setup.bridge, setup.instrument, core::shuntBranches(setup));
  std::vector<double> result;
  for (const core::Branch& branch : bridge.network.branches) result.push_back(branch.resistance.base());
  for (const core::ArmPiece& piece : bridge.pieces)
    result[piece.branch] = (piece.share * core::armUnder(setup.bridge, piece.arm, stimulus)).base();
  return result;
}

ComplexBridge::Complex ComplexBridge::solve(const std::vector<Complex>& ohms) const {
  using Matrix = Eigen::Matrix<Complex, Eigen::Dynamic, Eigen::Dynamic>;
  using Vector = Eigen::Matrix<Complex, Eigen::Dynamic, 1>;
  const auto bridge = core::bridgeNetwork(m_setup.bridge, m_setup.instrument, core::shuntBranches(m_setup));
  const auto nodes = static_cast<Eigen::Index>(bridge.network.nodes.size());
  // Modified nodal analysis: a row for each node, one for each source of 0 V (zero ohm), one for the supply.
  std::vector<std::size_t> joins;
  for (std::size_t k = 0; k < ohms.size(); ++k)
    if (ohms[k] == Complex(0)) joins.push_back(k);
  const auto size = nodes + static_cast<Eigen::Index>(joins.size()) + 1;
  Matrix a = Matrix::Zero(size, size);
  Vector b = Vector::Zero(size);
  const auto source = [&](Eigen::Index row, std::size_t plus, std::size_t minus) {
    const auto p = static_cast<Eigen::Index>(plus), m = static_cast<Eigen::Index>(minus);
    a(row, p) += 1, a(row, m) -= 1, a(p, row) += 1, a(m, row) -= 1;
  };
  std::vector<bool> touched(bridge.network.nodes.size(), false);
  for (std::size_t k = 0; k < ohms.size(); ++k) {
    const core::Branch& branch = bridge.network.branches[k];
    const bool open = k >= bridge.firstShunt &&
                      std::find(m_closed.begin(), m_closed.end(), k - bridge.firstShunt) == m_closed.end();
    if (open) continue;
    touched[branch.a] = touched[branch.b] = true;
    if (ohms[k] == Complex(0)) continue;
    const auto i = static_cast<Eigen::Index>(branch.a), j = static_cast<Eigen::Index>(branch.b);
    const Complex g = Complex(1) / ohms[k];
    a(i, i) += g, a(j, j) += g, a(i, j) -= g, a(j, i) -= g;
  }
  for (std::size_t k = 0; k < joins.size(); ++k)
    source(nodes + static_cast<Eigen::Index>(k), bridge.network.branches[joins[k]].a,
           bridge.network.branches[joins[k]].b);
  source(size - 1, bridge.excitation.plus, bridge.excitation.minus);
  b(size - 1) = 1;
  // P- is the reference of all voltages, and a node that nothing touches stays at it.
  const auto ground = static_cast<Eigen::Index>(bridge.excitation.minus);
  a.row(ground).setZero();
  a(ground, ground) = 1;
  for (Eigen::Index node = 0; node < nodes; ++node)
    if (!touched[static_cast<std::size_t>(node)]) a(node, node) = 1;
  const Vector x = a.partialPivLu().solve(b);
  const auto over = [&](core::Port port) {
    return x(static_cast<Eigen::Index>(port.plus)) - x(static_cast<Eigen::Index>(port.minus));
  };
  const Complex ratio = over(bridge.output) / over(bridge.reference);
  const auto& current = m_setup.instrument.current;
  // The supply's own current, for 1 V, is minus its unknown.
  return current ? ratio / (-x(size - 1) * Complex(current->nominal.base())) : ratio;
}

double ComplexBridge::output() const {
  const auto real = ohms(m_setup, m_stimulus);
  return static_cast<double>(solve({real.begin(), real.end()}).real());
}

double ComplexBridge::along(const std::vector<double>& direction) const {
  const auto real = ohms(m_setup, m_stimulus);
  std::vector<Complex> shifted;
  for (std::size_t k = 0; k < real.size(); ++k) shifted.emplace_back(real[k], step * direction[k]);
  return static_cast<double>(solve(shifted).imag() / step);
}

double ComplexBridge::slope() const {
  // Resistances are linear in the stimulus, so that any difference is exact; 1/8 is without rounding.
  std::vector<double> direction = ohms(m_setup, m_stimulus + 0.125);
  const auto low = ohms(m_setup, m_stimulus - 0.125);
  for (std::size_t k = 0; k < low.size(); ++k) direction[k] = (direction[k] - low[k]) / 0.25;
  return along(direction);
}

double ComplexBridge::derivative(core::Input input) const {
  // They are linear in every single input too.
  const double value = core::inputValue(m_setup, input);
  const double by = value == 0 ? 0.125 : 0.125 * value;
  std::vector<double> direction = ohms(withInputValue(m_setup, input, value + by), m_stimulus);
  const auto low = ohms(withInputValue(m_setup, input, value - by), m_stimulus);
  for (std::size_t k = 0; k < low.size(); ++k) direction[k] = (direction[k] - low[k]) / (2 * by);
  return along(direction);
}

}  // namespace test
