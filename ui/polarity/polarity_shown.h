// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <memory>
#include <optional>

#include "core/document/document.h"
#include "core/polarity/polarity_map.h"

namespace ui {

/// What a cell of the map shows.
enum class PolarityQuantity { Simulated, Output, Reading };
inline constexpr int polarityQuantityCount = 3;

/// Two points by their places in the map: row and column of a cell.
struct PolarityPair {
  std::size_t i = 0;
  std::size_t j = 0;

  friend bool operator==(const PolarityPair&, const PolarityPair&) = default;
};

/// The map as table and picture show it.
struct PolarityShown {
  std::shared_ptr<const core::Channel> channel;  ///< none: a document without channels
  core::PolarityMap map;                         ///< without points where there is none
  std::optional<core::Error> error;              ///< why there is none
  QString shunt;                                 ///< "R1 · 174.65 kΩ", or a resistance alone
  /// The output to start with: wires that are swapped turn its sign, and not that of what is simulated.
  PolarityQuantity quantity = PolarityQuantity::Output;
  std::optional<std::size_t> present;  ///< the cell where the chosen shunt lies now

  const core::Bridge& bridge() const { return channel->setup.bridge; }
  std::size_t count() const { return map.points.size(); }
};

/// Of a predicted cell, in the unit of `unitText`.
double valueOf(const PolarityShown& shown, const core::Prediction& prediction);
QString unitText(const PolarityShown& shown, PolarityQuantity quantity);
/// "Simulated strain" or, of a transducer, "Simulated load"; "Output"; "Reading".
QString quantityName(const core::Bridge& bridge, PolarityQuantity quantity);
/// "Output, mV/V"
QString quantityWithUnit(const PolarityShown& shown, PolarityQuantity quantity);

/// Sign and size in four digits, three below 1: "+998.2", "−0.00420", "0" without polarity, an en dash for a
/// cell without prediction.
QString cellText(const PolarityShown& shown, const core::PolarityCell& cell);
/// "R1 · 59 kΩ over arm 2 (gauge end of lead S- to gauge end of lead P-): output ..., positive · ...", or why
/// there is no prediction.
QString cellSentence(const PolarityShown& shown, const core::PolarityCell& cell);
/// "over arm 1: negative, −998.2 µm/m"
QString cellWords(const PolarityShown& shown, const core::PolarityCell& cell);
/// "P+", "S− gauge", "return", with the minus of the drawing
QString shortPointText(const core::Bridge& bridge, core::Node point);
/// The map in sentences, for those who cannot see the picture: its four arms, what is over the terminals, and
/// the cell that is chosen.
QString describeMap(const PolarityShown& shown, std::optional<PolarityPair> current);

/// Right across one arm.
bool isOverArm(const core::Bridge& bridge, const core::PolarityCell& cell);
/// The sign of the number that is shown; none where nothing is there to see: no polarity, or no prediction.
core::Polarity polarityOf(const PolarityShown& shown, const core::PolarityCell& cell);
/// Size against the largest of the map, 0 to 1; on a logarithmic scale of three decades, so that what leads
/// do can be told from what arms do.
double strengthOf(const PolarityShown& shown, const core::PolarityCell& cell);

}  // namespace ui
