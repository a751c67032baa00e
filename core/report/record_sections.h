// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/report_basis.h"

namespace core {

/// Who changed what when, whether the list is whole, and whether what the report is of is what was saved
/// last. `fingerprint` as below.
Section historySection(const Document& document, const std::string& fingerprint);

/// What was signed so far, and lines to sign by hand. `fingerprint` is that of the document now, empty where
/// it is not known.
Section signOffSection(const Document& document, const std::string& fingerprint);

}  // namespace core
