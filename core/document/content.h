// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/document/document.h"
#include "core/document/json_text.h"
#include "core/units/result.h"

// What a fingerprint stands for (core/record/fingerprint.h has the whole story). It is here because every
// file carries its own.

namespace core {

/// Canonical JSON of a channel as it stands in a file, without remarks. Fails as writeDocument does.
Result<std::string> contentOf(const Channel& channel);
/// That of a document; `channels` holds the fingerprint of each of its channels.
Result<std::string> contentOf(const Document& document, const std::vector<std::string>& channels);

/// SHA-256 of the content.
Result<std::string> fingerprintOf(const Channel& channel);
Result<std::string> fingerprintOf(const Document& document);
/// The same when the fingerprints of all channels are known.
Result<std::string> fingerprintOf(const Document& document, const std::vector<std::string>& channels);

/// Of a document as its file says it, whatever its version; `document` loses what does not count.
std::string fingerprintOfTree(JsonValue document);

}  // namespace core
