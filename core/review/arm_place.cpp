// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/review/arm_place.h"

#include "core/flow/placement.h"

namespace core {
namespace {

/// The node on the other half of its half bridge; signal terminals stay.
Node mirrored(Node node) {
  switch (node) {
    case Node::PPlus:
      return Node::PMinus;
    case Node::PMinus:
      return Node::PPlus;
    case Node::SensePlus:
      return Node::SenseMinus;
    case Node::SenseMinus:
      return Node::SensePlus;
    case Node::Arm1Begin:
      return Node::Arm2End;
    case Node::Arm1End:
      return Node::Arm2Begin;
    case Node::Arm2Begin:
      return Node::Arm1End;
    case Node::Arm2End:
      return Node::Arm1Begin;
    case Node::Arm3Begin:
      return Node::Arm4End;
    case Node::Arm3End:
      return Node::Arm4Begin;
    case Node::Arm4Begin:
      return Node::Arm3End;
    case Node::Arm4End:
      return Node::Arm3Begin;
    case Node::SPlus:
    case Node::SMinus:
      return node;
  }
  return node;
}

}  // namespace

std::optional<ArmPlace> placeOf(const Bridge& bridge, const Shunt& shunt) {
  const ShuntPlacement placement = placementOf(bridge, shunt);
  if (placement.kind != ShuntPlacement::Kind::Arm) return std::nullopt;
  return ArmPlace{placement.arm, placement.leads.empty(), placement.reversed};
}

Shunt atEndsOf(Shunt shunt, std::size_t arm, bool reversed) {
  shunt.a = reversed ? armEnd(arm) : armBegin(arm);
  shunt.b = reversed ? armBegin(arm) : armEnd(arm);
  return shunt;
}

std::optional<Shunt> onNeighbour(const Bridge& bridge, const Shunt& shunt) {
  const auto place = placeOf(bridge, shunt);
  if (!place) return std::nullopt;
  const std::size_t arm = neighbourOf(place->arm);
  if (place->atOwnEnds || !templateOf(bridge.type).atArticle[arm])
    return atEndsOf(shunt, arm, place->reversed);
  Shunt moved = shunt;
  moved.a = mirrored(shunt.a);
  moved.b = mirrored(shunt.b);
  return moved;
}

}  // namespace core
