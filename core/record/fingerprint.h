// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

#include "core/document/content.h"
#include "core/document/sha256.h"
#include "core/units/result.h"

// What a report is bound to: a fingerprint of everything that was planned, measured and decided.
//
// It is SHA-256 (FIPS 180-4) of a canonical JSON text (RFC 8785) of the document's file without what comes
// after the fact (`sign_off`, `history`, the `remarks` of its checks, `fingerprint` itself) and without the
// `version` of the file, so that a newer program which has nothing to add finds the same. In that text
// `channels` is a list of the fingerprints of the channels, each taken in the same way, so that an edit costs
// one channel. Anybody can reckon it: it shows that something was altered, not who altered it.
//
// fingerprintOf(document), fingerprintOf(channel) and fingerprintOf(document, those of its channels) are
// declared by core/document/content.h, since every file carries its own; they fail as writeDocument does.

namespace core {

/// `json`, an object within the limits of parseJson, as RFC 8785 writes it: no white space, keys sorted by
/// UTF-16 code units, numbers as ECMAScript writes them.
Result<std::string> canonicalJson(std::string_view json);

/// Of a document as it stands in a file of any version, unread: so that what was printed years ago can be
/// held against a file that a newer program would lift before it reads it. Fails when it is no JSON.
Result<std::string> fingerprintOfFile(std::string_view text);

/// "3f2a 91bc 04de 77a1": the first 16 digits, for people to compare at a glance.
std::string shortFingerprint(std::string_view fingerprint);

}  // namespace core
