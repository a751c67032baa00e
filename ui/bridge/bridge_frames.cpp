// SPDX-License-Identifier: GPL-3.0-or-later
// Where everything lies, a function a kind of bridge.
#include <algorithm>
#include <utility>

#include "ui/bridge/bridge_sketch.h"

namespace ui {
namespace {

using core::BalanceKind;
using core::LeadRole;
using enum core::Node;

constexpr double halfHeight = 104;  ///< of the diamond
constexpr double top = 48;          ///< of it, below the headings
constexpr double edgeTexts = 82;    ///< what a terminal's texts take up at its left

/// Leaks to the structure lie within the diamond and need room there.
double halfWidth(const BridgeSketch& sketch, double plain) {
  return sketch.anyLeakToStructure() ? std::max(plain, 180.0) : plain;
}

/// What an arm with its texts and leaks takes up.
QRectF extent(const BridgeSketch& sketch, std::size_t index) {
  const ArmPlace& arm = sketch.layout.arms[index];
  QRectF box = armBody(arm).boundingRect() | arm.nameBox | arm.valueBox;
  if (!arm.strainBox.isEmpty()) box |= arm.strainBox;
  for (const LeakPlace& leak : sketch.layout.leaks)
    if (leak.arm == index) {
      box |= leak.valueBox;
      if (leak.toStructure) box |= QRectF(leak.route.back() - QPointF(13, 10), QSizeF(26, 20));
    }
  return box;
}

LeadRole leadAt(const BridgeSketch& sketch, core::Node terminal, LeadRole usual) {
  for (const core::Wire& wire : core::wiresOf(sketch.bridge))
    if (wire.from == terminal) return wire.role;
  return usual;
}

/// Headings lie where no shunt's column runs.
void outline(BridgeSketch& sketch, QRectF instrument, QRectF article, double heading, double articleHeading) {
  BridgeLayout& layout = sketch.layout;
  layout.instrument = instrument;
  layout.article = article;
  layout.instrumentHeading = QRectF(heading, 3, 82, BridgeSketch::textHeight);
  layout.excitationBox = QRectF(heading, 3 + BridgeSketch::textHeight, 56, BridgeSketch::textHeight);
  layout.articleHeading = QRectF(articleHeading, 3, 120, BridgeSketch::textHeight);
}

/// The source's wires from the corners at x `plus` and `minus`, by way of x `left`.
void sourceLoop(BridgeSketch& sketch, double left, QPointF plus, QPointF minus) {
  sketch.source({left, (plus.y() + minus.y()) / 2});
  QPolygonF loop{minus, {left, minus.y()}, {left, plus.y()}, plus};
  if (sketch.bridge.hookup.excitationReversed) std::reverse(loop.begin(), loop.end());
  sketch.wire(std::move(loop), WireCurrent::Source);
}

// ---- arms 3 and 4 inside -----------------------------------------------------------------------

/// Quarter and half bridges: the left half of the diamond in the instrument, gauges at the article.
class InnerHalf {
 public:
  explicit InnerHalf(BridgeSketch& sketch)
      : m_sketch(sketch),
        m_type(sketch.bridge.type),
        m_half(halfWidth(sketch, 118)),
        m_series(sketch.balanced(BalanceKind::Series)),
        m_special(sketch.isSpecialInput() || m_series) {}

  void draw() {
    leftArms();
    left();
    m_edge = m_centre + (m_special ? 180 : 104);
    if (m_type == core::BridgeType::QuarterTwoWire || three()) arm2Inside();
    input();
    terminals();
    article();
    const double bottom = minusY + 30;
    outline(m_sketch, QRectF(m_source - 24, 0, m_edge - m_source + 24, bottom),
            QRectF(m_gauge - 26, 0, m_columnRight + 12 - m_gauge + 26, bottom),
            m_centre + (m_series ? 22 : 8), m_gauge + 10);
  }

