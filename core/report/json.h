// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/report.h"

namespace core {

/// The record for programs: resources/report.schema.json says what stands where. All that the CSV has and
/// more: of every channel what was planned, what instrument and resistors stand behind it, every check with
/// steps, line, figures of merit, diagnosis and remarks, the last two checks compared, the trend;
/// traceability, history, sign-off and the fingerprint of the document.
///
/// Every key is always there, null where there is no value. Numbers are the shortest that read back as the
/// same double; one that is not finite is null. Simulated values and readings are in the `units` beside them,
/// all else has its unit in its key or is a share. Sentences are English, whatever the language of the order;
/// of its template the channels and checks count, and whether diagnoses and comparisons are wanted.
///
/// Fails when stopped, and with text that is not UTF-8. `progress` and `stop` as for core::reportOf.
Result<std::string> reportJson(const Document& document, const ReportOrder& order,
                               const Progress& progress = {}, const std::stop_token& stop = {});

}  // namespace core
