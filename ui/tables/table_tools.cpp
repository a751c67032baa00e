// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/tables/table_tools.h"

#include <QApplication>
#include <QClipboard>
#include <QContextMenuEvent>
#include <QHeaderView>
#include <QKeyEvent>
#include <QMenu>
#include <QMetaMethod>
#include <QTableView>

#include "ui/state_file.h"
#include "ui/tables/block_taker.h"
#include "ui/tables/row_order.h"
#include "ui/tables/table_bars.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr int wideColumns = 6;  ///< from so many on, columns can be left out

void attachTo(QObject* widget) {
  auto* view = qobject_cast<QTableView*>(widget);
  if (view && !view->inherits("QCalendarView")) TableTools::of(*view);
}

/// Attaches tools to each table view that is polished, which Qt does before it is shown first.
class EveryTable : public QObject {
 public:
  using QObject::QObject;
  bool eventFilter(QObject* watched, QEvent* event) override {
    if (event->type() == QEvent::Polish) attachTo(watched);
    return false;
  }
};

QAction* addTo(QMenu& menu, const char* name, const QString& text, std::function<void()> act) {
  QAction* action = menu.addAction(text, &menu, std::move(act));
  action->setObjectName(name);
  return action;
}

bool canChooseMany(const QTableView& view) {
  return view.selectionMode() != QAbstractItemView::SingleSelection &&
         view.selectionMode() != QAbstractItemView::NoSelection;
}

}  // namespace

TableTools& TableTools::of(QTableView& view) {
  if (auto* tools = view.findChild<TableTools*>(QString(), Qt::FindDirectChildrenOnly)) return *tools;
  return *new TableTools(view);
}

TableTools::TableTools(QTableView& view) : QObject(&view), m_view(view), m_rows(new RowOrder(view)) {
  setObjectName("tableTools");
  view.installEventFilter(this);
  view.viewport()->installEventFilter(this);
  QHeaderView* header = view.horizontalHeader();
  header->setContextMenuPolicy(Qt::CustomContextMenu);
  connect(header, &QWidget::customContextMenuRequested, this, &TableTools::showHeaderMenu);
  connect(header, &QHeaderView::sectionResized, this, [this](int column, int, int width) {
    // By the user's hand only: everything else that resizes columns does so again by itself.
    const QHeaderView& across = *m_view.horizontalHeader();
    const bool dragged = across.underMouse() && QApplication::mouseButtons() & Qt::LeftButton;
    if (m_restored && dragged && across.sectionResizeMode(column) == QHeaderView::Interactive)
      keepWidth(column, width);
  });
}

void TableTools::pass(const core::Result<void>& done, const QString& what) {
  if (done) return;
  core::Error error = done.error();
  if (error.where.empty()) error.where = what.toStdString();
  emit refused(toText(error));
}

void TableTools::copy(CopyPart part, CopyHeadings headings) { copyCells(m_view, part, headings); }

void TableTools::cut() {
  if (!takerOf(m_view)) return pass(clearChosenCells(m_view), tr("cut"));
  copy();
  pass(clearChosenCells(m_view), tr("cut"));
}

void TableTools::paste() { pass(pasteCells(m_view, QApplication::clipboard()->text()), tr("paste")); }
void TableTools::clear() { pass(clearChosenCells(m_view), tr("clear")); }
void TableTools::fill(Fill how) { pass(fillCells(m_view, how), tr("fill")); }

void TableTools::fillMenu(QMenu& menu) {
  addTo(menu, "tableCopy",
        tr("&Copy") + "\t" + QKeySequence(QKeySequence::Copy).toString(QKeySequence::NativeText),
        [this] { m_ownCopy ? m_ownCopy() : copy(); });
  addTo(menu, "tableCopyHeadings", tr("Copy with &headings"),
        [this] { copy(CopyPart::Chosen, CopyHeadings::With); });
  addTo(menu, "tableCopyAll", tr("Copy the &whole table with headings"),
        [this] { copy(CopyPart::All, CopyHeadings::With); });
  if (takerOf(m_view)) {
    menu.addSeparator();
    addTo(menu, "tableCut", tr("C&ut"), [this] { cut(); });
    addTo(menu, "tablePaste", tr("&Paste"), [this] { paste(); });
    addTo(menu, "tableClear", tr("C&lear"), [this] { clear(); });
    menu.addSeparator();
    addTo(menu, "tableFillDown", tr("Fill &down"), [this] { fill(Fill::Down); });
    addTo(menu, "tableFillRight", tr("Fill &right"), [this] { fill(Fill::Right); });
    addTo(menu, "tableFillSeries", tr("Fill &series"), [this] { fill(Fill::Series); });
  }
  menu.addSeparator();
  if (canChooseMany(m_view)) {
    addTo(menu, "tableAll", tr("Select &all"), [this] { m_view.selectAll(); });
    addTo(menu, "tableColumn", tr("Select c&olumn"), [this] { chooseColumns(m_view); });
    menu.addSeparator();
  }
  addTo(menu, "tableFind", tr("&Find…"), [this] { TableBars::of(m_view).find(); });
  addTo(menu, "tableFilter", tr("F&ilter rows…"), [this] { TableBars::of(m_view).filter(m_view); });
}

