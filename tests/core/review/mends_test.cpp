// SPDX-License-Identifier: GPL-3.0-or-later
// What a mend promises, over many plans with many faults.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <map>
#include <random>
#include <set>

#include "core/document/edits.h"
#include "core/review/review.h"
#include "tests/support/random_document.h"
#include "tests/support/setups.h"

namespace core {
namespace mends_test {

using Findings = std::vector<Finding>;
/// By kind, and whether they are about a shunt: duplicates are of steps or of shunts.
using Counts = std::map<std::pair<FindingKind, bool>, int>;

constexpr Date today{std::chrono::year(2026), std::chrono::May, std::chrono::day(11)};

Counts::key_type keyOf(const Finding& finding) { return {finding.kind, finding.shunt.has_value()}; }

/// Findings of each kind that are at least this severe.
Counts countsOf(const Findings& findings, Severity least) {
  Counts counts;
  for (const Finding& finding : findings)
    if (finding.severity >= least) ++counts[keyOf(finding)];
  return counts;
}

std::string textOf(const Findings& findings) {
  std::string text;
  for (const Finding& one : findings)
    text += std::string(severityWord(one.severity)) + " " + std::string(findingKindKey(one.kind)) + " " +
            (one.step ? std::to_string(*one.step + 1) : "-") + ": " + one.what + "\n";
  return text;
}

/// Plans as hasty people write them: shunts anywhere on any arm, labels that lie, times too short, zeros
/// forgotten, resistors overdue, ranges too small.
class HastyPlans {
 public:
  explicit HastyPlans(unsigned seed) : m_random(seed) {
    for (const char* id : {"S-1", "S-2", "S-3"})
      m_stock.resistors.push_back({.id = id, .nominal = Resistance(resistance()), .due = due()});
  }

  Channel channel() {
    const auto type = static_cast<BridgeType>(below(bridgeTypeCount));
    Channel channel;
    channel.setup = test::equalArms(type, Resistance(pick({120.0, 350.0, 1000.0})), 2.05);
    Setup& setup = channel.setup;
    for (Resistance& arm : setup.bridge.arms)
      if (oneIn(3)) arm = between(0.99, 1.01) * arm;
    for (Lead& lead : setup.bridge.leads) lead = Resistance(oneIn(2) ? 0 : between(0, 5));
    setup.bridge.sixWire = oneIn(2) && templateOf(type).senseLeads;
    if (oneIn(3)) setup.bridge.gauge.grid.area = Area(between(1e-6, 20e-6));
    if (oneIn(3)) setup.bridge.hookup = hookup();
    instrument(setup.instrument);
    acquisition(setup.acquisition);
    for (std::size_t left = 1 + below(6); left > 0; --left)
      channel = withShuntAdded(std::move(channel), shunt());
    for (std::size_t left = below(21); left > 0; --left)
      channel.setup.sequence.push_back(step(channel.setup));
    for (const auto kind : {MeritKind::Hysteresis, MeritKind::Repeatability})
      if (oneIn(2)) setup.limits.merits[kind] = 0.005;
    return channel;
  }

  const Stock& stock() const { return m_stock; }

 private:
  std::size_t below(std::size_t bound) { return m_random() % bound; }
  bool oneIn(std::size_t chances) { return below(chances) == 0; }
  double between(double low, double high) {
    return low + (high - low) * static_cast<double>(below(100001)) / 1e5;
  }
  template <std::size_t count>
  double pick(const double (&values)[count]) {
    return values[below(count)];
  }
  double resistance() { return pick({5e3, 29e3, 58e3, 87150.0, 87151.0, 174650.0, 350e3, 1e8}); }
  std::optional<Date> due() {
    if (oneIn(2)) return std::nullopt;
    return std::chrono::sys_days(today) + std::chrono::days(static_cast<int>(below(100)) - 30);
  }
  std::string text() {
    static constexpr std::array texts = {"",     "+1",    "-1",          "R1 (+)", "up",   "minus 2",
                                         "zero", "TP-01", "compression", "R2",     "−500", "+3, coming down"};
    return texts[below(texts.size())];
  }

