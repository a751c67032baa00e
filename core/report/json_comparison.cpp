// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/compare/trend.h"
#include "core/report/json_parts.h"

namespace core {
namespace {

using enum JsonEmitter::Layout;

void writeDifference(JsonEmitter& out, std::string_view key, const std::optional<Difference>& difference) {
  if (!difference) return out.null(key);
  out.object(key, OneLine, [&] {
    writeNumber(out, "value", difference->value);
    writeNumber(out, "std_uncertainty", difference->standard);
    writeNumber(out, "degrees_of_freedom", difference->dof);
    writeNumber(out, "margin", difference->margin);
    writeNumber(out, "half_width_90", difference->halfWidth90);
    writeNumber(out, "half_width_95", difference->halfWidth95);
    writeNumber(out, "p_different", difference->pDifferent);
    writeNumber(out, "p_equivalent", difference->pEquivalent);
    writeNumber(out, "en_number", difference->en);
    out.text("change", changeKey(difference->change));
  });
}

void writeReading(JsonEmitter& out, std::string_view key, const std::optional<Reading>& reading) {
  writeNumber(out, key, reading ? std::optional(reading->base()) : std::nullopt);
}

void writeStepComparison(JsonEmitter& out, std::size_t step, const StepComparison& compared) {
  out.object({}, OneLine, [&] {
    out.count("step", step + 1);
    writeReading(out, "before", compared.before);
    writeReading(out, "after", compared.after);
    writeReading(out, "difference", compared.difference);
    writeReading(out, "expected_before", compared.expectedBefore);
    writeReading(out, "expected_after", compared.expectedAfter);
    writeDifference(out, "moved", compared.moved);
    writeText(out, "reason", compared.reason);
  });
}

void writeConfiguration(JsonEmitter& out, const Comparison& comparison) {
  out.array("configuration", Lines, [&] {
    for (const SetupDifference& difference : comparison.configuration)
      out.object({}, OneLine, [&] {
        out.text("what", difference.what);
        out.text("before", difference.before);
        out.text("after", difference.after);
        out.boolean("on_readings", difference.onReadings);
      });
  });
}

void writeDataBetween(JsonEmitter& out, const std::optional<DataBetween>& data) {
  if (!data) return out.null("data_between");
  out.object("data_between", Lines, [&] {
    writeCorrection(out, "before", data->before);
    writeCorrection(out, "after", data->after);
    writeNumber(out, "greatest_share", data->greatestShare);
    writeNumber(out, "greatest_offset", data->greatestOffset);
    writeText(out, "sentence", data->sentence);
  });
}

void writeLimits(JsonEmitter& out, std::string_view key, const std::optional<ControlLimits>& limits) {
  if (!limits) return out.null(key);
  out.object(key, OneLine, [&] {
    writeNumber(out, "centre", limits->centre);
    writeNumber(out, "lower", limits->lower);
    writeNumber(out, "upper", limits->upper);
  });
}

}  // namespace

void writeComparison(JsonEmitter& out, const ReportBasis& basis, std::size_t index) {
  const auto found = basis.compared.find(index);
  if (found == basis.compared.end() || !basis.has(ReportPart::Comparison)) return out.null("comparison");
  const Channel& channel = basis.channel(index);
  const auto& [before, after, comparison, cause] = found->second;
  out.object("comparison", Lines, [&] {
    out.text("before", channel.checks[before].name);
    out.text("after", channel.checks[after].name);
    out.text("change", changeKey(comparison.change));
    out.text("verdict", verdictWord(comparison.verdict));
    out.text("reason", comparison.reason);
    writeConfiguration(out, comparison);
    writeDifference(out, "gain", comparison.gain);
    writeDifference(out, "zero", comparison.zero);
    writeNumber(out, "joint_probability", comparison.jointProbability);
    writeCount(out, "repeats",
               comparison.repeats ? std::optional<std::size_t>(*comparison.repeats) : std::nullopt);
    out.array("steps", Lines, [&] {
      for (std::size_t k = 0; k < comparison.steps.size(); ++k)
        writeStepComparison(out, k, comparison.steps[k]);
    });
    const bool isDiagnosed = !cause.diagnosis.sentence.empty() || !cause.diagnosis.explanations.empty();
    writeDiagnosis(out, "cause", isDiagnosed ? &cause.diagnosis : nullptr);
    writeDataBetween(out, cause.data);
  });
}

void writeTrend(JsonEmitter& out, const ReportBasis& basis, std::size_t index) {
  const Channel& channel = basis.channel(index);
  if (channel.checks.size() < 3) return out.null("trend");
  const Trend trend = trendOf(channel, basis.evaluations[index]);
  out.object("trend", Lines, [&] {
    out.array("points", Lines, [&] {
      for (const TrendPoint& point : trend.points)
        out.object({}, OneLine, [&] {
          out.text("check", channel.checks[point.check].name);
          writeDay(out, "date", point.day);
          writeNumber(out, "gain", point.gain);
          writeNumber(out, "gain_std_uncertainty", point.gainStandard);
          writeNumber(out, "zero", point.zero);
          writeNumber(out, "zero_std_uncertainty", point.zeroStandard);
        });
    });
    writeLimits(out, "gain_limits", trend.gain);
    writeLimits(out, "zero_limits", trend.zero);
    writeText(out, "sentence", trend.sentence);
  });
}

}  // namespace core
