// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/polarity/polarity_layout.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace ui {
namespace {

using core::Node;

constexpr double cornerShare = 0.62;  ///< of the way from the centre to the terminals outside
constexpr double chipPad = 4;

/// Clockwise from the top, so that arm k runs from corner k to the next.
enum Corner { Top, Right, Bottom, Left };
constexpr std::array<QPointF, 4> directions = {QPointF(0, -1), QPointF(1, 0), QPointF(0, 1), QPointF(-1, 0)};
constexpr std::array<QPointF, 4> clockwise = {QPointF(1, 0), QPointF(0, 1), QPointF(-1, 0), QPointF(0, -1)};

Corner cornerOf(Node node) {
  switch (node) {
    case Node::PPlus:
    case Node::SensePlus:
    case Node::Arm1Begin:
    case Node::Arm4End:
      return Top;
    case Node::SMinus:
    case Node::Arm1End:
    case Node::Arm2Begin:
      return Right;
    case Node::PMinus:
    case Node::SenseMinus:
    case Node::Arm2End:
    case Node::Arm3Begin:
      return Bottom;
    case Node::SPlus:
    case Node::Arm3End:
    case Node::Arm4Begin:
      return Left;
  }
  return Top;
}

class Composition {
 public:
  Composition(const PolarityShown& shown, const QRectF& room, const QFontMetricsF& metrics)
      : m_shown(shown), m_line(metrics.height()), m_chip(widestChip(shown, metrics)) {
    m_layout.spots.resize(shown.count());
    // Outside of all points a chip must fit, above and below a line of text.
    const QRectF inner = room.adjusted(m_chip + 12, m_line + 12, -m_chip - 12, -m_line - 12);
    const double left = extent(Left), right = extent(Right), top = extent(Top), bottom = extent(Bottom);
    m_radius = QPointF(std::max(60.0, inner.width() / (left + right)),
                       std::max(50.0, inner.height() / (top + bottom)));
    m_layout.centre =
        inner.center() + QPointF((left - right) / 2 * m_radius.x(), (top - bottom) / 2 * m_radius.y());
  }

  PolarityLayout make() {
    for (const int corner : {Top, Right, Bottom, Left}) placeCorner(static_cast<Corner>(corner));
    for (const std::size_t arm : {0, 1, 2, 3})
      m_layout.arms.push_back({*spotOf(core::armBegin(arm)), *spotOf(core::armEnd(arm))});
    for (const core::Wire& wire : core::wiresOf(m_shown.bridge())) {
      const auto from = spotOf(wire.from), to = spotOf(wire.to);
      if (from && to) m_layout.leads.push_back({*from, *to, core::isBroken(m_shown.bridge(), wire.role)});
    }
    return std::move(m_layout);
  }

 private:
  static double widestChip(const PolarityShown& shown, const QFontMetricsF& metrics) {
    double widest = 0;
    for (const core::PolarityCell& cell : shown.map.cells)
      widest = std::max(widest, metrics.horizontalAdvance(cellText(shown, cell)));
    return widest + 2 * chipPad;
  }

  /// A terminal, or the end of a wire in the instrument.
  bool isOnInstrument(Node point) const {
    if (point < Node::Arm1Begin) return true;
    const auto wires = core::wiresOf(m_shown.bridge());
    return std::any_of(wires.begin(), wires.end(), [&](const core::Wire& wire) {
      return core::pointOf(m_shown.bridge(), wire.from) == point;
    });
  }

  /// None for a terminal that nothing connects.
  std::optional<std::size_t> spotOf(Node node) const {
    const auto& points = m_shown.map.points;
    const auto found = std::find(points.begin(), points.end(), core::pointOf(m_shown.bridge(), node));
    if (found == points.end()) return std::nullopt;
    return static_cast<std::size_t>(found - points.begin());
  }

