// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wiring/ohmmeter.h"

#include "core/circuit/node_words.h"
#include "core/units/language.h"

namespace core {

std::string ohmPointName(const OhmPoint& point) {
  if (const auto* node = std::get_if<Node>(&point)) return std::string(nodeWords(*node));
  const auto& end = std::get<ResistorEnd>(point);
  return say("{1} end {2}", {end.resistor, std::to_string(end.end)});
}

}  // namespace core
