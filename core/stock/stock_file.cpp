// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/stock_file.h"

#include <algorithm>
#include <array>
#include <map>
#include <optional>

#include "core/stock/delimited_rows.h"
#include "core/stock/faults.h"
#include "core/stock/stock_text.h"
#include "core/units/language.h"
#include "core/units/notation.h"
#include "core/units/text.h"

namespace core {
namespace {

constexpr std::size_t mostRows = 10'000;
constexpr std::array<std::string_view, 13> columnNames = {"id",
                                                          "resistance",
                                                          "decades",
                                                          "residual",
                                                          "tolerance",
                                                          "certificate_value",
                                                          "certificate_expanded",
                                                          "certificate_k",
                                                          "certificate_number",
                                                          "due",
                                                          "rating",
                                                          "fitted_in",
                                                          "note"};

/// Where each column stands in the rows.
using Columns = std::map<std::string_view, std::size_t>;

std::string lineText(std::size_t line) { return say("line {1}", {std::to_string(line)}); }

std::string allColumns() {
  std::string names;
  for (const std::string_view name : columnNames) names.append(names.empty() ? "" : ", ").append(name);
  return names;
}

/// "Certificate value" and "certificate_value" are one column.
std::string plainName(std::string name) {
  for (char& c : name) {
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    if (c == ' ') c = '_';
  }
  return name;
}

Result<Columns> columnsOf(const Row& heading) {
  Columns columns;
  for (std::size_t k = 0; k < heading.cells.size(); ++k) {
    const auto known = std::find(columnNames.begin(), columnNames.end(), plainName(heading.cells[k]));
    const std::string where =
        say("line {1}, column {2}", {std::to_string(heading.line), std::to_string(k + 1)});
    if (known == columnNames.end())
      return Error{where, say("{1} is no column of a list of resistors", {inQuotes(heading.cells[k])}),
                   say("The first line names the columns; known are {1}", {allColumns()})};
    if (!columns.emplace(*known, k).second)
      return Error{where, say("there are two columns {1}", {inQuotes(heading.cells[k])}),
                   say("Take one out")};
  }
  if (!columns.contains("id"))
    return Error{lineText(heading.line), say("there is no column “id”"),
                 say("Add what stands on the labels as “id”")};
  if (!columns.contains("resistance") && !columns.contains("decades"))
    return Error{lineText(heading.line), say("there is no column “resistance”"),
                 say("Add the values as “resistance”")};
  return columns;
}

/// Reads the fields of one row. The first one at fault is kept, and what comes after it is of no account.
class Fields {
 public:
  Fields(const Row& row, const Columns& columns) : m_row(row), m_columns(columns) {}

  const std::optional<Error>& error() const { return m_error; }
  bool has(std::string_view column) const { return !cell(column).empty(); }

  std::string text(std::string_view column) const { return std::string(withoutGuard(cell(column))); }

  Resistance resistance(std::string_view column) {
    return Resistance(taken(column, parseQuantity(cell(column), UnitFamily::Resistance)));
  }

  double share(std::string_view column) { return taken(column, shareFromText(cell(column))); }

  Certificate certificate() {
    Certificate certificate;
    certificate.value = resistance("certificate_value");
    const std::string_view expanded = cell("certificate_expanded");
    if (expanded.ends_with('%') || expanded.ends_with("ppm"))
      certificate.expanded = share("certificate_expanded") * certificate.value;
    else if (!expanded.empty())
      certificate.expanded = resistance("certificate_expanded");
    if (has("certificate_k"))
      certificate.coverageFactor =
          taken("certificate_k", parseQuantity(cell("certificate_k"), UnitFamily::Plain));
    certificate.number = text("certificate_number");
    return certificate;
  }

  std::optional<Date> due() {
    if (!has("due")) return std::nullopt;
    const auto date = dateFromText(cell("due"));
    if (!date)
      refuse("due", say("{1} is no day", {inQuotes(cell("due"))}), say("Write the day as in 2026-11-25"));
    return date;
  }

