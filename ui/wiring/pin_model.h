// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <vector>

#include "core/wiring/wiring_rules.h"
#include "ui/sheet_model.h"

namespace ui {

/// The pins of a channel in the order they lie in, and what the jumpers of one shunt join each of them to. A
/// block that is pasted beyond the last row adds pins.
class PinModel : public SheetModel {
  Q_OBJECT

 public:
  enum Column { Connector, PinColumn, LeadsTo, JoinedTo, ColumnCount };

  explicit PinModel(Session& session, QObject* parent = nullptr);

  /// `channel` is the session's present one; `faults` are those of its wiring.
  void show(std::shared_ptr<const core::Channel> channel, std::optional<std::size_t> shunt,
            std::vector<core::WiringFault> faults);

  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;
  QString whyFixed(int column) const override;

 protected:
  core::Result<void> put(const QList<CellText>& cells, const QString& label) override;
  core::Result<core::Channel> withCell(core::Channel channel, int row, int column,
                                       const QString& text) const override;
  bool grows() const override { return true; }
  QString editLabel(int column) const override;
  QString emptyText(int column) const override;

 private:
  QString text(int row, int column) const;
  QString hint(int row) const;
  std::optional<core::WiringSeverity> markOf(int row) const;

  std::shared_ptr<const core::Channel> m_channel;
  std::optional<std::size_t> m_shunt;
  std::vector<core::WiringFault> m_faults;
  std::map<core::PinName, core::WiringSeverity> m_marks;
};

}  // namespace ui
