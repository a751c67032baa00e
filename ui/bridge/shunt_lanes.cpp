// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/shunt_lanes.h"

#include <QLineF>
#include <algorithm>
#include <cmath>

namespace ui {
namespace {

constexpr double switchLength = 24, gap = 8, bodyLength = 40, bodyWidth = 14;
constexpr double symbolLength = switchLength + gap + bodyLength;
constexpr double handleInset = 12;
constexpr double shortest = symbolLength + 2 * (handleInset + 8);  ///< of a lane with room for both handles
constexpr double labelHeight = 16;
constexpr double roomyPitch = 42, crowdedPitch = 20;
constexpr double clearance = 8;  ///< between neighbours on a lane

struct Span {
  double low = 0, high = 0;
  double width() const { return high - low; }
  bool touches(const Span& other) const { return low < other.high && other.low < high; }
};

/// A shunt on its way to a lane.
struct Rung {
  std::size_t shunt = 0;
  bool above = true;
  double columnA = 0, columnB = 0;
  Span ends;             ///< x of the lane's two ends
  bool hairpin = false;  ///< the columns are too close together: the lane runs past one and comes back
  Span label;
  std::size_t lane = 0;
  bool named = true;

  Span taken() const { return {std::min(ends.low, label.low - 4), std::max(ends.high, label.high + 4)}; }
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

/// Makes a hairpin long enough, to the side where fewer columns of other shunts are in the way.
void bendHairpin(Rung& rung, const std::vector<Rung>& rungs) {
  const Span rightward{rung.ends.low, std::max(rung.ends.low + shortest, rung.ends.high + 2 * handleInset)};
  const Span leftward{std::min(rung.ends.high - shortest, rung.ends.low - 2 * handleInset), rung.ends.high};
  const auto inTheWay = [&](const Span& span) {
    return std::count_if(rungs.begin(), rungs.end(), [&](const Rung& other) {
      const auto inside = [&](double x) { return x > span.low && x < span.high; };
      return &other != &rung && other.above == rung.above && (inside(other.columnA) || inside(other.columnB));
    });
  };
  const bool fitsRight = rightward.high <= layoutWidth - 4, fitsLeft = leftward.low >= 4;
  const bool toRight = fitsRight && (!fitsLeft || inTheWay(rightward) <= inTheWay(leftward));
  rung.ends = toRight ? rightward : leftward;
}

Span labelSpan(const Span& ends, double wanted) {
  // A label may be wider than a hairpin, but not than the sheet.
  const double width = std::min(wanted, std::max(ends.width() - 2 * clearance, 190.0));
  double low = (ends.low + ends.high - width) / 2;
  low = std::clamp(low, 4.0, layoutWidth - 4 - width);
  return {low, low + width};
}

/// Gives each rung of one shelf the innermost lane where it touches no other.
std::size_t assignLanes(std::vector<Rung*>& shelf) {
  std::stable_sort(shelf.begin(), shelf.end(),
                   [](const Rung* a, const Rung* b) { return a->ends.width() < b->ends.width(); });
  std::vector<std::vector<Span>> lanes;
  for (Rung* rung : shelf) {
    const auto isFree = [&](const std::vector<Span>& lane) {
      return std::none_of(lane.begin(), lane.end(),
                          [&](const Span& other) { return other.touches(rung->taken()); });
    };
    const auto lane = std::find_if(lanes.begin(), lanes.end(), isFree);
    rung->lane = static_cast<std::size_t>(lane - lanes.begin());
    if (lane == lanes.end()) lanes.emplace_back();
    lanes[rung->lane].push_back(rung->taken());
  }
  return lanes.size();
}

/// Height of each lane over the shelf's edge, outwards, then the height of the whole shelf.
std::vector<double> laneHeights(std::vector<Rung*>& shelf, std::size_t lanes,
                                const std::vector<bool>& closed) {
  std::vector<bool> roomy(lanes, lanes <= roomyLanes);
  for (const Rung* rung : shelf)
    if (closed[rung->shunt]) roomy[rung->lane] = true;
  for (Rung* rung : shelf) rung->named = roomy[rung->lane];
  std::vector<double> heights;
  double height = 18;
  for (std::size_t lane = 0; lane < lanes; ++lane) {
    heights.push_back(height);
    height += roomy[lane] ? roomyPitch : crowdedPitch;
  }
  heights.push_back(lanes == 0 ? 4 : height - 8);
  return heights;
}

/// Where the middle of switch and resistor goes: near the lane's middle, clear of others' columns.
double symbolMiddle(const Rung& rung, const std::vector<Rung*>& shelf) {
  const double middle = (rung.ends.low + rung.ends.high) / 2;
  const double play = (rung.ends.width() - shortest) / 2;
  const auto isClear = [&](double x) {
    return std::none_of(shelf.begin(), shelf.end(), [&](const Rung* other) {
      if (other->lane <= rung.lane) return false;
      return std::abs(other->columnA - x) < symbolLength / 2 + 6 ||
             std::abs(other->columnB - x) < symbolLength / 2 + 6;
    });
  };
  for (double shift = 0; shift <= play; shift += 4)
    for (const double x : {middle - shift, middle + shift})
      if (isClear(x)) return x;
  return middle;
}

/// The wire from a node over its column to the lane at `y`, ending at `x`.
QPolygonF wireTo(const NodePlace& node, double column, double y, double x) {
  QPolygonF wire{node.at};
  for (const QPointF& point : {QPointF(column, node.at.y()), QPointF(column, y), QPointF(x, y)})
    if (point != wire.back()) wire << point;
  return wire;
}

/// As `wireTo`, but coming back to the lane's far end from a little nearer the bridge.
QPolygonF hairpinTo(const NodePlace& node, double column, double inner, double far, double y, double x) {
  QPolygonF wire = wireTo(node, column, inner, far);
  wire << QPointF(far, y) << QPointF(x, y);
  return wire;
}

ShuntPlace placeOf(const BridgeLayout& layout, const core::Shunt& shunt, const Rung& rung, double y,
                   double middle) {
  ShuntPlace place;
  place.faulty = !layout[shunt.a].present || !layout[shunt.b].present;
  const double left = middle - symbolLength / 2, right = middle + symbolLength / 2;
  place.contact = QLineF(left, y, left + switchLength, y);
  place.blade = QPointF(left + switchLength - 3, y - 10);
  place.resistor = QRectF(right - bodyLength, y - bodyWidth / 2, bodyLength, bodyWidth);
  if (rung.named)
    place.labelBox =
        QRectF(rung.label.low, rung.above ? y - 9 - labelHeight : y + 9, rung.label.width(), labelHeight);

  const bool aLeft = rung.columnA <= rung.columnB;
  const core::Node nodeLeft = aLeft ? shunt.a : shunt.b, nodeRight = aLeft ? shunt.b : shunt.a;
  const double columnLeft = std::min(rung.columnA, rung.columnB);
  const double columnRight = std::max(rung.columnA, rung.columnB);
  const double inner = rung.above ? y + 14 : y - 14;
  const bool backRight = rung.hairpin && rung.ends.high > columnRight;
  const bool backLeft = rung.hairpin && !backRight;
  QPolygonF toLeft = backLeft ? hairpinTo(layout[nodeLeft], columnLeft, inner, rung.ends.low, y, left)
                              : wireTo(layout[nodeLeft], columnLeft, y, left);
  QPolygonF toRight = backRight ? hairpinTo(layout[nodeRight], columnRight, inner, rung.ends.high, y, right)
                                : wireTo(layout[nodeRight], columnRight, y, right);
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

}  // namespace

ShuntLanes shuntLanes(const BridgeLayout& layout, std::span<const core::Shunt> shunts,
                      const std::vector<bool>& closed, const std::function<double(std::size_t)>& labelWidth) {
  std::vector<Rung> rungs;
  for (std::size_t k = 0; k < shunts.size(); ++k) rungs.push_back(rungFor(layout, shunts[k], k));
  for (Rung& rung : rungs) {
    if (rung.hairpin) bendHairpin(rung, rungs);
    rung.label = labelSpan(rung.ends, labelWidth(rung.shunt));
  }
  ShuntLanes result;
  result.places.resize(shunts.size());
  const QRectF outline = layout.instrument | layout.article;
  double top = outline.top(), bottom = outline.bottom();
  for (const bool above : {true, false}) {
    std::vector<Rung*> shelf;
    for (Rung& rung : rungs)
      if (rung.above == above) shelf.push_back(&rung);
    const std::size_t lanes = assignLanes(shelf);
    const std::vector<double> heights = laneHeights(shelf, lanes, closed);
    const double edge = above ? outline.top() : outline.bottom();
    for (const Rung* rung : shelf) {
      const double y = above ? edge - heights[rung->lane] : edge + heights[rung->lane];
      result.places[rung->shunt] = placeOf(layout, shunts[rung->shunt], *rung, y, symbolMiddle(*rung, shelf));
    }
    (above ? top : bottom) += above ? -heights.back() : heights.back();
  }
  result.scene = QRectF(0, top, layoutWidth, bottom - top);
  return result;
}

}  // namespace ui
