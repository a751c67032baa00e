// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/budget.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <numeric>

#include "core/circuit/indication.h"
#include "core/document/edits.h"
#include "tests/support/complex_bridge.h"
#include "tests/support/digits.h"
#include "tests/support/effects.h"
#include "tests/support/sample_channel.h"

using namespace core;
using Kind = InputKind;

namespace {

struct Computed {
  core::Setup setup;
  SetupPrediction prediction;
  Budget budget;
};

Computed computed(const Setup& setup) {
  Computed all{setup, predict(setup), {}};
  all.budget = budgetOf(setup, all.prediction);
  return all;
}

std::size_t indexOf(const Budget& budget, Input input) {
  for (std::size_t k = 0; k < budget.inputs.size(); ++k)
    if (budget.inputs[k].input == input) return k;
  ADD_FAILURE() << "no such input";
  return 0;
}

double sensitivity(const Computed& all, Scope scope, std::size_t step, Input input) {
  return all.budget.sensitivities(scope, step)[indexOf(all.budget, input)];
}

const StepUncertainty& at(const Computed& all, Scope scope, std::size_t step) {
  const auto& result = all.budget.of(scope).steps[step];
  EXPECT_TRUE(result) << (result ? "" : result.error().text());
  return *result;
}

Setup stated(Setup setup, Input input, const Uncertainty& uncertainty) {
  setup.uncertainties.stated[input] = uncertainty;
  return setup;
}

/// A quarter bridge of 350 ohm without leads, one shunt over the gauge, nothing uncertain but what is stated.
Setup certain(double shunt_ohm = 87150) {
  core::Setup setup = test::withShuntOnArm(test::equalArms(BridgeType::QuarterThreeWire, 350.0_ohm),
                                           Resistance(shunt_ohm), 1);
  for (const Input input : inputListOf(setup)) setup.uncertainties.stated[input] = {};
  return setup;
}

Uncertainty standard(double amount, bool relative = false) {
  return {.statement = Statement::Standard, .amount = amount, .relative = relative};
}

/// d value / d input by an independent way, in both scopes.
struct Expected {
  double chain = 0, strain = 0;
  double chainPerOutput = 0, strainPerOutput = 0;  ///< d value / d output
};

Expected byComplexStep(const Computed& all, std::size_t step, Input input) {
  const Prediction& prediction = *all.prediction.steps[step];
  const auto& closed = all.setup.sequence[step].closed;
  const test::ComplexBridge zero(all.setup, {}, 0), shunted(all.setup, closed, 0),
      strained(all.setup, {}, prediction.simulated);
  const auto indication =
      indicationOf(all.setup.bridge, all.setup.instrument, Output(shunted.output()), Output(zero.output()));
  const double now = shunted.derivative(input);
  const double perOutput = simulatedInUnit(all.setup.bridge, 1) / strained.slope();
  return {indication->perOutput * now + indication->perZero * zero.derivative(input),
          perOutput * (now - strained.derivative(input)), indication->perOutput, perOutput};
}

class EveryTemplate : public testing::TestWithParam<int> {
 protected:
  BridgeType type() const { return static_cast<BridgeType>(GetParam()); }
};

}  // namespace

TEST_P(EveryTemplate, SensitivitiesAreThoseOfTheComplexStep) {
  for (const unsigned variant : {0u, 5u, 7u, 10u, 13u, 14u}) {
    const Computed all = computed(test::withEffects(type(), variant));
    for (std::size_t step = 1; step < all.setup.sequence.size(); ++step) {
      ASSERT_TRUE(all.prediction.steps[step]) << all.prediction.steps[step].error().text();
      for (const BudgetInput& entry : all.budget.inputs) {
        if (test::isInstrumentError(entry.input.kind)) continue;
        const Expected expected = byComplexStep(all, step, entry.input);
        // What is compared is the effect of a change of the input by its own size. It is a difference of two
        // derivatives of the output, each some tenths of a V/V and right to a few roundings of potentials:
        // 1e-16 each, some hundred of them. Of a shunt's effect of 1e-3 V/V that is 2e-10.
        const double size = entry.value == 0 ? 1 : std::abs(entry.value);
        const double rounding = 2e-13;
        EXPECT_NEAR(sensitivity(all, Scope::Chain, step, entry.input) * size, expected.chain * size,
                    rounding * std::abs(expected.chainPerOutput))
            << inputName(all.setup, entry.input) << ", variant " << variant << ", step " << step;
        EXPECT_NEAR(sensitivity(all, Scope::Strain, step, entry.input) * size, expected.strain * size,
                    rounding * std::abs(expected.strainPerOutput))
            << inputName(all.setup, entry.input) << ", variant " << variant << ", step " << step;
      }
    }
  }
}

