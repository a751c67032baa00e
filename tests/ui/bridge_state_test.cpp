// SPDX-License-Identifier: GPL-3.0-or-later
// What the bridge shows at a step, in numbers and in words, and the streams of current that are drawn.
#include "ui/bridge/bridge_state.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QImage>

#include "tests/support/bridges.h"
#include "ui/bridge/bridge_painter.h"
#include "ui/bridge/flow_painter.h"

namespace {

using core::LeadRole;
using core::Node;
using core::Resistance;
using sample::channelOf;
using sample::withShunt;

/// A shunt over each arm and one from the terminals, each closed by its step; a zero step first.
core::Channel shunted(core::BridgeType type, bool sixWire = false) {
  core::Channel channel = channelOf(type, sixWire);
  for (const std::size_t arm : {0, 1, 2, 3})
    channel = withShunt(channel, "over " + std::to_string(arm + 1), core::armBegin(arm), core::armEnd(arm));
  channel = withShunt(channel, "outside", Node::PPlus, Node::SMinus);
  channel.setup.sequence = {{"zero", {}}};
  for (std::size_t k = 0; k < 5; ++k) channel.setup.sequence.push_back({"step", {k}});
  return channel;
}

ui::BridgeState stateOf(const core::Channel& channel, std::optional<std::size_t> step) {
  return ui::stateAt(channel, core::predict(channel.setup), step);
}

TEST(BridgeState, HasOutputFlowMovementAndSentenceOfAStep) {
  const core::Channel channel = shunted(core::BridgeType::FullBending);
  const ui::BridgeState state = stateOf(channel, 1);
  ASSERT_TRUE(state.output && state.flow && state.movement);
  // Common sense of the same network: TN-514 gives -R/(4 Rs + 2 R) without leads; two leads of 2 ohm
  // take 1.13 %.
  EXPECT_NEAR(state.output->base(), -350 / (4 * 174650.0 + 700) * 350 / 354, 2e-8);
  EXPECT_EQ(state.polarity, core::Polarity::Negative);
  EXPECT_EQ(state.movement->change, *state.output);
  EXPECT_TRUE(
      state.sentence.startsWith(QStringLiteral("over 1 lowers arm 1 from 350 Ω to 349.3 Ω, so S- rises")))
      << qPrintable(state.sentence);
  EXPECT_TRUE(state.sentence.contains("simulates compression of gauge 1"));
  ASSERT_EQ(state.potentials.size(), core::nodeCount);
  EXPECT_DOUBLE_EQ(*state.potentials[static_cast<std::size_t>(Node::PPlus)], 1);
  EXPECT_DOUBLE_EQ(state.excitation_V, 5);
}

TEST(BridgeState, PotentialsAreThoseOfThePrediction) {
  for (const core::BridgeTemplate& shape : core::allTemplates()) {
    const core::Channel channel = shunted(shape.type);
    const ui::BridgeState state = stateOf(channel, 2);
    const auto expected = core::potentials(channel.setup, 2);
    ASSERT_TRUE(expected);
    for (std::size_t node = 0; node < core::nodeCount; ++node) {
      ASSERT_EQ(state.potentials[node].has_value(), (*expected)[node].has_value());
      if (!state.potentials[node]) continue;
      // Once multiplied by the excitation and divided again: two roundings.
      EXPECT_NEAR(*state.potentials[node], *(*expected)[node], 4e-16);
    }
  }
}

TEST(BridgeState, WithoutAStepNothingMovesAndCurrentsFlow) {
  const ui::BridgeState state = stateOf(shunted(core::BridgeType::FullBending), {});
  EXPECT_TRUE(state.sentence.isEmpty());
  EXPECT_FALSE(state.movement);
  ASSERT_TRUE(state.flow && state.output);
  EXPECT_EQ(state.output->base(), 0);
  EXPECT_GT(state.flow->source.base(), 0);
}

TEST(BridgeState, AFailingStepHasNoOutputAndSaysWhy) {
  core::Channel channel = shunted(core::BridgeType::FullBending);
  channel.setup.shunts[0].resistance = Resistance(0);
  const ui::BridgeState state = stateOf(channel, 1);
  EXPECT_TRUE(state.failed);
  EXPECT_FALSE(state.output || state.flow || state.movement);
  EXPECT_TRUE(state.sentence.isEmpty());
  EXPECT_TRUE(ui::describe(channel, state).contains("above zero"));
}

TEST(BridgeState, SpokenTextSaysEverythingThatIsDrawn) {
  core::Channel channel = shunted(core::BridgeType::FullBending, true);
  core::Setup& setup = channel.setup;
  setup.bridge.leaks[1].across = Resistance(5e6);
  setup.instrument.balance.kind = core::BalanceKind::Parallel;
  setup.instrument.inputResistance = Resistance(1e6);
  setup.bridge.hookup.signalReversed = true;
  const QString told = ui::describe(channel, stateOf(channel, 1));
  for (const char* words :
       {"Full bridge, bending, six-wire, excitation 5 V", "The signal wires are reversed", "Arm 2: 350 Ω",
        "sense+ 2 Ω", "Leak 5 MΩ over arm 2",
        "Balance: 10 kΩ over the excitation, wiper at 50 % from P- through 100 kΩ to S+.",
        "The input takes current through 1 MΩ.", "Shunt over 1, 174.65 kΩ", "closed", "The source drives ",
        "arm 1 carries ", "from gauge end of lead P+ to gauge end of lead S-", "shunt over 1 carries ",
        "the leak over arm 2 carries ", "Output +", "positive",
        "With the signal reversed and arm 2 leaking, over 1 lowers arm 1", "the output S- - S+ rises by"})
    EXPECT_TRUE(told.contains(QString::fromUtf8(words))) << words << "\nnot in: " << qPrintable(told);
}

TEST(BridgeState, SpokenTextSaysASeriesBalance) {
  core::Channel channel = shunted(core::BridgeType::FullBending);
  channel.setup.instrument.balance = {core::BalanceKind::Series, Resistance(4), Resistance(1), 0.25};
  EXPECT_TRUE(ui::describe(channel, stateOf(channel, {}))
                  .contains(QString::fromUtf8(
                      "Balance: 4 Ω between arms 3 and 4, wiper to S+, 25 % of it in arm 3.")));
}

TEST(BridgeState, CurrentsHaveTheUnitOfTheirSize) {
  EXPECT_EQ(ui::currentText(core::Current(14.2857e-3)), "14.29 mA");
  EXPECT_EQ(ui::currentText(core::Current(-14.3e-6)), QStringLiteral("14.3 µA"));
  EXPECT_EQ(ui::currentText(core::Current(250e-9)), "250 nA");
  EXPECT_EQ(ui::currentText(core::Current(0)), "0 nA");
}

// ---- streams -----------------------------------------------------------------------------------

struct Drawn {
  ui::BridgePicture picture;
  std::vector<ui::Stream> streams;
};

Drawn drawn(const core::Channel& channel, std::size_t step) {
  Drawn result{ui::pictureOf(channel, core::predict(channel.setup), step), {}};
  result.streams = ui::streamsOf(result.picture, *result.picture.state.flow);
  return result;
}

const ui::Stream* along(const Drawn& drawn, const QPolygonF& route) {
  QPolygonF backwards(route);
  std::reverse(backwards.begin(), backwards.end());
  for (const ui::Stream& stream : drawn.streams)
    if (stream.route == route || stream.route == backwards) return &stream;
  return nullptr;
}

const ui::Stream* ofArm(const Drawn& drawn, std::size_t arm) {
  const ui::ArmPlace& place = drawn.picture.layout.arms[arm];
  return along(drawn, {place.begin, place.end});
}

/// What flows through the lead's resistance, below its value: before and behind that shunts may join.
const ui::Stream* ofLead(const Drawn& drawn, LeadRole role) {
  for (const ui::LeadPlace& lead : drawn.picture.layout.leads) {
    if (lead.role != role) continue;
    const QPointF at(lead.valueBox.center().x(), lead.route.front().y());
    for (const ui::Stream& stream : drawn.streams)
      for (qsizetype k = 1; k < stream.route.size() && !stream.ofShunt; ++k) {
        const QPointF a = stream.route[k - 1], b = stream.route[k];
        if (a.y() == at.y() && b.y() == at.y() && (a.x() < at.x()) != (b.x() < at.x())) return &stream;
      }
  }
  return nullptr;
}

TEST(Streams, FlowFromPlusToMinusThroughEveryArmOfEveryTemplate) {
  for (const core::BridgeTemplate& shape : core::allTemplates()) {
    const Drawn bridge = drawn(shunted(shape.type), 1);
    for (const std::size_t arm : {0, 1, 2, 3}) {
      const ui::Stream* stream = ofArm(bridge, arm);
      ASSERT_TRUE(stream) << shape.key << ", arm " << arm + 1;
      // Arms 1 and 2 run from P+ to P- by definition, 3 and 4 the other way round.
      const ui::ArmPlace& place = bridge.picture.layout.arms[arm];
      EXPECT_EQ(stream->route.front(), arm < 2 ? place.begin : place.end) << shape.key << ", arm " << arm + 1;
    }
  }
}

TEST(Streams, EmphasiseTheWayThroughTheClosedShunt) {
  // Over arm 1: in by lead P+, past arm 1, on through arm 2, out by lead P-. The other half takes no part.
  const Drawn bridge = drawn(shunted(core::BridgeType::FullBending), 1);
  for (const std::size_t arm : {0, 1, 2, 3}) EXPECT_EQ(ofArm(bridge, arm)->emphasised, arm == 1) << arm;
  for (const LeadRole role : {LeadRole::ExcitationPlus, LeadRole::ExcitationMinus})
    EXPECT_TRUE(ofLead(bridge, role)->emphasised);
  // From the terminals: in at once, and back through lead S-.
  const Drawn outside = drawn(shunted(core::BridgeType::FullBending), 5);
  EXPECT_FALSE(ofLead(outside, LeadRole::ExcitationPlus)->emphasised);
  EXPECT_TRUE(ofLead(outside, LeadRole::SignalMinus)->emphasised);
  EXPECT_TRUE(ofArm(outside, 1)->emphasised);
  for (const ui::Stream& stream : drawn(shunted(core::BridgeType::FullBending), 0).streams)
    EXPECT_FALSE(stream.emphasised);
}

/// Whether a stream that is not a shunt's own lies on the level line from `a` to `b`, or on a part of it.
bool flowsBetween(const Drawn& drawn, QPointF a, QPointF b) {
  for (const ui::Stream& stream : drawn.streams)
    for (qsizetype k = 1; k < stream.route.size() && !stream.ofShunt; ++k) {
      const QPointF from = stream.route[k - 1], to = stream.route[k];
      if (std::abs(from.y() - a.y()) > 0.1 || std::abs(to.y() - a.y()) > 0.1) continue;
      if (std::min(std::max(from.x(), to.x()), b.x()) - std::max(std::min(from.x(), to.x()), a.x()) > 0.5)
        return true;
    }
  return false;
}

TEST(Streams, GoAroundAnInputThatTakesNoCurrent) {
  // Kirchhoff's current law: an input without a resistance takes nothing, so nothing flows from it to a
  // terminal, nor on from there to where the shunt joins the lead.
  for (const core::BridgeTemplate& shape : core::allTemplates()) {
    // There lead S- is in series with arms, so that the bridge's own current flows in it.
    if (shape.type == core::BridgeType::QuarterTwoWire || shape.type == core::BridgeType::HalfDiagonal)
      continue;
    const Drawn bridge = drawn(shunted(shape.type, shape.senseLeads), 5);
    ASSERT_TRUE(bridge.picture.state.closed[4]);
    const QPointF joint = bridge.picture.lanes.places[4].toB.front();
    const QPointF terminal = bridge.picture.layout[Node::SMinus].at;
    ASSERT_EQ(joint.y(), terminal.y()) << shape.key;
    EXPECT_FALSE(flowsBetween(bridge, terminal - QPointF(20, 0), terminal)) << shape.key;
    EXPECT_FALSE(flowsBetween(bridge, terminal, joint)) << shape.key;
    // And on through the lead, where it has one of its own.
    for (const ui::LeadPlace& lead : bridge.picture.layout.leads) {
      if (lead.role != LeadRole::SignalMinus || lead.route.front() != terminal) continue;
      EXPECT_TRUE(flowsBetween(bridge, joint, lead.route[1])) << shape.key;
    }
  }
}

TEST(Streams, AreStrongerWhereMoreFlowsAndLeaveOutWhatDoesNotMatter) {
  core::Channel channel = shunted(core::BridgeType::FullBending, true);
  channel.setup.instrument.inputResistance = Resistance(1e12);  // takes a billionth of the source's current
  const Drawn bridge = drawn(channel, 1);
  const auto shunt = std::find_if(bridge.streams.begin(), bridge.streams.end(),
                                  [](const ui::Stream& stream) { return stream.ofShunt; });
  ASSERT_NE(shunt, bridge.streams.end());
  EXPECT_GT(ofLead(bridge, LeadRole::ExcitationPlus)->strength, ofArm(bridge, 0)->strength);
  EXPECT_GT(ofArm(bridge, 0)->strength, shunt->strength);
  EXPECT_GT(shunt->strength, 0);
  for (const LeadRole role :
       {LeadRole::SensePlus, LeadRole::SenseMinus, LeadRole::SignalPlus, LeadRole::SignalMinus})
    EXPECT_EQ(ofLead(bridge, role), nullptr) << core::leadName(role);
}

TEST(Streams, TurnWithTheExcitation) {
  core::Channel channel = shunted(core::BridgeType::FullBending);
  channel.setup.bridge.hookup.excitationReversed = true;
  const Drawn bridge = drawn(channel, 1);
  EXPECT_EQ(ofArm(bridge, 0)->route.front(), bridge.picture.layout.arms[0].end);
  EXPECT_TRUE(ofArm(bridge, 1)->emphasised);
}

/// The picture with its currents, or without (Off).
QImage painted(const ui::BridgePicture& picture, ui::FlowStyle style, double phase,
               const ui::Colours& colours) {
  QImage image(1000, 800, QImage::Format_ARGB32_Premultiplied);
  image.fill(colours.background);
  QPainter painter(&image);
  painter.translate(20 - picture.lanes.scene.left(), 20 - picture.lanes.scene.top());
  ui::paintBridge(painter, picture, colours);
  ui::paintFlow(painter, picture, *picture.state.flow, style, phase, colours);
  return image;
}

TEST(FlowPainter, PaintsOnlyWhatIsAskedForInBothThemes) {
  const Drawn bridge = drawn(shunted(core::BridgeType::FullBending), 1);
  for (const QPalette& palette : {ui::lightPalette(), ui::darkPalette()}) {
    const ui::Colours colours = ui::coloursFor(palette);
    const QImage off = painted(bridge.picture, ui::FlowStyle::Off, 0, colours);
    const QImage width = painted(bridge.picture, ui::FlowStyle::Width, 0, colours);
    const QImage dots = painted(bridge.picture, ui::FlowStyle::Dots, 0, colours);
    EXPECT_NE(off, width);
    EXPECT_NE(off, dots);
    EXPECT_NE(width, dots);
    EXPECT_EQ(width, painted(bridge.picture, ui::FlowStyle::Width, 0.5, colours));
    EXPECT_NE(dots, painted(bridge.picture, ui::FlowStyle::Dots, 0.5, colours));
    // A turn of the phase ends as it began.
    EXPECT_EQ(dots, painted(bridge.picture, ui::FlowStyle::Dots, 1, colours));
  }
}

TEST(FlowPainter, LeavesLabelsFree) {
  for (const core::BridgeTemplate& shape : core::allTemplates())
    for (const std::size_t step : {1, 3, 5}) {
      const Drawn bridge = drawn(shunted(shape.type, shape.senseLeads), step);
      const ui::Colours colours = ui::coloursFor(ui::lightPalette());
      const QImage off = painted(bridge.picture, ui::FlowStyle::Off, 0, colours);
      for (const ui::FlowStyle style : {ui::FlowStyle::Width, ui::FlowStyle::Dots}) {
        const QImage on = painted(bridge.picture, style, 0.3, colours);
        for (const ui::BridgeLabel& label : bridge.picture.labels) {
          // The ink of the text, which is a little smaller than its box.
          const QFontMetricsF metrics(ui::labelFont(label.role));
          QRectF ink(0, 0, metrics.horizontalAdvance(label.text) - 2, label.box.height() - 6);
          ink.moveCenter(label.box.center());
          if (label.alignment & Qt::AlignLeft) ink.moveLeft(label.box.left() + 1);
          if (label.alignment & Qt::AlignRight) ink.moveRight(label.box.right() - 1);
          const QRect pixels =
              ink.translated(20 - bridge.picture.lanes.scene.left(), 20 - bridge.picture.lanes.scene.top())
                  .toRect();
          EXPECT_EQ(off.copy(pixels), on.copy(pixels))
              << shape.key << ", step " << step << ": " << qPrintable(label.text);
        }
      }
    }
}

}  // namespace
