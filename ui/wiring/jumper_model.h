// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>

#include "ui/sheet_model.h"

namespace ui {

/// The jumpers of one shunt and what each of them joins. A block that is pasted beyond the last row adds
/// jumpers.
class JumperModel : public SheetModel {
  Q_OBJECT

 public:
  enum Column { From, To, Joins, ColumnCount };

  explicit JumperModel(Session& session, QObject* parent = nullptr);

  /// `channel` is the session's present one.
  void show(std::shared_ptr<const core::Channel> channel, std::optional<std::size_t> shunt);

  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;
  QString whyFixed(int column) const override;

 protected:
  core::Result<core::Channel> withCell(core::Channel channel, int row, int column,
                                       const QString& text) const override;
  QString owner() const override;
  bool isThere() const override { return m_shunt.has_value(); }
  bool grows() const override { return true; }
  QString editLabel(int column) const override;
  QString emptyText(int column) const override;

 private:
  QString placeOf(const core::PinName& name) const;

  std::shared_ptr<const core::Channel> m_channel;
  std::optional<std::size_t> m_shunt;
};

}  // namespace ui
