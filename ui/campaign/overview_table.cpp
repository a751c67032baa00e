// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/campaign/overview_table.h"

#include <QApplication>
#include <QClipboard>
#include <QHeaderView>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QScopedValueRollback>
#include <QStyledItemDelegate>
#include <algorithm>

#include "ui/campaign/overview_model.h"
#include "ui/tables/column_room.h"
#include "ui/tables/table_tools.h"
#include "ui/theme.h"

namespace ui {
namespace {

using Column = OverviewColumn;

/// A bar behind the share of the limit, whose end the limit itself is a stroke in.
class ShareDelegate : public QStyledItemDelegate {
 public:
  using QStyledItemDelegate::QStyledItemDelegate;

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    const QVariant share = index.data(OverviewModel::ShareRole);
    QStyledItemDelegate::paint(painter, option, index);
    if (!share.isValid()) return;
    const Colours colours = coloursFor(option.palette);
    const auto verdict = static_cast<core::Verdict>(index.data(OverviewModel::VerdictRole).toInt());
    const bool chosen = option.state & QStyle::State_Selected;
    // The whole of the bar is one and a half limits; what is beyond is cut, as its number says all.
    constexpr double whole = 1.5;
    const QRectF room = QRectF(option.rect).adjusted(3, option.rect.height() - 5, -3, -2);
    const double width = room.width() * std::min(share.toDouble(), whole) / whole;
    QColor fill = chosen ? option.palette.color(QPalette::HighlightedText) : colourOf(colours, verdict);
    painter->save();
    painter->fillRect(room, chosen ? QColor(fill.red(), fill.green(), fill.blue(), 60) : colours.grid);
    painter->fillRect(QRectF(room.topLeft(), QSizeF(width, room.height())), fill);
    painter->setPen(QPen(chosen ? fill : colours.text, 1));
    const double limit = room.left() + room.width() / whole;
    painter->drawLine(QPointF(limit, room.top() - 2), QPointF(limit, room.bottom() + 1));
    painter->restore();
  }
};

/// As wide as what usually stands there; the user may drag them.
int usualWidth(Column column, const QFontMetrics& metrics) {
  switch (column) {
    case Column::Name:
      return metrics.horizontalAdvance("TP-0000 WW");
    case Column::Group:
      return metrics.horizontalAdvance("left spar cap");
    case Column::Verdict:
      return metrics.horizontalAdvance("not checked WW");
    case Column::Worst:
      return metrics.horizontalAdvance("1,240 %, step 18 W");
    case Column::Gain:
      return metrics.horizontalAdvance("1.1777 ± 0.0043");
    case Column::Change:
      return metrics.horizontalAdvance("changed within margin");
    case Column::GainChange:
      return metrics.horizontalAdvance("+10.00 ± 10.00 % W");
    case Column::Latest:
      return metrics.horizontalAdvance("post-test (open) W");
    case Column::Day:
      return metrics.horizontalAdvance("2026-11-25 W");
    case Column::Remarks:
    case Column::Overdue:
      return metrics.horizontalAdvance("Overdue WWW");
    case Column::Bridge:
      return metrics.horizontalAdvance("Quarter bridge, three-wire W");
    case Column::Steps:
      return metrics.horizontalAdvance("Steps WWW");
    case Column::Status:
      return metrics.horizontalAdvance("post-test: pass, 9 of 9 steps");
    case Column::Note:
      return metrics.horizontalAdvance("a note of usual length is this");
  }
  return 80;
}

}  // namespace

OverviewTable::OverviewTable(OverviewModel& model, QWidget* parent) : QTableView(parent), m_model(model) {
  setObjectName("overviewTable");
  setAccessibleName(tr("All channels"));
  setModel(&model);
  TableTools::of(*this).setOwnCopy([this] { copyRows(); });
  setItemDelegateForColumn(static_cast<int>(Column::Worst), new ShareDelegate(this));
  setSelectionBehavior(QAbstractItemView::SelectRows);
  setSelectionMode(QAbstractItemView::ExtendedSelection);
  setEditTriggers(QAbstractItemView::EditKeyPressed | QAbstractItemView::DoubleClicked);
  setTabKeyNavigation(false);
  setAlternatingRowColors(true);
  setShowGrid(false);
  setWordWrap(false);
  setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
  verticalHeader()->hide();
  verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 9);
  QHeaderView* header = horizontalHeader();
  header->setHighlightSections(false);
  header->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  header->setStretchLastSection(true);
  header->setSectionsMovable(true);
  header->setSortIndicator(static_cast<int>(Column::Verdict), Qt::AscendingOrder);
  setSortingEnabled(true);
  for (int column = 0; column < overviewColumnCount; ++column)
    setColumnWidth(column, usualWidth(static_cast<Column>(column), fontMetrics()));
  new ColumnRoom(*this);
  connect(&model, &QAbstractItemModel::modelReset, this, &OverviewTable::spanHeadings);
  connect(selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this] {
    if (!m_choosing) emit chosen();
  });
}

