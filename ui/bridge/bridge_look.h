// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/bridge/bridge_picture.h"
#include "ui/bridge/flow_painter.h"

namespace ui {

/// How the bridge is drawn; the user's own choice, not the document's.
struct BridgeLook {
  Symbols symbols = Symbols::Iec60617;
  FlowStyle currents = FlowStyle::Width;  ///< nothing moves before the user asks for it

  friend bool operator==(const BridgeLook&, const BridgeLook&) = default;
};

BridgeLook rememberedBridgeLook();
void rememberBridgeLook(const BridgeLook& look);

}  // namespace ui
