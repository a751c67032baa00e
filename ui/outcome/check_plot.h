// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QPointF>
#include <QString>
#include <optional>

#include "core/evaluate/comparison.h"

namespace ui {

/// A step as it is drawn; `text` says it in words, as plain text.
struct PlotPoint {
  std::size_t step = 0;
  QPointF at;
  core::Verdict verdict = core::Verdict::NotJudged;
  QString text;
};

/// One check as a picture: measured change (y) against simulated value (x). Only what can be drawn is
/// in it: steps without a finite reading and prediction are left out. Names are plain text.
struct CheckPlot {
  QString check;   ///< its name and verdict
  QString xTitle;  ///< with unit
  QString yTitle;  ///< with unit
  QString unit;    ///< of the readings
  QList<PlotPoint> points;
  QList<QPointF> expected;  ///< predicted reading against simulated value, x rising
  struct Line {
    double intercept = 0, slope = 0;
  };
  std::optional<Line> line;
};

/// One step as a bar from zero.
struct PlotBar {
  std::size_t step = 0;
  double x = 0;                 ///< simulated value
  double value = 0;             ///< in the readings' unit
  std::optional<double> limit;  ///< greatest magnitude that passes
  core::Verdict verdict = core::Verdict::NotJudged;
  bool compared = false;  ///< of the other check
  QString text;
};

/// "Out of limits: step 3. Cannot tell: steps 2, 4. ", what the marks say to those who cannot see them; empty
/// when no point has such a mark.
QString marksInWords(const QList<PlotPoint>& points);
QString marksInWords(const QList<PlotBar>& bars);

enum class BarKind { Deviation, Residual, Difference };

CheckPlot checkPlot(const core::Channel& channel, const core::ChannelEvaluation& evaluation,
                    std::size_t check);
/// The plan alone, for a channel without a check.
CheckPlot plannedPlot(const core::Channel& channel, const core::ChannelEvaluation& evaluation);

/// Deviations with their limits, or residuals, which have none: limits are about the expected reading.
QList<PlotBar> checkBars(const core::Channel& channel, const core::ChannelEvaluation& evaluation,
                         std::size_t check, BarKind kind, bool compared);
/// After less before, with the limit within which a step counts as unchanged.
QList<PlotBar> differenceBars(const core::Channel& channel, const core::ChannelEvaluation& evaluation,
                              const core::Comparison& comparison, std::size_t before);

}  // namespace ui
