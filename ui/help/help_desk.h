// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QPointer>

class QAction;
class QDialog;
class QWidget;

namespace ui {

class ManualWindow;

/// Brings up the manual: as a whole, or at the page for what has the keyboard, in the window and in every
/// dialog, where a button does the same. The manual is made when it is first asked for.
class HelpDesk : public QObject {
  Q_OBJECT

 public:
  /// `here` is the command of the window whose keys work in dialogs too.
  HelpDesk(QWidget& window, QAction& here);

  /// Where it was left, or its first page.
  void showManual();
  void showAddress(const QString& address);
  /// The page for what has the keyboard.
  void showHere();
  /// The one that is open, else none.
  ManualWindow* manual() const;

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  ManualWindow& open();
  void giveButton(QDialog& dialog);

  QWidget& m_window;
  QAction& m_here;
  QPointer<ManualWindow> m_manual;
  QPointer<ManualWindow> m_overDialog;  ///< while a dialog has the input, its own
};

}  // namespace ui
