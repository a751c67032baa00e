// SPDX-License-Identifier: GPL-3.0-or-later
// Every row of gum_cases.csv: budgets in print, worked out from their stated inputs (gum_inputs.csv) with the
// functions of core/uncertainty. Model and sensitivities of each stand here, beside its source.
#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <functional>
#include <map>
#include <numbers>
#include <set>

#include "core/uncertainty/propagation.h"
#include "core/uncertainty/uncertainty.h"
#include "tests/support/csv.h"
#include "tests/support/reached_digits.h"

namespace gum_cases_test {

using namespace core;

/// What a case comes to, by the name of the quantity in the table.
using Figures = std::map<std::string, double>;
using Numbers = std::vector<double>;
using Pairs = std::vector<CorrelatedPair>;

const std::string folder = std::string(SHUNTWRIGHT_TESTS_DIR) + "/reference/";

/// Stated with its k, or as half width of a distribution, or as standard uncertainty.
Uncertainty statedUncertainty(const test::CsvRow& row) {
  const std::string& kind = row.at("distribution");
  const std::string& stated = row.at("half_width_or_parameter");
  if (stated.starts_with("U ")) {
    return {.statement = Statement::Expanded, .amount = std::stod(stated.substr(2)), .coverageFactor = 2};
  }
  const std::map<std::string, Distribution> spread = {{"rect", Distribution::Rectangular},
                                                      {"triangular", Distribution::Triangular},
                                                      {"arcsine", Distribution::Arcsine}};
  if (const auto found = spread.find(kind); found != spread.end()) {
    return {.amount = test::number(row, "half_width_or_parameter"), .distribution = found->second};
  }
  return {.statement = Statement::Standard, .amount = test::number(row, "u")};
}

/// One line of gum_inputs.csv.
struct Input {
  test::CsvRow row;

