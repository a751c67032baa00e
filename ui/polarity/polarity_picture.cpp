// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/polarity/polarity_picture.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPathStroker>
#include <QToolTip>
#include <algorithm>
#include <cmath>

#include "ui/polarity/polarity_model.h"

namespace ui {
namespace {

constexpr double spotRadius = 4.5, reach = 10;
constexpr double armBand = 9;
constexpr int forget_ms = 700;

}  // namespace

PolarityPicture::PolarityPicture(const PolarityShown& shown, QWidget* parent)
    : QWidget(parent), m_shown(shown), m_colours(coloursFor(palette())) {
  setObjectName("polarityPicture");
  setAccessibleName(tr("Picture of the polarity map"));
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  m_forget.setSingleShot(true);
  m_forget.setInterval(forget_ms);
  connect(&m_forget, &QTimer::timeout, this, [this] {
    m_hovered.reset();
    update();
  });
}

void PolarityPicture::follow() {
  const std::size_t count = m_shown.count();
  const auto valid = [&](std::optional<PolarityPair> pair) {
    return pair && std::max(pair->i, pair->j) < count;
  };
  if (!valid(m_current)) m_current.reset();
  if (!valid(m_pointed)) m_pointed.reset();
  if (m_picked && *m_picked >= count) m_picked.reset();
  if (m_hovered && *m_hovered >= count) m_hovered.reset();
  setAccessibleDescription(describeMap(m_shown, m_current));
  update();
}

void PolarityPicture::setCurrent(std::optional<PolarityPair> pair) {
  if (m_current == pair) return;
  m_current = pair;
  if (m_picked && pair && pair->i != *m_picked) m_picked = pair->i;
  setAccessibleDescription(describeMap(m_shown, m_current));
  update();
}

QFont PolarityPicture::chipFont() const {
  QFont chips = font();
  // Larger with the room, so that a projector's picture is read from the last row; room counts in letters,
  // for what is presented has large ones already.
  const double letter = fontMetrics().height();
  const double room = std::min(width() / (28 * letter), height() / (24 * letter));
  chips.setPointSizeF(font().pointSizeF() * std::clamp(room, 0.9, 1.6));
  chips.setBold(true);
  return chips;
}

QFont PolarityPicture::nameFont() const {
  QFont names = chipFont();
  names.setBold(false);
  return names;
}

PolarityLayout PolarityPicture::layoutNow() const {
  if (m_shown.count() == 0) return {};
  const double legend = fontMetrics().height() + 4;
  return polarityLayout(m_shown, QRectF(rect()).adjusted(2, legend, -2, -legend), metrics());
}

std::optional<std::size_t> PolarityPicture::pickedNow() const {
  if (m_hovered) return m_hovered;
  if (m_picked) return m_picked;
  // A pair that has no chip of its own is shown in its row.
  if (m_current && !isUsual(*m_current)) return m_current->i;
  return std::nullopt;
}

std::vector<PolarityChip> PolarityPicture::chipsNow() const {
  if (m_shown.count() == 0) return {};
  const PolarityLayout layout = layoutNow();
  const auto picked = pickedNow();
  return picked ? chipsFrom(m_shown, layout, *picked, metrics()) : usualChips(m_shown, layout, metrics());
}

bool PolarityPicture::isUsual(PolarityPair pair) const {
  const core::PolarityCell& cell = m_shown.map.at(pair.i, pair.j);
  return isOverArm(m_shown.bridge(), cell) ||
         (cell.a < core::Node::SensePlus && cell.b < core::Node::SensePlus);
}

bool PolarityPicture::isCurrent(PolarityPair pair) const {
  const auto shown = m_pointed ? m_pointed : m_current;
  return shown && m_shown.map.cellOf(shown->i, shown->j) == m_shown.map.cellOf(pair.i, pair.j);
}

bool PolarityPicture::isPresent(PolarityPair pair) const {
  return m_shown.present == m_shown.map.cellOf(pair.i, pair.j);
}

// ---- pointer and keyboard --------------------------------------------------------------------

std::optional<std::size_t> PolarityPicture::spotAt(QPointF place) const {
  const PolarityLayout layout = layoutNow();
  std::optional<std::size_t> nearest;
  double least = reach;
  for (std::size_t k = 0; k < layout.spots.size(); ++k) {
    const QPointF off = layout.spots[k].at - place;
    const double distance = std::hypot(off.x(), off.y());
    if (distance > least) continue;
    least = distance;
    nearest = k;
  }
  return nearest;
}

std::optional<PolarityPair> PolarityPicture::pairAt(QPointF place) const {
  const auto chips = chipsNow();
  for (const PolarityChip& chip : chips)
    if (chip.box.adjusted(-2, -2, 2, 2).contains(place)) return chip.pair;
  const PolarityLayout layout = layoutNow();
  QPainterPathStroker stroker;
  stroker.setWidth(armBand + 3);
  for (const PolarityChip& chip : chips)
    if (stroker.createStroke(layout.pathOf(chip.pair)).contains(place)) return chip.pair;
  return std::nullopt;
}

void PolarityPicture::point(QPointF place) {
  auto hovered = spotAt(place);
  auto pointed = hovered ? std::nullopt : pairAt(place);
  // On the way from a point to one of its chips the row stays spread out.
  if (hovered && m_picked && hovered != m_picked) {
    pointed = PolarityPair{*m_picked, *hovered};
    hovered.reset();
  }
  const bool nothing = !hovered && !pointed;
  if (nothing && m_hovered && !m_forget.isActive()) m_forget.start();
  if (!nothing) m_forget.stop();
  if (!hovered && (nothing || (pointed && pointed->i == m_hovered))) hovered = m_hovered;
  if (hovered == m_hovered && pointed == m_pointed) return;
  m_hovered = hovered;
  m_pointed = pointed;
  setCursor(!nothing ? Qt::PointingHandCursor : Qt::ArrowCursor);
  emit pointedAt(pointed);
  update();
}

void PolarityPicture::mouseMoveEvent(QMouseEvent* event) { point(event->position()); }

void PolarityPicture::leaveEvent(QEvent* event) {
  m_forget.stop();
  m_hovered.reset();
  m_pointed.reset();
  emit pointedAt(std::nullopt);
  update();
  QWidget::leaveEvent(event);
}

void PolarityPicture::mouseReleaseEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton) return;
  point(event->position());
  if (m_pointed) {
    const PolarityPair pair = *m_pointed;
    emit currentChanged(pair);
    emit activated(pair);
  } else if (const auto spot = spotAt(event->position())) {
    m_picked = m_picked == spot ? std::nullopt : spot;
  } else {
    m_picked.reset();
    m_hovered.reset();
  }
  update();
}

