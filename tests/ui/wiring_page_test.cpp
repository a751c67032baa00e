// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/wiring/wiring_page.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPointer>
#include <QProcess>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QToolButton>

#include "core/document/file_limits.h"
#include "core/document/wiring_edits.h"
#include "tests/support/printing.h"
#include "tests/support/sample_channel.h"
#include "tests/support/two_sided.h"
#include "ui/wiring/wiring_drawing.h"

namespace ui {
namespace {

using core::Node;
using core::PinName;

/// A quarter bridge whose two shunts are made of one resistor, S-7, brought out to J2.
core::Channel oneResistor() {
  core::Channel channel = sample::nineStepChannel();
  while (channel.setup.shunts.size() > 2) channel = core::withShuntRemoved(channel, 2);
  for (core::Shunt& shunt : channel.setup.shunts) shunt.part.id = "S-7";
  return sample::withTwoSidedSequence(channel, core::Duration(2));
}

/// P-, S- and, apart from each other, both ends of the resistor; the places of arm 2.
core::Channel wired() {
  core::Channel channel = oneResistor();
  channel.setup.wiring.pins = {{{"J1", "A"}, Node::PMinus},
                               {{"J1", "B"}, {}},
                               {{"J1", "C"}, Node::Arm2Begin},
                               {{"J2", "1"}, core::ResistorEnd{"S-7", 1}},
                               {{"J2", "2"}, {}},
                               {{"J2", "3"}, core::ResistorEnd{"S-7", 2}}};
  return channel;
}

class WiringPageTest : public testing::Test {
 protected:
  explicit WiringPageTest(core::Document document = sample::documentOf({wired()}))
      : session(std::move(document)), page(session), refused(&page, &WiringPage::refused) {
    page.resize(980, 690);
    page.show();
    page.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&page));
  }

  const core::Setup& setup() { return session.channel()->setup; }
  const std::vector<core::Pin>& pins() { return setup().wiring.pins; }
  QAbstractItemModel& pinModel() { return *page.table().model(); }
  QString cell(int row, int column) { return pinModel().index(row, column).data().toString(); }
  QString jumperCell(int row, int column) {
    return page.jumpers().model()->index(row, column).data().toString();
  }
  void choosePin(int row, int column = PinModel::PinColumn) {
    page.table().setCurrentIndex(pinModel().index(row, column));
    page.table().setFocus();
  }
  void click(const char* button) {
    auto* found = page.findChild<QToolButton*>(button);
    ASSERT_TRUE(found) << button;
    QTest::mouseClick(found, Qt::LeftButton);
  }
  void type(SheetView& table, int row, int column, const QString& text) {
    table.setCurrentIndex(table.model()->index(row, column));
    table.setFocus();
    QTest::keyClicks(&table, text.left(1));
    auto* editor = table.viewport()->findChild<QLineEdit*>();
    ASSERT_TRUE(editor);
    QTest::keyClicks(editor, text.mid(1));
    QTest::keyClick(editor, Qt::Key_Return);
    EXPECT_TRUE(QTest::qWaitFor([&] { return !table.viewport()->findChild<QLineEdit*>(); }, 2000));
  }
  void pick(SheetView& table, int row, int column, const QString& word) {
    table.setCurrentIndex(table.model()->index(row, column));
    table.setFocus();
    QTest::keyClick(&table, Qt::Key_Return);
    auto* box = table.viewport()->findChild<QComboBox*>();
    ASSERT_TRUE(box);
    ASSERT_GE(box->findText(word), 0) << word;
    box->setCurrentText(word);
    QTest::keyClick(box, Qt::Key_Return);
    EXPECT_TRUE(QTest::qWaitFor([&] { return !table.viewport()->findChild<QComboBox*>(); }, 2000));
  }
  void paste(SheetView& table, int row, int column, const QString& text) {
    QApplication::clipboard()->setText(text);
    table.setCurrentIndex(table.model()->index(row, column));
    table.setFocus();
    QTest::keyClick(&table, Qt::Key_V, Qt::ControlModifier);
  }
  void chooseShunt(int row) {
    auto* box = page.findChild<QComboBox*>("wiringShunt");
    box->setCurrentIndex(row);
    emit box->activated(row);
  }
  QListWidget& faults() { return *page.findChild<QListWidget*>("wiringFaults"); }
  QString message(const char* label) {
    auto* found = page.findChild<QLabel*>(label);
    return found && found->isVisible() ? found->text() : QString();
  }

