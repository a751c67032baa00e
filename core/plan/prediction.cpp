// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/prediction.h"

#include <cmath>

#include "core/circuit/indication.h"
#include "core/units/language.h"

namespace core {
namespace {

/// Changes of output below this are rounding: potentials of 1 V carry about 1e-16 each.
constexpr double outputRounding = 1e-14;

/// The arm that `shunt` lies right across, none when it spans a lead or something else.
std::optional<std::size_t> shuntedArm(const Bridge& bridge, const Shunt& shunt) {
  const Node a = pointOf(bridge, shunt.a), b = pointOf(bridge, shunt.b);
  for (const std::size_t arm : {0, 1, 2, 3}) {
    const Node begin = pointOf(bridge, armBegin(arm)), end = pointOf(bridge, armEnd(arm));
    if ((a == begin && b == end) || (a == end && b == begin)) return arm;
  }
  return std::nullopt;
}

std::optional<Strain> armChange(const Setup& setup, const Step& step) {
  if (step.closed.size() != 1 || isTransducer(setup.bridge)) return std::nullopt;
  const Shunt& shunt = setup.shunts[step.closed.front()];
  const auto arm = shuntedArm(setup.bridge, shunt);
  if (!arm) return std::nullopt;
  const double r = setup.bridge.arms[*arm].base();
  const double rs = resistanceOf(shunt).base();
  return Strain(-r / (r + rs) / gaugeFactorOf(setup.bridge.gauge));
}

Polarity polarityOf(Output change) {
  if (std::abs(change.base()) < outputRounding) return Polarity::None;
  return change.base() > 0 ? Polarity::Positive : Polarity::Negative;
}

Result<Prediction> predictStep(BridgeCircuit& circuit, const Setup& setup, std::size_t step, Output zero) {
  circuit.setStimulus(0);
  if (auto closed = closeShunts(circuit, setup, step); !closed) return closed.error();
  const auto shunted = circuit.solveOutput();
  if (!shunted) return shunted.error();

  Prediction prediction;
  const Step& planned = setup.sequence[step];
  if (planned.closed.empty()) return prediction;
  prediction.output = *shunted - zero;
  const auto simulated = circuit.stimulusFor(*shunted);
  if (!simulated) return simulated.error();
  prediction.simulated = *simulated;
  prediction.armChange = armChange(setup, planned);
  const Instrument& instrument = setup.instrument;
  prediction.indicated =
      Strain(4 * prediction.output.base() / (instrument.gaugeFactor * instrument.bridgeFactor));
  const auto indication = indicationOf(setup.bridge, instrument, *shunted, zero);
  if (!indication) return indication.error();
  prediction.reading = indication->value;
  if (!std::isfinite(prediction.indicated.base()) || !std::isfinite(prediction.reading.base()))
    return Error{say("instrument"), say("what it would show is too large to reckon with"),
                 say("Check its gauge factor, bridge factor, excitation and scaling")};
  prediction.polarity = polarityOf(prediction.output);
  return prediction;
}

/// The bridge of `setup`, solved with the shunts of `step` closed.
Result<BridgeCircuit> solvedAt(const Setup& setup, std::size_t step) {
  auto circuit = BridgeCircuit::make(setup.bridge, setup.instrument, shuntBranches(setup));
  if (!circuit) return circuit;
  if (auto closed = closeShunts(*circuit, setup, step); !closed) return closed.error();
  if (auto solved = circuit->solveOutput(); !solved) return solved.error();
  return circuit;
}

}  // namespace

Result<void> closeShunts(BridgeCircuit& circuit, const Setup& setup, std::size_t step) {
  circuit.openAll();
  if (step >= setup.sequence.size()) return {};
  for (const std::size_t shunt : setup.sequence[step].closed) {
    if (auto closed = circuit.close(shunt); !closed) return closed;
  }
  return {};
}

std::string_view polarityWord(Polarity polarity) {
  switch (polarity) {
    case Polarity::Negative:
      return sayName("negative");
    case Polarity::None:
      return sayName("none");
    case Polarity::Positive:
      return sayName("positive");
  }
  return {};
}

SetupPrediction predict(const Setup& setup) {
  SetupPrediction result;
  auto circuit = BridgeCircuit::make(setup.bridge, setup.instrument, shuntBranches(setup));
  result.zero = circuit ? circuit->solveOutput() : Result<Output>(circuit.error());
  result.steps.reserve(setup.sequence.size());
  for (std::size_t step = 0; step < setup.sequence.size(); ++step) {
    if (result.zero)
      result.steps.push_back(predictStep(*circuit, setup, step, *result.zero));
    else
      result.steps.push_back(result.zero.error());
  }
  return result;
}

double simulatedInUnit(const Bridge& bridge, Stimulus simulated) {
  return isTransducer(bridge) ? simulated * bridge.rating.capacity : simulated * 1e6;
}

Resistance resistanceOf(const Shunt& shunt) { return shunt.resistance + shunt.wires + shunt.contact; }

std::vector<ShuntBranch> shuntBranches(const Setup& setup) {
  std::vector<ShuntBranch> branches;
  branches.reserve(setup.shunts.size());
  for (const Shunt& shunt : setup.shunts)
    branches.push_back({shunt.name, shunt.a, shunt.b, resistanceOf(shunt)});
  return branches;
}

Result<std::vector<std::optional<double>>> potentials(const Setup& setup, std::size_t step) {
  const auto circuit = solvedAt(setup, step);
  if (!circuit) return circuit.error();
  std::vector<std::optional<double>> result(nodeCount);
  for (const Node node : allNodes())
    if (circuit->connected(node)) result[static_cast<std::size_t>(node)] = circuit->potential(node);
  return result;
}

Result<Voltage> excitationOf(const Setup& setup, std::size_t step) {
  const auto circuit = solvedAt(setup, step);
  if (!circuit) return circuit.error();
  const auto& current = setup.instrument.current;
  if (!current) return setup.instrument.excitation;
  return Voltage(current->supplied.base() / circuit->inputConductance());
}

}  // namespace core
