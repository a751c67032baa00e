// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/sheet_model.h"

namespace ui {

/// The shunts of the chosen channel and what each does when it alone is closed.
class ShuntModel : public SheetModel {
  Q_OBJECT

 public:
  enum Column {
    Name,
    Resistance,
    From,
    To,
    Wires,
    Contact,
    Part,  ///< id of a part of the stock, whose value it takes, or of another
    Due,   ///< of the part's next calibration
    Place,
    PolarityColumn,
    Simulated,
    Reading,
    ColumnCount
  };

  explicit ShuntModel(Session& session, QObject* parent = nullptr);

  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;

 protected:
  core::Result<core::Channel> withCell(core::Channel channel, int row, int column,
                                       const QString& text) const override;
  QString editLabel(int column) const override;
  QString emptyText(int column) const override;

 private:
  void refresh();
  QString text(int row, int column, bool full = false) const;
  QString hint(int row, int column) const;
  QVariant colour(int row, int column) const;
  const core::Shunt& shuntIn(int row) const;
  bool differsFromStock(const core::Shunt& shunt) const;
  std::shared_ptr<const core::Channel> m_channel;  ///< that the predictions below belong to
  core::SetupPrediction m_alone;                   ///< one step a shunt, closed alone
  std::shared_ptr<const core::Stock> m_stock;      ///< that the parts were looked up in
  core::Date m_today{};
};

}  // namespace ui
