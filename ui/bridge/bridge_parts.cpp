// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/bridge_parts.h"

#include <QCoreApplication>
#include <QLineF>
#include <QPainterPath>
#include <QPainterPathStroker>
#include <algorithm>
#include <cmath>

#include "core/document/bridge_edits.h"
#include "ui/theme.h"

namespace ui {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Bridge", text); }

using Kind = BridgePart::Kind;

constexpr double handleReach = 10, wireReach = 5, nodeReach = 45;
constexpr double ringDistance = 4;

BridgeSpot spot(BridgePart::Kind kind, std::size_t index, std::optional<ShuntEnd> end = {}) {
  return {{kind, index}, end};
}

bool isOn(const QPolygonF& route, QPointF point, double reach = wireReach) {
  QPainterPath path;
  path.addPolygon(route);
  QPainterPathStroker stroker;
  stroker.setWidth(2 * reach);
  return stroker.createStroke(path).contains(point);
}

bool isNear(QPointF a, QPointF b, double reach) { return QLineF(a, b).length() <= reach; }

QRectF symbolBox(const ShuntPlace& place) {
  return QRectF(place.contact.p1() - QPointF(2, 12), place.resistor.bottomRight() + QPointF(2, 4));
}

/// Whether shunt `index` is at `point`; the end, when the point is on one.
std::optional<BridgeSpot> shuntSpotAt(const BridgePicture& picture, std::size_t index, QPointF point) {
  const ShuntPlace& place = picture.lanes.places[index];
  const auto kind = BridgePart::Kind::Shunt;
  if (isNear(place.handleA, point, handleReach)) return spot(kind, index, ShuntEnd::A);
  if (isNear(place.handleB, point, handleReach)) return spot(kind, index, ShuntEnd::B);
  if (symbolBox(place).contains(point) || place.labelBox.contains(point)) return spot(kind, index);
  if (isOn(place.toA, point)) return spot(kind, index, ShuntEnd::A);
  if (isOn(place.toB, point)) return spot(kind, index, ShuntEnd::B);
  return std::nullopt;
}

std::optional<BridgeSpot> anyShuntAt(const BridgePicture& picture, QPointF point) {
  for (const bool closed : {true, false})
    for (std::size_t k = 0; k < picture.shunts.size(); ++k)
      if (picture.state.closed[k] == closed)
        if (const auto found = shuntSpotAt(picture, k, point)) return found;
  return std::nullopt;
}

// ---- leads, leaks, balance network, input --------------------------------------------------------

const LeadPlace* leadPlace(const BridgePicture& picture, std::size_t role) {
  for (const LeadPlace& lead : picture.layout.leads)
    if (static_cast<std::size_t>(lead.role) == role) return &lead;
  return nullptr;
}

const LeakPlace* leakPlace(const BridgePicture& picture, const BridgePart& part) {
  for (const LeakPlace& leak : picture.layout.leaks)
    if (leak.arm == part.index && leak.toStructure == (part.kind == Kind::StructureLeak)) return &leak;
  return nullptr;
}

BridgePart partOf(const LeakPlace& leak) {
  return {leak.toStructure ? Kind::StructureLeak : Kind::Leak, leak.arm};
}

QPointF gripOf(const LeadPlace& lead) { return lead.handle.isNull() ? lead.route.front() : lead.handle; }

/// What is small and lies over everything else: handles of leads and leaks, the wiper's track.
std::optional<BridgeSpot> gripAt(const BridgePicture& picture, QPointF point) {
  for (const LeakPlace& leak : picture.layout.leaks)
    if (isNear(leak.handle, point, handleReach) || leak.body.containsPoint(point, Qt::WindingFill))
      return BridgeSpot{partOf(leak), {}};
  for (const LeadPlace& lead : picture.layout.leads)
    if (isNear(gripOf(lead), point, handleReach) || lead.body.containsPoint(point, Qt::WindingFill))
      return spot(Kind::Lead, static_cast<std::size_t>(lead.role));
  if (const auto& balance = picture.layout.balance)
    if (balance->track.containsPoint(point, Qt::WindingFill) ||
        isOn({balance->travel.p1(), balance->travel.p2()}, point, handleReach))
      return spot(Kind::Balance, 0);
  return std::nullopt;
}

/// Wires and texts, in which one may be a little off.
std::optional<BridgeSpot> wireAt(const BridgePicture& picture, QPointF point) {
  const BridgeLayout& layout = picture.layout;
  for (const std::size_t arm : {0, 1, 2, 3}) {
    const ArmPlace& place = layout.arms[arm];
    if (isOn({place.begin, place.end}, point) || place.valueBox.contains(point)) return spot(Kind::Arm, arm);
  }
  for (const LeakPlace& leak : layout.leaks)
    if (isOn(leak.route, point) || leak.valueBox.contains(point)) return BridgeSpot{partOf(leak), {}};
  for (const LeadPlace& lead : layout.leads)
    if (isOn(lead.route, point) || lead.valueBox.contains(point))
      return spot(Kind::Lead, static_cast<std::size_t>(lead.role));
  return std::nullopt;
}

std::optional<BridgeSpot> instrumentAt(const BridgePicture& picture, QPointF point) {
  const BridgeLayout& layout = picture.layout;
  if (const auto& balance = layout.balance) {
    const bool onWire = std::any_of(balance->routes.begin(), balance->routes.end(),
                                    [&](const QPolygonF& route) { return isOn(route, point); });
    if (onWire || balance->valueBox.contains(point) ||
        balance->limiting.containsPoint(point, Qt::WindingFill))
      return spot(Kind::Balance, 0);
  }
  if (isNear(layout.input, point, symbolRadius + 3) || layout.inputBox.contains(point))
    return spot(Kind::Input, 0);
  if (layout.instrument.contains(point)) return spot(Kind::Instrument, 0);
  return std::nullopt;
}

// ---- in words ----------------------------------------------------------------------------------

/// What the drawing says in that box.
QString labelIn(const BridgePicture& picture, const QRectF& box) {
  for (const BridgeLabel& label : picture.labels)
    if (label.box == box) return label.text;
  return {};
}

QString withValue(const QString& name, const QString& value) {
  return value.isEmpty() ? name : name + ", " + value;
}

QString armText(const BridgePicture& picture, std::size_t arm) {
  return withValue(tr("Arm %1, %2").arg(QString::number(arm + 1), ohmText(picture.bridge.arms[arm], 12)),
                   strainText(picture.bridge, arm));
}

QString leakText(const BridgePicture& picture, const BridgePart& part) {
  const core::Leak& leak = picture.bridge.leaks[part.index];
  const bool toStructure = part.kind == Kind::StructureLeak;
  const auto& resistance = toStructure ? leak.toStructure : leak.across;
  const QString name = toStructure ? tr("Leak from arm %1 to the structure") : tr("Leak over arm %1");
  return withValue(name.arg(part.index + 1), resistance ? ohmText(*resistance, 12) : QString());
}

QString leadText(const BridgePicture& picture, std::size_t role) {
  const QString name = toQString(core::leadName(static_cast<core::LeadRole>(role)));
  return tr("Lead %1, %2").arg(name, ohmText(core::resistanceOf(picture.bridge.leads[role]), 12));
}

QString shuntSpotText(const BridgePicture& picture, const BridgeSpot& spot) {
  const core::Shunt& shunt = picture.shunts[spot.part.index];
  const QString text = (picture.state.closed[spot.part.index] ? tr("Shunt %1, closed") : tr("Shunt %1, open"))
                           .arg(shuntText(shunt));
  if (spot.end) return tr("%1, end at %2").arg(text, pointText(picture.bridge, nodeOf(shunt, *spot.end)));
  return tr("%1, from %2 to %3")
      .arg(text, pointText(picture.bridge, shunt.a), pointText(picture.bridge, shunt.b));
}

// ---- rings -------------------------------------------------------------------------------------

/// Each corner of a resistor's body moved outwards by `distance` on both sides.
QPolygonF grown(const QPolygonF& body, double distance) {
  const QPointF centre = body.boundingRect().center();
  QPolygonF wider;
  for (const QPointF corner : body) {
    const QPointF way = corner - centre;
    const double length = std::hypot(way.x(), way.y());
    wider << (length > 0 ? corner + way / length * distance * 1.5 : corner);
  }
  return wider;
}

QPolygonF around(const QRectF& box) {
  return QPolygonF(box.adjusted(-ringDistance, -ringDistance, ringDistance, ringDistance));
}

QPolygonF leadRing(const BridgePicture& picture, std::size_t role) {
  const LeadPlace* lead = leadPlace(picture, role);
  if (!lead) return {};
  return lead->body.isEmpty() ? around(lead->valueBox.adjusted(0, 0, 0, 6)) : grown(lead->body, ringDistance);
}

QPolygonF leakRing(const BridgePicture& picture, const BridgePart& part) {
  const LeakPlace* leak = leakPlace(picture, part);
  return leak ? grown(leak->body, ringDistance) : QPolygonF();
}

QPolygonF shuntRing(const BridgePicture& picture, const BridgeSpot& spot) {
  if (!spot.end) return around(symbolBox(picture.lanes.places[spot.part.index]));
  return around(QRectF(handleOf(picture, spot.part.index, *spot.end) - QPointF(7, 7), QSizeF(14, 14)));
}

QPointF middleOf(const BridgePicture& picture, const BridgePart& part) {
  return ringOf(picture, {part, {}}).boundingRect().center();
}

}  // namespace