TEST_P(EveryTemplate, SensitivitiesAreThoseOfDifferencesOfWholePredictions) {
  // Eighth-order central differences (weights 4/5, -1/5, 4/105, -1/280; B. Fornberg, Math. Comp. 51 (1988)
  // 699, table 1, from memory) over the program's own predictions: the whole way from a number in the
  // document to the reading.
  constexpr std::array<double, 4> weights = {4.0 / 5, -1.0 / 5, 4.0 / 105, -1.0 / 280};
  for (const unsigned variant : {1u, 6u, 11u, 14u}) {
    const Computed all = computed(test::withEffects(type(), variant));
    for (const BudgetInput& entry : all.budget.inputs) {
      if (test::isInstrumentError(entry.input.kind)) continue;
      const double by = entry.value == 0 ? 1e-2 : 1e-2 * std::abs(entry.value);
      std::vector<Expected> expected(all.setup.sequence.size());
      for (std::size_t k = 0; k < weights.size(); ++k)
        for (const double sign : {-1.0, 1.0}) {
          const double shifted = entry.value + sign * static_cast<double>(k + 1) * by;
          const auto moved = predict(test::withInputValue(all.setup, entry.input, shifted));
          for (std::size_t step = 0; step < expected.size(); ++step) {
            ASSERT_TRUE(moved.steps[step]);
            expected[step].chain += sign * weights[k] * moved.steps[step]->reading.base() / by;
            expected[step].strain +=
                sign * weights[k] * simulatedInUnit(all.setup.bridge, moved.steps[step]->simulated) / by;
          }
        }
      for (std::size_t step = 1; step < expected.size(); ++step) {
        // Of an output each prediction leaves some 1e-15 V/V of rounding, and Newton's method up to 2e-15 of
        // those of the simulated value; eight of them over the step. The series' own error, 1e-2 to the
        // eighth power, is far below.
        const double rounding = 1e-14 / std::abs(all.prediction.steps[step]->output.base()) / by;
        const double chain = rounding * std::abs(at(all, Scope::Chain, step).value);
        const double strain = rounding * std::abs(at(all, Scope::Strain, step).value);
        // A linearising instrument takes Poisson's ratio as set, which is exact: the set-up has one number
        // for both.
        if (entry.input.kind != Kind::PoissonRatio) {
          EXPECT_NEAR(sensitivity(all, Scope::Chain, step, entry.input), expected[step].chain, chain)
              << inputName(all.setup, entry.input) << ", variant " << variant << ", step " << step;
        }
        EXPECT_NEAR(sensitivity(all, Scope::Strain, step, entry.input), expected[step].strain, strain)
            << inputName(all.setup, entry.input) << ", variant " << variant << ", step " << step;
      }
    }
  }
}

INSTANTIATE_TEST_SUITE_P(Budget, EveryTemplate, testing::Range(0, static_cast<int>(bridgeTypeCount)),
                         [](const auto& type) {
                           return std::string(templateOf(static_cast<BridgeType>(type.param)).key);
                         });

