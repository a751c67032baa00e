// SPDX-License-Identifier: GPL-3.0-or-later
// What the window does with its tables: their menu entries, finding, and files that are dropped on it.
#include <QApplication>
#include <QMenu>
#include <QStackedWidget>
#include <QTableView>
#include <QTableWidget>

#include "ui/campaign/overview_page.h"
#include "ui/main_window.h"
#include "ui/record/record_page.h"
#include "ui/sequence_pane.h"
#include "ui/stock/stock_page.h"
#include "ui/tables/file_drop.h"
#include "ui/tables/find_bar.h"
#include "ui/tables/table_bars.h"
#include "ui/tables/table_tools.h"
#include "ui/wiring/ohmmeter_page.h"
#include "ui/wiring/wiring_page.h"

namespace ui {
namespace {

constexpr int mostPlaces = 2000;

bool isShown(const QWidget& window, const char* table) {
  const auto* view = window.findChild<QTableView*>(table);
  return view && view->isVisible();
}

void choose(QTableView& view, std::size_t row, int column) {
  const QModelIndex cell = view.model()->index(static_cast<int>(row), column);
  if (!cell.isValid()) return;
  view.setCurrentIndex(cell);
  view.scrollTo(cell);
}

}  // namespace

/// The one with the keyboard, else the one of the page.
QTableView* MainWindow::currentTable() {
  for (QWidget* widget = QApplication::focusWidget(); widget && widget != this;
       widget = widget->parentWidget())
    if (auto* view = qobject_cast<QTableView*>(widget)) return view;
  QWidget* shown = m_area->currentWidget();
  if (shown == m_wiring->parentWidget()) return &m_wiring->table();
  if (shown == m_ohmmeter->parentWidget()) return &m_ohmmeter->table();
  if (shown == m_stock->parentWidget()) return &m_stock->table();
  if (shown == m_rows) return &m_sequence->current();
  for (auto* view : shown->findChildren<QTableView*>())
    if (view->isVisible()) return view;
  warn(tr("There is no table on this page whose cells could be copied, pasted or cleared."));
  return nullptr;
}

void MainWindow::withTable(const std::function<void(TableTools&)>& act) {
  if (QTableView* table = currentTable()) act(TableTools::of(*table));
}

void MainWindow::buildTableMenu(QMenu* menu) {
  const auto add = [&](const char* name, const QString& text, const QKeySequence& keys, auto act) {
    addAction(menu, name, text, keys, [this, act] { withTable(act); });
  };
  // Ctrl+C, Ctrl+X, Ctrl+V and Delete belong to the table or field that has the keyboard; here they have
  // none.
  add("cut", tr("Cu&t cells"), {}, [](TableTools& tools) { tools.cut(); });
  addAction(menu, "copy", tr("&Copy cells"), {}, [this] {
    if (m_area->currentWidget() == m_overview->parentWidget()) return m_overview->copyRows();
    withTable([](TableTools& tools) { tools.copy(); });
  });
  add("copyHeadings", tr("Copy cells with &headings"), {},
      [](TableTools& tools) { tools.copy(CopyPart::Chosen, CopyHeadings::With); });
  add("paste", tr("&Paste cells"), {}, [](TableTools& tools) { tools.paste(); });
  add("clear", tr("C&lear cells"), {}, [](TableTools& tools) { tools.clear(); });
  menu->addSeparator();
  add("fillDown", tr("Fill &down"), tr("F8"), [](TableTools& tools) { tools.fill(Fill::Down); });
  add("fillRight", tr("Fill ri&ght"), tr("Shift+F8"), [](TableTools& tools) { tools.fill(Fill::Right); });
  add("fillSeries", tr("Fill &series"), tr("Ctrl+F8"), [](TableTools& tools) { tools.fill(Fill::Series); });
  menu->addSeparator();
  addAction(menu, "selectAllCells", tr("Select &all cells"), {}, [this] {
    if (QTableView* table = currentTable()) table->selectAll();
  });
  addAction(menu, "selectColumn", tr("Select c&olumn"), {}, [this] {
    if (QTableView* table = currentTable()) chooseColumns(*table);
  });
  menu->addSeparator();
  addAction(menu, "find", tr("&Find…"), tr("Ctrl+F"), [this] { TableBars::of(*this).find(); });
  addAction(menu, "findNext", tr("Find &next"), tr("F3"), [this] { TableBars::of(*this).next(); });
  addAction(menu, "findPrevious", tr("Find pre&vious"), tr("Shift+F3"),
            [this] { TableBars::of(*this).previous(); });
  addAction(menu, "filterRows", tr("F&ilter rows…"), tr("Ctrl+Shift+F"), [this] {
    if (QTableView* table = currentTable()) TableBars::of(*this).filter(*table);
  });
  menu->addSeparator();
}

/// After the views and menus are there.
void MainWindow::attachTables() {
  attachToolsToEveryTable();
  TableBars::of(*this).findBar().setBeyond([this](const QString& words) { return placesBeyond(words); },
                                           [this](const DocumentPlace& place) { showPlace(place); });
  auto* drop = new FileDrop(*this);
  connect(drop, &FileDrop::refused, this, &MainWindow::warn);
  connect(drop, &FileDrop::documentDropped, this, [this](const QString& path) {
    if (mayDiscard()) openFile(path);
  });
  connect(drop, &FileDrop::recordingDropped, this, [this](const QString& path) { takeRecording(path); });
  connect(drop, &FileDrop::resistorsDropped, this, [this](const QString& path) {
    showPage(m_stock);
    m_stock->importFrom(path);
  });
  connect(drop, &FileDrop::channelsDropped, this,
          [this](const QString& path) { m_overview->importChannels(path); });
}

/// What the document holds besides what the tables on view show of it.
QList<DocumentMatch> MainWindow::placesBeyond(const QString& words) const {
  using Kind = DocumentPlace::Kind;
  const auto chosen = m_session.selection().channel;
  const bool steps = isShown(*this, "sequenceTable"), shunts = isShown(*this, "shuntTable"),
             pins = isShown(*this, "pinTable"), stock = m_stock->isVisible(), all = m_overview->isVisible(),
             record = m_record->isVisible();
  QList<DocumentMatch> places;
  for (const DocumentMatch& match : findInDocument(m_session.document(), words, mostPlaces)) {
    const bool here = chosen == match.place.channel;
    const Kind kind = match.place.kind;
    const bool onView = (kind == Kind::Step && here && steps) || (kind == Kind::Shunt && here && shunts) ||
                        (kind == Kind::Pin && here && pins) || (kind == Kind::Channel && all) ||
                        (kind == Kind::Remark && record) ||
                        ((kind == Kind::Resistor || kind == Kind::Box) && stock);
    if (!onView) places << match;
  }
  return places;
}

void MainWindow::showPlace(const DocumentPlace& place) {
  using Kind = DocumentPlace::Kind;
  if (place.kind == Kind::Resistor || place.kind == Kind::Box) {
    showPage(m_stock);
    const char* name = place.kind == Kind::Resistor ? "resistorTable" : "boxTable";
    return choose(*m_stock->findChild<QTableView*>(name), place.row, 0);
  }
  m_session.selectChannel(place.channel);
  const bool ofPlan = place.kind == Kind::Step || place.kind == Kind::Shunt;
  if ((ofPlan || place.kind == Kind::Check) && !m_sequence->isVisible()) enlarge(nullptr);
  switch (place.kind) {
    case Kind::Step:
      // A closed check shows the steps that it was judged by.
      if (m_session.checkIsClosed()) m_session.selectCheck(std::nullopt);
      m_sequence->showSteps();
      return choose(m_sequence->steps(), place.row, SequenceModel::Label);
    case Kind::Shunt:
      return m_sequence->showShunt(place.row);
    case Kind::Check:
      return m_session.selectCheck(place.check);
    case Kind::Pin:
      showPage(m_wiring);
      return choose(*m_wiring->findChild<QTableView*>("pinTable"), place.row, 0);
    case Kind::Remark:
      showPage(m_record);
      return m_record->showRemark(place.channel, place.check, place.row);
    default:
      return;
  }
}

}  // namespace ui