 private:
  static constexpr double plusY = top, centreY = top + halfHeight, minusY = top + 2 * halfHeight;

  bool three() const { return m_type == core::BridgeType::QuarterThreeWire; }
  bool isHalf() const { return m_type != core::BridgeType::QuarterTwoWire && !three(); }
  double signalY() const { return three() ? plusY + 2 * halfHeight / 3 : centreY; }
  double returnY() const { return plusY + 4 * halfHeight / 3; }

  void leftArms() {
    const double start = m_series ? BridgeSketch::halfTrack : 0;
    const double rise = m_series ? 0 : 13;  // shorter arms
    m_sPlus = QPointF(m_series ? 32 : 0, centreY);
    m_centre = m_half + m_sPlus.x();
    m_sketch.arm(2, {m_centre, minusY}, {0, centreY + start}, {-1, 1, rise, true});
    m_sketch.arm(3, {0, centreY - start}, {m_centre, plusY}, {-1, -1, rise});
    if (m_series) m_sketch.seriesBalance({0, centreY}, m_sPlus, QRectF(-10 - 72, centreY - 8, 72, 17));
  }

  /// Source and what lies between it and the arms.
  void left() {
    const double texts = std::min(extent(m_sketch, 2).left(), extent(m_sketch, 3).left());
    m_columnLeft = (m_series ? std::min(texts, -84.0) : texts) - 8;
    m_source = m_columnLeft - 36;
    if (m_sketch.balanced(BalanceKind::Parallel)) {
      const double track = m_columnLeft - 128;
      m_sketch.parallelBalance(track, plusY, minusY, m_sPlus);
      m_source = track - 34;
    }
    sourceLoop(m_sketch, m_source, {m_centre, plusY}, {m_centre, minusY});
    const bool plus = m_sketch.instrument.grounding == core::Grounding::PPlus;
    m_sketch.grounding({m_source + 18, plus ? plusY : minusY});
  }

  void arm2Inside() {
    const QPointF right(m_centre + m_half, centreY);
    m_sketch.arm(1, right, {m_centre, minusY}, {1, 1, 13, true});
    m_edge = std::max({m_edge, right.x() + (three() ? 12 : 8) + edgeTexts,
                       extent(m_sketch, 1).right() + (m_sketch.leaksAcross(1) ? edgeTexts : 46)});
    if (three() && m_sketch.instrument.inputResistance) m_edge = std::max(m_edge, m_centre + 184 + edgeTexts);
    if (three()) {
      const double turn = right.x() + 12;
      m_sketch.wire({{m_edge, returnY()}, {turn, returnY()}, {turn, centreY}, right}, WireCurrent::Arm, 1);
    } else {
      m_sketch.wire({{m_edge, centreY}, right}, WireCurrent::Arm, 1);
    }
  }

  void input() {
    const QPointF up(0, -1);
    const double x = m_centre + (m_special ? 62 : 0);
    const double shift = m_sketch.bridge.hookup.signalReversed ? 64 : 26;
    const double end = isHalf() ? m_edge : m_centre + m_half;
    if (!three()) {
      const QRectF box(x - 33, centreY - shift - 9 - BridgeSketch::textHeight, 72, BridgeSketch::textHeight);
      return m_sketch.input(m_sPlus, {end, centreY}, {x, centreY}, up, shift, box);
    }
    const double turn = m_centre + (m_special ? 34 : 42);
    const QPointF low(turn, centreY), high(turn, signalY()), terminal(m_edge, signalY());
    if (!m_special) {
      m_sketch.input(m_sPlus, low, {x, centreY}, up, shift, {});
      return m_sketch.wire({low, high, terminal}, WireCurrent::Input);
    }
    m_sketch.wire({m_sPlus, low, high}, WireCurrent::Input);
    m_sketch.input(high, terminal, {m_centre + 82, high.y()}, up, -26,
                   QRectF(m_centre + 116, centreY - 27, 72, BridgeSketch::textHeight));
  }

