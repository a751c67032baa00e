// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/campaign/overview_model.h"

#include <QBrush>
#include <QFont>
#include <QGuiApplication>
#include <algorithm>

#include "core/document/edits.h"
#include "ui/campaign/channel_rows.h"
#include "ui/campaign/overview_words.h"
#include "ui/theme.h"

namespace ui {
namespace {

using Column = OverviewColumn;

bool isEditable(Column column) {
  return column == Column::Name || column == Column::Group || column == Column::Note;
}

QVariant colourOfCell(const OverviewItem& item, Column column) {
  if (!item.row) return {};
  const Colours colours = coloursFor(QGuiApplication::palette());
  const core::OverviewRow& row = *item.row;
  if (column == Column::Verdict) return QBrush(colourOf(colours, row.verdict));
  if (column == Column::Overdue) return QBrush(colours.fail);
  if (column == Column::Change || (column == Column::GainChange && row.gainChange)) {
    // That the zero moved says nothing about the gain.
    const core::Change change = column == Column::Change ? row.change : row.gainChange->change;
    if (change == core::Change::Changed) return QBrush(colours.fail);
    if (change == core::Change::CannotTell) return QBrush(colours.cannotTell);
  }
  return {};
}

}  // namespace

OverviewModel::OverviewModel(Session& session, QObject* parent)
    : QAbstractTableModel(parent), m_session(session) {}

OverviewItem OverviewModel::itemOf(std::size_t channel) const {
  return {m_session.document().channels[channel], m_session.rows().row(channel)};
}

std::vector<OverviewItem> OverviewModel::items() const {
  std::vector<OverviewItem> items;
  for (std::size_t k = 0; k < m_session.document().channels.size(); ++k) items.push_back(itemOf(k));
  return items;
}

void OverviewModel::refresh() {
  m_late = m_held;
  const std::size_t channels = m_session.document().channels.size();
  const bool gone = std::any_of(m_lines.begin(), m_lines.end(),
                                [&](const OverviewLine& line) { return line.channel >= channels; });
  if (m_held && !gone) return;
  const std::vector<OverviewItem> all = items();
  std::vector<OverviewLine> lines =
      overviewLines(all, passing(m_session.document(), all, m_layout.filter), m_layout);
  countGroups();
  m_shown = 0;
  for (const OverviewLine& line : lines)
    m_shown += line.channel ? (m_layout.grouping == Grouping::None) : line.members;
  const std::vector<Drawn> before = std::exchange(m_drawn, drawnNow());
  if (lines == m_lines) return showChanges(before);
  beginResetModel();
  m_lines = std::move(lines);
  endResetModel();
  emit rearranged();
}

std::vector<OverviewModel::Drawn> OverviewModel::drawnNow() const {
  const auto& channels = m_session.document().channels;
  std::vector<Drawn> drawn;
  for (std::size_t k = 0; k < channels.size(); ++k)
    drawn.push_back({channels[k], m_session.rows().isCurrent(k)});
  return drawn;
}

/// Rows of the same channels in the same places: only those that say something else are painted again, and
/// headings, which count others.
void OverviewModel::showChanges(const std::vector<Drawn>& before) {
  for (int row = 0; row < rowCount(); ++row) {
    const auto channel = channelAt(row);
    if (channel && *channel < before.size() && before[*channel] == m_drawn[*channel]) continue;
    emit dataChanged(index(row, 0), index(row, columnCount() - 1));
  }
}

void OverviewModel::hold(bool held) {
  m_held = held;
  if (!held && m_late) refresh();
}

void OverviewModel::setFilter(const core::OverviewFilter& filter) {
  m_layout.filter = filter;
  refresh();
}

void OverviewModel::setGrouping(Grouping grouping) {
  if (grouping == m_layout.grouping) return;
  m_layout.grouping = grouping;
  m_layout.collapsed.clear();
  refresh();
}

bool OverviewModel::isCollapsed(int row) const {
  const auto& collapsed = m_layout.collapsed;
  return std::find(collapsed.begin(), collapsed.end(), lineAt(row).group) != collapsed.end();
}

void OverviewModel::toggleGroup(int row) {
  const QString group = lineAt(row).group;
  if (!isHeading(row)) return;
  if (isCollapsed(row))
    std::erase(m_layout.collapsed, group);
  else
    m_layout.collapsed.push_back(group);
  refresh();
}

void OverviewModel::sort(int column, Qt::SortOrder order) {
  const auto which = static_cast<Column>(column);
  if (column < 0) return;
  std::erase_if(m_layout.sorts, [&](const OverviewSort& sort) { return sort.column == which; });
  m_layout.sorts.insert(m_layout.sorts.begin(), {which, order == Qt::DescendingOrder});
  constexpr std::size_t remembered = 3;
  if (m_layout.sorts.size() > remembered) m_layout.sorts.resize(remembered);
  refresh();
}

int OverviewModel::rowOf(std::size_t channel) const {
  for (std::size_t row = 0; row < m_lines.size(); ++row)
    if (m_lines[row].channel == channel) return static_cast<int>(row);
  return -1;
}

core::OverviewTally OverviewModel::tally() const {
  std::vector<core::OverviewRow> rows;
  const std::size_t channels = m_session.document().channels.size();
  for (std::size_t k = 0; k < channels; ++k)
    if (const core::OverviewRow* row = m_session.rows().row(k)) rows.push_back(*row);
  core::OverviewTally tally = core::tallyOf(rows);
  tally.channels = channels;
  return tally;
}

/// Of those that the filter lets through, group by group.
void OverviewModel::countGroups() {
  m_groups.clear();
  if (m_layout.grouping == Grouping::None) return;
  QHash<QString, std::vector<core::OverviewRow>> rows;
  QHash<QString, std::size_t> members;
  const std::vector<OverviewItem> all = items();
  for (const std::size_t k : passing(m_session.document(), all, m_layout.filter)) {
    const OverviewItem& item = all[k];
    const QString group = groupOf(item, m_layout.grouping);
    ++members[group];
    if (item.row) rows[group].push_back(*item.row);
  }
  for (auto group = members.begin(); group != members.end(); ++group) {
    core::OverviewTally tally = core::tallyOf(rows[group.key()]);
    tally.channels = group.value();
    m_groups[group.key()] = tallyWords(tally);
  }
}

QString OverviewModel::headingText(int row) const {
  const OverviewLine& line = lineAt(row);
  return tr("%1 %2 – %3").arg(isCollapsed(row) ? "▸" : "▾", line.group, m_groups.value(line.group));
}

int OverviewModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

int OverviewModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : overviewColumnCount;
}

