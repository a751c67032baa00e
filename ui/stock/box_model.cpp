// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stock/box_model.h"

#include <algorithm>
#include <array>

#include "core/stock/stock_text.h"
#include "ui/as_typed.h"
#include "ui/fields/cell_number.h"
#include "ui/quantity_edit.h"
#include "ui/theme.h"

namespace ui {

BoxModel::BoxModel(Session& session, const PartUses& uses, QObject* parent)
    : StockSheet(session, ColumnCount, parent), m_uses(uses) {
  refresh();
}

QVariant BoxModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::ToolTipRole && section == Dials)
    return tr("Positions times step of each dial, the greatest step first: 10x10k 10x1k 10x100");
  if (role == Qt::ToolTipRole && section == Residual) return tr("What is measured with all dials at 0");
  if (role != Qt::DisplayRole) return {};
  const QStringList names = {tr("Id"),     tr("Dials"), tr("Residual"), tr("Tolerance"), tr("Due"),
                             tr("Rating"), tr("Note"),  tr("Up to"),    tr("Used by")};
  return names.value(section);
}

Qt::ItemFlags BoxModel::flags(const QModelIndex& index) const {
  const Qt::ItemFlags flags = QAbstractTableModel::flags(index);
  return index.isValid() && index.column() < UpTo ? flags | Qt::ItemIsEditable : flags;
}

QVariant BoxModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= rowCount()) return {};
  const core::DecadeBox& box = stock().boxes[static_cast<std::size_t>(index.row())];
  const int column = index.column();
  switch (role) {
    case Qt::DisplayRole:
      return column == Due ? dueText(box.due, session().today()) : text(box, column);
    case Qt::EditRole:
      return text(box, column);
    case Qt::ToolTipRole:
      return column == Dials || column >= Note ? asTyped(text(box, column)) : QString();
    case Qt::ForegroundRole:
      if (column == Due && core::isOverdue(box.due, session().today())) return coloursFor(QPalette()).fail;
      return {};
    case Qt::TextAlignmentRole:
      return QVariant(column == Residual || column == Tolerance || column == UpTo
                          ? Qt::AlignRight | Qt::AlignVCenter
                          : Qt::AlignLeft | Qt::AlignVCenter);
    case cellNumberRole:
      if (column == Residual) return cellNumber(core::UnitFamily::Resistance);
      if (column == Tolerance) return cellNumber(core::UnitFamily::Percent);
      return column == Rating ? cellNumber(core::UnitFamily::Power) : QVariant();
    default:
      return {};
  }
}

QString BoxModel::text(const core::DecadeBox& box, int column) const {
  switch (column) {
    case Id:
      return toQString(box.id);
    case Dials:
      return toQString(core::decadesText(box.decades));
    case Residual:
      return quantityText(box.residual.base(), core::UnitFamily::Resistance, {}, 17);
    case Tolerance:
      return toleranceText(box.tolerance);
    case Due:
      return box.due ? toQString(core::dateText(*box.due)) : QString();
    case Rating:
      return ratingText(box.rating);
    case Note:
      return toQString(box.note);
    case UpTo:
      return quantityText(core::greatestSetting(box).base(), core::UnitFamily::Resistance, {}, 6);
    default:
      return m_uses.of(box.id);
  }
}

void BoxModel::addRow(core::Stock& stock) const {
  stock.boxes.push_back({.id = {}, .decades = {}, .tolerance = 0});
}

core::Result<void> BoxModel::setCell(core::Stock& stock, std::size_t row, int column,
                                     const QString& text) const {
  core::DecadeBox& box = stock.boxes[row];
  switch (column) {
    case Id:
      box.id = text.trimmed().toStdString();
      return {};
    case Dials:
      return taken(box.decades, core::decadesFromText(text.toStdString()));
    case Residual:
      return taken(box.residual, resistanceFromText(text.trimmed().isEmpty() ? QString("0") : text));
    case Tolerance:
      return taken(box.tolerance, toleranceFromText(text));
    case Due:
      return taken(box.due, dueFromText(text));
    case Rating:
      return taken(box.rating, ratingFromText(text));
    default:
      box.note = text.trimmed().toStdString();
      return {};
  }
}

std::optional<core::FieldFault> BoxModel::faultIn(const core::Stock& stock, std::size_t row) const {
  return core::faultOf(stock.boxes[row]);
}

int BoxModel::columnOf(std::string_view field) const {
  constexpr std::array<std::string_view, 7> fields = {"id",  "decades", "residual", "tolerance",
                                                      "due", "rating",  "note"};
  return static_cast<int>(std::find(fields.begin(), fields.end(), field) - fields.begin());
}

QString BoxModel::editLabel(int column) const {
  return column == Id ? tr("Rename decade box") : tr("Change decade box");
}

QString BoxModel::emptyText(int column) const {
  return column == Id || column == Dials || column == Tolerance ? QString() : QString("");
}

}  // namespace ui
