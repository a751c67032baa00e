// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/commands/command_model.h"

#include <QAction>
#include <QApplication>
#include <algorithm>

#include "ui/theme.h"

namespace ui {
namespace {

/// Letters without accents, in small: what one types in a hurry.
QString folded(const QString& text) {
  QString plain;
  for (const QChar letter : text.normalized(QString::NormalizationForm_KD))
    if (letter.category() != QChar::Mark_NonSpacing) plain += letter;
  return plain.toCaseFolded().replace(QStringLiteral("ß"), QStringLiteral("ss"));
}

QString searchedText(const Command& command) {
  return command.text + ' ' + command.place + ' ' + command.keyText() + ' ' +
         QKeySequence::listToString(command.keys, QKeySequence::PortableText);
}

QString stateOf(const Command& command) {
  if (!command.whyNot.isEmpty()) return command.whyNot;
  if (!command.action) return CommandModel::tr("Acts only there; its keys are fixed.");
  if (command.action->isCheckable() && command.action->isChecked()) return CommandModel::tr("on");
  return {};
}

}  // namespace

bool hasAllWords(const QString& text, const QString& wanted) {
  const QString searched = folded(text);
  const QStringList words = folded(wanted).split(' ', Qt::SkipEmptyParts);
  return std::all_of(words.begin(), words.end(),
                     [&](const QString& word) { return searched.contains(word); });
}

void CommandModel::setCommands(std::vector<Command> commands) {
  beginResetModel();
  m_commands = std::move(commands);
  find();
  endResetModel();
}

void CommandModel::setFilter(const QString& wanted) {
  beginResetModel();
  m_wanted = wanted;
  find();
  endResetModel();
}

void CommandModel::updateKeys(std::vector<Command> commands) {
  if (commands.size() != m_commands.size()) return setCommands(std::move(commands));
  m_commands = std::move(commands);
  if (rowCount() > 0) emit dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
}

void CommandModel::find() {
  m_found.clear();
  for (std::size_t i = 0; i < m_commands.size(); ++i)
    if (hasAllWords(searchedText(m_commands[i]), m_wanted)) m_found.push_back(i);
  std::stable_partition(m_found.begin(), m_found.end(),
                        [&](std::size_t i) { return hasAllWords(m_commands[i].text, m_wanted); });
}

int CommandModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(m_found.size());
}

int CommandModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QVariant CommandModel::data(const QModelIndex& index, int role) const {
  const Command& command = at(index.row());
  const bool canRun = command.action && command.whyNot.isEmpty();
  if (role == Qt::ForegroundRole && !canRun) return coloursFor(QApplication::palette()).quiet;
  if (role == Qt::ToolTipRole && index.column() == State && !stateOf(command).isEmpty())
    return "<span>" + stateOf(command).toHtmlEscaped() + "</span>";
  if (role != Qt::DisplayRole) return {};
  switch (index.column()) {
    case Text:
      return command.text;
    case Place:
      return command.place;
    case Keys:
      return command.keyText();
    default:
      return stateOf(command);
  }
}

QVariant CommandModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
  const QString names[] = {tr("Command"), tr("Where"), tr("Keys"), tr("Now")};
  return names[section];
}

}  // namespace ui
