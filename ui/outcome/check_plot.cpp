// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/outcome/check_plot.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <cmath>
#include <set>

#include "core/assess/check_points.h"
#include "core/report/figures.h"
#include "ui/outcome/axis_ticks.h"
#include "ui/quantity_edit.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr qsizetype longestLabel = 24;

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

std::optional<double> expandedOf(const core::StepRow& row) {
  if (!row.decided || !row.decided->expanded || !isDrawable(*row.decided->expanded)) return std::nullopt;
  return row.decided->expanded;
}

/// The scatter that one new reading would have: root mean square of what the readings have of their own.
double uncertaintyOfNew(const core::Setup& setup, const core::CheckEvaluation& judged,
                        const core::Check& check) {
  const core::CheckPoints points = core::checkPoints(setup, judged.prediction, judged.budget, check);
  double sum = 0;
  for (const double variance : points.ownVariance) sum += variance;
  return points.ownVariance.empty() ? 0 : std::sqrt(sum / static_cast<double>(points.ownVariance.size()));
}

/// +1 further from zero than before, -1 nearer, 0 neither, or on the other side of zero.
int direction(double before, double now, double greatest) {
  const double alike = 1e-6 * greatest;  // levels that were meant to be the same differ by rounding only
  if (before * now < 0 && std::min(std::abs(before), std::abs(now)) > alike) return 0;
  const double growth = std::abs(now) - std::abs(before);
  return growth > alike ? 1 : growth < -alike ? -1 : 0;
}

QString stepName(const core::StepRow& row) {
  QString label = toQString(row.label);
  if (label.size() > longestLabel) label = label.left(longestLabel - 1) + "…";
  return tr("Step") + " " + QString::number(row.step + 1) + (label.isEmpty() ? "" : ", " + label);
}

}  // namespace

QString verdictsInWords(const QList<std::pair<std::size_t, core::Verdict>>& steps) {
  QString words;
  for (const auto& [verdict, name] : {std::pair{core::Verdict::Fail, tr("Out of limits")},
                                      std::pair{core::Verdict::CannotTell, tr("Cannot tell")}}) {
    std::set<std::size_t> found;  // once each: bars of two checks have the same steps
    for (const auto& [step, what] : steps)
      if (what == verdict) found.insert(step);
    if (found.empty()) continue;
    QStringList numbers;
    for (const std::size_t step : found) numbers << QString::number(step + 1);
    words += name + ": " + (numbers.size() == 1 ? tr("step") : tr("steps")) + " " + numbers.join(", ") + ". ";
  }
  return words;
}

QString marksInWords(const QList<PlotPoint>& points) {
  QList<std::pair<std::size_t, core::Verdict>> steps;
  for (const PlotPoint& point : points) steps.append({point.step, point.verdict});
  return verdictsInWords(steps);
}

QString stepText(const core::StepRow& row) {
  const QString label = toQString(row.label);
  return tr("Step") + " " + QString::number(row.step + 1) + (label.isEmpty() ? "" : ", " + label) + ". " +
         toQString(row.reason);
}

QString readoutOf(const core::StepRow& row, const core::Setup& setup, BarKind kind) {
  const QString unit = toQString(core::readingUnitText(setup.instrument));
  const std::optional<double> expanded = expandedOf(row);
  const int decimals =
      std::clamp(expanded && *expanded > 0 ? core::decimalsOfUncertainty(*expanded)
                                           : core::decimalsFor(std::vector{row.expected.value_or(1)}),
                 0, 9);
  QStringList parts;
  const auto add = [&](const QString& name, const std::optional<double>& value, int places) {
    if (value) parts << name + " " + fixedNumberText(*value, places);
  };
  add(tr("simulated"), row.simulated, row.simulated ? core::decimalsFor(std::vector{*row.simulated}) : 0);
  if (!parts.isEmpty()) parts.last() += " " + toQString(core::simulatedUnitText(setup.bridge));
  add(tr("measured"), row.change, decimals);
  if (kind == BarKind::Residual) {
    add(tr("residual"), row.residual, decimals);
    return stepName(row) + ": " + parts.join(", ") + " " + unit;
  }
  add(tr("deviation"), row.deviation, decimals);
  if (expanded) parts << "U " + numberText(*expanded, 2);
  return stepName(row) + ": " + parts.join(", ") + " " + unit + ": " +
         toQString(core::verdictWord(row.verdict));
}

QList<PlotBranch> branchesOf(const std::vector<core::StepRow>& rows) {
  double greatest = 0;
  for (const core::StepRow& row : rows)
    if (row.expected && isDrawable(*row.expected)) greatest = std::max(greatest, std::abs(*row.expected));
  QList<PlotBranch> branches;
  const core::StepRow* before = nullptr;
  int running = 0;
  bool both = false;
  for (const core::StepRow& row : rows) {
    if (!row.expected || !row.change || !isDrawable(*row.expected) || !isDrawable(*row.change)) continue;
    const int way = before ? direction(*before->expected, *row.expected, greatest) : 0;
    if (way != 0 && way != running) branches.append({{before->step}, way < 0});
    if (way != 0) branches.last().steps.append(row.step);
    both = both || (way < 0 && std::abs(*row.expected) > 1e-6 * greatest);
    running = way;
    before = &row;
  }
  return both ? branches : QList<PlotBranch>();
}

CheckPlot plannedPlot(const core::Channel& channel, const core::ChannelEvaluation& evaluation) {
  CheckPlot plot;
  addTitles(plot, channel.setup);
  addExpected(plot, core::plannedRows(channel.setup, evaluation.prediction, evaluation.budget));
  return plot;
}

CheckPlot checkPlot(const core::Channel& channel, const core::ChannelEvaluation& evaluation,
                    std::size_t check, BarKind kind) {
  CheckPlot plot;
  const core::CheckAssessment& assessment = evaluation.checks[check].assessment;
  const core::Setup& setup = core::setupOf(channel, channel.checks[check]);
  plot.check =
      toQString(channel.checks[check].name) + ": " + toQString(core::verdictWord(assessment.verdict));
  addTitles(plot, setup);
  const std::vector<core::StepRow> rows = core::stepRows(channel, evaluation, check);
  addExpected(plot, rows);
  for (const core::StepRow& row : rows)
    if (row.simulated && row.change && isDrawable(*row.simulated) && isDrawable(*row.change))
      plot.points.append({row.step,
                          {*row.simulated, *row.change},
                          row.verdict,
                          stepText(row),
                          readoutOf(row, setup, kind),
                          expandedOf(row)});
  const core::Result<core::Line>& line = assessment.line;
  if (line && isDrawable(line->intercept) && isDrawable(line->slope)) plot.line = *line;
  plot.uNew = uncertaintyOfNew(setup, evaluation.checks[check], channel.checks[check]);
  plot.branches = branchesOf(rows);
  return plot;
}

}  // namespace ui
