// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/outcome/check_bars.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <map>

#include "core/assess/check_points.h"
#include "core/units/notation.h"
#include "ui/change/change_words.h"
#include "ui/outcome/axis_ticks.h"
#include "ui/quantity_edit.h"
#include "ui/theme.h"

namespace ui {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("ui::CheckBars", text); }

/// Greatest less smallest expected reading.
double spanOf(const std::vector<core::StepRow>& rows) {
  Extent extent;
  for (const core::StepRow& row : rows)
    if (row.expected) extent.add(*row.expected);
  return extent.high - extent.low;
}

/// From the readings' unit to `unit` at one step; absent where it has no meaning.
std::optional<double> factorOf(BarUnit unit, const core::StepRow& row, double span,
                               const std::optional<core::Reading>& standard) {
  switch (unit) {
    case BarUnit::Reading:
      return 1.0;
    case BarUnit::PercentOfReading:
      // Of a zero step nothing is expected; what rounding leaves of it is no reading.
      if (!row.expected || std::abs(*row.expected) <= 1e-9 * span) return std::nullopt;
      return 100 / std::abs(*row.expected);
    case BarUnit::PercentOfSpan:
      return span > 0 ? std::optional(100 / span) : std::nullopt;
    case BarUnit::Standardised:
      if (!standard || !(standard->base() > 0)) return std::nullopt;
      return 1 / standard->base();
  }
  return std::nullopt;
}

std::optional<double> times(const std::optional<double>& value, double factor) {
  if (!value || !isDrawable(*value * factor)) return std::nullopt;
  return *value * factor;
}

/// Standardised residuals of the line, by step.
std::map<std::size_t, double> standardisedResiduals(const core::Channel& channel,
                                                    const core::CheckEvaluation& judged,
                                                    const core::Check& check) {
  std::map<std::size_t, double> found;
  if (!judged.assessment.line) return found;
  const core::CheckPoints points =
      core::checkPoints(core::setupOf(channel, check), judged.prediction, judged.budget, check);
  const std::vector<double>& values = judged.assessment.line->standardised;
  if (values.size() != points.size()) return found;
  for (std::size_t k = 0; k < values.size(); ++k) found[points.steps[k]] = values[k];
  return found;
}

QString amount(const QString& name, double value, const QString& unit) {
  return name + " " + numberText(value, 5) + " " + unit;
}

/// A bar without its words; none where the step has no such value.
std::optional<PlotBar> barOf(const core::StepRow& row, const std::optional<double>& value, double factor) {
  if (!value || !row.simulated || !isDrawable(*value * factor) || !isDrawable(*row.simulated))
    return std::nullopt;
  PlotBar bar;
  bar.step = row.step;
  bar.x = *row.simulated;
  bar.value = *value * factor;
  return bar;
}

QString inUnit(BarUnit unit, const QString& reading) {
  switch (unit) {
    case BarUnit::Reading:
      return reading;
    case BarUnit::PercentOfReading:
      return tr("% of expected reading");
    case BarUnit::PercentOfSpan:
      return tr("% of expected span");
    case BarUnit::Standardised:
      return tr("standard uncertainties");
  }
  return reading;
}

}  // namespace

QString marksInWords(const QList<PlotBar>& bars) {
  QList<std::pair<std::size_t, core::Verdict>> steps;
  for (const PlotBar& bar : bars) steps.append({bar.step, bar.verdict});
  return verdictsInWords(steps);
}

QList<PlotBar> checkBars(const core::Channel& channel, const core::ChannelEvaluation& evaluation,
                         std::size_t check, const ChartOptions& options, bool compared) {
  const core::Setup& setup = core::setupOf(channel, channel.checks[check]);
  const core::CheckEvaluation& judged = evaluation.checks[check];
  const QString unit = toQString(core::readingUnitText(setup.instrument));
  const bool residual = options.kind == BarKind::Residual;
  const bool standardised = options.unit == BarUnit::Standardised;
  const std::map<std::size_t, double> byFit =
      residual && standardised ? standardisedResiduals(channel, judged, channel.checks[check])
                               : std::map<std::size_t, double>();
  const std::vector<core::StepRow> rows = core::stepRows(channel, evaluation, check);
  const double span = spanOf(rows);
  QList<PlotBar> bars;
  for (const core::StepRow& row : rows) {
    const auto& standard = judged.assessment.steps[row.step].standard;
    const bool fromFit = residual && standardised;
    const auto own = byFit.find(row.step);
    if (fromFit && own == byFit.end()) continue;
    const std::optional<double> factor = fromFit ? 1.0 : factorOf(options.unit, row, span, standard);
    const std::optional<double> value = fromFit    ? std::optional(own->second)
                                        : residual ? row.residual
                                                   : row.deviation;
    auto bar = factor ? barOf(row, value, *factor) : std::nullopt;
    if (!bar) continue;
    bar->compared = compared;
    if (!residual) bar->verdict = row.verdict;
    if (!residual && !standardised) bar->limit = times(row.limit, *factor);
    if (row.decided && !fromFit) bar->expanded = times(row.decided->expanded, *factor);
    bar->readout = readoutOf(row, setup, options.kind);
    bar->text = stepText(row);
    if (residual && row.residual)
      bar->text += " " + amount(tr("Residual from the line"), *row.residual, unit) + ".";
    if (fromFit) bar->readout += ", " + amount(tr("over its standard deviation"), own->second, {}).trimmed();
    bars.append(*bar);
  }
  return bars;
}

