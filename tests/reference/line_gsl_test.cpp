// SPDX-License-Identifier: GPL-3.0-or-later
// Lines through random points against the GNU Scientific Library (GSL 2.7), worked out in the same run:
// gsl_fit_wlinear and gsl_fit_wmul for stated uncertainties, gsl_multifit_linear on points whitened by GSL's
// Cholesky factor for covariances, gsl_cdf for the chi-square test.
#include <gsl/gsl_cdf.h>
#include <gsl/gsl_errno.h>
#include <gsl/gsl_fit.h>
#include <gsl/gsl_linalg.h>
#include <gsl/gsl_multifit.h>
#include <gtest/gtest.h>

#include <cmath>
#include <memory>
#include <random>

#include "core/line/line_use.h"
#include "core/line/stated_fits.h"
#include "tests/support/reached_digits.h"

namespace {

using core::Line;
using core::Through;
using Column = std::vector<double>;

/// Nothing here is ill-conditioned by more than a thousand times, so that sixteen digits leave twelve.
constexpr double digits = 12;

class Random {
 public:
  explicit Random(unsigned seed) : m_generator(seed) {}
  double even(double low, double high) {
    return low + (high - low) * static_cast<double>(m_generator()) / 4294967296.0;
  }
  Column column(std::size_t count, double low, double high) {
    Column column(count);
    for (double& value : column) value = even(low, high);
    return column;
  }
  /// Covariance of independent scatter, a shared offset and a gain in common: what a check's readings have.
  Column covariance(const Column& x) {
    const std::size_t m = x.size();
    const double offset = even(0, 2), gain = even(0, 0.3);
    Column matrix(m * m);
    for (std::size_t i = 0; i < m; ++i)
      for (std::size_t j = 0; j < m; ++j)
        matrix[i * m + j] = offset * offset + gain * gain * x[i] * x[j] + (i == j ? even(0.5, 2) : 0);
    return matrix;
  }

