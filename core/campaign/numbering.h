// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/document/document.h"

namespace core {

/// The `count` names that follow `name`: its last number counted up with as many digits ("TP-09" gives TP-10,
/// TP-11; "LC-1" LC-2), a number put behind a name without one ("spar" gives spar-2). Names that the document
/// has are passed over.
std::vector<std::string> namesAfter(const Document& document, const std::string& name, std::size_t count);

/// Channel `index` `count` times behind itself, set-up, note and group only, with the names that follow its
/// own.
///
/// Where the recording column ends with the number of the name it is counted up alike ("AI 09" of TP-09);
/// else a copy has none, since two channels must not be read from one column. So are connectors of pins that
/// end with that number ("J9"), or, where no connector does, pins that all end with it ("A9", "B9"); jumpers
/// follow.
Document withChannelCopies(Document document, std::size_t index, std::size_t count);

}  // namespace core
