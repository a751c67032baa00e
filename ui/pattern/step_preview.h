// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>

#include "core/plan/prediction.h"

namespace ui {

/// Steps that are not yet those of the channel, with what each should read.
class StepPreview : public QAbstractTableModel {
  Q_OBJECT

 public:
  enum Column { Number, Label, Closed, PolarityColumn, Settle, Hold, Expected, ColumnCount };

  using QAbstractTableModel::QAbstractTableModel;

  /// Shows `steps` of a channel with this set-up, whose own sequence is not looked at.
  void show(core::Setup setup, std::vector<core::Step> steps);
  const std::vector<core::Step>& steps() const { return m_steps; }

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  const core::Result<core::Prediction>& prediction(int row) const;
  QString text(int row, int column) const;

  core::Setup m_setup;  ///< its sequence holds each set of closed shunts once
  std::vector<core::Step> m_steps;
  std::vector<std::size_t> m_state;  ///< of each step, its place in the sequence of m_setup
  core::SetupPrediction m_prediction;
  int m_decimals = 3;  ///< of the expected readings
};

}  // namespace ui
