// SPDX-License-Identifier: GPL-3.0-or-later
// Answers of practice questions, worked out anew: each bridge is put together from its template's wires and
// joins and solved as a dense nodal matrix. Neither the program's solver nor its predictions and faults are
// used, and what is asked is read from the words that a person reads.
#include <gtest/gtest.h>

#include <Eigen/LU>
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>
#include <functional>
#include <limits>
#include <map>
#include <numeric>
#include <string>
#include <vector>

#include "core/practice/question.h"

using namespace core;

namespace practice_answers_test {

constexpr std::uint64_t seeds = 100;  ///< of each difficulty: 300 questions of each kind

/// Which nodes are one point; made of joins and of leads without resistance.
class Points {
 public:
  Points() { std::iota(m_point.begin(), m_point.end(), std::size_t{0}); }
  void join(Node a, Node b) {
    const std::size_t kept = of(a), gone = of(b);
    std::replace(m_point.begin(), m_point.end(), gone, kept);
  }
  std::size_t of(Node node) const { return m_point[static_cast<std::size_t>(node)]; }

 private:
  std::array<std::size_t, nodeCount> m_point{};
};

Points joinsOf(const Bridge& bridge) {
  Points points;
  for (const Join& join : templateOf(bridge.type).joins) points.join(join.a, join.b);
  return points;
}

/// Wires of the template and, with six wires, the two that sense the bridge's own corners.
std::vector<Wire> wires(const Bridge& bridge) {
  const BridgeTemplate& shape = templateOf(bridge.type);
  std::vector<Wire> all = shape.wires;
  if (shape.senseLeads && bridge.sixWire) {
    all.push_back({LeadRole::SensePlus, Node::SensePlus, Node::Arm1Begin});
    all.push_back({LeadRole::SenseMinus, Node::SenseMinus, Node::Arm2End});
  }
  return all;
}

double leadOhm(const Bridge& bridge, LeadRole role) {
  return std::get<Resistance>(bridge.leads[static_cast<std::size_t>(role)]).base();
}

using Matrix = Eigen::Matrix<long double, nodeCount, nodeCount>;
using Vector = Eigen::Matrix<long double, nodeCount, 1>;

/// The nodal matrix of one switch state; all questions have a voltage source.
class Nodal {
 public:
  Nodal(const core::Setup& setup, const std::vector<std::size_t>& closed) : m_points(joinsOf(setup.bridge)) {
    const Bridge& bridge = setup.bridge;
    m_matrix.setZero();
    for (const Wire& wire : wires(bridge))
      if (leadOhm(bridge, wire.role) == 0) m_points.join(wire.from, wire.to);
    for (const Wire& wire : wires(bridge))
      if (leadOhm(bridge, wire.role) != 0) add(wire.from, wire.to, leadOhm(bridge, wire.role));
    for (const std::size_t arm : {0, 1, 2, 3}) {
      add(armBegin(arm), armEnd(arm), bridge.arms[arm].base());
      if (bridge.leaks[arm].across) add(armBegin(arm), armEnd(arm), bridge.leaks[arm].across->base());
    }
    for (const std::size_t k : closed) {
      const Shunt& shunt = setup.shunts[k];
      add(shunt.a, shunt.b, (shunt.resistance + shunt.wires + shunt.contact).base());
    }
    solve(bridge.hookup.excitationReversed ? -1 : 1);
  }

  long double volt(Node node) const { return m_volts(row(node)); }

 private:
  Eigen::Index row(Node node) const { return static_cast<Eigen::Index>(m_points.of(node)); }
  void add(Node a, Node b, double ohm) {
    const auto i = row(a), j = row(b);
    const long double siemens = 1 / static_cast<long double>(ohm);
    m_matrix(i, i) += siemens, m_matrix(j, j) += siemens, m_matrix(i, j) -= siemens,
        m_matrix(j, i) -= siemens;
  }
  /// 1 V from P+ to P-, or the other way round; points that nothing touches are at 0 V.
  void solve(int plus) {
    Vector known = Vector::Zero();
    for (Eigen::Index k = 0; k < static_cast<Eigen::Index>(nodeCount); ++k) {
      if (k != row(Node::PPlus) && k != row(Node::PMinus) && m_matrix(k, k) != 0) continue;
      m_matrix.row(k).setZero();
      m_matrix(k, k) = 1;
    }
    known(row(Node::PPlus)) = plus;
    m_volts = m_matrix.partialPivLu().solve(known);
  }

