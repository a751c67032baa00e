// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/uncertainty/decision.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <random>
#include <set>
#include <vector>

#include "tests/support/digits.h"

namespace core {
void PrintTo(Outcome outcome, std::ostream* out) {
  *out << (outcome == Outcome::Within ? "within" : outcome == Outcome::Beyond ? "beyond" : "cannot tell");
}
}  // namespace core

using namespace core;

namespace {

const double infinity = std::numeric_limits<double>::infinity();
const double nan = std::numeric_limits<double>::quiet_NaN();

const std::vector<DecisionRule> allRules = {DecisionRule::Simple, DecisionRule::SharedRisk,
                                            DecisionRule::Guarded, DecisionRule::Conformity,
                                            DecisionRule::EnNumber};

Decided decided(DecisionRule rule, double deviation, double limit, std::optional<double> u) {
  return decide({.rule = rule}, deviation, limit, u, {});
}

Outcome outcome(DecisionRule rule, double deviation, double limit, std::optional<double> u) {
  return decided(rule, deviation, limit, u).outcome;
}

/// U of the tests that follow: 1 with u = uOfOne, to the last digits.
const double uOfOne = 1 / 2.0000024438996027;  // SciPy 1.10.1: norm.ppf(0.97725)

TEST(ConformityProbability, OfTheExamplesOfJcgm106) {
  // JCGM 106:2012, 7.4 (from memory): motor oil of 12.5 to 16.3 mm2/s, measured 13.6 with u = 1.8: 66 %. The
  // middle is 14.4.
  EXPECT_NEAR(conformityProbability(13.6 - 14.4, 1.9, 1.8), 0.66, 0.005);
  // 7.3 (from memory), one limit; the other lies 100 u away, where nothing is left of the distribution.
  // Breakdown voltage of at most -5.40 V, measured -5.47 V with u = 0.05 V: 92 %.
  EXPECT_NEAR(conformityProbability(-5.47 - (-5.40 - 5), 5, 0.05), 0.92, 0.005);
  // Burst pressure of at least 490 kPa, measured 509.7 kPa with u = 8.6 kPa: 99 %.
  EXPECT_NEAR(conformityProbability(509.7 - (490 + 860), 860, 8.6), 0.99, 0.005);
}

TEST(ConformityProbability, AgreesWithExactValues) {
  // mpmath 1.2.1, 30 digits: (erfc(-(L - d) / (u sqrt 2)) - erfc((L + d) / (u sqrt 2))) / 2. Twelve digits
  // also of 1e-19 and 1e-185: the quotients are whole numbers and keep the exponent exact.
  struct {
    double deviation, limit, u, probability;
  } const cases[] = {{0, 1, 0.5, 0.95449973610364159},
                     {-0.8, 1.9, 1.8, 0.66262978649530783},
                     {3, 5, 2.5, 0.78745746347868747},
                     {4, 5, 1, 0.84134474606854295},
                     {5, 5, 1, 0.5},
                     {6, 5, 1, 0.15865525393145706},
                     {0.3, 2, 0.7, 0.99191215988611595},
                     {0, 1, 1000, 0.00079788442782212517},
                     {10, 1, 1, 1.1285884040431811e-19},
                     {30, 1, 1, 3.2897852667043802e-185}};
  for (const auto& [deviation, limit, u, probability] : cases) {
    EXPECT_DIGITS(conformityProbability(deviation, limit, u), probability, 12) << deviation << " u " << u;
    EXPECT_EQ(conformityProbability(-deviation, limit, u), conformityProbability(deviation, limit, u));
  }
}

TEST(ConformityProbability, FallsAsTheDeviationGrows) {
  for (const double u : {0.05, 1.0, 20.0}) {
    double last = 2;
    for (double deviation = 0; deviation <= 40 * u; deviation += u / 8) {
      const double probability = conformityProbability(deviation, 5 * u, u);
      EXPECT_LE(probability, last) << deviation;
      EXPECT_TRUE(probability >= 0 && probability <= 1);
      // At first 1 less next to nothing, then below what a double holds.
      if (deviation > u && deviation < 38 * u) {
        EXPECT_LT(probability, last) << deviation;
      }
      last = probability;
    }
  }
}

TEST(ConformityProbability, WithoutUncertaintyIsCertain) {
  EXPECT_EQ(conformityProbability(1, 1, 0), 1);
  EXPECT_EQ(conformityProbability(0, 0, 0), 1);
  EXPECT_EQ(conformityProbability(-1.0000001, 1, 0), 0);
  EXPECT_EQ(conformityProbability(0, 1, infinity), 0);
}

TEST(ConformityProbability, OfWhatIsNoFiniteNumber) {
  EXPECT_EQ(conformityProbability(3, infinity, 1), 1);
  for (const double deviation : {infinity, -infinity, nan}) {
    EXPECT_EQ(conformityProbability(deviation, 1, 1), 0);
    EXPECT_EQ(conformityProbability(deviation, infinity, 0), 0);
  }
}

TEST(Decide, SimpleAcceptanceComparesUnroundedValues) {
  for (const std::optional<double> u : {std::optional<double>(), std::optional<double>(100.0)}) {
    EXPECT_EQ(outcome(DecisionRule::Simple, 5, 5, u), Outcome::Within);
    EXPECT_EQ(outcome(DecisionRule::Simple, -5, 5, u), Outcome::Within);
    EXPECT_EQ(outcome(DecisionRule::Simple, std::nextafter(5.0, 6.0), 5, u), Outcome::Beyond);
    EXPECT_EQ(outcome(DecisionRule::Simple, 0, 0, u), Outcome::Within);
  }
}

TEST(Decide, SharedRiskAsksForAnUncertaintyOfAThirdOfTheLimit) {
  // OIML R 111-1:2004, 5.2 (from memory): U (k = 2) at most a third of the permissible error. 1 kg of class
  // M1, 50 mg: U up to 16.7 mg will do.
  const double good = 16.6 * uOfOne, poor = 16.7 * uOfOne;
  EXPECT_EQ(outcome(DecisionRule::SharedRisk, 49, 50, good), Outcome::Within);
  EXPECT_EQ(outcome(DecisionRule::SharedRisk, -51, 50, good), Outcome::Beyond);
  EXPECT_EQ(outcome(DecisionRule::SharedRisk, 0, 50, poor), Outcome::CannotTell);
  EXPECT_EQ(outcome(DecisionRule::SharedRisk, 500, 50, poor), Outcome::Beyond);
  EXPECT_EQ(decide({.rule = DecisionRule::SharedRisk, .greatestShare = 0.5}, 49, 50, poor, {}).outcome,
            Outcome::Within);
}

TEST(Decide, GuardBandLeavesAZoneWhereItCannotTell) {
  // Derived: limit 5, U = 1: within to 4, beyond from 6; 1e-6 on either side for u that gives U = 1.
  const auto at = [](double deviation) { return outcome(DecisionRule::Guarded, deviation, 5, uOfOne); };
  for (const double sign : {1.0, -1.0}) {
    EXPECT_EQ(at(sign * 0), Outcome::Within);
    EXPECT_EQ(at(sign * 3.999999), Outcome::Within);
    EXPECT_EQ(at(sign * 4.000001), Outcome::CannotTell);
    EXPECT_EQ(at(sign * 5.999999), Outcome::CannotTell);
    EXPECT_EQ(at(sign * 6.000001), Outcome::Beyond);
  }
  const Decided numbers = decide({.rule = DecisionRule::Guarded, .guardFactor = 0.83}, 4.1, 5, uOfOne, {});
  EXPECT_EQ(numbers.outcome, Outcome::Within);
  EXPECT_DIGITS(numbers.expanded.value(), 1, 12);
  EXPECT_DIGITS(numbers.guardBand.value(), 0.83, 12);
  const auto byTheSame = [](double deviation) {
    return decide({.rule = DecisionRule::Guarded, .guardFactor = 0.83}, deviation, 5, uOfOne, {}).outcome;
  };
  // The ends: as much as limit less guard band passes, more than limit plus guard band fails.
  EXPECT_EQ(byTheSame(5 - *numbers.guardBand), Outcome::Within);
  EXPECT_EQ(byTheSame(5 + *numbers.guardBand), Outcome::CannotTell);
}

TEST(Decide, NothingPassesAGuardBandWiderThanTheLimit) {
  EXPECT_EQ(outcome(DecisionRule::Guarded, 0, 5, 6 * uOfOne), Outcome::CannotTell);
  EXPECT_EQ(outcome(DecisionRule::Guarded, 11.1, 5, 6 * uOfOne), Outcome::Beyond);
}

TEST(Decide, ExpandsByTheDegreesOfFreedom) {
  // JCGM 100:2008, table G.2: k = 2.65 at 5 degrees of freedom, 95.45 %.
  const Decided result = decide({.rule = DecisionRule::Guarded}, 2.4, 5, 1, 5);
  EXPECT_NEAR(result.expanded.value(), 2.65, 0.005);
  EXPECT_EQ(result.outcome, Outcome::CannotTell);
  EXPECT_EQ(decide({.rule = DecisionRule::Guarded}, 2.4, 5, 1, {}).outcome, Outcome::Within);
  EXPECT_NEAR(decide({.coverage = 0.99}, 2.4, 5, 10, 16).expanded.value(), 29.2, 0.05);  // H.1: 2.92
}

TEST(Decide, ConformityPassesFailsOrCannotTellByProbability) {
  // SciPy 1.10.1: norm.ppf(0.95) = 1.6448536269514722; limit 100 u, so that the other limit plays no part.
  const auto at = [](double deviation) { return decided(DecisionRule::Conformity, deviation, 100, 1); };
  EXPECT_EQ(at(100 - 1.644854).outcome, Outcome::Within);
  EXPECT_EQ(at(100 - 1.644853).outcome, Outcome::CannotTell);
  EXPECT_EQ(at(-(100 + 1.644853)).outcome, Outcome::CannotTell);
  EXPECT_EQ(at(-(100 + 1.644854)).outcome, Outcome::Beyond);
  EXPECT_NEAR(at(100 - 1.644854).probability.value(), 0.95, 1e-7);  // density 0.1 times 1e-6
  // The ends count: at least `conformity`, and at most what it leaves.
  const double atLeast = at(99).probability.value();
  EXPECT_EQ(decide({.rule = DecisionRule::Conformity, .conformity = atLeast}, 99, 100, 1, {}).outcome,
            Outcome::Within);
  std::size_t exact = 0;
  for (double deviation = 100.5; deviation < 101.5; deviation += 0.125) {
    const double left = at(deviation).probability.value();
    if (1 - (1 - left) != left) continue;  // 1 - left is rounded
    ++exact;
    EXPECT_EQ(
        decide({.rule = DecisionRule::Conformity, .conformity = 1 - left}, deviation, 100, 1, {}).outcome,
        Outcome::Beyond);
  }
  EXPECT_GT(exact, 0u);
  // Next to nothing of a distribution this wide lies within the limit.
  EXPECT_EQ(outcome(DecisionRule::Conformity, 0, 1, 100), Outcome::Beyond);
}

TEST(Decide, EnNumberComparesWithTheUncertaintyAlone) {
  // ISO 13528: |En| <= 1 is satisfactory.
  EXPECT_EQ(outcome(DecisionRule::EnNumber, 0.999999, 0.1, uOfOne), Outcome::Within);
  EXPECT_EQ(outcome(DecisionRule::EnNumber, -1.000001, 100, uOfOne), Outcome::Beyond);
  EXPECT_DIGITS(decided(DecisionRule::EnNumber, -1.5, 100, uOfOne).en.value(), -1.5, 12);
}

TEST(Decide, AZeroReferenceWithoutUncertaintyIsWithinByEveryRule) {
  for (const DecisionRule rule : allRules) {
    EXPECT_EQ(outcome(rule, 0, 5, 0), Outcome::Within) << decisionRuleName(rule);
    EXPECT_EQ(outcome(rule, 0, 0, 0), Outcome::Within) << decisionRuleName(rule);
    EXPECT_EQ(decided(rule, 0, 5, 0).expanded, 0);
  }
}

TEST(Decide, WithoutUncertaintyTheLimitAloneDecides) {
  for (const DecisionRule rule : allRules) {
    if (rule == DecisionRule::EnNumber) continue;
    EXPECT_EQ(outcome(rule, -5, 5, 0), Outcome::Within) << decisionRuleName(rule);
    EXPECT_EQ(outcome(rule, 5.0000001, 5, 0), Outcome::Beyond) << decisionRuleName(rule);
  }
  const Decided en = decided(DecisionRule::EnNumber, 0.1, 5, 0);
  EXPECT_EQ(en.outcome, Outcome::CannotTell);
  EXPECT_FALSE(en.en);
}

TEST(Decide, AnUnknownUncertaintyLeavesOnlySimpleAcceptance) {
  for (const std::optional<double> u :
       {std::optional<double>(), std::optional<double>(infinity), std::optional<double>(nan)}) {
    for (const DecisionRule rule : allRules) {
      const bool simple = rule == DecisionRule::Simple;
      EXPECT_EQ(outcome(rule, 0, 5, u), simple ? Outcome::Within : Outcome::CannotTell);
      EXPECT_EQ(outcome(rule, 9, 5, u), simple ? Outcome::Beyond : Outcome::CannotTell);
      EXPECT_FALSE(decided(rule, 0, 5, u).expanded);
    }
  }
}

TEST(Decide, ADeviationThatIsNoFiniteNumberIsBeyond) {
  for (const DecisionRule rule : allRules) {
    for (const double deviation : {infinity, -infinity, nan}) {
      EXPECT_EQ(outcome(rule, deviation, 5, 1), Outcome::Beyond);
      EXPECT_EQ(outcome(rule, deviation, 5, 0), Outcome::Beyond);
      EXPECT_EQ(outcome(rule, deviation, 5, {}), Outcome::Beyond);
      EXPECT_EQ(outcome(rule, deviation, infinity, 1), Outcome::Beyond);
    }
  }
}

TEST(Decide, ShowsOnlyTheNumbersOfItsRule) {
  for (const DecisionRule rule : allRules) {
    const Decided result = decided(rule, 1, 5, 0.5);
    EXPECT_TRUE(result.expanded);
    EXPECT_EQ(result.guardBand.has_value(), rule == DecisionRule::Guarded);
    EXPECT_EQ(result.probability.has_value(), rule == DecisionRule::Conformity);
    EXPECT_EQ(result.en.has_value(), rule == DecisionRule::EnNumber);
  }
}

/// Deviations, limits and uncertainties of all proportions.
template <class Check>
void forAnyDeviation(Check check) {
  std::mt19937_64 random(106);
  std::uniform_real_distribution<double> deviation(-3, 3), limit(0, 2), exponent(-3, 1);
  for (int round = 0; round < 20'000; ++round) {
    check(deviation(random), limit(random), std::pow(10, exponent(random)));
  }
}

TEST(Decide, IsSymmetricInTheSignOfTheDeviation) {
  forAnyDeviation([](double deviation, double limit, double u) {
    for (const DecisionRule rule : allRules) {
      EXPECT_EQ(outcome(rule, deviation, limit, u), outcome(rule, -deviation, limit, u));
    }
  });
}

TEST(Decide, AGuardBandOfNothingIsSimpleAcceptance) {
  forAnyDeviation([](double deviation, double limit, double u) {
    const Decision guarded = {.rule = DecisionRule::Guarded, .guardFactor = 0};
    EXPECT_EQ(decide(guarded, deviation, limit, u, {}).outcome,
              outcome(DecisionRule::Simple, deviation, limit, u));
  });
}

TEST(Decide, AWiderGuardBandOnlyTakesDecisionsAway) {
  forAnyDeviation([](double deviation, double limit, double u) {
    const auto by = [&](double factor) {
      const Decision guarded = {.rule = DecisionRule::Guarded, .guardFactor = factor};
      return decide(guarded, deviation, limit, u, {}).outcome;
    };
    if (by(1) != Outcome::CannotTell) {
      EXPECT_EQ(by(0.5), by(1));
      EXPECT_EQ(by(0), by(1));
    }
  });
}

TEST(Decide, WhatPassesAGuardBandOfUConforms) {
  // Derived: at |deviation| = limit - 2u the nearer limit leaves 2.275 % beyond it, the farther one,
  // 2 limit - 2u away, as much at limit = U and next to nothing at 2 U; SciPy 1.10.1: norm.cdf(2) =
  // 0.9772498680518208. A coverage of 0.9545 is k = 2.0000024, a little more.
  std::size_t passed = 0;
  forAnyDeviation([&](double deviation, double limit, double u) {
    if (outcome(DecisionRule::Guarded, deviation, limit, u) != Outcome::Within) return;
    ++passed;
    const double probability = conformityProbability(deviation, limit, u);
    EXPECT_GE(probability, 0.9544997);
    if (limit >= 4 * u) {
      EXPECT_GE(probability, 0.9772498);
    }
  });
  EXPECT_GT(passed, 1000u);
}

TEST(Decide, GuardBandsKeepTheRiskThatTheyArePublishedWith) {
  // ILAC-G8:09/2019, table 1 (from memory): guard band in U, probability of false acceptance at its edge of
  // less than 1 ppm, 0.16 %, 5 % (as ISO 14253-1), 2.5 %.
  struct {
    double factor, risk;
  } const published[] = {{3, 1e-6}, {1.5, 0.0016}, {0.83, 0.05}, {1, 0.025}};
  for (const auto& [factor, risk] : published) {
    const double limit = 100, u = 1;
    const Decision guarded = {.rule = DecisionRule::Guarded, .guardFactor = factor};
    const double edge = limit - decide(guarded, 0, limit, u, {}).guardBand.value();
    EXPECT_EQ(decide(guarded, edge, limit, u, {}).outcome, Outcome::Within);
    const double falseAcceptance = 1 - conformityProbability(edge, limit, u);
    EXPECT_LT(falseAcceptance, risk) << factor;
    if (factor < 3) {
      EXPECT_GT(falseAcceptance, 0.8 * risk) << factor;
    }
  }
}

TEST(CheckDecision, TakesTheUsualNumbers) {
  EXPECT_TRUE(checkDecision({}));
  EXPECT_TRUE(checkDecision({.coverage = 0.99, .guardFactor = 0, .conformity = 0.8, .greatestShare = 1}));
}

void expectRefused(const Decision& decision, const std::string& named) {
  const auto checked = checkDecision(decision);
  ASSERT_FALSE(checked) << named;
  EXPECT_NE(checked.error().what.find(named), std::string::npos) << checked.error().text();
  EXPECT_FALSE(checked.error().where.empty());
  EXPECT_FALSE(checked.error().mend.empty());
}

TEST(CheckDecision, NamesTheNumberThatIsOutOfRange) {
  for (const double bad : {0.0, 1.0, -0.1, 95.45, nan, infinity}) {
    expectRefused({.coverage = bad}, "coverage probability");
    if (bad != 1) expectRefused({.greatestShare = bad}, "greatest share");
  }
  for (const double bad : {-0.1, nan, infinity}) expectRefused({.guardFactor = bad}, "guard factor");
  for (const double bad : {0.5, 0.05, 1.0, 95.0, nan}) {
    expectRefused({.conformity = bad}, "probability of conformity");
  }
}

TEST(DecisionRules, HaveKeysThatAreReadBackAndNames) {
  std::set<std::string_view> keys, names;
  for (const DecisionRule rule : allRules) {
    EXPECT_EQ(decisionRuleFromKey(decisionRuleKey(rule)), rule);
    keys.insert(decisionRuleKey(rule));
    names.insert(decisionRuleName(rule));
  }
  EXPECT_EQ(keys.size(), decisionRuleCount);
  EXPECT_EQ(names.size(), decisionRuleCount);
  EXPECT_EQ(decisionRuleKey(DecisionRule::SharedRisk), "shared_risk");
  EXPECT_EQ(decisionRuleName(DecisionRule::Guarded), "guarded acceptance");
  EXPECT_FALSE(decisionRuleFromKey("Simple"));
}

}  // namespace