QVariant OverviewModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= rowCount()) return {};
  const OverviewLine& line = lineAt(index.row());
  if (!line.channel) {
    if (role == Qt::DisplayRole && index.column() == 0) return headingText(index.row());
    if (role == Qt::AccessibleTextRole && index.column() == 0)
      return headingText(index.row()).mid(2) + ", " +
             (isCollapsed(index.row()) ? tr("collapsed") : tr("expanded"));
    if (role != Qt::FontRole) return {};
    QFont bold = QGuiApplication::font();
    bold.setBold(true);
    return bold;
  }
  if (*line.channel >= m_session.document().channels.size()) return {};
  return channelData(*line.channel, static_cast<Column>(index.column()), role);
}

QVariant OverviewModel::channelData(std::size_t channel, Column column, int role) const {
  const OverviewItem item = itemOf(channel);
  switch (role) {
    case Qt::DisplayRole:
    case Qt::EditRole:
      if (column == Column::Verdict && !item.row) return QStringLiteral("…");
      if (column == Column::Note && role == Qt::EditRole) return toQString(item.channel->note);
      return overviewText(item, column);
    case Qt::ToolTipRole: {
      const QString text = overviewText(item, column);
      return text.isEmpty() ? QString() : "<span>" + text.toHtmlEscaped() + "</span>";
    }
    case Qt::ForegroundRole:
      return colourOfCell(item, column);
    case ShareRole:
      return column == Column::Worst && item.row && item.row->worst ? QVariant(*item.row->worst) : QVariant();
    case VerdictRole:
      return static_cast<int>(item.row ? item.row->verdict : core::Verdict::NotJudged);
    default:
      return {};
  }
}

