// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/uncertainty/monte_carlo.h"

#include <gtest/gtest.h>

#include <atomic>
#include <cmath>
#include <numeric>
#include <thread>

#include "tests/support/allocations.h"

namespace monte_carlo_test {

using namespace core;

constexpr std::size_t blockTrials = 10'240;

Uncertainty standard(double u) { return {.statement = Statement::Standard, .amount = u}; }
Uncertainty within(double halfWidth) {
  return {.amount = halfWidth, .distribution = Distribution::Rectangular};
}

/// Normal, rectangular and correlated inputs.
TrialPlan plan() {
  TrialPlan plan;
  plan.inputs = {{1, standard(0.1)}, {2, within(0.3)}, {3, standard(0.2)}, {-1, standard(0.3)}};
  plan.pairs = {{0, 2, 0.5}};
  plan.seed = 42;
  plan.threads = 2;
  return plan;
}

/// A sum, a product and a sum of another scale.
TrialModel model() {
  return [](const double* x, double* y) {
    for (std::size_t lane = 0; lane < trialLanes; ++lane) {
      const auto input = [&](std::size_t k) { return x[k * trialLanes + lane]; };
      y[lane] = input(0) + input(1) + input(2) + input(3);
      y[trialLanes + lane] = input(0) * input(1);
      y[2 * trialLanes + lane] = 1e-6 * (input(1) - input(3));
    }
  };
}
constexpr std::size_t outputs = 3;

/// The one input itself.
TrialModel identity() {
  return [](const double* x, double* y) { std::copy_n(x, trialLanes, y); };
}
TrialPlan oneInput(Uncertainty uncertainty = standard(1)) {
  TrialPlan plan;
  plan.inputs = {{10, uncertainty}};
  plan.threads = 2;
  return plan;
}

TrialResult resultOf(const TrialPlan& plan) {
  auto result = runTrials(plan, model, outputs);
  if (!result) throw std::runtime_error(result.error().text());
  return *std::move(result);
}

/// Values of the one output of `identity`, trial by trial.
std::vector<double> valuesOf(TrialPlan plan, std::size_t trials) {
  std::vector<double> values;
  plan.trials = trials;
  plan.threads = 1;
  const auto noting = [&values] {
    return [&values](const double* x, double* y) {
      values.insert(values.end(), x, x + trialLanes);
      std::copy_n(x, trialLanes, y);
    };
  };
  EXPECT_TRUE(runTrials(plan, noting, 1));
  return values;
}

double meanOf(const std::vector<double>& values) {
  return std::accumulate(values.begin(), values.end(), 0.0) / static_cast<double>(values.size());
}

double deviationOf(const std::vector<double>& values) {
  const double mean = meanOf(values);
  double squares = 0;
  for (double value : values) squares += (value - mean) * (value - mean);
  return std::sqrt(squares / static_cast<double>(values.size() - 1));
}

/// The procedure of JCGM 101:2008, 7.9.4, step by step for one output and p = 0.95: how many trials it makes.
std::size_t trialsByTheBook(const TrialPlan& plan) {
  const std::vector<double> values = valuesOf(plan, 190 * blockTrials);
  std::vector<double> y, u, low, high, all;
  for (std::size_t h = 1; h <= 190; ++h) {
    const auto begin = values.begin() + static_cast<std::ptrdiff_t>((h - 1) * blockTrials);
    std::vector<double> block(begin, begin + blockTrials);
    all.insert(all.end(), block.begin(), block.end());
    y.push_back(meanOf(block));
    u.push_back(deviationOf(block));
    std::sort(block.begin(), block.end());
    low.push_back(block[256 - 1]);  // q = 9728, r = (10240 - 9728) / 2
    high.push_back(block[256 + 9728 - 1]);
    if (h == 1) continue;
    double greatest = 0;
    for (const auto& figure : {y, u, low, high})
      greatest = std::max(greatest, 2 * deviationOf(figure) / std::sqrt(static_cast<double>(h)));
    if (greatest <= numericalTolerance(deviationOf(all), plan.significantDigits)) return h * blockTrials;
  }
  return 0;
}

std::size_t allocationsOf(const TrialPlan& plan) {
  const std::size_t before = test::allocations();
  EXPECT_TRUE(runTrials(plan, model, outputs));
  return test::allocations() - before;
}

TEST(RunTrials, GiveTheSameBitsOnAnyNumberOfThreads) {
  for (const bool adaptive : {false, true}) {
    TrialPlan one = plan();
    if (!adaptive) one.trials = 12 * blockTrials + 777;  // the last block is short
    one.threads = 1;
    const TrialResult expected = resultOf(one);
    EXPECT_GT(expected.trials, 5 * blockTrials);  // fewer, and threads could not overshoot
    for (const unsigned threads : {2u, 3u, 5u, 8u, 0u}) {
      one.threads = threads;
      EXPECT_EQ(resultOf(one), expected) << threads << " threads";
    }
  }
}

TEST(RunTrials, GiveTheSameWhetherTheirNumberIsFoundOrAsked) {
  TrialPlan asked = plan();
  const TrialResult found = resultOf(asked);
  ASSERT_TRUE(found.settled);
  asked.trials = found.trials;
  EXPECT_EQ(resultOf(asked), found);
}

TEST(RunTrials, StopAsTheSupplementSays) {
  for (const auto& [uncertainty, digits] :
       {std::pair(standard(0.98), 2), std::pair(standard(1.7), 2), std::pair(within(17), 2)}) {
    TrialPlan plan = oneInput(uncertainty);
    plan.significantDigits = digits;
    const auto result = runTrials(plan, identity, 1);
    ASSERT_TRUE(result);
    EXPECT_TRUE(result->settled);
    EXPECT_EQ(result->trials, trialsByTheBook(plan));
  }
}

TEST(RunTrials, KnowTheirFiguresToTheToleranceWhenSettled) {
  const auto result = runTrials(oneInput(standard(0.98)), identity, 1);
  ASSERT_TRUE(result);
  ASSERT_TRUE(result->settled);
  // Derived: delta is 0.005 and two standard deviations of each figure are less; three of them are allowed.
  const TrialOutput& output = result->outputs[0];
  EXPECT_NEAR(output.mean, 10, 0.0075);
  EXPECT_NEAR(output.standardUncertainty, 0.98, 0.0075);
  EXPECT_NEAR(output.symmetric.low, 10 - 1.96 * 0.98, 0.0075);
  EXPECT_NEAR(output.symmetric.high, 10 + 1.96 * 0.98, 0.0075);
}

TEST(RunTrials, StopOnTheSecondBlockAtTheEarliest) {
  // One digit of u = 0.8: delta = 0.05, known after two blocks: 2 x 2.67 x 0.8 / sqrt(20480) = 0.03.
  TrialPlan plan = oneInput(standard(0.8));
  plan.significantDigits = 1;
  const auto result = runTrials(plan, identity, 1);
  ASSERT_TRUE(result);
  EXPECT_EQ(result->trials, 2 * blockTrials);
}

TEST(RunTrials, WaitForTheLastOutputToSettle) {
  // 0.98 needs about a hundred blocks: delta is 0.005, and 2 x 2.67 x 0.98 / sqrt(n) comes below it at 107
  // (2.67 from sqrt(p (1 - p)) / density at p = 0.025). 1.05 needs only two, for its delta is ten times as
  // large.
  const auto both = [] { return [](const double* x, double* y) { std::copy_n(x, 2 * trialLanes, y); }; };
  const auto alone = runTrials(oneInput(standard(1.05)), identity, 1);
  ASSERT_TRUE(alone);
  EXPECT_LE(alone->trials, 8 * blockTrials);
  for (const auto& [first, second] : {std::pair(1.05, 0.98), std::pair(0.98, 1.05)}) {
    TrialPlan plan;
    plan.inputs = {{0, standard(first)}, {0, standard(second)}};
    const auto together = runTrials(plan, both, 2);
    ASSERT_TRUE(together);
    EXPECT_GE(together->trials, 45 * blockTrials);
  }
}

TEST(RunTrials, GiveUpAtTheGreatestNumberAndSaySo) {
  TrialPlan plan = oneInput(standard(0.98));
  plan.significantDigits = 4;
  for (const std::size_t greatest : {5 * blockTrials, 5 * blockTrials + 100, std::size_t{1000}}) {
    plan.greatestTrials = greatest;
    const auto result = runTrials(plan, identity, 1);
    ASSERT_TRUE(result);
    EXPECT_EQ(result->trials, greatest);
    EXPECT_FALSE(result->settled);
    EXPECT_NEAR(result->outputs[0].mean, 10, 5 * 0.98 / std::sqrt(static_cast<double>(greatest)));
  }
}

TEST(RunTrials, NeverSettleOnATailWithoutVariance) {
  // Derived: Student's t with one degree of freedom has neither mean nor standard deviation.
  TrialPlan plan = oneInput(standard(1));
  plan.inputs[0].uncertainty.degreesOfFreedom = 1;
  plan.greatestTrials = 20 * blockTrials;
  const auto result = runTrials(plan, identity, 1);
  ASSERT_TRUE(result);
  EXPECT_FALSE(result->settled);
  // Its interval is sound all the same: +- 12.71 (JCGM 100:2008, table G.2). Derived: an end scatters by
  // sqrt(p (1 - p) / n) / density = 0.156 / sqrt(204800) / 0.00196 = 0.18; five times that.
  EXPECT_NEAR(result->outputs[0].symmetric.high, 10 + 12.71, 0.9);
}

TEST(RunTrials, MakeLargerBlocksForARareTail) {
  // JCGM 101:2008, 7.9.4: M is at least 100 / (1 - p), here 100 000. One digit of u = 0.8, two blocks.
  TrialPlan plan = oneInput(standard(0.8));
  plan.coverage = 0.999;
  plan.significantDigits = 1;
  const auto result = runTrials(plan, identity, 1);
  ASSERT_TRUE(result);
  EXPECT_EQ(result->trials, 200'000u);
}

TEST(RunTrials, OfACertainResultScatterNotAtAll) {
  const auto constant = [] { return [](const double*, double* y) { std::fill_n(y, trialLanes, 0.1); }; };
  const auto result = runTrials(oneInput(), constant, 1);
  ASSERT_TRUE(result);
  EXPECT_TRUE(result->settled);
  EXPECT_EQ(result->trials, 2 * blockTrials);
  const TrialOutput& output = result->outputs[0];
  EXPECT_EQ(output.mean, 0.1);
  EXPECT_EQ(output.standardUncertainty, 0);
  EXPECT_EQ(output.symmetric, (Interval{0.1, 0.1}));
  EXPECT_EQ(output.histogram.low, 0.1);
  EXPECT_EQ(output.histogram.high, 0.1);
  EXPECT_EQ(output.histogram.counts[40], result->trials);
}

TEST(RunTrials, KeepTheDigitsOfASmallScatterOnALargeValue) {
  // u is 1e-9 of the value: squares summed about zero would keep no digit of it. Derived: a sample's u
  // scatters by u / sqrt(2 n), 0.2 % here; five times that. The values themselves are rounded to 1e-16 of
  // 1e6.
  TrialPlan plan = oneInput(standard(1e-3));
  plan.inputs[0].value = 1e6;
  plan.trials = 10 * blockTrials;
  const auto result = runTrials(plan, identity, 1);
  ASSERT_TRUE(result);
  EXPECT_NEAR(result->outputs[0].standardUncertainty, 1e-3, 1.1e-5);
}

TEST(RunTrials, CountTheirHistogram) {
  TrialPlan plan;
  plan.inputs = {{5, standard(2)}, {5, within(1)}};
  plan.trials = 10 * blockTrials;
  const auto both = [] { return [](const double* x, double* y) { std::copy_n(x, 2 * trialLanes, y); }; };
  const auto result = runTrials(plan, both, 2);
  ASSERT_TRUE(result);
  for (const TrialOutput& output : result->outputs) {
    const auto& counts = output.histogram.counts;
    EXPECT_EQ(counts.size(), 80u);
    EXPECT_EQ(std::accumulate(counts.begin(), counts.end(), std::size_t{0}), 10 * blockTrials);
  }
  const Histogram &normal = result->outputs[0].histogram, &flat = result->outputs[1].histogram;
  // Derived: that none of 102 400 normal trials lies below -3.7 u has a probability of 2e-5.
  const double reach = 4.5 * result->outputs[0].standardUncertainty;
  EXPECT_GE(normal.low, result->outputs[0].mean - reach);
  EXPECT_LE(normal.low, 5 - 7.4);
  EXPECT_LE(normal.high, result->outputs[0].mean + reach);
  EXPECT_GE(normal.high, 5 + 7.4);
  // All rectangular trials lie within +-1, that is 1.73 u; the ends are reached to a few parts in 102 400.
  EXPECT_NEAR(flat.low, 4, 1e-3);
  EXPECT_NEAR(flat.high, 6, 1e-3);
  // Derived: 1280 in each step, scattering by 36; five times that.
  for (std::size_t count : flat.counts) EXPECT_NEAR(static_cast<double>(count), 1280, 180);
}

TEST(RunTrials, CountWhatHasNoResult) {
  // The logarithm of a rectangular input from -0.5 to 9.5 has none for one trial in twenty.
  TrialPlan plan = oneInput(within(5));
  plan.inputs[0].value = 4.5;
  const auto logarithm = [] {
    return [](const double* x, double* y) {
      for (std::size_t lane = 0; lane < trialLanes; ++lane) y[lane] = std::log(x[lane]);
    };
  };
  std::string expected;
  for (const unsigned threads : {1u, 2u, 5u}) {
    for (const bool adaptive : {false, true}) {
      plan.threads = threads;
      plan.trials = adaptive ? std::nullopt : std::optional<std::size_t>(8 * blockTrials);
      const auto result = runTrials(plan, logarithm, 1);
      ASSERT_FALSE(result);
      EXPECT_EQ(result.error().where, "trials");
      EXPECT_NE(result.error().what.find(" of 10240 trials have no result"), std::string::npos);
      EXPECT_NE(result.error().mend.find("smaller uncertainty"), std::string::npos);
      // Derived: 512 expected, scattering by 22; five times that.
      EXPECT_NEAR(std::stod(result.error().what), 512, 110);
      if (expected.empty()) expected = result.error().what;
      EXPECT_EQ(result.error().what, expected);
    }
  }
}

TEST(RunTrials, NoticeASingleMissingResultInALateBlock) {
  TrialPlan plan = oneInput();
  plan.trials = 6 * blockTrials;
  plan.threads = 1;  // so that calls come in the order of the trials
  for (const double missing : {std::nan(""), HUGE_VAL, -HUGE_VAL}) {
    const auto gap = [missing] {
      return [missing, calls = std::size_t{0}](const double* x, double* y) mutable {
        std::copy_n(x, trialLanes, y);
        if (++calls == 4 * blockTrials / trialLanes + 5) y[7] = missing;
      };
    };
    const auto result = runTrials(plan, gap, 1);
    ASSERT_FALSE(result);
    EXPECT_EQ(result.error().what.substr(0, 33), "1 of 51200 trials have no result,");
  }
}

TEST(RunTrials, LookAtNoLaneBeyondTheLastTrial) {
  // 100 trials fill three lane groups and 4 lanes; the rest of the fourth must not count.
  TrialPlan plan = oneInput();
  plan.trials = 100;
  plan.threads = 1;
  const auto spoiled = [] {
    return [calls = 0](const double* x, double* y) mutable {
      std::copy_n(x, trialLanes, y);
      if (++calls == 4) std::fill(y + 4, y + trialLanes, std::nan(""));
    };
  };
  const auto result = runTrials(plan, spoiled, 1);
  ASSERT_TRUE(result);
  EXPECT_EQ(result->trials, 100u);
  EXPECT_EQ(*result, *runTrials(plan, identity, 1));
}

TEST(RunTrials, CanBeCancelledBeforeTheyBegin) {
  std::stop_source source;
  source.request_stop();
  std::atomic<int> calls = 0;
  const auto counting = [&calls] { return [&calls](const double*, double*) { ++calls; }; };
  const auto never = runTrials(oneInput(), counting, 1, source.get_token());
  ASSERT_FALSE(never);
  EXPECT_EQ(never.error(), cancelled());
  EXPECT_EQ(calls, 0);
}

TEST(RunTrials, CanBeCancelledWhileDrawing) {
  constexpr int perBlock = blockTrials / trialLanes;
  for (const unsigned threads : {1u, 2u, 3u}) {
    TrialPlan plan = oneInput();
    plan.trials = 40 * blockTrials;
    plan.threads = threads;
    std::stop_source source;
    std::atomic<int> calls = 0;
    const auto stopping = [&] {
      return [&](const double* x, double* y) {
        if (++calls == 5 * perBlock) source.request_stop();
        std::copy_n(x, trialLanes, y);
      };
    };
    const auto stopped = runTrials(plan, stopping, 1, source.get_token());
    ASSERT_FALSE(stopped);
    EXPECT_EQ(stopped.error(), cancelled());
    // Each thread may finish its block, and one may just have looked and begun another.
    EXPECT_LE(calls, static_cast<int>(5 + 2 * threads) * perBlock);
  }
}

TEST(RunTrials, CanBeCancelledWhilePuttingInOrder) {
  TrialPlan plan = oneInput();
  plan.trials = 4 * blockTrials;
  plan.threads = 1;
  std::stop_source source;
  const auto stopped = runTrials(plan, identity, 1, source.get_token(), [&](double share) {
    if (share >= 0.9) source.request_stop();  // when the last block is drawn
  });
  ASSERT_FALSE(stopped);
  EXPECT_EQ(stopped.error(), cancelled());
}

TEST(RunTrials, TellRisingProgressOnTheCallingThread) {
  for (const bool adaptive : {false, true}) {
    TrialPlan plan = oneInput(standard(0.98));
    if (!adaptive) plan.trials = 30 * blockTrials;
    plan.threads = 1;  // with more, this thread might have little to tell
    std::vector<double> shares;
    const auto caller = std::this_thread::get_id();
    const auto result = runTrials(plan, identity, 1, {}, [&](double share) {
      EXPECT_EQ(std::this_thread::get_id(), caller);
      shares.push_back(share);
    });
    ASSERT_TRUE(result);
    ASSERT_GT(shares.size(), 4u);
    EXPECT_TRUE(std::is_sorted(shares.begin(), shares.end()));
    EXPECT_GE(shares.front(), 0);
    EXPECT_EQ(shares.back(), 1);
    // Not all at one end: some calls tell of the middle.
    EXPECT_TRUE(std::any_of(shares.begin(), shares.end(), [](double s) { return s > 0.3 && s < 0.8; }));
  }
}

TEST(RunTrials, AllocateNothingPerTrialOrBlock) {
  TrialPlan plan = monte_carlo_test::plan();
  allocationsOf(plan);  // with what is made once in the life of a program, such as the language
  for (const unsigned threads : {1u, 2u, 3u}) {
    plan.threads = threads;
    for (const bool adaptive : {false, true}) {
      plan.significantDigits = adaptive ? 5 : 2;  // never settles
      const auto ofBlocks = [&](std::size_t blocks) {
        plan.trials = adaptive ? std::nullopt : std::optional(blocks * blockTrials);
        plan.greatestTrials = blocks * blockTrials;
        return allocationsOf(plan);
      };
      const std::size_t once = ofBlocks(20);
      EXPECT_GT(once, 0u);  // the counter counts
      EXPECT_EQ(ofBlocks(40), once) << threads << " threads";
    }
  }
}

TEST(RunTrials, RefuseWhatCannotBeDone) {
  TrialPlan few = oneInput();
  few.trials = 10;  // 9.5 rounds to all ten: nothing lies outside
  const auto tooFew = runTrials(few, identity, 1);
  ASSERT_FALSE(tooFew);
  EXPECT_NE(tooFew.error().what.find("too few"), std::string::npos);
  few.trials = 0;
  EXPECT_FALSE(runTrials(few, identity, 1));

  TrialPlan many = oneInput();  // 64 GiB and more
  for (const std::size_t trials : {std::size_t{1} << 62, std::size_t{1} << 33}) {
    many.trials = trials;
    const auto tooMany = runTrials(many, identity, 1);
    ASSERT_FALSE(tooMany);
    EXPECT_NE(tooMany.error().what.find("memory"), std::string::npos);
  }

  for (const double coverage : {0.0, 1.0, -0.5, std::nan("")}) {
    TrialPlan odd = oneInput();
    odd.coverage = coverage;
    ASSERT_FALSE(runTrials(odd, identity, 1));
    EXPECT_EQ(runTrials(odd, identity, 1).error().where, "coverage");
  }
  EXPECT_EQ(runTrials(oneInput(standard(-1)), identity, 1).error().where, "input 1");
}

TEST(NumericalTolerance, IsHalfAUnitOfTheLastDigit) {
  // Published: JCGM 101:2008, 7.9.2, examples: 0.00035 with two digits is 35 x 10^-5, delta 0.000005;
  // 0.000352 with three the same with 10^-6 (from memory). The others by the same rule.
  EXPECT_EQ(numericalTolerance(0.00035, 2), 0.000005);
  EXPECT_EQ(numericalTolerance(0.000352, 3), 0.0000005);
  EXPECT_EQ(numericalTolerance(2, 1), 0.5);
  EXPECT_EQ(numericalTolerance(2, 2), 0.05);
  EXPECT_EQ(numericalTolerance(0.0754, 1), 0.005);
  EXPECT_EQ(numericalTolerance(0.0754, 2), 0.0005);
  EXPECT_EQ(numericalTolerance(123456, 2), 5000);
  EXPECT_EQ(numericalTolerance(1e-300, 2), 5e-302);
  // Rounding carries: 0.0996 is 0.10 with two digits, 10 x 10^-2.
  EXPECT_EQ(numericalTolerance(0.0994, 2), 0.0005);
  EXPECT_EQ(numericalTolerance(0.0996, 2), 0.005);
  EXPECT_EQ(numericalTolerance(0, 2), 0);
}

TEST(ValidateInterval, AsksForBothEnds) {
  // JCGM 101:2008, clause 8; u = 1, two digits: delta = 0.05.
  const auto both = validateInterval({-1.96, 1.96}, {-1.94, 1.99}, 1, 2);
  EXPECT_TRUE(both.passed);
  EXPECT_EQ(both.tolerance, 0.05);
  EXPECT_NEAR(both.low, 0.02, 1e-15);  // rounding of the subtraction
  EXPECT_NEAR(both.high, 0.03, 1e-15);
  EXPECT_FALSE(validateInterval({-1.96, 1.96}, {-1.90, 1.96}, 1, 2).passed);
  EXPECT_FALSE(validateInterval({-1.96, 1.96}, {-1.96, 2.02}, 1, 2).passed);
}

}  // namespace monte_carlo_test
