// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/stock/stock_sheet.h"

namespace ui {

/// Ranges of preferred values: new resistors that could be had.
class SeriesModel : public StockSheet {
  Q_OBJECT

 public:
  enum Column { Series, From, To, Tolerance, Values, ColumnCount };

  explicit SeriesModel(Session& session, QObject* parent = nullptr);

  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;

 protected:
  std::size_t rowsIn(const core::Stock& stock) const override { return stock.series.size(); }
  void addRow(core::Stock& stock) const override;
  core::Result<void> setCell(core::Stock& stock, std::size_t row, int column,
                             const QString& text) const override;
  std::optional<core::FieldFault> faultIn(const core::Stock& stock, std::size_t row) const override;
  int columnOf(std::string_view field) const override;
  std::string idOf(const core::Stock&, std::size_t) const override { return {}; }
  QString editLabel(int column) const override;
  QString emptyText(int column) const override;

 private:
  QString text(const core::SeriesRange& range, int column) const;
};

/// "E3", "E6" and so on.
QStringList seriesNames();

}  // namespace ui
