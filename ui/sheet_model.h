// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>

#include "core/document/document.h"
#include "core/units/result.h"
#include "ui/session.h"

namespace ui {

/// A table over the chosen channel. Typing in a cell and pasting a block go through one function
/// from channel to channel, so both are one undo step and refuse bad text in the same words.
class SheetModel : public QAbstractTableModel {
  Q_OBJECT

 public:
  SheetModel(Session& session, int columns, QObject* parent = nullptr);

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;

  bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;

  /// Puts `cells` (rows of columns) with its upper left corner at `at`; all or nothing.
  core::Result<void> setBlock(const QModelIndex& at, const QList<QStringList>& cells);
  /// Why a cell of this column takes no text now.
  virtual QString whyFixed(int column) const;
  /// Empties the given cells where they can be empty; one undo step.
  virtual core::Result<void> clearCells(const QModelIndexList& cells);

 signals:
  void refused(const QString& reason);

 protected:
  Session& session() const { return m_session; }

  /// Tells the views that all cells and headers may say something else; they are reset only when the
  /// number of rows differs, so that selection and open editors survive.
  void showRows(int rows);

  /// `channel` with the cell set to what `text` says.
  virtual core::Result<core::Channel> withCell(core::Channel channel, int row, int column,
                                               const QString& text) const = 0;
  /// "Change hold" and the like.
  virtual QString editLabel(int column) const = 0;
  /// Text that empties a cell of this column; null when it cannot be empty.
  virtual QString emptyText(int column) const = 0;

 private:
  Session& m_session;
  int m_columns;
  int m_rows = 0;
};

}  // namespace ui
