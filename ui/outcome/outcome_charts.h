// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTimer>
#include <QWidget>

#include "ui/outcome/axis_ticks.h"
#include "ui/outcome/check_plot.h"
#include "ui/outcome/shown_outcome.h"

class QLabel;
class QSplitter;

namespace ui {

class DeviationPlot;
class MeasuredPlot;
class PlotFrame;

/// One check, or two side by side in the same axes, above bars of what is off; below them the numbers of the
/// mark under the pointer, or else of the chosen step.
class OutcomeCharts : public QWidget {
  Q_OBJECT

 public:
  explicit OutcomeCharts(QWidget* parent = nullptr);

  /// There must be something to draw. `words` say the whole for assistive tools.
  void showOutcome(const ShownOutcome& outcome, const ChartOptions& options, const QString& words);
  /// Without the line of numbers, for paper.
  void hideReadout();
  void paintInto(QPainter& painter, const QRectF& target);

 signals:
  void stepClicked(std::size_t step);
  void stepWalked(int direction);
  /// The plots have other sizes: more or fewer labels have room.
  void roomChanged();

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void showEvent(QShowEvent* event) override;

 private:
  void showBars(const ShownOutcome& outcome, const ChartOptions& options, const CheckPlot& plot,
                const AxisTicks& x);
  void collectReadout(const ShownOutcome& outcome, const CheckPlot& first, const CheckPlot& second);
  void describe(const QString& words, const CheckPlot& first, const CheckPlot& second);
  void showReadout(const QString& pointed);
  void alignPlots();
  void keepRoomForReadout();

  QSplitter* m_splitter;
  MeasuredPlot* m_left;   ///< the only check, or the earlier of two
  MeasuredPlot* m_right;  ///< the later of two
  DeviationPlot* m_bars;
  QLabel* m_readout;
  QString m_chosen;  ///< numbers of the chosen step
  QTimer m_later;    ///< one signal for all plots that changed size together
};

}  // namespace ui
