// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "core/units/result.h"
#include "core/working/working.h"
#include "ui/session.h"

class QLabel;
class QToolButton;

namespace ui {

class WorkingText;

/// A page of the Outcome view: how the numbers of the chosen step come about, formula by formula, and the
/// exact value beside the textbook's. Works out what it shows only while it is on the screen.
class WorkingPanel : public QWidget {
  Q_OBJECT

 public:
  explicit WorkingPanel(Session& session, QWidget* parent = nullptr);

  /// All that it says, as plain text.
  QString text() const;

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  QLayout* head();
  void follow();
  void refresh();
  void walk(int direction);
  QString title() const;
  /// Why there is nothing to work out; empty when there is.
  QString whatIsMissing() const;
  core::Result<std::vector<core::WorkingPart>> working() const;

  Session& m_session;
  QLabel* m_title;
  QToolButton* m_before;
  QToolButton* m_after;
  QToolButton* m_copy;
  QLabel* m_message;
  WorkingText* m_text;
};

}  // namespace ui