QList<PlotBar> differenceBars(const core::Channel& channel, const core::ChannelEvaluation& evaluation,
                              const core::Comparison& comparison, std::size_t before, BarUnit unit) {
  const core::Setup& setup = core::setupOf(channel, channel.checks[before]);
  const ShownUnit in{1, toQString(core::readingUnitText(setup.instrument))};
  const std::vector<core::StepRow> rows = core::stepRows(channel, evaluation, before);
  const double span = spanOf(rows);
  QList<PlotBar> bars;
  for (const core::StepRow& row : rows) {
    if (row.step >= comparison.steps.size()) break;
    const auto& moved = comparison.steps[row.step].moved;
    const std::optional<double> factor = factorOf(unit, row, span, std::nullopt);
    if (!moved || !factor) continue;
    auto bar = barOf(row, moved->value, *factor);
    if (!bar) continue;
    bar->verdict = core::verdictOf(moved->change);
    bar->limit = times(moved->margin, *factor);
    bar->expanded = moved->halfWidth90 ? times(*moved->halfWidth90, *factor) : std::nullopt;
    bar->text = tr("Step %1. %2").arg(row.step + 1).arg(differenceSentence(*moved, in));
    bar->readout = bar->text;
    bars.append(*bar);
  }
  return bars;
}

BarPicture differencePicture(const core::Channel& channel, const core::ChannelEvaluation& evaluation,
                             const core::Comparison& comparison, std::size_t before, const CheckPlot& plot,
                             const ChartOptions& options) {
  BarPicture picture;
  picture.bars = differenceBars(channel, evaluation, comparison, before, options.unit);
  picture.xTitle = plot.xTitle;
  picture.yTitle = barTitle(options, plot.unit);
  picture.fit = options.fit;
  picture.errorBars = options.errorBars;
  picture.outsideName = tr("Changed");
  picture.limitsName = tr("Margin");
  picture.whiskerName = tr("90 % interval");
  return picture;
}

BarPicture barPicture(const core::Channel& channel, const core::ChannelEvaluation& evaluation,
                      std::size_t check, const CheckPlot& plot, const ChartOptions& options) {
  BarPicture picture;
  picture.bars = checkBars(channel, evaluation, check, options, false);
  picture.xTitle = plot.xTitle;
  picture.yTitle = barTitle(options, plot.unit);
  picture.yTip = barTip(options);
  picture.fit = options.fit;
  picture.errorBars = options.errorBars;
  if (options.branches) picture.branches = plot.branches;
  const double span = plot.expected.isEmpty() ? 0 : spanOf(core::stepRows(channel, evaluation, check));
  const bool sameForAll =
      options.unit == BarUnit::Reading || (options.unit == BarUnit::PercentOfSpan && span > 0);
  if (!plot.line || !sameForAll || plot.expected.size() < 2) return picture;
  const DrawnUnit unit{inUnit(options.unit, plot.unit), options.unit == BarUnit::Reading ? 1 : 100 / span};
  for (const QPointF& at : plot.expected) {
    const double off = options.kind == BarKind::Residual ? 0 : core::valueAt(*plot.line, at.x()) - at.y();
    picture.line.append({at.x(), unit.factor * off});
  }
  picture.lineShown = options.line;
  picture.lineName = options.kind == BarKind::Residual ? tr("Fitted line") : tr("Fitted line less expected");
  const double low = plot.expected.first().x(), high = plot.expected.last().x();
  const auto add = [&](LineBand::Kind kind) {
    picture.bands.append(lineBand(kind, *plot.line, low, high, plot.uNew, unit));
  };
  if (options.prediction) add(LineBand::Kind::Prediction);
  if (options.confidence) add(LineBand::Kind::Confidence);
  return picture;
}

QString barTitle(const ChartOptions& options, const QString& unit) {
  const QString in = inUnit(options.unit, unit);
  switch (options.kind) {
    case BarKind::Deviation:
      return tr("Deviation") + ", " + in;
    case BarKind::Residual:
      return options.unit == BarUnit::Standardised ? tr("Residual over its standard deviation")
                                                   : tr("Residual") + ", " + in;
    case BarKind::Difference:
      return tr("Difference") + ", " + in;
  }
  return {};
}

QString barTip(const ChartOptions& options) {
  if (options.unit != BarUnit::Standardised || options.kind == BarKind::Difference) return {};
  if (options.kind == BarKind::Deviation)
    return tr(
        "Deviation from the expected reading over its own standard uncertainty. Beyond 2 either way it "
        "is seldom chance.");
  return tr(
      "Residual from the fitted line over its own standard deviation, which the fit has made smaller: "
      "by the scatter of the residuals for a line without weights, else by the stated uncertainties. "
      "Beyond 2 either way it is seldom chance.");
}

QString barUnitText(BarUnit kind, const QString& unit) {
  switch (kind) {
    case BarUnit::Reading:
      return unit;
    case BarUnit::PercentOfReading:
      return tr("% of reading");
    case BarUnit::PercentOfSpan:
      return tr("% of span");
    case BarUnit::Standardised:
      return tr("standardised");
  }
  return unit;
}

}  // namespace ui
