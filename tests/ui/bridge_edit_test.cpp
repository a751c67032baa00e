// SPDX-License-Identifier: GPL-3.0-or-later
// What is done to the bridge in the drawing, by mouse and by keyboard, and the undo of each.
#include <QAbstractButton>
#include <QApplication>
#include <QContextMenuEvent>
#include <QSignalSpy>
#include <QTimer>

#include "core/circuit/hookup.h"
#include "tests/ui/bridge_shown.h"
#include "ui/quantity_edit.h"
#include "ui/wire_dialog.h"

namespace {

using core::LeadRole;
using core::Node;
using core::Resistance;
using sample::channelOf;
using sample::fullBridge;
using sample::withShunt;
using ui::BridgePart;
using ui::ShuntEnd;
using Kind = ui::BridgePart::Kind;
using Shown = sample::ShownBridge;

constexpr std::size_t index(LeadRole role) { return static_cast<std::size_t>(role); }
BridgePart lead(LeadRole role) { return {Kind::Lead, index(role)}; }

/// A full bridge of four unlike arms with a leak over arm 1, one from arm 2 to the structure and a balance
/// network.
core::Channel withEverything() {
  core::Channel channel = *fullBridge().channels[0];
  core::Bridge& bridge = channel.setup.bridge;
  bridge.arms = {Resistance(351), Resistance(352), Resistance(353), Resistance(354)};
  bridge.leaks[0].across = Resistance(5e6);
  bridge.leaks[1].toStructure = Resistance(2e6);
  channel.setup.instrument.grounding = core::Grounding::PMinus;
  channel.setup.instrument.balance.kind = core::BalanceKind::Parallel;
  channel.setup.instrument.inputResistance = Resistance(20e6);
  return channel;
}

/// One step of the history under `label` leads from `before` to what is there now and back.
void expectOneStep(Shown& shown, const core::Document& before, const QString& label) {
  EXPECT_EQ(shown.steps(), 1);
  EXPECT_EQ(shown.session.history().undoText(), label);
  const core::Document after = shown.session.document();
  EXPECT_NE(after, before);
  shown.session.history().undo();
  EXPECT_EQ(shown.session.document(), before);
  shown.session.history().redo();
  EXPECT_EQ(shown.session.document(), after);
}

// ---- selecting -------------------------------------------------------------------------------

TEST(BridgeSelect, ClickTakesOneControlAndShiftMore) {
  Shown shown(withEverything());
  shown.click(shown.arm(0));
  EXPECT_EQ(shown.view.selected(), (std::vector<BridgePart>{{Kind::Arm, 0}}));
  shown.click(shown.arm(2), Qt::ControlModifier);
  shown.click(shown.arm(3), Qt::ShiftModifier);
  EXPECT_EQ(shown.view.selected(), (std::vector<BridgePart>{{Kind::Arm, 0}, {Kind::Arm, 2}, {Kind::Arm, 3}}));
  shown.click(shown.arm(3), Qt::ShiftModifier);  // stays
  shown.click(shown.arm(0), Qt::ControlModifier);
  EXPECT_EQ(shown.view.selected(), (std::vector<BridgePart>{{Kind::Arm, 2}, {Kind::Arm, 3}}));
  shown.click(shown.arm(2));
  EXPECT_EQ(shown.view.selected(), (std::vector<BridgePart>{{Kind::Arm, 2}}));
  EXPECT_EQ(shown.steps(), 0);
}

TEST(BridgeSelect, BandTakesWhatItSurrounds) {
  Shown shown(withEverything());
  const QRectF scene = shown.view.picture()->lanes.scene;
  const QPoint from = shown.at(scene.topLeft()) - QPoint(2, 2),
               to = shown.at(scene.bottomRight()) + QPoint(2, 2);
  shown.drag(from, to);
  EXPECT_EQ(shown.view.selected().size(), ui::partsOf(*shown.view.picture()).size());
  shown.press(from);
  shown.dragTo(from, (from + to) / 2);
  shown.key(Qt::Key_Escape);
  shown.drop(to);
  EXPECT_LE(shown.view.selected().size(), 1U);
}

TEST(BridgeSelect, ControlAAndControlSpaceAndEscape) {
  Shown shown(withEverything());
  shown.key(Qt::Key_A, Qt::ControlModifier);
  EXPECT_EQ(shown.view.selected().size(), ui::partsOf(*shown.view.picture()).size());
  shown.focus({Kind::Arm, 1});
  shown.key(Qt::Key_Space, Qt::ControlModifier);
  const auto parts = shown.view.selected();
  EXPECT_EQ(std::count(parts.begin(), parts.end(), BridgePart{Kind::Arm, 1}), 0);
  shown.key(Qt::Key_Escape);
  EXPECT_EQ(shown.view.selected(), (std::vector<BridgePart>{{Kind::Arm, 1}}));
}

TEST(BridgeSelect, EveryPartOfEveryTemplateIsHitWhereItIsDrawn) {
  for (const core::BridgeTemplate& shape : core::allTemplates()) {
    core::Channel channel = core::withBridgeType(withEverything(), shape.type);
    channel.setup.bridge.sixWire = shape.senseLeads;
    const ui::BridgePicture picture = ui::pictureOf(channel, core::predict(channel.setup), 1);
    for (const BridgePart& part : ui::partsOf(picture)) {
      if (part.kind == Kind::Instrument) continue;  // other parts lie in its middle
      const std::string name = std::string(shape.key) + ": " + ui::nameOf(picture, part).toStdString();
      const auto spot = ui::spotAt(picture, ui::ringOf(picture, {part, {}}).boundingRect().center());
      ASSERT_TRUE(spot) << name;
      EXPECT_EQ(ui::nameOf(picture, spot->part), ui::nameOf(picture, part)) << name;
    }
  }
}

// ---- values in place -------------------------------------------------------------------------

TEST(BridgeEditor, DoubleClickOnAnArmTypesItsResistance) {
  Shown shown(fullBridge());
  const core::Document before = shown.session.document();
  QTest::mouseDClick(&shown.view, Qt::LeftButton, {}, shown.arm(2));
  // A double click of the mouse begins with a press, which selects.
  if (!shown.editor()) {
    shown.click(shown.arm(2));
    QTest::mouseDClick(&shown.view, Qt::LeftButton, {}, shown.arm(2));
  }
  shown.type("partResistance", "120.5");
  shown.enter("partResistance");
  EXPECT_FALSE(shown.editor());
  EXPECT_EQ(shown.setup().bridge.arms[2], Resistance(120.5));
  EXPECT_TRUE(shown.view.hasFocus());
  expectOneStep(shown, before, "Change arm");
}

TEST(BridgeEditor, EscapeDropsAndARefusedTextSaysWhy) {
  Shown shown(fullBridge());
  shown.focus({Kind::Arm, 0});
  shown.key(Qt::Key_F2);
  shown.type("partResistance", "99");
  QTest::keyClick(shown.field("partResistance"), Qt::Key_Escape);
  EXPECT_FALSE(shown.editor());
  EXPECT_EQ(shown.steps(), 0);
  shown.key(Qt::Key_Return);
  shown.type("partResistance", "-3");
  shown.enter("partResistance");
  ASSERT_TRUE(shown.editor());
  const auto* field = shown.editor()->findChild<ui::QuantityEdit*>("partResistance");
  EXPECT_TRUE(field->isRefused());
  EXPECT_TRUE(field->echo().contains("too small")) << qPrintable(field->echo());
  EXPECT_EQ(shown.steps(), 0);
  EXPECT_TRUE(shown.view.rect().contains(shown.editor()->geometry()));
}

TEST(BridgeEditor, SeveralPartsOfAKindAreSetTogether) {
  Shown shown(withEverything());
  const core::Document before = shown.session.document();
  for (const std::size_t arm : {0, 1, 3})
    shown.click(shown.arm(arm), arm ? Qt::ControlModifier : Qt::NoModifier);
  shown.key(Qt::Key_F2);
  ASSERT_TRUE(shown.field("partResistance"));
  EXPECT_TRUE(shown.field("partResistance")->text().isEmpty());  // they are not alike
  shown.type("partResistance", "1 kohm");
  shown.enter("partResistance");
  EXPECT_EQ(shown.setup().bridge.arms,
            (std::array{Resistance(1e3), Resistance(1e3), Resistance(353), Resistance(1e3)}));
  expectOneStep(shown, before, "Change arm");
}

TEST(BridgeEditor, PartsOfSeveralKindsAreRefused) {
  Shown shown(withEverything());
  QSignalSpy refused(&shown.view, &ui::BridgeView::refused);
  shown.key(Qt::Key_A, Qt::ControlModifier);
  shown.key(Qt::Key_F2);
  EXPECT_FALSE(shown.editor());
  EXPECT_EQ(refused.count(), 1);
  EXPECT_EQ(shown.title(), "Nothing to edit");
}

TEST(BridgeEditor, EveryKindOfPartHasItsFields) {
  Shown shown(withEverything());
  const auto edit = [&](const BridgePart& part, const char* field, const QString& text) {
    shown.focus(part, part.kind == Kind::Shunt ? std::optional(ShuntEnd::A) : std::nullopt);
    shown.key(Qt::Key_F2);
    shown.type(field, text);
    shown.enter(field);
  };
  edit({Kind::Shunt, 1}, "partResistance", "60k");
  EXPECT_EQ(shown.shunt(1).resistance, Resistance(60e3));
  edit(lead(LeadRole::SignalPlus), "partResistance", "0");
  EXPECT_EQ(core::resistanceOf(shown.setup().bridge.leads[index(LeadRole::SignalPlus)]), Resistance(0));
  edit({Kind::Leak, 0}, "partResistance", "7M");
  EXPECT_EQ(shown.setup().bridge.leaks[0].across, Resistance(7e6));
  edit({Kind::StructureLeak, 1}, "partPlace", "0.25");
  EXPECT_EQ(shown.setup().bridge.leaks[1].place, 0.25);
  edit({Kind::Balance, 0}, "partPotentiometer", "5k");
  edit({Kind::Balance, 0}, "partWiper", "0.3");
  edit({Kind::Balance, 0}, "partLimiting", "50k");
  const core::Balance& balance = shown.setup().instrument.balance;
  EXPECT_EQ(balance.potentiometer, Resistance(5e3));
  EXPECT_EQ(balance.wiper, 0.3);
  EXPECT_EQ(balance.limiting, Resistance(50e3));
  edit({Kind::Input, 0}, "partResistance", "10M");
  EXPECT_EQ(shown.setup().instrument.inputResistance, Resistance(10e6));
  edit({Kind::Input, 0}, "partResistance", " ");
  EXPECT_FALSE(shown.setup().instrument.inputResistance);
  edit({Kind::Instrument, 0}, "partExcitation", "2.5 V");
  EXPECT_EQ(shown.setup().instrument.excitation, core::Voltage(2.5));
  EXPECT_EQ(shown.steps(), 10);
  while (shown.steps() > 0) shown.session.history().undo();
  EXPECT_EQ(*shown.session.channel(), withEverything());
}

TEST(BridgeEditor, WireDialogSetsALeadFromLengthAndSize) {
  Shown shown(fullBridge());
  shown.focus(lead(LeadRole::ExcitationPlus));
  shown.key(Qt::Key_F2);
  ASSERT_TRUE(shown.editor());
  auto* wire = shown.editor()->findChild<QAbstractButton*>("partWire");
  ASSERT_TRUE(wire);
  QTimer::singleShot(0, [] { qobject_cast<ui::WireDialog*>(QApplication::activeModalWidget())->accept(); });
  wire->click();
  EXPECT_TRUE(
      std::holds_alternative<core::CopperWire>(shown.setup().bridge.leads[index(LeadRole::ExcitationPlus)]));
  EXPECT_EQ(shown.session.history().undoText(), "Change lead");
  EXPECT_EQ(shown.steps(), 1);
}

// ---- adding and removing ---------------------------------------------------------------------

TEST(BridgeAdd, WhatIsAddedAtAnArmCanBeTypedAtOnce) {
  Shown shown(channelOf(core::BridgeType::FullBending));
  shown.click(shown.arm(2));
  shown.add("addShunt");
  ASSERT_EQ(shown.setup().shunts.size(), 1U);
  EXPECT_EQ(shown.shunt(0).a, Node::Arm3Begin);
  shown.type("partResistance", "330k");
  shown.enter("partResistance");
  EXPECT_EQ(shown.shunt(0).resistance, Resistance(330e3));
  shown.session.history().undo();
  shown.session.history().undo();
  EXPECT_TRUE(shown.setup().shunts.empty());

  shown.click(shown.arm(1));
  shown.add("addLeak");
  EXPECT_TRUE(shown.setup().bridge.leaks[1].across);
  EXPECT_EQ(shown.session.history().undoText(), "Add leak");
  shown.click(shown.arm(1));
  shown.add("addStructureLeak");
  EXPECT_TRUE(shown.setup().bridge.leaks[1].toStructure);
}

TEST(BridgeAdd, InstrumentGetsBalanceSenseLeadsAndInput) {
  Shown shown(channelOf(core::BridgeType::FullBending));
  const core::Document before = shown.session.document();
  for (const auto& [name, label] :
       {std::pair("addBalanceSeries", "Add balance network"), std::pair("addSenseLeads", "Add sense leads"),
        std::pair("addInput", "Add input resistance")}) {
    shown.add(name);
    expectOneStep(shown, before, label);
    shown.session.history().undo();
  }
}

TEST(BridgeAdd, WhatIsThereAlreadyIsOfferedNoMoreAndSaysWhy) {
  Shown shown(withEverything());
  shown.click(shown.arm(0));
  emit shown.view.addMenu()->aboutToShow();
  for (const auto& [name, enabled] :
       {std::pair("addShunt", true), std::pair("addLeak", false), std::pair("addStructureLeak", true),
        std::pair("addBalanceParallel", false), std::pair("addBalanceSeries", true),
        std::pair("addSenseLeads", true)}) {
    const auto* action = shown.view.addMenu()->findChild<QAction*>(name);
    ASSERT_TRUE(action) << name;
    EXPECT_EQ(action->isEnabled(), enabled) << name;
    EXPECT_EQ(action->toolTip().contains("already"), !enabled) << name;
  }
}

TEST(BridgeAdd, MenusOpenByKeyAndByMouse) {
  Shown shown(fullBridge());
  auto* menu = shown.view.findChild<QMenu*>("bridgeMenu");
  shown.focus({Kind::Arm, 1});
  shown.key(Qt::Key_Insert);
  EXPECT_TRUE(shown.view.addMenu()->isVisible());
  EXPECT_TRUE(shown.view.addMenu()->findChild<QAction*>("addShunt")->text().contains("arm 2"));
  shown.view.addMenu()->close();
  shown.key(Qt::Key_F10, Qt::ShiftModifier);
  EXPECT_TRUE(menu->isVisible());
  menu->close();
  shown.key(Qt::Key_Menu);
  EXPECT_TRUE(menu->isVisible());
  menu->close();
  QContextMenuEvent right(QContextMenuEvent::Mouse, shown.arm(3), shown.view.mapToGlobal(shown.arm(3)));
  QApplication::sendEvent(&shown.view, &right);
  EXPECT_TRUE(menu->isVisible());
  EXPECT_EQ(shown.view.selected(), (std::vector<BridgePart>{{Kind::Arm, 3}}));
  menu->close();
}

TEST(BridgeRemove, DeleteTakesAwayWhatMayGo) {
  Shown shown(withEverything());
  const core::Document before = shown.session.document();
  for (const auto& [part, label] : {std::pair(BridgePart{Kind::Leak, 0}, "Remove leak"),
                                    std::pair(BridgePart{Kind::StructureLeak, 1}, "Remove leak"),
                                    std::pair(BridgePart{Kind::Balance, 0}, "Remove balance network"),
                                    std::pair(BridgePart{Kind::Input, 0}, "Remove input resistance")}) {
    shown.focus(part);
    shown.key(Qt::Key_Delete);
    expectOneStep(shown, before, label);
    shown.session.history().undo();
  }
}

TEST(BridgeRemove, ALeadStaysAndSaysWhyASensePairGoes) {
  Shown shown(channelOf(core::BridgeType::FullBending, true));
  QSignalSpy refused(&shown.view, &ui::BridgeView::refused);
  shown.focus(lead(LeadRole::SignalMinus));
  shown.key(Qt::Key_Delete);
  EXPECT_EQ(shown.steps(), 0);
  EXPECT_EQ(refused.count(), 1);
  EXPECT_TRUE(shown.outcome().contains("cannot be removed")) << qPrintable(shown.outcome());
  shown.focus(lead(LeadRole::SensePlus));
  shown.key(Qt::Key_Delete);
  EXPECT_FALSE(shown.setup().bridge.sixWire);
  EXPECT_EQ(shown.session.history().undoText(), "Remove sense leads");
  shown.session.history().undo();
  EXPECT_TRUE(shown.setup().bridge.sixWire);
}

TEST(BridgeRemove, SenseLeadsStayWhileAShuntIsFixedThere) {
  core::Channel channel = channelOf(core::BridgeType::FullBending, true);
  Shown shown(withShunt(channel, "R1", Node::SensePlus, Node::Arm1End));
  shown.focus(lead(LeadRole::SenseMinus));
  shown.key(Qt::Key_Delete);
  EXPECT_TRUE(shown.setup().bridge.sixWire);
  EXPECT_TRUE(shown.outcome().contains("R1")) << qPrintable(shown.outcome());
}

TEST(BridgeRemove, SeveralGoInOneStep) {
  Shown shown(withEverything());
  const core::Document before = shown.session.document();
  shown.key(Qt::Key_A, Qt::ControlModifier);
  shown.key(Qt::Key_Delete);
  EXPECT_TRUE(shown.setup().shunts.empty());
  EXPECT_FALSE(shown.setup().bridge.leaks[0].across);
  EXPECT_EQ(shown.setup().instrument.balance.kind, core::BalanceKind::None);
  EXPECT_EQ(shown.title(), "Not everything was removed");
  expectOneStep(shown, before, "Remove 6 parts");
}

TEST(BridgeRemove, SaysHowManyStepsLostTheShunt) {
  core::Channel channel = *fullBridge().channels[0];
  channel.setup.sequence = {{"zero", {}}, {"a", {0}}, {"b", {0, 1}}, {"c", {1}}};
  Shown shown(channel);
  QSignalSpy said(&shown.view, &ui::BridgeView::said);
  const QString name = QString::fromStdString(shown.shunt(0).name);
  shown.focusHandle(0, ShuntEnd::A);
  shown.key(Qt::Key_Delete);
  ASSERT_EQ(said.count(), 1);
  EXPECT_EQ(said[0][0].toString(), "Removed " + name + "; 2 steps lost it.");
  EXPECT_TRUE(shown.setup().sequence[1].closed.empty());
}

TEST(BridgeRemove, OfEverythingItIsSaidWhatWentAndWhatStays) {
  Shown shown(withEverything());
  QSignalSpy said(&shown.view, &ui::BridgeView::said), refused(&shown.view, &ui::BridgeView::refused);
  shown.key(Qt::Key_A, Qt::ControlModifier);
  shown.key(Qt::Key_Delete);
  EXPECT_EQ(refused.count(), 0);
  ASSERT_EQ(said.count(), 1);
  const QString told = said[0][0].toString();
  EXPECT_TRUE(told.startsWith("Removed 2 shunts, 2 leaks, the balance network and the input resistance"))
      << qPrintable(told);
  EXPECT_TRUE(told.endsWith("stays: arms, leads and the instrument.")) << qPrintable(told);
}

TEST(BridgeRemove, MenuOffersOnlyWhatActs) {
  Shown shown(withEverything());
  auto* menu = shown.view.findChild<QMenu*>("bridgeMenu");
  const auto offered = [&](const char* name) {
    shown.key(Qt::Key_Menu);
    const bool enabled = shown.action(name)->isEnabled();
    menu->close();
    return enabled;
  };
  shown.click(shown.arm(0));
  EXPECT_FALSE(offered("bridgeRemove"));
  EXPECT_FALSE(offered("bridgeDuplicate"));
  EXPECT_TRUE(shown.action("bridgeRemove")->isEnabled()) << "its key says why nothing was done";
  shown.focusHandle(0, ShuntEnd::A);
  EXPECT_TRUE(offered("bridgeRemove"));
  EXPECT_TRUE(offered("bridgeDuplicate"));
}

TEST(BridgeSelect, ClickOnEmptyGroundLetsGoOfEverything) {
  Shown shown(withEverything());
  const core::Document before = shown.session.document();
  shown.focusHandle(0, ShuntEnd::A);
  shown.click(shown.at(shown.view.picture()->lanes.scene.topLeft()));
  EXPECT_FALSE(shown.view.focus());
  EXPECT_TRUE(shown.view.selected().empty());
  shown.key(Qt::Key_Delete);
  EXPECT_EQ(shown.session.document(), before);
}

TEST(BridgeKeys, SpaceOnAShuntThatNoStepClosesSaysSo) {
  core::Channel channel = *fullBridge().channels[0];
  channel.setup.sequence = {{"zero", {}}};
  Shown shown(channel);
  QSignalSpy refused(&shown.view, &ui::BridgeView::refused);
  shown.focusHandle(0, ShuntEnd::A);
  shown.key(Qt::Key_Space);
  ASSERT_EQ(refused.count(), 1);
  EXPECT_TRUE(refused[0][0].toString().startsWith("No step closes ")) << qPrintable(refused[0][0].toString());
}

TEST(BridgeAdd, InsertAndEnterTakeTheFirstThatCanBeAdded) {
  Shown shown(fullBridge());
  shown.focus({Kind::Arm, 1});
  shown.key(Qt::Key_Insert);
  ASSERT_TRUE(shown.view.addMenu()->activeAction());
  EXPECT_EQ(shown.view.addMenu()->activeAction()->objectName(), "addShunt");
  shown.view.addMenu()->close();
  // Without an arm its entries keep their places and say what is missing.
  shown.click(shown.at(shown.view.picture()->lanes.scene.topLeft()));
  shown.key(Qt::Key_Insert);
  const QAction* first = shown.view.addMenu()->actions().front();
  EXPECT_EQ(first->objectName(), "addShunt");
  EXPECT_FALSE(first->isEnabled());
  EXPECT_TRUE(first->toolTip().startsWith("Select an arm"));
  EXPECT_EQ(shown.view.addMenu()->activeAction()->objectName(), "addBalanceParallel");
  shown.view.addMenu()->close();
}

TEST(BridgeAdd, BalanceNetworksHaveUsualValuesAndSayWhichIsWhich) {
  // Common practice, no source: some ohm between the arms, 10 kohm and 100 kohm over the excitation.
  Shown shown(channelOf(core::BridgeType::FullBending));
  const auto labels = [&] {
    QStringList texts;
    for (const ui::BridgeLabel& label : shown.view.picture()->labels) texts << label.text;
    return texts;
  };
  shown.add("addBalanceSeries");
  EXPECT_EQ(shown.setup().instrument.balance.potentiometer, Resistance(10));
  EXPECT_TRUE(labels().contains(QStringLiteral("pot. 10 Ω")));
  shown.add("addBalanceParallel");
  EXPECT_EQ(shown.setup().instrument.balance.potentiometer, Resistance(10e3));
  EXPECT_EQ(shown.setup().instrument.balance.limiting, Resistance(100e3));
  EXPECT_TRUE(labels().contains(QStringLiteral("pot. 10 kΩ")));
  EXPECT_TRUE(labels().contains(QStringLiteral("to S+ 100 kΩ")));
}

TEST(BridgeEditor, LeavesThePartThatIsEditedInSight) {
  for (const QSize size : {QSize(700, 520), QSize(1270, 730), QSize(1900, 1000)}) {
    Shown shown(fullBridge());
    shown.view.resize(size);
    QTest::qWait(1);
    for (const std::size_t arm : {0, 1, 2, 3}) {
      shown.click(shown.arm(arm));
      shown.key(Qt::Key_F2);
      ASSERT_TRUE(shown.editor());
      const QRectF value = shown.view.picture()->layout.arms[arm].valueBox;
      const QRect label(shown.at(value.topLeft()), shown.at(value.bottomRight()));
      EXPECT_FALSE(shown.editor()->geometry().contains(shown.arm(arm))) << "arm " << arm + 1;
      EXPECT_FALSE(shown.editor()->geometry().intersects(label)) << "arm " << arm + 1;
      EXPECT_TRUE(shown.view.rect().contains(shown.editor()->geometry()));
      QTest::keyClick(shown.field("partResistance"), Qt::Key_Escape);
    }
  }
}

// ---- moving ----------------------------------------------------------------------------------

/// Drags `part` to `to`, looks at what is shown on the way, drops it; then the same by Escape.
void expectDragOfOneStep(Shown& shown, const BridgePart& part, QPoint to, const QString& label) {
  const core::Document before = shown.session.document();
  const QString at_rest = shown.outcome();
  const QPoint from = shown.grip(part);
  shown.press(from);
  shown.dragTo(from, to);
  ASSERT_TRUE(shown.view.move());
  EXPECT_TRUE(shown.view.move()->legal) << qPrintable(shown.outcome());
  EXPECT_TRUE(shown.title().startsWith("Moving ")) << qPrintable(shown.title());
  EXPECT_EQ(shown.view.stateNow(), &shown.view.move()->state);
  EXPECT_EQ(shown.text("bridgeSentence"), shown.view.move()->state.sentence);
  EXPECT_EQ(shown.steps(), 0);
  shown.key(Qt::Key_Escape);
  EXPECT_FALSE(shown.view.move());
  EXPECT_EQ(shown.outcome(), at_rest);
  shown.drop(to);
  EXPECT_EQ(shown.session.document(), before);
  shown.press(from);
  shown.dragTo(from, to);
  const QString promised = shown.outcome();
  shown.drop(to);
  EXPECT_EQ(shown.outcome(), promised);
  expectOneStep(shown, before, label);
}

TEST(BridgeDrag, LeakGoesToAnotherArm) {
  for (const bool toStructure : {false, true}) {
    Shown shown(withEverything());
    shown.session.selectStep(1);
    const BridgePart leak{toStructure ? Kind::StructureLeak : Kind::Leak, toStructure ? 1U : 0U};
    expectDragOfOneStep(shown, leak, shown.arm(3), "Move leak");
    const core::Leak& there = shown.setup().bridge.leaks[3];
    EXPECT_EQ(toStructure ? there.toStructure : there.across, Resistance(toStructure ? 2e6 : 5e6));
  }
}

TEST(BridgeDrag, LeakOnAnArmThatLeaksAlreadyIsRefusedWithTheReason) {
  core::Channel channel = withEverything();
  channel.setup.bridge.leaks[2].across = Resistance(1e6);
  Shown shown(channel);
  const QPoint from = shown.grip({Kind::Leak, 0}), to = shown.arm(2);
  shown.press(from);
  shown.dragTo(from, to);
  ASSERT_TRUE(shown.view.move());
  EXPECT_FALSE(shown.view.move()->legal);
  EXPECT_TRUE(shown.outcome().contains("arm 3 has such a leak already")) << qPrintable(shown.outcome());
  shown.drop(to);
  EXPECT_EQ(shown.title(), "Nothing was moved");
  EXPECT_EQ(shown.steps(), 0);
}

TEST(BridgeDrag, LeadToAnotherTerminalExchangesTheTwoAndBackAgain) {
  Shown shown(fullBridge());
  shown.session.selectStep(1);
  const core::Output before = *shown.view.stateNow()->output;
  expectDragOfOneStep(shown, lead(LeadRole::SignalPlus), shown.node(Node::SMinus), "Exchange leads");
  ASSERT_EQ(shown.setup().bridge.hookup.exchanged.size(), 1U);
  EXPECT_TRUE(core::samePair(shown.setup().bridge.hookup.exchanged[0],
                             {LeadRole::SignalPlus, LeadRole::SignalMinus}));
  // Derived: S+ and S- have changed sides and nothing else has, since the instrument takes no current.
  EXPECT_NEAR(shown.view.stateNow()->output->base(), -before.base(), 1e-12 * std::abs(before.base()));
  shown.drag(shown.grip(lead(LeadRole::SignalPlus)), shown.node(Node::SPlus));
  EXPECT_TRUE(core::asTemplateSays(shown.setup().bridge));
}

TEST(BridgeDrag, LeadToATerminalWithoutALeadIsRefused) {
  // The S+ corner of a half bridge is inside the instrument: no lead goes there.
  Shown shown(channelOf(core::BridgeType::HalfBending));
  const BridgePart part = lead(LeadRole::SignalMinus);
  const QPoint from = shown.grip(part), to = shown.node(Node::SPlus);
  shown.press(from);
  shown.dragTo(from, to);
  ASSERT_TRUE(shown.view.move());
  EXPECT_FALSE(shown.view.move()->legal);
  EXPECT_TRUE(shown.outcome().contains("no lead")) << qPrintable(shown.outcome());
  shown.drop(to);
  EXPECT_EQ(shown.steps(), 0);
}

TEST(BridgeDrag, ArmOntoAnotherExchangesTheirResistors) {
  Shown shown(withEverything());
  expectDragOfOneStep(shown, {Kind::Arm, 0}, shown.arm(2), "Exchange arms");
  EXPECT_EQ(shown.setup().bridge.arms[0], Resistance(353));
  EXPECT_EQ(shown.setup().bridge.arms[2], Resistance(351));
  EXPECT_EQ(shown.setup().bridge.leaks[2].across, Resistance(5e6));
}

TEST(BridgeDrag, WiperFollowsItsTrack) {
  Shown shown(withEverything());
  const QLineF travel = shown.view.picture()->layout.balance->travel;
  expectDragOfOneStep(shown, {Kind::Balance, 0}, shown.at(travel.p2()), "Move wiper");
  EXPECT_NEAR(shown.setup().instrument.balance.wiper, 1,
              0.03);  // a pixel of the track, which is some 60 long
}

TEST(BridgeDrag, UndoOnTheWayEndsTheDrag) {
  Shown shown(withEverything());
  shown.drag(shown.grip({Kind::Arm, 0}), shown.arm(1));
  const core::Document before = shown.session.document();
  const QPoint from = shown.grip({Kind::Arm, 0}), to = shown.arm(2);
  shown.press(from);
  shown.dragTo(from, to);
  ASSERT_TRUE(shown.view.move());
  shown.session.history().undo();
  EXPECT_FALSE(shown.view.move());
  QTest::mouseMove(&shown.view, to + QPoint(5, 5));
  shown.drop(to + QPoint(5, 5));
  EXPECT_EQ(*shown.session.channel(), withEverything());
  shown.session.history().redo();
  EXPECT_EQ(shown.session.document(), before);
}

TEST(BridgeDrag, PotentialsFollowTheWiperBeforeTheDrop) {
  Shown shown(withEverything());
  const auto potential = [&] {
    return *shown.view.stateNow()->potentials[static_cast<std::size_t>(Node::SPlus)];
  };
  const double middle = potential();
  const QPoint from = shown.grip({Kind::Balance, 0});
  shown.press(from);
  shown.dragTo(from, shown.at(shown.view.picture()->layout.balance->travel.p2()));
  EXPECT_GT(potential(), middle);  // towards P+, by which S+ is pulled up
  shown.key(Qt::Key_Escape);
  EXPECT_EQ(potential(), middle);
}

/// Where the wire of the lead begins in a drawing.
QPointF beginOf(const ui::BridgePicture& picture, LeadRole role) {
  for (const ui::LeadPlace& place : picture.layout.leads)
    if (place.role == role) return place.route.front();
  return {};
}

TEST(BridgeDrag, ExchangedLeadsAreDrawnExchangedBeforeTheDrop) {
  Shown shown(fullBridge());
  shown.session.selectStep(1);
  shown.focus(lead(LeadRole::ExcitationPlus));
  while (!shown.view.move() || shown.view.move()->target != ui::MoveTarget(Node::SMinus))
    shown.key(Qt::Key_Down);
  const ui::BridgePicture promised = shown.view.shownPicture();
  EXPECT_EQ(beginOf(promised, LeadRole::ExcitationPlus), promised.layout[Node::SMinus].at);
  EXPECT_EQ(beginOf(promised, LeadRole::SignalMinus), promised.layout[Node::PPlus].at);
  EXPECT_EQ(promised.state.sentence, shown.view.move()->state.sentence);
  shown.view.grab();
  shown.key(Qt::Key_Return);
  for (const LeadRole role : {LeadRole::ExcitationPlus, LeadRole::SignalMinus})
    EXPECT_EQ(beginOf(*shown.view.picture(), role), beginOf(promised, role));
  EXPECT_EQ(shown.view.picture()->state.potentials, promised.state.potentials);
}

TEST(BridgeDrag, AMovedLeakIsDrawnAtItsNewArmWithItsRing) {
  Shown shown(withEverything());
  shown.focus({Kind::Leak, 0});
  shown.key(Qt::Key_Right);
  ASSERT_TRUE(shown.view.move()->legal);
  const auto& leaks = shown.view.shownPicture().layout.leaks;
  EXPECT_TRUE(std::none_of(leaks.begin(), leaks.end(),
                           [](const ui::LeakPlace& leak) { return !leak.toStructure && leak.arm == 0; }));
  shown.view.grab();  // the ring is around what is there, not around what was
}

// ---- the twin of each drag -------------------------------------------------------------------

void expectKeysOfOneStep(Shown& shown, const BridgePart& part, const QString& label) {
  const core::Document before = shown.session.document();
  shown.focus(part);
  EXPECT_TRUE(shown.view.accessibleDescription().contains("Enter")) << "the keys are not told";
  shown.key(Qt::Key_Right);
  ASSERT_TRUE(shown.view.move());
  EXPECT_TRUE(shown.view.move()->legal);
  EXPECT_TRUE(shown.view.accessibleDescription().startsWith("Moving "));
  shown.key(Qt::Key_Escape);
  EXPECT_FALSE(shown.view.move());
  EXPECT_EQ(shown.session.document(), before);
  shown.key(Qt::Key_Right);
  shown.key(Qt::Key_Return);
  EXPECT_FALSE(shown.editor());
  expectOneStep(shown, before, label);
}

TEST(BridgeKeys, ArrowsMoveWhatTheMouseMoves) {
  for (const auto& [part, label] : {std::pair(BridgePart{Kind::Arm, 0}, "Exchange arms"),
                                    std::pair(BridgePart{Kind::Leak, 0}, "Move leak"),
                                    std::pair(BridgePart{Kind::StructureLeak, 1}, "Move leak"),
                                    std::pair(BridgePart{Kind::Balance, 0}, "Move wiper"),
                                    std::pair(lead(LeadRole::SignalPlus), "Exchange leads")}) {
    Shown shown(withEverything());
    expectKeysOfOneStep(shown, part, label);
  }
}

TEST(BridgeKeys, WiperGoesByHundredthsAndStopsAtTheEnd) {
  Shown shown(withEverything());
  shown.focus({Kind::Balance, 0});
  shown.key(Qt::Key_Right);
  EXPECT_NEAR(std::get<double>(*shown.view.move()->target), 0.51, 1e-12);  // 0.5 + 0.01, rounded once
  for (int k = 0; k < 60; ++k) shown.key(Qt::Key_Right);
  EXPECT_EQ(std::get<double>(*shown.view.move()->target), 1);
}

TEST(BridgeKeys, LosingTheKeyboardTakesTheMoveBack) {
  Shown shown(withEverything());
  shown.focus({Kind::Arm, 0});
  shown.key(Qt::Key_Right);
  ASSERT_TRUE(shown.view.move());
  shown.view.clearFocus();
  EXPECT_FALSE(shown.view.move());
  EXPECT_EQ(shown.steps(), 0);
}

// ---- duplicating, laying straight ------------------------------------------------------------

TEST(BridgeAlign, DuplicateGoesToTheNextArmAndIsSelected) {
  Shown shown(fullBridge());
  QSignalSpy said(&shown.view, &ui::BridgeView::said);
  const core::Document before = shown.session.document();
  shown.focusHandle(1, ShuntEnd::A);
  shown.key(Qt::Key_D, Qt::ControlModifier | Qt::ShiftModifier);
  ASSERT_EQ(shown.setup().shunts.size(), 3U);
  EXPECT_EQ(shown.shunt(2).a, Node::Arm3Begin);
  EXPECT_EQ(shown.view.selected(), (std::vector<BridgePart>{{Kind::Shunt, 2}}));
  ASSERT_EQ(said.count(), 1);
  EXPECT_TRUE(said[0][0].toString().contains("over arm 3")) << qPrintable(said[0][0].toString());
  expectOneStep(shown, before, "Duplicate shunt");
}

TEST(BridgeAlign, DuplicateWithoutAShuntSaysSo) {
  Shown shown(fullBridge());
  shown.focus({Kind::Arm, 0});
  shown.key(Qt::Key_D, Qt::ControlModifier | Qt::ShiftModifier);
  EXPECT_EQ(shown.steps(), 0);
  EXPECT_EQ(shown.title(), "Nothing was duplicated");
}

TEST(BridgeAlign, SelectedArmsGoToTheNominalResistance) {
  Shown shown(withEverything());
  const core::Document before = shown.session.document();
  shown.click(shown.arm(1));
  shown.click(shown.arm(3), Qt::ControlModifier);
  shown.key(Qt::Key_L, Qt::ControlModifier | Qt::ShiftModifier);
  EXPECT_EQ(shown.setup().bridge.arms,
            (std::array{Resistance(351), Resistance(350), Resistance(353), Resistance(350)}));
  expectOneStep(shown, before, "Align to template");
}

TEST(BridgeAlign, WithoutASelectionEverythingIsAsTheTemplateHasIt) {
  core::Channel channel = withEverything();
  channel.setup.bridge.hookup.signalReversed = true;
  channel.setup.shunts[0].a = Node::PPlus;
  Shown shown(channel);
  shown.action("bridgeAlign")->trigger();
  EXPECT_TRUE(core::asTemplateSays(shown.setup().bridge));
  EXPECT_EQ(shown.setup().bridge.arms[0], Resistance(350));
  EXPECT_EQ(shown.shunt(0).a, Node::Arm1Begin);
  shown.action("bridgeAlign")->trigger();
  EXPECT_EQ(shown.steps(), 1);
  EXPECT_EQ(shown.title(), "Nothing was aligned");
}

}  // namespace