  /// The points of a corner that lie at no arm's end.
  std::vector<std::size_t> outside(Corner corner) const {
    const std::size_t leaving = static_cast<std::size_t>(corner), coming = (leaving + 3) % 4;
    std::vector<std::size_t> spots;
    for (std::size_t k = 0; k < m_shown.count(); ++k)
      if (cornerOf(m_shown.map.points[k]) == corner && k != *spotOf(core::armEnd(coming)) &&
          k != *spotOf(core::armBegin(leaving)))
        spots.push_back(k);
    return spots;
  }

  /// How far its points reach from the centre, in radii.
  double extent(Corner corner) const { return outside(corner).empty() ? cornerShare : 1; }

  QPointF at(Corner corner, double share, double along) const {
    const QPointF out = directions[corner], side = clockwise[corner];
    return m_layout.centre + QPointF(out.x() * share * m_radius.x(), out.y() * share * m_radius.y()) +
           side * along;
  }

  /// Half the distance of two points of one corner: so that chips of both fit beside each other.
  double apart(Corner corner) const {
    return corner == Top || corner == Bottom ? m_chip / 2 + 6 : 0.85 * m_line + 5;
  }

  void placeCorner(Corner corner) {
    // The arm that comes to the corner clockwise, and the one that leaves it.
    const std::size_t leaving = static_cast<std::size_t>(corner), coming = (leaving + 3) % 4;
    const std::size_t first = *spotOf(core::armEnd(coming)), second = *spotOf(core::armBegin(leaving));
    const std::vector<std::size_t> beyond = outside(corner);
    const double half = apart(corner);
    place(first, corner, cornerShare, first == second ? 0 : -half);
    if (second != first) place(second, corner, cornerShare, half);
    for (std::size_t k = 0; k < beyond.size(); ++k) {
      const double along = beyond.size() == 1 ? 0 : (k == 0 ? -half : half);
      place(beyond[k], corner, 1, along);
    }
  }

  void place(std::size_t spot, Corner corner, double share, double along) {
    PolaritySpot& it = m_layout.spots[spot];
    it.at = at(corner, share, along);
    it.terminal = isOnInstrument(m_shown.map.points[spot]);
    const bool outside = share == 1;
    // Towards the centre from a corner, where nothing else is while a point is picked; away from it outside.
    it.towards = (outside ? 1 : -1) * directions[corner];
  }

