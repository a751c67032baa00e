// SPDX-License-Identifier: GPL-3.0-or-later
// What tests/app/spreadsheet_test.py needs of the window: what a table puts on the clipboard, and what it
// makes of the text that a spreadsheet gives. All in and out as JSON.
//
//   table_clipboard copy LOCALE           the resistors of a stock with awkward texts: text, html, cells
//   table_clipboard paste LOCALE FILE     pastes the text of FILE into an empty stock: cells, what was
//   refused,
//                                         and the cells that the text was taken for
#include <QApplication>
#include <QClipboard>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QMimeData>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <clocale>
#include <cstdio>

#include "ui/sheet_view.h"
#include "ui/stock/stock_page.h"
#include "ui/tables/table_tools.h"

namespace {

core::Stock awkwardStock() {
  const std::string notes[] = {"plain", "a tab\there", "two\nlines", "5\" plug",          "\"in quotes\"",
                               "=1+1",  "@home",       "+x",         "semi;colon, comma", "Ω µ ε – ü 零"};
  core::Stock stock;
  for (const std::string& note : notes) {
    core::Resistor one{.id = "S-" + std::to_string(101 + stock.resistors.size()),
                       .nominal = core::Resistance(100'000.0 / 3.0 * double(stock.resistors.size() + 1)),
                       .tolerance = 1e-3};
    one.certificate = core::Certificate{.value = one.nominal, .expanded = core::Resistance(1.0 / 7.0)};
    one.certificate->coverageFactor = 2.0 + double(stock.resistors.size()) / 3.0;
    one.note = note;
    stock.resistors.push_back(one);
  }
  return stock;
}

QJsonArray rowsOf(const ui::CellBlock& block) {
  QJsonArray rows;
  for (const QStringList& cells : block) rows << QJsonArray::fromStringList(cells);
  return rows;
}

QJsonArray cellsOf(const QAbstractItemModel& model) {
  QJsonArray rows;
  for (int row = 0; row < model.rowCount(); ++row) {
    QJsonArray cells;
    for (int column = 0; column < model.columnCount(); ++column)
      cells << model.index(row, column).data(Qt::EditRole).toString();
    rows << cells;
  }
  return rows;
}

void print(const QJsonObject& object) {
  std::puts(QJsonDocument(object).toJson(QJsonDocument::Compact).constData());
}

}  // namespace

int main(int argc, char** argv) {
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  const QTemporaryDir state;
  qputenv("XDG_STATE_HOME", state.path().toUtf8());
  QApplication app(argc, argv);
  std::setlocale(LC_NUMERIC, "C");
  const QStringList words = QApplication::arguments();
  if (words.size() < 3) return 2;
  QLocale::setDefault(QLocale(words[2]));
  core::Document document;
  const bool copying = words[1] == "copy";
  if (copying) document.stock = std::make_shared<const core::Stock>(awkwardStock());
  ui::Session session(document);
  ui::StockPage page(session);
  page.show();
  auto& table = *page.findChild<ui::SheetView*>("resistorTable");
  ui::TableTools& tools = ui::TableTools::of(table);
  if (copying) {
    tools.copy(ui::CopyPart::All, ui::CopyHeadings::With);
    const QMimeData* data = QApplication::clipboard()->mimeData();
    print({{"text", data->text()}, {"html", data->html()}, {"cells", cellsOf(*table.model())}});
    return 0;
  }
  QFile file(words.value(3));
  if (!file.open(QIODevice::ReadOnly)) return 2;
  const QString text = QString::fromUtf8(file.readAll());
  QApplication::clipboard()->setText(text);
  const QSignalSpy refused(&page, &ui::StockPage::refused);
  tools.paste();
  print({{"cells", cellsOf(*table.model())},
         {"taken", rowsOf(ui::cellsOfTabbedText(text))},
         {"refused", refused.isEmpty() ? QString() : refused.first().first().toString()}});
  return 0;
}