  Session session;
  WiringPage page;
  QSignalSpy refused;
};

TEST_F(WiringPageTest, TablesKeepTheRulesOfItemModels) {
  const QAbstractItemModelTester pinTester(&pinModel(),
                                           QAbstractItemModelTester::FailureReportingMode::Fatal);
  const QAbstractItemModelTester jumperTester(page.jumpers().model(),
                                              QAbstractItemModelTester::FailureReportingMode::Fatal);
  click("addPin");
  click("workOutJumpers");
  session.history().undo();
  session.edit("Remove", core::withChannelRemoved(session.document(), 0));
  EXPECT_EQ(pinModel().rowCount(), 0);
  EXPECT_FALSE(message("wiringMessage").isEmpty());
}

TEST_F(WiringPageTest, PinsAreShownWithWhatTheyLeadTo) {
  ASSERT_EQ(pinModel().rowCount(), 6);
  EXPECT_EQ(cell(0, PinModel::Connector), "J1");
  EXPECT_EQ(cell(0, PinModel::PinColumn), "A");
  EXPECT_EQ(cell(0, PinModel::LeadsTo), "P-");
  EXPECT_EQ(cell(2, PinModel::LeadsTo), "arm 2 begin");
  EXPECT_EQ(cell(3, PinModel::LeadsTo), "S-7 end 1");
}

TEST_F(WiringPageTest, APinIsRenamedAndLedElsewhereInSingleUndoSteps) {
  type(page.table(), 0, PinModel::PinColumn, "K7");
  EXPECT_EQ(pins()[0].name, (PinName{"J1", "K7"}));
  EXPECT_EQ(session.history().undoText(), "Rename pin");
  pick(page.table(), 0, PinModel::LeadsTo, "S-7 end 2");
  EXPECT_EQ(pins()[0].use, core::PinUse(core::ResistorEnd{"S-7", 2}));
  EXPECT_EQ(session.history().undoText(), "Change what a pin leads to");
  EXPECT_EQ(session.history().count(), 2);
  session.history().undo();
  EXPECT_EQ(cell(0, PinModel::LeadsTo), "P-");
}

TEST_F(WiringPageTest, APinCanLeadToEveryPlaceAndEveryEnd) {
  page.table().setCurrentIndex(pinModel().index(0, PinModel::LeadsTo));
  page.table().setFocus();
  QTest::keyClick(&page.table(), Qt::Key_Return);
  auto* box = page.table().viewport()->findChild<QComboBox*>();
  ASSERT_TRUE(box);
  for (const char* place :
       {"unused", "P+", "P-", "S+", "S-", "arm 1 begin", "arm 4 end", "S-7 end 1", "S-7 end 2"})
    EXPECT_GE(box->findText(place), 0) << place;
  EXPECT_LT(box->findText("sense+"), 0) << "the bridge has no sense leads";
  EXPECT_EQ(box->currentText(), "P-");
}

TEST_F(WiringPageTest, WhatAPinLeadsToNowSurvivesAnUnusedList) {
  core::Channel channel = *session.channel();
  channel.setup.wiring.pins[0].use = core::ResistorEnd{"gone", 1};
  session.editChannel("gone", channel);
  page.table().setCurrentIndex(pinModel().index(0, PinModel::LeadsTo));
  page.table().setFocus();
  QTest::keyClick(&page.table(), Qt::Key_Return);
  auto* box = page.table().viewport()->findChild<QComboBox*>();
  ASSERT_TRUE(box);
  QTest::keyClick(box, Qt::Key_Return);
  EXPECT_EQ(pins()[0].use, core::PinUse(core::ResistorEnd{"gone", 1}));
}

