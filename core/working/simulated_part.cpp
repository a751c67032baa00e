// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/circuit/hookup.h"
#include "core/review/arm_place.h"
#include "core/units/language.h"
#include "core/working/amounts.h"
#include "core/working/contrast.h"
#include "core/working/parts.h"
#include "core/working/textbook.h"

namespace core {
namespace {

using namespace amounts;
using textbook::Pull;
using Unit = Approximation::Unit;

constexpr std::string_view smallForm = sayLater("the form for small changes");
constexpr std::string_view nonlinearity = sayLater("the bridge's nonlinearity");

/// The signs that reversed wires and gauges give the formulas, which are those of the template.
int wireSign(const Setup& setup) { return outputSign(setup.bridge); }
int strainSign(const Setup& setup) { return gaugeSign(setup.bridge); }
/// Of what an output says of the gauges.
int bothSigns(const Setup& setup) { return wireSign(setup) * strainSign(setup); }

std::string minusIf(bool negative) { return negative ? "−" : ""; }

/// "ε = −R / (F Rs)" for "ε = R / (F Rs)", and the other way round, when `sign` is negative.
std::string signedFormula(std::string formula, int sign) {
  const std::size_t right = formula.find(formula.find("≈") != std::string::npos ? "≈ " : "= ");
  const std::size_t begin = formula.find(' ', right) + 1;
  const std::string minus = "−";
  if (sign > 0 || formula.empty()) return formula;
  if (formula.compare(begin, minus.size(), minus) == 0) return formula.erase(begin, minus.size());
  return formula.insert(begin, minus);
}

/// A closed shunt and the arm it is meant for.
struct Placed {
  std::size_t arm = 0;
  Resistance r, rs;
  Pull pull() const { return arm % 2 == 0 ? Pull::Down : Pull::Up; }
  int sign() const { return pull() == Pull::Down ? -1 : 1; }
};

/// All closed shunts; empty when one of them is not across an arm, with or without its leads.
std::vector<Placed> placedShunts(const Setup& setup) {
  std::vector<Placed> placed;
  for (const std::size_t closed : setup.sequence.front().closed) {
    const Shunt& shunt = setup.shunts[closed];
    const auto place = placeOf(setup.bridge, shunt);
    if (!place) return {};
    placed.push_back({place->arm, setup.bridge.arms[place->arm], resistanceOf(shunt)});
  }
  return placed;
}

double factorOf(const Setup& setup) { return gaugeFactorOf(setup.bridge.gauge); }
double poissonOf(const Setup& setup) { return setup.bridge.gauge.poissonRatio; }
double bridgeFactorOf(const Setup& setup) {
  return templateOf(setup.bridge.type).bridgeFactor(poissonOf(setup));
}

/// The step of a set-up that has no other; none when it cannot be predicted.
std::optional<Prediction> predicted(const Setup& oneStep) {
  auto all = predict(oneStep);
  if (all.steps.empty() || !all.steps.front()) return std::nullopt;
  return *all.steps.front();
}

/// Compares what `exact` of a prediction is with `approximate` of set-up and prediction.
template <class Exact, class Approximate>
Comparing comparing(Exact exact, Approximate approximate) {
  return [=](const Setup& setup) -> std::optional<Compared> {
    const auto prediction = predicted(setup);
    if (!prediction || prediction->polarity == Polarity::None) return std::nullopt;
    return Compared{exact(setup, *prediction), approximate(setup, *prediction)};
  };
}

double strainOf(const Setup&, const Prediction& prediction) { return prediction.simulated; }
double outputOf(const Setup&, const Prediction& prediction) { return prediction.output.base(); }
double loadOf(const Setup& setup, const Prediction& prediction) {
  return prediction.simulated * setup.bridge.rating.capacity;
}

/// What the letters of a formula stand for: of a shunt where there is one, of the bridge, of the output.
Letters lettersOf(const Setup& setup, const Placed* shunt, Output change = {}) {
  Letters letters{{"Δv", inFormula(output(change))},
                  {"F", number(factorOf(setup))},
                  {"ν", number(poissonOf(setup))},
                  {"N", number(bridgeFactorOf(setup))}};
  if (shunt) letters.insert(letters.end(), {{"Rs", ohm(shunt->rs)}, {"R", ohm(shunt->r)}});
  return letters;
}

/// ± R/(F N (R + Rs)), summed over the shunts.
Approximation shuntFormula(const Setup& setup, const std::vector<Placed>& shunts) {
  const bool one = shunts.size() == 1;
  std::string numbers;
  for (const Placed& shunt : shunts) {
    const std::string term = withNumbers("R / (F N (R + Rs))", lettersOf(setup, &shunt));
    const std::string minus = numbers.empty() ? "−" : " − ", plus = numbers.empty() ? "" : " + ";
    numbers += (shunt.sign() * strainSign(setup) < 0 ? minus : plus) + term;
  }
  return {Unit::Strain,
          say("Simulated strain"),
          one ? say("shunt formula for small strain")
              : say("shunt formula for small strain, summed over the shunts"),
          one ? signedFormula(say("ε ≈ R / (F N (R + Rs))"), shunts.front().sign() * strainSign(setup))
              : say("ε ≈ Σ ± R / (F N (R + Rs))"),
          numbers,
          one ? say("M. J. Bower, Modern Strain Gage Technology, eq. 29.4")
              : say("the same, first order in each shunt"),
          say(smallForm),
          comparing(strainOf, [](const Setup& s, const Prediction&) {
            double sum = 0;
            for (const Placed& shunt : placedShunts(s))
              sum += textbook::shuntStrain(shunt.pull(), shunt.r.base(), shunt.rs.base(), factorOf(s),
                                           bridgeFactorOf(s));
            return strainSign(s) * sum;
          })};
}

std::string equalArmSource(BridgeType type) {
  switch (type) {
    case BridgeType::QuarterTwoWire:
    case BridgeType::QuarterThreeWire:
    case BridgeType::HalfPoisson:
    case BridgeType::FullPoissonColumn:
      return say("Micro-Measurements TN-514");
    default:
      return say("derived from the output of the ideal bridge");
  }
}

/// The exact inverse of an ideal bridge; none where it is the shunt formula itself.
std::optional<Approximation> equalArmFormula(const Setup& setup, const Placed& shunt) {
  const BridgeType type = setup.bridge.type;
  const auto value = [](const Setup& s) {
    const Placed one = placedShunts(s).front();
    auto strain = textbook::equalArmStrain(s.bridge.type, poissonOf(s), one.pull(), one.r.base(),
                                           one.rs.base(), factorOf(s));
    if (strain) *strain *= strainSign(s);
    return strain;
  };
  const bool same = bridgeFactorOf(setup) == 1 && shunt.pull() == Pull::Down;
  if (same || !value(setup)) return std::nullopt;
  const std::string formula =
      signedFormula(std::string(textbook::equalArmStrainFormula(type, shunt.pull())), strainSign(setup));
  return Approximation{Unit::Strain,
                       say("Simulated strain"),
                       say("equal arms without leads, any size of strain"),
                       formula,
                       withNumbers(formula, lettersOf(setup, &shunt)),
                       equalArmSource(type),
                       say(smallForm),
                       comparing(strainOf, [=](const Setup& s, const Prediction&) { return *value(s); })};
}

/// With F and N as set where the instrument reads in strain; else those of gauge and template.
Approximation linearFormula(const Setup& setup, const Prediction& prediction) {
  const bool asSet = setup.instrument.unit == ReadingUnit::MicrometrePerMetre;
  const auto f = [=](const Setup& s) { return asSet ? s.instrument.gaugeFactor : factorOf(s); };
  const auto n = [=](const Setup& s) { return asSet ? s.instrument.bridgeFactor : bridgeFactorOf(s); };
  return {Unit::Strain,
          say("Simulated strain"),
          asSet ? say("linear indication, F and N as set")
                : say("linear indication, F of the gauge, N of the bridge"),
          signedFormula(say("ε ≈ 4 Δv / (F N)"), bothSigns(setup)),
          minusIf(bothSigns(setup) < 0) + "4 × " + inFormula(output(prediction.output)) + " / (" +
              number(f(setup)) + " × " + number(n(setup)) + ")",
          say("M. J. Bower, Modern Strain Gage Technology, eq. 27.4 to 27.11"),
          say(nonlinearity),
          comparing(strainOf, [=](const Setup& s, const Prediction& p) {
            return bothSigns(s) * textbook::linearIndication(p.output.base(), f(s), n(s));
          })};
}

/// A formula of the template's output, which reversed wires turn round.
std::string ofTurnedOutput(std::string formula, int sign) {
  const std::string output = "Δv", turned = "(−Δv)";
  if (sign > 0) return formula;
  for (std::size_t at = formula.find(output); at != std::string::npos;
       at = formula.find(output, at + turned.size()))
    formula.replace(at, output.size(), turned);
  return formula;
}

std::optional<Approximation> correctedFormula(const Setup& setup, const Prediction& prediction) {
  const BridgeType type = setup.bridge.type;
  const auto value = [](const Setup& s, const Prediction& p) {
    auto strain =
        textbook::correctedStrain(s.bridge.type, poissonOf(s), wireSign(s) * p.output.base(), factorOf(s));
    if (strain) *strain *= strainSign(s);
    return strain;
  };
  if (!value(setup, prediction)) return std::nullopt;
  const std::string formula = ofTurnedOutput(
      signedFormula(std::string(textbook::correctedStrainFormula(type)), strainSign(setup)), wireSign(setup));
  const bool quarter = type == BridgeType::QuarterTwoWire || type == BridgeType::QuarterThreeWire;
  return Approximation{
      Unit::Strain,
      say("Simulated strain"),
      say("indication corrected for the bridge's nonlinearity"),
      formula,
      withNumbers(formula, lettersOf(setup, nullptr, prediction.output)),
      quarter ? say("Micro-Measurements TN-507") : say("derived as in Micro-Measurements TN-507"),
      say(smallForm),
      comparing(strainOf, [=](const Setup& s, const Prediction& p) { return *value(s, p); })};
}

Approximation shuntOutputFormula(const Setup& setup, const Placed& shunt) {
  const std::string r = ohm(shunt.r), rs = ohm(shunt.rs);
  const int sign = shunt.sign() * wireSign(setup);
  return {Unit::Output,
          say("Change of output"),
          say("shunt over one of four equal arms"),
          signedFormula(say("Δv = R / (4 Rs + 2 R)"), sign),
          minusIf(sign < 0) + r + " / (4 × " + rs + " + 2 × " + r + ")",
          say("Micro-Measurements TN-514"),
          say(smallForm),
          comparing(outputOf, [](const Setup& s, const Prediction&) {
            const Placed one = placedShunts(s).front();
            return wireSign(s) * textbook::shuntOutput(one.pull(), one.r.base(), one.rs.base());
          })};
}

Approximation smallOutputFormula(const Setup& setup, const Prediction& prediction) {
  return {Unit::Output,
          say("Change of output"),
          say("small strain, from the simulated strain"),
          signedFormula(say("Δv ≈ F N ε / 4"), bothSigns(setup)),
          minusIf(bothSigns(setup) < 0) + number(factorOf(setup)) + " × " + number(bridgeFactorOf(setup)) +
              " × " + inFormula(strain(prediction.simulated)) + " / 4",
          say("M. J. Bower, Modern Strain Gage Technology, eq. 27.4 to 27.11"),
          say(nonlinearity),
          comparing(outputOf, [](const Setup& s, const Prediction& p) {
            return bothSigns(s) * textbook::smallStrainOutput(factorOf(s), bridgeFactorOf(s), p.simulated);
          })};
}

Approximation loadFormula(const Setup& setup, const Placed& shunt) {
  const Rating& rating = setup.bridge.rating;
  const std::string r = ohm(shunt.r), rs = ohm(shunt.rs);
  const int sign = shunt.sign() * strainSign(setup);
  return {Unit::Load,
          say("Simulated load"),
          say("shunt over one of four equal arms"),
          signedFormula(say("L = C R / ((4 Rs + 2 R) S), C capacity, S rated output"), sign),
          minusIf(sign < 0) + number(rating.capacity, rating.loadUnit) + " × " + r + " / ((4 × " + rs +
              " + 2 × " + r + ") × " + output(rating.ratedOutput) + ")",
          say("common practice"),
          say(smallForm),
          comparing(loadOf, [](const Setup& s, const Prediction&) {
            const Placed one = placedShunts(s).front();
            return strainSign(s) * textbook::shuntLoad(one.pull(), one.r.base(), one.rs.base(),
                                                       s.bridge.rating.ratedOutput.base(),
                                                       s.bridge.rating.capacity);
          })};
}

Approximation loadFromOutput(const Setup& setup, const Prediction& prediction) {
  const Rating& rating = setup.bridge.rating;
  return {Unit::Load,
          say("Simulated load"),
          say("from the output by the rated output"),
          signedFormula(say("L = C Δv / S, C capacity, S rated output"), bothSigns(setup)),
          minusIf(bothSigns(setup) < 0) + number(rating.capacity, rating.loadUnit) + " × " +
              inFormula(output(prediction.output)) + " / " + output(rating.ratedOutput),
          say("common practice"),
          say(smallForm),
          comparing(loadOf, [](const Setup& s, const Prediction& p) {
            return bothSigns(s) * p.output.base() / s.bridge.rating.ratedOutput.base() *
                   s.bridge.rating.capacity;
          })};
}

/// Wires that carry the current of the gauges, for the textbook's lead factor.
struct LeadPath {
  std::string words, formula;
  std::vector<LeadRole> roles;
  double share = 1;  ///< of their sum
};

LeadPath leadPath(BridgeType type) {
  using enum LeadRole;
  switch (type) {
    case BridgeType::QuarterTwoWire:
      return {say("both wires of the gauge"), "(R + 2 RL) / R", {ExcitationPlus, SignalMinus}};
    case BridgeType::QuarterThreeWire:
      return {say("one wire of a three-wire connection"), "(R + RL) / R", {ExcitationPlus, Return}, 0.5};
    case BridgeType::HalfBending:
    case BridgeType::HalfPoisson:
      return {say("one wire in each arm"), "(R + RL) / R", {ExcitationPlus, ExcitationMinus}, 0.5};
    case BridgeType::HalfDiagonal:
      return {say("both wires of each gauge"),
              "(R + 2 RL) / R",
              {ExcitationPlus, SignalMinus, ExcitationMinus, SignalPlus},
              0.5};
    default:
      return {say("both excitation wires"), "(R + 2 RL) / R", {ExcitationPlus, ExcitationMinus}};
  }
}

Resistance wiresInPath(const Bridge& bridge) {
  const LeadPath path = leadPath(bridge.type);
  Resistance sum(0);
  for (const LeadRole role : path.roles) sum += leadResistance(bridge, role);
  return path.share * sum;
}

std::optional<double> slopeOf(const Setup& setup) {
  auto circuit = BridgeCircuit::make(setup.bridge, setup.instrument, {});
  if (!circuit) return std::nullopt;
  circuit->setStimulus(0);
  if (!circuit->solveOutput()) return std::nullopt;
  const double slope = circuit->outputSlope();
  return slope == 0 ? std::nullopt : std::optional(slope);
}

/// By how much the leads weaken a real strain; none without leads and where the output is not divided by the
/// voltage at the instrument.
std::optional<Approximation> leadFormula(const Setup& setup) {
  const bool sense = setup.bridge.sixWire && templateOf(setup.bridge.type).senseLeads;
  const Resistance wires = wiresInPath(setup.bridge), r = setup.bridge.arms[0];
  if (sense || setup.instrument.current || wires.base() == 0) return std::nullopt;
  const LeadPath path = leadPath(setup.bridge.type);
  return Approximation{
      Unit::Factor,
      say("{1} over its reading, for the leads", {isTransducer(setup.bridge) ? say("Load") : say("Strain")}),
      path.words,
      path.formula,
      "(" + ohm(r) + " + " + ohm(wires) + ") / " + ohm(r),
      say("Micro-Measurements, article on leadwire resistance"),
      say("the form for short wires"),
      [](const Setup& s) -> std::optional<Compared> {
        Setup bare = s;
        bare.bridge.leads.fill(Resistance(0));
        bare.bridge.leadWarming = Warming(0);
        const auto with = slopeOf(s), without = slopeOf(bare);
        if (!with || !without) return std::nullopt;
        return Compared{*without / *with,
                        textbook::leadFactor(s.bridge.arms[0].base(), wiresInPath(s.bridge).base())};
      }};
}

/// All approximations that hold for the step of `setup`: none where leads are broken, exchanged or touching.
std::vector<Approximation> approximations(const Setup& setup, const Prediction& prediction) {
  if (!areLeadsInOrder(setup.bridge)) return {};
  const std::vector<Placed> shunts = placedShunts(setup);
  const bool voltage = !setup.instrument.current, transducer = isTransducer(setup.bridge);
  std::vector<Approximation> all;
  const auto add = [&](std::optional<Approximation> one) {
    if (one) all.push_back(*std::move(one));
  };
  if (transducer) {
    if (shunts.size() == 1) add(loadFormula(setup, shunts.front()));
    if (voltage) add(loadFromOutput(setup, prediction));
  } else {
    if (!shunts.empty()) add(shuntFormula(setup, shunts));
    if (shunts.size() == 1) add(equalArmFormula(setup, shunts.front()));
    add(linearFormula(setup, prediction));
    if (voltage) add(correctedFormula(setup, prediction));
  }
  if (voltage && shunts.size() == 1) add(shuntOutputFormula(setup, shunts.front()));
  if (voltage && !transducer) add(smallOutputFormula(setup, prediction));
  add(leadFormula(setup));
  return all;
}

void addInverse(WorkingPart& part, const WorkingGround& ground) {
  const Setup& setup = ground.setup;
  const bool transducer = isTransducer(setup.bridge);
  const double simulated = ground.predicted.simulated;
  const std::string unit = simulatedUnitText(setup.bridge), letter = transducer ? "L" : "ε";
  const std::string value = number(simulatedInUnit(setup.bridge, simulated), unit);
  auto circuit = BridgeCircuit::make(setup.bridge, setup.instrument, {});
  if (!circuit) return;
  circuit->setStimulus(simulated);
  const auto back = circuit->solveOutput();
  if (!back) return;
  part.lines.push_back({say("{1} that gives the same output with all shunts open, whole network",
                            {transducer ? say("Load") : say("Strain of gauge 1")}),
                        say("v({1}) = v, solved for {2}", {letter, letter}),
                        "v(" + value + ") = " + output(*back), value});
  if (setup.bridge.type == BridgeType::FullTorsion)
    part.lines.push_back(
        {say("Shear strain"), say("γ = 2 ε"), "2 × " + inFormula(value), strain(2 * simulated)});
}

}  // namespace

WorkingPart simulatedPart(const WorkingGround& ground) {
  WorkingPart part{isTransducer(ground.setup.bridge) ? say("Simulated load") : say("Simulated strain"), {}};
  if (ground.isZeroStep()) {
    part.lines.push_back({part.heading, "", "", say("none: no shunt is closed")});
    return part;
  }
  if (ground.predicted.polarity == Polarity::None) {
    part.lines.push_back({part.heading, "", "", say("none: the closed shunts do not move the output")});
    return part;
  }
  addInverse(part, ground);
  if (!areLeadsInOrder(ground.setup.bridge))
    part.lines.push_back(
        {say("Textbook formulas"), "", "", say("none: they are for bridges whose leads are in order")});
  Setup oneStep = ground.setup;
  oneStep.sequence = {ground.setup.sequence[ground.step]};
  for (const Approximation& approximation : approximations(oneStep, ground.predicted))
    if (auto contrast = contrastOf(oneStep, approximation)) part.contrasts.push_back(*std::move(contrast));
  return part;
}

}  // namespace core
