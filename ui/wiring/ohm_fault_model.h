// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>
#include <vector>

#include "core/wiring/ohm_diagnosis.h"

namespace ui {

/// Faults in the order in which they fit what was measured.
class OhmFaultModel : public QAbstractTableModel {
  Q_OBJECT

 public:
  enum Column { Rank, Fault, Explains, Misfit, ColumnCount };

  using QAbstractTableModel::QAbstractTableModel;

  void show(std::vector<core::OhmFault> faults);

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  QString text(int row, int column) const;

  std::vector<core::OhmFault> m_faults;
};

/// What the ranking says, in a sentence or two.
QString diagnosisText(const std::vector<core::OhmFault>& faults, std::size_t readings);

}  // namespace ui
