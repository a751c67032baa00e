// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>

#include "core/circuit/node.h"

namespace core {

/// The node as tables and sentences call it in the present language; files keep `nodeName`.
std::string_view nodeWords(Node node);

/// The node that is called so in the present language or in files. Without one: nothing.
std::optional<Node> nodeFromWords(std::string_view words);

}  // namespace core
