// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/bridge_look.h"

#include "ui/state_file.h"

namespace ui {

BridgeLook rememberedBridgeLook() {
  QSettings state = stateFile();
  state.beginGroup("bridge");
  BridgeLook look;
  if (state.value("symbols").toString() == "ieee315") look.symbols = Symbols::Ieee315;
  const QString currents = state.value("currents").toString();
  if (currents == "off") look.currents = FlowStyle::Off;
  if (currents == "dots") look.currents = FlowStyle::Dots;
  return look;
}

void rememberBridgeLook(const BridgeLook& look) {
  QSettings state = stateFile();
  state.beginGroup("bridge");
  state.setValue("symbols", look.symbols == Symbols::Ieee315 ? "ieee315" : "iec60617");
  state.setValue("currents", look.currents == FlowStyle::Off    ? "off"
                             : look.currents == FlowStyle::Dots ? "dots"
                                                                : "width");
}

}  // namespace ui