  const PolarityShown& m_shown;
  double m_line, m_chip;
  QPointF m_radius;
  PolarityLayout m_layout;
};

PolarityChip chipFor(const PolarityShown& shown, PolarityPair pair, QPointF centre,
                     const QFontMetricsF& metrics) {
  const core::PolarityCell& cell = shown.map.at(pair.i, pair.j);
  PolarityChip chip{pair, cellText(shown, cell), {}, isOverArm(shown.bridge(), cell)};
  const QSizeF size(metrics.horizontalAdvance(chip.text) + 2 * chipPad, metrics.height() + 1);
  chip.box = QRectF(centre - QPointF(size.width(), size.height()) / 2, size);
  return chip;
}

/// As near to the point as its size allows.
PolarityChip chipBeside(const PolarityShown& shown, const PolaritySpot& spot, PolarityPair pair,
                        const QFontMetricsF& metrics) {
  PolarityChip chip = chipFor(shown, pair, spot.at, metrics);
  chip.box.translate(spot.towards.x() * (chip.box.width() / 2 + 9),
                     spot.towards.y() * (chip.box.height() / 2 + 9));
  return chip;
}

QRectF spotBox(const PolaritySpot& spot) { return QRectF(spot.at - QPointF(7, 7), QSizeF(14, 14)); }

double overlap(const QRectF& box, const std::vector<QRectF>& taken) {
  double area = 0;
  for (const QRectF& other : taken) {
    const QRectF both = box.intersected(other);
    area += both.isEmpty() ? 0 : both.width() * both.height();
  }
  return area;
}

/// Boxes along the bands of the arms, end to end.
std::vector<QRectF> bandsOf(const PolarityLayout& layout) {
  constexpr double width = 13, apart = 12;
  std::vector<QRectF> boxes;
  for (const PolarityLayout::Arm& arm : layout.arms) {
    const QPointF from = layout.spots[arm.begin].at, way = layout.spots[arm.end].at - from;
    const int count = static_cast<int>(std::hypot(way.x(), way.y()) / apart);
    for (int k = 0; k <= count; ++k)
      boxes.push_back(
          QRectF(from + way * k / std::max(1, count) - QPointF(width, width) / 2, QSizeF(width, width)));
  }
  return boxes;
}

/// Moves a chip along its way, or a line above or below it, to where it covers nothing, neither what is taken
/// nor, if it can be, what is `avoided`: first choice in the middle.
void settle(PolarityChip& chip, const QPainterPath& path, std::vector<QRectF>& taken,
            const std::vector<QRectF>& avoided) {
  double least = -1;
  QRectF best = chip.box;
  for (const double lines : {0.0, 1.0, -1.0, 1.7, -1.7})
    for (const double share : {0.5, 0.44, 0.56, 0.38, 0.62, 0.68, 0.32, 0.74, 0.26, 0.8, 0.2}) {
      QRectF box = chip.box;
      box.moveCenter(path.pointAtPercent(share) + QPointF(0, 0.8 * lines * box.height()));
      const double area = 100 * overlap(box, taken) + overlap(box, avoided);
      if (least >= 0 && area >= least) continue;
      least = area;
      best = box;
    }
  chip.box = best;
  taken.push_back(best.adjusted(-2, -2, 2, 2));
}

QPolygonF pointsAlong(const QPainterPath& path) {
  constexpr int count = 48;
  QPolygonF points;
  for (int k = 0; k <= count; ++k) points << path.pointAtPercent(double(k) / count);
  return points;
}

/// How many arms, leads and ways of pairs run through a box; arms count double.
int crossings(const QRectF& box, const PolarityLayout& layout, const std::vector<QPolygonF>& ways) {
  const auto crosses = [&](std::size_t from, std::size_t to) {
    QPainterPath line(layout.spots[from].at);
    line.lineTo(layout.spots[to].at);
    return line.intersects(box) ? 1 : 0;
  };
  int count = 0;
  for (const QPolygonF& way : ways)
    count += std::any_of(way.begin(), way.end(), [&](QPointF at) { return box.contains(at); }) ? 1 : 0;
  for (const PolarityLayout::Arm& arm : layout.arms) count += 2 * crosses(arm.begin, arm.end);
  for (const PolarityLayout::Lead& lead : layout.leads) count += crosses(lead.from, lead.to);
  return count;
}

/// Beside each point, clear of chips and other names first, then of lines, then as near as it may be.
void placeNames(const PolarityShown& shown, PolarityLayout& layout, const QRectF& room,
                const QFontMetricsF& metrics) {
  std::vector<QRectF> taken;
  for (const PolaritySpot& spot : layout.spots) taken.push_back(spotBox(spot));
  std::vector<QPolygonF> ways;
  for (const PolarityChip& chip : usualChips(shown, layout, metrics)) {
    taken.push_back(chip.box);
    ways.push_back(pointsAlong(layout.pathOf(chip.pair)));
  }
  // A chip beside a point has another text for each point that is picked: the widest counts.
  for (std::size_t k = 0; k < layout.spots.size(); ++k) {
    QRectF widest;
    for (std::size_t from = 0; from < layout.spots.size(); ++from)
      if (from != k) widest |= chipBeside(shown, layout.spots[k], {from, k}, metrics).box;
    taken.push_back(widest);
  }
  for (std::size_t k = 0; k < layout.spots.size(); ++k) {
    PolaritySpot& spot = layout.spots[k];
    const QString name = shortPointText(shown.bridge(), shown.map.points[k]);
    const QSizeF size(metrics.horizontalAdvance(name), metrics.height() - 2);
    double least = -1;
    for (const double far : {8.0, 14.0, 22.0})
      for (const QPointF side : {QPointF(1, 0), QPointF(-1, 0), QPointF(0, -1), QPointF(0, 1), QPointF(1, -1),
                                 QPointF(-1, -1), QPointF(1, 1), QPointF(-1, 1)}) {
        QRectF box(QPointF(), size);
        box.moveCenter(spot.at +
                       QPointF(side.x() * (size.width() / 2 + far), side.y() * (size.height() / 2 + far)));
        const double outside = room.contains(box) ? 0 : 1e6;
        const double cost = outside + 1e3 * overlap(box, taken) + 20 * crossings(box, layout, ways) + far;
        if (least >= 0 && cost >= least) continue;
        least = cost;
        spot.nameBox = box;
      }
    taken.push_back(spot.nameBox);
  }
}

}  // namespace