  Hookup hookup() {
    Hookup hookup{oneIn(3), oneIn(3), oneIn(3)};
    const auto lead = [&] { return static_cast<LeadRole>(below(4)); };  // P+, P-, S+, S-
    if (oneIn(6)) hookup.broken[below(4)] = true;
    const LeadPair exchanged{lead(), lead()}, touching{lead(), lead()};
    if (oneIn(6) && exchanged.a != exchanged.b) hookup.exchanged = {exchanged};
    if (oneIn(6) && touching.a != touching.b) hookup.touching = {touching};
    return hookup;
  }

  void instrument(Instrument& instrument) {
    instrument.unit = static_cast<ReadingUnit>(below(readingUnitCount));
    instrument.excitation = Voltage(pick({1.0, 2.5, 5.0, 10.0}));
    if (oneIn(4)) instrument.range = Output(between(0.2e-3, 4e-3));
    if (oneIn(4)) instrument.current = CurrentSource{Current(between(1e-3, 20e-3)), Resistance(350)};
    if (oneIn(6)) instrument.bridgeFactor = 1;
  }

  void acquisition(Acquisition& acquisition) {
    if (oneIn(3)) acquisition.sampleRate = Frequency(pick({1.0, 10.0, 50.0}));
    if (oneIn(3)) acquisition.filter.kind = static_cast<FilterKind>(below(filterKindCount));
    if (oneIn(3)) acquisition.filter.cutoff = Frequency(between(0.2, 10));
    if (oneIn(4)) acquisition.mains = oneIn(2) ? std::optional(Frequency(60)) : std::nullopt;
  }

  Shunt shunt() {
    Shunt shunt{text(), Resistance(resistance())};
    const std::size_t arm = below(4);
    static constexpr std::array<std::pair<Node, Node>, 4> terminals = {{{Node::PPlus, Node::SMinus},
                                                                        {Node::SMinus, Node::PMinus},
                                                                        {Node::PMinus, Node::SPlus},
                                                                        {Node::SPlus, Node::PPlus}}};
    shunt.a = oneIn(3) ? terminals[arm].first : armBegin(arm);
    shunt.b = oneIn(3) ? terminals[arm].second : armEnd(arm);
    if (oneIn(12)) shunt.a = Node::PPlus, shunt.b = Node::PMinus;
    if (oneIn(3)) {  // measured anew since, perhaps; or a part that the stock does not have
      const Resistor& resistor = m_stock.resistors[below(3)];
      shunt.part.id = oneIn(4) ? "S-4" : resistor.id;
      shunt.resistance = oneIn(2) ? resistor.nominal : 1.0001 * resistor.nominal;
    }
    shunt.part.due = due();
    if (oneIn(3)) shunt.part.rating = Power(pick({1e-5, 1e-3, 0.125, 0.25}));
    if (oneIn(4)) shunt.wires = Resistance(between(0, 2));
    return shunt;
  }

  Step step(const Setup& setup) {
    Step step{text(), {}, Duration(pick({0.1, 0.5, 1.0, 1.25, 2.0})), Duration(pick({0.0, 0.05, 0.5, 5.0}))};
    if (oneIn(4)) return step;
    step.closed.push_back(below(setup.shunts.size()));
    if (oneIn(4)) step.closed.push_back(below(setup.shunts.size()));
    std::sort(step.closed.begin(), step.closed.end());
    step.closed.erase(std::unique(step.closed.begin(), step.closed.end()), step.closed.end());
    return step;
  }

