// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/case_evaluation.h"

#include <cmath>
#include <functional>
#include <sstream>

#include "core/budget/budget.h"
#include "core/circuit/indication.h"
#include "core/line/line.h"
#include "core/plan/heating.h"
#include "core/search/shunt_place.h"
#include "core/stock/e_series.h"
#include "tests/support/digits.h"
#include "tests/support/setups.h"

using namespace core;
using test::BridgeCase;
using test::CaseNetwork;
using test::Founds;

namespace {

constexpr double micro = 1e6;  ///< um/m in a strain of 1
constexpr double milli = 1e3;  ///< mV/V in an output of 1

CaseNetwork networkOf(const BridgeCase& row) { return CaseNetwork(row); }

core::Setup planOf(const BridgeCase& row) { return test::setupOf(row).value(); }
Prediction predictionOf(const BridgeCase& row) { return test::lastStep(test::shuntedSetupOf(row).value()); }

Resistance gaugeOf(const BridgeCase& row) { return Resistance(row.number("gauge_ohm")); }

/// The x in [low, high] at which the rising or falling `f` crosses zero; geometric when both are positive.
double crossing(const std::function<double(double)>& f, double low, double high) {
  const bool rises = f(high) > 0;
  if (rises == (f(low) > 0)) throw std::runtime_error("no crossing");
  for (int round = 0; round < 200; ++round) {
    const double middle = low > 0 ? std::sqrt(low * high) : (low + high) / 2;
    ((f(middle) > 0) == rises ? high : low) = middle;
  }
  return low;
}

std::size_t armOf(const BridgeCase& row) {
  return static_cast<std::size_t>(row.text("shunt_position").back() - '0');
}

/// Strain that simulates `row`'s bridge with `shunt` over its arm, in um/m; a load for a transducer.
double simulated(const BridgeCase& row, double shunt_ohm, std::size_t arm = 1) {
  const core::Setup plan = test::withShuntOnArm(planOf(row), Resistance(shunt_ohm), arm);
  return simulatedInUnit(plan.bridge, test::lastStep(plan).simulated);
}

/// Strain whose output is `output`, in um/m.
double strainFor(const BridgeCase& row, double output) {
  const core::Setup plan = planOf(row);
  auto circuit = BridgeCircuit::make(plan.bridge, plan.instrument, {});
  return *circuit->stimulusFor(Output(output)) * micro;
}

/// What an instrument set to the gauges shows of `output`, in um/m.
double indicated(const BridgeCase& row, double output) {
  const Instrument& set = planOf(row).instrument;
  return 4 * output / (set.gaugeFactor * set.bridgeFactor) * micro;
}

double outputAt(const BridgeCase& row, double strain_ue) {
  return test::outputAt(planOf(row), strain_ue / micro).base();
}

/// The netlist with its gauges strained by hand: an independent inverse, by bisection.
double equivalentStrainOfNetwork(const BridgeCase& row) {
  CaseNetwork network = networkOf(row);
  const double wanted = network.output(true);
  const Bridge bridge = planOf(row).bridge;
  const auto output = [&](double strain) {
    CaseNetwork strained = network;
    for (const std::size_t arm : {0, 1, 2, 3})  // the netlists list the arms in their order
      strained.elements[arm].ohm *= 1 + templateOf(bridge.type).shares[arm].at(bridge.gauge.poissonRatio) *
                                            bridge.gauge.factor * strain;
    return strained.output() - wanted;
  };
  return crossing(output, -0.2, 0.2) * micro;
}

Founds equivalentStrain(const BridgeCase& row) {
  return {{"network", equivalentStrainOfNetwork(row)}, {"template", predictionOf(row).simulated * micro}};
}

Founds outputChange(const BridgeCase& row) {
  return {{"network", networkOf(row).change() * milli},
          {"template", predictionOf(row).output.base() * milli}};
}

/// Of a shunt, or of the strain that the netlist holds at its gauge g1 to g2.
Founds indicatedStrain(const BridgeCase& row) {
  CaseNetwork network = networkOf(row);
  if (row.has("shunt_elements_ohm"))
    return {{"network", indicated(row, network.change())}, {"template", predictionOf(row).reading.base()}};

  const double strained = network.output();
  network.between("g1", "g2").ohm = row.number("gauge_ohm");
  core::Setup unstrained = planOf(row);
  unstrained.bridge.arms[0] = gaugeOf(row);
  const Output change =
      test::outputAt(unstrained, row.number("strain_ue") / micro) - test::outputAt(unstrained, 0);
  return {{"network", indicated(row, strained - network.output())},
          {"template", readingOf(unstrained.instrument, change).base()}};
}

/// Of a strained bridge; the template gets the unstrained arms and the strain.
Founds output(const BridgeCase& row) {
  core::Setup plan = planOf(row);
  plan.bridge.arms.fill(gaugeOf(row));
  return {{"network", networkOf(row).output() * milli},
          {"template", test::outputAt(plan, row.number("strain_ue") / micro).base() * milli}};
}

Founds constantCurrentOutput(const BridgeCase& row) {
  const double ampere = row.otherNumber("bridge_current_A");
  const CaseNetwork network = networkOf(row);
  core::Setup plan = planOf(row);
  const auto all = potentials(plan, 0).operator*();
  const auto at = [&](Node node) { return all[static_cast<std::size_t>(node)].value(); };
  const double current = (1 - at(Node::SMinus)) / plan.bridge.arms[0].base() +
                         (1 - at(Node::SPlus)) / plan.bridge.arms[3].base();
  return {{"network", ampere / network.supplyCurrent() * network.output() * milli},
          {"template", ampere / current * (at(Node::SPlus) - at(Node::SMinus)) * milli}};
}

Founds outputVoltage(const BridgeCase& row) {
  if (row.hasOther("bridge_current_A")) return constantCurrentOutput(row);
  return {{"template", outputAt(row, row.number("strain_ue")) * row.number("excitation_V") * milli}};
}

/// The small-signal voltage: slope of the unstrained bridge times strain.
Founds outputVoltageLinear(const BridgeCase& row) {
  const core::Setup plan = planOf(row);
  auto circuit = BridgeCircuit::make(plan.bridge, plan.instrument, {});
  EXPECT_TRUE(circuit->solveOutput());
  const double linear = circuit->outputSlope() * row.number("strain_ue") / micro;
  return {{"template", linear * row.number("excitation_V") * milli}};
}

Founds resistanceChange(const BridgeCase& row) {
  const Bridge bridge = planOf(row).bridge;
  return {{"template", (armUnder(bridge, 0, row.number("strain_ue") / micro) - bridge.arms[0]).base()}};
}

/// The shunt that simulates the row's strain.
Founds shuntForStrain(const BridgeCase& row) {
  const std::size_t arm = armOf(row) - 1;
  const auto shunt = resistanceFor(planOf(row), {armBegin(arm), armEnd(arm)}, row.number("strain_ue"));
  return {{"inverse", shunt->base()}};
}

/// Shortfall of the indication, in per cent of the strain.
Founds nonlinearity(const BridgeCase& row) {
  const double strain = row.number("strain_ue");
  return {{"template", 100 * (strain - indicated(row, outputAt(row, strain))) / strain}};
}

/// Output at which an instrument set to the gauges shows `indicated_ue`.
double outputShown(const BridgeCase& row, double indicated_ue) {
  const Instrument& set = planOf(row).instrument;
  return set.gaugeFactor * set.bridgeFactor * indicated_ue / micro / 4;
}

/// What an instrument shows that corrects each output `v` and then subtracts the zero, in um/m.
double linearised(const BridgeCase& row, double v, double zero) {
  core::Setup plan = planOf(row);
  plan.instrument.linearisation = Linearisation::BeforeZero;
  return indicationOf(plan.bridge, plan.instrument, Output(v), Output(zero))->value.base();
}

Founds actualStrain(const BridgeCase& row) {
  const double v = row.hasOther("output_mV")
                       ? row.otherNumber("output_mV") / milli / row.number("excitation_V")
                       : outputShown(row, row.otherNumber("indicated_strain_ue"));
  return {{"template", strainFor(row, v)}, {"linearisation", linearised(row, v, 0)}};
}

Founds indicatedIncrement(const BridgeCase& row) {
  const double from = row.otherNumber("initial_strain_ue");
  const double to = from + row.otherNumber("strain_increment_ue");
  return {{"template", indicated(row, outputAt(row, to) - outputAt(row, from))}};
}

Founds actualIncrement(const BridgeCase& row) {
  const double from = row.otherNumber("initial_indicated_ue");
  const double to = from + row.otherNumber("indicated_increment_ue");
  const double before = outputShown(row, from), after = outputShown(row, to);
  return {{"template", strainFor(row, after) - strainFor(row, before)},
          {"linearisation", linearised(row, after, before)}};
}

Founds zeroOutput(const BridgeCase& row) {
  return {{"network", networkOf(row).output() * milli}, {"template", outputAt(row, 0) * milli}};
}

/// All leads warm by so many kelvin; the template gets copper wires of the leads' resistance at 20 C, or the
/// resistances and their warming.
Founds zeroShift(const BridgeCase& row) {
  const double warmer = row.otherNumber("lead_temperature_change_K");
  CaseNetwork warm = networkOf(row);
  for (auto& element : warm.elements)
    if (element.ohm == row.number("lead_ohm_each"))
      element.ohm *= 1 + row.otherNumber("alpha_per_K") * warmer;
  const auto withLeadsAt = [&](double celsius) {
    const Area section = 0.14_mm2;
    const double perMetre = resistanceOf(CopperWire{1.0_m, section}).base();
    core::Setup plan = planOf(row);
    plan.bridge.leads.fill(
        CopperWire{Length(row.number("lead_ohm_each") / perMetre), section, Temperature(celsius)});
    return test::outputAt(plan, 0).base();
  };
  core::Setup warmed = planOf(row);
  warmed.bridge.leadWarming = Warming(warmer);
  return {{"network", indicated(row, warm.output() - networkOf(row).output())},
          {"template", indicated(row, withLeadsAt(20 + warmer) - withLeadsAt(20))},
          {"warming", indicated(row, test::outputAt(warmed, 0).base() - outputAt(row, 0))}};
}

Founds sensitivityLoss(const BridgeCase& row) {
  const core::Setup plan = planOf(row);
  const core::Setup leads = test::withLeads(plan, Resistance(row.number("lead_ohm_each")));
  const double kept = test::outputAt(leads, 1e-3) / test::outputAt(plan, 1e-3);  // both linear in strain
  return {{"template", 100 * (1 - kept)}};
}

double insulationOhm(const BridgeCase& row) { return 1e6 * row.number("insulation_Mohm"); }

Founds leakChange(const BridgeCase& row) {
  const double before = 1e6 * row.otherNumber("initial_insulation_Mohm");
  return {{"template", simulated(row, insulationOhm(row)) - simulated(row, before)}};
}

Founds leakForStrain(const BridgeCase& row) {
  const auto off = [&](double ohm) { return simulated(row, ohm) + row.otherNumber("strain_error_ue"); };
  return {{"template", crossing(off, 1e3, 1e12) / 1e6}};
}

/// Printed as the small-signal form, so taken from the arm's change, not from the exact output.
Founds leakOutput(const BridgeCase& row) {
  core::Setup plan = planOf(row);
  plan.bridge.type = BridgeType::FullBending;
  const Prediction step = test::lastStep(test::withShuntOnArm(plan, Resistance(insulationOhm(row)), 1));
  const double arm = step.armChange.value().base() * plan.bridge.gauge.factor;
  return {{"template", std::abs(arm / 4) * row.number("excitation_V") * milli}};
}

/// Leak from the grid to a floating specimen, as the one resistor over the whole gauge that does the
/// same: grid and leak cut into pieces, specimen one node without another way out.
double equivalentShunt(const std::vector<double>& leakShares, double gauge, double insulation) {
  std::vector<test::Element> netlist;
  const std::size_t pieces = leakShares.size() - 1;
  for (std::size_t k = 0; k < pieces; ++k)
    netlist.push_back({std::to_string(k), std::to_string(k + 1), gauge / static_cast<double>(pieces)});
  for (std::size_t k = 0; k <= pieces; ++k)
    netlist.push_back({std::to_string(k), "specimen", insulation / leakShares[k]});
  const CaseNetwork grid(netlist, {"0", std::to_string(pieces)});
  return 1 / (grid.supplyCurrent() - 1 / gauge);
}

/// Half of the leak at each tab of the gauge, as two leaks of a bridge to its floating structure: from the
/// beginnings of arms 1 and 2. The shunt of the same output is R/(4 |v|) - R/2.
double equivalentShuntOfTabs(double gauge, double insulation) {
  core::Setup plan = test::equalArms(BridgeType::QuarterTwoWire, Resistance(gauge));
  for (const std::size_t arm : {0, 1}) plan.bridge.leaks[arm] = {{}, Resistance(2 * insulation), 0};
  return gauge / (4 * std::abs(test::outputAt(plan, 0).base())) - gauge / 2;
}

Founds equivalentShuntOfLeak(const BridgeCase& row) {
  const double gauge = row.number("gauge_ohm"), insulation = 1e5 * gauge;
  if (row.other("leakage") == "half at each tab")
    return {{"network", equivalentShunt({0.5, 0.5}, gauge, insulation) / insulation},
            {"template", equivalentShuntOfTabs(gauge, insulation) / insulation}};
  const std::size_t pieces = 200;  // the trapezoidal sum is off by 1 / pieces^2
  std::vector<double> shares(pieces + 1, 1.0 / pieces);
  shares.front() = shares.back() = 0.5 / pieces;
  return {{"network", equivalentShunt(shares, gauge, insulation) / insulation}};
}

/// Grounded specimen: a half bridge read at S against a balanced other half. The gauge strain that
/// moves S as far is what the reading errs by.
Founds leakToGround(const BridgeCase& row) {
  const double s = networkOf(row).potential("S");
  core::Setup plan = test::equalArms(BridgeType::QuarterTwoWire, gaugeOf(row), row.number("gauge_factor"));
  auto sound = BridgeCircuit::make(plan.bridge, plan.instrument, {});
  plan.bridge.leaks[0] = {
      {}, Resistance(insulationOhm(row)), row.otherNumber("leak_point_fraction_of_grid_from_P+")};
  plan.instrument.grounding = Grounding::PMinus;
  const double strain = *sound->stimulusFor(test::outputAt(plan, 0));
  return {{"network", (1 / s - 2) / row.number("gauge_factor") * micro}, {"template", strain * micro}};
}

Founds strainError(const BridgeCase& row) {
  if (row.text("configuration") == "quarter_grounded_specimen") return leakToGround(row);
  return {{"template", simulated(row, insulationOhm(row))}};
}

core::Setup ratedPlan(const BridgeCase& row) {
  core::Setup plan = planOf(row);
  if (row.hasOther("rated_output_mV_per_V"))
    plan.bridge.rating.ratedOutput = Output(row.otherNumber("rated_output_mV_per_V") / milli);
  if (row.hasOther("capacity")) plan.bridge.rating.capacity = row.otherNumber("capacity");
  return plan;
}

double equivalentLoadOf(const core::Setup& plan, double shunt_ohm) {
  const auto step = test::lastStep(test::withShuntOnArm(plan, Resistance(shunt_ohm), 1));
  return std::abs(simulatedInUnit(plan.bridge, step.simulated));
}

Founds equivalentLoad(const BridgeCase& row) {
  const core::Setup plan = ratedPlan(row);
  const double load = equivalentLoadOf(plan, row.number("shunt_ohm"));
  if (!row.hasOther("known_shunt_ohm")) return {{"template", load}};
  const double known = equivalentLoadOf(plan, row.otherNumber("known_shunt_ohm"));
  return {{"template", row.otherNumber("known_equivalent_load") * load / known}};
}

Founds percentOfRatedOutput(const BridgeCase& row) {
  core::Setup plan = ratedPlan(row);
  plan.bridge.rating.capacity = 100;
  return {{"template", equivalentLoadOf(plan, row.number("shunt_ohm"))}};
}

Founds wireResistance(const BridgeCase& row) {
  const Area section = row.hasOther("awg") ? awgSection(static_cast<int>(row.otherNumber("awg")))
                                           : Area(1e-6 * row.otherNumber("section_mm2"));
  const double length_m =
      row.text("quantity") == "resistance_per_1000ft" ? 304.8 : row.otherNumber("length_m");
  const CopperWire wire{Length(length_m), section, Temperature(row.number("temperature_C"))};
  return {{"wire", resistanceOf(wire).base()}};
}

std::vector<double> listOf(std::string text) {
  std::vector<double> values;
  std::istringstream stream(text);
  for (std::string value; std::getline(stream, value, '/');) values.push_back(std::stod(value));
  return values;
}

/// The readings printed in the row, else those of Norris.
Line lineOf(const BridgeCase& row) {
  if (row.hasOther("x")) return *fitLine(listOf(row.other("x")), listOf(row.other("y")));
  const auto norris = test::readCsv(SHUNTWRIGHT_TESTS_DIR "/reference/lines/nist_norris.csv");
  return *fitLine(test::numbers(norris, "x"), test::numbers(norris, "y"));
}

Founds greatestResidual(const BridgeCase& row) {
  const Line line = lineOf(row);
  double greatest = 0;
  for (const double residual : line.residuals) greatest = std::max(greatest, std::abs(residual));
  return {{"line", 100 * greatest / valueAt(line, listOf(row.other("x")).back())}};
}

/// Standard uncertainty of the simulated strain, in per cent of it, with what the row states and nothing
/// else.
Founds strainUncertainty(const BridgeCase& row) {
  core::Setup plan = test::withShuntOnArm(planOf(row), Resistance(row.number("shunt_ohm")), 1);
  for (const Input input : inputListOf(plan)) plan.uncertainties.stated[input] = {};
  const auto state = [&](InputKind kind, const std::string& name) {
    plan.uncertainties.stated[{kind, 0}] = {
        .statement = Statement::Standard, .amount = row.otherNumber(name) / 100, .relative = true};
  };
  state(InputKind::Arm, "u_gauge_resistance_percent");
  state(InputKind::Shunt, "u_shunt_percent");
  state(InputKind::GaugeFactor, "u_gauge_factor_percent");
  const auto budget = budgetOf(plan, predict(plan));
  const StepUncertainty& step = *budget.of(Scope::Strain).steps.front();
  return {{"budget", 100 * step.standard / std::abs(step.value)}};
}

Founds rootSumOfSquares(const BridgeCase& row) {
  const std::vector<double> components = listOf(row.other("components_ue"));
  const std::vector<double> ones(components.size(), 1.0);
  return {{"covariance", std::sqrt(covarianceOf(ones, ones, components, {}))},
          {"combined", combinedUncertainty(ones, components, {})}};
}

Founds gaugeFactorAtTemperature(const BridgeCase& row) {
  Gauge gauge;
  gauge.factor = row.number("gauge_factor");
  gauge.factorCoefficient = row.otherNumber("coefficient_percent_per_100K") / 100 / 100;
  gauge.installed = gauge.factorAt + Temperature(row.otherNumber("temperature_change_K"));
  Bridge bridge;
  bridge.gauge = gauge;
  const double change = (armUnder(bridge, 0, 1e-3) - bridge.arms[0]).base();
  return {{"gauge", gaugeFactorOf(gauge)}, {"arm", change / gauge.nominal.base() / 1e-3}};
}

/// The strain behind a reading of an instrument that is set to another gauge factor. In a bridge whose output
/// is linear, as the printed relation is; the correction for nonlinearity is another matter.
Founds correctedStrain(const BridgeCase& row) {
  core::Setup plan =
      test::equalArms(BridgeType::HalfBending, 350.0_ohm, row.otherNumber("true_gauge_factor"));
  plan.instrument.gaugeFactor = row.otherNumber("instrument_gauge_factor");
  auto circuit = BridgeCircuit::make(plan.bridge, plan.instrument, {});
  const double shown = row.otherNumber("indicated_strain_ue");
  const Output output(shown / readingOf(plan.instrument, Output(1)).base());
  return {{"template", *circuit->stimulusFor(output) * micro}};
}

/// Of all gauges together, in mW: of the whole bridge when its arms are all gauges.
Founds gaugePower(const BridgeCase& row) {
  core::Setup plan = planOf(row);
  if (row.text("quantity") == "bridge_power") plan.bridge.type = BridgeType::FullBending;
  double sum_W = 0;
  const auto heats = armHeats(plan);
  for (const ArmHeat& heat : *heats) sum_W += heat.power_W;
  return {{"template", 1e3 * sum_W}};
}

/// By the formula, and by what the excitation found turns into heat in the whole bridge.
Founds greatestExcitation(const BridgeCase& row) {
  const double density = 1e3 * row.otherNumber("power_density_kW_per_m2");
  core::Setup plan = planOf(row);
  plan.bridge.gauge.grid.area = Area(1e-6 * row.otherNumber("grid_area_mm2"));
  plan.instrument.excitation = Voltage(1);
  const ArmHeat atOneVolt = armHeats(plan)->front();
  return {{"formula", excitationForDensity(gaugeOf(row), *plan.bridge.gauge.grid.area, density).base()},
          {"template", std::sqrt(density / atOneVolt.density_W_per_m2.value())}};
}

/// The value of the row's series; and the strain it simulates, told in the note, found and compared here
/// since the row has one expected value.
Founds nearestSeriesValue(const BridgeCase& row) {
  const auto series = eSeriesFromName(row.other("series"));
  EXPECT_TRUE(series) << row.other("series");
  const double nearest = nearestOfSeries(*series, Resistance(row.otherNumber("required_ohm"))).base();
  constexpr std::string_view told = "equivalent strain with it ";
  const std::string& note = row.text("note");
  EXPECT_TRUE(note.starts_with(told)) << note;
  const double strain_ue = std::stod(note.substr(told.size()));
  // Printed in 8 significant digits.
  EXPECT_DIGITS(simulated(row, nearest, 1), strain_ue, 7) << "by template\n  note: " << note;
  return {{"stock", nearest}};
}

using Evaluate = std::function<Founds(const BridgeCase&)>;

Evaluate ofLine(const std::function<double(const Line&)>& figure) {
  return [figure](const BridgeCase& row) { return Founds{{"line", figure(lineOf(row))}}; };
}

/// How a row's quantity is found; by group, as the same word can mean another thing in another.
const std::map<std::pair<std::string, std::string>, Evaluate> evaluations = {
    {{"equivalent_strain", "equivalent_strain_of_gauge_1"}, equivalentStrain},
    {{"shunt_output", "output_change"}, outputChange},
    {{"linear_indication", "indicated_strain"}, indicatedStrain},
    {{"bridge_output", "output"}, output},
    {{"bridge_output", "output_voltage"}, outputVoltage},
    {{"bridge_output", "output_voltage_linear"}, outputVoltageLinear},
    {{"bridge_output", "resistance_change"}, resistanceChange},
    {{"shunt_choice", "shunt_for_strain"}, shuntForStrain},
    {{"nonlinearity", "nonlinearity_percent"}, nonlinearity},
    {{"nonlinearity", "actual_strain"}, actualStrain},
    {{"nonlinearity", "indicated_increment"}, indicatedIncrement},
    {{"nonlinearity", "actual_increment"}, actualIncrement},
    {{"leads", "indicated_strain"}, indicatedStrain},
    {{"leads", "output_change"}, outputChange},
    {{"leads", "zero_output"}, zeroOutput},
    {{"leads", "zero_shift"}, zeroShift},
    {{"leads", "sensitivity_loss_percent"}, sensitivityLoss},
    {{"insulation", "strain_error_change"}, leakChange},
    {{"insulation", "insulation_for_strain_error"}, leakForStrain},
    {{"insulation", "output_error"}, leakOutput},
    {{"insulation", "equivalent_shunt_over_insulation"}, equivalentShuntOfLeak},
    {{"insulation", "strain_error"}, strainError},
    {{"transducer", "equivalent_load"}, equivalentLoad},
    {{"transducer", "percent_of_rated_output"}, percentOfRatedOutput},
    {{"transducer", "output_change"}, outputChange},
    {{"uncertainty", "strain_uncertainty_percent"}, strainUncertainty},
    {{"uncertainty", "combined_standard_uncertainty"}, rootSumOfSquares},
    {{"gauge_factor", "gauge_factor_at_temperature"}, gaugeFactorAtTemperature},
    {{"gauge_factor", "corrected_strain"}, correctedStrain},
    {{"self_heating", "bridge_power"}, gaugePower},
    {{"self_heating", "gauge_power"}, gaugePower},
    {{"self_heating", "max_excitation"}, greatestExcitation},
    {{"e_series", "nearest_series_value"}, nearestSeriesValue},
    {{"copper", "wire_resistance"}, wireResistance},
    {{"copper", "resistance_per_1000ft"}, wireResistance},
    {{"line_fit", "max_abs_residual_percent_of_full_scale"}, greatestResidual},
    {{"line_fit", "slope"}, ofLine([](const Line& line) { return line.slope; })},
    {{"line_fit", "intercept"}, ofLine([](const Line& line) { return line.intercept; })},
    {{"line_fit", "residual_standard_deviation"},
     ofLine([](const Line& line) { return line.residualDeviation.value(); })},
    {{"line_fit", "r_squared"}, ofLine([](const Line& line) { return line.rSquared.value(); })},
    {{"line_fit", "slope_standard_error"}, ofLine([](const Line& line) { return line.slopeError.value(); })},
    {{"line_fit", "intercept_standard_error"},
     ofLine([](const Line& line) { return line.interceptError.value(); })},
};

}  // namespace

Founds test::evaluated(const BridgeCase& row) {
  const auto evaluation = evaluations.find({row.text("group"), row.text("quantity")});
  return evaluation == evaluations.end() ? Founds{} : evaluation->second(row);
}
