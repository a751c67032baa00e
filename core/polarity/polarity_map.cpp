// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/polarity/polarity_map.h"

#include <algorithm>
#include <cassert>

#include "core/polarity/place_words.h"
#include "core/units/language.h"

namespace core {
namespace {

/// The bridge and its instrument with one shunt at each place, and a step that closes it alone: one network
/// for all cells.
Setup withShuntEverywhere(const Setup& setup, const PolarityMap& map) {
  Setup everywhere;
  everywhere.bridge = setup.bridge;
  everywhere.instrument = setup.instrument;
  everywhere.shunts.reserve(map.cells.size());
  everywhere.sequence.reserve(map.cells.size());
  for (const PolarityCell& cell : map.cells) {
    everywhere.sequence.push_back({{}, {everywhere.shunts.size()}});
    everywhere.shunts.push_back(
        {say("shunt {1}", {placeWords(setup.bridge, cell.a, cell.b)}), map.shunt, cell.a, cell.b});
  }
  return everywhere;
}

}  // namespace

std::size_t PolarityMap::cellOf(std::size_t i, std::size_t j) const {
  assert(i != j && std::max(i, j) < points.size());
  const std::size_t row = std::min(i, j), column = std::max(i, j);
  // Rows before it have points - 1, points - 2 and so on cells.
  return row * (2 * points.size() - row - 1) / 2 + column - row - 1;
}

std::vector<Node> pointsOf(const Bridge& bridge) {
  std::vector<Node> points;
  for (const Node node : allNodes())
    if (hasNode(bridge, node) && pointOf(bridge, node) == node) points.push_back(node);
  return points;
}

Result<PolarityMap> polarityMap(const Setup& setup, Resistance shunt) {
  auto circuit = BridgeCircuit::make(setup.bridge, setup.instrument, {});
  if (!circuit) return circuit.error();
  if (auto zero = circuit->solveOutput(); !zero) return zero.error();

  PolarityMap map;
  map.shunt = shunt;
  map.points = pointsOf(setup.bridge);
  std::erase_if(map.points, [&](Node point) { return !circuit->connected(point); });
  for (std::size_t i = 0; i < map.points.size(); ++i)
    for (std::size_t j = i + 1; j < map.points.size(); ++j)
      map.cells.push_back({map.points[i], map.points[j]});

  SetupPrediction predicted = predict(withShuntEverywhere(setup, map));
  if (!predicted.zero) return predicted.zero.error();
  for (std::size_t k = 0; k < map.cells.size(); ++k) map.cells[k].prediction = std::move(predicted.steps[k]);
  return map;
}

}  // namespace core
