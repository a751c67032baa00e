// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QDialog>
#include <memory>
#include <optional>

#include "ui/search/search_runner.h"
#include "ui/session.h"

class QBoxLayout;
class QCheckBox;
class QComboBox;
class QLabel;
class QProgressBar;
class QPushButton;

namespace ui {

class LevelsGroup;
class PlacesGroup;
class ReportTableModel;
class ResistorsGroup;
class SheetView;

/// Finds the resistors that come nearest to wanted levels, and puts them into the chosen channel.
class SearchDialog : public QDialog {
  Q_OBJECT

 public:
  explicit SearchDialog(Session& session, QWidget* parent = nullptr);

 signals:
  void refused(const QString& reason);

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  QWidget* askings();
  QWidget* criterion();
  QWidget* results();
  QLayout* searchRow();
  QLayout* useRow();
  SheetView* table(const char* name, const QString& label, ReportTableModel* model);
  core::Result<SearchRunner::Job> job();
  void search();
  void showDone(const std::shared_ptr<const SearchRunner::Outcome>& outcome);
  void showSet();
  void showControls();
  void watchForm(QWidget* form);
  /// What was found is for what was asked before.
  void formChanged();
  void sayOutcome();
  void showCaution();
  void say(const QString& sentence, bool wrong = false);
  void use();
  std::optional<std::size_t> chosenSet() const;

  Session& m_session;
  SearchRunner m_runner;
  std::shared_ptr<const core::Channel> m_channel;  ///< that the search is made for
  SearchRunner::Job m_asked;                       ///< last
  SearchRunner::Job m_job;                         ///< that the results are of
  core::SearchOutcome m_outcome;
  bool m_changed = false;  ///< the form, since the search that the results are of
  LevelsGroup* m_levels = nullptr;
  PlacesGroup* m_places = nullptr;
  ResistorsGroup* m_resistors = nullptr;
  QComboBox* m_miss = nullptr;
  QCheckBox* m_atTolerance = nullptr;
  QPushButton* m_search;
  QPushButton* m_cancel;
  QProgressBar* m_progress;
  QLabel* m_sentence;
  QLabel* m_caution;
  ReportTableModel* m_setModel;
  ReportTableModel* m_levelModel;
  SheetView* m_sets;
  SheetView* m_levelTable;
  QComboBox* m_how;
  QPushButton* m_use;
};

}  // namespace ui