TEST(Budget, ErrorsOfTheInstrumentMoveTheReadingAsTheyAre) {
  const Computed all = computed(certain());
  const double reading = all.prediction.steps[0]->reading.base();

  EXPECT_DIGITS(sensitivity(all, Scope::Chain, 0, {Kind::Gain, 0}), reading, 14);  // derived: reading x gain
  EXPECT_DIGITS(sensitivity(all, Scope::Chain, 0, {Kind::ZeroDrift, 0}), 4e6 / 2, 14);  // derived: 4 / (F N)
  EXPECT_DIGITS(sensitivity(all, Scope::Chain, 0, {Kind::Rounding, 1}), 1, 14);
  EXPECT_DIGITS(sensitivity(all, Scope::Chain, 0, {Kind::Rounding, 0}), -1, 14);
}

TEST(Budget, ExcitationCancelsInARatioAndNotInAVoltage) {
  core::Setup setup = certain();
  setup.instrument.excitation = 5.0_V;
  EXPECT_EQ(sensitivity(computed(setup), Scope::Chain, 0, {Kind::Excitation, 0}), 0);

  setup.instrument.ratiometric = false;
  const Computed fixed = computed(setup);
  // Derived: the reading is proportional to the excitation.
  EXPECT_DIGITS(sensitivity(fixed, Scope::Chain, 0, {Kind::Excitation, 0}),
                fixed.prediction.steps[0]->reading.base() / 5, 14);

  setup.instrument.ratiometric = true;
  setup.instrument.unit = ReadingUnit::Millivolt;
  const Computed volts = computed(setup);
  EXPECT_DIGITS(sensitivity(volts, Scope::Chain, 0, {Kind::Excitation, 0}),
                volts.prediction.steps[0]->reading.base() / 5, 14);
}

TEST(Budget, ChainKnowsNothingOfTheGaugeFactorAndStrainDoes) {
  const Computed all = computed(stated(certain(), {Kind::GaugeFactor, 0}, standard(0.01, true)));

  EXPECT_EQ(at(all, Scope::Chain, 0).standard, 0);
  // Derived: dR/R = factor x strain, so that one per cent of the factor is one per cent of the strain.
  EXPECT_DIGITS(at(all, Scope::Strain, 0).standard, 0.01 * std::abs(at(all, Scope::Strain, 0).value), 12);
}

TEST(Budget, CombinesIndependentInputsByTheRootOfTheSumOfSquares) {
  // Derived: R/(F (R + Rs)) has the relative sensitivities 2 - R/(R+Rs) to R (the nominal stays), -Rs/(R+Rs)
  // to Rs and -1 to F.
  core::Setup setup = certain();
  setup = stated(setup, {Kind::Arm, 0}, standard(0.003, true));
  setup = stated(setup, {Kind::Shunt, 0}, standard(0.0001, true));
  setup = stated(setup, {Kind::GaugeFactor, 0}, standard(0.005, true));
  const Computed all = computed(setup);

  const double y = 350.0 / (350 + 87150);
  EXPECT_DIGITS(at(all, Scope::Strain, 0).standard / std::abs(at(all, Scope::Strain, 0).value),
                std::hypot((2 - y) * 0.003, (1 - y) * 0.0001, 0.005), 11);
}

TEST(Budget, InputsOfOneGroupAddUpOrCancel) {
  // Derived: a full bridge whose four arms err alike gives the same output, so nothing is left; and two
  // shunts closed at once, from one decade box, err by the sum of their contributions.
  core::Setup alike =
      test::withShuntOnArm(test::equalArms(BridgeType::FullBending, 350.0_ohm), 87150.0_ohm, 1);
  for (const Input input : inputListOf(alike)) alike.uncertainties.stated[input] = {};
  core::Setup apart = alike;
  Uncertainty lot = standard(0.001, true);
  for (std::size_t arm = 0; arm < 4; ++arm) apart = stated(apart, {Kind::Arm, arm}, lot);
  lot.group = "lot";
  for (std::size_t arm = 0; arm < 4; ++arm) alike = stated(alike, {Kind::Arm, arm}, lot);
  // With all arms larger by one part, arm over shunt is too: the output follows by 1 - y/2 at most.
  const double reading = std::abs(computed(alike).prediction.steps[0]->reading.base());
  EXPECT_NEAR(at(computed(alike), Scope::Chain, 0).standard, 0.001 * reading, 0.001 * 0.01 * reading);
  EXPECT_GT(at(computed(apart), Scope::Chain, 0).standard, 0);

  core::Setup box = certain();
  box = test::withShuntOnArm(box, 50000.0_ohm, 1);
  box.uncertainties.stated[{Kind::Shunt, 1}] = box.uncertainties.stated[{Kind::ShuntContact, 1}] = {};
  box.sequence.push_back({"both", {0, 1}});
  Uncertainty decade = standard(0.001, true);
  decade.group = "decade box";
  for (const std::size_t shunt : {0, 1}) box = stated(box, {Kind::Shunt, shunt}, decade);
  const Computed all = computed(box);
  const auto lines = budgetLines(all.setup, all.budget, Scope::Chain, 2);
  double sum = 0;
  for (const BudgetLine& line : lines) sum += line.contribution;
  EXPECT_DIGITS(at(all, Scope::Chain, 2).standard, std::abs(sum), 12);
}

