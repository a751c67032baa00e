// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QDialog>

#include "core/plan/pattern.h"
#include "core/plan/settling.h"
#include "ui/pattern/step_preview.h"
#include "ui/session.h"

class QCheckBox;
class QComboBox;
class QGridLayout;
class QLabel;
class QPushButton;
class QRadioButton;
class QVBoxLayout;

namespace ui {

class CountEdit;
class QuantityEdit;

/// Lays the chosen channel's sequence out from a pattern: choose a usual one or one's own, change it, see the
/// steps, accept. Accepting is one undo step. Patterns of one's own are saved for all documents.
class PatternDialog : public QDialog {
  Q_OBJECT

 public:
  explicit PatternDialog(Session& session, QWidget* parent = nullptr);

  /// Stays open while a field holds text that is no quantity, or there is nothing to lay out.
  void accept() override;

 signals:
  void refused(const QString& reason);

 private:
  QString whyEmpty() const;
  QWidget* emptyPage(const QString& reason);
  QWidget* settings();
  QWidget* patternGroup();
  void addFields(QGridLayout* form);
  QWidget* ownButtons();
  QWidget* levelsGroup();
  QWidget* timesGroup();
  void addGivenTimes(QGridLayout* form);
  QWidget* preview();
  QWidget* buttons();

  const core::Channel& channel() const { return *m_session.channel(); }
  void listPatterns(const std::string& chosen);
  void choosePattern(int row);
  void showPattern();
  void takePattern();
  void saveOwn();
  void removeOwn();
  core::PlannedLevels levels() const;
  core::StepTimes times() const;
  QString leftOut(const core::PlannedLevels& found) const;
  QString caution(const core::PlannedLevels& found) const;
  void followTimes();
  void follow();
  void say(const QString& sentence);

  Session& m_session;
  core::Result<core::StepTimes> m_asked = core::StepTimes{};  ///< as filter and sample rate ask
  core::StepTimes m_given;
  core::Pattern m_pattern;                ///< as chosen and changed
  std::vector<core::Pattern> m_patterns;  ///< the usual ones, then the user's own
  StepPreview m_preview;
  QComboBox* m_choice = nullptr;
  QLabel* m_changed = nullptr;
  QComboBox* m_course = nullptr;
  QComboBox* m_sides = nullptr;
  QCheckBox* m_zeroBetween = nullptr;
  CountEdit* m_repeats = nullptr;
  CountEdit* m_seed = nullptr;
  QPushButton* m_remove = nullptr;
  QComboBox* m_levels = nullptr;
  QRadioButton* m_useAsked = nullptr;
  QRadioButton* m_useGiven = nullptr;
  QuantityEdit* m_settle = nullptr;
  QuantityEdit* m_hold = nullptr;
  QLabel* m_summary = nullptr;
  QLabel* m_caution = nullptr;
  QLabel* m_message = nullptr;
  QPushButton* m_layOut = nullptr;
};

}  // namespace ui