TEST_F(WiringPageTest, WhatNoPinCanBeIsRefused) {
  paste(page.table(), 0, PinModel::LeadsTo, "P#");
  ASSERT_EQ(refused.count(), 1);
  EXPECT_TRUE(refused.last().at(0).toString().contains("no place of this channel"));
  paste(page.table(), 0, PinModel::PinColumn, " ");
  EXPECT_EQ(refused.count(), 2);
  choosePin(0, PinModel::JoinedTo);
  QTest::keyClick(&page.table(), Qt::Key_5);
  EXPECT_EQ(refused.count(), 3);
  EXPECT_EQ(session.history().count(), 0);
}

TEST_F(WiringPageTest, ABlockBeyondTheLastRowAddsPins) {
  paste(page.table(), 5, PinModel::Connector, "J2\t3\tS-7 end 2\nJ3\ta\tp+\nJ3\tb\tS−\n");
  ASSERT_EQ(pins().size(), 8U) << refused.count();
  EXPECT_EQ(pins()[6], (core::Pin{{"J3", "a"}, Node::PPlus}));
  EXPECT_EQ(pins()[7], (core::Pin{{"J3", "b"}, Node::SMinus})) << "a typographic minus is one too";
  EXPECT_EQ(session.history().count(), 1);
}

TEST_F(WiringPageTest, JumpersFollowAPastedBlockThatShiftsNames) {
  click("workOutJumpers");
  const auto before = setup().shunts[0].jumpers;
  ASSERT_FALSE(before.empty());
  paste(page.table(), 3, PinModel::PinColumn, "2\n3\n4");
  const auto& after = setup().shunts[0].jumpers;
  ASSERT_EQ(after.size(), before.size());
  const auto shifted = [](PinName name) {
    if (name.connector == "J2") name.pin = std::to_string(std::stoi(name.pin) + 1);
    return name;
  };
  for (std::size_t k = 0; k < after.size(); ++k) {
    EXPECT_EQ(after[k].from, shifted(before[k].from));
    EXPECT_EQ(after[k].to, shifted(before[k].to));
  }
}

TEST_F(WiringPageTest, PinsAreAddedMovedAndRemoved) {
  choosePin(0);
  click("addPin");
  EXPECT_EQ(pins()[1].name, (PinName{"J1", "D"})) << "B and C are taken";
  EXPECT_EQ(page.table().currentIndex().row(), 1);
  click("pinUp");
  EXPECT_EQ(pins()[0].name, (PinName{"J1", "D"}));
  click("pinDown");
  EXPECT_EQ(pins()[1].name, (PinName{"J1", "D"}));
  EXPECT_EQ(page.table().currentIndex().row(), 1);
  click("removePin");
  EXPECT_EQ(pins().size(), 6U);
  EXPECT_EQ(session.history().count(), 4);
  for (int k = 0; k < 4; ++k) session.history().undo();
  EXPECT_EQ(*session.channel(), wired());
}

TEST_F(WiringPageTest, TheFirstPinIsAddedToAnEmptyList) {
  session.editChannel("clear", core::withWiring(*session.channel(), {}));
  EXPECT_FALSE(message("drawingMessage").isEmpty());
  click("addPin");
  ASSERT_EQ(pins().size(), 1U);
  EXPECT_EQ(pins()[0].name, (PinName{"J1", "A"}));
  EXPECT_TRUE(message("drawingMessage").isEmpty());
}

