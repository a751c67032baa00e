// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/practice/question_words.h"

#include <algorithm>
#include <cmath>

#include "core/circuit/hookup_words.h"
#include "core/diagnose/cause_words.h"
#include "core/plan/prediction.h"
#include "core/practice/kinds.h"
#include "core/review/arm_place.h"
#include "core/units/language.h"
#include "core/units/notation.h"

namespace core {
namespace {

std::string armsText(const Bridge& bridge) {
  const auto& arms = bridge.arms;
  const bool halves = arms[0] == arms[1] && arms[2] == arms[3];
  if (halves && arms[0] == arms[2]) return say("{1} each", {ohmText(arms[0])});
  if (halves) return say("arms 1 and 2 {1}, arms 3 and 4 {2}", {ohmText(arms[0]), ohmText(arms[2])});
  std::string text;
  for (const std::size_t arm : {0, 1, 2, 3})
    text += (arm > 0 ? ", " : "") + std::to_string(arm + 1) + ": " + ohmText(arms[arm]);
  return text;
}

std::string leadsText(const Bridge& bridge) {
  const std::vector<Wire> wires = wiresOf(bridge);
  const Resistance first = leadResistance(bridge, wires.front().role);
  const bool alike = std::all_of(wires.begin(), wires.end(), [&](const Wire& wire) {
    return leadResistance(bridge, wire.role) == first;
  });
  std::string text;
  if (alike) {
    text = first.base() == 0 ? say("without resistance") : say("{1} each", {ohmText(first)});
  } else {
    for (const Wire& wire : wires)
      text +=
          (text.empty() ? "" : ", ") + leadWord(wire.role) + " " + ohmText(leadResistance(bridge, wire.role));
  }
  return hasNode(bridge, Node::SensePlus) ? say("{1}; six-wire", {text}) : text;
}

std::string leaksText(const Bridge& bridge) {
  std::vector<std::string> leaks;
  for (const std::size_t arm : {0, 1, 2, 3})
    if (const auto& leak = bridge.leaks[arm].across)
      leaks.push_back(say("{1} over {2}", {ohmText(*leak), armWords(bridge, arm)}));
  return sayAll(leaks);
}

std::string withSign(const std::string& text, double value) { return value > 0 ? "+" + text : text; }

}  // namespace

std::string ohmText(Resistance value) {
  return shown(formatQuantity(value.base(), UnitFamily::Resistance, {}, 6));
}

std::string placeText(const Bridge& bridge, const Shunt& shunt) {
  const auto place = placeOf(bridge, shunt);
  if (place && place->atOwnEnds) return say("right across arm {1}", {std::to_string(place->arm + 1)});
  return say("from {1} to {2}", {pointName(bridge, shunt.a), pointName(bridge, shunt.b)});
}

std::string shuntText(const Bridge& bridge, const Shunt& shunt) {
  return ohmText(resistanceOf(shunt)) + " " + placeText(bridge, shunt);
}

std::vector<Entry> givenOf(const Setup& setup) {
  const Bridge& bridge = setup.bridge;
  std::vector<Entry> given{
      {say("Bridge"), std::string(templateOf(bridge.type).name)},
      {say("Arms"), armsText(bridge)},
      {say("Leads"), leadsText(bridge)},
      {say("Excitation"), shown(formatNumber(setup.instrument.excitation.base(), 4)) + " V"}};
  for (std::string sentence : hookupSentences(bridge)) {
    // A value like the others: whoever strings them together sets the full stop.
    if (sentence.ends_with('.')) sentence.pop_back();
    given.push_back({say("Connection"), std::move(sentence)});
  }
  if (const std::string leaks = leaksText(bridge); !leaks.empty()) given.push_back({say("Leak"), leaks});
  for (const Shunt& shunt : setup.shunts)
    given.push_back({say("Shunt {1}", {shunt.name}), shuntText(bridge, shunt)});
  return given;
}

Entry instrumentEntry(const Setup& setup) {
  const Instrument& instrument = setup.instrument;
  std::string text = say("reads {1}", {readingUnitText(instrument)});
  switch (instrument.unit) {
    case ReadingUnit::MicrometrePerMetre:
      text = say("{1}, gauge factor {2} and bridge factor {3} as set",
                 {text, shown(formatNumber(instrument.gaugeFactor, 4)),
                  shown(formatNumber(instrument.bridgeFactor, 4))});
      break;
    case ReadingUnit::Millivolt:
    case ReadingUnit::MillivoltPerVolt:
      break;
    case ReadingUnit::Scaled:
      text = say("{1}, {2} {3} per mV/V",
                 {text, shown(formatNumber(instrument.unitsPerMillivoltPerVolt, 6)), instrument.scaledUnit});
      break;
  }
  return {say("Instrument"), say("{1}; zeroed with all shunts open", {text})};
}

std::string signedOutput(Output output) {
  if (std::abs(output.base()) < noOutput.base()) return "0 mV/V";
  return withSign(shown(formatQuantity(output.base(), UnitFamily::Output, {}, 4)), output.base());
}

std::string signedReading(const Setup& setup, Reading reading) {
  return withSign(shown(formatNumber(reading.base(), 4)), reading.base()) + " " +
         readingUnitText(setup.instrument);
}

int displayPlaces(double greatest) {
  int places = 4;
  for (double top = 10; top <= greatest && places > 0; top *= 10) --places;
  return places;
}

}  // namespace core
