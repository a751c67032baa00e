// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/circuit/batch_solver.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <random>

#include "core/circuit/bridge_circuit.h"
#include "tests/support/digits.h"

using namespace core;

namespace {

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();
constexpr double infinity = std::numeric_limits<double>::infinity();

using Lanes = std::array<double, solverLanes>;

struct Solved {
  Lanes ratio{}, input{};
};

Solved solved(BatchSolver& solver, const std::vector<double>& conductance) {
  Solved result;
  result.ratio.fill(-7), result.input.fill(-7);
  solver.solve(conductance.data(), result.ratio.data(), result.input.data());
  return result;
}

std::vector<bool> allClosed(const Network& net) { return std::vector<bool>(net.branches.size(), false); }

/// Conductances of `net` in every lane; NaN, which would spoil the lane, where nothing may be read.
std::vector<double> conductances(const Network& net, const std::vector<bool>& open) {
  std::vector<double> result(net.branches.size() * solverLanes, notANumber);
  for (std::size_t k = 0; k < result.size(); ++k) {
    const double ohm = net.branches[k / solverLanes].resistance.base();
    if (!open[k / solverLanes] && ohm > 0) result[k] = 1 / ohm;
  }
  return result;
}

BatchSolver prepared(const Network& net, const std::vector<bool>& open, Port excitation, Port output,
                     Port reference) {
  auto solver = BatchSolver::prepare(net, open, excitation, output, reference);
  EXPECT_TRUE(solver) << (solver ? "" : solver.error().text());
  return *std::move(solver);
}

constexpr NodeIndex plus = 0, minus = 1, signalMinus = 2, signalPlus = 3;
constexpr Port excitation{plus, minus}, bridgeOutput{signalPlus, signalMinus};

/// A Wheatstone bridge in the numbering of the project, and an instrument input unless 0.
Network bridge(const std::array<double, 4>& arms, double input = 0) {
  Network net{{"P+", "P-", "S-", "S+"},
              {{"arm 1", plus, signalMinus, Resistance(arms[0])},
               {"arm 2", signalMinus, minus, Resistance(arms[1])},
               {"arm 3", minus, signalPlus, Resistance(arms[2])},
               {"arm 4", signalPlus, plus, Resistance(arms[3])}}};
  if (input > 0) net.branches.push_back({"input", signalPlus, signalMinus, Resistance(input)});
  return net;
}

/// Solves a bridge with other arms in each lane; from 10 ohm to 100 kohm.
struct ManyBridges {
  std::vector<std::array<double, 4>> arms;
  Solved solved;
};
ManyBridges manyBridges(double input = 0) {
  std::mt19937_64 random(350);
  std::uniform_real_distribution<double> decades(1, 5);
  ManyBridges result;
  BatchSolver solver = prepared(bridge({1, 1, 1, 1}, input), allClosed(bridge({1, 1, 1, 1}, input)),
                                excitation, bridgeOutput, excitation);
  std::vector<double> conductance(5 * solverLanes, input > 0 ? 1 / input : notANumber);
  for (std::size_t lane = 0; lane < solverLanes; ++lane) {
    result.arms.emplace_back();
    for (std::size_t arm = 0; arm < 4; ++arm)
      conductance[arm * solverLanes + lane] = 1 / (result.arms.back()[arm] = std::pow(10, decades(random)));
  }
  result.solved = solved(solver, conductance);
  return result;
}

/// (R1 R3 - R2 R4) / ((R1 + R2)(R3 + R4)), Micro-Measurements TN-514 eq. 514.1a.
double bridgeFormula(const std::array<double, 4>& r) {
  return (r[0] * r[2] - r[1] * r[3]) / ((r[0] + r[1]) * (r[2] + r[3]));
}

/// Two potentials of at most 1 V, a handful of roundings of 1.1e-16 each.
constexpr double fewRoundings = 1e-15;

}  // namespace

TEST(BatchSolver, UnloadedBridgeFollowsThePublishedGeneralForm) {
  const ManyBridges many = manyBridges();
  for (std::size_t lane = 0; lane < solverLanes; ++lane) {
    const auto& r = many.arms[lane];
    EXPECT_NEAR(many.solved.ratio[lane], bridgeFormula(r), fewRoundings) << lane;
    // Two arms in series, twice, in parallel.
    EXPECT_DIGITS(many.solved.input[lane], 1 / (r[0] + r[1]) + 1 / (r[2] + r[3]), 15) << lane;
  }
}