void PolarityPicture::step(std::size_t PolarityPair::*end, int direction) {
  const std::size_t count = m_shown.count();
  PolarityPair pair = m_current.value_or(PolarityPair{0, 0});
  do pair.*end = (pair.*end + count + static_cast<std::size_t>(direction + static_cast<int>(count))) % count;
  while (pair.i == pair.j);
  m_picked = pair.i;
  m_hovered.reset();
  m_pointed.reset();
  emit currentChanged(pair);
}

void PolarityPicture::keyPressEvent(QKeyEvent* event) {
  if (m_shown.count() < 2) return QWidget::keyPressEvent(event);
  switch (event->key()) {
    case Qt::Key_Left:
      return step(&PolarityPair::j, -1);
    case Qt::Key_Right:
      return step(&PolarityPair::j, 1);
    case Qt::Key_Up:
      return step(&PolarityPair::i, -1);
    case Qt::Key_Down:
      return step(&PolarityPair::i, 1);
    case Qt::Key_Return:
    case Qt::Key_Enter:
      if (m_current) emit activated(*m_current);
      return;
    case Qt::Key_Escape:
      if (!m_picked && !m_hovered) return QWidget::keyPressEvent(event);
      m_picked.reset();
      m_hovered.reset();
      return update();
    default:
      QWidget::keyPressEvent(event);
  }
}

void PolarityPicture::focusInEvent(QFocusEvent* event) {
  QWidget::focusInEvent(event);
  update();
}

