// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/outcome/outcome_charts.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QResizeEvent>
#include <QSplitter>
#include <algorithm>

#include "ui/outcome/deviation_plot.h"
#include "ui/outcome/figure_grid.h"
#include "ui/outcome/measured_plot.h"
#include "ui/parts.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr int narrow_px = 700;  ///< below this width the numbers of a step may need a second line

/// Those of `plot` that belong to `step`.
QString readoutAt(const CheckPlot& plot, std::size_t step) {
  for (const PlotPoint& point : plot.points)
    if (point.step == step) return point.readout;
  return {};
}

}  // namespace

OutcomeCharts::OutcomeCharts(QWidget* parent)
    : QWidget(parent),
      m_splitter(new QSplitter(Qt::Vertical)),
      m_left(new MeasuredPlot),
      m_right(new MeasuredPlot),
      m_bars(new DeviationPlot),
      m_readout(plainLabel("outcomeReadout")) {
  m_left->setObjectName("outcomeMeasured");
  m_right->setObjectName("outcomeMeasuredAfter");
  m_bars->setObjectName("outcomeBars");
  auto* sides = new QWidget;
  auto* row = new QHBoxLayout(sides);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(2);
  row->addWidget(m_left, 1);
  row->addWidget(m_right, 1);
  m_right->hide();
  m_splitter->addWidget(sides);
  m_splitter->addWidget(m_bars);
  m_splitter->setChildrenCollapsible(false);
  m_splitter->setStretchFactor(0, 1);
  m_splitter->setStretchFactor(1, 1);
  m_splitter->setSizes({250, 250});
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(2);
  column->addWidget(m_splitter, 1);
  column->addWidget(m_readout);
  QFont small = m_readout->font();
  small.setPointSizeF(std::max(7.5, 0.9 * small.pointSizeF()));
  m_readout->setFont(small);
  m_readout->setAlignment(Qt::AlignLeft | Qt::AlignTop);
  m_readout->setAccessibleName(tr("Numbers of the step"));
  m_later.setSingleShot(true);
  m_later.setInterval(0);
  connect(&m_later, &QTimer::timeout, this, &OutcomeCharts::roomChanged);
  for (PlotFrame* plot : std::initializer_list<PlotFrame*>{m_left, m_right, m_bars}) {
    connect(plot, &PlotFrame::heightChanged, &m_later, qOverload<>(&QTimer::start));
    connect(plot, &PlotFrame::stepClicked, this, &OutcomeCharts::stepClicked);
    connect(plot, &PlotFrame::stepWalked, this, &OutcomeCharts::stepWalked);
    connect(plot, &PlotFrame::pointed, this, &OutcomeCharts::showReadout);
  }
}

void OutcomeCharts::hideReadout() { m_readout->hide(); }

void OutcomeCharts::showOutcome(const ShownOutcome& outcome, const ChartOptions& options,
                                const QString& words) {
  const core::Channel& channel = *outcome.channel;
  const core::ChannelEvaluation& evaluation = *outcome.evaluation;
  const std::vector<std::size_t> checks = outcome.checks();
  const CheckPlot first = checks.empty() ? plannedPlot(channel, evaluation)
                                         : checkPlot(channel, evaluation, checks[0], options.kind);
  const CheckPlot second =
      outcome.pair ? checkPlot(channel, evaluation, checks[1], options.kind) : CheckPlot();
  Extent x, y;
  addExtent(first, x, y);
  addExtent(second, x, y);
  const AxisTicks yTicks = niceTicks(y, m_left->uprightIntervals());
  const AxisTicks half = niceTicks(x, 4), whole = niceTicks(x, 6);
  const auto role = [&](std::size_t check) {
    return check == outcome.check ? MeasuredPlot::Role::Chosen : MeasuredPlot::Role::Compared;
  };
  m_left->showPlot(first, options, outcome.pair ? role(checks[0]) : MeasuredPlot::Role::Chosen,
                   outcome.pair.has_value(), outcome.pair ? half : whole, yTicks, outcome.step);
  if (outcome.pair) m_right->showPlot(second, options, role(checks[1]), true, half, yTicks, outcome.step);
  m_right->setVisible(outcome.pair.has_value());
  keepRoomForReadout();
  const bool chosenIsSecond = outcome.pair && checks[1] == outcome.check;
  showBars(outcome, options, chosenIsSecond ? second : first, whole);
  collectReadout(outcome, first, second);
  showReadout({});
  describe(words, first, second);
  alignPlots();
}