TEST(BatchSolver, LoadedBridgeFollowsThevenin) {
  // Thevenin (textbook): the unloaded output behind R1 || R2 + R3 || R4, divided with the input.
  const double input = 1000;
  const ManyBridges many = manyBridges(input);
  for (std::size_t lane = 0; lane < solverLanes; ++lane) {
    const auto& r = many.arms[lane];
    const double inside = r[0] * r[1] / (r[0] + r[1]) + r[2] * r[3] / (r[2] + r[3]);
    EXPECT_NEAR(many.solved.ratio[lane], bridgeFormula(r) * input / (input + inside), fewRoundings) << lane;
  }
}

TEST(BatchSolver, InputConductanceOfAnEqualArmBridgeIsThatOfOneArm) {
  // Derived: 2 R || 2 R = R, whatever the input across the two equal potentials.
  for (const double input : {0.0, 1e3, 1e7}) {
    const Network net = bridge({350, 350, 350, 350}, input);
    BatchSolver solver = prepared(net, allClosed(net), excitation, bridgeOutput, excitation);
    const Solved result = solved(solver, conductances(net, allClosed(net)));
    EXPECT_DIGITS(1 / result.input[0], 350, 15) << input;
  }
}

TEST(BatchSolver, ConstantCurrentBridgeFollowsTheClosedForm) {
  // Derived: output over current = (R1 R3 - R2 R4) / (R1 + R2 + R3 + R4), the general form times the input
  // resistance (R1 + R2)(R3 + R4) / (R1 + R2 + R3 + R4).
  const ManyBridges many = manyBridges();
  for (std::size_t lane = 0; lane < solverLanes; ++lane) {
    const auto& r = many.arms[lane];
    const double perCurrent = many.solved.ratio[lane] / many.solved.input[lane];
    const double expected = (r[0] * r[2] - r[1] * r[3]) / (r[0] + r[1] + r[2] + r[3]);
    EXPECT_NEAR(perCurrent, expected, fewRoundings / many.solved.input[lane]) << lane;
  }
}

TEST(BatchSolver, BalancedBridgeShowsNothingHoweverFarItsArmsLieApart) {
  // Derived: R1 / R2 = R4 / R3, so both potentials are R2 / (R1 + R2). All products are exact powers of two.
  const Network net = bridge({0.125, 1048576, 16777216, 2}, 64);
  BatchSolver solver = prepared(net, allClosed(net), excitation, bridgeOutput, excitation);
  EXPECT_NEAR(solved(solver, conductances(net, allClosed(net))).ratio[0], 0, 3e-16);
}

TEST(BatchSolver, ResistancesFarApartKeepTheirDigits) {
  // Derived: a divider of 1e9 ohm over 3e9 ohm, its middle two nodes tied by 1e-3 ohm.
  const double tie = 1e-3, above = 1e9, below = 3e9;
  const Network net{{"P+", "P-", "a", "b"},
                    {{"above", 0, 2, Resistance(above)},
                     {"tie", 2, 3, Resistance(tie)},
                     {"below", 3, 1, Resistance(below)}}};
  BatchSolver solver = prepared(net, allClosed(net), {0, 1}, {2, 1}, {0, 1});
  const Solved result = solved(solver, conductances(net, allClosed(net)));
  EXPECT_DIGITS(result.ratio[5], (tie + below) / (above + tie + below), 15);
  EXPECT_DIGITS(result.input[5], 1 / (above + tie + below), 15);
}

TEST(BatchSolver, SensedReferenceDividesOutTheLeads) {
  // Derived: bridge R = 350 behind 35 ohm each side sees 350 / 420 of the excitation; over the sense pair the
  // output is that of the bare bridge. The sense leads carry nothing.
  const std::array<double, 4> arms = {351, 349, 350, 352};
  Network net = bridge(arms);
  net.nodes.insert(net.nodes.end(), {"P+ at the instrument", "P- at the instrument", "sense+", "sense-"});
  net.branches.insert(net.branches.end(), {{"lead P+", 4, plus, Resistance(35)},
                                           {"lead P-", 5, minus, Resistance(35)},
                                           {"lead sense+", 6, plus, Resistance(35)},
                                           {"lead sense-", 7, minus, Resistance(35)}});
  BatchSolver solver = prepared(net, allClosed(net), {4, 5}, bridgeOutput, {6, 7});
  EXPECT_NEAR(solved(solver, conductances(net, allClosed(net))).ratio[0], bridgeFormula(arms), fewRoundings);
}

