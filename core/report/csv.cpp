// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/csv.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/circuit/hookup_words.h"
#include "core/record/fingerprint.h"
#include "core/report/diagnosis_section.h"
#include "core/report/figures.h"
#include "core/report/report_basis.h"
#include "core/report/step_row.h"
#include "core/units/notation.h"

namespace core {
namespace {

constexpr std::string_view header =
    "channel,check,check_date,step,label,closed_shunts,hold_s,settle_s,polarity,"
    "simulated,expanded_uncertainty_strain,coverage_factor_strain,simulated_unit,output_mV_per_V,"
    "expected_reading,expanded_uncertainty_chain,coverage_factor_chain,coverage_probability,"
    "reading,reading_std_uncertainty,change,deviation,deviation_expanded_uncertainty,limit,reading_unit,"
    "decision_rule,guard_band,conformity_probability,en_number,verdict,reason,check_remark,"
    "check_verdict,nonlinearity,hysteresis,repeatability,zero_return,zero_shift,symmetry,combined_error,"
    "span_ratio,line_probability,diagnosis,likeliest_cause,cause_size,cause_weight,diagnosis_sentence,"
    "connection,compared_with,step_moved,moved_std_uncertainty,moved_margin,p_different,p_equivalent,step_"
    "change,"
    "check_change,gain_change,gain_p_different,gain_p_equivalent,resistors,certificates,calibration_due,"
    "instrument,instrument_serial,instrument_certificate,instrument_due,air_degC,relative_humidity,"
    "fingerprint";

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

/// What stands in each row of a check, as cells.
struct CheckCells {
  std::string name, date, remark, verdict;
  std::array<std::string, meritKindCount> merits;
  std::string lineProbability, diagnosis, cause, size, weight, sentence;
  Ambient ambient;
  const ComparedChecks* compared = nullptr;  ///< where the check is the later one of it
  std::string comparedWith;
};

CheckCells cellsOf(const Check& check, const CheckAssessment& assessment, const Diagnosis* diagnosis) {
  CheckCells cells;
  cells.name = csvText(check.name);
  cells.date = csvText(check.date);
  cells.remark = csvText(check.remark);
  cells.verdict = verdictWord(assessment.verdict);
  for (const Merit& merit : assessment.merits)
    cells.merits[static_cast<std::size_t>(merit.kind)] = number(merit.share);
  if (assessment.line) cells.lineProbability = number(assessment.line->chiSquareProbability);
  if (!diagnosis) return cells;
  cells.diagnosis = diagnosisResultKey(diagnosis->result);
  cells.sentence = csvText(diagnosisSentence(*diagnosis));
  if (diagnosis->explanations.empty()) return cells;
  const Explanation& likeliest = diagnosis->explanations.front();
  cells.cause = causeKindKey(likeliest.fault.kind);
  cells.size = csvText(likeliest.sizeText);
  cells.weight = number(likeliest.weight);
  return cells;
}

void append(std::string& csv, std::span<const std::string> cells, std::string_view separator) {
  for (const std::string& cell : cells) {
    csv += separator;
    csv += cell;
    separator = ",";
  }
}

/// The number of the later check's step `step` in the comparison, none where it is not held against one.
const StepComparison* comparedStep(const Comparison& comparison, std::size_t step) {
  const auto found = std::find_if(comparison.steps.begin(), comparison.steps.end(),
                                  [&](const StepComparison& one) { return one.afterStep == step; });
  return found == comparison.steps.end() ? nullptr : &*found;
}

void appendComparison(std::string& csv, const CheckCells& check, std::size_t step) {
  std::array<std::string, 10> cells;
  if (check.compared) {
    const Comparison& comparison = check.compared->comparison;
    cells[0] = check.comparedWith;
    if (const StepComparison* one = comparedStep(comparison, step); one && one->moved) {
      cells[1] = number(one->moved->value);
      cells[2] = number(one->moved->standard);
      cells[3] = number(one->moved->margin);
      cells[4] = number(one->moved->pDifferent);
      cells[5] = number(one->moved->pEquivalent);
      cells[6] = changeKey(one->moved->change);
    }
    cells[7] = changeKey(comparison.change);
    if (comparison.gain) {
      cells[8] = number(comparison.gain->value);
      cells[9] = number(comparison.gain->pDifferent);
    }
  }
  append(csv, cells, ",");
  csv += "," + (check.compared && check.compared->comparison.gain
                    ? number(check.compared->comparison.gain->pEquivalent)
                    : std::string());
}

/// Of the resistors that the step closes, in the order of its shunts; "" stands for what is not said.
void appendTraceability(std::string& csv, const CheckCells& check, const Setup& setup, std::size_t step) {
  std::string ids, certificates, due;
  bool isFirst = true;
  for (const std::size_t shunt : setup.sequence[step].closed) {
    if (shunt >= setup.shunts.size()) continue;
    const Part& part = setup.shunts[shunt].part;
    const std::string separator = isFirst ? "" : "; ";
    ids += separator + part.id;
    certificates += separator + part.certificate;
    due += separator + (part.due ? dateText(*part.due) : std::string());
    isFirst = false;
  }
  const Identity& instrument = setup.identity;
  const auto& air = check.ambient.air;
  const std::string cells[] = {csvText(ids),
                               csvText(certificates),
                               csvText(due),
                               csvText(instrument.name),
                               csvText(instrument.serial),
                               csvText(instrument.certificate),
                               instrument.due ? dateText(*instrument.due) : std::string(),
                               number(air ? std::optional(air->base()) : std::nullopt),
                               number(check.ambient.humidity)};
  append(csv, cells, ",");
}

void addRow(std::string& csv, const std::string& channel, const CheckCells& check, const Setup& setup,
            const StepRow& row, const std::string& fingerprint) {
  const std::optional<double> output = row.output ? std::optional(row.output->base() * 1e3) : std::nullopt;
  const Decided decided = row.decided.value_or(Decided{});
  const std::string cells[] = {csvText(channel),
                               check.name,
                               check.date,
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
                               check.remark,
                               check.verdict};
  append(csv, cells, "");
  append(csv, check.merits, ",");
  const std::string rest[] = {check.lineProbability,
                              check.diagnosis,
                              check.cause,
                              check.size,
                              check.weight,
                              check.sentence,
                              csvText(hookupText(setup.bridge))};
  append(csv, rest, ",");
  appendComparison(csv, check, row.step);
  appendTraceability(csv, check, setup, row.step);
  csv += "," + fingerprint + "\r\n";
}

void addChannel(std::string& csv, const ReportBasis& basis, std::size_t index,
                const std::string& fingerprint) {
  const Channel& channel = basis.channel(index);
  const ChannelEvaluation& evaluation = basis.evaluations[index];
  for (const std::size_t check : reportedChecks(channel, basis.order.content)) {
    const Check& made = channel.checks[check];
    const auto found = basis.diagnoses.find({index, check});
    CheckCells cells = cellsOf(made, evaluation.checks[check].assessment,
                               found == basis.diagnoses.end() ? nullptr : &found->second);
    cells.ambient = made.ambient;
    const auto pair = basis.compared.find(index);
    if (pair != basis.compared.end() && pair->second.after == check && basis.has(ReportPart::Comparison)) {
      cells.compared = &pair->second;
      cells.comparedWith = csvText(channel.checks[pair->second.before].name);
    }
    for (const StepRow& row : stepRows(channel, evaluation, check))
      addRow(csv, channel.name, cells, setupOf(channel, made), row, fingerprint);
  }
  if (!channel.checks.empty()) return;
  for (StepRow& row : plannedRows(channel.setup, evaluation.prediction, evaluation.budget)) {
    if (row.reason.empty() && !row.notBudgeted.empty()) row.reason = "No uncertainty: " + row.notBudgeted;
    if (row.reason.empty()) row.reason = "Not judged: the channel has no check.";
    addRow(csv, channel.name, {}, channel.setup, row, fingerprint);
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

std::string reportCsv(const Document& document, const ReportOrder& order, const Progress& progress,
                      const std::stop_token& stop) {
  const LanguageScope scope(english());  // programs read it
  const ReportBasis basis = reportBasis(document, order, progress, stop);
  std::string csv(header);
  csv += "\r\n";
  if (stop.stop_requested()) return csv;
  const auto fingerprint = fingerprintOf(document);
  for (const std::size_t index : basis.channels)
    addChannel(csv, basis, index, fingerprint ? *fingerprint : std::string());
  return csv;
}

std::string reportCsv(const Document& document, const Progress& progress, const std::stop_token& stop) {
  return reportCsv(document, ReportOrder{}, progress, stop);
}

}  // namespace core
