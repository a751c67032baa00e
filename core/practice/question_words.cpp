// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/practice/question_words.h"

#include <algorithm>
#include <cmath>

#include "core/circuit/hookup_words.h"
#include "core/diagnose/cause_words.h"
#include "core/plan/prediction.h"
#include "core/practice/kinds.h"
#include "core/review/arm_place.h"
#include "core/units/notation.h"

namespace core {
namespace {

std::string armsText(const Bridge& bridge) {
  const auto& arms = bridge.arms;
  const bool halves = arms[0] == arms[1] && arms[2] == arms[3];
  if (halves && arms[0] == arms[2]) return ohmText(arms[0]) + " each";
  if (halves) return "arms 1 and 2 " + ohmText(arms[0]) + ", arms 3 and 4 " + ohmText(arms[2]);
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
    text = first.base() == 0 ? "without resistance" : ohmText(first) + " each";
  } else {
    for (const Wire& wire : wires)
      text += (text.empty() ? "" : ", ") + std::string(leadName(wire.role)) + " " +
              ohmText(leadResistance(bridge, wire.role));
  }
  return hasNode(bridge, Node::SensePlus) ? text + "; six-wire" : text;
}

std::string leaksText(const Bridge& bridge) {
  std::string text;
  for (const std::size_t arm : {0, 1, 2, 3})
    if (const auto& leak = bridge.leaks[arm].across)
      text += (text.empty() ? "" : ", ") + ohmText(*leak) + " over " + armWords(bridge, arm);
  return text;
}

std::string withSign(const std::string& text, double value) { return value > 0 ? "+" + text : text; }

}  // namespace

std::string ohmText(Resistance value) { return formatQuantity(value.base(), UnitFamily::Resistance, {}, 6); }

std::string placeText(const Bridge& bridge, const Shunt& shunt) {
  const auto place = placeOf(bridge, shunt);
  if (place && place->atOwnEnds) return "right across arm " + std::to_string(place->arm + 1);
  return "from " + pointName(bridge, shunt.a) + " to " + pointName(bridge, shunt.b);
}

std::string shuntText(const Bridge& bridge, const Shunt& shunt) {
  return ohmText(resistanceOf(shunt)) + " " + placeText(bridge, shunt);
}

std::vector<Entry> givenOf(const Setup& setup) {
  const Bridge& bridge = setup.bridge;
  std::vector<Entry> given{{"Bridge", std::string(templateOf(bridge.type).name)},
                           {"Arms", armsText(bridge)},
                           {"Leads", leadsText(bridge)},
                           {"Excitation", formatNumber(setup.instrument.excitation.base(), 4) + " V"}};
  for (std::string sentence : hookupSentences(bridge)) {
    // A value like the others: whoever strings them together sets the full stop.
    if (sentence.ends_with('.')) sentence.pop_back();
    given.push_back({"Connection", std::move(sentence)});
  }
  if (const std::string leaks = leaksText(bridge); !leaks.empty()) given.push_back({"Leak", leaks});
  for (const Shunt& shunt : setup.shunts) given.push_back({"Shunt " + shunt.name, shuntText(bridge, shunt)});
  return given;
}

Entry instrumentEntry(const Setup& setup) {
  const Instrument& instrument = setup.instrument;
  std::string text = "reads " + readingUnitText(instrument);
  switch (instrument.unit) {
    case ReadingUnit::MicrometrePerMetre:
      text += ", gauge factor " + formatNumber(instrument.gaugeFactor, 4) + " and bridge factor " +
              formatNumber(instrument.bridgeFactor, 4) + " as set";
      break;
    case ReadingUnit::Millivolt:
    case ReadingUnit::MillivoltPerVolt:
      break;
    case ReadingUnit::Scaled:
      text += ", " + formatNumber(instrument.unitsPerMillivoltPerVolt, 6) + " " + instrument.scaledUnit +
              " per mV/V";
      break;
  }
  return {"Instrument", text + "; zeroed with all shunts open"};
}

std::string signedOutput(Output output) {
  if (std::abs(output.base()) < noOutput.base()) return "0 mV/V";
  return withSign(formatQuantity(output.base(), UnitFamily::Output, {}, 4), output.base());
}

std::string signedReading(const Setup& setup, Reading reading) {
  return withSign(formatNumber(reading.base(), 4), reading.base()) + " " + readingUnitText(setup.instrument);
}

int displayPlaces(double greatest) {
  int places = 4;
  for (double top = 10; top <= greatest && places > 0; top *= 10) --places;
  return places;
}

}  // namespace core
