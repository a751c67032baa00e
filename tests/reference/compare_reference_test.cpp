// SPDX-License-Identifier: GPL-3.0-or-later
// Tests of difference and equivalence against tests/reference/lines/results.csv (sources in its rows),
// against the distributions of the GNU Scientific Library, and E_n worked by hand.
#include <gsl/gsl_cdf.h>
#include <gtest/gtest.h>

#include <cmath>
#include <map>
#include <numeric>

#include "core/compare/difference.h"
#include "core/compare/two_lines.h"
#include "core/line/distributions.h"
#include "core/uncertainty/propagation.h"
#include "tests/support/csv.h"
#include "tests/support/reached_digits.h"

namespace core {
namespace {

using Values = std::map<std::string, double>;

const std::string gsl = "GSL, distributions";
const std::string folder = std::string(SHUNTWRIGHT_TESTS_DIR) + "/reference/lines/";

std::vector<double> column(const std::string& dataset, const std::string& name) {
  return test::numbers(test::readCsv(folder + dataset + ".csv"), name);
}

std::pair<LineSample, LineSample> gauge() {
  const auto x = column("pressure_gauge_up_down", "x");
  return {*lineSampleOf(x, column("pressure_gauge_up_down", "y_up")),
          *lineSampleOf(x, column("pressure_gauge_up_down", "y_down"))};
}

double tost(double value, double standard, double dof, double margin) {
  return *differenceOf(value, standard, dof, margin, 0.9545).pEquivalent;
}

Values twoLines() {
  const auto [up, down] = gauge();
  const auto slope = *slopeDifference(up, down), intercept = *interceptDifference(up, down);
  const auto one = *commonLine(up, down);
  const auto p = [](const ParameterDifference& d) { return 2 * studentExceeded(std::abs(d.t()), d.dof); };
  return {{"slope_pre", up.slope},
          {"slope_post", down.slope},
          {"icpt_pre", up.intercept},
          {"icpt_post", down.intercept},
          {"d_slope", slope.value},
          {"se_d_slope", slope.standard},
          {"t_slope", slope.t()},
          {"p_slope", p(slope)},
          {"d_icpt", intercept.value},
          {"se_d_icpt", intercept.standard},
          {"t_icpt", intercept.t()},
          {"p_icpt", p(intercept)},
          {"df", slope.dof},
          {"rss_separate", up.residualSquares + down.residualSquares},
          {"rss_common", one.residualSquares},
          {"F_coincidence", one.f},
          {"p_coincidence", one.probability},
          {"F_variance_ratio", up.residualSquares < down.residualSquares
                                   ? up.residualSquares / down.residualSquares
                                   : down.residualSquares / up.residualSquares}};
}

Values tostOfSlopes(double margin) {
  const auto [up, down] = gauge();
  const auto slope = *slopeDifference(up, down);
  return {{"p", tost(slope.value, slope.standard, slope.dof, margin)}};
}

/// Means of two groups: type A evaluations, pooled by hand or combined by Welch and Satterthwaite.
enum class Design { Welch, Pooled, Paired };
Values clinic(Design design) {
  const auto first = column("tost_clinic_var1", "group1"), second = column("tost_clinic_var1", "group2");
  const auto a = *evaluateTypeA(first), b = *evaluateTypeA(second);
  double value = a.mean - b.mean, dof = a.degreesOfFreedom + b.degreesOfFreedom;
  double standard = std::hypot(a.standardUncertainty, b.standardUncertainty);  // groups of equal size
  if (design == Design::Welch)
    dof = *effectiveDegreesOfFreedom(
        std::vector{a.standardUncertainty, b.standardUncertainty},
        std::vector{std::optional(a.degreesOfFreedom), std::optional(b.degreesOfFreedom)});
  if (design == Design::Paired) {
    std::vector<double> differences(first.size());
    for (std::size_t k = 0; k < first.size(); ++k) differences[k] = first[k] - second[k];
    const auto d = *evaluateTypeA(differences);
    value = d.mean, standard = d.standardUncertainty, dof = d.degreesOfFreedom;
  }
  return {
      {"mean_diff", value}, {"se_diff", standard}, {"df", dof}, {"p_tost", tost(value, standard, dof, 0.6)}};
}

TEST(CompareReference, EveryRowOfTheTableIsReached) {
  const std::map<std::string, Values> known = {
      {"pressure_gauge_up_down two_line_comparison", twoLines()},
      {"pressure_gauge_up_down tost_slope_margin_0.03", tostOfSlopes(0.03)},
      {"pressure_gauge_up_down tost_slope_margin_0.02", tostOfSlopes(0.02)},
      {"tost_clinic_var1 tost_welch_margin0.6", clinic(Design::Welch)},
      {"tost_clinic_var1 tost_pooled_margin0.6", clinic(Design::Pooled)},
      {"tost_clinic_var1 tost_paired_margin0.6", clinic(Design::Paired)}};
  int checked = 0;
  for (const auto& row : test::readCsv(folder + "results.csv")) {
    const std::string& method = row.at("method");
    if (!method.starts_with("tost_") && method != "two_line_comparison") continue;
    const auto values = known.find(row.at("dataset") + " " + method);
    ASSERT_NE(values, known.end()) << row.at("dataset") << " " << method;
    const auto value = values->second.find(row.at("quantity"));
    ASSERT_NE(value, values->second.end()) << method << " " << row.at("quantity");
    EXPECT_REACHED(method == "two_line_comparison" ? "Two lines compared, of the table"
                                                   : "Equivalence by two one-sided tests, of the table",
                   row.at("quantity"), value->second, test::number(row, "value"),
                   test::number(row, "tolerance"))
        << method << " " << row.at("quantity");
    ++checked;
  }
  EXPECT_EQ(checked, 32);
}

TEST(CompareReference, TailsAgreeWithGsl) {
  // Share of 1e-9: two libraries of some 12 digits, and quantiles of GSL found by iteration.
  for (const double dof : {1.0, 1.5, 3.7, 14.0, 26.7484787582315, 400.0}) {
    for (const double t : {-2.5, -0.3, 0.0, 0.4, 1.7, 4.2, 9.0}) {
      const double expected = gsl_cdf_tdist_Q(t, dof);
      EXPECT_REACHED(gsl, "tail of Student's t", studentExceeded(t, dof), expected, 1e-9 * expected)
          << t << " " << dof;
    }
    for (const double p : {0.6, 0.95, 0.975, 0.999}) {
      const double expected = gsl_cdf_tdist_Pinv(p, dof);
      EXPECT_REACHED(gsl, "quantile of Student's t", studentQuantile(p, dof), expected, 1e-9 * expected)
          << p << " " << dof;
    }
  }
  for (const double z : {-1.3, 0.2, 3.0, 7.0}) {
    const double expected = gsl_cdf_ugaussian_Q(z);
    EXPECT_REACHED(gsl, "tail of the normal", studentExceeded(z, {}), expected, 1e-9 * expected);
  }
  EXPECT_REACHED(gsl, "quantile of Student's t", studentQuantile(0.975, {}), gsl_cdf_ugaussian_Pinv(0.975),
                 1e-9);
  for (const double f : {0.2, 1.0, 3.1, 20.0}) {
    EXPECT_REACHED(gsl, "tail of F", fisherExceeded(f, 8, 14), gsl_cdf_fdist_Q(f, 8, 14),
                   1e-9 * gsl_cdf_fdist_Q(f, 8, 14));
    EXPECT_REACHED(gsl, "tail of chi-square", chiSquareExceeded(f, 8), gsl_cdf_chisq_Q(f, 8),
                   1e-9 * gsl_cdf_chisq_Q(f, 8));
  }
}

TEST(CompareReference, EqualScatterIsTestedByF) {
  const auto [up, down] = gauge();
  const double f = up.residualSquares / down.residualSquares;  // the same degrees of freedom in both
  const double expected = 2 * std::min(gsl_cdf_fdist_Q(f, 9, 9), gsl_cdf_fdist_P(f, 9, 9));
  EXPECT_REACHED(gsl, "equal scatter by F", *equalScatterProbability(up, down), expected, 1e-9 * expected);
}

TEST(CompareReference, WelchOfSlopesIsThatOfTwoUncertaintiesWithTheirFreedom) {
  // JCGM 100:2008, G.4.1, with u(b) of either line from results.csv (ols_up, ols_down).
  Values u;
  for (const auto& row : test::readCsv(folder + "results.csv"))
    if (row.at("dataset") == "pressure_gauge_up_down" && row.at("quantity") == "u_b")
      u[row.at("method")] = test::number(row, "value");
  const double a = u.at("ols_up"), b = u.at("ols_down");
  const auto [up, down] = gauge();
  const auto welch = *slopeDifference(up, down, false);
  EXPECT_REACHED("JCGM 100:2008, G.4.1, Welch", "standard uncertainty", welch.standard, std::hypot(a, b),
                 1e-10);
  const double dof = std::pow(a * a + b * b, 2) / (std::pow(a, 4) / 9 + std::pow(b, 4) / 9);
  EXPECT_REACHED("JCGM 100:2008, G.4.1, Welch", "degrees of freedom", welch.dof, dof,
                 1e-7 * dof);  // ten digits of u to the fourth power
}

TEST(CompareReference, TheJointTestIsChiSquareOfACorrelatedPair) {
  // By hand: V = [[4, 1], [1, 2]] + [[1, 1], [1, 2]] = [[5, 2], [2, 4]], det 16, d = (3, -1):
  // d^T V^-1 d = (4 x 9 + 2 x 2 x 3 + 5 x 1) / 16 = 53 / 16.
  const auto test = jointTest(3, -1, {4, 1, 2}, {1, 1, 2});
  ASSERT_TRUE(test);
  EXPECT_DOUBLE_EQ(test->chiSquare, 53.0 / 16);
  EXPECT_REACHED(gsl, "joint test", test->probability, gsl_cdf_chisq_Q(53.0 / 16, 2), 1e-12);
  EXPECT_FALSE(jointTest(3, -1, {1, 1, 1}, {1, 1, 1})) << "one follows from the other";
}

TEST(CompareReference, EnOfTwoLaboratories) {
  // ISO 13528 and ISO/IEC 17043: E_n = (x1 - x2) / sqrt(U1^2 + U2^2). By hand: 10.3 - 10.0 with U = 0.3 and
  // 0.4 of k = 2 is 0.6. Standard: half of 0.5. Four digits: 95.45 % stands for k = 2.
  EXPECT_REACHED("ISO 13528, E_n", "by coverage 95.45 %", *differenceOf(0.3, 0.25, {}, 1, 0.9545).en, 0.6,
                 1e-4);
  EXPECT_REACHED("ISO 13528, E_n", "by k = 2", enNumber(0.3, 0.3, 0.4), 0.6, 1e-12);
}

}  // namespace
}  // namespace core
