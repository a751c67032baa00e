// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "core/document/document.h"
#include "ui/bridge/bridge_parts.h"

namespace ui {

/// Something that can be added, or cannot now.
struct PartAddition {
  QString name;     ///< of its action: "addShunt"
  QString text;     ///< "Shunt over arm 1"
  QString undo;     ///< "Add shunt"
  QString refusal;  ///< why it cannot be added; empty: it can
  core::Channel after;
  std::optional<BridgePart> added;  ///< the new part when it has a number to be typed
};

/// What can be added at `parts`: at their arms, and to the instrument.
std::vector<PartAddition> additionsAt(const core::Channel& channel, const BridgePicture& picture,
                                      const std::vector<BridgePart>& parts);

/// What removing comes to.
struct PartRemoval {
  core::Channel after;
  QString undo;     ///< "Remove shunt", "Remove 3 parts"; empty: nothing can be removed
  QString refusal;  ///< why some part cannot be removed, or of several, what stays
  QString said;     ///< "Removed R1; 2 steps lost it."
};

PartRemoval removalOf(const core::Channel& channel, const std::vector<BridgePart>& parts);

}  // namespace ui
