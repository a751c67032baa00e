// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QHash>
#include <QKeySequence>
#include <QObject>
#include <QPointer>
#include <optional>
#include <vector>

class QAction;
class QMainWindow;
class QMenu;
class QWidget;

namespace ui {

/// One thing that can be done, or one thing that keys do in a place of their own.
struct Command {
  QString text;   ///< as the menu says it, without marks
  QString place;  ///< its menus ("View › Language"), or the place whose keys they are
  QString name;   ///< of its action; under it the keys are remembered; empty: keys cannot be changed
  QList<QKeySequence> keys;
  QPointer<QAction> action;  ///< none: keys of a place, which only it can act on
  QString whyNot;            ///< why it cannot be done now; empty: it can

  bool hasOwnKeys() const { return !name.isEmpty(); }
  QString keyText() const;
};

/// Everything that the menus of a window can do, and under which keys. Remembers keys that the user has
/// changed in stateFile() under "keys/NAME" and gives them to the actions.
class CommandBook : public QObject {
  Q_OBJECT

 public:
  /// When all menus are there: the keys that they have now are the usual ones.
  explicit CommandBook(QMainWindow& window);

  /// In the order of the menus, then the keys of places. What can be done is as of now: menus that fill
  /// themselves when they open do so, and what they held before is no more.
  std::vector<Command> commands() const { return listAll(Menus::Asked); }

  /// What has `key` already, other than the command `name`. What only one place answers to counts too, since
  /// it would no longer hear it.
  std::optional<Command> holderOf(const QKeySequence& key, const QString& name) const;

  /// Why `key` cannot be the key of a command whoever else has it; empty when it can.
  static QString refusalOf(const QKeySequence& key);

  QList<QKeySequence> usualKeys(const QString& name) const { return m_usual.value(name); }
  /// Empty: none.
  void setKeys(const QString& name, const QList<QKeySequence>& keys);
  /// Gives `key` to the command `name` alone; `from` loses it.
  void takeOver(const QString& name, const QKeySequence& key, const QString& from);
  void setUsual(const QString& name);
  void setAllUsual();

 signals:
  void keysChanged();

 private:
  void learn(const QMenu& menu);
  enum class Menus { AsTheyAre, Asked };
  std::vector<Command> listAll(Menus menus) const;
  void listMenu(QMenu& menu, const QString& place, Menus menus, std::vector<Command>& listed) const;
  void listKeysOfViews(std::vector<Command>& listed) const;
  void listLettersOfMenus(std::vector<Command>& listed) const;
  void follow();

  QMainWindow& m_window;
  QHash<QString, QList<QKeySequence>> m_usual;
  QHash<QString, QPointer<QAction>> m_actions;
};

/// Has tips of widgets under `root` that name the usual key of a command, as "(Alt+0)", name the key that it
/// has: `present` by usual key.
void renameKeysInTips(QWidget& root, const QHash<QKeySequence, QList<QKeySequence>>& present);

}  // namespace ui
