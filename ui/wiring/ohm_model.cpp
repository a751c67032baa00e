// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/wiring/ohm_model.h"

#include <algorithm>
#include <cmath>

#include "core/document/file_limits.h"
#include "core/document/ohm_edits.h"
#include "core/units/language.h"
#include "core/units/notation.h"
#include "core/units/text.h"
#include "ui/fields/cell_number.h"
#include "ui/quantity_edit.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr int fullDigits = 17;  // the shortest that is the same number again
constexpr int shownDigits = 8;

/// `ohm` to two digits of its tolerance: what lies below is of no use beside an ohmmeter.
std::optional<core::Resistance> roundedTo(const std::optional<core::Resistance>& ohm,
                                          core::Resistance tolerance) {
  if (!ohm || !(tolerance > core::Resistance(0))) return ohm;
  const double step = std::pow(10.0, std::floor(std::log10(tolerance.base())) - 1);
  return core::Resistance(std::round(ohm->base() / step) * step);
}

}  // namespace

QString ohmText(const std::optional<core::Resistance>& ohm, int significantDigits) {
  if (!ohm) return OhmModel::tr("open");
  // An ohmmeter shows no less than its last digit, and rounding of the network would look like a reading.
  const double shown = std::abs(ohm->base()) < 1e-6 ? 0.0 : ohm->base();
  return quantityText(shown, core::UnitFamily::Resistance, {}, significantDigits);
}

core::Result<std::optional<core::Resistance>> ohmFromText(const QString& text) {
  const QString typed = text.trimmed();
  for (const QString& word : {OhmModel::tr("open"), QString("open"), QString("OL"), QString("O.L"),
                              QString("O.L."), QString("inf"), QString(QChar(0x221E))})
    if (typed.compare(word, Qt::CaseInsensitive) == 0) return std::optional<core::Resistance>();
  const auto value = core::parseQuantity(typed.toStdString(), core::UnitFamily::Resistance);
  if (!value) {
    core::Error error = value.error();
    error.mend =
        core::say("Enter a resistance such as 349.8 or 174.65k, or open when the ohmmeter shows no reading");
    return error;
  }
  if (*value < 0)
    return core::Error{
        "", core::say("an ohmmeter reads no less than 0 Ω"),
        core::say("A negative reading means that a voltage is there: switch the excitation off")};
  return std::optional(core::Resistance(*value));
}

bool fits(const core::OhmExpectation& expected, const std::optional<core::Resistance>& measured,
          const core::OhmmeterConditions& conditions) {
  if (!measured) return !expected.ohm || *expected.ohm + expected.tolerance >= conditions.openBeyond;
  if (!expected.ohm) return *measured >= conditions.openBeyond;
  return std::abs((*measured - *expected.ohm).base()) <= expected.tolerance.base();
}

OhmModel::OhmModel(Session& session, QObject* parent) : SheetModel(session, ColumnCount, parent) {}

void OhmModel::show(std::shared_ptr<const core::Channel> channel, core::WiringState state,
                    std::vector<core::OhmExpectation> rows, const core::OhmmeterConditions& conditions) {
  m_channel = std::move(channel);
  m_state = std::move(state);
  m_rows = std::move(rows);
  m_conditions = conditions;
  showRows(static_cast<int>(m_rows.size()));
}

void OhmModel::showReadings(std::shared_ptr<const core::Channel> channel) {
  m_channel = std::move(channel);
  showRows(static_cast<int>(m_rows.size()));
}

QVariant OhmModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
  switch (section) {
    case From:
      return tr("From");
    case To:
      return tr("To");
    case Expected:
      return tr("Must read");
    case Tolerance:
      return tr("Tolerance");
    case MeasuredColumn:
      return tr("Measured");
    case Deviation:
      return tr("Deviation");
    case Fits:
      return tr("Fits");
    default:
      return {};
  }
}

Qt::ItemFlags OhmModel::flags(const QModelIndex& index) const {
  const Qt::ItemFlags flags = QAbstractTableModel::flags(index);
  return index.isValid() && index.column() == MeasuredColumn ? flags | Qt::ItemIsEditable : flags;
}

