// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "core/circuit/indication.h"
#include "core/units/language.h"
#include "core/working/amounts.h"
#include "core/working/parts.h"
#include "core/working/textbook.h"

namespace core {
namespace {

using namespace amounts;

bool linearised(const Setup& setup) {
  const Instrument& instrument = setup.instrument;
  return instrument.unit == ReadingUnit::MicrometrePerMetre && !isTransducer(setup.bridge) &&
         instrument.linearisation != Linearisation::None;
}

/// The factors that an instrument reading in strain reckons with.
std::string asSet(const Instrument& instrument) {
  return number(instrument.gaugeFactor) + " × " + number(instrument.bridgeFactor);
}

/// Resistance change over resistance of an ideal bridge's gauge 1, which the linearisation reckons with.
std::string idealText(const Setup& setup, Output v) {
  const auto x = idealResistanceChange(setup.bridge.type, setup.bridge.gauge.poissonRatio, v);
  return x ? inFormula(number(*x)) : "(none)";
}

WorkingLine linearisedLine(const WorkingGround& ground) {
  const Setup& setup = ground.setup;
  const Output now = ground.zero + ground.predicted.output;
  const double n = templateOf(setup.bridge.type).bridgeFactor(setup.bridge.gauge.poissonRatio);
  const bool before = setup.instrument.linearisation == Linearisation::BeforeZero;
  const std::string change = before
                                 ? "(" + idealText(setup, now) + " − " + idealText(setup, ground.zero) + ")"
                                 : idealText(setup, ground.predicted.output);
  return {before ? say("Expected reading, each output corrected for the bridge's nonlinearity, then zeroed")
                 : say("Expected reading, zeroed, then corrected for the bridge's nonlinearity"),
          say("{1} N₁ / (F N), x = ΔR/R of gauge 1 in the ideal bridge, N₁ its bridge factor; F and N as set",
              {before ? "[x(v) − x(v₀)]" : "x(Δv)"}),
          change + " × " + number(n) + " / (" + asSet(setup.instrument) + ")",
          readingText(setup, ground.predicted.reading.base())};
}

WorkingLine plainLine(const WorkingGround& ground) {
  const Setup& setup = ground.setup;
  const Instrument& instrument = setup.instrument;
  const std::string v = inFormula(output(ground.predicted.output));
  WorkingLine line{say("Expected reading"), "", "", readingText(setup, ground.predicted.reading.base())};
  switch (instrument.unit) {
    case ReadingUnit::MicrometrePerMetre:
      line.formula = say("4 Δv / (F N), F and N as set");
      line.numbers = "4 × " + v + " / (" + asSet(instrument) + ")";
      break;
    case ReadingUnit::MillivoltPerVolt:
      line.formula = "Δv";
      line.numbers = v;
      break;
    case ReadingUnit::Millivolt:
      line.formula = instrument.current ? say("Δv I R, as set") : say("Δv × excitation as set");
      line.numbers = v + " × " + number(nominalExcitation(instrument).base(), "V");
      break;
    case ReadingUnit::Scaled:
      line.formula = say("Δv × scale");
      line.numbers =
          v + " × " +
          number(instrument.unitsPerMillivoltPerVolt, say("{1} per mV/V", {instrument.scaledUnit}));
      break;
  }
  return line;
}

/// What the instrument would show without its correction, beside what it shows.
WorkingContrast uncorrected(const WorkingGround& ground) {
  const Setup& setup = ground.setup;
  const Instrument& instrument = setup.instrument;
  const double exact = ground.predicted.reading.base();
  const double linear = 1e6 * textbook::linearIndication(ground.predicted.output.base(),
                                                         instrument.gaugeFactor, instrument.bridgeFactor);
  return {say("Expected reading"),
          say("without the instrument's linearisation"),
          say("4 Δv / (F N), F and N as set"),
          "4 × " + inFormula(output(ground.predicted.output)) + " / (" + asSet(instrument) + ")",
          readingText(setup, exact),
          readingText(setup, linear),
          percent(linear / exact - 1),
          say("The difference comes from the bridge's nonlinearity, which the instrument corrects."),
          say("Micro-Measurements TN-507"),
          exact,
          linear};
}

/// How far the reading is from what is simulated, where both are in one unit.
void addAgainstSimulated(WorkingPart& part, const WorkingGround& ground) {
  const Setup& setup = ground.setup;
  const double simulated = simulatedInUnit(setup.bridge, ground.predicted.simulated);
  const double reading = ground.predicted.reading.base();
  if (simulatedUnitText(setup.bridge) != readingUnitText(setup.instrument) || simulated == 0) return;
  const std::string what = isTransducer(setup.bridge) ? say("simulated load") : say("simulated strain");
  // Reversed wires or gauges turn one of the two round.
  const bool opposite = reading * simulated < 0;
  part.lines.push_back({say(opposite ? sayLater("Expected reading against the {1}, of opposite sign")
                                     : sayLater("Expected reading against the {1}"),
                            {what}),
                        opposite ? say("−reading / simulated − 1") : say("reading / simulated − 1"),
                        (opposite ? inFormula(number(-reading)) : number(reading)) + " / " +
                            inFormula(number(simulated)) + " − 1",
                        percent((opposite ? -reading : reading) / simulated - 1)});
}

}  // namespace

WorkingPart readingPart(const WorkingGround& ground) {
  WorkingPart part{say("The reading"), {}};
  if (ground.isZeroStep()) {
    part.lines.push_back(
        {say("Expected reading"), "", "", say("0, of an instrument zeroed with all shunts open")});
    return part;
  }
  part.lines.push_back(linearised(ground.setup) ? linearisedLine(ground) : plainLine(ground));
  addAgainstSimulated(part, ground);
  if (linearised(ground.setup) && ground.predicted.reading.base() != 0)
    part.contrasts.push_back(uncorrected(ground));
  return part;
}

}  // namespace core
