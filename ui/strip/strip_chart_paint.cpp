// SPDX-License-Identifier: GPL-3.0-or-later
// How the strip is drawn. Curves are pictures that are kept while they show the same, so that dragging a span
// costs no curve.
#include <QDateTime>
#include <QPainter>
#include <QPainterPath>
#include <QScrollBar>
#include <algorithm>
#include <cmath>

#include "ui/access/focus_ring.h"
#include "ui/outcome/axis_ticks.h"
#include "ui/quantity_edit.h"
#include "ui/strip/strip_chart.h"
#include "ui/strip/time_labels.h"

namespace ui {
namespace {

constexpr double roomAbove = 0.07;  ///< of the values' range, above and below the curve
constexpr int gap_px = 3;

QColor thin(QColor colour, int alpha) {
  colour.setAlpha(alpha);
  return colour;
}

/// A range that can be drawn, with some room.
CurveFrame framed(double begin_s, double end_s, const core::Extremes& range) {
  if (range.empty()) return {begin_s, end_s, -1, 1};
  double half = (range.greatest - range.least) / 2;
  const double size = std::max(std::abs(range.least), std::abs(range.greatest));
  if (half <= 1e-12 * size || half == 0) half = size > 0 ? 0.05 * size : 1;
  const double middle = range.least / 2 + range.greatest / 2;
  return {begin_s, end_s, middle - (1 + 2 * roomAbove) * half, middle + (1 + 2 * roomAbove) * half};
}

int decimalsOf(double step) {
  return std::clamp(static_cast<int>(-std::floor(std::log10(step) + 1e-9)), 0, 9);
}

QString scaleText(double value, double step, double greatest) {
  if (greatest >= 1e7 || greatest < 1e-5) return numberText(value, 3);
  return fixedNumberText(std::abs(value) < 1e-9 * greatest ? 0.0 : value, decimalsOf(step));
}

}  // namespace

QString spanLabel(const StripSpan& span, const QString& unit, const QFontMetrics& metrics, int width) {
  const QString number = span.isOther() ? QString("?") : QString::number(span.place.index + 1);
  QString text = metrics.elidedText(number, Qt::ElideRight, width);
  // A colon, since names such as "+3" look like values.
  for (const QString& longer : {number + ":  " + span.mean, span.name + ":  " + span.mean,
                                span.name + ":  " + span.mean + " " + unit})
    if (metrics.horizontalAdvance(longer) <= width) text = longer;
  return text;
}

double nameEnd(double left, double right, std::span<const double> begins) {
  for (const double next : begins)
    if (next > left) right = std::min(right, next);
  return right;
}

/// Below the band that the names of spans stand in.
QRect StripChart::curveRect(const QRect& lane) const {
  return lane.adjusted(0, fontMetrics().height() + 3, 0, -1);
}

CurveFrame StripChart::frameOf(const StripLane& lane, const CurveParts& parts, int width) const {
  const core::Envelope& envelope = m_open->envelopes[*lane.column];
  core::Extremes range = m_scaledToView ? parts.range : envelope.of(values(lane), 0, values(lane).size());
  if (lane.isChosen && m_compared) range = core::joined(range, comparedParts(width).range);
  return framed(m_begin_s, m_end_s, range);
}

/// What is on view of the compared curve, in columns of device pixels.
CurveParts StripChart::comparedParts(int width) const {
  const core::Recording& recording = m_compared->open->recording;
  const auto edges =
      columnEdges(recording.time, m_begin_s + m_compared->later_s, m_end_s + m_compared->later_s, width);
  return curveParts(m_compared->open->envelopes[m_compared->column],
                    recording.columns[m_compared->column].values, edges);
}

/// Dashed, so that colour is not the only sign.
void StripChart::paintCompared(QPainter& painter, const QRect& curve, const CurveFrame& frame,
                               const QColor& colour) {
  constexpr int dash_px = 8, pause_px = 4;
  const core::Recording& recording = m_compared->open->recording;
  const double ratio = devicePixelRatioF();
  const QSize size = (QSizeF(curve.size()) * ratio).toSize().expandedTo(QSize(1, 1));
  const CurveFrame moved{frame.begin_s + m_compared->later_s, frame.end_s + m_compared->later_s, frame.low,
                         frame.high};
  drawCurve(m_comparedImage, comparedParts(size.width()), recording.time,
            recording.columns[m_compared->column].values, moved, size, ratio, colour);
  QPainter pauses(&m_comparedImage);
  pauses.setCompositionMode(QPainter::CompositionMode_Clear);
  for (int x = dash_px; x < curve.width(); x += dash_px + pause_px)
    pauses.fillRect(x, 0, pause_px, curve.height(), Qt::black);
  pauses.end();
  painter.drawImage(curve.topLeft(), m_comparedImage);
}

const StripChart::Picture& StripChart::pictureOf(std::size_t slot, const StripLane& lane, const QRect& rect,
                                                 const QColor& colour) {
  if (m_pictures.size() <= slot) m_pictures.resize(slot + 1);
  Picture& picture = m_pictures[slot];
  const double ratio = devicePixelRatioF();
  const QSize size = (QSizeF(rect.size()) * ratio).toSize().expandedTo(QSize(1, 1));
  const bool isWhole = slot == 0;
  const double begin_s = isWhole ? wholeBegin_s() : m_begin_s, end_s = isWhole ? wholeEnd_s() : m_end_s;
  // With all of the recording's values the frame changes with the time alone.
  const bool isSame = !picture.image.isNull() && picture.column == *lane.column && picture.size == size &&
                      picture.colour == colour.rgba() && picture.frame.begin_s == begin_s &&
                      picture.frame.end_s == end_s && picture.isScaledToView == m_scaledToView &&
                      picture.isChosen == lane.isChosen;
  if (isSame) return picture;
  const auto edges = columnEdges(time(), begin_s, end_s, size.width());
  const CurveParts parts = curveParts(m_open->envelopes[*lane.column], values(lane), edges);
  picture.frame = isWhole ? framed(begin_s, end_s, parts.range) : frameOf(lane, parts, size.width());
  picture.column = *lane.column;
  picture.size = size;
  picture.colour = colour.rgba();
  picture.isScaledToView = m_scaledToView;
  picture.isChosen = lane.isChosen;
  drawCurve(picture.image, parts, time(), values(lane), picture.frame, size, ratio, colour);
  return picture;
}

void StripChart::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  const Colours colours = coloursFor(palette());
  if (!canDraw()) return;
  for (std::size_t lane = 0; lane < m_lanes.size(); ++lane)
    painter.fillRect(laneRect(lane), colours.background);
  paintTimes(painter, colours);
  for (std::size_t lane = 0; lane < m_lanes.size(); ++lane)
    if (!laneRect(lane).isEmpty()) paintLane(painter, lane, colours);
  paintOverview(painter, colours);
  paintCursor(painter, colours);
  if (!hasFocus()) return;
  painter.setPen(QPen(palette().color(QPalette::Highlight), 1));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(plotRect().adjusted(-1, 0, 0, -1));
}

