// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>
#include <QWidget>

class QBoxLayout;
class QLabel;

namespace ui {

class Session;

/// Offers in an empty place what fills it: buttons that give a command of the window, the one that comes
/// first in the order of the work. Not there while nothing is missing, or where the user wants no hints.
class NextSteps : public QWidget {
  Q_OBJECT

 public:
  /// What a view has to have to show something; each includes those before it, but for SecondCheck, which is
  /// only missing where there is one.
  enum class Need { Channel, Shunts, Steps, Check, Recording, SecondCheck };

  /// `sentence`: what is missing, where the view does not say it itself.
  NextSteps(Session& session, Need need, const QString& sentence = {}, QWidget* parent = nullptr);

  /// Object names of the commands that help now; none: nothing is missing.
  QStringList commands() const;
  /// Never wider than its widest button asks for.
  QSize minimumSizeHint() const override;

 protected:
  bool event(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void showEvent(QShowEvent* event) override;

 private:
  void refresh();
  void fill();
  void arrange();

  Session& m_session;
  Need m_need;
  QLabel* m_sentence = nullptr;
  QBoxLayout* m_buttons = nullptr;  ///< in a row, or where that is too wide one below the other
  QStringList m_filled;
};

/// Puts next steps under `message`: below its text where it has a whole page to itself, else below it in its
/// layout, which must be a box.
NextSteps* offerUnder(QLabel* message, Session& session, NextSteps::Need need);

}  // namespace ui
