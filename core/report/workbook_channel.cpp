// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/workbook_channel.h"

#include <algorithm>
#include <cmath>

#include "core/line/line.h"
#include "core/report/figures.h"
#include "core/report/record_words.h"
#include "core/report/step_row.h"

namespace core {
namespace {

using std::uint16_t;
using std::uint32_t;

constexpr uint32_t chartRows = 16;

/// Columns of a check's steps.
enum StepColumn : uint16_t {
  StepNumber,
  Label,
  Closed,
  Simulated,
  Expected,
  ExpectedU,
  ReadingShown,
  ChangeFromZero,
  Deviation,
  Limit,
  DeviationU,
  GuardBand,
  Conformity,
  En,
  VerdictWord,
  Reason,
};

/// Columns of the numbers that a check's formulas share, in the row above its steps.
enum FactColumn : uint16_t {
  Share,
  Least,
  ZeroShare,
  GreatestExpected,
  GuardFactor,
  GreatestShare,
  LeastConformity,
  ZeroReading,
  Slope,
  Intercept,
  JudgedSlope,
  JudgedSlopeU,
  Gain,
  GainU,
  LineFrom,
  LineTo,
};

/// Whether a formula that gives `a` in doubles is as good as the number `b` that was worked out: a sum,
/// product or difference of the same doubles is off by some units in the last place of the larger operand.
bool agrees(double a, double b, double scale) {
  return std::abs(a - b) <= 1e-12 * std::max(scale, std::abs(b));
}

/// One check on its sheet.
class CheckBlock {
 public:
  CheckBlock(WorkbookSheet& sheet, const ReportBasis& basis, std::size_t index, std::size_t number)
      : m_sheet(sheet),
        m_channel(basis.channel(index)),
        m_check(m_channel.checks[number]),
        m_setup(setupOf(m_channel, m_check)),
        m_assessment(basis.evaluations[index].checks[number].assessment),
        m_rows(stepRows(m_channel, basis.evaluations[index], number)) {}

  /// Returns the row behind it.
  uint32_t put(uint32_t row) {
    putHead(row);
    m_fact = row + 4;
    m_first = m_fact + 4;
    putFacts();
    putSteps();
    const uint32_t end = m_first + static_cast<uint32_t>(m_rows.size());
    return putChart(end + 1);
  }

 private:
  uint32_t last() const { return m_first + static_cast<uint32_t>(m_rows.size()) - 1; }
  std::string fact(FactColumn column) const { return cellName(m_fact + 1, column, true); }
  std::string step(std::size_t k, StepColumn column) const {
    return cellName(m_first + static_cast<uint32_t>(k), column);
  }
  std::string range(StepColumn column) const { return columnRange(m_first, last(), column); }

  void putHead(uint32_t row) {
    m_sheet.text(row, 0, say("Check {1}", {m_check.name}), CellStyle::Title);
    m_sheet.text(row + 1, 0, say("Date"));
    if (const auto day = dateFromText(m_check.date))
      m_sheet.day(row + 1, 1, day);
    else
      m_sheet.text(row + 1, 1, givenText(m_check.date));
    m_sheet.text(row + 1, 2, say("Run by"));
    m_sheet.text(row + 1, 3, givenText(m_check.person));
    m_sheet.text(row + 1, 5, say("Decision rule: {1}.", {decisionText(m_setup.decision)}));
    m_sheet.text(row + 2, 0, m_assessment.reason, styleOf(m_assessment.verdict));
  }

  double greatestExpected() const {
    double greatest = 0;
    for (const StepRow& row : m_rows) greatest = std::max(greatest, std::abs(row.expected.value_or(0)));
    return greatest;
  }

  void putFacts() {
    const std::string unit = readingUnitText(m_setup.instrument);
    m_sheet.texts(
        m_fact,
        {say("Limit, share of expected"), say("Limit at least, {1}", {unit}), say("Zero return, share"),
         say("Greatest expected, {1}", {unit}), say("Guard factor"), say("U at most, share of limit"),
         say("Conformity at least"), say("Zero reading, {1}", {unit}), say("Slope, least squares"),
         say("Intercept, {1}", {unit}), say("Slope as judged"), say("u of slope"), say("Gain"),
         say("u of gain"), say("Line from"), say("Line to")},
        CellStyle::Head);
    const uint32_t row = m_fact + 1;
    m_sheet.number(row, Share, m_setup.limits.relative);
    m_sheet.number(row, Least, m_setup.limits.least.base());
    m_sheet.number(row, ZeroShare, m_setup.limits.zeroReturn);
    if (!m_rows.empty())
      m_sheet.formula(row, GreatestExpected,
                      "=MAX(MAX(" + range(Expected) + "),-MIN(" + range(Expected) + "))", greatestExpected());
    m_sheet.number(row, GuardFactor, m_setup.decision.guardFactor);
    m_sheet.number(row, GreatestShare, m_setup.decision.greatestShare);
    m_sheet.number(row, LeastConformity, m_setup.decision.conformity);
    putZero(row);
    putLine(row);
    if (!m_assessment.gain) return;
    m_sheet.number(row, Gain, m_assessment.gain->value, 6);
    m_sheet.number(row, GainU, m_assessment.gain->standard);
  }