  void terminals() {
    BridgeSketch& s = m_sketch;
    m_end = s.leadZone(m_edge, three() ? 3 : 2);
    const double column = m_series ? m_centre + 14 : m_columnLeft;
    NodePlace& sPlus = s.corner(SPlus, m_sPlus, column, column);
    const double wedge = m_half > 120 ? 38 : 31;
    sPlus.terminal = true;
    sPlus.nameBox =
        QRectF(m_sPlus + QPointF(wedge, -1 - BridgeSketch::nameHeight), QSizeF(30, BridgeSketch::nameHeight));
    sPlus.voltageBox =
        QRectF(m_sPlus + QPointF(wedge, 2.5), QSizeF(BridgeSketch::voltageWidth, BridgeSketch::textHeight));
    sPlus.stubAbove = sPlus.stubBelow = !m_series && !s.balanced(BalanceKind::Parallel);
    s.node(Arm3End) = s.node(Arm4Begin) = sPlus;
    s.node(Arm3End).terminal = s.node(Arm4Begin).terminal = false;
    for (const core::Node name : {Arm3End, Arm4Begin})
      s.node(name).voltageBox = s.node(name).nameBox = QRectF();
    s.terminal(PPlus, {m_edge, plusY}, m_centre, {});
    s.corner(Arm4End, {m_centre, plusY}, m_centre, {});
    s.terminal(SMinus, {m_edge, signalY()}, s.column(0), s.column(0));
    s.terminal(PMinus, {m_edge, minusY}, s.column(three() ? 2 : 1), m_centre).stubAbove = !isHalf();
    s.corner(Arm3Begin, {m_centre, minusY}, s.column(three() ? 2 : 1), m_centre).stubAbove = !isHalf();
    s.wire({{m_centre, plusY}, {m_edge, plusY}}, leadAt(s, PPlus, LeadRole::ExcitationPlus));
    if (isHalf())
      return s.wire({{m_centre, minusY}, {m_edge, minusY}}, leadAt(s, PMinus, LeadRole::ExcitationMinus));
    s.wire({{m_centre, minusY}, {m_edge, minusY}});
    s.corner(Arm2End, {m_centre, minusY}, s.column(three() ? 2 : 1), m_centre).stubAbove = true;
    if (three()) {
      s.terminal(Arm2Begin, {m_edge, returnY()}, s.column(1), s.column(1));
    } else {
      s.corner(Arm2Begin, {m_centre + m_half, centreY}, s.column(0), s.column(0));
    }
  }

  void article() {
    BridgeSketch& s = m_sketch;
    const double half = halfWidth(s, 104);
    const double turn = m_end + 6;
    m_gauge = m_end + (three() ? 26 : 18) + (s.anyLeakToStructure() ? 12 : 0);
    const QPointF upper(m_gauge, plusY), right(m_gauge + half, centreY), lower(m_gauge, minusY);
    s.arm(0, upper, right, {1, -1});
    double texts = extent(s, 0).right();
    s.corner(Arm1Begin, upper, m_gauge, {});
    s.voltage(Arm1Begin, {9, -20});
    s.lead(LeadRole::ExcitationPlus, plusY, {upper});
    if (three())
      s.lead(LeadRole::SignalMinus, signalY(), {{turn, signalY()}, {turn, centreY}, right});
    else
      s.lead(LeadRole::SignalMinus, centreY, {right});
    if (three()) s.lead(LeadRole::Return, returnY(), {{right.x(), returnY()}, right});
    if (isHalf()) {
      s.arm(1, right, lower, {1, 1, 13, true});
      texts = std::max(texts, extent(s, 1).right());
      s.corner(Arm2End, lower, m_gauge - 14, m_gauge);
      s.voltage(Arm2End, {9, 4});
      s.lead(LeadRole::ExcitationMinus, minusY, {lower});
    }
    m_columnRight = std::max(texts, right.x() + 8 + 70) + 10;
    NodePlace& signal = s.corner(Arm1End, right, m_columnRight, m_columnRight);
    signal.stubAbove = signal.stubBelow = true;
    s.voltage(Arm1End, {8, 4});
    if (isHalf()) {
      s.node(Arm2Begin) = signal;
      s.node(Arm2Begin).voltageBox = QRectF();
    }
  }

