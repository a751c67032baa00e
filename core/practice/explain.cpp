// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/practice/explain.h"

#include <algorithm>
#include <iterator>

#include "core/flow/movement.h"
#include "core/flow/placement.h"
#include "core/practice/question_words.h"
#include "core/review/arm_place.h"
#include "core/units/language.h"
#include "core/working/working.h"

namespace core {
namespace {

constexpr std::string_view oneShuntFormula = sayLater("shunt over one of four equal arms");

/// The working of a step that closes `closed`, part by part; none when it cannot be predicted.
std::vector<WorkingPart> workingOfStep(Setup setup, const std::vector<std::size_t>& closed) {
  Channel channel;
  setup.sequence = {{say("all open"), {}}, {"closed", closed}};
  channel.setup = std::move(setup);
  auto parts = workingOf(channel, evaluate(channel), std::nullopt, 1);
  return parts ? *std::move(parts) : std::vector<WorkingPart>();
}

/// The textbook knows no reversed wires: it is held against the bridge as its template says.
Setup asTemplate(Setup setup) {
  setup.bridge.hookup = {};
  return setup;
}

std::string contrastLine(const WorkingContrast& contrast) {
  return contrast.formula + " = " + contrast.numbers + " = " + contrast.approximate + " (" + contrast.source +
         ")";
}

/// The formula of one shunt, and where the network differs by more than a thousandth, why.
void addShuntLines(std::vector<std::string>& lines, const Setup& setup, std::size_t shunt) {
  const std::string& name = setup.shunts[shunt].name;
  for (const WorkingPart& part : workingOfStep(asTemplate(setup), {shunt}))
    for (const WorkingContrast& contrast : part.contrasts) {
      if (contrast.by != say(oneShuntFormula) || contrast.what != say("Change of output")) continue;
      lines.push_back(say("Shunt {1}: {2}", {name, contrastLine(contrast)}));
      if (std::abs(contrast.approximateValue / contrast.exactValue - 1) > 1e-3)
        lines.push_back(say("Shunt {1}: in the whole network {2}; the formula is off by {3}. {4}",
                            {name, contrast.exact, contrast.off, contrast.why}));
      return;
    }
  lines.push_back(say(
      "Shunt {1}: v = R3/(R3 + R4) − R2/(R1 + R2) keeps its four arms; the shunt lies over none.", {name}));
}

/// "Shunt B lies right across arm 4 and pulls the output up."
std::string ruleOf(const Setup& setup, const Shunt& shunt) {
  const std::string where = say("Shunt {1} lies {2}", {shunt.name, placeText(setup.bridge, shunt)});
  const auto place = placeOf(setup.bridge, shunt);
  if (!place && placementOf(setup.bridge, shunt).kind == ShuntPlacement::Kind::Output)
    return say("{1}, over the output: it loads the signal and unbalances neither half bridge.", {where});
  if (!place)
    return say("{1}, over the excitation and both half bridges alike: neither divides it otherwise.",
               {where});
  const bool isDown = place->arm % 2 == 0;
  if (place->atOwnEnds)
    return say(isDown ? sayLater("{1} and pulls the output down.") : sayLater("{1} and pulls the output up."),
               {where});
  return say(isDown ? sayLater("{1}, over arm {2} and leads, and pulls the output down.")
                    : sayLater("{1}, over arm {2} and leads, and pulls the output up."),
             {where, std::to_string(place->arm + 1)});
}

}  // namespace

std::vector<std::string> ruleSentences(const Setup& setup, std::size_t step) {
  std::vector<std::string> sentences;
  sentences.emplace_back(
      say("A shunt lowers what it lies over: over arm 1 or 3 the output falls, over arm 2 or 4 it rises, as "
          "long as signal and excitation are the right way round (Micro-Measurements TN-514)."));
  for (const std::size_t shunt : setup.sequence[step].closed)
    sentences.push_back(ruleOf(setup, setup.shunts[shunt]));
  const Hookup& hookup = setup.bridge.hookup;
  if (hookup.signalReversed)
    sentences.emplace_back(say("The instrument measures S- against S+, which turns the sign round."));
  if (hookup.excitationReversed)
    sentences.emplace_back(say("The source's plus side is on P-, which turns the sign of the signal round."));
  if (hookup.signalReversed && hookup.excitationReversed)
    sentences.emplace_back(say("Turned twice, the sign is what it was."));
  if (hookup.gaugesReversed)
    sentences.emplace_back(
        say("That the gauges are reversed changes what a strain does, not what a shunt does."));
  return sentences;
}

namespace {

/// Where what is shown and what is simulated are told apart by sign or by more than a thousandth, why.
std::string shownSentence(const Setup& setup, std::size_t step, const Movement& movement) {
  const Instrument& instrument = setup.instrument;
  if (instrument.unit != ReadingUnit::MicrometrePerMetre || isTransducer(setup.bridge)) return {};
  if (movement.polarity == Polarity::None || !movement.simulated) return {};
  const SetupPrediction predicted = predict(setup);
  if (!predicted.steps[step]) return {};
  const double shown = predicted.steps[step]->reading.base();
  const double simulated = simulatedInUnit(setup.bridge, *movement.simulated);
  if (std::abs(shown - simulated) <= 1e-3 * std::abs(simulated)) return {};
  const Hookup& hookup = setup.bridge.hookup;
  const bool turned = (shown > 0) != (simulated > 0);
  const std::string_view reckons =
      !turned ? sayLater(
                    "The instrument shows {1}: it reckons with the gauge factor and bridge factor as set and "
                    "knows neither leads nor that a bridge is not linear.")
      : hookup.gaugesReversed ? sayLater(
                                    "The instrument shows {1}: it reckons with the gauge factor and bridge "
                                    "factor as set and knows nothing of reversed gauges.")
                              : sayLater(
                                    "The instrument shows {1}: it reckons with the gauge factor and bridge "
                                    "factor as set and knows nothing of reversed wires.");
  return sayInTurn({say(reckons, {signedReading(setup, Reading(shown))}),
                    say("Simulated is the strain that would change the output by as much.")});
}

}  // namespace

std::vector<std::string> networkSentences(const Setup& setup, std::size_t step, bool withInstrument) {
  std::vector<std::string> sentences;
  if (const auto movement = movementAt(setup, step)) {
    std::string sentence = sentenceOf(setup, step, *movement);
    if (!sentence.empty()) sentences.push_back(std::move(sentence));
    if (!withInstrument) return sentences;
    if (std::string shown = shownSentence(setup, step, *movement); !shown.empty())
      sentences.push_back(std::move(shown));
  }
  return sentences;
}

std::vector<std::string> outputLines(const Setup& setup, std::size_t step) {
  std::vector<std::string> lines;
  for (const std::size_t shunt : setup.sequence[step].closed) addShuntLines(lines, setup, shunt);
  const SetupPrediction predicted = predict(setup);
  const auto& exact = predicted.steps[step];
  if (exact) lines.push_back(say("Solved as it is connected: Δv = {1}", {signedOutput(exact->output)}));
  return lines;
}

std::vector<std::string> readingLines(const Setup& setup, std::size_t step) {
  std::vector<std::string> lines;
  for (const WorkingPart& part : workingOfStep(setup, setup.sequence[step].closed)) {
    if (part.heading != say("The reading")) continue;
    const WorkingLine& line = part.lines.front();
    const bool plain = setup.instrument.unit == ReadingUnit::MillivoltPerVolt;
    lines.push_back(say("Reading: {1}", {plain ? line.formula + " = " + line.result
                                               : line.formula + " = " + line.numbers + " = " + line.result}));
  }
  return lines;
}

void append(std::vector<std::string>& lines, std::vector<std::string> more) {
  lines.insert(lines.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

}  // namespace core
