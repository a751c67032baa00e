// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/circuit/batch_solver.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <numeric>
#include <optional>
#include <utility>

#include "core/uncertainty/vector_units.h"
#include "core/units/language.h"

namespace core {
namespace {

constexpr double noResult = std::numeric_limits<double>::quiet_NaN();

SHUNTWRIGHT_WIDE
void add(double* __restrict result, const double* __restrict a, const double* __restrict b, const double*) {
  for (std::size_t lane = 0; lane < solverLanes; ++lane) result[lane] = a[lane] + b[lane];
}

SHUNTWRIGHT_WIDE
void subtract(double* __restrict result, const double* __restrict a, const double* __restrict b,
              const double*) {
  for (std::size_t lane = 0; lane < solverLanes; ++lane) result[lane] = a[lane] - b[lane];
}

SHUNTWRIGHT_WIDE
void multiply(double* __restrict result, const double* __restrict a, const double* __restrict b,
              const double*) {
  for (std::size_t lane = 0; lane < solverLanes; ++lane) result[lane] = a[lane] * b[lane];
}

SHUNTWRIGHT_WIDE
void multiplyAdd(double* __restrict result, const double* __restrict a, const double* __restrict b,
                 const double* __restrict c) {
  for (std::size_t lane = 0; lane < solverLanes; ++lane) result[lane] = a[lane] * b[lane] + c[lane];
}

SHUNTWRIGHT_WIDE
void divide(double* __restrict result, const double* __restrict a, const double* __restrict b,
            const double*) {
  for (std::size_t lane = 0; lane < solverLanes; ++lane) result[lane] = a[lane] / b[lane];
}

SHUNTWRIGHT_WIDE
void divideByReference(double* __restrict result, const double* __restrict a, const double* __restrict b,
                       const double*) {
  for (std::size_t lane = 0; lane < solverLanes; ++lane)
    result[lane] = (std::abs(b[lane]) > 1e-12 ? 0 : noResult) + a[lane] / b[lane];
}

/// Makes `doubt`, 0 before, NaN where a conductance is no finite number above zero.
SHUNTWRIGHT_WIDE
void doubtUnlessPositive(double* __restrict doubt, const double* __restrict conductance) {
  constexpr double greatest = std::numeric_limits<double>::max();
  for (std::size_t lane = 0; lane < solverLanes; ++lane)
    doubt[lane] += conductance[lane] > 0 && conductance[lane] <= greatest ? 0 : noResult;
}

}  // namespace

/// Writes the instructions. Elimination writes more than is needed; `finish` takes what is.
class BatchSolver::Compiler {
 public:
  /// `topology` is that of `network`, in which open branches are loops at one node.
  Compiler(const Network& network, const Solver& topology, Port excitation);

  /// Asks for the potentials of `port`, before `eliminate`.
  void need(Port port) { m_needed[m_point[port.plus]] = m_needed[m_point[port.minus]] = true; }
  /// Takes out all nodes but the excitation's, then works out the potentials asked for.
  void eliminate();
  bool alike(Port port) const { return potential(port.plus) == potential(port.minus); }
  Value ratio(Port output, Port reference);
  Value inputConductance() const;

  /// Hands over the instructions that `ratio` and `input` need.
  void finish(BatchSolver& solver, Value ratio, Value input) const;

 private:
  /// A node taken out whose potential is needed.
  struct Row {
    std::size_t point;
    std::vector<std::pair<std::size_t, Value>> neighbours;  ///< and the conductances to them
    Value sum;                                              ///< of these conductances
  };

  Value potential(NodeIndex node) const { return m_potential[m_point[node]]; }
  std::size_t firstResult() const { return m_branches + constants; }
  bool isExcitation(std::size_t point) const { return point == m_plus || point == m_minus; }
  Value emit(Kernel kernel, Value a, Value b) { return emit(kernel, a, b, b); }
  Value emit(Kernel kernel, Value a, Value b, Value c);
  void connect(std::size_t a, std::size_t b, Value conductance);
  std::size_t nextToTakeOut() const;
  Row starOf(std::size_t point);
  void takeOut(std::size_t point);
  void workOutPotential(const Row& row);
  std::vector<bool> neededBy(std::initializer_list<Value> results) const;

