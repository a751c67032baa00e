// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/recording/column_table.h"

#include <QPalette>

#include "ui/as_typed.h"
#include "ui/recording/choice_cell.h"
#include "ui/recording/taking_up.h"
#include "ui/theme.h"

namespace ui {

ColumnTable::ColumnTable(const std::vector<Finding>& findings, QObject* parent)
    : QAbstractTableModel(parent), m_findings(findings) {}

void ColumnTable::reset(const core::Document& document, const core::Recording* recording) {
  beginResetModel();
  m_document = document;
  m_columns.clear();
  if (recording) {
    m_columns << tr("none");
    for (const core::Column& column : recording->columns)
      m_columns << toQString(column.name) +
                       (column.unit.empty() ? QString() : " [" + toQString(column.unit) + "]");
  }
  m_rows = static_cast<int>(m_findings.size());
  endResetModel();
}

void ColumnTable::showRow(int row) { emit dataChanged(index(row, 0), index(row, ColumnCount - 1)); }

int ColumnTable::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : m_rows; }
int ColumnTable::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QString ColumnTable::text(int row, int column) const {
  const Finding& found = finding(row);
  switch (column) {
    case Channel:
      return toQString(channel(row).name);
    case ColumnColumn:
      return m_columns.value(choice(row, ColumnColumn));
    case Levels:
      return found.find && found.find->levels ? QString::number(found.find->levels->size()) : QString("–");
    case Run: {
      const QStringList runs = runWords(found);
      return runs.size() > 1 ? tr("%1 of %2").arg(found.run + 1).arg(runs.size())
                             : (runs.isEmpty() ? QString("–") : QString("1"));
    }
    default:
      return matchWords(found, channel(row));
  }
}

/// A word says the same in each case.
QVariant ColumnTable::colour(int row) const {
  const Colours colours = coloursFor(QPalette());
  const Finding& found = finding(row);
  if (!found.column || !found.find) return colours.quiet;
  if (!requireTakable(found, channel(row))) return runOf(found) ? colours.cannotTell : colours.fail;
  return found.byHand.empty() && found.nearName.empty() && isPlain(*found.find) ? colours.pass
                                                                                : colours.cannotTell;
}

QStringList ColumnTable::choices(int row, int column) const {
  if (column == ColumnColumn) return m_columns;
  if (column != Run) return {};
  const QStringList runs = runWords(finding(row));
  return runs.size() > 1 ? runs : QStringList();
}

int ColumnTable::choice(int row, int column) const {
  if (column == Run) return static_cast<int>(finding(row).run);
  return finding(row).column ? static_cast<int>(*finding(row).column) + 1 : 0;
}

QVariant ColumnTable::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const int row = index.row(), column = index.column();
  switch (role) {
    case Qt::DisplayRole:
    case Qt::EditRole:
      return text(row, column);
    case Qt::ToolTipRole:
      return asTyped(text(row, column));
    case Qt::CheckStateRole:
      if (column != Channel) return {};
      return static_cast<int>(
          finding(row).isTicked && requireTakable(finding(row), channel(row)) ? Qt::Checked : Qt::Unchecked);
    case Qt::ForegroundRole:
      return column == Match ? colour(row) : QVariant();
    case Qt::TextAlignmentRole:
      return QVariant((column == Levels ? Qt::AlignHCenter : Qt::AlignLeft) | Qt::AlignVCenter);
    case choicesRole:
      return choices(row, column);
    case choiceRole:
      return choice(row, column);
    default:
      return {};
  }
}

QVariant ColumnTable::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::TextAlignmentRole)
    return QVariant((section == Levels ? Qt::AlignHCenter : Qt::AlignLeft) | Qt::AlignVCenter);
  if (role != Qt::DisplayRole) return {};
  switch (section) {
    case Channel:
      return tr("Channel");
    case ColumnColumn:
      return tr("Column of the recording");
    case Levels:
      return tr("Levels");
    case Run:
      return tr("Run");
    default:
      return tr("Match with the plan");
  }
}

Qt::ItemFlags ColumnTable::flags(const QModelIndex& index) const {
  Qt::ItemFlags flags = Qt::ItemIsSelectable | Qt::ItemIsEnabled;
  if (index.column() == Channel && requireTakable(finding(index.row()), channel(index.row())))
    flags |= Qt::ItemIsUserCheckable;
  if (!choices(index.row(), index.column()).isEmpty()) flags |= Qt::ItemIsEditable;
  return flags;
}

bool ColumnTable::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (role == Qt::CheckStateRole && index.column() == Channel) {
    if (!(flags(index) & Qt::ItemIsUserCheckable)) return false;
    emit ticked(index.row(), value.toInt() == Qt::Checked);
    return true;
  }
  const int chosen = value.toInt();
  if (role != choiceRole || chosen < 0 || chosen >= choices(index.row(), index.column()).size()) return false;
  if (index.column() == Run)
    emit runChosen(index.row(), static_cast<std::size_t>(chosen));
  else
    emit columnChosen(index.row(),
                      chosen == 0 ? std::nullopt : std::optional(static_cast<std::size_t>(chosen - 1)));
  return true;
}

}  // namespace ui
