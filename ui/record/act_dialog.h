// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>
#include <functional>

class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;

namespace ui {

/// Asks who does something to the record, and for words to go with it.
class ActDialog : public QDialog {
  Q_OBJECT

 public:
  struct Question {
    QString title;
    QString caution;     ///< what the act means
    QString action;      ///< on the button
    QString words = {};  ///< there already
    bool wordsNeeded = false;
    /// What stands against it when the button is pressed; empty when nothing does. The dialog stays open
    /// then with all that was typed.
    std::function<QString(const QString& person, const QString& words)> objection = {};
  };

  explicit ActDialog(const Question& question, QWidget* parent = nullptr);

  QString person() const;
  QString words() const;

  void accept() override;

 private:
  void refresh();

  Question m_question;
  QLineEdit* m_person;
  QPlainTextEdit* m_words;
  QLabel* m_objection;
  QPushButton* m_done;
};

}  // namespace ui
