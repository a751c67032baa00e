// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stock/series_model.h"

#include <algorithm>
#include <array>

#include "core/units/text.h"
#include "ui/fields/cell_number.h"
#include "ui/quantity_edit.h"
#include "ui/theme.h"

#include "core/units/language.h"

namespace ui {

QStringList seriesNames() {
  QStringList names;
  for (std::size_t k = 0; k < core::eSeriesCount; ++k)
    names << toQString(core::eSeriesName(static_cast<core::ESeries>(k)));
  return names;
}

SeriesModel::SeriesModel(Session& session, QObject* parent) : StockSheet(session, ColumnCount, parent) {
  refresh();
}

QVariant SeriesModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::ToolTipRole && section == Values) return tr("How many values of the series lie in between");
  if (role != Qt::DisplayRole) return {};
  const QStringList names = {tr("Series"), tr("From"), tr("To"), tr("Tolerance"), tr("Values")};
  return names.value(section);
}

Qt::ItemFlags SeriesModel::flags(const QModelIndex& index) const {
  const Qt::ItemFlags flags = QAbstractTableModel::flags(index);
  return index.isValid() && index.column() != Values ? flags | Qt::ItemIsEditable : flags;
}

QVariant SeriesModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= rowCount()) return {};
  if (role == Qt::TextAlignmentRole)
    return QVariant(index.column() == Series ? Qt::AlignLeft | Qt::AlignVCenter
                                             : Qt::AlignRight | Qt::AlignVCenter);
  if (role == cellNumberRole) {
    if (index.column() == From || index.column() == To) return cellNumber(core::UnitFamily::Resistance);
    return index.column() == Tolerance ? cellNumber(core::UnitFamily::Percent) : QVariant();
  }
  if (role != Qt::DisplayRole && role != Qt::EditRole) return {};
  return text(stock().series[static_cast<std::size_t>(index.row())], index.column());
}

QString SeriesModel::text(const core::SeriesRange& range, int column) const {
  switch (column) {
    case Series:
      return toQString(core::eSeriesName(range.series));
    case From:
      return quantityText(range.from.base(), core::UnitFamily::Resistance, {}, 17);
    case To:
      return quantityText(range.to.base(), core::UnitFamily::Resistance, {}, 17);
    case Tolerance:
      return toleranceText(range.tolerance);
    default:
      return QString::number(core::eSeriesValues(range.series, range.from, range.to).size());
  }
}

void SeriesModel::addRow(core::Stock& stock) const { stock.series.push_back({.tolerance = 0}); }

core::Result<void> SeriesModel::setCell(core::Stock& stock, std::size_t row, int column,
                                        const QString& text) const {
  core::SeriesRange& range = stock.series[row];
  switch (column) {
    case Series: {
      const auto series = core::eSeriesFromName(text.trimmed().toUpper().toStdString());
      if (!series)
        return core::Error{
            "", core::say("{1} is no series of preferred values", {core::inQuotes(text.toStdString())}),
            core::say("Choose one of: {1}", {seriesNames().join(", ").toStdString()})};
      range.series = *series;
      return {};
    }
    case From:
      return taken(range.from, resistanceFromText(text));
    case To:
      return taken(range.to, resistanceFromText(text));
    default:
      return taken(range.tolerance, toleranceFromText(text));
  }
}

std::optional<core::FieldFault> SeriesModel::faultIn(const core::Stock& stock, std::size_t row) const {
  return core::faultOf(stock.series[row]);
}

int SeriesModel::columnOf(std::string_view field) const {
  constexpr std::array<std::string_view, 4> fields = {"series", "from", "to", "tolerance"};
  return static_cast<int>(std::find(fields.begin(), fields.end(), field) - fields.begin());
}

QString SeriesModel::editLabel(int) const { return tr("Change preferred values"); }

QString SeriesModel::emptyText(int) const { return {}; }

}  // namespace ui