QVariant OverviewModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  const auto column = static_cast<Column>(section);
  if (role == Qt::DisplayRole) return overviewColumnName(column);
  if (role == Qt::ToolTipRole) return overviewColumnTip(column);
  return {};
}

Qt::ItemFlags OverviewModel::flags(const QModelIndex& index) const {
  if (!index.isValid()) return Qt::NoItemFlags;
  const Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
  const bool editable = !isHeading(index.row()) && isEditable(static_cast<Column>(index.column()));
  return editable ? flags | Qt::ItemIsEditable : flags;
}

bool OverviewModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (role != Qt::EditRole || !(flags(index) & Qt::ItemIsEditable)) return false;
  const auto column = static_cast<Column>(index.column());
  const QString label = column == Column::Name    ? tr("Rename channel")
                        : column == Column::Group ? tr("Change group")
                                                  : tr("Change note");
  const auto done = putCells({{index.row(), index.column(), value.toString()}}, label);
  if (!done) emit refused(toText(done.error()));
  return bool(done);
}

core::Result<core::Document> OverviewModel::withCell(core::Document document, const CellText& cell) const {
  const auto column = static_cast<Column>(cell.column);
  const auto refusal = [&](const QString& what) {
    return core::Error{
        tr("row %1, column %2").arg(QString::number(cell.row + 1), overviewColumnName(column)).toStdString(),
        what.toStdString(), ""};
  };
  if (!(flags(index(cell.row, cell.column)) & Qt::ItemIsEditable)) return refusal(whyFixed(cell.column));
  const std::size_t at = *channelAt(cell.row);
  const std::string text = cell.text.trimmed().toStdString();
  core::Channel channel = *document.channels[at];
  if (column == Column::Name) {
    if (text.empty()) return refusal(tr("a channel needs a name"));
    channel.name = core::uniqueChannelName(document, text, at);
  } else {
    (column == Column::Group ? channel.group : channel.note) = text;
  }
  return core::withChannel(std::move(document), at, std::move(channel));
}

core::Result<void> OverviewModel::putCells(const QList<CellText>& cells, const QString& label) {
  core::Document next = m_session.document();
  for (const CellText& cell : cells) {
    auto edited = withCell(std::move(next), cell);
    if (!edited) return edited.error();
    next = *std::move(edited);
  }
  m_session.edit(label, std::move(next));
  return {};
}

core::Result<void> OverviewModel::clearCells(const QModelIndexList& cells) {
  QList<CellText> texts;
  for (const QModelIndex& cell : cells)
    if (flags(cell) & Qt::ItemIsEditable && static_cast<Column>(cell.column()) != Column::Name)
      texts.append({cell.row(), cell.column(), {}});
  return texts.isEmpty() ? core::Result<void>() : putCells(texts, tr("Clear cells"));
}

QString OverviewModel::whyFixed(int) const { return tr("only name, group and note are edited here"); }

QList<QStringList> OverviewModel::cells(const std::vector<int>& rows) const {
  QList<QStringList> cells;
  QStringList header;
  for (int column = 0; column < columnCount(); ++column)
    header << overviewColumnName(static_cast<Column>(column));
  cells << header;
  for (const int row : rows) {
    if (isHeading(row)) continue;
    const OverviewItem item = itemOf(*channelAt(row));
    QStringList line;
    for (int column = 0; column < columnCount(); ++column)
      line << overviewCell(item, static_cast<Column>(column));
    cells << line;
  }
  return cells;
}

/// As sorted and filtered, those of collapsed groups too.
QList<QStringList> OverviewModel::allCells() const {
  OverviewLayout open = m_layout;
  open.collapsed.clear();
  QList<QStringList> result = cells({});
  const std::vector<OverviewItem> all = items();
  for (const OverviewLine& line : overviewLines(all, passing(m_session.document(), all, open.filter), open)) {
    if (!line.channel) continue;
    QStringList one;
    for (int column = 0; column < columnCount(); ++column)
      one << overviewCell(itemOf(*line.channel), static_cast<Column>(column));
    result << one;
  }
  return result;
}

}  // namespace ui
