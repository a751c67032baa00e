// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/bridge_sketch.h"

#include <QLineF>
#include <algorithm>
#include <cmath>

namespace ui {
namespace {

constexpr double arrowReach = 22;  ///< from an arm's axis to the far side of its strain arrows
constexpr double leakWidth = 12, leakLength = 34;
constexpr double leadWidth = 11;

QPointF unitOf(QPointF vector) { return vector / std::hypot(vector.x(), vector.y()); }

}  // namespace

QPolygonF turnedBody(QPointF centre, QPointF along, double length, double width) {
  const QPointF half = along * length / 2, across(-along.y() * width / 2, along.x() * width / 2);
  return {centre - half - across, centre + half - across, centre + half + across, centre - half + across,
          centre - half - across};
}

BridgeSketch::BridgeSketch(const core::Bridge& shown, const core::Instrument& at)
    : bridge(shown), instrument(at), m_wires(core::wiresOf(shown)) {}

bool BridgeSketch::anyLeakAcross() const {
  return std::any_of(bridge.leaks.begin(), bridge.leaks.end(),
                     [](const core::Leak& leak) { return leak.across; });
}

bool BridgeSketch::anyLeakToStructure() const {
  return std::any_of(bridge.leaks.begin(), bridge.leaks.end(),
                     [](const core::Leak& leak) { return leak.toStructure; });
}

// ---- nodes, arms, wires ------------------------------------------------------------------------

NodePlace& BridgeSketch::corner(core::Node name, QPointF at, double above, std::optional<double> below) {
  NodePlace& place = node(name);
  place.present = true;
  place.at = at;
  place.columnAbove = above;
  place.columnBelow = below;
  return place;
}

NodePlace& BridgeSketch::terminal(core::Node name, QPointF at, double above, std::optional<double> below) {
  NodePlace& place = corner(name, at, above, below);
  const bool isLong =
      name == core::Node::SensePlus || name == core::Node::SenseMinus || name == core::Node::Arm2Begin;
  const double width = isLong ? 62 : 30;
  place.terminal = true;
  place.nameBox = QRectF(at.x() - plateGap - width, at.y() - 3 - nameHeight, width, nameHeight);
  place.voltageBox = QRectF(at.x() - plateGap - voltageWidth, at.y() + 4, voltageWidth, textHeight);
  return place;
}

void BridgeSketch::voltage(core::Node name, QPointF offset) {
  const QPointF at = node(name).at + offset - QPointF(offset.x() < 0 ? voltageWidth : 0, 0);
  node(name).voltageBox = QRectF(at, QSizeF(voltageWidth, textHeight));
}

void BridgeSketch::strainTexts(ArmPlace& place, std::size_t index, QPointF corner, bool right) {
  const core::StrainShare share = core::strainShare(bridge, index);
  const double strain = !share.active() ? 0 : core::isTransducer(bridge) ? 15 : share.plain != 0 ? 24 : 34;
  const double name = 56;
  const double left = right ? corner.x() : corner.x() - name - strain;
  place.nameBox = QRectF(left, corner.y(), name, nameHeight);
  if (strain > 0) place.strainBox = QRectF(left + name, corner.y(), strain, nameHeight);
}

void BridgeSketch::arm(std::size_t index, QPointF begin, QPointF end, Side side) {
  ArmPlace& place = layout.arms[index];
  const QPointF along = unitOf(end - begin), middle = (begin + end) / 2;
  const bool right = side.right > 0, down = side.down > 0;
  place.begin = begin;
  place.end = end;
  place.labelRight = right;
  place.outward = QPointF(side.right * std::abs(along.y()), side.down * std::abs(along.x()));
  double clear = core::strainShare(bridge, index).active() ? arrowReach : armBodyWidth / 2;
  if (leaksAcross(index)) {
    leakAcross(index, place, clear + 4 + leakWidth / 2);
    clear += 4 + leakWidth;
  }
  clear += 8;  // room for the ring around what is chosen
  // The nearest corner of a text whose edge is `rise` away from the arm's middle.
  const auto cornerAt = [&](double rise) {
    const double reach = (clear - std::abs(place.outward.y()) * rise) / std::abs(place.outward.x());
    return middle + QPointF(side.right * reach, side.down * rise);
  };
  const QPointF corner = cornerAt(side.rise);
  const double top = down ? corner.y() : corner.y() - nameHeight - textHeight;
  strainTexts(place, index, {corner.x(), top}, right);
  place.valueBox =
      QRectF(right ? corner.x() : corner.x() - valueWidth, top + nameHeight, valueWidth, textHeight);
  if (leaksAcross(index)) {
    const QPointF near = cornerAt(side.rise - textHeight);
    layout.leaks.back().valueBox = QRectF(right ? near.x() : near.x() - ohmWidth,
                                          down ? near.y() : near.y() - textHeight, ohmWidth, textHeight);
  }
  if (leaksToStructure(index)) leakToStructure(index, place, side);
}

void BridgeSketch::leakAcross(std::size_t index, const ArmPlace& place, double distance) {
  const QPointF along = unitOf(place.end - place.begin), middle = (place.begin + place.end) / 2;
  const double half = armBodyLength / 2 + 6;
  const QPointF centre = middle + place.outward * distance;
  LeakPlace leak;
  leak.arm = index;
  leak.route = {middle - along * half, centre - along * half, centre + along * half, middle + along * half};
  leak.body = turnedBody(centre, along, leakLength, leakWidth);
  leak.handle = centre;
  leak.way = -place.outward;
  layout.leaks.push_back(std::move(leak));
}

/// The tap moves along the body as the place does along the grid.
void BridgeSketch::leakToStructure(std::size_t index, const ArmPlace& place, Side side) {
  const QPointF along = unitOf(place.end - place.begin), middle = (place.begin + place.end) / 2;
  const double share = std::clamp(bridge.leaks[index].place, 0.0, 1.0);
  const QPointF tap = middle + along * (share - 0.5) * armBodyLength * 0.4;
  const double way = -side.right;
  const QPointF centre(middle.x() + way * 37, tap.y()), end(middle.x() + way * 54, tap.y());
  LeakPlace leak;
  leak.arm = index;
  leak.toStructure = true;
  leak.route = {tap, end};
  leak.body = turnedBody(centre, {way, 0}, 24, leakWidth);
  leak.handle = centre;
  leak.way = {way, 0};
  const double top = side.noteUp ? tap.y() - 10 - textHeight : tap.y() + 10;
  const double inner = tap.x() + way * 7, left = way < 0 ? inner - ohmWidth : inner;
  leak.valueBox = QRectF(left, top, ohmWidth, textHeight);
  layout.leaks.push_back(std::move(leak));
}

void BridgeSketch::wire(QPolygonF route, WireCurrent current, std::size_t index) {
  layout.wires.push_back({std::move(route), current, index});
}

// ---- leads -------------------------------------------------------------------------------------

double BridgeSketch::leadZone(double edge, double columns) {
  const core::Hookup& hookup = bridge.hookup;
  const bool exchanged = std::any_of(m_wires.begin(), m_wires.end(), [&](const core::Wire& wire) {
    const auto& shape = core::templateOf(bridge.type).wires;
    const auto original =
        std::find_if(shape.begin(), shape.end(), [&](const auto& w) { return w.role == wire.role; });
    if (original != shape.end()) return original->from != wire.from;
    return wire.from !=
           (wire.role == core::LeadRole::SensePlus ? core::Node::SensePlus : core::Node::SenseMinus);
  });
  const bool broken = std::find(hookup.broken.begin(), hookup.broken.end(), true) != hookup.broken.end();
  m_edge = edge;
  m_crossFrom = edge + 8 + 12 * columns;
  m_crossTo = m_crossFrom + (exchanged ? 40 : 0);
  m_body = m_crossTo + 4 + leadTextWidth / 2;
  m_gap = m_body + leadTextWidth / 2 + 8;
  m_touch = m_gap + (broken ? 12 : 0);
  m_leadsEnd = m_touch + 12 * static_cast<double>(hookup.touching.size());
  return m_leadsEnd;
}

void BridgeSketch::lead(core::LeadRole role, double laneY, const QPolygonF& rest) {
  const auto wire =
      std::find_if(m_wires.begin(), m_wires.end(), [&](const auto& w) { return w.role == role; });
  if (wire == m_wires.end()) return;
  const QPointF from = node(wire->from).at;
  LeadPlace lead;
  lead.role = role;
  lead.route = {from};
  if (from.y() != laneY) lead.route << QPointF(m_crossFrom, from.y()) << QPointF(m_crossTo, laneY);
  lead.route += rest;
  lead.valueBox =
      QRectF(m_body - leadTextWidth / 2, laneY - leadWidth / 2 - 2 - textHeight, leadTextWidth, textHeight);
  lead.handle = from + QPointF(14, 0);
  const double ohm = core::leadResistance(bridge, role).base();
  if (ohm > 0) {
    const double order = std::clamp(std::floor(std::log10(ohm) + 1e-9), -2.0, 3.0);
    lead.body = turnedBody({m_body, laneY}, {1, 0}, 24 + 8 * (order + 2), leadWidth);
  }
  if (core::isBroken(bridge, role)) lead.gap = QPointF(m_gap, laneY);
  layout.leads.push_back(std::move(lead));
}

void BridgeSketch::touches() {
  double x = m_touch;
  const auto placeOf = [&](core::LeadRole role) {
    return std::find_if(layout.leads.begin(), layout.leads.end(),
                        [&](const auto& lead) { return lead.role == role; });
  };
  const auto laneOf = [](const LeadPlace& lead) { return lead.valueBox.bottom() + 2 + leadWidth / 2; };
  for (const core::LeadPair& pair : bridge.hookup.touching) {
    const auto a = placeOf(pair.a), b = placeOf(pair.b);
    if (a == layout.leads.end() || b == layout.leads.end()) continue;
    layout.touches.push_back({pair, {{x, laneOf(*a)}, {x, laneOf(*b)}}});
    x += 12;
  }
}

// ---- instrument --------------------------------------------------------------------------------

void BridgeSketch::source(QPointF centre) {
  layout.source = centre;
  const bool down = bridge.hookup.excitationReversed;
  layout.sourcePlus =
      QRectF(centre + QPointF(4, down ? symbolRadius - 1 : -symbolRadius - 15), QSizeF(16, 16));
}

void BridgeSketch::input(QPointF plus, QPointF minus, QPointF centre, QPointF lift, double shift,
                         QRectF valueBox) {
  const QPointF along = unitOf(minus - plus);
  const QPointF a = centre - along * 20, b = centre + along * 20;
  layout.inputAxis = along;
  layout.inputBox = valueBox;
  const bool crossed = bridge.hookup.signalReversed;
  layout.input = crossed ? centre + lift * 38 : centre;
  // Away from the resistance that lies beside the input.
  const double aside = instrument.inputResistance && !crossed && shift > 0 ? -9 : 9;
  const QPointF mark = layout.input - along * (symbolRadius + 9) + lift * aside;
  layout.inputPlus = QRectF(mark - QPointF(7, 7), QSizeF(14, 14));
  if (!crossed) {
    wire({plus, minus}, WireCurrent::Input);
  } else {
    const auto reach = [&](QPointF from, QPointF to, double pin) {
      return QPolygonF{from, from + lift * 5, to + lift * 22, to + lift * 38, layout.input + along * pin};
    };
    QPolygonF fromPlus{plus}, toMinus = reach(b, a, -symbolRadius);
    fromPlus += reach(a, b, symbolRadius);
    std::reverse(toMinus.begin(), toMinus.end());
    toMinus << minus;
    wire(fromPlus, WireCurrent::Input);
    wire(toMinus, WireCurrent::Input);
  }
  if (!instrument.inputResistance) return;
  const QPointF before = a - along * 8, behind = b + along * 8;
  wire({before, before + lift * shift, behind + lift * shift, behind});
  layout.inputResistance = turnedBody(centre + lift * shift, along, 30, leakWidth);
}

void BridgeSketch::grounding(QPointF from) {
  if (!anyLeakToStructure() || instrument.grounding == core::Grounding::Floating) return;
  layout.grounding = QPolygonF{from, from + QPointF(0, 12)};
}

double BridgeSketch::wiperShare() const { return std::clamp(instrument.balance.wiper, 0.0, 1.0); }

void BridgeSketch::parallelBalance(double x, double top, double bottom, QPointF sPlus) {
  const QPointF middle(x, sPlus.y());
  BalancePlace place;
  place.track = turnedBody(middle, {0, 1}, 2 * halfTrack, leakWidth);
  place.travel = QLineF(middle + QPointF(0, halfTrack), middle - QPointF(0, halfTrack));
  const QPointF wiper = place.travel.pointAt(wiperShare()), turn(x + 20, sPlus.y());
  place.wiper = QLineF(QPointF(turn.x(), wiper.y()), wiper + QPointF(leakWidth / 2, 0));
  place.routes = {{{x, top}, {x, bottom}}, {place.wiper.p1(), turn, sPlus}};
  place.limiting = turnedBody(turn + QPointF(8 + leakLength / 2, 0), {1, 0}, leakLength, leakWidth);
  place.limitingBox = QRectF(turn.x() + 4, sPlus.y() - 9 - textHeight, balanceWidth, textHeight);
  place.valueBox = place.limitingBox.translated(0, -textHeight);
  layout.balance = std::move(place);
}

void BridgeSketch::seriesBalance(QPointF middle, QPointF sPlus, QRectF valueBox) {
  BalancePlace place;
  place.track = turnedBody(middle, {0, 1}, 2 * halfTrack, leakWidth);
  place.travel = QLineF(middle + QPointF(0, halfTrack), middle - QPointF(0, halfTrack));
  const QPointF wiper = place.travel.pointAt(wiperShare());
  const double way = sPlus.x() > middle.x() ? 1 : -1, turn = middle.x() + way * 18;
  place.wiper = QLineF(QPointF(turn, wiper.y()), wiper + QPointF(way * leakWidth / 2, 0));
  place.routes = {{place.wiper.p1(), {turn, sPlus.y()}, sPlus}};
  place.valueBox = valueBox;
  layout.balance = std::move(place);
}

}  // namespace ui
