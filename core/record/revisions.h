// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/document/document.h"
#include "core/units/result.h"

namespace core {

/// What differs between two documents, a line each, as a person would say it: "TP-01: gauge factor from 2.08
/// to 2.1", "TP-01, check post-test: reading of step 3 from 1001.2 to 998.7", "TP-31 added", "submitted by R.
/// Larch". Channels, checks, shunts, pins, resistors and statements are found by their names, steps by what
/// they have in common from both ends. The history itself plays no part. In English always, since it goes
/// into files. What more than three channels share is one line: "12 channels (TP-01, TP-02, TP-03, ...):
/// limit ...".
std::vector<std::string> changesBetween(const Document& before, const Document& after);

/// Who saves what with which program, when (ISO 8601, UTC, seconds).
struct Saving {
  std::string person;
  std::string time;
  std::string program;
};
/// `document` with an entry of its history about what changed since `before`, the document as it was last
/// saved (none: it is new). Without a change the document as it is. Where `before` is not what the last entry
/// is about, the new one says that it was altered outside. At most 40 changes are told, and of more than 200
/// changed channels the rest is only counted. A history that has grown too long for a file begins anew, with
/// the chain of what was left out in its first line. Fails as fingerprintOf.
Result<Document> withRevision(Document document, const Document* before, const Saving& saving);

/// SHA-256 of `before`, the chain of the entry before (empty for the first), and the canonical JSON of the
/// entry without its chain.
std::string chainOf(const std::string& before, const Revision& revision);

/// The first entry whose chain does not follow from those before it; none when the history holds together.
std::optional<std::size_t> brokenRevision(const std::vector<Revision>& history);

/// The entries whose saving found a file that was not as the entry before had left it: somebody altered it
/// without this program, and no entry tells what.
std::vector<std::size_t> revisionsAfterAlteration(const std::vector<Revision>& history);

}  // namespace core
