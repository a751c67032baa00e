// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAbstractSlider>
#include <QAbstractSpinBox>
#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QFileDialog>
#include <QKeyEvent>
#include <QLineEdit>
#include <QMainWindow>
#include <QMenu>
#include <QMenuBar>
#include <QPointer>
#include <QRegularExpression>
#include <QScrollArea>
#include <QScrollBar>
#include <QTimer>
#include <functional>
#include <set>
#include <vector>

// The whole window by its menus, whatever is in them.

namespace test {

/// Every action of the menus that can be chosen, submenus too.
inline void collectActions(const QList<QAction*>& from, std::vector<QAction*>& into) {
  for (QAction* action : from)
    if (action->menu())
      collectActions(action->menu()->actions(), into);
    else if (!action->isSeparator() && action->isEnabled() && action->isVisible())
      into.push_back(action);
}

/// Ends the program, fills the screen, asks for a printer, changes colours or language, or takes away what is
/// looked at.
inline bool isLeftAlone(const QAction& action) {
  static const QRegularExpression names(
      "^(quit|new|open|teachPresent|viewLight|viewDark|viewSystem|language.*|.*[Pp]rint.*|.*[Rr]emove.*|.*"
      "clear.*)$");
  return action.objectName().isEmpty() || names.match(action.objectName()).hasMatch();
}

/// Presses each action of the menus and calls `visit` with the window, or with the dialog that opened, which
/// is left again. Choosers of files are Qt's own and are left at once.
inline void visitEveryPlace(QMainWindow& window, const std::function<void(QWidget&, const QString&)>& visit) {
  std::vector<QAction*> actions;
  collectActions(window.menuBar()->actions(), actions);
  std::vector<QPointer<QAction>> wanted(actions.begin(), actions.end());
  visit(window, "at the start");
  for (const QPointer<QAction>& action : wanted) {
    if (!action || !action->isEnabled() || isLeftAlone(*action)) continue;
    const QString how = action->text();
    bool opened = false;
    QTimer watch;
    QObject::connect(&watch, &QTimer::timeout, &watch, [&] {
      QWidget* modal = QApplication::activeModalWidget();
      if (!modal) return;
      watch.stop();
      opened = true;
      if (!qobject_cast<QFileDialog*>(modal)) visit(*modal, how);
      if (auto* dialog = qobject_cast<QDialog*>(modal)) dialog->reject();
      watch.start(20);
    });
    watch.start(20);
    action->trigger();
    watch.stop();
    QApplication::processEvents();
    const QWidgetList tops = QApplication::topLevelWidgets();
    for (const QPointer<QWidget>& other : QList<QPointer<QWidget>>(tops.begin(), tops.end()))
      if (other && other != &window && other->isVisible() && other->windowType() == Qt::Window) {
        opened = true;
        visit(*other, how);
        other->close();
      }
    if (!opened) visit(window, how);
    // The tour lies over the window until it is left.
    if (auto* tour = window.findChild<QWidget*>("tour"); tour && tour->isVisible()) {
      QKeyEvent leave(QEvent::KeyPress, Qt::Key_Escape, Qt::NoModifier);
      QApplication::sendEvent(tour, &leave);
      QApplication::processEvents();
    }
  }
}

inline QString nameForPeople(const QWidget* widget) {
  QString name = widget->objectName().isEmpty() ? widget->metaObject()->className() : widget->objectName();
  for (const QWidget* around = widget->parentWidget(); around; around = around->parentWidget())
    if (!around->objectName().isEmpty() && !around->objectName().startsWith("qt_")) {
      name += " in " + around->objectName();
      break;
    }
  return name;
}

/// Whether it is there to be worked with: not a part that Qt builds into another widget.
inline bool isInteractive(const QWidget* widget) {
  if (qobject_cast<const QScrollBar*>(widget) || widget->objectName().startsWith("qt_")) return false;
  const QWidget* parent = widget->parentWidget();
  if (qobject_cast<const QAbstractSpinBox*>(parent) || qobject_cast<const QComboBox*>(parent)) return false;
  if (qobject_cast<const QLineEdit*>(parent)) return false;  // its arrow keys do what its buttons do
  if (qobject_cast<const QAbstractScrollArea*>(parent) && !qobject_cast<const QLineEdit*>(widget))
    return false;
  if (widget->inherits("QTableCornerButton") || widget->inherits("QMenuBarExtension")) return false;
  return qobject_cast<const QAbstractButton*>(widget) || qobject_cast<const QLineEdit*>(widget) ||
         qobject_cast<const QComboBox*>(widget) || qobject_cast<const QAbstractSpinBox*>(widget) ||
         qobject_cast<const QAbstractItemView*>(widget) || qobject_cast<const QAbstractSlider*>(widget) ||
         ((widget->focusPolicy() & Qt::TabFocus) && !qobject_cast<const QScrollArea*>(widget));
}

inline std::vector<QWidget*> interactiveIn(const QWidget& place) {
  std::vector<QWidget*> found;
  for (QWidget* widget : place.findChildren<QWidget*>())
    if (widget->window() == place.window() && widget->isVisible() && widget->isEnabled() &&
        isInteractive(widget) && !qobject_cast<QMenu*>(widget) && !qobject_cast<QMenuBar*>(widget))
      found.push_back(widget);
  return found;
}

}  // namespace test
