// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <vector>

#include "core/circuit/network.h"

namespace core {

/// Trials that are solved side by side, each in its own lane, so that every loop becomes vector instructions.
inline constexpr std::size_t solverLanes = 32;

/// Solves one network in one switch state for many sets of resistances at once.
///
/// `prepare` works the star-mesh elimination of `Solver` through once, on names instead of numbers, and keeps
/// the additions, products and quotients that the output needs as a straight list, and no others. Potentials
/// are sums of positive terms; only the two last differences, of the output and of the reference, subtract. A
/// ratio is therefore wrong by a few roundings (1e-16) of the potentials, however far the resistances lie
/// apart.
///
/// Lanes never meet: the result of a lane depends on its own conductances alone, and every processor gives
/// the same bits. Each thread needs its own copy.
class BatchSolver {
 public:
  /// A branch with `open[branch]` takes no part; zero-ohm branches join their nodes. Beyond that, the
  /// resistances of `network` are not used. The ratio is V(output) / V(reference).
  ///
  /// Fails when a resistance that takes part is negative or not finite, when the excitation is shorted, when
  /// a node of `output`, of `reference` or of any branch that takes part has no path to the excitation, or
  /// when no resistances could put a voltage between the nodes of `reference`.
  static Result<BatchSolver> prepare(const Network& network, const std::vector<bool>& open, Port excitation,
                                     Port output, Port reference);

  /// Reads conductance[branch * solverLanes + lane] in S (fastest when aligned to 64 bytes); entries of open
  /// and of zero-ohm branches are not read. Writes ratio[lane] in V/V and, unless null,
  /// inputConductance[lane], the current in A that 1 V drives through the excitation port. Allocates nothing.
  ///
  /// A lane has no result, NaN in both, when one of its conductances is not a finite number above zero. Its
  /// ratio is NaN too when the reference is within 1e-12 of no voltage, its potentials being right to 1e-16.
  void solve(const double* conductance, double* ratio, double* inputConductance = nullptr);

 private:
  class Compiler;
  struct alignas(64) Lanes {
    std::array<double, solverLanes> of;
  };
  /// Number of something that has a number in each lane: branches' conductances come first, then the
  /// constants 0 and 1, then the result of each instruction. All but the conductances have a slot.
  using Value = std::uint32_t;
  static constexpr Value constants = 2;
  using Kernel = void (*)(double*, const double*, const double*, const double*);
  struct Instruction {
    Kernel kernel;
    std::array<Value, 3> operands;  ///< one that the kernel does not need repeats the one before
  };

  BatchSolver() = default;
  const double* lanesOf(Value value, const double* conductance) const;
  void run(std::size_t begin, std::size_t end, const double* conductance);

  Value m_branches = 0;
  std::vector<Value> m_read;        ///< branches whose conductances take part
  std::vector<Instruction> m_code;  ///< first those the ratio needs, then what only the input needs
  std::size_t m_ratioEnd = 0;       ///< instructions that the ratio needs
  Value m_ratio = 0;
  Value m_input = 0;
  std::vector<Lanes> m_slots;
};

}  // namespace core
