// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wiring/wiring_rules.h"

#include <algorithm>
#include <array>
#include <set>

#include "core/circuit/node_words.h"
#include "core/units/language.h"
#include "core/wiring/jumper_groups.h"
#include "core/wiring/jumper_hazards.h"

namespace core {
namespace {

using Kind = WiringFaultKind;

constexpr std::array<std::string_view, wiringFaultKindCount> names = {
    sayLater("excitation shorted"), sayLater("places joined"),  sayLater("wrong place"),
    sayLater("hanging end"),        sayLater("pin used twice"), sayLater("unknown pin"),
    sayLater("unused pin"),         sayLater("missing pin"),    sayLater("neighbouring pins")};
constexpr std::array<std::string_view, wiringFaultKindCount> keys = {
    "excitation_short", "nodes_joined", "wrong_place", "hanging_end",     "pin_used_twice",
    "unknown_pin",      "unused_pin",   "missing_pin", "neighbour_hazard"};

std::string jumperNumber(std::size_t k) { return say("jumper {1}", {std::to_string(k + 1)}); }

std::string listOf(const std::vector<Node>& points) {
  std::vector<std::string> names;
  for (const Node point : points) names.emplace_back(nodeWords(point));
  return sayAll(names);
}

const Pin* pinNamed(const Setup& setup, const PinName& name) {
  const auto found = std::find_if(setup.wiring.pins.begin(), setup.wiring.pins.end(),
                                  [&](const Pin& pin) { return pin.name == name; });
  return found == setup.wiring.pins.end() ? nullptr : &*found;
}

bool hasPinFor(const Setup& setup, const std::variant<Node, ResistorEnd>& place) {
  return std::any_of(setup.wiring.pins.begin(), setup.wiring.pins.end(),
                     [&](const Pin& pin) { return leadsTo(setup.bridge, pin.use) == place; });
}

std::optional<PinName> firstPinFor(const Setup& setup, const std::variant<Node, ResistorEnd>& place) {
  for (const Pin& pin : setup.wiring.pins)
    if (leadsTo(setup.bridge, pin.use) == place) return pin.name;
  return std::nullopt;
}

/// Faults of pins, then of each shunt's jumpers, then of steps, each told once.
class Checker {
 public:
  explicit Checker(const Setup& setup) : m_setup(setup), m_bare(setup) {}

  std::vector<WiringFault> all() {
    checkPins();
    for (std::size_t shunt = 0; shunt < m_setup.shunts.size(); ++shunt)
      if (!isSwitchedInside(m_setup, m_setup.shunts[shunt])) checkShunt(shunt);
    checkSteps();
    std::stable_sort(m_faults.begin(), m_faults.end(), [](const WiringFault& a, const WiringFault& b) {
      return a.severity == WiringSeverity::Error && b.severity == WiringSeverity::Warning;
    });
    for (WiringFault& hazard : neighbourHazards(m_setup)) m_faults.push_back(std::move(hazard));
    return std::move(m_faults);
  }

 private:
  void checkPins() {
    const auto& pins = m_setup.wiring.pins;
    std::set<PinName> told;
    for (std::size_t i = 0; i < pins.size(); ++i)
      for (std::size_t j = i + 1; j < pins.size(); ++j) {
        if (pins[i].name != pins[j].name || !told.insert(pins[i].name).second) continue;
        const bool alike = leadsTo(m_setup.bridge, pins[i].use) == leadsTo(m_setup.bridge, pins[j].use);
        WiringFault fault{Kind::PinUsedTwice, alike ? WiringSeverity::Warning : WiringSeverity::Error};
        fault.pins = {pins[i].name};
        fault.what = say("Pin {1} stands in the list twice, as {2} and as {3}",
                         {pinText(pins[i].name), pinUseName(pins[i].use), pinUseName(pins[j].use)});
        fault.mend = say("Give each function a pin of its own");
        m_faults.push_back(std::move(fault));
      }
  }

  void checkShunt(std::size_t shunt) {
    checkJumperPins(shunt);
    const bool complete = checkPlaces(shunt);
    JumperGroups laid = m_bare;
    for (const Jumper& jumper : m_setup.shunts[shunt].jumpers) laid.lay(jumper);
    checkJoins(laid, shunt, say("The jumpers of {1}", {m_setup.shunts[shunt].name}));
    if (complete) checkLanding(laid, shunt);
  }

