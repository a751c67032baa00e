// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/search/search_dialog.h"

#include <gtest/gtest.h>

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTest>
#include <functional>

#include "core/diagnose/fault.h"
#include "core/document/apply.h"
#include "core/document/edits.h"
#include "core/wiring/wiring_rules.h"
#include "tests/support/printing.h"
#include "tests/support/sample_channel.h"
#include "ui/fields/count_edit.h"
#include "ui/search/search_tables.h"
#include "ui/search/use_set.h"
#include "ui/sheet_view.h"
#include "ui/theme.h"

namespace ui {
namespace {

core::Stock smallStock() {
  core::Stock stock;
  stock.resistors = {
      {.id = "S-101", .nominal = core::Resistance(174650), .tolerance = 1e-4},
      {.id = "S-102", .nominal = core::Resistance(87150), .tolerance = 1e-4},
      {.id = "S-103", .nominal = core::Resistance(59000), .tolerance = 1e-3},
      {.id = "S-104", .nominal = core::Resistance(174600), .due = core::dateFromText("2020-01-01")},
  };
  return stock;
}

core::Document documentWithStock() {
  core::Channel channel = sample::nineStepChannel();
  channel.setup.bridge.leads = {};
  return core::withStock(sample::documentOf({channel}), smallStock());
}

class Search : public testing::Test {
 protected:
  Search() : session(documentWithStock()), dialog(session) {
    dialog.show();
    dialog.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&dialog));
  }

  template <class W>
  W* find(const char* name) {
    return dialog.findChild<W*>(name);
  }
  void type(const char* field, const QString& text) {
    find<QLineEdit>(field)->setFocus();
    find<QLineEdit>(field)->selectAll();
    QTest::keyClicks(find<QLineEdit>(field), text);
  }
  /// Two levels that two resistors of the stock give. Derived: over a gauge of 350 Ω and factor 2 without
  /// leads 350/(350 + 174650) = 1/500 simulates -1000 µm/m, and 350/(350 + 87150) = 1/250 simulates -2000
  /// µm/m.
  void askForTwoLevels() {
    find<QComboBox>("levelsKind")->setCurrentIndex(1);
    type("levelList", "-1000; -2000");
    find<CountEdit>("positions")->setValue(2);
  }
  QString sentence() { return find<QLabel>("searchSentence")->text(); }
  void searchToTheEnd() {
    QTest::mouseClick(find<QPushButton>("search"), Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !find<QPushButton>("cancelSearch")->isEnabled(); }, 20'000));
  }
  QString cell(const char* table, int row, int column) {
    const auto* model = find<SheetView>(table)->model();
    return model->index(row, column).data().toString();
  }

  Session session;
  SearchDialog dialog;
};

TEST_F(Search, FindsTheTwoResistorsThatGiveTheLevelsAndSaysItIsProven) {
  askForTwoLevels();
  searchToTheEnd();
  EXPECT_TRUE(sentence().startsWith("Proven best of")) << sentence();
  EXPECT_EQ(cell("setsTable", 0, 0), "87.15 kΩ (S-102), 174.65 kΩ (S-101)");
  EXPECT_EQ(cell("setsTable", 0, 3), "0");  // no new parts
  EXPECT_EQ(cell("levelsTable", 0, 0), "-1000");
  EXPECT_EQ(cell("levelsTable", 0, 1), "-1000");
  EXPECT_EQ(cell("levelsTable", 0, 3), "S-101");
  EXPECT_EQ(cell("levelsTable", 1, 3), "S-102");
}

TEST_F(Search, LeavesOverduePartsOutUnlessTheyAreAskedFor) {
  session.setToday(*core::dateFromText("2026-11-25"));
  find<QComboBox>("levelsKind")->setCurrentIndex(1);
  // Derived: 174600 Ω gives -350/(350 + 174600)/2, which is -1000.286 µm/m: the overdue one fits better.
  type("levelList", "-1000.286");
  find<CountEdit>("positions")->setValue(1);
  searchToTheEnd();
  EXPECT_EQ(cell("levelsTable", 0, 3), "S-101");
  find<QCheckBox>("withOverdue")->click();
  searchToTheEnd();
  EXPECT_EQ(cell("levelsTable", 0, 3), "S-104");
}

