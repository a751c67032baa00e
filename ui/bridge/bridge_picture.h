// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFont>
#include <QString>
#include <array>

#include "ui/bridge/bridge_layout.h"
#include "ui/bridge/bridge_state.h"
#include "ui/bridge/shunt_lanes.h"

namespace ui {

enum class LabelRole { Heading, Note, Terminal, Arm, Value, Strain, Voltage, Shunt };

/// Which standard's symbols are drawn; resistors are rectangles by IEC 60617 and zigzags by IEEE 315.
enum class Symbols { Iec60617, Ieee315 };

/// A text of the drawing and the box it keeps to. Plain text, already cut with an ellipsis where too long.
struct BridgeLabel {
  LabelRole role;
  QRectF box;
  Qt::Alignment alignment;
  QString text;
  std::size_t shunt = SIZE_MAX;                ///< whose label it is, LabelRole::Shunt only
  core::Polarity sign = core::Polarity::None;  ///< LabelRole::Strain only
};

/// Everything there is to draw of one channel at one step.
struct BridgePicture {
  core::Bridge bridge;
  std::vector<core::Shunt> shunts;
  BridgeLayout layout;
  BridgeState state;
  ShuntLanes lanes;
  std::vector<BridgeLabel> labels;
  Symbols symbols = Symbols::Iec60617;
  bool constantCurrent = false;  ///< the source's symbol is that of a current source
  std::array<core::Polarity, 4>
      strains{};  ///< of each arm for positive strain at gauge 1 as the template has it
};

BridgePicture pictureOf(const core::Channel& channel, const core::SetupPrediction& prediction,
                        std::optional<std::size_t> step, Symbols symbols = Symbols::Iec60617);

/// The same of a state that was worked out already; it must be one of `setup`.
BridgePicture pictureOf(const core::Setup& setup, BridgeState state, Symbols symbols);

/// Shows other voltages at the nodes, none for potentials (V per V) that are not there.
void showVoltages(BridgePicture& picture, const std::vector<std::optional<double>>& potentials,
                  double excitation_V);

/// The font of a label, in units of the layout.
const QFont& labelFont(LabelRole role);
/// How wide `text` is in it; remembers what it has measured.
double labelTextWidth(LabelRole role, const QString& text);

}  // namespace ui
