// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/document/document.h"
#include "core/units/result.h"

namespace core {

/// What differs between two documents, a line each, as a person would say it: "TP-01: gauge factor 2.08
/// to 2.1", "TP-01, check post-test: reading of step 3 changed from 1001.2 to 998.7", "TP-31 added".
std::vector<std::string> changesBetween(const Document& before, const Document& after);

/// Who saves what with which program, when (ISO 8601, UTC, seconds).
struct Saving {
  std::string person;
  std::string time;
  std::string program;
};
/// `document` with an entry of its history about what changed since `before`, the document as it was last
/// saved (none: it is new). Without a change the document as it is.
Result<Document> withRevision(Document document, const Document* before, const Saving& saving);

/// The first entry whose chain does not follow from those before it; none when the history holds together.
std::optional<std::size_t> brokenRevision(const std::vector<Revision>& history);

}  // namespace core
