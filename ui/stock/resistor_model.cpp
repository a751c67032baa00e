// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stock/resistor_model.h"

#include <algorithm>
#include <array>

#include "core/stock/stock_text.h"
#include "ui/as_typed.h"
#include "ui/fields/cell_number.h"
#include "ui/quantity_edit.h"
#include "ui/theme.h"

#include "core/units/language.h"

namespace ui {
namespace {

using core::Certificate;
using core::Resistor;

constexpr int everyDigit = 17;  ///< the shortest text that is the same number again
constexpr std::string_view bothMend =
    core::sayLater("Enter value and U together, such as 59.906k ± 0.6, or paste both");

/// U as a resistance or as a share of the certificate's value.
core::Result<void> setExpanded(Certificate& certificate, const QString& text) {
  const QString plain = text.trimmed();
  if (plain.endsWith('%') || plain.endsWith("ppm")) {
    const auto share = core::shareFromText(plain.toStdString());
    if (!share) return share.error();
    certificate.expanded = *share * certificate.value;
    return {};
  }
  const auto expanded = resistanceFromText(text);
  if (!expanded) return expanded.error();
  certificate.expanded = *expanded;
  return {};
}

/// "59.906k", or with U behind a plus-minus sign.
core::Result<void> setCertificate(Resistor& resistor, QString text) {
  if (text.trimmed().isEmpty()) {
    resistor.certificate.reset();
    return {};
  }
  text.replace("+/-", QChar(0xB1)).replace("+-", QChar(0xB1));
  const auto sign = text.indexOf(QChar(0xB1));
  Certificate certificate = resistor.certificate.value_or(Certificate{});
  const auto value = resistanceFromText(sign < 0 ? text : text.left(sign));
  if (!value) return value.error();
  certificate.value = *value;
  if (sign >= 0)
    if (const auto set = setExpanded(certificate, text.mid(sign + 1)); !set) return set;
  resistor.certificate = certificate;
  return {};
}

/// U or k, which are there only with a certificate.
core::Result<void> setOfCertificate(Resistor& resistor, int column, const QString& text) {
  const bool isEmpty = text.trimmed().isEmpty();
  if (!resistor.certificate) {
    if (isEmpty) return {};
    return core::Error{"", core::say("there is no certificate value yet"), core::say(bothMend)};
  }
  if (column == ResistorModel::Expanded) {
    resistor.certificate->expanded = core::Resistance(0);
    return isEmpty ? core::Result<void>() : setExpanded(*resistor.certificate, text);
  }
  resistor.certificate->coverageFactor = Certificate{}.coverageFactor;
  if (isEmpty) return {};
  const auto factor = core::parseQuantity(text.toStdString(), core::UnitFamily::Plain);
  if (!factor) return factor.error();
  resistor.certificate->coverageFactor = *factor;
  return {};
}

}  // namespace

ResistorModel::ResistorModel(Session& session, const PartUses& uses, QObject* parent)
    : StockSheet(session, ColumnCount, parent), m_uses(uses) {
  refresh();
}

QVariant ResistorModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::ToolTipRole && section == CertificateValue)
    return tr("Value on the calibration certificate. A new one is entered with its U: 59.906k ± 0.6");
  if (role == Qt::ToolTipRole && section == Expanded)
    return tr("Expanded uncertainty on the certificate, in ohm or as a share of the value");
  if (role != Qt::DisplayRole) return {};
  const QStringList names = {tr("Id"),        tr("Value"), tr("Tolerance"), tr("Certificate"),
                             tr("U"),         tr("k"),     tr("Due"),       tr("Rating"),
                             tr("Fitted in"), tr("Note"),  tr("Used by")};
  return names.value(section);
}

Qt::ItemFlags ResistorModel::flags(const QModelIndex& index) const {
  const Qt::ItemFlags flags = QAbstractTableModel::flags(index);
  return index.isValid() && index.column() != UsedBy ? flags | Qt::ItemIsEditable : flags;
}

