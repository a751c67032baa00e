// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/polarity/polarity_model.h"

#include <QFont>
#include <QPainter>

namespace ui {

void PolarityModel::follow() {
  if (rowCount() == 0) return;
  emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
  // What a lead is called may follow the connection.
  emit headerDataChanged(Qt::Horizontal, 0, columnCount() - 1);
  emit headerDataChanged(Qt::Vertical, 0, rowCount() - 1);
}

int PolarityModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(m_shown.count());
}

int PolarityModel::columnCount(const QModelIndex& parent) const { return rowCount(parent); }

QVariant PolarityModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() == index.column()) return {};
  const auto i = static_cast<std::size_t>(index.row()), j = static_cast<std::size_t>(index.column());
  const core::PolarityCell& cell = m_shown.map.at(i, j);
  switch (role) {
    case Qt::DisplayRole:
      return cellText(m_shown, cell);
    case Qt::AccessibleTextRole:
      return cellWords(m_shown, cell);
    case Qt::ToolTipRole:
      return "<qt>" + cellSentence(m_shown, cell).toHtmlEscaped() + "</qt>";
    case Qt::TextAlignmentRole:
      return QVariant(Qt::AlignCenter);
    case StrengthRole:
      return strengthOf(m_shown, cell);
    case PolarityRole:
      return static_cast<int>(polarityOf(m_shown, cell));
    case PresentRole:
      return m_shown.present == m_shown.map.cellOf(i, j);
    case Qt::FontRole: {
      QFont font;
      font.setBold(isOverArm(m_shown.bridge(), cell));
      return font;
    }
    default:
      return {};
  }
}

QVariant PolarityModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (section < 0 || section >= rowCount()) return {};
  const core::Node point = m_shown.map.points[static_cast<std::size_t>(section)];
  const QString name = shortPointText(m_shown.bridge(), point);
  if (role == Qt::DisplayRole) {
    if (orientation == Qt::Vertical) return name;
    return QString(name).replace(' ', '\n');
  }
  if (role == Qt::ToolTipRole || role == Qt::AccessibleTextRole)
    return toQString(core::pointName(m_shown.bridge(), point));
  return {};
}

Qt::ItemFlags PolarityModel::flags(const QModelIndex& index) const {
  if (index.row() == index.column()) return Qt::NoItemFlags;
  return Qt::ItemIsEnabled | Qt::ItemIsSelectable;
}

QColor tintOf(const Colours& colours, core::Polarity polarity, double strength) {
  QColor colour = colourOf(colours, polarity);
  const double most = colours.dark ? 0.45 : 0.35;
  const double share = polarity == core::Polarity::None ? 0 : 0.06 + (most - 0.06) * strength;
  const auto mix = [share](int over, int under) {
    return static_cast<int>(share * over + (1 - share) * under);
  };
  const QColor under = colours.background;
  return {mix(colour.red(), under.red()), mix(colour.green(), under.green()),
          mix(colour.blue(), under.blue())};
}

void PolarityDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                             const QModelIndex& index) const {
  const Colours colours = coloursFor(option.palette);
  const QRect box = option.rect;
  painter->save();
  if (index.row() == index.column()) {
    painter->fillRect(box, colours.background);
    painter->setPen(colours.grid);
    painter->drawLine(box.topLeft(), box.bottomRight());
    painter->restore();
    return;
  }
  const auto polarity = static_cast<core::Polarity>(index.data(PolarityModel::PolarityRole).toInt());
  painter->fillRect(box, tintOf(colours, polarity, index.data(PolarityModel::StrengthRole).toDouble()));
  QFont font = option.font;
  font.setBold(index.data(Qt::FontRole).value<QFont>().bold());
  painter->setFont(font);
  painter->setPen(polarity == core::Polarity::None ? colours.quiet : colours.text);
  painter->drawText(box, Qt::AlignCenter, index.data(Qt::DisplayRole).toString());
  if (index.data(PolarityModel::PresentRole).toBool()) {
    const QPoint corner = box.topRight();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(Qt::NoPen);
    painter->setBrush(colours.selected);
    painter->drawPolygon(QPolygon({corner, corner - QPoint(9, 0), corner + QPoint(0, 9)}));
  }
  if (option.state & QStyle::State_Selected) {
    painter->setRenderHint(QPainter::Antialiasing, false);
    painter->setBrush(Qt::NoBrush);
    painter->setPen(QPen(colours.text, 2));
    painter->drawRect(box.adjusted(1, 1, -1, -1));
  }
  painter->restore();
}

}  // namespace ui
