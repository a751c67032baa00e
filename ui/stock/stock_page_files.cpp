// SPDX-License-Identifier: GPL-3.0-or-later
// Lists of resistors from and to files.
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QPushButton>
#include <algorithm>

#include "core/stock/delimited_rows.h"
#include "core/stock/stock_file.h"
#include "core/units/language.h"
#include "ui/safe_file.h"
#include "ui/stock/stock_page.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr qint64 mostBytes = qint64{16} * 1024 * 1024;  ///< 10,000 rows of more than 1000 bytes

QString fileFilter() { return StockPage::tr("Lists of resistors (*.csv *.tsv *.txt);;All files (*)"); }

std::string_view textOf(const QByteArray& bytes) {
  return {bytes.constData(), static_cast<std::size_t>(bytes.size())};
}

/// `error` of the file at `path`.
core::Error inFile(const QString& path, core::Error error) {
  const std::string name = QFileInfo(path).fileName().toStdString();
  error.where = error.where.empty() ? name : name + ", " + error.where;
  return error;
}

/// "line 7, id", or only the id when it is written otherwise in the file.
std::string placeOfId(std::string_view text, const std::string& id) {
  const auto rows = core::delimitedRows(text, text.size() + 1);
  if (!rows || rows->empty()) return id;
  const std::vector<std::string>& names = rows->front().cells;
  const auto column = static_cast<std::size_t>(
      std::find_if(names.begin(), names.end(),
                   [](const std::string& name) { return toQString(name).toLower() == "id"; }) -
      names.begin());
  for (std::size_t k = 1; k < rows->size(); ++k) {
    const core::Row& row = (*rows)[k];
    if (column < row.cells.size() && row.cells[column] == id)
      return core::say("line {1}, {2}", {std::to_string(row.line), "id"});
  }
  return id;
}

/// The first id of `read` that `stock` has too.
std::optional<std::string> idInBoth(const core::Stock& stock, const core::Stock& read) {
  const auto taken = [&](const auto& item) {
    return core::findResistor(stock, item.id) || core::findBox(stock, item.id);
  };
  const auto resistor = std::find_if(read.resistors.begin(), read.resistors.end(), taken);
  if (resistor != read.resistors.end()) return resistor->id;
  const auto box = std::find_if(read.boxes.begin(), read.boxes.end(), taken);
  if (box != read.boxes.end()) return box->id;
  return std::nullopt;
}

}  // namespace

void StockPage::chooseImport() {
  const QString path = QFileDialog::getOpenFileName(this, tr("Import resistors"), QString(), fileFilter());
  if (!path.isEmpty()) importFrom(path);
}

void StockPage::chooseExport() {
  if (stock().resistors.empty() && stock().boxes.empty())
    return emit refused(tr("There is nothing to export: the stock has no resistors and no decade boxes."));
  const QString path = QFileDialog::getSaveFileName(this, tr("Export resistors"),
                                                    QDir::home().filePath("stock.csv"), fileFilter());
  if (!path.isEmpty()) exportTo(path);
}

StockPage::Import StockPage::askHow(const core::Stock& read) {
  QMessageBox box(this);
  box.setObjectName("importQuestion");
  box.setIcon(QMessageBox::Question);
  box.setWindowTitle(tr("Import resistors"));
  box.setTextFormat(Qt::PlainText);
  box.setText(tr("The file has %1.").arg(stockWords(read)));
  box.setInformativeText(tr("The stock has %1. Shall the file replace the resistors and decade boxes that "
                            "are there, or be added to them?")
                             .arg(stockWords(stock())));
  const auto* replace = box.addButton(tr("&Replace"), QMessageBox::AcceptRole);
  auto* append = box.addButton(tr("&Add"), QMessageBox::AcceptRole);
  box.addButton(QMessageBox::Cancel);
  box.setDefaultButton(append);  // Return loses nothing
  box.setEscapeButton(QMessageBox::Cancel);
  box.exec();
  if (box.clickedButton() == replace) return Import::Replace;
  return box.clickedButton() == append ? Import::Append : Import::Cancel;
}

void StockPage::importFrom(const QString& path) {
  const auto bytes = loadBytes(path, mostBytes);
  if (!bytes) return emit refused(toText(bytes.error()));
  auto read = core::readStockFile(textOf(*bytes));
  if (!read) return emit refused(toText(inFile(path, read.error())));
  core::Stock next = stock();
  const bool isEmpty = next.resistors.empty() && next.boxes.empty();
  const Import how = isEmpty ? Import::Replace : askHow(*read);
  if (how == Import::Cancel) return;
  if (how == Import::Replace) next.resistors.clear(), next.boxes.clear();
  if (const auto id = idInBoth(next, *read))
    return emit refused(
        toText(inFile(path, {placeOfId(textOf(*bytes), *id),
                             core::say("the stock has a part of the id “{1}” already", {*id}),
                             core::say("Take the line out of the file, or replace the stock")})));
  std::move(read->resistors.begin(), read->resistors.end(), std::back_inserter(next.resistors));
  std::move(read->boxes.begin(), read->boxes.end(), std::back_inserter(next.boxes));
  if (const auto checked = core::checkStock(next); !checked)
    return emit refused(toText(inFile(path, checked.error())));
  editStock(tr("Import resistors"), std::move(next));
}

void StockPage::exportTo(const QString& path) {
  const auto saved = saveBytes(path, QByteArray::fromStdString(core::stockFileText(stock())));
  if (!saved) emit refused(toText(saved.error()));
}

}  // namespace ui
