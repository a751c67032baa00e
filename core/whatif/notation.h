// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/whatif/alteration.h"

// How an alteration is written on the command line.

namespace core {

/// "broken S-", "exchange P+,S-", "contact P+ = 2 Ω", "leak arm 1 = 10 MΩ": what `alterationFrom` takes.
std::string notationOf(const Alteration& alteration);

/// The alteration that `text` says. Words may be in either case; what stands behind the equals sign is in
/// the trade's notation (core/units/notation.h), arms are counted from 1. A value that is left out is the one
/// that `possibleAlterations` starts from. Fails for text that says none, with what can be written. Whether
/// the bridge can have it, `altered` says.
Result<Alteration> alterationFrom(const Setup& setup, std::string_view text);

/// What can be written, a line a kind: "broken LEAD", "leak arm N = OHM".
std::vector<std::string> notationForms();

}  // namespace core
