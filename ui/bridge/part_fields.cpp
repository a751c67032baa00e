// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/part_fields.h"

#include <QCoreApplication>
#include <algorithm>

#include "core/document/edits.h"

namespace ui {
namespace {

using Kind = BridgePart::Kind;
using core::Channel;
using core::UnitFamily;

QString tr(const char* text) { return QCoreApplication::translate("Bridge", text); }

constexpr double milliamperesPerAmpere = 1e3;

ChannelValue leadValue(std::size_t role) {
  return {[role](const Channel& c) -> std::optional<double> {
            return core::resistanceOf(c.setup.bridge.leads[role]).base();
          },
          [role](Channel& c, double ohm) { c.setup.bridge.leads[role] = core::Resistance(ohm); },
          {}};
}

ChannelValue shuntValue(std::size_t index) {
  return {
      [index](const Channel& c) -> std::optional<double> { return c.setup.shunts[index].resistance.base(); },
      [index](Channel& c, double ohm) {
        core::Shunt shunt = c.setup.shunts[index];
        shunt.resistance = core::Resistance(ohm);
        c = core::withShunt(std::move(c), index, std::move(shunt));
      },
      {}};
}

/// A leak is there as long as its field is: to take it away is Delete.
ChannelValue leakValue(std::size_t arm, bool toStructure) {
  ChannelValue value =
      toStructure ? optionalAt([arm](auto& c) -> auto& { return c.setup.bridge.leaks[arm].toStructure; })
                  : optionalAt([arm](auto& c) -> auto& { return c.setup.bridge.leaks[arm].across; });
  return value;
}

ChannelValue resistanceOf(const BridgePart& part) {
  const std::size_t index = part.index;
  switch (part.kind) {
    case Kind::Arm:
      return valueAt([index](auto& c) -> auto& { return c.setup.bridge.arms[index]; });
    case Kind::Lead:
      return leadValue(index);
    case Kind::Shunt:
      return shuntValue(index);
    case Kind::Input:
      return optionalAt([](auto& c) -> auto& { return c.setup.instrument.inputResistance; });
    default:
      return leakValue(index, part.kind == Kind::StructureLeak);
  }
}

QString undoOf(Kind kind) {
  switch (kind) {
    case Kind::Arm:
      return tr("Change arm");
    case Kind::Lead:
      return tr("Change lead");
    case Kind::Shunt:
      return tr("Change shunt");
    case Kind::Input:
      return tr("Change input resistance");
    default:
      return tr("Change leak");
  }
}

bool isFromWire(const Channel& channel, const BridgePart& part) {
  return part.kind == Kind::Lead &&
         std::holds_alternative<core::CopperWire>(channel.setup.bridge.leads[part.index]);
}

PartField resistanceField(const Channel& channel, const std::vector<BridgePart>& parts) {
  const Kind kind = parts.front().kind;
  PartField field;
  field.name = "partResistance";
  field.label = tr("Resistance");
  field.undo = undoOf(kind);
  field.leastAllowed = kind == Kind::Lead;
  if (kind == Kind::Input) field.none = tr("none");
  if (kind == Kind::Leak || kind == Kind::StructureLeak) field.none = tr("no leak");
  if (isFromWire(channel, parts.front())) field.digits = 5;
  for (const BridgePart& part : parts) field.values.push_back(resistanceOf(part));
  return field;
}

PartField placeField(const std::vector<BridgePart>& parts) {
  PartField field;
  field.name = "partPlace";
  field.label = tr("Place along the arm, 0 to 1");
  field.undo = tr("Change leak");
  field.family = UnitFamily::Plain;
  field.leastAllowed = true;
  field.greatest = 1;
  for (const BridgePart& part : parts)
    field.values.push_back(
        valueAt([arm = part.index](auto& c) -> auto& { return c.setup.bridge.leaks[arm].place; }));
  return field;
}

PartField numberField(const QString& name, const QString& label, UnitFamily family) {
  PartField field;
  field.name = name;
  field.label = label;
  field.undo = tr("Change balance network");
  field.family = family;
  return field;
}

std::vector<PartField> balanceFields(core::BalanceKind kind) {
  PartField pot = numberField("partPotentiometer", tr("Potentiometer"), UnitFamily::Resistance);
  pot.values = {valueAt([](auto& c) -> auto& { return c.setup.instrument.balance.potentiometer; })};
  PartField wiper = numberField("partWiper", tr("Wiper, 0 to 1"), UnitFamily::Plain);
  wiper.leastAllowed = true;
  wiper.greatest = 1;
  wiper.values = {valueAt([](auto& c) -> auto& { return c.setup.instrument.balance.wiper; })};
  if (kind != core::BalanceKind::Parallel) return {pot, wiper};
  PartField limiting = numberField("partLimiting", tr("Wiper to S+"), UnitFamily::Resistance);
  limiting.values = {valueAt([](auto& c) -> auto& { return c.setup.instrument.balance.limiting; })};
  return {pot, wiper, limiting};
}

PartField excitationField(bool byCurrent) {
  PartField field;
  field.name = "partExcitation";
  field.label = byCurrent ? tr("Excitation current") : tr("Excitation");
  field.undo = tr("Change excitation");
  field.family = byCurrent ? UnitFamily::Named : UnitFamily::Voltage;
  if (byCurrent) field.unit = "mA";
  field.values = {byCurrent
                      ? scaled(valueAt([](auto& c) -> auto& { return c.setup.instrument.current->supplied; }),
                               milliamperesPerAmpere)
                      : valueAt([](auto& c) -> auto& { return c.setup.instrument.excitation; })};
  return field;
}

}  // namespace

std::vector<PartField> fieldsOf(const Channel& channel, const std::vector<BridgePart>& parts) {
  if (parts.empty()) return {};
  const Kind kind = parts.front().kind;
  if (!std::all_of(parts.begin(), parts.end(), [kind](const BridgePart& part) { return part.kind == kind; }))
    return {};
  const core::Instrument& instrument = channel.setup.instrument;
  if (kind == Kind::Balance) return balanceFields(instrument.balance.kind);
  if (kind == Kind::Instrument) return {excitationField(instrument.current.has_value())};
  if (kind == Kind::StructureLeak) return {resistanceField(channel, parts), placeField(parts)};
  return {resistanceField(channel, parts)};
}

bool agrees(const Channel& channel, const PartField& field) {
  return std::all_of(field.values.begin(), field.values.end(), [&](const ChannelValue& value) {
    return value.get(channel) == field.values.front().get(channel);
  });
}

Channel withValue(Channel channel, const PartField& field, std::optional<double> value) {
  for (const ChannelValue& each : field.values) {
    if (value)
      each.set(channel, *value);
    else if (each.clear)
      each.clear(channel);
  }
  return channel;
}

}  // namespace ui
