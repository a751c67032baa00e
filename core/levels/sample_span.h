// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>

namespace core {

/// Samples begin to end - 1 of a column.
struct SampleSpan {
  std::size_t begin = 0;
  std::size_t end = 0;

  std::size_t size() const { return end - begin; }
  friend bool operator==(const SampleSpan&, const SampleSpan&) = default;
};

}  // namespace core
