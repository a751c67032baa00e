// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFontMetricsF>
#include <QPainterPath>
#include <QRectF>
#include <QString>
#include <map>
#include <optional>
#include <vector>

#include "core/wiring/wiring_rules.h"

namespace ui {

/// What a drawing of the wiring shows: the pins, and the jumpers of one shunt.
struct WiringPicture {
  core::Wiring wiring;
  std::vector<core::Jumper> jumpers;
  std::map<core::PinName, core::WiringSeverity> marks;  ///< the worst that is wrong with a pin
  std::vector<core::PinName> faultPins;                 ///< of the chosen fault
  bool faultBridges = false;                            ///< the chosen fault bridges its pins
  std::optional<std::size_t> chosenPin;                 ///< of `wiring`
};

/// The marks that `faults` put on pins, of shunt `shunt` and of the pins themselves.
std::map<core::PinName, core::WiringSeverity> marksOf(const std::vector<core::WiringFault>& faults,
                                                      std::optional<std::size_t> shunt);

/// A pin in the drawing: its cell at the mating side of the connector, and what it leads to behind it.
struct PinPlace {
  std::optional<std::size_t> pin;  ///< of the wiring; none: a jumper leads to it, but the list lacks it
  core::PinName name;
  QString cellText, useText;  ///< as they fit
  QRectF row, cell, use, mark;
  QPointF joint;  ///< where jumpers end
  bool left = true;
};

struct ConnectorPlace {
  QString title;
  QRectF box, head;
  bool left = true;
  bool listed = true;  ///< false for the pins that the list lacks
};

struct JumperPlace {
  QPainterPath path;
  QPointF middle;
  std::size_t from = 0, to = 0;  ///< places of its pins
};

/// Connectors as two columns that face each other, places of the bridge at the left and resistors at the
/// right, jumpers between them.
struct WiringLayout {
  std::vector<ConnectorPlace> connectors;
  std::vector<PinPlace> pins;
  std::vector<JumperPlace> jumpers;  ///< in the order of the shunt's
  QSizeF size;
};

/// Lays `picture` out in `width`, or in what it needs when that is more.
WiringLayout layOut(const WiringPicture& picture, const QFontMetricsF& metrics, double width);

}  // namespace ui
