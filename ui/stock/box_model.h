// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/stock/part_uses.h"
#include "ui/stock/stock_sheet.h"

namespace ui {

/// The decade boxes of the stock.
class BoxModel : public StockSheet {
  Q_OBJECT

 public:
  enum Column { Id, Dials, Residual, Tolerance, Due, Rating, Note, UpTo, UsedBy, ColumnCount };

  BoxModel(Session& session, const PartUses& uses, QObject* parent = nullptr);

  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;

 protected:
  std::size_t rowsIn(const core::Stock& stock) const override { return stock.boxes.size(); }
  void addRow(core::Stock& stock) const override;
  core::Result<void> setCell(core::Stock& stock, std::size_t row, int column,
                             const QString& text) const override;
  std::optional<core::FieldFault> faultIn(const core::Stock& stock, std::size_t row) const override;
  int columnOf(std::string_view field) const override;
  std::string idOf(const core::Stock& stock, std::size_t row) const override { return stock.boxes[row].id; }
  QString editLabel(int column) const override;
  QString emptyText(int column) const override;

 private:
  QString text(const core::DecadeBox& box, int column) const;

  const PartUses& m_uses;
};

}  // namespace ui
