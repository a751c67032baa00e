// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/outcome/line_band.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <optional>

#include "core/line/line_use.h"
#include "ui/outcome/axis_ticks.h"
#include "ui/quantity_edit.h"

namespace ui {
namespace {

constexpr double coverage = 0.95;
constexpr int places = 41;  ///< the edges are hyperbolas; so many corners look round

QString tr(const char* text) { return QCoreApplication::translate("ui::LineBand", text); }

std::optional<double> halfWidth(LineBand::Kind kind, const core::Line& line, double x, double uNew) {
  const std::optional<double> half = kind == LineBand::Kind::Confidence
                                         ? core::confidenceHalfWidth(line, x, coverage)
                                         : core::predictionHalfWidth(line, x, coverage, uNew);
  return half && isDrawable(*half) ? half : std::nullopt;
}

/// y of the path at `x`, which must not be left of its first point.
double heightAt(const QList<QPointF>& path, double x) {
  for (qsizetype k = 1; k < path.size(); ++k) {
    if (x > path[k].x() && k + 1 < path.size()) continue;
    const QPointF &a = path[k - 1], &b = path[k];
    return b.x() > a.x() ? a.y() + (b.y() - a.y()) * (x - a.x()) / (b.x() - a.x()) : b.y();
  }
  return path.first().y();
}

}  // namespace

double LineBand::widest() const {
  double widest = 0;
  for (const QPointF& half : halves) widest = std::max(widest, half.y());
  return widest;
}

LineBand lineBand(LineBand::Kind kind, const core::Line& line, double low, double high, double uNew,
                  const DrawnUnit& unit) {
  LineBand band{kind, {}, {}};
  for (int k = 0; k < places; ++k) {
    const double x = std::lerp(low, high, static_cast<double>(k) / (places - 1));  // exact at both ends
    if (const auto half = halfWidth(kind, line, x, uNew)) band.halves.append({x, unit.factor * *half});
  }
  if (band.halves.size() < places) return {kind, {}, {}};
  const QString name = kind == LineBand::Kind::Confidence ? tr("95 % confidence") : tr("95 % prediction");
  band.words = name + " ±" + numberText(band.widest(), 2) + " " + unit.name;
  return band;
}

PlotBand bandAbout(const LineBand& band, const QList<QPointF>& centre, const Colours& colours) {
  const bool confidence = band.kind == LineBand::Kind::Confidence;
  PlotBand shape{confidence ? tr("Confidence band") : tr("Prediction band"),
                 {},
                 {},
                 fillOf(band.kind, colours),
                 confidence ? colours.fitted : colours.measured,
                 confidence ? Qt::DashLine : Qt::DotLine};
  if (centre.isEmpty()) return shape;
  for (const QPointF& half : band.halves) {
    if (half.x() < centre.first().x() || half.x() > centre.last().x()) continue;
    const double middle = heightAt(centre, half.x());
    shape.upper.append({half.x(), middle + half.y()});
    shape.lower.append({half.x(), middle - half.y()});
  }
  return shape;
}

QColor fillOf(LineBand::Kind kind, const Colours& colours) {
  const bool confidence = kind == LineBand::Kind::Confidence;
  QColor fill = confidence ? colours.fitted : colours.measured;
  fill.setAlphaF(confidence ? 0.22F : 0.12F);
  return fill;
}

}  // namespace ui
