// SPDX-License-Identifier: GPL-3.0-or-later
// The polarity map of every template against ngspice, an independent solver, run on the netlists that we
// export (needs the ngspice package), and against the signs of the trade.
#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <string>
#include <vector>

#include "core/plan/spice.h"
#include "core/polarity/place_words.h"
#include "core/polarity/polarity_map.h"
#include "tests/support/ngspice.h"
#include "tests/support/reached_digits.h"
#include "tests/support/setups.h"

namespace {

using namespace core;
using ArmStrains = std::array<double, 4>;

constexpr double poisson = 0.29, factor = 2.07;
constexpr double shuntValues[] = {10e3, 174.65e3, 2.2e6};  // ohm: rough, usual, small steps

/// Strain of arms 1 to 4 for unit strain of gauge 1, not from the program: output equations of quarter, half
/// and full bridges in Bower ch. 27 eq. 27.4 to 27.6 and 27.11, TN-514 eq. 514.18 to 514.32 (Poisson and
/// column); the two bending Poisson bridges are derived from their gauges' places.
ArmStrains strainsOf(BridgeType type) {
  switch (type) {
    case BridgeType::QuarterTwoWire:
    case BridgeType::QuarterThreeWire:
      return {1, 0, 0, 0};
    case BridgeType::HalfBending:
      return {1, -1, 0, 0};
    case BridgeType::HalfPoisson:
      return {1, -poisson, 0, 0};
    case BridgeType::HalfDiagonal:
      return {1, 0, 1, 0};
    case BridgeType::FullPoissonColumn:
      return {1, -poisson, 1, -poisson};
    case BridgeType::FullPoissonBendingSplit:
      return {1, -1, poisson, -poisson};
    case BridgeType::FullPoissonBendingMixed:
      return {1, -poisson, poisson, -1};
    case BridgeType::FullBending:
    case BridgeType::FullTorsion:
    case BridgeType::Transducer:
      return {1, -1, 1, -1};
  }
  return {};
}

/// No two arms and no two leads alike, so that hardly any place does nothing by symmetry.
core::Setup unequalBridge(BridgeType type, bool sixWire) {
  core::Setup setup = test::equalArms(type, 350.0_ohm, factor, poisson);
  setup.bridge.arms = {350.31_ohm, 349.62_ohm, 350.88_ohm, 349.27_ohm};
  for (std::size_t role = 0; role < leadRoleCount; ++role)
    setup.bridge.leads[role] = Resistance(0.4 + 0.37 * static_cast<double>(role));
  setup.bridge.sixWire = sixWire;
  setup.sequence.push_back({"zero", {}});
  return setup;
}

/// The bridge with every active arm under `stimulus`: dR = F e R of a gauge, of a transducer (rated output x
/// load / capacity) of the arm itself.
core::Setup strained(core::Setup setup, double stimulus) {
  const ArmStrains strains = strainsOf(setup.bridge.type);
  const double turned = setup.bridge.hookup.gaugesReversed ? -1 : 1;
  for (std::size_t arm = 0; arm < 4; ++arm) {
    const double ohm = setup.bridge.arms[arm].base();
    const double perStrain = isTransducer(setup.bridge)
                                 ? setup.bridge.rating.ratedOutput.base() * ohm
                                 : setup.bridge.gauge.factor * setup.bridge.gauge.nominal.base();
    setup.bridge.arms[arm] = Resistance(ohm + turned * strains[arm] * stimulus * perStrain);
  }
  return setup;
}

/// All decks of a comparison, run together.
class Bench {
 public:
  /// Puts the netlist of a step on the bench; its output is that of `outputs` at the place returned.
  std::size_t add(const core::Setup& setup, std::size_t step) {
    const auto netlist = spiceNetlist(setup, step, "polarity map");
    EXPECT_TRUE(netlist) << netlist.error().text();
    const auto deck = test::exportedDeck(*netlist);
    EXPECT_TRUE(deck) << deck.error().text();
    m_exported.push_back(*deck);
    m_decks.push_back(deck->deck);
    return m_decks.size() - 1;
  }

  std::vector<double> outputs() const {
    const auto voltages = test::operatingPoints(m_decks);
    EXPECT_TRUE(voltages) << voltages.error().text().substr(0, 4000);
    std::vector<double> outputs;
    if (!voltages) return outputs;
    for (std::size_t k = 0; k < m_decks.size(); ++k)
      outputs.push_back(m_exported[k].outputOf((*voltages)[k]));
    return outputs;
  }

  const std::string& netlist(std::size_t place) const { return m_decks[place].netlist; }

