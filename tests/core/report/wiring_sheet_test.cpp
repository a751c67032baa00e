// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/wiring_sheet.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/document/edits.h"
#include "core/report/html.h"
#include "core/wiring/wiring_rules.h"
#include "tests/core/report/words.h"
#include "tests/support/setups.h"

namespace core {
namespace wiring_sheet_test {

using testing::HasSubstr;
using testing::Not;

/// Four arms of 350 ohm without leads, R1 of 100 kohm over arm 2, R2 over arm 1, both on pins.
Channel wiredChannel() {
  Channel channel;
  channel.name = "TP-21";
  Setup setup = test::equalArms(BridgeType::FullBending, Resistance(350));
  setup = test::withShuntOnArm(setup, Resistance(100000), 2);
  setup = test::withShuntOnArm(setup, Resistance(100000), 1);
  setup.wiring = usualWiring(setup);
  for (const std::size_t k : {0, 1}) setup.shunts[k].jumpers = *jumpersFor(setup, k);
  channel.setup = setup;
  return channel;
}

std::string wordsOf(const Channel& channel, const OhmmeterConditions& conditions = {}) {
  return Words(wiringSheet(withChannelInserted({}, 0, channel), 0, conditions));
}

TEST(WiringSheet, SaysHowTheBridgeIsConnected) {
  Channel channel = wiredChannel();
  EXPECT_THAT(wordsOf(channel), Not(HasSubstr("Not connected")));
  channel.setup.bridge.hookup = {.signalReversed = true};
  channel.setup.bridge.hookup.broken[static_cast<std::size_t>(LeadRole::SignalPlus)] = true;
  const Report sheet = wiringSheet(withChannelInserted({}, 0, channel), 0, {});
  const std::string connection = connectionText(channel.setup.bridge);
  EXPECT_EQ(connection,
            "Not connected as the template says: The signal wires are reversed: the instrument measures S- "
            "against S+. Lead S+ is broken. All values are those of this connection.");
  EXPECT_EQ(std::get<Caution>(sheet.sections[0].blocks[1]).text, connection) << "before all else";
  EXPECT_EQ(std::get<Caution>(sheet.sections.back().blocks[1]).text, connection)
      << "above the ohmmeter's values";
  EXPECT_EQ(sheet.sections[1].heading, "Check of pins and jumpers");
  EXPECT_EQ(std::get<Caution>(sheet.sections[1].blocks[0]).text, "Lead S+ is broken.");
}

TEST(WiringSheet, BeginsWithTheCautions) {
  const std::string words = wordsOf(wiredChannel());
  std::size_t last = 0;
  for (const std::string& caution : wiringCautions()) {
    const std::size_t at = words.find(caution);
    ASSERT_NE(at, std::string::npos) << caution;
    EXPECT_LT(at, words.find("Pins")) << "before anything is wired";
    EXPECT_GE(at, last);
    last = at;
  }
  EXPECT_THAT(words, HasSubstr("Switch the excitation off before you wire"));
  EXPECT_THAT(words, HasSubstr("discharged"));
  EXPECT_THAT(words, HasSubstr("local codes"));
  EXPECT_THAT(words, HasSubstr("responsible licensed or authorised person"));
}

TEST(WiringSheet, ListsJumpersWithPolarityPlaceAndBoxes) {
  const Table table = jumperTable(wiredChannel().setup);
  ASSERT_EQ(table.rows.size(), 4U);
  // Over arm 2 the output rises, over arm 1 it falls: the conventions of core/circuit/node.h.
  EXPECT_EQ(table.rows[0].cells[3], "positive");
  EXPECT_EQ(table.rows[2].cells[3], "negative");
  EXPECT_EQ(table.rows[0].cells[5], "1 of 2");
  EXPECT_EQ(table.rows[0].cells[6], "J2-1 (R1 end 1)");
  EXPECT_EQ(table.rows[0].cells[8], "☐");
  EXPECT_EQ(table.rows[1].cells[0], "") << "the shunt is named once";
}

TEST(WiringSheet, SaysWhichShuntsNeedNoJumpers) {
  Channel channel = wiredChannel();
  channel.setup.wiring = {};
  for (Shunt& shunt : channel.setup.shunts) shunt.jumpers.clear();
  const Table table = jumperTable(channel.setup);
  ASSERT_EQ(table.rows.size(), 2U);
  EXPECT_EQ(table.rows[0].cells[5], "inside the instrument");
}

TEST(WiringSheet, TellsErrorsBeforeTheWork) {
  EXPECT_THAT(wordsOf(wiredChannel()), HasSubstr("No fault was found"));
  Channel channel = wiredChannel();
  channel.setup.shunts[0].jumpers.pop_back();
  const std::string words = wordsOf(channel);
  EXPECT_THAT(words, HasSubstr("The wiring has errors. Mend them before you lay a jumper."));
  EXPECT_THAT(words, HasSubstr("hanging end"));
}

TEST(WiringSheet, ListsEveryPairOfTerminalsAndTheEndsOfResistors) {
  const Channel channel = wiredChannel();
  const auto table = ohmTable(channel, {}, {});
  ASSERT_TRUE(table) << table.error().text();
  ASSERT_EQ(table->rows.size(), 6U + 2U);
  // Derived: 350 ohm over a diagonal of four equal arms.
  EXPECT_EQ(table->rows[0].cells[0], "P+");
  EXPECT_EQ(table->rows[0].cells[1], "P-");
  EXPECT_THAT(table->rows[0].cells[2], HasSubstr("350."));
  EXPECT_EQ(table->rows[0].cells[5], "☐");
  EXPECT_EQ(table->rows[6].cells[0], "R1 end 1");
  EXPECT_THAT(table->rows[6].cells[2], testing::StartsWith("100000"));
}

TEST(WiringSheet, ListsAJumpersStateWithTheShuntsPlaces) {
  const Channel channel = wiredChannel();
  const auto pairs = ohmPairs(channel.setup, {"R1", 1});
  EXPECT_EQ(pairs.size(), 6U + 2U);  // ends and places, each two; the diagonals
  const auto table = ohmTable(channel, {"R1", 1}, {});
  ASSERT_TRUE(table);
  EXPECT_THAT(table->caption, HasSubstr("after jumper 1 of 2"));
  Channel inside = channel;
  inside.setup.wiring = {};
  EXPECT_EQ(ohmPairs(inside.setup, {"R1", 0}).size(), 1U + 2U) << "ends without pins cannot be reached";
}

TEST(WiringSheet, ListsTheThirdWiresTerminalOfAQuarterBridge) {
  const auto setup =
      test::withLeads(test::equalArms(BridgeType::QuarterThreeWire, Resistance(350)), Resistance(2));
  EXPECT_EQ(ohmPairs(setup, {}).size(), 10U);  // five terminals
}

TEST(WiringSheet, ShowsWhatWasMeasuredAndWhatFits) {
  Channel channel = wiredChannel();
  EXPECT_THAT(wordsOf(channel), Not(HasSubstr("What fits the readings")));
  EXPECT_TRUE(ohmFaultTable(channel, {}).rows.empty());
  // Derived: with arm 1 open P+ to P- is 700 ohm, P+ to S- 1050.
  channel.ohmReadings = {{{}, Node::PMinus, Node::PPlus, Resistance(700)},
                         {{}, Node::PPlus, Node::SMinus, Resistance(1050)},
                         {{}, Node::SPlus, Node::PMinus, Resistance(350)}};
  const auto table = ohmTable(channel, {}, {});
  ASSERT_TRUE(table);
  EXPECT_THAT(table->rows[0].cells[4], HasSubstr("700"));
  EXPECT_EQ(table->rows[0].cells[5], "outside");
  EXPECT_EQ(table->rows[0].verdict, Verdict::Fail);
  EXPECT_THAT(ohmFaultTable(channel, {}).rows[0].cells[1], HasSubstr("arm 1 is open"));
  EXPECT_EQ(ohmFaultTable(channel, {}).rows[0].cells[3], "yes");
}

TEST(WiringSheet, TheRecordHasWhatWasMeasuredAndSaysWhatHasNoPlaceAnyMore) {
  Channel channel = wiredChannel();
  channel.ohmReadings = {{{}, Node::PMinus, Node::PPlus, Resistance(351.25)},
                         {{"gone", 0}, Node::PPlus, Node::SMinus, Resistance(262.5)}};
  const std::string text = Words(reportOf(withChannelInserted({}, 0, channel)));
  EXPECT_THAT(text, HasSubstr("351.2"));
  EXPECT_THAT(text, HasSubstr("Instrument connected and switched off"));
  EXPECT_THAT(
      text, HasSubstr("One more reading is between points that the sheet does not list, or that are gone."));
}

TEST(WiringSheet, ForeignNamesStayText) {
  Channel channel = wiredChannel();
  channel.name = "<b>TP</b>";
  channel.setup.wiring.pins[0].name.connector = "<script>x</script>";
  const std::string html = reportHtml(wiringSheet(withChannelInserted({}, 0, channel), 0, {}));
  EXPECT_THAT(html, Not(HasSubstr("<script>")));
  EXPECT_THAT(html, Not(HasSubstr("<b>TP")));
  EXPECT_THAT(html, HasSubstr("&lt;script&gt;"));
}

TEST(WiringSheet, AChannelThatCannotBeReckonedSaysSo) {
  Channel channel = wiredChannel();
  channel.setup.bridge.arms[2] = Resistance(0);
  EXPECT_THAT(wordsOf(channel), HasSubstr("arm 3: the resistance"));
}

}  // namespace wiring_sheet_test
}  // namespace core
