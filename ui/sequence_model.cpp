// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sequence_model.h"

#include <algorithm>
#include <cmath>

#include "core/assess/reading_unit.h"
#include "core/document/edits.h"
#include "core/units/language.h"
#include "core/units/notation.h"
#include "core/units/text.h"
#include "ui/as_typed.h"
#include "ui/budget/budget_words.h"
#include "ui/fields/cell_number.h"
#include "ui/quantity_edit.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr int fullDigits = 17;  // the shortest that is the same number again
core::Result<double> typedNumber(const QString& text, core::UnitFamily family, const std::string& unit = {}) {
  return core::parseQuantity(text.toStdString(), family, unit);
}

}  // namespace

int decimalsFor(double greatest) {
  if (!std::isfinite(greatest) || greatest <= 0) return 3;
  return std::clamp(5 - static_cast<int>(std::floor(std::log10(greatest))), 0, 9);
}

QString closedShuntsText(const core::Setup& setup, const core::Step& step) {
  QStringList names;
  for (const std::size_t shunt : step.closed) names << toQString(setup.shunts[shunt].name);
  return names.isEmpty() ? SequenceModel::tr("none") : names.join(", ");
}

core::Result<std::vector<std::size_t>> closedShuntsFromText(const core::Setup& setup, const QString& text) {
  std::vector<std::size_t> closed;
  QStringList known;
  for (const core::Shunt& shunt : setup.shunts) known << toQString(shunt.name);
  for (const QString& part : text.split(',', Qt::SkipEmptyParts)) {
    const QString name = part.trimmed();
    if (name.isEmpty() || name == "none" || name == SequenceModel::tr("none") || name == "zero") continue;
    const qsizetype found = known.indexOf(name);
    if (found < 0)
      return core::Error{"", core::say("no shunt is called {1}", {core::inQuotes(name.toStdString())}),
                         known.isEmpty() ? core::say("Add a shunt first")
                                         : core::say("Known shunts: {1}", {known.join(", ").toStdString()})};
    closed.push_back(static_cast<std::size_t>(found));
  }
  return closed;
}

SequenceModel::SequenceModel(Session& session, QObject* parent) : SheetModel(session, ColumnCount, parent) {
  connect(&session, &Session::changed, this, &SequenceModel::refresh);
  refresh();
}

void SequenceModel::refresh() {
  const bool some = session().channel();
  if (some) m_decimals = columnDecimals();
  showRows(some ? static_cast<int>(shownSetup().sequence.size()) : 0);
}

SequenceModel::Decimals SequenceModel::columnDecimals() const {
  double simulated = 0, output = 0, reading = 0;
  for (const auto& step : shownPrediction().steps) {
    if (!step) continue;
    simulated = std::max(simulated, std::abs(core::simulatedInUnit(shownSetup().bridge, step->simulated)));
    output = std::max(output, std::abs(1e3 * step->output.base()));
    reading = std::max(reading, std::abs(step->reading.base()));
  }
  return {decimalsFor(simulated), decimalsFor(output), decimalsFor(reading)};
}

const core::Result<core::StepUncertainty>& SequenceModel::shownUncertainty(int row) const {
  return session().shownBudget().of(session().selection().scope).steps[static_cast<std::size_t>(row)];
}

const core::CheckAssessment* SequenceModel::shownAssessment() const {
  const auto& check = session().selection().check;
  return check ? &session().evaluation()->checks[*check].assessment : nullptr;
}

QVariant SequenceModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::ToolTipRole && section == Expanded && session().channel())
    return tr("Expanded uncertainty. %1 The scope is chosen on the page Budget.")
        .arg(scopeSentence(shownSetup(), session().selection().scope));
  if (role == Qt::ToolTipRole && section == Number)
    return tr(
        "Steps stand in the order in which they are made, which is a part of the plan: drag a number to "
        "move its step.");
  if (role == Qt::ToolTipRole)
    return tr("Steps stand in the order in which they are made, so this table is not sorted.");
  if (role != Qt::DisplayRole) return {};
  const bool some = session().channel();
  const QString reading = some ? toQString(core::readingUnitText(shownSetup().instrument)) : QString("µm/m");
  const QString simulated = some ? toQString(core::simulatedUnitText(shownSetup().bridge)) : QString("µm/m");
  switch (section) {
    case Number:
      return tr("No.");
    case Label:
      return tr("Step");
    case Closed:
      return tr("Shunts closed");
    case PolarityColumn:
      return tr("Polarity");
    case Settle:
      return tr("Settle\n[s]");
    case Hold:
      return tr("Hold\n[s]");
    case Simulated:
      return tr("Simulated\n[%1]").arg(simulated);
    case Output:
      return tr("Output\n[mV/V]");
    case Expected:
      return tr("Expected\n[%1]").arg(reading);
    case Expanded:
      return some ? expandedHeader(shownSetup(), session().selection().scope) : tr("U");
    case Measured:
      return tr("Reading\n[%1]").arg(reading);
    case Change:
      return tr("Change\n[%1]").arg(reading);
    case Deviation:
      return tr("Deviation\n[%1]").arg(reading);
    case Limit:
      return tr("Limit ±\n[%1]").arg(reading);
    case VerdictColumn:
      return tr("Verdict");
    default:
      return {};
  }
}

