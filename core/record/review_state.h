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
/// The same when the document's fingerprint is known.
Standing standingOf(const Document& document, const std::string& fingerprint);

/// In words: "draft", "submitted for review", "accepted", "returned".
std::string stageName(Stage stage);

/// Whether `stage` may follow now, or why not. A draft or returned record can be submitted when a check of it
/// has a reading; one that changed since it was submitted or accepted, again. A submitted one that has not
/// changed can be accepted by somebody else than who submitted it, when all remarks are settled. A submitted
/// or accepted one can be returned by somebody else than who submitted it. Whoever submitted it can withdraw
/// it as long as it is neither accepted nor returned: back to draft. Names are compared without regard to
/// case.
Result<void> mayBecome(const Document& document, Stage stage, const std::string& person);

/// The document after the act. Submitting closes every open check that has a reading, so that all that was
/// judged keeps its set-up. `time` is ISO 8601. Fails as `mayBecome`, and when a return has no remark.
Result<Document> withStage(Document document, Stage stage, const std::string& person, const std::string& time,
                           const std::string& remark);

}  // namespace core