  WiringFault& addFault(Kind kind, std::optional<std::size_t> shunt) {
    WiringFault& fault = m_faults.emplace_back();
    fault.kind = kind;
    fault.shunt = shunt;
    return fault;
  }

  void checkJumperPins(std::size_t shunt) {
    const auto& jumpers = m_setup.shunts[shunt].jumpers;
    for (std::size_t k = 0; k < jumpers.size(); ++k) {
      const std::string start = m_setup.shunts[shunt].name + ": " + jumperNumber(k);
      if (jumpers[k].from == jumpers[k].to) {
        WiringFault& fault = addFault(Kind::UnusedPin, shunt);
        fault.pins = {jumpers[k].from};
        fault.what = say("{1} leads from {2} back to itself", {start, pinLabel(m_setup, jumpers[k].from)});
        fault.mend = say("Lead it to another pin or take it out");
        continue;
      }
      for (const PinName& name : {jumpers[k].from, jumpers[k].to}) checkJumperPin(shunt, name, start);
    }
  }

  /// An unused pin where several jumpers meet is a tie point, which is in order.
  void checkJumperPin(std::size_t shunt, const PinName& name, const std::string& start) {
    const Pin* pin = pinNamed(m_setup, name);
    const auto& jumpers = m_setup.shunts[shunt].jumpers;
    const auto meeting = std::count_if(jumpers.begin(), jumpers.end(), [&](const Jumper& jumper) {
      return jumper.from == name || jumper.to == name;
    });
    if (pin && (meeting > 1 || leadsTo(m_setup.bridge, pin->use))) return;
    WiringFault& fault = addFault(pin ? Kind::UnusedPin : Kind::UnknownPin, shunt);
    fault.pins = {name};
    fault.what = say("{1} goes to {2}",
                     {start, (pin ? say("{1}, which leads nowhere", {pinText(name)}) : missingText(name))});
    fault.mend = pin ? say("Choose a pin with a place of the bridge or an end of a resistor")
                     : say("Choose a pin of the list, or add this one to it");
  }

  static std::string missingText(const PinName& name) {
    const std::string text = pinText(name);
    return text.empty() ? say("no pin") : say("pin {1}, which is not in the list", {text});
  }

  /// Whether all pins are there that the shunt needs.
  bool checkPlaces(std::size_t shunt) {
    const Shunt& laid = m_setup.shunts[shunt];
    bool complete = true;
    const auto need = [&](const std::variant<Node, ResistorEnd>& place, const std::string& name) {
      if (hasPinFor(m_setup, place)) return;
      complete = false;
      WiringFault& fault = addFault(Kind::MissingPin, shunt);
      fault.what = say("{1}: {2} has no pin", {laid.name, name});
      fault.mend = say("Give it a pin in the list");
    };
    for (const Node node : {laid.a, laid.b})
      need(pointOf(m_setup.bridge, node), std::string(nodeWords(node)));
    for (const std::uint8_t end : resistorEnds)
      need(ResistorEnd{resistorName(laid), end}, pinUseName(ResistorEnd{resistorName(laid), end}));
    return complete;
  }

  /// Places that are one conductor with the jumpers laid and were not before.
  void checkJoins(const JumperGroups& laid, std::optional<std::size_t> shunt, const std::string& whose) {
    const auto before = m_bare.joinedPoints(), after = laid.joinedPoints();
    const Corners known(m_setup.bridge, before), now(m_setup.bridge, after);
    if (now.excitationShorted() && !known.excitationShorted()) {
      WiringFault& fault = addFault(Kind::ExcitationShort, shunt);
      fault.pins = pinsThatJoin(laid);
      std::string groups = listOf(after.front());
      for (std::size_t k = 1; k < after.size(); ++k) groups = say("{1}, and {2}", {groups, listOf(after[k])});
      fault.what = say("{1} short the excitation: they join {2}", {whose, groups});
      fault.mend = say("Take out the jumper that joins them before you switch the excitation on");
      return;
    }
    for (const auto& points : after) {
      if (std::find(before.begin(), before.end(), points) != before.end()) continue;
      WiringFault& fault = addFault(Kind::NodesJoined, shunt);
      fault.pins = laid.pinsAt(points.front());
      fault.what =
          say("{1} join {2}, which {3}", {whose, listOf(points), effectOfJoining(m_setup.bridge, {points})});
      fault.mend = say("Lead each jumper from an end of the resistor to one place of the bridge");
    }
  }

