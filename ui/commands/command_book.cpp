// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/commands/command_book.h"

#include <QAction>
#include <QMainWindow>
#include <QMenu>
#include <QMenuBar>
#include <QRegularExpression>
#include <QSet>
#include <QTextDocumentFragment>
#include <QWidget>
#include <algorithm>

#include "ui/commands/fixed_keys.h"
#include "ui/state_file.h"

namespace ui {
namespace {

const QString keysGroup = QStringLiteral("keys/");

/// As one reads it: "&" marks the letter of a menu, "&&" is one.
QString withoutMarks(QString text) {
  text.replace("&&", QChar(0)).remove('&').replace(QChar(0), '&');
  return text;
}

QString whyNotNow(const QAction& action) {
  if (action.isEnabled()) return {};
  if (action.objectName() == "undo") return CommandBook::tr("Nothing was done yet that could be undone.");
  if (action.objectName() == "redo") return CommandBook::tr("Nothing was undone that could be done again.");
  // A tip that is no copy of the text says why not.
  const QString tip = QTextDocumentFragment::fromHtml(action.toolTip()).toPlainText();
  const QString text = withoutMarks(action.text());
  return tip.isEmpty() || tip == text || text.startsWith(tip) ? CommandBook::tr("Not now.") : tip;
}

/// The place that a widget is, in its own words or those of what it lies in.
QString placeOf(const QObject* object) {
  for (; object; object = object->parent())
    if (const auto* widget = qobject_cast<const QWidget*>(object);
        widget && !widget->accessibleName().isEmpty())
      return widget->accessibleName();
  return {};
}

bool isOfWindow(const QAction& action) { return action.shortcutContext() == Qt::WindowShortcut; }

/// One that stands in two menus is one command.
bool isListed(const QAction& action, const std::vector<Command>& listed) {
  return std::any_of(listed.begin(), listed.end(),
                     [&](const Command& command) { return command.action == &action; });
}

bool acts(const QAction& action) { return !action.isSeparator() && !action.text().isEmpty(); }

}  // namespace

QString Command::keyText() const { return QKeySequence::listToString(keys, QKeySequence::NativeText); }

CommandBook::CommandBook(QMainWindow& window) : QObject(&window), m_window(window) {
  for (const QAction* top : window.menuBar()->actions())
    if (top->menu()) learn(*top->menu());
  const QSettings state = stateFile();
  bool changed = false;
  for (auto each = m_actions.begin(); each != m_actions.end(); ++each) {
    const QString key = keysGroup + each.key();
    if (!state.contains(key)) continue;
    each.value()->setShortcuts(
        QKeySequence::listFromString(state.value(key).toString(), QKeySequence::PortableText));
    changed = true;
  }
  if (changed) follow();
}

void CommandBook::learn(const QMenu& menu) {
  for (QAction* action : menu.actions()) {
    if (action->menu()) {
      learn(*action->menu());
    } else if (acts(*action) && isOfWindow(*action) && !action->objectName().isEmpty()) {
      m_actions[action->objectName()] = action;
      m_usual[action->objectName()] = action->shortcuts();
    }
  }
}

// ---- the list --------------------------------------------------------------------------------

std::vector<Command> CommandBook::listAll(Menus menus) const {
  std::vector<Command> listed;
  for (QAction* top : m_window.menuBar()->actions())
    if (top->menu()) listMenu(*top->menu(), withoutMarks(top->text()), menus, listed);
  listKeysOfViews(listed);
  listLettersOfMenus(listed);
  for (const FixedKeys& fixed : fixedKeys())
    listed.push_back({fixed.text, fixed.place, {}, fixed.keys, {}, {}});
  return listed;
}

void CommandBook::listMenu(QMenu& menu, const QString& place, Menus menus,
                           std::vector<Command>& listed) const {
  // Menus decide what can be done, and fill themselves, when they open.
  if (menus == Menus::Asked) emit menu.aboutToShow();
  for (QAction* action : menu.actions()) {
    if (action->menu()) {
      listMenu(*action->menu(), place + " › " + withoutMarks(action->text()), menus, listed);
    } else if (acts(*action) && !isListed(*action, listed)) {
      const bool own = m_actions.value(action->objectName()) == action;
      listed.push_back({withoutMarks(action->text()), place, own ? action->objectName() : QString(),
                        action->shortcuts(), action, whyNotNow(*action)});
    }
  }
  if (menus == Menus::Asked) emit menu.aboutToHide();
}

/// Keys of actions that stand in no menu of the window, or only count where a view has the keyboard.
void CommandBook::listKeysOfViews(std::vector<Command>& listed) const {
  QSet<const QAction*> known;
  for (const Command& command : listed) known.insert(command.action);
  for (const QAction* action : m_window.findChildren<QAction*>())
    if (!known.contains(action) && !action->shortcuts().isEmpty() && acts(*action))
      listed.push_back(
          {withoutMarks(action->text()), placeOf(action->parent()), {}, action->shortcuts(), {}, {}});
}

void CommandBook::listLettersOfMenus(std::vector<Command>& listed) const {
  for (const QAction* top : m_window.menuBar()->actions())
    if (const QKeySequence letter = QKeySequence::mnemonic(top->text()); top->menu() && !letter.isEmpty())
      listed.push_back(
          {tr("Open the menu %1").arg(withoutMarks(top->text())), tr("Menus"), {}, {letter}, {}, {}});
}

// ---- keys ------------------------------------------------------------------------------------

std::optional<Command> CommandBook::holderOf(const QKeySequence& key, const QString& name) const {
  const std::vector<Command> all = listAll(Menus::AsTheyAre);
  const auto found = std::find_if(all.begin(), all.end(), [&](const Command& command) {
    return command.keys.contains(key) && (name.isEmpty() || command.name != name);
  });
  return found == all.end() ? std::nullopt : std::optional(*found);
}

QString CommandBook::refusalOf(const QKeySequence& key) {
  const QKeyCombination pressed = key[0];
  const bool isFunction = pressed.key() >= Qt::Key_F1 && pressed.key() <= Qt::Key_F35;
  const auto held = pressed.keyboardModifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier);
  if (held || isFunction) return {};
  return tr("%1 alone is for typing and walking. Hold Ctrl or Alt with it, or take one of F1 to F35.")
      .arg(key.toString(QKeySequence::NativeText));
}

