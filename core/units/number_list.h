// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>
#include <vector>

namespace core {

/// "2", "2 and 3", "2–4, 6 and 9": places that count from 0 and rise, as people count them, from 1. Three or
/// more that follow each other are a range.
std::string numberList(const std::vector<std::size_t>& places);

}  // namespace core
