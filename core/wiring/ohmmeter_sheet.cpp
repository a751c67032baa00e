// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wiring/ohmmeter_sheet.h"

#include <algorithm>
#include <cmath>

#include "core/units/language.h"
#include "core/wiring/ohm_network.h"

namespace core {
namespace {

std::string jumperText(const Jumper& jumper) {
  return say("{1} to {2}", {pinText(jumper.from), pinText(jumper.to)});
}

}  // namespace

std::string wiringStateText(const Setup& setup, const WiringState& state) {
  if (state.shunt.empty()) return say("all shunts open");
  const auto shunt = std::find_if(setup.shunts.begin(), setup.shunts.end(),
                                  [&](const Shunt& s) { return s.name == state.shunt; });
  const std::size_t all = shunt == setup.shunts.end() ? 0 : shunt->jumpers.size();
  if (all > 0 && state.jumpers == 0) return say("{1}: before the first jumper", {state.shunt});
  if (state.jumpers >= all) return say("{1} closed", {state.shunt});
  return say("{1}: after jumper {2} of {3} ({4})",
             {state.shunt, std::to_string(state.jumpers), std::to_string(all),
              jumperText(shunt->jumpers[state.jumpers - 1])});
}

std::vector<WiringState> wiringStates(const Setup& setup) {
  std::vector<WiringState> states{{}};
  for (const Shunt& shunt : setup.shunts) {
    for (std::size_t k = 1; k < shunt.jumpers.size(); ++k) states.push_back({shunt.name, k});
    states.push_back({shunt.name, shunt.jumpers.size()});
  }
  return states;
}

std::vector<OhmPoint> ohmPoints(const Setup& setup) {
  std::vector<OhmPoint> points;
  for (const Node node : allNodes())
    if (hasNode(setup.bridge, node) && pointOf(setup.bridge, node) == node) points.emplace_back(node);
  const auto hasPin = [&](const ResistorEnd& end) {
    return std::any_of(setup.wiring.pins.begin(), setup.wiring.pins.end(),
                       [&](const Pin& pin) { return pin.use == PinUse(end); });
  };
  for (const Shunt& shunt : setup.shunts)
    for (const std::uint8_t number : resistorEnds) {
      const ResistorEnd end{resistorName(shunt), number};
      if (hasPin(end) && std::find(points.begin(), points.end(), OhmPoint(end)) == points.end())
        points.emplace_back(end);
    }
  return points;
}

Result<std::vector<OhmExpectation>> ohmExpectations(const Setup& setup, const WiringState& state,
                                                    std::span<const OhmPoint> points,
                                                    const OhmmeterConditions& conditions) {
  const auto model = OhmModel::make(setup, conditions);
  if (!model) return model.error();
  if (!model->hasState(state))
    return Error{wiringStateText(setup, state), say("the channel has no such shunt or not as many jumpers"),
                 ""};
  std::vector<NodeIndex> nodes;
  for (const OhmPoint& point : points) {
    const auto node = model->nodeOf(point);
    if (!node) return Error{ohmPointName(point), say("the channel has no such point"), ""};
    nodes.push_back(*node);
  }
  const OhmNetwork network = model->networkIn(state);
  std::vector<OhmExpectation> expectations;
  for (std::size_t i = 0; i < points.size(); ++i)
    for (std::size_t j = i + 1; j < points.size(); ++j) {
      const auto value = model->between(network, nodes[i], nodes[j]);
      if (!value) return value.error();
      OhmExpectation expected{points[i], points[j], {}, {}};
      if (value->ohm <= conditions.openBeyond.base()) {
        expected.ohm = Resistance(value->ohm);
        expected.tolerance = Resistance(model->toleranceOf(*value));
      }
      expectations.push_back(expected);
    }
  return expectations;
}

}  // namespace core
