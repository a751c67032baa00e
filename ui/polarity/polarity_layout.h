// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFontMetricsF>
#include <QPainterPath>
#include <QRectF>
#include <optional>
#include <vector>

#include "ui/polarity/polarity_shown.h"

namespace ui {

/// A point of the bridge in the picture.
struct PolaritySpot {
  QPointF at;
  bool terminal = false;  ///< on the instrument, else at the gauges
  QRectF nameBox;
  QPointF towards;  ///< unit vector to where the chip of a shunt from some other point is put
};

/// A pair with its sign and size on a small plate.
struct PolarityChip {
  PolarityPair pair;
  QString text;
  QRectF box;
  bool overArm = false;
};

/// The diamond with the bridge's points: P+ above, S- right, P- below, S+ left, as the drawing has it; arms 1
/// to 4 run clockwise from the upper right. Gauge ends lie at the corners, terminals outside of them; where
/// an arm is in the instrument, its terminal is the corner.
struct PolarityLayout {
  std::vector<PolaritySpot> spots;  ///< one a point of the map, in its order
  struct Arm {
    std::size_t begin = 0, end = 0;  ///< spots
  };
  std::vector<Arm> arms;
  struct Lead {
    std::size_t from = 0, to = 0;  ///< spots
    bool broken = false;
  };
  std::vector<Lead> leads;
  QPointF centre;

  /// The way of a pair: straight over an arm, a lead or between opposite corners, else bent outwards.
  QPainterPath pathOf(PolarityPair pair) const;
};

/// In `room`, which must take the names and chips too. Names keep clear of chips, whether a point is picked
/// or not.
PolarityLayout polarityLayout(const PolarityShown& shown, const QRectF& room, const QFontMetricsF& metrics);

/// The pairs that are labelled while no point is picked: over the four arms, and over the terminals.
std::vector<PolarityChip> usualChips(const PolarityShown& shown, const PolarityLayout& layout,
                                     const QFontMetricsF& metrics);
/// A chip at each other point: the pairs of the point `from`.
std::vector<PolarityChip> chipsFrom(const PolarityShown& shown, const PolarityLayout& layout,
                                    std::size_t from, const QFontMetricsF& metrics);

}  // namespace ui
