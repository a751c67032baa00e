// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/report.h"

namespace core {

/// The record as an Office Open XML workbook (ECMA-376), in the language of the order.
///
/// Sheets: all channels worst first; about this report with its cautions; a sheet a channel, or of very many
/// channels some on each; traceability; history and sign-off. Numbers and days are native ones. Change,
/// deviation, limit, what the decision rule looks at, verdict, slope and intercept of ordinary least squares,
/// and the differences of compared checks are formulas, with the values of this program beside them for
/// readers that do not work out formulas; recalculated they give the same to rounding. Each check that was
/// read has a native chart with its fitted line. Foreign text is never a formula.
///
/// The fingerprint is the custom property "shuntwright-fingerprint". Fails when stopped, and when the
/// temporary file that the workbook is put together in cannot be written. `progress` and `stop` as for
/// core::reportOf.
Result<std::string> reportWorkbook(const Document& document, const ReportOrder& order,
                                   const Progress& progress = {}, const std::stop_token& stop = {});

}  // namespace core