QPainterPath PolarityLayout::pathOf(PolarityPair pair) const {
  const QPointF a = spots[pair.i].at, b = spots[pair.j].at;
  QPainterPath path(a);
  const auto same = [&](std::size_t i, std::size_t j) {
    return (i == pair.i && j == pair.j) || (i == pair.j && j == pair.i);
  };
  bool straight = false;
  for (const Arm& arm : arms) straight = straight || same(arm.begin, arm.end);
  for (const Lead& lead : leads) straight = straight || same(lead.from, lead.to);
  const QPointF middle = (a + b) / 2, out = middle - centre;
  // Opposite corners: their middle is near the centre and gives no direction to bend to.
  const double length = std::hypot((b - a).x(), (b - a).y()), reach = std::hypot(out.x(), out.y());
  straight = straight || reach < 0.2 * length;
  if (straight)
    path.lineTo(b);
  else
    path.quadTo(middle + std::min(0.8, 0.5 * length / reach) * out, b);
  return path;
}

PolarityLayout polarityLayout(const PolarityShown& shown, const QRectF& room, const QFontMetricsF& metrics) {
  PolarityLayout layout = Composition(shown, room, metrics).make();
  placeNames(shown, layout, room, metrics);
  return layout;
}

std::vector<PolarityChip> usualChips(const PolarityShown& shown, const PolarityLayout& layout,
                                     const QFontMetricsF& metrics) {
  std::vector<QRectF> taken;
  for (const PolaritySpot& spot : layout.spots) taken.push_back(spotBox(spot));
  std::vector<PolarityChip> chips;
  const auto add = [&](PolarityPair pair, const std::vector<QRectF>& avoided) {
    chips.push_back(chipFor(shown, pair, layout.centre, metrics));
    settle(chips.back(), layout.pathOf(pair), taken, avoided);
  };
  for (const PolarityLayout::Arm& arm : layout.arms) add({arm.begin, arm.end}, {});
  // What the terminals give must not look like an arm's.
  const std::vector<QRectF> bands = bandsOf(layout);
  const auto& points = shown.map.points;
  for (std::size_t i = 0; i < points.size(); ++i)
    for (std::size_t j = i + 1; j < points.size(); ++j) {
      const bool terminals = points[i] < Node::SensePlus && points[j] < Node::SensePlus;
      if (terminals && !isOverArm(shown.bridge(), shown.map.at(i, j))) add({i, j}, bands);
    }
  return chips;
}

std::vector<PolarityChip> chipsFrom(const PolarityShown& shown, const PolarityLayout& layout,
                                    std::size_t from, const QFontMetricsF& metrics) {
  std::vector<PolarityChip> chips;
  for (std::size_t k = 0; k < layout.spots.size(); ++k)
    if (k != from) chips.push_back(chipBeside(shown, layout.spots[k], {from, k}, metrics));
  return chips;
}

}  // namespace ui
