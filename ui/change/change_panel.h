// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <memory>

#include "ui/change/change_cause_runner.h"
#include "ui/change/change_words.h"
#include "ui/change/shown_change.h"
#include "ui/change/step_change_model.h"
#include "ui/outcome/report_table_model.h"
#include "ui/picture_file.h"
#include "ui/session.h"

class QBoxLayout;
class QComboBox;
class QGridLayout;
class QLabel;
class QScrollArea;
class QToolButton;

namespace ui {

class CauseSection;
class DifferenceStrip;
class IntervalBar;
class SheetView;
class TrendSection;

/// Two checks of the chosen channel held against each other: what differs in their set-ups first, the verdict
/// in words, every step with its change, margin and what the tests say, gain and zero with their intervals,
/// what changed physically and what that means for data in between; and all checks of the channel over time
/// with control limits. Shows the pair that the session compares; when there is none, the last two checks.
/// Choosing a step here chooses it everywhere. Works nothing out while it is not on the screen.
class ChangePanel : public QWidget {
  Q_OBJECT

 public:
  explicit ChangePanel(Session& session, QWidget* parent = nullptr);
  /// Tables look at models that are members.
  ~ChangePanel() override;

  /// What is on view; null when there is nothing to compare, or nobody has looked yet.
  const std::shared_ptr<const ShownChange>& shown() const { return m_shown; }
  QString verdictWords() const { return m_words; }

 signals:
  void refused(const QString& reason);
  void said(const QString& sentence);
  /// Another pair, or other words about it.
  void shownChanged();

 protected:
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  /// A difference lying down with its name and words.
  struct Bar {
    QLabel* title;
    IntervalBar* bar;
    QLabel* words;
  };

  QWidget* head();
  QWidget* body();
  QWidget* steps();
  QWidget* bars();
  Bar addBar(const char* name, const QString& title);
  void follow();
  void refresh();
  void showConfiguration();
  void foldConfiguration();
  void showSteps();
  void showBars();
  void showBar(const Bar& bar, const std::optional<core::Difference>& difference, const ShownUnit& in);
  void showCause();
  void followStep();
  void choosePair(bool laterChosen);
  void chooseCheck(std::size_t check);
  void walk(int direction);
  void fitWords();
  void arrange();
  void colour();

  Session& m_session;
  std::shared_ptr<const ShownChange> m_shown;
  ChangeCauseRunner m_runner;
  StepChangeModel m_stepModel;
  ReportTableModel m_configurationModel;
  QString m_words;  ///< the verdict in full

  QLabel* m_missing;
  QWidget* m_head;
  QComboBox* m_earlier;
  QComboBox* m_later;
  bool m_unfolded = true;  ///< what differs in the set-ups is listed when something does
  QToolButton* m_fold;
  QLabel* m_verdict;
  QScrollArea* m_scroll;
  QLabel* m_reason;  ///< the verdict in full where the head has no room for it
  SheetView* m_configuration;
  QBoxLayout* m_stepLayout;
  DifferenceStrip* m_strip;
  SheetView* m_stepTable;
  QLabel* m_stepWords;
  QBoxLayout* m_barLayout;
  Bar m_gain, m_zero;
  QLabel* m_together;
  CauseSection* m_cause;
  TrendSection* m_trend;
};

}  // namespace ui
