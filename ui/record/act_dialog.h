// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>

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
  };

  explicit ActDialog(const Question& question, QWidget* parent = nullptr);

  QString person() const;
  QString words() const;

 private:
  void refresh();

  QLineEdit* m_person;
  QPlainTextEdit* m_words;
  QPushButton* m_done;
  bool m_wordsNeeded;
};

}  // namespace ui
