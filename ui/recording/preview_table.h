// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>

#include "core/recording/layout.h"

namespace ui {

/// The first lines of a file as they stand there, under the names they are read by. A row above the first
/// numbers holds the units as they are understood, to be typed over.
class PreviewTable : public QAbstractTableModel {
  Q_OBJECT

 public:
  using QAbstractTableModel::QAbstractTableModel;

  void setPreview(core::Preview preview);

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;

  /// The row of the units.
  int unitRow() const { return m_unitRow; }
  /// The row that the heading begins with, or the numbers when there is none.
  int firstUsedRow() const;
  /// Whether the line of a row is text without cells.
  bool isWholeLine(int row) const;

 signals:
  void unitTyped(int column, const QString& unit);

 private:
  /// Of any row but the one of the units.
  const core::PreviewRow& line(int row) const {
    return m_preview.rows[static_cast<std::size_t>(row < m_unitRow ? row : row - 1)];
  }
  bool hasRole(int row, core::RowRole role) const { return row != m_unitRow && line(row).role == role; }
  QString text(int row, int column) const;
  QVariant style(int row, int column, int role) const;
  bool isTime(int column) const;
  QString heading(int column) const;

  core::Preview m_preview;
  int m_columns = 0;
  int m_unitRow = 0;
};

}  // namespace ui
