// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>

#include "core/units/result.h"
#include "ui/session.h"
#include "ui/tables/block_taker.h"

namespace ui {

/// A table that is part of the document. Typing in a cell, pasting a block and emptying cells all put texts
/// into cells in one go, so each is one undo step and bad text is refused in the same words.
class EditableTable : public QAbstractTableModel, public BlockTaker {
  Q_OBJECT

 public:
  EditableTable(Session& session, int columns, QObject* parent = nullptr);

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;

  bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;

  core::Result<void> putCells(const QList<CellText>& cells, const QString& label) override;
  core::Result<void> clearCells(const QModelIndexList& cells) override;
  QString whyFixed(int column) const override;
  bool takesNewRows() const override { return grows(); }
  /// What is typed next goes into all of these cells, once.
  void spreadTo(const QModelIndexList& cells) { m_spread = cells; }
  bool isSpreading() const { return !m_spread.isEmpty(); }

 signals:
  /// Without a reason: a text was taken where one was refused before.
  void refused(const QString& reason);

 protected:
  Session& session() const { return m_session; }
  /// `error` with row and column as its place.
  core::Error inCell(core::Error error, int row, int column) const;

  /// Tells the views that all cells and headers may say something else; they are reset only when the
  /// number of rows or their owner differs, so that selection and open editors survive.
  void showRows(int rows);

  /// Puts all `cells` in, as one undo step with `label`, or none of them. Rows past the last one come only to
  /// a table that grows.
  virtual core::Result<void> put(const QList<CellText>& cells, const QString& label) = 0;
  /// Names what the rows belong to. Nothing typed for one owner comes to another: its editor goes when other
  /// rows are shown, and is refused when it closes before they are.
  virtual QString owner() const { return {}; }
  /// Whether there is anything to edit.
  virtual bool isThere() const { return true; }
  /// Whether a block that is pasted may add rows.
  virtual bool grows() const { return false; }
  /// "Change hold" and the like.
  virtual QString editLabel(int column) const = 0;
  /// Text that empties a cell of this column; null when it cannot be empty.
  virtual QString emptyText(int column) const = 0;

 private:
  core::Result<void> checkTarget(const CellText& cell) const;

  Session& m_session;
  int m_columns;
  int m_rows = 0;
  QString m_owner;  ///< of the rows that are shown
  QModelIndexList m_spread;
  bool m_toldRefusal = false;
};

}  // namespace ui
