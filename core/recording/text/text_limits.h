// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>

namespace core {

constexpr std::size_t greatestColumns = 4096;    ///< a table with more is refused
constexpr std::size_t longestLine = 128 * 1024;  ///< bytes, 32 a column; a longer line is skipped

}  // namespace core
