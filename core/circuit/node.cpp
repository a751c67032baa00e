// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/circuit/node.h"

#include <algorithm>

#include "core/units/language.h"

namespace core {
namespace {

constexpr std::array<std::string_view, nodeCount> names = {"P+",
                                                           "P-",
                                                           "S+",
                                                           "S-",
                                                           "sense+",
                                                           "sense-",
                                                           sayLater("arm 1 begin"),
                                                           sayLater("arm 1 end"),
                                                           sayLater("arm 2 begin"),
                                                           sayLater("arm 2 end"),
                                                           sayLater("arm 3 begin"),
                                                           sayLater("arm 3 end"),
                                                           sayLater("arm 4 begin"),
                                                           sayLater("arm 4 end")};

}  // namespace

std::array<Node, nodeCount> allNodes() {
  std::array<Node, nodeCount> nodes{};
  for (std::size_t i = 0; i < nodeCount; ++i) nodes[i] = static_cast<Node>(i);
  return nodes;
}

std::string_view nodeName(Node node) { return names[static_cast<std::size_t>(node)]; }

std::optional<Node> nodeFromName(std::string_view name) {
  const auto found = std::find(names.begin(), names.end(), name);
  if (found == names.end()) return std::nullopt;
  return static_cast<Node>(found - names.begin());
}

}  // namespace core
