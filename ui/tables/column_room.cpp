// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/tables/column_room.h"

#include <QEvent>
#include <QHeaderView>
#include <QTableView>
#include <algorithm>

namespace ui {
namespace {

constexpr int rowsLookedAt = 200;  // numbers of a column are much alike; a table may have many thousands
constexpr int cellPadding_px = 10, headingPadding_px = 12, sortMark_px = 12;
constexpr int mostLetters = 30, leastLetters = 11;  ///< of words; of a column that takes what room is left

int widthOfLines(const QFontMetrics& metrics, const QString& text) {
  int widest = 0;
  for (const QString& line : text.split('\n')) widest = std::max(widest, metrics.horizontalAdvance(line));
  return widest;
}

bool isNumberCell(const QModelIndex& cell) {
  return (cell.data(Qt::TextAlignmentRole).toInt() & Qt::AlignRight) != 0;
}

}  // namespace

ColumnRoom::ColumnRoom(QTableView& view, QList<int> taking)
    : QObject(&view), m_view(view), m_taking(std::move(taking)) {
  m_soon.setSingleShot(true);
  m_soon.setInterval(0);
  connect(&m_soon, &QTimer::timeout, this, &ColumnRoom::grow);
  const auto look = [this] { m_soon.start(); };
  const QAbstractItemModel* model = view.model();
  connect(model, &QAbstractItemModel::dataChanged, this, look);
  connect(model, &QAbstractItemModel::headerDataChanged, this, look);
  connect(model, &QAbstractItemModel::modelReset, this, look);
  connect(model, &QAbstractItemModel::rowsInserted, this, look);
  QHeaderView* header = view.horizontalHeader();
  header->setMinimumSectionSize(24);
  for (const int column : m_taking) header->setSectionResizeMode(column, QHeaderView::Fixed);
  connect(header, &QHeaderView::sectionResized, this, [this](int column) {
    if (!m_taking.contains(column)) share();
  });
  view.viewport()->installEventFilter(this);
  view.installEventFilter(this);
  look();
}

bool ColumnRoom::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Resize && watched == m_view.viewport()) share();
  if (event->type() == QEvent::FontChange && watched == &m_view) m_soon.start();
  return QObject::eventFilter(watched, event);
}

int ColumnRoom::needOf(int column) const {
  const QAbstractItemModel* model = m_view.model();
  const QHeaderView* header = m_view.horizontalHeader();
  const int heading =
      header->isHidden()
          ? 0
          : widthOfLines(header->fontMetrics(), model->headerData(column, Qt::Horizontal).toString()) +
                headingPadding_px + (header->isSortIndicatorShown() ? sortMark_px : 0);
  const int most = m_view.fontMetrics().horizontalAdvance('0') * mostLetters;
  int cells = 0;
  for (int row = 0; row < std::min(model->rowCount(), rowsLookedAt); ++row) {
    if (m_view.isRowHidden(row) || m_view.columnSpan(row, column) > 1) continue;
    const QModelIndex cell = model->index(row, column);
    const QVariant own = cell.data(Qt::FontRole);
    const QFontMetrics metrics = own.isValid() ? QFontMetrics(own.value<QFont>()) : m_view.fontMetrics();
    const int width = widthOfLines(metrics, cell.data().toString()) + cellPadding_px;
    cells = std::max(cells, isNumberCell(cell) ? width : std::min(width, most));
  }
  return std::max(heading, cells);
}

void ColumnRoom::grow() {
  const int columns = m_view.model()->columnCount();
  m_needs.resize(columns);
  for (int column = 0; column < columns; ++column) {
    const int need = needOf(column);
    const bool more = need > m_needs[column];
    m_needs[column] = need;
    if (more && !m_taking.contains(column) && !m_view.isColumnHidden(column) &&
        m_view.columnWidth(column) < need)
      m_view.setColumnWidth(column, need);
  }
  share();
}

void ColumnRoom::share() {
  if (m_taking.isEmpty() || m_needs.isEmpty()) return;
  int left = m_view.viewport()->width();
  QList<int> sharing;
  for (int column = 0; column < m_view.model()->columnCount(); ++column) {
    if (m_view.isColumnHidden(column)) continue;
    m_taking.contains(column) ? sharing.append(column) : void(left -= m_view.columnWidth(column));
  }
  const int least = m_view.fontMetrics().horizontalAdvance('0') * leastLetters;
  for (qsizetype done = 0; done < sharing.size(); ++done) {
    const int column = sharing[done], others = static_cast<int>(sharing.size() - done);
    const int width = std::max(left / others, std::min(m_needs.value(column), least));
    m_view.setColumnWidth(column, width);
    left -= width;
  }
}

}  // namespace ui
