// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>
#include <memory>

namespace core {
struct Explanation;
}

namespace ui {

struct DiagnosisOutcome;

/// The explanations of a diagnosis, best first, a row each.
class CauseModel : public QAbstractTableModel {
  Q_OBJECT

 public:
  enum Column { Rank, Cause, Explains, Weight, Plausible, Bayesian, Akaike, ColumnCount };

  using QAbstractTableModel::QAbstractTableModel;

  void show(std::shared_ptr<const DiagnosisOutcome> outcome);

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  QString text(std::size_t row, int column) const;
  QString rankText(std::size_t row) const;

  std::shared_ptr<const DiagnosisOutcome> m_outcome;  ///< none before the first
};

/// "Leads longer than entered\neach lead 0.85 ± 0.05 Ω more than entered"
QString causeText(const core::Explanation& explanation);

}  // namespace ui
