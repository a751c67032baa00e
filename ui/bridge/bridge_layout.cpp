// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/bridge_layout.h"

#include <QLineF>
#include <QTransform>
#include <numbers>

namespace ui {
namespace {

using core::LeadRole;
using enum core::Node;

// The height of the excitation's plus side, the signals and the excitation's minus side.
constexpr double plusY = 100, signalY = 240, minusY = 380;
constexpr double textHeight = 16;

/// Where an arm's label lies, seen from the arm.
enum class LabelSide { UpperLeft, UpperRight, LowerLeft, LowerRight };

class Sketch {
 public:
  BridgeLayout layout;

  NodePlace& node(core::Node name) { return layout.nodes[static_cast<std::size_t>(name)]; }

  /// A circle on the instrument's right edge with its name and voltage at its left.
  NodePlace& terminal(core::Node name, QPointF at, double column) {
    NodePlace& place = corner(name, at, column, column);
    place.terminal = true;
    place.nameBox = QRectF(at.x() - 80, at.y() - 19, 72, textHeight);
    place.voltageBox = QRectF(at.x() - 68, at.y() + 3, 60, textHeight);
    return place;
  }

  /// A terminal that shunts reach from above only.
  void upperTerminal(core::Node name, QPointF at, double column) {
    terminal(name, at, column).columnBelow.reset();
  }

  NodePlace& corner(core::Node name, QPointF at, double above, std::optional<double> below) {
    NodePlace& place = node(name);
    place.present = true;
    place.at = at;
    place.columnAbove = above;
    place.columnBelow = below;
    return place;
  }

  void voltage(core::Node name, QPointF offset) {
    node(name).voltageBox = QRectF(node(name).at + offset, QSizeF(60, textHeight));
  }

  void arm(std::size_t index, QPointF begin, QPointF end, LabelSide side) {
    ArmPlace& place = layout.arms[index];
    const bool right = side == LabelSide::UpperRight || side == LabelSide::LowerRight;
    const bool upper = side == LabelSide::UpperLeft || side == LabelSide::UpperRight;
    const QPointF middle = (begin + end) / 2;
    const double width = 100, gap = 17;
    const double left = right ? middle.x() + gap : middle.x() - gap - width;
    const double valueTop = upper ? middle.y() - 11 - textHeight : middle.y() + 11;
    place.begin = begin;
    place.end = end;
    place.labelRight = right;
    place.valueBox = QRectF(left, valueTop, width, textHeight);
    place.strainBox = place.valueBox.translated(0, upper ? -textHeight : textHeight);
    const double half = std::numbers::sqrt2 / 2;
    place.outward = QPointF(right ? half : -half, upper ? -half : half);
  }

  void lead(LeadRole role, QPolygonF route, double labelLeft) {
    const QRectF box(labelLeft, route.front().y() - 19, 58, textHeight);
    LeadPlace lead;
    lead.role = role;
    lead.route = std::move(route);
    lead.valueBox = box;
    layout.leads.push_back(std::move(lead));
  }

