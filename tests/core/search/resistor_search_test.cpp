// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/search/resistor_search.h"

#include <gmock/gmock.h>

#include <random>

#include "core/search/targets.h"
#include "tests/core/search/brute_force.h"
#include "tests/support/setups.h"

using namespace core;
using enum BridgeType;
using testing::ElementsAre;
using testing::HasSubstr;

namespace {

/// The search reckons with curves that are right to 1e-12 of a level, brute force with whole networks, whose
/// potentials carry 1e-16 of the excitation: 1e-13 of the smallest outputs here, some 1e-3 V/V.
constexpr double alike = 1e-11;

Candidate newOne(double ohm, double tolerance = 1e-3) {
  return {Resistance(ohm), tolerance, "", std::to_string(ohm), {}, {}, false};
}
Candidate owned(double ohm, const std::string& part, double tolerance = 1e-3) {
  return {Resistance(ohm), tolerance, part, part, {}, {}, true};
}

/// Values in equal ratios, `perDecade` of them from 10 kohm on.
std::vector<Candidate> ratios(std::size_t perDecade, std::size_t count) {
  std::vector<Candidate> candidates;
  for (std::size_t k = 0; k < count; ++k)
    candidates.push_back(
        newOne(1e4 * std::pow(10.0, static_cast<double>(k) / static_cast<double>(perDecade))));
  return candidates;
}

ResistorSearch searchFor(const Setup& setup, std::vector<double> levels, std::size_t positions) {
  ResistorSearch search;
  search.levels = std::move(levels);
  search.positive = usualPlace(setup.bridge, Polarity::Positive);
  search.negative = usualPlace(setup.bridge, Polarity::Negative);
  search.positions = positions;
  return search;
}

std::vector<double> ohmsOf(const ResistorSet& set, std::size_t from = 0) {
  std::vector<double> ohms;
  for (std::size_t k = from; k < set.resistors.size(); ++k) ohms.push_back(set.resistors[k].value.base());
  return ohms;
}

SearchOutcome outcomeOf(const Setup& setup, const ResistorSearch& search,
                        const std::vector<Candidate>& candidates) {
  const auto outcome = searchResistors(setup, search, candidates);
  EXPECT_TRUE(outcome) << (outcome ? "" : outcome.error().text());
  return outcome ? *outcome : SearchOutcome{};
}

void expectBest(const Setup& setup, const ResistorSearch& search, const std::vector<Candidate>& candidates) {
  const auto expected = test::BruteForce(setup, search, candidates).run();
  const SearchOutcome found = outcomeOf(setup, search, candidates);
  ASSERT_EQ(found.best.size(), std::min(search.most, expected.size()));
  for (std::size_t k = 0; k < found.best.size(); ++k) {
    SCOPED_TRACE("rank " + std::to_string(k + 1));
    const ResistorSet& set = found.best[k];
    EXPECT_NEAR(set.greatestMiss, expected[k].greatest, alike * (1 + expected[k].greatest));
    EXPECT_NEAR(set.meanMiss, expected[k].mean, alike * (1 + expected[k].mean));
    // The same set, or one that brute force found to be as good.
    const auto ohms = ohmsOf(set, search.fitted.size());
    const auto same = std::find_if(expected.begin(), expected.end(), [&](const auto& e) {
      return e.ohms == ohms && e.newParts == set.newParts &&
             std::abs(e.greatest - expected[k].greatest) <= alike * (1 + e.greatest);
    });
    EXPECT_NE(same, expected.end()) << testing::PrintToString(ohms);
  }
}

/// Everything that may differ from one problem to the next, by a fixed seed.
struct Problem {
  core::Setup setup;
  ResistorSearch search;
  std::vector<Candidate> candidates;
};

Problem problemOf(unsigned seed) {
  std::mt19937 random(seed);
  const auto below = [&](unsigned n) { return static_cast<unsigned>(random() % n); };
  const auto share = [&] { return static_cast<double>(random() % 10007) / 10007; };
  Problem p;
  p.setup = test::equalArms(static_cast<BridgeType>(below(bridgeTypeCount)), Resistance(350), 2.05, 0.29);
  for (Resistance& r : p.setup.bridge.arms) r = Resistance(350 + 2 * share());
  if (below(2)) p.setup.bridge.leads.fill(Resistance(5 * share()));
  p.setup.bridge.sixWire = templateOf(p.setup.bridge.type).senseLeads && below(2);
  p.setup.bridge.rating.capacity = 50;
  if (below(4) == 0) p.setup.instrument.current = CurrentSource{};
  if (below(3) == 0) p.setup.instrument.inputResistance = Resistance(1e6);
  const double greatest = isTransducer(p.setup.bridge) ? 20 : 1500;
  const bool negative = below(3) > 0;
  // One draw after the other, or compilers would make different problems.
  const double farthest = greatest * (0.5 + share());
  const unsigned levels = 1 + below(3);
  p.search = searchFor(p.setup, equalLevels(farthest, levels, true, negative), 2 + below(2));
  p.search.positive->wires = Resistance(below(2) * 0.8);
  p.search.negative->contact = Resistance(below(2) * 0.05);
  p.search.together = below(2);
  p.search.atTolerance = below(3) == 0;
  p.search.missUnit = below(3) == 0 ? MissUnit::OfLimit : MissUnit::OfLevel;
  if (below(3) == 0) p.search.fitted = {owned(2e5 * (1 + share()), "in", 2e-4)};
  const unsigned count = 7 + below(5);
  for (unsigned k = 0; k < count; ++k) {
    const double ohm = 3e4 * std::pow(30.0, share()), tolerance = 1e-4 * (1 + below(20));
    const unsigned box = below(4);
    p.candidates.push_back(below(2)   ? newOne(ohm, tolerance)
                           : box == 0 ? owned(ohm, "box", tolerance)
                                      : owned(ohm, "S-" + std::to_string(k), tolerance));
  }
  std::sort(p.candidates.begin(), p.candidates.end(), [](auto& a, auto& b) { return a.value < b.value; });
  // Of two that are alike the search makes one set, brute force two.
  const auto twins = std::unique(p.candidates.begin(), p.candidates.end(),
                                 [](auto& a, auto& b) { return a.value == b.value; });
  p.candidates.erase(twins, p.candidates.end());
  return p;
}

TEST(ResistorSearch, FindsTheTenBestOfAllSetsOnSmallStocks) {
  // Truth: all sets, one after the other, each predicted with the whole network.
  for (unsigned seed = 1; seed <= 120; ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    const Problem p = problemOf(seed);
    expectBest(p.setup, p.search, p.candidates);
  }
}

TEST(ResistorSearch, FindsTheTenBestOfFourPositionsInParallel) {
  const core::Setup setup =
      test::withLeads(test::equalArms(QuarterThreeWire, Resistance(350)), Resistance(2));
  ResistorSearch search = searchFor(setup, equalLevels(2000, 4, true, true), 4);
  search.together = true;
  expectBest(setup, search, ratios(7, 12));
  search.levels = {700};
  expectBest(setup, search, ratios(7, 12));
}

TEST(ResistorSearch, ReachesWhatThePredictionSays) {
  const Problem p = problemOf(5);
  core::Setup plan = p.setup;
  for (const ResistorSet& set : outcomeOf(p.setup, p.search, p.candidates).best)
    for (const LevelMet& met : set.levels) {
      if (met.closed.empty()) continue;
      plan.shunts.clear(), plan.sequence.clear();
      const ShuntPlace& place = met.wanted > 0 ? *p.search.positive : *p.search.negative;
      Step step;
      for (const std::size_t position : met.closed) {
        step.closed.push_back(plan.shunts.size());
        plan.shunts.push_back({"R" + std::to_string(position), set.resistors[position].value, place.a,
                               place.b, place.wires, place.contact});
      }
      plan.sequence = {step};
      // The same network solved the same way: a rounding or two.
      EXPECT_DOUBLE_EQ(met.reached, simulatedInUnit(plan.bridge, test::lastStep(plan).simulated));
    }
}

TEST(ResistorSearch, IsTheSameInAnyOrderAndOnAnyNumberOfThreads) {
  const core::Setup setup = test::withLeads(test::equalArms(HalfBending, Resistance(350)), Resistance(2));
  ResistorSearch search = searchFor(setup, equalLevels(2000, 3, true, true), 3);
  search.together = true;
  std::vector<Candidate> candidates = ratios(48, 120);
  for (std::size_t k = 0; k < candidates.size(); k += 3)
    candidates[k].part = candidates[k].name, candidates[k].once = true;
  search.threads = 1;
  const SearchOutcome first = outcomeOf(setup, search, candidates);
  ASSERT_EQ(first.best.size(), 10u);
  std::mt19937 random(3);
  for (const unsigned threads : {1u, 2u, 5u}) {
    search.threads = threads;
    std::shuffle(candidates.begin(), candidates.end(), random);
    std::shuffle(search.levels.begin(), search.levels.end(), random);
    const SearchOutcome again = outcomeOf(setup, search, candidates);
    ASSERT_EQ(again.best.size(), first.best.size());
    for (std::size_t k = 0; k < first.best.size(); ++k) {
      EXPECT_EQ(again.best[k].resistors, first.best[k].resistors);
      EXPECT_EQ(again.best[k].greatestMiss, first.best[k].greatestMiss);
      ASSERT_EQ(again.best[k].levels.size(), search.levels.size());
      for (std::size_t l = 0; l < search.levels.size(); ++l)
        EXPECT_EQ(again.best[k].levels[l].wanted, search.levels[l]);
    }
  }
}

TEST(ResistorSearch, ServesEqualLevelsOfAQuarterBridgeWithTheValuesOfTheHandbook) {
  // Completion arm: R/(F e), gauge: R/(F e) - R (Micro-Measurements TN-514; M. J. Bower, eq. 29.3), so for
  // 350 ohm and F = 2 at +-1000 um/m 175 k and 174.65 k.
  const core::Setup setup = test::equalArms(QuarterThreeWire, Resistance(350));
  const std::vector<Candidate> candidates{newOne(174650), newOne(175000), newOne(200000)};
  const SearchOutcome found = outcomeOf(setup, searchFor(setup, {1000, -1000}, 2), candidates);
  EXPECT_THAT(ohmsOf(found.best.front()), ElementsAre(174650, 175000));
  EXPECT_NEAR(found.best.front().greatestMiss, 0,
              1e-12);  // both exact; a rounding of 1e-15 V/V is 1e-12 of it
  EXPECT_THAT(found.best.front().levels[0].closed, ElementsAre(1));
  EXPECT_THAT(found.best.front().levels[1].closed, ElementsAre(0));
}

TEST(ResistorSearch, LeavesPositionsEmptyThatNoLevelNeeds) {
  const core::Setup setup = test::equalArms(HalfBending, Resistance(350));
  const SearchOutcome found = outcomeOf(setup, searchFor(setup, {1000}, 5), ratios(24, 48));
  ASSERT_EQ(found.best.size(), 10u);
  for (const ResistorSet& set : found.best) EXPECT_EQ(set.resistors.size(), 1u);
}

TEST(ResistorSearch, TakesEachPartOnceAndResistorsThatAreAlikeInTheirOrder) {
  const core::Setup setup = test::equalArms(HalfBending, Resistance(350));
  ResistorSearch search = searchFor(setup, {500, 1000, 1500}, 3);
  search.together = true;
  std::vector<Candidate> candidates;
  for (const char* id : {"S-3", "S-1", "S-2", "S-4"}) candidates.push_back(owned(174825, id));
  const SearchOutcome found = outcomeOf(setup, search, candidates);
  ASSERT_EQ(found.best.size(), 3u);  // one, two, or three of them
  ASSERT_EQ(found.best.front().resistors.size(), 3u);
  EXPECT_EQ(found.best.front().resistors[0].part, "S-1");
  EXPECT_EQ(found.best.front().resistors[2].part, "S-3");
  // Half bending: R/(2 F e) - R/2 = 87325 ohm for 1000 um/m, so that two of 174825 in parallel give it to a
  // thousandth.
  EXPECT_THAT(found.best.front().levels[1].closed, ElementsAre(0, 1));

  candidates = {owned(170000, "box"), owned(85000, "box"), owned(60000, "box")};
  for (const ResistorSet& set : outcomeOf(setup, search, candidates).best)
    EXPECT_EQ(set.resistors.size(), 1u);
}

TEST(ResistorSearch, KeepsWhatIsFittedAndTakesItForNothingElse) {
  const core::Setup setup = test::equalArms(HalfBending, Resistance(350));
  ResistorSearch search = searchFor(setup, {1000, 2000}, 2);
  search.fitted = {owned(87325, "S-1")};
  const SearchOutcome found =
      outcomeOf(setup, search, {owned(87325, "S-1"), owned(43000, "S-2"), newOne(90000)});
  for (const ResistorSet& set : found.best) {
    EXPECT_EQ(set.resistors.front().part, "S-1");
    EXPECT_EQ(std::count_if(set.resistors.begin(), set.resistors.end(),
                            [](const Candidate& c) { return c.part == "S-1"; }),
              1);
  }
  EXPECT_EQ(found.best.front().resistors[1].part, "S-2");
  EXPECT_EQ(found.best.front().newParts, 0u);
}

TEST(ResistorSearch, NamesLevelsBeyondTheStockWithTheNearest) {
  const core::Setup setup = test::equalArms(QuarterThreeWire, Resistance(350));
  ResistorSearch search = searchFor(setup, {1000, 9000}, 2);
  const std::vector<Candidate> candidates{newOne(175000), newOne(87500)};
  SearchOutcome found = outcomeOf(setup, search, candidates);
  ASSERT_EQ(found.unreachable.size(), 1u);  // R/(F e) = 87.5 k gives 2000 um/m
  EXPECT_EQ(found.unreachable.front(),
            "9000 µm/m cannot be reached within the limits with these resistors; the nearest is 2000 µm/m, "
            "with 87.5 kΩ");
  search.together = true;  // two new ones of 87.5 k give 4000, the two that there are 3000
  found = outcomeOf(setup, search, candidates);
  ASSERT_EQ(found.unreachable.size(), 1u);
  EXPECT_THAT(found.unreachable.front(), HasSubstr("4000 µm/m, with 87.5 kΩ and 87.5 kΩ closed together"));
  found = outcomeOf(setup, search, {owned(175000, "A"), owned(87500, "B")});
  ASSERT_EQ(found.unreachable.size(), 1u);
  EXPECT_THAT(found.unreachable.front(),
              HasSubstr("the nearest is 3000 µm/m, with 87.5 kΩ and 175 kΩ closed together"));
}

TEST(ResistorSearch, SaysThatZeroIsNearerThanTheLeastLevelOfTheStock) {
  const core::Setup setup = test::equalArms(QuarterThreeWire, Resistance(350));
  const std::vector<Candidate> candidates{owned(175000, "A"), owned(87500, "B")};
  for (const bool together : {false, true}) {
    ResistorSearch search = searchFor(setup, {10}, 2);  // R/(F R_s): 175 k gives 1000 µm/m, and no less
    search.together = together;
    SearchOutcome found = outcomeOf(setup, search, candidates);
    EXPECT_TRUE(found.best.empty());
    EXPECT_THAT(
        found.unreachable,
        ElementsAre("10 µm/m cannot be reached within the limits with these resistors: they reach nothing "
                    "between zero and 1000 µm/m, with 175 kΩ, so that no resistor is nearer than none"));
    search.levels = {1e-300};  // what would be wanted is beyond all numbers
    found = outcomeOf(setup, search, candidates);
    EXPECT_THAT(
        found.unreachable,
        ElementsAre("1e-300 µm/m cannot be reached with these resistors: they reach nothing between zero "
                    "and 1000 µm/m, with 175 kΩ, so that no resistor is nearer than none"));
  }
  // From half of the least level on, the resistor is nearer.
  const SearchOutcome found = outcomeOf(setup, searchFor(setup, {501}, 2), candidates);
  ASSERT_EQ(found.unreachable.size(), 1u);
  EXPECT_THAT(found.unreachable.front(), HasSubstr("; the nearest is 1000 µm/m, with 175 kΩ"));
}

TEST(ResistorSearch, TellsByHowMuchReadingsMissAndTheLimit) {
  // Over the completion arm of equal arms R_s simulates R/(F R_s) at the gauge, exactly (TN-514 of
  // Micro-Measurements, from memory): 175 k gives 1000 µm/m. A quarter bridge gives F e / (4 + 2 F e) for
  // strain e (the same, from memory), which an instrument of factor 2 shows as e / (1 + e).
  core::Setup setup = test::equalArms(QuarterThreeWire, Resistance(350));
  const auto reads = [](double level) { return level / (1 + level * 1e-6); };
  setup.limits.relative = 0.001;
  ResistorSearch search = searchFor(setup, {1002, 10}, 1);
  SearchOutcome found = outcomeOf(setup, search, {newOne(175000, 0.01)});
  ASSERT_EQ(found.best.size(), 1u);
  const std::vector<LevelMet>& levels = found.best.front().levels;
  ASSERT_TRUE(levels[0].reading && levels[1].reading);
  // Readings of 1000 carry some 1e-16 / 5e-4 of themselves.
  EXPECT_NEAR(levels[0].reading->deviation, reads(1002) - reads(1000), 1e-8);
  EXPECT_NEAR(levels[0].reading->limit, 0.001 * reads(1002), 1e-8);
  EXPECT_NEAR(levels[1].reading->deviation, reads(10), 1e-8);  // with nothing closed
  setup.limits.least = Reading(5);
  search.atTolerance = true;  // of 1 %: R/(F 1.01 R_s) is further from 1002 than R/(F 0.99 R_s)
  found = outcomeOf(setup, search, {newOne(175000, 0.01)});
  EXPECT_NEAR(found.best.front().levels[0].reading->deviation, reads(1002) - reads(1000 / 1.01), 1e-8);
  EXPECT_EQ(found.best.front().levels[0].reading->limit, 5);
}

TEST(ResistorSearch, MissesALevelWhollyThatZeroServesBest) {
  const core::Setup setup = test::equalArms(QuarterThreeWire, Resistance(350));
  const SearchOutcome found = outcomeOf(setup, searchFor(setup, {1000, 10}, 1), {newOne(175000)});
  ASSERT_EQ(found.best.size(), 1u);
  EXPECT_EQ(found.best.front().greatestMiss, 1);
  EXPECT_TRUE(found.best.front().levels[1].closed.empty());
  EXPECT_EQ(found.best.front().levels[1].reached, 0);
}

TEST(ResistorSearch, TellsThePowerOfTheWarmestResistor) {
  // Over one of four equal arms at 5 V lie, with R_s in parallel, 5 V x 350 || R_s / (350 + 350 || R_s).
  const core::Setup setup = test::equalArms(QuarterThreeWire, Resistance(350));
  const double both = 350 * 10000.0 / 10350, volt = 5 * both / (350 + both);
  const SearchOutcome found = outcomeOf(setup, searchFor(setup, {17500}, 1), {newOne(10000)});
  // A handful of operations in double precision.
  EXPECT_NEAR(found.best.front().greatestPower.base(), volt * volt / 10000, 1e-15);
}

TEST(ResistorSearch, RefusesWhatCannotBeSearched) {
  const core::Setup setup = test::equalArms(QuarterThreeWire, Resistance(350));
  const std::vector<Candidate> candidates{newOne(175000)};
  const auto refusal = [&](const ResistorSearch& search) {
    const auto outcome = searchResistors(setup, search, candidates);
    EXPECT_FALSE(outcome);
    return outcome ? std::string() : outcome.error().text();
  };
  ResistorSearch search = searchFor(setup, {1000}, 1);
  search.fitted = {newOne(87500)};
  EXPECT_THAT(refusal(search), HasSubstr("positions: no position is free: 1 of 1 have a resistor already"));
  EXPECT_THAT(refusal(searchFor(setup, {1000}, 0)), HasSubstr("Choose from 1 to 8"));
  EXPECT_THAT(refusal(searchFor(setup, {1000}, 9)), HasSubstr("Choose from 1 to 8"));
  EXPECT_THAT(refusal(searchFor(setup, {}, 1)), HasSubstr("no level is wanted"));
  EXPECT_THAT(refusal(searchFor(setup, {0}, 1)), HasSubstr("zero needs no resistor"));
  EXPECT_THAT(refusal(searchFor(setup, {std::nan("")}, 1)), HasSubstr("no finite number"));
  search = searchFor(setup, {1000, -500}, 1);
  search.negative.reset();
  EXPECT_THAT(refusal(search), HasSubstr("-500 µm/m: there is no place for negative levels"));
  search.negative = search.positive;
  EXPECT_THAT(refusal(search), HasSubstr("gives positive levels, and negative ones are wanted there"));
  search.negative = ShuntPlace{Node::SMinus, Node::SMinus};
  EXPECT_THAT(refusal(search), HasSubstr("both ends are on one node"));
  search.negative = ShuntPlace{Node::PPlus, Node::PMinus};
  EXPECT_THAT(refusal(search), HasSubstr("does not change the output"));
  EXPECT_THAT(searchResistors(setup, searchFor(setup, {1000}, 1), {}).error().text(),
              HasSubstr("there is no resistor to choose from"));
  EXPECT_THAT(searchResistors(setup, searchFor(setup, {1000}, 1), std::vector{newOne(-1)}).error().text(),
              HasSubstr("finite resistance above zero"));
}

TEST(ResistorSearch, StopsWhenAskedAndKeepsTheBestSoFar) {
  const core::Setup setup = test::equalArms(HalfBending, Resistance(350));
  ResistorSearch search = searchFor(setup, equalLevels(2000, 7, true, true), 8);
  search.together = true;
  std::stop_source source;
  double last = 0;
  const auto outcome = searchResistors(setup, search, ratios(96, 192), source.get_token(), [&](double share) {
    EXPECT_GE(share, last);
    last = share;
    source.request_stop();
  });
  ASSERT_TRUE(outcome);
  EXPECT_TRUE(outcome->cancelled);
  EXPECT_FALSE(outcome->best.empty());
  EXPECT_LT(last, 1);
}

TEST(ResistorSearch, TellsItsProgressToTheEnd) {
  const core::Setup setup = test::equalArms(HalfBending, Resistance(350));
  double last = 0;
  const auto outcome =
      searchResistors(setup, searchFor(setup, {500, 1000}, 3), ratios(24, 48), {}, [&](double share) {
        EXPECT_GE(share, last);
        EXPECT_LE(share, 1);
        last = share;
      });
  ASSERT_TRUE(outcome);
  EXPECT_EQ(last, 1);
  // 48 + C(49, 2) + C(50, 3) sets of one to three values that can be had again and again.
  EXPECT_EQ(outcome->setsInAll, 48u + 1176u + 19600u);
}

}  // namespace
