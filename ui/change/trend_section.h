// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "ui/change/shown_change.h"
#include "ui/outcome/report_table_model.h"

class QBoxLayout;
class QLabel;

namespace ui {

class SheetView;
class TrendChart;

/// All checks of a channel over time: gain and zero with control limits, and the same as a table. Choosing a
/// check (a click on its point, or Return on its row) asks for it to be compared.
class TrendSection : public QWidget {
  Q_OBJECT

 public:
  explicit TrendSection(QWidget* parent = nullptr);

  void showTrend(const ShownChange& shown);
  /// Charts side by side.
  void setWide(bool wide);

 signals:
  void checkChosen(std::size_t check);

 private:
  core::Table tableOf(const ShownChange& shown) const;

  QLabel* m_sentence;
  QBoxLayout* m_charts;
  TrendChart* m_gain;
  TrendChart* m_zero;
  SheetView* m_table;
  ReportTableModel m_model;
  std::vector<std::size_t> m_checks;  ///< of the rows
};

}  // namespace ui
