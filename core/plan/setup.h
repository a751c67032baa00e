// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/circuit/bridge_circuit.h"
#include "core/circuit/input.h"
#include "core/plan/acquisition.h"
#include "core/plan/limits.h"
#include "core/plan/pins.h"
#include "core/uncertainty/decision.h"
#include "core/uncertainty/uncertainty.h"
#include "core/units/date.h"

namespace core {

/// Which resistor of the stock a shunt is made of, as it was when it was taken from there.
struct Part {
  std::string id;                    ///< on the resistor's label; empty: not said
  std::optional<Date> due = {};      ///< of its next calibration
  std::optional<Power> rating = {};  ///< greatest power
  std::string certificate = {};      ///< number of its calibration certificate; empty: not said

  friend bool operator==(const Part&, const Part&) = default;
};

/// A resistor and the place it is switched to. The same resistor at two places is two shunts.
struct Shunt {
  std::string name;          ///< unique within a channel: "R1 on arm 1"
  Resistance resistance{0};  ///< of the resistor alone
  Node a = Node::Arm1Begin;
  Node b = Node::Arm1End;
  Resistance wires{0};    ///< both wires to the place together, in series with the resistor
  Resistance contact{0};  ///< of the closed switch or relay, in series too
  Part part = {};
  std::vector<Jumper> jumpers =
      {};  ///< to be laid for this shunt; none: it is switched inside the instrument

  friend bool operator==(const Shunt&, const Shunt&) = default;
};

/// "S-104", or the shunt's own name when its part is not said: shunts of one name are one resistor.
inline const std::string& resistorName(const Shunt& shunt) {
  return shunt.part.id.empty() ? shunt.name : shunt.part.id;
}

/// One state of the plan: which shunts are closed, for how long. It settles first and is averaged then.
struct Step {
  std::string label;
  std::vector<std::size_t> closed;  ///< indices into the channel's shunts, rising; empty is a zero step
  Duration hold{2};                 ///< it is averaged over this time
  Duration settle{0.5};             ///< what comes before that is not looked at

  friend bool operator==(const Step&, const Step&) = default;
};

/// What is stated about the uncertainty of a channel's inputs. An input without a statement has the usual
/// one of its class, marked as an assumption (core/budget/inputs.h).
struct Uncertainties {
  std::map<Input, Uncertainty> stated;
  /// Correlation coefficient between any two inputs of a group; a group that is not here moves together (1).
  std::map<std::string, double> groups;

  friend bool operator==(const Uncertainties&, const Uncertainties&) = default;
};

/// Which instrument shows the readings, for the record; all of it may be empty.
struct Identity {
  std::string name;    ///< maker and type as the lab calls it
  std::string serial;  ///< serial or inventory number, and the input when it has several
  std::string certificate;
  std::optional<Date> due = {};  ///< of its next calibration

  friend bool operator==(const Identity&, const Identity&) = default;
};

/// All that decides what a channel should read and how it is judged.
struct Setup {
  Bridge bridge;
  Instrument instrument;
  Identity identity = {};
  Acquisition acquisition;
  Wiring wiring;
  std::vector<Shunt> shunts;
  std::vector<Step> sequence;
  Limits limits;
  Decision decision;
  Uncertainties uncertainties;

  friend bool operator==(const Setup&, const Setup&) = default;
};

}  // namespace core