  std::optional<Power> rating() {
    if (!has("rating")) return std::nullopt;
    if (!cell("rating").ends_with('W'))
      refuse("rating", say("{1} has no unit of a power", {inQuotes(cell("rating"))}),
             say("Write it as in 250 mW or 0.5 W"));
    return Power(taken("rating", parseQuantity(cell("rating"), UnitFamily::Power)));
  }

  std::vector<Decade> decades() {
    auto decades = decadesFromText(cell("decades"));
    if (decades) return *std::move(decades);
    refuse("decades", decades.error().what, decades.error().mend);
    return {};
  }

  void refuseIfGiven(std::string_view column, std::string_view what, std::string_view mend) {
    if (has(column)) refuse(column, std::string(what), std::string(mend));
  }

  void refuse(std::string_view column, std::string what, std::string mend) {
    if (m_error) return;
    m_error = Error{lineText(m_row.line) + ", " + std::string(column), std::move(what), std::move(mend)};
  }

 private:
  std::string_view cell(std::string_view column) const {
    const auto at = m_columns.find(column);
    return at == m_columns.end() ? std::string_view() : std::string_view(m_row.cells[at->second]);
  }

  double taken(std::string_view column, const Result<double>& number) {
    if (number) return *number;
    refuse(column, number.error().what, number.error().mend);
    return 1;
  }

