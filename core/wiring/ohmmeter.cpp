// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wiring/ohmmeter.h"

namespace core {

std::string ohmPointName(const OhmPoint& point) {
  if (const auto* node = std::get_if<Node>(&point)) return std::string(nodeName(*node));
  const auto& end = std::get<ResistorEnd>(point);
  return end.resistor + " end " + std::to_string(end.end);
}

}  // namespace core
