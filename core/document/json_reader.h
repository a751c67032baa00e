// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

#include "core/document/document.h"
#include "core/units/result.h"

namespace core {

/// The version of the file format that is written, and the newest that is read.
inline constexpr unsigned fileVersion = 7;

/// Reads a document file (.bridgecal); resources/bridgecal.schema.json describes it.
///
/// Strict: unknown, missing and doubled keys, wrong types, names that nothing has, and files beyond
/// the limits of parseJson are refused, so nothing in a file is ever dropped in silence. Whether a
/// bridge can be calculated is not asked here: a document with a zero resistance opens, and its
/// channel shows what is wrong. The stock must hold (checkStock), and there may be no more of one thing than
/// file_limits.h says. A lead that is not in the file is zero; so is an arm's leakage.
/// The fingerprint need not be there, and need not be that of the content: core/record/file_standing.h tells.
/// Of an error `where` is "line 17, channels[2].setup.bridge.gauge.factor".
///
/// A file of a newer version is refused with the version it needs. One of an older version is lifted a
/// version at a time (json_upgrade.h) before it is read, and behaves as it did.
Result<Document> readDocument(std::string_view text);

}  // namespace core