 private:
  std::vector<test::ExportedDeck> m_exported;
  std::vector<test::Deck> m_decks;
};

/// A cell of a map and where on the bench its truth is.
struct Case {
  std::string name;
  Prediction ours;
  std::size_t zero = 0, shunted = 0, strained = 0;
};

void addCases(Bench& bench, std::vector<Case>& cases, const core::Setup& setup, double ohm) {
  const auto map = polarityMap(setup, Resistance(ohm));
  ASSERT_TRUE(map) << map.error().text();
  const std::size_t zero = bench.add(setup, 0);
  for (const PolarityCell& cell : map->cells) {
    const std::string name = std::string(templateOf(setup.bridge.type).key) +
                             (setup.bridge.sixWire ? ", six-wire, " : ", ") + std::to_string(ohm) + " ohm " +
                             placeWords(setup.bridge, cell.a, cell.b);
    ASSERT_TRUE(cell.prediction) << name << ": " << cell.prediction.error().text();
    const core::Setup shunted = test::withShunt(setup, Resistance(ohm), cell.a, cell.b);
    cases.push_back({name, *cell.prediction, zero, bench.add(shunted, 1),
                     bench.add(strained(setup, cell.prediction->simulated), 0)});
  }
}

// An assembled nodal matrix holds a lead's conductance beside an arm's: outputs are good to about 2e-16 times
// arm over lead, 350/0.4 here. Twice that of a difference, and 1e-9 of the output.
constexpr double rounding = 2 * 2e-16 * 350 / 0.4;

const test::Source ofExcitation("ngspice, polarity, of 1 V/V", 1);

/// Every cell's sign, size and simulated strain. Gives the number of cells with a sign.
std::size_t expectAgreement(const Bench& bench, const std::vector<Case>& cases) {
  const std::vector<double> outputs = bench.outputs();
  std::size_t signs = 0;
  if (outputs.empty()) return 0;
  for (const Case& one : cases) {
    SCOPED_TRACE(one.name + "\n" + bench.netlist(one.shunted));
    const double theirs = outputs[one.shunted] - outputs[one.zero];
    const double allowed = 1e-9 * std::abs(theirs) + rounding;
    EXPECT_REACHED(ofExcitation, "outputs of all places", one.ours.output.base(), theirs, allowed);
    EXPECT_REACHED(ofExcitation, "simulated strain fed back", outputs[one.strained] - outputs[one.zero],
                   theirs, allowed)
        << "strain fed back";
    if (std::abs(theirs) <= 2 * rounding) continue;  // nothing that ngspice could tell the sign of
    EXPECT_EQ(one.ours.polarity, theirs > 0 ? Polarity::Positive : Polarity::Negative);
    ++signs;
  }
  return signs;
}

std::vector<core::Setup> allBridges() {
  std::vector<core::Setup> setups;
  for (const BridgeTemplate& shape : allTemplates())
    for (const bool sixWire : {false, true})
      if (!sixWire || shape.senseLeads) setups.push_back(unequalBridge(shape.type, sixWire));
  return setups;
}

TEST(PolarityNgspice, AllTemplatesAllPairsThreeShunts) {
  Bench bench;
  std::vector<Case> cases;
  for (const core::Setup& setup : allBridges())
    for (const double ohm : shuntValues) addCases(bench, cases, setup, ohm);
  // Points: quarter 6 and 7, half 7, 7 and 8, full 8 and, with six wires, 10, six of them: pairs n (n - 1)
  // / 2.
  ASSERT_EQ(cases.size(), 3u * (15 + 21 + 21 + 21 + 28 + 6 * (28 + 45)));
  const std::size_t signs = expectAgreement(bench, cases);
  // Without a sign: the terminals P+ and P- (the source holds them), and leads that carry no current. The
  // smallest that leads do with 2.2 Mohm is (0.4/2.2e6)^2, below what ngspice resolves.
  EXPECT_GT(signs, cases.size() * 3 / 4);
}

TEST(PolarityNgspice, SwappedWiresAndReversedGauges) {
  Bench bench;
  std::vector<Case> cases;
  for (const auto& [type, sixWire] :
       {std::pair(BridgeType::QuarterThreeWire, false), std::pair(BridgeType::HalfPoisson, false),
        std::pair(BridgeType::FullPoissonBendingMixed, true), std::pair(BridgeType::Transducer, true)})
    for (int bits = 1; bits < 8; ++bits) {
      core::Setup setup = unequalBridge(type, sixWire);
      setup.bridge.hookup.signalReversed = bits & 1;
      setup.bridge.hookup.excitationReversed = bits & 2;
      setup.bridge.hookup.gaugesReversed = bits & 4;
      addCases(bench, cases, setup, 59e3);
    }
  ASSERT_EQ(cases.size(), 7u * (21 + 21 + 45 + 45));
  EXPECT_GT(expectAgreement(bench, cases), cases.size() * 3 / 4);
}

// ---- signs and sizes of the trade ------------------------------------------------------------

/// The cell right across `arm`, counted from 1.
const Prediction& overArm(const core::Setup& setup, const PolarityMap& map, std::size_t arm) {
  for (const PolarityCell& cell : map.cells)
    if (placeWords(setup.bridge, cell.a, cell.b) == "over arm " + std::to_string(arm))
      return *cell.prediction;
  ADD_FAILURE() << "no cell over arm " << arm;
  return *map.cells.front().prediction;
}

/// F x the strain of gauge 1 that gives the output of a shunt Rs over an arm R, "down" (arm 1 or 3) and "up":
/// exact inverses of the bridge equations, sources as at `strainsOf`. The mixed bending Poisson bridge has a
/// quadratic instead: 2 x (1 + nu) / (4 - x^2 (1 - nu)^2) = v.
std::pair<double, double> closedForm(BridgeType type, double r, double rs) {
  const double nu = poisson, v = r / (4 * rs + 2 * r);
  const auto quadratic = [&](double output) {
    const double a = output * (1 - nu) * (1 - nu), b = 2 * (1 + nu);
    return 8 * output / (b + std::sqrt(b * b + 16 * a * output));
  };
  switch (type) {
    case BridgeType::QuarterTwoWire:
    case BridgeType::QuarterThreeWire:
      return {-r / (r + rs), r / rs};
    case BridgeType::HalfBending:
      return {-r / (r + 2 * rs), r / (r + 2 * rs)};
    case BridgeType::HalfDiagonal:
      return {-2 * r / (4 * rs + 3 * r), 2 * r / (4 * rs + r)};
    case BridgeType::HalfPoisson:
      return {-r / ((1 + nu) * rs + r), r / ((1 + nu) * rs + nu * r)};
    case BridgeType::FullPoissonColumn:
      return {-2 * r / (4 * (1 + nu) * rs + (3 + nu) * r), 2 * r / (4 * (1 + nu) * rs + (1 + 3 * nu) * r)};
    case BridgeType::FullPoissonBendingSplit:
      return {-r / ((1 + nu) * (2 * rs + r)), r / ((1 + nu) * (2 * rs + r))};
    case BridgeType::FullPoissonBendingMixed:
      return {quadratic(-v), quadratic(v)};
    case BridgeType::FullBending:
    case BridgeType::FullTorsion:
    case BridgeType::Transducer:
      return {-v, v};
  }
  return {};
}

TEST(PolaritySigns, ShuntsReadAsTheTechNoteSays) {
  // TN-514: a shunt can only lower its arm. Over the active arm it reads as compression, over the adjacent
  // one as tension; arm 3 as 1, arm 4 as 2. v = -+R/(4 Rs + 2 R).
  for (const BridgeTemplate& shape : allTemplates())
    for (const double ohm : shuntValues) {
      SCOPED_TRACE(std::string(shape.key) + " " + std::to_string(ohm));
      const core::Setup setup = test::equalArms(shape.type, 350.0_ohm, factor, poisson);
      const auto map = polarityMap(setup, Resistance(ohm));
      ASSERT_TRUE(map) << map.error().text();
      const auto [down, up] = closedForm(shape.type, 350, ohm);
      // A transducer's load over capacity follows from its rated output instead of a gauge factor.
      const double perX =
          isTransducer(setup.bridge) ? 1 / setup.bridge.rating.ratedOutput.base() : 1 / factor;
      for (const std::size_t arm : {1, 2, 3, 4}) {
        const Prediction& prediction = overArm(setup, *map, arm);
        const bool lowers = arm % 2 == 1;
        const double output = (lowers ? -1 : 1) * 350 / (4 * ohm + 700);
        // Differences of potentials near 1/2, 1e-16 each; the strain is about four times the output over F N,
        // N from 1 on, of a transducer output over 2e-3.
        EXPECT_EQ(prediction.polarity, lowers ? Polarity::Negative : Polarity::Positive);
        EXPECT_NEAR(prediction.output.base(), output, 1e-15);
        EXPECT_NEAR(prediction.simulated, (lowers ? down : up) * perX, 4e-15 * perX);
      }
    }
}

TEST(PolaritySigns, SwappedWiresTurnTheReadingAndNotTheStrain) {
  // Derived from TN-514's rule: with the signal wires or the excitation the other way round, tension itself
  // reads as compression, so the output turns and the strain that the shunt stands for stays. Both cancel.
  // Reversed gauges turn what the same output stands for.
  for (const BridgeTemplate& shape : allTemplates())
    for (int bits = 0; bits < 8; ++bits) {
      SCOPED_TRACE(std::string(shape.key) + " " + std::to_string(bits));
      core::Setup setup = test::withLeads(test::equalArms(shape.type, 350.0_ohm, factor, poisson), 0.5_ohm);
      setup.bridge.sixWire = shape.senseLeads;
      setup.bridge.hookup.signalReversed = bits & 1;
      setup.bridge.hookup.excitationReversed = bits & 2;
      setup.bridge.hookup.gaugesReversed = bits & 4;
      const auto map = polarityMap(setup, 59.0_kohm);
      ASSERT_TRUE(map) << map.error().text();
      const bool turned = (bits & 1) != (bits & 2) / 2;
      for (const std::size_t arm : {1, 2, 3, 4}) {
        const Prediction& prediction = overArm(setup, *map, arm);
        const bool negative = (arm % 2 == 1) != turned;
        EXPECT_EQ(prediction.polarity, negative ? Polarity::Negative : Polarity::Positive) << "arm " << arm;
        EXPECT_EQ(prediction.reading.base() < 0, negative) << "arm " << arm;
        EXPECT_EQ(prediction.simulated < 0, (arm % 2 == 1) != bool(bits & 4)) << "arm " << arm;
      }
    }
}

}  // namespace
