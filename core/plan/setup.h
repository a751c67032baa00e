// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <map>
#include <string>
#include <vector>

#include "core/circuit/bridge_circuit.h"
#include "core/circuit/input.h"
#include "core/uncertainty/decision.h"
#include "core/uncertainty/uncertainty.h"

namespace core {

/// A resistor and the place it is switched to. The same resistor at two places is two shunts.
struct Shunt {
  std::string name;          ///< unique within a channel: "R1 on arm 1"
  Resistance resistance{0};  ///< of the resistor alone
  Node a = Node::Arm1Begin;
  Node b = Node::Arm1End;
  Resistance wires{0};    ///< both wires to the place together, in series with the resistor
  Resistance contact{0};  ///< of the closed switch or relay, in series too

  friend bool operator==(const Shunt&, const Shunt&) = default;
};

/// One state of the plan: which shunts are closed, for how long.
struct Step {
  std::string label;
  std::vector<std::size_t> closed;  ///< indices into the channel's shunts, rising; empty is a zero step
  Duration hold{2};

  friend bool operator==(const Step&, const Step&) = default;
};

/// How far a reading may be from what was predicted. All limits are differences of readings.
struct Limits {
  double relative =
      0.01;          ///< of the expected reading's magnitude; 1 % is common practice in structural tests
  Reading least{0};  ///< the limit is never narrower than this, in the reading's unit
  double zeroReturn =
      0.005;  ///< return to zero, as a share of the greatest expected magnitude (common practice)

  friend bool operator==(const Limits&, const Limits&) = default;
};

/// What is stated about the uncertainty of a channel's inputs. An input without a statement has the usual
/// one of its class, marked as an assumption (core/budget/inputs.h).
struct Uncertainties {
  std::map<Input, Uncertainty> stated;
  /// Correlation coefficient between any two inputs of a group; a group that is not here moves together (1).
  std::map<std::string, double> groups;

  friend bool operator==(const Uncertainties&, const Uncertainties&) = default;
};

/// All that decides what a channel should read and how it is judged.
struct Setup {
  Bridge bridge;
  Instrument instrument;
  std::vector<Shunt> shunts;
  std::vector<Step> sequence;
  Limits limits;
  Decision decision;
  Uncertainties uncertainties;

  friend bool operator==(const Setup&, const Setup&) = default;
};

}  // namespace core
