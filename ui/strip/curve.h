// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QImage>
#include <QSize>
#include <span>
#include <vector>

#include "core/levels/sample_span.h"
#include "core/recording/envelope.h"
#include "core/recording/time_axis.h"

namespace ui {

/// What one column shows of itself between two times, by columns of pixels.
struct CurveParts {
  core::SampleSpan samples;              ///< those between the times, with one more at each end
  std::vector<core::Extremes> extremes;  ///< one a column of pixels; none when single samples are drawn
  core::Extremes range;                  ///< of all that is shown
};

/// First sample that lies at or right of the left edge of each column of pixels, and right of the last one:
/// width + 1 numbers.
std::vector<std::size_t> columnEdges(const core::TimeAxis& time, double begin_s, double end_s, int width);

/// Costs the pixels, whatever the length. `edges` as columnEdges gives them.
CurveParts curveParts(const core::Envelope& envelope, std::span<const double> values,
                      const std::vector<std::size_t>& edges);

/// Where a curve is drawn: times and values at the edges of the picture.
struct CurveFrame {
  double begin_s = 0, end_s = 1;
  double low = 0, high = 1;
};

/// Draws the curve on a clear background into `image`, which gets `size` device pixels and keeps its memory
/// when it has them: a stroke for each column of pixels, or lines from sample to sample where they lie apart.
/// Missing numbers are gaps.
void drawCurve(QImage& image, const CurveParts& parts, const core::TimeAxis& time,
               std::span<const double> values, const CurveFrame& frame, QSize size, double pixelRatio,
               const QColor& colour);

}  // namespace ui
