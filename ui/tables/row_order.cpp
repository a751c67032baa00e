// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/tables/row_order.h"

#include <QApplication>
#include <QEvent>
#include <QHeaderView>
#include <QSignalBlocker>
#include <QTableView>
#include <algorithm>
#include <numeric>
#include <utility>

#include "ui/tables/cell_value.h"

namespace ui {
namespace {

CellKey keyAt(const QAbstractItemModel& model, int row, int column) {
  const QModelIndex cell = model.index(row, column);
  const QVariant full = cell.data(Qt::EditRole);
  return keyOfCell((full.isValid() ? full : cell.data(Qt::DisplayRole)).toString());
}

/// The model's rows in the order wanted; those that are empty last.
std::vector<int> sortedRows(const QAbstractItemModel& model, int column, Qt::SortOrder order) {
  std::vector<int> rows(static_cast<std::size_t>(model.rowCount()));
  std::iota(rows.begin(), rows.end(), 0);
  if (column < 0) return rows;
  std::vector<CellKey> keys;
  for (const int row : rows) keys.push_back(keyAt(model, row, column));
  std::stable_sort(rows.begin(), rows.end(), [&](int left, int right) {
    const CellKey &a = keys[static_cast<std::size_t>(left)], &b = keys[static_cast<std::size_t>(right)];
    if (a.kind == CellKey::Kind::Empty || b.kind == CellKey::Kind::Empty) return a.kind < b.kind;
    const int way = compareCells(a, b);
    return order == Qt::AscendingOrder ? way < 0 : way > 0;
  });
  return rows;
}

}  // namespace

RowOrder::RowOrder(QTableView& view) : QObject(&view), m_view(view) {
  setObjectName("rowOrder");
  m_later.setSingleShot(true);
  connect(&m_later, &QTimer::timeout, this, &RowOrder::rowsChanged);
  view.installEventFilter(this);
}

void RowOrder::sortByHeader() {
  if (m_sortable) return;
  m_sortable = true;
  QHeaderView* header = m_view.horizontalHeader();
  // Else the click would choose the whole column, too.
  disconnect(header, SIGNAL(sectionPressed(int)), &m_view, nullptr);
  disconnect(header, SIGNAL(sectionEntered(int)), &m_view, nullptr);
  connect(header, &QHeaderView::sectionClicked, this, &RowOrder::headerClicked);
}

void RowOrder::headerClicked(int column) {
  if (m_column != column) return sortBy(column, Qt::AscendingOrder);
  if (m_order == Qt::AscendingOrder) return sortBy(column, Qt::DescendingOrder);
  dropSort();
}

void RowOrder::sortBy(int column, Qt::SortOrder order) {
  watchModel();
  m_column = column;
  m_order = order;
  m_view.horizontalHeader()->setSortIndicator(column, order);
  m_view.horizontalHeader()->setSortIndicatorShown(true);
  arrange();
}

void RowOrder::dropSort() {
  m_column = -1;
  m_view.horizontalHeader()->setSortIndicatorShown(false);
  arrange();
}

void RowOrder::setWords(const QString& words) {
  if (m_words == words) return;
  watchModel();
  m_words = words;
  filter();
}

/// A view may get its model, or another, after this was made.
void RowOrder::watchModel() {
  QAbstractItemModel* model = m_view.model();
  if (m_model == model) return;
  if (m_model) m_model->disconnect(this);
  m_model = model;
  if (!model) return;
  const auto later = [this] { m_later.start(0); };
  // Rows are about to have other numbers: those left out are told anew afterwards.
  connect(model, &QAbstractItemModel::modelAboutToBeReset, this, &RowOrder::showAll);
  connect(model, &QAbstractItemModel::layoutAboutToBeChanged, this, &RowOrder::showAll);
  connect(model, &QAbstractItemModel::rowsAboutToBeInserted, this, &RowOrder::showAll);
  connect(model, &QAbstractItemModel::rowsAboutToBeRemoved, this, &RowOrder::showAll);
  connect(model, &QAbstractItemModel::modelReset, this, later);
  connect(model, &QAbstractItemModel::layoutChanged, this, later);
  connect(model, &QAbstractItemModel::rowsInserted, this, later);
  connect(model, &QAbstractItemModel::rowsRemoved, this, later);
  connect(model, &QAbstractItemModel::dataChanged, this, &RowOrder::cellsChanged);
}

bool RowOrder::hasKeyboard() const {
  const QWidget* focused = QApplication::focusWidget();
  return focused && (focused == &m_view || m_view.isAncestorOf(focused));
}

void RowOrder::cellsChanged() {
  if (hasKeyboard())
    m_late = true;
  else
    m_later.start(0);
}

void RowOrder::rowsChanged() {
  m_late = false;
  if (m_column >= 0) arrange();
  if (!m_words.isEmpty()) filter();
}

bool RowOrder::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::FocusOut && m_late && !hasKeyboard()) m_later.start(0);
  return QObject::eventFilter(watched, event);
}

void RowOrder::arrange() {
  QHeaderView* header = m_view.verticalHeader();
  const std::vector<int> rows = sortedRows(*m_view.model(), m_column, m_order);
  {
    const QSignalBlocker quiet(header);  // the view draws once, not once a row
    for (std::size_t visual = 0; visual < rows.size(); ++visual) {
      const int present = header->visualIndex(rows[visual]);
      if (present != static_cast<int>(visual)) header->moveSection(present, static_cast<int>(visual));
    }
  }
  m_view.viewport()->update();
  if (m_view.currentIndex().isValid()) m_view.scrollTo(m_view.currentIndex());
  emit changed();
}

bool RowOrder::holdsWords(int row, const QStringList& words) const {
  QString all;
  for (int column = 0; column < m_model->columnCount(); ++column)
    all += m_model->index(row, column).data(Qt::DisplayRole).toString() + '\n';
  return std::all_of(words.begin(), words.end(),
                     [&](const QString& word) { return all.contains(word, Qt::CaseInsensitive); });
}

void RowOrder::showAll() {
  // A table that goes takes its model with it, which tells of its end: by then there is no view to show rows.
  if (!qobject_cast<QTableView*>(parent())) return;
  for (const int row : std::exchange(m_leftOut, {})) m_view.setRowHidden(row, false);
}

/// Rows that something else hides are left alone.
void RowOrder::filter() {
  const QStringList words = m_words.split(' ', Qt::SkipEmptyParts);
  const QSet<int> before = std::exchange(m_leftOut, {});
  for (int row = 0; row < m_model->rowCount(); ++row) {
    if (m_view.isRowHidden(row) && !before.contains(row)) continue;
    const bool leaveOut = !words.isEmpty() && !holdsWords(row, words);
    if (leaveOut) m_leftOut.insert(row);
    if (leaveOut != m_view.isRowHidden(row)) m_view.setRowHidden(row, leaveOut);
  }
  // What is chosen must be on view, since it is what gets edited.
  if (m_view.currentIndex().isValid() && m_leftOut.contains(m_view.currentIndex().row()))
    m_view.selectionModel()->clear();
  emit changed();
}

}  // namespace ui
