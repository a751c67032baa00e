// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/document/json_fields.h"

// Older files are lifted a version at a time on the tree, so that the reader knows only the newest. To add
// a version, raise fileVersion, add upgradeFrom7 and put it behind those before it in readDocument.

namespace core {

/// Lifts a document of version 1 to version 2: adds what is new, with the values by which version 1
/// calculated without saying so (no leaks, a ratiometric instrument, simple acceptance).
///
/// A key that version 1 did not know is noted as an error. Whatever else is wrong stays for the reader to
/// find; every value keeps its line, and an added one has the line of what it was added to.
void upgradeFrom1(JsonValue& document, FirstError& error);

/// Lifts a document of version 2 to version 3, likewise: no stock, no pins, nothing measured by ohmmeter. The
/// steps of version 2 were held and averaged from their begin, so that they settle for 0 s and a check lasts
/// as long as before.
void upgradeFrom2(JsonValue& document, FirstError& error);

/// Lifts a document of version 3 to version 4, likewise: layouts of recordings as guessed, no levels but
/// those of readings, columns named like their channels. All that is new may be left out, so nothing is
/// added.
void upgradeFrom3(JsonValue& document, FirstError& error);

/// Lifts a document of version 4 to version 5, likewise: no figure of merit has a limit, so that no verdict
/// changes, and nonlinearity is told from the least-squares line.
void upgradeFrom4(JsonValue& document, FirstError& error);

/// Lifts a document of version 5 to version 6, likewise: bridges are connected as their template says, which
/// is what leaving it out means, so nothing is added.
void upgradeFrom5(JsonValue& document, FirstError& error);

/// Lifts a document of version 6 to version 7, likewise: between two checks as much may change as a reading
/// may be off and as zero may return beside, so that nothing is judged more strictly than a check alone. All
/// else that is new may be left out.
void upgradeFrom6(JsonValue& document, FirstError& error);

}  // namespace core
