// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/outcome/check_plot.h"
#include "ui/outcome/plot_frame.h"

class QLineSeries;
class QScatterSeries;

namespace ui {

/// Measured change against simulated value: points, fitted line, what was expected, the chosen step ringed.
class MeasuredPlot : public PlotFrame {
  Q_OBJECT

 public:
  /// Which check this is: the chosen one is drawn with round points, the other with diamonds.
  enum class Role { Chosen, Compared };

  explicit MeasuredPlot(QWidget* parent = nullptr);

  /// Shows `plot` in axes `x` and `y`; `titled` puts the check's name above.
  void showPlot(const CheckPlot& plot, Role role, bool titled, const AxisTicks& x, const AxisTicks& y,
                std::optional<std::size_t> step);

 protected:
  void applyColours(const Colours& colours) override;

 private:
  void showLegend(const Colours& colours);

  QLineSeries* m_expected;
  QLineSeries* m_line;
  QScatterSeries* m_points;
  QScatterSeries* m_outside;  ///< the points beyond their limits
  QScatterSeries* m_open;     ///< the points that the decision rule cannot tell
  QScatterSeries* m_ring;
  Role m_role = Role::Chosen;
};

/// Adds all that `plot` draws to the extents of both axes.
void addExtent(const CheckPlot& plot, Extent& x, Extent& y);

}  // namespace ui
