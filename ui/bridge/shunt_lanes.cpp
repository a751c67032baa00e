// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/shunt_lanes.h"

#include <QLineF>
#include <algorithm>
#include <cmath>

namespace ui {
namespace {

constexpr double switchLength = 20, gap = 6, bodyLength = 34, bodyWidth = 13;
constexpr double symbolLength = switchLength + gap + bodyLength;
constexpr double handleInset = 11;
constexpr double handleRoom = handleInset + 10;             ///< from a lane's end to its symbol
constexpr double shortest = symbolLength + 2 * handleRoom;  ///< of a lane with room for both handles
constexpr double labelHeight = 17, labelGap = 7;
constexpr double innerReach = 8, hairpinReach = 13;                    ///< of a lane, towards the bridge
constexpr double bareReach = 11, inlineReach = 20, stackedReach = 29;  ///< outwards, by where its label is
constexpr double firstGap = 9;
constexpr double extensions[] = {0, 170, 300};  ///< of the scene to the right, for labels
constexpr double worthOfNames = 0.9;            ///< how much smaller a drawing may be for whole names
constexpr double usualAspect = 1.6;             ///< of the room that a bridge is drawn in
constexpr double clearance = 5;                 ///< between a label and others' wires

struct Span {
  double low = 0, high = 0;
  double width() const { return high - low; }
  bool touches(const Span& other) const { return low < other.high && other.low < high; }
};

enum class LabelPlace { None, Left, Right, Inline, Stacked };

/// A shunt on its way to a lane.
struct Rung {
  std::size_t shunt = 0;
  bool above = true;
  double columnA = 0, columnB = 0;
  Span ends;             ///< x of the lane's two ends
  bool hairpin = false;  ///< the columns are too close together: the lane runs past one and comes back
  std::size_t lane = 0;
  double middle = 0;  ///< of switch and resistor
  LabelPlace labelPlace = LabelPlace::None;
  Span label;

  double outerReach() const {
    if (labelPlace == LabelPlace::Stacked) return stackedReach;
    return labelPlace == LabelPlace::Inline ? inlineReach : bareReach;
  }
};

bool onMinusSide(core::Node node) {
  using enum core::Node;
  return node == PMinus || node == SenseMinus || node == Arm2End || node == Arm3Begin;
}

bool runsAbove(const BridgeLayout& layout, const core::Shunt& shunt) {
  if (!layout[shunt.a].columnBelow || !layout[shunt.b].columnBelow) return true;
  return !onMinusSide(shunt.a) && !onMinusSide(shunt.b);
}

double columnOf(const NodePlace& place, bool above) {
  return above ? place.columnAbove : place.columnBelow.value_or(place.columnAbove);
}

Rung rungFor(const BridgeLayout& layout, const core::Shunt& shunt, std::size_t index) {
  Rung rung;
  rung.shunt = index;
  rung.above = runsAbove(layout, shunt);
  rung.columnA = columnOf(layout[shunt.a], rung.above);
  rung.columnB = columnOf(layout[shunt.b], rung.above);
  rung.ends = {std::min(rung.columnA, rung.columnB), std::max(rung.columnA, rung.columnB)};
  rung.hairpin = rung.ends.width() < shortest;
  return rung;
}

/// The rungs on one side of the bridge.
class Shelf {
 public:
  Shelf(std::vector<Rung*> rungs, Span sheet, double extension, const std::vector<bool>& closed,
        const std::function<ShuntLabelWidth(std::size_t)>& labelWidth)
      : m_rungs(std::move(rungs)),
        m_sheet(sheet),
        m_right(sheet.high),
        m_extension(extension),
        m_closed(closed),
        m_labelWidth(labelWidth) {
    for (Rung* rung : m_rungs)
      if (rung->hairpin) bend(*rung);
    assignLanes();
    for (Rung* rung : m_rungs) rung->middle = symbolMiddle(*rung);
    std::vector<Rung*> order = m_rungs;
    std::stable_sort(order.begin(), order.end(),
                     [](const Rung* a, const Rung* b) { return a->lane < b->lane; });
    for (Rung* rung : order) placeLabel(*rung);
  }