 private:
  std::mt19937 m_generator;
};

struct Points {
  Column x, y, uy;
};

Points randomPoints(Random& random, std::size_t count) {
  Points points{random.column(count, -5, 7), {}, random.column(count, 0.1, 3)};
  for (std::size_t i = 0; i < count; ++i)
    points.y.push_back(2 + 0.7 * points.x[i] + points.uy[i] * random.even(-2, 2));
  return points;
}

TEST(LineAgainstGsl, WeightedLinesAgree) {
  for (unsigned seed = 1; seed <= 50; ++seed) {
    SCOPED_TRACE(seed);
    Random random(seed);
    const std::size_t m = 3 + seed % 20;
    const Points p = randomPoints(random, m);
    Column w;
    for (const double u : p.uy) w.push_back(1 / (u * u));
    double a, b, aa, ab, bb, chiSquare;
    gsl_fit_wlinear(p.x.data(), 1, w.data(), 1, p.y.data(), 1, m, &a, &b, &aa, &ab, &bb, &chiSquare);
    const auto line = core::fitWeightedLine(p.x, p.y, p.uy);
    ASSERT_TRUE(line) << line.error().text();
    EXPECT_REACHED(test::Source("GSL, weighted lines", 20), "intercept", line->intercept, a, 1e-13 * 20)
        << "of readings up to 10";
    EXPECT_REACHED(test::Source("GSL, weighted lines", 20), "slope", line->slope, b, 1e-13 * 20);
    EXPECT_DIGITS_REACHED("GSL, weighted lines", "standard errors", *line->interceptError, std::sqrt(aa),
                          digits);
    EXPECT_DIGITS_REACHED("GSL, weighted lines", "standard errors", *line->slopeError, std::sqrt(bb), digits);
    EXPECT_REACHED(test::Source("GSL, weighted lines", std::sqrt(aa * bb)), "covariance", *line->covariance,
                   ab, 1e-12 * std::sqrt(aa * bb));
    EXPECT_DIGITS_REACHED("GSL, weighted lines", "chi-square", *line->chiSquare, chiSquare, 11);
    EXPECT_DIGITS_REACHED("GSL, weighted lines", "probability", *line->chiSquareProbability,
                          gsl_cdf_chisq_Q(chiSquare, static_cast<double>(m) - 2), 10);
    double y, error;
    gsl_fit_linear_est(3.3, a, b, aa, ab, bb, &y, &error);
    EXPECT_DIGITS_REACHED("GSL, weighted lines", "u of an estimate", *core::forwardOf(*line, 3.3).standard,
                          error, digits);

    gsl_fit_wmul(p.x.data(), 1, w.data(), 1, p.y.data(), 1, m, &b, &bb, &chiSquare);
    const auto through = core::fitWeightedLine(p.x, p.y, p.uy, Through::Zero);
    ASSERT_TRUE(through);
    EXPECT_REACHED(test::Source("GSL, weighted lines", 20), "slope", through->slope, b, 1e-13 * 20);
    EXPECT_DIGITS_REACHED("GSL, weighted lines", "standard errors", *through->slopeError, std::sqrt(bb),
                          digits);
    EXPECT_DIGITS_REACHED("GSL, weighted lines", "chi-square", *through->chiSquare, chiSquare, 11);
  }
}

struct FreeMatrix {
  void operator()(gsl_matrix* matrix) const { gsl_matrix_free(matrix); }
};
using Matrix = std::unique_ptr<gsl_matrix, FreeMatrix>;

struct GslLine {
  double intercept, slope, interceptError, slopeError, covariance, chiSquare;
};

/// Whitened by GSL's Cholesky factor and fitted by its singular value decomposition; the covariance that
/// gsl_multifit_linear scales by chi-square over dof is scaled back.
GslLine gslCorrelatedLine(const Column& x, const Column& y, Column covariance) {
  const std::size_t m = x.size();
  gsl_matrix_view factor = gsl_matrix_view_array(covariance.data(), m, m);
  gsl_linalg_cholesky_decomp1(&factor.matrix);
  const Matrix design(gsl_matrix_alloc(m, 2)), spread(gsl_matrix_alloc(2, 2));
  Column whitened = y;
  gsl_vector_view ofY = gsl_vector_view_array(whitened.data(), m);
  for (std::size_t i = 0; i < m; ++i)
    gsl_matrix_set(design.get(), i, 0, 1), gsl_matrix_set(design.get(), i, 1, x[i]);
  gsl_blas_dtrsm(CblasLeft, CblasLower, CblasNoTrans, CblasNonUnit, 1, &factor.matrix, design.get());
  gsl_blas_dtrsv(CblasLower, CblasNoTrans, CblasNonUnit, &factor.matrix, &ofY.vector);
  double parameters[2], chiSquare;
  gsl_vector_view solution = gsl_vector_view_array(parameters, 2);
  gsl_multifit_linear_workspace* workspace = gsl_multifit_linear_alloc(m, 2);
  gsl_multifit_linear(design.get(), &ofY.vector, &solution.vector, spread.get(), &chiSquare, workspace);
  gsl_multifit_linear_free(workspace);
  const double scale = chiSquare / (static_cast<double>(m) - 2);
  return {parameters[0],
          parameters[1],
          std::sqrt(gsl_matrix_get(spread.get(), 0, 0) / scale),
          std::sqrt(gsl_matrix_get(spread.get(), 1, 1) / scale),
          gsl_matrix_get(spread.get(), 0, 1) / scale,
          chiSquare};
}

TEST(LineAgainstGsl, CorrelatedLinesAgree) {
  for (unsigned seed = 1; seed <= 50; ++seed) {
    SCOPED_TRACE(seed);
    Random random(100 + seed);
    const std::size_t m = seed == 50 ? 200 : 3 + seed % 20;
    const Points p = randomPoints(random, m);
    const Column covariance = random.covariance(p.x);
    const GslLine expected = gslCorrelatedLine(p.x, p.y, covariance);
    const auto line = core::fitCorrelatedLine(p.x, p.y, covariance);
    ASSERT_TRUE(line) << line.error().text();
    // A shared offset of 2 beside scatter of 0.7, m times over, makes the matrix uneven by 10 m.
    EXPECT_REACHED(test::Source("GSL, correlated lines", 20), "intercept", line->intercept,
                   expected.intercept, 1e-12 * 20);
    EXPECT_REACHED(test::Source("GSL, correlated lines", 20), "slope", line->slope, expected.slope,
                   1e-12 * 20);
    EXPECT_DIGITS_REACHED("GSL, correlated lines", "standard errors", *line->interceptError,
                          expected.interceptError, 11);
    EXPECT_DIGITS_REACHED("GSL, correlated lines", "standard errors", *line->slopeError, expected.slopeError,
                          11);
    EXPECT_REACHED(test::Source("GSL, correlated lines", expected.interceptError * expected.slopeError),
                   "covariance", *line->covariance, expected.covariance,
                   1e-11 * expected.interceptError * expected.slopeError);
    EXPECT_DIGITS_REACHED("GSL, correlated lines", "chi-square", *line->chiSquare, expected.chiSquare, 9);
  }
}

TEST(LineAgainstGsl, OrdinaryLinesAgree) {
  for (unsigned seed = 1; seed <= 50; ++seed) {
    Random random(200 + seed);
    const std::size_t m = 3 + seed % 20;
    const Points p = randomPoints(random, m);
    double a, b, aa, ab, bb, rss;
    gsl_fit_linear(p.x.data(), 1, p.y.data(), 1, m, &a, &b, &aa, &ab, &bb, &rss);
    const auto line = core::fitLine(p.x, p.y);
    ASSERT_TRUE(line);
    EXPECT_REACHED(test::Source("GSL, ordinary lines", 20), "intercept", line->intercept, a, 1e-13 * 20);
    EXPECT_REACHED(test::Source("GSL, ordinary lines", 20), "slope", line->slope, b, 1e-13 * 20);
    EXPECT_DIGITS_REACHED("GSL, ordinary lines", "standard errors", *line->interceptError, std::sqrt(aa),
                          digits);
    EXPECT_DIGITS_REACHED("GSL, ordinary lines", "standard errors", *line->slopeError, std::sqrt(bb), digits);
    EXPECT_DIGITS_REACHED("GSL, ordinary lines", "residual sum of squares", line->residualSumOfSquares, rss,
                          11);
  }
}

TEST(LineAgainstGsl, QuantilesOfTheBandsAgree) {
  // Through the bands of a line whose own uncertainty is divided out. GSL's quantiles hold ten digits.
  for (const std::size_t m : {3u, 4u, 9u, 40u}) {
    Random random(static_cast<unsigned>(m));
    const Points p = randomPoints(random, m);
    const auto dof = static_cast<double>(m) - 2;
    const auto scatter = core::fitLine(p.x, p.y), stated = core::fitWeightedLine(p.x, p.y, p.uy);
    ASSERT_TRUE(scatter && stated);
    for (const double coverage : {0.68, 0.95, 0.9973}) {
      const double u = *core::forwardOf(*scatter, 1).standard, known = *core::forwardOf(*stated, 1).standard;
      EXPECT_DIGITS_REACHED("GSL, bands", "quantiles", *core::confidenceHalfWidth(*scatter, 1, coverage) / u,
                            gsl_cdf_tdist_Pinv((1 + coverage) / 2, dof), 9);
      EXPECT_DIGITS_REACHED("GSL, bands", "quantiles",
                            *core::simultaneousHalfWidth(*scatter, 1, coverage) / u,
                            std::sqrt(2 * gsl_cdf_fdist_Pinv(coverage, 2, dof)), 9);
      EXPECT_DIGITS_REACHED("GSL, bands", "quantiles",
                            *core::simultaneousHalfWidth(*stated, 1, coverage) / known,
                            std::sqrt(gsl_cdf_chisq_Pinv(coverage, 2)), 9);
    }
  }
}

}  // namespace