  BridgeSketch& m_sketch;
  core::BridgeType m_type;
  double m_half;  ///< width of the half within the instrument
  bool m_series, m_special;
  QPointF m_sPlus;
  double m_centre = 0, m_columnLeft = 0, m_source = 0, m_edge = 0, m_end = 0, m_gauge = 0, m_columnRight = 0;
};

// ---- arms 1 and 3 outside, 2 and 4 inside ------------------------------------------------------

/// The signal wires cross once, in the instrument.
class Diagonal {
 public:
  explicit Diagonal(BridgeSketch& sketch)
      : m_sketch(sketch), m_series(sketch.balanced(BalanceKind::Series)) {}

  void draw() {
    instrument();
    signalWires();
    terminals();
    article();
    const double bottom = minusY + 30;
    outline(m_sketch, QRectF(m_source - 24, 0, m_edge - m_source + 24, bottom),
            QRectF(m_gauge - 44, 0, m_columnRight + 24 - m_gauge + 44, bottom), run + 10, m_gauge + 84);
  }

 private:
  static constexpr double plusY = top, minusY = top + 2 * halfHeight;
  static constexpr double upperY = top + 2 * halfHeight / 3, lowerY = top + 4 * halfHeight / 3;
  static constexpr double centreY = top + halfHeight, run = 100;

  void instrument() {
    BridgeSketch& s = m_sketch;
    m_sPlus = QPointF(m_series ? 40 : 0, upperY);
    m_input = m_sPlus.x() + 62;
    s.arm(3, {0, upperY}, {run, plusY}, {1, 1, -4, true});
    m_right = extent(s, 3).right() + 14;
    if (s.instrument.inputResistance) m_right = std::max(m_right, m_input + 112);
    s.arm(1, {m_right, lowerY}, {m_right - run, minusY}, {-1, -1, -4});
    m_source = std::min(-12.0, extent(s, 3).left()) - 40;
    if (m_series) {
      s.seriesBalance({0, upperY + BridgeSketch::halfTrack}, m_sPlus, QRectF(-82, upperY + 16, 72, 17));
      m_source = std::min(m_source, -82.0 - 24);
    }
    if (s.balanced(BalanceKind::Parallel)) {
      const double track = std::min(-8.0, extent(s, 3).left()) - 126;
      s.parallelBalance(track, plusY, minusY, m_sPlus);
      m_source = track - 34;
    }
    sourceLoop(s, m_source, {run, plusY}, {m_right - run, minusY});
    s.grounding({m_source + 18, s.instrument.grounding == core::Grounding::PPlus ? plusY : minusY});
  }

  void signalWires() {
    BridgeSketch& s = m_sketch;
    const QPointF right(m_right, lowerY);
    m_turn = m_right + 44;
    m_edge = m_turn + 36 + edgeTexts;
    s.input({m_input, upperY}, {m_input, lowerY}, {m_input, centreY}, {-1, 0}, -26,
            QRectF(m_input + 36, centreY - 8.5, 72, BridgeSketch::textHeight));
    s.wire({{m_input, lowerY}, right}, WireCurrent::Input);
    s.wire({m_sPlus, {m_turn + 16, upperY}, {m_turn + 16, lowerY}, {m_edge, lowerY}},
           leadAt(s, SPlus, LeadRole::SignalPlus));
    s.wire({right,
            {m_turn, lowerY},
            {m_turn, centreY},
            {m_turn + 32, centreY},
            {m_turn + 32, upperY},
            {m_edge, upperY}},
           leadAt(s, SMinus, LeadRole::SignalMinus));
  }