bool TableTools::takesKey(const QKeyEvent& event) {
  // Not while a cell is edited: the keys are the editor's.
  if (event.matches(QKeySequence::Copy)) {
    m_ownCopy ? m_ownCopy() : copy();
    return true;
  }
  const bool columnKey = event.key() == Qt::Key_Space && event.modifiers() == Qt::ControlModifier;
  if (columnKey && canChooseMany(m_view)) {
    chooseColumns(m_view);
    return true;
  }
  if (event.matches(QKeySequence::Find)) {
    TableBars::of(m_view).find();
    return true;
  }
  if (event.key() == Qt::Key_F && event.modifiers() == (Qt::ControlModifier | Qt::ShiftModifier)) {
    TableBars::of(m_view).filter(m_view);
    return true;
  }
  // A table that is worked out says so where it takes part in the refusals of a page.
  if (!takerOf(m_view) && !isSignalConnected(QMetaMethod::fromSignal(&TableTools::refused))) return false;
  if (event.matches(QKeySequence::Cut)) return cut(), true;
  if (event.matches(QKeySequence::Paste)) return paste(), true;
  const bool plain = !(event.modifiers() & ~Qt::KeypadModifier);
  if (plain && (event.key() == Qt::Key_Delete || event.key() == Qt::Key_Backspace)) return clear(), true;
  return false;
}

bool TableTools::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Show && watched == &m_view) restoreColumns();
  if (event->type() == QEvent::KeyPress && watched == &m_view)
    return takesKey(*static_cast<QKeyEvent*>(event));
  if (event->type() == QEvent::ContextMenu && m_view.contextMenuPolicy() == Qt::DefaultContextMenu) {
    const auto* wanted = static_cast<QContextMenuEvent*>(event);
    const QPoint inside = m_view.viewport()->rect().center();
    showMenu(wanted->reason() == QContextMenuEvent::Keyboard ? m_view.viewport()->mapToGlobal(inside)
                                                             : wanted->globalPos());
    return true;
  }
  return QObject::eventFilter(watched, event);
}

void TableTools::showMenu(const QPoint& at) {
  QMenu menu(&m_view);
  menu.setObjectName("tableMenu");
  fillMenu(menu);
  menu.exec(at);
}

// ---- columns ---------------------------------------------------------------------------------

QString TableTools::place(const char* what) const {
  return QStringLiteral("tables/") + m_view.objectName() + "/" + what;
}

void TableTools::showHeaderMenu(const QPoint& at) {
  QMenu menu(&m_view);
  menu.setObjectName("columnMenu");
  addTo(menu, "fitColumns", tr("&Fit the columns to what they hold"),
        [this] { m_view.resizeColumnsToContents(); });
  const int columns = m_view.model()->columnCount();
  if (columns >= wideColumns && !m_view.objectName().isEmpty()) {
    addTo(menu, "allColumns", tr("Show &all columns"), [this, columns] {
      for (int column = 0; column < columns; ++column) m_view.setColumnHidden(column, false);
      keepHidden();
    });
    menu.addSeparator();
    for (int column = 0; column < columns; ++column) {
      const QString name =
          m_view.model()->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString().replace('\n', ' ');
      QAction* action = menu.addAction(QString(name).replace('&', "&&"));
      action->setCheckable(true);
      action->setChecked(!m_view.isColumnHidden(column));
      // One stays, or there would be no header to bring the others back.
      action->setEnabled(m_view.isColumnHidden(column) || shownColumns(m_view).size() > 1);
      connect(action, &QAction::toggled, this, [this, column](bool shown) {
        m_view.setColumnHidden(column, !shown);
        keepHidden();
      });
    }
  }
  menu.exec(m_view.horizontalHeader()->mapToGlobal(at));
}

void TableTools::keepHidden() {
  QStringList hidden;
  for (int column = 0; column < m_view.model()->columnCount(); ++column)
    if (m_view.isColumnHidden(column)) hidden << QString::number(column);
  stateFile().setValue(place("hidden"), hidden);
}

void TableTools::keepWidth(int column, int width) {
  if (!m_view.objectName().isEmpty() && width > 0)
    stateFile().setValue(place("width") + QString::number(column), width);
}

/// Once, when the view has everything else: what the user left out and how wide columns were drawn.
void TableTools::restoreColumns() {
  if (m_restored || !m_view.model()) return;
  m_restored = true;
  if (m_view.objectName().isEmpty()) return;
  const QSettings state = stateFile();
  for (const QString& column : state.value(place("hidden")).toStringList())
    if (const int at = column.toInt();
        at < m_view.model()->columnCount() - 1 || shownColumns(m_view).size() > 1)
      m_view.setColumnHidden(at, true);
  for (int column = 0; column < m_view.model()->columnCount(); ++column)
    if (const int width = state.value(place("width") + QString::number(column)).toInt(); width > 0)
      m_view.setColumnWidth(column, width);
}

void attachToolsToEveryTable() {
  static EveryTable* every = nullptr;
  // Some are polished as soon as they are asked for their size.
  for (QWidget* widget : QApplication::allWidgets()) attachTo(widget);
  if (every) return;
  every = new EveryTable(qApp);
  qApp->installEventFilter(every);
  QObject::connect(every, &QObject::destroyed, qApp, [] { every = nullptr; });
}

void sortByHeader(QTableView& view) { TableTools::of(view).rows().sortByHeader(); }

}  // namespace ui
