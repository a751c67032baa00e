// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/compare/change_words.h"

#include <cmath>

#include "core/circuit/hookup_words.h"
#include "core/diagnose/cause_words.h"
#include "core/diagnose/correction.h"
#include "core/units/language.h"
#include "core/units/notation.h"

namespace core {
namespace {

std::string upperFirst(std::string text) {
  if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') text[0] = static_cast<char>(text[0] - 'a' + 'A');
  return text;
}

/// Of a fault that came, or grew, since the earlier check.
std::string cameTitle(const Setup& setup, const Fault& fault, const std::string& after) {
  const auto arm = [&] { return armWords(setup.bridge, fault.index); };
  switch (fault.kind) {
    case CauseKind::Scale:
      return fault.size > 1 ? say("Gain, excitation or scale rose") : say("Gain, excitation or scale fell");
    case CauseKind::BridgeFactor:
      return say("Bridge factor setting was changed");
    case CauseKind::Units:
      return say("Unit or factor of the readings was changed");
    case CauseKind::Leads:
      return fault.size < 0 ? say("All leads lost resistance") : say("All leads gained resistance");
    case CauseKind::LeadContact:
      return say("Contact in lead {1} went bad", {leadWord(static_cast<LeadRole>(fault.index))});
    case CauseKind::Leak:
      return say("Leak over {1} grew", {arm()});
    case CauseKind::ArmValue:
    case CauseKind::CompletionValue:
      return upperFirst(say("{1} changed its resistance", {arm()}));
    case CauseKind::ShuntValue:
      return say("Resistor {1} changed or was replaced", {resistorName(setup.shunts[fault.index])});
    case CauseKind::PolarityReversed:
      return say("Polarity was reversed");
    case CauseKind::OpenSense:
      return say("A sense lead opened");
    case CauseKind::NoResponse:
      return say("Readings of {1} do not follow the shunts", {after});
    default:  // of the shunts, the order of steps and the readings of one check
      return say("In {1}: {2}", {after, causeTitle(setup, fault)});
  }
}

std::string ratioWords(double ratio, const std::optional<double>& standard) {
  if (!(ratio > 2.0 / 3 && ratio < 1.5))
    return say("readings are {1} times what they were", {withStandard(ratio, standard)});
  const std::string percent = percentWithStandard(std::abs(ratio - 1), standard, false);
  return ratio > 1 ? say("readings are {1} larger than they were", {percent})
                   : say("readings are {1} smaller than they were", {percent});
}

/// "352.1 ± 0.1 Ω where it was 350 Ω, +0.60 %"
std::string valueWords(Resistance before, double ratio, const std::optional<double>& standard) {
  const auto times = [&](double factor) {
    return standard ? std::optional(*standard * factor) : std::nullopt;
  };
  return say("{1} where it was {2}, {3} %",
             {ohmWithStandard(ratio * before.base(), times(before.base())),
              shown(formatQuantity(before.base(), UnitFamily::Resistance, {}, 6)),
              warranted(100 * (ratio - 1), times(100), true)});
}

/// Conductance that lay over the arm before, S: as entered, and as the earlier check's own diagnosis has it.
double leakBefore(const Setup& setup, std::size_t arm, const ChangeWay& way) {
  const auto& entered = setup.bridge.leaks[arm].across;
  double conductance = entered ? 1 / entered->base() : 0;
  const Explanation* earlier = way.earlier;
  if (earlier && earlier->fault.kind == CauseKind::Leak && earlier->fault.index == arm)
    conductance += earlier->fault.size;
  return conductance;
}

std::string leakWords(const Setup& setup, const Fault& fault, const std::optional<double>& standard,
                      const ChangeWay& way) {
  const double before = leakBefore(setup, fault.index, way), now = before + fault.size;
  const double u = standard.value_or(0);
  const std::string from =
      before > 0 ? shown(formatQuantity(1 / before, UnitFamily::Resistance, {}, 3)) : say("none");
  if (!(now > 0)) return say("from {1} to none", {from});
  if (u <= 0.3 * now)
    return say("from {1} to {2}",
               {from, ohmWithStandard(1 / now, standard ? std::optional(u / (now * now)) : std::nullopt)});
  const auto roughly = [](double conductance) {
    return shown(formatQuantity(1 / conductance, UnitFamily::Resistance, {}, 2));
  };
  if (u < now) return say("from {1} to between {2} and {3}", {from, roughly(now + u), roughly(now - u)});
  return say("from {1} to {2} or more", {from, roughly(now + u)});
}

std::string moreWords(const Fault& fault, const std::optional<double>& standard) {
  const std::string ohm = ohmWithStandard(std::abs(fault.size), standard);
  if (fault.kind == CauseKind::LeadContact) return say("{1} more than before", {ohm});
  return fault.size < 0 ? say("{1} less in each lead than before", {ohm})
                        : say("{1} more in each lead than before", {ohm});
}

std::string goneConfirm(const ChangeWay& way) {
  return say(
      "It can no longer be measured. Look in the log what was mended, connected or set anew between {1} and "
      "{2}.",
      {way.before, way.after});
}

}  // namespace

bool isWithinOneCheck(CauseKind kind) {
  switch (kind) {
    case CauseKind::ZeroShift:
    case CauseKind::Drift:
    case CauseKind::StrayReading:
    case CauseKind::StepsExchanged:
    case CauseKind::SidesExchanged:
      return true;
    default:
      return false;
  }
}

bool isOfItsZero(CauseKind kind) { return kind == CauseKind::ZeroShift || kind == CauseKind::Drift; }

bool sparesDataBetween(CauseKind kind) {
  return isWithinOneCheck(kind) || (isOfCheckAlone(kind) && kind != CauseKind::NoResponse);
}

std::string changeTitle(const Setup& setup, const Fault& fault, const ChangeWay& way) {
  if (isWithinOneCheck(fault.kind))
    return say("In {1}: {2}", {way.gone ? way.before : way.after, causeTitle(setup, fault)});
  if (way.gone) return say("No longer there in {1}: {2}", {way.after, causeTitle(setup, fault)});
  return cameTitle(setup, fault, way.after);
}

std::string changeSize(const Setup& setup, const Explanation& explanation, const ChangeWay& way) {
  const Fault& fault = explanation.fault;
  const std::optional<double>& standard = explanation.standard;
  if (way.gone) return explanation.sizeText;
  switch (fault.kind) {
    case CauseKind::Scale:
    case CauseKind::Units:
      return ratioWords(fault.size, standard);
    case CauseKind::BridgeFactor:
      return ratioWords(setup.instrument.bridgeFactor / fault.size, {});
    case CauseKind::Leads:
    case CauseKind::LeadContact:
      return moreWords(fault, standard);
    case CauseKind::ShuntValue:
      return valueWords(setup.shunts[fault.index].resistance, fault.size, standard);
    case CauseKind::ArmValue:
    case CauseKind::CompletionValue:
      return valueWords(setup.bridge.arms[fault.index], fault.size, standard);
    case CauseKind::Leak:
      return leakWords(setup, fault, standard, way);
    default:
      return explanation.sizeText;
  }
}

void describeChange(const Setup& setup, const ChangeWay& way, Explanation& explanation) {
  const Fault& fault = explanation.fault;
  explanation.title = changeTitle(setup, fault, way);
  explanation.sizeText = changeSize(setup, explanation, way);
  if (way.gone) explanation.confirm = goneConfirm(way);
  if (isOfItsZero(fault.kind))
    explanation.onStrain =
        say("Not told by the checks: data in between have it too if it was there before {1}. Zero readings "
            "without "
            "load in the recording tell.",
            {way.after});
  else if (sparesDataBetween(fault.kind))
    explanation.onStrain = isTransducer(setup.bridge)
                               ? say("None: load recorded between both checks does not feel it.")
                               : say("None: strain recorded between both checks does not feel it.");
  else
    explanation.onStrain = say("At {1}: {2}", {way.gone ? way.before : way.after, explanation.onStrain});
}

}  // namespace core
