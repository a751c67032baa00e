// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/search/shunt_place.h"

#include <cmath>

#include "core/circuit/hookup.h"
#include "core/search/shunt_response.h"
#include "core/units/language.h"
#include "core/units/notation.h"

namespace core {
namespace {

/// What is wrong, and what a direct short at the place reaches, or less when the gauges cannot simulate that.
std::string outOfReach(const Setup& setup, const ShuntPlace& place, const ShuntResponse& response) {
  const double series = (place.wires + place.contact).base();
  const double bent = series > 0 ? response.bent(1 / series) : 1 / response.bend;
  auto circuit = BridgeCircuit::make(setup.bridge, setup.instrument, {});
  if (!circuit) return say("no resistance gives this level at this place");
  const auto nearest = circuit->stimulusFor(response.zero + Output(response.slope * bent));
  if (!nearest) return say("no resistance gives this level at this place");
  return say("no resistance gives this level at this place, the nearest that it can is {1}",
             {levelText(setup.bridge, simulatedInUnit(setup.bridge, *nearest))});
}

/// d output / d stimulus with all shunts open; 0 for a bridge that cannot be solved.
double outputSlope(const Setup& setup) {
  auto circuit = BridgeCircuit::make(setup.bridge, setup.instrument, {});
  return circuit && circuit->solveOutput() ? circuit->outputSlope() : 0;
}

}  // namespace

ShuntPlace usualPlace(const Bridge& bridge, Polarity polarity) {
  const std::size_t arm = (polarity == Polarity::Negative) == (gaugeSign(bridge) > 0) ? 0 : 1;
  return {armBegin(arm), armEnd(arm)};
}

ShuntPlace placeInPlan(const Setup& setup, Polarity polarity) {
  const double perStimulus = outputSlope(setup);
  for (const Shunt& shunt : setup.shunts) {
    const ShuntPlace place{shunt.a, shunt.b, shunt.wires, shunt.contact};
    const auto response = shuntResponse(setup, place);
    if (response && (response->slope * perStimulus > 0) == (polarity == Polarity::Positive)) return place;
  }
  return usualPlace(setup.bridge, polarity);
}

Stimulus stimulusOf(const Bridge& bridge, double level) {
  return isTransducer(bridge) ? level / bridge.rating.capacity : level / 1e6;
}

std::string levelText(const Bridge& bridge, double level) {
  return shown(formatNumber(level, 6)) + " " + simulatedUnitText(bridge);
}

Result<Resistance> resistanceFor(const Setup& setup, const ShuntPlace& place, double level) {
  const Bridge& bridge = setup.bridge;
  if (!std::isfinite(level) || level == 0)
    return Error{say("level"), say("zero needs no shunt"), say("Enter a level above or below zero")};
  const auto response = shuntResponse(setup, place);
  if (!response) return response.error();
  auto circuit = BridgeCircuit::make(bridge, setup.instrument, {});
  if (!circuit) return circuit.error();
  const Error impossible{levelText(bridge, level), outOfReach(setup, place, *response),
                         say("Choose a smaller level or another place")};
  const Stimulus stimulus = stimulusOf(bridge, level);
  for (const std::size_t arm : {0, 1, 2, 3})
    if (!(armUnder(bridge, arm, stimulus).base() > 0)) return impossible;
  circuit->setStimulus(stimulus);
  const auto output = circuit->solveOutput();
  if (!output) return output.error();
  constexpr double roundings = 1e-15;  // V/V, of the potentials that an output is the difference of
  const double change = (*output - response->zero).base();
  if (!(change / response->slope > 0) && std::abs(change) < roundings)
    return Error{levelText(bridge, level), say("too small to be told from zero"),
                 say("Enter a greater level")};
  if (!(change / response->slope > 0))
    return Error{levelText(bridge, level), say("a shunt at this place moves the output the other way"),
                 say("Choose another arm, or the opposite sign")};
  const auto siemens = response->siemensFor(*output);
  if (!siemens) return impossible;
  const Resistance resistance = Resistance(1 / *siemens) - place.wires - place.contact;
  if (!(resistance.base() > 0)) return impossible;
  return resistance;
}

}  // namespace core
