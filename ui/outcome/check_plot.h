// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QPointF>
#include <QString>
#include <optional>

#include "core/compare/comparison.h"
#include "core/report/step_row.h"
#include "ui/outcome/chart_options.h"
#include "ui/outcome/line_band.h"

namespace ui {

/// A step as it is drawn; `text` says it in words, `readout` in numbers, both as plain text.
struct PlotPoint {
  std::size_t step = 0;
  QPointF at;
  core::Verdict verdict = core::Verdict::NotJudged;
  QString text;
  QString readout = {};
  std::optional<double> expanded = {};  ///< U of the deviation from expected
};

/// Steps one after the other whose expected readings grow (or shrink) on one side of zero.
struct PlotBranch {
  QList<std::size_t> steps;
  bool falling = false;
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
  std::optional<core::Line> line;
  double uNew = 0;             ///< standard uncertainty of one new reading by itself
  QList<PlotBranch> branches;  ///< empty unless some level is reached from above too
};

/// "Out of limits: step 3. Cannot tell: steps 2, 4. ", what the marks say to those who cannot see them; empty
/// when no point has such a mark.
QString marksInWords(const QList<PlotPoint>& points);

/// `kind` is what its numbers are read out for.
CheckPlot checkPlot(const core::Channel& channel, const core::ChannelEvaluation& evaluation,
                    std::size_t check, BarKind kind = BarKind::Deviation);
/// The plan alone, for a channel without a check.
CheckPlot plannedPlot(const core::Channel& channel, const core::ChannelEvaluation& evaluation);

/// The way of the steps through the levels, in the order of the sequence. Empty when no level but zero is
/// reached from above: there is no hysteresis to be seen then.
QList<PlotBranch> branchesOf(const std::vector<core::StepRow>& rows);

/// "Step 3, label. Reads ..."
QString stepText(const core::StepRow& row);
/// "Step 3, large: simulated -1000.0 µm/m, measured -1001.5, deviation -0.50, U 1.3 µm/m: pass"; of residuals
/// these instead of deviation, U and verdict, which are not about the line.
QString readoutOf(const core::StepRow& row, const core::Setup& setup, BarKind kind = BarKind::Deviation);

/// "Out of limits: step 3. Cannot tell: steps 2, 4. " of steps with their verdicts.
QString verdictsInWords(const QList<std::pair<std::size_t, core::Verdict>>& steps);

}  // namespace ui
