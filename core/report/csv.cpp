// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/csv.h"

#include <cmath>

#include "core/report/figures.h"
#include "core/report/step_row.h"
#include "core/units/notation.h"

namespace core {
namespace {

constexpr std::string_view header =
    "channel,check,check_date,step,label,closed_shunts,hold_s,settle_s,polarity,"
    "simulated,expanded_uncertainty_strain,coverage_factor_strain,simulated_unit,output_mV_per_V,"
    "expected_reading,expanded_uncertainty_chain,coverage_factor_chain,coverage_probability,"
    "reading,reading_std_uncertainty,change,deviation,deviation_expanded_uncertainty,limit,reading_unit,"
    "decision_rule,guard_band,conformity_probability,en_number,verdict,reason,check_remark";

/// What stands before the first character that a spreadsheet may take as the start of a formula.
constexpr std::string_view skipped = " \n\xC2\xA0";

bool looksLikeFormula(std::string_view text) {
  const std::size_t first = text.find_first_not_of(skipped);
  if (first == std::string_view::npos) return false;
  constexpr std::string_view starts = "=+-@\t\r";
  return starts.find(text[first]) != std::string_view::npos;
}

/// A number is never touched; an absent one is an empty cell, a broken one a word.
std::string number(const std::optional<double>& value) {
  if (!value) return {};
  return std::isfinite(*value) ? formatNumber(*value, 17) : shownNumber(value, 0);
}

struct CheckCells {
  std::string name, date, remark;
};

void addRow(std::string& csv, const std::string& channel, const CheckCells& check, const Setup& setup,
            const StepRow& row) {
  const std::optional<double> output = row.output ? std::optional(row.output->base() * 1e3) : std::nullopt;
  const Decided decided = row.decided.value_or(Decided{});
  const std::string cells[] = {csvText(channel),
                               csvText(check.name),
                               csvText(check.date),
                               std::to_string(row.step + 1),
                               csvText(row.label),
                               csvText(row.closed),
                               number(row.hold.base()),
                               number(row.settle.base()),
                               row.expected ? std::string(polarityWord(row.polarity)) : std::string(),
                               number(row.simulated),
                               number(row.expandedStrain),
                               number(row.coverageStrain),
                               csvText(simulatedUnitText(setup.bridge)),
                               number(output),
                               number(row.expected),
                               number(row.expandedChain),
                               number(row.coverageChain),
                               number(setup.decision.coverage),
                               number(row.reading),
                               number(row.uncertainty),
                               number(row.change),
                               number(row.deviation),
                               number(decided.expanded),
                               number(row.limit),
                               csvText(readingUnitText(setup.instrument)),
                               std::string(decisionRuleKey(setup.decision.rule)),
                               number(decided.guardBand),
                               number(decided.probability),
                               number(decided.en),
                               std::string(verdictWord(row.verdict)),
                               csvText(row.reason),
                               csvText(check.remark)};
  std::string_view separator;
  for (const std::string& cell : cells) {
    csv += separator;
    csv += cell;
    separator = ",";
  }
  csv += "\r\n";
}

void addChannel(std::string& csv, const Channel& channel) {
  const ChannelEvaluation evaluation = evaluate(channel);
  for (std::size_t check = 0; check < channel.checks.size(); ++check) {
    const Check& made = channel.checks[check];
    for (const StepRow& row : stepRows(channel, evaluation, check))
      addRow(csv, channel.name, {made.name, made.date, made.remark}, setupOf(channel, made), row);
  }
  if (!channel.checks.empty()) return;
  for (StepRow& row : plannedRows(channel.setup, evaluation.prediction, evaluation.budget)) {
    if (row.reason.empty() && !row.notBudgeted.empty()) row.reason = "No uncertainty: " + row.notBudgeted;
    if (row.reason.empty()) row.reason = "Not judged: the channel has no check.";
    addRow(csv, channel.name, {}, channel.setup, row);
  }
}

}  // namespace

std::string csvText(std::string_view text) {
  std::string cell(text);
  std::erase(cell, '\0');  // ends the cell for some readers, and hides what comes behind it
  if (looksLikeFormula(cell)) cell.insert(0, 1, '\'');
  if (cell.find_first_of("\",\r\n") == std::string::npos && cell.find(';') == std::string::npos) return cell;
  std::string quoted = "\"";
  for (const char c : cell) {
    if (c == '"') quoted += '"';
    quoted += c;
  }
  return quoted + '"';
}

std::string reportCsv(const Document& document) {
  std::string csv(header);
  csv += "\r\n";
  for (const auto& channel : document.channels) addChannel(csv, *channel);
  return csv;
}

}  // namespace core
