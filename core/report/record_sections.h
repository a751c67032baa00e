// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/report_basis.h"

namespace core {

/// Who changed what when, and whether the list is whole.
Section historySection(const Document& document);

/// What was signed so far, and lines to sign by hand. `fingerprint` is that of the document now, empty where
/// it is not known.
Section signOffSection(const Document& document, const std::string& fingerprint);

}  // namespace core
