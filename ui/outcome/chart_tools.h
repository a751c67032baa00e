// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "ui/outcome/chart_options.h"

class QAction;
class QComboBox;
class QMenu;

namespace ui {

/// What the bars show and in which unit, and a menu of what else is drawn.
class ChartTools : public QWidget {
  Q_OBJECT

 public:
  explicit ChartTools(QWidget* parent = nullptr);

  const ChartOptions& options() const { return m_options; }
  /// What can be chosen for one check, or for two; `unit` is that of the readings.
  void offer(bool pair, const QString& unit);

 signals:
  void optionsChanged();

 private:
  QMenu* whatIsShown();
  void offerKinds(bool pair);
  void offerUnits(const QString& unit);
  void take();

  QComboBox* m_kind;
  QComboBox* m_unit;
  QAction* m_line;
  QAction* m_confidence;
  QAction* m_prediction;
  QAction* m_errorBars;
  QAction* m_branches;
  QAction* m_fitBars;
  QAction* m_fitLimits;
  ChartOptions m_options;
  bool m_hadPair = false;
};

}  // namespace ui
