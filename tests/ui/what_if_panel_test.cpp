// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/whatif/what_if_panel.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QMenu>
#include <QSignalSpy>
#include <QTest>
#include <QTimer>
#include <QToolButton>

#include "core/document/edits.h"
#include "tests/support/bridges.h"
#include "tests/support/printing.h"
#include "tests/support/sample_channel.h"
#include "ui/bridge/bridge_canvas.h"
#include "ui/quantity_edit.h"
#include "ui/sheet_view.h"
#include "ui/theme.h"

namespace ui {
namespace what_if_panel_test {

/// A quarter bridge on three wires and a full bridge on six, to look at one after the other.
core::Document twoChannels() {
  core::Channel full = sample::channelOf(core::BridgeType::FullBending, true);
  full.name = "TP-21";
  full = sample::withShunt(full, "R1", core::Node::Arm1Begin, core::Node::Arm1End);
  full.setup.sequence = {{"zero", {}}, {"-1", {0}}};
  return sample::documentOf({sample::nineStepChannel(), full});
}

/// The panel as a user has it on the screen.
class WhatIfPage : public testing::Test {
 protected:
  explicit WhatIfPage(QSize size = {1270, 730})
      : session(twoChannels()), panel(session), before(session.document()) {
    panel.resize(size);
    panel.show();
    panel.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&panel));
  }

  template <class T>
  T* find(const char* name) {
    T* found = panel.findChild<T*>(name);
    EXPECT_TRUE(found) << name;
    return found;
  }
  QToolButton* button(const char* name) { return find<QToolButton>(name); }
  void click(const char* name) { QTest::mouseClick(button(name), Qt::LeftButton); }

  /// Opens the menu with the mouse, and in it the action of that name: clicked where it stands.
  void choose(const QString& name) {
    QTimer::singleShot(0, &panel, [this, name] {
      auto* menu = find<QMenu>("tryOutMenu");
      EXPECT_TRUE(menu->isVisible());
      auto* action = menu->findChild<QAction*>(name);
      EXPECT_TRUE(action) << name;
      for (QMenu* sub : menu->findChildren<QMenu*>())
        if (action && sub->actions().contains(action)) {
          QTest::mouseClick(menu, Qt::LeftButton, {}, menu->actionGeometry(sub->menuAction()).center());
          EXPECT_TRUE(QTest::qWaitFor([sub] { return sub->isVisible(); }));
          menu = sub;
          break;
        }
      if (action) QTest::mouseClick(menu, Qt::LeftButton, {}, menu->actionGeometry(action).center());
      find<QMenu>("tryOutMenu")->close();
    });
    click("tryOut");
    QCoreApplication::processEvents();
  }

  void type(const char* field, const char* text) {
    auto* edit = find<QuantityEdit>(field);
    edit->setFocus();
    edit->selectAll();
    QTest::keyClicks(edit, text);
    QTest::keyClick(edit, Qt::Key_Return);
  }

  QString sentence() { return find<QLabel>("whatIfSentence")->text(); }
  QAbstractItemModel* table() { return find<SheetView>("whatIfTable")->model(); }
  QString cell(int row, int column) { return table()->index(row, column).data().toString(); }
  bool untouched() { return session.document() == before && session.history().count() == 0; }
  QString trialName(int trial) { return find<QLabel>(QString("trialName%1").arg(trial).toLatin1())->text(); }

  Session session;
  WhatIfPanel panel;
  core::Document before;
};

class NarrowWhatIfPage : public WhatIfPage {
 protected:
  NarrowWhatIfPage() : WhatIfPage({490, 380}) {}
};

TEST_F(WhatIfPage, SaysWhatToDoAndShowsThePlanBeforeAnythingIsTriedOut) {
  EXPECT_TRUE(sentence().startsWith("Nothing is tried out yet.")) << sentence();
  EXPECT_FALSE(button("takeOver")->isEnabled());
  EXPECT_FALSE(button("clearTrials")->isEnabled());
  EXPECT_EQ(table()->rowCount(), 10) << "the zero and nine steps";
  EXPECT_EQ(cell(0, WhatIfModel::Step), "bridge, unshunted") << "not to be taken for a step called zero";
  EXPECT_EQ(cell(2, WhatIfModel::Without), cell(2, WhatIfModel::With));
  EXPECT_TRUE(find<QLabel>("whatIfCaution")->text().contains("nothing about the real article"));
}

