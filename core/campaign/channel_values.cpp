// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/campaign/channel_values.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/circuit/node_words.h"
#include "core/document/edits.h"
#include "core/units/language.h"
#include "core/units/notation.h"
#include "core/units/text.h"

namespace core {
namespace {

using Fault = std::optional<Error>;

Fault notPositive(std::string where, double value) {
  if (std::isfinite(value) && value > 0) return std::nullopt;
  return Error{std::move(where), say("{1} is not above zero", {shown(formatNumber(value, 6))}),
               say("Enter a number above zero")};
}

/// Shares of a limit: a limit of more than the reading itself is a percent sign forgotten.
Fault noLimit(std::string where, const std::optional<double>& share) {
  if (!share || (std::isfinite(*share) && *share >= 0 && *share <= 1)) return std::nullopt;
  return Error{std::move(where),
               say("{1} is no limit", {shown(formatQuantity(*share, UnitFamily::Percent, {}, 6))}),
               say("Enter a share from 0 to 100 %")};
}

Fault putTemplate(Channel& channel, BridgeType type) {
  Channel next = withBridgeType(channel, type);
  const Bridge& bridge = next.setup.bridge;
  for (const Shunt& shunt : next.setup.shunts)
    for (const Node node : {shunt.a, shunt.b})
      if (!hasNode(bridge, node))
        return Error{say("template"),
                     say("it has no {1} for shunt {2}", {nodeWords(node), inQuotes(shunt.name)}),
                     say("Take the shunt out first, or start from another channel")};
  for (const Pin& pin : next.setup.wiring.pins)
    if (const auto* node = std::get_if<Node>(&pin.use); node && !hasNode(bridge, *node))
      return Error{say("template"),
                   say("it has no {1} for pin {2}", {nodeWords(*node), inQuotes(pinText(pin.name))}),
                   say("Take the pin out first, or start from another channel")};
  channel = std::move(next);
  return std::nullopt;
}

Fault putGaugeResistance(Setup& setup, Resistance value) {
  if (auto fault = notPositive(say("gauge resistance"), value.base())) return fault;
  for (Resistance& arm : setup.bridge.arms)
    if (arm == setup.bridge.gauge.nominal) arm = value;
  setup.bridge.gauge.nominal = value;
  return std::nullopt;
}

Fault putGaugeFactors(Setup& setup, const ChannelValues& values) {
  if (values.gaugeFactor) {
    if (auto fault = notPositive(say("gauge factor"), *values.gaugeFactor)) return fault;
    const double before = std::exchange(setup.bridge.gauge.factor, *values.gaugeFactor);
    if (setup.instrument.gaugeFactor == before) setup.instrument.gaugeFactor = *values.gaugeFactor;
  }
  if (values.instrumentGaugeFactor) {
    if (auto fault = notPositive(say("gauge factor as set"), *values.instrumentGaugeFactor)) return fault;
    setup.instrument.gaugeFactor = *values.instrumentGaugeFactor;
  }
  return std::nullopt;
}

Fault putLead(Setup& setup, const Lead& lead) {
  if (const auto* wire = std::get_if<CopperWire>(&lead)) {
    if (auto fault = notPositive(say("lead cross-section"), wire->section.base())) return fault;
    if (!(std::isfinite(wire->length.base()) && wire->length.base() >= 0))
      return Error{say("lead length"), say("it is below zero"), say("Enter the length of one wire, one way")};
  }
  const double ohm = resistanceOf(lead).base();
  if (!(std::isfinite(ohm) && ohm >= 0))
    return Error{say("lead resistance"), say("it is below zero"), say("Enter the resistance of one wire")};
  for (const Wire& wire : wiresOf(setup.bridge))
    setup.bridge.leads[static_cast<std::size_t>(wire.role)] = lead;
  return std::nullopt;
}

bool hasOpenReadings(const Channel& channel) {
  return std::any_of(channel.checks.begin(), channel.checks.end(), [](const Check& check) {
    return !check.closedWith && std::any_of(check.readings.begin(), check.readings.end(),
                                            [](const auto& reading) { return reading.has_value(); });
  });
}

Fault putUnit(Channel& channel, const UnitSetting& setting) {
  Instrument next = channel.setup.instrument;
  next.unit = setting.unit;
  if (setting.unit == ReadingUnit::Scaled) {
    if (setting.scaledUnit.empty())
      return Error{say("unit"), say("the scaled unit has no name"), say("Name it, such as kN")};
    next.scaledUnit = setting.scaledUnit;
    if (setting.unitsPerMillivoltPerVolt) {
      if (auto fault = notPositive(say("scale"), *setting.unitsPerMillivoltPerVolt)) return fault;
      next.unitsPerMillivoltPerVolt = *setting.unitsPerMillivoltPerVolt;
    }
  }
  const std::string was = readingUnitText(channel.setup.instrument), is = readingUnitText(next);
  if (was != is && hasOpenReadings(channel))
    return Error{say("unit"),
                 say("it has readings in {1} in an open check, and would read in {2}", {was, is}),
                 say("Close its checks first")};
  if (was != is && channel.setup.limits.least.base() != 0)
    return Error{say("unit"),
                 say("its least limit would be {1} {2} where {3} was meant",
                     {shown(formatNumber(channel.setup.limits.least.base(), 6)), is, was}),
                 say("Set its least limit to zero first")};
  channel.setup.instrument = next;
  return std::nullopt;
}

Fault putExcitation(Setup& setup, Voltage value) {
  if (auto fault = notPositive(say("excitation"), value.base())) return fault;
  if (setup.instrument.current)
    return Error{say("excitation"), say("it is fed with a constant current"),
                 say("Change it to constant voltage first")};
  setup.instrument.excitation = value;
  return std::nullopt;
}

void putIdentity(Identity& identity, const ChannelValues& values) {
  identity.name = values.instrumentName.value_or(identity.name);
  identity.serial = values.instrumentSerial.value_or(identity.serial);
  identity.certificate = values.instrumentCertificate.value_or(identity.certificate);
  identity.due = values.instrumentDue.value_or(identity.due);
}

Fault putLimits(Setup& setup, const ChannelValues& values) {
  Limits& limits = setup.limits;
  if (auto fault = noLimit(say("limit"), values.relativeLimit)) return fault;
  if (auto fault = noLimit(say("limit of zero return"), values.zeroReturnLimit)) return fault;
  if (auto fault = noLimit(say("margin of change"), values.changeLimit)) return fault;
  if (auto fault = noLimit(say("margin of the zero"), values.zeroChangeLimit)) return fault;
  limits.relative = values.relativeLimit.value_or(limits.relative);
  limits.zeroReturn = values.zeroReturnLimit.value_or(limits.zeroReturn);
  limits.change = values.changeLimit.value_or(limits.change);
  limits.zeroChange = values.zeroChangeLimit.value_or(limits.zeroChange);
  if (!values.decision) return std::nullopt;
  if (const auto usable = checkDecision(*values.decision); !usable) return usable.error();
  setup.decision = *values.decision;
  return std::nullopt;
}

}  // namespace

Result<Channel> withValues(Channel channel, const ChannelValues& values) {
  channel.group = values.group.value_or(channel.group);
  channel.note = values.note.value_or(channel.note);
  channel.recordingColumn = values.recordingColumn.value_or(channel.recordingColumn);
  Setup& setup = channel.setup;
  Fault fault;
  if (values.type) fault = putTemplate(channel, *values.type);
  if (!fault && values.gaugeResistance) fault = putGaugeResistance(setup, *values.gaugeResistance);
  if (!fault) fault = putGaugeFactors(setup, values);
  if (!fault && values.lead) fault = putLead(setup, *values.lead);
  if (!fault && values.unit) fault = putUnit(channel, *values.unit);
  if (!fault && values.excitation) fault = putExcitation(setup, *values.excitation);
  if (!fault) fault = putLimits(setup, values);
  if (fault) return *fault;
  putIdentity(setup.identity, values);
  return channel;
}

}  // namespace core
