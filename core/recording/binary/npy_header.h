// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "core/units/result.h"

namespace core {

/// A number of each element of an array; `name` is empty when it is the whole element.
struct NpyField {
  std::string name;
  std::string type;          ///< "<f8", as NumPy writes it
  std::uint64_t copies = 1;  ///< of a field that is itself a vector
};

/// What the heading of a NumPy array says.
struct NpyHeader {
  std::vector<NpyField> fields;
  bool columnMajor = false;
  std::vector<std::uint64_t> shape;
};

/// Reads the heading, a dictionary in Python's notation. Fails with a sentence and no `where`.
/// Source: NumPy Enhancement Proposal 1, "A Simple File Format for NumPy Arrays".
Result<NpyHeader> npyHeader(std::string_view dictionary);

}  // namespace core
