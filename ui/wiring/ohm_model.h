// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <vector>

#include "core/wiring/ohmmeter_sheet.h"
#include "ui/sheet_model.h"

namespace ui {

/// What an ohmmeter must read in one state of the wiring, and what it did read.
class OhmModel : public SheetModel {
  Q_OBJECT

 public:
  enum Column { From, To, Expected, Tolerance, MeasuredColumn, Deviation, Fits, ColumnCount };

  explicit OhmModel(Session& session, QObject* parent = nullptr);

  /// `channel` is the session's present one; readings are taken from it.
  void show(std::shared_ptr<const core::Channel> channel, core::WiringState state,
            std::vector<core::OhmExpectation> rows, const core::OhmmeterConditions& conditions);
  /// The same rows with the readings of another value of the channel.
  void showReadings(std::shared_ptr<const core::Channel> channel);

  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;
  QString whyFixed(int column) const override;

 protected:
  core::Result<core::Channel> withCell(core::Channel channel, int row, int column,
                                       const QString& text) const override;
  QString editLabel(int column) const override;
  QString emptyText(int column) const override;

 private:
  const core::OhmReading* readingOf(const core::OhmExpectation& row) const;
  QString text(int row, int column, bool full) const;

  std::shared_ptr<const core::Channel> m_channel;
  core::WiringState m_state;
  std::vector<core::OhmExpectation> m_rows;
  core::OhmmeterConditions m_conditions;
};

/// "open", or the resistance in that many digits.
QString ohmText(const std::optional<core::Resistance>& ohm, int significantDigits);
/// What an ohmmeter showed: a resistance in the trade's notation, or one of the words for no reading.
core::Result<std::optional<core::Resistance>> ohmFromText(const QString& text);
/// Whether a reading may be called that of the expectation.
bool fits(const core::OhmExpectation& expected, const std::optional<core::Resistance>& measured,
          const core::OhmmeterConditions& conditions);

}  // namespace ui
