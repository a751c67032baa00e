// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shunt_model.h"

#include "core/circuit/node_words.h"
#include "core/document/apply.h"
#include "core/document/edits.h"
#include "core/units/language.h"
#include "core/units/notation.h"
#include "core/units/text.h"
#include "ui/as_typed.h"
#include "ui/fields/cell_number.h"
#include "ui/quantity_edit.h"
#include "ui/shown_channel.h"
#include "ui/stock/part_delegate.h"
#include "ui/stock/stock_sheet.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr int everyDigit = 17;  ///< the shortest text that is the same number again

core::SetupPrediction eachAlone(core::Setup setup) {
  setup.sequence.clear();
  for (std::size_t shunt = 0; shunt < setup.shunts.size(); ++shunt)
    setup.sequence.push_back({.label = {}, .closed = {shunt}, .hold = core::Duration(1)});
  return core::predict(setup);
}

core::Result<core::Resistance> shuntResistance(const QString& text, int column) {
  const auto value = core::parseQuantity(text.toStdString(), core::UnitFamily::Resistance);
  if (!value) return value.error();
  if (column == ShuntModel::Resistance && *value <= 0)
    return core::Error{"", core::say("a shunt must have more than 0 Ω"),
                       core::say("Enter its resistance, such as 59k9 or 174.65 kΩ")};
  if (*value < 0)
    return core::Error{"",
                       column == ShuntModel::Wires
                           ? core::say("wires cannot have a negative resistance")
                           : core::say("a closed switch cannot have a negative resistance"),
                       core::say("Enter 0 Ω or more")};
  return core::Resistance(*value);
}

core::Result<core::Node> nodeFromText(const core::Bridge& bridge, const QString& text) {
  const auto node = core::nodeFromWords(text.trimmed().toStdString());
  if (node && core::hasNode(bridge, *node)) return *node;
  std::string known;
  for (const core::Node candidate : core::allNodes())
    if (core::hasNode(bridge, candidate))
      known += (known.empty() ? "" : ", ") + std::string(core::nodeWords(candidate));
  return core::Error{"", core::say("{1} is no node of this bridge", {core::inQuotes(text.toStdString())}),
                     core::say("Choose one of: {1}", {known})};
}

/// Made of the part `id` of the stock, or named so when the stock has none. A decade box is set to the value
/// that the shunt has.
core::Channel withPart(core::Channel channel, std::size_t at, const core::Stock& stock, std::string id) {
  if (const core::Resistor* resistor = core::findResistor(stock, id))
    return core::withResistor(std::move(channel), at, *resistor);
  core::Shunt shunt = channel.setup.shunts[at];
  if (const core::DecadeBox* box = core::findBox(stock, id)) {
    const core::Resistor set{.id = std::move(id),
                             .nominal = shunt.resistance,
                             .tolerance = box->tolerance,
                             .due = box->due,
                             .rating = box->rating};
    return core::withResistor(std::move(channel), at, set);
  }
  shunt.part = {.id = std::move(id)};
  return core::withShunt(std::move(channel), at, std::move(shunt));
}

}  // namespace

ShuntModel::ShuntModel(Session& session, QObject* parent) : SheetModel(session, ColumnCount, parent) {
  connect(&session, &Session::changed, this, &ShuntModel::refresh);
  refresh();
}

void ShuntModel::refresh() {
  const auto channel = shownChannel(session());
  const bool same = channel && m_channel && (channel == m_channel || *channel == *m_channel);
  if (same && m_stock == session().document().stock && m_today == session().today()) return;
  m_channel = channel;
  m_stock = session().document().stock;
  m_today = session().today();
  if (!same) m_alone = channel ? eachAlone(channel->setup) : core::SetupPrediction{};
  const int rows = channel ? static_cast<int>(channel->setup.shunts.size()) : 0;
  showRows(rows);
}

QVariant ShuntModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
  switch (section) {
    case Name:
      return tr("Shunt");
    case Resistance:
      return tr("Resistance");
    case From:
      return tr("From node");
    case To:
      return tr("To node");
    case Wires:
      return tr("Own wires");
    case Contact:
      return tr("Switch");
    case Part:
      return tr("Part");
    case Due:
      return tr("Due");
    case Place:
      return tr("Lies between");
    case PolarityColumn:
      return tr("Polarity");
    case Simulated:
      return tr("Simulates\n[%1]")
          .arg(m_channel ? toQString(core::simulatedUnitText(m_channel->setup.bridge)) : "µm/m");
    case Reading:
      return tr("Reads\n[%1]")
          .arg(m_channel ? toQString(core::readingUnitText(m_channel->setup.instrument)) : "µm/m");
    default:
      return {};
  }
}

Qt::ItemFlags ShuntModel::flags(const QModelIndex& index) const {
  Qt::ItemFlags flags = QAbstractTableModel::flags(index);
  if (!index.isValid()) return flags;
  if (index.column() <= Due && !session().checkIsClosed()) flags |= Qt::ItemIsEditable;
  return flags;
}

QVariant ShuntModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= rowCount()) return {};
  const int row = index.row(), column = index.column();
  switch (role) {
    case Qt::DisplayRole:
      if (column == Due) return dueText(shuntIn(row).part.due, m_today);
      if (column == Part && differsFromStock(shuntIn(row)))
        return tr("%1, not as in stock").arg(text(row, Part));
      return text(row, column);
    case Qt::EditRole:
      return text(row, column, true);
    case Qt::ToolTipRole:
      return asTyped(hint(row, column));
    case Qt::ForegroundRole:
      return colour(row, column);
    case Qt::TextAlignmentRole:
      return QVariant(column == Simulated || column == Reading ? Qt::AlignRight | Qt::AlignVCenter
                                                               : Qt::AlignLeft | Qt::AlignVCenter);
    case cellNumberRole:
      return column == Resistance || column == Wires || column == Contact
                 ? cellNumber(core::UnitFamily::Resistance)
                 : QVariant();
    default:
      return {};
  }
}

