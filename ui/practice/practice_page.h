// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <optional>

#include "ui/practice/practice_set.h"
#include "ui/session.h"

class QStackedWidget;

namespace ui {

class PracticeStartPage;
class PracticeSummaryPage;
class QuestionPage;

/// A page in place of the views: questions about shunts, with answers, explanations and a score that is kept
/// on this computer. A set that is left half way goes on where it was left, after a restart too. Knows
/// no document and changes none.
class PracticePage : public QWidget {
  Q_OBJECT

 public:
  explicit PracticePage(Session& session, QWidget* parent = nullptr);

  /// For tests: other questions.
  void setSource(QuestionSource source) { m_source = std::move(source); }
  const std::optional<PracticeRun>& run() const { return m_run; }
  /// Writes the question sheets of `set`, or the answer sheets, to `path`; says so, or why not.
  bool writeSheets(const PracticeSet& set, const QString& path, bool answers);

 signals:
  /// Without a reason: what was refused is out of date.
  void refused(const QString& reason);
  void said(const QString& sentence);

 protected:
  void focusInEvent(QFocusEvent* event) override;
  void showEvent(QShowEvent* event) override;

 private:
  void connectPages();
  void begin(PracticeRun run);
  void goOn();
  void askNext();
  void take(const GivenAnswer& answer);
  void look(std::size_t position);
  void afterAnswer();
  void openStart();
  void openSummary();
  void open(QWidget* page);
  void takeKeyboard();
  void tellRefusal(const QString& reason);
  void takeBackRefusal();
  void askForSheets(const PracticeSet& set, bool questions, bool answers);

  QuestionSource m_source;
  std::optional<PracticeRun> m_run;
  core::Question m_question;  ///< on view
  bool m_looking = false;     ///< it was opened from the summary
  bool m_toldRefusal = false;
  QStackedWidget* m_pages;
  PracticeStartPage* m_start;
  QuestionPage* m_ask;
  PracticeSummaryPage* m_summary;
};

}  // namespace ui
