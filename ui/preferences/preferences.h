// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QString>

namespace ui {

/// What this user wants of the window, apart from any document. Kept in stateFile() under the name of each
/// field; what is as usual has no entry there, so that a later version may choose another usual value.
struct Preferences {
  /// Light or dark, or as the desktop has it.
  enum class Colours { System, Light, Dark };

  static constexpr int leastTextPercent = 80, greatestTextPercent = 200, usualTextPercent = 100;

  QString language;  ///< ISO 639 code; empty: the system's
  Colours colours = Colours::System;
  int textPercent = usualTextPercent;  ///< size of all text of the window, against the desktop's
  bool lessMotion = false;             ///< nothing moves or fades by itself
  bool openLast = true;                ///< start with the document that was open last
  bool notify = true;                  ///< tell through the desktop when long work is done
  bool autosave = true;                ///< keep unsaved work safe while it is done
  bool hints = true;                   ///< say in empty places what could be done there
  QString person;                      ///< who works here, for history and sign-off; empty: the login name

  friend bool operator==(const Preferences&, const Preferences&) = default;
};

/// With nothing remembered. Less motion where the desktop asks for it.
Preferences usualPreferences();

/// As remembered; the usual value for what is not, or for what nobody could have meant.
Preferences preferences();

/// Remembers, then signals `preferencesChanged` when anything differs from before.
void setPreferences(const Preferences& wanted);

/// There is one; views that are open connect to it and follow at once.
class PreferencesSignal : public QObject {
  Q_OBJECT

 public:
  static PreferencesSignal& instance();

 signals:
  /// `preferences()` has other values than before.
  void preferencesChanged();

 private:
  PreferencesSignal() = default;
};

}  // namespace ui