const core::Shunt& ShuntModel::shuntIn(int row) const {
  return m_channel->setup.shunts[static_cast<std::size_t>(row)];
}

bool ShuntModel::differsFromStock(const core::Shunt& shunt) const {
  const core::Resistor* resistor = core::findResistor(*m_stock, shunt.part.id);
  return resistor && (core::valueOf(*resistor) != shunt.resistance || resistor->due != shunt.part.due);
}

QVariant ShuntModel::colour(int row, int column) const {
  const Colours colours = coloursFor(QPalette());
  if (column == PolarityColumn) {
    const auto& alone = m_alone.steps[static_cast<std::size_t>(row)];
    return alone ? colourOf(colours, alone->polarity) : colours.fail;
  }
  if (column == Due && core::isOverdue(shuntIn(row).part.due, m_today)) return colours.fail;
  if (column == Part && differsFromStock(shuntIn(row))) return colours.cannotTell;
  return {};
}

QString ShuntModel::hint(int row, int column) const {
  if (const auto& alone = m_alone.steps[static_cast<std::size_t>(row)]; !alone) return toText(alone.error());
  if (column == Place) return text(row, Place);
  if (column == Contact) return tr("Resistance of the closed switch or relay, in series");
  if (column == Due && core::isOverdue(shuntIn(row).part.due, m_today))
    return tr("This resistor's calibration is overdue.");
  if (column != Part) return {};
  const core::Shunt& shunt = shuntIn(row);
  const core::Resistor* resistor = core::findResistor(*m_stock, shunt.part.id);
  if (!resistor) return {};
  const QString words = partWords(*resistor, m_today);
  return differsFromStock(shunt) ? tr("In stock is %1. Choose it again to take it as it is there.").arg(words)
                                 : words;
}

QString ShuntModel::text(int row, int column, bool full) const {
  const int digits = full ? everyDigit : 12;
  const core::Setup& setup = m_channel->setup;
  const core::Shunt& shunt = shuntIn(row);
  const auto& alone = m_alone.steps[static_cast<std::size_t>(row)];
  switch (column) {
    case Name:
      return toQString(shunt.name);
    case Resistance:
      return quantityText(shunt.resistance.base(), core::UnitFamily::Resistance, {}, digits);
    case From:
      return toQString(core::nodeWords(shunt.a));
    case To:
      return toQString(core::nodeWords(shunt.b));
    case Wires:
      return quantityText(shunt.wires.base(), core::UnitFamily::Resistance, {}, digits);
    case Contact:
      return quantityText(shunt.contact.base(), core::UnitFamily::Resistance, {}, digits);
    case Part:
      return toQString(shunt.part.id);
    case Due:
      return shunt.part.due ? toQString(core::dateText(*shunt.part.due)) : QString();
    case Place:
      return tr("%1 and %2")
          .arg(toQString(core::pointName(setup.bridge, shunt.a)),
               toQString(core::pointName(setup.bridge, shunt.b)));
    case PolarityColumn:
      return alone ? polarityText(alone->polarity) : tr("error");
    case Simulated:
      return alone ? numberText(core::simulatedInUnit(setup.bridge, alone->simulated), full ? everyDigit : 6)
                   : QString("–");
    default:
      return alone ? numberText(alone->reading.base(), full ? everyDigit : 6) : QString("–");
  }
}

core::Result<core::Channel> ShuntModel::withCell(core::Channel channel, int row, int column,
                                                 const QString& text) const {
  const auto at = static_cast<std::size_t>(row);
  if (column == Part)
    return withPart(std::move(channel), at, *session().document().stock, text.trimmed().toStdString());
  core::Shunt shunt = channel.setup.shunts[at];
  if (column == Due)
    if (const auto set = taken(shunt.part.due, dueFromText(text)); !set) return set.error();
  if (column == Name) {
    if (text.trimmed().isEmpty() || text.contains(','))
      return core::Error{"", core::say("a shunt needs a name without commas"),
                         core::say("Enter a name such as R1 on arm 2")};
    shunt.name = text.trimmed().toStdString();
  }
  if (column == Resistance || column == Wires || column == Contact) {
    const auto value = shuntResistance(text, column);
    if (!value) return value.error();
    (column == Resistance ? shunt.resistance : column == Wires ? shunt.wires : shunt.contact) = *value;
  }
  if (column == From || column == To) {
    const auto node = nodeFromText(channel.setup.bridge, text);
    if (!node) return node.error();
    (column == From ? shunt.a : shunt.b) = *node;
    if (core::pointOf(channel.setup.bridge, shunt.a) == core::pointOf(channel.setup.bridge, shunt.b))
      return core::Error{
          "",
          core::say("both ends would be on one node ({1})", {core::pointName(channel.setup.bridge, *node)}),
          core::say("Choose another node")};
  }
  return core::withShunt(std::move(channel), at, std::move(shunt));
}

QString ShuntModel::editLabel(int column) const {
  switch (column) {
    case Name:
      return tr("Rename shunt");
    case Resistance:
      return tr("Change shunt");
    case Wires:
      return tr("Change shunt wires");
    case Contact:
      return tr("Change switch of shunt");
    case Part:
      return tr("Choose part of shunt");
    case Due:
      return tr("Change due date of shunt");
    default:
      return tr("Move shunt");
  }
}

QString ShuntModel::emptyText(int column) const {
  return column == Part || column == Due ? QString("") : QString();
}

}  // namespace ui
