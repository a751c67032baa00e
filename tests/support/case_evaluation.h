// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "tests/support/bridge_case.h"

namespace test {

/// What this program makes of a row, and by which of its parts: "network" (the general solver on the
/// row's netlist), "template" (a bridge of ours, as a document holds it), "wire", "line".
struct Found {
  std::string by;
  double value = 0;
};
using Founds = std::vector<Found>;

/// The row's quantity by every part of the program that can find it; in the row's unit. Empty when the
/// row's quantity is not known in its group.
Founds evaluated(const BridgeCase& row);

}  // namespace test
