// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <utility>

#include "core/circuit/hookup.h"
#include "core/circuit/hookup_words.h"
#include "core/diagnose/at_the_plug.h"
#include "core/diagnose/cause_words.h"
#include "core/diagnose/check_times.h"
#include "core/plan/prediction.h"
#include "core/units/language.h"
#include "core/units/notation.h"

namespace core {
namespace {

/// Both in one unit, to the digits that show their difference: "352.96 Ω", "354.00 Ω".
std::pair<std::string, std::string> ohmPair(Resistance one, Resistance other) {
  const double greatest = std::max(std::abs(one.base()), std::abs(other.base()));
  const double unit = greatest >= 1e6 ? 1e6 : greatest >= 1e3 ? 1e3 : 1;
  const std::string name = unit == 1e6 ? " MΩ" : unit == 1e3 ? " kΩ" : " Ω";
  const double away = std::abs((one - other).base()) / unit;
  const int decimals = away > 0 ? std::clamp(1 - static_cast<int>(std::floor(std::log10(away))), 1, 6) : 2;
  return {shown(formatFixed(one.base() / unit, decimals)) + name,
          shown(formatFixed(other.base() / unit, decimals)) + name};
}

/// "it reads 5.70 Ω if this is the cause, 4.00 Ω as entered"
std::string expectedWords(Resistance ifCause, Resistance entered) {
  const auto [cause, plan] = ohmPair(ifCause, entered);
  return say("it reads {1} if this is the cause, {2} as entered", {cause, plan});
}

/// Measures between two places of the cable or the instrument, with what is to be seen there.
std::string ohmWords(const Setup& setup, const Fault& fault, const OhmPlaces& places, bool ofArticle) {
  const auto entered = resistanceAtPlug(setup.bridge, places, ofArticle);
  const auto ifCause = resistanceAtPlug(withFault(setup, fault).bridge, places, ofArticle);
  if (!entered || !ifCause)
    return say("With the excitation off and the cable unplugged at the instrument, measure from {1}.",
               {places.words});
  return say("With the excitation off and the cable unplugged at the instrument, measure from {1}: {2}.",
             {places.words, expectedWords(*ifCause, *entered)});
}

std::string armMeasurement(const Setup& setup, const Fault& fault) {
  return ohmWords(setup, fault, placesForArm(setup.bridge, fault.index),
                  isBeyondPlug(setup.bridge, fault.index));
}

std::string scaleMeasurement(const Setup& setup) {
  const std::string settings = setup.instrument.unit == ReadingUnit::MicrometrePerMetre
                                   ? say("gauge factor and bridge factor")
                                   : say("scale and range");
  return say(
      "Read {1} from the instrument itself. Where they are as entered, connect a bridge simulator of known "
      "mV/V in place of the bridge: it is the gain or the excitation if that reads off by the same share.",
      {settings});
}

std::string resistorMeasurement(const Setup& setup, std::size_t shunt, double size) {
  const Resistance stated = setup.shunts[shunt].resistance;
  return say("With the excitation off, take resistor {1} out of the circuit and measure it: {2}.",
             {resistorName(setup.shunts[shunt]), expectedWords(size * stated, stated)});
}

std::string bothResistors(const Setup& setup, const Fault& fault) {
  const Shunt& one = setup.shunts[fault.index];
  const Shunt& other = setup.shunts[fault.other];
  return say(
      "With the excitation off, take the resistors {1} and {2} out of the circuit and measure both: {3} and "
      "{4} are stated, the other way round if this is the cause.",
      {resistorName(one), resistorName(other),
       shown(formatQuantity(one.resistance.base(), UnitFamily::Resistance, {}, 6)),
       shown(formatQuantity(other.resistance.base(), UnitFamily::Resistance, {}, 6))});
}

/// Of the places of the shunts.
std::string placeMeasurement(const Setup& setup, const Fault& fault) {
  if (fault.kind == CauseKind::ShuntArm)
    return say(
        "With the excitation off, close {1} and measure across each arm with it closed and open: the reading "
        "falls most at the arm that it lies on.",
        {(setup.shunts.empty() ? std::string(say("a shunt")) : setup.shunts.front().name)});
  const std::string far = fault.index == 0 ? say("gauge") : say("instrument");
  return say(
      "With the excitation off, measure from each end of the shunt's wires to the {1}'s end of the lead: "
      "more than the wire's own few milliohms there means that a lead lies between.",
      {far});
}

/// "5.70 Ω if this is the cause, 4.00 Ω as entered"
std::string expectedLead(const Setup& setup, const Fault& fault) {
  const Resistance entered = leadResistance(setup.bridge, static_cast<LeadRole>(fault.index));
  const auto [cause, plan] = ohmPair(entered + Resistance(fault.size), entered);
  return say("{1} if this is the cause, {2} as entered", {cause, plan});
}

std::string openMeasurement(const Setup& setup, const Fault& fault) {
  const Shunt& shunt = setup.shunts[fault.index];
  return say(
      "With the excitation off, measure between the two places of shunt {1} with its switch open and closed: "
      "nothing changes if it does not close.",
      {shunt.name});
}

/// Stretching gauge 1 acts through the wires alone, a load through the gauges too.
std::string polarityMeasurement(const Setup& setup) {
  const int wires = outputSign(setup.bridge), gauges = gaugeSign(setup.bridge);
  const auto way = [](int sign) { return sign > 0 ? say("rise") : say("fall"); };
  return isTransducer(setup.bridge) ? say("Apply a small load of known direction: the reading must {1} with "
                                          "a load that counts as positive.",
                                          {way(wires * gauges)})
                                    : say("Apply a small load of known direction, or press by hand so that "
                                          "gauge 1 is stretched: the reading must {1}.",
                                          {way(wires)});
}

std::string senseMeasurement(const Setup& setup) {
  const Bridge& bridge = setup.bridge;
  const auto loop = [&](LeadRole excitation, LeadRole sense) {
    return shown(
               formatFixed((leadResistance(bridge, excitation) + leadResistance(bridge, sense)).base(), 2)) +
           " Ω";
  };
  return say(
      "With the excitation off and the cable unplugged at the instrument, measure from lead P+ to lead "
      "sense+ "
      "and from lead P- to lead sense-: {1} and {2} as entered, an open loop is the cause.",
      {loop(LeadRole::ExcitationPlus, LeadRole::SensePlus),
       loop(LeadRole::ExcitationMinus, LeadRole::SenseMinus)});
}

std::string orderMeasurement(const Setup& setup, const Fault& fault) {
  if (fault.kind == CauseKind::SidesExchanged)
    return say(
        "Look in the switch log or the recording which side was taken first, or take one positive step "
        "again.");
  const std::size_t again = setup.sequence[fault.index].closed.empty() ? fault.other : fault.index;
  return say("Look in the switch log or the recording which shunt was closed when, or take {1} again.",
             {stepWords(setup, again)});
}

std::string readingMeasurement(const Setup& setup, const Fault& fault,
                               const std::optional<double>& lasted_s) {
  switch (fault.kind) {
    case CauseKind::ZeroShift:
      return say(
          "With all shunts open and no load, watch the zero while you move the connectors and the cable: it "
          "jumps at a bad contact. Look for the jump before {1}.",
          {stepWords(setup, fault.index)});
    case CauseKind::Drift:
      return say(
          "With all shunts open and no load, record the zero for as long as the check took, some {1} s: it "
          "drifts at the same rate. Where it does, measure the insulation of the gauge with the excitation "
          "off: moisture drifts.",
          {shown(formatNumber(lasted_s ? *lasted_s : plannedDuration_s(setup), 2))});
    case CauseKind::Clipping:
      return say(
          "Look for readings that stop at one value without any noise, then set a wider range and take the "
          "greatest step again.");
    case CauseKind::StrayReading:
      return say("Take {1} again: it reads as expected.", {stepWords(setup, fault.index)});
    default:
      return {};
  }
}

}  // namespace

std::string confirmWords(const Setup& setup, const Fault& fault, const std::optional<double>& lasted_s) {
  switch (fault.kind) {
    case CauseKind::Scale:
      return scaleMeasurement(setup);
    case CauseKind::BridgeFactor:
      return say("Read the bridge factor N or the kind of bridge from the instrument itself.");
    case CauseKind::Units:
      return say(
          "Read unit and scale of the channel from the instrument itself, and the unit at the head of its "
          "recording.");
    case CauseKind::Leads:
      return ohmWords(setup, fault, placesForLeads(setup.bridge), true);
    case CauseKind::LeadContact:
      return say(
          "With the excitation off and no load, watch the ohmmeter on lead {1} from end to end while its "
          "connectors and joints are moved: it reads {2}.",
          {leadWord(static_cast<LeadRole>(fault.index)), expectedLead(setup, fault)});
    case CauseKind::NoResponse:
      return say(
          "Look whether the excitation is on, the signal wires and the shunts are connected, and the right "
          "channel is recorded; then close one shunt by hand and see the reading move.");
    case CauseKind::ShuntOpen:
      return openMeasurement(setup, fault);
    case CauseKind::ShuntPlace:
    case CauseKind::ShuntArm:
      return placeMeasurement(setup, fault);
    case CauseKind::ShuntValue:
      return resistorMeasurement(setup, fault.index, fault.size);
    case CauseKind::ShuntsExchanged:
      return bothResistors(setup, fault);
    case CauseKind::CompletionValue:
    case CauseKind::ArmValue:
      return armMeasurement(setup, fault);
    case CauseKind::Leak:
      return say("{1} Then dry it and measure again.", {armMeasurement(setup, fault)});
    case CauseKind::PolarityReversed:
      return polarityMeasurement(setup);
    case CauseKind::StepsExchanged:
    case CauseKind::SidesExchanged:
      return orderMeasurement(setup, fault);
    case CauseKind::OpenSense:
      return senseMeasurement(setup);
    default:
      return readingMeasurement(setup, fault, lasted_s);
  }
}

}  // namespace core
