// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>

class QLabel;
class QLineEdit;
class QPrinter;
class QPushButton;
class QTableView;

namespace ui {

class CommandBook;
class CommandModel;
class KeyField;

/// All commands and keys in one list: words typed above find them, Return does the chosen one, and below the
/// list its keys are changed by pressing them. What is chosen is done once the list is closed.
class CommandList : public QDialog {
  Q_OBJECT

 public:
  explicit CommandList(CommandBook& book, QWidget* parent = nullptr);

  /// The list as a table on paper: commands, where they are, their keys.
  void printTo(QPrinter& printer) const;
  /// The same for a spreadsheet: lines with tabs.
  QString asText() const;

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  QWidget* searchRow();
  void buildTable();
  QWidget* keyRow();
  QWidget* footRow();
  void chooseFirst();
  void showChosen();
  void runChosen();
  void record(const QKeySequence& key);
  void takeOver();
  void tell(const QString& sentence);
  void askAndPrint();
  void copyAll();

  CommandBook& m_book;
  CommandModel* m_model;
  QLineEdit* m_search = nullptr;
  QTableView* m_table = nullptr;
  KeyField* m_keys = nullptr;
  QLabel *m_chosen = nullptr, *m_told = nullptr;
  QPushButton *m_take = nullptr, *m_clear = nullptr, *m_usual = nullptr, *m_run = nullptr;
  QKeySequence m_wanted;  ///< pressed, but another command has it
  QString m_holder;       ///< name of that command
};

}  // namespace ui