QVariant ResistorModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= rowCount()) return {};
  const Resistor& resistor = stock().resistors[static_cast<std::size_t>(index.row())];
  const int column = index.column();
  switch (role) {
    case Qt::DisplayRole:
      return column == Due ? dueText(resistor.due, session().today()) : text(resistor, column);
    case Qt::EditRole:
      return text(resistor, column, everyDigit);
    case Qt::ToolTipRole:
      return column >= FittedIn ? asTyped(text(resistor, column)) : QString();
    case Qt::ForegroundRole:
      if (column == Due && core::isOverdue(resistor.due, session().today()))
        return coloursFor(QPalette()).fail;
      return {};
    case Qt::TextAlignmentRole:
      return QVariant(column >= Value && column <= CoverageFactor ? Qt::AlignRight | Qt::AlignVCenter
                                                                  : Qt::AlignLeft | Qt::AlignVCenter);
    case cellNumberRole:
      if (column == Value || column == CertificateValue || column == Expanded)
        return cellNumber(core::UnitFamily::Resistance);
      if (column == CoverageFactor) return cellNumber(core::UnitFamily::Plain);
      if (column == Tolerance) return cellNumber(core::UnitFamily::Percent);
      return column == Rating ? cellNumber(core::UnitFamily::Power) : QVariant();
    default:
      return {};
  }
}

QString ResistorModel::text(const Resistor& resistor, int column, int digits) const {
  const auto& certificate = resistor.certificate;
  switch (column) {
    case Id:
      return toQString(resistor.id);
    case Value:
      return quantityText(resistor.nominal.base(), core::UnitFamily::Resistance, {}, digits);
    case Tolerance:
      return toleranceText(resistor.tolerance);
    case CertificateValue:
      return certificate ? quantityText(certificate->value.base(), core::UnitFamily::Resistance, {}, digits)
                         : QString();
    case Expanded:
      return certificate
                 ? quantityText(certificate->expanded.base(), core::UnitFamily::Resistance, {}, digits)
                 : QString();
    case CoverageFactor:
      return certificate ? numberText(certificate->coverageFactor, digits) : QString();
    case Due:
      return resistor.due ? toQString(core::dateText(*resistor.due)) : QString();
    case Rating:
      return ratingText(resistor.rating);
    case FittedIn:
      return toQString(resistor.fittedIn);
    case Note:
      return toQString(resistor.note);
    default:
      return m_uses.of(resistor.id);
  }
}

void ResistorModel::addRow(core::Stock& stock) const {
  stock.resistors.push_back({.id = {}, .tolerance = 0});  // no tolerance is made up for a pasted row
}

core::Result<void> ResistorModel::setCell(core::Stock& stock, std::size_t row, int column,
                                          const QString& text) const {
  Resistor& resistor = stock.resistors[row];
  switch (column) {
    case Id:
      resistor.id = text.trimmed().toStdString();
      return {};
    case Value:
      return taken(resistor.nominal, resistanceFromText(text));
    case Tolerance:
      return taken(resistor.tolerance, toleranceFromText(text));
    case CertificateValue:
      return setCertificate(resistor, text);
    case Expanded:
    case CoverageFactor:
      return setOfCertificate(resistor, column, text);
    case Due:
      return taken(resistor.due, dueFromText(text));
    case Rating:
      return taken(resistor.rating, ratingFromText(text));
    case FittedIn:
      resistor.fittedIn = text.trimmed().toStdString();
      return {};
    default:
      resistor.note = text.trimmed().toStdString();
      return {};
  }
}

std::optional<core::FieldFault> ResistorModel::faultIn(const core::Stock& stock, std::size_t row) const {
  auto fault = core::faultOf(stock.resistors[row]);
  const auto& certificate = stock.resistors[row].certificate;
  if (fault && certificate && certificate->expanded == core::Resistance(0) &&
      fault->field == "certificate_expanded")
    fault->mend = bothMend;
  return fault;
}

int ResistorModel::columnOf(std::string_view field) const {
  constexpr std::array<std::string_view, 10> fields = {"id",
                                                       "resistance",
                                                       "tolerance",
                                                       "certificate_value",
                                                       "certificate_expanded",
                                                       "certificate_k",
                                                       "due",
                                                       "rating",
                                                       "fitted_in",
                                                       "note"};
  return static_cast<int>(std::find(fields.begin(), fields.end(), field) - fields.begin());
}

QString ResistorModel::editLabel(int column) const {
  return column == Id ? tr("Rename resistor") : tr("Change resistor of the stock");
}

QString ResistorModel::emptyText(int column) const {
  return column == Id || column == Value || column == Tolerance ? QString() : QString("");
}

}  // namespace ui
