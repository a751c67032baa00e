// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/wiring/pin_model.h"

#include <QGuiApplication>
#include <algorithm>

#include "core/document/file_limits.h"
#include "core/document/wiring_edits.h"
#include "core/units/language.h"
#include "ui/as_typed.h"
#include "ui/theme.h"
#include "ui/wiring/wiring_painter.h"
#include "ui/wiring/wiring_words.h"

namespace ui {
namespace {

bool names(const core::WiringFault& fault, const core::PinName& pin) {
  return std::find(fault.pins.begin(), fault.pins.end(), pin) != fault.pins.end();
}

}  // namespace

PinModel::PinModel(Session& session, QObject* parent) : SheetModel(session, ColumnCount, parent) {}

void PinModel::show(std::shared_ptr<const core::Channel> channel, std::optional<std::size_t> shunt,
                    std::vector<core::WiringFault> faults) {
  m_channel = std::move(channel);
  m_shunt = shunt;
  m_faults = std::move(faults);
  m_marks = marksOf(m_faults, m_shunt);
  showRows(m_channel ? static_cast<int>(m_channel->setup.wiring.pins.size()) : 0);
}

QVariant PinModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
  switch (section) {
    case Connector:
      return tr("Connector");
    case PinColumn:
      return tr("Pin");
    case LeadsTo:
      return tr("Leads to");
    case JoinedTo:
      return tr("Jumper to");
    default:
      return {};
  }
}

Qt::ItemFlags PinModel::flags(const QModelIndex& index) const {
  const Qt::ItemFlags flags = QAbstractTableModel::flags(index);
  return index.isValid() && index.column() != JoinedTo ? flags | Qt::ItemIsEditable : flags;
}

QString PinModel::whyFixed(int) const {
  return tr("Jumpers are laid in the table of jumpers below, for one shunt at a time.");
}

QVariant PinModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= rowCount()) return {};
  switch (role) {
    case Qt::DisplayRole:
    case Qt::EditRole:
      return text(index.row(), index.column());
    case Qt::ToolTipRole:
      return asTyped(hint(index.row()));
    case Qt::DecorationRole:
      if (const auto mark = markOf(index.row()); mark && index.column() == Connector)
        return severityIcon(*mark, QGuiApplication::palette());
      return {};
    case Qt::ForegroundRole:
      if (index.column() == JoinedTo) return coloursFor(QPalette()).quiet;
      if (index.column() <= PinColumn && markOf(index.row()) == core::WiringSeverity::Error)
        return coloursFor(QPalette()).fail;
      return {};
    default:
      return {};
  }
}

std::optional<core::WiringSeverity> PinModel::markOf(int row) const {
  const auto mark = m_marks.find(m_channel->setup.wiring.pins[static_cast<std::size_t>(row)].name);
  return mark == m_marks.end() ? std::nullopt : std::optional(mark->second);
}

QString PinModel::text(int row, int column) const {
  const core::Setup& setup = m_channel->setup;
  const core::Pin& pin = setup.wiring.pins[static_cast<std::size_t>(row)];
  switch (column) {
    case Connector:
      return toQString(pin.name.connector);
    case PinColumn:
      return toQString(pin.name.pin);
    case LeadsTo:
      return pinUseText(pin.use);
    default: {
      QStringList others;
      if (m_shunt)
        for (const core::PinName& other : joinedTo(setup.shunts[*m_shunt].jumpers, pin.name))
          others << toQString(core::pinText(other));
      return others.join(", ");
    }
  }
}

/// Where the pin leads, and what is wrong with it.
QString PinModel::hint(int row) const {
  const core::Pin& pin = m_channel->setup.wiring.pins[static_cast<std::size_t>(row)];
  QStringList lines{leadsToText(pin)};
  for (const core::WiringFault& fault : m_faults)
    if (names(fault, pin.name) && lines.size() < 6) lines << toQString(fault.what);
  return lines.join("\n");
}

/// Jumpers follow new names when all of them are known, so that a pasted block may shift names.
core::Result<void> PinModel::put(const QList<CellText>& cells, const QString& label) {
  core::Channel edited = *session().channel();
  for (const CellText& cell : cells) {
    auto next = withCell(std::move(edited), cell.row, cell.column, cell.text);
    if (!next) return inCell(next.error(), cell.row, cell.column);
    edited = *std::move(next);
  }
  session().editChannel(label, core::withPins(*session().channel(), edited.setup.wiring.pins));
  return {};
}

core::Result<core::Channel> PinModel::withCell(core::Channel channel, int row, int column,
                                               const QString& text) const {
  const auto at = static_cast<std::size_t>(row);
  auto& pins = channel.setup.wiring.pins;
  if (at >= pins.size()) {
    if (pins.size() >= core::mostPins)
      return core::Error{"", core::say("a channel holds no more pins"),
                         core::say("Leave out pins that nothing of it uses")};
    pins.push_back({pins.empty() ? core::PinName{"J1", "A"} : pinNameAfter(pins.back().name), {}});
  }
  core::Pin& pin = pins[at];
  if (column == Connector) pin.name.connector = text.trimmed().toStdString();
  if (column == PinColumn) {
    pin.name.pin = text.trimmed().toStdString();
    if (pin.name.pin.empty())
      return core::Error{"", core::say("a pin needs a name"), core::say("Enter its letter or number")};
  }
  if (column == LeadsTo && text != pinUseText(pin.use)) {
    const auto use = pinUseFromText(channel.setup, text);
    if (!use) return use.error();
    pin.use = *use;
  }
  return channel;
}

QString PinModel::editLabel(int column) const {
  return column == LeadsTo ? tr("Change what a pin leads to") : tr("Rename pin");
}

QString PinModel::emptyText(int column) const {
  return column == Connector || column == LeadsTo ? QString("") : QString();
}

}  // namespace ui