TEST_F(WiringPageTest, NoMorePinsThanAFileHolds) {
  core::Wiring wiring;
  for (std::size_t k = 0; k < core::mostPins; ++k) wiring.pins.push_back({{"J1", std::to_string(k)}, {}});
  session.editChannel("many", core::withWiring(*session.channel(), wiring));
  click("addPin");
  paste(page.table(), static_cast<int>(core::mostPins) - 1, PinModel::PinColumn, "x\ny");
  EXPECT_EQ(pins().size(), core::mostPins);
  EXPECT_EQ(refused.count(), 2);
}

TEST_F(WiringPageTest, UsualPinsAreOneUndoStep) {
  session.editChannel("clear", core::withWiring(*session.channel(), {}));
  click("usualPins");
  EXPECT_EQ(setup().wiring, core::usualWiring(oneResistor().setup));
  EXPECT_EQ(pinModel().rowCount(), static_cast<int>(pins().size()));
  EXPECT_EQ(session.history().undoText(), "Take usual pins");
}

TEST_F(WiringPageTest, JumpersAreWorkedOutForOneShuntAndForAll) {
  click("workOutJumpers");
  EXPECT_EQ(setup().shunts[0].jumpers.size(), 2U);
  EXPECT_TRUE(setup().shunts[1].jumpers.empty());
  EXPECT_EQ(page.jumpers().model()->rowCount(), 2);
  EXPECT_EQ(session.history().undoText(), "Work out jumpers");
  EXPECT_EQ(refused.count(), 0);
  click("workOutAllJumpers");
  ASSERT_EQ(refused.count(), 1) << "arm 1 has no pins";
  EXPECT_TRUE(refused.last().at(0).toString().startsWith("1 of 2 shunts")) << refused.last().at(0).toString();
  core::Channel channel = *session.channel();
  channel.setup.wiring.pins.push_back({{"J1", "D"}, Node::Arm1Begin});
  channel.setup.wiring.pins.push_back({{"J1", "E"}, Node::Arm1End});
  session.editChannel("pins", channel);
  click("workOutAllJumpers");
  EXPECT_EQ(refused.count(), 1);
  EXPECT_EQ(setup().shunts[1].jumpers.size(), 2U);
}

TEST_F(WiringPageTest, JumpersAreAddedMovedAndRemovedByHand) {
  click("addJumper");
  ASSERT_EQ(setup().shunts[0].jumpers.size(), 1U);
  pick(page.jumpers(), 0, JumperModel::To, "J1-B");
  EXPECT_EQ(setup().shunts[0].jumpers[0].to, (PinName{"J1", "B"}));
  EXPECT_EQ(session.history().undoText(), "Move jumper");
  paste(page.jumpers(), 0, JumperModel::From, "J2-1\tJ1-C\nJ2-3\tJ1-A");
  ASSERT_EQ(setup().shunts[0].jumpers.size(), 2U);
  EXPECT_EQ(setup().shunts[0].jumpers[1], (core::Jumper{{"J2", "3"}, {"J1", "A"}}));
  EXPECT_EQ(jumperCell(1, JumperModel::Joins), "S-7 end 2 with P-");
  EXPECT_EQ(cell(3, PinModel::JoinedTo), "J1-C");
  paste(page.jumpers(), 0, JumperModel::From, "J9-Z");
  ASSERT_EQ(refused.count(), 1);
  EXPECT_TRUE(refused.last().at(0).toString().contains("J9-Z"));
  page.jumpers().setCurrentIndex(page.jumpers().model()->index(0, 0));
  click("removeJumper");
  EXPECT_EQ(setup().shunts[0].jumpers.size(), 1U);
}

TEST_F(WiringPageTest, RowsOfABlockThatHoldNothingKeepTheirPlaceAmongTheJumpers) {
  click("addJumper");
  paste(page.jumpers(), 0, JumperModel::From, "J2-1\tJ1-C\n\t\n\t\nJ2-3\tJ1-A");
  ASSERT_EQ(setup().shunts[0].jumpers.size(), 4U);
  EXPECT_EQ(setup().shunts[0].jumpers[2], core::Jumper{});
  EXPECT_EQ(setup().shunts[0].jumpers[3], (core::Jumper{{"J2", "3"}, {"J1", "A"}}));
}

