// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "ui/budget/trial_words.h"

class QBoxLayout;
class QCheckBox;
class QGridLayout;
class QLabel;
class QProgressBar;
class QPushButton;

namespace ui {

class CountEdit;
class HistogramPlot;

/// The trials of the step on view: what starts and stops them, their histogram, and their numbers in words.
class TrialPanel : public QWidget {
  Q_OBJECT

 public:
  explicit TrialPanel(TrialRunner& runner, QWidget* parent = nullptr);

  void show(const TrialView& view);
  /// No step is on view, or it has no budget.
  void showNothing();

  std::uint64_t seed() const { return m_seed; }

 signals:
  void seedChanged();
  void stepWalked(int direction);  ///< with the arrow keys: -1 the step before, +1 the step after

 protected:
  void changeEvent(QEvent* event) override;

 private:
  QLayout* controls();
  void addOptions(QBoxLayout* line);
  void takeSeed(quint64 seed);
  void showControls();
  void say(const QString& sentence, const std::vector<core::Entry>& figures);
  void colour();

  TrialRunner& m_runner;
  std::uint64_t m_seed = 1;
  QPushButton* m_run;
  QPushButton* m_cancel;
  QProgressBar* m_progress;
  QCheckBox* m_live;
  CountEdit* m_seedField;
  QLabel* m_sentence;
  HistogramPlot* m_plot;
  QWidget* m_figures;
  QGridLayout* m_rows;
  std::vector<std::pair<QLabel*, QLabel*>> m_labels;  ///< name and value of a figure; grows, never shrinks
};

}  // namespace ui
