// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wiring/jumper_hazards.h"

#include <algorithm>
#include <set>

#include "core/circuit/hookup.h"
#include "core/units/language.h"

namespace core {
namespace {

/// How bad it is, worst first.
enum class Harm : std::uint8_t { ExcitationShort, ArmShort, SignalShort, ResistorShort, StaysClosed, None };

struct Effect {
  Harm harm = Harm::None;
  std::string text;                       ///< "short arm 2 while R1 on arm 2 is laid"
  std::optional<std::size_t> shunt = {};  ///< that it concerns
};

std::string listOfArms(const Corners& before, const Corners& after) {
  std::vector<std::string> arms;
  for (const std::size_t arm : {0, 1, 2, 3})
    if (after.armShorted(arm) && !before.armShorted(arm)) arms.push_back(std::to_string(arm + 1));
  if (arms.empty()) return {};
  return sayCount(arms.size(), "arm {1}", "arms {1}", {sayAll(arms)});
}

/// Jumpers that may be laid at one time.
struct Laid {
  std::vector<std::size_t> shunts;    ///< whose jumpers they are
  std::optional<std::size_t> pulled;  ///< of the only shunt, the jumper that is not laid
  /// `harm`, and while what is laid: "short the signal while R1 on arm 2 is laid".
  std::string when(const std::string& harm) const {
    return pattern.empty() ? harm : say(pattern, {harm, of});
  }
  std::string_view pattern = {};  ///< with {1} for the harm, {2} for `of`
  std::string of = {};            ///< a shunt's name, the number of a jumper, the label of a step
};

std::vector<Laid> waysOfLaying(const Setup& setup) {
  std::vector<Laid> ways{{}};
  for (std::size_t shunt = 0; shunt < setup.shunts.size(); ++shunt) {
    const auto& jumpers = setup.shunts[shunt].jumpers;
    if (jumpers.empty()) continue;
    ways.push_back({{shunt}, {}, sayLater("{1} while {2} is laid"), setup.shunts[shunt].name});
    for (std::size_t k = 0; k < jumpers.size(); ++k)
      ways.push_back({{shunt}, k, sayLater("{1} when jumper {2} of it is pulled"), std::to_string(k + 1)});
  }
  std::set<std::vector<std::size_t>> done;
  for (const Step& step : setup.sequence)
    if (step.closed.size() > 1 && step.closed.back() < setup.shunts.size() && done.insert(step.closed).second)
      ways.push_back({step.closed, {}, sayLater("{1} while the shunts of step {2} are laid"), step.label});
  return ways;
}

/// Tries bridges between pins in one way of laying jumpers.
class Trial {
 public:
  Trial(const Setup& setup, const Laid& laid, const JumperGroups& bare)
      : m_setup(setup), m_laid(laid), m_groups(bare), m_corners(setup.bridge, {}) {
    for (const std::size_t shunt : laid.shunts)
      for (std::size_t k = 0; k < setup.shunts[shunt].jumpers.size(); ++k)
        if (laid.pulled != k) m_groups.lay(setup.shunts[shunt].jumpers[k]);
    m_corners = cornersOf(m_groups);
    m_pins = m_groups.pinGroups(setup.wiring.pins);
  }

  /// Whether a bridge between these two of the pins can do anything, without trying it.
  bool matters(std::size_t a, std::size_t b) const {
    const auto &first = m_pins[a], &second = m_pins[b];
    if (first.group == second.group) return false;
    if (m_laid.pulled) return first.point.has_value() != second.point.has_value();
    for (const std::string* one : first.resistors)
      for (const std::string* other : second.resistors)
        if (*one == *other) return true;
    return first.point && second.point && !m_corners.together(*first.point, *second.point);
  }

  Effect bridging(const PinName& a, const PinName& b) const {
    JumperGroups bridged = m_groups;
    bridged.lay({a, b});
    if (m_laid.pulled) return staysClosed(bridged);
    const Corners after = cornersOf(bridged);
    const std::optional<std::size_t> shunt =
        m_laid.shunts.size() == 1 ? std::optional(m_laid.shunts[0]) : std::nullopt;
    if (after.excitationShorted() && !m_corners.excitationShorted())
      return {Harm::ExcitationShort, m_laid.when(say("short the excitation")), shunt};
    if (const std::string arms = listOfArms(m_corners, after); !arms.empty())
      return {Harm::ArmShort, m_laid.when(say("short {1}", {arms})), shunt};
    if (after.signalShorted() && !m_corners.signalShorted())
      return {Harm::SignalShort, m_laid.when(say("short S+ and S-")), shunt};
    return shortsResistor(bridged);
  }

 private:
  Corners cornersOf(const JumperGroups& groups) const { return {m_setup.bridge, groups.joinedPoints()}; }

  Effect staysClosed(const JumperGroups& bridged) const {
    const std::size_t shunt = m_laid.shunts[0];
    if (isClosed(m_groups, shunt) || !isClosed(bridged, shunt)) return {};
    return {Harm::StaysClosed, m_laid.when(say("keep {1} closed", {m_setup.shunts[shunt].name})), shunt};
  }

