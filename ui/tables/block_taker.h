// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QModelIndexList>
#include <QString>

#include "core/units/result.h"

namespace ui {

/// What a cell is to say.
struct CellText {
  int row = 0;
  int column = 0;
  QString text;
};

/// A model whose cells take whole blocks. Rows and columns are those of the model.
class BlockTaker {
 public:
  virtual ~BlockTaker() = default;

  /// All `cells`, as one undo step with `label`, or none of them; of an error `where` names the cell.
  virtual core::Result<void> putCells(const QList<CellText>& cells, const QString& label) = 0;
  /// Empties the given cells where they can be empty; one undo step.
  virtual core::Result<void> clearCells(const QModelIndexList& cells) = 0;
  /// Why a cell of this column takes no text now.
  virtual QString whyFixed(int column) const = 0;
  /// Whether rows past the last one may be put in.
  virtual bool takesNewRows() const { return false; }
};

}  // namespace ui