TEST_F(WiringPageTest, WhatIsBeingTypedNeverComesToAnotherChannel) {
  core::Document two = session.document();
  core::Channel bare = *session.channel();
  bare.name = "bare";
  bare.setup.wiring.pins.clear();
  two.channels.push_back(std::make_shared<const core::Channel>(bare));
  session.edit("Add channel", two);
  ASSERT_GT(pins().size(), 2U);
  choosePin(int(pins().size()) - 1);
  QTest::keyClicks(&page.table(), "7");
  ASSERT_TRUE(page.table().viewport()->findChild<QLineEdit*>());
  session.selectChannel(1);
  EXPECT_EQ(session.document(), two);
}

TEST_F(WiringPageTest, WhatIsBeingTypedNeverComesToAnotherShunt) {
  core::Channel twins = *session.channel();
  ASSERT_EQ(twins.setup.shunts.size(), 2U);
  twins.setup.shunts[0].jumpers = twins.setup.shunts[1].jumpers = {{{"J1", "A"}, {"J1", "B"}}};
  session.editChannel("Lay jumpers", twins);
  QTableView& jumpers = page.jumpers();
  jumpers.setCurrentIndex(jumpers.model()->index(0, JumperModel::From));
  jumpers.setFocus();
  QTest::keyClick(&jumpers, Qt::Key_F2);
  const QPointer<QComboBox> editor = jumpers.viewport()->findChild<QComboBox*>();
  ASSERT_TRUE(editor);
  editor->setCurrentText("J9:9");
  auto* shunt = page.findChild<QComboBox*>("wiringShunt");
  shunt->setCurrentIndex(1);
  emit shunt->activated(1);
  EXPECT_TRUE(QTest::qWaitFor([&] { return !editor; }, 2000));
  EXPECT_EQ(*session.channel(), twins);
}

TEST_F(WiringPageTest, AnEditorThatClosesTooLateIsRefused) {
  core::Document two = session.document();
  core::Channel other = *session.channel();
  other.name = "other";
  two.channels.push_back(std::make_shared<const core::Channel>(other));
  session.edit("Add channel", two);
  page.hide();  // and so does not follow
  session.selectChannel(1);
  EXPECT_FALSE(page.table().model()->setData(page.table().model()->index(0, PinModel::PinColumn), "77"));
  EXPECT_EQ(session.document(), two);
  ASSERT_EQ(refused.count(), 1);
  EXPECT_TRUE(refused[0][0].toString().startsWith("another channel was chosen")) << refused[0][0].toString();
}

TEST_F(WiringPageTest, AStepShowsItsFirstShuntAndAShuntItsStep) {
  auto* box = page.findChild<QComboBox*>("wiringShunt");
  EXPECT_EQ(box->count(), 2);
  EXPECT_TRUE(box->itemText(0).startsWith("up: ")) << box->itemText(0);
  EXPECT_TRUE(box->itemText(0).endsWith("+ positive")) << "a shunt on arm 2 raises the output";
  EXPECT_TRUE(box->itemText(1).endsWith("− negative"));
  for (std::size_t step = 0; step < setup().sequence.size(); ++step)
    if (setup().sequence[step].closed == std::vector<std::size_t>{1}) session.selectStep(step);
  EXPECT_EQ(page.shunt(), std::optional<std::size_t>(1));
  EXPECT_EQ(box->currentIndex(), 1);
  chooseShunt(0);
  ASSERT_TRUE(session.selection().step);
  EXPECT_EQ(setup().sequence[*session.selection().step].closed, std::vector<std::size_t>{0});
  EXPECT_EQ(page.shunt(), std::optional<std::size_t>(0));
}

