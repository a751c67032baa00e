// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>
#include <QWidget>
#include <optional>

#include "ui/budget/budget_model.h"
#include "ui/budget/trial_runner.h"
#include "ui/session.h"

class QComboBox;
class QLabel;
class QLayout;
class QSortFilterProxyModel;
class QSplitter;
class QStackedWidget;
class QTabBar;

namespace ui {

class SheetView;
class TrialPanel;

/// What the uncertainty of the chosen step is made of: the budget's lines, sortable, and beside them the
/// trials that check it. Shows the set-up that the chosen check is judged by, in the chosen scope.
class BudgetView : public QWidget {
  Q_OBJECT

 public:
  explicit BudgetView(Session& session, QWidget* parent = nullptr);

  SheetView& table() { return *m_table; }

 signals:
  /// The user wants to state another uncertainty of this input of the channel.
  void inputActivated(core::Input input);
  void refused(const QString& reason);

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  /// What the trials belong to, so far as an edit does not change it.
  struct Place {
    std::optional<std::size_t> channel, check;
    core::Scope scope = core::Scope::Chain;
    std::uint64_t seed = 1;

    friend bool operator==(const Place&, const Place&) = default;
  };

  QLayout* choosers();
  QLayout* head();
  void buildTable();
  void followTrials();
  void refresh();
  void fillChoosers();
  QString whatIsMissing() const;
  bool stepIsShown() const;
  void showStep();
  void activate(const QModelIndex& shown);
  void walk(int direction);
  void arrange();
  void shareRoom();
  void colour();

  Session& m_session;
  TrialRunner m_runner;
  BudgetModel m_model;
  Place m_place;
  QStringList m_stepTitles;
  QSortFilterProxyModel* m_sorted;
  QComboBox* m_step;
  QComboBox* m_scope;
  QLabel* m_scopeWords;
  QLabel* m_headline;
  QLabel* m_details;
  QTabBar* m_parts;  ///< where table and trials do not both have room
  QStackedWidget* m_stack;
  QSplitter* m_both;
  SheetView* m_table;
  TrialPanel* m_trials;
  QLabel* m_message;
};

}  // namespace ui
