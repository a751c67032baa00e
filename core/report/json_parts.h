// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/document/json_emitter.h"
#include "core/report/report_basis.h"
#include "core/report/step_row.h"
#include "core/report/traceability_section.h"

// The parts of the JSON report, each an element of a list or a member of that key.

namespace core {

/// The value, or null where there is none or no finite one.
void writeNumber(JsonEmitter& out, std::string_view key, const std::optional<double>& value);
/// The text, or null where it is empty.
void writeText(JsonEmitter& out, std::string_view key, std::string_view text);
void writeDay(JsonEmitter& out, std::string_view key, const std::optional<Date>& day);
void writeCount(JsonEmitter& out, std::string_view key, const std::optional<std::size_t>& count);

/// Check `number` of channel `index` as an element of a list.
void writeCheckReport(JsonEmitter& out, const ReportBasis& basis, std::size_t index, std::size_t number);
/// The steps as planned, or as read and judged in a check.
void writeSteps(JsonEmitter& out, const std::vector<StepRow>& rows);
void writeUnits(JsonEmitter& out, const Setup& setup);
void writeIdentity(JsonEmitter& out, const Identity& identity);
void writeCorrection(JsonEmitter& out, std::string_view key, const Correction& correction);
/// null when there is none.
void writeDiagnosis(JsonEmitter& out, std::string_view key, const Diagnosis* diagnosis);
/// null when the channel has no two checks, or when the template leaves it out.
void writeComparison(JsonEmitter& out, const ReportBasis& basis, std::size_t index);
/// null for fewer than three checks.
void writeTrend(JsonEmitter& out, const ReportBasis& basis, std::size_t index);

}  // namespace core
