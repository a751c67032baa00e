// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "core/document/document.h"
#include "core/units/result.h"

namespace core {

/// Where a record stands.
struct Standing {
  Stage stage = Stage::Draft;
  std::optional<SignOffAct> act;  ///< the latest; none of a draft
  bool changedSince = false;      ///< the content is no longer what the act was about
  std::string sentence;  ///< "Accepted by R. Larch on 2031-05-04; changed since: not valid any more."
};
Standing standingOf(const Document& document);

/// Whether `stage` may follow now, or why not: a draft or returned record can be submitted, when it has a
/// check; a submitted one accepted or returned, by somebody else than who submitted it; a returned one needs
/// a remark. Accepting needs all remarks settled. Withdrawn is: back to draft.
Result<void> mayBecome(const Document& document, Stage stage, const std::string& person);

/// The document after the act. Submitting closes every open check that has a reading, so that all that was
/// judged keeps its set-up. Fails as `mayBecome`.
Result<Document> withStage(Document document, Stage stage, const std::string& person, const std::string& time,
                           const std::string& remark);

}  // namespace core
