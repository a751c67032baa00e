// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet_model.h"

#include "ui/shown_channel.h"
#include "ui/theme.h"

namespace ui {

QString SheetModel::owner() const {
  return session().channel() ? toQString(session().channel()->name) : QString();
}

QString SheetModel::whyFixed(int column) const {
  const QString reason = whyNotEdited(session());
  return reason.isEmpty() ? EditableTable::whyFixed(column) : reason;
}

core::Result<void> SheetModel::put(const QList<CellText>& cells, const QString& label) {
  core::Channel channel = *session().channel();
  for (const CellText& cell : cells) {
    auto next = withCell(std::move(channel), cell.row, cell.column, cell.text);
    if (!next) return inCell(next.error(), cell.row, cell.column);
    channel = *std::move(next);
  }
  session().editChannel(label, std::move(channel));
  return {};
}

}  // namespace ui