std::vector<BridgeSpot> spotsOf(const BridgePicture& picture) {
  std::vector<BridgeSpot> spots{spot(Kind::Instrument, 0), spot(Kind::Input, 0)};
  if (picture.layout.balance) spots.push_back(spot(Kind::Balance, 0));
  for (const LeadPlace& lead : picture.layout.leads)
    spots.push_back(spot(Kind::Lead, static_cast<std::size_t>(lead.role)));
  for (const std::size_t arm : {0, 1, 2, 3}) spots.push_back(spot(Kind::Arm, arm));
  for (const LeakPlace& leak : picture.layout.leaks) spots.push_back({partOf(leak), {}});
  for (std::size_t k = 0; k < picture.shunts.size(); ++k)
    for (const ShuntEnd end : {ShuntEnd::A, ShuntEnd::B}) spots.push_back(spot(Kind::Shunt, k, end));
  return spots;
}

std::vector<BridgePart> partsOf(const BridgePicture& picture) {
  std::vector<BridgePart> parts;
  for (const BridgeSpot& each : spotsOf(picture))
    if (parts.empty() || parts.back() != each.part) parts.push_back(each.part);
  return parts;
}

std::optional<BridgeSpot> spotAt(const BridgePicture& picture, QPointF point) {
  for (const std::size_t arm : {0, 1, 2, 3})
    if (armBody(picture.layout.arms[arm]).containsPoint(point, Qt::WindingFill)) return spot(Kind::Arm, arm);
  if (const auto found = gripAt(picture, point)) return found;
  if (const auto found = anyShuntAt(picture, point)) return found;
  if (const auto found = wireAt(picture, point)) return found;
  return instrumentAt(picture, point);
}

