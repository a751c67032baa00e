// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/tables.h"

#include <algorithm>

#include "core/report/figures.h"
#include "core/report/record_words.h"
#include "core/report/step_row.h"
#include "core/report/uncertainty_tables.h"
#include "core/units/language.h"
#include "core/units/notation.h"

namespace core {
namespace {

/// All values of one column, so that the column gets one number of places.
int decimalsOf(const std::vector<StepRow>& rows, std::optional<double> StepRow::*field) {
  std::vector<double> values;
  for (const StepRow& row : rows)
    if (row.*field) values.push_back(*(row.*field));
  return decimalsFor(values);
}

TableColumn numeric(const std::string& name, const std::string& unit) {
  return {say("{1}, {2}", {name, unit}), true};
}

/// Of a step that is predicted: without an uncertainty the cell must not look forgotten.
std::string known(const std::optional<double>& uncertainty) {
  return uncertainty ? shownUncertainty(uncertainty) : say("not known");
}

/// The columns of a check that depend on its decision rule: the limit, and what the rule looks at.
class RuleColumns {
 public:
  explicit RuleColumns(const Setup& setup)
      : m_rule(setup.decision.rule),
        m_guardBand(m_rule == DecisionRule::Guarded && setup.decision.guardFactor != 1),
        m_unit(readingUnitText(setup.instrument)) {}

  void addHeads(Table& table) const {
    // The limit plays no part in an E_n number.
    if (m_rule != DecisionRule::EnNumber) table.columns.push_back(numeric(say("Limit"), m_unit));
    if (m_rule != DecisionRule::Simple) table.columns.push_back(numeric(say("U of deviation"), m_unit));
    if (m_guardBand) table.columns.push_back(numeric(say("Guard band"), m_unit));
    if (m_rule == DecisionRule::Conformity) table.columns.push_back({say("Conformity, %"), true});
    if (m_rule == DecisionRule::EnNumber) table.columns.push_back({"E_n", true});
  }

  void addCells(const StepRow& row, int decimals, TableRow& line) const {
    const Decided decided = row.decided.value_or(Decided{});
    if (m_rule != DecisionRule::EnNumber) line.cells.push_back(shownNumber(row.limit, decimals));
    if (m_rule != DecisionRule::Simple) line.cells.push_back(shownUncertainty(decided.expanded));
    if (m_guardBand) line.cells.push_back(shownUncertainty(decided.guardBand));
    if (m_rule == DecisionRule::Conformity) line.cells.push_back(percentText(decided.probability));
    if (m_rule == DecisionRule::EnNumber) line.cells.push_back(shownNumber(decided.en, 2));
  }

 private:
  static std::string percentText(const std::optional<double>& probability) {
    return probability ? formatFixed(100 * *probability, 1) : std::string();
  }