  void terminals() {
    BridgeSketch& s = m_sketch;
    m_end = s.leadZone(m_edge, 3);
    s.terminal(PPlus, {m_edge, plusY}, run, {});
    s.corner(Arm4End, {run, plusY}, run, {});
    s.terminal(SMinus, {m_edge, upperY}, s.column(0), s.column(0));
    s.terminal(SPlus, {m_edge, lowerY}, s.column(1), s.column(1));
    s.terminal(PMinus, {m_edge, minusY}, s.column(2), m_right - run);
    s.corner(Arm2End, {m_right - run, minusY}, s.column(2), m_right - run);
    s.corner(Arm4Begin, m_sPlus, m_turn + 16, m_turn + 16);
    s.corner(Arm2Begin, {m_right, lowerY}, m_right + 30, m_right + 30);
    s.wire({{run, plusY}, {m_edge, plusY}}, leadAt(s, PPlus, LeadRole::ExcitationPlus));
    s.wire({{m_right - run, minusY}, {m_edge, minusY}}, leadAt(s, PMinus, LeadRole::ExcitationMinus));
  }

  void article() {
    BridgeSketch& s = m_sketch;
    m_gauge = m_end + 46;
    const QPointF upper(m_gauge, plusY), signal(m_gauge + run, upperY);
    const QPointF lower(m_gauge + run, minusY), back(m_gauge, lowerY);
    s.arm(0, upper, signal, {1, -1, -2});
    s.arm(2, lower, back, {1, -1, -2});
    m_columnRight = std::max({extent(s, 0).right(), extent(s, 2).right(), signal.x() + 80}) + 10;
    s.corner(Arm1Begin, upper, m_gauge, {});
    s.voltage(Arm1Begin, {9, s.leaksAcross(0) ? -38.0 : -20.0});
    s.corner(Arm1End, signal, m_columnRight, m_columnRight);
    s.node(Arm1End).stubAbove = s.node(Arm1End).stubBelow = true;
    s.voltage(Arm1End, {8, 4});
    s.corner(Arm3Begin, lower, m_columnRight + 12, lower.x()).stubAbove = true;
    s.voltage(Arm3Begin, {9, 4});
    s.corner(Arm3End, back, m_gauge - 36, m_gauge - 36);
    s.voltage(Arm3End, {14, s.leaksAcross(2) ? -40.0 : -20.0});
    s.lead(LeadRole::ExcitationPlus, plusY, {upper});
    s.lead(LeadRole::SignalMinus, upperY, {signal});
    s.lead(LeadRole::SignalPlus, lowerY, {back});
    s.lead(LeadRole::ExcitationMinus, minusY, {lower});
    if (!m_series) return;
    const QLineF arm(back, lower);
    s.layout.balance->farPart =
        turnedBody(arm.pointAt(18 / arm.length()), (lower - back) / arm.length(), 24, 12);
  }

  BridgeSketch& m_sketch;
  bool m_series;
  QPointF m_sPlus;
  double m_input = 0, m_right = 0, m_source = 0, m_turn = 0, m_edge = 0, m_end = 0, m_gauge = 0,
         m_columnRight = 0;
};

// ---- all four arms at the article --------------------------------------------------------------

class Full {
 public:
  explicit Full(BridgeSketch& sketch)
      : m_sketch(sketch),
        m_six(core::hasNode(sketch.bridge, SensePlus)),
        m_plusY(m_six ? top + 60 : top),
        m_centreY(m_plusY + halfHeight),
        m_minusY(m_plusY + 2 * halfHeight),
        m_pitch(m_six ? 48 : 78) {}