void StripChart::paintLane(QPainter& painter, std::size_t index, const Colours& colours) {
  const StripLane& lane = m_lanes[index];
  const QRect rect = laneRect(index), curve = curveRect(rect);
  if (!lane.column) {
    painter.setPen(colours.quiet);
    painter.drawText(rect, Qt::AlignCenter, tr("The recording has no column of this channel."));
    return paintScale(painter, lane, rect, {}, colours);
  }
  const std::size_t row = index - static_cast<std::size_t>(m_scroll->value()) + 1;
  const QColor colour = lane.isChosen ? colours.fitted : colours.quiet;
  const Picture& picture = pictureOf(row, lane, curve, colour);
  paintScale(painter, lane, rect, picture.frame, colours);
  painter.save();
  painter.setClipRect(rect);
  const auto isChosen = [&](const StripSpan& span) { return lane.isChosen && m_chosen == span.place; };
  const auto isDragged = [&](const StripSpan& span) {
    return lane.isChosen && m_preview && m_preview->place == span.place;
  };
  for (const StripSpan& span : lane.spans)
    if (!isDragged(span)) paintSpan(painter, lane, span, rect, colours, isChosen(span));
  if (lane.isChosen && m_compared) paintCompared(painter, curve, picture.frame, colours.compared);
  painter.drawImage(curve.topLeft(), picture.image);
  for (const StripSpan& span : lane.spans)
    if (!isDragged(span)) paintMean(painter, lane, span, curve, picture.frame, colours);
  if (lane.isChosen && m_preview) paintPreview(painter, rect, picture.frame, colours);
  painter.restore();
}

