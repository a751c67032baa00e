// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/report_basis.h"

namespace core {

/// What the report is about, by whom, on which day and how far it is signed; its fingerprint; what is left
/// out. Without the part Cover the last two alone. `fingerprint` is empty where it is not known.
Section coverSection(const ReportBasis& basis, const std::string& fingerprint);

/// What must be known before the verdicts are read.
Section cautionSection(const ReportBasis& basis);

/// The list of all `sections`; of many only those of the first level.
Section contentsSection(const std::vector<Section>& sections);

/// "everything but wiring, history"; empty where nothing is left out.
std::string leftOutText(const ReportTemplate& content);

}  // namespace core
