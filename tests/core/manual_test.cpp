// SPDX-License-Identifier: GPL-3.0-or-later
// The manual's worked example, followed through the program: every number that the page prints in bold must
// be what comes out, in the order in which they stand there, to the digits printed. In every language.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <regex>
#include <sstream>

#include "core/diagnose/diagnosis.h"
#include "core/document/edits.h"
#include "core/evaluate/evaluation.h"
#include "core/plan/pattern.h"
#include "core/review/review.h"
#include "core/units/notation.h"

namespace core {
namespace manual_test {

const std::filesystem::path manual = std::filesystem::path(SHUNTWRIGHT_SOURCE_DIR) / "resources/manual";

std::string textOf(const std::filesystem::path& file) {
  std::ifstream in(file);
  std::ostringstream text;
  text << in.rdbuf();
  return text.str();
}

std::string replaced(std::string text, const std::string& what, const std::string& with) {
  for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at + with.size()))
    text.replace(at, what.size(), with);
  return text;
}

/// The numbers in bold, with a point and a plain minus, and the words in bold as they are.
std::vector<std::string> boldIn(const std::string& page) {
  std::vector<std::string> found;
  static const std::regex bold("\\*\\*([^*]+)\\*\\*");
  for (auto match = std::sregex_iterator(page.begin(), page.end(), bold); match != std::sregex_iterator();
       ++match)
    found.push_back(replaced(replaced((*match)[1], "−", "-"), ",", "."));
  return found;
}

/// The channel of the page, as it is made in the window.
struct Example {
  Channel channel;

  explicit Example(Resistance lead) {
    const auto add = [&](const char* name, double ohm, Node a, Node b) {
      channel = withShuntAdded(channel, {.name = name, .resistance = Resistance(ohm), .a = a, .b = b});
    };
    add("U1", 349650, Node::Arm2Begin, Node::Arm2End);
    add("U2", 174650, Node::Arm2Begin, Node::Arm2End);
    add("D1", 349650, Node::Arm1Begin, Node::Arm1End);
    add("D2", 174650, Node::Arm1Begin, Node::Arm1End);
    for (const LeadRole role : {LeadRole::ExcitationPlus, LeadRole::SignalMinus, LeadRole::Return})
      channel.setup.bridge.leads[static_cast<std::size_t>(role)] = lead;
    const auto times = timesOf(channel.setup);
    channel = withSequence(
        channel, layOut(usualPatterns().front(), levelsOfShunts(channel.setup), times.settle, times.hold));
  }

  /// Steps that close U1, U2, D1 and D2.
  static constexpr std::array<std::size_t, 4> shuntSteps{1, 2, 4, 5};
};

/// What the page prints, in its order: numbers to be compared, words to be equal.
class Expected {
 public:
  void number(double value) { m_numbers.push_back({value, {}}); }
  void word(std::string word) { m_numbers.push_back({0, std::move(word)}); }
  struct Entry {
    double value;
    std::string word;
  };
  const std::vector<Entry>& entries() const { return m_numbers; }

 private:
  std::vector<Entry> m_numbers;
};

void expectShunts(Expected& page, const Example& example) {
  const ChannelEvaluation evaluation = evaluate(example.channel);
  for (const std::size_t step : Example::shuntSteps) {
    const auto& prediction = *evaluation.prediction.steps[step];
    page.number(1e6 * prediction.simulated);
    page.number(1e3 * prediction.output.base());
    page.number(prediction.reading.base());
  }
}

