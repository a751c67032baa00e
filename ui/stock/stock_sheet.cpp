// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stock/stock_sheet.h"

#include <set>
#include <unordered_map>

#include "core/document/apply.h"
#include "core/stock/faults.h"
#include "core/stock/stock_text.h"
#include "core/units/day_words.h"
#include "core/units/language.h"
#include "core/units/text.h"
#include "ui/quantity_edit.h"
#include "ui/theme.h"

namespace ui {

core::Result<void> StockSheet::put(const QList<CellText>& cells, const QString& label) {
  core::Stock next = stock();
  for (const CellText& cell : cells) {
    const auto row = static_cast<std::size_t>(cell.row);
    while (rowsIn(next) <= row) addRow(next);
    if (const auto set = setCell(next, row, cell.column, cell.text); !set)
      return inCell(set.error(), cell.row, cell.column);
  }
  if (const auto checked = check(next, cells); !checked) return checked;
  session().edit(label, core::withStock(session().document(), std::move(next)));
  return {};
}

core::Result<void> StockSheet::check(const core::Stock& stock, const QList<CellText>& cells) const {
  std::unordered_map<std::string_view, int> ids;
  for (const core::Resistor& resistor : stock.resistors) ++ids[resistor.id];
  for (const core::DecadeBox& box : stock.boxes) ++ids[box.id];
  std::set<int> rows;
  for (const CellText& cell : cells) rows.insert(cell.row);
  for (const int row : rows) {
    const auto at = static_cast<std::size_t>(row);
    if (const auto fault = faultIn(stock, at))
      return inCell({"", fault->what, fault->mend}, row, columnOf(fault->field));
    const std::string id = idOf(stock, at);
    if (!id.empty() && ids[id] > 1)
      return inCell({"", core::say("{1} is in the stock already", {core::inQuotes(id)}),
                     core::say("Give each its own id")},
                    row, columnOf("id"));
  }
  return {};
}

QString dueText(const std::optional<core::Date>& due, core::Date today) {
  if (!due) return {};
  const QString day = toQString(core::dateText(*due));
  return core::isOverdue(due, today) ? StockSheet::tr("%1 overdue").arg(day) : day;
}

QString ratingText(const std::optional<core::Power>& rating) {
  return rating ? quantityText(rating->base(), core::UnitFamily::Power, {}, 17) : QString();
}

core::Result<std::optional<core::Date>> dueFromText(const QString& text) {
  return core::dayFromWords(text.toStdString());
}

core::Result<std::optional<core::Power>> ratingFromText(const QString& text) {
  if (text.trimmed().isEmpty()) return std::optional<core::Power>();
  const auto watts = core::parseQuantity(text.toStdString(), core::UnitFamily::Power);
  if (!watts) return watts.error();
  return std::optional(core::Power(*watts));
}

core::Result<core::Resistance> resistanceFromText(const QString& text) {
  const auto ohms = core::parseQuantity(text.toStdString(), core::UnitFamily::Resistance);
  if (!ohms) return ohms.error();
  return core::Resistance(*ohms);
}

core::Result<double> toleranceFromText(QString text) {
  text.remove(QChar(0xB1));  // "±0.01 %" is written so on data sheets
  if (text.trimmed().isEmpty()) return 0.0;
  if (text.trimmed().endsWith("ppm")) return core::shareFromText(text.toStdString());
  return core::parseQuantity(text.toStdString(), core::UnitFamily::Percent);
}

QString toleranceText(double tolerance) {
  return tolerance > 0 ? quantityText(tolerance, core::UnitFamily::Percent, {}, 17) : QString();
}

QString stockWords(const core::Stock& stock) {
  QStringList words;
  const auto add = [&](std::size_t count, const QString& one, const QString& several) {
    if (count > 0) words << QString("%1 %2").arg(QString::number(count), count == 1 ? one : several);
  };
  add(stock.resistors.size(), StockSheet::tr("resistor"), StockSheet::tr("resistors"));
  add(stock.boxes.size(), StockSheet::tr("decade box"), StockSheet::tr("decade boxes"));
  add(stock.series.size(), StockSheet::tr("range of preferred values"),
      StockSheet::tr("ranges of preferred values"));
  return words.isEmpty() ? StockSheet::tr("nothing") : words.join(", ");
}

std::string nextId(const core::Stock& stock, const std::string& id) {
  const std::size_t last = id.find_last_not_of("0123456789");
  const std::size_t begin = std::max(last == std::string::npos ? 0 : last + 1,
                                     id.size() > 9 ? id.size() - 9 : std::size_t(0));  // a number that fits
  const std::string stem = begin < id.size() ? id.substr(0, begin) : id + "-";
  const std::size_t digits = id.size() - begin;
  for (unsigned long number = begin < id.size() ? std::stoul(id.substr(begin)) + 1 : 2;; ++number) {
    std::string text = std::to_string(number);
    if (text.size() < digits) text.insert(0, digits - text.size(), '0');
    const std::string next = std::string(core::beginningOf(stem, core::longestStockId - text.size())) + text;
    if (!core::findResistor(stock, next) && !core::findBox(stock, next)) return next;
  }
}

}  // namespace ui