  void draw() {
    article();
    const double edge = m_columnFar - 12 - 8 - 12 * (m_six ? 4 : 2) - m_sketch.leadZone(0, m_six ? 5 : 3);
    m_end = m_sketch.leadZone(edge, m_six ? 5 : 3);
    terminals(edge);
    leads();
    instrument(edge);
    const double bottom = std::max(m_minusY + (m_six ? 54 : 26) + 14, laneY(m_six ? 5 : 3) + 26);
    outline(m_sketch, QRectF(m_source - 24, 0, edge - m_source + 24, bottom),
            QRectF(m_columnFar - 12, 0, m_signalRight + 12 - m_columnFar + 12, bottom), m_source + 10,
            m_column + 10);
  }

 private:
  /// Of the k-th terminal: sense+ with six wires, P+, S+, P-, sense- with six wires, S-.
  double laneY(int k) const { return (m_six ? m_plusY - m_pitch : m_plusY) + k * m_pitch; }
  double plusLane() const { return m_plusY; }
  double signalLane() const { return m_plusY + m_pitch; }
  double minusLane() const { return m_plusY + 2 * m_pitch; }

  void article() {
    BridgeSketch& s = m_sketch;
    const double half = halfWidth(s, 104);
    const bool series = s.balanced(BalanceKind::Series);
    const double start = series ? BridgeSketch::halfTrack : 0, rise = series ? 0 : 13;
    const QPointF upper(0, m_plusY), lower(0, m_minusY), right(half, m_centreY);
    const QPointF left(series ? -half - 32 : -half, m_centreY);
    s.arm(0, upper, right, {1, -1});
    s.arm(1, right, lower, {1, 1, 13, true});
    s.arm(2, lower, {-half, m_centreY + start}, {-1, 1, rise, true});
    s.arm(3, {-half, m_centreY - start}, upper, {-1, -1, rise});
    if (series) s.seriesBalance({-half, m_centreY}, left, QRectF(-half + 14, m_centreY + 10, 72, 17));
    double texts = std::min(extent(s, 2).left(), extent(s, 3).left());
    if (series) texts = std::min(texts, left.x());
    m_column = texts - 8;
    m_columnFar = m_column - 12;
    const double rightTexts = std::max(extent(s, 0).right(), extent(s, 1).right());
    m_signalRight = rightTexts + 22;
    // With sense leads the straight way up and down is theirs.
    const double centre = m_six ? -14 : 0;
    for (const core::Node name : {Arm4End, Arm1Begin}) s.corner(name, upper, centre, {});
    for (const core::Node name : {Arm2End, Arm3Begin}) s.corner(name, lower, m_columnFar, centre);
    for (const core::Node name : {Arm3End, Arm4Begin}) s.corner(name, left, m_column, m_column);
    for (const core::Node name : {Arm1End, Arm2Begin}) s.corner(name, right, m_signalRight, rightTexts + 10);
    s.voltage(Arm1Begin, {9, -20});
    s.voltage(Arm2End, {9, 4});
    s.voltage(Arm1End, {-17, -8.5});
    s.node(Arm3End).voltageBox =
        QRectF(-half + 17, m_centreY - 8.5, BridgeSketch::voltageWidth, BridgeSketch::textHeight);
  }

  void terminals(double edge) {
    BridgeSketch& s = m_sketch;
    const int first = m_six ? 1 : 0;
    s.terminal(PPlus, {edge, plusLane()}, 0, {});
    s.terminal(SPlus, {edge, signalLane()}, s.column(first), s.column(first));
    s.terminal(PMinus, {edge, minusLane()}, s.column(first + 1), 0);
    s.terminal(SMinus, {edge, laneY(m_six ? 5 : 3)}, s.column(m_six ? 4 : 2), s.column(m_six ? 4 : 2));
    if (!m_six) return;
    s.terminal(SensePlus, {edge, laneY(0)}, s.column(0), {});
    s.terminal(SenseMinus, {edge, laneY(4)}, s.column(3), s.column(3));
  }

