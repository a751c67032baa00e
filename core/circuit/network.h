// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/units/quantity.h"
#include "core/units/result.h"

namespace core {

using NodeIndex = std::size_t;
using BranchIndex = std::size_t;

/// A pair of nodes: where a voltage is applied, or measured as plus less minus.
struct Port {
  NodeIndex plus = 0;
  NodeIndex minus = 0;
};

/// One resistor of a network. Zero ohm joins its two nodes into one; it is never a tiny resistance.
struct Branch {
  std::string name;  ///< as the user knows it: "arm 2", "lead S-"
  NodeIndex a = 0;
  NodeIndex b = 0;
  Resistance resistance;
};

/// Any network of resistors. Nodes without a branch are allowed as long as nobody measures there.
struct Network {
  std::vector<std::string> nodes;
  std::vector<Branch> branches;
};

/// Solves one network again and again with some resistances changed, by nodal analysis.
///
/// Topology (joined nodes, numbering) is worked out once in `prepare`; after that, setting
/// resistances and solving allocates nothing. Potentials are those for 1 V over the excitation port,
/// minus side at 0 V.
///
/// Nodes are eliminated one by one by the star-mesh transformation (A. Rosen 1924, from memory):
/// taking out node k adds g(ki) g(kj) / sum(g(k)) between each pair of its neighbours. This is Gaussian
/// elimination on the nodal equations, written so that nothing is ever subtracted; every potential is
/// then right to a few roundings however far the resistances lie apart, and a floating node shows as a
/// sum of exactly zero.
class Solver {
 public:
  /// Fails when a resistance is negative or not finite, or when zero-ohm branches short the excitation.
  static Result<Solver> prepare(const Network& network, Port excitation);

  /// Gives `branch` another resistance, greater than zero. The branch must not be a joining (zero-ohm) one.
  void setResistance(BranchIndex branch, Resistance resistance);
  /// Takes `branch` out of the network (an open switch) until it is given a resistance again.
  void open(BranchIndex branch);

  /// In S; 0 for an open or a joining branch.
  double conductance(BranchIndex branch) const { return m_edges[branch].conductance; }

  /// Whether zero-ohm branches make `a` and `b` one node.
  bool joined(NodeIndex a, NodeIndex b) const { return m_group[a] == m_group[b]; }

  /// Works out all potentials. Fails when a node floats, naming it.
  Result<void> solve();

  /// Potential of `node` in V per volt of excitation; valid after `solve`.
  double potential(NodeIndex node) const { return m_potential[m_group[node]]; }
  double between(Port port) const { return potential(port.plus) - potential(port.minus); }

  /// Conductance between the excitation's two nodes, S; valid after `solve`.
  double inputConductance() const;

  /// Whether current could reach `node`: false for a node that no branch touches.
  bool connected(NodeIndex node) const;

  /// Prepares `sensitivity` for the output ratio r = V(output)/V(reference): one more solve with the
  /// factors at hand, whatever the number of branches (the adjoint network; Tellegen's theorem as in
  /// Director and Rohrer, IEEE Trans. Circuit Theory 16 (1969) 318, from memory).
  void solveAdjoint(Port output, Port reference);
  /// d r / d conductance of `branch`, in 1/S; valid after `solveAdjoint`.
  double sensitivity(BranchIndex branch) const;
  /// d input conductance / d conductance of `branch`: the square of the voltage over it, per V.
  double inputSensitivity(BranchIndex branch) const;

 private:
  struct Edge {
    std::size_t a = 0, b = 0;  ///< groups; equal for joining branches
    double conductance = 0;    ///< S; 0 when open
  };

  Solver() = default;
  void joinZeroOhmBranches(const Network& network);
  void numberUnknowns(Port excitation);
  void assemble();
  bool eliminate();
  void backSubstitute();
  Error floatingError() const;
  double& mesh(std::size_t row, std::size_t column) { return m_mesh[row * (m_size + 2) + column]; }

  std::vector<std::string> m_names;
  std::vector<std::size_t> m_group;  ///< node -> group of joined nodes
  std::vector<int> m_row;     ///< group -> row; the excitation's groups come last; -1 when no branch is there
  std::vector<Edge> m_edges;  ///< branch -> edge between groups
  std::size_t m_plus = 0, m_minus = 0;  ///< groups of the excitation port
  std::size_t m_size = 0;               ///< unknown potentials
  std::vector<double>
      m_mesh;  ///< rows x (rows + 2), upper triangle: S between two rows; last columns: to P+, P-
  std::vector<double> m_sum;        ///< row -> S, what the row was divided by when eliminated
  std::vector<double> m_value;      ///< right-hand side (A), then solution (V); last two: the excitation
  std::vector<double> m_potential;  ///< group -> V
  std::vector<double> m_adjoint;    ///< group -> adjoint potential
};

}  // namespace core
