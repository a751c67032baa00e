// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/review/reviewed_plan.h"
#include "core/units/language.h"
#include "core/wiring/wiring_rules.h"

namespace core {
namespace {

std::vector<Mend> mendsOf(const Setup& setup, const WiringFault& fault) {
  const bool byJumpers = fault.kind != WiringFaultKind::PinUsedTwice &&
                         fault.kind != WiringFaultKind::NeighbourHazard && fault.shunt;
  if (!byJumpers) return {};
  const auto jumpers = jumpersFor(setup, *fault.shunt);
  if (!jumpers || *jumpers == setup.shunts[*fault.shunt].jumpers) return {};
  return {{say("Work out the jumpers of {1}", {setup.shunts[*fault.shunt].name}),
           [shunt = *fault.shunt, laid = *jumpers](Channel channel) {
             channel.setup.shunts[shunt].jumpers = laid;
             return channel;
           }}};
}

/// Without pins and jumpers all is switched inside the instrument, and no rule applies.
bool hasWiring(const Setup& setup) {
  return !setup.wiring.pins.empty() || std::any_of(setup.shunts.begin(), setup.shunts.end(),
                                                   [](const Shunt& shunt) { return !shunt.jumpers.empty(); });
}

}  // namespace

/// What the rules of the wiring find wrong. Neighbours that would do harm if they touched are one finding,
/// worth knowing only: nothing is wrong with them yet.
void findWiringFaults(const ReviewedPlan& plan, std::vector<Finding>& findings) {
  if (!hasWiring(plan.setup())) return;
  const std::vector<WiringFault> faults = wiringFaults(plan.setup());
  std::size_t hazards = 0;
  for (const WiringFault& fault : faults) {
    const bool hazard = fault.kind == WiringFaultKind::NeighbourHazard;
    if (hazard && ++hazards > 1) continue;
    const Severity severity = hazard                                    ? Severity::Note
                              : fault.severity == WiringSeverity::Error ? Severity::Fault
                                                                        : Severity::Warning;
    findings.push_back({FindingKind::Wiring,
                        severity,
                        {},
                        fault.shunt,
                        fault.what + ".",
                        fault.mend + ".",
                        mendsOf(plan.setup(), fault)});
  }
  if (hazards > 1)
    findings.back().what += " " + sayCount(hazards, "There is {n} such pair; the wiring lists it.",
                                           "There are {n} such pairs; the wiring lists them.");
}

}  // namespace core
