// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stock/stock_page.h"

#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QSplitter>
#include <QToolButton>
#include <algorithm>
#include <array>
#include <numeric>

#include "core/document/apply.h"
#include "ui/choice_delegates.h"
#include "ui/parts.h"
#include "ui/tables/column_room.h"
#include "ui/tables/table_tools.h"
#include "ui/theme.h"

namespace ui {
namespace {

/// The names of the series, with or without a channel.
class SeriesDelegate : public WordDelegate {
 public:
  SeriesDelegate(Session& session, QObject* parent) : WordDelegate(session, seriesNames(), parent) {}
  QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                        const QModelIndex& index) const override {
    QWidget* editor = WordDelegate::createEditor(parent, option, index);
    if (auto* box = qobject_cast<QComboBox*>(editor); box->count() == 0) box->addItems(seriesNames());
    return editor;
  }
};

/// Usual widths in digits; the columns `taking` share what is left.
void setWidths(SheetView* view, std::initializer_list<int> digits, const QList<int>& taking) {
  const int digit = view->fontMetrics().horizontalAdvance('0');
  int column = 0;
  for (const int width : digits) view->setColumnWidth(column++, width * digit + 6);
  new ColumnRoom(*view, taking);
}

/// Where a new row goes: below the chosen one.
std::size_t newRow(const SheetView* view) {
  return static_cast<std::size_t>(view->currentIndex().isValid() ? view->currentIndex().row() + 1
                                                                 : view->model()->rowCount());
}

void choose(SheetView* view, std::size_t row) {
  view->setCurrentIndex(view->model()->index(static_cast<int>(row), 0));
  view->setFocus();
}

}  // namespace

