// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>

namespace core {

constexpr std::size_t greatestColumns = 4096;                 ///< a table with more is refused
constexpr std::size_t longestLine = std::size_t{128} * 1024;  ///< bytes, 32 a column; longer ones are skipped

}  // namespace core