  const Row& m_row;
  const Columns& m_columns;
  std::optional<Error> m_error;
};

Resistor resistorOf(Fields& fields) {
  Resistor resistor;
  resistor.id = fields.text("id");
  if (!fields.has("resistance"))
    fields.refuse("resistance", say("there is no resistance"),
                  say("Write it as in 59k9 or 174.65 kOhm, or take the line out"));
  resistor.nominal = fields.resistance("resistance");
  fields.refuseIfGiven("residual", say("only a decade box has a residual"), say("Empty the cell"));
  if (!fields.has("tolerance") && !fields.has("certificate_value"))
    fields.refuse("tolerance", say("there is neither a tolerance nor a certificate"),
                  say("Write the tolerance, such as 0.01 % or 100 ppm"));
  resistor.tolerance = fields.has("tolerance") ? fields.share("tolerance") : 0;
  if (fields.has("certificate_value")) resistor.certificate = fields.certificate();
  for (const std::string_view column : {"certificate_expanded", "certificate_k", "certificate_number"})
    if (!resistor.certificate)
      fields.refuseIfGiven(column, say("it has no certificate_value beside it"), say("Write both or none"));
  resistor.due = fields.due();
  resistor.rating = fields.rating();
  resistor.fittedIn = fields.text("fitted_in");
  resistor.note = fields.text("note");
  return resistor;
}

DecadeBox boxOf(Fields& fields) {
  DecadeBox box;
  box.id = fields.text("id");
  fields.refuseIfGiven("resistance", say("a decade box has dials and no resistance"),
                       say("Empty this cell or decades"));
  box.decades = fields.decades();
  if (fields.has("residual")) box.residual = fields.resistance("residual");
  box.tolerance = fields.share("tolerance");
  for (const std::string_view column :
       {"certificate_value", "certificate_expanded", "certificate_k", "certificate_number"})
    fields.refuseIfGiven(column, say("a decade box has no certificate of one value"), say("Empty the cell"));
  fields.refuseIfGiven("fitted_in", say("a decade box is fitted in no instrument"), say("Empty the cell"));
  box.due = fields.due();
  box.rating = fields.rating();
  box.note = fields.text("note");
  return box;
}

/// Puts a row into the stock unless something is wrong with it.
template <class Item>
std::optional<Error> addItem(std::vector<Item>& items, Item item, Fields& fields) {
  if (!fields.error())
    if (auto fault = faultOf(item))
      fields.refuse(fault->field, std::move(fault->what), std::move(fault->mend));
  if (!fields.error()) items.push_back(std::move(item));
  return fields.error();
}

std::optional<Error> addRow(Stock& stock, const Row& row, const Columns& columns) {
  if (row.cells.size() != columns.size())
    return Error{lineText(row.line),
                 say("there are {1} cells under {2} columns",
                     {std::to_string(row.cells.size()), std::to_string(columns.size())}),
                 say("Put a cell that holds the separator in quotation marks, and leave no cell out")};
  Fields fields(row, columns);
  if (fields.has("decades")) return addItem(stock.boxes, boxOf(fields), fields);
  return addItem(stock.resistors, resistorOf(fields), fields);
}

std::string ohmText(Resistance value) {
  std::string text = formatQuantity(value.base(), UnitFamily::Resistance, {}, 17);
  text.replace(text.find("Ω"), std::string_view("Ω").size(),
               "Ohm");  // ASCII, as spreadsheets guess encodings
  return text;
}

std::string shareText(double share) { return formatQuantity(share, UnitFamily::Percent, {}, 17); }

/// The cells of both kinds of rows between resistance and note, in the order of the columns.
std::string careText(const std::optional<Date>& due, const std::optional<Power>& rating) {
  return (due ? dateText(*due) : "") + "," +
         (rating ? formatQuantity(rating->base(), UnitFamily::Power, {}, 17) : "");
}

std::string lineOf(const Resistor& resistor) {
  std::string line = guardedCell(resistor.id) + "," + ohmText(resistor.nominal) + ",,,";
  if (resistor.tolerance > 0) line += shareText(resistor.tolerance);
  line += ",";
  if (const auto& certificate = resistor.certificate)
    line += ohmText(certificate->value) + "," + ohmText(certificate->expanded) + "," +
            formatNumber(certificate->coverageFactor, 17) + "," + guardedCell(certificate->number);
  else
    line += ",,,";
  return line + "," + careText(resistor.due, resistor.rating) + "," + guardedCell(resistor.fittedIn) + "," +
         guardedCell(resistor.note) + "\n";
}

std::string lineOf(const DecadeBox& box) {
  std::string line = guardedCell(box.id) + ",," + decadesText(box.decades) + ",";
  if (box.residual > Resistance(0)) line += ohmText(box.residual);
  return line + "," + shareText(box.tolerance) + ",,,,," + careText(box.due, box.rating) + ",," +
         guardedCell(box.note) + "\n";
}

}  // namespace

Result<Stock> readStockFile(std::string_view text) {
  auto rows = delimitedRows(text, mostRows + 1);
  if (!rows) return rows.error();
  if (rows->empty())
    return Error{"line 1", say("there is nothing in the file"), say("Choose a list of resistors")};
  const auto columns = columnsOf(rows->front());
  if (!columns) return columns.error();

  Stock stock;
  std::map<std::string, std::size_t> lines;  // of each id
  for (std::size_t k = 1; k < rows->size(); ++k) {
    const Row& row = (*rows)[k];
    if (const auto error = addRow(stock, row, *columns)) return *error;
    const std::string id = Fields(row, *columns).text("id");
    if (const auto [other, isNew] = lines.emplace(id, row.line); !isNew)
      return Error{lineText(row.line) + ", id",
                   say("{1} is in line {2} too", {inQuotes(id), std::to_string(other->second)}),
                   say("Give each its own id, or take one line out")};
  }
  return stock;
}

std::string stockFileText(const Stock& stock) {
  std::string text;
  for (const std::string_view name : columnNames) text.append(text.empty() ? "" : ",").append(name);
  text += "\n";
  for (const Resistor& resistor : stock.resistors) text += lineOf(resistor);
  for (const DecadeBox& box : stock.boxes) text += lineOf(box);
  return text;
}

}  // namespace core
