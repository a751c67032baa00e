// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <optional>

#include "ui/diagnosis/cause_model.h"
#include "ui/diagnosis/diagnosis_runner.h"
#include "ui/session.h"

class QLabel;
class QSplitter;
class QToolButton;

namespace ui {

class CauseDetails;
class SheetView;

/// A page of the Outcome view: what may be wrong with the chosen check, why that is thought, and what follows
/// from it. Works it out on a worker, and only while it is on the screen.
class DiagnosisPanel : public QWidget {
  Q_OBJECT

 public:
  explicit DiagnosisPanel(Session& session, QWidget* parent = nullptr);

  /// Works it out now, whether the panel is on the screen or not.
  void run() { m_runner.run(); }
  /// All that it says, as plain text.
  QString text() const;

 signals:
  void refused(const QString& reason);

 protected:
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  /// Whose result was on view last, so that an edit is told from going elsewhere.
  struct Place {
    std::optional<std::size_t> channel, check;
    friend bool operator==(const Place&, const Place&) = default;
  };

  /// A cause without its size.
  struct Cause {
    int kind = 0;
    std::size_t index = 0, other = 0;
    friend bool operator==(const Cause&, const Cause&) = default;
  };

  QLayout* head();
  static Cause causeAt(const DiagnosisOutcome& outcome, std::size_t row);
  void buildTable();
  void follow();
  void refresh();
  void showOutcome(const DiagnosisRunner::Outcome& outcome, bool outdated);
  void showCause();
  /// Of which check, what it came to, and that the check passes all the same if it does.
  QString sentenceOf(const DiagnosisOutcome& outcome) const;
  void fitSentence();
  void colour();
  std::optional<DiagnosisRunner::Subject> subject() const;
  /// Why there is nothing to diagnose; empty when there is.
  QString whatIsMissing() const;
  DiagnosisRunner::Outcome shown() const;
  std::size_t rowOfChosen(const DiagnosisOutcome& outcome) const;

  Session& m_session;
  DiagnosisRunner m_runner;
  CauseModel m_model;
  QLabel* m_sentence;
  QString m_words;  ///< the sentence in full
  QLabel* m_caution;
  QToolButton* m_copy;
  QSplitter* m_body;
  SheetView* m_table;
  CauseDetails* m_details;
  Place m_place;
  std::optional<Cause> m_chosen;  ///< stays chosen when it is found again
};

}  // namespace ui