void StripChart::paintSpan(QPainter& painter, const StripLane& lane, const StripSpan& span, const QRect& rect,
                           const Colours& colours, bool isChosen) {
  const double left = std::max(xOf(time()[span.samples.begin]), rect.left() - 20.0);
  const double right = std::min(xOf(time()[span.samples.end - 1]), rect.right() + 20.0);
  if (right < rect.left() || left > rect.right()) return;
  const QRectF box(left, rect.top(), std::max(1.5, right - left), rect.height());
  const QColor colour = span.isOther() ? colours.cannotTell : colourOf(colours, span.polarity);
  painter.fillRect(box, thin(colour, colours.dark ? 52 : 34));
  if (span.isOther()) painter.fillRect(box, QBrush(thin(colour, 90), Qt::BDiagPattern));
  painter.setBrush(Qt::NoBrush);
  painter.setPen(isChosen ? QPen(colours.selected, 2)
                          : QPen(thin(colour, 150), 1, span.isOther() ? Qt::DashLine : Qt::SolidLine));
  painter.drawRect(box.adjusted(0.5, 0.5, -0.5, -0.5));
  if (isChosen) {
    // The ends that keys move are the thick ones while the strip has the keyboard.
    const double tall = rect.height() / 3.0, top = rect.center().y() - tall / 2;
    const auto grip = [&](bool moved) { return std::min(hasFocus() && moved ? 6.0 : 3.0, box.width() / 4); };
    const double first = grip(m_keyGrip != Grip::End), last = grip(m_keyGrip != Grip::Begin);
    painter.fillRect(QRectF(box.left(), top, first, tall), colours.selected);
    painter.fillRect(QRectF(box.right() - last, top, last, tall), colours.selected);
  }
  std::vector<double> begins;
  for (const StripSpan& other : lane.spans) begins.push_back(xOf(time()[other.samples.begin]));
  QRectF label = box.intersected(QRectF(rect));
  label.setRight(nameEnd(left, label.right(), begins));
  label.adjust(gap_px, 0, -gap_px, 0);
  painter.setPen(colours.text);
  painter.drawText(QRectF(label.left(), rect.top(), label.width(), fontMetrics().height()), Qt::AlignLeft,
                   spanLabel(span, lane.unit, fontMetrics(), static_cast<int>(label.width())));
}

/// A bar across the span at its mean.
void StripChart::paintMean(QPainter& painter, const StripLane&, const StripSpan& span, const QRect& rect,
                           const CurveFrame& frame, const Colours& colours) {
  const double left = std::max(xOf(time()[span.samples.begin]), rect.left() - 20.0);
  const double right = std::min(xOf(time()[span.samples.end - 1]), rect.right() + 20.0);
  if (right < rect.left() || left > rect.right()) return;
  const double y = rect.top() + (frame.high - span.value) / (frame.high - frame.low) * (rect.height() - 1);
  if (y < rect.top() || y > rect.bottom()) return;
  const QColor colour = span.isOther() ? colours.cannotTell : colourOf(colours, span.polarity);
  painter.setPen(QPen(colour, 1.8, span.isOther() ? Qt::DashLine : Qt::SolidLine, Qt::FlatCap));
  painter.drawLine(QPointF(left, y), QPointF(right, y));
}

void StripChart::paintPreview(QPainter& painter, const QRect& rect, const CurveFrame& frame,
                              const Colours& colours) {
  const double left = xOf(time()[m_preview->samples.begin]), right = xOf(time()[m_preview->samples.end - 1]);
  const QRectF box = QRectF(left, rect.top(), std::max(2.0, right - left), rect.height());
  painter.fillRect(box, thin(colours.selected, 50));
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(colours.selected, 2));
  painter.drawRect(box.adjusted(0.5, 0.5, -0.5, -0.5));
  const StripLane& lane = m_lanes[m_own];
  if (std::isfinite(m_preview->mean)) {
    const QRect curve = curveRect(rect);
    const double y =
        curve.top() + (frame.high - m_preview->mean) / (frame.high - frame.low) * (curve.height() - 1);
    painter.drawLine(QPointF(left, y), QPointF(right, y));
  }
  const QString mean = std::isfinite(m_preview->mean)
                           ? fixedNumberText(m_preview->mean, lane.decimals) + " " + lane.unit
                           : tr("no number");
  const double spacing_s = least_s() / 6,
               greatest_s = std::max(std::abs(wholeBegin_s()), std::abs(wholeEnd_s()));
  const QString text = tr("%1,  %2 to %3")
                           .arg(mean, timeText(time()[m_preview->samples.begin], spacing_s, greatest_s),
                                timeText(time()[m_preview->samples.end - 1], spacing_s, greatest_s));
  const int wide = fontMetrics().horizontalAdvance(text) + 2 * gap_px;
  const double x =
      std::clamp(left, 1.0 * rect.left(), std::max(1.0 * rect.left(), rect.right() - 1.0 * wide));
  const QRectF back(x, rect.top(), wide, fontMetrics().height() + 1);
  painter.fillRect(back, colours.selected);
  painter.setPen(colours.background);
  painter.drawText(back, Qt::AlignCenter, text);
}

