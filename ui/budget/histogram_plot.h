// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/budget/budget.h"
#include "core/uncertainty/monte_carlo.h"
#include "ui/outcome/plot_frame.h"

class QAreaSeries;
class QGraphicsSimpleTextItem;
class QLineSeries;

namespace ui {

/// What the trials of one step came to, over what the budget says of it.
struct HistogramContents {
  core::StepUncertainty linear;
  std::optional<core::TrialOutput> trials;  ///< none before a run: the curve of the budget alone
  std::size_t count = 0;                    ///< of trials
  QString quantity;                         ///< "Expected reading"
  QString unit;
  std::size_t step = 0;
};

/// The histogram of a step's trials with the normal curve of the budget, and above them the coverage
/// intervals of both: each a bracket with its own line style and its name at its end.
class HistogramPlot : public PlotFrame {
  Q_OBJECT

 public:
  explicit HistogramPlot(QWidget* parent = nullptr);

  /// Whether the step has a spread that can be drawn.
  static bool canShow(const HistogramContents& contents);
  /// There must be something to draw.
  void showContents(const HistogramContents& contents);

 protected:
  void applyColours(const Colours& colours) override;
  void arrange() override;

 private:
  /// One interval as it is drawn.
  struct Bracket {
    QLineSeries* line = nullptr;
    QGraphicsSimpleTextItem* name = nullptr;
    core::Interval interval = {};
    double level = 0;  ///< where it stands, in the axes' values
    bool shown = false;
    bool nameAtLeft = false;  ///< neighbours have their names at different sides, or low plots mix them
  };

  Bracket makeBracket(const QString& seriesName, const QString& shortName);
  void place(Bracket& bracket, const std::optional<core::Interval>& interval, double level);

  QLineSeries* m_top;
  QAreaSeries* m_trials;
  QLineSeries* m_curve;
  Bracket m_linear, m_symmetric, m_shortest;
};

}  // namespace ui