  std::vector<PinName> pinsThatJoin(const JumperGroups& laid) const {
    std::vector<PinName> pins;
    for (const auto& points : laid.joinedPoints())
      for (const PinName& pin : laid.pinsAt(points.front())) pins.push_back(pin);
    return pins;
  }

  void checkLanding(const JumperGroups& laid, std::size_t shunt) {
    const Shunt& planned = m_setup.shunts[shunt];
    const ResistorEnd ends[2] = {{resistorName(planned), 1}, {resistorName(planned), 2}};
    const std::vector<Node> at[2] = {laid.pointsAt(ends[0]), laid.pointsAt(ends[1])};
    for (const std::size_t k : {0, 1})
      if (at[k].empty()) addHangingEnd(shunt, ends[k]);
    if (at[0].empty() || at[1].empty()) return;
    const Node a = pointOf(m_setup.bridge, planned.a), b = pointOf(m_setup.bridge, planned.b);
    const auto lies = [&](std::size_t k, Node point) {
      return std::find(at[k].begin(), at[k].end(), point) != at[k].end();
    };
    if ((lies(0, a) && lies(1, b)) || (lies(0, b) && lies(1, a))) return;
    WiringFault& fault = addFault(Kind::WrongPlace, shunt);
    for (const Jumper& jumper : planned.jumpers) {
      fault.pins.push_back(jumper.from);
      fault.pins.push_back(jumper.to);
    }
    fault.what = say("{1}: {2} comes to lie between {3} and {4}; the plan wants it between {5} and {6}{7}",
                     {planned.name, resistorName(planned), listOf(at[0]), listOf(at[1]), nodeWords(planned.a),
                      nodeWords(planned.b), jumpersText(planned)});
    fault.mend = mendFor(shunt);
  }

  void addHangingEnd(std::size_t shunt, const ResistorEnd& end) {
    const Shunt& planned = m_setup.shunts[shunt];
    WiringFault& fault = addFault(Kind::HangingEnd, shunt);
    if (const auto pin = firstPinFor(m_setup, end)) fault.pins = {*pin};
    fault.what = say("{1}: no jumper leads from {2}{3} to the bridge, so the shunt hangs on {4}",
                     {planned.name, pinUseName(end),
                      (fault.pins.empty() ? std::string() : " (" + pinText(fault.pins[0]) + ")"),
                      (planned.jumpers.empty() ? say("nothing") : say("one end"))});
    fault.mend = mendFor(shunt);
  }

  std::string jumpersText(const Shunt& shunt) const {
    std::string text;
    for (std::size_t k = 0; k < shunt.jumpers.size(); ++k) {
      const std::string one =
          say("{1} {2} to {3}", {jumperNumber(k), pinLabel(m_setup, shunt.jumpers[k].from),
                                 pinLabel(m_setup, shunt.jumpers[k].to)});
      text = text.empty() ? one : say("{1}, {2}", {text, one});
    }
    return text.empty() ? text : " (" + text + ")";
  }

  std::string mendFor(std::size_t shunt) const {
    const auto right = jumpersFor(m_setup, shunt);
    if (!right) return say("Lay a jumper from each end of the resistor to its place");
    std::vector<std::string> jumpers;
    for (const Jumper& jumper : *right)
      jumpers.push_back(say("{1} to {2}", {pinLabel(m_setup, jumper.from), pinLabel(m_setup, jumper.to)}));
    return say("Lay {1}", {sayAll(jumpers)});
  }

  /// Jumpers that are in order alone may clash when a step needs them at the same time.
  void checkSteps() {
    std::set<std::vector<std::size_t>> done;
    for (const Step& step : m_setup.sequence) {
      if (step.closed.size() < 2 || !done.insert(step.closed).second) continue;
      if (step.closed.back() < m_setup.shunts.size()) checkTogether(step.closed);
    }
  }

