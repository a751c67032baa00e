// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/curve.h"

#include <QList>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace ui {
namespace {

constexpr std::size_t samplesOfAStroke = 1;  ///< fewer to a pixel are drawn one by one
constexpr int smoothRoom_px = 3;  ///< lines between samples nearer than this are not smoothed: too many
constexpr double dotRoom_px = 7;  ///< samples farther apart are marked

double yOf(double value, const CurveFrame& frame, int height) {
  const double share = (frame.high - value) / (frame.high - frame.low);
  // Far outside is as good as just outside, and keeps the numbers of the painter small.
  return std::clamp(share, -2.0, 3.0) * (height - 1);
}

void drawStrokes(QPainter& painter, const CurveParts& parts, const CurveFrame& frame, QSize size,
                 double pixelRatio, const QColor& colour) {
  QList<QRectF> strokes;
  strokes.reserve(size.width());
  for (std::size_t k = 0; k < parts.extremes.size(); ++k) {
    const core::Extremes& part = parts.extremes[k];
    if (part.empty()) continue;
    const double top = yOf(part.greatest, frame, size.height()),
                 bottom = yOf(part.least, frame, size.height());
    const double thickness = std::max(0.0, 1.4 * pixelRatio - (bottom - top));
    strokes.append(QRectF(static_cast<double>(k), top - thickness / 2, 1, bottom - top + thickness));
  }
  painter.setPen(Qt::NoPen);
  painter.setBrush(colour);
  painter.drawRects(strokes);
}

void drawSamples(QPainter& painter, const CurveParts& parts, const core::TimeAxis& time,
                 std::span<const double> values, const CurveFrame& frame, QSize size, double pixelRatio,
                 const QColor& colour) {
  const double perSecond = size.width() / (frame.end_s - frame.begin_s);
  const auto samples = std::max<std::size_t>(1, parts.samples.size());
  const bool dots = size.width() / static_cast<double>(samples) > dotRoom_px * pixelRatio;
  const bool smooth = static_cast<double>(samples) * smoothRoom_px <= size.width();
  painter.setRenderHint(QPainter::Antialiasing, smooth);
  painter.setPen(QPen(colour, smooth ? 1.4 * pixelRatio : 1, Qt::SolidLine, Qt::FlatCap));
  // Single lines, since one path that crosses itself thousands of times takes seconds to fill.
  QList<QLineF> lines;
  QList<QPointF> points;
  bool isAfterGap = true;
  for (std::size_t k = parts.samples.begin; k < parts.samples.end; ++k) {
    if (std::isnan(values[k])) {
      isAfterGap = true;
      continue;
    }
    points.append({(time[k] - frame.begin_s) * perSecond, yOf(values[k], frame, size.height())});
    if (!isAfterGap) lines.append(QLineF(points[points.size() - 2], points.last()));
    isAfterGap = false;
  }
  painter.drawLines(lines);
  painter.setPen(Qt::NoPen);
  painter.setBrush(colour);
  for (const QPointF& point : std::as_const(points))
    if (dots) painter.drawEllipse(point, 2 * pixelRatio, 2 * pixelRatio);
}

}  // namespace

std::vector<std::size_t> columnEdges(const core::TimeAxis& time, double begin_s, double end_s, int width) {
  std::vector<std::size_t> edges;
  edges.reserve(static_cast<std::size_t>(width) + 1);
  for (int x = 0; x <= width; ++x) edges.push_back(time.indexAt(begin_s + (end_s - begin_s) * x / width));
  return edges;
}

CurveParts curveParts(const core::Envelope& envelope, std::span<const double> values,
                      const std::vector<std::size_t>& edges) {
  CurveParts parts;
  parts.samples.begin = edges.front() > 0 ? edges.front() - 1 : 0;
  parts.samples.end = std::min(values.size(), edges.back() + 1);
  const std::size_t columns = edges.size() - 1;
  if (parts.samples.size() <= samplesOfAStroke * columns) {
    parts.range = envelope.of(values, std::min(edges.front(), parts.samples.end), edges.back());
    if (parts.range.empty()) parts.range = envelope.of(values, parts.samples.begin, parts.samples.end);
    return parts;
  }
  parts.extremes.reserve(columns);
  for (std::size_t k = 0; k < columns; ++k) {
    // With the sample before, so that strokes of neighbouring columns meet. A single column that no sample
    // falls into is of rounding and drawn across; more of them are a pause of the recording.
    const auto isEmpty = [&](std::size_t column) { return edges[column] == edges[column + 1]; };
    const bool isPause = isEmpty(k) && (k == 0 || isEmpty(k - 1) || k + 1 == columns || isEmpty(k + 1));
    const std::size_t first = edges[k] > parts.samples.begin ? edges[k] - 1 : edges[k];
    const std::size_t last = isEmpty(k) ? std::min(edges[k] + 1, parts.samples.end) : edges[k + 1];
    parts.extremes.push_back(isPause ? core::Extremes{} : envelope.of(values, first, last));
    parts.range = core::joined(parts.range, parts.extremes.back());
  }
  return parts;
}

void drawCurve(QImage& image, const CurveParts& parts, const core::TimeAxis& time,
               std::span<const double> values, const CurveFrame& frame, QSize size, double pixelRatio,
               const QColor& colour) {
  if (image.size() != size) image = QImage(size, QImage::Format_ARGB32_Premultiplied);
  image.setDevicePixelRatio(1);
  image.fill(Qt::transparent);
  QPainter painter(&image);
  if (parts.extremes.empty())
    drawSamples(painter, parts, time, values, frame, size, pixelRatio, colour);
  else
    drawStrokes(painter, parts, frame, size, pixelRatio, colour);
  painter.end();
  image.setDevicePixelRatio(pixelRatio);
}

}  // namespace ui