TEST_F(WhatIfPage, AFaultFromTheMenuStandsBesideThePlanAndTheDocumentStays) {
  const QAbstractItemModelTester tester(table());
  choose("signal_reversed_0_0");
  EXPECT_EQ(trialName(0), "Signal wires reversed");
  EXPECT_EQ(sentence(), "All readings turn their sign; the sizes stay.");
  EXPECT_EQ(cell(2, WhatIfModel::With), "-" + cell(2, WhatIfModel::Without));
  EXPECT_EQ(cell(2, WhatIfModel::Percent), "-200.00");
  EXPECT_EQ(cell(2, WhatIfModel::Polarity), "reversed, now −");
  EXPECT_TRUE(untouched());
}

TEST_F(WhatIfPage, FaultsOfOneKindStandInAMenuOfTheirOwn) {
  choose("leads_exchanged_0_3");
  EXPECT_EQ(trialName(0), "Leads P+ and S- exchanged at the instrument");
  EXPECT_TRUE(untouched());
}

TEST_F(WhatIfPage, TheMenuOffersOnlyWhatTheBridgeHas) {
  auto* menu = find<QMenu>("tryOutMenu");
  emit menu->aboutToShow();
  EXPECT_TRUE(menu->findChild<QAction*>("lead_broken_3_0"));
  EXPECT_FALSE(menu->findChild<QAction*>("lead_broken_2_0")) << "no lead to S+";
  EXPECT_FALSE(menu->findChild<QAction*>("sense_at_instrument_0_0"));
  panel.tryOut({core::AlterationKind::LeadBroken, 3, 0, 0});
  emit menu->aboutToShow();
  EXPECT_FALSE(menu->findChild<QAction*>("lead_broken_3_0")) << "broken already";
  session.selectChannel(1);
  emit menu->aboutToShow();
  EXPECT_TRUE(menu->findChild<QAction*>("sense_at_instrument_0_0"));
}

TEST_F(WhatIfPage, ValuesAreEditedInPlaceWithUnitsAndRefused) {
  choose("lead_contact_0_0");
  // 1 % of 350 ohm, rounded.
  EXPECT_EQ(find<QuantityEdit>("trialValue0")->text(), "5 Ω");
  type("trialValue0", "2R5");
  ASSERT_EQ(panel.trials().size(), 1u);
  EXPECT_EQ(panel.trials()[0].value, 2.5);
  const QString shown = sentence();
  QSignalSpy refused(&panel, &WhatIfPanel::refused);
  type("trialValue0", "-3");
  EXPECT_TRUE(find<QuantityEdit>("trialValue0")->isRefused());
  EXPECT_TRUE(refused.isEmpty()) << "told beside the field";
  EXPECT_EQ(panel.trials()[0].value, 2.5);
  EXPECT_EQ(sentence(), shown);
  EXPECT_TRUE(untouched());
}

TEST_F(WhatIfPage, AValueIsTypedAtOnce) {
  choose("lead_contact_0_0");
  auto* field = find<QuantityEdit>("trialValue0");
  ASSERT_EQ(QApplication::focusWidget(), field);
  EXPECT_EQ(field->selectedText(), field->text());
  QTest::keyClicks(field, "7");
  QTest::keyClick(field, Qt::Key_Return);
  EXPECT_EQ(panel.trials()[0].value, 7);
}

TEST_F(WhatIfPage, HasADrawingInTheUsualWindowOnALargeScreenToo) {
  // The Bridge's pane of a window of 1920 x 1080.
  for (const QSize pane : {QSize(780, 560), QSize(740, 540)}) {
    panel.resize(pane);
    panel.tryOut({core::AlterationKind::SignalReversed, 0, 0, 0});
    QCoreApplication::processEvents();
    auto* drawing = find<BridgeCanvas>("whatIfDrawing");
    ASSERT_TRUE(drawing->isVisible()) << pane.width();
    EXPECT_GE(drawing->width(), 260);
    EXPECT_EQ(panel.size(), pane);
  }
}

