// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <initializer_list>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "core/budget/budget.h"
#include "core/circuit/network.h"
#include "core/wiring/jumper_groups.h"
#include "core/wiring/ohmmeter_sheet.h"

// The network that an ohmmeter sees: the bridge with its excitation off, and the calibration resistors, laid
// as far as they are. Shared by the sheet and the diagnosis.

namespace core {

/// What may be broken or of another value.
struct OhmPart {
  enum class Kind : std::uint8_t {
    Other,
    Arm,       ///< index 0 to 3
    Lead,      ///< index is its LeadRole
    Input,     ///< of the instrument
    Resistor,  ///< index in OhmModel::resistors
    Shunt,     ///< its switch or jumpers; index in the set-up
  };
  Kind kind = Kind::Other;
  std::size_t index = 0;

  friend bool operator==(const OhmPart&, const OhmPart&) = default;
};

/// One resistor of the network. Zero ohm joins its two nodes; infinite: it is not there.
struct OhmBranch {
  NodeIndex a = 0;
  NodeIndex b = 0;
  double ohm = 0;
  OhmPart part;
  double share = 1;  ///< of the part's resistance
};

/// How a branch follows an input, by its place in OhmModel::inputs.
struct OhmDependence {
  std::size_t input = 0;
  std::size_t branch = 0;
  double ohmPerUnit = 1;
};

/// The network in one state of the wiring.
struct OhmNetwork {
  std::size_t nodes = 0;
  std::vector<OhmBranch> branches;
  std::vector<OhmDependence> dependences;
};

/// A part of another value: 0 shorted, infinite open. A shunt that is open never closes; one that is shorted
/// is closed all the time, through its resistor.
struct PartValue {
  OhmPart part;
  double ohm = 0;
};
/// Two terminals of the instrument joined by zero ohm.
struct TerminalsShorted {
  Node a, b;
};
/// Two leads exchanged at the instrument.
struct LeadsSwapped {
  LeadRole a, b;
};
/// The far ends (`to`) of two jumpers of a shunt exchanged.
struct JumpersSwapped {
  std::size_t shunt = 0, first = 0, second = 0;
};
/// One resistor fitted where the other belongs and the other way round; indices in OhmModel::resistors.
struct ResistorsSwapped {
  std::size_t a = 0, b = 0;
};
/// Each of two shunts goes to the other's place.
struct PlacesSwapped {
  std::size_t a = 0, b = 0;
};
/// How the real wiring differs from the plan; nothing: it does not.
using OhmChange = std::variant<std::monostate, PartValue, TerminalsShorted, LeadsSwapped, JumpersSwapped,
                               ResistorsSwapped, PlacesSwapped>;

/// A resistance with what its inputs make uncertain of it.
struct OhmValue {
  double ohm = 0;       ///< infinite: open
  double standard = 0;  ///< standard uncertainty of the network, ohm; none of the ohmmeter
};

/// Everything about a set-up that an ohmmeter may meet, prepared for many states and changes.
class OhmModel {
 public:
  /// Fails when the bridge or the coverage cannot be reckoned with.
  static Result<OhmModel> make(const Setup& setup, const OhmmeterConditions& conditions);

  /// Names of the calibration resistors, each once, in the order of the shunts.
  const std::vector<std::string>& resistors() const { return m_resistors; }
  const Setup& setup() const { return m_setup; }
  /// Leads that the bridge has, sense leads included.
  std::vector<LeadRole> leads() const;
  /// Whether an ohmmeter can meet it: what lies inside an unplugged instrument is away.
  bool has(const OhmPart& part) const;
  /// As planned, in ohm; of an arm, lead, resistor or the input (infinite when it takes no current).
  double plannedValue(const OhmPart& part) const;
  const OhmmeterConditions& conditions() const { return m_conditions; }

  /// None for a state that the channel does not have.
  bool hasState(const WiringState& state) const;
  std::optional<NodeIndex> nodeOf(const OhmPoint& point) const;

  /// The network in `state`, which must be there.
  OhmNetwork networkIn(const WiringState& state, const OhmChange& change = {}) const;

  /// Resistance between two nodes: 1 / input conductance. Points that no resistor connects are open.
  /// The uncertainty follows from dR/dr = (share of the current through r)^2, by Tellegen's theorem; what
  /// `change` fixed has none. Fails when a resistor on the way has no usable value, or a statement of
  /// uncertainty that matters is refused.
  Result<OhmValue> between(const OhmNetwork& network, NodeIndex from, NodeIndex to) const;

  /// Half width of what the ohmmeter may show: k u, plus its own error.
  double toleranceOf(const OhmValue& value) const;

 private:
  OhmModel(const Setup& setup, const OhmmeterConditions& conditions)
      : m_setup(setup), m_conditions(conditions) {}

  void prepareInputs();
  void prepareBridge();
  void listResistors();
  std::size_t resistorOf(const Shunt& shunt) const;
  NodeIndex endNode(std::size_t resistor, std::size_t end) const { return m_firstEnd + 2 * resistor + end; }
  std::optional<std::size_t> shuntNamed(const std::string& name) const;
  bool isAway(const Shunt& shunt) const;
  void addAlways(OhmNetwork& network, std::size_t shunt) const;
  void addBranch(OhmNetwork& network, OhmBranch branch,
                 std::initializer_list<std::pair<Input, double>> ohmPerUnit) const;
  void addResistors(OhmNetwork& network, const WiringState& state, const OhmChange& change) const;
  void addLaid(OhmNetwork& network, const WiringState& state, std::size_t shunt,
               const OhmChange& change) const;
  void addClosed(OhmNetwork& network, std::size_t shunt, const Landing& landing) const;
  void addStraightJoins(OhmNetwork& network, std::size_t shunt, const std::vector<Jumper>& jumpers,
                        std::size_t count) const;

  Setup m_setup;
  OhmmeterConditions m_conditions;
  OhmNetwork m_bridge;  ///< without resistors; nodes of core::Node first, then those of the bridge's effects
  NodeIndex m_firstEnd = 0;  ///< ends 1 and 2 of the first resistor, then of the next
  std::vector<std::string> m_resistors;
  std::vector<std::size_t> m_firstShunt;  ///< resistor -> first shunt that is made of it
  std::vector<Input> m_inputs;
  std::map<Input, std::size_t> m_inputAt;
  std::vector<double> m_standard;
  std::vector<std::optional<Error>> m_refusals;
  std::vector<CorrelatedPair> m_pairs;
  double m_coverageFactor = 2;
};

}  // namespace core
