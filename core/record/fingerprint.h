// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <string_view>

#include "core/document/document.h"
#include "core/units/result.h"

// What a report is bound to: a fingerprint of everything that was planned, measured and decided.
//
// It is SHA-256 (FIPS 180-4) of a canonical JSON text (RFC 8785) of the document without what comes after the
// fact: its sign-off, its history, remarks of reviewers, and the fingerprint itself. In that text `channels`
// is a list of the fingerprints of the channels, each taken in the same way, so that an edit costs one
// channel. Anybody can reckon it: it shows that something was altered, not who altered it.

namespace core {

/// 64 lower-case hexadecimal digits.
std::string sha256Hex(std::string_view bytes);

/// `json` as RFC 8785 writes it: no white space, keys sorted by UTF-16 code units, numbers as ECMAScript
/// writes them. Fails when it is no JSON.
Result<std::string> canonicalJson(std::string_view json);

/// Fails as writeDocument does.
Result<std::string> fingerprintOf(const Document& document);
Result<std::string> fingerprintOf(const Channel& channel);
/// Of a document as it stands in a file of any version, unread: so that what was printed years ago can be
/// held against a file that a newer program would lift before it reads it.
Result<std::string> fingerprintOfFile(std::string_view text);

/// "3f2a 91bc 04de 77a1": the first 16 digits, for people to compare at a glance.
std::string shortFingerprint(std::string_view fingerprint);

}  // namespace core
