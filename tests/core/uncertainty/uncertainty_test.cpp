// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/uncertainty/uncertainty.h"

#include <gtest/gtest.h>

#include <limits>
#include <set>

#include "tests/support/digits.h"

using namespace core;

namespace uncertainty_test {

const double infinity = std::numeric_limits<double>::infinity();
const double nan = std::numeric_limits<double>::quiet_NaN();

Uncertainty tolerance(double amount, Distribution distribution) {
  return {.amount = amount, .distribution = distribution};
}

TEST(StandardUncertainty, OfAToleranceIsTheStandardDeviationOfItsDistribution) {
  // JCGM 100:2008, 4.3.7 and 4.3.9 (rectangular, triangular), JCGM 101:2008, 6.4.6 (arcsine): variances
  // a^2/3, a^2/6 and a^2/2. Fifteen digits: a root and a division.
  EXPECT_DIGITS(standardUncertainty(tolerance(3, Distribution::Rectangular), 350), 1.7320508075688772, 15);
  EXPECT_DIGITS(standardUncertainty(tolerance(6, Distribution::Triangular), 350), 2.449489742783178, 15);
  EXPECT_DIGITS(standardUncertainty(tolerance(2, Distribution::Arcsine), 350), 1.4142135623730951, 15);
}

TEST(StandardUncertainty, OfANormalToleranceAndOfACertificateIsDividedByK) {
  // JCGM 100:2008, 4.3.3: a certificate states three standard deviations as 240 ug, so u is 80 ug.
  EXPECT_EQ(standardUncertainty({.statement = Statement::Expanded, .amount = 240, .coverageFactor = 3}, 1000),
            80);
  Uncertainty normal = tolerance(240, Distribution::Normal);
  normal.coverageFactor = 3;
  EXPECT_EQ(standardUncertainty(normal, 1000), 80);
}

TEST(StandardUncertainty, OfAStandardStatementIsTheStatement) {
  // Neither k nor the distribution of a tolerance plays a part.
  const Uncertainty stated = {.statement = Statement::Standard,
                              .amount = 0.25,
                              .coverageFactor = 3,
                              .distribution = Distribution::Arcsine};
  EXPECT_EQ(standardUncertainty(stated, 350), 0.25);
}

TEST(StandardUncertainty, OfAShareFollowsTheMagnitudeOfTheValue) {
  // Derived: 0.1 % of 59 kohm is 59 ohm.
  const Uncertainty share = {.statement = Statement::Standard, .amount = 0.001, .relative = true};
  EXPECT_DIGITS(standardUncertainty(share, 59000), 59, 15);
  EXPECT_DIGITS(standardUncertainty(share, -59000), 59, 15);
  EXPECT_EQ(standardUncertainty(share, 0), 0);
}

TEST(DistributionOf, OnlyAToleranceHasOneOfItsOwn) {
  EXPECT_EQ(distributionOf(tolerance(1, Distribution::Triangular)), Distribution::Triangular);
  for (const Statement statement : {Statement::Standard, Statement::Expanded}) {
    const Uncertainty stated = {.statement = statement, .distribution = Distribution::Triangular};
    EXPECT_EQ(distributionOf(stated), Distribution::Normal);
  }
}

TEST(CheckUncertainty, TakesWhatIsPossible) {
  EXPECT_TRUE(checkUncertainty({}, "arm 1"));  // 0: the value is exact
  EXPECT_TRUE(checkUncertainty({.amount = 0.5, .coverageFactor = 1.96, .degreesOfFreedom = 0.5}, "arm 1"));
}

void expectRefused(const Uncertainty& uncertainty, const std::string& named) {
  const auto checked = checkUncertainty(uncertainty, "shunt 2");
  ASSERT_FALSE(checked) << named;
  EXPECT_EQ(checked.error().where, "shunt 2");
  EXPECT_NE(checked.error().what.find(named), std::string::npos) << checked.error().text();
  EXPECT_FALSE(checked.error().mend.empty());
}

TEST(CheckUncertainty, NamesWhatIsImpossible) {
  for (const double amount : {-1e-9, infinity, nan}) {
    expectRefused({.amount = amount}, "must be a finite number that is not negative");
  }
  for (const double k : {0.0, -2.0, infinity, nan}) {
    expectRefused({.amount = 1, .coverageFactor = k}, "coverage factor k");
  }
  for (const double dof : {0.0, -4.0, infinity, nan}) {
    expectRefused({.amount = 1, .degreesOfFreedom = dof}, "degrees of freedom");
  }
}

TEST(UncertaintyKeys, AreReadBackAndDiffer) {
  std::set<std::string_view> keys;
  for (std::size_t k = 0; k < distributionCount; ++k) {
    const auto distribution = static_cast<Distribution>(k);
    keys.insert(distributionKey(distribution));
    EXPECT_EQ(distributionFromKey(distributionKey(distribution)), distribution);
  }
  for (std::size_t k = 0; k < statementCount; ++k) {
    const auto statement = static_cast<Statement>(k);
    keys.insert(statementKey(statement));
    EXPECT_EQ(statementFromKey(statementKey(statement)), statement);
  }
  EXPECT_EQ(keys.size(), distributionCount + statementCount);
  EXPECT_EQ(distributionKey(Distribution::Arcsine), "arcsine");
  EXPECT_EQ(statementKey(Statement::Tolerance), "tolerance");
  EXPECT_FALSE(distributionFromKey("Normal"));
  EXPECT_FALSE(statementFromKey(""));
}

}  // namespace uncertainty_test
