// SPDX-License-Identifier: GPL-3.0-or-later
// Worked examples in print are in tests/reference/gum_cases_test.cpp.
#include "core/uncertainty/propagation.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <limits>
#include <random>
#include <thread>

#include "tests/support/digits.h"

using namespace core;

namespace propagation_test {

using Numbers = std::vector<double>;
using Pairs = std::vector<CorrelatedPair>;
using Dofs = std::vector<std::optional<double>>;

const double infinity = std::numeric_limits<double>::infinity();
const double nan = std::numeric_limits<double>::quiet_NaN();

TEST(CovarianceOf, TenResistorsCalibratedAgainstOneStandardAddLinearly) {
  // JCGM 100:2008, 5.2.2, example: ten 1000 ohm resistors in series, each calibrated against one standard
  // of u = 100 mohm, so that all are fully correlated: u of the sum is 1 ohm, and 0.32 ohm would be wrong.
  const Numbers ones(10, 1.0), u(10, 0.1);
  Pairs pairs;
  for (std::size_t i = 0; i < 10; ++i) {
    for (std::size_t j = i + 1; j < 10; ++j) pairs.push_back({i, j, 1});
  }
  EXPECT_DIGITS(combinedUncertainty(ones, u, pairs), 1, 14);  // a sum of 100 terms
  EXPECT_NEAR(combinedUncertainty(ones, u, {}), 0.32, 0.005);
}

TEST(CovarianceOf, TwoResultsWithOneSharedInputHaveItsVarianceInCommon) {
  // Derived: y1 = x1 + x2, y2 = 3 x2 - x3, cov = 1 * 3 * u2^2.
  EXPECT_EQ(covarianceOf(Numbers{1, 1, 0}, Numbers{0, 3, -1}, Numbers{5, 2, 7}, {}), 12);
  // And with r(x1, x3) = 0.5: plus 0.5 * 5 * 7 * (1 * -1 + 0 * 0).
  EXPECT_EQ(covarianceOf(Numbers{1, 1, 0}, Numbers{0, 3, -1}, Numbers{5, 2, 7}, Pairs{{0, 2, 0.5}}), -5.5);
}

TEST(CovarianceOf, IsSymmetricInItsResults) {
  const Numbers a = {1, -2, 0.5}, b = {-0.3, 4, 2}, u = {0.1, 0.2, 0.3};
  const Pairs pairs = {{0, 1, -0.4}, {1, 2, 0.9}};
  EXPECT_DIGITS(covarianceOf(a, b, u, pairs), covarianceOf(b, a, u, pairs), 15);
}

TEST(CombinedUncertainty, OfInputsThatCancelIsZeroAndNeverNaN) {
  // Derived: y = c1 x1 + c2 x2, fully correlated, so u = |c1 u1 + c2 u2| = 0. 1.3 x 1.9 and 0.8 x 3.0875 are
  // both 2.47, and rounding leaves their variance at -2e-15.
  EXPECT_EQ(combinedUncertainty(Numbers{1, -1}, Numbers{0.7, 0.7}, Pairs{{0, 1, 1}}), 0);
  const Numbers c = {1.3, -0.8}, u = {1.9, 3.0875};
  EXPECT_NEAR(covarianceOf(c, c, u, Pairs{{0, 1, 1}}), 0, 1e-14);  // some roundings of 2.47^2
  EXPECT_EQ(combinedUncertainty(c, u, Pairs{{0, 1, 1}}), 0);
}

TEST(EffectiveDegreesOfFreedom, OfOneInputAreItsOwn) {
  for (const double dof : {1.0, 4.0, 17.0, 49.0, 1000.0}) {
    EXPECT_DIGITS(effectiveDegreesOfFreedom(Numbers{-0.3}, Dofs{dof}).value(), dof, 15);
  }
}

TEST(EffectiveDegreesOfFreedom, OfEqualInputsAddUp) {
  // Derived: n equal contributions, (n c^2)^2 / (n c^4 / nu) = n nu.
  EXPECT_DIGITS(effectiveDegreesOfFreedom(Numbers{2, 2, -2}, Dofs{4, 4, 4}).value(), 12, 14);
}

TEST(EffectiveDegreesOfFreedom, LieBetweenTheLeastAndTheSum) {
  // JCGM 100:2008, G.4.1 note: nu_eff is at most the sum, and it is never below the least.
  std::mt19937_64 random(11);
  std::uniform_real_distribution<double> contribution(-1, 1), freedom(1, 40);
  for (int round = 0; round < 1000; ++round) {
    Numbers c;
    Dofs dof;
    double sum = 0, least = infinity;
    for (int k = 0; k < 5; ++k) {
      c.push_back(contribution(random));
      dof.push_back(freedom(random));
      sum += *dof.back();
      least = std::min(least, *dof.back());
    }
    const double effective = effectiveDegreesOfFreedom(c, dof).value();
    EXPECT_LE(effective, sum * (1 + 1e-14));  // some ten roundings
    EXPECT_GE(effective, least * (1 - 1e-14));
  }
}

TEST(EffectiveDegreesOfFreedom, AreInfiniteWhereNoFiniteInputContributes) {
  EXPECT_FALSE(effectiveDegreesOfFreedom(Numbers{1, 2}, Dofs{{}, {}}));
  EXPECT_FALSE(effectiveDegreesOfFreedom(Numbers{1, 0}, Dofs{{}, 3}));
  EXPECT_FALSE(effectiveDegreesOfFreedom(Numbers{0, 0}, Dofs{4, 3}));
  EXPECT_FALSE(effectiveDegreesOfFreedom(Numbers{}, Dofs{}));
  // Next to none, so that the sum overflows: still above zero, which coverageFactorFor counts on.
  EXPECT_GT(effectiveDegreesOfFreedom(Numbers{1, 1}, Dofs{1e-310, 1e-310}).value(), 0);
}

TEST(EffectiveDegreesOfFreedom, DoNotDependOnTheUnit) {
  // Fourth powers of 1e-90 would vanish, those of 1e90 overflow.
  const double plain = effectiveDegreesOfFreedom(Numbers{0.57, 0.25}, Dofs{9, {}}).value();
  for (const double unit : {1e-200, 1e-90, 1e90, 1e200}) {
    EXPECT_DIGITS(effectiveDegreesOfFreedom(Numbers{0.57 * unit, 0.25 * unit}, Dofs{9, {}}).value(), plain,
                  14);
  }
}

struct FactorCase {
  double coverage;
  std::optional<double> dof;
  double k;
};

TEST(CoverageFactorFor, AgreesWithThePrintedTable) {
  // JCGM 100:2008, table G.2 (from memory), two decimals; its 99 % and 95 % columns are those of any table.
  const std::vector<FactorCase> printed = {
      {0.95, 1, 12.71},   {0.95, 5, 2.57},    {0.95, 10, 2.23},   {0.95, {}, 1.960},  {0.9545, 1, 13.97},
      {0.9545, 2, 4.53},  {0.9545, 3, 3.31},  {0.9545, 4, 2.87},  {0.9545, 5, 2.65},  {0.9545, 10, 2.28},
      {0.9545, 20, 2.13}, {0.9545, 50, 2.05}, {0.9545, {}, 2.00}, {0.99, 1, 63.66},   {0.99, 5, 4.03},
      {0.99, 16, 2.92},   {0.99, {}, 2.576},  {0.9973, 5, 5.51},  {0.9973, 10, 3.96}, {0.9973, {}, 3.00}};
  for (const auto& [coverage, dof, k] : printed) {
    EXPECT_NEAR(coverageFactorFor(coverage, dof), k, 0.005) << coverage << " at " << dof.value_or(0);
  }
}

TEST(CoverageFactorFor, AgreesWithExactValues) {
  // mpmath 1.2.1, 40 digits: root of betainc(nu/2, 1/2, 0, nu/(nu + k^2), regularized) = 1 - p; without
  // degrees of freedom sqrt(2) erfinv(p). Ten digits as promised; above 200 a series takes over.
  const std::vector<FactorCase> exact = {
      {0.6827, 1, 1.837409429490546},      {0.6827, 2, 1.321315462445693},
      {0.6827, 3, 1.196912559971693},      {0.6827, 5, 1.110533393814024},
      {0.6827, 16, 1.032264919261905},     {0.6827, 17, 1.030312554877268},
      {0.6827, 50, 1.010122653773102},     {0.6827, 200, 1.002528080131274},
      {0.6827, 201, 1.002515579625592},    {0.6827, 1000, 1.000521985116369},
      {0.6827, 100000, 1.000026713565138}, {0.6827, {}, 1.000021713322999},
      {0.95, 1, 12.7062047361747},         {0.95, 2, 4.302652729749464},
      {0.95, 3, 3.18244630528371},         {0.95, 5, 2.570581835636316},
      {0.95, 16, 2.119905299221255},       {0.95, 17, 2.109815577833317},
      {0.95, 50, 2.008559112100761},       {0.95, 200, 1.971896223633909},
      {0.95, 201, 1.971836506779859},      {0.95, 1000, 1.962339080826408},
      {0.95, 100000, 1.95998770753461},    {0.95, {}, 1.959963984540054},
      {0.9545, 1, 13.96781148750258},      {0.9545, 2, 4.526550760081991},
      {0.9545, 3, 3.306829920720112},      {0.9545, 5, 2.648654254283119},
      {0.9545, 16, 2.168942995677415},     {0.9545, 17, 2.158263400597301},
      {0.9545, 50, 2.051250781851882},     {0.9545, 200, 2.012579405071286},
      {0.9545, 201, 2.012516450563339},    {0.9545, 1000, 2.002505517218673},
      {0.9545, 100000, 2.000027444285285}, {0.9545, {}, 2.000002443899604},
      {0.99, 1, 63.65674116287158},        {0.99, 2, 9.924843200918293},
      {0.99, 3, 5.840909309733357},        {0.99, 5, 4.032142983555228},
      {0.99, 16, 2.9207816224251},         {0.99, 17, 2.898230519677419},
      {0.99, 50, 2.677793270940844},       {0.99, 200, 2.600634436191558},
      {0.99, 201, 2.600509919083194},      {0.99, 1000, 2.580754698065951},
      {0.99, 100000, 2.575878469908375},   {0.99, {}, 2.575829303548901},
      {0.9973, 1, 235.7836871584926},      {0.9973, 2, 19.2060158878111},
      {0.9973, 3, 9.218701822037347},      {0.9973, 5, 5.506984967354847},
      {0.9973, 16, 3.544091856002959},     {0.9973, 17, 3.507463148952556},
      {0.9973, 50, 3.157121316107565},     {0.9973, 200, 3.037911220212986},
      {0.9973, 201, 3.037720320313891},    {0.9973, 1000, 3.007494111288684},
      {0.9973, 100000, 3.000051992817866}, {0.9973, {}, 2.999976992703393}};
  for (const auto& [coverage, dof, k] : exact) {
    EXPECT_DIGITS(coverageFactorFor(coverage, dof), k, 10) << coverage << " at " << dof.value_or(0);
  }
  // What the series costs at a coverage that nobody asks for.
  EXPECT_DIGITS(coverageFactorFor(1 - 1e-9, 201), 6.412916873068979, 7);
}

TEST(CoverageFactorFor, CutsDegreesOfFreedomDownToWholeNumbers) {
  const double at16 = coverageFactorFor(0.99, 16), at17 = coverageFactorFor(0.99, 17);
  EXPECT_LT(at17, at16);
  EXPECT_EQ(coverageFactorFor(0.99, 16.75), at16);  // JCGM 100:2008, H.1.6
  EXPECT_EQ(coverageFactorFor(0.99, 16.999999), at16);
  EXPECT_EQ(coverageFactorFor(0.99, 17 * (1 - 1e-11)), at16);
  EXPECT_EQ(coverageFactorFor(0.99, 200.9), coverageFactorFor(0.99, 200));
  EXPECT_EQ(coverageFactorFor(0.99, 1000.9), coverageFactorFor(0.99, 1000));
  EXPECT_EQ(coverageFactorFor(0.99, 0.3), coverageFactorFor(0.99, 1));
}

TEST(CoverageFactorFor, TakesAWholeNumberThatRoundingLoweredAsThatNumber) {
  // All degrees of freedom from 1 to 1000 through Welch and Satterthwaite, alone and beside an input of
  // which next to nothing comes; several come out below the whole number.
  std::size_t lowered = 0;
  for (int whole = 1; whole <= 1000; ++whole) {
    const double dof = effectiveDegreesOfFreedom(Numbers{0.3, 1e-9}, Dofs{whole, {}}).value();
    if (dof < whole) ++lowered;
    EXPECT_EQ(coverageFactorFor(0.9545, dof), coverageFactorFor(0.9545, whole)) << whole;
  }
  EXPECT_GT(lowered, 0u);
}

TEST(CoverageFactorFor, FallsWithDegreesOfFreedomToTheNormalOne) {
  for (const double coverage : {0.5, 0.6827, 0.95, 0.9973}) {
    double last = infinity;
    for (int dof = 1; dof <= 400; ++dof) {
      const double k = coverageFactorFor(coverage, dof);
      EXPECT_LT(k, last) << coverage << " at " << dof;
      last = k;
    }
    EXPECT_GT(last, coverageFactorFor(coverage, {}));
    EXPECT_EQ(coverageFactorFor(coverage, infinity), coverageFactorFor(coverage, {}));
  }
}

TEST(CoverageFactorFor, DoesNotDependOnWhatWasAskedBefore) {
  const std::array<double, 3> coverages = {0.95, 0.9545, 0.99};
  std::array<double, 3> first{}, again{};
  for (std::size_t k = 0; k < 3; ++k) first[k] = coverageFactorFor(coverages[k], 12);
  std::thread other([&] {
    for (std::size_t k = 3; k-- > 0;) again[k] = coverageFactorFor(coverages[k], 12);
  });
  for (std::size_t k = 3; k-- > 0;) EXPECT_EQ(coverageFactorFor(coverages[k], 12), first[k]);
  other.join();
  EXPECT_EQ(again, first);
}

TEST(IsPositiveSemidefinite, TakesCorrelationsThatExist) {
  EXPECT_TRUE(isPositiveSemidefinite({}, 0));
  EXPECT_TRUE(isPositiveSemidefinite(Numbers{1, -1, -1, 1}, 2));
  // Derived: cos 30, cos 60 and cos 30 of unit vectors in a plane; determinant and least eigenvalue 0.
  const double a = std::sqrt(3.0) / 2;
  EXPECT_TRUE(isPositiveSemidefinite(Numbers{1, a, 0.5, a, 1, a, 0.5, a, 1}, 3));
  // Fully correlated inputs: all eigenvalues but one are 0, and come out a little beside.
  for (const std::size_t size : {2u, 10u, 100u}) {
    EXPECT_TRUE(isPositiveSemidefinite(Numbers(size * size, 1.0), size)) << size;
  }
}

TEST(IsPositiveSemidefinite, RefusesCorrelationsThatCannotExist) {
  // Derived: with r12 = r23 = 0.9, r13 is at least 2 * 0.81 - 1 = 0.62 (determinant 0 there).
  EXPECT_TRUE(isPositiveSemidefinite(Numbers{1, 0.9, 0.63, 0.9, 1, 0.9, 0.63, 0.9, 1}, 3));
  EXPECT_FALSE(isPositiveSemidefinite(Numbers{1, 0.9, 0.61, 0.9, 1, 0.9, 0.61, 0.9, 1}, 3));
  // n inputs can be correlated by -1 / (n - 1) at the lowest: the variance of their sum is 0 there.
  const auto equal = [](double r) { return Numbers{1, r, r, r, 1, r, r, r, 1}; };
  EXPECT_TRUE(isPositiveSemidefinite(equal(-0.5), 3));
  EXPECT_FALSE(isPositiveSemidefinite(equal(-0.500001), 3));
  EXPECT_FALSE(isPositiveSemidefinite(Numbers{1, 1.000001, 1.000001, 1}, 2));
}

TEST(IsPositiveSemidefinite, RefusesWhatIsNoMatrixOfCorrelations) {
  EXPECT_FALSE(isPositiveSemidefinite(Numbers{1, 0.5, 0.4, 1}, 2));  // not symmetric
  EXPECT_FALSE(isPositiveSemidefinite(Numbers{2, 0.5, 0.5, 2}, 2));  // covariances
  EXPECT_FALSE(isPositiveSemidefinite(Numbers{1, nan, nan, 1}, 2));
  EXPECT_FALSE(isPositiveSemidefinite(Numbers{1, infinity, infinity, 1}, 2));
}

TEST(EvaluateTypeA, OfTwentyTemperatures) {
  // JCGM 100:2008, 4.4.3 and table 1: mean 100.145 C (printed 100.14), s = 1.489 C (printed 1.49), u = 0.333.
  const Numbers readings = {96.90,  98.18,  98.25,  98.61,  99.03,  99.49,  99.56,  99.74,  99.89,  100.07,
                            100.33, 100.42, 100.68, 100.95, 101.11, 101.20, 101.57, 101.84, 102.36, 102.72};
  const auto result = evaluateTypeA(readings);
  ASSERT_TRUE(result) << result.error().text();
  EXPECT_NEAR(result->mean, 100.145, 0.0005);
  EXPECT_NEAR(result->standardUncertainty, 0.333, 0.0005);
  EXPECT_NEAR(result->standardUncertainty * std::sqrt(20.0), 1.489, 0.0005);
  EXPECT_EQ(result->degreesOfFreedom, 19);
}

TEST(EvaluateTypeA, KeepsItsDigitsBesideALargeMean) {
  // NIST StRD NumAcc3: 1000000.2 and 1000000.1, 1000000.3 in turn, 1001 readings: mean 1000000.2, s = 0.1. In
  // binary the differences of 0.1 keep 9 digits.
  Numbers readings = {1000000.2};
  for (int k = 0; k < 500; ++k) readings.insert(readings.end(), {1000000.1, 1000000.3});
  const auto result = evaluateTypeA(readings);
  ASSERT_TRUE(result);
  EXPECT_DIGITS(result->mean, 1000000.2, 15);
  EXPECT_DIGITS(result->standardUncertainty * std::sqrt(1001.0), 0.1, 9);
}

TEST(EvaluateTypeA, OfReadingsThatDoNotVaryIsZero) {
  const auto result = evaluateTypeA(Numbers(50, 0.1));
  ASSERT_TRUE(result);
  EXPECT_EQ(result->mean, 0.1);
  EXPECT_EQ(result->standardUncertainty, 0);
}

template <class T>
void expectRefused(const Result<T>& result, const std::string& named) {
  ASSERT_FALSE(result) << named;
  EXPECT_NE(result.error().what.find(named), std::string::npos) << result.error().text();
  EXPECT_FALSE(result.error().mend.empty());
}

TEST(EvaluateTypeA, SaysWhatItCannotUse) {
  expectRefused(evaluateTypeA({}), "two readings");
  expectRefused(evaluateTypeA(Numbers{1}), "two readings");
  expectRefused(evaluateTypeA(Numbers{1, nan, 2}), "no finite number");
  expectRefused(evaluateTypeA(Numbers{1, infinity}), "no finite number");
  expectRefused(evaluateTypeA(Numbers{1e308, -1e308, 1.5e308}), "too large");
}

TEST(CorrelationOfMeans, OfALineIsOneWithTheSignOfItsSlope) {
  const Numbers x = {1, 2, 4, 7}, up = {10.2, 10.4, 10.8, 11.4}, down = {-3, -6, -12, -21};
  EXPECT_DIGITS(*correlationOfMeans(x, up), 1, 13);  // 10.2 carries 1e-15 into differences of 1
  EXPECT_DIGITS(*correlationOfMeans(x, down), -1, 15);
  // Rounding would make it 1 + 2e-16 here.
  const Numbers three = {8.7, 5.6, 8.7}, half = {4.35, 2.8, 4.35};
  EXPECT_EQ(*correlationOfMeans(three, half), 1);
}

TEST(CorrelationOfMeans, OfSquaresAboutTheirMiddleIsZero) {
  EXPECT_EQ(*correlationOfMeans(Numbers{-2, -1, 0, 1, 2}, Numbers{4, 1, 0, 1, 4}), 0);
}

TEST(CorrelationOfMeans, SaysWhatItCannotUse) {
  expectRefused(correlationOfMeans(Numbers{1, 2, 3}, Numbers{1, 2}), "different numbers");
  expectRefused(correlationOfMeans(Numbers{1}, Numbers{1}), "two readings");
  expectRefused(correlationOfMeans(Numbers{1, 2}, Numbers{1, nan}), "no finite number");
  expectRefused(correlationOfMeans(Numbers{1, 2, 3}, Numbers{0.1, 0.1, 0.1}), "does not vary");
  expectRefused(correlationOfMeans(Numbers{1e200, -1e200}, Numbers{1, 2}), "too large");
}

TEST(EnNumber, ComparesADifferenceWithTheUncertaintyOfBothValues) {
  // Derived: 3, 4, 5.
  EXPECT_EQ(enNumber(10, 3, 4), 2);
  EXPECT_EQ(enNumber(-10, 3, 4), -2);
  // A shared part of 3 leaves 0 and 4^2 - 3^2 = 7.
  EXPECT_DIGITS(enNumber(10, 3, 4, 3), 10 / std::sqrt(7.0), 15);
}

TEST(EnNumber, WithoutUncertaintyIsZeroOrInfinite) {
  EXPECT_EQ(enNumber(0, 0, 0), 0);
  EXPECT_EQ(enNumber(1e-9, 0, 0), infinity);
  EXPECT_EQ(enNumber(-1e-9, 0, 0), -infinity);
  EXPECT_EQ(enNumber(1, 0.3, 0.3, 0.3), infinity);  // all of it shared
}

}  // namespace propagation_test
