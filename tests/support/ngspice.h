// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/units/result.h"

namespace test {

/// A netlist for ngspice and the nodes whose operating-point voltages are wanted.
struct Deck {
  std::string netlist;  ///< whole file: title line first
  std::vector<std::string> nodes;
};

/// Voltages in V: one list per deck, in the order of its nodes, printed with all their digits.
using Voltages = std::vector<std::vector<double>>;

/// Runs all decks in one process of ngspice. Fails when ngspice is not installed, or when it gives no
/// voltage where one was asked for; the error then holds what it wrote.
core::Result<Voltages> operatingPoints(const std::vector<Deck>& decks);

/// A netlist that we exported, read by what its own comments say and by nothing else.
struct ExportedDeck {
  Deck deck;                            ///< asks for the voltages that the output is made of
  std::vector<double> signal, divisor;  ///< what each of them counts in the output and in what divides it
  double fixedDivisor = 0;              ///< V; of a constant current, that drives a stated divisor

  /// The output in V/V of the voltages that ngspice gave.
  double outputOf(const std::vector<double>& voltages) const;
};

/// Fails when the comments do not say where the output is.
core::Result<ExportedDeck> exportedDeck(const std::string& netlist);

/// What ngspice writes when it runs `netlist` as a batch job, as a user would.
core::Result<std::string> batchOutput(const std::string& netlist);

}  // namespace test