TEST(BatchSolver, SwappedPortsTurnTheSignToTheBit) {
  const Network net = bridge({351.2, 349.5, 350, 350.4}, 1e6);
  const auto ratioOf = [&](Port output, Port reference) {
    BatchSolver solver = prepared(net, allClosed(net), excitation, output, reference);
    return solved(solver, conductances(net, allClosed(net))).ratio[31];
  };
  const double ratio = ratioOf(bridgeOutput, excitation);
  EXPECT_GT(ratio, 1e-4);  // 351.2 x 350 > 349.5 x 350.4
  EXPECT_EQ(ratioOf({signalMinus, signalPlus}, excitation), -ratio);
  EXPECT_EQ(ratioOf(bridgeOutput, {minus, plus}), -ratio);
  EXPECT_EQ(ratioOf(excitation, excitation), 1);
  EXPECT_EQ(ratioOf({plus, plus}, excitation), 0);
}

namespace {

/// One random case: a tree with as many chords as nodes, some branches of zero ohm, one chord in six and one
/// link of the tree in `openLink` open.
struct RandomCase {
  Network net;
  std::vector<bool> open;
  Port excitation, output, reference;
  std::vector<double> conductance;
};

RandomCase randomCase(std::mt19937_64& random, std::size_t openLink = 24) {
  const auto below = [&](std::size_t count) { return random() % count; };
  const auto ohm = [&] { return std::pow(10, std::uniform_real_distribution<double>(-1, 7)(random)); };
  RandomCase result;
  const std::size_t count = 4 + below(11);
  for (std::size_t node = 0; node < count; ++node) result.net.nodes.push_back("n" + std::to_string(node));
  for (std::size_t k = 1; k < 2 * count; ++k) {
    const NodeIndex a = k < count ? k : below(count), b = below(k < count ? k : count);
    result.net.branches.push_back({"b" + std::to_string(k), a, b, Resistance(below(8) == 0 ? 0 : ohm())});
    result.open.push_back(below(k < count ? openLink : 6) == 0);
  }
  const auto port = [&] {
    const NodeIndex first = below(count);
    return Port{first, (first + 1 + below(count - 1)) % count};
  };
  result.excitation = port(), result.output = port();
  result.reference = below(2) == 0 ? result.excitation : port();
  result.conductance = conductances(result.net, result.open);
  for (double& conductance : result.conductance)
    if (conductance > 0) conductance = 1 / ohm();
  return result;
}

/// The same network for the other solver: what is open is not there.
Network withoutOpen(const RandomCase& random) {
  Network net = random.net;
  for (BranchIndex branch = 0; branch < net.branches.size(); ++branch)
    if (random.open[branch]) net.branches[branch].a = net.branches[branch].b = random.excitation.plus;
  return net;
}

bool takesPart(const RandomCase& random, BranchIndex branch) {
  return !random.open[branch] && random.net.branches[branch].resistance.base() > 0;
}

/// What core::Solver, checked against quadruple precision in its own test, makes of one lane.
struct Expected {
  double reference = 0, ratio = 0, ratioTolerance = 0, input = 0, inputTolerance = 0;
};

/// Relative error of a potential by either solver. Nothing is subtracted, so each of up to 12 eliminated
/// nodes adds its roundings, about three of 1.1e-16, to what it passes on: 7e-16 as 36 random steps.
constexpr double potentialError = 1e-15;

Expected expectedOf(const RandomCase& random, Solver& solver, std::size_t lane) {
  Expected expected;
  for (BranchIndex branch = 0; branch < random.open.size(); ++branch)
    if (takesPart(random, branch))
      solver.setResistance(branch, Resistance(1 / random.conductance[branch * solverLanes + lane]));
  EXPECT_TRUE(solver.solve());
  const auto greater = [&](Port port) {
    return std::max(solver.potential(port.plus), solver.potential(port.minus));
  };
  expected.reference = solver.between(random.reference);
  expected.ratio = solver.between(random.output) / expected.reference;
  // d(o/q) = (do - r dq) / q, two potentials each, two solvers.
  expected.ratioTolerance = 4 * potentialError *
                            (greater(random.output) + std::abs(expected.ratio) * greater(random.reference)) /
                            std::abs(expected.reference);
  // Tellegen: what 1 V drives in is the power in all branches, g v^2; its error is 2 i dv + g dv^2.
  for (BranchIndex k = 0; k < random.open.size(); ++k) {
    if (!takesPart(random, k)) continue;
    const Port ends{random.net.branches[k].a, random.net.branches[k].b};
    const double g = random.conductance[k * solverLanes + lane], v = solver.between(ends);
    const double error = 2 * potentialError * greater(ends);
    expected.input += g * v * v;
    expected.inputTolerance += 2 * g * std::abs(v) * error + g * error * error;
  }
  expected.inputTolerance += potentialError * expected.input;
  return expected;
}

}  // namespace

