// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/outcome/check_plot.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <set>

#include "core/report/step_row.h"
#include "core/units/notation.h"
#include "ui/outcome/axis_ticks.h"
#include "ui/theme.h"

namespace ui {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("ui::CheckPlot", text); }

void addTitles(CheckPlot& plot, const core::Setup& setup) {
  plot.unit = toQString(core::readingUnitText(setup.instrument));
  const QString simulated = core::isTransducer(setup.bridge) ? tr("Simulated load") : tr("Simulated strain");
  plot.xTitle = simulated + ", " + toQString(core::simulatedUnitText(setup.bridge));
  plot.yTitle = tr("Measured change") + ", " + plot.unit;
}

void addExpected(CheckPlot& plot, const std::vector<core::StepRow>& rows) {
  for (const core::StepRow& row : rows)
    if (row.expected && isDrawable(*row.expected) && isDrawable(*row.simulated))
      plot.expected.append({*row.simulated, *row.expected});
  std::sort(plot.expected.begin(), plot.expected.end(),
            [](const QPointF& a, const QPointF& b) { return a.x() < b.x(); });
}

/// "Step 3, label. Reads ..."
QString stepText(const core::StepRow& row) {
  const QString label = toQString(row.label);
  return tr("Step") + " " + QString::number(row.step + 1) + (label.isEmpty() ? "" : ", " + label) + ". " +
         toQString(row.reason);
}

QString amount(const QString& name, double value, const std::string& unit) {
  return name + " " + toQString(core::formatNumber(value, 5)) + " " + toQString(unit) + ".";
}

template <class Mark>
QString stepsWith(const QList<Mark>& marks, core::Verdict verdict, const QString& name) {
  std::set<std::size_t> found;  // once each: bars of two checks have the same steps
  for (const Mark& mark : marks)
    if (mark.verdict == verdict) found.insert(mark.step);
  if (found.empty()) return {};
  QStringList steps;
  for (const std::size_t step : found) steps << QString::number(step + 1);
  return name + ": " + (steps.size() == 1 ? tr("step") : tr("steps")) + " " + steps.join(", ") + ". ";
}

template <class Mark>
QString wordsFor(const QList<Mark>& marks) {
  return stepsWith(marks, core::Verdict::Fail, tr("Out of limits")) +
         stepsWith(marks, core::Verdict::CannotTell, tr("Cannot tell"));
}

}  // namespace

QString marksInWords(const QList<PlotPoint>& points) { return wordsFor(points); }
QString marksInWords(const QList<PlotBar>& bars) { return wordsFor(bars); }

CheckPlot plannedPlot(const core::Channel& channel, const core::ChannelEvaluation& evaluation) {
  CheckPlot plot;
  addTitles(plot, channel.setup);
  addExpected(plot, core::plannedRows(channel.setup, evaluation.prediction, evaluation.budget));
  return plot;
}

CheckPlot checkPlot(const core::Channel& channel, const core::ChannelEvaluation& evaluation,
                    std::size_t check) {
  CheckPlot plot;
  const core::CheckAssessment& assessment = evaluation.checks[check].assessment;
  plot.check =
      toQString(channel.checks[check].name) + ": " + toQString(core::verdictWord(assessment.verdict));
  addTitles(plot, core::setupOf(channel, channel.checks[check]));
  const std::vector<core::StepRow> rows = core::stepRows(channel, evaluation, check);
  addExpected(plot, rows);
  for (const core::StepRow& row : rows)
    if (row.simulated && row.change && isDrawable(*row.simulated) && isDrawable(*row.change))
      plot.points.append({row.step, {*row.simulated, *row.change}, row.verdict, stepText(row)});
  const core::Result<core::Line>& line = assessment.line;
  if (line && isDrawable(line->intercept) && isDrawable(line->slope))
    plot.line = CheckPlot::Line{line->intercept, line->slope};
  return plot;
}

QList<PlotBar> checkBars(const core::Channel& channel, const core::ChannelEvaluation& evaluation,
                         std::size_t check, BarKind kind, bool compared) {
  const core::Setup& setup = core::setupOf(channel, channel.checks[check]);
  const std::string unit = core::readingUnitText(setup.instrument);
  QList<PlotBar> bars;
  for (const core::StepRow& row : core::stepRows(channel, evaluation, check)) {
    const bool residual = kind == BarKind::Residual;
    const std::optional<double>& value = residual ? row.residual : row.deviation;
    if (!value || !row.simulated || !isDrawable(*value) || !isDrawable(*row.simulated)) continue;
    const QString more = residual ? amount(" " + tr("Residual from the line"), *value, unit) : QString();
    PlotBar bar{row.step, *row.simulated, *value, row.limit, row.verdict, compared, stepText(row) + more};
    if (residual) bar.limit.reset(), bar.verdict = core::Verdict::NotJudged;
    if (bar.limit && !isDrawable(*bar.limit)) bar.limit.reset();
    bars.append(bar);
  }
  return bars;
}

QList<PlotBar> differenceBars(const core::Channel& channel, const core::ChannelEvaluation& evaluation,
                              const core::Comparison& comparison, std::size_t before) {
  const core::Setup& setup = core::setupOf(channel, channel.checks[before]);
  const std::string unit = core::readingUnitText(setup.instrument);
  QList<PlotBar> bars;
  for (const core::StepRow& row : core::stepRows(channel, evaluation, before)) {
    if (row.step >= comparison.steps.size()) break;
    const core::StepComparison& step = comparison.steps[row.step];
    if (!step.difference || !row.simulated || !isDrawable(step.difference->base())) continue;
    const double value = step.difference->base();
    PlotBar bar{row.step, *row.simulated, value, {}, step.verdict, false, {}};
    if (step.limit && isDrawable(step.limit->base())) bar.limit = step.limit->base();
    bar.text = tr("Step") + " " + QString::number(row.step + 1) + ". " +
               amount(tr("After less before:"), value, unit);
    if (step.verdict == core::Verdict::CannotTell) bar.text += " " + tr("Cannot tell whether it changed.");
    bars.append(bar);
  }
  return bars;
}

}  // namespace ui