TEST_F(WhatIfPage, NoColumnIsCutWhileAnotherHasRoom) {
  // A small range: every reading is beyond it.
  core::Channel channel = *session.channel();
  channel.setup.instrument.range = core::Output(1e-6);
  session.editChannel("Change range", channel);
  panel.tryOut({core::AlterationKind::SignalReversed, 0, 0, 0});
  auto* view = find<SheetView>("whatIfTable");
  for (const QSize pane : {QSize(490, 380), QSize(780, 560), QSize(1270, 730)}) {
    panel.resize(pane);
    QTest::qWait(50);  // the columns follow once the table has its size
    for (int row = 0; row < table()->rowCount(); ++row)
      for (int column = 0; column < table()->columnCount(); ++column) {
        if (view->isColumnHidden(column)) continue;
        const QModelIndex index = table()->index(row, column);
        const QRect box = view->visualRect(index);
        const QRect words = view->fontMetrics().boundingRect(QRect(0, 0, box.width() - 6, 1000),
                                                             Qt::TextWordWrap, index.data().toString());
        EXPECT_LE(words.width(), box.width()) << pane.width() << " row " << row << " column " << column;
        EXPECT_LE(words.height(), box.height()) << pane.width() << " row " << row << " column " << column;
      }
  }
}

TEST_F(WhatIfPage, AValueThatTheBridgeCannotHaveIsLeftOutWithTheReason) {
  choose("lead_warming_0_0");
  QSignalSpy said(&panel, &WhatIfPanel::said);
  type("trialValue0", "-300");
  auto* reason = find<QLabel>("trialReason0");
  EXPECT_TRUE(reason->isVisible());
  EXPECT_TRUE(reason->text().startsWith("left out: ")) << reason->text();
  EXPECT_EQ(said.count(), 1);
  EXPECT_FALSE(button("takeOver")->isEnabled());
  type("trialValue0", "20 K");
  EXPECT_FALSE(reason->isVisible());
  EXPECT_TRUE(button("takeOver")->isEnabled());
}

TEST_F(WhatIfPage, SeveralAreTriedTogetherAndTakenAwayOneByOne) {
  choose("moisture_0_0");
  choose("excitation_reversed_0_0");
  EXPECT_EQ(panel.trials().size(), 2u);
  click("removeTrial0");
  ASSERT_EQ(panel.trials().size(), 1u);
  EXPECT_EQ(trialName(0), "Excitation reversed");
  EXPECT_EQ(panel.focusWidget(), button("tryOut"));
  choose("signal_reversed_0_0");
  click("clearTrials");
  EXPECT_TRUE(panel.trials().empty());
  EXPECT_TRUE(sentence().startsWith("Nothing is tried out yet."));
  EXPECT_TRUE(untouched());
}

TEST_F(WhatIfPage, ZeroedBeforeHasTheJumpOfTheZeroInEveryReading) {
  choose("moisture_0_0");
  EXPECT_EQ(cell(1, WhatIfModel::With), "0.0");
  const QString jump = cell(0, WhatIfModel::Difference);
  EXPECT_TRUE(jump.startsWith("-17.")) << jump;
  auto* zeroed = find<QComboBox>("whatIfZeroed");
  zeroed->setFocus();
  QTest::keyClick(zeroed, Qt::Key_Down);
  EXPECT_EQ(cell(1, WhatIfModel::With), jump);
  EXPECT_TRUE(sentence().contains("which is in every reading")) << sentence();
}

TEST_F(WhatIfPage, WhatCannotBeReadSaysWhyInItsRow) {
  panel.tryOut({core::AlterationKind::LeadBroken, 3, 0, 0});
  EXPECT_EQ(cell(0, WhatIfModel::With), "–");
  EXPECT_EQ(cell(2, WhatIfModel::Difference), "–");
  EXPECT_EQ(cell(2, WhatIfModel::Polarity), "cannot be read");
  const QString hint = table()->index(2, WhatIfModel::With).data(Qt::ToolTipRole).toString();
  EXPECT_TRUE(hint.contains("nothing is connected there")) << hint;
  EXPECT_TRUE(sentence().startsWith("No step can be read any more")) << sentence();
}

TEST_F(WhatIfPage, TakingOverIsOneUndoStepAndEmptiesTheTrial) {
  choose("signal_reversed_0_0");
  choose("lead_contact_0_0");
  const core::Setup tried = *core::altered(session.channel()->setup, panel.trials());
  QSignalSpy said(&panel, &WhatIfPanel::said);
  click("takeOver");
  EXPECT_EQ(session.channel()->setup, tried);
  EXPECT_EQ(session.history().count(), 1);
  EXPECT_EQ(session.history().undoText(), "Take over: Signal wires reversed; Bad contact of 5 Ω in lead P+");
  EXPECT_TRUE(panel.trials().empty());
  EXPECT_EQ(said.count(), 1);
  // Now it is the plan: without and with are the same.
  EXPECT_EQ(cell(2, WhatIfModel::Without), cell(2, WhatIfModel::With));
  session.history().undo();
  EXPECT_EQ(session.document(), before);
  EXPECT_TRUE(panel.trials().empty());
}