TEST(Budget, ACoefficientOfAGroupStandsBetweenIndependentAndTogether) {
  core::Setup setup = certain();
  Uncertainty lot = standard(0.001, true);
  lot.group = "lot";
  setup = stated(setup, {Kind::Arm, 0}, lot);
  setup = stated(setup, {Kind::Arm, 1}, lot);
  setup.uncertainties.groups["lot"] = 0.25;
  const Computed all = computed(setup);
  const auto lines = budgetLines(all.setup, all.budget, Scope::Chain, 0);
  const double a = lines[0].contribution, b = lines[1].contribution;
  // JCGM 100:2008, equation (16).
  EXPECT_DIGITS(at(all, Scope::Chain, 0).standard, std::sqrt(a * a + b * b + 2 * 0.25 * a * b), 12);
}

TEST(Budget, ShuntsOfOnePartErrTogetherUnlessAnotherGroupIsStated) {
  core::Setup setup = test::withShuntOnArm(certain(), 87150.0_ohm, 2);
  setup.uncertainties.stated[{Kind::ShuntContact, 1}] = {};
  for (const std::size_t shunt : {0, 1}) setup = stated(setup, {Kind::Shunt, shunt}, standard(1e-4, true));
  const auto covariance = [](const Computed& all) { return all.budget.of(Scope::Chain).covariance[1]; };
  setup.shunts[0].part.id = "S-104";
  setup.shunts[1].part.id = "S-105";
  EXPECT_EQ(covariance(computed(setup)), 0);

  // JCGM 100:2008, F.1.2.3 and equation (F.2): what depends on one quantity has the covariance c1 u c2 u.
  setup.shunts[1].part.id = "S-104";
  const Computed one = computed(setup);
  const double falling =
      budgetLines(setup, one.budget, Scope::Chain, 0)[indexOf(one.budget, {Kind::Shunt, 0})].contribution;
  const double rising =
      budgetLines(setup, one.budget, Scope::Chain, 1)[indexOf(one.budget, {Kind::Shunt, 1})].contribution;
  EXPECT_LT(falling * rising, 0) << "from one arm to its neighbour the change turns about";
  EXPECT_DIGITS(covariance(one), falling * rising, 12);
  EXPECT_EQ(one.budget.inputs[indexOf(one.budget, {Kind::Shunt, 1})].uncertainty.group, "S-104");

  setup.uncertainties.stated[{Kind::Shunt, 1}].group = "by itself";
  EXPECT_EQ(covariance(computed(setup)), 0);
}

TEST(Budget, SharesAddUpToOneWithCorrelationToo) {
  const Computed all = computed(sample::nineStepChannel().setup);  // its leads are one cable
  for (const Scope scope : {Scope::Chain, Scope::Strain})
    for (const std::size_t step : {1, 5}) {
      const auto lines = budgetLines(all.setup, all.budget, scope, step);
      const double sum = std::accumulate(lines.begin(), lines.end(), 0.0,
                                         [](double s, const BudgetLine& line) { return s + line.share; });
      EXPECT_DIGITS(sum, 1, 12);
    }
}

