// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "core/circuit/hookup_words.h"
#include "core/plan/overdue.h"
#include "core/report/diagnosis_section.h"
#include "core/report/json_parts.h"

namespace core {
namespace {

using enum JsonEmitter::Layout;

template <class Kind>
std::optional<double> baseOf(const std::optional<Quantity<Kind>>& quantity) {
  return quantity ? std::optional(quantity->base()) : std::nullopt;
}

void writeStep(JsonEmitter& out, const StepRow& row) {
  const Decided decided = row.decided.value_or(Decided{});
  out.object({}, OneLine, [&] {
    out.count("step", row.step + 1);
    out.text("label", row.label);
    out.text("closed_shunts", row.closed);
    writeNumber(out, "settle_s", row.settle.base());
    writeNumber(out, "hold_s", row.hold.base());
    writeText(out, "polarity", row.expected ? polarityWord(row.polarity) : std::string_view());
    writeNumber(out, "simulated", row.simulated);
    writeNumber(out, "expanded_uncertainty_strain", row.expandedStrain);
    writeNumber(out, "coverage_factor_strain", row.coverageStrain);
    writeNumber(out, "output_mV_per_V", row.output ? std::optional(row.output->base() * 1e3) : std::nullopt);
    writeNumber(out, "expected_reading", row.expected);
    writeNumber(out, "expanded_uncertainty_chain", row.expandedChain);
    writeNumber(out, "coverage_factor_chain", row.coverageChain);
    writeNumber(out, "reading", row.reading);
    writeNumber(out, "reading_std_uncertainty", row.uncertainty);
    writeNumber(out, "change", row.change);
    writeNumber(out, "deviation", row.deviation);
    writeNumber(out, "deviation_expanded_uncertainty", decided.expanded);
    writeNumber(out, "limit", row.limit);
    writeNumber(out, "guard_band", decided.guardBand);
    writeNumber(out, "conformity_probability", decided.probability);
    writeNumber(out, "en_number", decided.en);
    writeNumber(out, "residual", row.residual);
    out.text("verdict", verdictWord(row.verdict));
    writeText(out, "reason", row.reason);
  });
}

void writeDecision(JsonEmitter& out, const Decision& decision) {
  out.object("decision", OneLine, [&] {
    out.text("rule", decisionRuleKey(decision.rule));
    out.number("coverage_probability", decision.coverage);
    out.number("guard_factor", decision.guardFactor);
    out.number("conformity", decision.conformity);
    out.number("greatest_share", decision.greatestShare);
  });
}

void writeRecording(JsonEmitter& out, const std::optional<RecordingReference>& recording) {
  if (!recording) return out.null("recording");
  out.object("recording", OneLine, [&] {
    out.text("path", recording->path);
    out.count("size_bytes", recording->size_bytes);
    out.text("sha256", recording->sha256);
    out.text("column", recording->column);
  });
}

void writeLine(JsonEmitter& out, const CheckAssessment& assessment) {
  if (!assessment.line) return out.null("line");
  const Line& line = *assessment.line;
  out.object("line", OneLine, [&] {
    out.text("fit", lineFitName(line.fit));
    writeNumber(out, "slope", line.slope);
    writeNumber(out, "slope_std_uncertainty", line.slopeError);
    writeNumber(out, "intercept", line.intercept);
    writeNumber(out, "intercept_std_uncertainty", line.interceptError);
    writeNumber(out, "residual_deviation", line.residualDeviation);
    writeNumber(out, "r_squared", line.rSquared);
    writeNumber(out, "chi_square", line.chiSquare);
    writeNumber(out, "chi_square_probability", line.chiSquareProbability);
    out.number("degrees_of_freedom", line.degreesOfFreedom);
  });
}

void writeGain(JsonEmitter& out, const std::optional<ChainGain>& gain) {
  if (!gain) return out.null("gain");
  out.object("gain", OneLine, [&] {
    writeNumber(out, "value", gain->value);
    writeNumber(out, "std_uncertainty", gain->standard);
    out.boolean("widened", gain->isWidened);
    out.boolean("describes_readings", gain->describesReadings);
  });
}

void writeMerits(JsonEmitter& out, const std::vector<Merit>& merits) {
  out.array("merits", Lines, [&] {
    for (const Merit& merit : merits)
      out.object({}, OneLine, [&] {
        out.text("kind", meritKindKey(merit.kind));
        writeNumber(out, "value", merit.value);
        writeNumber(out, "share", merit.share);
        writeNumber(out, "share_std_uncertainty", merit.standard);
        writeNumber(out, "limit", merit.limit);
        writeCount(out, "step", merit.step ? std::optional(*merit.step + 1) : std::nullopt);
        out.text("verdict", verdictWord(merit.verdict));
        writeText(out, "reason", merit.reason);
        writeText(out, "missing", merit.missing);
      });
  });
}

void writeRemarks(JsonEmitter& out, const Check& check) {
  out.array("remarks", Lines, [&] {
    for (const Remark& remark : check.remarks)
      out.object({}, OneLine, [&] {
        writeCount(out, "step", remark.step ? std::optional(*remark.step + 1) : std::nullopt);
        out.text("person", remark.person);
        out.text("time", remark.time);
        out.text("text", remark.text);
        out.boolean("settled", remark.settled);
      });
  });
}

void writeAmbient(JsonEmitter& out, const Ambient& ambient) {
  out.object("ambient", OneLine, [&] {
    writeNumber(out, "air_degC", baseOf(ambient.air));
    writeNumber(out, "relative_humidity", ambient.humidity);
  });
}

void writeCause(JsonEmitter& out, const Explanation& cause) {
  out.object({}, OneLine, [&] {
    out.text("cause", causeKindKey(cause.fault.kind));
    out.text("title", cause.title);
    writeText(out, "size", cause.sizeText);
    writeNumber(out, "weight", cause.weight);
    writeNumber(out, "explained", cause.explained);
    writeNumber(out, "plausibility", cause.plausibility);
    writeText(out, "settings", cause.settings);
    writeText(out, "confirm", cause.confirm);
    writeText(out, "on_strain", cause.onStrain);
    writeCorrection(out, "correction", cause.correction);
  });
}

}  // namespace

void writeNumber(JsonEmitter& out, std::string_view key, const std::optional<double>& value) {
  if (value && std::isfinite(*value))
    out.number(key, *value);
  else
    out.null(key);
}

void writeText(JsonEmitter& out, std::string_view key, std::string_view text) {
  if (text.empty())
    out.null(key);
  else
    out.text(key, text);
}

void writeDay(JsonEmitter& out, std::string_view key, const std::optional<Date>& day) {
  writeText(out, key, day ? dateText(*day) : std::string());
}

void writeCount(JsonEmitter& out, std::string_view key, const std::optional<std::size_t>& count) {
  if (count)
    out.count(key, *count);
  else
    out.null(key);
}

void writeUnits(JsonEmitter& out, const Setup& setup) {
  out.object("units", OneLine, [&] {
    out.text("simulated", simulatedUnitText(setup.bridge));
    out.text("reading", readingUnitText(setup.instrument));
  });
}

void writeIdentity(JsonEmitter& out, const Identity& identity) {
  out.object("instrument", OneLine, [&] {
    writeText(out, "name", identity.name);
    writeText(out, "serial", identity.serial);
    writeText(out, "certificate", identity.certificate);
    writeDay(out, "calibration_due", identity.due);
  });
}

void writeSteps(JsonEmitter& out, const std::vector<StepRow>& rows) {
  out.array("steps", Lines, [&] {
    for (const StepRow& row : rows) writeStep(out, row);
  });
}

void writeCorrection(JsonEmitter& out, std::string_view key, const Correction& correction) {
  out.object(key, OneLine, [&] {
    writeNumber(out, "factor", correction.factor);
    writeNumber(out, "factor_std_uncertainty", correction.factorStandard);
    writeNumber(out, "offset", correction.offset);
    writeNumber(out, "offset_std_uncertainty", correction.offsetStandard);
    out.boolean("legitimate", correction.legitimate);
    writeText(out, "reason", correction.reason);
  });
}

void writeDiagnosis(JsonEmitter& out, std::string_view key, const Diagnosis* diagnosis) {
  if (!diagnosis) return out.null(key);
  out.object(key, Lines, [&] {
    out.text("result", diagnosisResultKey(diagnosis->result));
    out.text("sentence", diagnosisSentence(*diagnosis));
    writeNumber(out, "chi_square", diagnosis->chiSquare);
    out.number("degrees_of_freedom", diagnosis->degreesOfFreedom);
    writeNumber(out, "probability", diagnosis->probability);
    out.count("tied", diagnosis->tied);
    writeText(out, "telling_step", diagnosis->tellingStep ? diagnosis->tellingStep->text : std::string());
    out.array("causes", Lines, [&] {
      for (const Explanation& cause : diagnosis->explanations) writeCause(out, cause);
    });
  });
}

void writeCheckReport(JsonEmitter& out, const ReportBasis& basis, std::size_t index, std::size_t number) {
  const Channel& channel = basis.channel(index);
  const Check& check = channel.checks[number];
  const Setup& setup = setupOf(channel, check);
  const CheckAssessment& assessment = basis.evaluations[index].checks[number].assessment;
  const auto found = basis.diagnoses.find({index, number});
  const auto day = dateFromText(check.date);
  out.object({}, Lines, [&] {
    out.text("name", check.name);
    writeText(out, "date", check.date);
    writeText(out, "person", check.person);
    writeText(out, "remark", check.remark);
    out.boolean("closed", bool(check.closedWith));
    writeAmbient(out, check.ambient);
    writeRecording(out, check.recording);
    writeUnits(out, setup);
    writeIdentity(out, setup.identity);
    writeText(out, "overdue", day ? overdueSentence(setup, *day) : std::string());
    writeText(out, "connection", hookupText(setup.bridge));
    writeDecision(out, setup.decision);
    out.text("verdict", verdictWord(assessment.verdict));
    out.text("reason", assessment.reason);
    writeSteps(out, stepRows(channel, basis.evaluations[index], number));
    writeLine(out, assessment);
    writeGain(out, assessment.gain);
    writeNumber(out, "zero_return", baseOf(assessment.zeroReturn));
    writeMerits(out, assessment.merits);
    writeDiagnosis(out, "diagnosis", found == basis.diagnoses.end() ? nullptr : &found->second);
    writeRemarks(out, check);
  });
}

}  // namespace core