  void checkTogether(const std::vector<std::size_t>& closed) {
    JumperGroups laid = m_bare;
    std::vector<std::string> names;
    for (std::size_t k = 0; k < closed.size(); ++k) {
      const Shunt& shunt = m_setup.shunts[closed[k]];
      names.push_back(shunt.name);
      for (const Jumper& jumper : shunt.jumpers) laid.lay(jumper);
      // A shunt that is wrong alone has been told of.
      for (const WiringFault& fault : m_faults)
        if (fault.shunt == closed[k] && fault.severity == WiringSeverity::Error) return;
    }
    checkJoins(laid, std::nullopt, say("Laid together, the jumpers of {1}", {sayAll(names)}));
  }

  const Setup& m_setup;
  JumperGroups m_bare;  ///< with no jumper laid
  std::vector<WiringFault> m_faults;
};

/// Places that shunts go to, by their first names; the terminals when there are no shunts.
std::vector<Node> placesNeeded(const Setup& setup) {
  std::set<Node> places;
  for (const Shunt& shunt : setup.shunts)
    for (const Node node : {shunt.a, shunt.b})
      if (hasNode(setup.bridge, node)) places.insert(pointOf(setup.bridge, node));
  if (setup.shunts.empty())
    for (const Node node : {Node::PPlus, Node::PMinus, Node::SPlus, Node::SMinus}) places.insert(node);
  return {places.begin(), places.end()};
}

std::vector<std::string> resistorsOf(const Setup& setup) {
  std::vector<std::string> resistors;
  for (const Shunt& shunt : setup.shunts)
    if (std::find(resistors.begin(), resistors.end(), resistorName(shunt)) == resistors.end())
      resistors.push_back(resistorName(shunt));
  return resistors;
}

}  // namespace

std::string_view wiringFaultName(WiringFaultKind kind) {
  return sayName(names[static_cast<std::size_t>(kind)]);
}

std::string_view wiringFaultKey(WiringFaultKind kind) { return keys[static_cast<std::size_t>(kind)]; }

std::string pinUseName(const PinUse& use) {
  if (const auto* node = std::get_if<Node>(&use)) return std::string(nodeWords(*node));
  if (const auto* end = std::get_if<ResistorEnd>(&use))
    return say("{1} end {2}", {end->resistor, std::to_string(end->end)});
  return say("unused");
}

std::string pinLabel(const Setup& setup, const PinName& name) {
  const Pin* pin = pinNamed(setup, name);
  return pinText(name) + " (" + (pin ? pinUseName(pin->use) : say("not in the list")) + ")";
}

bool isSwitchedInside(const Setup& setup, const Shunt& shunt) {
  return shunt.jumpers.empty() && !hasPinFor(setup, ResistorEnd{resistorName(shunt), 1}) &&
         !hasPinFor(setup, ResistorEnd{resistorName(shunt), 2});
}

std::vector<WiringFault> wiringFaults(const Setup& setup) { return Checker(setup).all(); }

Result<std::vector<Jumper>> jumpersFor(const Setup& setup, std::size_t shunt) {
  const Shunt& planned = setup.shunts[shunt];
  std::vector<Jumper> jumpers;
  for (const std::uint8_t end : resistorEnds) {
    const ResistorEnd from{resistorName(planned), end};
    const Node to = end == 1 ? planned.a : planned.b;
    const auto fromPin = firstPinFor(setup, from);
    const auto toPin = firstPinFor(setup, pointOf(setup.bridge, to));
    if (!fromPin || !toPin)
      return Error{planned.name,
                   say("{1} has no pin", {(fromPin ? std::string(nodeWords(to)) : pinUseName(from))}),
                   say("Give it a pin in the list")};
    jumpers.push_back({*fromPin, *toPin});
  }
  return jumpers;
}

Wiring usualWiring(const Setup& setup) {
  Wiring wiring;
  const auto add = [&](const std::string& connector, PinUse use) {
    std::size_t number = 1;
    for (const Pin& pin : wiring.pins) number += pin.name.connector == connector;
    wiring.pins.push_back({{connector, std::to_string(number)}, std::move(use)});
  };
  for (const Node place : placesNeeded(setup)) {
    if (!wiring.pins.empty()) add("J1", std::monostate{});
    add("J1", place);
  }
  const auto resistors = resistorsOf(setup);
  for (const std::string& resistor : resistors) add("J2", ResistorEnd{resistor, 1});
  if (!resistors.empty()) add("J2", std::monostate{});
  for (const std::string& resistor : resistors) add("J2", ResistorEnd{resistor, 2});
  return wiring;
}

}  // namespace core
