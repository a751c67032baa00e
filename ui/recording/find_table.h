// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>

#include "ui/recording/findings.h"

namespace ui {

/// The levels found for one channel, a row each, with the step that each belongs to.
class FindTable : public QAbstractTableModel {
  Q_OBJECT

 public:
  enum Column { Step, From, To, Mean, Uncertainty, Samples, Quality, ColumnCount };

  using QAbstractTableModel::QAbstractTableModel;

  /// None: no channel is chosen. The same levels keep selection and place.
  void show(const Finding* finding, std::shared_ptr<const core::Channel> channel);

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;

 signals:
  /// The user gives a level to another step, or to none.
  void stepGiven(std::size_t level, std::optional<std::size_t> step);

 private:
  const core::Level& level(int row) const;
  QString text(int row, int column) const;
  QString qualityText(const core::Level& level) const;
  QString stepText(std::size_t step) const;
  QString stepsText(const std::vector<std::size_t>& steps) const;

  Finding m_finding;
  std::shared_ptr<const core::Channel> m_channel;
  std::vector<std::vector<std::size_t>> m_stepsOfLevel;  ///< several where they are held in one level
  QStringList m_choices;                                 ///< "no step", then all steps
  int m_decimals = 3;
  int m_rows = 0;
};

}  // namespace ui
