// SPDX-License-Identifier: GPL-3.0-or-later
// Every published and every exactly computed straight line of tests/reference/lines/results.csv. Sources and
// tolerances stand in the rows, where the data come from in the README beside them: half a unit of the last
// printed digit, or what two independent iterations or exact rational arithmetic warrant.
#include <gtest/gtest.h>

#include <cmath>
#include <functional>

#include "core/line/distributions.h"
#include "core/line/information.h"
#include "core/line/line_use.h"
#include "core/line/stated_fits.h"
#include "core/uncertainty/propagation.h"
#include "tests/support/csv.h"
#include "tests/support/reached_digits.h"

namespace published_lines_test {

using Column = std::vector<double>;
using Values = std::map<std::string, double>;

const std::string folder = std::string(SHUNTWRIGHT_TESTS_DIR) + "/reference/lines/";

core::Line fitted(core::Result<core::Line> line) {
  if (!line) throw std::runtime_error(line.error().text());
  return *std::move(line);
}

Column column(const std::string& dataset, const std::string& name) {
  return test::numbers(test::readCsv(folder + dataset + ".csv"), name);
}

/// The points of a data set with the uncertainties that it states.
struct Points {
  Column x, y, ux, uy;
};

Points pointsOf(const std::string& dataset) {
  const auto rows = test::readCsv(folder + dataset + ".csv");
  Points points;
  for (const auto& row : rows) {
    points.x.push_back(test::number(row, "x"));
    points.y.push_back(test::number(row, "y"));
    if (row.contains("u_x")) points.ux.push_back(test::number(row, "u_x"));
    if (row.contains("u_y")) points.uy.push_back(test::number(row, "u_y"));
  }
  return points;
}

/// Pearson's data with York's weights, which are w = 1 / u^2.
Points pearsonYork() {
  const auto rows = test::readCsv(folder + "pearson_york.csv");
  Points points{test::numbers(rows, "x"), test::numbers(rows, "y"), {}, {}};
  for (const double w : test::numbers(rows, "w_x")) points.ux.push_back(1 / std::sqrt(w));
  for (const double w : test::numbers(rows, "w_y")) points.uy.push_back(1 / std::sqrt(w));
  return points;
}

core::Line distanceLine(const Points& p) { return fitted(core::fitDistanceLine(p.x, p.y, p.ux, p.uy)); }

Values valuesOf(const core::Line& line) {
  Values values{{"a", line.intercept},
                {"b", line.slope},
                {"u_a", *line.interceptError},
                {"u_b", *line.slopeError},
                {"cov_ab", *line.covariance},
                {"dof", line.degreesOfFreedom},
                {"s", *line.residualDeviation},
                {"resid_sd", *line.residualDeviation},
                {"chi2_95", core::chiSquareQuantile(0.95, line.degreesOfFreedom)}};
  if (line.rSquared) values["R2"] = *line.rSquared;
  if (line.chiSquare) {
    values["chi2"] = *line.chiSquare;
    values["chi2_per_dof"] = *line.chiSquare / line.degreesOfFreedom;
    values["chi2_over_n"] = *line.chiSquare / static_cast<double>(line.residuals.size());
  } else {
    values["rss"] = line.residualSumOfSquares;
    values["chi2"] = line.residualSumOfSquares;  // Annex E fits with unit weights
  }
  return values;
}

/// Standard errors of another convention: those of the fit times `factor`.
Values scaledErrors(const core::Line& line, double factor) {
  return {{"sigma", *line.residualDeviation * factor},
          {"u_a", *line.interceptError * factor},
          {"u_b", *line.slopeError * factor},
          {"cov_ab", *line.covariance * factor * factor}};
}

double scatterFactor(const core::Line& line) { return std::sqrt(*line.chiSquare / line.degreesOfFreedom); }

/// The law of propagation through the whole estimator: how intercept and slope move with each x and y, by
/// central differences of a thousandth of its uncertainty (truncation 1e-6 of the result, rounding 1e-10).
Values propagated(const Points& points) {
  double aa = 0, bb = 0, ab = 0;
  const auto add = [&](Column Points::*values, const Column& uncertainties) {
    for (std::size_t i = 0; i < uncertainties.size(); ++i) {
      Points above = points, below = points;
      const double h = 1e-3 * uncertainties[i];
      (above.*values)[i] += h;
      (below.*values)[i] -= h;
      const core::Line up = distanceLine(above), down = distanceLine(below);
      const double a = (up.intercept - down.intercept) / (2e-3), b = (up.slope - down.slope) / (2e-3);
      aa += a * a, bb += b * b, ab += a * b;
    }
  };
  add(&Points::x, points.ux);
  add(&Points::y, points.uy);
  return {{"u_a", std::sqrt(aa)}, {"u_b", std::sqrt(bb)}, {"cov_ab", ab}};
}

/// Standard errors as a package has them that takes the observed x in place of the adjusted ones.
Values errorsAtObservedX(const Points& points) {
  const core::Line line = distanceLine(points);
  Column u;
  for (std::size_t i = 0; i < points.x.size(); ++i)
    u.push_back(std::hypot(points.uy[i], line.slope * points.ux[i]));
  return valuesOf(fitted(core::fitWeightedLine(points.x, points.y, u)));
}

Values forwardValues(const core::Line& line, double x, double ux) {
  const core::LineEstimate estimate = core::forwardOf(line, x, ux);
  return {{"y0", estimate.value},
          {"y", estimate.value},
          {"u_y0", *estimate.standard},
          {"u_y", *estimate.standard}};
}

Values inverseValues(const core::Result<core::LineEstimate>& estimate) {
  if (!estimate) throw std::runtime_error(estimate.error().text());
  return {{"x0", estimate->value}, {"u_x0", *estimate->standard}};
}

/// Standard uncertainty behind the prediction band: of one new reading that scatters as the points do.
double singleReading(const core::Line& line, double x) {
  return *core::predictionHalfWidth(line, x, 0.95, 0) /
         core::coverageFactorFor(0.95, static_cast<double>(line.degreesOfFreedom));
}

core::Line thermometer(double from_degC) {
  Column t = column("gum_h3", "t");
  for (double& value : t) value -= from_degC;
  return fitted(core::fitLine(t, column("gum_h3", "b")));
}

Values thermometerValues() {
  const core::Line line = thermometer(20);
  const core::LineEstimate at30 = core::forwardOf(line, 10);
  return {{"y1", line.intercept},
          {"u_y1", *line.interceptError},
          {"y2", line.slope},
          {"u_y2", *line.slopeError},
          {"r", *line.covariance / (*line.interceptError * *line.slopeError)},
          {"s", *line.residualDeviation},
          {"b30", at30.value},
          {"u_b30", *at30.standard},
          {"u_b30_if_covariance_dropped", std::hypot(*line.interceptError, 10 * *line.slopeError)},
          {"u_single_new_reading_30C", singleReading(line, 10)}};
}

Values thermometerAtItsMean() {
  const double mean = thermometer(0).centre;
  const core::Line line = thermometer(mean);
  return {{"y1", line.intercept}, {"u_y1", *line.interceptError}, {"t0", mean}};
}

Values thermometerAt30() {
  const core::Line line = thermometer(20);
  const core::LineEstimate estimate = core::forwardOf(line, 10);
  return {{"b", estimate.value}, {"u_b", *estimate.standard}, {"dof", line.degreesOfFreedom}};
}

/// QUAM A5: the mean of two readings, looked up on the line.
Values cadmium() {
  const Points points = pointsOf("quam_a5_calibration");
  const core::Line line = fitted(core::fitLine(points.x, points.y));
  Values values = valuesOf(line);
  values.merge(inverseValues(core::inverseOfMean(line, (0.0712 + 0.0716) / 2, 2)));
  // What comes out when intercept and slope are taken as independent, which they are not.
  const double scatter = *line.residualDeviation / std::sqrt(2);
  values["u_x0_if_covariance_dropped"] =
      std::hypot(scatter, *line.interceptError, values["x0"] * *line.slopeError) / line.slope;
  return values;
}

Column matrixOf(const std::string& name) {
  std::ifstream file(folder + name + ".csv");
  Column numbers;
  for (std::string line; std::getline(file, line);)
    for (const std::string& cell : test::csvCells(line)) numbers.push_back(std::stod(cell));
  return numbers;
}

core::Line generalisedExample() {
  const Points points = pointsOf("iso28037_ggmr");
  const Column xx = matrixOf("iso28037_ggmr_Ux"), yy = matrixOf("iso28037_ggmr_Uy");
  const std::size_t m = points.x.size();
  Column all(4 * m * m, 0.0);
  for (std::size_t i = 0; i < m; ++i)
    for (std::size_t j = 0; j < m; ++j) {
      all[i * 2 * m + j] = xx.at(i * m + j);
      all[(m + i) * 2 * m + m + j] = yy.at(i * m + j);
    }
  return fitted(core::fitGeneralisedLine(points.x, points.y, all));
}

/// Deming regression: all points alike, u(y)^2 / u(x)^2 = `lambda`.
Values deming(double lambda) {
  Points points = pearsonYork();
  points.ux.assign(points.x.size(), 1);
  points.uy.assign(points.x.size(), std::sqrt(lambda));
  return valuesOf(distanceLine(points));
}

struct Gauge {
  Column x, up, down;
};

Gauge pressureGauge() {
  const auto rows = test::readCsv(folder + "pressure_gauge_up_down.csv");
  return {test::numbers(rows, "x"), test::numbers(rows, "y_up"), test::numbers(rows, "y_down")};
}

core::Line gaugeLine() {
  Gauge gauge = pressureGauge();
  Column x = gauge.x, y = gauge.up;
  x.insert(x.end(), gauge.x.begin(), gauge.x.end());
  y.insert(y.end(), gauge.down.begin(), gauge.down.end());
  return fitted(core::fitLine(x, y));
}

/// The textbook divides by n where n - 2 is right.
Values gaugeByDivisorN() {
  const core::Line line = gaugeLine();
  const double factor = std::sqrt(20.0 / 22.0);
  const double s = *line.residualDeviation * factor;
  return {{"s_y", s},
          {"s_b", *line.slopeError * factor},
          {"s_a", *line.interceptError * factor},
          {"s_x", s / line.slope}};
}

/// One line for rising and falling, two parallel ones, two of their own. AIC is AICc less its correction.
Values gaugeModels() {
  const Gauge gauge = pressureGauge();
  const core::Line up = fitted(core::fitLine(gauge.x, gauge.up));
  const core::Line down = fitted(core::fitLine(gauge.x, gauge.down));
  // Both branches stand at the same x, so the common slope is the mean; each branch adds what its own slope
  // would have explained: Sxx (difference / 2)^2, twice.
  const double sxx = 110, half = (up.slope - down.slope) / 2;
  const double separate = up.residualSumOfSquares + down.residualSumOfSquares;
  const std::pair<const char*, std::pair<double, std::size_t>> models[] = {
      {"common", {gaugeLine().residualSumOfSquares, 2}},
      {"parallel", {separate + 2 * sxx * half * half, 3}},
      {"separate", {separate, 4}}};
  Values values;
  for (const auto& [name, model] : models) {
    const auto information = core::informationOfResiduals(model.first, model.second, 22, 0);
    const double k = static_cast<double>(model.second) + 1;
    values[std::string("AICc_") + name] = information.akaike;
    values[std::string("AIC_") + name] = information.akaike - 2 * k * (k + 1) / (22 - k - 1);
    values[std::string("BIC_") + name] = information.bayesian;
  }
  return values;
}

Values ordinary(const std::string& dataset) {
  const Points points = pointsOf(dataset);
  return valuesOf(fitted(core::fitLine(points.x, points.y)));
}

core::Line weightedByY(const Points& p) { return fitted(core::fitWeightedLine(p.x, p.y, p.uy)); }

core::Line annexE() {
  const Points points = pointsOf("iso28037_annexE");
  return fitted(core::fitLine(points.x, points.y));
}

Values certified(core::Line line) {
  Values values = valuesOf(line);
  values["B0"] = line.intercept, values["se_B0"] = *line.interceptError;
  values["B1"] = line.slope, values["se_B1"] = *line.slopeError;
  values["cov_B0_B1"] = *line.covariance;
  return values;
}

Values throughZero(const std::string& dataset) {
  const Points points = pointsOf(dataset);
  return certified(fitted(core::fitLineThroughZero(points.x, points.y)));
}

/// What gives the values of each group of rows: data set and method.
using Groups = std::map<std::string, std::function<Values()>>;

Groups groups() {
  return {
      {"bevington_6_1 ols", [] { return ordinary("bevington_6_1"); }},
      {"walpole_myers ols", [] { return ordinary("walpole_myers"); }},
      {"walpole_myers mean_response_x20",
       [] {
         const Points p = pointsOf("walpole_myers");
         return forwardValues(fitted(core::fitLine(p.x, p.y)), 20, 0);
       }},
      {"walpole_myers single_new_reading_x20",
       [] {
         const Points p = pointsOf("walpole_myers");
         return Values{{"u_y", singleReading(fitted(core::fitLine(p.x, p.y)), 20)}};
       }},
      {"quam_a5_calibration ols", cadmium},
      {"quam_a5_calibration inverse_mean_of_2_readings", cadmium},
      {"gum_h3 ols_t0_20", thermometerValues},
      {"gum_h3 ols_t0_mean", thermometerAtItsMean},
      {"gum_h3 predict_30C", thermometerAt30},
      {"iso28037_wls_equal wls_known_u",
       [] { return valuesOf(weightedByY(pointsOf("iso28037_wls_equal"))); }},
      {"iso28037_wls_equal inverse_y10.5_u0.5",
       [] { return inverseValues(core::inverseOf(weightedByY(pointsOf("iso28037_wls_equal")), 10.5, 0.5)); }},
      {"iso28037_wls_equal forward_x3.5_u0.2",
       [] { return forwardValues(weightedByY(pointsOf("iso28037_wls_equal")), 3.5, 0.2); }},
      {"iso28037_annexE ols", [] { return ordinary("iso28037_annexE"); }},
      {"iso28037_annexE sigma_hat_m-2", [] { return scaledErrors(annexE(), 1); }},
      {"iso28037_annexE sigma_tilde_m-4", [] { return scaledErrors(annexE(), std::sqrt(4.0 / 2.0)); }},
      {"iso28037_gdr gdr_linearised_at_solution",
       [] { return valuesOf(distanceLine(pointsOf("iso28037_gdr"))); }},
      {"iso28037_gdr first_order_propagation_through_estimator",
       [] { return propagated(pointsOf("iso28037_gdr")); }},
      {"iso28037_gdr start_wls", [] { return valuesOf(weightedByY(pointsOf("iso28037_gdr"))); }},
      {"iso28037_gdr forward_x3.5_u0.2",
       [] { return forwardValues(distanceLine(pointsOf("iso28037_gdr")), 3.5, 0.2); }},
      {"iso28037_ggmr ggmr", [] { return valuesOf(generalisedExample()); }},
      {"pearson_york york", [] { return valuesOf(distanceLine(pearsonYork())); }},
      {"pearson_york york_mle_adjusted_points", [] { return valuesOf(distanceLine(pearsonYork())); }},
      {"pearson_york first_order_propagation", [] { return propagated(pearsonYork()); }},
      {"pearson_york york_scaled_by_sqrt_chi2_per_dof",
       [] {
         const core::Line line = distanceLine(pearsonYork());
         return scaledErrors(line, scatterFactor(line));
       }},
      {"pearson_york ols", [] { return ordinary("pearson_york"); }},
      {"pearson_york wls_y_weights_only", [] { return valuesOf(weightedByY(pearsonYork())); }},
      {"pearson_york wls_roles_exchanged_x_weights_only",
       [] {
         const Points p = pearsonYork();
         return valuesOf(fitted(core::fitWeightedLine(p.y, p.x, p.ux)));
       }},
      {"pearson_york orthogonal_lambda1", [] { return deming(1); }},
      {"pearson_york deming_lambda_49_9", [] { return deming(49.0 / 9); }},
      {"pearson_york_rounded odr", [] { return valuesOf(distanceLine(pointsOf("pearson_york_rounded"))); }},
      {"pearson_york_rounded odr_unscaled_cov",
       [] { return valuesOf(distanceLine(pointsOf("pearson_york_rounded"))); }},
      {"pearson_york_rounded odr_scaled",
       [] {
         const core::Line line = distanceLine(pointsOf("pearson_york_rounded"));
         return scaledErrors(line, scatterFactor(line));
       }},
      {"pearson_york_rounded york_mle_adjusted_points",
       [] { return valuesOf(distanceLine(pointsOf("pearson_york_rounded"))); }},
      {"arsenate_ripley_thompson mlfr_york",
       [] { return valuesOf(distanceLine(pointsOf("arsenate_ripley_thompson"))); }},
      {"arsenate_ripley_thompson mlfr_se_at_observed_x",
       [] { return errorsAtObservedX(pointsOf("arsenate_ripley_thompson")); }},
      {"arsenate_ripley_thompson ols_aes_on_aas", [] { return ordinary("arsenate_ripley_thompson"); }},
      {"arsenate_ripley_thompson wls_aes_on_aas",
       [] { return valuesOf(weightedByY(pointsOf("arsenate_ripley_thompson"))); }},
      {"nist_norris ols_poly1",
       [] {
         const Points p = pointsOf("nist_norris");
         return certified(fitted(core::fitLine(p.x, p.y)));
       }},
      {"nist_noint1 ols_origin", [] { return throughZero("nist_noint1"); }},
      {"nist_noint2 ols_origin", [] { return throughZero("nist_noint2"); }},
      {"pressure_gauge_up_down ols_all22", [] { return valuesOf(gaugeLine()); }},
      {"pressure_gauge_up_down ols_up",
       [] {
         const Gauge gauge = pressureGauge();
         return valuesOf(fitted(core::fitLine(gauge.x, gauge.up)));
       }},
      {"pressure_gauge_up_down ols_down",
       [] {
         const Gauge gauge = pressureGauge();
         return valuesOf(fitted(core::fitLine(gauge.x, gauge.down)));
       }},
      {"pressure_gauge_up_down divisor_n_instead_of_n-2", gaugeByDivisorN},
      {"pressure_gauge_up_down model_ranking_R_convention", gaugeModels},
  };
}

/// Whether a row is about straight lines. Linearity, plateaus, polynomials and comparisons have tests of
/// their own.
bool isOfLines(const test::CsvRow& row) {
  const std::string& dataset = row.at("dataset");
  for (const char* start : {"iso28037_", "pearson_york", "arsenate_", "bevington_", "walpole_", "gum_h3",
                            "quam_", "nist_norris", "nist_noint"})
    if (dataset.starts_with(start)) return true;
  const std::string& method = row.at("method");
  return dataset == "pressure_gauge_up_down" &&
         (method.starts_with("ols_") || method.starts_with("divisor_") ||
          method.starts_with("model_ranking"));
}

TEST(PublishedLines, EveryRowIsReached) {
  const Groups known = groups();
  std::map<std::string, Values> values;
  int checked = 0;
  for (const auto& row : test::readCsv(folder + "results.csv")) {
    if (!isOfLines(row)) continue;
    const std::string group = row.at("dataset") + " " + row.at("method");
    const auto known_group = known.find(group);
    ASSERT_NE(known_group, known.end()) << "no code covers " << group;
    if (!values.contains(group)) values[group] = known_group->second();
    const auto value = values[group].find(row.at("quantity"));
    ASSERT_NE(value, values[group].end()) << group << " has no " << row.at("quantity");
    EXPECT_REACHED("Published line " + row.at("dataset"), row.at("method"), value->second,
                   test::number(row, "value"), test::number(row, "tolerance"))
        << group << " " << row.at("quantity") << ", " << row.at("source_or_note");
    ++checked;
  }
  EXPECT_EQ(values.size(), known.size()) << "a group has lost its rows";
  EXPECT_GE(checked, 229);
}

}  // namespace published_lines_test