  /// Height of each lane over the shelf's edge, outwards, then the height of the whole shelf.
  std::vector<double> heights() const {
    std::vector<double> inner(m_lanes, innerReach), outer(m_lanes, 0);
    for (const Rung* rung : m_rungs) {
      if (rung->hairpin) inner[rung->lane] = hairpinReach;
      outer[rung->lane] = std::max(outer[rung->lane], rung->outerReach());
    }
    std::vector<double> result;
    double height = firstGap;
    for (std::size_t lane = 0; lane < m_lanes; ++lane) {
      height += inner[lane];
      result.push_back(height);
      height += outer[lane] + 1;
    }
    result.push_back(m_lanes == 0 ? 4 : height + 3);
    return result;
  }
  const std::vector<Rung*>& rungs() const { return m_rungs; }
  double right() const { return m_right; }

 private:
  /// Makes a hairpin long enough, to the side where fewer columns of other shunts are in the way.
  void bend(Rung& rung) const {
    const Span rightward{rung.ends.low, std::max(rung.ends.low + shortest, rung.ends.high + 2 * handleInset)};
    const Span leftward{std::min(rung.ends.high - shortest, rung.ends.low - 2 * handleInset), rung.ends.high};
    const auto inTheWay = [&](const Span& span) {
      return std::count_if(m_rungs.begin(), m_rungs.end(), [&](const Rung* other) {
        const auto inside = [&](double x) { return x > span.low && x < span.high; };
        return other != &rung && (inside(other->columnA) || inside(other->columnB));
      });
    };
    const bool fitsRight = rightward.high <= m_sheet.high, fitsLeft = leftward.low >= m_sheet.low;
    const bool toRight = fitsRight && (!fitsLeft || inTheWay(rightward) <= inTheWay(leftward));
    rung.ends = toRight ? rightward : leftward;
  }

  /// Gives each rung the innermost lane where it touches no other.
  void assignLanes() {
    std::stable_sort(m_rungs.begin(), m_rungs.end(),
                     [](const Rung* a, const Rung* b) { return a->ends.width() < b->ends.width(); });
    std::vector<std::vector<Span>> lanes;
    for (Rung* rung : m_rungs) {
      const auto isFree = [&](const std::vector<Span>& lane) {
        return std::none_of(lane.begin(), lane.end(),
                            [&](const Span& other) { return other.touches(rung->ends); });
      };
      const auto lane = std::find_if(lanes.begin(), lanes.end(), isFree);
      rung->lane = static_cast<std::size_t>(lane - lanes.begin());
      if (lane == lanes.end()) lanes.emplace_back();
      lanes[rung->lane].push_back(rung->ends);
    }
    m_lanes = lanes.size();
  }

  /// Whether no column on its way to an outer lane comes within `distance` of the span.
  bool isClear(const Rung& rung, const Span& span, double distance) const {
    return std::none_of(m_rungs.begin(), m_rungs.end(), [&](const Rung* other) {
      const auto hits = [&](double x) { return x > span.low - distance && x < span.high + distance; };
      return other->lane > rung.lane && (hits(other->columnA) || hits(other->columnB));
    });
  }

  /// Near the lane's middle, clear of others' columns.
  double symbolMiddle(const Rung& rung) const {
    const double middle = (rung.ends.low + rung.ends.high) / 2;
    const double play = (rung.ends.width() - shortest) / 2;
    for (int shift = 0; shift <= play; shift += 4)
      for (const double x : {middle - shift, middle + shift})
        if (isClear(rung, {x - symbolLength / 2, x + symbolLength / 2}, clearance)) return x;
    return middle;
  }

