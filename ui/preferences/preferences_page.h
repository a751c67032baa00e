// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QButtonGroup;
class QCheckBox;
class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;

namespace ui {

class CountEdit;

struct Preferences;

/// Everything that this user can have another way, on one page; each with a sentence that says what it does.
/// What is chosen holds at once, and is remembered.
class PreferencesPage : public QWidget {
  Q_OBJECT

 public:
  explicit PreferencesPage(QWidget* parent = nullptr);

 signals:
  /// The list of commands, where keys are changed.
  void keysWanted();
  /// Everything was set back; keys are the window's to set back.
  void resetAll();
  void said(const QString& sentence);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void changeEvent(QEvent* event) override;
  void showEvent(QShowEvent* event) override;

 private:
  void heading(const QString& text);
  /// A row: what it is, its control, and under it what the control does.
  void row(const QString& name, QWidget* control, const QString& sentence);
  QWidget* choices(QButtonGroup*& group, const QString& name, const QStringList& names,
                   const QStringList& texts);
  QCheckBox* tick(const QString& name, const QString& title, const QString& text, const QString& sentence,
                  bool Preferences::*field);
  void addLook();
  void addWork();
  void addPerson();
  void addFoot();
  /// Remembers what `set` makes of the preferences.
  template <typename Set>
  void change(const Set& set);
  void refresh();
  void styleSentences();
  void askBeforeReset();

  QGridLayout* m_rows = nullptr;
  QComboBox* m_language = nullptr;
  QButtonGroup *m_colours = nullptr, *m_symbols = nullptr;
  CountEdit* m_textPercent = nullptr;
  QLineEdit* m_person = nullptr;
  struct Tick {
    QCheckBox* box;
    bool Preferences::*field;
  };
  QList<Tick> m_ticks;
  QList<QLabel*> m_sentences;
};

}  // namespace ui
