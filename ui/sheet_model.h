// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/document/document.h"
#include "ui/editable_table.h"

namespace ui {

/// A table over the chosen channel. An edit of a cell is a function from channel to channel; a block is one
/// after the other.
class SheetModel : public EditableTable {
  Q_OBJECT

 public:
  using EditableTable::EditableTable;

  QString whyFixed(int column) const override;

 protected:
  /// `channel` with the cell set to what `text` says.
  virtual core::Result<core::Channel> withCell(core::Channel channel, int row, int column,
                                               const QString& text) const = 0;

  core::Result<void> put(const QList<CellText>& cells, const QString& label) override;
  QString owner() const override;  ///< the channel: no two have one name
  bool isThere() const override { return session().channel(); }
};

}  // namespace ui