  /// How far a label beside the end of the lane may reach, to the left or to the right.
  double roomBeside(const Rung& rung, bool right) const {
    const double from = right ? rung.ends.high + clearance : rung.ends.low - clearance;
    double to = right ? m_sheet.high + m_extension : m_sheet.low;
    const auto limit = [&](double x) {
      if (right && x > rung.ends.high) to = std::min(to, x - clearance);
      if (!right && x < rung.ends.low) to = std::max(to, x + clearance);
    };
    for (const Rung* other : m_rungs) {
      if (other == &rung) continue;
      if (other->lane > rung.lane)
        for (const double column : {other->columnA, other->columnB}) limit(column);
      if (other->lane != rung.lane) continue;
      // Lanes that meet at one column leave no room between them.
      if (right ? other->ends.low >= rung.ends.high : other->ends.high <= rung.ends.low) {
        limit(right ? std::max(other->ends.low, rung.ends.high + 0.1)
                    : std::min(other->ends.high, rung.ends.low - 0.1));
        if (other->labelPlace == LabelPlace::Left || other->labelPlace == LabelPlace::Right)
          limit(right ? other->label.low : other->label.high);
      }
    }
    return right ? to - from : from - to;
  }

  void putBeside(Rung& rung, bool right, double width) {
    rung.labelPlace = right ? LabelPlace::Right : LabelPlace::Left;
    const double from = right ? rung.ends.high + clearance : rung.ends.low - clearance;
    rung.label = right ? Span{from, from + width} : Span{from - width, from};
    m_right = std::max(m_right, rung.label.high + 4);
  }

  /// Above the wire, right or left of the symbol, which may move for it.
  bool putInline(Rung& rung, double width) const {
    const double block = symbolLength + labelGap + width;
    const double room = rung.ends.width() - 2 * handleRoom;
    for (int shift = 0; shift <= room - block + 0.01; shift += 6) {
      const double low = rung.ends.low + handleRoom + shift;
      if (isClear(rung, {low, low + block}, clearance)) {
        rung.labelPlace = LabelPlace::Inline;
        rung.middle = low + symbolLength / 2;
        rung.label = {low + symbolLength + labelGap, low + block};
        return true;
      }
    }
    return false;
  }

  /// Above the symbol, as wide as neighbours leave it.
  void putStacked(Rung& rung, const ShuntLabelWidth& width) const {
    for (int less = 0; less <= width.whole - width.least; less += 12) {
      const double wide = width.whole - less;
      const double room = std::max(rung.ends.width() - 2 * clearance, 0.0);
      if (wide > room && wide - 12 >= width.least) continue;
      const double middle = (rung.ends.low + rung.ends.high) / 2;
      for (const double x : {rung.middle, middle}) {
        const Span span{x - wide / 2, x + wide / 2};
        if (!isClear(rung, span, clearance) || span.low < m_sheet.low || span.high > m_sheet.high) continue;
        if (hitsNeighbour(rung, span)) continue;
        rung.labelPlace = LabelPlace::Stacked;
        rung.label = span;
        return;
      }
    }
  }

  bool hitsNeighbour(const Rung& rung, const Span& span) const {
    return std::any_of(m_rungs.begin(), m_rungs.end(), [&](const Rung* other) {
      if (other == &rung || other->lane != rung.lane) return false;
      return span.touches(other->ends) ||
             (other->labelPlace != LabelPlace::None && span.touches(other->label));
    });
  }

  void placeLabel(Rung& rung) {
    const ShuntLabelWidth width = m_labelWidth(rung.shunt);
    const double left = roomBeside(rung, false), right = roomBeside(rung, true);
    const double within = right - std::max(0.0, rung.ends.high + clearance + right - m_right);
    if (left >= width.whole || within >= width.whole)
      return putBeside(rung, within >= width.whole && (left < width.whole || within < left), width.whole);
    if (putInline(rung, width.whole)) return;
    if (right >= width.whole) return putBeside(rung, true, width.whole);
    if (std::max(left, right) >= width.least)
      return putBeside(rung, right > left, std::min(width.whole, std::max(left, right)));
    if (putInline(rung, width.least)) return;
    if (rung.lane < roomyLanes || m_closed[rung.shunt]) putStacked(rung, width);
  }