void expectSequence(Expected& page, const Example& example) {
  const ChannelEvaluation evaluation = evaluate(example.channel);
  const Setup& setup = example.channel.setup;
  page.number(static_cast<double>(setup.sequence.size()));
  page.number(setup.sequence.front().settle.base());
  page.number(setup.sequence.front().hold.base());
  page.number(evaluation.budget.of(Scope::Chain).steps[1]->coverageFactor);
  for (const std::size_t step : {1, 2, 3, 4, 5}) {
    page.number(evaluation.prediction.steps[step]->reading.base());
    page.number(evaluation.budget.of(Scope::Chain).steps[step]->expanded);
    page.number(evaluation.budget.of(Scope::Strain).steps[step]->expanded);
  }
  page.number(100 * setup.limits.relative);
  page.number(100 * setup.limits.zeroReturn);
  const auto findings = review(example.channel, evaluation, *noStock(), *dateFromText("2026-05-11"));
  page.number(static_cast<double>(std::count_if(findings.begin(), findings.end(), [](const Finding& finding) {
    return finding.severity == Severity::Fault;
  })));
}

Check typedCheck() {
  Check check;
  for (const double reading : {1.2, 500.9, 1001.1, 1.5, -498.1, -998.0, 1.4})
    check.readings.emplace_back(Measured{Reading(reading), {}, {}, {}});
  return check;
}

void expectCheck(Expected& page, const Channel& channel) {
  const ChannelEvaluation evaluation = evaluate(channel);
  const CheckAssessment& assessment = evaluation.checks.front().assessment;
  double worst = 0;
  std::size_t worstStep = 0;
  for (std::size_t step = 0; step < assessment.steps.size(); ++step) {
    const StepAssessment& one = assessment.steps[step];
    page.number(one.change->base());
    page.number(one.deviation->base());
    page.number(one.limit->base());
    page.word(one.verdict == Verdict::Pass ? "pass" : "no pass");
    const double share = std::abs(one.deviation->base()) / one.limit->base();
    if (share > worst) {
      worst = share;
      worstStep = step;
    }
  }
  page.word(assessment.verdict == Verdict::Pass ? "pass" : "no pass");
  page.number(worst);
  page.number(static_cast<double>(worstStep + 1));
  page.number(assessment.line->slope);
  const auto merit = [&](MeritKind kind) {
    return 100 * *assessment.merits[static_cast<std::size_t>(kind)].share;
  };
  page.number(merit(MeritKind::ZeroReturn));
  page.number(merit(MeritKind::SpanRatio));
  const CheckEvaluation& judged = evaluation.checks.front();
  const Diagnosis diagnosis =
      diagnose(channel.setup, judged.prediction, judged.budget, channel.checks.front());
  EXPECT_EQ(diagnosis.result, DiagnosisResult::Healthy);
  page.number(diagnosis.chiSquare);
  page.number(diagnosis.degreesOfFreedom);
}

Expected expectedPage() {
  const Example bare{Resistance(0)};
  const Example wired{Resistance(0.5)};
  Expected page;
  const Setup fresh = Channel().setup;
  page.word("bold");  // "Numbers in **bold** are the program's"
  page.number(fresh.bridge.arms[0].base());
  page.number(fresh.bridge.gauge.factor);
  page.number(fresh.instrument.gaugeFactor);
  page.number(fresh.instrument.excitation.base());
  page.number(leadResistance(fresh.bridge, LeadRole::SignalMinus).base());
  expectShunts(page, bare);
  expectShunts(page, wired);
  expectSequence(page, wired);
  expectCheck(page, withCheckAdded(wired.channel, typedCheck()));
  return page;
}

/// Half a unit of the last digit printed, and a little for rounding on the way.
void expectPrinted(const std::string& printed, double value) {
  const auto point = printed.find('.');
  const double places = point == std::string::npos ? 0 : static_cast<double>(printed.size() - point - 1);
  EXPECT_NEAR(std::stod(printed), value, 0.5000001 * std::pow(10.0, -places)) << printed;
}

TEST(Manual, WorkedExampleSaysWhatTheProgramSays) {
  const Expected page = expectedPage();
  for (const auto& language : std::filesystem::directory_iterator(manual)) {
    const auto file = language.path() / "worked-example.md";
    if (!std::filesystem::exists(file)) continue;
    const auto printed = boldIn(textOf(file));
    ASSERT_EQ(printed.size(), page.entries().size()) << file;
    for (std::size_t k = 0; k < printed.size(); ++k) {
      SCOPED_TRACE(file.string() + ", bold number " + std::to_string(k + 1));
      const auto& [value, word] = page.entries()[k];
      if (word.empty()) {
        expectPrinted(printed[k], value);
      } else if (language.path().filename() == "en") {
        EXPECT_EQ(printed[k], word);
      }
    }
  }
}

