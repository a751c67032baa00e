// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/outcome/check_bars.h"
#include "ui/outcome/plot_frame.h"

class QLineSeries;
class QScatterSeries;

namespace ui {

/// A bar a step from zero, with its own limits behind. Bars of steps that simulate the same stand
/// side by side; those beyond their limits wear a triangle, those that the decision rule cannot tell a hollow
/// square. Over them what each may be wrong by, the fitted line with its bands, and the way up and down: what
/// is too small to be seen among the measured points.
class DeviationPlot : public PlotFrame {
  Q_OBJECT

 public:
  explicit DeviationPlot(QWidget* parent = nullptr);

  /// Shows `picture` over the axis `x`, which the plot above shares; the other axis follows the bars or their
  /// limits.
  void showBars(BarPicture picture, const AxisTicks& x, std::optional<std::size_t> step);

  int barCount() const { return static_cast<int>(m_shown.bars.size()); }

 protected:
  void applyColours(const Colours& colours) override;
  void arrange() final;

 private:
  Extent uprightExtent() const;
  QList<Extent> bandExtents() const;
  bool goesBeyond() const;
  QList<PlotBand> limitBands(const Colours& colours) const;
  void showBands(const Colours& colours);
  void showLegend(const Colours& colours);
  void fitPool();
  void placeBars(const QList<double>& places, double bar_px);
  void placeMarks(const QList<double>& places);
  double widestSlot() const;
  QList<double> sideBySide(double slot) const;

  QLineSeries* m_zero;
  QLineSeries* m_line;
  QScatterSeries* m_outside;
  QScatterSeries* m_open;  ///< tips of the bars that the decision rule cannot tell
  QScatterSeries* m_ring;
  QList<QLineSeries*> m_pool;  ///< one a bar; grows, never shrinks
  BarPicture m_shown;          ///< bars with rising x
  AxisTicks m_xTicks, m_yTicks;
  QList<double> m_places;  ///< of the bars on the x axis
  double m_slot = 0;       ///< width of each on the x axis
  std::optional<std::size_t> m_step;
};

}  // namespace ui
