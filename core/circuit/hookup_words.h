// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/circuit/hookup.h"

namespace core {

/// How the bridge is connected where that is not as its template says, a sentence for each thing; none when
/// it is: "The signal wires are reversed: the instrument measures S- against S+.", "Lead S- is broken.",
/// "Leads P+ and S- are exchanged at the instrument.", "Leads P+ and P- touch at their gauge ends."
std::vector<std::string> hookupSentences(const Bridge& bridge);
/// All of them in one line; empty when the bridge is connected as its template says.
std::string hookupText(const Bridge& bridge);

/// A lead as it is shown: "P+", "return", in the language of the report or the window. leadName is as files
/// and whoever types it have it.
std::string leadWord(LeadRole role);
/// "P+ and S-"
std::string pairText(const LeadPair& pair);

}  // namespace core