TEST_F(Search, UsePutsShuntsMadeOfThePartsAndTheirSequenceInOneUndoStep) {
  askForTwoLevels();
  type("negativeContact", "0.1");
  searchToTheEnd();
  const core::Document before = session.document();
  QTest::mouseClick(find<QPushButton>("useSet"), Qt::LeftButton);
  const core::Setup& setup = session.channel()->setup;
  ASSERT_EQ(setup.shunts.size(), 2u);
  EXPECT_EQ(setup.shunts[0].name, "S-102 negative");
  EXPECT_EQ(setup.shunts[0].part.id, "S-102");
  EXPECT_EQ(setup.shunts[0].contact, core::Resistance(0.1));
  EXPECT_EQ(setup.shunts[1].resistance, core::Resistance(174650));
  EXPECT_EQ(setup.uncertainties.stated.at({core::InputKind::Shunt, 1}).amount, 1e-4);
  ASSERT_EQ(setup.sequence.size(), 4u);
  EXPECT_EQ(setup.sequence[1].label, "-1000");
  EXPECT_EQ(setup.sequence[1].closed, std::vector<std::size_t>{1});
  EXPECT_EQ(setup.sequence[2].closed, std::vector<std::size_t>{0});
  EXPECT_TRUE(setup.sequence[3].closed.empty());
  EXPECT_EQ(session.history().count(), 1);
  EXPECT_EQ(session.history().undoText(), "Use chosen resistors");
  session.history().undo();
  EXPECT_EQ(session.document(), before);
}