  void putZero(uint32_t row) {
    const auto& zero = m_assessment.zeroStep;
    if (zero && m_rows[*zero].reading && std::isfinite(*m_rows[*zero].reading))
      m_sheet.formula(row, ZeroReading, "=" + step(*zero, ReadingShown), *m_rows[*zero].reading);
    else
      m_sheet.number(row, ZeroReading, 0);
  }

  /// SLOPE and INTERCEPT are ordinary least squares; the line that was judged may weigh its points.
  void putLine(uint32_t row) {
    std::vector<double> x, y;
    for (const StepRow& one : m_rows)
      if (one.simulated && one.change && std::isfinite(*one.change)) {
        x.push_back(*one.simulated);
        y.push_back(*one.change);
      }
    if (m_assessment.line) {
      m_sheet.number(row, JudgedSlope, m_assessment.line->slope, 7);
      m_sheet.number(row, JudgedSlopeU, m_assessment.line->slopeError);
    }
    const Result<Line> line = fitLine(x, y);
    if (!line) return;
    m_isFitted = true;
    const std::string both = "(" + range(ChangeFromZero) + "," + range(Simulated) + ")";
    m_sheet.formula(row, Slope, "=SLOPE" + both, line->slope, 7);
    m_sheet.formula(row, Intercept, "=INTERCEPT" + both, line->intercept, 4);
    const auto [least, greatest] = std::minmax_element(x.begin(), x.end());
    putLineEnd(row, LineFrom, "MIN", *least, *line);
    putLineEnd(row, LineTo, "MAX", *greatest, *line);
  }

  void putLineEnd(uint32_t row, FactColumn column, const std::string& function, double x, const Line& line) {
    m_sheet.formula(row, column, "=" + function + "(" + range(Simulated) + ")", x, 3);
    m_sheet.formula(row + 1, column, "=" + fact(Intercept) + "+" + fact(Slope) + "*" + cellName(row, column),
                    line.intercept + line.slope * x, 3);
  }

  void putSteps() {
    const std::string unit = readingUnitText(m_setup.instrument),
                      simulated = simulatedUnitText(m_setup.bridge);
    const auto in = [&](std::string_view name, const std::string& u) {
      return say("{1}, {2}", {say(name), u});
    };
    m_sheet.texts(
        m_first - 1,
        {say("Step"), say("Label"), say("Shunts closed"), in(sayLater("Simulated"), simulated),
         in(sayLater("Expected"), unit), in(sayLater("U of expected"), unit), in(sayLater("Reading"), unit),
         in(sayLater("Change"), unit), in(sayLater("Deviation"), unit), in(sayLater("Limit"), unit),
         in(sayLater("U of deviation"), unit), in(sayLater("Guard band"), unit), say("Conformity"),
         say("E_n"), say("Verdict"), say("Reason")},
        CellStyle::Head);
    for (std::size_t k = 0; k < m_rows.size(); ++k) putStep(k);
  }

  void putStep(std::size_t k) {
    const StepRow& row = m_rows[k];
    const uint32_t at = m_first + static_cast<uint32_t>(k);
    m_sheet.number(at, StepNumber, static_cast<double>(k + 1), 0);
    m_sheet.text(at, Label, row.label);
    m_sheet.text(at, Closed, row.closed);
    m_sheet.number(at, Simulated, row.simulated, 3);
    m_sheet.number(at, Expected, row.expected, 3);
    m_sheet.number(at, ExpectedU, row.expandedChain, 4);
    m_sheet.number(at, ReadingShown, row.reading, 3);
    putChange(at, k);
    putLimit(at, k);
    putDecided(at, k);
    m_sheet.text(at, Reason, row.reason);
  }

  void putChange(uint32_t at, std::size_t k) {
    const StepRow& row = m_rows[k];
    if (row.change && row.reading)
      m_sheet.formula(at, ChangeFromZero, "=" + step(k, ReadingShown) + "-" + fact(ZeroReading), *row.change,
                      3);
    if (row.deviation)
      m_sheet.formula(at, Deviation, "=" + step(k, ChangeFromZero) + "-" + step(k, Expected), *row.deviation,
                      3);
  }

