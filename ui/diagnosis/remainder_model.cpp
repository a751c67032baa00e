// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diagnosis/remainder_model.h"

#include <QPainter>
#include <QPointF>
#include <algorithm>
#include <cmath>

#include "core/report/figures.h"
#include "ui/quantity_edit.h"
#include "ui/theme.h"

namespace ui {

void RemainderModel::show(std::vector<core::Remainder> remainders, QStringList names, const QString& unit) {
  const bool sameCount = remainders.size() == m_remainders.size();
  if (!sameCount) beginResetModel();
  m_remainders = std::move(remainders);
  m_names = std::move(names);
  m_unit = unit;
  std::vector<double> values;
  m_greatest = 0;
  for (const core::Remainder& one : m_remainders) {
    values.insert(values.end(), {one.before, one.after});
    m_greatest = std::max({m_greatest, std::abs(one.before), std::abs(one.after)});
  }
  m_decimals = std::max(0, core::decimalsFor(values) - 1);  // what is left of the greatest may be small
  if (!sameCount) return endResetModel();
  if (rowCount() > 0) emit dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
  emit headerDataChanged(Qt::Horizontal, 0, ColumnCount - 1);
}

int RemainderModel::rowOf(std::size_t step) const {
  const auto found = std::find_if(m_remainders.begin(), m_remainders.end(),
                                  [&](const core::Remainder& one) { return one.step == step; });
  return found == m_remainders.end() ? -1 : static_cast<int>(found - m_remainders.begin());
}

int RemainderModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(m_remainders.size());
}

int RemainderModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : ColumnCount;
}

QVariant RemainderModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= rowCount()) return {};
  const core::Remainder& one = m_remainders[static_cast<std::size_t>(index.row())];
  if (role == remainderRole)
    return m_greatest > 0 ? QPointF(one.before / m_greatest, one.after / m_greatest) : QPointF();
  if (role == Qt::TextAlignmentRole)
    return QVariant((index.column() == Step ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
  if (role != Qt::DisplayRole && role != Qt::EditRole) return {};
  switch (index.column()) {
    case Step:
      return m_names.value(static_cast<int>(one.step), QString::number(one.step + 1));
    case Before:
      return fixedNumberText(one.before, m_decimals);
    case After:
      return fixedNumberText(one.after, m_decimals);
    default:
      return {};
  }
}

QVariant RemainderModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  const QString unit = ",\n" + m_unit;
  const QString names[ColumnCount] = {tr("Step"), tr("Deviation") + unit,
                                      tr("With this\ncause") + ", " + m_unit, tr("□ without\n■ with it")};
  if (role == Qt::DisplayRole) return names[section];
  static const char* const hints[ColumnCount] = {
      QT_TR_NOOP("Steps with a reading"),
      QT_TR_NOOP("Measured less expected change, both from the zero step"),
      QT_TR_NOOP("What is left of it when the cause is fitted, its offset free"),
      QT_TR_NOOP("The two columns as bars: outline without the cause, filled with it")};
  return role == Qt::ToolTipRole ? QVariant(tr(hints[section])) : QVariant();
}

void RemainderDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                              const QModelIndex& index) const {
  QStyledItemDelegate::paint(painter, option, index);
  const QPointF bars = index.data(RemainderModel::remainderRole).toPointF();
  const Colours colours = coloursFor(option.palette);
  const bool chosen = option.state & QStyle::State_Selected;
  const QColor ink = chosen ? option.palette.color(QPalette::HighlightedText) : colours.text;
  const QRectF room = QRectF(option.rect).adjusted(6, 3, -6, -3);
  const double middle = room.center().x(), half = room.width() / 2;
  const auto bar = [&](double share, double top, double height) {
    const double end = middle + share * half;
    return QRectF(QPointF(std::min(middle, end), top), QPointF(std::max(middle, end), top + height));
  };
  painter->save();
  painter->setPen(QPen(chosen ? ink : colours.quiet, 1));
  painter->drawLine(QPointF(middle, option.rect.top()), QPointF(middle, option.rect.bottom()));
  painter->drawRect(bar(bars.x(), room.top(), room.height() / 2 - 1));
  painter->fillRect(bar(bars.y(), room.center().y(), room.height() / 2), chosen ? ink : colours.measured);
  painter->restore();
}

}  // namespace ui