  Value m_branches, m_zero, m_one;
  std::vector<std::size_t> m_point;                  ///< node -> first of the nodes joined with it: its point
  std::size_t m_plus, m_minus;                       ///< points of the excitation
  std::vector<std::map<std::size_t, Value>> m_mesh;  ///< point -> other point -> conductance between
  std::vector<bool> m_needed;                        ///< points whose potential is asked for
  std::vector<Row> m_rows;                           ///< in the order taken out
  std::vector<Value> m_potential;                    ///< point -> potential, where needed
  std::vector<Instruction> m_code;
};

BatchSolver::Compiler::Compiler(const Network& network, const Solver& topology, Port excitation)
    : m_branches(static_cast<Value>(network.branches.size())),
      m_zero(m_branches),
      m_one(m_branches + 1),
      m_mesh(network.nodes.size()),
      m_needed(network.nodes.size(), false),
      m_potential(network.nodes.size(), m_zero) {
  for (NodeIndex node = 0; node < network.nodes.size(); ++node) {
    NodeIndex first = 0;
    while (!topology.joined(first, node)) ++first;
    m_point.push_back(first);
  }
  m_plus = m_point[excitation.plus];
  m_minus = m_point[excitation.minus];
  m_potential[m_plus] = m_one;
  for (BranchIndex branch = 0; branch < network.branches.size(); ++branch) {
    const std::size_t a = m_point[network.branches[branch].a], b = m_point[network.branches[branch].b];
    if (a == b) continue;
    const auto parallel = m_mesh[a].find(b);
    const auto own = static_cast<Value>(branch);
    connect(a, b, parallel == m_mesh[a].end() ? own : emit(add, parallel->second, own));
  }
}

BatchSolver::Value BatchSolver::Compiler::emit(Kernel kernel, Value a, Value b, Value c) {
  m_code.push_back({kernel, {a, b, c}});
  return static_cast<Value>(firstResult() + m_code.size() - 1);
}

void BatchSolver::Compiler::connect(std::size_t a, std::size_t b, Value conductance) {
  m_mesh[a][b] = m_mesh[b][a] = conductance;
}

/// Nodes at the end of one resistor first, which cost nothing; those whose potential is needed last, so that
/// no others need to be worked out; else the one with the fewest neighbours.
std::size_t BatchSolver::Compiler::nextToTakeOut() const {
  std::size_t best = m_mesh.size();
  auto cost = std::pair(false, m_mesh.size());
  for (std::size_t point = 0; point < m_mesh.size(); ++point) {
    const std::size_t degree = m_mesh[point].size();
    if (degree == 0 || isExcitation(point)) continue;
    const auto mine = std::pair(m_needed[point] && degree > 1, degree);
    if (best == m_mesh.size() || mine < cost) best = point, cost = mine;
  }
  return best;
}

void BatchSolver::Compiler::eliminate() {
  for (std::size_t point; (point = nextToTakeOut()) != m_mesh.size();) takeOut(point);
  for (auto row = m_rows.rbegin(); row != m_rows.rend(); ++row) workOutPotential(*row);
}

/// Neighbours in the order of their numbers, those of the excitation at the end: what lies between these two
/// is for the input alone.
BatchSolver::Compiler::Row BatchSolver::Compiler::starOf(std::size_t point) {
  Row star{point, {m_mesh[point].begin(), m_mesh[point].end()}, 0};
  std::stable_partition(star.neighbours.begin(), star.neighbours.end(),
                        [this](const auto& neighbour) { return !isExcitation(neighbour.first); });
  star.sum = star.neighbours.front().second;
  for (std::size_t k = 1; k < star.neighbours.size(); ++k)
    star.sum = emit(add, star.sum, star.neighbours[k].second);
  return star;
}

/// The star-mesh transformation (see core::Solver).
void BatchSolver::Compiler::takeOut(std::size_t point) {
  const Row star = starOf(point);
  for (auto one = star.neighbours.begin(); one != star.neighbours.end(); ++one) {
    m_mesh[one->first].erase(point);
    if (one + 1 == star.neighbours.end()) break;
    const Value share = emit(divide, one->second, star.sum);
    for (auto other = one + 1; other != star.neighbours.end(); ++other) {
      const auto before = m_mesh[one->first].find(other->first);
      const Value more = before == m_mesh[one->first].end()
                             ? emit(multiply, share, other->second)
                             : emit(multiplyAdd, share, other->second, before->second);
      connect(one->first, other->first, more);
    }
  }
  m_mesh[point].clear();
  if (!m_needed[point]) return;
  m_rows.push_back(star);
  for (const auto& [neighbour, conductance] : star.neighbours) m_needed[neighbour] = true;
}

/// The mean of the neighbours' potentials, weighted by the conductances to them.
void BatchSolver::Compiler::workOutPotential(const Row& row) {
  Value& potential = m_potential[row.point];
  if (row.neighbours.size() == 1) {
    potential = m_potential[row.neighbours.front().first];
    return;
  }
  std::optional<Value> weighted;
  for (const auto& [neighbour, conductance] : row.neighbours) {
    const Value its = m_potential[neighbour];
    if (its == m_zero) continue;
    if (its == m_one)
      weighted = weighted ? emit(add, conductance, *weighted) : conductance;
    else
      weighted = weighted ? emit(multiplyAdd, conductance, its, *weighted) : emit(multiply, conductance, its);
  }
  potential = weighted ? emit(divide, *weighted, row.sum) : m_zero;
}

BatchSolver::Value BatchSolver::Compiler::ratio(Port output, Port reference) {
  const Value above = emit(subtract, potential(output.plus), potential(output.minus));
  if (potential(reference.plus) == m_one && potential(reference.minus) == m_zero) return above;
  const Value below = emit(subtract, potential(reference.plus), potential(reference.minus));
  return emit(divideByReference, above, below);
}

BatchSolver::Value BatchSolver::Compiler::inputConductance() const {
  const auto found = m_mesh[m_plus].find(m_minus);
  return found == m_mesh[m_plus].end() ? m_zero : found->second;
}

/// Value -> whether one of `results` is made from it.
std::vector<bool> BatchSolver::Compiler::neededBy(std::initializer_list<Value> results) const {
  std::vector<bool> needed(firstResult() + m_code.size(), false);
  for (const Value result : results) needed[result] = true;
  for (std::size_t k = m_code.size(); k-- > 0;)
    if (needed[firstResult() + k])
      for (const Value operand : m_code[k].operands) needed[operand] = true;
  return needed;
}

void BatchSolver::Compiler::finish(BatchSolver& solver, Value ratio, Value input) const {
  const std::vector<bool> early = neededBy({ratio}), needed = neededBy({ratio, input});
  std::vector<Value> place(needed.size());  // value -> its number once unneeded instructions are gone
  std::iota(place.begin(), place.end(), Value{0});
  const auto take = [&](std::size_t k) {
    Instruction line = m_code[k];
    for (Value& operand : line.operands) operand = place[operand];
    place[firstResult() + k] = static_cast<Value>(firstResult() + solver.m_code.size());
    solver.m_code.push_back(line);
  };
  for (const bool now : {true, false}) {
    for (std::size_t k = 0; k < m_code.size(); ++k)
      if (needed[firstResult() + k] && early[firstResult() + k] == now) take(k);
    if (now) solver.m_ratioEnd = solver.m_code.size();
  }
  solver.m_branches = m_branches;
  solver.m_ratio = place[ratio];
  solver.m_input = place[input];
  solver.m_slots.resize(constants + solver.m_code.size());
  solver.m_slots[m_one - m_branches].of.fill(1);
}

namespace {

/// `network` with its open branches laid out of the way.
Network withoutOpen(Network network, const std::vector<bool>& open, Port excitation) {
  for (BranchIndex branch = 0; branch < open.size(); ++branch)
    if (open[branch])
      network.branches[branch] = {network.branches[branch].name, excitation.plus, excitation.plus,
                                  Resistance(1)};
  return network;
}

/// Fails when a node floats, whatever the resistances.
Result<void> checkConnected(const Network& network, Solver topology, std::initializer_list<Port> measured) {
  if (auto solved = topology.solve(); !solved) return solved.error();
  // A node without a branch floats too, but the solver minds it only where somebody measures.
  for (const Port port : measured)
    for (const NodeIndex node : {port.plus, port.minus})
      if (!topology.connected(node))
        return Error{network.nodes[node],
                     say("no resistor connects this to the excitation, so its potential is undefined"),
                     say("Connect it, or close the lead or arm that is open")};
  return {};
}

}  // namespace

Result<BatchSolver> BatchSolver::prepare(const Network& network, const std::vector<bool>& open,
                                         Port excitation, Port output, Port reference) {
  assert(open.size() == network.branches.size());
  const Network closed = withoutOpen(network, open, excitation);
  const auto topology = Solver::prepare(closed, excitation);
  if (!topology) return topology.error();
  if (auto ok = checkConnected(closed, *topology, {output, reference}); !ok) return ok.error();

  Compiler compiler(closed, *topology, excitation);
  compiler.need(output);
  compiler.need(reference);
  compiler.eliminate();
  if (compiler.alike(reference))
    return Error{say("excitation"), say("no voltage between the reference terminals"),
                 say("Check the sense leads")};
  BatchSolver solver;
  compiler.finish(solver, compiler.ratio(output, reference), compiler.inputConductance());
  for (BranchIndex branch = 0; branch < open.size(); ++branch)
    if (!open[branch] && network.branches[branch].resistance.base() > 0)
      solver.m_read.push_back(static_cast<Value>(branch));
  return solver;
}

const double* BatchSolver::lanesOf(Value value, const double* conductance) const {
  return value < m_branches ? conductance + value * solverLanes : m_slots[value - m_branches].of.data();
}

void BatchSolver::run(std::size_t begin, std::size_t end, const double* conductance) {
  for (std::size_t k = begin; k < end; ++k) {
    const auto& [kernel, operands] = m_code[k];
    kernel(m_slots[constants + k].of.data(), lanesOf(operands[0], conductance),
           lanesOf(operands[1], conductance), lanesOf(operands[2], conductance));
  }
}

void BatchSolver::solve(const double* conductance, double* ratio, double* inputConductance) {
  Lanes doubt{};
  for (const Value branch : m_read) doubtUnlessPositive(doubt.of.data(), conductance + branch * solverLanes);
  const auto handOver = [&](double* to, Value value) {
    add(to, lanesOf(value, conductance), doubt.of.data(), nullptr);
  };
  run(0, m_ratioEnd, conductance);
  handOver(ratio, m_ratio);
  if (!inputConductance) return;
  run(m_ratioEnd, m_code.size(), conductance);
  handOver(inputConductance, m_input);
}

}  // namespace core
