// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/curve.h"

#include <QList>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <limits>

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

/// The rows that each column of pixels is covered in: from top to bottom - 1, none where top >= bottom.
struct Strokes {
  std::vector<int> top, bottom;
};

/// `upper` and `lower` of a column are where its stroke would begin and end; NaN where there is none.
void addStroke(Strokes& strokes, double upper, double lower, QSize size, double pixelRatio) {
  if (std::isnan(upper)) {
    strokes.top.push_back(1), strokes.bottom.push_back(0);
    return;
  }
  // A whole number of rows, or a level would look thicker wherever it lies between two.
  const int thickness = std::max(1, static_cast<int>(std::lround(1.4 * pixelRatio)));
  const auto row = [&](double y) {
    return static_cast<int>(std::lround(std::clamp(y, -10.0, size.height() + 10.0)));
  };
  const int top = row(upper);
  strokes.top.push_back(top);
  strokes.bottom.push_back(std::max(row(lower), top + thickness));
}

Strokes strokesOf(const CurveParts& parts, const CurveFrame& frame, QSize size, double pixelRatio) {
  Strokes strokes;
  constexpr double none = std::numeric_limits<double>::quiet_NaN();
  for (const core::Extremes& part : parts.extremes)
    addStroke(strokes, part.empty() ? none : yOf(part.greatest, frame, size.height()),
              part.empty() ? none : yOf(part.least, frame, size.height()), size, pixelRatio);
  return strokes;
}

/// Row by row, as memory lies: a column at a time takes ten times as long.
void fillStrokes(QImage& image, const Strokes& strokes, const QColor& colour) {
  const QRgb ink = qPremultiply(colour.rgba());
  const int width = std::min(image.width(), static_cast<int>(strokes.top.size()));
  const int *top = strokes.top.data(), *bottom = strokes.bottom.data();
  for (int y = 0; y < image.height(); ++y) {
    auto* line = reinterpret_cast<QRgb*>(image.scanLine(y));
    for (int x = 0; x < width; ++x) line[x] = top[x] <= y && y < bottom[x] ? ink : 0;
  }
}

/// The column of pixels that holds `x`; 0 for what lies before them, `width` for what lies behind.
int leftColumn(double x, int width) {
  return static_cast<int>(std::min(std::max(0.0, std::floor(x)), static_cast<double>(width)));
}

/// Lines from sample to sample as strokes: where each column of pixels is crossed by them.
Strokes strokesOfLines(const CurveParts& parts, const core::TimeAxis& time, std::span<const double> values,
                       const CurveFrame& frame, QSize size, double pixelRatio) {
  constexpr double far = std::numeric_limits<double>::infinity();
  std::vector<double> upper(static_cast<std::size_t>(size.width()), far), lower(upper.size(), -far);
  const double perSecond = size.width() / (frame.end_s - frame.begin_s);
  for (std::size_t k = parts.samples.begin + 1; k < parts.samples.end; ++k) {
    if (std::isnan(values[k])) continue;
    // A number alone among missing ones is a mark of its own.
    const std::size_t before = std::isnan(values[k - 1]) ? k : k - 1;
    const double x0 = (time[before] - frame.begin_s) * perSecond, x1 = (time[k] - frame.begin_s) * perSecond;
    const double y0 = yOf(values[before], frame, size.height()), y1 = yOf(values[k], frame, size.height());
    const double slope = x1 > x0 ? (y1 - y0) / (x1 - x0) : 0;
    const double last = std::min(x1, size.width() - 1.0);
    for (int at = leftColumn(x0, size.width()); at <= last; ++at) {
      // At one time both samples stand in one column.
      const double begin = x1 > x0 ? y0 + slope * (std::max<double>(x0, at) - x0) : y0;
      const double end = x1 > x0 ? y0 + slope * (std::min<double>(x1, at + 1) - x0) : y1;
      const auto column = static_cast<std::size_t>(at);
      upper[column] = std::min({upper[column], begin, end});
      lower[column] = std::max({lower[column], begin, end});
    }
  }
  Strokes strokes;
  constexpr double none = std::numeric_limits<double>::quiet_NaN();
  for (std::size_t at = 0; at < upper.size(); ++at)
    addStroke(strokes, upper[at] > lower[at] ? none : upper[at], lower[at], size, pixelRatio);
  return strokes;
}

void drawSamples(QPainter& painter, const CurveParts& parts, const core::TimeAxis& time,
                 std::span<const double> values, const CurveFrame& frame, QSize size, double pixelRatio,
                 const QColor& colour) {
  const double perSecond = size.width() / (frame.end_s - frame.begin_s);
  const auto samples = std::max<std::size_t>(1, parts.samples.size());
  const bool dots = size.width() / static_cast<double>(samples) > dotRoom_px * pixelRatio;
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(colour, 1.4 * pixelRatio, Qt::SolidLine, Qt::FlatCap));
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
    const bool isAlone = isAfterGap && (k + 1 == parts.samples.end || std::isnan(values[k + 1]));
    if (!isAfterGap) lines.append(QLineF(points[points.size() - 2], points.last()));
    if (isAlone) lines.append(QLineF(points.last() - QPointF(1, 0), points.last() + QPointF(1, 0)));
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
    parts.extremes.push_back(isPause ? core::Extremes{} : envelope.drawn(values, first, last));
    parts.range = core::joined(parts.range, parts.extremes.back());
  }
  return parts;
}

void drawCurve(QImage& image, const CurveParts& parts, const core::TimeAxis& time,
               std::span<const double> values, const CurveFrame& frame, QSize size, double pixelRatio,
               const QColor& colour) {
  if (image.size() != size) image = QImage(size, QImage::Format_ARGB32_Premultiplied);
  image.setDevicePixelRatio(1);
  if (!parts.extremes.empty()) {
    fillStrokes(image, strokesOf(parts, frame, size, pixelRatio), colour);
  } else if (static_cast<double>(parts.samples.size()) * smoothRoom_px > size.width()) {
    fillStrokes(image, strokesOfLines(parts, time, values, frame, size, pixelRatio), colour);
  } else {
    image.fill(Qt::transparent);
    QPainter painter(&image);
    drawSamples(painter, parts, time, values, frame, size, pixelRatio, colour);
  }
  image.setDevicePixelRatio(pixelRatio);
}

}  // namespace ui