TEST(BatchSolver, AgreesWithTheSolverOnRandomNetworks) {
  std::mt19937_64 random(20240820);
  int networks = 0, refused = 0;
  while (networks < 1200) {
    const RandomCase now = randomCase(random);
    auto batch = BatchSolver::prepare(now.net, now.open, now.excitation, now.output, now.reference);
    if (!batch) {
      ++refused;
      continue;
    }
    ++networks;
    auto solver = Solver::prepare(withoutOpen(now), now.excitation);
    ASSERT_TRUE(solver);
    const Solved result = solved(*batch, now.conductance);
    for (std::size_t lane = 0; lane < solverLanes; ++lane) {
      const Expected expected = expectedOf(now, *solver, lane);
      EXPECT_NEAR(result.input[lane], expected.input, expected.inputTolerance)
          << networks << ", lane " << lane;
      if (std::abs(expected.reference) > 1e-12)
        EXPECT_NEAR(result.ratio[lane], expected.ratio, expected.ratioTolerance)
            << networks << ", lane " << lane;
      else
        EXPECT_TRUE(std::isnan(result.ratio[lane])) << networks << ", lane " << lane;
    }
  }
  EXPECT_GT(refused, 100);  // looked at in the next test
}

TEST(BatchSolver, RefusesWhatTheSolverRefusesInTheSameWords) {
  std::mt19937_64 random(20240821);
  int shorted = 0, floating = 0, nothingMeasured = 0;
  for (int round = 0; round < 3000; ++round) {
    const RandomCase now = randomCase(random, 4);
    const auto batch = BatchSolver::prepare(now.net, now.open, now.excitation, now.output, now.reference);
    auto solver = Solver::prepare(withoutOpen(now), now.excitation);
    if (!solver) {
      ++shorted;
      ASSERT_FALSE(batch) << round;
      EXPECT_EQ(batch.error().text(), solver.error().text());
    } else if (const auto done = solver->solve(); !done) {
      ++floating;
      ASSERT_FALSE(batch) << round;
      EXPECT_EQ(batch.error().text(), done.error().text());
    } else if (!batch) {
      ++nothingMeasured;  // a measured node without a branch, or no voltage between the reference nodes
      const bool bare = !solver->connected(now.output.plus) || !solver->connected(now.output.minus) ||
                        !solver->connected(now.reference.plus) || !solver->connected(now.reference.minus);
      EXPECT_TRUE(bare || std::abs(solver->between(now.reference)) <= 2 * potentialError)
          << round << batch.error().text();
    }
  }
  EXPECT_GT(std::min({shorted, floating, nothingMeasured}), 30);
}

TEST(BatchSolver, LanesAreIndependentToTheBit) {
  std::mt19937_64 random(7);
  for (int networks = 0; networks < 300;) {
    const RandomCase now = randomCase(random);
    auto batch = BatchSolver::prepare(now.net, now.open, now.excitation, now.output, now.reference);
    if (!batch) continue;
    ++networks;
    std::array<std::size_t, solverLanes> from{};
    std::iota(from.begin(), from.end(), std::size_t{0});
    std::shuffle(from.begin(), from.end(), random);
    std::vector<double> shuffled = now.conductance;
    for (std::size_t k = 0; k < shuffled.size(); ++k)
      shuffled[k] = now.conductance[k / solverLanes * solverLanes + from[k % solverLanes]];
    const Solved straight = solved(*batch, now.conductance), mixed = solved(*batch, shuffled);
    Lanes ratio{};
    batch->solve(shuffled.data(), ratio.data());
    for (std::size_t lane = 0; lane < solverLanes; ++lane) {
      EXPECT_EQ(mixed.input[lane], straight.input[from[lane]]);
      if (std::isnan(straight.ratio[from[lane]])) {
        EXPECT_TRUE(std::isnan(mixed.ratio[lane]) && std::isnan(ratio[lane]));
        continue;
      }
      EXPECT_EQ(mixed.ratio[lane], straight.ratio[from[lane]]);
      EXPECT_EQ(ratio[lane], mixed.ratio[lane]) << "without the input conductance";
    }
  }
}

