// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTabWidget>
#include <functional>

#include "ui/sequence_model.h"
#include "ui/sheet_view.h"
#include "ui/shunt_model.h"
#include "ui/uncertainty_model.h"

class QToolButton;
class QVBoxLayout;

namespace ui {

class BudgetView;
class CheckBar;
class ReviewPage;

/// The Sequence view: the steps of the chosen channel with the bar of its checks above, and on further
/// pages the shunts that the steps close, how well each input of the prediction is known, what the
/// uncertainty of a step is made of, and what is found wrong with the plan.
class SequencePane : public QTabWidget {
  Q_OBJECT

 public:
  explicit SequencePane(Session& session, QWidget* parent = nullptr);

  SheetView& steps() { return *m_steps; }
  SheetView& shunts() { return *m_shunts; }
  SheetView& uncertainties() { return *m_uncertainties; }
  /// The table that is in front.
  SheetView& current();
  CheckBar& checks() { return *m_checks; }
  BudgetView& budget() { return *m_budget; }
  /// Shows the shunts with row `shunt` chosen.
  void showShunt(std::size_t shunt);
  /// Shows the uncertainties with the row of `input` chosen.
  void showUncertainty(core::Input input);
  void showSteps() { setCurrentIndex(0); }
  void showBudget();
  void showReview();

 public slots:
  void addStep();
  void removeStep();
  void moveStep(int by);
  void addShunt();
  void removeShunt();
  void layOutTwoSided();
  /// Drops what is stated about the inputs of the chosen rows.
  void assumeAgain();

 signals:
  void refused(const QString& reason);
  void patternWanted();
  void resistorsWanted();
  void runWanted();

 private:
  QWidget* stepsPage();
  QWidget* shuntsPage();
  QWidget* uncertaintiesPage();
  QToolButton* tool(const QString& name, const QString& text, const QString& tip,
                    const std::function<void()>& act);
  void followSession();
  void moveStep(std::size_t from, std::size_t to);
  bool hasChannel();
  bool planIsOpen();

  Session& m_session;
  SequenceModel m_sequence;
  ShuntModel m_shuntModel;
  UncertaintyModel m_uncertaintyModel;
  SheetView* m_steps;
  SheetView* m_shunts;
  SheetView* m_uncertainties;
  CheckBar* m_checks;
  BudgetView* m_budget;
  ReviewPage* m_review;
};

}  // namespace ui
