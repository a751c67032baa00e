// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/recording/signal_picture.h"

#include <QHelpEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>
#include <algorithm>

#include "ui/preferences/appearance.h"
#include "ui/quantity_edit.h"
#include "ui/strip/curve.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr int height_px = 96;
constexpr double reach_px = 4;  ///< how near a click must come to a narrow level
constexpr double margin_px = 6;

}  // namespace

SignalPicture::SignalPicture(QWidget* parent) : QWidget(parent) {
  setObjectName("signalPicture");
  setAccessibleName(tr("The signal with the levels found"));
  setFixedHeight(atTextSize(height_px));
  setMinimumWidth(200);
}

QSize SignalPicture::sizeHint() const { return {600, height_px}; }

std::size_t SignalPicture::levels() const { return m_steps.size(); }

bool SignalPicture::hasCurve() const {
  return m_recording && m_finding.column && *m_finding.column < m_recording->envelopes.size() &&
         m_recording->recording.time.size() > 1;
}

void SignalPicture::showFinding(const Finding* finding) {
  m_finding = finding ? *finding : Finding{};
  const bool hasLevels = m_finding.find && m_finding.find->levels;
  m_steps.assign(hasLevels ? m_finding.find->levels->size() : 0, QString());
  const auto levelOf = levelOfSteps(m_finding);
  for (std::size_t step = 0; step < levelOf.size(); ++step)
    if (levelOf[step] && *levelOf[step] < levels()) {
      QString& text = m_steps[*levelOf[step]];
      text += (text.isEmpty() ? "" : ", ") + QString::number(step + 1);
    }
  if (m_chosen >= levels()) m_chosen.reset();
  setVisible(levels() > 0);
  if (levels() > 0 && !hasCurve()) {
    m_begin_s = m_finding.find->levels->front().begin_s;
    m_end_s = m_finding.find->levels->back().end_s;
  }
  setRecording(m_recording);
}

void SignalPicture::setRecording(std::shared_ptr<const OpenRecording> recording) {
  m_recording = std::move(recording);
  if (hasCurve()) {
    m_begin_s = m_recording->recording.time.front();
    m_end_s = m_recording->recording.time.back();
  }
  if (!(m_end_s > m_begin_s)) m_end_s = m_begin_s + 1;
  update();
}

void SignalPicture::chooseLevel(std::optional<std::size_t> level) {
  m_chosen = level < levels() ? level : std::nullopt;
  update();
}

QString SignalPicture::stepsOf(std::size_t level) const { return m_steps[level]; }

QRectF SignalPicture::frame() const { return QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5); }

double SignalPicture::xOf(double time_s) const {
  const QRectF inside = frame().adjusted(margin_px, 0, -margin_px, 0);
  return inside.left() + inside.width() * (time_s - m_begin_s) / (m_end_s - m_begin_s);
}

QRectF SignalPicture::bandOf(std::size_t level) const {
  const core::Level& shown = (*m_finding.find->levels)[level];
  const double left = xOf(shown.begin_s);
  return {left, 3, std::max(2.0, xOf(shown.end_s) - left), height() - 6.0};
}

std::optional<std::size_t> SignalPicture::levelAt(double x) const {
  std::optional<std::size_t> nearest;
  double least = reach_px;
  for (std::size_t level = 0; level < levels(); ++level) {
    const QRectF band = bandOf(level);
    const double away = std::max({0.0, band.left() - x, x - band.right()});
    if (away > least || (nearest && away == least)) continue;
    nearest = level;
    least = away;
  }
  return nearest;
}

void SignalPicture::drawSignal(QPainter& painter) {
  const core::Recording& recording = m_recording->recording;
  const core::Samples& values = recording.columns[*m_finding.column].values;
  const QRectF inside = frame().adjusted(margin_px, 18, -margin_px, -5);
  const double ratio = devicePixelRatioF();
  const QSize pixels = (inside.size() * ratio).toSize();
  if (pixels.isEmpty()) return;
  const auto edges = columnEdges(recording.time, m_begin_s, m_end_s, pixels.width());
  const CurveParts parts = curveParts(m_recording->envelopes[*m_finding.column], values, edges);
  if (parts.range.empty()) return;
  const double span = parts.range.greatest - parts.range.least;
  const double margin = span > 0 ? 0.03 * span : 1;
  drawCurve(m_curve, parts, recording.time, values,
            {m_begin_s, m_end_s, parts.range.least - margin, parts.range.greatest + margin}, pixels, ratio,
            coloursFor(palette()).measured);
  painter.drawImage(inside.topLeft(), m_curve);
}

void SignalPicture::drawBand(QPainter& painter, std::size_t level) const {
  const Colours colours = coloursFor(palette());
  const bool isChosen = m_chosen == level, isStep = !m_steps[level].isEmpty();
  QColor fill = isChosen ? colours.selected : colours.band;
  fill.setAlphaF(isStep || isChosen ? 0.25F : 0.0F);
  painter.setBrush(fill);
  painter.setPen(QPen(isChosen ? colours.selected : colours.quiet, isChosen ? 2 : 1,
                      isStep ? Qt::SolidLine : Qt::DashLine));
  const QRectF band = bandOf(level);
  painter.drawRect(band);
  if (!isStep || painter.fontMetrics().horizontalAdvance(m_steps[level]) > band.width()) return;
  painter.setPen(colours.text);
  painter.drawText(band.adjusted(0, 1, 0, 0), Qt::AlignHCenter | Qt::AlignTop, m_steps[level]);
}

void SignalPicture::paintEvent(QPaintEvent*) {
  const Colours colours = coloursFor(palette());
  QPainter painter(this);
  painter.setPen(colours.grid);
  painter.setBrush(colours.background);
  painter.drawRect(frame());
  if (hasCurve()) drawSignal(painter);
  for (std::size_t level = 0; level < levels(); ++level)
    if (m_chosen != level) drawBand(painter, level);
  if (m_chosen) drawBand(painter, *m_chosen);
}

void SignalPicture::mousePressEvent(QMouseEvent* event) {
  const auto level = levelAt(event->position().x());
  if (event->button() == Qt::LeftButton && level) emit levelClicked(*level);
}

/// Says of a level what has no room in its band.
bool SignalPicture::event(QEvent* event) {
  if (event->type() != QEvent::ToolTip) return QWidget::event(event);
  auto* help = static_cast<QHelpEvent*>(event);
  const auto level = levelAt(help->pos().x());
  if (level) {
    const core::Level& shown = (*m_finding.find->levels)[*level];
    const QString times = tr("%1 s to %2 s").arg(numberText(shown.begin_s, 5), numberText(shown.end_s, 5));
    QToolTip::showText(help->globalPos(),
                       m_steps[*level].isEmpty() ? tr("%1: no step").arg(times)
                                                 : tr("%1: step %2").arg(times, m_steps[*level]),
                       this);
  } else {
    QToolTip::hideText();
  }
  return true;
}

TwinTable SignalPicture::twin() const {
  TwinTable table{{tr("Step"), tr("Begins, s"), tr("Ends, s"), tr("Mean")}, {}};
  for (std::size_t level = 0; level < levels(); ++level) {
    const core::Level& shown = (*m_finding.find->levels)[level];
    table.rows << QStringList{m_steps[level], numberText(shown.begin_s, 5), numberText(shown.end_s, 5),
                              numberText(shown.mean, 6)};
  }
  return table;
}

}  // namespace ui