TEST(BatchSolver, ImpossibleConductanceLeavesItsOwnLaneWithoutResult) {
  // "tail" carries no current, "across" lies between joined nodes: both still belong to the trial.
  Network net = bridge({351, 349, 350, 352}, 1e4);
  net.nodes.insert(net.nodes.end(), {"tip", "S- too"});
  net.branches.insert(net.branches.end(), {{"tail", signalPlus, 4, Resistance(100)},
                                           {"join", signalMinus, 5, Resistance(0)},
                                           {"across", 5, signalMinus, Resistance(100)}});
  BatchSolver solver = prepared(net, allClosed(net), excitation, bridgeOutput, excitation);
  const std::vector<double> good = conductances(net, allClosed(net));
  const Solved expected = solved(solver, good);
  for (BranchIndex branch = 0; branch < net.branches.size(); ++branch)
    for (const double wrong : {0.0, -0.0, -1.0, notANumber, infinity, -infinity}) {
      const std::size_t bad = (branch * 7 + 3) % solverLanes;
      std::vector<double> conductance = good;
      conductance[branch * solverLanes + bad] = wrong;
      const Solved result = solved(solver, conductance);
      for (std::size_t lane = 0; lane < solverLanes; ++lane) {
        const bool spoilt = lane == bad && net.branches[branch].name != "join";
        EXPECT_EQ(std::isnan(result.ratio[lane]), spoilt) << net.branches[branch].name << " " << wrong;
        EXPECT_EQ(std::isnan(result.input[lane]), spoilt) << net.branches[branch].name << " " << wrong;
        if (spoilt) continue;
        EXPECT_EQ(result.ratio[lane], expected.ratio[lane]);
        EXPECT_EQ(result.input[lane], expected.input[lane]);
      }
    }
  // The next batch is not touched by the one before.
  EXPECT_EQ(solved(solver, good).ratio, expected.ratio);
}

TEST(BatchSolver, LaneWithoutReferenceVoltageHasNoRatio) {
  // The reference is the output of a second bridge, balanced in lane 4 alone.
  const Network net = bridge({350, 350, 350, 350});
  BatchSolver solver = prepared(net, allClosed(net), excitation, {signalPlus, minus}, bridgeOutput);
  std::vector<double> conductance = conductances(net, allClosed(net));
  for (std::size_t lane = 0; lane < solverLanes; ++lane)
    if (lane != 4) conductance[lane] = 1 / 360.0;
  const Solved result = solved(solver, conductance);
  // Derived: 0.5 over 0.5 - 350 / 710.
  for (std::size_t lane = 0; lane < solverLanes; ++lane)
    if (lane == 4)
      EXPECT_TRUE(std::isnan(result.ratio[lane]));
    else
      EXPECT_DIGITS(result.ratio[lane], 71, 12) << lane;  // 1e-16 of 0.5 / 71
  EXPECT_DIGITS(result.input[4], 1 / 350.0, 15);
}

namespace {

Error refusal(const Network& net, const std::vector<bool>& open, Port output = bridgeOutput,
              Port reference = excitation) {
  const auto solver = BatchSolver::prepare(net, open, excitation, output, reference);
  EXPECT_FALSE(solver);
  return solver ? Error{} : solver.error();
}

}  // namespace

