// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>
#include <vector>

#include "ui/commands/command_book.h"

namespace ui {

/// Whether every word of `wanted` stands somewhere in `text`: in any order, whatever the case and without
/// regard to accents.
bool hasAllWords(const QString& text, const QString& wanted);

/// The commands that a search finds: those whose own words are meant before those of menus that are meant.
class CommandModel : public QAbstractTableModel {
  Q_OBJECT

 public:
  enum Column { Text, Place, Keys, State, ColumnCount };

  explicit CommandModel(QObject* parent = nullptr) : QAbstractTableModel(parent) {}

  void setCommands(std::vector<Command> commands);
  void setFilter(const QString& wanted);
  const Command& at(int row) const { return m_commands[m_found[std::size_t(row)]]; }
  const std::vector<Command>& all() const { return m_commands; }
  /// Keys of the commands may be others now; rows stay where they are.
  void updateKeys(std::vector<Command> commands);

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  void find();

  std::vector<Command> m_commands;
  std::vector<std::size_t> m_found;
  QString m_wanted;
};

}  // namespace ui
