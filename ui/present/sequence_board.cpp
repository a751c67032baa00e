// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/present/sequence_board.h"

#include <QEvent>
#include <QHeaderView>
#include <QStyledItemDelegate>
#include <algorithm>
#include <set>

#include "ui/theme.h"

namespace ui {
namespace {

constexpr double chosenLarger = 1.35;
constexpr int leastLabel = 14;  ///< letters

/// A colour that means something in the program's palette, in that of another.
QColor sameMeaning(const QColor& colour, const Colours& from, const Colours& to) {
  for (const QColor Colours::*part : {&Colours::positive, &Colours::negative, &Colours::pass, &Colours::fail,
                                      &Colours::cannotTell, &Colours::notJudged, &Colours::quiet})
    if (colour == from.*part) return to.*part;
  return to.text;
}

/// Draws the chosen step larger, and all in the colours of the board, which may be dark where the program is
/// light.
class LargeStep : public QStyledItemDelegate {
 public:
  LargeStep(Session& session, QObject* parent) : QStyledItemDelegate(parent), m_session(session) {}

 protected:
  void initStyleOption(QStyleOptionViewItem* option, const QModelIndex& index) const override {
    QStyledItemDelegate::initStyleOption(option, index);
    const QVariant colour = index.data(Qt::ForegroundRole);
    if (colour.canConvert<QColor>())
      option->palette.setColor(QPalette::Text, sameMeaning(colour.value<QColor>(), coloursFor(QPalette()),
                                                           coloursFor(option->widget->palette())));
    // Numbers stand apart from the words beside them.
    if (index.column() == SequenceModel::Number || index.column() == SequenceModel::VerdictColumn)
      option->displayAlignment = Qt::AlignCenter;
    const auto step = m_session.selection().step;
    if (!step || static_cast<int>(*step) != index.row()) return;
    option->font.setPointSizeF(option->font.pointSizeF() * chosenLarger);
    option->font.setBold(true);
    option->fontMetrics = QFontMetrics(option->font);
  }

 private:
  Session& m_session;
};

}  // namespace

SequenceBoard::SequenceBoard(Session& session, QWidget* parent)
    : QTableView(parent), m_session(session), m_model(session) {
  setObjectName("sequenceBoard");
  setAccessibleName(tr("Sequence"));
  setModel(&m_model);
  setItemDelegate(new LargeStep(session, this));
  setEditTriggers(QAbstractItemView::NoEditTriggers);
  setSelectionMode(QAbstractItemView::SingleSelection);
  setSelectionBehavior(QAbstractItemView::SelectRows);
  setShowGrid(false);
  setAlternatingRowColors(true);
  setFrameShape(QFrame::NoFrame);
  setWordWrap(false);
  verticalHeader()->hide();
  horizontalHeader()->setSectionsClickable(false);
  horizontalHeader()->setHighlightSections(false);
  connect(&session, &Session::changed, this, &SequenceBoard::refresh);
  refresh();
}

void SequenceBoard::refresh() {
  using Model = SequenceModel;
  const std::set<int> plan = {Model::Number,    Model::Label,  Model::Closed,  Model::PolarityColumn,
                              Model::Simulated, Model::Output, Model::Expected};
  // The change is what is expected and judged: with the raw reading nobody could follow the deviation.
  const std::set<int> checked = {Model::Number,   Model::Label,  Model::PolarityColumn, Model::Simulated,
                                 Model::Expected, Model::Change, Model::Deviation,      Model::VerdictColumn};
  const std::set<int>& shown = m_session.check() ? checked : plan;
  for (int column = 0; column < m_model.columnCount(); ++column)
    setColumnHidden(column, !shown.contains(column));
  resizeColumnsToContents();
  // Large letters need more between them than the style leaves.
  for (int column = 0; column < m_model.columnCount(); ++column)
    if (!isColumnHidden(column))
      setColumnWidth(column, columnWidth(column) + 2 * fontMetrics().averageCharWidth());
  horizontalHeader()->setSectionResizeMode(QHeaderView::Interactive);
  horizontalHeader()->setSectionResizeMode(Model::Label, QHeaderView::Stretch);
  // Where there is little width the names of the steps go before the finer numbers.
  for (const int column : {Model::Simulated, Model::Deviation, Model::Output})
    if (roomForLabels() < fontMetrics().averageCharWidth() * leastLabel) setColumnHidden(column, true);
  spreadRows();
  const auto step = m_session.selection().step;
  if (!step || static_cast<int>(*step) >= m_model.rowCount()) return clearSelection();
  const QModelIndex chosen = m_model.index(static_cast<int>(*step), Model::Number);
  selectRow(chosen.row());
  scrollTo(chosen, QAbstractItemView::PositionAtCenter);
}

/// What the other columns leave; the header stretches the column only later.
int SequenceBoard::roomForLabels() const {
  int room = viewport()->width();
  for (int column = 0; column < m_model.columnCount(); ++column)
    if (column != SequenceModel::Label && !isColumnHidden(column)) room -= columnWidth(column);
  return room;
}

/// Few steps stand well apart; many keep to what their letters need.
void SequenceBoard::spreadRows() {
  resizeRowsToContents();
  const int spare = viewport()->height() - verticalHeader()->length();
  const int each = m_model.rowCount() > 0 ? spare / m_model.rowCount() : 0;
  for (int row = 0; row < m_model.rowCount(); ++row)
    if (each > 0) setRowHeight(row, rowHeight(row) + std::min(each, rowHeight(row) / 2));
}

void SequenceBoard::changeEvent(QEvent* event) {
  QTableView::changeEvent(event);
  if (event->type() == QEvent::FontChange) refresh();
}

void SequenceBoard::resizeEvent(QResizeEvent* event) {
  QTableView::resizeEvent(event);
  refresh();
}

}  // namespace ui