std::vector<BridgePart> partsIn(const BridgePicture& picture, const QRectF& area) {
  std::vector<BridgePart> inside;
  for (const BridgePart& part : partsOf(picture))
    if (area.contains(middleOf(picture, part))) inside.push_back(part);
  return inside;
}

std::optional<core::Node> nodeNear(const BridgePicture& picture, QPointF point) {
  std::optional<core::Node> nearest;
  double least = nodeReach;
  for (const core::Node node : core::allNodes()) {
    const NodePlace& place = picture.layout[node];
    const double distance = QLineF(place.at, point).length();
    if (!place.present || distance >= least) continue;
    least = distance;
    nearest = node;
  }
  return nearest;
}

QPolygonF ringOf(const BridgePicture& picture, const BridgeSpot& spot) {
  const BridgeLayout& layout = picture.layout;
  switch (spot.part.kind) {
    case Kind::Arm:  // turned with the arm, or it would run through its label
      return armBody(layout.arms[spot.part.index], ringDistance);
    case Kind::Lead:
      return leadRing(picture, spot.part.index);
    case Kind::Shunt:
      return shuntRing(picture, spot);
    case Kind::Leak:
    case Kind::StructureLeak:
      return leakRing(picture, spot.part);
    case Kind::Balance:
      return layout.balance ? grown(layout.balance->track, ringDistance) : QPolygonF();
    case Kind::Input:
      return around(QRectF(layout.input - QPointF(symbolRadius, symbolRadius),
                           QSizeF(2 * symbolRadius, 2 * symbolRadius)));
    case Kind::Instrument:
      return around(layout.instrument);
  }
  return {};
}