  std::mt19937 m_random;
  Stock m_stock;
};

Findings reviewed(const Channel& channel, const Stock& stock) {
  return review(channel, evaluate(channel), stock, today);
}

/// The first mend takes its finding away, or leaves a less severe one, and makes no new fault.
void expectPromiseKept(const Channel& channel, const Stock& stock, const Findings& before,
                       const Finding& finding) {
  const Findings after = reviewed(finding.mends.front().apply(channel), stock);
  const std::string what = finding.mends.front().label + " against " + textOf({finding}) + "before:\n" +
                           textOf(before) + "after:\n" + textOf(after);
  EXPECT_LT(countsOf(after, finding.severity)[keyOf(finding)],
            countsOf(before, finding.severity)[keyOf(finding)])
      << what;
  if (finding.kind == FindingKind::Hookup) return;  // it may show what the hookup hid
  const Counts faults = countsOf(before, Severity::Fault);
  for (const auto& [key, count] : countsOf(after, Severity::Fault)) {
    const auto found = faults.find(key);
    const int present = found == faults.end() ? 0 : found->second;
    // Labels that are all wrong are one finding, and as many as there are once another label is right.
    const bool grouped = key.first == FindingKind::OppositePolarity &&
                         std::any_of(before.begin(), before.end(),
                                     [](auto& one) { return one.kind == FindingKind::OppositePolarity; });
    EXPECT_TRUE(grouped || count <= present) << findingKindKey(key.first) << " " << what;
  }
}

TEST(Mends, TheFirstOneOfEveryFindingTakesItAwayAndMakesNoNewFault) {
  std::set<FindingKind> seen;
  for (unsigned seed = 0; seed < 1500; ++seed) {
    HastyPlans plans(seed);
    const Channel channel = plans.channel();
    const Stock stock = plans.stock();
    const Findings findings = reviewed(channel, stock);
    for (const Finding& finding : findings) {
      if (finding.mends.empty()) continue;
      seen.insert(finding.kind);
      expectPromiseKept(channel, stock, findings, finding);
      if (HasFailure()) FAIL() << "seed " << seed;
    }
  }
  // Every kind that can be mended was; wiring, which these plans have none of, has tests of its own.
  for (const FindingKind kind : {FindingKind::CannotPredict, FindingKind::Wiring,
                                 FindingKind::ImpossibleValue, FindingKind::NothingToClose})
    EXPECT_FALSE(seen.contains(kind));
  EXPECT_EQ(seen.size(), findingKindCount - 4);
}

TEST(Mends, EveryOneIsAPureFunctionThatChangesSomething) {
  for (unsigned seed = 0; seed < 500; ++seed) {
    HastyPlans plans(seed);
    const Channel channel = plans.channel(), copy = channel;
    for (const Finding& finding : reviewed(channel, plans.stock()))
      for (const Mend& mend : finding.mends) {
        const Channel once = mend.apply(channel);
        EXPECT_EQ(channel, copy) << mend.label;
        EXPECT_EQ(once, mend.apply(channel)) << mend.label;
        EXPECT_NE(once, channel) << mend.label;
        EXPECT_FALSE(mend.label.empty());
      }
  }
}

TEST(Mends, OddestDocumentsAreReviewedAndMendedWithoutHarm) {
  for (const auto numbers : {support::Numbers::Plausible, support::Numbers::AnyFinite})
    for (std::uint64_t seed = 0; seed < 400; ++seed)
      for (const auto& channel : support::randomDocument(seed, numbers).channels)
        for (const Finding& finding : reviewed(*channel, {})) {
          EXPECT_FALSE(finding.what.empty() || finding.why.empty()) << findingKindKey(finding.kind);
          EXPECT_TRUE(!finding.step || *finding.step < channel->setup.sequence.size());
          EXPECT_TRUE(!finding.shunt || *finding.shunt < channel->setup.shunts.size());
          for (const Mend& mend : finding.mends) EXPECT_NE(mend.apply(*channel), *channel) << mend.label;
        }
}

}  // namespace mends_test
}  // namespace core