  Points m_points;
  Matrix m_matrix;
  Vector m_volts;
};

/// Signal over reference: sense pair with six wires, else the source, each with its plus side first.
double output(const core::Setup& setup, const std::vector<std::size_t>& closed) {
  const Nodal nodal(setup, closed);
  const Hookup& hookup = setup.bridge.hookup;
  const bool sensed = setup.bridge.sixWire && templateOf(setup.bridge.type).senseLeads;
  long double signal = nodal.volt(Node::SPlus) - nodal.volt(Node::SMinus);
  long double reference = sensed ? nodal.volt(Node::SensePlus) - nodal.volt(Node::SenseMinus)
                                 : nodal.volt(Node::PPlus) - nodal.volt(Node::PMinus);
  if (hookup.signalReversed) signal = -signal;
  if (hookup.excitationReversed) reference = -reference;
  return static_cast<double>(signal / reference);
}

double changeOf(const core::Setup& setup, const std::vector<std::size_t>& closed) {
  return output(setup, closed) - output(setup, {});
}

/// What an instrument shows of a change of output: by its unit, with its settings.
double shownOf(const Instrument& instrument, double change) {
  switch (instrument.unit) {
    case ReadingUnit::MicrometrePerMetre:
      return 4e6 * change / (instrument.gaugeFactor * instrument.bridgeFactor);
    case ReadingUnit::MillivoltPerVolt:
      return 1e3 * change;
    case ReadingUnit::Millivolt:
      return 1e3 * change * instrument.excitation.base();
    case ReadingUnit::Scaled:
      return 1e3 * change * instrument.unitsPerMillivoltPerVolt;
  }
  return 0;
}

bool says(const std::string& text, const std::string& word) { return text.find(word) != std::string::npos; }

/// The shunt moved to the place that a choice names: "Right across arm 2", "From terminal P+ to terminal S-".
Shunt placedBy(const std::string& choice, Shunt shunt) {
  const std::string across = "Right across arm ", from = "From terminal ", to = " to terminal ";
  if (choice.starts_with(across)) {
    const auto arm = static_cast<std::size_t>(choice[across.size()] - '1');
    shunt.a = armBegin(arm), shunt.b = armEnd(arm);
    return shunt;
  }
  const auto middle = choice.find(to);
  EXPECT_TRUE(choice.starts_with(from) && middle != std::string::npos) << choice;
  const auto a = nodeFromName(choice.substr(from.size(), middle - from.size()));
  const auto b = nodeFromName(choice.substr(middle + to.size()));
  EXPECT_TRUE(a && b) << choice;
  if (a && b) shunt.a = *a, shunt.b = *b;
  return shunt;
}

double numberAfter(const std::string& text, const std::string& word) {
  const auto at = text.find(word);
  EXPECT_NE(at, std::string::npos) << text;
  return std::strtod(text.c_str() + at + word.size(), nullptr);
}

template <class Look>
void forEachOf(QuestionKind kind, Look look) {
  for (const Difficulty difficulty : {Difficulty::First, Difficulty::Further, Difficulty::Thorough})
    for (std::uint64_t seed = 1001; seed <= 1000 + seeds; ++seed) {
      SCOPED_TRACE(std::string(difficultyKey(difficulty)) + ", seed " + std::to_string(seed));
      look(questionOf(seed, 0, difficulty, {kind}));
    }
}

// ---- planted faults
// -----------------------------------------------------------------------------------------

std::vector<double> readings(const core::Setup& setup) {
  std::map<std::vector<std::size_t>, double> solved;  // many steps are alike
  std::vector<double> shown;
  for (const Step& step : setup.sequence) {
    if (!solved.contains(step.closed)) solved[step.closed] = output(setup, step.closed);
    shown.push_back(shownOf(setup.instrument, solved[step.closed] - solved[setup.sequence[0].closed]));
  }
  return shown;
}

bool sameResistor(const Shunt& a, const Shunt& b) { return a.part.id == b.part.id; }

bool samePlace(const core::Setup& setup, const Shunt& a, const Shunt& b) {
  const Points points = joinsOf(setup.bridge);
  return points.of(a.a) == points.of(b.a) && points.of(a.b) == points.of(b.b);
}

/// Where the wire from that point leads; the third wire of a quarter bridge carries no shunt along.
Node otherEnd(const Bridge& bridge, Node node, bool toInstrument) {
  const Points points = joinsOf(bridge);
  for (const Wire& wire : templateOf(bridge.type).wires) {
    if (wire.role == LeadRole::Return) continue;
    if (points.of(toInstrument ? wire.to : wire.from) == points.of(node))
      return toInstrument ? wire.from : wire.to;
  }
  return node;
}

void openShunts(core::Setup& setup, const Fault& fault) {
  const Shunt broken = setup.shunts[fault.index];
  for (Step& step : setup.sequence)
    std::erase_if(step.closed, [&](std::size_t k) {
      return fault.other == 1 ? samePlace(setup, setup.shunts[k], broken)
                              : sameResistor(setup.shunts[k], broken);
    });
}

void scaleShunts(core::Setup& setup, const Fault& fault) {
  const Shunt wrong = setup.shunts[fault.index];
  for (Shunt& shunt : setup.shunts)
    if (sameResistor(shunt, wrong)) shunt.resistance = fault.size * shunt.resistance;
}

void exchangeShunts(core::Setup& setup, const Fault& fault) {
  const Shunt one = setup.shunts[fault.index], other = setup.shunts[fault.other];
  for (Shunt& shunt : setup.shunts)
    shunt.resistance = sameResistor(shunt, one) ? other.resistance : one.resistance;
}

void addToLeads(core::Setup& setup, const Fault& fault) {
  for (std::size_t role = 0; role < leadRoleCount; ++role)
    if (fault.kind == CauseKind::Leads || fault.index == role)
      setup.bridge.leads[role] = Resistance(leadOhm(setup.bridge, static_cast<LeadRole>(role)) + fault.size);
}

/// The parts as they are with the fault.
core::Setup faulty(core::Setup setup, const Fault& fault) {
  switch (fault.kind) {
    case CauseKind::ShuntOpen:
      openShunts(setup, fault);
      break;
    case CauseKind::ShuntValue:
      scaleShunts(setup, fault);
      break;
    case CauseKind::ShuntsExchanged:
      exchangeShunts(setup, fault);
      break;
    case CauseKind::Leads:
    case CauseKind::LeadContact:
      addToLeads(setup, fault);
      break;
    case CauseKind::ShuntPlace:
      for (Shunt& shunt : setup.shunts) {
        shunt.a = otherEnd(setup.bridge, shunt.a, fault.index == 0);
        shunt.b = otherEnd(setup.bridge, shunt.b, fault.index == 0);
      }
      break;
    case CauseKind::ArmValue:
    case CauseKind::CompletionValue:
      setup.bridge.arms[fault.index] = fault.size * setup.bridge.arms[fault.index];
      break;
    case CauseKind::Leak:
      if (fault.size > 0) setup.bridge.leaks[fault.index].across = Resistance(1 / fault.size);
      break;
    case CauseKind::PolarityReversed:
      setup.bridge.hookup.signalReversed = true;
      break;
    case CauseKind::BridgeFactor:
      setup.instrument.bridgeFactor = fault.size;
      break;
    case CauseKind::StepsExchanged:
      std::swap(setup.sequence[fault.index].closed, setup.sequence[fault.other].closed);
      break;
    case CauseKind::SidesExchanged:  // steps 2 and 3 are one side, 5 and 6 the other
      std::swap(setup.sequence[1].closed, setup.sequence[4].closed);
      std::swap(setup.sequence[2].closed, setup.sequence[5].closed);
      break;
    default:
      break;
  }
  return setup;
}

/// What the fault does to the readings of an instrument that was zeroed at the first step.
void disturb(std::vector<double>& shown, const Fault& fault) {
  const double size = fault.size;
  constexpr double stepTime_s = 2.5;  // settled for 0.5 s, held for 2 s
  for (std::size_t k = 0; k < shown.size(); ++k) {
    if (fault.kind == CauseKind::Scale) shown[k] *= size;
    if (fault.kind == CauseKind::ZeroShift && k >= fault.index) shown[k] += size;
    if (fault.kind == CauseKind::StrayReading && k == fault.index) shown[k] += size;
    if (fault.kind == CauseKind::Drift) shown[k] += size * stepTime_s * static_cast<double>(k);
    if (fault.kind == CauseKind::Clipping && fault.index != 2) shown[k] = std::min(shown[k], size);
    if (fault.kind == CauseKind::Clipping && fault.index != 1) shown[k] = std::max(shown[k], -size);
  }
}

std::vector<double> readingsWith(const core::Setup& setup, const Fault& fault) {
  std::vector<double> shown = readings(faulty(setup, fault));
  disturb(shown, fault);
  return shown;
}

double greatestMiss(const std::vector<double>& a, const std::vector<double>& b) {
  double miss = 0;
  for (std::size_t k = 0; k < a.size(); ++k) miss = std::max(miss, std::abs(a[k] - b[k]));
  return miss;
}

/// Sizes from `low` to `high` in equal ratios, and what else the kind can have.
std::vector<double> sizesOf(const Fault& fault, double reach) {
  std::vector<double> sizes{fault.size};
  const auto ratios = [&](double low, double high, int count) {
    for (int k = 0; k <= count; ++k) sizes.push_back(low * std::pow(high / low, k / double(count)));
  };
  const auto equal = [&](double most) {
    for (int k = -200; k <= 200; ++k) sizes.push_back(most * k / 200);
  };
  // Any N may be set by mistake, and a scale of any size.
  if (fault.kind == CauseKind::Scale || fault.kind == CauseKind::BridgeFactor) ratios(0.001, 1000, 400);
  if (fault.kind == CauseKind::ShuntValue) ratios(1e-4, 1e4, 160);
  if (fault.kind == CauseKind::ArmValue || fault.kind == CauseKind::CompletionValue) ratios(0.01, 100, 160);
  if (fault.kind == CauseKind::Leads || fault.kind == CauseKind::LeadContact) ratios(0.01, 1000, 100);
  if (fault.kind == CauseKind::Leak) ratios(1e-8, 0.1, 120);
  if (fault.kind == CauseKind::ZeroShift || fault.kind == CauseKind::StrayReading) equal(2 * reach);
  if (fault.kind == CauseKind::Drift) equal(reach);
  if (fault.kind == CauseKind::Clipping) ratios(0.001 * reach, 2 * reach, 200);
  return sizes;
}

struct Told {
  std::vector<double> expected, shown;
  double lastDigit = 1;
};

Told toldBy(const Table& table) {
  Told told;
  for (const TableRow& row : table.rows) {
    told.expected.push_back(std::strtod(row.cells[2].c_str(), nullptr));
    told.shown.push_back(std::strtod(row.cells[3].c_str(), nullptr));
    const auto point = row.cells[3].find('.');
    if (point != std::string::npos)
      told.lastDigit = std::pow(10.0, -static_cast<double>(row.cells[3].size() - point - 1));
  }
  return told;
}

TEST(PracticeAnswers, SignsAreThoseOfTheNodalMatrix) {
  forEachOf(QuestionKind::Sign, [](const Question& question) {
    const double change = changeOf(question.setup, question.setup.sequence.back().closed);
    const std::string& answer = question.choices[question.right];
    // Asked is only what is clear: 20 µV/V, and where nothing moves rounding (1e-17 of 1 V, by arms over
    // leads).
    if (says(answer, "rises"))
      EXPECT_GT(change, 20e-6);
    else if (says(answer, "falls"))
      EXPECT_LT(change, -20e-6);
    else
      EXPECT_NEAR(change, 0, 1e-12);
    EXPECT_EQ(question.setup, question.explained);
  });
}

TEST(PracticeAnswers, OneArmAloneGivesTheWantedSignOrTheReading) {
  int bySign = 0, byReading = 0;
  forEachOf(QuestionKind::Arm, [&](const Question& question) {
    const bool rise = says(question.text, "rise"), fall = says(question.text, "fall");
    (rise || fall ? bySign : byReading) += 1;
    for (std::size_t k = 0; k < question.choices.size(); ++k) {
      core::Setup setup = question.setup;
      setup.shunts = {placedBy(question.choices[k], question.explained.shunts.front())};
      const double change = changeOf(setup, {0});
      EXPECT_GT(std::abs(change), 20e-6);
      if (rise || fall) {
        EXPECT_EQ(k == question.right, (change > 0) == rise);
        continue;
      }
      // The reading is told to four digits; any other arm's is a tenth off at least.
      const double told = numberAfter(question.text, "shows "), shown = shownOf(setup.instrument, change);
      const double off = std::abs(shown - told) / std::max(std::abs(shown), std::abs(told));
      if (k == question.right)
        EXPECT_LT(off, 5e-4);
      else
        EXPECT_GT(off, 0.099);
    }
  });
  EXPECT_GT(bySign, 50);
  EXPECT_GT(byReading, 50);
}

TEST(PracticeAnswers, LargerShuntIsLargerByATenth) {
  forEachOf(QuestionKind::LargerShunt, [](const Question& question) {
    const double a = std::abs(changeOf(question.setup, {0})), b = std::abs(changeOf(question.setup, {1}));
    EXPECT_EQ(question.right, a > b ? 0U : 1U);
    EXPECT_GT(std::max(a, b), 1.0999 * std::min(a, b));
    EXPECT_TRUE(question.choices[0].starts_with("Shunt A")) << question.choices[0];
    EXPECT_TRUE(question.choices[1].starts_with("Shunt B")) << question.choices[1];
  });
}

TEST(PracticeAnswers, ReadingsAreThoseOfTheNodalMatrix) {
  forEachOf(QuestionKind::Reading, [](const Question& question) {
    const std::vector<std::size_t> closed = says(question.text, "Shunts A and B close together")
                                                ? std::vector<std::size_t>{0, 1}
                                                : std::vector<std::size_t>{0};
    const double shown = shownOf(question.setup.instrument, changeOf(question.setup, closed));
    ASSERT_TRUE(question.number);
    // Outputs of 1e-4 V/V, differences of potentials that carry 1e-16: 1e-9 leaves a wide margin.
    EXPECT_NEAR(question.number->base(), shown, 1e-9 * std::abs(shown));
    EXPECT_TRUE(isRight(question, Reading(1.049 * shown)));
    EXPECT_FALSE(isRight(question, Reading(1.051 * shown)));
    EXPECT_FALSE(isRight(question, Reading(-shown)));
  });
}

TEST(PracticeAnswers, FirstReadingsCanBeWorkedOutByHand) {
  // R/(4 Rs + 2 R), down over arms 1 and 3, up over 2 and 4: TN-514. First questions have equal arms, no
  // leads.
  for (std::uint64_t seed = 1001; seed <= 1000 + seeds; ++seed) {
    const Question question = questionOf(seed, 0, Difficulty::First, {QuestionKind::Reading});
    const Shunt& shunt = question.setup.shunts.front();
    const std::size_t arm =
        (static_cast<std::size_t>(shunt.a) - static_cast<std::size_t>(Node::Arm1Begin)) / 2;
    const double r = question.setup.bridge.arms[arm].base(), rs = shunt.resistance.base();
    const double change = (arm % 2 == 0 ? -1 : 1) * r / (4 * rs + 2 * r);
    EXPECT_NEAR(question.number->base(), shownOf(question.setup.instrument, change),
                1e-9 * std::abs(question.number->base()));
  }
}

TEST(PracticeAnswers, PlantedFaultAloneGivesTheReadings) {
  forEachOf(QuestionKind::PlantedFault, [](const Question& question) {
    const Told told = toldBy(question.readings);
    const std::vector<double> healthy = readings(question.setup);
    const double reach = std::max(greatestMiss(told.shown, std::vector(told.shown.size(), 0.0)),
                                  greatestMiss(told.expected, std::vector(told.expected.size(), 0.0)));
    // Rounded to the last digit, half of it and what is lost in the text.
    const double rounding = 0.5001 * told.lastDigit;
    EXPECT_LE(greatestMiss(told.expected, healthy), rounding);
    EXPECT_GT(greatestMiss(told.shown, healthy), 0.03 * reach) << "the fault is hardly seen";
    ASSERT_EQ(question.faults.size(), question.choices.size());
    for (std::size_t k = 0; k < question.faults.size(); ++k) {
      Fault fault = question.faults[k];
      if (k == question.right) {
        EXPECT_LE(greatestMiss(readingsWith(question.setup, fault), told.shown), rounding)
            << question.choices[k];
        continue;
      }
      // 3 % is asked for with the best size; whether a finer mesh finds a better one is seen with 2.5 %.
      double nearest = std::numeric_limits<double>::infinity();
      for (const double size : sizesOf(fault, reach)) {
        fault.size = size;
        nearest = std::min(nearest, greatestMiss(readingsWith(question.setup, fault), told.shown));
      }
      EXPECT_GT(nearest, 0.025 * reach) << question.choices[k] << " explains them too";
    }
  });
}

TEST(PracticeAnswers, NoTwoChoicesMultiplyAllReadingsAlike) {
  // A wrong N, a wrong gauge factor and a unit mixed up are one and the same to the readings.
  const auto ofScale = [](const Fault& fault) {
    return fault.kind == CauseKind::Scale || fault.kind == CauseKind::BridgeFactor ||
           fault.kind == CauseKind::Units;
  };
  for (const Difficulty difficulty : {Difficulty::First, Difficulty::Further, Difficulty::Thorough})
    for (std::uint64_t seed = 61; seed <= 120; ++seed) {
      const Question question = questionOf(seed, 0, difficulty, {QuestionKind::PlantedFault});
      EXPECT_LE(std::count_if(question.faults.begin(), question.faults.end(), ofScale), 1) << seed;
    }
}

TEST(PracticeAnswers, TextbookIsRightOrWrongBeyondDoubt) {
  // R/(4 Rs + 2 R) for each shunt over the arm between its corners, down over 1 and 3 (TN-514).
  forEachOf(QuestionKind::Reading, [](const Question& question) {
    double change = 0;
    for (const Shunt& shunt : question.setup.shunts) {
      std::size_t arm = (static_cast<std::size_t>(shunt.a) - static_cast<std::size_t>(Node::Arm1Begin)) / 2;
      const std::array<Node, 4> corners{Node::PPlus, Node::SMinus, Node::PMinus, Node::SPlus};
      if (const auto at = std::find(corners.begin(), corners.end(), shunt.a); at != corners.end())
        arm = static_cast<std::size_t>(at - corners.begin());
      const double r = question.setup.bridge.arms[arm].base(), rs = shunt.resistance.base();
      change += (arm % 2 == 0 ? -1 : 1) * r / (4 * rs + 2 * r);
    }
    const Hookup& hookup = question.setup.bridge.hookup;
    if (hookup.signalReversed != hookup.excitationReversed) change = -change;
    const double off = std::abs(shownOf(question.setup.instrument, change) / question.number->base() - 1);
    EXPECT_TRUE(off < 0.0251 || off > 0.0999) << off;
  });
}

TEST(PracticeAnswers, PlantedFaultsAreOfSizesThatPeopleMeet) {
  forEachOf(QuestionKind::PlantedFault, [](const Question& question) {
    const Fault& fault = question.faults[question.right];
    const bool ofLeads = fault.kind == CauseKind::Leads, contact = fault.kind == CauseKind::LeadContact;
    if (ofLeads || contact) {
      EXPECT_LE(fault.size, contact ? 20 : 10);
    }
    if (fault.kind == CauseKind::ArmValue || fault.kind == CauseKind::CompletionValue) {
      EXPECT_NEAR(fault.size, 1, 0.0501);
    }
  });
}

TEST(PracticeAnswers, ExplainedPlanHasTheFaultInIt) {
  // Where the picture can show the fault, its plan gives the readings; faults of readings leave the plan
  // alone.
  int shown = 0;
  forEachOf(QuestionKind::PlantedFault, [&](const Question& question) {
    const Told told = toldBy(question.readings);
    if (question.explained == question.setup) return;
    EXPECT_LE(greatestMiss(readings(question.explained), told.shown), 0.5001 * told.lastDigit)
        << question.choices[question.right];
    ++shown;
  });
  EXPECT_GT(shown, 100);
}

}  // namespace practice_answers_test