bool PolarityPicture::event(QEvent* event) {
  if (event->type() != QEvent::ToolTip) return QWidget::event(event);
  auto* help = static_cast<QHelpEvent*>(event);
  QString text;
  if (const auto pair = m_shown.count() > 0 ? pairAt(help->pos()) : std::nullopt)
    text = cellSentence(m_shown, m_shown.map.at(pair->i, pair->j));
  else if (const auto spot = spotAt(help->pos()))
    text = toQString(core::pointName(m_shown.bridge(), m_shown.map.points[*spot]));
  // Escaped, for a tip shows text that looks like markup as markup.
  QToolTip::showText(help->globalPos(), text.isEmpty() ? QString() : "<qt>" + text.toHtmlEscaped() + "</qt>",
                     this);
  return true;
}

void PolarityPicture::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange) m_colours = coloursFor(palette());
  QWidget::changeEvent(event);
}

// ---- painting --------------------------------------------------------------------------------

void PolarityPicture::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillRect(rect(), m_colours.background);
  if (m_shown.count() == 0) {
    painter.setPen(m_colours.quiet);
    painter.drawText(rect().adjusted(8, 8, -8, -8), Qt::AlignCenter | Qt::TextWordWrap,
                     describeMap(m_shown, std::nullopt));
    return;
  }
  const PolarityLayout layout = layoutNow();
  const auto chips = chipsNow();
  paintBridge(painter, layout);
  paintPairs(painter, layout, chips);
  painter.setFont(chipFont());
  for (const PolarityChip& chip : chips) paintChip(painter, chip);
  paintLegend(painter);
  if (!hasFocus()) return;
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(palette().color(QPalette::Highlight), 2));
  painter.drawRect(rect().adjusted(1, 1, -1, -1));
}

/// Leads and points; the arms themselves are drawn with what lies over them.
void PolarityPicture::paintBridge(QPainter& painter, const PolarityLayout& layout) const {
  for (const PolarityLayout::Lead& lead : layout.leads) {
    painter.setPen(QPen(m_colours.quiet, 1.2, lead.broken ? Qt::DotLine : Qt::SolidLine));
    painter.drawLine(layout.spots[lead.from].at, layout.spots[lead.to].at);
  }
  if (pickedNow())
    for (const PolarityLayout::Arm& arm : layout.arms) {
      painter.setPen(QPen(m_colours.grid, armBand, Qt::SolidLine, Qt::RoundCap));
      painter.drawLine(layout.spots[arm.begin].at, layout.spots[arm.end].at);
    }
}

void PolarityPicture::paintPairs(QPainter& painter, const PolarityLayout& layout,
                                 const std::vector<PolarityChip>& chips) const {
  const bool spread = pickedNow().has_value();
  painter.setBrush(Qt::NoBrush);
  for (const PolarityChip& chip : chips) {
    const QPainterPath path = layout.pathOf(chip.pair);
    if (isPresent(chip.pair)) {
      painter.setPen(
          QPen(m_colours.selected, (chip.overArm && !spread ? armBand : 2) + 6, Qt::SolidLine, Qt::RoundCap));
      painter.drawPath(path);
    }
    const core::Polarity polarity = polarityOf(m_shown, m_shown.map.at(chip.pair.i, chip.pair.j));
    const double width = isCurrent(chip.pair) ? 4 : 1.8;
    const bool band = chip.overArm && !spread;
    painter.setPen(QPen(colourOf(m_colours, polarity), band ? armBand : width,
                        polarity == core::Polarity::None ? Qt::DashLine : Qt::SolidLine, Qt::RoundCap));
    painter.drawPath(path);
  }
  const auto picked = pickedNow();
  painter.setFont(nameFont());
  for (std::size_t k = 0; k < layout.spots.size(); ++k) {
    const PolaritySpot& spot = layout.spots[k];
    painter.setPen(QPen(m_colours.text, 1.6));
    painter.setBrush(spot.terminal ? m_colours.background : m_colours.text);
    painter.drawEllipse(spot.at, spotRadius, spotRadius);
    if (picked == k) {
      painter.setBrush(Qt::NoBrush);
      painter.setPen(QPen(palette().color(QPalette::Highlight), 2));
      painter.drawEllipse(spot.at, spotRadius + 4, spotRadius + 4);
    }
    QColor behind = m_colours.background;
    behind.setAlphaF(0.75F);  // a line that runs through a name must not hide it
    painter.fillRect(spot.nameBox, behind);
    painter.setPen(picked == k ? m_colours.text : m_colours.quiet);
    painter.drawText(spot.nameBox, Qt::AlignCenter | Qt::TextDontClip,
                     shortPointText(m_shown.bridge(), m_shown.map.points[k]));
  }
}

