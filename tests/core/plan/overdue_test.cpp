// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/overdue.h"

#include <gtest/gtest.h>

namespace core {
namespace {

constexpr Date day(int year, unsigned month, unsigned number) {
  return std::chrono::year(year) / std::chrono::month(month) / std::chrono::day(number);
}

core::Setup setupWith(Part part) {
  core::Setup setup;
  setup.shunts.push_back({.name = "R1", .resistance = Resistance(174650), .part = std::move(part)});
  setup.sequence = {{.label = "zero", .closed = {}}, {.label = "R1", .closed = {0}}};
  return setup;
}

TEST(Overdue, a_resistor_is_good_up_to_and_on_its_day) {
  const core::Setup setup = setupWith({.id = "AF-0104", .due = day(2026, 9, 1)});
  EXPECT_TRUE(overdueShunts(setup, day(2026, 9, 1)).empty());
  EXPECT_EQ(overdueShunts(setup, day(2026, 9, 2)), std::vector<std::size_t>{0});
}

TEST(Overdue, one_that_no_step_closes_or_that_nobody_watches_is_not_told) {
  core::Setup idle = setupWith({.id = "AF-0104", .due = day(2026, 9, 1)});
  idle.sequence.pop_back();
  EXPECT_TRUE(overdueShunts(idle, day(2027, 1, 1)).empty());
  EXPECT_EQ(overdueSentence(setupWith({.id = "AF-0104"}), day(2027, 1, 1)), "");
}

TEST(Overdue, the_sentence_names_resistor_shunt_and_both_days) {
  EXPECT_EQ(overdueSentence(setupWith({.id = "AF-0104", .due = day(2026, 9, 1)}), day(2026, 11, 25)),
            "Overdue for calibration on 2026-11-25: AF-0104 (shunt R1, due 2026-09-01).");
  EXPECT_EQ(overdueSentence(setupWith({.id = "", .due = day(2026, 9, 1)}), day(2026, 11, 25)),
            "Overdue for calibration on 2026-11-25: R1 (due 2026-09-01).");
}

}  // namespace
}  // namespace core
