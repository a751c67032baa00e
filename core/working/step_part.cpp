// SPDX-License-Identifier: GPL-3.0-or-later
#include <array>
#include <utility>

#include "core/circuit/hookup_words.h"
#include "core/review/arm_place.h"
#include "core/units/language.h"
#include "core/working/amounts.h"
#include "core/working/parts.h"

namespace core {
namespace {

using namespace amounts;

std::string armWord(std::size_t arm) { return say("arm {1}", {std::to_string(arm + 1)}); }
std::string armLetter(std::size_t arm) { return "R" + std::to_string(arm + 1); }

/// "right across arm 2", "across arm 1 and its leads, from terminal P+ to terminal S-".
std::string whereText(const Bridge& bridge, const Shunt& shunt) {
  const auto place = placeOf(bridge, shunt);
  if (place && place->atOwnEnds) return say("right across {1}", {armWord(place->arm)});
  const std::string ends = say("from {1} to {2}", {pointName(bridge, shunt.a), pointName(bridge, shunt.b)});
  return place ? say("across {1} and leads, {2}", {armWord(place->arm), ends})
               : say("{1}, across no single arm", {ends});
}

void addShunt(WorkingPart& part, const Bridge& bridge, const Shunt& shunt) {
  WorkingLine line{say("Shunt {1}, {2}", {shunt.name, whereText(bridge, shunt)}), "Rs", ohm(shunt.resistance),
                   ohm(resistanceOf(shunt))};
  const bool wires = shunt.wires.base() != 0, contact = shunt.contact.base() != 0;
  if (wires) line.formula += " + " + say("wires"), line.numbers += " + " + ohm(shunt.wires);
  if (contact) line.formula += " + " + say("contact"), line.numbers += " + " + ohm(shunt.contact);
  if (!wires && !contact) line.numbers.clear();
  part.lines.push_back(std::move(line));
}

/// An arm with the shunts that lie right across it.
struct ShuntedArm {
  std::size_t arm = 0;
  std::vector<Resistance> shunts;
  Resistance own, together;
};

std::vector<ShuntedArm> shuntedArms(const WorkingGround& ground) {
  std::vector<ShuntedArm> arms;
  for (const std::size_t arm : {0, 1, 2, 3}) {
    ShuntedArm shunted{arm, {}, ground.setup.bridge.arms[arm], {}};
    double siemens = 1 / shunted.own.base();
    for (const std::size_t closed : ground.setup.sequence[ground.step].closed) {
      const Shunt& shunt = ground.setup.shunts[closed];
      const auto place = placeOf(ground.setup.bridge, shunt);
      if (!place || !place->atOwnEnds || place->arm != arm) continue;
      shunted.shunts.push_back(resistanceOf(shunt));
      siemens += 1 / resistanceOf(shunt).base();
    }
    shunted.together = Resistance(1 / siemens);
    if (!shunted.shunts.empty()) arms.push_back(std::move(shunted));
  }
  return arms;
}

void addArm(WorkingPart& part, const WorkingGround& ground, const ShuntedArm& shunted) {
  const std::string letter = armLetter(shunted.arm), own = ohm(shunted.own);
  const std::string name = say("Arm {1}", {std::to_string(shunted.arm + 1)});
  if (shunted.shunts.size() == 1) {
    const std::string rs = ohm(shunted.shunts.front());
    part.lines.push_back({say("{1} with the shunt", {name}),
                          say("{1}′ = {2} Rs / ({3} + Rs)", {letter, letter, letter}),
                          own + " × " + rs + " / (" + own + " + " + rs + ")", ohm(shunted.together)});
  } else {
    std::string numbers = "1 / (1/" + own;
    for (const Resistance rs : shunted.shunts) numbers += " + 1/" + ohm(rs);
    part.lines.push_back({say("{1} with its shunts", {name}),
                          say("{1}′ = 1 / (1/{2} + Σ 1/Rs)", {letter, letter}), numbers + ")",
                          ohm(shunted.together)});
  }
  const double relative = (shunted.together - shunted.own) / shunted.own;
  part.lines.push_back({say("Relative change of {1}", {armWord(shunted.arm)}),
                        say("ΔR/R = ({1}′ − {2}) / {3}", {letter, letter, letter}),
                        "(" + ohm(shunted.together) + " − " + own + ") / " + own, number(relative)});
  if (isTransducer(ground.setup.bridge)) return;
  const double factor = gaugeFactorOf(ground.setup.bridge.gauge);
  part.lines.push_back({say("Arm change as strain"), "(ΔR/R) / F",
                        inFormula(number(relative)) + " / " + number(factor), strain(relative / factor)});
}

/// What the arms alone would make of the excitation; leads and all else come with the network below.
void addHalfBridges(WorkingPart& part, const WorkingGround& ground, const std::vector<ShuntedArm>& shunted) {
  if (!areLeadsInOrder(ground.setup.bridge)) return;  // the arms are no two half bridges then
  std::array<Resistance, 4> now = ground.setup.bridge.arms;
  std::array<std::string, 4> letter;
  for (const std::size_t arm : {0, 1, 2, 3}) letter[arm] = armLetter(arm);
  for (const ShuntedArm& one : shunted) now[one.arm] = one.together, letter[one.arm] += "′";
  const bool turned = ground.setup.bridge.hookup.excitationReversed;
  const auto add = [&](const std::string& node, std::size_t lower, std::size_t upper) {
    if (turned) std::swap(lower, upper);                                 // the source's minus side is on P+
    if (letter[lower].size() == 2 && letter[upper].size() == 2) return;  // neither has a shunt
    part.lines.push_back({say("Half bridge at {1} from its arms alone", {node}),
                          letter[lower] + " / (" + letter[upper] + " + " + letter[lower] + ")",
                          ohm(now[lower]) + " / (" + ohm(now[upper]) + " + " + ohm(now[lower]) + ")",
                          number(now[lower] / (now[upper] + now[lower]))});
  };
  add("S-", 1, 0);
  add("S+", 2, 3);
}

std::string wholeNetwork(const Setup& setup) {
  const Bridge& bridge = setup.bridge;
  std::string with;
  const auto add = [&](bool there, const std::string& what) {
    if (there) with += (with.empty() ? "" : ", ") + what;
  };
  bool leads = false, leaks = false;
  for (const Wire& wire : wiresOf(bridge)) leads = leads || leadResistance(bridge, wire.role).base() != 0;
  for (const Leak& leak : bridge.leaks) leaks = leaks || leak.across || leak.toStructure;
  add(leads, say("leads"));
  add(leaks, say("leaks"));
  add(setup.instrument.balance.kind != BalanceKind::None, say("balance network"));
  add(bool(setup.instrument.inputResistance), say("input resistance"));
  return with.empty() ? say("of arms and shunts") : say("with {1}", {with});
}

/// Potentials of the signal terminals and of the reference, and the output.
void addOutput(WorkingPart& part, const WorkingGround& ground) {
  const Setup& setup = ground.setup;
  const auto ratio = potentials(setup, ground.step);
  const auto excitation = excitationOf(setup, ground.step);
  const std::string v = ground.isZeroStep() ? "v₀" : "v";
  const Output now = ground.zero + ground.predicted.output;
  if (!ratio || !excitation) return;  // cannot be: the step is predicted
  const auto at = [&](Node node) {
    return (*ratio)[static_cast<std::size_t>(node)].value_or(0) * excitation->base();
  };
  const BridgeNetwork bridge = bridgeNetwork(setup.bridge, setup.instrument, {});
  part.lines.push_back(
      {say("Potential of S+, whole network {1}", {wholeNetwork(setup)}), "V(S+)", "", volt(at(Node::SPlus))});
  part.lines.push_back({say("Potential of S-, the same network"), "V(S-)", "", volt(at(Node::SMinus))});
  const auto place = [&](NodeIndex node) { return "V(" + bridge.network.nodes[node] + ")"; };
  const auto letters = [&](Port port) { return "(" + place(port.plus) + " − " + place(port.minus) + ")"; };
  const auto volts = [&](Port port) {
    return "(" + volt(at(static_cast<Node>(port.plus))) + " − " + volt(at(static_cast<Node>(port.minus))) +
           ")";
  };
  std::string formula = letters(bridge.output) + " / ", numbers = volts(bridge.output) + " / ";
  if (const auto& current = setup.instrument.current) {
    formula += "(I R)";
    numbers += "(" + number(1e3 * current->supplied.base(), "mA") + " × " + ohm(current->nominal) + ")";
  } else {
    formula += letters(bridge.reference);
    numbers += volts(bridge.reference);
  }
  part.lines.push_back({ground.isZeroStep() ? say("Output with all shunts open") : say("Output"),
                        v + " = " + formula, numbers, output(now)});
}

}  // namespace

WorkingPart stepPart(const WorkingGround& ground) {
  WorkingPart part{say("The step"), {}};
  const Setup& setup = ground.setup;
  for (const std::string& sentence : hookupSentences(setup.bridge))
    part.lines.push_back({say("Not as the template says"), "", "", sentence});
  if (ground.isZeroStep()) {
    part.lines.push_back({say("Shunts"), "", "", say("all open: a zero step")});
    addOutput(part, ground);
    return part;
  }
  for (const std::size_t shunt : setup.sequence[ground.step].closed)
    addShunt(part, setup.bridge, setup.shunts[shunt]);
  const std::vector<ShuntedArm> arms = shuntedArms(ground);
  for (const ShuntedArm& arm : arms) addArm(part, ground, arm);
  addHalfBridges(part, ground, arms);
  addOutput(part, ground);
  part.lines.push_back({say("Output with all shunts open"), "v₀", "", output(ground.zero)});
  part.lines.push_back(
      {say("Change of output, {1}", {polarityWord(ground.predicted.polarity)}), say("Δv = v − v₀"),
       output(ground.zero + ground.predicted.output) + " − " + inFormula(output(ground.zero)),
       output(ground.predicted.output)});
  return part;
}

}  // namespace core
