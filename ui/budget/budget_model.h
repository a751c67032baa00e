// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>
#include <vector>

#include "core/budget/budget.h"

namespace ui {

/// The lines of one step's budget: an input a row, its part of the combined variance as a share.
class BudgetModel : public QAbstractTableModel {
  Q_OBJECT

 public:
  enum Column { Name, Value, Uncertain, Spread, Sensitivity, Contribution, Share, Source, ColumnCount };
  enum Role {
    SortRole = Qt::UserRole,  ///< numbers as numbers
    ShareRole,                ///< double, of the row; negative where a correlation takes variance away
    LowestShareRole,          ///< double, of all rows, at most 0: where bars begin
    HighestShareRole,         ///< double, of all rows, at least 1: where bars end
  };

  using QAbstractTableModel::QAbstractTableModel;

  /// Shows the budget of `step` in `scope`; a step without an uncertainty gives no rows.
  void show(const core::Setup& setup, const core::Budget& budget, core::Scope scope, std::size_t step);
  void showNothing();

  core::Input inputAt(int row) const { return m_rows[static_cast<std::size_t>(row)].input; }

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  struct Row {
    core::Input input;
    double value = 0, standard = 0, sensitivity = 0, contribution = 0, share = 0;
    QString name, valueText, uncertainText, spreadText, sensitivityText, hint;
    bool assumed = true;
  };

  void showRows(std::vector<Row> rows, const QString& unit);
  static Row rowOf(const core::Setup& setup, core::Scope scope, const core::BudgetInput& input,
                   const core::BudgetLine& line, double combined);
  QString text(const Row& row, int column) const;
  QVariant sortKey(const Row& row, int column) const;

  std::vector<Row> m_rows;
  QString m_unit;  ///< of the contributions
  double m_lowest = 0, m_highest = 1;
};

}  // namespace ui
