// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/plan/prediction.h"
#include "tests/support/csv.h"

/// The rows of tests/reference/bridge_cases.csv as circuits: once as the netlist that stands there, for
/// the general solver, once as a bridge of one of our templates.
///
/// Columns: `netlist_ohm` holds resistors "a>b:ohm" apart by ';', without the shunt;
/// `shunt_elements_ohm` the added ones; the output is (V(out1) - V(out2)) / (V(ref1) - V(ref2)) with
/// `exc_nodes` fed. `other_inputs` holds "name=value" apart by ';'.
namespace test {

/// One row. A missing or unreadable number throws, so that no row passes without its input.
class BridgeCase {
 public:
  explicit BridgeCase(CsvRow row);

  const std::string& text(const std::string& column) const { return m_row.at(column); }
  bool has(const std::string& column) const { return !text(column).empty(); }
  double number(const std::string& column) const { return test::number(m_row, column); }
  double numberOr(const std::string& column, double otherwise) const;
  bool hasOther(const std::string& name) const { return m_other.contains(name); }
  const std::string& other(const std::string& name) const { return m_other.at(name); }
  double otherNumber(const std::string& name) const;

 private:
  CsvRow m_row;
  std::map<std::string, std::string> m_other;
};

/// One resistor of a netlist.
struct Element {
  std::string a, b;
  double ohm = 0;
};

/// A netlist fed with 1 V and solved by core::Solver. All resistors may be changed between calls.
class CaseNetwork {
 public:
  explicit CaseNetwork(const BridgeCase& row);
  CaseNetwork(std::vector<Element> netlist, std::pair<std::string, std::string> supply);

  std::vector<Element> elements;
  std::vector<Element> shunts;

  double potential(const std::string& node, bool shunted = false) const;
  double output(bool shunted = false) const;
  double change() const { return output(true) - output(); }
  /// Current from the supply, in A per volt, without shunts.
  double supplyCurrent() const;
  Element& between(const std::string& a, const std::string& b);

 private:
  std::pair<std::string, std::string> m_supply, m_output, m_reference;
};

/// The row as a bridge without shunts: arms, leads and input resistance from its netlist, or equal arms
/// where it has none. None when no template has the netlist's topology.
std::optional<core::Setup> setupOf(const BridgeCase& row);
/// As above, with a step for the row's shunt.
std::optional<core::Setup> shuntedSetupOf(const BridgeCase& row);

}  // namespace test
