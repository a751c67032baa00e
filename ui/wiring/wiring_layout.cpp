// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/wiring/wiring_layout.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "ui/theme.h"
#include "ui/wiring/wiring_words.h"

namespace ui {
namespace {

constexpr double edge = 12;       ///< around everything
constexpr double pad = 8;         ///< within a connector
constexpr double between = 18;    ///< connectors of one column
constexpr double leastGap = 110;  ///< between the columns, for the jumpers
constexpr double mostGap = 300;
constexpr double longestUse = 170;
constexpr double longestName = 80;

/// The pins of one connector, as indices into the pins drawn.
struct Group {
  std::string connector;
  std::vector<std::size_t> pins;
  bool left = true;
  bool listed = true;
};

struct Drawn {
  core::Pin pin;
  std::optional<std::size_t> index;
};

/// The pins of the list, then those that only a jumper names.
std::vector<Drawn> drawnPins(const WiringPicture& picture) {
  std::vector<Drawn> drawn;
  for (std::size_t k = 0; k < picture.wiring.pins.size(); ++k) drawn.push_back({picture.wiring.pins[k], k});
  const auto isDrawn = [&](const core::PinName& name) {
    return std::any_of(drawn.begin(), drawn.end(), [&](const Drawn& d) { return d.pin.name == name; });
  };
  for (const core::Jumper& jumper : picture.jumpers)
    for (const core::PinName& name : {jumper.from, jumper.to})
      if (!isDrawn(name)) drawn.push_back({{name, {}}, std::nullopt});
  return drawn;
}

std::vector<Group> groupsOf(const std::vector<Drawn>& drawn) {
  std::vector<Group> groups;
  for (std::size_t k = 0; k < drawn.size(); ++k) {
    const bool listed = drawn[k].index.has_value();
    const std::string connector = listed ? drawn[k].pin.name.connector : std::string();
    auto found = std::find_if(groups.begin(), groups.end(), [&](const Group& group) {
      return group.connector == connector && group.listed == listed;
    });
    if (found == groups.end()) found = groups.insert(groups.end(), Group{connector, {}, true, listed});
    found->pins.push_back(k);
  }
  return groups;
}

/// Connectors with more resistors than places go to the right; when all lean to one side, the later half
/// does.
void share(std::vector<Group>& groups, const std::vector<Drawn>& drawn) {
  for (Group& group : groups) {
    int lean = group.listed ? 0 : 1;
    for (const std::size_t k : group.pins) {
      if (std::holds_alternative<core::ResistorEnd>(drawn[k].pin.use)) ++lean;
      if (std::holds_alternative<core::Node>(drawn[k].pin.use)) --lean;
    }
    group.left = lean <= 0;
  }
  const auto left = std::count_if(groups.begin(), groups.end(), [](const Group& g) { return g.left; });
  const auto all = static_cast<std::ptrdiff_t>(groups.size());
  if (all == 1) groups.front().left = true;
  if (all < 2 || (left > 0 && left < all)) return;
  for (std::size_t k = 0; k < groups.size(); ++k) groups[k].left = k < (groups.size() + 1) / 2;
}

/// How wide the parts of one column are.
struct Widths {
  double cell = 0, use = 0, mark = 0, title = 0;
  bool some = false;
  double box() const { return std::max(pad + use + pad + mark + cell, title + 2 * pad); }
};

class Layouter {
 public:
  Layouter(const WiringPicture& picture, const QFontMetricsF& metrics)
      : m_picture(picture), m_metrics(metrics), m_rowHeight(std::ceil(metrics.height()) + 8) {}

  WiringLayout take(double width) {
    const auto drawn = drawnPins(m_picture);
    auto groups = groupsOf(drawn);
    share(groups, drawn);
    for (const Group& group : groups) measure(group, drawn);
    place(width);
    double bottom[2] = {edge, edge};
    m_layout.pins.resize(drawn.size());
    for (const Group& group : groups) addConnector(group, drawn, bottom[group.left ? 0 : 1]);
    m_layout.size.setHeight(std::max(bottom[0], bottom[1]) - between + edge);
    for (const core::Jumper& jumper : m_picture.jumpers) addJumper(jumper, drawn);
    return std::move(m_layout);
  }

 private:
  QString fitted(const QString& text, double longest) const {
    return m_metrics.elidedText(text, Qt::ElideRight, longest);
  }
  static QString titleOf(const Group& group) {
    if (!group.listed) return QCoreApplication::translate("ui::WiringLayout", "not in the list");
    return group.connector.empty() ? QCoreApplication::translate("ui::WiringLayout", "no connector")
                                   : toQString(group.connector);
  }
  static QString cellTextOf(const Drawn& drawn) {
    return toQString(drawn.index ? drawn.pin.name.pin : core::pinText(drawn.pin.name));
  }
  static QString useTextOf(const Drawn& drawn) {
    return drawn.index ? pinUseText(drawn.pin.use) : QString("?");
  }