TEST_F(WhatIfPage, ChoosingARowChoosesTheStepAndTheOtherWayRound) {
  auto* view = find<SheetView>("whatIfTable");
  const QModelIndex third = table()->index(3, WhatIfModel::Without);
  QTest::mouseClick(view->viewport(), Qt::LeftButton, {}, view->visualRect(third).center());
  EXPECT_EQ(session.selection().step, 2u);
  QTest::keyClick(view, Qt::Key_Down);
  EXPECT_EQ(session.selection().step, 3u);
  session.selectStep(0);
  EXPECT_EQ(view->currentIndex().row(), 1);
  QTest::keyClick(view, Qt::Key_Up);
  EXPECT_FALSE(session.selection().step) << "the zero is all shunts open";
  EXPECT_TRUE(untouched());
}

TEST_F(WhatIfPage, WhatDoesNotApplyToAnotherChannelIsToldAndComesBack) {
  session.selectChannel(1);
  choose("sense_at_instrument_0_0");
  choose("signal_reversed_0_0");
  EXPECT_TRUE(find<QLabel>("trialReason0")->text().isEmpty());
  QSignalSpy said(&panel, &WhatIfPanel::said);
  session.selectChannel(0);
  EXPECT_TRUE(find<QLabel>("trialReason0")->isVisible());
  EXPECT_EQ(find<QLabel>("trialReason0")->text(),
            "left out: the connection has no sense leads. This connection has P+, S-, return.");
  EXPECT_EQ(said.count(), 1);
  EXPECT_TRUE(said.at(0).at(0).toString().contains("is left out")) << said.at(0).at(0).toString();
  EXPECT_EQ(sentence(), "All readings turn their sign; the sizes stay.") << "the other one still counts";
  session.selectChannel(1);
  EXPECT_FALSE(find<QLabel>("trialReason0")->isVisible());
  EXPECT_EQ(panel.trials().size(), 2u);
  EXPECT_TRUE(untouched());
}

TEST_F(WhatIfPage, FollowsEditsAndUndoOfThePlan) {
  choose("signal_reversed_0_0");
  const QString shown = cell(2, WhatIfModel::With);
  core::Channel channel = *session.channel();
  channel.setup.shunts[channel.setup.sequence[1].closed[0]].resistance = core::Resistance(100000);
  session.editChannel("Change shunt", channel);
  EXPECT_NE(cell(2, WhatIfModel::With), shown);
  session.history().undo();
  EXPECT_EQ(cell(2, WhatIfModel::With), shown);
}

TEST_F(WhatIfPage, DrawsTheAlteredBridgeAtTheChosenStep) {
  auto* drawing = find<BridgeCanvas>("whatIfDrawing");
  ASSERT_TRUE(drawing->isVisible());
  session.selectStep(1);
  const QString plain = drawing->accessibleDescription();
  EXPECT_FALSE(plain.isEmpty());
  choose("arm_value_0_0");
  EXPECT_NE(drawing->accessibleDescription(), plain);
  EXPECT_TRUE(drawing->accessibleDescription().contains("353.5")) << drawing->accessibleDescription();
}

TEST_F(WhatIfPage, CopiesAllOfItAsPlainText) {
  choose("signal_reversed_0_0");
  click("copyWhatIf");
  const QString text = QApplication::clipboard()->text();
  EXPECT_TRUE(text.startsWith("TP-01, what if\nSignal wires reversed\nZeroed after it came\n")) << text;
  EXPECT_TRUE(text.contains("\n2, up\tup\t")) << text;
  EXPECT_TRUE(text.contains("nothing about the real article"));
}

TEST_F(WhatIfPage, NamesOfAnyKindAreShownAsTheyAre) {
  core::Channel channel = *session.channel();
  channel.setup.shunts[channel.setup.sequence[1].closed[0]].name = "<b>R</b>";
  session.editChannel("Rename", channel);
  EXPECT_EQ(cell(2, WhatIfModel::Closed), "<b>R</b>");
  EXPECT_TRUE(table()->index(2, 0).data(Qt::ToolTipRole).toString().contains("&lt;b&gt;"));
  EXPECT_EQ(find<QLabel>("whatIfSentence")->textFormat(), Qt::PlainText);
}

