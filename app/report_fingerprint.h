// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <string>
#include <string_view>

#include "core/units/result.h"

namespace app {

/// What a report says of the document it was made from.
struct ReportFingerprint {
  std::string kind;         ///< "PDF", "workbook", "HTML page", "JSON", "CSV table"
  std::string fingerprint;  ///< empty: it states none
};

/// Finds the fingerprint in a report that this program wrote: in a PDF's metadata or keywords, a workbook's
/// custom properties, a page's meta element, at the key of JSON, in the last column of a table. Fails for a
/// file of none of these kinds, a damaged workbook, a table whose rows state different ones, and a document
/// in a report's place.
core::Result<ReportFingerprint> reportFingerprint(const std::string& path, const QByteArray& bytes);

}  // namespace app