StockPage::StockPage(Session& session, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_resistorModel(session, m_uses),
      m_boxModel(session, m_uses),
      m_seriesModel(session) {
  setObjectName("stockPage");
  setAccessibleName(tr("Resistor stock"));
  auto* lower = new QSplitter(Qt::Horizontal);
  lower->addWidget(boxPart());
  lower->addWidget(seriesPart());
  lower->setSizes({1700, 1000});
  auto* all = new QSplitter(Qt::Vertical);
  all->addWidget(resistorPart());
  all->addWidget(lower);
  all->setSizes({2600, 1000});
  for (QSplitter* splitter : {lower, all}) splitter->setChildrenCollapsible(false);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(4, 4, 4, 4);
  layout->addWidget(head());
  layout->addWidget(all, 1);
  for (const StockSheet* model :
       std::initializer_list<StockSheet*>{&m_resistorModel, &m_boxModel, &m_seriesModel})
    connect(model, &EditableTable::refused, this, &StockPage::refused);
  connect(&session, &Session::changed, this, &StockPage::follow);
  follow();
}

// ---- parts -----------------------------------------------------------------------------------

QToolButton* StockPage::tool(const char* name, const QString& text, const QString& tip,
                             void (StockPage::*act)()) {
  auto* button = toolButton(name, text, tip);
  connect(button, &QToolButton::clicked, this, act);
  return button;
}

SheetView* StockPage::sheet(const char* name, const QString& title, StockSheet& model) {
  auto* view = new SheetView;
  view->setObjectName(name);
  view->setAccessibleName(title);
  view->setModel(&model);
  view->setItemDelegate(new TypedDelegate(this));
  view->setMinimumHeight(4 * view->verticalHeader()->defaultSectionSize());
  connect(view, &SheetView::refused, this, &StockPage::refused);
  sortByHeader(*view);
  return view;
}

QWidget* StockPage::part(const QString& title, SheetView* view, std::initializer_list<QToolButton*> tools) {
  auto* name = embolden(plainLabel(""));
  name->setText(title);
  name->setBuddy(view);
  auto* line = new QHBoxLayout;
  line->addWidget(name, 1);
  for (QToolButton* button : tools) line->addWidget(button);
  auto* part = new QWidget;
  auto* layout = new QVBoxLayout(part);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(4);
  layout->addLayout(line);
  layout->addWidget(view, 1);
  return part;
}

QWidget* StockPage::head() {
  m_summary = plainLabel("stockSummary");
  m_overdue = embolden(plainLabel("stockOverdue"));
  m_overdue->setWordWrap(false);
  auto* head = new QWidget;
  auto* line = new QHBoxLayout(head);
  line->setContentsMargins(0, 0, 0, 0);
  line->addWidget(m_summary, 1);
  line->addWidget(m_overdue);
  line->addWidget(
      tool("updateShunts", tr("Update shunts"),
           tr("Take value, certificate and due date of the stock's resistors into the shunts that "
              "are made of them"),
           &StockPage::updateShunts));
  line->addWidget(tool("importStock", tr("Import…"), tr("Read a list of resistors from a text file (CSV)"),
                       &StockPage::chooseImport));
  line->addWidget(tool("exportStock", tr("Export…"),
                       tr("Write resistors and decade boxes to a text file (CSV); ranges of preferred values "
                          "are not in it"),
                       &StockPage::chooseExport));
  return head;
}

QWidget* StockPage::resistorPart() {
  m_resistors = sheet("resistorTable", tr("Resistors"), m_resistorModel);
  setWidths(m_resistors, {9, 10, 9, 12, 7, 3, 16, 7, 11, 12, 12},
            {ResistorModel::Note, ResistorModel::UsedBy});
  return part(
      tr("Resistors"), m_resistors,
      {tool("addResistor", tr("Add resistor"),
            tr("Add a resistor like the chosen one, with the next id; a pasted list adds its own rows"),
            &StockPage::addResistor),
       tool("removeResistor", tr("Remove"), tr("Remove the chosen resistors; shunts keep their values"),
            &StockPage::removeResistors)});
}

QWidget* StockPage::boxPart() {
  m_boxes = sheet("boxTable", tr("Decade boxes"), m_boxModel);
  setWidths(m_boxes, {8, 33, 8, 9, 16, 8, 10, 10, 10}, {BoxModel::Note, BoxModel::UsedBy});
  return part(
      tr("Decade boxes"), m_boxes,
      {tool("addBox", tr("Add box"), tr("Add a decade box"), &StockPage::addBox),
       tool("removeBox", tr("Remove"), tr("Remove the chosen decade boxes"), &StockPage::removeBoxes)});
}

QWidget* StockPage::seriesPart() {
  m_series = sheet("seriesTable", tr("Preferred values to buy"), m_seriesModel);
  m_series->setItemDelegateForColumn(SeriesModel::Series, new SeriesDelegate(m_session, this));
  setWidths(m_series, {7, 9, 9, 9, 7}, {SeriesModel::Values});
  return part(tr("Preferred values to buy (IEC 60063)"), m_series,
              {tool("addSeries", tr("Add range"), tr("Add a range of a series of preferred values"),
                    &StockPage::addSeries),
               tool("removeSeries", tr("Remove"), tr("Remove the chosen ranges"), &StockPage::removeSeries)});
}

SheetView& StockPage::table() {
  for (SheetView* view : {m_boxes, m_series})
    if (view->hasFocus()) return *view;
  return *m_resistors;
}

// ---- edits -----------------------------------------------------------------------------------

void StockPage::editStock(const QString& label, core::Stock next) {
  m_session.edit(label, core::withStock(m_session.document(), std::move(next)));
}

void StockPage::addResistor() {
  core::Stock next = stock();
  const std::size_t at = newRow(m_resistors);
  core::Resistor added{.id = "R-01", .nominal = core::Resistance(100'000), .tolerance = 1e-3};
  if (at > 0) {
    const core::Resistor& above = next.resistors[at - 1];
    added = {.id = nextId(next, above.id), .nominal = above.nominal, .tolerance = above.tolerance};
    added.rating = above.rating;
    if (above.tolerance == 0) added.tolerance = 1e-3;  // only its own certificate told
  } else if (core::findBox(next, added.id)) {
    added.id = nextId(next, added.id);
  }
  next.resistors.insert(next.resistors.begin() + static_cast<std::ptrdiff_t>(at), added);
  editStock(tr("Add resistor"), std::move(next));
  choose(m_resistors, at);
}

void StockPage::addBox() {
  core::Stock next = stock();
  const std::size_t at = newRow(m_boxes);
  core::DecadeBox added{.id = "D-01", .decades = {}};
  for (const double step : {1e5, 1e4, 1e3, 1e2}) added.decades.push_back({core::Resistance(step), 10});
  if (at > 0) added.id = nextId(next, next.boxes[at - 1].id);
  if (core::findResistor(next, added.id)) added.id = nextId(next, added.id);
  next.boxes.insert(next.boxes.begin() + static_cast<std::ptrdiff_t>(at), added);
  editStock(tr("Add decade box"), std::move(next));
  choose(m_boxes, at);
}

void StockPage::addSeries() {
  core::Stock next = stock();
  const std::size_t at = newRow(m_series);
  core::SeriesRange added;
  added.tolerance = core::usualTolerance(added.series);
  next.series.insert(next.series.begin() + static_cast<std::ptrdiff_t>(at), added);
  editStock(tr("Add preferred values"), std::move(next));
  choose(m_series, at);
}

void StockPage::removeRows(SheetView* view, const QString& label, void (*remove)(core::Stock&, std::size_t)) {
  std::vector<int> rows;
  for (const QModelIndex& cell : chosenCells(*view)) rows.push_back(cell.row());
  std::sort(rows.begin(), rows.end(), std::greater<>());
  rows.erase(std::unique(rows.begin(), rows.end()), rows.end());
  if (rows.empty()) return emit refused(tr("Choose the row to remove."));
  core::Stock next = stock();
  for (const int row : rows) remove(next, static_cast<std::size_t>(row));
  editStock(label, std::move(next));
  const int left = view->model()->rowCount();
  if (left > 0) choose(view, static_cast<std::size_t>(std::min(rows.back(), left - 1)));
}

void StockPage::removeResistors() {
  removeRows(m_resistors, tr("Remove resistors"), [](core::Stock& stock, std::size_t row) {
    stock.resistors.erase(stock.resistors.begin() + static_cast<std::ptrdiff_t>(row));
  });
}

void StockPage::removeBoxes() {
  removeRows(m_boxes, tr("Remove decade boxes"), [](core::Stock& stock, std::size_t row) {
    stock.boxes.erase(stock.boxes.begin() + static_cast<std::ptrdiff_t>(row));
  });
}

void StockPage::removeSeries() {
  removeRows(m_series, tr("Remove preferred values"), [](core::Stock& stock, std::size_t row) {
    stock.series.erase(stock.series.begin() + static_cast<std::ptrdiff_t>(row));
  });
}

void StockPage::updateShunts() {
  std::vector<std::size_t> channels(m_session.document().channels.size());
  std::iota(channels.begin(), channels.end(), std::size_t(0));
  core::Document next = core::withStockValues(m_session.document(), channels);
  if (next == m_session.document())
    return emit refused(tr("No shunt is made of a part of the stock with another value or due date."));
  m_session.edit(tr("Update shunts from stock"), std::move(next));
}

// ---- what is shown -----------------------------------------------------------------------------

void StockPage::follow() {
  const bool sameUses = !m_uses.update(m_session.document());
  const core::Date day = m_session.today();
  if (sameUses && m_shown == m_session.document().stock && m_shownDay == day) return;
  m_shown = m_session.document().stock;
  m_shownDay = day;
  m_resistorModel.refresh();
  m_boxModel.refresh();
  m_seriesModel.refresh();
  showSummary();
}

void StockPage::showSummary() {
  const auto isLate = [&](const auto& item) { return core::isOverdue(item.due, m_shownDay); };
  const auto late = std::count_if(stock().resistors.begin(), stock().resistors.end(), isLate) +
                    std::count_if(stock().boxes.begin(), stock().boxes.end(), isLate);
  m_summary->setText(stock() == core::Stock()
                         ? tr("What there is to make shunts of: add it here, paste it from a spreadsheet, or "
                              "import a file.")
                         : stockWords(stock()));
  m_overdue->setText(tr("%1 overdue").arg(late));
  m_overdue->setVisible(late > 0);
  QPalette palette = m_summary->palette();
  palette.setColor(QPalette::WindowText, coloursFor(palette).fail);
  m_overdue->setPalette(palette);
}

void StockPage::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange && m_overdue) showSummary();
}

}  // namespace ui
