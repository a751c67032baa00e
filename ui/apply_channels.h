// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>
#include <optional>
#include <vector>

#include "core/document/apply.h"
#include "ui/session.h"

namespace ui {

/// The channels that something may be applied to: a check box each, and what would become of them.
///
/// What would become of a channel does not depend on which others are chosen, so it is worked out once for
/// all of them after another choice of parts, and ticking a box costs nothing.
class ApplyChannels : public QAbstractTableModel {
  Q_OBJECT

 public:
  enum Column { Name, Bridge, Outcome, ColumnCount };

  /// What becomes of one channel.
  struct Fate {
    enum class Kind : std::uint8_t { Source, Same, Changes, Refused };
    Kind kind = Kind::Same;
    QString words;
    std::size_t dropped = 0;  ///< readings of open checks
  };

  explicit ApplyChannels(Session& session, QObject* parent = nullptr);

  /// Parts of the chosen channel are applied.
  void handOver(const core::ChannelParts& parts);
  /// Values are taken from the stock, in the chosen channel too.
  void takeStockValues();

  /// The document with what is asked done to the chosen channels.
  core::Document result() const;
  std::vector<std::size_t> chosen() const;
  bool isChosen(std::size_t channel) const { return m_chosen[channel]; }
  /// The source of what is handed over cannot be chosen.
  void choose(std::size_t channel, bool chosen);
  /// Chooses all of these channels, and no others.
  void chooseOnly(const std::vector<std::size_t>& channels);
  const Fate& fate(std::size_t channel) const { return m_fates[channel]; }

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;

 signals:
  /// Which channels are chosen, or what becomes of them, changed.
  void changed();

 private:
  void workOut();
  void showAll();

  Session& m_session;
  std::size_t m_source;
  std::optional<core::ChannelParts> m_parts = core::ChannelParts{};  ///< none: stock values
  std::vector<bool> m_chosen;
  std::vector<Fate> m_fates;
};

}  // namespace ui
