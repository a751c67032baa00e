// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/wiring/jumper_model.h"

#include "core/document/file_limits.h"
#include "core/document/wiring_edits.h"
#include "core/units/language.h"
#include "ui/theme.h"
#include "ui/wiring/wiring_words.h"

namespace ui {

JumperModel::JumperModel(Session& session, QObject* parent) : SheetModel(session, ColumnCount, parent) {}

void JumperModel::show(std::shared_ptr<const core::Channel> channel, std::optional<std::size_t> shunt) {
  m_channel = std::move(channel);
  m_shunt = shunt;
  showRows(m_shunt ? static_cast<int>(m_channel->setup.shunts[*m_shunt].jumpers.size()) : 0);
}

QString JumperModel::owner() const {
  return m_shunt ? SheetModel::owner() + '\n' + toQString(m_channel->setup.shunts[*m_shunt].name) : QString();
}

QVariant JumperModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation == Qt::Vertical && role == Qt::DisplayRole) return section + 1;
  if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
  switch (section) {
    case From:
      return tr("From pin");
    case To:
      return tr("To pin");
    default:
      return tr("Joins");
  }
}

Qt::ItemFlags JumperModel::flags(const QModelIndex& index) const {
  const Qt::ItemFlags flags = QAbstractTableModel::flags(index);
  return index.isValid() && index.column() != Joins ? flags | Qt::ItemIsEditable : flags;
}

QString JumperModel::whyFixed(int) const {
  return tr("What a pin leads to is said in the table of pins above.");
}

QVariant JumperModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= rowCount()) return {};
  const core::Jumper& jumper =
      m_channel->setup.shunts[*m_shunt].jumpers[static_cast<std::size_t>(index.row())];
  switch (role) {
    case Qt::DisplayRole:
    case Qt::EditRole:
      if (index.column() == Joins) return tr("%1 with %2").arg(placeOf(jumper.from), placeOf(jumper.to));
      return toQString(core::pinText(index.column() == From ? jumper.from : jumper.to));
    case Qt::ForegroundRole:
      return index.column() == Joins ? QVariant(coloursFor(QPalette()).quiet) : QVariant();
    default:
      return {};
  }
}

/// A name that two pins have may lead to two places.
QString JumperModel::placeOf(const core::PinName& name) const {
  std::vector<std::string> places;
  for (const core::Pin& pin : m_channel->setup.wiring.pins)
    if (pin.name == name) places.push_back(pinUseText(pin.use).toStdString());
  return places.empty() ? tr("a pin that is not in the list") : toQString(core::sayAll(places));
}

core::Result<core::Channel> JumperModel::withCell(core::Channel channel, int row, int column,
                                                  const QString& text) const {
  auto jumpers = channel.setup.shunts[*m_shunt].jumpers;
  const auto at = static_cast<std::size_t>(row);
  if (at >= core::mostJumpers)
    return core::Error{"", core::say("a shunt holds no more jumpers"),
                       core::say("Leave out those that join nothing")};
  // A row of a pasted block that holds nothing has added none, so more than one may be missing.
  if (at >= jumpers.size()) jumpers.resize(at + 1);
  core::Jumper& jumper = jumpers[at];
  core::PinName& end = column == From ? jumper.from : jumper.to;
  if (column == Joins || text == toQString(core::pinText(end))) return channel;
  const auto pin = pinFromText(channel.setup.wiring, text);
  if (!pin) return pin.error();
  end = *pin;
  return core::withJumpers(std::move(channel), *m_shunt, std::move(jumpers));
}

QString JumperModel::editLabel(int) const { return tr("Move jumper"); }

QString JumperModel::emptyText(int) const { return {}; }

}  // namespace ui
