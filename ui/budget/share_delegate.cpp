// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/budget/share_delegate.h"

#include <QApplication>
#include <QPainter>
#include <algorithm>

#include "ui/budget/budget_model.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr int gap_px = 4;

int numberWidth(const QStyleOptionViewItem& option) {
  return option.fontMetrics.horizontalAdvance(QStringLiteral("-000.0 %")) + 2 * gap_px;
}

}  // namespace

QRectF ShareDelegate::barIn(const QRectF& area, double share, double lowest, double highest) {
  const auto at = [&](double value) {
    return area.left() + area.width() * (value - lowest) / (highest - lowest);
  };
  const double from = at(std::min(share, 0.0)), to = at(std::max(share, 0.0));
  return to - from < 0.5 ? QRectF() : QRectF(from, area.top(), to - from, area.height());
}

void ShareDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const {
  QStyleOptionViewItem cell = option;
  initStyleOption(&cell, index);
  const QString number = cell.text;
  cell.text.clear();
  const QStyle* style = cell.widget ? cell.widget->style() : QApplication::style();
  style->drawControl(QStyle::CE_ItemViewItem, &cell, painter, cell.widget);

  const bool chosen = option.state & QStyle::State_Selected;
  const QColor text = option.palette.color(chosen ? QPalette::HighlightedText : QPalette::Text);
  const Colours colours = coloursFor(option.palette);
  const double share = index.data(BudgetModel::ShareRole).toDouble();
  const QRectF area =
      QRectF(option.rect)
          .adjusted(gap_px, 0.28 * option.rect.height(), -numberWidth(option), -0.28 * option.rect.height());
  const double lowest = index.data(BudgetModel::LowestShareRole).toDouble();
  const double highest = index.data(BudgetModel::HighestShareRole).toDouble();
  const QRectF bar = barIn(area, share, lowest, highest);
  painter->save();
  if (!bar.isEmpty()) {
    const QColor colour = chosen ? text : share < 0 ? colours.negative : colours.measured;
    painter->fillRect(bar, QBrush(colour, share < 0 ? Qt::BDiagPattern : Qt::SolidPattern));
    if (share < 0) {
      painter->setPen(colour);
      painter->drawRect(bar);
    }
  }
  if (lowest < 0) {
    const double zero = area.left() - area.width() * lowest / (highest - lowest);
    painter->setPen(chosen ? text : colours.quiet);
    painter->drawLine(QPointF(zero, option.rect.top() + 2), QPointF(zero, option.rect.bottom() - 2));
  }
  painter->setPen(text);
  painter->drawText(option.rect.adjusted(0, 0, -gap_px, 0), Qt::AlignRight | Qt::AlignVCenter, number);
  painter->restore();
}

QSize ShareDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
  return {numberWidth(option) + 48, QStyledItemDelegate::sizeHint(option, index).height()};
}

}  // namespace ui