  std::vector<Rung*> m_rungs;
  Span m_sheet;
  double m_right, m_extension;
  const std::vector<bool>& m_closed;
  const std::function<ShuntLabelWidth(std::size_t)>& m_labelWidth;
  std::size_t m_lanes = 0;
};

/// The wire from a node over its column to the lane at `y`, ending at `x`.
QPolygonF wireTo(const NodePlace& node, bool above, double y, double x) {
  const double column = columnOf(node, above);
  QPolygonF wire;
  if (above ? node.stubAbove : node.stubBelow) wire << node.at;
  for (const QPointF& point : {QPointF(column, node.at.y()), QPointF(column, y), QPointF(x, y)})
    if (wire.isEmpty() || point != wire.back()) wire << point;
  return wire;
}

/// As `wireTo`, but coming back to the lane's far end from a little nearer the bridge.
QPolygonF hairpinTo(const NodePlace& node, bool above, double inner, double far, double y, double x) {
  QPolygonF wire = wireTo(node, above, inner, far);
  wire << QPointF(far, y) << QPointF(x, y);
  return wire;
}

void placeLabelBox(ShuntPlace& place, const Rung& rung, double y) {
  if (rung.labelPlace == LabelPlace::None) return;
  const bool beside = rung.labelPlace == LabelPlace::Left || rung.labelPlace == LabelPlace::Right;
  const double offset = rung.labelPlace == LabelPlace::Inline ? 3 : bareReach;  // from the wire, outwards
  double top = rung.above ? y - offset - labelHeight : y + offset;
  if (beside) top = y - labelHeight / 2;
  place.labelBox = QRectF(rung.label.low, top, rung.label.width(), labelHeight);
  if (beside)
    place.labelAlignment =
        (rung.labelPlace == LabelPlace::Left ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter;
}

ShuntPlace placeOf(const BridgeLayout& layout, const core::Shunt& shunt, const Rung& rung, double y) {
  ShuntPlace place;
  place.faulty = !layout[shunt.a].present || !layout[shunt.b].present;
  const double left = rung.middle - symbolLength / 2, right = rung.middle + symbolLength / 2;
  place.contact = QLineF(left, y, left + switchLength, y);
  place.blade = QPointF(left + switchLength - 3, rung.above ? y - 9 : y + 9);
  place.resistor = QRectF(right - bodyLength, y - bodyWidth / 2, bodyLength, bodyWidth);
  placeLabelBox(place, rung, y);

  const bool aLeft = rung.columnA <= rung.columnB;
  const NodePlace &nodeLeft = layout[aLeft ? shunt.a : shunt.b],
                  &nodeRight = layout[aLeft ? shunt.b : shunt.a];
  const double columnRight = std::max(rung.columnA, rung.columnB);
  const double inner = rung.above ? y + 11 : y - 11;
  const bool backRight = rung.hairpin && rung.ends.high > columnRight;
  const bool backLeft = rung.hairpin && !backRight;
  QPolygonF toLeft = backLeft ? hairpinTo(nodeLeft, rung.above, inner, rung.ends.low, y, left)
                              : wireTo(nodeLeft, rung.above, y, left);
  QPolygonF toRight = backRight ? hairpinTo(nodeRight, rung.above, inner, rung.ends.high, y, right)
                                : wireTo(nodeRight, rung.above, y, right);
  QPointF handleLeft(rung.ends.low + handleInset, y), handleRight(rung.ends.high - handleInset, y);
  if (!aLeft) {
    std::swap(toLeft, toRight);
    std::swap(handleLeft, handleRight);
  }
  place.toA = toLeft;
  place.toB = toRight;
  place.handleA = handleLeft;
  place.handleB = handleRight;
  return place;
}

/// A dot wherever another shunt's wire leaves the common column further in.
void addJoints(std::vector<ShuntPlace>& places, const std::vector<Rung*>& rungs) {
  const auto turnOf = [](const QPolygonF& wire, double column) {
    for (qsizetype k = 1; k < wire.size(); ++k)
      if (wire[k].x() == column && wire[k - 1].x() == column) return wire[k];
    return wire.front();
  };
  struct End {
    std::size_t shunt;
    double column;
    QPointF turn;
  };
  std::vector<End> ends;
  for (const Rung* rung : rungs) {
    ends.push_back({rung->shunt, rung->columnA, turnOf(places[rung->shunt].toA, rung->columnA)});
    ends.push_back({rung->shunt, rung->columnB, turnOf(places[rung->shunt].toB, rung->columnB)});
  }
  for (const End& end : ends) {
    const bool goesOn = std::any_of(ends.begin(), ends.end(), [&](const End& other) {
      return other.column == end.column &&
             (rungs.front()->above ? other.turn.y() < end.turn.y() : other.turn.y() > end.turn.y());
    });
    if (goesOn) places[end.shunt].joints.push_back(end.turn);
  }
}

ShuntLanes lanesWith(double extension, const BridgeLayout& layout, std::span<const core::Shunt> shunts,
                     const std::vector<bool>& closed,
                     const std::function<ShuntLabelWidth(std::size_t)>& labelWidth) {
  std::vector<Rung> rungs;
  for (std::size_t k = 0; k < shunts.size(); ++k) rungs.push_back(rungFor(layout, shunts[k], k));
  ShuntLanes result;
  result.places.resize(shunts.size());
  const QRectF outline = layout.instrument | layout.article;
  QRectF scene = outline.adjusted(-4, 0, 4, 0);
  for (const bool above : {true, false}) {
    std::vector<Rung*> side;
    for (Rung& rung : rungs)
      if (rung.above == above) side.push_back(&rung);
    const Shelf shelf(std::move(side), {outline.left(), outline.right()}, extension, closed, labelWidth);
    const std::vector<double> heights = shelf.heights();
    for (const Rung* rung : shelf.rungs()) {
      const double y = above ? outline.top() - heights[rung->lane] : outline.bottom() + heights[rung->lane];
      result.places[rung->shunt] = placeOf(layout, shunts[rung->shunt], *rung, y);
    }
    if (!shelf.rungs().empty()) addJoints(result.places, shelf.rungs());
    scene.setRight(std::max(scene.right(), shelf.right()));
    if (above)
      scene.setTop(outline.top() - heights.back());
    else
      scene.setBottom(outline.bottom() + heights.back());
  }
  result.scene = scene;
  return result;
}

/// How large a scene is drawn, but for a factor; less where a name is cut.
double worthOf(const ShuntLanes& lanes, std::span<const core::Shunt> shunts,
               const std::function<ShuntLabelWidth(std::size_t)>& labelWidth) {
  bool whole = true;
  for (std::size_t k = 0; k < shunts.size(); ++k)
    if (lanes.places[k].labelBox.width() < labelWidth(k).whole - 0.5) whole = false;
  const double scale = std::min(usualAspect / lanes.scene.width(), 1 / lanes.scene.height());
  return whole ? scale : worthOfNames * scale;
}

}  // namespace

ShuntLanes shuntLanes(const BridgeLayout& layout, std::span<const core::Shunt> shunts,
                      const std::vector<bool>& closed,
                      const std::function<ShuntLabelWidth(std::size_t)>& labelWidth) {
  ShuntLanes best;
  double most = 0;
  for (const double extension : extensions) {
    ShuntLanes lanes = lanesWith(extension, layout, shunts, closed, labelWidth);
    if (const double worth = worthOf(lanes, shunts, labelWidth); worth > most) {
      most = worth;
      best = std::move(lanes);
    }
  }
  return best;
}

}  // namespace ui