TEST_F(WhatIfPage, WithoutChannelOrStepsItSaysSo) {
  core::Channel bare = *session.channel();
  bare.setup.sequence.clear();
  session.editChannel("Delete steps", bare);
  panel.tryOut({core::AlterationKind::SignalReversed, 0, 0, 0});
  EXPECT_TRUE(sentence().startsWith("The channel has no steps yet")) << sentence();
  EXPECT_EQ(table()->rowCount(), 1);
  session.reset({});
  EXPECT_TRUE(sentence().startsWith("No channel yet.")) << sentence();
  EXPECT_EQ(table()->rowCount(), 0);
  EXPECT_FALSE(button("tryOut")->isEnabled());
  EXPECT_FALSE(button("takeOver")->isEnabled());
}

TEST_F(WhatIfPage, APlanThatCannotBeWorkedOutSaysWhy) {
  core::Channel bad = *session.channel();
  bad.setup.bridge.arms[2] = core::Resistance(0);
  session.editChannel("Change arm", bad);
  panel.tryOut({core::AlterationKind::SignalReversed, 0, 0, 0});
  EXPECT_TRUE(sentence().contains("arm 3")) << sentence();
}

TEST_F(WhatIfPage, WorksNothingOutWhileItIsHidden) {
  panel.hide();
  session.selectChannel(1);
  EXPECT_EQ(table()->rowCount(), 10);
  panel.show();
  EXPECT_EQ(table()->rowCount(), 3);
}

TEST_F(WhatIfPage, EverythingHasANameForThoseWhoCannotSeeIt) {
  choose("lead_contact_0_0");
  EXPECT_EQ(find<QuantityEdit>("trialValue0")->accessibleName(), "Bad contact in lead P+");
  EXPECT_EQ(button("removeTrial0")->accessibleName(), "Remove: Bad contact in lead P+");
  for (const char* name : {"whatIfTable", "whatIfZeroed", "whatIfDrawing", "trialList"})
    EXPECT_FALSE(find<QWidget>(name)->accessibleName().isEmpty()) << name;
  const QString spoken = table()->index(2, WhatIfModel::With).data(Qt::AccessibleTextRole).toString();
  EXPECT_TRUE(spoken.startsWith("With [µm/m]: ")) << spoken;
}

TEST_F(WhatIfPage, TakesTheColoursOfThePalette) {
  panel.setPalette(darkPalette());
  EXPECT_EQ(table()->index(2, WhatIfModel::With).data(Qt::ForegroundRole).value<QColor>(),
            coloursFor(darkPalette()).positive);
}

TEST_F(NarrowWhatIfPage, TheChosenRowStaysInViewWhenTrialsTakeRoom) {
  session.selectStep(5);
  auto* view = find<SheetView>("whatIfTable");
  for (int k = 0; k < 4; ++k) panel.tryOut({core::AlterationKind::Moisture, 0, 0, 1e7});
  EXPECT_TRUE(QTest::qWaitFor(
      [&] { return view->viewport()->rect().contains(view->visualRect(view->currentIndex()).center()); },
      2000));
  EXPECT_EQ(view->currentIndex().row(), 6);
}

TEST_F(NarrowWhatIfPage, HasNoDrawingAndNothingIsCutOff) {
  panel.tryOut({core::AlterationKind::Moisture, 0, 0, 1e7});
  panel.tryOut({core::AlterationKind::SignalReversed, 0, 0, 0});
  QCoreApplication::processEvents();
  EXPECT_TRUE(find<BridgeCanvas>("whatIfDrawing")->isHidden());
  EXPECT_EQ(panel.size(), QSize(490, 380));
  for (const char* name : {"tryOut", "clearTrials", "takeOver", "copyWhatIf", "removeTrial1"}) {
    QToolButton* one = button(name);
    EXPECT_GE(one->width(), one->sizeHint().width()) << name;
    EXPECT_TRUE(panel.rect().contains(QRect(one->mapTo(&panel, QPoint()), one->size()))) << name;
  }
  auto* view = find<SheetView>("whatIfTable");
  EXPECT_GE(view->height(), 5 * view->verticalHeader()->defaultSectionSize());
  EXPECT_LE(view->horizontalHeader()->length(), view->viewport()->width() + 1);
  // A taller one has the drawing below.
  panel.resize(490, 900);
  QCoreApplication::processEvents();
  EXPECT_TRUE(find<BridgeCanvas>("whatIfDrawing")->isVisible());
}

}  // namespace what_if_panel_test
}  // namespace ui
