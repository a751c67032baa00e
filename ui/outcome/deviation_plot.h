// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/outcome/check_plot.h"
#include "ui/outcome/plot_frame.h"

class QAreaSeries;
class QLineSeries;
class QScatterSeries;

namespace ui {

/// A bar a step from zero, with the band of limits behind. Bars of steps that simulate the same stand
/// side by side; those beyond their limits wear a triangle, those that
/// the decision rule cannot tell a hollow square.
class DeviationPlot : public PlotFrame {
  Q_OBJECT

 public:
  explicit DeviationPlot(QWidget* parent = nullptr);

  /// Shows `bars` over the axis `x`, which the plot above shares; the other axis follows the bars.
  void showBars(QList<PlotBar> bars, const QString& xTitle, const QString& yTitle, const AxisTicks& x,
                std::optional<std::size_t> step);

  int barCount() const { return static_cast<int>(m_shown.size()); }

 protected:
  void applyColours(const Colours& colours) override;
  void arrange() override;

 private:
  void showLegend(const Colours& colours);
  void fitPool();
  void placeBand(const AxisTicks& x);
  double widestSlot() const;
  QList<double> sideBySide(double slot) const;

  QLineSeries* m_upper;
  QLineSeries* m_lower;
  QAreaSeries* m_band;
  QLineSeries* m_zero;
  QScatterSeries* m_outside;
  QScatterSeries* m_open;  ///< tips of the bars that the decision rule cannot tell
  QScatterSeries* m_ring;
  QList<QLineSeries*> m_pool;  ///< one a bar; grows, never shrinks
  QList<PlotBar> m_shown;      ///< x rising
  AxisTicks m_xTicks;
  std::optional<std::size_t> m_step;
};

}  // namespace ui