  void putLimit(uint32_t at, std::size_t k) {
    const StepRow& row = m_rows[k];
    if (!row.limit) return;
    const bool isZero = m_setup.sequence[k].closed.empty();
    const double least = m_setup.limits.least.base();
    const double share = isZero ? m_setup.limits.zeroReturn * greatestExpected()
                                : m_setup.limits.relative * std::abs(row.expected.value_or(0));
    const std::string of = isZero ? fact(ZeroShare) + "*" + fact(GreatestExpected)
                                  : fact(Share) + "*ABS(" + step(k, Expected) + ")";
    if (agrees(std::max(share, least), *row.limit, 0))
      m_sheet.formula(at, Limit, "=MAX(" + of + "," + fact(Least) + ")", *row.limit, 3);
    else
      m_sheet.number(at, Limit, row.limit, 3);
  }

  void putDecided(uint32_t at, std::size_t k) {
    const StepRow& row = m_rows[k];
    const Decided decided = row.decided.value_or(Decided{});
    m_sheet.number(at, DeviationU, decided.expanded, 4);
    if (decided.guardBand && decided.expanded &&
        agrees(m_setup.decision.guardFactor * *decided.expanded, *decided.guardBand, 0))
      m_sheet.formula(at, GuardBand, "=" + fact(GuardFactor) + "*" + step(k, DeviationU), *decided.guardBand,
                      4);
    else
      m_sheet.number(at, GuardBand, decided.guardBand, 4);
    m_sheet.number(at, Conformity, decided.probability, 4);
    if (decided.en && decided.expanded && *decided.expanded > 0)
      m_sheet.formula(at, En, "=" + step(k, Deviation) + "/" + step(k, DeviationU), *decided.en, 2);
    const std::string word = std::string(verdictWord(row.verdict));
    const std::string formula = row.decided ? verdictFormula(k, decided) : std::string();
    if (formula.empty())
      m_sheet.text(at, VerdictWord, word, styleOf(row.verdict));
    else
      m_sheet.formula(at, VerdictWord, formula, word, styleOf(row.verdict));
  }

  static std::string inWords(Verdict verdict) { return "\"" + std::string(verdictWord(verdict)) + "\""; }

  /// What the decision rule does (see core::decide); empty where it decides by what no cell holds.
  std::string verdictFormula(std::size_t k, const Decided& decided) const {
    const std::string pass = inWords(Verdict::Pass), fail = inWords(Verdict::Fail),
                      untold = inWords(Verdict::CannotTell);
    const std::string size = "ABS(" + step(k, Deviation) + ")", limit = step(k, Limit);
    const auto choose = [](const std::string& condition, const std::string& yes, const std::string& no) {
      return "IF(" + condition + "," + yes + "," + no + ")";
    };
    if (!m_rows[k].deviation || !std::isfinite(*m_rows[k].deviation)) return {};
    switch (m_setup.decision.rule) {
      case DecisionRule::Simple:
        return "=" + choose(size + "<=" + limit, pass, fail);
      case DecisionRule::SharedRisk: {
        if (!decided.expanded) return {};
        const std::string u = step(k, DeviationU), large = u + ">" + fact(GreatestShare) + "*" + limit;
        return "=" + choose(large, choose(size + ">" + limit + "+" + u, fail, untold),
                            choose(size + "<=" + limit, pass, fail));
      }
      case DecisionRule::Guarded: {
        if (!decided.guardBand) return {};
        const std::string band = step(k, GuardBand);
        return "=" + choose(size + "<=" + limit + "-" + band, pass,
                            choose(size + ">" + limit + "+" + band, fail, untold));
      }
      case DecisionRule::Conformity: {
        if (!decided.probability) return {};
        const std::string probability = step(k, Conformity), least = fact(LeastConformity);
        return "=" +
               choose(probability + ">=" + least, pass, choose(probability + "<=1-" + least, fail, untold));
      }
      case DecisionRule::EnNumber:
        return decided.en && decided.expanded && *decided.expanded > 0
                   ? "=" + choose("ABS(" + step(k, En) + ")<=1", pass, fail)
                   : std::string();
    }
    return {};
  }

