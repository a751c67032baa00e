// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/campaign/overview_lines.h"

#include <QHash>
#include <algorithm>
#include <numeric>

#include "ui/campaign/overview_words.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr int digits = 12;  ///< that a number in a name is filled up to

/// What rows are sorted by in one column.
struct Key {
  bool absent = false;
  double number = 0;
  QString text;
};

Key keyOf(std::optional<double> number) { return {!number, number.value_or(0), {}}; }
Key keyOf(const QString& text) { return {text.isEmpty(), 0, naturalKey(text)}; }

/// Worst first: how urgent it is, and within that the larger share of the limit.
Key urgencyOf(const OverviewItem& item) {
  constexpr double room = 1e6;  // shares of a limit beyond that are alike
  if (!item.row) return {true, 0, {}};
  return {false, room * item.row->urgency - std::min(item.row->worst.value_or(0), room / 2), {}};
}

Key foundKey(const OverviewItem& item, OverviewColumn column) {
  const core::OverviewRow* row = item.row;
  if (!row) return {true, 0, {}};
  switch (column) {
    case OverviewColumn::Worst:
      return keyOf(row->worst);
    case OverviewColumn::Gain:
      return keyOf(core::gainOf(*row));
    case OverviewColumn::GainChange:
      return keyOf(core::gainChangeOf(*row));
    case OverviewColumn::Change:
      return {row->change == core::Change::NotCompared, static_cast<double>(row->change), {}};
    case OverviewColumn::Remarks:
      return {row->openRemarks == 0, static_cast<double>(row->openRemarks), {}};
    case OverviewColumn::Overdue:
      return {!row->overdue, 0, {}};
    default:
      return urgencyOf(item);
  }
}

Key keyOf(const OverviewItem& item, OverviewColumn column) {
  switch (column) {
    case OverviewColumn::Name:
    case OverviewColumn::Group:
    case OverviewColumn::Bridge:
    case OverviewColumn::Latest:
    case OverviewColumn::Status:
    case OverviewColumn::Note:
      return keyOf(overviewText(item, column));
    case OverviewColumn::Day:
      return item.row && item.row->day ? keyOf(toQString(core::dateText(*item.row->day))) : Key{true, 0, {}};
    case OverviewColumn::Steps:
      return {false, static_cast<double>(item.channel->setup.sequence.size()), {}};
    default:
      return foundKey(item, column);
  }
}

/// Negative: `a` before `b`.
int compared(const Key& a, const Key& b, bool descending) {
  if (a.absent || b.absent) return static_cast<int>(a.absent) - static_cast<int>(b.absent);
  const int order = a.number != b.number ? (a.number < b.number ? -1 : 1) : a.text.compare(b.text);
  return descending ? -order : order;
}

void sortChannels(std::vector<std::size_t>& channels, const std::vector<OverviewItem>& items,
                  const std::vector<OverviewSort>& sorts) {
  for (auto sort = sorts.rbegin(); sort != sorts.rend(); ++sort) {
    std::vector<Key> keys(items.size());
    for (const std::size_t k : channels) keys[k] = keyOf(items[k], sort->column);
    std::stable_sort(channels.begin(), channels.end(), [&](std::size_t a, std::size_t b) {
      return compared(keys[a], keys[b], sort->descending) < 0;
    });
  }
}

/// Where a group stands among the others: verdicts worst first, the others by name, those without one last.
QString groupKey(const OverviewItem& item, Grouping grouping) {
  if (grouping == Grouping::Verdict)
    return item.row ? QString::number(static_cast<int>(checkStateOf(*item.row))) : QStringLiteral("9");
  const QString name = groupOf(item, grouping);
  const bool none = grouping == Grouping::Group && item.channel->group.empty();
  return (none ? "1" : "0") + naturalKey(name);
}

}  // namespace

CheckState checkStateOf(const core::OverviewRow& row) {
  switch (row.verdict) {
    case core::Verdict::Pass:
      return CheckState::Pass;
    case core::Verdict::Fail:
      return CheckState::Fail;
    case core::Verdict::CannotTell:
      return CheckState::CannotTell;
    case core::Verdict::NotJudged:
      break;
  }
  return row.latest.empty() ? CheckState::NotChecked : CheckState::NotJudged;
}

QString naturalKey(const QString& text) {
  QString key, number;
  const auto close = [&] {
    if (!number.isEmpty()) key += number.rightJustified(digits, '0');
    number.clear();
  };
  for (const QChar letter : text) {
    if (letter >= '0' && letter <= '9') {
      number += letter;
      continue;
    }
    close();
    key += letter.toLower();
  }
  close();
  return key;
}

QString groupOf(const OverviewItem& item, Grouping grouping) {
  switch (grouping) {
    case Grouping::Group:
      return item.channel->group.empty() ? QObject::tr("without a group") : toQString(item.channel->group);
    case Grouping::Bridge:
      return overviewText(item, OverviewColumn::Bridge);
    case Grouping::Verdict:
      return item.row ? stateWord(checkStateOf(*item.row)) : QObject::tr("not yet worked out");
    case Grouping::None:
      break;
  }
  return {};
}

bool leavesOut(const core::OverviewFilter& filter) {
  return !filter.text.empty() || filter.verdict || filter.change || filter.group || filter.urgency ||
         filter.unchecked || filter.remarks || filter.overdue || filter.open;
}

std::vector<std::size_t> passing(const core::Document& document, const std::vector<OverviewItem>& items,
                                 const core::OverviewFilter& filter) {
  std::vector<core::OverviewRow> rows(items.size());
  for (std::size_t k = 0; k < items.size(); ++k) {
    if (items[k].row) rows[k] = *items[k].row;
    rows[k].channel = k;
  }
  std::vector<std::size_t> channels = core::filteredRows(document, rows, filter);
  const bool aboutFound = filter.verdict || filter.change || filter.urgency || filter.unchecked ||
                          filter.remarks || filter.overdue || filter.open;
  if (aboutFound) std::erase_if(channels, [&](std::size_t k) { return !items[k].row; });
  return channels;
}

std::vector<OverviewLine> overviewLines(const std::vector<OverviewItem>& items,
                                        std::vector<std::size_t> channels, const OverviewLayout& layout) {
  sortChannels(channels, items, layout.sorts);
  std::vector<OverviewLine> lines;
  if (layout.grouping == Grouping::None) {
    for (const std::size_t k : channels) lines.push_back({k, {}, 0});
    return lines;
  }
  std::vector<QString> keys(items.size());
  QHash<QString, std::size_t> members;
  for (const std::size_t k : channels) ++members[keys[k] = groupKey(items[k], layout.grouping)];
  std::stable_sort(channels.begin(), channels.end(),
                   [&](std::size_t a, std::size_t b) { return keys[a] < keys[b]; });
  const QString* open = nullptr;
  bool collapsed = false;
  for (const std::size_t k : channels) {
    if (!open || *open != keys[k]) {
      open = &keys[k];
      const QString group = groupOf(items[k], layout.grouping);
      collapsed =
          std::find(layout.collapsed.begin(), layout.collapsed.end(), group) != layout.collapsed.end();
      lines.push_back({{}, group, members[keys[k]]});
    }
    if (!collapsed) lines.push_back({k, {}, 0});
  }
  return lines;
}

}  // namespace ui