TEST_F(WiringPageTest, ThePinsOfAChosenFaultAreMarked) {
  core::Channel channel = *session.channel();
  channel.setup.shunts[1].jumpers = {{{"J2", "1"}, {"J1", "B"}}, {{"J2", "3"}, {"J9", "Z"}}};
  session.editChannel("wrong", channel);
  ASSERT_GT(faults().count(), 0);
  int unknown = -1;
  for (int row = 0; row < faults().count(); ++row)
    if (faults().item(row)->text().contains("J9-Z")) unknown = row;
  ASSERT_GE(unknown, 0);
  EXPECT_TRUE(faults().item(unknown)->text().startsWith("Error: "));
  faults().setCurrentRow(unknown);
  EXPECT_EQ(page.shunt(), std::optional<std::size_t>(1)) << "the fault is of that shunt";
  EXPECT_EQ(page.drawing().picture().faultPins, (std::vector<PinName>{{"J9", "Z"}}));
  EXPECT_TRUE(page.drawing().accessibleDescription().contains("J9-Z is not in the list of pins"));
  EXPECT_EQ(page.drawing().drawn().jumpers.size(), 2U);
  const auto sign = [&](int row) {
    return !pinModel().index(row, PinModel::Connector).data(Qt::DecorationRole).isNull();
  };
  EXPECT_TRUE(sign(1)) << "a jumper leads to a pin that is unused";
  EXPECT_FALSE(sign(4));
}

TEST_F(WiringPageTest, ASoundWiringSaysSo) {
  click("workOutJumpers");
  core::Channel channel = *session.channel();
  session.editChannel("one shunt", core::withShuntRemoved(channel, 1));
  for (int row = 0; row < faults().count(); ++row)
    EXPECT_FALSE(faults().item(row)->text().startsWith("Error")) << faults().item(row)->text();
}

TEST_F(WiringPageTest, APinChosenInTheDrawingIsChosenInTheTableAndBack) {
  const QRect place = page.drawing().placeOf(3);
  ASSERT_FALSE(place.isEmpty());
  QTest::mouseClick(&page.drawing(), Qt::LeftButton, {}, place.center());
  EXPECT_EQ(page.table().currentIndex().row(), 3);
  choosePin(2);
  EXPECT_EQ(page.drawing().picture().chosenPin, std::optional<std::size_t>(2));
  page.drawing().setFocus();
  QTest::keyClick(&page.drawing(), Qt::Key_Up);
  EXPECT_EQ(page.table().currentIndex().row(), 1);
  QTest::keyClick(&page.drawing(), Qt::Key_Right);
  EXPECT_EQ(pins()[static_cast<std::size_t>(page.table().currentIndex().row())].name.connector, "J2");
  QTest::keyClick(&page.drawing(), Qt::Key_End);
  EXPECT_EQ(page.table().currentIndex().row(), 5);
  QTest::keyClick(&page.drawing(), Qt::Key_Home);
  EXPECT_EQ(page.table().currentIndex().row(), 3);
}

TEST_F(WiringPageTest, TheDrawingZooms) {
  const QSize before = page.drawing().minimumSize();
  page.drawing().setFocus();
  QTest::keyClick(&page.drawing(), Qt::Key_Plus);
  EXPECT_GT(page.drawing().minimumHeight(), before.height());
  QTest::keyClick(&page.drawing(), Qt::Key_0);
  EXPECT_EQ(page.drawing().minimumSize(), before);
}

