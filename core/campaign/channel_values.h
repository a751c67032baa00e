// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "core/document/document.h"

namespace core {

/// What readings are in; `scaledUnit` and the scale count with ReadingUnit::Scaled alone.
struct UnitSetting {
  ReadingUnit unit = ReadingUnit::MicrometrePerMetre;
  std::string scaledUnit = {};
  std::optional<double> unitsPerMillivoltPerVolt = {};  ///< none: as it was
};

/// Values to be put into a channel; what is not said stays as it is.
struct ChannelValues {
  std::optional<std::string> group = {};
  std::optional<std::string> note = {};
  std::optional<std::string> recordingColumn = {};
  std::optional<BridgeType> type = {};
  std::optional<Resistance> gaugeResistance = {};  ///< arms at the old nominal value follow, others stay
  /// Of the gauge; that which the instrument is set to follows where it was the same, unless it is said too.
  std::optional<double> gaugeFactor = {};
  std::optional<double> instrumentGaugeFactor = {};
  std::optional<Lead> lead = {};  ///< of each wire in use, sense leads among them
  std::optional<UnitSetting> unit = {};
  std::optional<Voltage> excitation = {};  ///< of constant voltage
  std::optional<std::string> instrumentName = {};
  std::optional<std::string> instrumentSerial = {};
  std::optional<std::string> instrumentCertificate = {};
  std::optional<std::optional<Date>> instrumentDue = {};
  std::optional<double> relativeLimit = {};
  std::optional<double> zeroReturnLimit = {};
  std::optional<double> changeLimit = {};
  std::optional<double> zeroChangeLimit = {};
  std::optional<Decision> decision = {};
};

/// `channel` with `values` put in, all of them or none. Closed checks never change.
///
/// Refused, with what it is about as place ("gauge factor"), are numbers that no channel can have, another
/// template where a shunt or a pin would lose its place, and another unit of readings where an open check has
/// readings or the least limit is not zero: numbers must not quietly change their unit.
Result<Channel> withValues(Channel channel, const ChannelValues& values);

}  // namespace core
