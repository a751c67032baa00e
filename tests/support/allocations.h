// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>

namespace test {

/// How many times any thread of this program has asked `new` for memory so far.
std::size_t allocations();

}  // namespace test
