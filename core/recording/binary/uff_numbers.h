// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <stop_token>
#include <vector>

#include "core/recording/binary/binary_table.h"
#include "core/recording/binary/uff_sets.h"
#include "core/recording/samples.h"

namespace core {

/// The numbers of a data set as far as they go, NaN for what is no number.
struct Uff58Numbers {
  Samples abscissa;  ///< empty when it is even
  Samples ordinate;
};

/// The first `count` of a set of real numbers.
Result<Uff58Numbers> uff58Numbers(const RegularFile& file, const Uff58Set& set, std::uint64_t count,
                                  const std::stop_token& stop, const Progress& progress);

}  // namespace core
