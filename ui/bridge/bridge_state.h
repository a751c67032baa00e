// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>
#include <optional>
#include <vector>

#include "core/document/document.h"
#include "core/flow/flow.h"
#include "core/flow/movement.h"
#include "core/plan/prediction.h"

namespace ui {

/// What the bridge shows at one step, in numbers and in the user's words.
struct BridgeState {
  std::vector<bool> closed;                       ///< a shunt each
  std::vector<std::optional<double>> potentials;  ///< V per V, a node each; empty: cannot be solved
  double excitation_V = 0;                        ///< true voltage between P+ and P- at this step
  core::Polarity polarity = core::Polarity::None;
  QString title;                           ///< which step, which shunts are closed
  QString outcome;                         ///< output, polarity and simulated strain, or why there are none
  bool failed = false;                     ///< `outcome` is an error
  std::optional<core::Output> output;      ///< change against all shunts open; none where it is not known
  std::optional<core::Flow> flow;          ///< none where the network cannot be solved
  std::optional<core::Movement> movement;  ///< of a step
  QString sentence;                        ///< why the output goes where it goes; empty without a step
};

/// `prediction` must be that of `channel`. No step: all shunts open.
BridgeState stateAt(const core::Channel& channel, const core::SetupPrediction& prediction,
                    std::optional<std::size_t> step);

/// "output −0.5005 mV/V, negative · simulated strain −1000.0 µm/m"
QString outcomeText(const core::Bridge& bridge, const core::Prediction& prediction);

/// The greatest magnitude of output among the steps of a plan: the scale that the output is shown on.
core::Output largestOutput(const core::SetupPrediction& prediction);

bool closesShunt(const core::Step& step, std::size_t shunt);
/// The first step that closes shunt `index`.
std::optional<std::size_t> firstStepClosing(const core::Setup& setup, std::size_t index);

/// Circuit and state in sentences, for those who cannot see the drawing: arms, leads, leaks, balance, how it
/// is connected, shunts, which way the currents go, the output and why.
QString describe(const core::Channel& channel, const BridgeState& state);

QString ohmText(core::Resistance resistance, int significantDigits);
QString voltText(double volt, int decimals = 4);
/// "14.29 mA", "14.31 µA", without sign.
QString currentText(core::Current current);
/// "−0.5005 mV/V", with its sign.
QString outputText(core::Output output);
/// "5 V", or "10 mA" of a constant current.
QString excitationText(const core::Instrument& instrument);
/// A sentence a leak, and whether one to the structure has a way back; empty for a bridge that does not leak.
QStringList leakTexts(const core::Setup& setup);
/// "+ε", "−νε", for a transducer "+" or "−"; empty for an arm without an active gauge.
QString strainText(const core::Bridge& bridge, std::size_t arm);
/// "R1 · 174.65 kΩ"
QString shuntText(const core::Shunt& shunt);
/// core::pointName in the drawing's language.
QString pointText(const core::Bridge& bridge, core::Node node);

}  // namespace ui