  DecisionRule m_rule;
  bool m_guardBand;  ///< as a column of its own: with a factor of 1 it is U
  std::string m_unit;
};

/// A figure without a limit is told, and that is all: it must not look forgotten.
std::string meritVerdict(const Merit& merit) {
  const bool told = !merit.limit && merit.verdict == Verdict::NotJudged;
  return told ? say("no limit") : std::string(verdictWord(merit.verdict));
}

std::string withoutPercent(const std::string& text) { return text.substr(0, text.find(' ')); }

/// One that cannot be worked out and has no limit is told in a line of its own below.
bool isInTable(const Merit& merit) { return merit.value || merit.limit; }

std::string readingCell(const std::optional<Reading>& reading, int decimals) {
  return reading ? shown(shownNumber(reading->base(), decimals)) : std::string();
}

std::string probabilityCell(const std::optional<double>& probability) {
  return probability ? probabilityText(*probability) : std::string();
}

/// Value, U, margin and both probabilities.
void addDifferenceCells(const std::optional<Difference>& moved, TableRow& row) {
  if (!moved) return row.cells.insert(row.cells.end(), 5, std::string()), void();
  const int places = moved->expanded && *moved->expanded > 0 ? decimalsOfUncertainty(*moved->expanded)
                                                             : decimalsOfUncertainty(moved->margin);
  const auto more = {shown(shownNumber(moved->value, std::min(places, 9))),
                     shown(shownUncertainty(moved->expanded)), shown(formatNumber(moved->margin, 3)),
                     probabilityCell(moved->pDifferent), probabilityCell(moved->pEquivalent)};
  row.cells.insert(row.cells.end(), more);
}

std::string comparisonNote(const Setup& setup, const Comparison& comparison) {
  std::string note = say(
      "Moved: by how much the deviation from expected changed. U at a coverage of {1}, without what both "
      "checks share. Unchanged: p beyond margin is below 0.05; changed: p of nothing moved is below 0.05, "
      "and that beyond margin is not.",
      {shown(formatQuantity(setup.decision.coverage, UnitFamily::Percent, {}, 4))});
  if (comparison.jointProbability)
    note += " " + say("All steps together, if nothing moved: {1}; from 0.05 on no single step counts as "
                      "changed.",
                      {probabilityText(*comparison.jointProbability, true)});
  return note;
}

bool isAmong(const std::vector<std::size_t>& list, std::size_t k) {
  return std::find(list.begin(), list.end(), k) != list.end();
}

}  // namespace

Table planTable(const Setup& setup, const SetupPrediction& prediction, const Budget& budget) {
  const std::string simulatedUnit = simulatedUnitText(setup.bridge);
  const std::string readingUnit = readingUnitText(setup.instrument);
  const std::string strain = scopeName(setup, Scope::Strain), chain = scopeName(setup, Scope::Chain);
  Table table{say("Plan: steps and what they should show"),
              {{say("Step"), true},
               {say("Label")},
               {say("Shunts closed")},
               {say("Settle, s"), true},
               {say("Hold, s"), true},
               {say("Polarity")},
               numeric(say("Simulated"), simulatedUnit),
               numeric(say("U of simulated ({1})", {strain}), simulatedUnit),
               {say("Output, mV/V"), true},
               numeric(say("Expected"), readingUnit),
               numeric(say("U of expected ({1})", {chain}), readingUnit)},
              {},
              false,
              false,
              coverageSentence(setup, budget)};
  const std::vector<StepRow> rows = plannedRows(setup, prediction, budget);
  const int simulatedDecimals = decimalsOf(rows, &StepRow::simulated);
  const int expectedDecimals = decimalsOf(rows, &StepRow::expected);
  for (const StepRow& row : rows) {
    TableRow line{{std::to_string(row.step + 1), row.label, row.closed, formatNumber(row.settle.base(), 6),
                   formatNumber(row.hold.base(), 6)},
                  {}};
    if (row.expected) {
      const auto more = {std::string(polarityWord(row.polarity)),
                         shownNumber(row.simulated, simulatedDecimals),
                         known(row.expandedStrain),
                         shownNumber(row.output->base() * 1e3, 6),
                         shownNumber(row.expected, expectedDecimals),
                         known(row.expandedChain)};
      line.cells.insert(line.cells.end(), more);
    } else {
      line.cells.insert(line.cells.end(), {say("not known"), "", "", "", say("cannot be predicted"), ""});
      line.verdict = Verdict::NotJudged;
    }
    table.rows.push_back(std::move(line));
  }
  return table;
}

Table checkTable(const Channel& channel, const ChannelEvaluation& evaluation, std::size_t check) {
  const Setup& setup = setupOf(channel, channel.checks[check]);
  const std::string unit = readingUnitText(setup.instrument);
  const RuleColumns rule(setup);
  Table table{say("Steps of {1}", {channel.checks[check].name}),
              {{say("Step"), true},
               {say("Label")},
               numeric(say("Simulated"), simulatedUnitText(setup.bridge)),
               numeric(say("Expected"), unit),
               numeric(say("Reading"), unit),
               numeric(say("Change"), unit),
               numeric(say("Deviation"), unit)},
              {}};
  rule.addHeads(table);
  table.columns.push_back({say("Verdict")});
  const std::vector<StepRow> rows = stepRows(channel, evaluation, check);
  const int simulated = decimalsOf(rows, &StepRow::simulated);
  const int expected = decimalsOf(rows, &StepRow::expected);
  for (const StepRow& row : rows) {
    TableRow line{{std::to_string(row.step + 1), row.label, shownNumber(row.simulated, simulated),
                   row.expected ? shownNumber(row.expected, expected) : say("cannot be predicted"),
                   row.reading ? shownNumber(row.reading, expected) : say("no reading"),
                   shownNumber(row.change, expected), shownNumber(row.deviation, expected)},
                  row.verdict};
    rule.addCells(row, expected, line);
    line.cells.emplace_back(verdictWord(row.verdict));
    table.rows.push_back(std::move(line));
  }
  return table;
}

Table meritTable(const Channel& channel, const ChannelEvaluation& evaluation, std::size_t check) {
  const Setup& setup = setupOf(channel, channel.checks[check]);
  Table table{
      say("Figures of merit of {1}", {channel.checks[check].name}),
      {{say("Figure"), false, 24},
       {say("Value, {1}", {readingUnitText(setup.instrument)}), true, 14},
       {say("Share, %"), true, 12},
       {say("u of share, %"), true, 14},
       {setup.decision.rule == DecisionRule::EnNumber ? say("Limit or U, %") : say("Limit, %"), true, 12},
       {say("Step"), true, 8},
       {say("Verdict"), false, 16}},
      {},
      false,
      true};
  std::string unknown;
  for (const Merit& merit : evaluation.checks[check].assessment.merits) {
    if (!isInTable(merit)) {
      unknown +=
          (unknown.empty() ? "" : "; ") + std::string(meritKindName(merit.kind)) + " (" + merit.missing + ")";
      continue;
    }
    table.rows.push_back({{meritHeading(merit.kind), merit.value ? valueText(merit) : say("not known"),
                           withoutPercent(shareText(merit)),
                           merit.standard ? shownUncertainty(100 * *merit.standard) : std::string(),
                           withoutPercent(limitText(merit)),
                           merit.step ? std::to_string(*merit.step + 1) : std::string(), meritVerdict(merit)},
                          merit.limit ? std::optional(merit.verdict) : std::nullopt});
  }
  if (!unknown.empty()) table.note = say("Not known: {1}.", {unknown});
  return table;
}

std::vector<std::string> meritDefinitions(const std::vector<Merit>& merits) {
  std::vector<std::string> sentences;
  for (const Merit& merit : merits)
    if (merit.value) sentences.push_back(meritHeading(merit.kind) + ": " + merit.definition + ".");
  return sentences;
}

Table comparisonTable(const Channel& channel, const Comparison& comparison, std::size_t before,
                      std::size_t after) {
  const Setup& setup = setupOf(channel, channel.checks[before]);
  const std::string unit = readingUnitText(setup.instrument);
  Table table{
      say("Change from zero in {1} and {2}", {channel.checks[before].name, channel.checks[after].name}),
      {{say("Step"), true},
       {say("Label")},
       numeric(channel.checks[before].name, unit),
       numeric(channel.checks[after].name, unit),
       numeric(say("Moved"), unit),
       numeric("U", unit),
       numeric(say("Margin"), unit),
       {say("p, nothing moved"), true},
       {say("p, beyond margin"), true},
       {say("Result")}},
      {}};
  std::vector<double> all;
  for (const StepComparison& step : comparison.steps)
    if (step.before) all.push_back(step.before->base());
  const int decimals = decimalsFor(all);
  for (std::size_t k = 0; k < comparison.steps.size(); ++k) {
    const StepComparison& step = comparison.steps[k];
    const Change change = changeOf(step.moved);
    TableRow row{{std::to_string(k + 1), setup.sequence[k].label, readingCell(step.before, decimals),
                  readingCell(step.after, decimals)},
                 verdictOf(change)};
    addDifferenceCells(step.moved, row);
    row.cells.push_back(say(changeName(change)));
    table.rows.push_back(std::move(row));
  }
  table.note = comparisonNote(setup, comparison);
  return table;
}

Table configurationTable(const Comparison& comparison, const std::string& before, const std::string& after) {
  Table table{say("What differs in the set-ups"),
              {{say("What")}, {before}, {after}, {say("Readings depend on it")}},
              {}};
  for (const SetupDifference& difference : comparison.configuration)
    table.rows.push_back({{difference.what, difference.before, difference.after,
                           difference.onReadings ? say("yes") : say("no")},
                          {}});
  return table;
}

Table trendTable(const Channel& channel, const Trend& trend) {
  const std::string unit = readingUnitText(channel.setup.instrument);
  Table table{say("Gain and zero of every check"),
              {{say("Check")},
               {say("Date")},
               {say("Gain"), true},
               {say("u of gain"), true},
               numeric(say("Zero"), unit),
               numeric(say("u of zero"), unit),
               {say("Beyond limits")}},
              {},
              false,
              false,
              trend.sentence};
  std::vector<double> zeros;
  for (const TrendPoint& point : trend.points)
    if (point.zero) zeros.push_back(*point.zero);
  for (std::size_t k = 0; k < trend.points.size(); ++k) {
    const TrendPoint& point = trend.points[k];
    const bool gain = isAmong(trend.beyondGain, k), zero = isAmong(trend.beyondZero, k);
    table.rows.push_back(
        {{channel.checks[point.check].name, point.day ? shown(*point.day) : std::string(),
          shown(shownNumber(point.gain, 6)), shown(shownUncertainty(point.gainStandard)),
          shown(shownNumber(point.zero, decimalsFor(zeros))), shown(shownUncertainty(point.zeroStandard)),
          gain && zero ? say("gain and zero")
          : gain       ? say("gain")
          : zero       ? say("zero")
                       : say("none")},
         {}});
  }
  return table;
}

}  // namespace core