QRectF labelBoxOf(const BridgePicture& picture, const BridgePart& part) {
  const BridgeLayout& layout = picture.layout;
  switch (part.kind) {
    case Kind::Arm:
      return layout.arms[part.index].valueBox;
    case Kind::Lead:
      if (const LeadPlace* lead = leadPlace(picture, part.index)) return lead->valueBox;
      return {};
    case Kind::Shunt: {
      const ShuntPlace& place = picture.lanes.places[part.index];
      return place.labelBox.isEmpty() ? place.resistor : place.labelBox;
    }
    case Kind::Leak:
    case Kind::StructureLeak:
      if (const LeakPlace* leak = leakPlace(picture, part)) return leak->valueBox;
      return {};
    case Kind::Balance:
      return layout.balance ? layout.balance->valueBox : QRectF();
    case Kind::Input:
      return layout.inputBox;
    case Kind::Instrument:
      return layout.excitationBox;
  }
  return {};
}

QString textOf(const BridgePicture& picture, const BridgeSpot& spot) {
  switch (spot.part.kind) {
    case Kind::Arm:
      return armText(picture, spot.part.index);
    case Kind::Lead:
      return leadText(picture, spot.part.index);
    case Kind::Shunt:
      return shuntSpotText(picture, spot);
    case Kind::Leak:
    case Kind::StructureLeak:
      return leakText(picture, spot.part);
    case Kind::Balance:
      return withValue(tr("Balance network"), labelIn(picture, labelBoxOf(picture, spot.part)));
    case Kind::Input:
      return withValue(tr("Measuring input"), labelIn(picture, labelBoxOf(picture, spot.part)));
    case Kind::Instrument:
      return withValue(tr("Instrument"), labelIn(picture, labelBoxOf(picture, spot.part)));
  }
  return {};
}

QString nameOf(const BridgePicture& picture, const BridgePart& part) {
  const QString arm = QString::number(part.index + 1);
  switch (part.kind) {
    case Kind::Arm:
      return tr("arm %1").arg(arm);
    case Kind::Lead:
      return tr("lead %1").arg(toQString(core::leadName(static_cast<core::LeadRole>(part.index))));
    case Kind::Shunt:
      return toQString(picture.shunts[part.index].name);
    case Kind::Leak:
      return tr("leak over arm %1").arg(arm);
    case Kind::StructureLeak:
      return tr("leak from arm %1 to the structure").arg(arm);
    case Kind::Balance:
      return tr("balance network");
    case Kind::Input:
      return tr("measuring input");
    case Kind::Instrument:
      return tr("instrument");
  }
  return {};
}

QPointF handleOf(const BridgePicture& picture, std::size_t shunt, ShuntEnd end) {
  const ShuntPlace& place = picture.lanes.places[shunt];
  return end == ShuntEnd::A ? place.handleA : place.handleB;
}

QPointF gripOf(const BridgePicture& picture, const BridgeSpot& spot) {
  switch (spot.part.kind) {
    case Kind::Shunt:
      return handleOf(picture, spot.part.index, spot.end.value_or(ShuntEnd::A));
    case Kind::Lead:
      if (const LeadPlace* lead = leadPlace(picture, spot.part.index)) return gripOf(*lead);
      return {};
    case Kind::Leak:
    case Kind::StructureLeak:
      if (const LeakPlace* leak = leakPlace(picture, spot.part)) return leak->handle;
      return {};
    default:
      return middleOf(picture, spot.part);
  }
}

std::optional<std::size_t> armOf(const BridgePicture& picture, const BridgePart& part) {
  switch (part.kind) {
    case Kind::Arm:
    case Kind::Leak:
    case Kind::StructureLeak:
      return part.index;
    case Kind::Shunt:
      return core::armUnder(picture.bridge, picture.shunts[part.index]);
    default:
      return std::nullopt;
  }
}

}  // namespace ui