QString OhmModel::whyFixed(int) const {
  return tr("This column is worked out from the channel. Type what the ohmmeter shows into Measured.");
}

const core::OhmReading* OhmModel::readingOf(const core::OhmExpectation& row) const {
  const auto& readings = m_channel->ohmReadings;
  const auto found = std::find_if(readings.begin(), readings.end(), [&](const core::OhmReading& reading) {
    return reading.state == m_state && ((reading.from == row.from && reading.to == row.to) ||
                                        (reading.from == row.to && reading.to == row.from));
  });
  return found == readings.end() ? nullptr : &*found;
}

QVariant OhmModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= rowCount()) return {};
  const core::OhmExpectation& row = m_rows[static_cast<std::size_t>(index.row())];
  switch (role) {
    case Qt::DisplayRole:
      return text(index.row(), index.column(), false);
    case Qt::EditRole:
      return text(index.row(), index.column(), true);
    case Qt::ForegroundRole: {
      const Colours colours = coloursFor(QPalette());
      if (index.column() == Tolerance) return colours.quiet;
      const core::OhmReading* reading = index.column() == Fits ? readingOf(row) : nullptr;
      if (!reading) return {};
      return fits(row, reading->ohm, m_conditions) ? colours.pass : colours.fail;
    }
    case Qt::TextAlignmentRole: {
      const bool number = index.column() >= Expected && index.column() <= Deviation;
      return QVariant((number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    }
    case cellNumberRole:
      return index.column() == MeasuredColumn ? cellNumber(core::UnitFamily::Resistance) : QVariant();
    default:
      return {};
  }
}

QString OhmModel::text(int row, int column, bool full) const {
  const core::OhmExpectation& expected = m_rows[static_cast<std::size_t>(row)];
  const core::OhmReading* reading = column >= MeasuredColumn ? readingOf(expected) : nullptr;
  switch (column) {
    case From:
      return toQString(core::ohmPointName(expected.from));
    case To:
      return toQString(core::ohmPointName(expected.to));
    case Expected:
      return full ? ohmText(expected.ohm, fullDigits)
                  : ohmText(roundedTo(expected.ohm, expected.tolerance), shownDigits);
    case Tolerance:
      return expected.ohm ? "± " + ohmText(expected.tolerance, 2) : QString();
    case MeasuredColumn:
      return reading ? ohmText(reading->ohm, full ? fullDigits : 8) : QString();
    case Deviation: {
      if (!reading) return {};
      if (!reading->ohm || !expected.ohm) return QString("–");
      const core::Resistance exact = *reading->ohm - *expected.ohm;
      const core::Resistance shown = full ? exact : *roundedTo(exact, expected.tolerance);
      return (shown > core::Resistance(0) ? "+" : "") + ohmText(shown, full ? fullDigits : shownDigits);
    }
    default:
      if (!reading) return {};
      return fits(expected, reading->ohm, m_conditions) ? tr("fits") : tr("does not fit");
  }
}

core::Result<core::Channel> OhmModel::withCell(core::Channel channel, int row, int,
                                               const QString& text) const {
  const core::OhmExpectation& at = m_rows[static_cast<std::size_t>(row)];
  if (text.trimmed().isEmpty()) return core::withoutOhmReading(std::move(channel), m_state, at.from, at.to);
  const auto ohm = ohmFromText(text);
  if (!ohm) return ohm.error();
  if (channel.ohmReadings.size() >= core::mostOhmReadings)
    return core::Error{"", core::say("a channel holds no more readings of the ohmmeter"),
                       core::say("Empty some of the others")};
  return core::withOhmReading(std::move(channel), {m_state, at.from, at.to, *ohm});
}

QString OhmModel::editLabel(int) const { return tr("Enter ohmmeter reading"); }

QString OhmModel::emptyText(int column) const { return column == MeasuredColumn ? QString("") : QString(); }

}  // namespace ui
