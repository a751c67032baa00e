// SPDX-License-Identifier: GPL-3.0-or-later
// Lines and polynomials against the certified values of the NIST Statistical Reference Datasets
// (linear least squares). Data, values and sources stand in tests/reference/lines.
#include <gtest/gtest.h>

#include <map>

#include "core/line/line.h"
#include "core/line/polynomial.h"
#include "core/line/stated_fits.h"
#include "tests/support/csv.h"
#include "tests/support/reached_digits.h"

namespace nist_line_test {

const std::string folder = std::string(SHUNTWRIGHT_TESTS_DIR) + "/reference/lines/";

struct Points {
  std::vector<double> x;
  std::vector<double> y;
};

Points points(const std::string& dataset) {
  const auto rows = test::readCsv(folder + dataset + ".csv");
  return {test::numbers(rows, "x"), test::numbers(rows, "y")};
}

/// The certified value of `quantity`; throws when the table has none.
double certified(const std::string& dataset, const std::string& quantity) {
  static const auto rows = test::readCsv(folder + "results.csv");
  for (const auto& row : rows) {
    if (row.at("dataset") == dataset && row.at("quantity") == quantity && row.at("status") == "certified") {
      return test::number(row, "value");
    }
  }
  throw std::runtime_error("no certified " + quantity + " of " + dataset);
}

/// "NIST StRD, Norris" of "nist_norris".
std::string source(const std::string& dataset) {
  static const std::map<std::string, std::string> names = {
      {"nist_norris", "Norris"},     {"nist_noint1", "NoInt1"},     {"nist_noint2", "NoInt2"},
      {"nist_pontius", "Pontius"},   {"nist_wampler1", "Wampler1"}, {"nist_wampler2", "Wampler2"},
      {"nist_wampler4", "Wampler4"}, {"nist_filip", "Filip"}};
  return "NIST StRD, " + names.at(dataset);
}

/// Checks a polynomial against all its certified values, asking for `digits` of each.
void expectCertified(const std::string& dataset, int degree, double digits) {
  SCOPED_TRACE(dataset);
  const auto [x, y] = points(dataset);
  const auto fit = core::fitPolynomial(x, y, degree);
  ASSERT_TRUE(fit) << fit.error().text();
  ASSERT_TRUE(fit->errors && fit->residualDeviation && fit->rSquared);
  for (int k = 0; k <= degree; ++k) {
    const std::string name = "B" + std::to_string(k);
    EXPECT_DIGITS_REACHED(source(dataset), "coefficients", fit->coefficients[k], certified(dataset, name),
                          digits)
        << name;
    EXPECT_DIGITS_REACHED(source(dataset), "standard errors", (*fit->errors)[k],
                          certified(dataset, "se_" + name), digits)
        << name;
  }
  EXPECT_DIGITS_REACHED(source(dataset), "residual deviation", *fit->residualDeviation,
                        certified(dataset, "resid_sd"), digits);
  EXPECT_DIGITS_REACHED(source(dataset), "residual sum of squares", fit->residualSumOfSquares,
                        certified(dataset, "rss"), digits);
  EXPECT_DIGITS_REACHED(source(dataset), "R squared", *fit->rSquared, certified(dataset, "R2"), digits);
  EXPECT_EQ(fit->degreesOfFreedom, certified(dataset, "dof"));
}

TEST(NistLine, NorrisComesOutToThirteenDigits) {
  // The data have up to four digits that binary cannot hold exactly; the intercept, -0.26 between
  // readings near 1000, keeps 13 digits of them at best.
  const auto [x, y] = points("nist_norris");
  const auto line = core::fitLine(x, y);
  ASSERT_TRUE(line) << line.error().text();
  EXPECT_DIGITS_REACHED(source("nist_norris"), "coefficients", line->intercept,
                        certified("nist_norris", "B0"), 13);
  EXPECT_DIGITS_REACHED(source("nist_norris"), "standard errors", *line->interceptError,
                        certified("nist_norris", "se_B0"), 13);
  EXPECT_DIGITS_REACHED(source("nist_norris"), "coefficients", line->slope, certified("nist_norris", "B1"),
                        13);
  EXPECT_DIGITS_REACHED(source("nist_norris"), "standard errors", *line->slopeError,
                        certified("nist_norris", "se_B1"), 13);
  EXPECT_DIGITS_REACHED(source("nist_norris"), "residual deviation", *line->residualDeviation,
                        certified("nist_norris", "resid_sd"), 13);
  EXPECT_DIGITS_REACHED(source("nist_norris"), "residual sum of squares", line->residualSumOfSquares,
                        certified("nist_norris", "rss"), 13);
  EXPECT_DIGITS_REACHED(source("nist_norris"), "R squared", *line->rSquared, certified("nist_norris", "R2"),
                        13);
  EXPECT_EQ(line->degreesOfFreedom, certified("nist_norris", "dof"));
  // Exact rational arithmetic on the decimal data.
  EXPECT_DIGITS_REACHED("Exact rational arithmetic on Norris", "covariance", *line->covariance,
                        -7.743275363156437e-05, 13);
}

TEST(NistLine, NorrisKeepsItsDigitsWithStatedUncertainties) {
  // Derived: when all u are the certified residual deviation, the unscaled errors are the certified ones, and
  // chi-square is the number of degrees of freedom.
  const auto [x, y] = points("nist_norris");
  const double u = certified("nist_norris", "resid_sd");
  std::vector<double> covariance(x.size() * x.size(), 0.0), full(4 * x.size() * x.size(), 0.0);
  for (std::size_t i = 0; i < x.size(); ++i) {
    covariance[i * x.size() + i] = u * u;
    full[(x.size() + i) * 2 * x.size() + x.size() + i] = u * u;
  }
  const std::vector<double> uy(x.size(), u), exact(x.size(), 0.0);
  for (const auto& line : {core::fitWeightedLine(x, y, uy), core::fitCorrelatedLine(x, y, covariance),
                           core::fitDistanceLine(x, y, exact, uy), core::fitGeneralisedLine(x, y, full)}) {
    ASSERT_TRUE(line) << line.error().text();
    SCOPED_TRACE(core::lineFitName(line->fit));
    EXPECT_DIGITS_REACHED(source("nist_norris"), "coefficients, stated u", line->intercept,
                          certified("nist_norris", "B0"), 13);
    EXPECT_DIGITS_REACHED(source("nist_norris"), "coefficients, stated u", line->slope,
                          certified("nist_norris", "B1"), 13);
    EXPECT_DIGITS_REACHED(source("nist_norris"), "standard errors, stated u", *line->interceptError,
                          certified("nist_norris", "se_B0"), 13);
    EXPECT_DIGITS_REACHED(source("nist_norris"), "standard errors, stated u", *line->slopeError,
                          certified("nist_norris", "se_B1"), 13);
    EXPECT_DIGITS_REACHED(source("nist_norris"), "chi-square, stated u", *line->chiSquare, 34, 13);
    EXPECT_DIGITS_REACHED(source("nist_norris"), "residual sum of squares, stated u",
                          line->residualSumOfSquares, certified("nist_norris", "rss"), 13);
  }
}

void expectCertifiedThroughZero(const std::string& dataset) {
  SCOPED_TRACE(dataset);
  const auto [x, y] = points(dataset);
  const auto line = core::fitLineThroughZero(x, y);
  ASSERT_TRUE(line) << line.error().text();
  EXPECT_DIGITS_REACHED(source(dataset), "coefficients", line->slope, certified(dataset, "B1"), 14);
  EXPECT_DIGITS_REACHED(source(dataset), "standard errors", *line->slopeError, certified(dataset, "se_B1"),
                        14);
  EXPECT_DIGITS_REACHED(source(dataset), "residual deviation", *line->residualDeviation,
                        certified(dataset, "resid_sd"), 14);
  EXPECT_DIGITS_REACHED(source(dataset), "residual sum of squares", line->residualSumOfSquares,
                        certified(dataset, "rss"), 14);
  EXPECT_DIGITS_REACHED(source(dataset), "R squared", *line->rSquared, certified(dataset, "R2"), 14);
  EXPECT_EQ(line->degreesOfFreedom, certified(dataset, "dof"));
}

TEST(NistLine, NoInt1AndNoInt2KeepTheirDigitsWithStatedUncertainties) {
  for (const std::string dataset : {"nist_noint1", "nist_noint2"}) {
    SCOPED_TRACE(dataset);
    const auto [x, y] = points(dataset);
    const double u = certified(dataset, "resid_sd");
    const auto line = core::fitWeightedLine(x, y, std::vector<double>(x.size(), u), core::Through::Zero);
    ASSERT_TRUE(line) << line.error().text();
    EXPECT_DIGITS_REACHED(source(dataset), "coefficients, stated u", line->slope, certified(dataset, "B1"),
                          14);
    EXPECT_DIGITS_REACHED(source(dataset), "standard errors, stated u", *line->slopeError,
                          certified(dataset, "se_B1"), 14);
    EXPECT_DIGITS_REACHED(source(dataset), "R squared, stated u", *line->rSquared, certified(dataset, "R2"),
                          14);
    EXPECT_DIGITS_REACHED(source(dataset), "chi-square, stated u", *line->chiSquare,
                          certified(dataset, "dof"), 13);
  }
}

TEST(NistLine, NoInt1ThroughZeroComesOutToFourteenDigits) { expectCertifiedThroughZero("nist_noint1"); }

TEST(NistLine, NoInt2ThroughZeroComesOutToFourteenDigits) { expectCertifiedThroughZero("nist_noint2"); }

TEST(NistLine, ThePolynomialOfDegreeOneIsTheLine) { expectCertified("nist_norris", 1, 13); }

TEST(NistPolynomial, PontiusLoadCellIsQuadraticToThirteenDigits) { expectCertified("nist_pontius", 2, 13); }

TEST(NistPolynomial, Wampler1IsAnExactQuinticWithIntegerData) { expectCertified("nist_wampler1", 5, 14); }

TEST(NistPolynomial, Wampler2IsAnExactQuinticWithDecimalData) { expectCertified("nist_wampler2", 5, 13); }

TEST(NistPolynomial, Wampler4KeepsItsQuinticUnderLargeResiduals) { expectCertified("nist_wampler4", 5, 14); }

TEST(NistPolynomial, FilipOfDegreeTenKeepsThirteenDigits) { expectCertified("nist_filip", 10, 13); }

}  // namespace nist_line_test
