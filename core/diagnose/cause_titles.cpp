// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/diagnose/cause_words.h"

namespace core {
namespace {

/// Whether no lead in use is entered with a resistance.
bool noLeadsEntered(const Bridge& bridge) {
  const auto wires = wiresOf(bridge);
  return std::all_of(wires.begin(), wires.end(),
                     [&](const Wire& wire) { return leadResistance(bridge, wire.role).base() == 0; });
}

std::string leadsTitle(const Setup& setup, const Fault& fault) {
  if (noLeadsEntered(setup.bridge)) return "Leads not entered";
  return fault.size < 0 ? "Leads shorter than entered" : "Leads longer than entered";
}

/// "R1 and R2"; the resistors by their labels when those are known.
std::string resistorsWords(const Setup& setup, const Fault& fault) {
  return resistorName(setup.shunts[fault.index]) + " and " + resistorName(setup.shunts[fault.other]);
}

std::string stepsTitle(const Setup& setup, const Fault& fault) {
  const bool next = fault.other == fault.index + 1;
  return "Steps " + std::to_string(fault.index + 1) + " and " + std::to_string(fault.other + 1) +
         (next ? " taken in the wrong order" : " taken for one another") +
         (setup.sequence[fault.index].closed.empty() || setup.sequence[fault.other].closed.empty()
              ? ", one of them a zero"
              : "");
}

std::string clippingTitle(const Fault& fault) {
  if (fault.index == 1) return "Readings stop at an upper limit";
  return fault.index == 2 ? "Readings stop at a lower limit" : "Readings stop at the range";
}

std::string ofReadings(const Setup& setup, const Fault& fault) {
  switch (fault.kind) {
    case CauseKind::StepsExchanged:
      return stepsTitle(setup, fault);
    case CauseKind::SidesExchanged:
      return "Negative steps taken before the positive ones";
    case CauseKind::ZeroShift:
      return "Zero shifted before step " + std::to_string(fault.index + 1);
    case CauseKind::Drift:
      return "Zero drifts (moisture, temperature)";
    case CauseKind::Clipping:
      return clippingTitle(fault);
    case CauseKind::StrayReading:
      return "Reading of step " + std::to_string(fault.index + 1) + " is off";
    default:
      return {};
  }
}

/// "over arm 2", or "between terminal P+ and gauge end of lead S-".
std::string placeWords(const Bridge& bridge, const Shunt& shunt) {
  const Node a = pointOf(bridge, shunt.a), b = pointOf(bridge, shunt.b);
  for (const std::size_t arm : {0, 1, 2, 3}) {
    const Node begin = pointOf(bridge, armBegin(arm)), end = pointOf(bridge, armEnd(arm));
    if ((a == begin && b == end) || (a == end && b == begin)) return "over arm " + std::to_string(arm + 1);
  }
  return "between " + pointName(bridge, a) + " and " + pointName(bridge, b);
}

std::string ofShunts(const Setup& setup, const Fault& fault) {
  switch (fault.kind) {
    case CauseKind::ShuntPlace:
      return fault.index == 0 ? "Shunts at the instrument instead of at the gauge"
                              : "Shunts at the gauge instead of at the instrument";
    case CauseKind::ShuntArm:
      return fault.index == 0 ? "Shunts on the neighbouring arm (1 for 2, 3 for 4)"
                              : "Shunts on the neighbouring arm (1 for 4, 2 for 3)";
    case CauseKind::ShuntValue:
      return "Resistor " + resistorName(setup.shunts[fault.index]) + " off its value";
    case CauseKind::ShuntOpen:
      return fault.other == 1
                 ? "Shunts " + placeWords(setup.bridge, setup.shunts[fault.index]) + " never closed"
                 : "Resistor " + resistorName(setup.shunts[fault.index]) + " never closed";
    case CauseKind::ShuntsExchanged:
      return "Resistors " + resistorsWords(setup, fault) + " exchanged";
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
      return "Gain, excitation or scale setting wrong";
    case CauseKind::BridgeFactor:
      return "Bridge factor set wrong";
    case CauseKind::Units:
      return "Unit or factor of the readings mixed up";
    case CauseKind::Leads:
      return leadsTitle(setup, fault);
    case CauseKind::CompletionValue:
      return upperFirst(armWords(setup.bridge, fault.index)) + " off its value";
    case CauseKind::ArmValue:
      return upperFirst(armWords(setup.bridge, fault.index)) + " changed its resistance";
    case CauseKind::Leak:
      return "Leak over " + armWords(setup.bridge, fault.index);
    case CauseKind::LeadContact:
      return "Bad contact in lead " + std::string(leadName(static_cast<LeadRole>(fault.index)));
    case CauseKind::NoResponse:
      return "Readings do not follow the shunts";
    case CauseKind::PolarityReversed:
      return "Polarity reversed";
    case CauseKind::OpenSense:
      return "Sense lead open";
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
