// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/plan/setup.h"

namespace core {

enum class Polarity : std::int8_t { Negative = -1, None = 0, Positive = 1 };

/// "negative", "none", "positive".
std::string_view polarityWord(Polarity polarity);

/// What one step should show. Changes are against the same bridge with all shunts open.
struct Prediction {
  Output output;           ///< change of the bridge output
  Stimulus simulated = 0;  ///< strain of gauge 1 (m/m), or load over capacity, that gives the same output
  std::optional<Strain> armChange;  ///< dR/(R F) of the arm, when a single shunt lies right across one arm
  Strain indicated;                 ///< linear indication 4 v/(F N) with F and N as set on the instrument
  Reading reading;  ///< expected, of an instrument zeroed with all shunts open; linearised if it is
  Polarity polarity = Polarity::None;  ///< sign of `output`
};

/// A plan's predictions: the unshunted output, and one result a step.
struct SetupPrediction {
  Result<Output> zero = Output{};         ///< output with all shunts open, absolute
  std::vector<Result<Prediction>> steps;  ///< a bad step does not hide the others
};

/// Predicts every step of `setup` by solving the whole network. When the bridge itself cannot be
/// solved, `zero` and every step carry the reason.
SetupPrediction predict(const Setup& setup);

/// `simulated` in the unit of `simulatedUnitText`: µm/m, or the transducer's load unit.
double simulatedInUnit(const Bridge& bridge, Stimulus simulated);

/// Of the resistor with its wires and the closed switch.
Resistance resistanceOf(const Shunt& shunt);
/// The shunts of `setup` as branches.
std::vector<ShuntBranch> shuntBranches(const Setup& setup);
/// Closes the shunts of `step` and no others; `step` past the end: all open. Fails as BridgeCircuit::close.
Result<void> closeShunts(BridgeCircuit& circuit, const Setup& setup, std::size_t step);

/// Potentials of all nodes in V per volt of excitation with the shunts of `step` closed; absent for
/// nodes that nothing connects. `step` past the end: all shunts open.
Result<std::vector<std::optional<double>>> potentials(const Setup& setup, std::size_t step);
/// The true voltage between P+ and P- with the shunts of `step` closed: as set, or what the constant current
/// makes of the resistance that the whole network has there. Fails as `potentials` does.
Result<Voltage> excitationOf(const Setup& setup, std::size_t step);

}  // namespace core
