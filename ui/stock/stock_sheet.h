// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/stock/faults.h"
#include "core/stock/stock.h"
#include "ui/editable_table.h"

namespace ui {

/// A table over one list of the document's stock. A block may be longer than the list: it grows.
///
/// What was put in is checked when all of it is there, since a value and its certificate can only change
/// together.
class StockSheet : public EditableTable {
  Q_OBJECT

 public:
  using EditableTable::EditableTable;

  /// The document's stock may be another one.
  virtual void refresh() { showRows(static_cast<int>(rowsIn(stock()))); }

 protected:
  const core::Stock& stock() const { return *session().document().stock; }

  virtual std::size_t rowsIn(const core::Stock& stock) const = 0;
  /// Adds a row that still lacks everything.
  virtual void addRow(core::Stock& stock) const = 0;
  /// Sets the cell to what `text` says.
  virtual core::Result<void> setCell(core::Stock& stock, std::size_t row, int column,
                                     const QString& text) const = 0;
  virtual std::optional<core::FieldFault> faultIn(const core::Stock& stock, std::size_t row) const = 0;
  /// The column that shows a field (see core::FieldFault).
  virtual int columnOf(std::string_view field) const = 0;
  /// The id of a row; empty in a list without ids.
  virtual std::string idOf(const core::Stock& stock, std::size_t row) const = 0;

  core::Result<void> put(const QList<CellText>& cells, const QString& label) override;
  bool grows() const override { return true; }

 private:
  core::Result<void> check(const core::Stock& stock, const QList<CellText>& cells) const;
};

/// Puts what was read into its place, or passes the refusal on.
template <class Value>
core::Result<void> taken(Value& place, core::Result<Value> read) {
  if (!read) return read.error();
  place = *std::move(read);
  return {};
}

/// Texts of cells that several lists have.
QString dueText(const std::optional<core::Date>& due, core::Date today);
QString ratingText(const std::optional<core::Power>& rating);
core::Result<std::optional<core::Date>> dueFromText(const QString& text);
core::Result<std::optional<core::Power>> ratingFromText(const QString& text);
core::Result<core::Resistance> resistanceFromText(const QString& text);
/// In percent, or in ppm when it says so; 0 for no text.
core::Result<double> toleranceFromText(QString text);
QString toleranceText(double tolerance);

/// "12 resistors, 2 decade boxes, 1 range of preferred values", without what there is none of.
QString stockWords(const core::Stock& stock);
/// The first id after `id` ("AF-0104": "AF-0105") that the stock has not. One that would be too long loses
/// the end of its words.
std::string nextId(const core::Stock& stock, const std::string& id);

}  // namespace ui