  void wire(QPolygonF route) { layout.wires.push_back({std::move(route)}); }
};

// ---- instrument with completion resistors: quarter and half bridges ------------------------------

constexpr double edgeX = 482;                     // terminals
constexpr double gaugeX = 604, gaugeRight = 744;  // upper (or lower) and right corner at the article
constexpr double leftX = 138, innerX = 278;       // left and upper (lower) corner in the instrument
constexpr double leadLabelX = 530;

void completionFrame(Sketch& sketch, double headingX) {
  BridgeLayout& layout = sketch.layout;
  layout.instrument = QRectF(12, 4, edgeX - 12, 408);
  layout.article = QRectF(598, 4, 230, 408);
  layout.instrumentHeading = QRectF(headingX, 8, 112, textHeight);
  layout.excitationBox = QRectF(headingX, 8 + textHeight, 112, textHeight);
  layout.articleHeading = QRectF(620, 8, 180, textHeight);
  layout.source = QPointF(40, signalY);
  sketch.upperTerminal(PPlus, {edgeX, plusY}, 490);
  sketch.terminal(PMinus, {edgeX, minusY}, 524);
  sketch.wire({{edgeX, plusY}, {40, plusY}, {40, minusY}, {edgeX, minusY}});
}

/// Arms 3 and 4 in the instrument; the input lies across the bridge.
void leftHalfInside(Sketch& sketch) {
  completionFrame(sketch, 290);
  const QPointF left(leftX, signalY), upper(innerX, plusY), lower(innerX, minusY);
  sketch.layout.input = QPointF(innerX, signalY);
  sketch.layout.inputBox = QRectF(innerX - 50, signalY + 18, 100, textHeight);
  NodePlace& terminal = sketch.corner(SPlus, left, 84, 84);
  terminal.terminal = true;
  terminal.nameBox = QRectF(left.x() + 22, signalY - 18, 40, textHeight);
  terminal.voltageBox = QRectF(left.x() + 22, signalY + 3, 60, textHeight);
  sketch.corner(Arm3End, left, 84, 84);
  sketch.corner(Arm4Begin, left, 84, 84);
  sketch.corner(Arm4End, upper, innerX, {});
  sketch.corner(Arm3Begin, lower, 66, innerX);
  sketch.arm(2, lower, left, LabelSide::LowerLeft);
  sketch.arm(3, left, upper, LabelSide::UpperLeft);
  sketch.terminal(SMinus, {edgeX, signalY}, 504);
  sketch.wire({left, {edgeX, signalY}});
}

void gauge1(Sketch& sketch, QPointF end, double endColumn) {
  const QPointF begin(gaugeX, plusY);
  sketch.corner(Arm1Begin, begin, gaugeX, {});
  sketch.voltage(Arm1Begin, {9, -18});
  sketch.corner(Arm1End, end, endColumn, endColumn);
  sketch.voltage(Arm1End, {6, 3});
  sketch.arm(0, begin, end, LabelSide::UpperRight);
  sketch.lead(LeadRole::ExcitationPlus, {{edgeX, plusY}, begin}, leadLabelX);
  sketch.lead(LeadRole::SignalMinus, {{edgeX, end.y()}, end}, leadLabelX);
}

void quarterTwoWire(Sketch& sketch) {
  leftHalfInside(sketch);
  gauge1(sketch, {gaugeRight, signalY}, 814);
  const QPointF right(410, signalY), lower(innerX, minusY);
  sketch.corner(Arm2Begin, right, right.x(), right.x());
  sketch.corner(Arm2End, lower, 66, innerX);
  sketch.arm(1, right, lower, LabelSide::UpperLeft);
}

void quarterThreeWire(Sketch& sketch) {
  leftHalfInside(sketch);
  gauge1(sketch, {gaugeRight, signalY}, 814);
  const double returnY = signalY + 40;
  const QPointF begin(378, returnY), lower(innerX, minusY);
  sketch.terminal(Arm2Begin, {edgeX, returnY}, 514);
  sketch.corner(Arm2End, lower, 66, innerX);
  sketch.arm(1, begin, lower, LabelSide::LowerRight);
  sketch.wire({begin, {edgeX, returnY}});
  sketch.lead(LeadRole::Return, {{edgeX, returnY}, {gaugeRight, returnY}, {gaugeRight, signalY}}, leadLabelX);
}

void half(Sketch& sketch) {
  leftHalfInside(sketch);
  gauge1(sketch, {gaugeRight, signalY}, 814);
  const QPointF right(gaugeRight, signalY), lower(gaugeX, minusY);
  sketch.corner(Arm2Begin, right, 814, 814);
  sketch.corner(Arm2End, lower, 592, gaugeX);
  sketch.voltage(Arm2End, {9, 3});
  sketch.arm(1, right, lower, LabelSide::LowerRight);
  sketch.lead(LeadRole::ExcitationMinus, {{edgeX, minusY}, lower}, leadLabelX);
}

/// Arms 1 and 3 outside, 2 and 4 inside: the signal wires cross once, in the instrument.
void halfDiagonal(Sketch& sketch) {
  completionFrame(sketch, 340);
  constexpr double upperY = signalY - 35, lowerY = signalY + 35;
  const QPointF left(leftX, upperY), upper(leftX + upperY - plusY, plusY);
  const QPointF right(300, lowerY), lower(300 - (minusY - lowerY), minusY);
  sketch.layout.input = QPointF(222, signalY);
  sketch.layout.inputBox = QRectF(242, signalY - 8, 96, textHeight);
  sketch.terminal(SMinus, {edgeX, upperY}, 504);
  sketch.terminal(SPlus, {edgeX, lowerY}, 514);
  sketch.wire({left, {372, upperY}, {372, lowerY}, {edgeX, lowerY}});
  sketch.wire({{222, upperY},
               {222, lowerY},
               right,
               {345, lowerY},
               {345, signalY},
               {400, signalY},
               {400, upperY},
               {edgeX, upperY}});
  sketch.corner(Arm4Begin, left, 84, 84);
  sketch.corner(Arm4End, upper, upper.x(), {});
  sketch.corner(Arm2Begin, right, 322, 322);
  sketch.corner(Arm2End, lower, 66, lower.x());
  sketch.arm(3, left, upper, LabelSide::LowerRight);
  sketch.arm(1, right, lower, LabelSide::UpperLeft);

  const double armSpan = upperY - plusY;
  gauge1(sketch, {gaugeX + armSpan, upperY}, 800);
  const QPointF begin(gaugeX + armSpan, minusY), end(gaugeX, lowerY);
  sketch.corner(Arm3Begin, begin, 816, begin.x());
  sketch.voltage(Arm3Begin, {6, 3});
  sketch.corner(Arm3End, end, 592, 592);
  sketch.voltage(Arm3End, {9, -19});
  sketch.arm(2, begin, end, LabelSide::UpperRight);
  sketch.lead(LeadRole::ExcitationMinus, {{edgeX, minusY}, begin}, leadLabelX);
  sketch.lead(LeadRole::SignalPlus, {{edgeX, lowerY}, end}, leadLabelX);
}

// ---- all four arms at the article ------------------------------------------------------------

constexpr double fullEdgeX = 164, fullLeadLabelX = 270;
constexpr double centreX = 580, halfWidth = 140;
constexpr double senseMinusY = 420, signalMinusY = 460;

void fullInstrument(Sketch& sketch) {
  BridgeLayout& layout = sketch.layout;
  layout.instrument = QRectF(12, 4, fullEdgeX - 12, 480);
  layout.article = QRectF(354, 4, 454, 400);
  layout.instrumentHeading = QRectF(20, 8, 138, textHeight);
  layout.excitationBox = QRectF(20, 8 + textHeight, 138, textHeight);
  layout.articleHeading = QRectF(390, 8, 160, textHeight);
  layout.source = QPointF(40, signalY);
  layout.input = QPointF(76, 310);
  layout.inputBox = QRectF(96, 302, 66, textHeight);
  sketch.upperTerminal(PPlus, {fullEdgeX, plusY}, 180);
  sketch.terminal(SPlus, {fullEdgeX, signalY}, 204);
  sketch.terminal(PMinus, {fullEdgeX, minusY}, 216);
  sketch.terminal(SMinus, {fullEdgeX, signalMinusY}, 240);
  sketch.wire({{fullEdgeX, plusY}, {40, plusY}, {40, minusY}, {fullEdgeX, minusY}});
  sketch.wire({{fullEdgeX, signalY}, {76, signalY}, {76, signalMinusY}, {fullEdgeX, signalMinusY}});
}

void senseLeads(Sketch& sketch) {
  const double sensePlusY = 62;
  sketch.upperTerminal(SensePlus, {fullEdgeX, sensePlusY}, 192);
  sketch.terminal(SenseMinus, {fullEdgeX, senseMinusY}, 228);
  sketch.wire({{fullEdgeX, sensePlusY}, {92, sensePlusY}});
  sketch.wire({{fullEdgeX, senseMinusY}, {92, senseMinusY}});
  sketch.lead(LeadRole::SensePlus, {{fullEdgeX, sensePlusY}, {centreX, sensePlusY}, {centreX, plusY}},
              fullLeadLabelX);
  sketch.lead(LeadRole::SenseMinus, {{fullEdgeX, senseMinusY}, {centreX, senseMinusY}, {centreX, minusY}},
              fullLeadLabelX);
}

void full(Sketch& sketch, bool sixWire) {
  fullInstrument(sketch);
  const QPointF upper(centreX, plusY), lower(centreX, minusY);
  const QPointF left(centreX - halfWidth, signalY), right(centreX + halfWidth, signalY);
  // With sense leads the straight way up and down is theirs.
  const double column = sixWire ? centreX - 24 : centreX;
  for (const core::Node name : {Arm4End, Arm1Begin}) sketch.corner(name, upper, column, {});
  for (const core::Node name : {Arm2End, Arm3Begin}) sketch.corner(name, lower, 362, column);
  for (const core::Node name : {Arm3End, Arm4Begin}) sketch.corner(name, left, 374, 374);
  for (const core::Node name : {Arm1End, Arm2Begin}) sketch.corner(name, right, 794, 794);
  sketch.voltage(Arm1Begin, {9, -18});
  sketch.voltage(Arm2End, {9, 3});
  sketch.voltage(Arm3End, {-62, 3});
  sketch.voltage(Arm1End, {6, 3});
  sketch.arm(0, upper, right, LabelSide::UpperRight);
  sketch.arm(1, right, lower, LabelSide::LowerRight);
  sketch.arm(2, lower, left, LabelSide::LowerLeft);
  sketch.arm(3, left, upper, LabelSide::UpperLeft);
  sketch.lead(LeadRole::ExcitationPlus, {{fullEdgeX, plusY}, upper}, fullLeadLabelX);
  sketch.lead(LeadRole::ExcitationMinus, {{fullEdgeX, minusY}, lower}, fullLeadLabelX);
  sketch.lead(LeadRole::SignalPlus, {{fullEdgeX, signalY}, left}, fullLeadLabelX);
  sketch.lead(LeadRole::SignalMinus, {{fullEdgeX, signalMinusY}, {826, signalMinusY}, {826, signalY}, right},
              fullLeadLabelX);
  if (sixWire) senseLeads(sketch);
}

}  // namespace

BridgeLayout layoutOf(const core::Bridge& bridge, const core::Instrument&) {
  Sketch sketch;
  switch (bridge.type) {
    case core::BridgeType::QuarterTwoWire:
      quarterTwoWire(sketch);
      break;
    case core::BridgeType::QuarterThreeWire:
      quarterThreeWire(sketch);
      break;
    case core::BridgeType::HalfBending:
    case core::BridgeType::HalfPoisson:
      half(sketch);
      break;
    case core::BridgeType::HalfDiagonal:
      halfDiagonal(sketch);
      break;
    default:
      full(sketch, core::hasNode(bridge, SensePlus));
  }
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
  const QPointF middle = line.center();
  const QTransform turn = QTransform::fromTranslate(middle.x(), middle.y()).rotate(-line.angle());
  const QRectF body(-armBodyLength / 2, -armBodyWidth / 2, armBodyLength, armBodyWidth);
  return turn.map(QPolygonF(body.adjusted(-margin, -margin, margin, margin)));
}

}  // namespace ui
