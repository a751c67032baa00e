// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/outcome/check_plot.h"

namespace ui {

/// One step as a bar from zero, in the unit that was asked for.
struct PlotBar {
  std::size_t step = 0;
  double x = 0;  ///< simulated value
  double value = 0;
  std::optional<double> limit;          ///< greatest magnitude that passes, where that has a meaning
  std::optional<double> expanded = {};  ///< U of the deviation
  core::Verdict verdict = core::Verdict::NotJudged;
  bool compared = false;  ///< of the other check
  QString text = {};
  QString readout = {};
};

/// All that is drawn below the measured points.
struct BarPicture {
  QList<PlotBar> bars;
  QString xTitle, yTitle;
  QString yTip = {};           ///< what the upright axis counts in, where the title alone does not tell
  QList<QPointF> line;         ///< the fitted line in the bars' unit, x rising; empty: not drawn
  QString lineName = {};       ///< what `line` is of
  QList<LineBand> bands;       ///< about `line`
  bool lineShown = false;      ///< else it is there for the bands alone
  QList<PlotBranch> branches;  ///< of the bars that are not `compared`
  BarFit fit = BarFit::Bars;
  bool errorBars = false;
  QString outsideName = {};  ///< of bars beyond their limits, where that is another word
  QString limitsName = {};
  QString whiskerName = {};
};

QString marksInWords(const QList<PlotBar>& bars);

/// Deviations with their limits, or residuals, which have none: limits are about the expected reading.
/// Percent of the reading leaves out steps where nothing is expected. Standardised, a deviation is over its
/// own standard uncertainty, and a residual over what the fit has left of it; limits have no such unit.
QList<PlotBar> checkBars(const core::Channel& channel, const core::ChannelEvaluation& evaluation,
                         std::size_t check, const ChartOptions& options, bool compared);
/// How each step moved (StepComparison::moved) within its margin, with the interval of probability 0.90: a
/// step is unchanged when that lies inside the margin. Not to be standardised: a margin has no such unit.
QList<PlotBar> differenceBars(const core::Channel& channel, const core::ChannelEvaluation& evaluation,
                              const core::Comparison& comparison, std::size_t before, BarUnit unit);
/// The same with what is said about them.
BarPicture differencePicture(const core::Channel& channel, const core::ChannelEvaluation& evaluation,
                             const core::Comparison& comparison, std::size_t before, const CheckPlot& plot,
                             const ChartOptions& options);

/// The bars of `check` with line, bands and branches about them as far as `options` wants them and the unit
/// gives them: these are in units that are the same for all steps.
BarPicture barPicture(const core::Channel& channel, const core::ChannelEvaluation& evaluation,
                      std::size_t check, const CheckPlot& plot, const ChartOptions& options);

/// "Deviation, % of expected reading".
QString barTitle(const ChartOptions& options, const QString& unit);
/// In a sentence or two what a standardised bar is; empty for all others.
QString barTip(const ChartOptions& options);
/// As the choice is offered: "% of span"; `unit` is that of the readings.
QString barUnitText(BarUnit kind, const QString& unit);

}  // namespace ui
