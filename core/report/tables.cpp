// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/tables.h"

#include "core/report/figures.h"
#include "core/report/step_row.h"
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

}  // namespace

Table planTable(const Setup& setup, const SetupPrediction& prediction) {
  const std::string simulatedUnit = simulatedUnitText(setup.bridge);
  Table table{"Plan: steps and what they should show",
              {{"Step", true},
               {"Label"},
               {"Shunts closed"},
               {"Hold, s", true},
               {"Polarity"},
               numeric("Simulated", simulatedUnit),
               {"Output, mV/V", true},
               numeric("Expected", readingUnitText(setup.instrument))},
              {}};
  const std::vector<StepRow> rows = plannedRows(setup, prediction);
  const int simulatedDecimals = decimalsOf(rows, &StepRow::simulated);
  const int expectedDecimals = decimalsOf(rows, &StepRow::expected);
  for (const StepRow& row : rows) {
    TableRow line{{std::to_string(row.step + 1), row.label, row.closed, formatNumber(row.hold.base(), 6)},
                  {}};
    if (row.expected) {
      const auto more = {
          std::string(polarityWord(row.polarity)), shownNumber(row.simulated, simulatedDecimals),
          shownNumber(row.output->base() * 1e3, 6), shownNumber(row.expected, expectedDecimals)};
      line.cells.insert(line.cells.end(), more);
    } else {
      line.cells.insert(line.cells.end(), {"not known", "", "", "cannot be predicted"});
      line.verdict = Verdict::NotJudged;
    }
    table.rows.push_back(std::move(line));
  }
  return table;
}

Table checkTable(const Channel& channel, const ChannelEvaluation& evaluation, std::size_t check) {
  const Setup& setup = setupOf(channel, channel.checks[check]);
  const std::string unit = readingUnitText(setup.instrument);
  Table table{"Steps of " + channel.checks[check].name,
              {{"Step", true},
               {"Label"},
               numeric("Simulated", simulatedUnitText(setup.bridge)),
               numeric("Expected", unit),
               numeric("Reading", unit),
               numeric("Change", unit),
               numeric("Deviation", unit),
               numeric("Limit", unit),
               {"Verdict"}},
              {}};
  const std::vector<StepRow> rows = stepRows(channel, evaluation, check);
  const int simulated = decimalsOf(rows, &StepRow::simulated);
  const int expected = decimalsOf(rows, &StepRow::expected);
  for (const StepRow& row : rows)
    table.rows.push_back({{std::to_string(row.step + 1), row.label, shownNumber(row.simulated, simulated),
                           row.expected ? shownNumber(row.expected, expected) : "cannot be predicted",
                           row.reading ? shownNumber(row.reading, expected) : "no reading",
                           shownNumber(row.change, expected), shownNumber(row.deviation, expected),
                           shownNumber(row.limit, expected), std::string(verdictWord(row.verdict))},
                          row.verdict});
  return table;
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