  uint32_t putChart(uint32_t row) {
    const bool isRead = std::any_of(m_rows.begin(), m_rows.end(), [](const StepRow& one) {
      return one.simulated && one.change && std::isfinite(*one.change);
    });
    if (!isRead) return row;
    WorkbookSheet::Chart chart;
    chart.firstRow = m_first;
    chart.lastRow = last();
    chart.x = Simulated;
    chart.y = ChangeFromZero;
    if (m_isFitted) chart.lineRow = m_fact + 1;
    chart.lineColumn = LineFrom;
    chart.title = say("{1}, check {2}", {m_channel.name, m_check.name});
    chart.xTitle = say("{1}, {2}", {say("Simulated"), simulatedUnitText(m_setup.bridge)});
    chart.yTitle = say("{1}, {2}", {say("Change"), readingUnitText(m_setup.instrument)});
    chart.pointsName = say("Measured");
    chart.lineName = say("Fitted line");
    m_sheet.chart(row, 0, chart);
    return row + chartRows;
  }

  WorkbookSheet& m_sheet;
  const Channel& m_channel;
  const Check& m_check;
  const Setup& m_setup;
  const CheckAssessment& m_assessment;
  std::vector<StepRow> m_rows;
  uint32_t m_fact = 0;   ///< row of the heads of the shared numbers; these are below
  uint32_t m_first = 0;  ///< row of the first step
  bool m_isFitted = false;
};

std::optional<double> baseOf(const std::optional<Reading>& reading) {
  return reading ? std::optional(reading->base()) : std::nullopt;
}

void putComparedStep(WorkbookSheet& sheet, uint32_t row, std::size_t k, const StepComparison& step) {
  sheet.number(row, 0, static_cast<double>(k + 1), 0);
  sheet.number(row, 3, baseOf(step.before), 3);
  sheet.number(row, 4, baseOf(step.after), 3);
  if (step.difference && step.before && step.after)
    sheet.formula(row, 5, "=" + cellName(row, 4) + "-" + cellName(row, 3), step.difference->base(), 3);
  if (step.moved) {
    sheet.number(row, 6, step.moved->value, 3);
    sheet.number(row, 7, step.moved->standard);
    sheet.number(row, 8, step.moved->margin, 3);
    sheet.number(row, 9, step.moved->pDifferent);
    sheet.number(row, 10, step.moved->pEquivalent);
    sheet.text(row, 14, say(changeName(step.moved->change)));
  }
  sheet.text(row, 15, step.reason);
}

uint32_t putComparison(WorkbookSheet& sheet, uint32_t row, const Channel& channel,
                       const ComparedChecks& pair) {
  const Check &before = channel.checks[pair.before], &after = channel.checks[pair.after];
  const std::string unit = readingUnitText(setupOf(channel, before).instrument);
  sheet.text(row, 0, say("{1} and {2} compared", {before.name, after.name}), CellStyle::Title);
  sheet.text(row + 1, 0, pair.comparison.reason, styleOf(pair.comparison.verdict));
  if (pair.comparison.steps.empty()) return row + 3;
  sheet.texts(row + 3,
              {say("Step"), say("Label"), "", say("{1}, {2}", {before.name, unit}),
               say("{1}, {2}", {after.name, unit}), say("Difference, {1}", {unit}), say("Moved, {1}", {unit}),
               say("u, {1}", {unit}), say("Margin, {1}", {unit}), say("p of no difference"),
               say("p of beyond the margin"), "", "", "", say("Result"), say("Reason")},
              CellStyle::Head);
  uint32_t at = row + 4;
  const auto& sequence = setupOf(channel, before).sequence;
  for (std::size_t k = 0; k < pair.comparison.steps.size(); ++k, ++at) {
    if (k < sequence.size()) sheet.text(at, 1, sequence[k].label);
    putComparedStep(sheet, at, k, pair.comparison.steps[k]);
  }
  return at + 1;
}

}  // namespace

std::uint32_t putChannel(WorkbookSheet& sheet, std::uint32_t row, const ReportBasis& basis,
                         std::size_t index) {
  const Channel& channel = basis.channel(index);
  sheet.text(row, 0, say("Channel {1}", {channel.name}), CellStyle::Title);
  sheet.text(row, 5, std::string(templateOf(channel.setup.bridge.type).name));
  sheet.text(row + 1, 0, say("Status: {1}.", {basis.overview.at(index).status}),
             styleOf(basis.evaluations[index].verdict));
  row += 3;
  for (const std::size_t number : reportedChecks(channel, basis.order.content))
    row = CheckBlock(sheet, basis, index, number).put(row) + 1;
  const auto found = basis.compared.find(index);
  if (found != basis.compared.end() && basis.has(ReportPart::Comparison))
    row = putComparison(sheet, row, channel, found->second);
  return row + 1;
}

}  // namespace core