TEST(Budget, TheCovarianceOfTheStepsTellsWhatTheyShare) {
  const Computed all = computed(sample::nineStepChannel().setup);
  const auto& chain = all.budget.of(Scope::Chain);
  const std::size_t n = chain.steps.size();
  for (std::size_t k = 0; k < n; ++k)
    EXPECT_DIGITS(std::sqrt(chain.covariance[k * n + k]), chain.steps[k]->standard, 12);
  const auto correlation = [&](std::size_t a, std::size_t b) {
    return chain.covariance[a * n + b] / (chain.steps[a]->standard * chain.steps[b]->standard);
  };
  // Three resistors over one gauge share its resistance, their main uncertainty.
  EXPECT_GT(correlation(5, 6), 0.9);
  EXPECT_LT(correlation(5, 6), 1);
  for (std::size_t a = 0; a < n; ++a)
    for (std::size_t b = 0; b < n; ++b) EXPECT_EQ(chain.covariance[a * n + b], chain.covariance[b * n + a]);
}

TEST(Budget, RoundingOfAStepIsItsOwnAndThatOfTheZeroIsShared) {
  core::Setup setup = certain();
  setup.sequence.push_back(setup.sequence[0]);
  for (const std::size_t moment : {0, 1})
    setup = stated(setup, {Kind::Rounding, moment}, {.amount = 0.5});  // half a digit either way
  const Computed all = computed(setup);
  const auto& chain = all.budget.of(Scope::Chain);
  // JCGM 100:2008, F.2.2.1: a digit q is rectangular with half width q/2; twice, for the zero and the step.
  const double variance = 0.5 * 0.5 / 3;
  EXPECT_DIGITS(chain.covariance[0], 2 * variance, 12);
  EXPECT_DIGITS(chain.covariance[1], variance, 12);
}

TEST(Budget, AZeroStepHasOnlyWhatIsNewSinceTheFirst) {
  const Computed all = computed(sample::nineStepChannel().setup);
  EXPECT_EQ(at(all, Scope::Chain, 0).standard, 0);
  // The assumed drift of 0.5 uV/V, rectangular, at 4e6 / (F N) um/m per V/V.
  EXPECT_DIGITS(at(all, Scope::Chain, 4).standard, 0.5e-6 / std::sqrt(3.0) * 4e6 / 2, 12);
}

TEST(Budget, FewDegreesOfFreedomWidenTheInterval) {
  core::Setup setup = certain();
  Uncertainty few = standard(0.001, true);
  few.degreesOfFreedom = 3;
  setup = stated(setup, {Kind::Shunt, 0}, few);
  setup.decision.coverage = 0.95;
  const Computed all = computed(setup);
  ASSERT_TRUE(at(all, Scope::Chain, 0).dof);
  EXPECT_DIGITS(*at(all, Scope::Chain, 0).dof, 3, 12);
  // JCGM 100:2008, table G.2: t at 95 % and 3 degrees of freedom is 3.18.
  EXPECT_NEAR(at(all, Scope::Chain, 0).coverageFactor, 3.18, 0.005);
}

TEST(Budget, DegreesOfFreedomAreNotUsedWithCorrelatedInputs) {
  core::Setup setup = certain();
  Uncertainty lot = standard(0.001, true);
  lot.group = "lot";
  lot.degreesOfFreedom = 3;
  setup = stated(setup, {Kind::Arm, 0}, lot);
  setup = stated(setup, {Kind::Shunt, 0}, lot);
  setup.decision.coverage = 0.95;
  const Computed all = computed(setup);
  EXPECT_FALSE(at(all, Scope::Chain, 0).dofUsable);
  EXPECT_FALSE(at(all, Scope::Chain, 0).dof);
  EXPECT_NEAR(at(all, Scope::Chain, 0).coverageFactor, 1.96, 0.005);  // table G.2, infinite
}

