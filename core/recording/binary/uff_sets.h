// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <stop_token>
#include <string>
#include <vector>

#include "core/recording/binary/uff58_heading.h"
#include "core/recording/file_bytes.h"
#include "core/units/result.h"

namespace core {

/// A data set 58 and where its numbers are.
struct Uff58Set {
  Uff58Heading heading;
  std::uint64_t begin = 0;
  std::uint64_t end = 0;  ///< of the numbers; the end of the file when that comes first
};

/// All data sets of a universal file.
struct UffSets {
  std::vector<Uff58Set> functions;
  std::size_t others = 0;           ///< of other numbers
  std::vector<std::string> broken;  ///< what cannot be read, as sentences
};

/// Goes through the file once.
Result<UffSets> uffSets(const RegularFile& file, const std::stop_token& stop);

}  // namespace core
