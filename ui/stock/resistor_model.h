// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/stock/part_uses.h"
#include "ui/stock/stock_sheet.h"

namespace ui {

/// The resistors of the stock, and which shunts are made of them.
class ResistorModel : public StockSheet {
  Q_OBJECT

 public:
  enum Column {
    Id,
    Value,
    Tolerance,
    CertificateValue,  ///< takes "59.906k ± 0.6" for value and U together
    Expanded,
    CoverageFactor,
    Due,
    Rating,
    FittedIn,
    Note,
    UsedBy,
    ColumnCount
  };

  ResistorModel(Session& session, const PartUses& uses, QObject* parent = nullptr);

  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;

 protected:
  std::size_t rowsIn(const core::Stock& stock) const override { return stock.resistors.size(); }
  void addRow(core::Stock& stock) const override;
  core::Result<void> setCell(core::Stock& stock, std::size_t row, int column,
                             const QString& text) const override;
  std::optional<core::FieldFault> faultIn(const core::Stock& stock, std::size_t row) const override;
  int columnOf(std::string_view field) const override;
  std::string idOf(const core::Stock& stock, std::size_t row) const override {
    return stock.resistors[row].id;
  }
  QString editLabel(int column) const override;
  QString emptyText(int column) const override;

 private:
  QString text(const core::Resistor& resistor, int column, int digits = 12) const;

  const PartUses& m_uses;
};

}  // namespace ui