TEST(Budget, AnInputWithoutAStatementIsMarkedAsAssumedWithItsReason) {
  const Computed all = computed(sample::nineStepChannel().setup);
  for (const BudgetInput& entry : all.budget.inputs) {
    EXPECT_TRUE(entry.assumed);
    EXPECT_FALSE(assumptionFor(all.setup, entry.input).reason.empty()) << inputName(all.setup, entry.input);
  }
  const Computed own = computed(stated(all.setup, {Kind::Gain, 0}, standard(0.001)));
  EXPECT_FALSE(own.budget.inputs[indexOf(own.budget, {Kind::Gain, 0})].assumed);
}

struct BadStatement {
  std::string name;
  Uncertainty uncertainty;
  std::string says;

  friend void PrintTo(const BadStatement& bad, std::ostream* out) { *out << bad.name; }
};

class RefusedStatement : public testing::TestWithParam<BadStatement> {};

TEST_P(RefusedStatement, FailsTheStepsThatDependOnItByNameAndNoOthers) {
  core::Setup setup = certain();
  setup = test::withShuntOnArm(setup, 50000.0_ohm, 1);  // a second step that does not use the first shunt
  setup = stated(setup, {Kind::Shunt, 0}, GetParam().uncertainty);
  const Computed all = computed(setup);
  for (const Scope scope : {Scope::Chain, Scope::Strain}) {
    const auto& steps = all.budget.of(scope).steps;
    ASSERT_FALSE(steps[0]);
    EXPECT_EQ(steps[0].error().where, "shunt R1");
    EXPECT_NE(steps[0].error().what.find(GetParam().says), std::string::npos) << steps[0].error().what;
    EXPECT_FALSE(steps[0].error().mend.empty());
    EXPECT_TRUE(steps[1]) << (steps[1] ? "" : steps[1].error().text());
  }
}

INSTANTIATE_TEST_SUITE_P(
    Budget, RefusedStatement,
    testing::Values(BadStatement{"Negative", standard(-0.1), "not negative"},
                    BadStatement{"NotANumber", standard(std::numeric_limits<double>::quiet_NaN()), "finite"},
                    BadStatement{"Infinite", standard(std::numeric_limits<double>::infinity()), "finite"},
                    BadStatement{"NoDegreesOfFreedom",
                                 {.statement = Statement::Standard, .amount = 0.1, .degreesOfFreedom = 0.0},
                                 "degrees of freedom"}),
    [](const auto& bad) { return bad.param.name; });

TEST(Budget, AGroupWhoseCorrelationCannotExistIsNamed) {
  core::Setup setup = certain();
  Uncertainty lot = standard(0.1);
  lot.group = "lot 7";
  for (const std::size_t arm : {0, 1, 2}) setup = stated(setup, {Kind::Arm, arm}, lot);
  // Derived: three equally correlated inputs have the eigenvalues 1 - r and 1 + 2 r, so that r >= -1/2.
  setup.uncertainties.groups["lot 7"] = -0.5;
  EXPECT_TRUE(computed(setup).budget.of(Scope::Chain).steps[0]);
  setup.uncertainties.groups["lot 7"] = -0.51;
  const auto step = computed(setup).budget.of(Scope::Chain).steps[0];
  ASSERT_FALSE(step);
  EXPECT_EQ(step.error().where, "group lot 7");
  EXPECT_NE(step.error().mend.find("-0.5"), std::string::npos) << step.error().mend;
}

TEST(Budget, ALeadOfZeroOhmTakesNoUncertaintyInOhm) {
  const core::Setup setup = stated(certain(), {Kind::Lead, 0}, standard(0.1));
  const auto step = computed(setup).budget.of(Scope::Chain).steps[0];
  ASSERT_FALSE(step);
  EXPECT_EQ(step.error().where, "lead P+");
}

TEST(Budget, AStepThatLosesItsSourceFailsAloneAndTheRestIsShown) {
  core::Setup setup = certain();
  // The sense leads are not wired, so that a shunt to one of them has nowhere to go.
  setup = test::withShunt(setup, 1000.0_ohm, Node::SensePlus, Node::SMinus);
  const Computed all = computed(setup);
  EXPECT_TRUE(all.budget.of(Scope::Chain).steps[0]);
  EXPECT_FALSE(all.budget.of(Scope::Chain).steps[1]);
}