/// The text of a PDF as pdftotext gives it (poppler-utils, which the tests of the report need too).
QString textOf(const QString& path) {
  QProcess reader;
  reader.start("pdftotext", {"-layout", path, "-"});
  EXPECT_TRUE(reader.waitForFinished(20'000)) << "pdftotext of poppler-utils is missing";
  return QString::fromUtf8(reader.readAllStandardOutput());
}

TEST_F(WiringPageTest, TheSheetHoldsPinsJumpersBoxesAndCautions) {
  click("workOutJumpers");
  const QTemporaryDir folder;
  const QString path = folder.filePath("sheet.pdf");
  QSignalSpy said(&page, &WiringPage::said);
  ASSERT_TRUE(page.writeSheet(path));
  EXPECT_EQ(said.count(), 1);
  const QString text = textOf(path);
  for (const char* part : {"channel TP-01", "Switch the excitation off", "J2-1 (S-7 end 1)",
                           "Pins with the jumpers of up", "☐", "all shunts open", "Page 1 of"})
    EXPECT_TRUE(text.contains(QString::fromUtf8(part))) << part;
  EXPECT_FALSE(page.writeSheet(folder.filePath("no such folder/sheet.pdf")));
  ASSERT_EQ(refused.count(), 1);
  EXPECT_TRUE(refused.last().at(0).toString().startsWith("No sheet: "));
}

TEST(WiringLayoutTest, ConnectorsFaceEachOtherWithoutOverlap) {
  WiringPicture picture;
  for (int k = 0; k < 20; ++k) {
    const bool end = k >= 8;
    picture.wiring.pins.push_back({{end ? "J2" : "J1", std::to_string(k)},
                                   end ? core::PinUse(core::ResistorEnd{"a resistor with a long name", 1})
                                       : core::PinUse(Node::PPlus)});
  }
  picture.jumpers = {{{"J1", "0"}, {"J2", "19"}}, {{"J1", "3"}, {"J7", "unknown"}}};
  const WiringLayout layout = layOut(picture, QFontMetricsF(QFont()), 300);
  ASSERT_EQ(layout.pins.size(), 21U);
  ASSERT_EQ(layout.connectors.size(), 3U);
  EXPECT_GE(layout.size.width(), 300);
  const QRectF all(QPointF(0, 0), layout.size);
  for (std::size_t a = 0; a < layout.pins.size(); ++a) {
    EXPECT_TRUE(all.contains(layout.pins[a].row)) << a;
    for (std::size_t b = 0; b < a; ++b)
      EXPECT_FALSE(layout.pins[a].row.adjusted(1, 1, -1, -1).intersects(layout.pins[b].row)) << a << " " << b;
  }
  EXPECT_TRUE(layout.pins[0].left);
  EXPECT_FALSE(layout.pins[19].left) << "resistors are at the right";
  EXPECT_EQ(layout.jumpers[0].path.pointAtPercent(0), layout.pins[0].joint);
  EXPECT_EQ(layout.jumpers[0].path.pointAtPercent(1), layout.pins[19].joint);
  EXPECT_FALSE(layout.pins[20].pin) << "the pin that the list lacks";
}

TEST(WiringPageAlone, SaysWhatToDoWithoutChannelPinsAndShunts) {
  Session empty;
  WiringPage page(empty);
  page.show();
  EXPECT_TRUE(page.findChild<QLabel*>("wiringMessage")->isVisible());
  core::Channel bare;
  empty.edit("add", core::withChannelInserted({}, 0, bare));
  EXPECT_FALSE(page.findChild<QLabel*>("wiringMessage")->isVisible());
  EXPECT_TRUE(page.findChild<QLabel*>("drawingMessage")->isVisible());
  EXPECT_TRUE(page.findChild<QComboBox*>("wiringShunt")->placeholderText().startsWith("no shunts"));
  EXPECT_TRUE(page.findChild<QLabel*>("wiringFaultMessage")->isVisible());
  QSignalSpy refused(&page, &WiringPage::refused);
  for (const char* button : {"addJumper", "removeJumper", "workOutJumpers", "workOutAllJumpers", "removePin"})
    QTest::mouseClick(page.findChild<QToolButton*>(button), Qt::LeftButton);
  EXPECT_EQ(refused.count(), 5);
  EXPECT_EQ(empty.history().count(), 1);
}

}  // namespace
}  // namespace ui