void OverviewTable::spanHeadings() {
  clearSpans();
  if (m_model.layout().grouping == Grouping::None) return;
  for (int row = 0; row < m_model.rowCount(); ++row)
    if (m_model.isHeading(row)) setSpan(row, 0, 1, overviewColumnCount);
}

std::vector<int> OverviewTable::chosenRows() const {
  std::vector<int> rows;
  for (const QItemSelectionRange& range : selectionModel()->selection())
    for (int row = range.top(); row <= range.bottom(); ++row) rows.push_back(row);
  std::sort(rows.begin(), rows.end());
  rows.erase(std::unique(rows.begin(), rows.end()), rows.end());
  return rows;
}

std::vector<std::size_t> OverviewTable::chosenChannels() const {
  std::vector<std::size_t> channels;
  for (const int row : chosenRows())
    if (const auto channel = m_model.channelAt(row)) channels.push_back(*channel);
  return channels;
}

void OverviewTable::choose(const std::vector<std::size_t>& channels, std::optional<std::size_t> current) {
  const QScopedValueRollback choosing(m_choosing, true);
  setAutoScroll(false);  // whoever looks at the worst is not taken away from them
  std::vector<bool> wanted;
  for (const std::size_t channel : channels) {
    if (channel >= wanted.size()) wanted.resize(channel + 1);
    wanted[channel] = true;
  }
  QItemSelection selection;
  for (int row = 0; row < m_model.rowCount(); ++row) {
    const auto channel = m_model.channelAt(row);
    if (channel && *channel < wanted.size() && wanted[*channel])
      selection.merge({m_model.index(row, 0), m_model.index(row, overviewColumnCount - 1)},
                      QItemSelectionModel::Select);
  }
  const int column = std::max(0, currentIndex().column());
  selectionModel()->select(selection, QItemSelectionModel::ClearAndSelect);
  const int row = current ? m_model.rowOf(*current) : -1;
  if (row >= 0) selectionModel()->setCurrentIndex(m_model.index(row, column), QItemSelectionModel::NoUpdate);
  setAutoScroll(true);
}

void OverviewTable::copyRows() {
  const QList<QStringList> cells = m_model.cells(chosenRows());
  if (cells.size() < 2) return;
  QApplication::clipboard()->setMimeData(mimeOf(cells, true));
  emit copied(static_cast<int>(cells.size()) - 1);
}

bool OverviewTable::edit(const QModelIndex& index, EditTrigger trigger, QEvent* event) {
  const bool started = QTableView::edit(index, trigger, event);
  if (state() == QAbstractItemView::EditingState) m_model.hold(true);
  return started;
}

void OverviewTable::closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) {
  QTableView::closeEditor(editor, hint);
  if (state() != QAbstractItemView::EditingState) m_model.hold(false);
}

void OverviewTable::keyPressEvent(QKeyEvent* event) {
  if (state() == QAbstractItemView::EditingState) return QTableView::keyPressEvent(event);
  const int row = currentIndex().row();
  const int key = event->key();
  const bool heading = row >= 0 && m_model.isHeading(row);
  const bool enter = key == Qt::Key_Return || key == Qt::Key_Enter;
  const bool fold = heading && ((key == Qt::Key_Left && !m_model.isCollapsed(row)) ||
                                (key == Qt::Key_Right && m_model.isCollapsed(row)) || key == Qt::Key_Space);
  if (fold || (heading && enter)) return m_model.toggleGroup(row);
  if (enter && row >= 0) return emit viewsWanted();
  QTableView::keyPressEvent(event);
}

void OverviewTable::mousePressEvent(QMouseEvent* event) {
  QTableView::mousePressEvent(event);
  const QModelIndex at = indexAt(event->position().toPoint());
  constexpr int mark_px = 24;
  if (event->button() == Qt::LeftButton && at.isValid() && m_model.isHeading(at.row()) &&
      event->position().x() < mark_px)
    m_model.toggleGroup(at.row());
}

void OverviewTable::mouseDoubleClickEvent(QMouseEvent* event) {
  const QModelIndex at = indexAt(event->position().toPoint());
  if (!at.isValid() || event->button() != Qt::LeftButton) return QTableView::mouseDoubleClickEvent(event);
  if (m_model.isHeading(at.row())) return m_model.toggleGroup(at.row());
  const auto column = static_cast<Column>(at.column());
  if (column == Column::Group || column == Column::Note) return QTableView::mouseDoubleClickEvent(event);
  setCurrentIndex(at);
  emit viewsWanted();
}

}  // namespace ui
