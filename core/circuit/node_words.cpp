// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/circuit/node_words.h"

#include "core/units/language.h"

namespace core {

std::string_view nodeWords(Node node) { return sayName(nodeName(node)); }

std::optional<Node> nodeFromWords(std::string_view words) {
  for (const Node node : allNodes())
    if (nodeWords(node) == words) return node;
  return nodeFromName(words);
}

}  // namespace core
