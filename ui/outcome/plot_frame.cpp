// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/outcome/plot_frame.h"

#include <QAreaSeries>
#include <QFontMetrics>
#include <QGraphicsLayout>
#include <QGraphicsSimpleTextItem>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QLineSeries>
#include <QLocale>
#include <QMouseEvent>
#include <QResizeEvent>
#include <QToolTip>
#include <QXYSeries>
#include <QtCharts/QLegend>
#include <QtCharts/QValueAxis>
#include <algorithm>
#include <cmath>

#include "ui/access/focus_ring.h"
#include "ui/outcome/plot_legend.h"
#include "ui/outcome/plot_marks.h"
#include "ui/quantity_edit.h"

namespace ui {
namespace {

constexpr double reach_px = 16;
constexpr int lowPlot_px = 150;   ///< below this height x title and second legend row give way to the data
constexpr int highPlot_px = 200;  ///< from this height on the legend may have a third row
constexpr double behindSeries = 2.5;  ///< of the chart's own items: above its grid, below axes and series

QFont smaller(QFont font) {
  font.setPointSizeF(std::max(7.5, 0.9 * font.pointSizeF()));
  return font;
}

}  // namespace

QString shownAsTyped(const QString& text) { return "<span>" + text.toHtmlEscaped() + "</span>"; }

PlotFrame::PlotFrame(QWidget* parent)
    : QChartView(parent),
      m_x(new QValueAxis(this)),
      m_y(new QValueAxis(this)),
      m_titleItem(new QGraphicsSimpleTextItem(chart())),
      m_yTitleItem(new QGraphicsSimpleTextItem(chart())),
      m_legend(new PlotLegend(chart())),
      m_behind(new PlotMarks(chart())),
      m_inFront(new PlotMarks(chart())) {
  m_behind->setZValue(behindSeries);
  m_inFront->setZValue(20);
  chart()->addAxis(m_x, Qt::AlignBottom);
  chart()->addAxis(m_y, Qt::AlignLeft);
  chart()->layout()->setContentsMargins(0, 0, 0, 0);
  chart()->setMargins({0, 0, 0, 0});
  chart()->setBackgroundRoundness(0);
  chart()->legend()->hide();
  // QChartView takes over the least size of its chart at each resize and never gives it back.
  chart()->setMinimumSize(0, 0);
  setViewportUpdateMode(QGraphicsView::FullViewportUpdate);  // labels that move would leave their old image
  m_y->setTitleVisible(false);
  setRenderHint(QPainter::Antialiasing);
  chart()->setLocalizeNumbers(true);
  QLocale numbers;
  numbers.setNumberOptions(numbers.numberOptions() | QLocale::OmitGroupSeparator);  // as in every field
  chart()->setLocale(numbers);
  setFrameShape(QFrame::NoFrame);
  setFocusPolicy(Qt::StrongFocus);
  viewport()->setMouseTracking(true);
  connect(chart(), &QChart::plotAreaChanged, this, [this] { arrange(); });
  PlotFrame::applyColours(coloursFor(palette()));
}

void PlotFrame::setTitles(const QString& title, const QString& x, const QString& y) {
  if (m_title == title && m_yTitle == y && m_x->titleText() == shownAsTyped(x)) return;
  m_title = title, m_yTitle = y;
  m_x->setTitleText(shownAsTyped(x));
  m_y->setTitleText(shownAsTyped(y));
  placeCaptions();
}

void PlotFrame::setTicks(const AxisTicks& x, const AxisTicks& y) {
  const auto apply = [](QValueAxis* axis, const AxisTicks& ticks) {
    axis->setRange(ticks.low, ticks.high);
    axis->setTickCount(static_cast<int>(std::lround((ticks.high - ticks.low) / ticks.step)) + 1);
    axis->setLabelFormat(ticks.labelFormat());
  };
  apply(m_x, x);
  apply(m_y, y);
  arrange();
}

int PlotFrame::uprightIntervals() const {
  const int line = QFontMetrics(m_y->labelsFont()).height();
  const int lines = height() / line - (m_title.isEmpty() ? 3 : 4) - (height() >= lowPlot_px ? 2 : 0) -
                    (std::max(m_keptRows, legendRows()) - 1);
  return std::clamp(5 * lines / 8, 2, 8);
}

int PlotFrame::neededLeft() const {
  chart()->layout()->activate();
  return std::max(0, static_cast<int>(std::ceil(chart()->plotArea().left())) - chart()->margins().left());
}

void PlotFrame::setLeft(int left) {
  QMargins margins = chart()->margins();
  margins.setLeft(left > 0 ? std::clamp(left - neededLeft(), 0, width() / 3) : 0);
  if (margins != chart()->margins()) chart()->setMargins(margins);
}

void PlotFrame::placeCaptions() {
  const QFontMetrics bold(m_titleItem->font()), small(m_yTitleItem->font());
  const int titleRow = m_title.isEmpty() ? 0 : bold.height() + 2, row = small.height() + 2;
  m_titleItem->setText(bold.elidedText(m_title, Qt::ElideRight, width() - 12));
  m_titleItem->setPos(6, 2);
  m_yTitleItem->setText(small.elidedText(m_yTitle, Qt::ElideRight, width() - 12));
  m_yTitleItem->setPos(6, 2 + titleRow);
  const int rowsBefore = m_legend->rowCount();
  m_legend->setRoom(width() - small.horizontalAdvance(m_yTitle) - 20, width() - 8,
                    height() < lowPlot_px    ? 1
                    : height() < highPlot_px ? 2
                                             : 3);
  m_legend->setPos(width() - m_legend->boundingRect().width(), 2 + titleRow);
  if (m_legend->rowCount() != rowsBefore) emit heightChanged();
  QMargins margins = chart()->margins();
  margins.setTop(titleRow + row +
                 (std::max(m_keptRows, legendRows()) - 1) * static_cast<int>(m_legend->rowHeight()));
  margins.setRight(4);
  if (margins != chart()->margins()) chart()->setMargins(margins);
  m_x->setTitleVisible(height() >= lowPlot_px);
}

const QList<LegendEntry>& PlotFrame::legendEntries() const { return m_legend->entries(); }

int PlotFrame::legendRows() const { return m_legend->rowCount(); }

void PlotFrame::keepLegendRows(int rows) {
  if (m_keptRows == rows) return;
  m_keptRows = rows;
  placeCaptions();
}

void PlotFrame::setLegend(QList<LegendEntry> entries) {
  m_legend->setEntries(std::move(entries));
  placeCaptions();
}

void PlotFrame::addPlotSeries(QAbstractSeries* series) {
  chart()->addSeries(series);
  series->attachAxis(m_x);
  series->attachAxis(m_y);
}

void PlotFrame::applyColours(const Colours& colours) {
  chart()->setBackgroundBrush(colours.background);
  m_titleItem->setBrush(colours.text);
  m_yTitleItem->setBrush(colours.text);
  setBackgroundBrush(colours.background);
  const QFont small = smaller(font());
  QFont bold = font();
  bold.setBold(true);
  m_titleItem->setFont(bold);
  m_yTitleItem->setFont(small);
  m_legend->setLook(small, colours.text);
  m_inFront->setColours(colours.text, colours.quiet, colours.selected);
  for (QValueAxis* axis : {m_x, m_y}) {
    axis->setLabelsColor(colours.text);
    axis->setTitleBrush(colours.text);
    axis->setLinePenColor(colours.quiet);
    axis->setGridLineColor(colours.grid);
    axis->setLabelsFont(small);
    axis->setTitleFont(small);
  }
}

void PlotFrame::grabInto(QPainter& painter, QPoint corner) {
  chart()->layout()->activate();
  arrange();
  const WithoutRing withoutRing(*this);
  QWidget::render(&painter, corner);
}

void PlotFrame::paintInto(QPainter& painter, const QRectF& target) {
  chart()->layout()->activate();
  arrange();
  QGraphicsView::render(&painter, target, viewport()->rect());
}

void PlotFrame::setHits(QList<PlotHit> hits) {
  m_hits = std::move(hits);
  const auto isThere = [this](const PlotHit& hit) { return hit.at == m_pointedAt; };
  if (std::none_of(m_hits.begin(), m_hits.end(), isThere)) m_pointedAt.reset();
  placeCross();
}

/// Whoever walks the steps looks at the step, not at where the pointer was left.
void PlotFrame::setCurrentStep(std::optional<std::size_t> step) {
  if (step != m_current) m_pointedAt.reset();
  m_current = step;
  placeCross();
}

/// Through the mark under the pointer, else through the chosen step while the arrow keys walk the steps.
void PlotFrame::placeCross() {
  std::optional<QPointF> at = m_pointedAt;
  if (!at && m_current && hasFocus())
    for (const PlotHit& hit : m_hits)
      if (hit.step == *m_current && !at) at = hit.at;
  m_inFront->setCross(at);
}

void PlotFrame::point(const PlotHit* hit) {
  const std::optional<QPointF> at = hit ? std::optional(hit->at) : std::nullopt;
  if (at == m_pointedAt) return;
  m_pointedAt = at;
  placeCross();
  emit pointed(hit ? hit->readout : QString());
}

const PlotHit* PlotFrame::hitAt(QPointF position, std::optional<std::size_t> current) const {
  const PlotHit* nearest = nullptr;
  double least = reach_px;
  bool pastCurrent = false;
  for (const PlotHit& hit : m_hits) {
    const QPointF away = chart()->mapToScene(chart()->mapToPosition(hit.at)) - mapToScene(position.toPoint());
    const double distance = std::hypot(away.x(), away.y());
    const bool same = nearest && std::abs(distance - least) < 1;
    // Zero steps lie on one another: each click takes the next of them.
    if (distance < least - 1 || (!nearest && distance <= least)) {
      nearest = &hit, least = distance, pastCurrent = current && hit.step > *current;
    } else if (same && current && !pastCurrent && hit.step > *current) {
      nearest = &hit, least = distance, pastCurrent = true;
    }
  }
  return nearest;
}

std::optional<std::size_t> PlotFrame::stepAt(QPointF position, std::optional<std::size_t> current) const {
  const PlotHit* hit = hitAt(position, current);
  return hit ? std::optional(hit->step) : std::nullopt;
}

void PlotFrame::resizeEvent(QResizeEvent* event) {
  QChartView::resizeEvent(event);
  placeCaptions();
  arrange();
  if (event->size().height() != event->oldSize().height()) emit heightChanged();
}

void PlotFrame::changeEvent(QEvent* event) {
  QChartView::changeEvent(event);
  if (event->type() != QEvent::PaletteChange && event->type() != QEvent::FontChange) return;
  applyColours(coloursFor(palette()));
  placeCaptions();
}

bool PlotFrame::viewportEvent(QEvent* event) {
  if (event->type() != QEvent::ToolTip) return QChartView::viewportEvent(event);
  const auto* help = static_cast<QHelpEvent*>(event);
  const PlotHit* hit = hitAt(help->pos(), {});
  const bool overTitle = m_yTitleItem->sceneBoundingRect().contains(mapToScene(help->pos()));
  const QString text = hit ? hit->text : overTitle ? m_titleTip : QString();
  QToolTip::showText(help->globalPos(), text.isEmpty() ? QString() : shownAsTyped(text), this);
  return true;
}

void PlotFrame::mouseReleaseEvent(QMouseEvent* event) {
  QChartView::mouseReleaseEvent(event);
  if (event->button() != Qt::LeftButton) return;
  if (const auto step = stepAt(event->position(), m_current)) emit stepClicked(*step);
}

void PlotFrame::mouseMoveEvent(QMouseEvent* event) {
  QChartView::mouseMoveEvent(event);
  point(hitAt(event->position(), {}));
}

void PlotFrame::leaveEvent(QEvent* event) {
  QChartView::leaveEvent(event);
  point(nullptr);
}

void PlotFrame::focusInEvent(QFocusEvent* event) {
  QChartView::focusInEvent(event);
  placeCross();
}

void PlotFrame::focusOutEvent(QFocusEvent* event) {
  QChartView::focusOutEvent(event);
  placeCross();
}

void PlotFrame::keyPressEvent(QKeyEvent* event) {
  const int key = event->key();
  if (key == Qt::Key_Left || key == Qt::Key_Up) return emit stepWalked(-1);
  if (key == Qt::Key_Right || key == Qt::Key_Down) return emit stepWalked(1);
  QChartView::keyPressEvent(event);
}

/// The marks that answer to the pointer with what they say; of a plot without such marks its lines, point by
/// point.
TwinTable PlotFrame::twin() const {
  TwinTable table{{tr("Step"), m_x->titleText(), m_yTitle, tr("In words")}, {}};
  for (const PlotHit& hit : m_hits)
    table.rows << QStringList{QString::number(hit.step + 1), numberText(hit.at.x(), 6),
                              numberText(hit.at.y(), 6), hit.readout.isEmpty() ? hit.text : hit.readout};
  return table.rows.isEmpty() ? lineTable() : table;
}

TwinTable PlotFrame::lineTable() const {
  TwinTable table{{tr("Line"), m_x->titleText(), m_yTitle}, {}};
  for (const QAbstractSeries* series : chart()->series()) {
    const auto* area = qobject_cast<const QAreaSeries*>(series);
    const auto* line =
        area ? static_cast<const QXYSeries*>(area->upperSeries()) : qobject_cast<const QXYSeries*>(series);
    if (!series->isVisible() || !line || series->name().isEmpty()) continue;
    for (const QPointF& point : line->points())
      table.rows << QStringList{series->name(), numberText(point.x(), 6), numberText(point.y(), 6)};
  }
  return table;
}

}  // namespace ui
