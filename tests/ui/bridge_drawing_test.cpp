// SPDX-License-Identifier: GPL-3.0-or-later
// How bridges are drawn: every template, its labels, its shunts; no window needed but for fonts.
#include <gtest/gtest.h>

#include <QApplication>
#include <QFontMetricsF>
#include <functional>
#include <set>

#include "tests/support/bridges.h"
#include "ui/bridge/bridge_painter.h"
#include "ui/bridge/bridge_parts.h"

namespace {

using core::Node;
using sample::channelOf;
using sample::withShunt;
using ui::BridgePart;
using ui::ShuntEnd;

struct Case {
  core::BridgeType type;
  bool sixWire;
};

std::vector<Case> allCases() {
  std::vector<Case> cases;
  for (const core::BridgeTemplate& shape : core::allTemplates()) {
    cases.push_back({shape.type, false});
    if (shape.senseLeads) cases.push_back({shape.type, true});
  }
  return cases;
}

class EveryTemplate : public testing::TestWithParam<Case> {
 protected:
  core::Channel channel() const { return channelOf(GetParam().type, GetParam().sixWire); }
  ui::BridgePicture picture(const core::Channel& channel, std::optional<std::size_t> step = {}) const {
    return ui::pictureOf(channel, core::predict(channel.setup), step);
  }
};

INSTANTIATE_TEST_SUITE_P(Bridge, EveryTemplate, testing::ValuesIn(allCases()), [](const auto& param) {
  return std::string(core::templateOf(param.param.type).key) + (param.param.sixWire ? "_six_wire" : "");
});

using Polygons = std::vector<QPolygonF>;

void addThick(Polygons& symbols, const QPolygonF& route, double width) {
  for (qsizetype k = 1; k < route.size(); ++k) {
    const QLineF line(route[k - 1], route[k]);
    if (line.length() == 0) continue;
    const QLineF across = line.normalVector().unitVector();
    const QPointF side = (across.p2() - across.p1()) * width / 2;
    symbols.push_back({line.p1() + side, line.p2() + side, line.p2() - side, line.p1() - side});
  }
}

void addBox(Polygons& symbols, QPointF centre, double reach) {
  symbols.push_back(QRectF(centre.x() - reach, centre.y() - reach, 2 * reach, 2 * reach));
}

void addInstrument(Polygons& symbols, const ui::BridgeLayout& layout) {
  for (const ui::WirePlace& wire : layout.wires) addThick(symbols, wire.route, 1.8);
  for (const QPointF& centre : {layout.source, layout.input}) addBox(symbols, centre, ui::symbolRadius);
  for (const QRectF& plus : {layout.sourcePlus, layout.inputPlus}) addBox(symbols, plus.center(), 5);
  if (!layout.inputResistance.isEmpty()) symbols.push_back(layout.inputResistance);
  if (layout.grounding) {
    addThick(symbols, *layout.grounding, 1.8);
    addBox(symbols, layout.grounding->back() + QPointF(0, 3), 8);
  }
  if (!layout.balance) return;
  for (const QPolygonF& route : layout.balance->routes) addThick(symbols, route, 1.8);
  addThick(symbols, {layout.balance->wiper.p1(), layout.balance->wiper.p2()}, 7);
  for (const QPolygonF* body : {&layout.balance->track, &layout.balance->limiting, &layout.balance->farPart})
    if (!body->isEmpty()) symbols.push_back(*body);
}

void addArms(Polygons& symbols, const ui::BridgePicture& picture) {
  for (const std::size_t index : {0, 1, 2, 3}) {
    const ui::ArmPlace& arm = picture.layout.arms[index];
    symbols.push_back(ui::armBody(arm));
    addThick(symbols, {arm.begin, arm.end}, 1.8);
    if (picture.strains[index] == core::Polarity::None) continue;
    const QPointF middle =
        (arm.begin + arm.end) / 2 + arm.outward * 17;  // strain arrows, 48 long, heads 8 wide
    const QPointF half = (arm.end - arm.begin) / QLineF(arm.begin, arm.end).length() * 24;
    addThick(symbols, {middle - half, middle + half}, 8);
  }
  for (const ui::LeakPlace& leak : picture.layout.leaks) {
    addThick(symbols, leak.route, 1.4);
    symbols.push_back(leak.body);
    if (leak.toStructure) addBox(symbols, leak.route.back() + leak.way * 3, 8);
  }
}

void addLeads(Polygons& symbols, const ui::BridgeLayout& layout) {
  for (const ui::LeadPlace& lead : layout.leads) {
    addThick(symbols, lead.route, 1.8);
    if (!lead.body.isEmpty()) symbols.push_back(lead.body);
    if (lead.gap) addBox(symbols, *lead.gap, 8);
  }
  for (const ui::TouchPlace& touch : layout.touches) {
    addThick(symbols, touch.route, 2.4);
    for (const QPointF& end : touch.route) addBox(symbols, end, 4);
  }
}

void addShunts(Polygons& symbols, const ui::ShuntLanes& lanes) {
  for (const ui::ShuntPlace& place : lanes.places) {
    for (const QPolygonF* wire : {&place.toA, &place.toB}) addThick(symbols, *wire, 1.4);
    symbols.push_back(place.resistor);
    symbols.push_back(QRectF(place.contact.p1(), QPointF(place.contact.x2(), place.blade.y())).normalized());
    for (const QPointF& handle : {place.handleA, place.handleB}) addBox(symbols, handle, 5);
  }
}

/// What labels must keep clear of: everything that is drawn and is not text.
Polygons symbolsOf(const ui::BridgePicture& picture) {
  Polygons symbols;
  addArms(symbols, picture);
  addLeads(symbols, picture.layout);
  addInstrument(symbols, picture.layout);
  addShunts(symbols, picture.lanes);
  return symbols;
}

/// The rectangle that the text really covers within its box.
QRectF inkOf(const ui::BridgeLabel& label) {
  const QFontMetricsF metrics(ui::labelFont(label.role));
  QRectF ink(0, 0, metrics.horizontalAdvance(label.text), label.box.height());
  ink.moveCenter(label.box.center());
  if (label.alignment & Qt::AlignLeft) ink.moveLeft(label.box.left());
  if (label.alignment & Qt::AlignRight) ink.moveRight(label.box.right());
  return ink;
}

bool overlap(const QPolygonF& symbol, const QRectF& box) {
  return symbol.boundingRect().intersects(box) && symbol.intersects(QPolygonF(box));
}

void expectClearLabels(const ui::BridgePicture& picture, const std::string& what) {
  const Polygons symbols = symbolsOf(picture);
  for (std::size_t k = 0; k < picture.labels.size(); ++k) {
    const ui::BridgeLabel& label = picture.labels[k];
    const QRectF ink = inkOf(label);
    EXPECT_TRUE(picture.lanes.scene.contains(ink)) << what << ": " << qPrintable(label.text);
    EXPECT_LE(ink.width(), label.box.width()) << what << ": " << qPrintable(label.text);
    for (std::size_t other = k + 1; other < picture.labels.size(); ++other)
      EXPECT_FALSE(label.box.intersects(picture.labels[other].box))
          << what << ": " << qPrintable(label.text) << " over " << qPrintable(picture.labels[other].text);
    for (const QPolygonF& symbol : symbols)
      EXPECT_FALSE(overlap(symbol, ink)) << what << ": " << qPrintable(label.text) << " over a symbol at "
                                         << symbol.front().x() << ' ' << symbol.front().y();
  }
}

// ---- how a bridge can be dressed ---------------------------------------------------------------

using Dress = std::function<void(core::Channel&)>;

void withLongValues(core::Channel& channel) {
  for (const std::size_t arm : {0, 1, 2, 3})
    channel.setup.bridge.arms[arm] = core::Resistance(349.987 - 0.013 * static_cast<double>(arm));
  double ohm = 0.0123;
  for (core::Lead& lead : channel.setup.bridge.leads) lead = core::Resistance(ohm *= 4.56);
  channel.setup.instrument.inputResistance = core::Resistance(999.9e6);
}

/// Leaks over each arm and to the structure, from places along the whole grid.
void withLeaks(core::Channel& channel, core::Grounding grounding) {
  for (const std::size_t arm : {0, 1, 2, 3}) {
    channel.setup.bridge.leaks[arm].across = core::Resistance(499.8e6);
    channel.setup.bridge.leaks[arm].toStructure = core::Resistance(123.4e6);
    channel.setup.bridge.leaks[arm].place = static_cast<double>(arm) / 3;
  }
  channel.setup.instrument.grounding = grounding;
}

void withBalance(core::Channel& channel, core::BalanceKind kind, double wiper) {
  channel.setup.instrument.balance = {kind, core::Resistance(10250), core::Resistance(100300), wiper};
}

/// Reversed, one lead broken, two exchanged, two touching.
void withHookup(core::Channel& channel) {
  const auto wires = core::wiresOf(channel.setup.bridge);
  core::Hookup& hookup = channel.setup.bridge.hookup;
  hookup.signalReversed = hookup.excitationReversed = hookup.gaugesReversed = true;
  hookup.broken[static_cast<std::size_t>(wires.back().role)] = true;
  hookup.exchanged = {{wires.front().role, wires.back().role}};
  hookup.touching = {{wires[0].role, wires[1].role}};
}

/// Six shunts above the bridge and six below, more than one to a node, the names of ordinary length.
void withManyShunts(core::Channel& channel) {
  for (const std::size_t arm : {0, 1, 2, 3})
    for (const char* name : {"R1", "R2 of four", "332k on arm 2"})
      channel = withShunt(channel, name, core::armBegin(arm), core::armEnd(arm));
}

void withTerminalShunts(core::Channel& channel) {
  for (const char* name : {"332k on arm 1", "165k on arm 1", "110k on arm 1"})
    channel = withShunt(channel, name, Node::PPlus, Node::SMinus);
  for (const char* name : {"332k on arm 2", "165k on arm 2", "110k on arm 2"})
    channel = withShunt(channel, name, Node::SMinus, Node::PMinus);
}

std::vector<std::pair<std::string, Dress>> allDresses() {
  using core::BalanceKind, core::Grounding;
  std::vector<std::pair<std::string, Dress>> dresses = {
      {"plain", [](core::Channel&) {}},
      {"long values", withLongValues},
      {"shunts at the terminals", withTerminalShunts},
      {"twelve shunts", withManyShunts},
      {"hookup", withHookup},
      {"leaks", [](core::Channel& channel) { withLeaks(channel, Grounding::Floating); }},
      {"gauges reversed", [](core::Channel& channel) { channel.setup.bridge.hookup.gaugesReversed = true; }}};
  for (const BalanceKind kind : {BalanceKind::None, BalanceKind::Parallel, BalanceKind::Series})
    for (const Grounding grounding : {Grounding::PMinus, Grounding::PPlus})
      for (const bool hookedUp : {false, true})
        dresses.emplace_back("everything, balance " + std::string(core::balanceKindKey(kind)) +
                                 ", structure on " + std::string(core::groundingKey(grounding)) +
                                 (hookedUp ? ", hookup" : ""),
                             [=](core::Channel& channel) {
                               withLongValues(channel);
                               withLeaks(channel, grounding);
                               withBalance(channel, kind, grounding == Grounding::PMinus ? 0.0 : 1.0);
                               withManyShunts(channel);
                               if (hookedUp) withHookup(channel);
                             });
  return dresses;
}

/// Whether a route of horizontal and vertical pieces runs over `box`.
bool crosses(const QPolygonF& route, const QRectF& box) {
  for (qsizetype k = 1; k < route.size(); ++k)
    if (QRectF(route[k - 1], route[k]).normalized().adjusted(-0.5, -0.5, 0.5, 0.5).intersects(box))
      return true;
  return false;
}

TEST_P(EveryTemplate, HasFourArmsAndItsLeads) {
  const core::Channel shown = channel();
  const ui::BridgePicture picture = this->picture(shown);
  for (const ui::ArmPlace& arm : picture.layout.arms)
    EXPECT_GT(QLineF(arm.begin, arm.end).length(), ui::armBodyLength + 20);
  const auto wires = core::wiresOf(shown.setup.bridge);
  ASSERT_EQ(picture.layout.leads.size(), wires.size());
  for (const core::Wire& wire : wires) {
    const auto lead = std::find_if(picture.layout.leads.begin(), picture.layout.leads.end(),
                                   [&](const auto& place) { return place.role == wire.role; });
    ASSERT_NE(lead, picture.layout.leads.end());
    EXPECT_EQ(lead->route.front(), picture.layout[wire.from].at);
    EXPECT_EQ(lead->route.back(), picture.layout[wire.to].at);
  }
}

TEST_P(EveryTemplate, DrawsGaugesAtTheArticleAndCompletionArmsInTheInstrument) {
  const ui::BridgeLayout layout = ui::layoutOf(channel().setup.bridge, channel().setup.instrument);
  EXPECT_FALSE(layout.instrument.intersects(layout.article));
  for (const std::size_t arm : {0, 1, 2, 3}) {
    const QRectF body = ui::armBody(layout.arms[arm]).boundingRect();
    const bool outside = core::templateOf(GetParam().type).atArticle[arm];
    EXPECT_TRUE((outside ? layout.article : layout.instrument).contains(body)) << "arm " << arm + 1;
  }
}

TEST_P(EveryTemplate, ArmsAndWiresEndAtTheNodesTheyBelongTo) {
  // Follows the drawing as a reader would: what is joined on paper is one point in the template.
  const core::Bridge bridge = channel().setup.bridge;
  const ui::BridgeLayout layout = ui::layoutOf(bridge, {});
  for (const std::size_t arm : {0, 1, 2, 3}) {
    for (const auto& [end, node] : {std::pair(layout.arms[arm].begin, core::armBegin(arm)),
                                    std::pair(layout.arms[arm].end, core::armEnd(arm))}) {
      const bool atNode = end == layout[node].at;
      const bool byWire =
          std::any_of(layout.wires.begin(), layout.wires.end(), [&](const ui::WirePlace& wire) {
            return wire.route.contains(end) && wire.route.contains(layout[node].at);
          });
      EXPECT_TRUE(atNode || byWire) << core::nodeName(node);
    }
  }
}

TEST_P(EveryTemplate, LabelsKeepClearOfEachOtherAndOfTheSymbols) {
  for (const auto& [name, dress] : allDresses())
    for (const ui::Symbols symbols : {ui::Symbols::Iec60617, ui::Symbols::Ieee315}) {
      core::Channel shown = channel();
      dress(shown);
      shown.setup.sequence = {{"all", {}, core::Duration(2)}};
      const auto prediction = core::predict(shown.setup);
      expectClearLabels(ui::pictureOf(shown, prediction, 0, symbols), name);
    }
}

TEST_P(EveryTemplate, RingOfAnArmKeepsClearOfLabels) {
  const ui::BridgePicture picture = this->picture(channel());
  for (const ui::BridgeSpot& spot : ui::spotsOf(picture)) {
    if (spot.part.kind != BridgePart::Kind::Arm) continue;
    const QPolygonF ring = ui::ringOf(picture, spot);
    EXPECT_TRUE(
        ring.containsPoint(ui::armBody(picture.layout.arms[spot.part.index]).front(), Qt::WindingFill));
    for (const ui::BridgeLabel& label : picture.labels)
      EXPECT_FALSE(ring.intersects(QPolygonF(inkOf(label)))) << qPrintable(label.text);
  }
}

TEST_P(EveryTemplate, OrdinaryTextsFitTheirBoxes) {
  const ui::BridgePicture picture = this->picture(channel());
  EXPECT_GT(picture.labels.size(), 12U);
  for (const ui::BridgeLabel& label : picture.labels)
    EXPECT_LE(QFontMetricsF(ui::labelFont(label.role)).horizontalAdvance(label.text), label.box.width())
        << qPrintable(label.text);
}

/// Whether `tap` is at the node or on a wire that ends there.
bool isOnItsPoint(const ui::BridgePicture& picture, QPointF tap, Node node) {
  const auto runsThrough = [&](const QPolygonF& route) {
    Polygons pieces;
    addThick(pieces, route, 0.5);
    return std::any_of(pieces.begin(), pieces.end(), [&](const QPolygonF& piece) {
      return piece.boundingRect().adjusted(-0.1, -0.1, 0.1, 0.1).contains(tap);
    });
  };
  for (const Node name : core::allNodes()) {
    if (core::pointOf(picture.bridge, name) != core::pointOf(picture.bridge, node)) continue;
    const QPointF at = picture.layout[name].at;
    if (tap == at) return true;
    for (const ui::LeadPlace& lead : picture.layout.leads)
      if ((lead.route.front() == at || lead.route.back() == at) && runsThrough(lead.route)) return true;
    for (const ui::WirePlace& wire : picture.layout.wires)
      if (wire.route.contains(at) && runsThrough(wire.route)) return true;
  }
  return false;
}

TEST_P(EveryTemplate, ManyShuntsTouchNeitherEachOtherNorTheBridge) {
  core::Channel shown = channel();
  for (const std::size_t arm : {0, 1, 2, 3})
    for (const char* name : {"R1", "R2", "R3"})
      shown = withShunt(shown, name, core::armBegin(arm), core::armEnd(arm));
  shown = withShunt(shown, "at the terminals", Node::SMinus, Node::PMinus);
  shown = withShunt(shown, "over a lead", Node::PPlus, Node::Arm1Begin);
  shown = withShunt(shown, "over the output", Node::Arm3End, Node::Arm1End);
  const ui::BridgePicture picture = this->picture(shown);
  const auto& places = picture.lanes.places;
  const QRectF bridge = picture.layout.instrument | picture.layout.article;
  for (std::size_t k = 0; k < places.size(); ++k) {
    EXPECT_FALSE(places[k].resistor.intersects(bridge)) << k;
    EXPECT_TRUE(picture.lanes.scene.contains(places[k].resistor)) << k;
    EXPECT_TRUE(isOnItsPoint(picture, places[k].toA.front(), shown.setup.shunts[k].a)) << k;
    EXPECT_TRUE(isOnItsPoint(picture, places[k].toB.front(), shown.setup.shunts[k].b)) << k;
    for (std::size_t other = 0; other < places.size(); ++other) {
      if (other == k) continue;
      EXPECT_FALSE(crosses(places[other].toA, places[k].resistor)) << other << " over " << k;
      EXPECT_FALSE(crosses(places[other].toB, places[k].resistor)) << other << " over " << k;
    }
    for (std::size_t other = k + 1; other < places.size(); ++other) {
      EXPECT_FALSE(places[k].resistor.intersects(places[other].resistor)) << k << ' ' << other;
      EXPECT_FALSE(places[k].resistor.intersects(places[other].labelBox)) << k << ' ' << other;
      EXPECT_FALSE(places[k].labelBox.intersects(places[other].labelBox)) << k << ' ' << other;
      for (const QPointF& a : {places[k].handleA, places[k].handleB})
        for (const QPointF& b : {places[other].handleA, places[other].handleB})
          EXPECT_GE(QLineF(a, b).length(), 12.0) << k << ' ' << other;  // a handle is 10 wide
    }
  }
}

TEST_P(EveryTemplate, EveryPairOfPointsCanBeDrawnAndPainted) {
  core::Channel shown = channel();
  const core::Bridge& bridge = shown.setup.bridge;
  for (const Node a : core::allNodes())
    for (const Node b : core::allNodes())
      if (a < b && core::pointOf(bridge, a) != core::pointOf(bridge, b) && core::hasNode(bridge, a) &&
          core::hasNode(bridge, b))
        shown = withShunt(shown, "x", a, b);
  const ui::BridgePicture picture = this->picture(shown);
  for (const ui::ShuntPlace& place : picture.lanes.places)
    for (const QPolygonF* wire : {&place.toA, &place.toB})
      for (const QPointF& point : *wire)
        EXPECT_TRUE(picture.lanes.scene.adjusted(-1, -1, 1, 1).contains(point));
  QImage image(900, 700, QImage::Format_ARGB32);
  QPainter painter(&image);
  ui::paintBridge(painter, picture, ui::coloursFor(ui::lightPalette()));
}

TEST_P(EveryTemplate, LeadsLeaveThePlugEvenlySpacedAndDoNotCross) {
  const core::Channel shown = channel();
  const ui::BridgeLayout layout = ui::layoutOf(shown.setup.bridge, shown.setup.instrument);
  std::vector<double> plug;
  for (const Node node : core::allNodes())
    if (const ui::NodePlace& place = layout[node];
        place.terminal && place.present && std::abs(place.at.x() - layout.instrument.right()) < 1e-6)
      plug.push_back(place.at.y());
  std::sort(plug.begin(), plug.end());
  ASSERT_GE(plug.size(), 3U);
  for (std::size_t k = 2; k < plug.size(); ++k)  // 1e-9: rounding of coordinates
    EXPECT_NEAR(plug[k] - plug[k - 1], plug[1] - plug[0], 1e-9);
  for (const ui::LeadPlace& a : layout.leads)
    for (const ui::LeadPlace& b : layout.leads)
      if (a.role < b.role)
        for (qsizetype i = 1; i < a.route.size(); ++i)
          for (qsizetype k = 1; k < b.route.size(); ++k) {
            QPointF at;
            const auto met = QLineF(a.route[i - 1], a.route[i]).intersects({b.route[k - 1], b.route[k]}, &at);
            const bool atEnds = at == a.route.back() && at == b.route.back();
            EXPECT_TRUE(met != QLineF::BoundedIntersection || atEnds)
                << core::leadName(a.role) << " over " << core::leadName(b.role);
          }
}

TEST_P(EveryTemplate, WrongConnectionsAreDrawnAsTheyAre) {
  core::Channel shown = channel();
  const auto usual = core::wiresOf(shown.setup.bridge);
  withHookup(shown);
  const ui::BridgeLayout layout = ui::layoutOf(shown.setup.bridge, shown.setup.instrument);
  const auto placeOf = [&](core::LeadRole role) {
    return *std::find_if(layout.leads.begin(), layout.leads.end(),
                         [&](const auto& place) { return place.role == role; });
  };
  // The first and the last lead are exchanged, so each begins at the other's terminal and still ends at home.
  const ui::LeadPlace first = placeOf(usual.front().role), last = placeOf(usual.back().role);
  EXPECT_EQ(first.route.front(), layout[usual.back().from].at);
  EXPECT_EQ(last.route.front(), layout[usual.front().from].at);
  EXPECT_EQ(first.route.back(), layout[usual.front().to].at);
  const auto met = QLineF(first.route[1], first.route[2]).intersects({last.route[1], last.route[2]}, nullptr);
  EXPECT_EQ(met, QLineF::BoundedIntersection);
  EXPECT_TRUE(last.gap);
  EXPECT_FALSE(first.gap);
  ASSERT_EQ(layout.touches.size(), 1U);
  const ui::LeadPlace second = placeOf(usual[1].role);
  EXPECT_TRUE(crosses(first.route, QRectF(layout.touches[0].route.front(), QSizeF()).adjusted(-1, -1, 1, 1)));
  EXPECT_TRUE(crosses(second.route, QRectF(layout.touches[0].route.back(), QSizeF()).adjusted(-1, -1, 1, 1)));
  EXPECT_GT(layout.sourcePlus.center().y(), layout.source.y());  // plus on the side of P-, which is below
}

TEST_P(EveryTemplate, ReversedSignalWiresCrossBeforeTheInput) {
  for (const bool reversed : {false, true}) {
    core::Channel shown = channel();
    shown.setup.bridge.hookup.signalReversed = reversed;
    const ui::BridgeLayout layout = ui::layoutOf(shown.setup.bridge, shown.setup.instrument);
    std::vector<QPolygonF> routes;
    for (const ui::WirePlace& wire : layout.wires)
      if (wire.current == ui::WireCurrent::Input) routes.push_back(wire.route);
    // A wire that ends at the input's minus pin, and another at its plus pin, only where they are crossed.
    const QPointF pin = layout.inputAxis * ui::symbolRadius;
    const auto reaches = [&](QPointF point) {
      return std::any_of(routes.begin(), routes.end(),
                         [&](const QPolygonF& route) { return route.contains(point); });
    };
    EXPECT_EQ(reaches(layout.input + pin), reversed);
    EXPECT_EQ(reaches(layout.input - pin), reversed);
    if (!reversed) continue;
    // What comes from S+ must come to the side without the mark.
    EXPECT_LT(QLineF(layout.inputPlus.center(), layout.input - pin).length(),
              QLineF(layout.inputPlus.center(), layout.input + pin).length());
  }
}

TEST_P(EveryTemplate, TheWiperIsAtItsShare) {
  for (const core::BalanceKind kind : {core::BalanceKind::Parallel, core::BalanceKind::Series})
    for (const double share : {0.0, 0.25, 1.0}) {
      core::Channel shown = channel();
      withBalance(shown, kind, share);
      const ui::BridgeLayout layout = ui::layoutOf(shown.setup.bridge, shown.setup.instrument);
      ASSERT_TRUE(layout.balance);
      // Share 1 is up at P+ (parallel) or has all of the potentiometer in arm 3 (series), whose end is below.
      EXPECT_GT(layout.balance->travel.y1(), layout.balance->travel.y2());
      EXPECT_NEAR(layout.balance->wiper.y2(), layout.balance->travel.pointAt(share).y(), 1e-9);  // rounding
      EXPECT_EQ(layout.balance->limiting.isEmpty(), kind == core::BalanceKind::Series);
    }
}

TEST_P(EveryTemplate, ReversedGaugesTurnArrowsAndSigns) {
  core::Channel shown = channel();
  const auto usual = picture(shown).strains;
  shown.setup.bridge.hookup.gaugesReversed = true;
  const ui::BridgePicture reversed = picture(shown);
  for (const std::size_t arm : {0, 1, 2, 3}) {
    const bool active = core::templateOf(GetParam().type).shares[arm].active();
    EXPECT_EQ(usual[arm] == core::Polarity::None, !active);
    EXPECT_EQ(reversed.strains[arm] != usual[arm], active);
  }
}

TEST_P(EveryTemplate, EveryShuntKeepsItsLabelWhereThereIsRoom) {
  core::Channel shown = channel();
  for (const char* name : {"R1", "R2", "R3", "R4", "R5", "R6", "R7"})
    for (const std::size_t arm : {0, 2})
      shown = withShunt(shown, name, core::armBegin(arm), core::armEnd(arm));
  const ui::BridgePicture picture = this->picture(shown);
  for (std::size_t k = 0; k < picture.lanes.places.size(); ++k)
    EXPECT_FALSE(picture.lanes.places[k].labelBox.isEmpty()) << k;
  for (const ui::BridgeLabel& label : picture.labels)
    EXPECT_FALSE(label.role == ui::LabelRole::Shunt && label.text.contains(QChar(0x2026)))
        << qPrintable(label.text);
  expectClearLabels(picture, "seven a side");
}

TEST(BridgeLayout, ALeadsResistorGrowsWithTheOrderOfItsResistance) {
  double shorter = 0;
  for (const double ohm : {0.01, 0.1, 1.0, 10.0, 100.0, 1000.0}) {
    core::Channel channel = channelOf(core::BridgeType::HalfBending);
    channel.setup.bridge.leads[0] = core::Resistance(ohm);
    const ui::LeadPlace lead = ui::layoutOf(channel.setup.bridge, {}).leads.front();
    const double length = lead.body.boundingRect().width();
    EXPECT_GT(length, shorter) << ohm;
    shorter = length;
    channel.setup.bridge.leads[0] = core::Resistance(2.5 * ohm);  // the same order
    EXPECT_NEAR(ui::layoutOf(channel.setup.bridge, {}).leads.front().body.boundingRect().width(), length,
                1e-9);
  }
  core::Channel channel = channelOf(core::BridgeType::HalfBending);
  channel.setup.bridge.leads[0] = core::Resistance(0);
  EXPECT_TRUE(ui::layoutOf(channel.setup.bridge, {}).leads.front().body.isEmpty());
}

TEST(BridgePicture, ResistorsHaveTheSymbolOfTheStandard) {
  // IEC 60617 and IEEE 315, from memory: a rectangle has two long sides, a zigzag has neither. Looks along
  // where the upper long side of a lead's resistor would be.
  const core::Channel channel = channelOf(core::BridgeType::HalfBending);
  for (const ui::Symbols symbols : {ui::Symbols::Iec60617, ui::Symbols::Ieee315}) {
    const ui::BridgePicture picture = ui::pictureOf(channel, core::predict(channel.setup), {}, symbols);
    const QRectF body = picture.layout.leads.front().body.boundingRect();
    QImage image(400, 200, QImage::Format_ARGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.translate(100 - body.left(), 100 - body.top());
    ui::paintBridge(painter, picture, ui::coloursFor(ui::lightPalette()));
    int dark = 0;
    for (int x = 0; x < static_cast<int>(body.width()); ++x)
      dark += image.pixelColor(100 + x, 100).lightness() < 128;
    const double share = dark / body.width();
    if (symbols == ui::Symbols::Iec60617)
      EXPECT_GT(share, 0.9);
    else
      EXPECT_LT(share, 0.5);
  }
}

TEST(BridgePicture, ShowsVoltagesOfTheChosenStep) {
  // Derived: half bridge without leads, arms of 350 ohm at 5 V: S- lies at 2.5 V. With 174 650 ohm over
  // arm 1, 350 | 174 650 = 349.3 ohm, and S- lies at 5 x 350/(349.3 + 350) = 2.5025 V.
  core::Channel channel = core::withBridgeType({}, core::BridgeType::HalfBending);
  channel = withShunt(channel, "R1", Node::Arm1Begin, Node::Arm1End);
  channel.setup.sequence = {{"down", {0}, core::Duration(2)}};
  const auto prediction = core::predict(channel.setup);
  const auto voltages = [&](std::optional<std::size_t> step) {
    QStringList texts;
    for (const ui::BridgeLabel& label : ui::pictureOf(channel, prediction, step).labels)
      if (label.role == ui::LabelRole::Voltage) texts << label.text;
    return texts;
  };
  EXPECT_EQ(voltages({}).count("2.5000 V"), 3);
  EXPECT_EQ(voltages(0).count("2.5025 V"), 2);  // terminal S- and the gauges' corner
  EXPECT_EQ(voltages(0).count("2.5000 V"), 1);  // S+
}

core::Channel atConstantCurrent() {
  core::Channel channel = core::withBridgeType({}, core::BridgeType::HalfBending);
  channel = withShunt(channel, "R1", Node::Arm1Begin, Node::Arm1End);
  channel.setup.shunts[0].resistance = core::Resistance(350);
  channel.setup.sequence = {{"down", {0}, core::Duration(2)}};
  channel.setup.instrument.current = core::CurrentSource{core::Current(0.01), core::Resistance(350)};
  return channel;
}

TEST(BridgePicture, AConstantCurrentShowsItselfAndTheVoltageItMakes) {
  // Derived: arms of 350 ohm have 350 ohm between P+ and P-: 10 mA x 350 ohm = 3.5 V. With 350 ohm over arm
  // 1, 525 | 700 = 300 ohm: 3 V, of which S- has 350/525, 2 V, and S+ a half, 1.5 V.
  const core::Channel channel = atConstantCurrent();
  const auto prediction = core::predict(channel.setup);
  const auto texts = [&](std::optional<std::size_t> step) {
    QStringList found;
    for (const ui::BridgeLabel& label : ui::pictureOf(channel, prediction, step).labels) found << label.text;
    return found;
  };
  EXPECT_TRUE(texts({}).contains("10 mA")) << qPrintable(texts({}).join('|'));
  EXPECT_TRUE(texts({}).contains("3.5000 V"));
  EXPECT_TRUE(texts({}).contains("1.7500 V"));
  EXPECT_FALSE(texts({}).contains("5.0000 V"));
  EXPECT_TRUE(texts(0).contains("3.0000 V")) << qPrintable(texts(0).join('|'));
  EXPECT_TRUE(texts(0).contains("2.0000 V"));
  EXPECT_TRUE(texts(0).contains("1.5000 V"));
  const QString told = ui::describe(channel, ui::stateAt(channel, prediction, 0));
  EXPECT_TRUE(told.contains("excitation 10 mA constant current, 3.0000 V at this step")) << qPrintable(told);
}

TEST(BridgePicture, TheSourceHasTheSymbolOfItsKind) {
  // IEC 60617, from memory: within the circle a line along the wire is a voltage source, one across it a
  // current source. The wire is upright here.
  for (const bool current : {false, true}) {
    core::Channel channel = atConstantCurrent();
    if (!current) channel.setup.instrument.current.reset();
    const ui::BridgePicture picture = ui::pictureOf(channel, core::predict(channel.setup), {});
    const QPointF shift(40 - picture.layout.source.x(), 150);
    QImage image(900, 700, QImage::Format_ARGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.translate(shift);
    ui::paintBridge(painter, picture, ui::coloursFor(ui::lightPalette()));
    const auto dark = [&](QPointF offset) {
      const QPoint at = (picture.layout.source + shift + offset).toPoint();
      return image.pixelColor(at).lightness() < 128 || image.pixelColor(at - QPoint(1, 1)).lightness() < 128;
    };
    for (const double side : {-8.0, 8.0}) {
      EXPECT_EQ(dark({side, 0}), current) << side;
      EXPECT_EQ(dark({0, side}), !current) << side;
    }
  }
}

}  // namespace