  double value() const { return test::number(row, "value"); }
  double u() const {
    Uncertainty stated = statedUncertainty(row);
    stated.degreesOfFreedom = dof();
    EXPECT_TRUE(checkUncertainty(stated, row.at("input")));
    return standardUncertainty(stated, 0);
  }
  std::optional<double> dof() const {
    if (row.at("dof").empty() || row.at("dof") == "inf") return std::nullopt;
    return test::number(row, "dof");
  }
  Numbers series() const {
    std::istringstream cell(row.at("value"));
    return {std::istream_iterator<double>(cell), {}};
  }
};

Input input(const std::string& name, const std::string& symbol) {
  static const auto rows = test::readCsv(folder + "gum_inputs.csv");
  for (const auto& row : rows) {
    if (row.at("case") == name && row.at("input") == symbol) return {row};
  }
  throw std::runtime_error(name + " has no input " + symbol);
}

Numbers uncertainties(const std::vector<Input>& inputs) {
  Numbers result;
  for (const Input& each : inputs) result.push_back(each.u());
  return result;
}

std::vector<Input> inputs(const std::string& name, const std::vector<std::string>& symbols) {
  std::vector<Input> result;
  for (const auto& symbol : symbols) result.push_back(input(name, symbol));
  return result;
}

std::optional<double> effectiveDof(const Numbers& sensitivities, const std::vector<Input>& inputs) {
  Numbers contributions;
  std::vector<std::optional<double>> dof;
  for (std::size_t k = 0; k < inputs.size(); ++k) {
    contributions.push_back(sensitivities[k] * inputs[k].u());
    dof.push_back(inputs[k].dof());
  }
  return effectiveDegreesOfFreedom(contributions, dof);
}

/// Mean, uncertainty and readings of a series.
struct Series {
  Numbers readings;
  TypeA mean;
};

Series seriesOf(const Numbers& readings) { return {readings, *evaluateTypeA(readings)}; }

double correlation(const Series& a, const Series& b) { return *correlationOfMeans(a.readings, b.readings); }

/// JCGM 100:2008, H.1: l = ls + d - ls (da theta + as dtheta), d = d0 + d1 + d2, theta = tbar + Delta.
Figures endGauge() {
  const auto all = inputs("GUM-H1", {"ls", "d0", "d1", "d2", "as", "da", "dtheta", "tbar", "Delta"});
  const double ls = all[0].value(), as = all[4].value(), da = all[5].value(), dtheta = all[6].value();
  const double theta = all[7].value() + all[8].value();
  const double d = all[1].value() + all[2].value() + all[3].value();
  const Numbers c = {
      1 - da * theta - as * dtheta, 1, 1, 1, -ls * dtheta, -ls * theta, -ls * as, -ls * da, -ls * da};
  const Numbers u = uncertainties(all);
  const double combined = combinedUncertainty(c, u, {});
  const double dof = effectiveDof(c, all).value();
  const std::vector<Input> ofD(all.begin() + 1, all.begin() + 4);
  return {{"l", ls + d - ls * (da * theta + as * dtheta)},
          {"u_d", combinedUncertainty(Numbers(3, 1.0), uncertainties(ofD), {})},
          {"nu_d", effectiveDof(Numbers(3, 1.0), ofD).value()},
          {"u_theta", combinedUncertainty(Numbers(2, 1.0), std::span(u).subspan(7), {})},
          {"u_from_da", std::abs(c[5]) * u[5]},
          {"u_from_dtheta", std::abs(c[6]) * u[6]},
          {"u_l", combined},
          {"u_l_exact", combined},
          {"nu_eff", std::floor(dof)},
          {"nu_eff_exact", dof},
          // The GUM multiplies u rounded to 32 nm (H.1.6).
          {"U_99", coverageFactorFor(0.99, dof) * std::round(combined)}};
}

/// JCGM 100:2008, H.2: R = V/I cos phi, X = V/I sin phi, Z = V/I from five readings of V, I (mA), phi.
Figures impedance() {
  const Series v = seriesOf(input("GUM-H2", "V").series());
  const Series i = seriesOf(input("GUM-H2", "I").series());
  const Series phi = seriesOf(input("GUM-H2", "phi").series());
  const double volt = v.mean.mean, ampere = i.mean.mean / 1000;
  const double sine = std::sin(phi.mean.mean), cosine = std::cos(phi.mean.mean), z = volt / ampere;
  const Numbers u = {v.mean.standardUncertainty, i.mean.standardUncertainty / 1000,
                     phi.mean.standardUncertainty};
  const Pairs pairs = {{0, 1, correlation(v, i)}, {0, 2, correlation(v, phi)}, {1, 2, correlation(i, phi)}};
  const Numbers ofR = {cosine / ampere, -z * cosine / ampere, -z * sine};
  const Numbers ofX = {sine / ampere, -z * sine / ampere, z * cosine};
  const Numbers ofZ = {1 / ampere, -z / ampere, 0};
  const auto uOf = [&](const Numbers& c) { return combinedUncertainty(c, u, pairs); };
  const auto r = [&](const Numbers& a, const Numbers& b) {
    return covarianceOf(a, b, u, pairs) / (uOf(a) * uOf(b));
  };
  return {{"u_V", u[0]},
          {"u_I_mA", i.mean.standardUncertainty},
          {"u_phi", u[2]},
          {"r_V_I", pairs[0].coefficient},
          {"r_V_phi", pairs[1].coefficient},
          {"r_I_phi", pairs[2].coefficient},
          {"R", z * cosine},
          {"X", z * sine},
          {"Z", z},
          {"u_R", uOf(ofR)},
          {"u_X", uOf(ofX)},
          {"u_Z", uOf(ofZ)},
          {"r_R_X", r(ofR, ofX)},
          {"r_R_Z", r(ofR, ofZ)},
          {"r_X_Z", r(ofX, ofZ)},
          {"u_R_if_correlation_dropped", combinedUncertainty(ofR, u, {})}};
}

/// Net counts per minute of a radon sample, corrected for decay: (C - CB) / T0 exp(lambda t).
Numbers decayCorrected(const std::string& counts, const std::string& times) {
  const double cycle_min = 60, lambda_per_min = 1.25894e-4;
  const Numbers c = input("GUM-H4", counts).series(), background = input("GUM-H4", "CB").series();
  const Numbers t = input("GUM-H4", times).series();
  Numbers rates;
  for (std::size_t k = 0; k < c.size(); ++k) {
    rates.push_back((c[k] - background[k]) / cycle_min * std::exp(lambda_per_min * t[k]));
  }
  return rates;
}

/// JCGM 100:2008, H.4: A = AS (mS / mx) (Rx / RS), from correlated means of Rx and RS, then from the mean of
/// their six ratios.
Figures radon() {
  const Series rx = seriesOf(decayCorrected("Cx", "tx")), rs = seriesOf(decayCorrected("CS", "tS"));
  Numbers ratios;
  for (std::size_t k = 0; k < rx.readings.size(); ++k) ratios.push_back(rx.readings[k] / rs.readings[k]);
  const TypeA ratio = *evaluateTypeA(ratios);
  const auto known = inputs("GUM-H4", {"AS", "mS", "mx"});
  const double as = known[0].value(), ms = known[1].value(), mx = known[2].value();

  const double byMeans = as * ms / mx * rx.mean.mean / rs.mean.mean;
  Numbers u = uncertainties(known);
  u.insert(u.end(), {rx.mean.standardUncertainty, rs.mean.standardUncertainty});
  const Numbers c = {byMeans / as, byMeans / ms, -byMeans / mx, byMeans / rx.mean.mean,
                     -byMeans / rs.mean.mean};
  const double r = correlation(rx, rs);

  const double byRatios = as * ms / mx * ratio.mean;
  Numbers uRatios = uncertainties(known);
  uRatios.push_back(ratio.standardUncertainty);
  const Numbers cRatios = {byRatios / as, byRatios / ms, -byRatios / mx, byRatios / ratio.mean};
  return {{"Rx", rx.mean.mean},
          {"u_Rx", rx.mean.standardUncertainty},
          {"RS", rs.mean.mean},
          {"u_RS", rs.mean.standardUncertainty},
          {"r", r},
          {"A_approach1", byMeans},
          {"u_A_approach1", combinedUncertainty(c, u, Pairs{{3, 4, r}})},
          {"A_approach2", byRatios},
          {"u_A_approach2", combinedUncertainty(cRatios, uRatios, {})}};
}

/// JCGM 101:2008, 9.2: Y = X1 + X2 + X3 + X4.
Figures sumOfFour(const std::string& name) {
  const double u =
      combinedUncertainty(Numbers(4, 1.0), uncertainties(inputs(name, {"X1", "X2", "X3", "X4"})), {});
  return {{"u", u}, {"half_width_95_GUM", coverageFactorFor(0.95, {}) * u}};
}

/// JCGM 101:2008, 9.3: dm = (mRc + dmRc) [1 + (a - 1.2)(1/rW - 1/rR)] - 100000, in mg.
Figures mass() {
  const auto all = inputs("S1-MASS", {"mRc", "dmRc", "a", "rW", "rR"});
  const double m = all[0].value() + all[1].value(), air = all[2].value() - 1.2;
  const double w = all[3].value(), r = all[4].value();
  const double buoyancy = 1 + air * (1 / w - 1 / r);
  const double y = m * buoyancy - 100000;
  const Numbers c = {buoyancy, buoyancy, m * (1 / w - 1 / r), -m * air / (w * w), m * air / (r * r)};
  const double u = combinedUncertainty(c, uncertainties(all), {});
  const double half = coverageFactorFor(0.95, {}) * u;
  return {{"y", y}, {"u_first_order", u}, {"low_first_order", y - half}, {"high_first_order", y + half}};
}

/// Y = ln X (source in the table).
Figures logarithm() {
  const Input x = input("NPL-LN", "X");
  const double y = std::log(x.value());
  const double u = combinedUncertainty(Numbers{1 / x.value()}, Numbers{x.u()}, {});
  return {{"y_GUM", y}, {"u_GUM", u}, {"high_GUM", y + coverageFactorFor(0.95, {}) * u}};
}

/// sigma = 32 pi^5 h R^4 Rinf^4 / (15 e^4 1e-12 c^6 alpha^8), c = 299792458 m/s.
Figures stefanBoltzmann() {
  const auto all = inputs("NUM-SB", {"h", "R", "Rinf", "e", "alpha"});
  const Numbers powers = {1, 4, 4, -4, -8};
  double sigma = 32 * std::pow(std::numbers::pi, 5) / (15 * 1e-12 * std::pow(299792458.0, 6));
  for (std::size_t k = 0; k < all.size(); ++k) sigma *= std::pow(all[k].value(), powers[k]);
  Numbers c;
  for (std::size_t k = 0; k < all.size(); ++k) c.push_back(powers[k] * sigma / all[k].value());
  return {{"sigma", sigma}, {"u_sigma", combinedUncertainty(c, uncertainties(all), {})}};
}

/// EA-4/02 S2: mX = mS + dD + d + dC + dB; its coverage factor is the k of 95.45 %.
Figures weight() {
  const auto all = inputs("EA402-S2", {"mS", "dD", "d", "dC", "dB"});
  double sum = 0;
  for (const Input& each : all) sum += each.value();
  const double u = combinedUncertainty(Numbers(5, 1.0), uncertainties(all), {});
  return {{"mX", sum}, {"u", u}, {"U_k2", coverageFactorFor(0.9545, {}) * u}};
}

/// QUAM:2012 A1: c = 1000 m P / V, V with parts of the flask, its filling and its temperature.
Figures cadmium() {
  const auto parts = inputs("QUAM-A1", {"Vflask", "Vrep", "VT"});
  const double uVolume = combinedUncertainty(Numbers(3, 1.0), uncertainties(parts), {});
  const Input m = input("QUAM-A1", "m"), purity = input("QUAM-A1", "P");
  const double volume = parts[0].value();
  const double c = 1000 * m.value() * purity.value() / volume;
  const Numbers sensitivities = {c / m.value(), c / purity.value(), -c / volume};
  return {{"c", c},
          {"u", combinedUncertainty(sensitivities, Numbers{m.u(), purity.u(), uVolume}, {})},
          {"u_V", uVolume}};
}

Figures twoInputs() { return {{"nu_eff", effectiveDof({1, 1}, inputs("WS-1", {"a", "b"})).value()}}; }

/// Willink (2008): the value at x = 2/3 of the line through (-1, y1), (0, y2), (1, y3) is
/// sum y_i (1/3 + x x_i / 2).
Figures pointOnLine() {
  const Input y = input("WS-2", "yi");
  Numbers c;
  for (double x : y.series()) c.push_back(1.0 / 3 + 2.0 / 3 * x / 2);
  const Numbers u(3, test::number(y.row, "u"));
  Numbers contributions;
  for (double each : c) contributions.push_back(each * u[0]);
  const std::vector<std::optional<double>> dof(3, y.dof());
  return {{"variance", covarianceOf(c, c, u, {})},
          {"nu_eff", effectiveDegreesOfFreedom(contributions, dof).value()}};
}

/// JCGM 102:2011, case A: magnitude and phase of 0.001 + j 0.
Figures polar() {
  const double re = 0.001, im = 0, magnitude = std::hypot(re, im), square = magnitude * magnitude;
  const Numbers u = uncertainties(inputs("S2-POLAR", {"re", "im"}));
  return {{"A mag_GUM", magnitude},
          {"A u_mag_GUM", combinedUncertainty(Numbers{re / magnitude, im / magnitude}, u, {})},
          {"A u_phase_GUM", combinedUncertainty(Numbers{-im / square, re / square}, u, {})}};
}

Figures equivalence() {
  const Input pre = input("EN-1", "pre"), post = input("EN-1", "post");
  const double difference = post.value() - pre.value();
  return {{"En", enNumber(difference, 2 * pre.u(), 2 * post.u())},
          {"zeta", enNumber(difference, pre.u(), post.u())},
          {"En_if_common_u_0.00025_is_shared", enNumber(difference, 2 * pre.u(), 2 * post.u(), 2 * 0.00025)}};
}

const std::map<std::string, std::function<Figures()>> casesHere = {
    {"GUM-H1", endGauge},
    {"GUM-H2", impedance},
    {"GUM-H4", radon},
    {"S1-ADD-NORMAL", [] { return sumOfFour("S1-ADD-NORMAL"); }},
    {"S1-ADD-RECT", [] { return sumOfFour("S1-ADD-RECT"); }},
    {"S1-ADD-RECT10", [] { return sumOfFour("S1-ADD-RECT10"); }},
    {"S1-MASS", mass},
    {"NPL-LN", logarithm},
    {"NUM-SB", stefanBoltzmann},
    {"EA402-S2", weight},
    {"QUAM-A1", cadmium},
    {"WS-1", twoInputs},
    {"WS-2", pointOnLine},
    {"S2-POLAR", polar},
    {"EN-1", equivalence}};

using Rows = std::set<std::pair<std::string, std::string>>;

/// Distributions and their intervals: tests/reference/jcgm101_test.cpp.
const Rows byMonteCarlo = {{"S1-ADD-NORMAL", "half_width_95_distribution"},
                           {"S1-ADD-RECT", "half_width_95_distribution"},
                           {"S1-ADD-RECT10", "half_width_95_distribution"},
                           {"S1-MASS", "u_MCM"},
                           {"S1-MASS", "low_MCM_shortest"},
                           {"S1-MASS", "high_MCM_shortest"},
                           {"S1-MASS", "low_MCM_symmetric"},
                           {"S1-MASS", "high_MCM_symmetric"},
                           {"S1-MASS", "delta_one_digit"},
                           {"S1-MASS", "d_low_first_order"},
                           {"S1-MASS", "d_high_first_order"},
                           {"NPL-LN", "y_MCM"},
                           {"NPL-LN", "u_MCM"},
                           {"NPL-LN", "low_shortest95"},
                           {"NPL-LN", "high_shortest95"},
                           {"S2-POLAR", "A mag_MCM"},
                           {"S2-POLAR", "A u_mag_MCM"},
                           {"S2-POLAR", "A u_phase_MCM"},
                           {"S2-POLAR", "B mag_MCM"},
                           {"S2-POLAR", "B u_mag_MCM"},
                           {"S2-POLAR", "B phase_MCM"},
                           {"S2-POLAR", "B u_phase_MCM"}};

/// The program has no second-order terms: where they matter, Monte Carlo stands in their place.
const Rows secondOrder = {{"GUM-H1", "u_l_second_order"},    {"S1-MASS", "u_second_order"},
                          {"S1-MASS", "low_second_order"},   {"S1-MASS", "high_second_order"},
                          {"S1-MASS", "d_low_second_order"}, {"S1-MASS", "d_high_second_order"}};

/// Means of correlated samples with a known coefficient. The level finder, the one part that averages
/// samples, has to estimate the correlation; tests/reference/levels_test.cpp checks it on certified data.
const Rows ofKnownCorrelation = [] {
  Rows rows;
  for (const char* name : {"AR1-n100-phi0.5", "AR1-n50-phi0.9", "AR1-n200-phi-0.3", "AR1-n1000-phi0.99"}) {
    for (const char* quantity : {"n_eff_exact", "u_mean_exact", "n_eff_large_n", "E_s2"}) {
      rows.insert({name, quantity});
    }
  }
  return rows;
}();

bool isElsewhere(const std::pair<std::string, std::string>& row) {
  return byMonteCarlo.contains(row) || secondOrder.contains(row) || ofKnownCorrelation.contains(row);
}

/// The case's first source: rows that were computed name no print.
std::string sourceOf(const test::CsvRow& row) { return "Worked example " + row.at("case"); }

void expectFigure(const test::CsvRow& row, double actual) {
  const double recomputed = test::number(row, "recomputed"), tolerance = test::number(row, "tolerance");
  const double expected = row.at("published").empty() ? recomputed : test::number(row, "published");
  // Figures of a case together, or the table would be as long as theirs.
  EXPECT_REACHED(sourceOf(row), "figures as printed", actual, expected, tolerance)
      << row.at("source") << ". " << row.at("note");
  // The independent recomputation has more digits than print: half widths in the inputs have seven, and the
  // k of 95.45 % is 2.0000024 where it says 2.
  EXPECT_REACHED(sourceOf(row), "figures worked out anew", actual, recomputed, 2e-6 * std::abs(recomputed));
}

TEST(GumCases, EveryRowIsWorkedOutHereOrAnsweredElsewhere) {
  std::map<std::string, Figures> figures;
  for (const auto& [name, workOut] : casesHere) figures[name] = workOut();
  std::size_t here = 0, elsewhere = 0;
  for (const auto& row : test::readCsv(folder + "gum_cases.csv")) {
    const std::string &name = row.at("case"), &quantity = row.at("quantity");
    SCOPED_TRACE(name + " " + quantity);
    if (isElsewhere({name, quantity})) {
      ++elsewhere;
      continue;
    }
    ASSERT_TRUE(figures.contains(name)) << "no test works out this case";
    ASSERT_TRUE(figures[name].contains(quantity)) << "no test works out this quantity";
    expectFigure(row, figures[name][quantity]);
    ++here;
  }
  // Each figure and each entry of the lists has its row, and no row is there twice.
  std::size_t workedOut = 0;
  for (const auto& [name, values] : figures) workedOut += values.size();
  EXPECT_EQ(here, workedOut);
  EXPECT_EQ(elsewhere, byMonteCarlo.size() + secondOrder.size() + ofKnownCorrelation.size());
  EXPECT_EQ(here + elsewhere, 110u);
}

}  // namespace gum_cases_test