  bool isClosed(const JumperGroups& groups, std::size_t shunt) const {
    const std::string& resistor = resistorName(m_setup.shunts[shunt]);
    return !groups.pointsAt({resistor, 1}).empty() && !groups.pointsAt({resistor, 2}).empty();
  }

  Effect shortsResistor(const JumperGroups& bridged) const {
    for (std::size_t shunt = 0; shunt < m_setup.shunts.size(); ++shunt) {
      const std::string& resistor = resistorName(m_setup.shunts[shunt]);
      const ResistorEnd first{resistor, 1}, second{resistor, 2};
      if (bridged.joined(first, second) && !m_groups.joined(first, second))
        return {Harm::ResistorShort, say("short {1}", {resistor}), shunt};
    }
    return {};
  }

  const Setup& m_setup;
  const Laid& m_laid;
  JumperGroups m_groups;
  Corners m_corners;
  std::vector<JumperGroups::PinGroup> m_pins;
};

WiringFault hazard(const Setup& setup, const PinName& a, const PinName& b, const Effect& effect) {
  WiringFault fault;
  fault.kind = WiringFaultKind::NeighbourHazard;
  fault.severity = WiringSeverity::Warning;
  fault.shunt = effect.shunt;
  fault.pins = {a, b};
  fault.what = say("A bridge between the neighbouring pins {1} and {2} would {3}",
                   {pinLabel(setup, a), pinLabel(setup, b), effect.text});
  fault.mend = effect.harm == Harm::ExcitationShort
                   ? say("Keep these two apart: leave a pin between them unused, and check for a short "
                         "before you switch the excitation on")
                   : say("Leave a pin between them unused, or check with the ohmmeter that they are apart");
  return fault;
}

/// Each two pins of one connector that follow each other in the list, by their places in it.
std::vector<std::pair<std::size_t, std::size_t>> neighbours(const std::vector<Pin>& pins) {
  std::vector<std::pair<std::size_t, std::size_t>> pairs;
  std::map<std::string, std::size_t> last;
  for (std::size_t k = 0; k < pins.size(); ++k) {
    const auto before = last.find(pins[k].name.connector);
    if (before != last.end() && pins[before->second].name != pins[k].name)
      pairs.emplace_back(before->second, k);
    last[pins[k].name.connector] = k;
  }
  return pairs;
}

}  // namespace

Corners::Corners(const Bridge& bridge, const std::vector<std::vector<Node>>& joinedPoints)
    : m_corner(allNodes()) {
  for (const Join& one : templateOf(bridge.type).joins) join(one.a, one.b);
  const std::vector<Wire> wires = wiresOf(bridge);
  for (const Wire& wire : wires)
    if (!isBroken(bridge, wire.role)) join(wire.from, wire.to);
  const auto gaugeEnd = [&](LeadRole role) {
    return std::find_if(wires.begin(), wires.end(), [&](const Wire& w) { return w.role == role; })->to;
  };
  for (const LeadPair& pair : hookupInUse(bridge).touching) join(gaugeEnd(pair.a), gaugeEnd(pair.b));
  for (const auto& points : joinedPoints)
    for (std::size_t k = 1; k < points.size(); ++k) join(points[0], points[k]);
}

void Corners::join(Node a, Node b) {
  const Node kept = std::min(m_corner[index(a)], m_corner[index(b)]);
  const Node gone = std::max(m_corner[index(a)], m_corner[index(b)]);
  std::replace(m_corner.begin(), m_corner.end(), gone, kept);
}

std::string effectOfJoining(const Bridge& bridge, const std::vector<std::vector<Node>>& joined) {
  const Corners first(bridge, {}), then(bridge, joined);
  if (then.excitationShorted() && !first.excitationShorted()) return say("shorts the excitation");
  if (const std::string arms = listOfArms(first, then); !arms.empty()) return say("shorts {1}", {arms});
  if (then.signalShorted() && !first.signalShorted()) return say("shorts the signal");
  return say("bridges a lead");
}

std::vector<WiringFault> neighbourHazards(const Setup& setup) {
  const auto& pins = setup.wiring.pins;
  const auto pairs = neighbours(pins);
  std::vector<Effect> worst(pairs.size());
  if (pairs.empty()) return {};
  const JumperGroups bare(setup);
  for (const Laid& laid : waysOfLaying(setup)) {
    const Trial trial(setup, laid, bare);
    for (std::size_t k = 0; k < pairs.size(); ++k) {
      const auto [a, b] = pairs[k];
      if (worst[k].harm == Harm::ExcitationShort || !trial.matters(a, b)) continue;
      Effect effect = trial.bridging(pins[a].name, pins[b].name);
      if (effect.harm < worst[k].harm) worst[k] = std::move(effect);
    }
  }
  std::vector<WiringFault> faults;
  for (std::size_t k = 0; k < pairs.size(); ++k)
    if (worst[k].harm != Harm::None)
      faults.push_back(hazard(setup, pins[pairs[k].first].name, pins[pairs[k].second].name, worst[k]));
  return faults;
}

}  // namespace core
