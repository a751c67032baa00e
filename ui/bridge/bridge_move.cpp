// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/bridge_move.h"

#include <QCoreApplication>
#include <QLineF>
#include <algorithm>
#include <cmath>

#include "core/circuit/hookup.h"
#include "core/document/bridge_edits.h"
#include "core/document/edits.h"
#include "ui/bridge/shunt_move.h"
#include "ui/quantity_edit.h"
#include "ui/theme.h"

namespace ui {
namespace {

using Kind = BridgePart::Kind;

QString tr(const char* text) { return QCoreApplication::translate("Bridge", text); }

constexpr double wiperStep = 0.01;
constexpr double wiperGrid = 0.001;  ///< shares by the mouse are whole thousandths

core::LeadRole roleOf(const BridgeSpot& grip) { return static_cast<core::LeadRole>(grip.part.index); }

core::Node terminalOf(const core::Bridge& bridge, core::LeadRole role) {
  for (const core::Wire& wire : core::wiresOf(bridge))
    if (wire.role == role) return wire.from;
  return core::Node::PPlus;
}

std::optional<core::LeadRole> leadAt(const core::Bridge& bridge, core::Node terminal) {
  for (const core::Wire& wire : core::wiresOf(bridge))
    if (wire.from == terminal) return wire.role;
  return std::nullopt;
}

MoveTarget presentPlace(const core::Setup& setup, const BridgeSpot& grip) {
  switch (grip.part.kind) {
    case Kind::Shunt:
      return nodeOf(setup.shunts[grip.part.index], *grip.end);
    case Kind::Lead:
      return terminalOf(setup.bridge, roleOf(grip));
    case Kind::Balance:
      return setup.instrument.balance.wiper;
    default:
      return grip.part.index;
  }
}

// ---- legal or not ----------------------------------------------------------------------------

QString leadRefusal(const core::Bridge& bridge, core::Node terminal) {
  if (leadAt(bridge, terminal)) return {};
  return tr("Not possible: no lead is at %1, so there is nothing to exchange this one with.")
      .arg(pointText(bridge, terminal));
}

QString leakRefusal(const core::Bridge& bridge, const BridgeSpot& grip, std::size_t arm) {
  if (arm == grip.part.index) return {};
  const core::Leak& there = bridge.leaks[arm];
  const bool taken = grip.part.kind == Kind::Leak ? there.across.has_value() : there.toStructure.has_value();
  if (!taken) return {};
  return tr("Not possible: arm %1 has such a leak already; two in parallel are entered as one resistance.")
      .arg(arm + 1);
}

/// Empty when the part may be moved there.
QString refusalOf(const core::Setup& setup, const BridgeSpot& grip, const MoveTarget& target) {
  switch (grip.part.kind) {
    case Kind::Lead:
      return leadRefusal(setup.bridge, std::get<core::Node>(target));
    case Kind::Leak:
    case Kind::StructureLeak:
      return leakRefusal(setup.bridge, grip, std::get<std::size_t>(target));
    default:
      return {};
  }
}

QString withoutTarget(const BridgeSpot& grip) {
  switch (grip.part.kind) {
    case Kind::Lead:
      return tr("Drop the lead on another lead's terminal; elsewhere nothing changes.");
    case Kind::Leak:
    case Kind::StructureLeak:
      return tr("Drop the leak on another arm; elsewhere nothing changes.");
    default:
      return tr("Drop the resistor on another arm; elsewhere nothing changes.");
  }
}

// ---- in words --------------------------------------------------------------------------------

QString movedText(const core::Setup& setup, const BridgeSpot& grip) {
  const QString arm = QString::number(grip.part.index + 1);
  switch (grip.part.kind) {
    case Kind::Shunt:
      return toQString(setup.shunts[grip.part.index].name);
    case Kind::Lead:
      return tr("lead %1").arg(toQString(core::leadName(roleOf(grip))));
    case Kind::Leak:
      return tr("the leak over arm %1").arg(arm);
    case Kind::StructureLeak:
      return tr("the leak from arm %1 to the structure").arg(arm);
    case Kind::Balance:
      return tr("the wiper");
    default:
      return tr("the resistor of arm %1").arg(arm);
  }
}

QString placeText(const core::Setup& setup, const MoveTarget& target) {
  if (const auto* node = std::get_if<core::Node>(&target)) return pointText(setup.bridge, *node);
  if (const auto* arm = std::get_if<std::size_t>(&target)) return tr("arm %1").arg(*arm + 1);
  return numberText(std::get<double>(target), 4);
}

// ---- what a move does ------------------------------------------------------------------------

core::Channel moved(core::Channel channel, const BridgeSpot& grip, const MoveTarget& target) {
  const std::size_t index = grip.part.index;
  core::Setup& setup = channel.setup;
  switch (grip.part.kind) {
    case Kind::Shunt: {
      core::Shunt shunt = setup.shunts[index];
      (*grip.end == ShuntEnd::A ? shunt.a : shunt.b) = std::get<core::Node>(target);
      return core::withShuntAt(std::move(channel), index, shunt.a, shunt.b);
    }
    case Kind::Lead: {
      const auto other = leadAt(setup.bridge, std::get<core::Node>(target));
      if (other && *other != roleOf(grip))
        setup.bridge = core::withExchanged(setup.bridge, {roleOf(grip), *other});
      return channel;
    }
    case Kind::Leak:
    case Kind::StructureLeak:
      return core::withLeakMoved(std::move(channel), grip.part.kind == Kind::StructureLeak, index,
                                 std::get<std::size_t>(target));
    case Kind::Balance:
      setup.instrument.balance.wiper = std::get<double>(target);
      return channel;
    default:
      return core::withArmsExchanged(std::move(channel), index, std::get<std::size_t>(target));
  }
}

BridgeMove shuntMove(const core::Setup& setup, std::optional<std::size_t> selected, BridgeMove move) {
  const auto node = move.target ? std::optional(std::get<core::Node>(*move.target)) : std::nullopt;
  ShuntMove end = moveTo(setup, selected, move.grip.part.index, *move.grip.end, node);
  move.legal = end.legal;
  move.outcome = std::move(end.outcome);
  move.state = std::move(end.state);
  return move;
}

BridgeMove otherMove(const core::Setup& setup, std::optional<std::size_t> selected, BridgeMove move) {
  move.outcome = move.target ? refusalOf(setup, move.grip, *move.target) : withoutTarget(move.grip);
  if (!move.outcome.isEmpty()) return move;
  move.legal = true;
  core::Channel channel;
  channel.setup = setup;
  channel = moved(std::move(channel), move.grip, *move.target);
  const auto step = selected ? std::optional(setup.sequence[*selected]) : std::nullopt;
  move.state = stateOfStep(std::move(channel.setup), step);
  move.outcome = move.state.outcome;
  return move;
}

// ---- places in the drawing -------------------------------------------------------------------

constexpr double armReach = 55;

QPointF middleOf(const ArmPlace& arm) { return (arm.begin + arm.end) / 2; }

std::optional<MoveTarget> armNear(const BridgePicture& picture, const BridgeSpot& grip, QPointF point) {
  std::optional<MoveTarget> nearest;
  double least = armReach;
  for (std::size_t arm = 0; arm < 4; ++arm) {
    const bool own = grip.part.kind == Kind::Arm && arm == grip.part.index;
    const double far = QLineF(middleOf(picture.layout.arms[arm]), point).length();
    if (own || far >= least) continue;
    least = far;
    nearest = MoveTarget(arm);
  }
  return nearest;
}

std::optional<MoveTarget> terminalNear(const BridgePicture& picture, QPointF point) {
  std::optional<MoveTarget> nearest;
  double least = armReach;
  for (const core::Node node : core::allNodes()) {
    const NodePlace& place = picture.layout[node];
    const double far = QLineF(place.at, point).length();
    if (!place.present || !place.terminal || far >= least) continue;
    least = far;
    nearest = MoveTarget(node);
  }
  return nearest;
}

std::optional<MoveTarget> shareNear(const BridgePicture& picture, QPointF point) {
  if (!picture.layout.balance) return std::nullopt;
  const QLineF travel = picture.layout.balance->travel;
  const QPointF along = travel.p2() - travel.p1();
  const double length2 = QPointF::dotProduct(along, along);
  if (length2 == 0) return std::nullopt;
  const double share = QPointF::dotProduct(point - travel.p1(), along) / length2;
  return MoveTarget(std::round(std::clamp(share, 0.0, 1.0) / wiperGrid) * wiperGrid);
}

QPointF pointOf(const BridgePicture& picture, const MoveTarget& target) {
  if (const auto* node = std::get_if<core::Node>(&target)) return picture.layout[*node].at;
  if (const auto* arm = std::get_if<std::size_t>(&target)) return middleOf(picture.layout.arms[*arm]);
  return picture.layout.balance ? picture.layout.balance->travel.pointAt(std::get<double>(target))
                                : QPointF();
}

/// Every place that could be meant, legal or not; none of a wiper, whose track is drawn.
std::vector<MoveTarget> placesFor(const BridgePicture& picture, const BridgeSpot& grip) {
  std::vector<MoveTarget> places;
  if (grip.part.kind == Kind::Balance) return places;
  const bool ofShunt = grip.part.kind == Kind::Shunt;
  if (ofShunt || grip.part.kind == Kind::Lead) {
    for (const core::Node node : core::allNodes())
      if (picture.layout[node].present && (ofShunt || picture.layout[node].terminal)) places.push_back(node);
  } else {
    for (std::size_t arm = 0; arm < 4; ++arm) places.push_back(arm);
  }
  return places;
}

bool isLegal(const BridgePicture& picture, const BridgeSpot& grip, const MoveTarget& target) {
  if (grip.part.kind == Kind::Shunt)
    return isLegalTarget(picture.bridge, picture.shunts[grip.part.index], *grip.end,
                         std::get<core::Node>(target));
  core::Setup setup;
  setup.bridge = picture.bridge;
  return target != presentPlace(setup, grip) && refusalOf(setup, grip, target).isEmpty();
}

std::vector<MoveTarget> legalPlaces(const core::Setup& setup, const BridgeSpot& grip) {
  std::vector<MoveTarget> places;
  if (grip.part.kind == Kind::Shunt) {
    for (const core::Node node : legalTargets(setup.bridge, setup.shunts[grip.part.index], *grip.end))
      places.push_back(node);
  } else if (grip.part.kind == Kind::Lead) {
    for (const core::Node node : core::allNodes())
      if (leadAt(setup.bridge, node)) places.push_back(node);
  } else {
    for (std::size_t arm = 0; arm < 4; ++arm)
      if (refusalOf(setup, grip, arm).isEmpty()) places.push_back(arm);
  }
  return places;
}

}  // namespace

bool isMovable(const BridgeSpot& spot) {
  if (spot.part.kind == Kind::Shunt) return spot.end.has_value();
  return spot.part.kind != Kind::Instrument && spot.part.kind != Kind::Input;
}

BridgeMove moveOf(const core::Setup& setup, std::optional<std::size_t> selected, const BridgeSpot& grip,
                  std::optional<MoveTarget> target) {
  BridgeMove move;
  move.grip = grip;
  move.target = target;
  move = grip.part.kind == Kind::Shunt ? shuntMove(setup, selected, std::move(move))
                                       : otherMove(setup, selected, std::move(move));
  const QString moved = movedText(setup, grip);
  move.title = move.target ? tr("Moving %1 to %2").arg(moved, placeText(setup, *move.target))
                           : tr("Moving %1").arg(moved);
  move.state.title = move.title;
  return move;
}

core::Channel withMove(core::Channel channel, const BridgeMove& move) {
  return moved(std::move(channel), move.grip, *move.target);
}

BridgePart partAfter(const BridgeMove& move) {
  BridgePart part = move.grip.part;
  if (part.kind == Kind::Leak || part.kind == Kind::StructureLeak)
    part.index = std::get<std::size_t>(*move.target);
  return part;
}

QString undoLabel(const BridgeMove& move) {
  switch (move.grip.part.kind) {
    case Kind::Shunt:
      return tr("Move shunt");
    case Kind::Lead:
      return tr("Exchange leads");
    case Kind::Balance:
      return tr("Move wiper");
    case Kind::Arm:
      return tr("Exchange arms");
    default:
      return tr("Move leak");
  }
}

std::optional<MoveTarget> targetNear(const BridgePicture& picture, const BridgeSpot& grip, QPointF point) {
  switch (grip.part.kind) {
    case Kind::Shunt: {
      const auto node = nodeNear(picture, point);
      return node ? std::optional(MoveTarget(*node)) : std::nullopt;
    }
    case Kind::Lead:
      return terminalNear(picture, point);
    case Kind::Balance:
      return shareNear(picture, point);
    default:
      return armNear(picture, grip, point);
  }
}

std::optional<MoveTarget> nextTarget(const core::Setup& setup, const BridgeSpot& grip,
                                     const std::optional<MoveTarget>& now, int direction) {
  const MoveTarget from = now.value_or(presentPlace(setup, grip));
  if (grip.part.kind == Kind::Balance)
    return MoveTarget(std::clamp(std::get<double>(from) + direction * wiperStep, 0.0, 1.0));
  const std::vector<MoveTarget> places = legalPlaces(setup, grip);
  if (places.empty()) return std::nullopt;
  const auto count = static_cast<std::ptrdiff_t>(places.size());
  const auto found = std::find(places.begin(), places.end(), from);
  // From a place that is not legal itself, the first or the last one.
  auto at = found == places.end() ? (direction > 0 ? -1 : count) : found - places.begin();
  at = (at + direction + count) % count;
  return places[static_cast<std::size_t>(at)];
}

QString keysText(const BridgeSpot& spot) {
  if (!isMovable(spot)) return {};
  switch (spot.part.kind) {
    case Kind::Shunt:
      return tr("Arrow keys move this end from point to point, Enter keeps it there, Escape takes it back.");
    case Kind::Lead:
      return tr(
          "Arrow keys take this lead's end to another lead's terminal, Enter exchanges the two, "
          "Escape takes it back.");
    case Kind::Balance:
      return tr("Arrow keys move the wiper, Enter keeps it there, Escape takes it back.");
    case Kind::Arm:
      return tr(
          "Arrow keys take this resistor to another arm, Enter exchanges the two, Escape takes it back.");
    default:
      return tr("Arrow keys move the leak from arm to arm, Enter keeps it there, Escape takes it back.");
  }
}

void paintMove(QPainter& painter, const BridgePicture& picture, const BridgeMove& move,
               std::optional<QPointF> pointer, const Colours& colours) {
  const bool refused = move.target && !move.legal;
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(colours.selected, 1.5, Qt::DotLine));
  BridgeSpot grip = move.grip;
  if (move.legal) grip.part = partAfter(move);
  for (const MoveTarget& place : placesFor(picture, grip))
    if (isLegal(picture, grip, place)) painter.drawEllipse(pointOf(picture, place), 9, 9);
  const QPointF from = gripOf(picture, grip);
  const QPointF to = move.target ? pointOf(picture, *move.target) : pointer.value_or(from);
  const QColor colour = move.legal ? colours.selected : refused ? colours.fail : colours.quiet;
  painter.setPen(QPen(colour, 3, Qt::DashLine));
  painter.drawLine(from, to);
  painter.setPen(QPen(colour, 3));
  painter.drawEllipse(to, 10, 10);
  if (!refused) return;
  painter.drawLine(to - QPointF(7, 7), to + QPointF(7, 7));
  painter.drawLine(to - QPointF(7, -7), to + QPointF(7, -7));
}

}  // namespace ui
