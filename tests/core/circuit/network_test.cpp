// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/circuit/network.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <random>

#include "tests/support/digits.h"

using namespace core;

namespace network_test {

constexpr NodeIndex plus = 0, minus = 1, a = 2, b = 3, c = 4;
constexpr Port excitation{plus, minus};

/// Nodes plus, minus, a, b, c; as many as `branches` need.
Network network(std::vector<Branch> branches, std::vector<std::string> nodes = {"plus", "minus", "a", "b"}) {
  return {std::move(nodes), std::move(branches)};
}

/// A Wheatstone bridge in the numbering of the project: a is S-, b is S+.
Network bridge(double r1, double r2, double r3, double r4) {
  return network({{"arm 1", plus, a, Resistance(r1)},
                  {"arm 2", a, minus, Resistance(r2)},
                  {"arm 3", minus, b, Resistance(r3)},
                  {"arm 4", b, plus, Resistance(r4)}});
}
constexpr Port bridgeOutput{b, a};

Solver prepared(const Network& net) {
  auto solver = Solver::prepare(net, excitation);
  EXPECT_TRUE(solver) << (solver ? "" : solver.error().text());
  return *std::move(solver);
}

Solver solved(const Network& net) {
  Solver solver = prepared(net);
  const auto done = solver.solve();
  EXPECT_TRUE(done) << (done ? "" : done.error().text());
  return solver;
}

/// (R1 R3 - R2 R4) / ((R1 + R2)(R3 + R4)), Micro-Measurements TN-514 eq. 514.1a; in any number type.
template <class T>
T bridgeFormula(T r1, T r2, T r3, T r4) {
  return (r1 * r3 - r2 * r4) / ((r1 + r2) * (r3 + r4));
}

__extension__ typedef __float128 Quad;  // 113-bit mantissa

/// Potentials for 1 V from node 0 to node 1 by the textbook's other way: the assembled nodal matrix in
/// Gaussian elimination, in quadruple precision, 34 digits. Its losses, 1e8 here, leave 25.
std::vector<double> nodalPotentials(const Network& net) {
  const std::size_t n = net.nodes.size();
  std::vector<std::vector<Quad>> m(n, std::vector<Quad>(n + 1, 0));
  for (const Branch& branch : net.branches) {
    const Quad g = Quad(1) / branch.resistance.base();
    m[branch.a][branch.a] += g, m[branch.b][branch.b] += g;
    m[branch.a][branch.b] -= g, m[branch.b][branch.a] -= g;
  }
  m[0].assign(n + 1, 0), m[1].assign(n + 1, 0);
  m[0][0] = m[1][1] = m[0][n] = 1;
  for (std::size_t k = 0; k < n; ++k)  // diagonally dominant: no pivoting
    for (std::size_t i = 0; i < n; ++i) {
      if (i == k) continue;
      const Quad share = m[i][k] / m[k][k];
      for (std::size_t j = k; j <= n; ++j) m[i][j] -= share * m[k][j];
    }
  std::vector<double> potentials;
  for (std::size_t k = 0; k < n; ++k) potentials.push_back(static_cast<double>(m[k][n] / m[k][k]));
  return potentials;
}

/// A tree with as many chords as nodes, resistances over eight decades.
Network randomNetwork(std::mt19937_64& random) {
  const auto below = [&](std::size_t count) { return random() % count; };
  const auto resistance = [&] {
    return Resistance(std::pow(10, std::uniform_real_distribution<double>(-1, 7)(random)));
  };
  Network net;
  const std::size_t count = 4 + below(9);
  for (std::size_t node = 0; node < count; ++node) net.nodes.push_back("n" + std::to_string(node));
  for (std::size_t node = 1; node < count; ++node)
    net.branches.push_back({"", node, below(node), resistance()});
  for (std::size_t chord = 0; chord < count; ++chord)
    net.branches.push_back({"", below(count), below(count), resistance()});
  std::erase_if(net.branches, [](const Branch& branch) { return branch.a == branch.b; });
  return net;
}

TEST(Network, RandomNetworksAreRightToTheLastDigits) {
  std::mt19937_64 random(20240820);
  for (int round = 0; round < 1000; ++round) {
    const Network net = randomNetwork(random);
    const Solver solver = solved(net);
    const auto exact = nodalPotentials(net);
    // Every potential, down to the smallest, relative: a handful of roundings for each node eliminated.
    for (NodeIndex node = 0; node < net.nodes.size(); ++node)
      EXPECT_DIGITS(solver.potential(node), exact[node], 14) << "network " << round << ", node " << node;
  }
}

TEST(Network, DividerSplitsByItsResistances) {
  const Solver solver =
      solved(network({{"upper", plus, a, 1.0_kohm}, {"lower", a, minus, 3.0_kohm}}, {"plus", "minus", "a"}));
  EXPECT_DIGITS(solver.potential(a), 0.75, 15);
  EXPECT_EQ(solver.potential(plus), 1.0);
  EXPECT_EQ(solver.potential(minus), 0.0);
}

TEST(Network, ParallelBranchesAddTheirConductances) {
  // Derived: 6 || 3 = 2, so the divider 2 over 4 gives 4/6.
  const Solver solver = solved(network(
      {{"x", plus, a, 6.0_ohm}, {"y", plus, a, 3.0_ohm}, {"z", a, minus, 4.0_ohm}}, {"plus", "minus", "a"}));
  EXPECT_DIGITS(solver.potential(a), 4.0 / 6.0, 15);
}

TEST(Network, SeriesChainDropsEvenly) {
  Network chain{{"plus", "minus", "1", "2", "3"}, {}};
  for (const auto& [from, to] : std::vector<std::pair<NodeIndex, NodeIndex>>{{0, 2}, {2, 3}, {3, 4}, {4, 1}})
    chain.branches.push_back({"link", from, to, 25.0_ohm});
  const Solver solver = solved(chain);
  EXPECT_DIGITS(solver.potential(2), 0.75, 15);
  EXPECT_DIGITS(solver.potential(3), 0.50, 15);
  EXPECT_DIGITS(solver.potential(4), 0.25, 15);
}

TEST(Network, StarAndItsDeltaGiveTheSamePotentials) {
  // A. E. Kennelly 1899 (from memory): delta resistance = sum of pairwise products / opposite star arm.
  const double s1 = 10, s2 = 20, s3 = 30;  // from the centre to plus, a, b
  const double products = s1 * s2 + s2 * s3 + s3 * s1;
  const Branch load1{"load a", a, minus, 47.0_ohm}, load2{"load b", b, minus, 82.0_ohm};
  const Solver star = solved({{"plus", "minus", "a", "b", "centre"},
                              {{"s1", c, plus, Resistance(s1)},
                               {"s2", c, a, Resistance(s2)},
                               {"s3", c, b, Resistance(s3)},
                               load1,
                               load2}});
  const Solver delta = solved(network({{"d12", plus, a, Resistance(products / s3)},
                                       {"d13", plus, b, Resistance(products / s2)},
                                       {"d23", a, b, Resistance(products / s1)},
                                       load1,
                                       load2}));
  EXPECT_DIGITS(star.potential(a), delta.potential(a), 14);
  EXPECT_DIGITS(star.potential(b), delta.potential(b), 14);
}

TEST(Network, BridgeFollowsThePublishedGeneralForm) {
  // A difference of two potentials near 1/2 carries about 1e-16; the outputs here are of order 1e-3.
  const Solver solver = solved(bridge(351.2, 349.5, 350, 350.4));
  EXPECT_NEAR(solver.between(bridgeOutput), bridgeFormula(351.2, 349.5, 350.0, 350.4), 4e-16);
}

TEST(Network, SwappedSignalTerminalsTurnTheSign) {
  const Solver solver = solved(bridge(351.2, 349.5, 350, 350.4));
  EXPECT_NE(solver.between(bridgeOutput), 0);
  EXPECT_EQ(solver.between({a, b}), -solver.between(bridgeOutput));
}

TEST(Network, SwappedExcitationMirrorsThePotentials) {
  const Network net = bridge(351.2, 349.5, 350, 350.4);
  const Solver solver = solved(net);
  auto swapped = Solver::prepare(net, {minus, plus});
  ASSERT_TRUE(swapped);
  ASSERT_TRUE(swapped->solve());
  EXPECT_DIGITS(swapped->potential(a), 1 - solver.potential(a), 15);
  EXPECT_DIGITS(swapped->potential(b), 1 - solver.potential(b), 15);
}

TEST(Network, ResistancesFarApartKeepTheirDigits) {
  // Derived: two nodes tied by 1e-3 ohm between 1e9 ohm above and 3e9 ohm below. An assembled nodal
  // matrix loses 1e-12 of the conductance sum here, and with it four digits of the potential.
  const double tie = 1e-3, above = 1e9, below = 3e9;
  const Solver solver = solved(network({{"above", plus, a, Resistance(above)},
                                        {"tie", a, b, Resistance(tie)},
                                        {"below", b, minus, Resistance(below)}}));
  EXPECT_DIGITS(solver.potential(a), (tie + below) / (above + tie + below), 14);
  EXPECT_DIGITS(solver.potential(b), below / (above + tie + below), 14);
}

TEST(Network, ZeroOhmJoinsExactly) {
  // a and b are one node: the same potential to the last bit, and that of the merged divider.
  const Solver solver = solved(
      network({{"upper", plus, a, 100.0_ohm}, {"join", a, b, 0.0_ohm}, {"lower", b, minus, 300.0_ohm}}));
  EXPECT_TRUE(solver.joined(a, b));
  EXPECT_EQ(solver.potential(a), solver.potential(b));
  EXPECT_DIGITS(solver.potential(a), 0.75, 15);
}

TEST(Network, ZeroOhmLoopsAndChainsJoinOnce) {
  const Solver solver = solved({{"plus", "minus", "a", "b", "c"},
                                {{"1", a, b, 0.0_ohm},
                                 {"2", b, c, 0.0_ohm},
                                 {"3", c, a, 0.0_ohm},
                                 {"4", a, b, 0.0_ohm},
                                 {"upper", plus, c, 100.0_ohm},
                                 {"lower", a, minus, 100.0_ohm}}});
  EXPECT_TRUE(solver.joined(a, c));
  EXPECT_DIGITS(solver.potential(b), 0.5, 15);
}

TEST(Network, ResistorAcrossAJoinDoesNothing) {
  const Solver solver = solved(network({{"upper", plus, a, 100.0_ohm},
                                        {"join", a, b, 0.0_ohm},
                                        {"across", a, b, 5.0_ohm},
                                        {"lower", b, minus, 100.0_ohm}}));
  EXPECT_DIGITS(solver.potential(a), 0.5, 15);
}

TEST(Network, FloatingNodesAreNamed) {
  Solver solver = prepared(
      {{"plus", "minus", "S+", "S-", "sense+"},
       {{"upper", plus, a, 100.0_ohm}, {"lower", a, minus, 100.0_ohm}, {"island", b, c, 100.0_ohm}}});
  const auto done = solver.solve();
  ASSERT_FALSE(done);
  EXPECT_EQ(done.error().where, "S-, sense+");
  EXPECT_FALSE(done.error().mend.empty());
}

TEST(Network, OpenSwitchLeavesItsNodeFloatingUntilClosedAgain) {
  const Network net =
      network({{"upper", plus, a, 100.0_ohm}, {"lower", a, minus, 100.0_ohm}, {"switch", a, b, 10.0_ohm}},
              {"plus", "minus", "a", "tip"});
  Solver solver = prepared(net);
  ASSERT_TRUE(solver.solve());
  solver.open(2);
  const auto done = solver.solve();
  ASSERT_FALSE(done);
  EXPECT_EQ(done.error().where, "tip");
  solver.setResistance(2, 10.0_ohm);
  ASSERT_TRUE(solver.solve());
  EXPECT_DIGITS(solver.potential(b), 0.5, 15);
}

TEST(Network, NodeWithoutABranchIsNeitherSolvedNorFloating) {
  const Solver solver = solved(network({{"upper", plus, a, 100.0_ohm}, {"lower", a, minus, 100.0_ohm}}));
  EXPECT_TRUE(solver.connected(a));
  EXPECT_TRUE(solver.connected(plus));
  EXPECT_FALSE(solver.connected(b));
}

TEST(Network, ShortedExcitationIsNamed) {
  const auto solver = Solver::prepare(
      network({{"one", plus, a, 0.0_ohm}, {"two", a, minus, 0.0_ohm}, {"x", a, b, 1.0_ohm}}), excitation);
  ASSERT_FALSE(solver);
  EXPECT_EQ(solver.error().where, "excitation");
  EXPECT_NE(solver.error().what.find("plus and minus"), std::string::npos) << solver.error().what;
}

TEST(Network, ImpossibleResistancesAreNamed) {
  constexpr double nan = std::numeric_limits<double>::quiet_NaN();
  constexpr double infinity = std::numeric_limits<double>::infinity();
  for (const double wrong : {-1.0, -1e-300, nan, infinity, -infinity}) {
    Network net = bridge(350, 350, 350, 350);
    net.branches[2].resistance = Resistance(wrong);
    const auto solver = Solver::prepare(net, excitation);
    ASSERT_FALSE(solver) << wrong;
    EXPECT_EQ(solver.error().where, "arm 3") << wrong;
  }
}

TEST(Network, SensitivityIsTheDerivativeOfTheBridgeFormula) {
  // Independent: the formula differentiated by central differences in long double, step 1e-6: its
  // error, step^2 plus rounding 1e-19 / 1e-6, is near 1e-12 of the derivative.
  using Real = long double;
  const std::array<Real, 4> arms = {351.2L, 349.5L, 340.0L, 360.4L};
  Solver solver = solved(bridge(351.2, 349.5, 340.0, 360.4));
  solver.solveAdjoint(bridgeOutput, excitation);
  for (std::size_t arm = 0; arm < 4; ++arm) {
    const auto at = [&](Real factor) {
      auto r = arms;
      r[arm] /= factor;  // conductance times factor
      return bridgeFormula(r[0], r[1], r[2], r[3]);
    };
    const Real step = 1e-6L;
    const Real perConductance = (at(1 + step) - at(1 - step)) / (2 * step) * arms[arm];
    EXPECT_DIGITS(solver.sensitivity(arm), static_cast<double>(perConductance), 11) << "arm " << arm + 1;
  }
}

TEST(Network, SensitivityHoldsForASensedReferenceAndAnyBranch) {
  // Independent of the adjoint: every conductance moved by 1e-4 both ways and 2e-4 both ways, fourth-order
  // differences; truncation 1e-16, rounding 1e-16 / 1e-4.
  const std::vector<std::string> nodes = {"plus", "minus", "a", "b", "c", "d"};
  const NodeIndex d = 5;
  const Network net{nodes,
                    {{"lead +", plus, c, 5.0_ohm},
                     {"lead -", minus, d, 7.0_ohm},
                     {"arm 1", c, a, 351.0_ohm},
                     {"arm 2", a, d, 349.0_ohm},
                     {"arm 3", d, b, 355.0_ohm},
                     {"arm 4", b, c, 340.0_ohm},
                     {"input", a, b, 10.0_kohm},
                     {"shunt", plus, a, 50.0_kohm}}};
  const Port reference{c, d};
  Solver solver = solved(net);
  solver.solveAdjoint(bridgeOutput, reference);
  const auto ratio = [&](BranchIndex branch, double factor) {
    Network moved = net;
    moved.branches[branch].resistance = net.branches[branch].resistance / factor;
    const Solver other = solved(moved);
    return other.between(bridgeOutput) / other.between(reference);
  };
  for (BranchIndex k = 0; k < net.branches.size(); ++k) {
    const double h = 1e-4;
    const double slope =
        (8 * (ratio(k, 1 + h) - ratio(k, 1 - h)) - (ratio(k, 1 + 2 * h) - ratio(k, 1 - 2 * h))) / (12 * h);
    const double expected = slope * net.branches[k].resistance.base();
    // The differences carry 1e-16 / 1e-4 in units of the output ratio, whatever the slope.
    EXPECT_NEAR(solver.sensitivity(k), expected, 5e-12 * net.branches[k].resistance.base())
        << net.branches[k].name;
  }
}

TEST(Network, SensitivityOfAJoiningBranchIsZero) {
  Network net = bridge(351, 349, 350, 350);
  net.nodes.push_back("c");
  net.branches.push_back({"join", a, c, 0.0_ohm});
  Solver solver = solved(net);
  solver.solveAdjoint(bridgeOutput, excitation);
  EXPECT_EQ(solver.sensitivity(4), 0.0);
}

TEST(Network, InputConductanceIsThatOfTheClosedForms) {
  // Two halves side by side, and a resistor over the supply.
  Network net = bridge(351, 349, 340, 360);
  EXPECT_DIGITS(solved(net).inputConductance(), 1.0 / 700 + 1.0 / 700, 15);
  net.branches.push_back({"over the supply", minus, plus, 1.0_kohm});
  EXPECT_DIGITS(solved(net).inputConductance(), 2.0 / 700 + 1e-3, 15);
  // With a detector between a and b: the delta plus, a, b made a star.
  const double ra = 351, rb = 360, rd = 200, sum = ra + rb + rd;
  const double lower = 1 / (1 / (ra * rd / sum + 349) + 1 / (rb * rd / sum + 340));
  Network loaded = bridge(351, 349, 340, 360);
  loaded.branches.push_back({"detector", a, b, 200.0_ohm});
  EXPECT_DIGITS(solved(loaded).inputConductance(), 1 / (ra * rb / sum + lower), 15);
}

TEST(Network, InputConductanceKeepsItsDigitsBehindAShortLead) {
  // Derived: the micro-ohm adds to 350 ohm, however little voltage it takes.
  for (const double lead : {1e-9, 1e-3, 1e6}) {
    const Network net = network({{"lead", plus, a, Resistance(lead)}, {"rest", a, minus, 350.0_ohm}});
    EXPECT_DIGITS(solved(net).inputConductance(), 1 / (350 + lead), 14) << lead;
    const Network turned = network({{"lead", minus, a, Resistance(lead)}, {"rest", a, plus, 350.0_ohm}});
    EXPECT_DIGITS(solved(turned).inputConductance(), 1 / (350 + lead), 14) << lead;
  }
}

TEST(Network, InputConductanceLeavesOutWhatIsOpenAndJoinsWhatIsZero) {
  Network net = network({{"join", plus, c, 0.0_ohm},
                         {"one", c, a, 100.0_ohm},
                         {"two", a, minus, 300.0_ohm},
                         {"switch", c, minus, 50.0_ohm}},
                        {"plus", "minus", "a", "b", "c"});
  Solver solver = solved(net);
  EXPECT_DIGITS(solver.inputConductance(), 1.0 / 400 + 1.0 / 50, 15);
  solver.open(3);
  ASSERT_TRUE(solver.solve());
  EXPECT_DIGITS(solver.inputConductance(), 1.0 / 400, 15);
}

TEST(Network, InputSensitivityIsTheSquareOfTheVoltage) {
  // Derived: 1/(R1 + R2) = G1 G2/(G1 + G2) has the derivative (G2/(G1 + G2))^2 by G1, the divider squared.
  Network net = bridge(351, 349, 340, 360);
  net.branches.push_back({"detector", a, b, 1.0_kohm});
  net.branches.push_back({"over the supply", plus, minus, 1.0_kohm});
  Solver solver = solved(net);
  solver.open(4);
  ASSERT_TRUE(solver.solve());
  const std::array<double, 4> expected = {351.0 / 700, 349.0 / 700, 340.0 / 700, 360.0 / 700};
  for (std::size_t arm = 0; arm < 4; ++arm)
    EXPECT_DIGITS(solver.inputSensitivity(arm), expected[arm] * expected[arm], 14) << "arm " << arm + 1;
  // An open branch would take the voltage between its ends; one over the supply takes it all.
  EXPECT_NEAR(solver.inputSensitivity(4), std::pow(340.0 / 700 - 349.0 / 700, 2), 1e-17);
  EXPECT_EQ(solver.inputSensitivity(5), 1);
}

TEST(Network, InputSensitivityIsTheDerivativeOfTheLoadedBridge) {
  // Independent: the star-delta form above, differentiated by central differences in quadruple precision,
  // step 1e-9: truncation 1e-18, rounding 1e-34 / 1e-9.
  const auto conductance = [](const std::array<Quad, 5>& g) {
    const Quad ra = 1 / g[0], rb = 1 / g[3], rd = 1 / g[4], sum = ra + rb + rd;
    const Quad lower = 1 / (1 / (ra * rd / sum + 1 / g[1]) + 1 / (rb * rd / sum + 1 / g[2]));
    return 1 / (ra * rb / sum + lower);
  };
  const std::array<double, 5> ohm = {351, 290, 340, 420, 200};
  Network net = bridge(ohm[0], ohm[1], ohm[2], ohm[3]);
  net.branches.push_back({"detector", a, b, Resistance(ohm[4])});
  const Solver solver = solved(net);
  for (std::size_t k = 0; k < ohm.size(); ++k) {
    const auto at = [&](Quad factor) {
      std::array<Quad, 5> g;
      for (std::size_t j = 0; j < g.size(); ++j) g[j] = Quad(1) / ohm[j] * (j == k ? factor : Quad(1));
      return conductance(g);
    };
    const Quad h = 1e-9;
    const Quad slope = (at(1 + h) - at(1 - h)) / (2 * h) * ohm[k];
    // A square of a difference of potentials of 1e-16 each.
    const double expected = static_cast<double>(slope);
    EXPECT_NEAR(solver.inputSensitivity(k), expected, 4e-16 * std::sqrt(expected)) << net.branches[k].name;
  }
}

TEST(Network, InputSensitivityOfAJoiningBranchIsZero) {
  Network net = bridge(351, 349, 350, 350);
  net.nodes.push_back("c");
  net.branches.push_back({"join", a, c, 0.0_ohm});
  EXPECT_EQ(solved(net).inputSensitivity(4), 0.0);
}

TEST(Network, SolvesAgainAfterChangesAsIfMadeNew) {
  std::mt19937 random(20240601);
  std::uniform_real_distribution<double> ohm(10, 1000);
  Solver reused = prepared(bridge(350, 350, 350, 350));
  for (int round = 0; round < 200; ++round) {
    std::array<double, 4> r{};
    for (std::size_t arm = 0; arm < 4; ++arm) reused.setResistance(arm, Resistance(r[arm] = ohm(random)));
    ASSERT_TRUE(reused.solve());
    const Solver fresh = solved(bridge(r[0], r[1], r[2], r[3]));
    // The same operations on the same numbers: equal to the last bit.
    EXPECT_EQ(reused.between(bridgeOutput), fresh.between(bridgeOutput));
  }
}

}  // namespace network_test
