// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/document/json_fields.h"

// Older files are lifted a version at a time on the tree, so that the reader knows only the newest. To add
// a version, raise fileVersion, add upgradeFrom2 and call it in readDocument after those before it.

namespace core {

/// Lifts a document of version 1 to version 2: adds what is new, with the values by which version 1
/// calculated without saying so (no leaks, a ratiometric instrument, simple acceptance).
///
/// A key that version 1 did not know is noted as an error. Whatever else is wrong stays for the reader to
/// find; every value keeps its line, and an added one has the line of what it was added to.
void upgradeFrom1(JsonValue& document, FirstError& error);

}  // namespace core
