// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>

#include "core/units/result.h"
#include "ui/session.h"

namespace ui {

/// A table that is part of the document. Typing in a cell, pasting a block and emptying cells all put texts
/// into cells in one go, so each is one undo step and bad text is refused in the same words.
class EditableTable : public QAbstractTableModel {
  Q_OBJECT

 public:
  EditableTable(Session& session, int columns, QObject* parent = nullptr);

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;

  bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;

  /// Puts `cells` (rows of columns) with its upper left corner at `at`; all or nothing. Without a cell (`at`
  /// not valid) a table that grows takes them as new rows.
  core::Result<void> setBlock(const QModelIndex& at, const QList<QStringList>& cells);
  /// Why a cell of this column takes no text now.
  virtual QString whyFixed(int column) const;
  /// Empties the given cells where they can be empty; one undo step.
  virtual core::Result<void> clearCells(const QModelIndexList& cells);

 signals:
  void refused(const QString& reason);

 protected:
  struct CellText {
    int row = 0;
    int column = 0;
    QString text;
  };

  Session& session() const { return m_session; }
  /// `error` with row and column as its place.
  core::Error inCell(core::Error error, int row, int column) const;

  /// Tells the views that all cells and headers may say something else; they are reset only when the
  /// number of rows differs, so that selection and open editors survive.
  void showRows(int rows);

  /// Puts all `cells` in, as one undo step with `label`, or none of them. Rows past the last one come only to
  /// a table that grows.
  virtual core::Result<void> put(const QList<CellText>& cells, const QString& label) = 0;
  /// Whether there is anything to edit.
  virtual bool isThere() const { return true; }
  /// Whether a block that is pasted may add rows.
  virtual bool grows() const { return false; }
  /// "Change hold" and the like.
  virtual QString editLabel(int column) const = 0;
  /// Text that empties a cell of this column; null when it cannot be empty.
  virtual QString emptyText(int column) const = 0;

 private:
  core::Result<void> checkTarget(int row, int column) const;

  Session& m_session;
  int m_columns;
  int m_rows = 0;
};

}  // namespace ui
