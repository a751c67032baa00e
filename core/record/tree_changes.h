// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/document/json_text.h"

namespace core {

/// What differs between two trees of the same kind (objects of a document file), in the words of the field:
/// each line names the value by its way, "limit: relative from 0.01 to 0.02". The walk knows no keys that it
/// needs; a table turns those it knows into words, the others are written as they stand, so that nothing is
/// missed. In English.
std::vector<std::string> treeChanges(const JsonValue& before, const JsonValue& after);

}  // namespace core
