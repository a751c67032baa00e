// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/uncertainty_model.h"

#include <algorithm>
#include <cmath>

#include "core/budget/budget.h"
#include "core/document/edits.h"
#include "core/units/language.h"
#include "core/units/text.h"
#include "ui/as_typed.h"
#include "ui/fields/cell_number.h"
#include "ui/quantity_edit.h"
#include "ui/theme.h"

namespace ui {
namespace {

using core::Input;
using core::InputKind;
using core::Statement;
using core::Uncertainty;

constexpr int fullDigits = 17;  // the shortest that is the same number again

/// A difference of temperatures is in kelvin, whatever the temperature itself is in.
core::InputUnit amountUnit(const core::Setup& setup, Input input) {
  if (input.kind == InputKind::GaugeTemperature) return {core::UnitFamily::Named, "K"};
  return core::inputUnit(setup, input);
}

QString quantityOf(double base, const core::InputUnit& unit, int digits) {
  return quantityText(base, unit.family, toQString(unit.named), digits);
}

QString amountText(const core::Setup& setup, Input input, const Uncertainty& uncertainty, int digits) {
  if (uncertainty.relative) return quantityText(uncertainty.amount, core::UnitFamily::Percent, {}, digits);
  return quantityOf(uncertainty.amount, amountUnit(setup, input), digits);
}

/// Inputs that are zero, or a temperature, by what they are: a share of them says nothing.
bool hasShares(Input input) {
  switch (input.kind) {
    case InputKind::LeadTemperature:
    case InputKind::GaugeTemperature:
    case InputKind::ZeroDrift:
    case InputKind::Rounding:
      return false;
    default:
      return true;
  }
}

bool usesCoverageFactor(const Uncertainty& uncertainty) {
  return uncertainty.statement != Statement::Standard &&
         core::distributionOf(uncertainty) == core::Distribution::Normal;
}

double correlationOf(const core::Setup& setup, const std::string& group) {
  const auto found = setup.uncertainties.groups.find(group);
  return found == setup.uncertainties.groups.end() ? 1 : found->second;
}

template <class Enum>
QStringList wordsOf(std::size_t count, std::string_view (*keyOf)(Enum)) {
  QStringList words;
  for (std::size_t k = 0; k < count; ++k) words << toQString(keyOf(static_cast<Enum>(k)));
  return words;
}

core::Error unknownWord(const QString& text, const QStringList& known) {
  return {"", core::say("{1} is not known here", {core::inQuotes(text.toStdString())}),
          core::say("Choose one of: {1}", {known.join(", ").toStdString()})};
}

core::Result<Uncertainty> withAmount(const core::Setup& setup, Input input, Uncertainty next, QString text) {
  text.remove(QChar(0xB1));  // "±0.01 %" is written so on data sheets
  next.relative = text.trimmed().endsWith('%');
  if (next.relative && !hasShares(input))
    return core::Error{"", core::say("a share of this input says nothing"),
                       core::say("Enter its uncertainty with the unit {1}",
                                 {amountText(setup, input, {}, 3).section(' ', 1).toStdString()})};
  const core::InputUnit unit =
      next.relative ? core::InputUnit{core::UnitFamily::Percent, {}} : amountUnit(setup, input);
  const auto amount = core::parseQuantity(text.toStdString(), unit.family, unit.named);
  if (!amount) return amount.error();
  next.amount = *amount;
  return next;
}

core::Result<Uncertainty> withStatement(Uncertainty next, const QString& text) {
  const auto statement = core::statementFromKey(text.trimmed().toLower().toStdString());
  if (!statement) return unknownWord(text, statementWords());
  next.statement = *statement;
  return next;
}

core::Result<Uncertainty> withDistribution(Uncertainty next, const QString& text) {
  const auto distribution = core::distributionFromKey(text.trimmed().toLower().toStdString());
  if (!distribution) return unknownWord(text, distributionWords());
  if (next.statement == Statement::Tolerance) {
    next.distribution = *distribution;
  } else if (*distribution != core::distributionOf(next)) {
    return core::Error{"", core::say("a standard or expanded uncertainty counts as normal"),
                       core::say("State it as a tolerance to choose its distribution")};
  }
  return next;
}

core::Result<Uncertainty> withCoverageFactor(Uncertainty next, const QString& text) {
  if (text.isEmpty()) {
    next.coverageFactor = Uncertainty{}.coverageFactor;
    return next;
  }
  const auto factor = core::parseQuantity(text.toStdString(), core::UnitFamily::Plain);
  if (!factor) return factor.error();
  if (!usesCoverageFactor(next))
    return core::Error{"", core::say("k plays no part in this statement"),
                       core::say("State it as expanded, or as a tolerance with normal distribution")};
  next.coverageFactor = *factor;
  return next;
}

core::Result<Uncertainty> withDegreesOfFreedom(Uncertainty next, const QString& text) {
  next.degreesOfFreedom.reset();
  if (text.isEmpty() || text == "∞" || text.compare("inf", Qt::CaseInsensitive) == 0) return next;
  const auto dof = core::parseQuantity(text.toStdString(), core::UnitFamily::Plain);
  if (!dof) return dof.error();
  next.degreesOfFreedom = *dof;
  return next;
}

/// `present` with the column set to what `text` says; refused when that is no possible statement.
core::Result<Uncertainty> withText(const core::Setup& setup, Input input, const Uncertainty& present,
                                   int column, const QString& text) {
  core::Result<Uncertainty> next = present;
  switch (column) {
    case UncertaintyModel::Amount:
      next = withAmount(setup, input, present, text);
      break;
    case UncertaintyModel::StatedAs:
      next = withStatement(present, text);
      break;
    case UncertaintyModel::Distribution:
      next = withDistribution(present, text);
      break;
    case UncertaintyModel::CoverageFactor:
      next = withCoverageFactor(present, text);
      break;
    case UncertaintyModel::DegreesOfFreedom:
      next = withDegreesOfFreedom(present, text);
      break;
    default:
      next->group = text == UncertaintyModel::tr("none") ? std::string() : text.toStdString();
  }
  if (!next) return next;
  if (auto possible = core::checkUncertainty(*next, {}); !possible) return possible.error();
  return next;
}

core::Result<core::Channel> withCorrelationText(core::Channel channel, const std::string& group,
                                                const QString& text) {
  if (group.empty()) {
    if (text.isEmpty()) return channel;
    return core::Error{"", core::say("this input is in no group"),
                       core::say("Give it a group first, the same as the inputs it moves with")};
  }
  if (text.isEmpty()) return core::withCorrelation(std::move(channel), group, std::nullopt);
  const auto coefficient = core::parseQuantity(text.toStdString(), core::UnitFamily::Plain);
  if (!coefficient) return coefficient.error();
  if (!(std::abs(*coefficient) <= 1))
    return core::Error{"", core::say("a correlation coefficient must lie between -1 and 1"),
                       core::say("Enter 1 for inputs that move together, 0 for independent ones")};
  return core::withCorrelation(std::move(channel), group, *coefficient);
}

}  // namespace

QStringList statementWords() { return wordsOf(core::statementCount, core::statementKey); }
QStringList distributionWords() { return wordsOf(core::distributionCount, core::distributionKey); }

UncertaintyModel::UncertaintyModel(Session& session, QObject* parent)
    : SheetModel(session, ColumnCount, parent) {
  connect(&session, &Session::changed, this, &UncertaintyModel::refresh);
  refresh();
}

void UncertaintyModel::refresh() {
  const auto& selected = session().selection().channel;
  const auto channel = selected ? session().document().channels[*selected] : nullptr;
  const auto closedWith = session().check() ? session().check()->closedWith : nullptr;
  if (m_channel && channel == m_channel && closedWith == m_closedWith) return;
  m_channel = channel;
  m_closedWith = closedWith;
  m_inputs = channel ? core::inputsOf(shownSetup()) : std::vector<core::BudgetInput>();
  m_refused.assign(m_inputs.size(), std::nullopt);
  if (channel) m_refused = core::inputRefusals(shownSetup(), m_inputs);
  showRows(static_cast<int>(m_inputs.size()));
}

const core::Setup& UncertaintyModel::shownSetup() const {
  return m_closedWith ? *m_closedWith : m_channel->setup;
}

QVariant UncertaintyModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
  switch (section) {
    case InputColumn:
      return tr("Input");
    case Value:
      return tr("Value");
    case Amount:
      return tr("Uncertainty");
    case StatedAs:
      return tr("Stated as");
    case Distribution:
      return tr("Distribution");
    case CoverageFactor:
      return tr("k");
    case DegreesOfFreedom:
      return tr("Degrees of\nfreedom");
    case Group:
      return tr("Group");
    case Correlation:
      return tr("Correlation\nin group");
    case Source:
      return tr("Source");
    default:
      return {};
  }
}

