// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/tables.h"

#include <algorithm>

#include "core/report/figures.h"
#include "core/report/step_row.h"
#include "core/report/uncertainty_tables.h"
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

TableColumn numeric(const std::string& name, const std::string& unit) { return {name + ", " + unit, true}; }

/// Of a step that is predicted: without an uncertainty the cell must not look forgotten.
std::string known(const std::optional<double>& uncertainty) {
  return uncertainty ? shownUncertainty(uncertainty) : "not known";
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
    if (m_rule != DecisionRule::EnNumber) table.columns.push_back(numeric("Limit", m_unit));
    if (m_rule != DecisionRule::Simple) table.columns.push_back(numeric("U of deviation", m_unit));
    if (m_guardBand) table.columns.push_back(numeric("Guard band", m_unit));
    if (m_rule == DecisionRule::Conformity) table.columns.push_back({"Conformity, %", true});
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
  return told ? "no limit" : std::string(verdictWord(merit.verdict));
}

std::string capital(std::string_view name) {
  std::string text(name);
  if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') text[0] = static_cast<char>(text[0] - 'a' + 'A');
  return text;
}

std::string withoutPercent(const std::string& text) { return text.substr(0, text.find(' ')); }

/// One that cannot be worked out and has no limit is told in a line of its own below.
bool isInTable(const Merit& merit) { return merit.value || merit.limit; }

}  // namespace

Table planTable(const Setup& setup, const SetupPrediction& prediction, const Budget& budget) {
  const std::string simulatedUnit = simulatedUnitText(setup.bridge);
  const std::string readingUnit = readingUnitText(setup.instrument);
  const std::string strain = scopeName(setup, Scope::Strain), chain = scopeName(setup, Scope::Chain);
  Table table{"Plan: steps and what they should show",
              {{"Step", true},
               {"Label"},
               {"Shunts closed"},
               {"Settle, s", true},
               {"Hold, s", true},
               {"Polarity"},
               numeric("Simulated", simulatedUnit),
               numeric("U of simulated (" + strain + ")", simulatedUnit),
               {"Output, mV/V", true},
               numeric("Expected", readingUnit),
               numeric("U of expected (" + chain + ")", readingUnit)},
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
      line.cells.insert(line.cells.end(), {"not known", "", "", "", "cannot be predicted", ""});
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
  Table table{"Steps of " + channel.checks[check].name,
              {{"Step", true},
               {"Label"},
               numeric("Simulated", simulatedUnitText(setup.bridge)),
               numeric("Expected", unit),
               numeric("Reading", unit),
               numeric("Change", unit),
               numeric("Deviation", unit)},
              {}};
  rule.addHeads(table);
  table.columns.push_back({"Verdict"});
  const std::vector<StepRow> rows = stepRows(channel, evaluation, check);
  const int simulated = decimalsOf(rows, &StepRow::simulated);
  const int expected = decimalsOf(rows, &StepRow::expected);
  for (const StepRow& row : rows) {
    TableRow line{{std::to_string(row.step + 1), row.label, shownNumber(row.simulated, simulated),
                   row.expected ? shownNumber(row.expected, expected) : "cannot be predicted",
                   row.reading ? shownNumber(row.reading, expected) : "no reading",
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
  Table table{"Figures of merit of " + channel.checks[check].name,
              {{"Figure", false, 24},
               {"Value, " + readingUnitText(setup.instrument), true, 14},
               {"Share, %", true, 12},
               {"u of share, %", true, 14},
               {setup.decision.rule == DecisionRule::EnNumber ? "Limit or U, %" : "Limit, %", true, 12},
               {"Step", true, 8},
               {"Verdict", false, 16}},
              {},
              false,
              true};
  for (const Merit& merit : evaluation.checks[check].assessment.merits) {
    if (!isInTable(merit)) {
      table.note += (table.note.empty() ? "Not known: " : "; ") + std::string(meritKindName(merit.kind)) +
                    " (" + merit.missing + ")";
      continue;
    }
    table.rows.push_back({{capital(meritKindName(merit.kind)), merit.value ? valueText(merit) : "not known",
                           withoutPercent(shareText(merit)),
                           merit.standard ? shownUncertainty(100 * *merit.standard) : std::string(),
                           withoutPercent(limitText(merit)),
                           merit.step ? std::to_string(*merit.step + 1) : std::string(), meritVerdict(merit)},
                          merit.limit ? std::optional(merit.verdict) : std::nullopt});
  }
  if (!table.note.empty()) table.note += ".";
  return table;
}

std::vector<std::string> meritDefinitions(const std::vector<Merit>& merits) {
  std::vector<std::string> sentences;
  for (const Merit& merit : merits)
    if (merit.value) sentences.push_back(capital(meritKindName(merit.kind)) + ": " + merit.definition + ".");
  return sentences;
}

Table comparisonTable(const Channel& channel, const Comparison& comparison, std::size_t before,
                      std::size_t after) {
  const Setup& setup = setupOf(channel, channel.checks[before]);
  const std::string unit = readingUnitText(setup.instrument);
  Table table{"Change from zero in " + channel.checks[before].name + " and " + channel.checks[after].name,
              {{"Step", true},
               {"Label"},
               numeric(channel.checks[before].name, unit),
               numeric(channel.checks[after].name, unit),
               numeric("Difference", unit),
               numeric("Limit", unit),
               {"Result"}},
              {}};
  std::vector<double> all;
  for (const StepComparison& step : comparison.steps)
    if (step.before) all.push_back(step.before->base());
  const int decimals = decimalsFor(all);
  const auto cell = [&](const std::optional<Reading>& reading) {
    return reading ? shownNumber(reading->base(), decimals) : std::string();
  };
  for (std::size_t k = 0; k < comparison.steps.size(); ++k) {
    const StepComparison& step = comparison.steps[k];
    table.rows.push_back(
        {{std::to_string(k + 1), setup.sequence[k].label, cell(step.before), cell(step.after),
          cell(step.difference), cell(step.limit), std::string(comparisonWord(step.verdict))},
         step.verdict});
  }
  return table;
}

}  // namespace core