/// Name and unit of the lane and the numbers of its values, at the left of it.
void StripChart::paintScale(QPainter& painter, const StripLane& lane, const QRect& rect,
                            const CurveFrame& frame, const Colours& colours) {
  const QFontMetrics metrics = fontMetrics();
  const int names = std::min(width() / 8, metrics.horizontalAdvance("MMMM-99"));
  QFont bold = font();
  bold.setBold(lane.isChosen);
  painter.setFont(bold);
  painter.setPen(colours.text);
  const QRect name(8, rect.top(), names - 10, metrics.height());
  painter.drawText(name, Qt::AlignLeft | Qt::AlignVCenter,
                   QFontMetrics(bold).elidedText(lane.name, Qt::ElideRight, name.width()));
  painter.setFont(font());
  painter.setPen(colours.quiet);
  painter.drawText(name.translated(0, metrics.height()), Qt::AlignLeft | Qt::AlignVCenter,
                   metrics.elidedText(lane.unit, Qt::ElideRight, name.width()));
  // The edge of the chosen row; one row alone needs none.
  if (lane.isChosen && m_lanes.size() > 1)
    painter.fillRect(QRect(FocusRing::thickness_px, rect.top(), 3, rect.height()), colours.selected);
  if (lane.isChosen && m_compared) {
    // Its name underlined as its curve is drawn.
    const QRect third = name.translated(0, 2 * metrics.height());
    if (third.bottom() < rect.bottom()) {
      const QString text = metrics.elidedText(m_compared->name, Qt::ElideRight, third.width());
      const int end = third.left() + metrics.horizontalAdvance(text);
      painter.setPen(QPen(colours.compared, 1, Qt::DashLine));
      painter.drawText(third, Qt::AlignLeft | Qt::AlignVCenter, text);
      painter.drawLine(third.left(), third.bottom() + 1, end, third.bottom() + 1);
    }
  }
  if (!lane.column) return;
  const QRect curve = curveRect(rect);
  const int count = std::max(3, curve.height() / (2 * metrics.height()));
  const double step = niceTicks({frame.low, frame.high, false}, count, 0).step;
  const double greatest = std::max(std::abs(frame.low), std::abs(frame.high));
  int lowestText = rect.bottom() + 1;
  for (const double value : multiples(step, frame.low, frame.high)) {
    const int y = curve.top() +
                  static_cast<int>((frame.high - value) / (frame.high - frame.low) * (curve.height() - 1));
    painter.setPen(colours.grid);
    painter.drawLine(rect.left(), y, rect.right(), y);
    const int top = std::clamp(y - metrics.height() / 2, rect.top(),
                               std::max(rect.top(), rect.bottom() - metrics.height() + 1));
    if (top + metrics.height() > lowestText) continue;
    lowestText = top;
    painter.setPen(colours.quiet);
    painter.drawText(QRect(names, top, rect.left() - names - 5, metrics.height()),
                     Qt::AlignRight | Qt::AlignVCenter, scaleText(value, step, greatest));
  }
}

void StripChart::paintTimes(QPainter& painter, const Colours& colours) {
  const QRect plot = plotRect();
  const QFontMetrics metrics = fontMetrics();
  const double greatest_s = std::max(std::abs(m_begin_s), std::abs(m_end_s));
  const int room = metrics.horizontalAdvance("88:88:88.888") + 12;
  const TimeTicks ticks = timeTicks(m_begin_s, m_end_s, std::max(1, plot.width() / room));
  const int top = plot.bottom() + 1;
  painter.setPen(colours.quiet);
  painter.drawText(QRect(8, top, plot.left() - 11, metrics.height() + 2), Qt::AlignLeft | Qt::AlignVCenter,
                   timeUnitText(greatest_s));
  for (const double tick_s : ticks.times_s) {
    const int x = static_cast<int>(xOf(tick_s));
    painter.setPen(colours.grid);
    painter.drawLine(x, plot.top(), x, plot.bottom() + 3);
    const QRect text(x - room / 2, top + 1, room, metrics.height());
    if (text.left() < plot.left() - room / 2 || text.right() > width()) continue;
    painter.setPen(colours.quiet);
    painter.drawText(text, Qt::AlignHCenter | Qt::AlignVCenter, timeText(tick_s, ticks.step_s, greatest_s));
  }
}

