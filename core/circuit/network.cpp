// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/circuit/network.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "core/units/language.h"

namespace core {
namespace {

Result<void> checkBranches(const Network& network) {
  for (const Branch& branch : network.branches) {
    const double ohm = branch.resistance.base();
    assert(branch.a < network.nodes.size() && branch.b < network.nodes.size());
    if (!std::isfinite(ohm))
      return Error{branch.name, say("the resistance is not a finite number"),
                   say("Enter a resistance in ohm")};
    if (ohm < 0)
      return Error{branch.name, say("the resistance is negative"),
                   say("Enter zero (joined) or a positive resistance")};
  }
  return {};
}

std::size_t rootOf(std::vector<std::size_t>& parent, std::size_t node) {
  while (parent[node] != node) node = parent[node] = parent[parent[node]];
  return node;
}

}  // namespace

Result<Solver> Solver::prepare(const Network& network, Port excitation) {
  if (auto checked = checkBranches(network); !checked) return checked.error();

  Solver solver;
  solver.m_names = network.nodes;
  solver.joinZeroOhmBranches(network);
  if (solver.joined(excitation.plus, excitation.minus))
    return Error{say("excitation"),
                 say("{1} and {2} are joined by zero ohm: the excitation is shorted",
                     {network.nodes[excitation.plus], network.nodes[excitation.minus]}),
                 say("Give one of the resistances between them a value above zero")};
  solver.numberUnknowns(excitation);
  return solver;
}

void Solver::joinZeroOhmBranches(const Network& network) {
  m_group.resize(network.nodes.size());
  std::iota(m_group.begin(), m_group.end(), std::size_t{0});
  for (const Branch& branch : network.branches)
    if (branch.resistance.base() == 0) m_group[rootOf(m_group, branch.a)] = rootOf(m_group, branch.b);
  for (std::size_t node = 0; node < m_group.size(); ++node) m_group[node] = rootOf(m_group, node);

  m_edges.reserve(network.branches.size());
  for (const Branch& branch : network.branches) {
    const double ohm = branch.resistance.base();
    m_edges.push_back({m_group[branch.a], m_group[branch.b], ohm > 0 ? 1 / ohm : 0});
  }
}

void Solver::numberUnknowns(Port excitation) {
  m_plus = m_group[excitation.plus];
  m_minus = m_group[excitation.minus];
  m_row.assign(m_group.size(), -1);
  const auto isExcitation = [this](std::size_t group) { return group == m_plus || group == m_minus; };
  for (const Edge& edge : m_edges) {
    if (edge.a == edge.b) continue;
    for (const std::size_t group : {edge.a, edge.b})
      if (!isExcitation(group) && m_row[group] < 0) m_row[group] = static_cast<int>(m_size++);
  }
  m_row[m_plus] = static_cast<int>(m_size);
  m_row[m_minus] = static_cast<int>(m_size + 1);
  m_mesh.resize(m_size * (m_size + 2));
  m_sum.resize(m_size);
  m_value.resize(m_size + 2);
  m_potential.assign(m_group.size(), 0);
  m_adjoint.assign(m_group.size(), 0);
}

void Solver::setResistance(BranchIndex branch, Resistance resistance) {
  assert(resistance.base() > 0);
  m_edges[branch].conductance = 1 / resistance.base();
}

void Solver::open(BranchIndex branch) { m_edges[branch].conductance = 0; }

bool Solver::connected(NodeIndex node) const { return m_row[m_group[node]] >= 0; }

void Solver::assemble() {
  std::fill(m_mesh.begin(), m_mesh.end(), 0.0);
  for (const Edge& edge : m_edges) {
    if (edge.a == edge.b || edge.conductance == 0) continue;
    const auto ra = static_cast<std::size_t>(m_row[edge.a]), rb = static_cast<std::size_t>(m_row[edge.b]);
    const std::size_t low = std::min(ra, rb), high = std::max(ra, rb);
    if (low < m_size) mesh(low, high) += edge.conductance;
  }
}

/// False when a node has no path to the excitation: nothing is left to divide its current among.
bool Solver::eliminate() {
  const std::size_t columns = m_size + 2;
  for (std::size_t k = 0; k < m_size; ++k) {
    const double* row = &m_mesh[k * columns];
    double sum = 0;
    for (std::size_t j = k + 1; j < columns; ++j) sum += row[j];
    if (!(sum > 0)) return false;
    m_sum[k] = sum;
    for (std::size_t i = k + 1; i < m_size; ++i) {
      if (row[i] == 0) continue;
      const double share = row[i] / sum;
      for (std::size_t j = i + 1; j < columns; ++j) m_mesh[i * columns + j] += share * row[j];
    }
  }
  return true;
}

/// Turns currents into potentials in m_value; the two excitation potentials stand at its end.
void Solver::backSubstitute() {
  const std::size_t columns = m_size + 2;
  for (std::size_t k = m_size; k-- > 0;) {
    const double* row = &m_mesh[k * columns];
    double weighted = m_value[k];
    for (std::size_t j = k + 1; j < columns; ++j) weighted += row[j] * m_value[j];
    m_value[k] = weighted / m_sum[k];
  }
}

Result<void> Solver::solve() {
  assemble();
  if (!eliminate()) return floatingError();
  std::fill(m_value.begin(), m_value.end(), 0.0);
  m_value[m_size] = 1;
  backSubstitute();
  for (std::size_t group = 0; group < m_row.size(); ++group)
    if (m_row[group] >= 0) m_potential[group] = m_value[m_row[group]];
  return {};
}

void Solver::solveAdjoint(Port output, Port reference) {
  // r = o/q, so dr = (do - r dq)/q: the functional is e(output) - r e(reference), over q.
  const double q = between(reference);
  const double r = between(output) / q;
  std::fill(m_value.begin(), m_value.end(), 0.0);
  const auto add = [this](NodeIndex node, double weight) {
    if (const int row = m_row[m_group[node]]; row >= 0) m_value[row] += weight;
  };
  add(output.plus, 1 / q);
  add(output.minus, -1 / q);
  add(reference.plus, -r / q);
  add(reference.minus, r / q);
  // Currents of eliminated rows move to their neighbours; the excitation nodes are held at zero.
  for (std::size_t k = 0; k < m_size; ++k)
    for (std::size_t i = k + 1; i < m_size; ++i) m_value[i] += mesh(k, i) / m_sum[k] * m_value[k];
  m_value[m_size] = m_value[m_size + 1] = 0;
  backSubstitute();
  for (std::size_t group = 0; group < m_row.size(); ++group)
    m_adjoint[group] = m_row[group] >= 0 ? m_value[m_row[group]] : 0;
}

double Solver::sensitivity(BranchIndex branch) const {
  const Edge& edge = m_edges[branch];
  return -(m_potential[edge.a] - m_potential[edge.b]) * (m_adjoint[edge.a] - m_adjoint[edge.b]);
}

double Solver::inputConductance() const {
  // The current of 1 V into the minus side, whose potential is zero: no difference, so no digit is lost where
  // almost no voltage lies over a short lead.
  double sum = 0;
  for (const Edge& edge : m_edges) {
    if (edge.a == edge.b || (edge.a != m_minus && edge.b != m_minus)) continue;
    sum += edge.conductance * m_potential[edge.a == m_minus ? edge.b : edge.a];
  }
  return sum;
}

double Solver::inputSensitivity(BranchIndex branch) const {
  // The current I of 1 V is the power; by Tellegen's theorem dI = sum of (branch voltage)^2 dG.
  const double across = m_potential[m_edges[branch].a] - m_potential[m_edges[branch].b];
  return across * across;
}

Error Solver::floatingError() const {
  std::vector<bool> reached(m_row.size(), false);
  reached[m_plus] = reached[m_minus] = true;
  for (bool grown = true; grown;) {
    grown = false;
    for (const Edge& edge : m_edges)
      if (edge.conductance > 0 && reached[edge.a] != reached[edge.b])
        reached[edge.a] = reached[edge.b] = grown = true;
  }
  std::string names;
  for (std::size_t node = 0; node < m_group.size(); ++node) {
    const std::size_t group = m_group[node];
    if (m_row[group] < 0 || reached[group]) continue;
    names += (names.empty() ? "" : ", ") + m_names[node];
  }
  return {names, say("no resistor connects this to the excitation, so its potential is undefined"),
          say("Connect it, or close the lead or arm that is open")};
}

}  // namespace core
