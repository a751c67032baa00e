// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTimer>
#include <QWidget>
#include <optional>

#include "core/evaluate/comparison.h"
#include "ui/outcome/axis_ticks.h"
#include "ui/outcome/check_plot.h"
#include "ui/session.h"

class QBoxLayout;
class QComboBox;
class QLabel;
class QSplitter;
class QStackedWidget;
class QTableView;
class QToolButton;

namespace ui {

class DeviationPlot;
class FigureGrid;
class MeasuredPlot;
class ReportTableModel;

/// What the chosen check shows: measured against simulated, deviations with their limits, the verdict
/// and the figures in words. With a second check chosen both stand side by side in the same axes, and
/// what differs between them lies below. Everything is there as a table too.
class OutcomeView : public QWidget {
  Q_OBJECT

 public:
  explicit OutcomeView(Session& session, QWidget* parent = nullptr);

  /// Exchanges the charts for the table of the same steps.
  void showAsTable(bool table);

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void showEvent(QShowEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  /// Two checks in the order they were made, with what is between them.
  struct Pair {
    std::size_t before = 0, after = 0;
    core::Comparison comparison;
  };

  void buildHead(QBoxLayout* column);
  void buildCharts();
  void buildTable();
  void refresh();
  void offerKinds(bool pair);
  std::optional<Pair> pair() const;
  bool canBeDrawn() const;
  QString whatIsMissing() const;
  void showWords(const std::optional<Pair>& pair, const QString& missing);
  void showNotice(const std::optional<Pair>& compared);
  /// "pre-test: Fail: 1 of 4 ..."
  QString sentenceOf(std::size_t check) const;
  void showCharts(const std::optional<Pair>& pair);
  void showBars(const std::optional<Pair>& pair, const CheckPlot& plot, const Extent& x);
  void showTable(const std::optional<Pair>& pair);
  QString barTitle(const QString& unit) const;
  void alignPlots();
  void walk(int direction);
  void selectRow(std::size_t row);

  Session& m_session;
  QLabel* m_notice;   ///< what the reader must know before the verdict
  QLabel* m_verdict;  ///< the verdict in words, or what is missing
  QLabel* m_each;     ///< what either of two compared checks says by itself
  QLabel* m_scope;
  QComboBox* m_kind;
  QToolButton* m_asTable;
  QStackedWidget* m_stack;  ///< charts, table, nothing
  QSplitter* m_charts;
  MeasuredPlot* m_left;   ///< the only check, or the earlier of two
  MeasuredPlot* m_right;  ///< the later of two
  DeviationPlot* m_bars;
  QTableView* m_table;
  ReportTableModel* m_model;
  FigureGrid* m_figures;
  QBoxLayout* m_body;  ///< stack and figures, below or beside one another
  QTimer m_later;      ///< one refresh for all plots that changed size together
  core::Verdict m_shownVerdict = core::Verdict::NotJudged;
  bool m_hadPair = false;
};

}  // namespace ui
