// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>
#include <QColor>
#include <vector>

#include "core/review/review.h"

namespace ui {

/// A finding and whose it is.
struct ReviewRow {
  std::size_t channel = 0;
  QString channelName;
  QString where;  ///< "step 3 “+2”", "shunt “R1”", "plan"
  core::Finding finding;
};

/// "step 3 “+2”", "shunt “R1”", "plan".
QString placeOfFinding(const core::Setup& setup, const core::Finding& finding);
/// "◆ fault", "▲ warning", "● note": colour is not the only sign.
QString severityText(core::Severity severity);

/// Findings of one channel or of all of them, a row each.
class ReviewModel : public QAbstractTableModel {
  Q_OBJECT

 public:
  enum Column { Severity, Channel, Where, What, ColumnCount };

  using QAbstractTableModel::QAbstractTableModel;

  /// Replaces all rows; rows stay when nothing differs.
  void show(std::vector<ReviewRow> rows);
  const ReviewRow& at(int row) const { return m_rows[static_cast<std::size_t>(row)]; }
  /// The row of the same finding, or of the one that it has become; -1 when it is gone.
  int rowLike(const ReviewRow& wanted) const;
  void setColours(const QPalette& palette);

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  QString text(const ReviewRow& row, int column) const;

  std::vector<ReviewRow> m_rows;
  QColor m_fault, m_warning, m_note;
};

}  // namespace ui