  void measure(const Group& group, const std::vector<Drawn>& drawn) {
    Widths& widths = m_widths[group.left ? 0 : 1];
    widths.some = true;
    widths.mark = m_rowHeight;
    widths.title = std::max(widths.title, m_metrics.horizontalAdvance(fitted(titleOf(group), longestUse)));
    for (const std::size_t k : group.pins) {
      const auto advance = [&](const QString& text, double longest) {
        return std::ceil(m_metrics.horizontalAdvance(fitted(text, longest)));
      };
      widths.use = std::max(widths.use, advance(useTextOf(drawn[k]), longestUse));
      widths.cell = std::max({widths.cell, 34.0, advance(cellTextOf(drawn[k]), longestName) + 2 * pad});
    }
  }

  void place(double width) {
    const double left = m_widths[0].some ? m_widths[0].box() : 0;
    const double right = m_widths[1].some ? m_widths[1].box() : 0;
    const double fixed = left + right + 2 * edge;
    m_gap = std::clamp(width - fixed, leastGap, mostGap);
    const double needed = fixed + m_gap;
    m_layout.size.setWidth(std::max(width, needed));
    const double begin = std::floor((m_layout.size.width() - needed) / 2) + edge;
    m_mating[0] = begin + left;
    m_mating[1] = begin + left + m_gap;
  }

  void addConnector(const Group& group, const std::vector<Drawn>& drawn, double& bottom) {
    const Widths& widths = m_widths[group.left ? 0 : 1];
    const double mating = m_mating[group.left ? 0 : 1];
    const double x = group.left ? mating - widths.box() : mating;
    const double head = m_rowHeight;
    const QRectF box(x, bottom, widths.box(), head + double(group.pins.size()) * m_rowHeight);
    m_layout.connectors.push_back({fitted(titleOf(group), longestUse), box,
                                   QRectF(box.left() + pad, box.top(), box.width() - 2 * pad, head),
                                   group.left, group.listed});
    double y = bottom + head;
    for (const std::size_t k : group.pins) {
      m_layout.pins[k] = pinAt(drawn[k], group.left, QRectF(x, y, box.width(), m_rowHeight));
      y += m_rowHeight;
    }
    bottom = box.bottom() + between;
  }

  PinPlace pinAt(const Drawn& drawn, bool left, const QRectF& row) const {
    const Widths& widths = m_widths[left ? 0 : 1];
    PinPlace at;
    at.pin = drawn.index;
    at.name = drawn.pin.name;
    at.cellText = fitted(cellTextOf(drawn), longestName);
    at.useText = fitted(useTextOf(drawn), longestUse);
    at.row = row;
    at.left = left;
    const double cell = left ? row.right() - widths.cell : row.left();
    at.cell = QRectF(cell, row.top(), widths.cell, row.height());
    at.mark = QRectF(left ? cell - widths.mark : at.cell.right(), row.top(), widths.mark, row.height());
    at.use = left ? QRectF(QPointF(row.left() + pad, row.top()), QPointF(at.mark.left(), row.bottom()))
                  : QRectF(QPointF(at.mark.right(), row.top()), QPointF(row.right() - pad, row.bottom()));
    at.joint = QPointF(left ? row.right() : row.left(), row.center().y());
    return at;
  }

  void addJumper(const core::Jumper& jumper, const std::vector<Drawn>& drawn) {
    const auto find = [&](const core::PinName& name) {
      const auto found =
          std::find_if(drawn.begin(), drawn.end(), [&](const Drawn& d) { return d.pin.name == name; });
      return static_cast<std::size_t>(found - drawn.begin());
    };
    JumperPlace place;
    place.from = find(jumper.from);
    place.to = find(jumper.to);
    const PinPlace &a = m_layout.pins[place.from], &b = m_layout.pins[place.to];
    const double reach = a.left == b.left
                             ? std::min(0.8 * m_gap, 36 + 0.3 * std::abs(a.joint.y() - b.joint.y()))
                             : 0.5 * m_gap;
    const auto out = [&](const PinPlace& pin) { return pin.joint + QPointF(pin.left ? reach : -reach, 0); };
    place.path.moveTo(a.joint);
    place.path.cubicTo(out(a), out(b), b.joint);
    // Beside the middle, in turn, so that the numbers of crossing jumpers lie apart.
    const double along = m_layout.jumpers.size() % 2 == 0 ? 0.36 : 0.64;
    place.middle = place.path.pointAtPercent(along);
    m_layout.jumpers.push_back(std::move(place));
  }

  const WiringPicture& m_picture;
  const QFontMetricsF& m_metrics;
  double m_rowHeight;
  double m_gap = leastGap;
  double m_mating[2] = {0, 0};
  Widths m_widths[2];
  WiringLayout m_layout;
};

}  // namespace

std::map<core::PinName, core::WiringSeverity> marksOf(const std::vector<core::WiringFault>& faults,
                                                      std::optional<std::size_t> shunt) {
  std::map<core::PinName, core::WiringSeverity> marks;
  for (const core::WiringFault& fault : faults) {
    if (fault.shunt && fault.shunt != shunt) continue;
    for (const core::PinName& pin : fault.pins) {
      const auto [mark, isNew] = marks.emplace(pin, fault.severity);
      if (!isNew) mark->second = std::max(mark->second, fault.severity);
    }
  }
  return marks;
}

WiringLayout layOut(const WiringPicture& picture, const QFontMetricsF& metrics, double width) {
  if (picture.wiring.pins.empty() && picture.jumpers.empty()) return {{}, {}, {}, QSizeF(width, 0)};
  return Layouter(picture, metrics).take(width);
}

}  // namespace ui
