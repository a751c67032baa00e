// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/bridge_parts.h"

#include <QCoreApplication>
#include <QLineF>
#include <QPainterPath>
#include <QPainterPathStroker>

#include "ui/theme.h"

namespace ui {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Bridge", text); }

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

QString armText(const BridgePicture& picture, std::size_t arm) {
  const QString strain = strainText(picture.bridge, arm);
  return tr("Arm %1, %2").arg(QString::number(arm + 1), ohmText(picture.bridge.arms[arm], 12)) +
         (strain.isEmpty() ? QString() : ", " + strain);
}

QString leadText(const BridgePicture& picture, std::size_t role) {
  const QString name = toQString(core::leadName(static_cast<core::LeadRole>(role)));
  return tr("Lead ") + name + ", " + ohmText(core::resistanceOf(picture.bridge.leads[role]), 12);
}

QString shuntSpotText(const BridgePicture& picture, const BridgeSpot& spot) {
  const core::Shunt& shunt = picture.shunts[spot.part.index];
  QString text = tr("Shunt ") + shuntText(shunt) + ", " +
                 (picture.state.closed[spot.part.index] ? tr("closed") : tr("open"));
  if (spot.end) return text + tr(", end at ") + pointText(picture.bridge, nodeOf(shunt, *spot.end));
  return text + tr(", from ") + pointText(picture.bridge, shunt.a) + tr(" to ") +
         pointText(picture.bridge, shunt.b);
}

/// What the part takes up.
QRectF boxOf(const BridgePicture& picture, const BridgeSpot& spot) {
  const BridgeLayout& layout = picture.layout;
  switch (spot.part.kind) {
    case BridgePart::Kind::Arm:
      return armBody(layout.arms[spot.part.index]).boundingRect();
    case BridgePart::Kind::Lead:
      for (const LeadPlace& lead : layout.leads)
        if (static_cast<std::size_t>(lead.role) == spot.part.index) return lead.valueBox.adjusted(0, 0, 0, 6);
      return {};
    case BridgePart::Kind::Shunt: {
      const ShuntPlace& place = picture.lanes.places[spot.part.index];
      if (!spot.end) return symbolBox(place);
      return QRectF(handleOf(picture, spot.part.index, *spot.end) - QPointF(7, 7), QSizeF(14, 14));
    }
    default:
      return layout.instrument;
  }
  return {};
}

}  // namespace

std::vector<BridgeSpot> spotsOf(const BridgePicture& picture) {
  std::vector<BridgeSpot> spots{spot(BridgePart::Kind::Instrument, 0)};
  for (const LeadPlace& lead : picture.layout.leads)
    spots.push_back(spot(BridgePart::Kind::Lead, static_cast<std::size_t>(lead.role)));
  for (const std::size_t arm : {0, 1, 2, 3}) spots.push_back(spot(BridgePart::Kind::Arm, arm));
  for (std::size_t k = 0; k < picture.shunts.size(); ++k)
    for (const ShuntEnd end : {ShuntEnd::A, ShuntEnd::B})
      spots.push_back(spot(BridgePart::Kind::Shunt, k, end));
  return spots;
}

std::optional<BridgeSpot> spotAt(const BridgePicture& picture, QPointF point) {
  const BridgeLayout& layout = picture.layout;
  for (const std::size_t arm : {0, 1, 2, 3}) {
    const ArmPlace& place = layout.arms[arm];
    if (armBody(place).containsPoint(point, Qt::WindingFill)) return spot(BridgePart::Kind::Arm, arm);
  }
  if (const auto found = anyShuntAt(picture, point)) return found;
  for (const std::size_t arm : {0, 1, 2, 3}) {
    const ArmPlace& place = layout.arms[arm];
    if (isOn({place.begin, place.end}, point) || place.valueBox.contains(point))
      return spot(BridgePart::Kind::Arm, arm);
  }
  for (const LeadPlace& lead : layout.leads)
    if (isOn(lead.route, point) || lead.valueBox.contains(point))
      return spot(BridgePart::Kind::Lead, static_cast<std::size_t>(lead.role));
  if (layout.instrument.contains(point)) return spot(BridgePart::Kind::Instrument, 0);
  return std::nullopt;
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
  if (spot.part.kind == BridgePart::Kind::Arm)  // turned with the arm, or it would run through its label
    return armBody(picture.layout.arms[spot.part.index], ringDistance);
  return boxOf(picture, spot).adjusted(-ringDistance, -ringDistance, ringDistance, ringDistance);
}

QString textOf(const BridgePicture& picture, const BridgeSpot& spot) {
  switch (spot.part.kind) {
    case BridgePart::Kind::Arm:
      return armText(picture, spot.part.index);
    case BridgePart::Kind::Lead:
      return leadText(picture, spot.part.index);
    case BridgePart::Kind::Shunt:
      return shuntSpotText(picture, spot);
    default:
      return tr("Instrument");
  }
}

QPointF handleOf(const BridgePicture& picture, std::size_t shunt, ShuntEnd end) {
  const ShuntPlace& place = picture.lanes.places[shunt];
  return end == ShuntEnd::A ? place.handleA : place.handleB;
}

}  // namespace ui
