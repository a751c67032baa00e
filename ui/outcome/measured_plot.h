// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/outcome/check_plot.h"
#include "ui/outcome/plot_frame.h"

class QLineSeries;
class QScatterSeries;

namespace ui {

/// Measured change against simulated value: points with what they may be wrong by, fitted line with its
/// bands, what was expected, the way up and down, the chosen step ringed. What is too narrow to be seen at
/// this scale is told by its width in the legend; the bars below show it enlarged.
class MeasuredPlot : public PlotFrame {
  Q_OBJECT

 public:
  /// Which check this is: the chosen one is drawn with round points, the other with diamonds.
  enum class Role { Chosen, Compared };

  explicit MeasuredPlot(QWidget* parent = nullptr);

  /// Shows `plot` in axes `x` and `y`; `titled` puts the check's name above.
  void showPlot(const CheckPlot& plot, const ChartOptions& options, Role role, bool titled,
                const AxisTicks& x, const AxisTicks& y, std::optional<std::size_t> step);

 protected:
  void applyColours(const Colours& colours) override;

 private:
  void placePoints(const CheckPlot& plot, std::optional<std::size_t> step);
  void placeLine(const CheckPlot& plot, const AxisTicks& x, const AxisTicks& y);
  void placeMarks(const CheckPlot& plot);
  void showBands(const Colours& colours);
  void showLegend(const Colours& colours);

  QLineSeries* m_expected;
  QLineSeries* m_line;
  QScatterSeries* m_points;
  QScatterSeries* m_outside;  ///< the points beyond their limits
  QScatterSeries* m_open;     ///< the points that the decision rule cannot tell
  QScatterSeries* m_ring;
  Role m_role = Role::Chosen;
  ChartOptions m_options;
  QList<LineBand> m_bands;
  QList<QPointF> m_centre;  ///< of the bands
  QString m_uncertainty;    ///< "U up to ±1.3 µm/m"
};

/// Adds all that `plot` draws to the extents of both axes.
void addExtent(const CheckPlot& plot, Extent& x, Extent& y);

}  // namespace ui