Qt::ItemFlags UncertaintyModel::flags(const QModelIndex& index) const {
  Qt::ItemFlags flags = QAbstractTableModel::flags(index);
  const bool may = index.isValid() && index.column() >= Amount && index.column() <= Correlation;
  return may && !session().checkIsClosed() ? flags | Qt::ItemIsEditable : flags;
}

/// What is typed as a number; an amount with % is a share whatever the input is.
QVariant UncertaintyModel::numberIn(int row, int column) const {
  if (column == CoverageFactor || column == DegreesOfFreedom || column == Correlation)
    return cellNumber(core::UnitFamily::Plain);
  if (column != Amount) return {};
  const core::InputUnit unit = amountUnit(shownSetup(), m_inputs[static_cast<std::size_t>(row)].input);
  return cellNumber(unit.family, toQString(unit.named));
}

QVariant UncertaintyModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= static_cast<int>(m_inputs.size())) return {};
  switch (role) {
    case Qt::DisplayRole:
      return text(index.row(), index.column(), false);
    case Qt::EditRole:
      return text(index.row(), index.column(), true);
    case Qt::ToolTipRole:
      return asTyped(hint(index.row()));
    case Qt::ForegroundRole:
      if (index.column() != Source) return {};
      if (m_refused[static_cast<std::size_t>(index.row())]) return coloursFor(QPalette()).fail;
      if (!isStated(index.row())) return coloursFor(QPalette()).quiet;
      return {};
    case Qt::TextAlignmentRole: {
      const bool number = index.column() == Value || index.column() == Amount ||
                          index.column() == CoverageFactor || index.column() == DegreesOfFreedom ||
                          index.column() == Correlation;
      return QVariant(number ? Qt::AlignRight | Qt::AlignVCenter : Qt::AlignLeft | Qt::AlignVCenter);
    }
    case cellNumberRole:
      return numberIn(index.row(), index.column());
    default:
      return {};
  }
}

