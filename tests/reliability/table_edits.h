// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>
#include <QComboBox>
#include <QKeyEvent>
#include <QLineEdit>
#include <QTabWidget>
#include <QTableView>
#include <QTest>
#include <memory>

#include "tests/reliability/random_edits.h"
#include "tests/support/window_walk.h"
#include "ui/campaign/overview_page.h"
#include "ui/sequence_pane.h"
#include "ui/setup_form.h"
#include "ui/stock/stock_page.h"
#include "ui/tables/table_block.h"
#include "ui/wiring/ohmmeter_page.h"
#include "ui/wiring/wiring_page.h"

// Edits as the window makes them: cells, blocks, fields and buttons of the pages, by chance.

namespace reliability {

class TableEdits {
 public:
  TableEdits(ui::Session& session, RandomEdits& chance) : m_chance(chance) {
    m_pages.push_back(std::make_unique<ui::SequencePane>(session));
    m_pages.push_back(std::make_unique<ui::WiringPage>(session));
    m_pages.push_back(std::make_unique<ui::OhmmeterPage>(session));
    m_pages.push_back(std::make_unique<ui::StockPage>(session));
    m_pages.push_back(std::make_unique<ui::OverviewPage>(session));
    m_pages.push_back(std::make_unique<ui::SetupForm>(session));
    // Questions by the way are answered with no.
    QObject::connect(&m_no, &QTimer::timeout, [] {
      if (QWidget* popup = QApplication::activePopupWidget()) popup->close();
      if (auto* asked = qobject_cast<QDialog*>(QApplication::activeModalWidget())) asked->reject();
    });
    m_no.start(2);
    show();
  }

  /// Does one edit on the page in front and tells what it was; the page changes now and then.
  std::string one() {
    if (m_chance.oneIn(30)) show();
    m_chance.chooseAnywhere();
    if (m_chance.oneIn(20)) QApplication::processEvents();
    if (m_chance.oneIn(6)) return button();
    QTableView* table = someTable();
    if (!table) return field();
    switch (m_chance.below(6)) {
      case 0:
        return paste(*table);
      case 1:
        return fill(*table);
      case 2:
        return clear(*table);
      default:
        return cell(*table);
    }
  }

 private:
  QWidget& page() { return *m_pages[m_shown]; }
  void show() {
    page().hide();
    m_shown = m_chance.below(m_pages.size());
    if (auto* tabs = qobject_cast<QTabWidget*>(&page())) tabs->setCurrentIndex(int(m_chance.below(3)));
    page().resize(1000, 700);
    page().show();
    QApplication::processEvents();
  }
  QTableView* someTable() {
    QList<QTableView*> tables;
    for (QTableView* table : page().findChildren<QTableView*>())
      if (table->isVisible() && ui::takerOf(*table) && table->model()->rowCount() > 0) tables << table;
    return tables.isEmpty() ? nullptr : tables[qsizetype(m_chance.below(std::size_t(tables.size())))];
  }
  static std::string in(const char* what, const QWidget& where) {
    return std::string(what) + " " + where.objectName().toStdString();
  }