TEST_F(Search, AddingKeepsPresentShuntsStepsAndReadings) {
  session.editChannel("Read", sample::withCheckReading(*session.channel(), 1));
  session.selectCheck(0);
  SearchDialog another(session);
  another.show();
  another.findChild<QComboBox*>("levelsKind")->setCurrentIndex(1);
  another.findChild<QLineEdit*>("levelList")->setText("-1000; -2000");
  another.findChild<QComboBox*>("useHow")->setCurrentIndex(1);
  another.findChild<QPushButton*>("search")->click();
  ASSERT_TRUE(
      QTest::qWaitFor([&] { return another.findChild<QPushButton*>("useSet")->isEnabled(); }, 20'000));
  another.findChild<QPushButton*>("useSet")->click();
  const core::Setup& setup = session.channel()->setup;
  EXPECT_EQ(setup.shunts.size(), 8u);
  // Nine steps, which end with zero, then two levels and zero.
  ASSERT_EQ(setup.sequence.size(), 12u);
  EXPECT_EQ(setup.sequence[9].label, "-1000");
  EXPECT_TRUE(session.check()->readings[8]);
  EXPECT_FALSE(session.check()->readings[9]);
}

TEST_F(Search, CautionsBeforeUseDropsReadings) {
  auto* caution = find<QLabel>("useCaution");
  askForTwoLevels();
  searchToTheEnd();
  EXPECT_FALSE(caution->isVisible());  // nothing was read
  session.editChannel("Read", sample::withCheckReading(*session.channel(), 1));
  SearchDialog another(session);
  another.show();
  another.findChild<QComboBox*>("levelsKind")->setCurrentIndex(1);
  another.findChild<QLineEdit*>("levelList")->setText("-1000; -2000");
  caution = another.findChild<QLabel*>("useCaution");
  EXPECT_FALSE(caution->isVisible());  // there is nothing to be used yet
  another.findChild<QPushButton*>("search")->click();
  ASSERT_TRUE(
      QTest::qWaitFor([&] { return another.findChild<QPushButton*>("useSet")->isEnabled(); }, 20'000));
  EXPECT_TRUE(caution->isVisible());
  EXPECT_TRUE(caution->text().contains("readings of open checks will be dropped"));
  EXPECT_TRUE(caution->text().contains("Close those checks first to keep them"));
  another.findChild<QComboBox*>("useHow")->setCurrentIndex(1);
  EXPECT_FALSE(caution->isVisible());  // added: they stay
}

TEST_F(Search, ResultsOfAFormThatWasChangedCannotBeUsedUntilSearchedAgain) {
  auto* use = find<QPushButton>("useSet");
  askForTwoLevels();
  searchToTheEnd();
  ASSERT_TRUE(use->isEnabled());
  type("levelList", "-1000; -2100");
  EXPECT_FALSE(use->isEnabled());
  EXPECT_TRUE(sentence().startsWith("These results are for what was asked before")) << sentence();
  EXPECT_EQ(find<QLabel>("searchSentence")->palette().color(QPalette::WindowText),
            coloursFor(dialog.palette()).quiet);
  searchToTheEnd();
  EXPECT_TRUE(use->isEnabled());
  EXPECT_TRUE(sentence().startsWith("Proven best")) << sentence();
  const std::vector<std::function<void()>> changes = {
      [&] { find<CountEdit>("positions")->setValue(3); },
      [&] { find<QCheckBox>("atTolerance")->click(); },
      [&] { find<QComboBox>("missUnit")->setCurrentIndex(1); },
      [&] { type("negativeContact", "0.2"); },
  };
  for (std::size_t k = 0; k < changes.size(); ++k) {
    changes[k]();
    EXPECT_FALSE(use->isEnabled()) << k;
    searchToTheEnd();
    EXPECT_TRUE(use->isEnabled()) << k;
  }
}

TEST_F(Search, SaysWhereTheProvenBestIsNotGoodEnough) {
  find<QComboBox>("levelsKind")->setCurrentIndex(1);
  // Both are nearest to the one resistor of -1000 µm/m; the limit of 1 % is 10 µm/m, and -1100 misses by 100.
  type("levelList", "-1000; -1100");
  find<CountEdit>("positions")->setValue(1);
  find<QCheckBox>("withOverdue")->setChecked(false);
  searchToTheEnd();
  EXPECT_TRUE(sentence().startsWith("Proven best")) << sentence();
  EXPECT_TRUE(sentence().contains("misses by more than the channel's limit at")) << sentence();
  EXPECT_TRUE(sentence().contains("the levels -1000, -1100 are served by the same resistors")) << sentence();
  type("levelList", "-1000; -2000");
  find<CountEdit>("positions")->setValue(2);
  searchToTheEnd();
  EXPECT_FALSE(sentence().contains("limit")) << sentence();
  EXPECT_FALSE(sentence().contains("same resistors")) << sentence();
}

TEST_F(Search, SaysWhatIsWrongAndKeepsWhatWasFound) {
  askForTwoLevels();
  searchToTheEnd();
  type("levelList", "-1000; much");
  QTest::mouseClick(find<QPushButton>("search"), Qt::LeftButton);
  EXPECT_TRUE(sentence().contains("much")) << sentence();
  EXPECT_EQ(cell("levelsTable", 0, 3), "S-101");
  type("levelList", "-1000");
  find<QCheckBox>("fromStock")->click();
  QTest::mouseClick(find<QPushButton>("search"), Qt::LeftButton);
  EXPECT_TRUE(sentence().contains("nothing to choose from")) << sentence();
  EXPECT_EQ(session.history().count(), 0);
}

TEST_F(Search, PlaceThatWorksTheWrongWayIsRefusedInWords) {
  askForTwoLevels();
  auto* from = find<QComboBox>("negativeFrom");
  auto* to = find<QComboBox>("negativeTo");
  from->setCurrentIndex(from->findText("arm 2 begin"));
  to->setCurrentIndex(to->findText("arm 2 end"));
  searchToTheEnd();
  EXPECT_FALSE(sentence().startsWith("Proven")) << sentence();
  EXPECT_FALSE(find<QPushButton>("useSet")->isEnabled());
}

TEST_F(Search, TellsALevelThatCannotBeReachedWithTheNearest) {
  find<QComboBox>("levelsKind")->setCurrentIndex(1);
  type("levelList", "-1000; -50000");  // the smallest resistor of the stock gives about -3000 µm/m
  searchToTheEnd();
  EXPECT_TRUE(sentence().contains("-50000")) << sentence();
  EXPECT_TRUE(find<QPushButton>("useSet")->isEnabled());
}

TEST_F(Search, PreferredValuesAreNewParts) {
  find<QCheckBox>("fromStock")->click();
  find<QComboBox>("seriesBox")->setCurrentText("E24");
  type("seriesFrom", "10k");
  type("seriesTo", "1M");
  find<QComboBox>("levelSides")->setCurrentIndex(1);
  find<CountEdit>("positions")->setValue(3);
  searchToTheEnd();
  EXPECT_EQ(find<SheetView>("setsTable")->model()->rowCount(), 10);
  EXPECT_EQ(cell("setsTable", 0, 3), "3");
  EXPECT_EQ(find<SheetView>("levelsTable")->model()->rowCount(), 3);
}

TEST_F(Search, FittedResistorStays) {
  askForTwoLevels();
  type("fittedTyped", "59k");
  searchToTheEnd();
  EXPECT_TRUE(cell("setsTable", 0, 0).startsWith("59 kΩ")) << cell("setsTable", 0, 0);
}

TEST_F(Search, SharesOfATestRangeGiveTheLevels) {
  find<QComboBox>("levelsKind")->setCurrentIndex(2);
  type("testRange", "2000");
  type("levelShares", "50; 100");
  find<QComboBox>("levelSides")->setCurrentIndex(2);
  searchToTheEnd();
  EXPECT_EQ(cell("levelsTable", 0, 0), "-1000");
  EXPECT_EQ(cell("levelsTable", 1, 0), "-2000");
}

TEST_F(Search, CancelKeepsTheBestSoFarAndSaysThatNothingIsProven) {
  find<QCheckBox>("fromStock")->click();
  find<QComboBox>("seriesBox")->setCurrentText("E192");
  type("seriesFrom", "1k");
  type("seriesTo", "10M");
  find<CountEdit>("positions")->setValue(8);
  find<QCheckBox>("together")->click();
  find<CountEdit>("levelCount")->setValue(20);
  QTest::mouseClick(find<QPushButton>("search"), Qt::LeftButton);
  ASSERT_TRUE(find<QPushButton>("cancelSearch")->isEnabled());
  EXPECT_FALSE(find<QPushButton>("search")->isEnabled());
  QTest::mouseClick(find<QPushButton>("cancelSearch"), Qt::LeftButton);
  ASSERT_TRUE(QTest::qWaitFor([&] { return find<QPushButton>("search")->isEnabled(); }, 20'000));
  EXPECT_TRUE(sentence().startsWith("Cancelled")) << sentence();
}

TEST(UseSet, ResistorsClosedTogetherAreOneStep) {
  core::Channel channel = sample::nineStepChannel();
  core::ResistorSearch search;
  search.positive = core::ShuntPlace{core::Node::Arm2Begin, core::Node::Arm2End, {}, {}};
  core::ResistorSet set;
  set.resistors = {{.value = core::Resistance(87150), .tolerance = 1e-3, .name = "a"},
                   {.value = core::Resistance(174650), .tolerance = 1e-3, .name = "b"}};
  set.levels = {{.wanted = 3000, .reached = 2990, .miss = 0.003, .closed = {0, 1}},
                {.wanted = 1000, .reached = 1002, .miss = 0.002, .closed = {1}}};
  const core::Channel used = withSet(channel, {}, search, set, true);
  ASSERT_EQ(used.setup.sequence.size(), 4u);
  EXPECT_EQ(used.setup.sequence[1].label, "+1000");
  EXPECT_EQ(used.setup.sequence[2].label, "+3000");
  EXPECT_EQ(used.setup.sequence[2].closed, (std::vector<std::size_t>{0, 1}));
  EXPECT_EQ(used.setup.shunts[0].name, "87.15k positive");
  EXPECT_EQ(used.setup.uncertainties.stated.at({core::InputKind::Shunt, 0}).amount, 1e-3);
  EXPECT_EQ(used.setup.sequence[1].hold, channel.setup.sequence[0].hold);
}

TEST(UseSet, ShuntsAreNamedAfterWhatTheyAreMadeOfAndNeverAfterAnotherPart) {
  core::ResistorSearch search;
  search.positive = core::ShuntPlace{core::Node::Arm2Begin, core::Node::Arm2End, {}, {}};
  search.negative = core::ShuntPlace{core::Node::Arm1Begin, core::Node::Arm1End, {}, {}};
  core::Stock stock;
  for (const char* id : {"R1", "R2", "R3", "59k", "100 Ω"})
    stock.resistors.push_back({.id = id, .nominal = core::Resistance(1000), .tolerance = 1e-3});
  core::ResistorSet set;
  const auto candidate = [](double ohm, const std::string& part) {
    return core::Candidate{.value = core::Resistance(ohm), .tolerance = 1e-3, .part = part, .name = "x"};
  };
  set.resistors = {candidate(86600, ""), candidate(1000, "R3"),  candidate(59000, ""),
                   candidate(86600, ""), candidate(1.5e6, "R9"), candidate(470, "")};
  for (std::size_t k = 0; k < set.resistors.size(); ++k)
    set.levels.push_back({.wanted = 1000.0 + static_cast<double>(k), .closed = {k}});
  set.levels.push_back({.wanted = -1000, .closed = {1}});
  const core::Channel used = withSet(sample::nineStepChannel(), stock, search, set, true);
  std::vector<std::string> names;
  for (const core::Shunt& shunt : used.setup.shunts) names.push_back(shunt.name);
  // "59k" is a part of the stock that this shunt is not made of, and the stock holds no R9.
  EXPECT_EQ(names,
            (std::vector<std::string>{"86.6k positive", "R3 positive", "59 kΩ positive", "86.6k positive (2)",
                                      "1.5M positive", "470 Ω positive", "R3 negative"}));
}

/// Both sides of arms 1 and 2, as two resistors of preferred values serve them.
struct NewPartsOnBothSides {
  core::ResistorSearch search;
  core::ResistorSet set;

  NewPartsOnBothSides() {
    search.positive = core::ShuntPlace{core::Node::Arm2Begin, core::Node::Arm2End, {}, {}};
    search.negative = core::ShuntPlace{core::Node::Arm1Begin, core::Node::Arm1End, {}, {}};
    set.resistors = {{.value = core::Resistance(86600), .tolerance = 1e-3, .name = "86k6 of E96"},
                     {.value = core::Resistance(130000), .tolerance = 1e-3, .name = "130k of E96"}};
    set.levels = {{.wanted = 2000, .closed = {0}},
                  {.wanted = 1000, .closed = {1}},
                  {.wanted = -2000, .closed = {0}},
                  {.wanted = -1000, .closed = {1}}};
  }
};

std::vector<std::string> partsOf(const core::Channel& channel) {
  std::vector<std::string> parts;
  for (const core::Shunt& shunt : channel.setup.shunts) parts.push_back(shunt.part.id);
  return parts;
}

using Parts = std::vector<std::string>;

TEST(UseSet, NewPartThatServesBothSidesIsOnePart) {
  const NewPartsOnBothSides given;
  const core::Channel used = withSet(sample::nineStepChannel(), {}, given.search, given.set, true);
  EXPECT_EQ(partsOf(used), (Parts{"86.6k", "130k", "86.6k", "130k"}));
  // Two ends of two resistors have a pin, and a fault of a resistor is one of both its places.
  const core::Wiring wired = core::usualWiring(used.setup);
  EXPECT_EQ(
      std::count_if(wired.pins.begin(), wired.pins.end(),
                    [](const core::Pin& pin) { return std::holds_alternative<core::ResistorEnd>(pin.use); }),
      4);
  const core::Setup faulty = core::withFault(used.setup, {core::CauseKind::ShuntValue, 1, 0, 127.0 / 130});
  EXPECT_DOUBLE_EQ(faulty.shunts[1].resistance.base(), 127000);
  EXPECT_DOUBLE_EQ(faulty.shunts[3].resistance.base(), 127000);
  EXPECT_DOUBLE_EQ(faulty.shunts[2].resistance.base(), 86600);
}

TEST(UseSet, TwoNewPartsOfOneValueAreTwo) {
  NewPartsOnBothSides given;
  given.set.resistors[1].value = core::Resistance(86600);
  const core::Channel used = withSet(sample::nineStepChannel(), {}, given.search, given.set, true);
  EXPECT_EQ(partsOf(used), (Parts{"86.6k", "86.6k (2)", "86.6k", "86.6k (2)"}));
}

TEST(UseSet, NewPartIsNotCalledAsAnotherOfStockOrChannelIs) {
  const NewPartsOnBothSides given;
  core::Stock stock;
  stock.resistors = {{.id = "130k", .nominal = core::Resistance(1000), .tolerance = 1e-3}};
  core::Channel channel = sample::nineStepChannel();
  core::Shunt other{"86.6k", core::Resistance(5000), core::Node::Arm3Begin, core::Node::Arm3End};
  channel.setup.shunts = {other};
  channel.setup.sequence.clear();
  const core::Channel used = withSet(channel, stock, given.search, given.set, false);
  EXPECT_EQ(partsOf(used), (Parts{"", "86.6k (2)", "130 kΩ", "86.6k (2)", "130 kΩ"}));
}

TEST(UseSet, NewPartsThatAreThereAlreadyAreUsedAgain) {
  NewPartsOnBothSides given;
  const core::Channel once = withSet(sample::nineStepChannel(), {}, given.search, given.set, true);
  EXPECT_EQ(withSet(once, {}, given.search, given.set, false).setup.shunts, once.setup.shunts);
  given.set.levels.erase(given.set.levels.begin() + 2, given.set.levels.end());
  const core::Channel positive = withSet(once, {}, given.search, given.set, true);
  given = {};
  EXPECT_EQ(partsOf(withSet(positive, {}, given.search, given.set, false)),
            (Parts{"86.6k", "130k", "86.6k", "130k"}));
}

TEST(UseSet, FittedResistorWithoutAPartIsOneWithItsOtherPlace) {
  core::Channel channel = sample::nineStepChannel();
  core::Shunt there = channel.setup.shunts[0];
  there.part = {};
  channel.setup.shunts = {there};
  channel.setup.sequence.clear();
  NewPartsOnBothSides given;
  given.search.positive = core::ShuntPlace{there.a, there.b, there.wires, there.contact};
  given.search.fitted = {candidateOfShunt(channel.setup, 0)};
  given.set.resistors[0] = given.search.fitted[0];
  const core::Channel used = withSet(channel, {}, given.search, given.set, false);
  EXPECT_EQ(used.setup.shunts[0], there);
  EXPECT_EQ(partsOf(used), (Parts{"", "130k", there.name, "130k"}));
}

TEST(UseSet, PresentShuntAtTheSamePlaceIsUsedAgain) {
  core::Channel channel = sample::nineStepChannel();
  core::ResistorSearch search;
  search.positive = core::ShuntPlace{core::Node::Arm2Begin, core::Node::Arm2End, {}, {}};
  core::ResistorSet set;
  set.resistors = {candidateOfShunt(channel.setup, 0)};
  set.levels = {{.wanted = 1000, .reached = 1002, .miss = 0.002, .closed = {0}}};
  EXPECT_EQ(withSet(channel, {}, search, set, false).setup.shunts, channel.setup.shunts);
}

}  // namespace
}  // namespace ui