void StripChart::paintCursor(QPainter& painter, const Colours& colours) {
  const QRect lanes = plotRect();
  const auto isShown = [&](double at_s) { return at_s >= m_begin_s && at_s <= m_end_s; };
  if (m_mouse_s && m_cursor_s && isShown(*m_cursor_s)) {
    painter.setPen(QPen(colours.text, 1));
    painter.drawLine(QPointF(xOf(*m_cursor_s), lanes.top()), QPointF(xOf(*m_cursor_s), lanes.bottom()));
  }
  const auto sample = cursorSample();
  if (!sample || !isShown(m_mouse_s ? *m_mouse_s : *m_cursor_s)) return;
  const StripLane& lane = m_lanes[std::min(m_cursorLane, m_lanes.size() - 1)];
  const QRect plot = plotRect();
  const double at_s = time()[*sample],
               x = std::clamp(xOf(at_s), 1.0 * plot.left(), 1.0 * std::max(plot.left(), plot.right()));
  painter.setPen(QPen(colours.text, 1, Qt::DotLine));
  painter.drawLine(QPointF(x, plot.top()), QPointF(x, plot.bottom()));
  const double step_s =
      std::pow(10, std::floor(std::log10(std::max(least_s() / 6, (m_end_s - m_begin_s) / 1e4))));
  const double greatest_s = std::max(std::abs(wholeBegin_s()), std::abs(wholeEnd_s()));
  QString text = timeText(at_s, step_s, greatest_s) + " " + timeUnitText(greatest_s);
  const QDateTime started = QDateTime::fromString(toQString(m_open->recording.startedAt), Qt::ISODateWithMs);
  if (started.isValid())
    text += "  (" +
            started.addMSecs(std::llround(1000 * (at_s - time().front()))).time().toString("HH:mm:ss") + ")";
  const double value = lane.column ? values(lane)[*sample] : std::nan("");
  text += "   " + (std::isfinite(value) ? numberText(value, 7) + " " + lane.unit : tr("no number"));
  if (m_lanes.size() > 1) text += "  " + lane.name;
  const int wide = fontMetrics().horizontalAdvance(text) + 10;
  const QRectF back(
      std::clamp(x - wide / 2.0, 1.0 * plot.left(), std::max(1.0 * plot.left(), plot.right() - 1.0 * wide)),
      plot.bottom() + 1, wide, fontMetrics().height() + 2);
  painter.fillRect(back, colours.text);
  painter.setPen(colours.background);
  painter.drawText(back, Qt::AlignCenter, text);
}

void StripChart::paintOverview(QPainter& painter, const Colours& colours) {
  const QRect rect = overviewRect();
  const StripLane& lane = m_lanes[m_own];
  painter.fillRect(rect, colours.background);
  if (!lane.column) return;
  painter.drawImage(rect.topLeft(), pictureOf(0, lane, rect, colours.quiet).image);
  const auto x = [&](double time_s) {
    return rect.left() + (time_s - wholeBegin_s()) / (wholeEnd_s() - wholeBegin_s()) * rect.width();
  };
  for (const StripSpan& span : lane.spans) {
    const double left = x(time()[span.samples.begin]), right = x(time()[span.samples.end - 1]);
    const QColor colour = m_chosen == span.place ? colours.selected
                          : span.isOther()       ? colours.cannotTell
                                                 : colourOf(colours, span.polarity);
    painter.fillRect(QRectF(left, rect.bottom() - 2, std::max(1.0, right - left), 3), colour);
  }
  const QRectF shown(x(m_begin_s), rect.top(), std::max(3.0, x(m_end_s) - x(m_begin_s)), rect.height());
  const QColor shade = thin(palette().color(QPalette::Window), 170);
  painter.fillRect(QRectF(rect.left(), rect.top(), shown.left() - rect.left(), rect.height()), shade);
  painter.fillRect(QRectF(shown.right(), rect.top(), rect.right() + 1 - shown.right(), rect.height()), shade);
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(palette().color(QPalette::Highlight), 1.5));
  painter.drawRect(shown.adjusted(0.5, 0.5, -0.5, -0.5));
}

}  // namespace ui