QString UncertaintyModel::text(int row, int column, bool full) const {
  const core::BudgetInput& entry = m_inputs[static_cast<std::size_t>(row)];
  const Uncertainty& uncertainty = entry.uncertainty;
  switch (column) {
    case InputColumn:
      return toQString(core::inputName(shownSetup(), entry.input));
    case Value:
      return quantityOf(entry.value, core::inputUnit(shownSetup(), entry.input), full ? fullDigits : 8);
    case Amount:
      return amountText(shownSetup(), entry.input, uncertainty, full ? fullDigits : 6);
    case StatedAs:
      return toQString(core::statementKey(uncertainty.statement));
    case Distribution:
      return toQString(core::distributionKey(core::distributionOf(uncertainty)));
    case CoverageFactor:
      return usesCoverageFactor(uncertainty) ? numberText(uncertainty.coverageFactor, full ? fullDigits : 6)
                                             : QString();
    case DegreesOfFreedom:
      return uncertainty.degreesOfFreedom ? numberText(*uncertainty.degreesOfFreedom, full ? fullDigits : 6)
                                          : QString("∞");
    case Group:
      return toQString(uncertainty.group);
    case Correlation:
      return uncertainty.group.empty()
                 ? QString()
                 : numberText(correlationOf(shownSetup(), uncertainty.group), full ? fullDigits : 6);
    default:
      if (const auto& refused = m_refused[static_cast<std::size_t>(row)])
        return tr("refused: %1").arg(toQString(refused->where + ", " + refused->what));
      return entry.assumed
                 ? tr("assumed: %1").arg(toQString(core::assumptionFor(shownSetup(), entry.input).reason))
                 : tr("stated");
  }
}

