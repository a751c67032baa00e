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

/// What ngspice writes when it runs `netlist` as a batch job, as a user would.
core::Result<std::string> batchOutput(const std::string& netlist);

}  // namespace test