Qt::ItemFlags SequenceModel::flags(const QModelIndex& index) const {
  Qt::ItemFlags flags = QAbstractTableModel::flags(index);
  if (!index.isValid()) return flags;
  if (session().checkIsClosed()) return flags;
  const int column = index.column();
  const bool plan = column == Label || column == Closed || column == Settle || column == Hold;
  if (plan || (column == Measured && session().check())) flags |= Qt::ItemIsEditable;
  return flags;
}

QVariant SequenceModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= rowCount() || !session().channel()) return {};
  switch (role) {
    case Qt::DisplayRole:
      return text(index.row(), index.column(), false);
    case Qt::EditRole:
      return text(index.row(), index.column(), true);
    case Qt::ToolTipRole:
      return asTyped(hint(index));
    case Qt::ForegroundRole:
      return foreground(index);
    case Qt::TextAlignmentRole: {
      const bool number = index.column() == Number || (index.column() >= Settle && index.column() <= Limit);
      return QVariant(number ? Qt::AlignRight | Qt::AlignVCenter : Qt::AlignLeft | Qt::AlignVCenter);
    }
    case cellNumberRole:
      return numberIn(index.column());
    default:
      return {};
  }
}

/// What the cells of a column hold that is typed as a number.
QVariant SequenceModel::numberIn(int column) const {
  if (column == Settle || column == Hold) return cellNumber(core::UnitFamily::Duration);
  if (column != Measured) return {};
  return cellNumber(core::UnitFamily::Named, toQString(core::readingUnitText(shownSetup().instrument)));
}

QString SequenceModel::text(int row, int column, bool full) const {
  const core::Step& step = shownSetup().sequence[static_cast<std::size_t>(row)];
  const auto number = [full](double value, int decimals) {
    return full ? numberText(value, fullDigits) : fixedNumberText(value, decimals);
  };
  switch (column) {
    case Number:
      return QString::number(row + 1);
    case Label:
      return toQString(step.label);
    case Closed: {
      const QString shunts = closedShuntsText(shownSetup(), step);
      return full || overdueShunts(row).empty() ? shunts : tr("%1 (overdue)").arg(shunts);
    }
    case Settle:
      return numberText(step.settle.base(), fullDigits);
    case Hold:
      return numberText(step.hold.base(), fullDigits);
    case PolarityColumn:
    case Simulated:
    case Output:
    case Expected:
      return predictedText(row, column, number);
    case Expanded: {
      const auto& uncertainty = shownUncertainty(row);
      if (!uncertainty) return QString("–");
      return full ? numberText(uncertainty->expanded, fullDigits) : twoDigitsText(uncertainty->expanded);
    }
    default:
      return assessedText(row, column, number);
  }
}

QString SequenceModel::predictedText(int row, int column, const NumberText& number) const {
  const auto& prediction = shownPrediction().steps[static_cast<std::size_t>(row)];
  if (!prediction) return column == PolarityColumn ? tr("error") : QString("–");
  switch (column) {
    case PolarityColumn:
      return polarityText(prediction->polarity);
    case Simulated:
      return number(core::simulatedInUnit(shownSetup().bridge, prediction->simulated), m_decimals.simulated);
    case Output:
      return number(1e3 * prediction->output.base(), m_decimals.output);
    default:
      return number(prediction->reading.base(), m_decimals.reading);
  }
}

QString SequenceModel::assessedText(int row, int column, const NumberText& number) const {
  const core::CheckAssessment* assessment = shownAssessment();
  if (!assessment) return {};
  const core::StepAssessment& step = assessment->steps[static_cast<std::size_t>(row)];
  const auto& readings = session().check()->readings;
  const auto shown = [&](const std::optional<core::Reading>& reading) {
    return reading ? number(reading->base(), m_decimals.reading) : QString();
  };
  switch (column) {
    case Measured:
      return static_cast<std::size_t>(row) < readings.size() && readings[row] ? shown(readings[row]->mean)
                                                                              : QString();
    case Change:
      return shown(step.change);
    case Deviation:
      return shown(step.deviation);
    case Limit:
      return shown(step.limit);
    default:
      return tr(std::string(core::verdictWord(step.verdict)).c_str());
  }
}

/// The day that due dates are compared with: a closed check's own, since nothing that falls due later takes
/// anything from it.
std::optional<core::Date> SequenceModel::dayOfUse() const {
  return session().checkIsClosed() ? core::dateFromText(session().check()->date)
                                   : std::optional(session().today());
}