  /// Outer leads turn first, so that none crosses another.
  void leads() {
    BridgeSketch& s = m_sketch;
    const double below = m_minusY + (m_six ? 54 : 26);
    double turn = m_end + 8;
    const double lastLane = laneY(m_six ? 5 : 3);
    const QPointF right = s.node(Arm1End).at, left = s.node(Arm3End).at;
    s.lead(LeadRole::ExcitationPlus, plusLane(), {{0, m_plusY}});
    QPolygonF signal{{m_signalRight, below}, {m_signalRight, m_centreY}, right};
    if (m_six) {
      signal.prepend({turn, below});
      signal.prepend({turn, lastLane});
      turn += 12;
    }
    s.lead(LeadRole::SignalMinus, lastLane, signal);
    if (m_six) {
      s.lead(LeadRole::SensePlus, laneY(0), {{0, laneY(0)}, {0, m_plusY}});
      const double y = m_minusY + 27;
      s.lead(LeadRole::SenseMinus, laneY(4), {{turn, laneY(4)}, {turn, y}, {0, y}, {0, m_minusY}});
      turn += 12;
    }
    s.lead(LeadRole::ExcitationMinus, minusLane(), {{turn, minusLane()}, {turn, m_minusY}, {0, m_minusY}});
    turn += 12;
    s.lead(LeadRole::SignalPlus, signalLane(), {{turn, signalLane()}, {turn, m_centreY}, left});
  }

  void instrument(double edge) {
    BridgeSketch& s = m_sketch;
    const bool crossed = s.bridge.hookup.signalReversed, taken = s.instrument.inputResistance.has_value();
    const double x = edge - edgeTexts - (m_six ? 10 : 4) - (taken ? 34 : 0);
    const double lastLane = laneY(m_six ? 5 : 3);
    const double middle = m_six ? minusLane() + 42 : (signalLane() + minusLane()) / 2;
    const QRectF box = m_six ? QRectF(x + 4, middle + 31, 72, BridgeSketch::textHeight)
                             : QRectF(x + 36, middle - 8.5, 72, BridgeSketch::textHeight);
    s.input({x, signalLane()}, {x, lastLane}, {x, middle}, {-1, 0}, -26, box);
    s.wire({{x, signalLane()}, {edge, signalLane()}}, leadAt(s, SPlus, LeadRole::SignalPlus));
    s.wire({{x, lastLane}, {edge, lastLane}}, leadAt(s, SMinus, LeadRole::SignalMinus));
    double left = x - (crossed ? 66 : 24);
    if (s.balanced(BalanceKind::Parallel)) {
      left = x - 128 - (crossed ? 18 : 0);
      s.parallelBalance(left, plusLane(), minusLane(), {x, signalLane()});
    }
    m_source = left - 32;
    s.source({m_source, (plusLane() + minusLane()) / 2});
    QPolygonF loop{{m_source, minusLane()}, {m_source, plusLane()}};
    if (s.bridge.hookup.excitationReversed) std::reverse(loop.begin(), loop.end());
    s.wire(std::move(loop), WireCurrent::Source);
    s.wire({{m_source, plusLane()}, {edge, plusLane()}}, leadAt(s, PPlus, LeadRole::ExcitationPlus));
    s.wire({{m_source, minusLane()}, {edge, minusLane()}}, leadAt(s, PMinus, LeadRole::ExcitationMinus));
    s.node(PPlus).columnAbove = m_source;
    s.node(PMinus).columnBelow = m_source;
    s.grounding({m_source + 17, s.instrument.grounding == core::Grounding::PPlus ? plusLane() : minusLane()});
  }

  BridgeSketch& m_sketch;
  bool m_six;
  double m_plusY, m_centreY, m_minusY, m_pitch;
  double m_column = 0, m_columnFar = 0, m_signalRight = 0, m_end = 0, m_source = 0;
};

}  // namespace

void sketchWithInnerHalf(BridgeSketch& sketch) { InnerHalf(sketch).draw(); }
void sketchDiagonal(BridgeSketch& sketch) { Diagonal(sketch).draw(); }
void sketchFull(BridgeSketch& sketch) { Full(sketch).draw(); }

}  // namespace ui