void OutcomeCharts::showBars(const ShownOutcome& outcome, const ChartOptions& options, const CheckPlot& plot,
                             const AxisTicks& x) {
  const core::Channel& channel = *outcome.channel;
  const core::ChannelEvaluation& evaluation = *outcome.evaluation;
  BarPicture picture;
  if (options.kind == BarKind::Difference && outcome.pair) {
    picture =
        differencePicture(channel, evaluation, outcome.pair->comparison, outcome.pair->before, plot, options);
  } else if (outcome.check) {
    picture = barPicture(channel, evaluation, *outcome.check, plot, options);
    for (const std::size_t other : outcome.checks())
      if (other != *outcome.check) picture.bars += checkBars(channel, evaluation, other, options, true);
  }
  m_bars->setAccessibleName(picture.yTitle);
  m_bars->setTitleTip(picture.yTip);
  m_bars->setVisible(!picture.bars.isEmpty());
  m_bars->setAccessibleDescription(marksInWords(picture.bars));
  m_bars->showBars(std::move(picture), x, outcome.step);
}

void OutcomeCharts::collectReadout(const ShownOutcome& outcome, const CheckPlot& first,
                                   const CheckPlot& second) {
  m_chosen.clear();
  if (!outcome.step) return;
  m_chosen = readoutAt(first, *outcome.step);
  const QString other = outcome.pair ? readoutAt(second, *outcome.step) : QString();
  if (!outcome.pair) return;
  const auto name = [&](std::size_t check) { return toQString(outcome.channel->checks[check].name); };
  QStringList both;
  if (!m_chosen.isEmpty()) both << name(outcome.pair->before) + ", " + m_chosen;
  if (!other.isEmpty()) both << name(outcome.pair->after) + ", " + other;
  m_chosen = both.join("\n");
}

void OutcomeCharts::describe(const QString& words, const CheckPlot& first, const CheckPlot& second) {
  const QString chosen = m_chosen.isEmpty() ? QString() : m_chosen + ". ";
  m_left->setAccessibleName(first.check.isEmpty() ? first.yTitle : first.check + ", " + first.yTitle);
  m_left->setAccessibleDescription(chosen + marksInWords(first.points) + words);
  m_right->setAccessibleName(second.check + ", " + second.yTitle);
  m_right->setAccessibleDescription(chosen + marksInWords(second.points) + words);
  m_bars->setAccessibleDescription(chosen + m_bars->accessibleDescription() + words);
}

void OutcomeCharts::showReadout(const QString& pointed) {
  const QString text = !pointed.isEmpty() ? pointed
                       : !m_chosen.isEmpty()
                           ? m_chosen
                           : tr("Point at a mark, or walk the steps with ← and →, to read its numbers.");
  m_readout->setText(withWholeUnits(text));
  m_readout->setAccessibleDescription(text);
  m_readout->setToolTip("<span>" + text.toHtmlEscaped() + "</span>");
}

/// Zero lies at the same place in plots below and beside one another.
void OutcomeCharts::alignPlots() {
  const bool below = m_left->isVisible() && m_bars->isVisible() && !m_right->isVisibleTo(this);
  const int left = below ? std::max(m_left->neededLeft(), m_bars->neededLeft()) : 0;
  m_left->setLeft(left);
  m_bars->setLeft(left);
  const bool beside = m_right->isVisibleTo(this);
  const int rows = beside ? std::max(m_left->legendRows(), m_right->legendRows()) : 1;
  m_left->keepLegendRows(rows);
  m_right->keepLegendRows(rows);
}

void OutcomeCharts::paintInto(QPainter& painter, const QRectF& target) {
  const double scale = target.width() / width();
  for (PlotFrame* plot : std::initializer_list<PlotFrame*>{m_left, m_right, m_bars}) {
    if (!plot->isVisibleTo(this)) continue;
    const QPointF corner = plot->mapTo(this, QPoint(0, 0));
    plot->paintInto(painter, {target.topLeft() + scale * corner, scale * QSizeF(plot->size())});
  }
}

/// The numbers keep their room, or the charts would jump with each mark under the pointer.
void OutcomeCharts::keepRoomForReadout() {
  const int lines = (width() < narrow_px ? 2 : 1) * (m_right->isVisibleTo(this) ? 2 : 1);
  const int height = lines * m_readout->fontMetrics().lineSpacing() + 2;
  if (m_readout->height() != height) m_readout->setFixedHeight(height);
}

void OutcomeCharts::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  keepRoomForReadout();
}

/// What is not shown cannot be aligned.
void OutcomeCharts::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  m_later.start();
}

}  // namespace ui