std::vector<std::size_t> SequenceModel::overdueShunts(int row) const {
  std::vector<std::size_t> overdue;
  const auto day = dayOfUse();
  if (!day) return overdue;
  for (const std::size_t shunt : shownSetup().sequence[static_cast<std::size_t>(row)].closed)
    if (const auto& due = shownSetup().shunts[shunt].part.due; due && *due < *day) overdue.push_back(shunt);
  return overdue;
}

QString SequenceModel::overdueHint(int row) const {
  QStringList sentences;
  for (const std::size_t index : overdueShunts(row)) {
    const core::Shunt& shunt = shownSetup().shunts[index];
    sentences << tr("%1 is overdue: its calibration was due on %2.")
                     .arg(toQString(core::resistorName(shunt)), toQString(core::dateText(*shunt.part.due)));
  }
  return sentences.join(' ');
}

QVariant SequenceModel::foreground(const QModelIndex& index) const {
  const auto row = static_cast<std::size_t>(index.row());
  const Colours colours = coloursFor(QPalette());
  const auto& prediction = shownPrediction().steps[row];
  if (index.column() == PolarityColumn)
    return prediction ? colourOf(colours, prediction->polarity) : colours.fail;
  if (index.column() == Closed && !overdueShunts(index.row()).empty()) return colours.fail;
  if (index.column() == VerdictColumn && shownAssessment())
    return colourOf(colours, shownAssessment()->steps[row].verdict);
  return {};
}

QString SequenceModel::hint(const QModelIndex& index) const {
  const auto row = static_cast<std::size_t>(index.row());
  const auto& prediction = shownPrediction().steps[row];
  if (index.column() == Closed && !overdueShunts(index.row()).empty()) return overdueHint(index.row());
  if (!prediction) return toText(prediction.error());
  if (index.column() == Expanded) {
    const auto& uncertainty = shownUncertainty(index.row());
    return uncertainty ? expandedSentence(shownSetup(), session().selection().scope, *uncertainty)
                       : toText(uncertainty.error());
  }
  if (index.column() >= Measured && shownAssessment()) return toQString(shownAssessment()->steps[row].reason);
  return {};
}

QString SequenceModel::whyFixed(int column) const {
  if (column == Measured) return tr("There is no check to enter readings for: start one with \"New\".");
  return SheetModel::whyFixed(column);
}

core::Result<core::Channel> SequenceModel::withCell(core::Channel channel, int row, int column,
                                                    const QString& text) const {
  if (session().checkIsClosed())
    return core::Error{"", core::say("this check is closed and shows the set-up it was judged by"),
                       core::say("Reopen the check, or choose another")};
  const auto at = static_cast<std::size_t>(row);
  core::Step step = channel.setup.sequence[at];
  if (column == Measured) {
    if (text.trimmed().isEmpty())
      return core::withReading(std::move(channel), *session().selection().check, at, {});
    const bool scaled = channel.setup.instrument.unit == core::ReadingUnit::Scaled;
    const auto value = typedNumber(
        text, core::UnitFamily::Named,
        scaled ? channel.setup.instrument.scaledUnit : core::readingUnitText(channel.setup.instrument));
    if (!value) return value.error();
    if (auto ok = core::checkReading(channel.setup.instrument, core::Reading(*value)); !ok) return ok.error();
    return core::withReading(
        std::move(channel), *session().selection().check, at,
        core::Measured{.mean = core::Reading(*value), .uncertainty = {}, .begin = {}, .end = {}});
  }
  if (column == Label) step.label = text.trimmed().toStdString();
  if (column == Closed) {
    auto closed = closedShuntsFromText(channel.setup, text);
    if (!closed) return closed.error();
    step.closed = *closed;
  }
  if (column == Settle) {
    const auto value = typedNumber(text, core::UnitFamily::Duration);
    if (!value) return value.error();
    if (*value < 0)
      return core::Error{"", core::say("a step cannot settle for less than no time"),
                         core::say("Enter 0 or more")};
    step.settle = core::Duration(*value);
  }
  if (column == Hold) {
    const auto value = typedNumber(text, core::UnitFamily::Duration);
    if (!value) return value.error();
    if (*value <= 0)
      return core::Error{"", core::say("a hold must be longer than zero"),
                         core::say("Enter at least one second")};
    step.hold = core::Duration(*value);
  }
  return core::withStep(std::move(channel), at, std::move(step));
}

QString SequenceModel::editLabel(int column) const {
  switch (column) {
    case Label:
      return tr("Rename step");
    case Closed:
      return tr("Change closed shunts");
    case Settle:
      return tr("Change settling");
    case Hold:
      return tr("Change hold");
    default:
      return tr("Enter reading");
  }
}

QString SequenceModel::emptyText(int column) const {
  return column == Label || column == Closed || column == Measured ? QString("") : QString();
}

}  // namespace ui