void CommandBook::setKeys(const QString& name, const QList<QKeySequence>& keys) {
  QAction* action = m_actions.value(name);
  if (!action || action->shortcuts() == keys) return;
  action->setShortcuts(keys);
  QSettings state = stateFile();
  if (keys == m_usual.value(name))
    state.remove(keysGroup + name);
  else
    state.setValue(keysGroup + name, QKeySequence::listToString(keys, QKeySequence::PortableText));
  follow();
  emit keysChanged();
}

void CommandBook::takeOver(const QString& name, const QKeySequence& key, const QString& from) {
  if (QAction* loser = m_actions.value(from)) {
    QList<QKeySequence> left = loser->shortcuts();
    left.removeAll(key);
    setKeys(from, left);
  }
  setKeys(name, {key});
}

/// Another command that was given one of these keys loses it: two that have one key do nothing.
void CommandBook::setUsual(const QString& name) {
  const QList<QKeySequence> usual = m_usual.value(name);
  for (auto other = m_actions.begin(); other != m_actions.end(); ++other) {
    if (other.key() == name || !other.value()) continue;
    QList<QKeySequence> left = other.value()->shortcuts();
    for (const QKeySequence& key : usual) left.removeAll(key);
    setKeys(other.key(), left);
  }
  setKeys(name, usual);
}

void CommandBook::setAllUsual() {
  stateFile().remove(keysGroup.chopped(1));
  for (auto each = m_actions.begin(); each != m_actions.end(); ++each)
    if (each.value()) each.value()->setShortcuts(m_usual.value(each.key()));
  follow();
  emit keysChanged();
}

void CommandBook::follow() {
  QHash<QKeySequence, QList<QKeySequence>> present;
  for (auto each = m_actions.begin(); each != m_actions.end(); ++each)
    for (const QKeySequence& usual : m_usual.value(each.key()))
      if (each.value()) present[usual] = each.value()->shortcuts();
  renameKeysInTips(m_window, present);
}

void renameKeysInTips(QWidget& root, const QHash<QKeySequence, QList<QKeySequence>>& present) {
  constexpr const char *usualTip = "usualTip", *shownTip = "shownTip";
  static const QRegularExpression named(R"( \(((?:[^\s()]+\+)[^\s()]+|F\d{1,2})\))");
  for (QWidget* widget : root.findChildren<QWidget*>()) {
    // A tip that was set anew since then is as it was written.
    const bool ours = widget->property(shownTip).isValid() && widget->property(shownTip) == widget->toolTip();
    const QString tip = ours ? widget->property(usualTip).toString() : widget->toolTip();
    const QRegularExpressionMatch match = named.match(tip);
    if (!match.hasMatch()) continue;
    QKeySequence usual(match.captured(1), QKeySequence::NativeText);
    const auto now = present.find(usual);
    if (now == present.end()) continue;
    const QString key = now->isEmpty() ? QString() : now->first().toString(QKeySequence::NativeText);
    QString said = tip;
    said.replace(match.capturedStart(), match.capturedLength(), key.isEmpty() ? key : " (" + key + ")");
    widget->setToolTip(said);
    widget->setProperty(usualTip, tip);
    widget->setProperty(shownTip, said);
  }
}

}  // namespace ui