void PolarityPicture::paintChip(QPainter& painter, const PolarityChip& chip) const {
  const core::PolarityCell& cell = m_shown.map.at(chip.pair.i, chip.pair.j);
  const core::Polarity polarity = polarityOf(m_shown, cell);
  const bool current = isCurrent(chip.pair);
  const QColor edge = current                ? m_colours.text
                      : isPresent(chip.pair) ? m_colours.selected
                                             : colourOf(m_colours, polarity);
  painter.setPen(QPen(edge, current || isPresent(chip.pair) ? 2.4 : 1));
  painter.setBrush(tintOf(m_colours, polarity, 0.5 * strengthOf(m_shown, cell)));
  painter.drawRoundedRect(chip.box, 4, 4);
  painter.setPen(polarity == core::Polarity::None ? m_colours.quiet : m_colours.text);
  painter.drawText(chip.box, Qt::AlignCenter, chip.text);
}

/// Signs beside what is shown, else beside the kinds of points; what is shown is cut where it is alone in its
/// line.
PolarityLegend PolarityPicture::legend() const {
  const QFontMetrics metrics = fontMetrics();
  constexpr int apart = 12;
  const int width = this->width() - 12;
  PolarityLegend legend{m_shown.shunt + ": " + quantityWithUnit(m_shown, m_shown.quantity),
                        tr("○ terminal  ● gauge end"), tr("+ positive") + "  ", tr("− negative"), false};
  const int signs = metrics.horizontalAdvance(legend.plus + legend.minus) + apart;
  legend.signsBelow = metrics.horizontalAdvance(legend.what) + signs > width &&
                      metrics.horizontalAdvance(legend.points) + signs <= width;
  legend.what = metrics.elidedText(legend.what, Qt::ElideLeft, legend.signsBelow ? width : width - signs);
  return legend;
}

void PolarityPicture::paintLegend(QPainter& painter) const {
  painter.setFont(font());
  painter.setPen(m_colours.quiet);
  const QRect box = rect().adjusted(6, 3, -6, -3);
  const PolarityLegend legend = this->legend();
  painter.drawText(box, Qt::AlignLeft | Qt::AlignTop, legend.what);
  painter.drawText(box, Qt::AlignLeft | Qt::AlignBottom, legend.points);
  const Qt::Alignment beside = legend.signsBelow ? Qt::AlignBottom : Qt::AlignTop;
  const int signs = static_cast<int>((Qt::AlignRight | beside).toInt());
  painter.setPen(m_colours.positive);
  const int minusWidth = fontMetrics().horizontalAdvance(legend.minus);
  painter.drawText(box.adjusted(0, 0, -minusWidth, 0), signs, legend.plus);
  painter.setPen(m_colours.negative);
  painter.drawText(box, signs, legend.minus);
}

TwinTable PolarityPicture::twin() const {
  if (!m_shown.channel || m_shown.count() == 0) return {};
  TwinTable table{{tr("From"), tr("To"), quantityWithUnit(m_shown, m_shown.quantity), tr("Polarity")}, {}};
  for (const core::PolarityCell& cell : m_shown.map.cells)
    table.rows << QStringList{shortPointText(m_shown.bridge(), cell.a),
                              shortPointText(m_shown.bridge(), cell.b), cellText(m_shown, cell),
                              polarityText(polarityOf(m_shown, cell))};
  return table;
}

}  // namespace ui