QString UncertaintyModel::hint(int row) const {
  if (const auto& refused = m_refused[static_cast<std::size_t>(row)]) return toText(*refused);
  const core::BudgetInput& entry = m_inputs[static_cast<std::size_t>(row)];
  const QString standard = tr("%1: standard uncertainty %2.")
                               .arg(text(row, InputColumn, false),
                                    quantityOf(entry.standard, amountUnit(shownSetup(), entry.input), 4));
  return entry.assumed ? standard + " " + text(row, Source, false) + "." : standard;
}

QString UncertaintyModel::whyFixed(int column) const {
  if (session().checkIsClosed()) return SheetModel::whyFixed(column);
  if (column == Value) return tr("Values are edited in the channel's set-up and in the table of shunts.");
  if (column == Source)
    return tr(
        "What you type in the other columns of a row is stated; empty its uncertainty to assume it again.");
  return SheetModel::whyFixed(column);
}

std::optional<int> UncertaintyModel::rowOf(Input input) const {
  const auto found = std::find_if(m_inputs.begin(), m_inputs.end(),
                                  [&](const core::BudgetInput& entry) { return entry.input == input; });
  if (found == m_inputs.end()) return std::nullopt;
  return static_cast<int>(found - m_inputs.begin());
}

core::Channel UncertaintyModel::withAssumed(core::Channel channel, const std::vector<int>& rows) const {
  for (const int row : rows)
    channel = core::withUncertainty(std::move(channel), m_inputs[static_cast<std::size_t>(row)].input,
                                    std::nullopt);
  return channel;
}

core::Result<void> UncertaintyModel::clearCells(const QModelIndexList& cells) {
  if (session().checkIsClosed()) return core::Error{"clear", whyFixed(Amount).chopped(1).toStdString(), ""};
  std::vector<int> assumed;
  for (const QModelIndex& cell : cells)
    if (cell.column() == Amount) assumed.push_back(cell.row());
  if (assumed.empty()) return SheetModel::clearCells(cells);
  session().editChannel(tr("Assume uncertainty again"), withAssumed(*session().channel(), assumed));
  return {};
}

core::Result<core::Channel> UncertaintyModel::withCell(core::Channel channel, int row, int column,
                                                       const QString& text) const {
  if (session().checkIsClosed())
    return core::Error{"", core::say("this check is closed and shows the set-up it was judged by"),
                       core::say("Reopen the check, or choose another")};
  const Input input = m_inputs[static_cast<std::size_t>(row)].input;
  const auto& stated = channel.setup.uncertainties.stated;
  const auto found = stated.find(input);
  const Uncertainty present =
      found == stated.end() ? core::assumptionFor(channel.setup, input).uncertainty : found->second;
  const QString typed = text.trimmed();
  if (column == Correlation) return withCorrelationText(std::move(channel), present.group, typed);
  if (column == Amount && typed.isEmpty())
    return core::withUncertainty(std::move(channel), input, std::nullopt);
  auto next = withText(channel.setup, input, present, column, typed);
  if (!next) return next.error();
  // An empty cell that changes nothing, as in a pasted block, states nothing.
  if (typed.isEmpty() && *next == present) return channel;
  return core::withUncertainty(std::move(channel), input, *std::move(next));
}

QString UncertaintyModel::editLabel(int column) const {
  return column == Correlation ? tr("Change correlation") : tr("Change uncertainty");
}

QString UncertaintyModel::emptyText(int column) const {
  const bool may = column >= CoverageFactor && column <= Correlation;
  return may || column == Amount ? QString("") : QString();
}

}  // namespace ui
