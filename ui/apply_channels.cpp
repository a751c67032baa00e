// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/apply_channels.h"

#include <QBrush>
#include <QGuiApplication>
#include <numeric>

#include "ui/as_typed.h"
#include "ui/theme.h"

namespace ui {
namespace {

using Kind = ApplyChannels::Fate::Kind;

/// What becomes of a channel that is not refused.
ApplyChannels::Fate fateOf(const core::Channel& before, const core::Channel& after) {
  if (&before == &after) return {Kind::Same, ApplyChannels::tr("stays as it is"), 0};
  const std::size_t dropped = core::droppedReadings(before, after);
  if (dropped == 0) return {Kind::Changes, ApplyChannels::tr("changes"), 0};
  return {Kind::Changes,
          ApplyChannels::tr("changes; %n reading(s) of open checks are dropped", nullptr, int(dropped)),
          dropped};
}

/// "TP-31: it has no sense leads" without the name, which stands in the row already.
QString reasonOf(const std::string& refusal, const std::string& name) {
  return toQString(refusal).mid(toQString(name).size() + 2);
}

}  // namespace

ApplyChannels::ApplyChannels(Session& session, QObject* parent)
    : QAbstractTableModel(parent),
      m_session(session),
      m_source(session.selection().channel.value_or(0)),
      m_chosen(session.document().channels.size(), false),
      m_fates(m_chosen.size()) {
  workOut();
}

void ApplyChannels::handOver(const core::ChannelParts& parts) {
  m_parts = parts;
  if (m_source < m_chosen.size()) m_chosen[m_source] = false;
  workOut();
}

void ApplyChannels::takeStockValues() {
  m_parts.reset();
  workOut();
}

/// Both edits are functions of one channel and the source, so all channels at once say what becomes of each.
void ApplyChannels::workOut() {
  const core::Document& before = m_session.document();
  std::vector<std::size_t> all(before.channels.size());
  std::iota(all.begin(), all.end(), std::size_t{0});
  core::Applied after{before, {}, {}};
  if (m_parts && !all.empty())
    after = core::withApplied(before, m_source, *m_parts, all);
  else
    after.document = core::withStockValues(before, all);
  for (const std::size_t k : all) m_fates[k] = fateOf(*before.channels[k], *after.document.channels[k]);
  for (std::size_t k = 0; k < after.refused.size(); ++k) {
    const std::size_t at = after.refusedAt[k];
    m_fates[at] = {Kind::Refused,
                   tr("refused: %1").arg(reasonOf(after.refused[k], before.channels[at]->name)), 0};
  }
  if (m_parts && m_source < m_fates.size())
    m_fates[m_source] = {Kind::Source, tr("the parts are from here"), 0};
  showAll();
}

core::Document ApplyChannels::result() const {
  const core::Document& document = m_session.document();
  const std::vector<std::size_t> to = chosen();
  return m_parts ? core::withApplied(document, m_source, *m_parts, to).document
                 : core::withStockValues(document, to);
}

std::vector<std::size_t> ApplyChannels::chosen() const {
  std::vector<std::size_t> channels;
  for (std::size_t k = 0; k < m_chosen.size(); ++k)
    if (m_chosen[k]) channels.push_back(k);
  return channels;
}

void ApplyChannels::choose(std::size_t channel, bool chosen) {
  if (m_chosen[channel] == chosen || m_fates[channel].kind == Kind::Source) return;
  m_chosen[channel] = chosen;
  const int row = static_cast<int>(channel);
  emit dataChanged(index(row, Name), index(row, Outcome));
  emit changed();
}

void ApplyChannels::chooseOnly(const std::vector<std::size_t>& channels) {
  m_chosen.assign(m_chosen.size(), false);
  for (const std::size_t channel : channels)
    if (m_fates[channel].kind != Kind::Source) m_chosen[channel] = true;
  showAll();
}

void ApplyChannels::showAll() {
  if (!m_fates.empty()) emit dataChanged(index(0, Name), index(rowCount() - 1, Outcome));
  emit changed();
}

int ApplyChannels::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(m_fates.size());
}

int ApplyChannels::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QVariant ApplyChannels::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
  switch (section) {
    case Name:
      return tr("Channel");
    case Bridge:
      return tr("Bridge");
    default:
      return tr("What happens");
  }
}

QVariant ApplyChannels::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const auto row = static_cast<std::size_t>(index.row());
  const core::Channel& channel = *m_session.document().channels[row];
  if (role == Qt::CheckStateRole && index.column() == Name && m_fates[row].kind != Kind::Source)
    return m_chosen[row] ? Qt::Checked : Qt::Unchecked;
  if (role == Qt::ForegroundRole && index.column() == Outcome) {
    const Colours colours = coloursFor(QGuiApplication::palette());
    if (m_fates[row].kind == Kind::Refused) return QBrush(colours.fail);
    if (m_fates[row].kind != Kind::Changes) return QBrush(colours.quiet);
  }
  if (role == Qt::ToolTipRole && index.column() == Outcome) return asTyped(m_fates[row].words);
  if (role != Qt::DisplayRole) return {};
  switch (index.column()) {
    case Name:
      return toQString(channel.name);
    case Bridge:
      return toQString(core::templateOf(channel.setup.bridge.type).name);
    default:
      return m_fates[row].words;
  }
}

Qt::ItemFlags ApplyChannels::flags(const QModelIndex& index) const {
  if (!index.isValid()) return Qt::NoItemFlags;
  if (m_fates[static_cast<std::size_t>(index.row())].kind == Kind::Source) return Qt::ItemIsSelectable;
  const Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
  return index.column() == Name ? flags | Qt::ItemIsUserCheckable : flags;
}

bool ApplyChannels::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (role != Qt::CheckStateRole || !index.isValid() || index.column() != Name) return false;
  choose(static_cast<std::size_t>(index.row()), value.toInt() == Qt::Checked);
  return true;
}

}  // namespace ui
