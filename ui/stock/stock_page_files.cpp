// SPDX-License-Identifier: GPL-3.0-or-later
// Lists of resistors from and to files.
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QPushButton>

#include "core/stock/stock_file.h"
#include "ui/safe_file.h"
#include "ui/stock/stock_page.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr qint64 mostBytes = 16 * 1024 * 1024;  ///< 10,000 rows of more than 1000 bytes

QString fileFilter() { return StockPage::tr("Lists of resistors (*.csv *.tsv *.txt);;All files (*)"); }

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
  const auto* append = box.addButton(tr("&Add"), QMessageBox::AcceptRole);
  box.addButton(QMessageBox::Cancel);
  box.exec();
  if (box.clickedButton() == replace) return Import::Replace;
  return box.clickedButton() == append ? Import::Append : Import::Cancel;
}

void StockPage::importFrom(const QString& path) {
  const auto bytes = loadBytes(path, mostBytes);
  if (!bytes) return emit refused(toText(bytes.error()));
  auto read = core::readStockFile({bytes->constData(), static_cast<std::size_t>(bytes->size())});
  if (!read) {
    core::Error error = read.error();
    error.where = QFileInfo(path).fileName().toStdString() + ", " + error.where;
    return emit refused(toText(error));
  }
  core::Stock next = stock();
  const bool isEmpty = next.resistors.empty() && next.boxes.empty();
  const Import how = isEmpty ? Import::Replace : askHow(*read);
  if (how == Import::Cancel) return;
  if (how == Import::Replace) next.resistors.clear(), next.boxes.clear();
  std::move(read->resistors.begin(), read->resistors.end(), std::back_inserter(next.resistors));
  std::move(read->boxes.begin(), read->boxes.end(), std::back_inserter(next.boxes));
  if (const auto checked = core::checkStock(next); !checked) return emit refused(toText(checked.error()));
  editStock(tr("Import resistors"), std::move(next));
}

void StockPage::exportTo(const QString& path) {
  const auto saved = saveBytes(path, QByteArray::fromStdString(core::stockFileText(stock())));
  if (!saved) emit refused(toText(saved.error()));
}

}  // namespace ui
