// SPDX-License-Identifier: GPL-3.0-or-later
// Every row of bridge_cases.csv against this program: published figures, and figures computed by closed
// forms, nodal analysis in other code, and ngspice 39. The table's last columns name the source of each.
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>

#include "tests/support/case_evaluation.h"
#include "tests/support/reached_digits.h"

using test::BridgeCase;
using test::Found;

namespace {

/// Groups that other parts of the program answer for. Who builds such a part takes its group from here.
const std::set<std::string> elsewhere = {"transverse"};

std::vector<BridgeCase> allCases() {
  std::vector<BridgeCase> cases;
  for (const auto& row : test::readCsv(SHUNTWRIGHT_TESTS_DIR "/reference/bridge_cases.csv"))
    cases.emplace_back(row);
  return cases;
}

std::vector<BridgeCase> casesHere() {
  auto cases = allCases();
  std::erase_if(cases, [](const BridgeCase& row) { return elsewhere.contains(row.text("group")); });
  return cases;
}

class BridgeCases : public testing::TestWithParam<BridgeCase> {};

}  // namespace

namespace test {
void PrintTo(const BridgeCase& row, std::ostream* out) { *out << row.text("id"); }
}  // namespace test

TEST_P(BridgeCases, AgreeWithTheirSource) {
  const BridgeCase& row = GetParam();

  const auto founds = test::evaluated(row);

  ASSERT_FALSE(founds.empty()) << row.text("group") << " has no " << row.text("quantity");
  for (const Found& found : founds)
    EXPECT_REACHED("Bridge cases, " + row.text("source_kind"), row.text("group"), found.value,
                   row.number("expected_value"), row.number("tolerance_abs"))
        << "by " << found.by << "\n  " << row.text("configuration") << ", " << row.text("quantity") << " in "
        << row.text("unit") << "\n  tolerance: " << row.text("tolerance_basis")
        << "\n  source: " << row.text("source") << " (" << row.text("source_kind")
        << ")\n  note: " << row.text("note");
}

INSTANTIATE_TEST_SUITE_P(Reference, BridgeCases, testing::ValuesIn(casesHere()), [](const auto& row) {
  std::string name = row.param.text("id");
  std::replace(name.begin(), name.end(), '-', '_');
  return name;
});

TEST(BridgeCasesTable, IsCheckedWhole) {
  // The table has 191 rows; a row more or less, or a group moved elsewhere, must be counted here.
  std::map<std::string, int> rows;
  std::set<std::string> ids;
  for (const BridgeCase& row : allCases()) {
    ++rows[row.text("group")];
    ids.insert(row.text("id"));
  }
  const std::map<std::string, int> expected = {{"equivalent_strain", 21},
                                               {"shunt_output", 15},
                                               {"linear_indication", 6},
                                               {"bridge_output", 16},
                                               {"shunt_choice", 23},
                                               {"nonlinearity", 10},
                                               {"leads", 39},
                                               {"insulation", 11},
                                               {"transducer", 8},
                                               {"copper", 8},
                                               {"line_fit", 7},
                                               {"uncertainty", 4},
                                               {"transverse", 3},
                                               {"gauge_factor", 3},
                                               {"self_heating", 7},
                                               {"e_series", 10}};
  EXPECT_EQ(rows, expected);
  EXPECT_EQ(ids.size(), 191u) << "ids are not unique";
  EXPECT_EQ(casesHere().size(), 188u);
}

TEST(BridgeCasesTable, NetlistsAreSolvedBothWays) {
  // 95 rows hold a netlist. Each is found by the general solver and by a template; of the two leaks from a
  // gauge's grid to ground the netlist holds one half bridge, the template a bridge with a balanced other
  // half.
  std::map<std::string, int> found;
  for (const BridgeCase& row : casesHere())
    if (row.has("netlist_ohm"))
      for (const Found& one : test::evaluated(row)) ++found[one.by];
  EXPECT_EQ(found.at("network"), 95);
  EXPECT_EQ(found.at("template"), 95);
}
