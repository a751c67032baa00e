// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <stop_token>
#include <string>
#include <string_view>

#include "core/report/report.h"
#include "core/units/progress.h"

namespace core {

/// `text` as one cell by RFC 4180: quoted where it has to be.
///
/// Text that a spreadsheet would run (= + - @, tab, carriage return, also after spaces) gets a leading
/// apostrophe, because quotes do not keep a spreadsheet from running it. Not for numbers.
std::string csvText(std::string_view text);

/// The document's steps for a spreadsheet: UTF-8, commas, CRLF, one row a step a check, a header first.
///
/// Columns in this order: channel, check, check_date, step, label, closed_shunts, hold_s, settle_s (before
/// the hold), polarity; simulated, expanded_uncertainty_strain and coverage_factor_strain (of the load for a
/// transducer), simulated_unit; output_mV_per_V; expected_reading, expanded_uncertainty_chain,
/// coverage_factor_chain; coverage_probability (of all expanded uncertainties); reading,
/// reading_std_uncertainty, change, deviation, deviation_expanded_uncertainty, limit, reading_unit;
/// decision_rule (its key in files), guard_band, conformity_probability (0 to 1), en_number, each where the
/// rule uses it; verdict, reason, check_remark. Then what is of the check as a whole and stands in each of
/// its rows: check_verdict; nonlinearity, hysteresis, repeatability, zero_return, zero_shift, symmetry,
/// combined_error, span_ratio (shares: 0.01 is 1 %); line_probability (of the line's chi-square); diagnosis
/// (its result's key), likeliest_cause (its key), cause_size (in words), cause_weight (0 to 1),
/// diagnosis_sentence, of those checks that call for one (core::callsForDiagnosis).
/// connection: how the bridge is connected where that is not as its template says, in sentences.
/// Then, in the later one of the last two checks with readings: compared_with (the name of the earlier one);
/// step_moved (later less earlier deviation from expected), moved_std_uncertainty, moved_margin, p_different,
/// p_equivalent, step_change (core::changeKey); check_change, gain_change (a share), gain_p_different,
/// gain_p_equivalent of the check as a whole. Then of the resistors that the step closes resistors (their
/// labels), certificates, calibration_due, each with "; " between them; instrument, instrument_serial,
/// instrument_certificate, instrument_due; air_degC, relative_humidity (0 to 1) of the check; last
/// fingerprint, of the whole document, alike in every row.
///
/// Channels without a check give their planned steps with verdict "not judged". Numbers have a point and
/// are the shortest that read back as the same double; the unit is in the header or, where channels
/// differ, in the column behind. A cell is empty where there is no value and holds words where the
/// value is no finite number; only the verdict column says pass or fail.
///
/// Of the order only the channels and checks of its template are looked at, and whether diagnoses and the
/// comparison are wanted: text and numbers are English and canonical whatever the language.
/// `progress` and `stop` as for core::reportOf.
std::string reportCsv(const Document& document, const ReportOrder& order, const Progress& progress = {},
                      const std::stop_token& stop = {});
/// All of it.
std::string reportCsv(const Document& document, const Progress& progress = {},
                      const std::stop_token& stop = {});

}  // namespace core
