// SPDX-License-Identifier: GPL-3.0-or-later
#include <QApplication>
#include <QPaintEvent>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QWheelEvent>

#include "tests/ui/bridge_shown.h"
#include "ui/bridge/bridge_painter.h"

namespace {

using core::Node;
using sample::channelOf;
using sample::fullBridge;
using sample::withShunt;
using ui::BridgePart;
using ui::ShuntEnd;

using Shown = sample::ShownBridge;

TEST(BridgeView, SaysOutputWithSignAndWord) {
  // Derived: v = -R/(4 Rs + 2 R) = -350/699300 = -0.5005 mV/V; leads of zero ohm.
  core::Document document = fullBridge();
  core::Channel channel = *document.channels[0];
  channel.setup.bridge.leads = {};
  document = core::withChannel(document, 0, channel);
  Shown shown(document);
  shown.session.selectStep(1);
  EXPECT_TRUE(shown.outcome().contains(QStringLiteral("−0.5005 mV/V, negative")))
      << qPrintable(shown.outcome());
  shown.session.selectStep(2);
  EXPECT_TRUE(shown.outcome().contains("+0.5005 mV/V, positive")) << qPrintable(shown.outcome());
}

TEST(BridgeView, ChosenStepClosesItsSwitchAndNoOther) {
  Shown shown(fullBridge());
  EXPECT_EQ(shown.view.picture()->state.closed, (std::vector<bool>{false, false}));
  shown.session.selectStep(2);
  EXPECT_EQ(shown.view.picture()->state.closed, (std::vector<bool>{false, true}));
  const QImage closed = shown.view.grab().toImage();
  const QColor selected = ui::coloursFor(shown.view.palette()).selected;
  const auto count = [&](const QImage& image) {
    int pixels = 0;
    for (int y = 0; y < image.height(); ++y)
      for (int x = 0; x < image.width(); ++x) pixels += image.pixelColor(x, y) == selected;
    return pixels;
  };
  EXPECT_GT(count(closed), 100);
  shown.session.selectStep(0);
  EXPECT_EQ(count(shown.view.grab().toImage()), 0);
}

/// Where a widget was painted.
struct PaintedPlaces : QObject {
  QRegion places;
  bool eventFilter(QObject*, QEvent* event) override {
    if (event->type() == QEvent::Paint) places += static_cast<QPaintEvent*>(event)->region();
    return false;
  }
};

TEST(BridgeView, IsPaintedAnewAllOverWhenWordsBesideItMoveIt) {
  Shown shown(fullBridge());
  PaintedPlaces painted;
  shown.view.installEventFilter(&painted);
  const double before = shown.view.toWidget({0, 0}).y();
  auto* words = shown.view.findChild<QLabel*>("bridgeLeaks");
  words->setText("one\ntwo\nthree\nfour\nfive");
  words->show();
  EXPECT_TRUE(QTest::qWaitFor(
      [&] { return painted.places.contains(QRect(shown.view.rect().center(), QSize(1, 1))); }));
  EXPECT_NE(shown.view.toWidget({0, 0}).y(), before);
  EXPECT_TRUE(QRegion(shown.view.rect()).subtracted(painted.places).isEmpty());
}

TEST(BridgeView, DraggedShuntEndIsOneUndoStep) {
  Shown shown(fullBridge());
  const core::Document before = shown.session.document();

  // From over arm 1 (P+ corner to S- corner) to P+ corner to S+ corner, which is over arm 4.
  shown.drag(shown.handle(0, ShuntEnd::B), shown.node(Node::Arm3End));

  EXPECT_EQ(core::pointOf(shown.session.channel()->setup.bridge, shown.shunt(0).b), Node::Arm3End);
  EXPECT_EQ(shown.shunt(0).a, Node::Arm1Begin);
  EXPECT_EQ(shown.session.history().count(), 1);
  EXPECT_EQ(shown.session.history().undoText(), "Move shunt");
  shown.session.history().undo();
  EXPECT_EQ(shown.session.document(), before);
  EXPECT_EQ(shown.shunt(0).b, Node::Arm1End);
}

TEST(BridgeView, PolarityFollowsTheDragBeforeTheDrop) {
  Shown shown(fullBridge());
  shown.session.selectStep(1);
  ASSERT_TRUE(shown.outcome().contains("negative"));
  const QPoint handle = shown.handle(0, ShuntEnd::B), over = shown.node(Node::Arm3End);
  shown.press(handle);
  shown.dragTo(handle, over);
  EXPECT_TRUE(shown.outcome().contains("positive")) << qPrintable(shown.outcome());
  EXPECT_EQ(shown.session.history().count(), 0);
  shown.drop(over);
  EXPECT_EQ(shown.session.history().count(), 1);
  EXPECT_TRUE(shown.outcome().contains("positive")) << qPrintable(shown.outcome());
}

TEST(BridgeView, SaysWhereTheInsulationLeaks) {
  Shown shown(fullBridge());
  auto* leaks = shown.view.findChild<QLabel*>("bridgeLeaks");
  ASSERT_TRUE(leaks);
  EXPECT_FALSE(leaks->isVisible());
  core::Channel channel = *shown.session.channel();
  channel.setup.bridge.leaks[0].across = core::Resistance(5e6);
  channel.setup.bridge.leaks[1].toStructure = core::Resistance(2e6);
  shown.session.editChannel("Leak", channel);
  // The one over the arm is drawn, as all are; that the other leads nowhere is not.
  EXPECT_TRUE(leaks->isVisible());
  EXPECT_EQ(leaks->text(), QStringLiteral("Leak 2 MΩ to the structure from arm 2, "
                                          "structure floating: no return path"));
  EXPECT_TRUE(shown.view.accessibleDescription().contains(QStringLiteral("Leak 5 MΩ over arm 1. ")));
  // Two leaks meet in the structure, so that each is the other's return.
  channel.setup.bridge.leaks[2].toStructure = core::Resistance(3e6);
  shown.session.editChannel("Leak", channel);
  EXPECT_FALSE(leaks->text().contains("no return path")) << qPrintable(leaks->text());
  channel.setup.instrument.grounding = core::Grounding::PMinus;
  shown.session.editChannel("Ground", channel);
  EXPECT_FALSE(leaks->isVisible());  // that is drawn too
  EXPECT_TRUE(shown.view.accessibleDescription().contains(QStringLiteral("structure on P−")));
}

QStringList voltagesOf(const ui::BridgePicture& picture) {
  QStringList texts;
  for (const ui::BridgeLabel& label : picture.labels)
    if (label.role == ui::LabelRole::Voltage) texts << label.text;
  return texts;
}

TEST(BridgeView, VoltagesFollowTheDragBeforeTheDrop) {
  // Derived: arms of 350 ohm at 5 V without leads. 174 650 ohm over arm 1 lifts S- to
  // 5 x 350/(349.3 + 350) = 2.5025 V and leaves S+ at 2.5 V; over arm 4 it lifts S+ instead.
  core::Channel channel = *fullBridge().channels[0];
  channel.setup.bridge.leads = {};
  Shown shown(core::withChannelInserted({}, 0, channel));
  shown.session.selectStep(1);
  const auto voltageAt = [&](Node node) {
    for (const ui::BridgeLabel& label : shown.view.shownPicture().labels)
      if (label.role == ui::LabelRole::Voltage &&
          label.box == shown.view.shownPicture().layout[node].voltageBox)
        return label.text;
    return QString();
  };
  const QStringList before = voltagesOf(shown.view.shownPicture());
  EXPECT_EQ(voltageAt(Node::Arm1End), "2.5025 V");
  EXPECT_EQ(voltageAt(Node::Arm3End), "2.5000 V");
  const QPoint handle = shown.handle(0, ShuntEnd::B), over = shown.node(Node::Arm3End);
  shown.press(handle);
  shown.dragTo(handle, over);
  EXPECT_EQ(voltageAt(Node::Arm1End), "2.5000 V");
  EXPECT_EQ(voltageAt(Node::Arm3End), "2.5025 V");
  shown.key(Qt::Key_Escape);
  EXPECT_EQ(voltagesOf(shown.view.shownPicture()), before);
  shown.drop(over);
  shown.drag(handle, over);
  EXPECT_EQ(voltageAt(Node::Arm3End), "2.5025 V");
}

TEST(BridgeView, LowViewLeavesToTheBarWhatTheBarShows) {
  Shown shown(fullBridge());
  shown.session.selectStep(1);
  auto* outcome = shown.view.findChild<QLabel*>("bridgeOutcome");
  auto* sentence = shown.view.findChild<QLabel*>("bridgeSentence");
  shown.view.resize(1400, 900);
  QTest::qWait(1);
  EXPECT_TRUE(outcome->isVisible());
  const int large = QFontInfo(sentence->font()).pixelSize();
  shown.view.resize(490, 316);
  QTest::qWait(1);
  EXPECT_LT(QFontInfo(sentence->font()).pixelSize(), large);
  EXPECT_FALSE(outcome->isVisible());
  EXPECT_TRUE(sentence->isVisible());
  // Nothing below the drawing but the title, the sentence and what is between.
  const int lines = sentence->heightForWidth(sentence->width());
  EXPECT_LE(shown.view.height() - shown.view.findChild<QLabel*>("bridgeTitle")->y(), lines + 46);
  // What the bar does not show stands beside the title, a refusal in its own line.
  EXPECT_TRUE(shown.view.findChild<QLabel*>("bridgeTitle")->accessibleName().contains("simulated"));
  const int top = shown.view.findChild<QLabel*>("bridgeTitle")->y();
  const QPoint handle = shown.handle(0, ShuntEnd::B);
  shown.press(handle);
  shown.dragTo(handle, shown.node(Node::Arm1Begin));
  ASSERT_TRUE(shown.view.move());
  EXPECT_TRUE(outcome->isVisible());
  shown.key(Qt::Key_Escape);
  QTest::qWait(1);
  EXPECT_EQ(shown.view.findChild<QLabel*>("bridgeTitle")->y(), top);
}

TEST(BridgeView, NumbersAndUnitsOfTheSentenceStayTogether) {
  Shown shown(fullBridge());
  shown.session.selectStep(1);
  const QString text = shown.view.findChild<QLabel*>("bridgeSentence")->text();
  ASSERT_TRUE(text.contains(QChar(0xa0))) << qPrintable(text);
  EXPECT_FALSE(text.contains(QRegularExpression("\\d mV"))) << qPrintable(text);
  EXPECT_FALSE(text.contains("mV/V")) << "may break behind the stroke";
  EXPECT_EQ(shown.text("bridgeSentence"), shown.view.stateNow()->sentence);
}

TEST(BridgeView, TenVoltAreShownWhole) {
  core::Channel channel = *fullBridge().channels[0];
  channel.setup.instrument.excitation = core::Voltage(10);
  Shown shown(channel);
  const QStringList texts = voltagesOf(*shown.view.picture());
  EXPECT_FALSE(texts.isEmpty());
  for (const QString& text : texts) EXPECT_TRUE(text.endsWith(" V")) << qPrintable(text);
}

TEST(BridgeView, ADraggedShuntIsDrawnWhereItWouldBe) {
  Shown shown(fullBridge());
  shown.session.selectStep(1);
  const QPolygonF before = shown.view.picture()->lanes.places[0].toB;
  const QPoint handle = shown.handle(0, ShuntEnd::B), over = shown.node(Node::Arm3End);
  shown.press(handle);
  shown.dragTo(handle, over);
  const ui::BridgePicture promised = shown.view.shownPicture();
  EXPECT_NE(promised.lanes.places[0].toB, before);
  EXPECT_EQ(promised.shunts[0].b, Node::Arm3End);
  shown.drop(over);
  // What was seen is what is there then: the same wires, and the current in them.
  EXPECT_EQ(shown.view.picture()->lanes.places[0].toB, promised.lanes.places[0].toB);
  EXPECT_EQ(shown.view.picture()->state.flow->shunts, promised.state.flow->shunts);
  EXPECT_EQ(&shown.view.shownPicture(), shown.view.picture());
}

TEST(BridgeView, ShuntInNoStepIsPredictedAsIfClosedAlone) {
  core::Channel channel = *fullBridge().channels[0];
  channel.setup.sequence.clear();
  Shown shown(core::withChannelInserted({}, 0, channel));
  const QPoint handle = shown.handle(0, ShuntEnd::B), over = shown.node(Node::Arm3End);
  shown.press(handle);
  shown.dragTo(handle, over);
  EXPECT_TRUE(shown.outcome().contains("positive")) << qPrintable(shown.outcome());
  shown.drop(over);
  EXPECT_TRUE(shown.session.channel()->setup.sequence.empty());
}

TEST(BridgeView, MoveIsPredictedInTheChosenStepWhenItClosesTheShunt) {
  // Over arms 1 and 2 at once the bridge stays in balance; arm 1's shunt moved to arm 4 leaves arm 2's
  // and its own, both positive.
  core::Channel channel = *fullBridge().channels[0];
  channel.setup.sequence.push_back({"both", {0, 1}, core::Duration(2)});
  Shown shown(core::withChannelInserted({}, 0, channel));
  shown.session.selectStep(4);
  ASSERT_TRUE(shown.outcome().contains("no change")) << qPrintable(shown.outcome());
  const QPoint handle = shown.handle(0, ShuntEnd::B), over = shown.node(Node::Arm3End);
  shown.press(handle);
  shown.dragTo(handle, over);
  const QString promised = shown.outcome();
  shown.drop(over);
  EXPECT_EQ(shown.outcome(), promised);
  shown.session.selectStep(1);
  EXPECT_NE(shown.outcome(), promised);
}

TEST(BridgeView, EscapeDuringTheDragChangesNothing) {
  Shown shown(fullBridge());
  const QPoint handle = shown.handle(0, ShuntEnd::B), over = shown.node(Node::Arm3End);
  shown.press(handle);
  shown.dragTo(handle, over);
  ASSERT_TRUE(shown.view.move());
  shown.key(Qt::Key_Escape);
  EXPECT_FALSE(shown.view.move());
  shown.drop(over);
  EXPECT_EQ(shown.session.history().count(), 0);
  EXPECT_EQ(shown.shunt(0).b, Node::Arm1End);
}

TEST(BridgeView, DropOnTheOtherEndIsRefusedWithItsReason) {
  Shown shown(fullBridge());
  // Arm 4's end is arm 1's begin in a full bridge: the end that stays is there.
  const QPoint handle = shown.handle(0, ShuntEnd::B), over = shown.node(Node::Arm4End);
  shown.press(handle);
  shown.dragTo(handle, over);
  EXPECT_TRUE(shown.outcome().contains("one point")) << qPrintable(shown.outcome());
  shown.drop(over);
  EXPECT_TRUE(shown.outcome().contains("one point")) << qPrintable(shown.outcome());
  EXPECT_EQ(shown.session.history().count(), 0);
  EXPECT_EQ(shown.shunt(0).b, Node::Arm1End);
}

TEST(BridgeView, DropFarFromEveryNodeChangesNothing) {
  Shown shown(fullBridge());
  shown.drag(shown.handle(0, ShuntEnd::B), shown.view.toWidget({250, 320}).toPoint());
  EXPECT_EQ(shown.session.history().count(), 0);
}

/// With a closed check, chosen.
core::Document judged() {
  core::Channel channel = *fullBridge().channels[0];
  channel = core::withCheckClosed(core::withCheckAdded(channel, {}), 0);
  return core::withChannelInserted({}, 0, channel);
}

TEST(BridgeView, AClosedCheckIsNotEditedInAnyWay) {
  Shown shown(judged());
  ASSERT_TRUE(shown.session.checkIsClosed());
  QSignalSpy refused(&shown.view, &ui::BridgeView::refused);
  const auto expectRefused = [&](const char* how) {
    ASSERT_EQ(refused.count(), 1) << how;
    EXPECT_TRUE(refused.last().first().toString().contains("plan only")) << how;
    EXPECT_EQ(shown.session.history().count(), 0) << how;
    EXPECT_FALSE(shown.view.move()) << how;
    EXPECT_FALSE(shown.editor()) << how;
    refused.clear();
  };
  const QPoint handle = shown.handle(0, ShuntEnd::B), over = shown.node(Node::Arm3End);
  shown.press(handle);
  shown.dragTo(handle, over);
  EXPECT_TRUE(shown.title().startsWith("Nothing was moved")) << qPrintable(shown.title());
  shown.drop(over);
  expectRefused("drag");
  shown.focusHandle(0, ShuntEnd::B);
  for (const char* name : {"bridgeEdit", "bridgeRemove", "bridgeDuplicate", "bridgeAlign", "bridgeAddHere"}) {
    shown.action(name)->trigger();
    expectRefused(name);
  }
  EXPECT_FALSE(shown.view.addMenu()->isVisible());
  // The arrows walk on where they would move.
  const auto before = shown.view.focus();
  shown.key(Qt::Key_Right);
  EXPECT_FALSE(shown.view.move());
  EXPECT_NE(shown.view.focus(), before);

  shown.session.selectCheck({});
  shown.drag(shown.handle(0, ShuntEnd::B), shown.node(Node::Arm3End));
  EXPECT_EQ(shown.session.history().count(), 1);
}

TEST(BridgeView, AMenuOffersNoEditOfAClosedCheck) {
  Shown shown(judged());
  shown.focusHandle(0, ShuntEnd::B);
  auto* menu = shown.view.findChild<QMenu*>("bridgeMenu");
  const auto isOffered = [&](const char* name) { return shown.action(name)->isEnabled(); };
  emit menu->aboutToShow();
  for (const char* name : {"bridgeEdit", "bridgeRemove", "bridgeDuplicate", "bridgeAlign"})
    EXPECT_FALSE(isOffered(name)) << name;
  EXPECT_FALSE(shown.view.addMenu()->menuAction()->isEnabled());
  for (const char* name : {"bridgeShowField", "bridgeSelectAll", "bridgeCopyPicture"})
    EXPECT_TRUE(isOffered(name)) << name;
  emit menu->aboutToHide();
  shown.session.selectCheck({});
  emit menu->aboutToShow();
  EXPECT_TRUE(isOffered("bridgeEdit"));
  EXPECT_TRUE(isOffered("bridgeRemove"));
  EXPECT_TRUE(shown.view.addMenu()->menuAction()->isEnabled());
}

TEST(BridgeView, AClosedCheckShowsTheSetupItWasJudgedByAndSaysWhereThePlanIsAnother) {
  Shown shown(judged());
  const auto* notice = shown.view.findChild<QLabel*>("bridgeNotice");
  const QString words = "Shows the set-up that the closed check was judged by; the plan is another now.";
  const auto drawnEnd = [&] { return shown.view.picture()->shunts[0].b; };
  EXPECT_FALSE(notice->isVisible());
  EXPECT_FALSE(shown.view.description().contains(words));
  shown.session.selectCheck({});
  shown.drag(shown.handle(0, ShuntEnd::B), shown.node(Node::Arm3End));
  const core::Node moved = shown.shunt(0).b;
  ASSERT_NE(moved, Node::Arm1End);
  EXPECT_EQ(drawnEnd(), moved);
  EXPECT_FALSE(notice->isVisible());

  shown.session.selectCheck(0);
  EXPECT_EQ(drawnEnd(), Node::Arm1End);
  EXPECT_TRUE(notice->isVisible());
  EXPECT_EQ(notice->text(), words);
  EXPECT_TRUE(shown.view.description().contains(words));
  EXPECT_TRUE(shown.view.accessibleDescription().contains(words));

  shown.session.history().undo();
  EXPECT_FALSE(notice->isVisible());
  shown.session.history().redo();
  EXPECT_TRUE(notice->isVisible());
  shown.session.selectCheck({});
  EXPECT_FALSE(notice->isVisible());
  EXPECT_EQ(drawnEnd(), moved);
}

TEST(BridgeView, AStepThatAClosedCheckDoesNotHaveIsNotShown) {
  Shown shown(judged());
  core::Channel channel = *shown.session.channel();
  channel.setup.sequence.push_back({.label = "later", .closed = {0}, .hold = core::Duration(1)});
  const std::size_t later = channel.setup.sequence.size() - 1;
  shown.session.editChannel("Step", channel);
  shown.session.selectStep(later);
  EXPECT_FALSE(shown.title().contains("later")) << qPrintable(shown.title());
  shown.session.selectCheck({});
  EXPECT_TRUE(shown.title().contains("later")) << qPrintable(shown.title());
}

TEST(BridgeView, KeyboardMovesAnEndAndEnterKeepsIt) {
  Shown shown(fullBridge());
  shown.focusHandle(0, ShuntEnd::B);
  shown.key(Qt::Key_Right);
  ASSERT_TRUE(shown.view.move());
  const Node target = std::get<Node>(*shown.view.move()->target);
  EXPECT_EQ(shown.session.history().count(), 0);
  EXPECT_TRUE(shown.title().startsWith("Moving over arm 1")) << qPrintable(shown.title());
  shown.key(Qt::Key_Return);
  EXPECT_EQ(shown.shunt(0).b, target);
  EXPECT_EQ(shown.session.history().undoText(), "Move shunt");
  EXPECT_EQ(shown.session.history().count(), 1);
}

TEST(BridgeView, KeyboardWalksEveryLegalPointAndComesBack) {
  Shown shown(fullBridge());
  shown.focusHandle(0, ShuntEnd::B);
  const auto targets = ui::legalTargets(shown.session.channel()->setup.bridge, shown.shunt(0), ShuntEnd::B);
  // Four-wire full bridge: four terminals and four corners, less the one the other end is on.
  EXPECT_EQ(targets.size(), 7U);
  std::set<Node> visited;
  for (std::size_t k = 0; k < targets.size(); ++k) {
    shown.key(Qt::Key_Right);
    visited.insert(std::get<Node>(*shown.view.move()->target));
  }
  EXPECT_EQ(visited.size(), targets.size());
  EXPECT_EQ(std::get<Node>(*shown.view.move()->target), Node::Arm1End);
  shown.key(Qt::Key_Left);
  shown.key(Qt::Key_Escape);
  EXPECT_FALSE(shown.view.move());
  EXPECT_EQ(shown.session.history().count(), 0);
}

TEST(BridgeView, TabWalksEveryPartAndLeavesAtTheLast) {
  QWidget window;
  QWidget after(&window);
  after.setFocusPolicy(Qt::StrongFocus);
  ui::Session session(fullBridge());
  ui::BridgeView view(session, &window);
  view.resize(600, 400);
  QWidget::setTabOrder(&view, &after);
  window.show();
  ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
  view.setFocus(Qt::TabFocusReason);
  std::vector<BridgePart> parts;
  while (view.hasFocus() && parts.size() < 40) {
    parts.push_back(view.focus()->part);
    QTest::keyClick(&view, Qt::Key_Tab);
  }
  EXPECT_TRUE(after.hasFocus());
  ASSERT_EQ(parts.size(), 14U);  // instrument, input, four leads, four arms, two shunts with two ends each
  EXPECT_EQ(parts.front(), (BridgePart{BridgePart::Kind::Instrument, 0}));
  EXPECT_EQ(parts.back(), (BridgePart{BridgePart::Kind::Shunt, 1}));
}

TEST(BridgeView, DeleteRemovesTheShunt) {
  Shown shown(fullBridge());
  shown.focusHandle(0, ShuntEnd::A);
  shown.key(Qt::Key_Delete);
  ASSERT_EQ(shown.session.channel()->setup.shunts.size(), 1U);
  EXPECT_EQ(shown.shunt(0).name, "over arm 2");
  EXPECT_EQ(shown.session.history().undoText(), "Remove shunt");
  shown.session.history().undo();
  EXPECT_EQ(shown.session.channel()->setup.shunts.size(), 2U);
}

TEST(BridgeView, ClickOnAShuntChoosesTheFirstStepThatClosesIt) {
  Shown shown(fullBridge());
  const QPointF body = shown.view.picture()->lanes.places[1].resistor.center();
  QTest::mouseClick(&shown.view, Qt::LeftButton, {}, shown.view.toWidget(body).toPoint());
  EXPECT_EQ(shown.session.selection().step, 2U);
}

TEST(BridgeView, ControlEnterAsksForTheFieldInTheSetup) {
  Shown shown(fullBridge());
  std::vector<BridgePart> asked;
  QObject::connect(&shown.view, &ui::BridgeView::partActivated,
                   [&](const BridgePart& part) { asked.push_back(part); });
  shown.click(shown.arm(2));
  shown.key(Qt::Key_Return, Qt::ControlModifier);
  shown.click(shown.at(shown.view.picture()->layout.source));
  shown.action("bridgeShowField")->trigger();
  shown.focusHandle(1, ShuntEnd::A);
  shown.key(Qt::Key_Enter, Qt::ControlModifier);
  EXPECT_EQ(asked, (std::vector<BridgePart>{{BridgePart::Kind::Arm, 2},
                                            {BridgePart::Kind::Instrument, 0},
                                            {BridgePart::Kind::Shunt, 1}}));
}

TEST(BridgeView, TipsAndTextsNameEveryPart) {
  core::Channel channel = *fullBridge().channels[0];
  channel.setup.bridge.leaks[2].across = core::Resistance(5e6);
  channel.setup.instrument.balance.kind = core::BalanceKind::Parallel;
  Shown shown(channel);
  std::set<BridgePart::Kind> kinds;
  for (const ui::BridgeSpot& spot : ui::spotsOf(*shown.view.picture())) {
    kinds.insert(spot.part.kind);
    EXPECT_FALSE(ui::textOf(*shown.view.picture(), spot).isEmpty());
    EXPECT_FALSE(ui::nameOf(*shown.view.picture(), spot.part).isEmpty());
    EXPECT_FALSE(ui::ringOf(*shown.view.picture(), spot).isEmpty());
    EXPECT_FALSE(ui::labelBoxOf(*shown.view.picture(), spot.part).isEmpty());
  }
  EXPECT_EQ(kinds.size(), 7U);  // all but a leak to the structure
}

TEST(BridgeView, StepThatCannotBePredictedSaysWhy) {
  core::Channel channel = *fullBridge().channels[0];
  channel.setup.shunts[0].b = Node::Arm4End;  // the same point as its other end
  Shown shown(core::withChannelInserted({}, 0, channel));
  shown.session.selectStep(1);
  EXPECT_TRUE(shown.view.picture()->state.failed);
  EXPECT_EQ(shown.outcome().toStdString(), shown.session.evaluation()->prediction.steps[1].error().text());
  for (const ui::BridgeLabel& label : shown.view.picture()->labels)
    EXPECT_NE(label.role, ui::LabelRole::Voltage) << qPrintable(label.text);
  shown.session.selectStep(2);
  EXPECT_FALSE(shown.view.picture()->state.failed);
}

TEST(BridgeView, BridgeThatCannotBeSolvedIsStillDrawn) {
  core::Channel channel = *fullBridge().channels[0];
  channel.setup.bridge.arms[2] = core::Resistance(-1);
  Shown shown(core::withChannelInserted({}, 0, channel));
  EXPECT_TRUE(shown.outcome().contains("arm 3")) << qPrintable(shown.outcome());
  EXPECT_FALSE(shown.view.grab().isNull());
}

TEST(BridgeView, ShuntOnAMissingSenseTerminalIsMarkedAndCanBeMended) {
  core::Channel channel = *fullBridge().channels[0];
  channel.setup.shunts[0].b = Node::SenseMinus;  // four-wire: no such terminal
  Shown shown(core::withChannelInserted({}, 0, channel));
  EXPECT_TRUE(shown.view.picture()->lanes.places[0].faulty);
  shown.drag(shown.handle(0, ShuntEnd::B), shown.node(Node::Arm1End));
  EXPECT_FALSE(shown.view.picture()->lanes.places[0].faulty);
}

TEST(BridgeView, DocumentWithoutChannelsHasAnEmptyState) {
  Shown shown(core::Document{});
  EXPECT_EQ(shown.view.picture(), nullptr);
  EXPECT_EQ(shown.view.description(), "No channel in this document.");
  for (const Qt::Key key : {Qt::Key_Tab, Qt::Key_Right, Qt::Key_Return, Qt::Key_Delete, Qt::Key_Plus})
    shown.key(key);
  QTest::mouseClick(&shown.view, Qt::LeftButton, {}, {50, 50});
  QTest::mouseDClick(&shown.view, Qt::LeftButton, {}, {50, 50});
  EXPECT_FALSE(shown.view.grab().isNull());
  shown.session.edit("Add channel", fullBridge());
  EXPECT_NE(shown.view.picture(), nullptr);
  shown.session.history().undo();
  EXPECT_EQ(shown.view.picture(), nullptr);
}

TEST(BridgeView, HostileNamesStayPlainText) {
  core::Channel channel = *fullBridge().channels[0];
  channel.name = "<b>TP</b>";
  channel.setup.sequence[1].label = "<img src=x>";
  channel.setup.shunts[0].name = "<script>\n\"&\" " + std::string(5000, 'W');
  channel.setup.shunts[1].name = "%1 %2 \xff\xfe";
  Shown shown(core::withChannelInserted({}, 0, channel));
  shown.session.selectStep(1);
  for (const QLabel* label : shown.view.findChildren<QLabel*>())
    EXPECT_EQ(label->textFormat(), Qt::PlainText) << qPrintable(label->objectName());
  EXPECT_TRUE(shown.title().contains("<img src=x>")) << qPrintable(shown.title());
  EXPECT_TRUE(shown.view.description().contains("<b>TP</b>"));
  for (const ui::BridgeLabel& label : shown.view.picture()->labels) {
    if (label.role != ui::LabelRole::Shunt) continue;
    EXPECT_FALSE(label.text.contains('\n'));
    EXPECT_TRUE(label.text.endsWith(QStringLiteral("174.65 kΩ"))) << qPrintable(label.text);
  }
  EXPECT_FALSE(shown.view.grab().isNull());
}

TEST(BridgeView, DescriptionSaysTheCircuitInWords) {
  Shown shown(fullBridge());
  shown.session.selectStep(1);
  const QString told = shown.view.description();
  for (const char* words : {"Full bridge, bending", "four-wire", "excitation 5 V", "Arm 1: 350 Ω", "+ε",
                            "P- 2 Ω", "Shunt over arm 1, 174.65 kΩ", "closed", "negative"})
    EXPECT_TRUE(told.contains(QString::fromUtf8(words))) << words << " not in " << qPrintable(told);
  EXPECT_EQ(shown.view.accessibleName(), "Bridge");
  EXPECT_TRUE(shown.view.accessibleDescription().contains(told));
}

TEST(BridgeView, DrawsAnewOnlyForAnotherChannelValueOrStep) {
  Shown shown(fullBridge());
  const auto* drawn = shown.view.picture();
  shown.session.history().setClean();
  emit shown.session.changed();
  EXPECT_EQ(shown.view.picture(), drawn);
}

TEST(BridgeView, WheelWithControlZoomsAroundThePointer) {
  Shown shown(fullBridge());
  const QPointF at(200, 150);
  const QPointF node = shown.view.picture()->layout[Node::Arm2End].at;
  const QPointF before = shown.view.toWidget(node);
  QWheelEvent wheel(at, shown.view.mapToGlobal(at), {}, {0, 120}, Qt::NoButton, Qt::ControlModifier,
                    Qt::NoScrollPhase, false);
  QApplication::sendEvent(&shown.view, &wheel);
  const QPointF after = shown.view.toWidget(node);
  // Derived: a point at distance d from the anchor goes to 1.25 d, one wheel notch being 5/4.
  EXPECT_NEAR(after.x() - at.x(), 1.25 * (before.x() - at.x()), 1e-6);
  EXPECT_NEAR(after.y() - at.y(), 1.25 * (before.y() - at.y()), 1e-6);
  shown.view.fit();
  EXPECT_NEAR(shown.view.toWidget(node).x(), before.x(), 1e-6);
}

TEST(BridgeView, WholeDrawingIsInsideTheWidgetAtEverySize) {
  Shown shown(fullBridge());
  for (const QSize size : {QSize(500, 380), QSize(620, 420), QSize(1100, 800)}) {
    shown.view.resize(size);
    const QRectF scene = shown.view.picture()->lanes.scene;
    const int textTop = shown.view.findChild<QLabel*>("bridgeTitle")->y();
    const QRectF room(0, 0, size.width(), textTop);
    EXPECT_TRUE(room.contains(shown.view.toWidget(scene.topLeft())));
    EXPECT_TRUE(room.contains(shown.view.toWidget(scene.bottomRight())));
  }
}

TEST(BridgeView, FollowsADarkPalette) {
  Shown shown(fullBridge());
  shown.view.setPalette(ui::darkPalette());
  const QColor corner = shown.view.grab().toImage().pixelColor(2, 2);
  EXPECT_LT(corner.lightness(), 80);
}

}  // namespace
