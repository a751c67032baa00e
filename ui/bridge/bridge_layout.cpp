// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/bridge_layout.h"

#include <QLineF>

#include "ui/bridge/bridge_sketch.h"

namespace ui {

BridgeLayout layoutOf(const core::Bridge& bridge, const core::Instrument& instrument) {
  using enum core::Node;
  BridgeSketch sketch(bridge, instrument);
  switch (bridge.type) {
    case core::BridgeType::QuarterTwoWire:
    case core::BridgeType::QuarterThreeWire:
    case core::BridgeType::HalfBending:
    case core::BridgeType::HalfPoisson:
      sketchWithInnerHalf(sketch);
      break;
    case core::BridgeType::HalfDiagonal:
      sketchDiagonal(sketch);
      break;
    default:
      sketchFull(sketch);
  }
  sketch.touches();
  // A shunt left on a sense terminal that is gone is drawn at the excitation's, marked as faulty.
  for (const auto& [sense, supply] : {std::pair(SensePlus, PPlus), std::pair(SenseMinus, PMinus)})
    if (!sketch.node(sense).present) {
      sketch.node(sense) = sketch.node(supply);
      sketch.node(sense).present = false;
      sketch.node(sense).nameBox = sketch.node(sense).voltageBox = QRectF();
    }
  return std::move(sketch.layout);
}

QPolygonF armBody(const ArmPlace& arm, double margin) {
  const QLineF line(arm.begin, arm.end);
  return turnedBody(line.center(), (arm.end - arm.begin) / line.length(), armBodyLength + 2 * margin,
                    armBodyWidth + 2 * margin);
}

}  // namespace ui