  /// Mostly what the column could hold: what another row says, or a number like it.
  QString text(const QAbstractItemModel& model, int column) {
    static const QStringList numbers{"350",   "59k9", "-1.5", "0",  "1e3",  "0.1 %", "2 mV/V", "5 V",
                                     "1e308", "nan",  "R1",   "R2", "none", "P+",    "S-",     "2031-01-02"};
    const int row = int(m_chance.below(std::size_t(model.rowCount())));
    const QString there = model.index(row, column).data(Qt::EditRole).toString();
    if (m_chance.oneIn(2)) return there;
    if (m_chance.oneIn(2)) return there + QString::number(m_chance.below(10));
    return numbers[qsizetype(m_chance.below(std::size_t(numbers.size())))];
  }
  QModelIndex someCell(const QTableView& table) {
    const auto* model = table.model();
    return model->index(int(m_chance.below(std::size_t(model->rowCount()))),
                        int(m_chance.below(std::size_t(model->columnCount()))));
  }
  std::string cell(QTableView& table) {
    const QModelIndex at = someCell(table);
    if (at.isValid()) table.model()->setData(at, text(*table.model(), at.column()));
    return in("cell of", table);
  }
  void choose(QTableView& table) {
    const QModelIndex from = someCell(table), to = someCell(table);
    table.selectionModel()->setCurrentIndex(from, QItemSelectionModel::NoUpdate);
    const auto& model = *table.model();
    const QModelIndex first =
        model.index(std::min(from.row(), to.row()), std::min(from.column(), to.column()));
    const QModelIndex last =
        model.index(std::max(from.row(), to.row()), std::max(from.column(), to.column()));
    table.selectionModel()->select(QItemSelection(first, last), QItemSelectionModel::ClearAndSelect);
  }
  std::string paste(QTableView& table) {
    choose(table);
    const auto* model = table.model();
    ui::CellBlock block;
    const int column = table.currentIndex().column();
    for (std::size_t row = 1 + m_chance.below(4); row > 0; --row) {
      QStringList cells;
      for (std::size_t k = 0; k < 1 + m_chance.below(2); ++k)
        cells << text(*model, std::min(column + int(k), model->columnCount() - 1));
      block << cells;
    }
    (void)ui::pasteCells(table, ui::tabbedText(block));
    return in("paste into", table);
  }
  std::string fill(QTableView& table) {
    choose(table);
    constexpr ui::Fill ways[] = {ui::Fill::Down, ui::Fill::Right, ui::Fill::Series};
    (void)ui::fillCells(table, ways[m_chance.below(3)]);
    return in("fill in", table);
  }
  std::string clear(QTableView& table) {
    choose(table);
    (void)ui::clearChosenCells(table);
    return in("clear in", table);
  }

  std::string field() {
    QList<QWidget*> fields;
    for (QWidget* one : page().findChildren<QWidget*>())
      if (one->isVisible() && one->isEnabled() &&
          (qobject_cast<QLineEdit*>(one) || qobject_cast<QComboBox*>(one)))
        fields << one;
    if (fields.isEmpty()) return button();
    QWidget* chosen = fields[qsizetype(m_chance.below(std::size_t(fields.size())))];
    if (auto* box = qobject_cast<QComboBox*>(chosen)) {
      const int item = int(m_chance.below(std::size_t(box->count())));
      box->setCurrentIndex(item);
      emit box->activated(item);
      return "choice of the " + page().objectName().toStdString();
    }
    auto* line = qobject_cast<QLineEdit*>(chosen);
    static const QStringList texts{"350", "120.5", "2.05", "0",    "-1",   "59k",
                                   "",    "1 %",   "5 V",  "spar", "1e400"};
    line->setFocus();
    line->selectAll();
    line->insert(texts[qsizetype(m_chance.below(std::size_t(texts.size())))]);
    QKeyEvent enter(QEvent::KeyPress, Qt::Key_Return, Qt::NoModifier);
    QApplication::sendEvent(line, &enter);
    return "field of the " + page().objectName().toStdString();
  }
  std::string button() {
    QList<QAbstractButton*> buttons;
    for (auto* one : page().findChildren<QAbstractButton*>())
      if (one->isVisible() && one->isEnabled() && !one->objectName().isEmpty() &&
          !one->objectName().startsWith("qt_"))
        buttons << one;
    if (buttons.isEmpty()) return "no button";
    QAbstractButton* chosen = buttons[qsizetype(m_chance.below(std::size_t(buttons.size())))];
    const std::string name = in("button", *chosen);
    chosen->click();
    return name;
  }

  RandomEdits& m_chance;
  std::vector<std::unique_ptr<QWidget>> m_pages;
  std::size_t m_shown = 0;
  QTimer m_no;
};

}  // namespace reliability
