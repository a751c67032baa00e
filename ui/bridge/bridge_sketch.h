// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "ui/bridge/bridge_layout.h"

namespace ui {

/// What the layouts of all templates are made with. Places go into `layout`; what a bridge has not got takes
/// no room.
class BridgeSketch {
 public:
  BridgeSketch(const core::Bridge& bridge, const core::Instrument& instrument);

  BridgeLayout layout;

  const core::Bridge& bridge;
  const core::Instrument& instrument;

  static constexpr double textHeight = 17, nameHeight = 19;
  static constexpr double voltageWidth = 70, ohmWidth = 72, balanceWidth = 104, valueWidth = 84;
  static constexpr double leadTextWidth = 66;
  static constexpr double plateGap = 8;  ///< between a terminal and its texts

  bool leaksAcross(std::size_t arm) const { return bridge.leaks[arm].across.has_value(); }
  bool leaksToStructure(std::size_t arm) const { return bridge.leaks[arm].toStructure.has_value(); }
  bool anyLeakAcross() const;
  bool anyLeakToStructure() const;
  bool balanced(core::BalanceKind kind) const { return instrument.balance.kind == kind; }
  bool isSpecialInput() const {
    return instrument.inputResistance.has_value() || bridge.hookup.signalReversed;
  }

  // ---- places

  NodePlace& node(core::Node name) { return layout.nodes[static_cast<std::size_t>(name)]; }
  NodePlace& corner(core::Node name, QPointF at, double above, std::optional<double> below);
  /// A circle on the instrument's right edge with its name and voltage at its left.
  NodePlace& terminal(core::Node name, QPointF at, double above, std::optional<double> below);
  /// The voltage of a node, from `offset` to the right; to the left when it is negative.
  void voltage(core::Node name, QPointF offset);

  /// An arm whose texts lie towards (right, down), each 1 or -1; their nearest edge is `rise` above or below
  /// the arm's middle. A leak over the arm lies on the same side, one to the structure on the other, level.
  struct Side {
    int right = 1, down = -1;
    double rise = 13;
    bool noteUp = false;  ///< the leak to the structure has its value above it
  };
  void arm(std::size_t index, QPointF begin, QPointF end, Side side);

  void wire(QPolygonF route, WireCurrent current = WireCurrent::None, std::size_t index = 0);
  void wire(QPolygonF route, core::LeadRole role) {
    wire(std::move(route), WireCurrent::Lead, static_cast<std::size_t>(role));
  }

  // ---- leads

  /// Between a plug at x `edge` and the article: columns of shunts, then exchanged leads cross, then come the
  /// resistors, breaks, touching leads. Returns where it ends.
  double leadZone(double edge, double columns);
  /// x of the k-th column beside the plug.
  double column(int k) const { return m_edge + 13 + 12 * k; }
  /// On from the end of the zone by `rest`.
  void lead(core::LeadRole role, double laneY, const QPolygonF& rest);
  /// When all leads are there.
  void touches();

  // ---- instrument

  void source(QPointF centre);
  /// The measuring input between S+ and S-, centred at `centre` on the line from `plus` to `minus`. When the
  /// wires are exchanged, it is moved by `lift` and they cross. Its resistance lies `shift` x lift from the
  /// line.
  void input(QPointF plus, QPointF minus, QPointF centre, QPointF lift, double shift, QRectF valueBox);
  void grounding(QPointF from);
  /// Of a balance network over the excitation, between wires at `top` and `bottom`, to S+ at `sPlus`.
  void parallelBalance(double x, double top, double bottom, QPointF sPlus);
  /// Of one between arms 3 and 4, upright, its wiper is at `sPlus`, beside it.
  void seriesBalance(QPointF middle, QPointF sPlus, QRectF valueBox);

  static constexpr double halfTrack = 26;

 private:
  void strainTexts(ArmPlace& place, std::size_t index, QPointF corner, bool right);
  void leakAcross(std::size_t index, const ArmPlace& place, double distance);
  void leakToStructure(std::size_t index, const ArmPlace& place, Side side);
  double wiperShare() const;

  std::vector<core::Wire> m_wires;
  double m_edge = 0, m_crossFrom = 0, m_crossTo = 0, m_body = 0, m_gap = 0, m_touch = 0, m_leadsEnd = 0;
};

/// A rectangle `length` x `width`, its length along the unit vector `along`.
QPolygonF turnedBody(QPointF centre, QPointF along, double length, double width);

void sketchWithInnerHalf(BridgeSketch& sketch);  ///< quarter and half bridges with arms 3 and 4 inside
void sketchDiagonal(BridgeSketch& sketch);
void sketchFull(BridgeSketch& sketch);

}  // namespace ui