/// The same page against published formulas: TN-514 for shunts over one of four equal arms (the gauge's arm:
/// -R/(F(R+Rs)), its neighbour: R/(F Rs), output R/(4Rs+2R)), and the attenuation R/(R+RL) by one wire of a
/// three-wire connection (Micro-Measurements, article on leadwire resistance).
TEST(Manual, WorkedExampleFollowsFromPublishedFormulas) {
  constexpr double arm = 350, factor = 2, lead = 0.5;
  const Example bare{Resistance(0)}, wired{Resistance(0.5)};
  const ChannelEvaluation without = evaluate(bare.channel), with = evaluate(wired.channel);
  const std::array<double, 4> shunts{349650, 174650, 349650, 174650};
  for (std::size_t k = 0; k < shunts.size(); ++k) {
    const bool up = k < 2;
    const double rs = shunts[k];
    const double simulated = up ? arm / (factor * rs) : -arm / (factor * (arm + rs));
    const double output = (up ? 1 : -1) * arm / (4 * rs + 2 * arm);
    const auto& plain = *without.prediction.steps[Example::shuntSteps[k]];
    // Exact formulas for this bridge: what is left is rounding of the solver.
    EXPECT_NEAR(plain.simulated, simulated, 1e-12);
    EXPECT_NEAR(plain.output.base(), output, 1e-14);
    EXPECT_NEAR(plain.reading.base(), 1e6 * 4 * output / factor, 1e-6);
    // The attenuation is exact for small strain; beyond it the two differ by r times the strain's share,
    // 0.0014 * 0.001 of 1000 µm/m: far below the printed hundredths.
    const auto& behindLeads = *with.prediction.steps[Example::shuntSteps[k]];
    EXPECT_NEAR(behindLeads.reading.base(), 1e6 * 4 * output / factor * arm / (arm + lead), 0.005);
  }
}

/// IEC 60062 for letters as decimal marks; the rest is what the page says, by reading it as a person would.
TEST(Manual, NotationIsTakenAsThePageSays) {
  const std::vector<std::tuple<std::string, UnitFamily, double>> said{
      {"174.65k", UnitFamily::Resistance, 174650},  {"174,65 kΩ", UnitFamily::Resistance, 174650},
      {"59k9", UnitFamily::Resistance, 59900},      {"4R7", UnitFamily::Resistance, 4.7},
      {"1M2", UnitFamily::Resistance, 1200000},     {"350 ohm", UnitFamily::Resistance, 350},
      {"1.5 mV/V", UnitFamily::Output, 1.5e-3},     {"500 µV/V", UnitFamily::Output, 0.5e-3},
      {"-1000 µm/m", UnitFamily::Strain, -1000e-6}, {"−1000", UnitFamily::Strain, -1000e-6},
      {"0.1 %", UnitFamily::Strain, 1e-3},          {"0.14 mm²", UnitFamily::Area, 0.14e-6},
      {"500 ms", UnitFamily::Duration, 0.5},        {"1 min", UnitFamily::Duration, 60},
      {"2.5 kHz", UnitFamily::Frequency, 2500},     {"1,234", UnitFamily::Resistance, 1.234}};
  const std::string page = textOf(manual / "en/notation.md");
  for (const auto& [text, family, value] : said) {
    EXPECT_NE(page.find("`" + text + "`"), std::string::npos) << text;
    const auto parsed = parseQuantity(text, family);
    ASSERT_TRUE(parsed) << text;
    EXPECT_DOUBLE_EQ(*parsed, value) << text;
  }
  EXPECT_NE(page.find("`1,234.5`"), std::string::npos);
  EXPECT_FALSE(parseQuantity("1,234.5", UnitFamily::Resistance));
}

}  // namespace manual_test
}  // namespace core
