// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/circuit/hookup_words.h"
#include "core/diagnose/cause_words.h"
#include "core/units/language.h"

namespace core {
namespace {

/// Whether no lead in use is entered with a resistance.
bool noLeadsEntered(const Bridge& bridge) {
  const auto wires = wiresOf(bridge);
  return std::all_of(wires.begin(), wires.end(),
                     [&](const Wire& wire) { return leadResistance(bridge, wire.role).base() == 0; });
}

std::string leadsTitle(const Setup& setup, const Fault& fault) {
  if (noLeadsEntered(setup.bridge)) return say("Leads not entered");
  return fault.size < 0 ? say("Leads shorter than entered") : say("Leads longer than entered");
}

/// "R1 and R2"; the resistors by their labels when those are known.
std::string resistorsWords(const Setup& setup, const Fault& fault) {
  return say("{1} and {2}",
             {resistorName(setup.shunts[fault.index]), resistorName(setup.shunts[fault.other])});
}

std::string stepsTitle(const Setup& setup, const Fault& fault) {
  const bool next = fault.other == fault.index + 1;
  const bool zero = setup.sequence[fault.index].closed.empty() || setup.sequence[fault.other].closed.empty();
  const std::string one = std::to_string(fault.index + 1), other = std::to_string(fault.other + 1);
  if (zero)
    return say(next ? sayLater("Steps {1} and {2} taken in the wrong order, one of them a zero")
                    : sayLater("Steps {1} and {2} taken for one another, one of them a zero"),
               {one, other});
  return say(next ? sayLater("Steps {1} and {2} taken in the wrong order")
                  : sayLater("Steps {1} and {2} taken for one another"),
             {one, other});
}

std::string clippingTitle(const Fault& fault) {
  if (fault.index == 1) return say("Readings stop at an upper limit");
  return fault.index == 2 ? say("Readings stop at a lower limit") : say("Readings stop at the range");
}

std::string ofReadings(const Setup& setup, const Fault& fault) {
  switch (fault.kind) {
    case CauseKind::StepsExchanged:
      return stepsTitle(setup, fault);
    case CauseKind::SidesExchanged:
      return say("Negative steps taken before the positive ones");
    case CauseKind::ZeroShift:
      return say("Zero shifted before step {1}", {std::to_string(fault.index + 1)});
    case CauseKind::Drift:
      return say("Zero drifts (moisture, temperature)");
    case CauseKind::Clipping:
      return clippingTitle(fault);
    case CauseKind::StrayReading:
      return say("Reading of step {1} is off", {std::to_string(fault.index + 1)});
    default:
      return {};
  }
}

/// "over arm 2", or "between terminal P+ and gauge end of lead S-".
std::string placeWords(const Bridge& bridge, const Shunt& shunt) {
  const Node a = pointOf(bridge, shunt.a), b = pointOf(bridge, shunt.b);
  for (const std::size_t arm : {0, 1, 2, 3}) {
    const Node begin = pointOf(bridge, armBegin(arm)), end = pointOf(bridge, armEnd(arm));
    if ((a == begin && b == end) || (a == end && b == begin))
      return say("over arm {1}", {std::to_string(arm + 1)});
  }
  return say("between {1} and {2}", {pointName(bridge, a), pointName(bridge, b)});
}

std::string ofShunts(const Setup& setup, const Fault& fault) {
  switch (fault.kind) {
    case CauseKind::ShuntPlace:
      return fault.index == 0 ? say("Shunts at the instrument instead of at the gauge")
                              : say("Shunts at the gauge instead of at the instrument");
    case CauseKind::ShuntArm:
      return fault.index == 0 ? say("Shunts on the neighbouring arm (1 for 2, 3 for 4)")
                              : say("Shunts on the neighbouring arm (1 for 4, 2 for 3)");
    case CauseKind::ShuntValue:
      return say("Resistor {1} off its value", {resistorName(setup.shunts[fault.index])});
    case CauseKind::ShuntOpen:
      return fault.other == 1
                 ? say("Shunts {1} never closed", {placeWords(setup.bridge, setup.shunts[fault.index])})
                 : say("Resistor {1} never closed", {resistorName(setup.shunts[fault.index])});
    case CauseKind::ShuntsExchanged:
      return say("Resistors {1} exchanged", {resistorsWords(setup, fault)});
    default:
      return {};
  }
}

std::string upperFirst(std::string text) {
  if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') text[0] = static_cast<char>(text[0] - 'a' + 'A');
  return text;
}

}  // namespace

std::string causeTitle(const Setup& setup, const Fault& fault) {
  switch (fault.kind) {
    case CauseKind::Scale:
      return say("Gain, excitation or scale setting wrong");
    case CauseKind::BridgeFactor:
      return say("Bridge factor set wrong");
    case CauseKind::Units:
      return say("Unit or factor of the readings mixed up");
    case CauseKind::Leads:
      return leadsTitle(setup, fault);
    case CauseKind::CompletionValue:
      return say("{1} off its value", {upperFirst(armWords(setup.bridge, fault.index))});
    case CauseKind::ArmValue:
      return say("{1} changed its resistance", {upperFirst(armWords(setup.bridge, fault.index))});
    case CauseKind::Leak:
      return say("Leak over {1}", {armWords(setup.bridge, fault.index)});
    case CauseKind::LeadContact:
      return say("Bad contact in lead {1}", {leadWord(static_cast<LeadRole>(fault.index))});
    case CauseKind::NoResponse:
      return say("Readings do not follow the shunts");
    case CauseKind::PolarityReversed:
      return say("Polarity reversed");
    case CauseKind::OpenSense:
      return say("Sense lead open");
    case CauseKind::ShuntPlace:
    case CauseKind::ShuntArm:
    case CauseKind::ShuntValue:
    case CauseKind::ShuntsExchanged:
    case CauseKind::ShuntOpen:
      return ofShunts(setup, fault);
    default:
      return ofReadings(setup, fault);
  }
}

}  // namespace core