TEST(BatchSolver, RefusalsNameWhatIsWrong) {
  const Network good = bridge({350, 350, 350, 350});
  Network shorted = good;
  shorted.branches[0].resistance = shorted.branches[1].resistance = Resistance(0);
  EXPECT_EQ(refusal(shorted, allClosed(shorted)).where, "excitation");
  EXPECT_NE(refusal(shorted, allClosed(shorted)).what.find("P+ and P- are joined"), std::string::npos);

  // Both arms at S- open: nothing is left there, but the output asks for it.
  EXPECT_EQ(refusal(good, {true, true, false, false}).where, "S-");
  EXPECT_FALSE(refusal(good, {true, true, false, false}).mend.empty());
  // The same as the reference.
  EXPECT_EQ(refusal(good, {true, true, false, false}, {signalPlus, minus}, {plus, signalMinus}).where, "S-");
  // An island that nobody measures.
  Network island = good;
  island.nodes.insert(island.nodes.end(), {"sense+", "sense-"});
  island.branches.push_back({"loose", 4, 5, Resistance(10)});
  EXPECT_EQ(refusal(island, allClosed(island)).where, "sense+, sense-");

  // Both reference nodes hang on one.
  Network tails = good;
  tails.nodes.insert(tails.nodes.end(), {"sense+", "sense-"});
  tails.branches.insert(tails.branches.end(),
                        {{"one", plus, 4, Resistance(10)}, {"two", 5, plus, Resistance(20)}});
  EXPECT_EQ(refusal(tails, allClosed(tails), bridgeOutput, {4, 5}).what,
            "no voltage between the reference terminals");

  for (const double wrong : {-1.0, notANumber, infinity}) {
    Network impossible = good;
    impossible.branches[2].resistance = Resistance(wrong);
    EXPECT_EQ(refusal(impossible, allClosed(impossible)).where, "arm 3") << wrong;
    // Open, it takes no part.
    EXPECT_TRUE(
        BatchSolver::prepare(impossible, {false, false, true, false}, excitation, bridgeOutput, excitation));
  }
}

TEST(BatchSolver, OpenSwitchLeavesNothingFloating) {
  // A shunt to a node that only it touches: open, neither is there.
  Network net = bridge({351, 349, 350, 352});
  net.nodes.push_back("tip");
  net.branches.push_back({"shunt", signalMinus, 4, Resistance(1e5)});
  std::vector<bool> open = allClosed(net);
  open.back() = true;
  BatchSolver solver = prepared(net, open, excitation, bridgeOutput, excitation);
  const double ratio = solved(solver, conductances(net, open)).ratio[0];
  EXPECT_NEAR(ratio, bridgeFormula({351, 349, 350, 352}), fewRoundings);
  // Closed, it ends nowhere and changes nothing.
  BatchSolver closed = prepared(net, allClosed(net), excitation, bridgeOutput, excitation);
  EXPECT_EQ(solved(closed, conductances(net, allClosed(net))).ratio[0], ratio);
}

TEST(BatchSolver, AgreesWithTheBridgeCircuitOfEveryTemplateAndShunt) {
  const std::vector<ShuntBranch> shunts = {{"on arm 1", Node::Arm1Begin, Node::Arm1End, 174.65_kohm},
                                           {"on arm 2", Node::Arm2Begin, Node::Arm2End, 87.15_kohm},
                                           {"at the instrument", Node::SMinus, Node::PPlus, 59.0_kohm}};
  int compared = 0;
  for (const BridgeTemplate& type : allTemplates())
    for (const bool sixWire : {false, true}) {
      if (sixWire && !type.senseLeads) continue;
      Bridge bridge;
      bridge.type = type.type;
      bridge.sixWire = sixWire;
      bridge.arms = {Resistance(350.3), Resistance(349.6), Resistance(350.1), Resistance(350)};
      for (std::size_t k = 0; k < bridge.leads.size(); ++k) bridge.leads[k] = Resistance(1.5 + 0.25 * k);
      Instrument instrument;
      instrument.inputResistance = 1.0_Mohm;
      auto circuit = BridgeCircuit::make(bridge, instrument, shunts);
      ASSERT_TRUE(circuit) << circuit.error().text();
      const BridgeNetwork& net = circuit->network();
      for (std::size_t closed = 0; closed <= shunts.size(); ++closed) {  // the last: all open
        std::vector<bool> open = allClosed(net.network);
        for (std::size_t k = 0; k < shunts.size(); ++k) open[net.firstShunt + k] = k != closed;
        BatchSolver batch = prepared(net.network, open, net.excitation, net.output, net.reference);
        circuit->openAll();
        if (closed < shunts.size()) {
          ASSERT_TRUE(circuit->close(closed));
        }
        const auto output = circuit->solveOutput();
        ASSERT_TRUE(output);
        EXPECT_NEAR(solved(batch, conductances(net.network, open)).ratio[0], output->base(), fewRoundings)
            << type.key << sixWire << closed;
        ++compared;
      }
    }
  EXPECT_GE(compared, 4 * (11 + 6));
}
