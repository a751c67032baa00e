// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "core/units/notation.h"
#include "ui/bridge/bridge_parts.h"
#include "ui/setup/channel_value.h"

namespace ui {

/// One number of one or several parts of a kind, as it is edited in the drawing.
struct PartField {
  QString name;   ///< of the field's widget: "partResistance"
  QString label;  ///< "Resistance"
  QString undo;   ///< "Change arm"
  core::UnitFamily family = core::UnitFamily::Resistance;
  QString unit;                      ///< UnitFamily::Named only
  std::vector<ChannelValue> values;  ///< a part each
  double least = 0;
  bool leastAllowed = false;
  std::optional<double> greatest;
  int digits = 12;  ///< shown at most
  QString none;     ///< what an empty field means; empty: there must be a number
};

/// The fields of `parts`, which are all of one kind; none for parts of several kinds.
std::vector<PartField> fieldsOf(const core::Channel& channel, const std::vector<BridgePart>& parts);

/// Whether all parts have the same value there.
bool agrees(const core::Channel& channel, const PartField& field);
/// `channel` with that value at all parts; none: without.
core::Channel withValue(core::Channel channel, const PartField& field, std::optional<double> value);

}  // namespace ui
