// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wiring/jumper_groups.h"

#include <algorithm>

namespace core {

std::optional<std::variant<Node, ResistorEnd>> leadsTo(const Bridge& bridge, const PinUse& use) {
  if (const auto* end = std::get_if<ResistorEnd>(&use)) return *end;
  const auto* node = std::get_if<Node>(&use);
  if (!node || !hasNode(bridge, *node)) return std::nullopt;
  return pointOf(bridge, *node);
}

JumperGroups::JumperGroups(const Setup& setup)
    : m_bridge(setup.bridge), m_items(std::make_shared<std::map<Item, std::size_t>>()) {
  for (const Pin& pin : setup.wiring.pins) {
    add(pin.name);
    const auto use = leadsTo(m_bridge, pin.use);
    if (!use) continue;
    std::visit([&](const auto& place) { join(pin.name, place); }, *use);
  }
}

void JumperGroups::lay(const Jumper& jumper) { join(jumper.from, jumper.to); }

std::size_t JumperGroups::add(const Item& item) {
  if (const auto known = m_items->find(item); known != m_items->end()) return known->second;
  if (m_items.use_count() > 1) m_items = std::make_shared<std::map<Item, std::size_t>>(*m_items);
  const std::size_t index = m_parent.size();
  m_items->emplace(item, index);
  m_parent.push_back(index);
  return index;
}

std::size_t JumperGroups::rootOf(std::size_t item) const {
  while (m_parent[item] != item) item = m_parent[item];
  return item;
}

std::optional<std::size_t> JumperGroups::groupOf(const Item& item) const {
  const auto found = m_items->find(item);
  if (found == m_items->end()) return std::nullopt;
  return rootOf(found->second);
}

void JumperGroups::join(const Item& a, const Item& b) {
  const std::size_t first = add(a), second = add(b);
  m_parent[rootOf(first)] = rootOf(second);
}

std::vector<Node> JumperGroups::pointsAt(const ResistorEnd& end) const {
  std::vector<Node> points;
  const auto group = groupOf(end);
  if (!group) return points;
  for (const auto& [item, index] : *m_items)
    if (const auto* node = std::get_if<Node>(&item); node && rootOf(index) == *group) points.push_back(*node);
  return points;
}

bool JumperGroups::joined(const PinName& a, const PinName& b) const {
  const auto first = groupOf(a), second = groupOf(b);
  return first && first == second;
}

bool JumperGroups::joined(const ResistorEnd& a, const ResistorEnd& b) const {
  const auto first = groupOf(a), second = groupOf(b);
  return first && first == second;
}

std::vector<std::vector<Node>> JumperGroups::joinedPoints() const {
  std::map<std::size_t, std::vector<Node>> groups;
  for (const auto& [item, index] : *m_items)
    if (const auto* node = std::get_if<Node>(&item)) groups[rootOf(index)].push_back(*node);
  std::vector<std::vector<Node>> several;
  for (auto& [root, points] : groups)
    if (points.size() > 1) several.push_back(std::move(points));
  return several;
}

std::vector<PinName> JumperGroups::pinsAt(Node node) const {
  std::vector<PinName> pins;
  const auto group = groupOf(pointOf(m_bridge, node));
  if (!group) return pins;
  for (const auto& [item, index] : *m_items)
    if (const auto* pin = std::get_if<PinName>(&item); pin && rootOf(index) == *group) pins.push_back(*pin);
  return pins;
}

std::vector<JumperGroups::PinGroup> JumperGroups::pinGroups(const std::vector<Pin>& pins) const {
  std::vector<PinGroup> byRoot(m_parent.size());
  for (const auto& [item, index] : *m_items) {
    PinGroup& group = byRoot[rootOf(index)];
    group.group = rootOf(index);
    if (const auto* node = std::get_if<Node>(&item); node && !group.point) group.point = *node;
    if (const auto* end = std::get_if<ResistorEnd>(&item)) group.resistors.push_back(&end->resistor);
  }
  std::vector<PinGroup> groups;
  for (const Pin& pin : pins) groups.push_back(byRoot[*groupOf(pin.name)]);
  return groups;
}

Landing landingOf(const Setup& setup, const Shunt& shunt, const std::vector<Jumper>& jumpers,
                  std::size_t count) {
  JumperGroups groups(setup);
  for (std::size_t k = 0; k < std::min(count, jumpers.size()); ++k) groups.lay(jumpers[k]);
  Landing landing;
  for (const std::size_t end : {0, 1}) {
    const auto points = groups.pointsAt({resistorName(shunt), static_cast<std::uint8_t>(end + 1)});
    if (!points.empty()) landing[end] = points.front();
  }
  return landing;
}

bool landsAsPlanned(const Setup& setup, const Shunt& shunt, const Landing& landing) {
  const Node a = pointOf(setup.bridge, shunt.a), b = pointOf(setup.bridge, shunt.b);
  return (landing[0] == a && landing[1] == b) || (landing[0] == b && landing[1] == a);
}

}  // namespace core
