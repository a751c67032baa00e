// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>

#include "ui/recording/findings.h"

namespace ui {

/// The channels of the document, a row each: whether its check is taken, which column of the recording is
/// its, and what was found there.
class ColumnTable : public QAbstractTableModel {
  Q_OBJECT

 public:
  enum Column { Channel, ColumnColumn, Levels, Run, Match, ColumnCount };

  /// `findings` is what is shown; whoever changes it calls `showRow`.
  explicit ColumnTable(const std::vector<Finding>& findings, QObject* parent = nullptr);

  /// Other findings, of this document and these columns.
  void reset(const core::Document& document, const core::Recording* recording);
  void showRow(int row);

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;

 signals:
  void ticked(int row, bool isTicked);
  /// A row of the list of columns, or none.
  void columnChosen(int row, std::optional<std::size_t> column);
  void runChosen(int row, std::size_t run);

 private:
  const Finding& finding(int row) const { return m_findings[static_cast<std::size_t>(row)]; }
  const core::Channel& channel(int row) const { return *m_document.channels[finding(row).channel]; }
  QString text(int row, int column) const;
  QVariant colour(int row) const;
  QStringList choices(int row, int column) const;
  int choice(int row, int column) const;

  const std::vector<Finding>& m_findings;
  core::Document m_document;
  QStringList m_columns;  ///< "none", then all columns of the recording
  int m_rows = 0;
};

}  // namespace ui
